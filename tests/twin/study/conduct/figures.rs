//! What is counted over many cooks.

use super::outcome::{OfPiece, Outcome};
use crate::study::quantile;

/// Fahrenheit as C.
const fn f(fahrenheit: f64) -> f64 {
    (fahrenheit - 32.0) / 1.8
}

/// The figures of some cooks. Shares from 0 to 1.
#[derive(Clone, Debug)]
pub struct Figures {
    /// Cooks, and pieces in them.
    pub cooks: usize,
    /// Pieces.
    pub pieces: usize,
    /// Lid openings, median.
    pub openings: f64,
    /// Share of pieces put back.
    pub put_back: f64,
    /// Proof readings for each piece, mean.
    pub proof_readings: f64,
    /// Readings of each piece on the pit, mean.
    pub checks: f64,
    /// Share of pulls with the true core above 165 and 167 F.
    pub above: [f64; 2],
    /// Pieces called proved whose coldest spot never reached 163 F.
    pub falsely_proved: usize,
    /// Duties that went away without an entry, before the end that they told; and at it.
    pub vanished: usize,
    /// Those that ran out at the end that they told.
    pub ran_out: usize,
    /// Bells for which nothing was due.
    pub in_vain: usize,
    /// Bells whose duty was not among what was due as they rang.
    pub off_card: usize,
    /// Visits given up.
    pub stuck: usize,
    /// Alarms in the worst ten minutes, of the median cook; and of nine in ten.
    pub alarms: [f64; 2],
    /// Alarms of the whole cook, median.
    pub all_alarms: f64,
    /// How many of a hundred honest instant-reads are asked about.
    pub needless_questions: f64,
    /// Taps from put-on to served, median.
    pub taps: f64,
    /// Cooks in time, of those whose plan told of nine in ten and whose dinner stayed where it was; and how
    /// many these are.
    pub in_time: (usize, usize),
    /// The same without dead fires.
    pub in_time_with_fire: (usize, usize),
    /// What the plans told of it, mean.
    pub told_in_time: f64,
    /// Pieces thrown away, and pieces never served or bagged.
    pub lost: [usize; 2],
    /// How far the peak foreseen at the first pull was off, F: median and nine in ten, of the rests that
    /// came to a peak before the piece was warmed again.
    pub peak_off: [f64; 2],
    /// How far pieces rose in such rests, and how far they were told to: means, F.
    pub rises: [f64; 2],
}

impl Figures {
    /// Counts.
    pub fn of(cooks: &[Outcome]) -> Self {
        let pieces: Vec<&OfPiece> = cooks.iter().flat_map(|cook| &cook.pieces).collect();
        let pulls: Vec<f64> = pieces.iter().flat_map(|piece| piece.pulled.clone()).collect();
        let share = |of: usize, all: usize| of as f64 / all.max(1) as f64;
        let mean = |of: fn(&OfPiece) -> usize| {
            share(pieces.iter().map(|piece| of(piece)).sum(), pieces.len())
        };
        let above = |limit: f64| share(pulls.iter().filter(|c| **c > limit).count(), pulls.len());
        let sum = |of: fn(&Outcome) -> usize| cooks.iter().map(of).sum::<usize>();
        let over_cooks = |of: fn(&Outcome) -> usize, at: f64| {
            let mut all: Vec<f64> = cooks.iter().map(|cook| of(cook) as f64).collect();
            all.sort_by(f64::total_cmp);
            quantile(&all, at)
        };
        let in_time = |with_fire: bool| {
            let nine_in_ten =
                |cook: &&Outcome| cook.told_in_time.is_some_and(|told| (told - 0.9).abs() < 0.05);
            let stayed = cooks.iter().filter(nine_in_ten).filter(|cook| !cook.dinner_moved);
            let stayed = stayed.filter(|cook| !with_fire || !cook.fire_died);
            let kept = stayed.clone().filter(|cook| cook.early.is_some_and(|early| early >= 0.0));
            (kept.count(), stayed.count())
        };
        let mut peaks: Vec<f64> = pieces
            .iter()
            .filter_map(|piece| Some(1.8 * (piece.peak_told? - piece.rest.peak()?).abs()))
            .collect();
        peaks.sort_by(f64::total_cmp);
        let rises: Vec<[f64; 2]> = pieces.iter().filter_map(|piece| piece.rises()).collect();
        let rise = |which: usize| {
            1.8 * rises.iter().map(|rise| rise[which]).sum::<f64>() / rises.len().max(1) as f64
        };
        let told: Vec<f64> = cooks.iter().filter_map(|cook| cook.told_in_time).collect();
        Self {
            cooks: cooks.len(),
            pieces: pieces.len(),
            openings: over_cooks(|cook| cook.openings, 0.5),
            put_back: share(pieces.iter().filter(|p| p.put_back > 0).count(), pieces.len()),
            proof_readings: mean(|piece| piece.proof_readings),
            checks: mean(|piece| piece.checks),
            above: [above(f(165.0)), above(f(167.0))],
            falsely_proved: pieces.iter().filter(|piece| piece.is_falsely_proved()).count(),
            vanished: sum(|cook| cook.vanished),
            ran_out: sum(|cook| cook.ran_out),
            in_vain: sum(|cook| cook.in_vain),
            off_card: sum(|cook| cook.off_card),
            stuck: sum(|cook| cook.stuck),
            alarms: [0.5, 0.9].map(|at| over_cooks(Outcome::worst_ten_minutes, at)),
            all_alarms: over_cooks(|cook| cook.rings.len(), 0.5),
            needless_questions: 100.0
                * share(sum(|cook| cook.needless_questions), sum(|cook| cook.honest)),
            taps: over_cooks(|cook| cook.taps, 0.5),
            in_time: in_time(false),
            in_time_with_fire: in_time(true),
            told_in_time: told.iter().sum::<f64>() / told.len().max(1) as f64,
            lost: [
                pieces.iter().filter(|piece| piece.discarded).count(),
                pieces.iter().filter(|piece| piece.done.is_none()).count(),
            ],
            peak_off: [0.5, 0.9].map(|at| quantile(&peaks, at)),
            rises: [0, 1].map(rise),
        }
    }
}
