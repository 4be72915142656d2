//! What safety's limits ask for: to be quick before one runs out, and to throw away what is past it.

use super::{Act, Duty, Why};
use crate::cook::{Seen, Stage};
use crate::forecast::Forecast;
use crate::piece::PieceId;
use crate::quantity::Moment;
use crate::safety::{Clock, ClockKind};

pub(super) fn duties(seen: &Seen) -> Vec<Duty> {
    let nothing = Forecast::nothing(seen.at);
    let clocks = seen.state.clocks(seen.forecast.as_ref().unwrap_or(&nothing));
    let all = clocks.into_iter().flat_map(|(piece, clock)| of_clock(seen, piece, clock));
    let (run_outs, mut before): (Vec<Duty>, Vec<Duty>) =
        all.partition(|duty| duty.act == Act::Discard);
    // The clock that runs out first stands first: after that no other asks anything of the piece.
    let mut first: Vec<Duty> = Vec::new();
    for run_out in run_outs {
        if !first.iter().any(|earlier| earlier.pieces == run_out.pieces) {
            first.push(run_out);
        }
    }
    end_what_runs_out(&first, &mut before);
    before.extend(first);
    before
}

fn of_clock(seen: &Seen, piece: PieceId, clock: Clock) -> Vec<Duty> {
    let Some((known, history)) = seen.state.piece(piece) else { return Vec::new() };
    // What was thrown away asks for nothing more; that a limit ran out stays with the piece.
    if history.discarded {
        return Vec::new();
    }
    let before = match clock.kind {
        // What is packed is in nobody's hands any more; that it ran out is still said.
        ClockKind::WarmUp => (known.stage != Stage::Packed).then_some(Act::HurryUp),
        ClockKind::RawOut => (known.stage == Stage::Raw).then_some(Act::PutAway),
        // What no reading proves must be proved or put back: cold it would be no better.
        ClockKind::ToFridge => (known.stage == Stage::Proved).then_some(Act::Chill),
        ClockKind::CoolTo70 | ClockKind::CoolTo41 => return Vec::new(),
    };
    let [warning, deadline] = clock.calls();
    let of = |act, from| Duty::of(act, vec![piece], from, Why::Limit(clock));
    let before = before.map(|act| of(act, warning));
    before.into_iter().chain([of(Act::Discard, deadline)]).collect()
}

/// Lets what is to be done with a piece end when its limit runs out; what is to be done with several
/// goes on with the others.
pub(super) fn end_what_runs_out(limits: &[Duty], all: &mut Vec<Duty>) {
    let run_outs = limits.iter().filter(|duty| duty.act == Act::Discard);
    let run_outs: Vec<(PieceId, Moment)> =
        run_outs.flat_map(|duty| duty.pieces.iter().map(|piece| (*piece, duty.from))).collect();
    for (piece, runs_out) in run_outs {
        let mut goes_on = Vec::new();
        for duty in all.iter_mut().filter(|duty| duty.pieces.contains(&piece)) {
            if duty.is_over(runs_out) {
                continue;
            }
            let others: Vec<PieceId> =
                duty.pieces.iter().copied().filter(|other| *other != piece).collect();
            if !others.is_empty() {
                let from = duty.from.max(runs_out);
                goes_on.push(Duty { pieces: others, from, ..duty.clone() });
            }
            duty.until = Some(runs_out);
        }
        all.extend(goes_on);
        all.retain(|duty| !duty.is_empty());
    }
}
