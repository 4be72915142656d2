//! Cooking by the advice alone: check when told, pull what reads done, re-seat when told.

use cook_model::cook::{Action, Stage, Step, What, fold, steps};
use cook_model::forecast::Forecast;
use cook_model::history::Instrument;
use cook_model::quantity::Moment;

use crate::cook::{Cook, Place, STEP, Setup};
use crate::diary::{self, Diary};
use crate::record::{LOADING, MESH};

use super::dinner;
use super::model::Model;
use super::outcome::Outcome;

/// The leave-in is noted this often, s.
const LEAVE_IN_EVERY: f64 = 600.0;
/// Time to open the lid and find the first piece, and to read one piece, s.
const LID_ALONE: f64 = 15.0;
const READ_ONE: f64 = 12.0;
/// After advice that was followed, ask again no sooner than this, s.
const PAUSE: f64 = 60.0;
/// A cook this long has gone wrong, s.
const TOO_LONG: f64 = 6.0 * 3600.0;
/// How long a rest is watched for its peak, s.
const REST: f64 = 1500.0;
/// The rule's temperature, C (165 F): pulled above it, a piece is drier than it need be.
pub(super) const OVER: f64 = 133.0 / 1.8;
/// What the trade adds for the rise after the pull, C (5 F; common practice, no source).
const CARRY_OVER: f64 = 5.0 / 1.8;

/// One cook under way, with its diary.
struct Follow {
    cook: Cook,
    diary: Diary,
    outcome: Outcome,
    peaks: Vec<Option<Peak>>,
    last_opened: f64,
}

/// The peak of a piece that was pulled, C.
#[derive(Clone, Copy, Debug)]
struct Peak {
    /// As forecast at the pull.
    forecast: f64,
    /// By the trade's rule.
    by_rule: f64,
    /// The highest core since.
    highest: f64,
}

/// Cooks a setup by the advice alone.
pub fn follow(setup: &Setup) -> Outcome {
    follow_for(setup, None)
}

/// Cooks a setup by the advice, for people who mean to eat so many seconds after it goes on: where the
/// app offers first to raise the pit for their sake, the cook does.
pub fn follow_for(setup: &Setup, dinner: Option<f64>) -> Outcome {
    let count = setup.told.len();
    let mut follow = Follow {
        cook: Cook::new(setup.clone(), MESH),
        diary: Diary::new(setup),
        outcome: Outcome { pieces: count, ..Outcome::default() },
        peaks: vec![None; count],
        last_opened: f64::NEG_INFINITY,
    };
    follow.start(dinner);
    let mut due = follow.due();
    while follow.cook.places().contains(&Place::On) && follow.cook.now() < TOO_LONG {
        follow.step();
        follow.prove();
        let now = follow.cook.now();
        let noted = now % LEAVE_IN_EVERY == 0.0 && follow.note_leave_in();
        let is_due = due.is_some_and(|at| at <= now) && now >= follow.last_opened + PAUSE;
        if is_due {
            due = follow.act();
        } else if noted {
            due = follow.due();
        }
        if (is_due || noted) && follow.see_to_dinner() {
            due = follow.due();
        }
    }
    follow.outcome.last_off = follow.cook.now();
    follow.outcome.left = follow.cook.places().iter().filter(|p| **p == Place::On).count();
    let end = follow.cook.now() + REST;
    while follow.cook.now() < end {
        follow.prove();
        follow.step();
    }
    let peaks = || follow.peaks.iter().flatten();
    follow.outcome.peak_errors = peaks().map(|peak| peak.forecast - peak.highest).collect();
    follow.outcome.rule_peak_errors = peaks().map(|peak| peak.by_rule - peak.highest).collect();
    follow.outcome
}

impl Follow {
    fn start(&mut self, dinner: Option<f64>) {
        let count = self.cook.places().len();
        self.diary.write(-1.0, What::DinnerSet { at: dinner.map(diary::moment) });
        self.diary.seated(self.cook.setup().probed);
        let pit = self.cook.read_pit();
        self.diary.pit(0.0, pit);
        (0..count).for_each(|piece| self.cook.put_on(piece));
        self.cook.open_lid(LOADING);
        self.diary.all_on(0..count, LOADING);
        self.outcome.openings = 0;
    }

    fn step(&mut self) {
        self.cook.step();
        for (piece, peak) in self.peaks.iter_mut().enumerate() {
            if let Some(peak) = peak {
                peak.highest = peak.highest.max(self.cook.core(piece));
            }
        }
    }

    fn now(&self) -> Moment {
        diary::moment(self.cook.now())
    }

    /// Notes the leave-in while its piece is on; true if it was noted.
    fn note_leave_in(&mut self) -> bool {
        let piece = self.cook.setup().probed;
        let on = self.cook.places()[piece] == Place::On;
        if on {
            let shown = self.cook.read_leave_in();
            self.diary.leave_in(self.cook.now(), piece, shown);
        }
        on
    }

    /// The forecast and the steps it leads to.
    fn look(&self) -> (Forecast, Vec<Step>) {
        let forecast = Model::forecast(self.diary.log(), self.now());
        let steps = steps(&fold(self.diary.log()), &forecast, None, self.now());
        (forecast, steps)
    }

    /// When the next thing to do at the pit is due, s.
    fn due(&self) -> Option<f64> {
        self.first_due(&self.look().1)
    }

