//! When to open the lid, and which pieces to read then.
//!
//! An opening costs all pieces two or three minutes, a reading at it seconds: so whoever is due, and
//! whoever is near, is read at one opening, and what they show sets the next. Where a piece hardly
//! warms it is often the openings that hold it: so the pause after a poke follows from how fast the
//! piece has been seen to warm (simulated cooks, tests/twin: pits of 250 F held under 200 F for hours).

use super::lateness;
use super::normal::Normal;
use super::outcome::{Check, past};
use super::view::Run;
use crate::history::{CoreReading, PieceHistory};
use crate::piece::PieceId;
use crate::quantity::{
    Moment, Span, TemperatureDifference, minutes, seconds, to_minutes, to_seconds,
};

/// Pieces due within this time of the first are read at the same opening.
const ONE_OPENING: Span = Span::minutes(6);
/// And those that come to their pull within this time of it: what they show then fixes their own time
/// (chosen with the study of conduct, tests/twin).
const NEAR_ITS_PULL: Span = Span::minutes(18);
/// How well a pull time is known just after a reading, as a standard deviation, s.
const AFTER_READING: f64 = 75.0;
/// Before the next call the lid stays down at least as long as it was up, and it was up so long for each
/// piece read, s: who looks too often does not cook (common practice, no source). In the study of conduct
/// openings, taps and dinners in time are better for it (tests/twin); twice as long pulls hotter.
const READING_TAKES: f64 = 12.0;
/// Besides what is due no more pieces are read at an opening than so many in all: a minute of open lid.
const AT_ONE_OPENING: usize = 6;

/// Nobody is there at once: from a call to the first reading people take about so long, and that much
/// more or less as a standard deviation (common practice, no source: half a minute to the pit, up to
/// three more, the lid).
pub(crate) const TO_ARRIVE: Span = Span::seconds(150);
pub(super) const ARRIVAL_SPREAD: Span = Span::seconds(52);

/// A piece that is not likely to get to its pull temperature is looked at so long after it went on
/// or was poked: something is amiss (common practice, no source).
const LOOK_EVERY: Span = Span::minutes(30);
/// One that was poked is looked at again at the latest when a core that rises by this much a minute
/// would be past its pull temperature, whatever the forecast says of it: where it sweats as much as
/// it is heated, forecasts are at their worst.
const SLOW_RISE: TemperatureDifference = TemperatureDifference::from_f(0.5);
/// It rises at least this part as fast as between its last two pokes, for its curve flattens.
const STILL_RISES: f64 = 0.85;
/// But not sooner than this after it was poked.
const SOONEST_LOOK: Span = Span::minutes(4);

/// A piece is not worth poking again before it can be past its pull temperature: no core rises faster
/// than this in a minute (a thin breast at 300 F: simulated cooks, tests/twin), and none is trusted to
/// stay slower than the other, for the fire may pick up.
const FASTEST_RISE: TemperatureDifference = TemperatureDifference::from_f(2.0);
const SLOWEST_RISE: TemperatureDifference = TemperatureDifference::from_f(0.25);
/// How much faster than before it may rise while the lid stays shut.
const PICKS_UP: f64 = 1.25;
/// Not sooner than the one, nor withheld longer than the other, for the reading may be a slip.
const SHORTEST_PAUSE: Span = Span::minutes(2);
const LONGEST_PAUSE: Span = Span::minutes(15);
/// One that went on so long ago and was never poked is read at any opening: where the fire was out, or the
/// pit is not what it seemed, nothing else tells (common practice, no source: breasts take an hour).
const OVERDUE: Span = Span::minutes(75);
/// Whoever is still at the pit does not poke a piece again before this.
const STANDS_BY: Span = Span::seconds(50);
/// Pokes closer together than this do not tell how fast a core rises: each is a degree or two off.
const TELLS_A_RISE: Span = Span::minutes(5);

/// When a piece is looked at whatever is forecast of it.
pub(super) struct Looks {
    /// If it is not likely to get to its pull temperature.
    pub at_least: Moment,
    /// If it was poked since it went on.
    pub after_poke: Option<Moment>,
    /// Not before this: it was poked, and cannot be past its pull temperature yet.
    pub not_before: Option<Moment>,
}

/// When a piece is looked at whatever is forecast of it; one that is raw as if it went on now.
pub(super) fn looks(history: &PieceHistory, now: Moment) -> Looks {
    let on = history.spells.last().map_or(now, |spell| spell.on);
    let poked = history.last_poke();
    let left = |poked: &CoreReading| past(history.pull_at) - poked.temperature;
    let after_poke = poked.map(|poked| {
        let rise = risen_since_poke(history, poked)
            .map_or(SLOW_RISE.c(), |rise| (STILL_RISES * rise).max(SLOWEST_RISE.c()));
        let look = minutes(left(poked).c() / rise);
        poked.at + (look.max(SOONEST_LOOK) - TO_ARRIVE).min(LOOK_EVERY)
    });
    let not_before = poked.map(|poked| {
        let pause = minutes(left(poked).c() / fastest_rise(history, poked).c());
        let pause = pause.clamp(SHORTEST_PAUSE, LONGEST_PAUSE);
        poked.at + (pause - TO_ARRIVE).max(STANDS_BY)
    });
    Looks { at_least: poked.map_or(on, |poked| poked.at) + LOOK_EVERY, after_poke, not_before }
}

/// How fast a core rose from an earlier poke to this one, K a minute, if that tells.
fn risen_since_poke(history: &PieceHistory, poke: &CoreReading) -> Option<f64> {
    let before = history.pokes().rfind(|reading| poke.at - reading.at >= TELLS_A_RISE)?;
    Some((poke.temperature - before.temperature).c() / to_minutes(poke.at - before.at))
}

