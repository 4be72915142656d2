//! The pit's air over time, as far as it is known: readings, the target, and the lid.

use crate::heat::{Leg, LidResponse, Surface};
use crate::history::{History, Instrument, LidOpening};
use crate::quantity::{Moment, Span, Temperature, minutes};

/// The time over which a fire forgets that it burned hot or low (common practice, no source).
const FORGETS: Span = Span::minutes(30);
/// How far back and ahead of the readings the air is laid out.
const KNOT_MINUTES: [f64; 5] = [10.0, 20.0, 35.0, 60.0, 120.0];
/// The target counts as much as so many readings in the level a fire tends to.
const TARGET_COUNTS: f64 = 2.0;
/// An opening that was not told but must have been: to poke a piece or to move it.
const UNTOLD: Span = Span::seconds(40);
/// Things done this close together were done with the lid open once.
const ONE_OPENING: Span = Span::minutes(3);
/// While the air comes back after an opening the dial says nothing of the fire.
const LID_DISTURBS: Span = Span::minutes(6);

/// The openings told, and those that readings and pulls imply, in order of time.
pub(super) fn openings(history: &History) -> Vec<LidOpening> {
    let mut openings = history.pit.lid.clone();
    let mut done: Vec<Moment> = history
        .pieces
        .iter()
        .flat_map(|piece| {
            let on = |at: Moment| {
                piece.spells.iter().any(|s| s.on <= at && s.off.is_none_or(|off| at <= off))
            };
            let poked = piece
                .readings
                .iter()
                .filter(move |r| r.instrument == Instrument::InstantRead && on(r.at))
                .map(|r| r.at);
            poked.chain(piece.spells.iter().filter_map(|spell| spell.off))
        })
        .collect();
    done.sort();
    for at in done {
        let told = openings
            .iter()
            .any(|o| o.at - ONE_OPENING <= at && at <= o.at + o.lasted + ONE_OPENING);
        if !told {
            openings.push(LidOpening { at, lasted: UNTOLD });
        }
    }
    openings.sort_by_key(|opening| opening.at);
    openings
}

/// The pit as a leg of a piece's surroundings; spans count from `zero`.
pub(super) fn leg(history: &History, zero: Moment) -> Leg {
    let openings = openings(history);
    let disturbed =
        |at: Moment| openings.iter().any(|o| o.at < at && at < o.at + o.lasted + LID_DISTURBS);
    let mut read: Vec<(Moment, f64)> = history
        .pit
        .readings
        .iter()
        .filter(|reading| !disturbed(reading.at))
        .map(|reading| (reading.at, reading.temperature.c()))
        .collect();
    read.sort_by_key(|(at, _)| *at);
    let air = laid_out(&read, history.pit.target.c());
    let knots: Vec<(Span, Temperature)> =
        air.into_iter().map(|(at, c)| (at - zero, Temperature::from_c(c))).collect();
    let surface = Surface::pit(history.pit.kind);
    let mut leg = Leg::pit(surface, &knots, history.pit.target);
    for opening in openings {
        leg = leg.lid_open(opening.at - zero, opening.lasted, &LidResponse::default());
    }
    leg
}

/// The air at and around the readings: straight between them, and before the first and after the
/// last forgetting them towards the level of target and readings together.
fn laid_out(read: &[(Moment, f64)], target: f64) -> Vec<(Moment, f64)> {
    let (Some(&(first, first_c)), Some(&(last, last_c))) = (read.first(), read.last()) else {
        return Vec::new();
    };
    let sum: f64 = read.iter().map(|(_, c)| c).sum();
    let level = (sum + TARGET_COUNTS * target) / (read.len() as f64 + TARGET_COUNTS);
    let kept = |after: f64| libm::exp(-after / crate::quantity::to_minutes(FORGETS));
    let mut air: Vec<(Moment, f64)> = KNOT_MINUTES
        .iter()
        .rev()
        .map(|&m| (first - minutes(m), level + (first_c - level) * kept(m)))
        .collect();
    air.extend_from_slice(read);
    air.extend(
        KNOT_MINUTES.iter().map(|&m| (last + minutes(m), level + (last_c - level) * kept(m))),
    );
    air
}
