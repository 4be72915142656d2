//! What is likely to happen to each piece, and how sure that is.
//!
//! The heat model is run for a few speeds and offsets of every piece (`traces`); each reading
//! says how likely each of them is (`evidence`), and how late the meat is by then (`lateness`); the
//! part that all pieces share is learned from all (`posterior`); the weights that result give bands,
//! chances and times (`view`, `curve`), the order, the checks, and the readings to ask about
//! (`doubts`). Everything is summed over fixed grids: the same history gives the same forecast, bit
//! for bit. What is uncertain and how much stands, with reasons, in `prior`.
//!
#![doc = include_str!("model.md")]

mod bounds;
mod cells;
mod checks;
mod curve;
mod doubts;
mod evidence;
mod lateness;
mod normal;
mod order;
mod outcome;
mod over_cells;
mod pit_air;
mod points;
mod posterior;
pub(crate) mod prior;
mod rests;
mod seat;
mod shown;
mod sorted;
mod traces;
mod view;
mod whole;

pub(crate) use checks::TO_ARRIVE;
pub use outcome::{
    Band, Check, Forecast, Peak, PieceForecast, Probability, Seating, Surprise, past,
};
pub use whole::forecast;

use crate::history::History;
use crate::piece::Piece;
use crate::quantity::Moment;
use doubts::Judged;
use evidence::{Evidence, Given};
use normal::Normal;
use posterior::{Joint, Known};
use sorted::{Misfit, Sorted};
use traces::Traces;

/// What is known of every piece, in the order of the history.
struct Learned {
    evidence: Vec<Evidence>,
    /// The weight of every cell.
    weights: Vec<Vec<f64>>,
    joint: Joint,
    /// What hot readings are judged by, if there are any.
    judged: Option<Judged>,
}

/// What all readings say of all pieces. Readings that do not fit are sorted, and all asked again.
fn learn(history: &History, traces: &[Traces], zero: Moment, normal: &Normal) -> Learned {
    let openings = pit_air::openings(history);
    let asked = |sorted: &Sorted| {
        let tolerances = &history.tolerances;
        Learned::given(history, traces, &Given { zero, tolerances, openings: &openings, sorted })
    };
    let learned = asked(&Sorted::default());
    let sorted = Sorted::of(&learned.misfits());
    let mut learned = if sorted.is_empty() { learned } else { asked(&sorted) };
    learned.judged =
        Judged::of(&learned.evidence, history.proof_rule, normal, |logs| joint_of(history, logs));
    learned
}

impl Learned {
    fn given(history: &History, traces: &[Traces], given: &Given<'_>) -> Self {
        let pieces = history.pieces.iter().zip(traces);
        let evidence: Vec<Evidence> =
            pieces.map(|(piece, traces)| Evidence::of(piece, traces, given)).collect();
        let logs: Vec<&[f64]> = evidence.iter().map(|own| own.log.as_slice()).collect();
        let joint = joint_of(history, &logs);
        let weights = (0..evidence.len()).map(|piece| joint.weights(piece)).collect();
        Self { evidence, weights, joint, judged: None }
    }

    /// By piece, the readings that do not fit.
    fn misfits(&self) -> Vec<Vec<Misfit>> {
        let pieces = self.evidence.iter().zip(&self.weights);
        pieces.map(|(evidence, weights)| evidence.misfits(weights)).collect()
    }
}

/// What is known of all pieces together, by the ln of the likelihood of every cell of each.
fn joint_of(history: &History, logs: &[impl AsRef<[f64]>]) -> Joint {
    let raw: Vec<&Piece> = history.pieces.iter().map(|piece| &piece.piece).collect();
    let known: Vec<Known<'_>> = raw
        .iter()
        .zip(prior::own_means(&raw))
        .zip(logs)
        .map(|((piece, mean), log)| Known {
            log: log.as_ref(),
            own_speed: (mean, prior::own_speed(piece)),
        })
        .collect();
    Joint::of(&known, prior::shared_speed(raw.iter().copied()))
}
