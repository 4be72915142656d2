//! Is a misplaced leave-in found after one instant-read of its piece?

use crate::cook::Setup;
use crate::diary;
use crate::record::Record;

use super::forecaster::{Forecaster, of_piece};
use super::table;

/// A leave-in this far off through the thickness is misplaced, m.
pub const MISPLACED: f64 = 6.0e-3;

/// How the leave-ins were judged.
#[derive(Clone, Debug, Default)]
pub struct Seats {
    /// For each misplaced leave-in: how far off, m; by how much it showed more than the instant-read,
    /// C; whether it was flagged.
    pub missed: Vec<(f64, f64, bool)>,
    /// Well-seated leave-ins.
    pub seated: usize,
    /// Of these, flagged all the same.
    pub false_alarms: usize,
}

impl Seats {
    /// Share of misplaced leave-ins flagged, of those at least `off` metres off.
    pub fn found(&self, off: f64) -> f64 {
        let far: Vec<bool> = self
            .missed
            .iter()
            .filter(|(by, ..)| *by >= off)
            .map(|(.., flagged)| *flagged)
            .collect();
        far.iter().filter(|flagged| **flagged).count() as f64 / far.len().max(1) as f64
    }

    /// Misplaced leave-ins that showed at least this much above the instant-read, C, and the share
    /// of them flagged.
    pub fn found_reading_high(&self, above: f64) -> (usize, f64) {
        let high: Vec<bool> =
            self.missed.iter().filter(|(_, by, _)| *by >= above).map(|(.., f)| *f).collect();
        let flagged = high.iter().filter(|flagged| **flagged).count();
        (high.len(), flagged as f64 / high.len().max(1) as f64)
    }

    /// Share of well-seated leave-ins flagged.
    pub fn false_alarm_rate(&self) -> f64 {
        self.false_alarms as f64 / self.seated.max(1) as f64
    }
}

/// Judges each cook's leave-in by its own readings and one early instant-read of its piece.
pub fn judge(forecaster: &dyn Forecaster, cooks: &[(Setup, Record)]) -> Seats {
    let mut seats = Seats::default();
    for (setup, record) in cooks {
        let piece = setup.probed;
        let (Some(now), _) = table::reading_times(record, piece) else { continue };
        let read = |at, p| p == piece && at == now;
        let mut log = table::log_until(setup, record, now, &[piece], read);
        log.seated(piece);
        let mut last = (0.0, 0.0);
        for &(at, celsius) in record.leave_in.iter().filter(|(at, _)| *at <= now) {
            log.leave_in(at, piece, celsius);
            last = (at, celsius);
        }
        let said = forecaster.say(log.log(), diary::moment(now));
        let flagged = of_piece(&said, diary::id(piece)).is_some_and(|said| said.reseat);
        let off = setup.seat.up.abs();
        if off >= MISPLACED {
            let read = record.openings.iter().find(|o| o.at == last.0).map(|o| o.instant[piece]);
            seats.missed.push((off, last.1 - read.unwrap_or(f64::NAN), flagged));
        } else {
            seats.seated += 1;
            seats.false_alarms += usize::from(flagged);
        }
    }
    seats
}
