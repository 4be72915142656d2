//! Rings what is due: once, in one window, and late rather than never.

use cook_model::cook::alarms::Alarm;
use cook_model::cook::ringing::{self, Mark, Ring};
use cook_model::quantity::{Moment, Span};
use gloo_timers::callback::Timeout;
use wasm_bindgen_futures::spawn_local;

use super::{Alarms, tag};
use crate::device::notify::{self, Notice};
use crate::device::sound::{self, Tune};
use crate::device::storage::CookId;
use crate::device::{clock, prefs, speech, vibrate};

/// Browsers keep a timer's span in 31 bits of milliseconds.
const LONGEST_TIMER_MS: i64 = i32::MAX as i64;

/// How long the storage may take to say whether another window has rung an alarm. It answers in
/// milliseconds unless the browser hangs.
const PATIENCE: Span = Span::seconds(25);

/// Vibrations in milliseconds, with the pauses between.
const VIBRATION: [u32; 5] = [400, 150, 400, 150, 400];

impl Alarms {
    /// Rings what is due, and waits for the next.
    pub(super) fn look(&self) {
        let now = clock::now();
        self.wait(now);
        self.show_waiting();
        for (cook, due) in self.of_each(|one| ringing::due(&one.alarms, &one.marks, now)) {
            if due.is_empty() {
                continue;
            }
            let this = self.clone();
            spawn_local(async move {
                this.ring(cook, due, now).await;
                this.show_waiting();
                this.wait(clock::now());
            });
        }
    }

    async fn ring(&self, cook: CookId, due: Vec<Ring>, now: Moment) {
        let mut rings = Vec::new();
        for ring in due {
            if self.claim(cook, ring.alarm, now).await {
                rings.push(ring);
            }
        }
        if rings.is_empty() {
            return;
        }
        self.tell_others();
        let urgent = |ring: &Ring| ring.alarm.id.kind.is_urgent();
        let chosen = prefs::load();
        let mut sounds = 0;
        if chosen.sound {
            sounds = sound::play(if rings.iter().any(urgent) { Tune::Urgent } else { Tune::Call });
        }
        vibrate::vibrate(&VIBRATION);
        let tell =
            |ring: &Ring| Notice { tag: tag(cook, ring.alarm.id), ..(self.0.words)(cook, ring) };
        let notices: Vec<Notice> = rings.iter().map(tell).collect();
        if chosen.spoken {
            let words: Vec<&str> = notices.iter().map(|notice| notice.title.as_str()).collect();
            speech::speak(words.join(". "), sounds);
        }
        for notice in notices {
            // Not waited for: a phone that is slow to show it must not hold up the next alarm.
            spawn_local(async move {
                notify::show(&notice).await;
            });
        }
    }

    /// Remembers that the alarm rings now. False if it has rung already, here or in another window.
    async fn claim(&self, cook: CookId, alarm: Alarm, now: Moment) -> bool {
        let rung = move |mark: Option<Mark>| {
            ringing::ring(&alarm, mark.as_ref(), now).map(|ring| Mark::rung(&ring, now))
        };
        let in_memory = || rung(self.mark(cook, alarm.id));
        let key = (cook, alarm.id);
        let asked = self.0.asking.borrow().get(&key).copied();
        let (mark, new) = match asked {
            Some(since) if now - since < PATIENCE => (None, false),
            // The storage does not answer: what is remembered here must do.
            Some(_) => (in_memory(), true),
            None => {
                self.0.asking.borrow_mut().insert(key, now);
                let changed = self.0.store.change_mark(cook, alarm.id, rung).await;
                self.0.asking.borrow_mut().remove(&key);
                // Without storage the alarm rings all the same.
                changed.unwrap_or_else(|_| (in_memory(), true))
            }
        };
        if let Some(mark) = mark {
            self.set_mark(cook, alarm.id, mark);
        }
        new && mark.is_some()
    }

    /// Sets the timer for the next alarm to come.
    fn wait(&self, now: Moment) {
        let next = self.of_each(|one| ringing::next(&one.alarms, &one.marks, now));
        let next = next.into_iter().filter_map(|(_, next)| next).min();
        let timer = next.map(|next| {
            // A millisecond more, lest the timer comes just before the moment.
            let span = (next - now).num_milliseconds() + 1;
            let this = self.clone();
            Timeout::new(span.clamp(0, LONGEST_TIMER_MS) as u32, move || this.look())
        });
        self.0.timer.replace(timer);
    }
}
