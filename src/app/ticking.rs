//! The present moment, told to the screens no more often than they can show it.

use std::time::Duration;

use cook_model::quantity::Moment;
use leptos::prelude::*;

use crate::device::{clock, finger, visibility};

const SECOND: Duration = Duration::from_secs(1);
/// A timer comes so much later, lest it comes just before the turn.
const LATER: Duration = Duration::from_millis(5);

/// How time runs in the demo.
#[derive(Clone, Copy)]
struct Pace {
    began: Moment,
    times: i32,
}

/// The present moment as a signal. It moves once a second while a running countdown is on the
/// screen, otherwise once a minute and at each turn, and not at all while the page is hidden: whoever
/// looks again finds it right, for it is read from the clock and never counted up.
#[derive(Clone, Copy)]
pub struct Ticking {
    now: RwSignal<Moment>,
    demo: RwSignal<Option<Pace>>,
    running_countdowns: RwSignal<u32>,
    /// The moments at which the screen says something else.
    turns: RwSignal<Vec<Moment>>,
}

impl Ticking {
    /// Starts to tick.
    pub fn start() -> Self {
        let ticking = Self {
            now: RwSignal::new(clock::now()),
            demo: RwSignal::new(None),
            running_countdowns: RwSignal::new(0),
            turns: RwSignal::new(Vec::new()),
        };
        let visible = RwSignal::new(visibility::is_visible());
        visibility::on_return(move || {
            visible.set(true);
            ticking.look();
        });
        visibility::on_hidden(move || visible.set(false));
        Effect::new(move |timer: Option<Option<TimeoutHandle>>| {
            if let Some(timer) = timer.flatten() {
                timer.clear();
            }
            ticking.now.track();
            let each_second = ticking.running_countdowns.get() > 0 || ticking.is_demo();
            if !visible.get() {
                return None;
            }
            let now = clock::now();
            let turns = ticking.turns.read();
            let turns = turns.iter().filter_map(|turn| until(now, *turn));
            let tick = turns.min().unwrap_or(Duration::MAX).min(until_next(now, each_second));
            let look = move || finger::once_it_left(move || ticking.look());
            set_timeout_with_handle(look, tick).ok()
        });
        ticking
    }

    /// Moves at these moments too: what falls due then stands on the screen as it calls.
    pub fn turn_at(self, moments: Vec<Moment>) {
        self.turns.set(moments);
    }

    /// The present moment. Reactive.
    pub fn now(self) -> Moment {
        self.now.get()
    }

    /// Looks at the clock at once.
    pub fn look(self) {
        self.now.set(self.read());
    }

    /// What the clock shows at this very moment: the phone's, or the demo's.
    pub fn read(self) -> Moment {
        let now = clock::now();
        self.demo.get_untracked().map_or(now, |pace| pace.began + (now - pace.began) * pace.times)
    }

    /// Lets time run this many times as fast from now on; once gives the phone's own clock back.
    pub fn run(self, times: i32) {
        self.demo.set((times > 1).then(|| Pace { began: clock::now(), times }));
        self.look();
    }

    /// Whether time runs faster than the phone's clock. Reactive.
    pub fn is_demo(self) -> bool {
        self.demo.get().is_some()
    }

    /// Ticks every second for as long as the caller's part of the screen lives and asks for it.
    pub fn each_second_while(self, wanted: impl Fn() -> bool + Send + Sync + 'static) {
        let counted = StoredValue::new(false);
        let count = move |on: bool| {
            if counted.try_get_value().is_some_and(|was| was != on) {
                counted.set_value(on);
                self.running_countdowns.update(|count| {
                    *count = if on { *count + 1 } else { count.saturating_sub(1) };
                });
            }
        };
        Effect::new(move || count(wanted()));
        on_cleanup(move || count(false));
    }
}

/// The time to the next whole second or minute, so that a shown clock turns when it should.
fn until_next(now: Moment, each_second: bool) -> Duration {
    let step = if each_second { SECOND } else { 60 * SECOND };
    let into = now.timestamp_millis().rem_euclid(step.as_millis() as i64);
    step - Duration::from_millis(into as u64) + LATER
}

/// The time to a moment, if it is still to come.
fn until(now: Moment, then: Moment) -> Option<Duration> {
    Some((then - now).to_std().ok().filter(|span| !span.is_zero())? + LATER)
}