/// How much a core may rise in a minute after it was poked last: about as much as it has since an
/// earlier poke, or since it went on, for its curve flattens.
fn fastest_rise(history: &PieceHistory, poke: &CoreReading) -> TemperatureDifference {
    let raw = || match history.spells.as_slice() {
        [only] if poke.at - only.on >= TELLS_A_RISE => {
            let risen = (poke.temperature - history.piece.start).c();
            Some(risen / to_minutes(poke.at - only.on))
        }
        _ => None,
    };
    risen_since_poke(history, poke).or_else(raw).map_or(FASTEST_RISE, |risen| {
        let rise = (PICKS_UP * risen).clamp(SLOWEST_RISE.c(), FASTEST_RISE.c());
        TemperatureDifference::from_c(rise)
    })
}

/// A piece still on the pit.
#[derive(Clone, Copy)]
struct Waiting {
    piece: PieceId,
    /// Middle and spread of its pull time.
    pull: (f64, f64),
    grace: f64,
    due: f64,
    on: f64,
    /// When it was last poked, if that was in this spell.
    poked: Option<f64>,
}

impl Waiting {
    /// A piece not likely to get to its pull temperature is looked at once: what then, nobody knows.
    fn new(piece: PieceId, run: &Run) -> Self {
        let Run { check_by: due, on, poked, .. } = *run;
        let (pull, grace) = run
            .timing
            .map_or(((f64::NEG_INFINITY, 0.0), 0.0), |timing| (timing.pull, timing.grace));
        Self { piece, pull, grace, due, on, poked }
    }

    /// Whether it is worth reading at an opening.
    fn is_read_at(&self, opening: f64) -> bool {
        let called = opening - to_seconds(TO_ARRIVE);
        let fresh = self.poked.is_some_and(|poked| opening - poked < to_seconds(TELLS_A_RISE));
        let is_due = self.due <= called + to_seconds(ONE_OPENING);
        let is_near = self.pull.0 <= opening + to_seconds(NEAR_ITS_PULL);
        let is_overdue = self.poked.is_none() && opening - self.on > to_seconds(OVERDUE);
        (is_due || is_near || is_overdue) && (!fresh || self.due <= called)
    }

    /// What a reading as expected leaves: how well its time is known then, and when it is due next.
    fn read_at(&mut self, opening: f64, risk_z: f64) {
        let to_go = (self.pull.0 - opening).max(0.0);
        self.pull.1 = self.pull.1.min(libm::hypot(AFTER_READING, lateness::grows(to_go)));
        let by_risk = self.pull.0 + self.grace - risk_z * self.pull.1;
        self.due = by_risk.max(self.pull.0) - to_seconds(TO_ARRIVE);
        self.poked = Some(opening);
    }
}

/// The calls to come, the pieces' runs given; nothing before `now`, s since `zero`. The lid goes up
/// [`TO_ARRIVE`] after each.
///
/// Each opening is as late as the piece due first allows. Pieces due soon after, and those that come
/// to their pull soon, are read too. A piece that is then expected to be ready is pulled; of the others
/// the next due time follows from how well a reading fixes the pull time.
pub(super) fn plan(runs: &[(PieceId, &Run)], risk_z: f64, now: f64, zero: Moment) -> Vec<Check> {
    let mut waiting: Vec<Waiting> =
        runs.iter().map(|(piece, run)| Waiting::new(*piece, run)).collect();
    waiting.sort_by(|a, b| a.pull.0.total_cmp(&b.pull.0).then(a.piece.cmp(&b.piece)));
    let mut checks = Vec::new();
    let poked = || waiting.iter().filter_map(|w| w.poked);
    let last = poked().fold(f64::NEG_INFINITY, f64::max);
    let at_it = poked().filter(|at| last - at < to_seconds(TELLS_A_RISE)).count();
    let mut earliest = now.max(last + READING_TAKES * at_it as f64);
    // Every opening pulls a piece or narrows one that was not narrow: this is more than enough.
    for _ in 0..3 * runs.len() {
        let Some(first) = waiting.iter().map(|w| w.due).min_by(f64::total_cmp) else { break };
        let at = first.max(earliest);
        let opening = at + to_seconds(TO_ARRIVE);
        let read = read_at(&waiting, opening, at);
        checks.push(Check {
            at: zero + seconds(at),
            pieces: read.iter().map(|i| waiting[*i].piece).collect(),
        });
        read.iter().for_each(|i| waiting[*i].read_at(opening, risk_z));
        waiting.retain(|w| w.pull.0 > opening);
        earliest = opening + READING_TAKES * read.len() as f64;
    }
    checks
}

/// The places of those to be read at an opening that is called for `at`: whoever is due, and the first to
/// come to their pull of those worth reading then.
fn read_at(waiting: &[Waiting], opening: f64, at: f64) -> Vec<usize> {
    let is_due = |i: &usize| waiting[*i].due <= at;
    let mut read: Vec<usize> =
        (0..waiting.len()).filter(|i| waiting[*i].is_read_at(opening)).collect();
    let mut others = AT_ONE_OPENING.saturating_sub(read.iter().filter(|i| is_due(i)).count());
    read.retain(|i| {
        let taken = is_due(i) || others > 0;
        others -= usize::from(taken && !is_due(i));
        taken
    });
    read
}

/// How many standard deviations below the middle a chance lies.
pub(super) fn standard_deviations(normal: &Normal, chance: f64) -> f64 {
    let (mut low, mut high) = (-6.0, 6.0);
    for _ in 0..40 {
        let middle = 0.5 * (low + high);
        if normal.below(-middle) > chance {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}
