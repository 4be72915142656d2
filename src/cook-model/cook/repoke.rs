//! How soon a piece that was poked is worth poking again.
//!
//! Every opening of the lid puts all pieces back, and where a piece hardly warms any more it is often
//! the openings that hold it: so the pause follows from how fast the piece has been seen to warm. Poked
//! again by a fixed rate, a slow pit is opened so often that it never gets to its temperature
//! (simulated cooks, tests/twin: pits of 250 F held under 200 F for hours).

use crate::forecast::PAST_BY;
use crate::history::{CoreReading, PieceHistory};
use crate::quantity::{Moment, Span, TemperatureDifference, minutes, to_minutes};

/// A piece is not worth poking again before it can be past its pull temperature: no core rises faster
/// than this in a minute (a thin breast at 300 F: simulated cooks, tests/twin), and none is trusted to
/// stay slower than the other, for the fire may pick up.
const FASTEST_RISE: TemperatureDifference = TemperatureDifference::from_f(2.0);
const SLOWEST_RISE: TemperatureDifference = TemperatureDifference::from_f(0.5);
/// How much faster than before it may rise while the lid stays shut.
const PICKS_UP: f64 = 1.25;
/// Not sooner than the one, nor withheld longer than the other, for the reading may be a slip.
const SOONEST_CHECK: Span = Span::minutes(2);
const LONGEST_PAUSE: Span = Span::minutes(10);
/// Pokes closer together than this do not tell how fast a core rises: each is a degree or two off.
const TELLS_A_RISE: Span = Span::minutes(5);

/// The time wanted for a check, but not so soon after the piece was poked that it cannot be past its
/// pull temperature.
pub(super) fn after_poke(history: &PieceHistory, wanted: Moment) -> Moment {
    history.last_poke().map_or(wanted, |poke| {
        let left = history.pull_at + PAST_BY - poke.temperature;
        let pause = minutes(left.c() / fastest_rise(history, poke).c());
        wanted.max(poke.at + pause.clamp(SOONEST_CHECK, LONGEST_PAUSE))
    })
}

/// How much a core may rise in a minute after it was poked last: about as much as it has since an
/// earlier poke, or since it went on, for its curve flattens.
fn fastest_rise(history: &PieceHistory, poke: &CoreReading) -> TemperatureDifference {
    let tells = |at: Moment| poke.at - at >= TELLS_A_RISE;
    let poked = history.pokes().rfind(|reading| tells(reading.at));
    let poked = poked.map(|reading| (reading.at, reading.temperature));
    let raw = match history.spells.as_slice() {
        [only] if tells(only.on) => Some((only.on, history.piece.start)),
        _ => None,
    };
    poked.or(raw).map_or(FASTEST_RISE, |(at, was)| {
        let risen = (poke.temperature - was).c() / to_minutes(poke.at - at);
        let rise = (PICKS_UP * risen).clamp(SLOWEST_RISE.c(), FASTEST_RISE.c());
        TemperatureDifference::from_c(rise)
    })
}