    fn first_due(&self, steps: &[Step]) -> Option<f64> {
        steps
            .iter()
            .find(|step| matches!(step.action, Action::Check | Action::Pull | Action::Reseat))
            .map(|step| diary::since_start(step.due).max(self.cook.now() + STEP))
    }

    /// Opens the lid once and does all that is due: re-seat, read, pull, and what the readings then
    /// call for. Returns when the next thing is due, s.
    fn act(&mut self) -> Option<f64> {
        let count = self.cook.places().len();
        let mut read = vec![false; count];
        let mut reseated = false;
        let mut opened = false;
        let (forecast, steps) = loop {
            let (forecast, steps) = self.look();
            let due =
                steps.iter().filter(|step| step.due <= self.now()).find(|step| match step.action {
                    Action::Check => step.pieces.iter().any(|id| !read[diary::place(*id)]),
                    Action::Pull => true,
                    Action::Reseat => !reseated,
                    _ => false,
                });
            let Some(step) = due.cloned() else { break (forecast, steps) };
            if !opened {
                opened = true;
                self.note_pit();
            }
            for id in step.pieces {
                let piece = diary::place(id);
                match step.action {
                    Action::Pull => self.pull(piece),
                    Action::Reseat => {
                        reseated = true;
                        self.reseat(piece);
                    }
                    _ if !read[piece] => {
                        read[piece] = true;
                        self.read(piece);
                    }
                    _ => {}
                }
            }
        };
        if opened {
            let pokes = read.iter().filter(|r| **r).count() as f64;
            let lasted = LID_ALONE + READ_ONE * pokes;
            self.diary.lid(self.cook.now(), lasted);
            self.cook.open_lid(lasted);
            self.outcome.openings += 1;
            self.note_peaks(&forecast);
        }
        self.last_opened = self.cook.now();
        self.first_due(&steps)
    }

    /// Raises the pit if the app offers that first for dinner's sake; true if it did.
    fn see_to_dinner(&mut self) -> bool {
        let raised = dinner::raise_to(self.diary.log(), self.now());
        if let Some(target) = raised {
            self.cook.set_pit(target.c());
            self.diary.write(self.cook.now(), What::PitTargetSet { target });
            self.outcome.raised += 1;
        }
        raised.is_some()
    }

    /// Reads what rests and is not proved yet when that is due; once a minute.
    fn prove(&mut self) {
        let resting = self.cook.places().contains(&Place::Resting);
        if self.cook.setup().pull_at < OVER || !resting || self.cook.now() % PAUSE != 0.0 {
            return;
        }
        let state = fold(self.diary.log());
        let proved = state.at_stage(Stage::Proved).len();
        if proved > self.outcome.proved {
            (self.outcome.proved, self.outcome.last_proved) = (proved, self.cook.now());
        }
        if state.at_stage(Stage::Resting).is_empty() {
            return;
        }
        let (_, steps) = self.look();
        let due = steps.iter().filter(|s| s.action == Action::Prove && s.due <= self.now());
        let pieces: Vec<usize> =
            due.flat_map(|step| &step.pieces).map(|id| diary::place(*id)).collect();
        pieces.into_iter().for_each(|piece| self.read(piece));
    }

    fn note_pit(&mut self) {
        let shown = self.cook.read_pit();
        self.diary.pit(self.cook.now(), shown);
    }

    fn read(&mut self, piece: usize) {
        let shown = self.cook.read_instant(piece);
        self.diary.instant(self.cook.now(), piece, shown);
        if piece == self.cook.setup().probed {
            self.note_leave_in();
        }
    }

    fn reseat(&mut self, piece: usize) {
        self.cook.reseat();
        // A moment later, so that what it showed before counts for the old seat.
        self.diary.write(self.cook.now() + 1.0, What::LeaveInSeated { piece: diary::id(piece) });
    }

    fn pull(&mut self, piece: usize) {
        let (now, id) = (self.cook.now(), diary::id(piece));
        let pull_at = self.cook.setup().pull_at;
        let state = fold(self.diary.log());
        let readings = state.history.piece(id).map(|piece| piece.readings.clone());
        let readings = readings.unwrap_or_default();
        let newest = readings.iter().rposition(|r| r.instrument == Instrument::InstantRead);
        let since = &readings[newest.unwrap_or(0)..];
        let shown = since.iter().any(|reading| reading.temperature.c() >= pull_at - 1e-6);
        self.outcome.under += usize::from(!shown);
        let core = self.cook.core(piece);
        self.outcome.above_pull.push(core - pull_at);
        self.outcome.over += usize::from(core > OVER);
        self.cook.pull(piece);
        self.diary.write(now, What::Pulled { piece: id });
        self.diary.write(now, What::Covered { piece: id });
    }

    /// Notes the peaks foreseen of pieces just pulled.
    fn note_peaks(&mut self, forecast: &Forecast) {
        for piece in 0..self.peaks.len() {
            if self.cook.places()[piece] == Place::Resting && self.peaks[piece].is_none() {
                let id = diary::id(piece);
                let foreseen = forecast.piece(id).and_then(|piece| piece.peak);
                let read = fold(self.diary.log()).history.piece(id).and_then(|piece| {
                    piece.readings.iter().map(|reading| reading.temperature.c()).reduce(f64::max)
                });
                let highest = self.cook.core(piece);
                self.peaks[piece] = foreseen.zip(read).map(|(peak, read)| Peak {
                    forecast: peak.temperature.middle.c(),
                    by_rule: read + CARRY_OVER,
                    highest,
                });
            }
        }
    }
}
