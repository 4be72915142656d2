//! What is to be done with pieces off the pit: cover, prove with few pokes, keep, serve.

use super::gather::ONE_TRIP;
use super::{Act, Duty, Why};
use crate::cook::{SECOND_PLACE_WITHIN, Seen, Stage};
use crate::history::{CoreReading, PieceHistory};
use crate::quantity::{Moment, Span};
use crate::safety::{HOT, ProofRule, SecondPlace, Shortfall, hold_progress, shortfall};

/// A core that was just read is worth another reading no sooner than this.
const BETWEEN_TRIES: Span = Span::minutes(3);
/// So many readings at rest tell whether it will be proved: each poke lets heat and juice out.
const TRIES: usize = 2;
/// What is ready so much before it is wanted is kept hot rather than left under its foil (common
/// practice, no source).
const EARLY: Span = Span::minutes(20);
/// What is kept hot is read again after this (common practice, no source).
const READ_AGAIN: Span = Span::minutes(45);
/// What was found too cold to keep is warm after this, or it will not be (common practice, no source).
const WARMED_BY: Span = Span::minutes(20);

/// What is to be done with a piece that no reading proves yet.
pub(super) fn unproved(seen: &Seen, history: &PieceHistory) -> Vec<Duty> {
    let Some(spell) = history.spells.last() else { return Vec::new() };
    let Some(off) = spell.off else { return Vec::new() };
    let mut all = prove(seen, history, off);
    // What goes back is not covered first.
    let back = all.iter().filter(|duty| duty.act == Act::PutBack).map(|duty| duty.from).min();
    all.extend(cover(history, back));
    all
}

/// To cover what rests uncovered, unless its rest ends at once.
fn cover(history: &PieceHistory, ends: Option<Moment>) -> Option<Duty> {
    let spell = history.spells.last()?;
    let off = spell.off?;
    let cover = Duty::of(Act::Cover, vec![history.id], off, Why::Usual);
    let cover = Duty { until: ends, ..cover };
    (spell.covered.is_none() && !cover.is_empty()).then_some(cover)
}

/// How to prove it, or that it must go back.
fn prove(seen: &Seen, history: &PieceHistory, off: Moment) -> Vec<Duty> {
    let (state, rule) = (&seen.state, seen.state.settings.proof_rule);
    let piece = || vec![history.id];
    if let Some(reading) = lacks_a_place(seen, history) {
        let why = Why::Reading { reading: reading.entry, shown: reading.temperature };
        let told = SecondPlace::after(reading.for_proof, rule);
        let act = Act::TrySecondPlace { reading: reading.entry, told };
        let lapses = reading.at + SECOND_PLACE_WITHIN;
        let second = Duty { until: Some(lapses), ..Duty::of(act, piece(), reading.at, why) };
        // Too late for a second place, the piece is read anew.
        let anew = Duty::of(Act::Prove, piece(), lapses, Why::Usual);
        return vec![second, anew];
    }
    if let ProofRule::Held { fat } = rule
        && let Some(hold) = hold_progress(&state.history, history, fat, state.doubted())
    {
        let due = hold.complete_at.min(hold.read_by);
        return vec![Duty::of(Act::Prove, piece(), due, Why::Usual)];
    }
    let Some(peak) = seen.piece_forecast(history.id).and_then(|piece| piece.peak) else {
        return Vec::new();
    };
    let tries: Vec<&CoreReading> = history.pokes().filter(|reading| reading.at > off).collect();
    let can_prove = peak.temperature.high >= rule.instant();
    let why = Why::Peak { temperature: peak.temperature.middle };
    let (act, due) = match tries.last() {
        // What was called off is read at rest before it goes back: the call foresaw that it would do.
        None if was_called_off(history, off) => (Act::Prove, peak.at.max(off + BETWEEN_TRIES)),
        None if can_prove => (Act::Prove, peak.at.max(off)),
        None => (Act::PutBack, off),
        // It is asked about; whatever it says decides.
        Some(last) if state.is_in_doubt(last) => return Vec::new(),
        Some(last) if last.for_proof >= rule.instant() => (Act::Prove, last.at + BETWEEN_TRIES),
        Some(last) if can_prove && tries.len() < TRIES && peak.at >= last.at + BETWEEN_TRIES => {
            (Act::Prove, peak.at)
        }
        Some(last) => (Act::PutBack, last.at),
    };
    vec![Duty::of(act, piece(), due, why)]
}

