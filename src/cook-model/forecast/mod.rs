//! What is likely to happen to each piece, and how sure that is.
//!
//! The heat model is run for a few speeds and offsets of every piece (`traces`); each reading
//! says how likely each of them is (`evidence`); the part that all pieces share is learned from all
//! (`posterior`); the weights that result give bands, chances and times (`view`, `curve`), the
//! order and the checks. Everything is summed over fixed grids: the same history gives the same
//! forecast, bit for bit. What is uncertain and how much stands, with reasons, in `prior`.

mod after_pull;
mod cells;
mod checks;
mod curve;
mod evidence;
mod normal;
mod order;
mod outcome;
mod pit_air;
mod posterior;
pub(crate) mod prior;
mod traces;
mod view;

pub use after_pull::{AfterPull, after_pull};
pub use outcome::{
    Band, Check, Forecast, PAST_BY, Peak, PieceForecast, Probability, Seating, Surprise,
};

use crate::history::{EntryId, History};
use crate::quantity::{Moment, to_seconds};
use evidence::Evidence;
use normal::Normal;
use posterior::Known;
use traces::{Setting, Traces};
use view::View;

/// What is likely to happen to every piece, as seen at `now`.
///
/// Entries after `now` are taken as given, so ask with the moment of the last or later. A piece not
/// yet on is forecast as if it went on now.
pub fn forecast(history: &History, now: Moment) -> Forecast {
    let zero = history.pieces.iter().filter_map(|piece| piece.on()).min().unwrap_or(now);
    let pit = pit_air::leg(history, zero, now);
    let setting = Setting { zero, now, pit: &pit, ambient: history.pit.ambient };
    let normal = Normal::new();
    let traces: Vec<Traces> =
        history.pieces.iter().map(|piece| Traces::new(piece, &setting)).collect();
    let learned = learn(history, &traces, zero);
    let risk = f64::from(history.check_risk_percent) / 100.0;
    let (mut pieces, mut timings, mut surprises) = (Vec::new(), Vec::new(), Vec::new());
    for (i, piece) in history.pieces.iter().enumerate() {
        let view = View {
            history: piece,
            traces: &traces[i],
            evidence: &learned[i].evidence,
            weights: &learned[i].weights,
            setting: &setting,
            normal: &normal,
            risk,
        };
        let told = view.told();
        surprises.extend(view.surprises());
        timings.extend(told.timing.map(|timing| (piece.id, timing)));
        pieces.push(told.forecast);
    }
    surprises.sort_by_key(|surprise| surprise.entry);
    let (mut order, order_certainty) = order::pull_order(&timings, &normal);
    // Pieces not expected to get there come last.
    let late = history.pieces.iter().filter(|piece| piece.off().is_none()).map(|piece| piece.id);
    let late: Vec<_> = late.filter(|id| !order.contains(id)).collect();
    order.extend(late);
    let on: Vec<_> = timings
        .iter()
        .filter(|(id, _)| history.piece(*id).is_some_and(|piece| piece.is_on()))
        .copied()
        .collect();
    let risk_z = checks::standard_deviations(&normal, risk);
    let checks = checks::plan(&on, risk_z, to_seconds(now - zero), zero);
    Forecast { at: now, pieces, order, order_certainty, checks, surprises }
}

/// What is known of one piece.
struct Learned {
    evidence: Evidence,
    /// The weight of every cell.
    weights: Vec<f64>,
}

/// What all readings say of all pieces. Where that makes some of them look like slips, the rest is
/// asked once more without them.
fn learn(history: &History, traces: &[Traces], zero: Moment) -> Vec<Learned> {
    let learned = learn_without(history, traces, zero, &[]);
    let slips: Vec<EntryId> = learned.iter().flat_map(Learned::slips).collect();
    if slips.is_empty() { learned } else { learn_without(history, traces, zero, &slips) }
}

fn learn_without(
    history: &History,
    traces: &[Traces],
    zero: Moment,
    slips: &[EntryId],
) -> Vec<Learned> {
    let evidence: Vec<Evidence> = history
        .pieces
        .iter()
        .zip(traces)
        .map(|(piece, traces)| Evidence::of(piece, traces, &history.tolerances, zero, slips))
        .collect();
    let known: Vec<Known<'_>> = history
        .pieces
        .iter()
        .zip(&evidence)
        .map(|(piece, evidence)| Known {
            log: &evidence.log,
            own_speed: prior::own_speed(&piece.piece),
        })
        .collect();
    let weights = posterior::combine(&known);
    evidence
        .into_iter()
        .zip(weights)
        .map(|(evidence, weights)| Learned { evidence, weights })
        .collect()
}

impl Learned {
    /// The readings more likely slips than not.
    fn slips(&self) -> impl Iterator<Item = EntryId> {
        self.evidence
            .seen
            .iter()
            .filter(|seen| seen.slip_chance_over(&self.weights) > 0.5)
            .map(|seen| seen.reading.entry)
    }
}
