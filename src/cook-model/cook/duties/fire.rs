//! What the fire asks for: to be read, to be fed, to be mended.

use super::{Act, Duty, Why};
use crate::cook::{Chore, CookState, Seen, Stage};
use crate::dial::worth_reading_from;
use crate::history::{CoreReading, History, PieceHistory};
use crate::plan::{Drift, off_target};
use crate::quantity::{Moment, Span, TemperatureDifference};

/// A pit not read for this long is worth a look (common practice, no source).
const READ_EVERY: Span = Span::minutes(30);
/// One that was off its setting is read again after this (common practice, no source).
pub(super) const READ_AGAIN: Span = Span::minutes(10);
/// On a good fire no core cools: two readings of one at different times differ the other way, but for what
/// two pokes of one spot may (common practice, no source).
const COOLS: TemperatureDifference = TemperatureDifference::from_f(4.0);
/// Unless the pit was read this shortly before.
const LOOKED_AT_WITHIN: Span = Span::minutes(4);
/// What is wrong with the fire is the first thing to do for so long after it was read.
const TELLS_FOR: Span = Span::minutes(40);

pub(super) fn duties(seen: &Seen) -> Vec<Duty> {
    let mut all = Vec::new();
    all.extend(pit(seen));
    all.extend(feed(&seen.state));
    all
}

/// To see to the pit, or to read it, while something is on it.
fn pit(seen: &Seen) -> Option<Duty> {
    let pit = &seen.state.history.pit;
    let on = seen.state.history.pieces.iter().filter(|piece| piece.is_on());
    let first_on = on.filter_map(PieceHistory::on).min()?;
    let last = pit.readings.last().map_or(first_on, |reading| reading.at.max(first_on));
    let of = |act, from, why| Some(Duty::of(act, Vec::new(), from, why));
    let again = |from: Moment| worth_reading_from(pit).map_or(from, |worth| from.max(worth));
    match off_target(pit, seen.at) {
        Some(off) if matches!(off.drift, Drift::Low | Drift::High) => {
            let mend = of(Act::MendFire, last, Why::Pit(off))?;
            Some(Duty { until: Some(last + TELLS_FOR), ..mend })
        }
        Some(off) => of(Act::ReadPit, again(last + READ_AGAIN), Why::Pit(off)),
        None => {
            let usual = last + READ_EVERY;
            let cools = cools_since(&seen.state.history, last + LOOKED_AT_WITHIN);
            of(Act::ReadPit, again(cools.map_or(usual, |at| at.min(usual))), Why::Usual)
        }
    }
}

/// Whether the pit is to be read by a moment.
pub(super) fn is_to_be_read(seen: &Seen, by: Moment) -> bool {
    pit(seen).is_some_and(|duty| duty.act == Act::ReadPit && duty.from <= by)
}

/// When it was first seen since a moment that a core cools on the pit.
fn cools_since(history: &History, since: Moment) -> Option<Moment> {
    let on = history.pieces.iter().filter(|piece| piece.is_on());
    let cooler = on.flat_map(|piece| {
        let warmer = |poke: &&CoreReading| {
            piece
                .pokes()
                .any(|other| other.at < poke.at && other.temperature - poke.temperature > COOLS)
        };
        piece.pokes().filter(move |poke| poke.at > since).find(warmer).map(|poke| poke.at)
    });
    cooler.min()
}

/// Whether the pit is too cold and not coming back, by its last reading.
pub(super) fn is_down(seen: &Seen) -> bool {
    off_target(&seen.state.history.pit, seen.at).is_some_and(|off| off.drift == Drift::Low)
}

/// To feed a fire that is fed, while something is still to be cooked. One that was not said to be lit
/// was lit before the first piece went on.
fn feed(state: &CookState) -> Option<Duty> {
    let every = state.settings.habits.fire.fed_every(state.settings.pit_kind)?;
    let needed = state.pieces.iter().any(|piece| matches!(piece.stage, Stage::Raw | Stage::On));
    if !needed {
        return None;
    }
    let lit = state.done(Chore::LightFire).max(state.history.first_on());
    let fed: Moment = state.done(Chore::FeedFire).max(lit)?;
    Some(Duty::of(Act::Chore { chore: Chore::FeedFire }, Vec::new(), fed + every, Why::Usual))
}

/// While the pit is too cold no lid is opened over pieces that cannot be ready.
pub(super) fn spare_pointless_checks(all: &mut [Duty]) {
    let mended = all.iter().find_map(|duty| match &duty.why {
        Why::Pit(off) if duty.act == Act::MendFire && off.drift == Drift::Low => duty.until,
        _ => None,
    });
    let Some(mended) = mended else { return };
    for check in all.iter_mut().filter(|duty| duty.act == Act::Check) {
        // A piece that is past its pull by then is ready, whatever the fire does.
        let ready = matches!(check.why, Why::Forecast { past: Some(past), .. } if past <= mended);
        if !ready {
            check.from = check.from.max(mended);
        }
    }
}
