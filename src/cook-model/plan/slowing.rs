//! A piece that is slower than forecast by its own readings.
//!
//! Near the end a core may hardly warm for half an hour: it sweats as much as it is heated. The heat
//! model does not foresee that, and forecasts such a piece to be done within minutes, again and again.
//! Its own readings tell: a straight line through two of them is no worse a forecast there
//! (tests/twin/results/study.md), and rather early, for the curve flattens.

use crate::forecast::{Band, Forecast};
use crate::history::{CoreReading, PieceHistory, PitHistory};
use crate::quantity::{Moment, Span, Temperature, TemperatureDifference, minutes, to_minutes};

/// Readings closer together than this do not tell how fast a core rises: each is a degree or two off.
const TELLS_A_RISE: Span = Span::minutes(8);
/// No core is taken to rise less than this in a minute: readings are off by as much in ten.
const SLOWEST_RISE: TemperatureDifference = TemperatureDifference::from_f(0.1);
/// A pit set anew at the moment of a reading was set after it.
const MOMENT: Span = Span::seconds(1);

/// When a straight line through its last instant-reads brings a piece to its pull temperature, if it
/// was read twice and is not there yet. Where the pit was set anew since, it rises as its distance from
/// the pit tells (Newton's law of cooling).
pub(super) fn line(piece: &PieceHistory, pit: &PitHistory, forecast: &Forecast) -> Option<Moment> {
    let fits = |reading: &&CoreReading| {
        !forecast.surprises.iter().any(|surprise| surprise.entry == reading.entry)
    };
    let last = piece.pokes().rfind(fits)?;
    let tells = |reading: &&CoreReading| last.at - reading.at >= TELLS_A_RISE;
    let before = piece.pokes().filter(fits).rfind(tells)?;
    let left = (piece.pull_at - last.temperature).c();
    if left <= 0.0 {
        return None;
    }
    let risen = (last.temperature - before.temperature).c() / to_minutes(last.at - before.at);
    let above = |pit: Temperature| (pit - last.temperature).c().max(1.0);
    let rise = risen.max(SLOWEST_RISE.c()) * above(pit.target) / above(pit.aim(last.at - MOMENT));
    Some(last.at + minutes(left / rise))
}

/// A window, the one foreseen or that of a line through its readings where that is later; nothing can
/// come before `soonest`. All in s.
pub(super) fn slowed(
    foreseen: Option<Band<f64>>,
    line: Option<f64>,
    soonest: f64,
) -> Option<Band<f64>> {
    let Some(middle) = line.filter(|line| foreseen.is_none_or(|window| window.middle < *line))
    else {
        return foreseen;
    };
    let low = foreseen.map_or(soonest, |window| window.low);
    // The line may be as late as it may be early.
    let mirrored = middle + (middle - low);
    let high = foreseen.map_or(mirrored, |window| window.high.max(mirrored));
    Some(Band { low, middle, high })
}
