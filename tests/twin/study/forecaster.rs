//! Whatever foresees pull times from a log: the model, and the rules the trade uses instead.

use cook_model::cook::{Log, fold};
use cook_model::history::{CoreReading, PieceHistory};
use cook_model::piece::PieceId;
use cook_model::quantity::{Moment, to_minutes};

use crate::diary;

/// What is said of one piece. Times in minutes since the pieces went on.
#[derive(Clone, Copy, Debug, Default)]
pub struct Said {
    /// Low end, middle and high end of the pull window; a rule of thumb gives all three alike.
    pub pull: Option<[f64; 3]>,
    /// The peak after the pull, C.
    pub peak: Option<f64>,
    /// The chance that the leave-in is misplaced.
    pub misplaced: Option<f64>,
    /// Whether it is told to be re-seated.
    pub reseat: bool,
}

/// Foresees pull times.
pub trait Forecaster: Sync {
    /// What it is called in the tables.
    fn name(&self) -> &'static str;

    /// Whether it gives a window, not only a time.
    fn has_window(&self) -> bool {
        false
    }

    /// What it says of each piece set out.
    fn say(&self, log: &Log, now: Moment) -> Vec<(PieceId, Said)>;
}

/// What was said of one piece, if anything.
pub fn of_piece(said: &[(PieceId, Said)], piece: PieceId) -> Option<Said> {
    said.iter().find(|(id, _)| *id == piece).map(|(_, said)| *said)
}

/// Fixed minutes per pound (common practice, no source), with the constant that suits these cooks
/// best: the kindest reading of the rule.
#[derive(Clone, Copy, Debug)]
pub struct PerPound {
    /// Minutes per kilogram.
    pub minutes_per_kg: f64,
}

impl Forecaster for PerPound {
    fn name(&self) -> &'static str {
        "fixed minutes per pound"
    }

    fn say(&self, log: &Log, _: Moment) -> Vec<(PieceId, Said)> {
        let pieces = fold(log).history.pieces;
        pieces.iter().map(|piece| (piece.id, said(self.minutes(piece)))).collect()
    }
}

impl PerPound {
    fn minutes(&self, piece: &PieceHistory) -> f64 {
        piece.on().map_or(0.0, |on| diary::since_start(on) / 60.0)
            + self.minutes_per_kg * piece.piece.weight.kg()
    }
}

/// The straight line through the last two readings (common practice, no source). With one reading,
/// the line from the start; with none, fixed minutes per pound.
#[derive(Clone, Copy, Debug)]
pub struct StraightLine {
    /// The rule used without readings.
    pub otherwise: PerPound,
}

impl Forecaster for StraightLine {
    fn name(&self) -> &'static str {
        "straight line of the last two readings"
    }

    fn say(&self, log: &Log, _: Moment) -> Vec<(PieceId, Said)> {
        fold(log)
            .history
            .pieces
            .iter()
            .map(|piece| {
                let minutes = extrapolate(piece).unwrap_or_else(|| self.otherwise.minutes(piece));
                (piece.id, said(minutes))
            })
            .collect()
    }
}

fn said(minutes: f64) -> Said {
    Said { pull: Some([minutes; 3]), ..Said::default() }
}

fn extrapolate(piece: &PieceHistory) -> Option<f64> {
    let point = |reading: &CoreReading| (reading.at, reading.temperature);
    let (at, shown) = piece.readings.last().map(point)?;
    let (before, had) = match piece.readings.len() {
        1 => (piece.on()?, piece.piece.start),
        more => point(&piece.readings[more - 2]),
    };
    let per_minute = (shown - had).c() / to_minutes(at - before);
    (per_minute > 0.0)
        .then(|| diary::since_start(at) / 60.0 + (piece.pull_at - shown).c() / per_minute)
}