/// Whether it was read at its pull temperature before it came off.
fn was_called_off(history: &PieceHistory, off: Moment) -> bool {
    let last = history.pokes().rfind(|poke| poke.at <= off);
    last.is_some_and(|poke| poke.temperature >= history.pull_at)
}

/// The latest reading, if all it lacks is a second place.
fn lacks_a_place<'a>(seen: &Seen, history: &'a PieceHistory) -> Option<&'a CoreReading> {
    let (state, rule) = (&seen.state, seen.state.settings.proof_rule);
    history.pokes().next_back().filter(|reading| {
        shortfall(&state.history, history, rule, state.doubted(), reading)
            == Some(Shortfall::OnePlace)
    })
}

/// What is to be done with a piece that is proved.
pub(super) fn proved(seen: &Seen, history: &PieceHistory) -> Vec<Duty> {
    let Some(rested) = rested(seen, history) else { return Vec::new() };
    let piece = vec![history.id];
    let mut all: Vec<Duty> = cover(history, Some(rested)).into_iter().collect();
    if !history.tonight && seen.state.settings.dinner.is_some() {
        all.push(Duty::of(Act::Pack, piece, rested, Why::Usual));
        return all;
    }
    let Some(all_rested) = all_rested(seen) else { return all };
    let habits = &seen.state.settings.habits;
    let wanted = seen.state.settings.dinner.map(|dinner| dinner - habits.carving);
    let serve = wanted.map_or(all_rested, |wanted| wanted.max(all_rested));
    all.push(Duty::of(Act::Serve, piece.clone(), serve, Why::Usual));
    if serve - all_rested > EARLY {
        let keep = Duty::of(Act::KeepHot, piece, keep_again(seen, rested), Why::Usual);
        all.extend(Some(Duty { until: Some(serve), ..keep }).filter(|keep| !keep.is_empty()));
    }
    all
}

/// When what is kept hot is to be read again: one of the pieces kept tells of all, also one whose own rest
/// ends a moment later. What was found too cold is warmed, and read sooner; its limit out of the cold runs on.
fn keep_again(seen: &Seen, rested: Moment) -> Moment {
    let mut kept: Option<&CoreReading> = None;
    for (standing, other) in seen.state.each_piece() {
        let since = self::rested(seen, other).filter(|_| standing.stage == Stage::Proved);
        let since = since.map(|since| since - ONE_TRIP);
        let read = other.pokes().rfind(|reading| since.is_some_and(|since| reading.at > since));
        kept = kept.into_iter().chain(read).max_by_key(|reading| (reading.at, reading.entry));
    }
    kept.map_or(rested, |kept| {
        let again = kept.at + if kept.for_proof >= HOT { READ_AGAIN } else { WARMED_BY };
        again.max(rested)
    })
}

/// When a piece off the pit has rested: as long as the cook lets it, and past its peak.
fn rested(seen: &Seen, history: &PieceHistory) -> Option<Moment> {
    let rested = history.off()? + seen.state.settings.habits.rest;
    let peak = seen.piece_forecast(history.id).and_then(|piece| piece.peak);
    Some(peak.map_or(rested, |peak| rested.max(peak.at)))
}

/// When all that people eat together has rested; none while some of it is not proved.
fn all_rested(seen: &Seen) -> Option<Moment> {
    let dinner = seen.state.settings.dinner.is_some();
    let eaten = seen.state.each_piece().filter(|(standing, history)| {
        standing.stage != Stage::Packed && (history.tonight || !dinner)
    });
    let rested = eaten.map(|(standing, history)| {
        rested(seen, history).filter(|_| standing.stage == Stage::Proved)
    });
    rested.collect::<Option<Vec<_>>>()?.into_iter().max()
}
