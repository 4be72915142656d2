//! Pull-time errors and window coverage by what had been read.

use crate::cook::Setup;
use crate::cores;
use crate::diary::{self, Diary};
use crate::record::{LOADING, Record};

use super::forecaster::{Forecaster, of_piece};

/// A first reading counts as early if it comes this long before the true pull, s.
const EARLY: f64 = 900.0;
/// A last reading must leave something to foresee, s.
const STILL_AHEAD: f64 = 120.0;

/// What had been read when the forecast was made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Row {
    /// Nothing; as the pieces go on.
    Before,
    /// Two instant-reads of the thinnest piece; the other pieces are scored.
    ThinnestTwice,
    /// The same moment and pieces as [`Row::ThinnestTwice`], without its readings.
    ThinnestUnread,
    /// One instant-read of the piece itself, 15 min or more before its pull.
    OwnOnce,
    /// That and one at the next opening.
    OwnTwice,
}

impl Row {
    /// All rows, in the order of the table.
    pub const ALL: [Self; 5] =
        [Self::Before, Self::ThinnestUnread, Self::ThinnestTwice, Self::OwnOnce, Self::OwnTwice];

    /// What the table calls it.
    pub fn name(self) -> &'static str {
        match self {
            Self::Before => "before any reading",
            Self::ThinnestUnread => "other pieces, later, nothing read",
            Self::ThinnestTwice => "other pieces, two readings on the thinnest only",
            Self::OwnOnce => "one own reading, 15 min or more before the pull",
            Self::OwnTwice => "two own readings",
        }
    }
}

/// A log, the moment to look at it, and the pieces to score.
struct Case {
    diary: Diary,
    now: f64,
    pieces: Vec<usize>,
}

/// How well one row came out.
#[derive(Clone, Debug)]
pub struct Score {
    /// Which row.
    pub row: Row,
    /// Distance of the middle of the window from the truth, min, in order of size; infinite where
    /// nothing was foreseen.
    pub errors: Vec<f64>,
    /// Share of truths below the low end, the middle and the high end of the window.
    pub below: [f64; 3],
    /// Median of the signed error (foreseen less true), min.
    pub bias: f64,
}

impl Score {
    /// Median error, min.
    pub fn median(&self) -> f64 {
        super::quantile(&self.errors, 0.5)
    }

    /// Share of truths within the window.
    pub fn held(&self) -> f64 {
        self.below[2] - self.below[0]
    }
}

/// Scores a forecaster on one row over all cooks.
pub fn score(forecaster: &dyn Forecaster, row: Row, cooks: &[(Setup, Record)]) -> Score {
    let tried: Vec<(Option<[f64; 3]>, f64)> =
        cores::each(cooks, |(setup, record)| try_cook(forecaster, row, setup, record)).concat();
    let count = tried.len().max(1) as f64;
    let below = core::array::from_fn(|end| {
        let before = |(window, truth): &&(Option<[f64; 3]>, f64)| {
            window.is_some_and(|window| *truth <= window[end])
        };
        tried.iter().filter(before).count() as f64 / count
    });
    let mut signed: Vec<f64> = tried
        .iter()
        .map(|(window, truth)| window.map_or(f64::INFINITY, |w| w[1]) - truth)
        .collect();
    let mut errors: Vec<f64> = signed.iter().map(|e| e.abs()).collect();
    errors.sort_by(f64::total_cmp);
    signed.sort_by(f64::total_cmp);
    Score { row, errors, below, bias: super::quantile(&signed, 0.5) }
}

/// The pull windows told of one cook's pieces, if any, and the true times, min.
fn try_cook(
    forecaster: &dyn Forecaster,
    row: Row,
    setup: &Setup,
    record: &Record,
) -> Vec<(Option<[f64; 3]>, f64)> {
    let mut tried = Vec::new();
    for case in cases(row, setup, record) {
        let said = forecaster.say(case.diary.log(), diary::moment(case.now));
        tried.extend(case.pieces.iter().map(|&piece| {
            let window = of_piece(&said, diary::id(piece)).and_then(|said| said.pull);
            (window, record.pull[piece] / 60.0)
        }));
    }
    tried
}

/// The log up to and including `now` of the pieces named, with the readings chosen.
pub(super) fn log_until(
    setup: &Setup,
    record: &Record,
    now: f64,
    pieces: &[usize],
    shown: impl Fn(f64, usize) -> bool,
) -> Diary {
    let mut diary = Diary::of(setup, pieces.iter().copied());
    diary.pit(0.0, record.pit_at_start);
    diary.all_on(pieces.iter().copied(), LOADING);
    for opening in record.openings.iter().filter(|opening| opening.at <= now) {
        diary.pit(opening.at, opening.pit);
        diary.lid(opening.at, opening.lasted);
        for &piece in pieces.iter().filter(|piece| shown(opening.at, **piece)) {
            diary.instant(opening.at, piece, opening.instant[piece]);
        }
    }
    diary
}

/// The openings for a first, early reading of a piece and for a second one, if it had them.
pub(super) fn reading_times(record: &Record, piece: usize) -> (Option<f64>, Option<f64>) {
    let pull = record.pull[piece];
    let mut times = record.openings.iter().map(|opening| opening.at);
    let first = times.clone().take_while(|at| *at <= pull - EARLY).last();
    let second = first.and_then(|f| times.find(|at| *at > f && *at <= pull - STILL_AHEAD));
    (first, second)
}

fn cases(row: Row, setup: &Setup, record: &Record) -> Vec<Case> {
    let count = setup.told.len();
    let reached = |piece: &usize| record.pull[*piece].is_finite();
    match row {
        Row::Before => {
            let mut diary = Diary::new(setup);
            diary.all_on(0..count, LOADING);
            vec![Case { diary, now: 0.0, pieces: (0..count).filter(reached).collect() }]
        }
        Row::ThinnestTwice | Row::ThinnestUnread => {
            let thin = thinnest(setup);
            let mut before_pull =
                record.openings.iter().map(|o| o.at).filter(|at| *at <= record.pull[thin]).rev();
            let (Some(last), Some(first)) = (before_pull.next(), before_pull.next()) else {
                return Vec::new();
            };
            let read = row == Row::ThinnestTwice;
            let shown = |at, p| read && p == thin && at >= first;
            let all: Vec<usize> = (0..count).collect();
            let diary = log_until(setup, record, last, &all, shown);
            let ahead = |p: &usize| *p != thin && record.pull[*p] > last;
            let pieces = (0..count).filter(ahead).filter(reached).collect();
            vec![Case { diary, now: last, pieces }]
        }
        Row::OwnOnce | Row::OwnTwice => (0..count)
            .filter(reached)
            .filter_map(|piece| {
                let (first, second) = reading_times(record, piece);
                let (first, now) =
                    if row == Row::OwnOnce { (first?, first?) } else { (first?, second?) };
                // A piece that was not read tells nothing of this one, so only this one is set out.
                let diary = log_until(setup, record, now, &[piece], |at, _| at >= first);
                Some(Case { diary, now, pieces: vec![piece] })
            })
            .collect(),
    }
}

/// The piece the cook takes for the thinnest: by thickness where it was measured, else by weight.
fn thinnest(setup: &Setup) -> usize {
    let size = |piece: usize| {
        let told = &setup.told[piece];
        told.thickness.unwrap_or(told.weight)
    };
    (0..setup.told.len()).min_by(|&a, &b| size(a).total_cmp(&size(b))).unwrap_or(0)
}
