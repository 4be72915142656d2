//! Questions that take the heat model longer than a tap may. A second thread answers them, one at a time;
//! where the browser gives none, or it ended twice in a row, the page answers them itself.

use std::time::Duration;

use cook_model::cook::Log;
use cook_model::cook::thinking::{Answer, Question, Thinker, come_back, on_the_way};
use cook_model::quantity::Moment;
use futures::channel::oneshot;
use gloo_timers::callback::Timeout;
use leptos::prelude::*;

use crate::device::finger;
use crate::device::second_thread::SecondThread;

/// A thread that has said nothing for so long, in milliseconds, is taken for dead: some tens of times what
/// the slowest phone needs for the largest cook.
const PATIENCE_MS: u32 = 20_000;
/// A thread that ended is started again; one that ends so many times in a row is not.
const TRIES: u32 = 2;

/// Who asks. Each has one question at a time, its newest.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Asker(u32);

impl Asker {
    /// The open cook, for its look: it goes before all others.
    pub const LOOK: Self = Self(0);
}

struct Asked {
    by: Asker,
    question: Vec<u8>,
    then: Box<dyn FnOnce(Answer)>,
}

#[derive(Default)]
struct Inner {
    waiting: Vec<Asked>,
    under_way: Option<Asked>,
    thread: Option<SecondThread>,
    patience: Option<Timeout>,
    failures: u32,
    askers: u32,
    here: Thinker,
}

/// The questions of this page.
#[derive(Clone, Copy)]
pub struct Asking(StoredValue<Inner, LocalStorage>);

impl Asking {
    /// Nothing is asked yet. The second thread starts with the first question.
    pub fn new() -> Self {
        Self(StoredValue::new_local(Inner::default()))
    }

    /// One more who asks.
    pub fn new_asker(self) -> Asker {
        self.change(|inner| {
            inner.askers += 1;
            Asker(inner.askers)
        })
    }

    /// Asks about a log at a moment, in place of what the same asker asked before.
    pub fn ask(
        self,
        by: Asker,
        (log, now): (&Log, Moment),
        question: Question,
        then: impl FnOnce(Answer) + 'static,
    ) {
        self.forget(by);
        let asked = Asked { by, question: on_the_way(log, now, question), then: Box::new(then) };
        self.change(|inner| inner.waiting.push(asked));
        self.go_on();
    }

    /// The same as a future; none if the page ends before.
    pub async fn answer(self, of: (&Log, Moment), question: Question) -> Option<Answer> {
        let (tell, told) = oneshot::channel();
        self.ask(self.new_asker(), of, question, |answer| _ = tell.send(answer));
        told.await.ok()
    }

    /// Takes back what somebody asked: its answer would come too late.
    pub fn forget(self, by: Asker) {
        self.change(|inner| {
            inner.waiting.retain(|asked| asked.by != by);
            if let Some(asked) = inner.under_way.as_mut().filter(|asked| asked.by == by) {
                asked.then = Box::new(|_| {});
            }
        });
    }

    /// Puts the next question, if none is under way.
    fn go_on(self) {
        let next = self.change(|inner| {
            if inner.under_way.is_some() || inner.waiting.is_empty() {
                return false;
            }
            let look = inner.waiting.iter().position(|asked| asked.by == Asker::LOOK);
            inner.under_way = Some(inner.waiting.remove(look.unwrap_or(0)));
            true
        });
        if next {
            self.put();
        }
    }

    /// Puts the question that is under way, to the second thread or else to this one.
    fn put(self) {
        let is_put = self.change(|inner| {
            while inner.thread.is_none() && inner.failures < TRIES {
                inner.thread = SecondThread::start(move |answer| self.heard(answer.as_deref()));
                inner.failures += u32::from(inner.thread.is_none());
            }
            let asked = inner.under_way.as_ref().zip(inner.thread.as_ref());
            let is_put = asked.is_some_and(|(asked, thread)| thread.ask(&asked.question));
            inner.patience = is_put.then(|| Timeout::new(PATIENCE_MS, move || self.heard(None)));
            is_put
        });
        if !is_put {
            set_timeout(move || self.think_here(), Duration::ZERO);
        }
    }

    fn think_here(self) {
        let answer = self.change(|inner| {
            let asked = inner.under_way.as_ref()?;
            inner.here.answer_to(&asked.question)
        });
        self.tell(answer.as_deref().and_then(come_back));
    }

    /// Takes what the second thread says; it has ended where it says nothing.
    fn heard(self, answer: Option<&[u8]>) {
        let answer = answer.and_then(come_back);
        let ended = answer.is_none();
        self.change(|inner| {
            inner.patience = None;
            inner.failures = if ended { inner.failures + 1 } else { 0 };
            if ended {
                inner.thread = None;
            }
        });
        if ended { self.put() } else { self.tell(answer) }
    }

    /// Tells whoever asked, once nothing can move away from under a finger, and goes on to the next.
    fn tell(self, answer: Option<Answer>) {
        finger::once_it_left(move || self.tell_now(answer));
    }

    fn tell_now(self, answer: Option<Answer>) {
        let asked = self.change(|inner| inner.under_way.take());
        if let Some((asked, answer)) = asked.zip(answer) {
            (asked.then)(answer);
        }
        self.go_on();
    }

    fn change<T>(self, how: impl FnOnce(&mut Inner) -> T) -> T {
        self.0.try_update_value(how).expect("the questions live as long as the page")
    }
}
