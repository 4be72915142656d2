//! From the weights of one piece's cells to what is told of it.

use super::bounds::{ready, wet};
use super::checks::{ARRIVAL_SPREAD, TO_ARRIVE, looks};
use super::curve;
use super::evidence::Evidence;
use super::normal::{Mixture, Normal};
use super::outcome::{Band, Peak, PieceForecast, Probability, Seating, past};
use super::over_cells::{NEGLIGIBLE, REACHED};
use super::prior;
use super::rests::{Pull, Rise};
use super::seat::Seat;
use super::shown::Seen;
use super::traces::{HORIZON, REST, Setting, Spot, Traces};
use crate::history::{CoreReading, Instrument, PieceHistory};
use crate::quantity::{Length, Moment, Temperature, TemperatureDifference, seconds, to_seconds};

/// One piece, its traces, and what is known of it.
pub(super) struct View<'a> {
    pub history: &'a PieceHistory,
    pub traces: &'a Traces,
    pub evidence: &'a Evidence,
    /// The weight of every cell.
    pub weights: &'a [f64],
    pub setting: &'a Setting<'a>,
    pub normal: &'a Normal,
    /// The chance of being past the pull temperature that the cook accepts at a check.
    pub risk: f64,
    /// Where to pull it; none once it is off, or before that was asked.
    pub pull: Option<&'a Pull>,
}

/// What is told of one piece, and the times that the plan of checks needs.
pub(super) struct Told {
    pub forecast: PieceForecast,
    /// None once it is off.
    pub run: Option<Run>,
}

/// The way of a piece to its pull.
pub(super) struct Run {
    /// None if it is not likely to get there.
    pub timing: Option<Timing>,
    /// When it is to be read next at the latest, s since the clock's zero.
    pub check_by: f64,
    /// When it went on, and when it was last poked since, likewise.
    pub on: f64,
    pub poked: Option<f64>,
    /// Whether it was read at its pull temperature.
    pub called_off: bool,
    /// By cell, when it gets there, s since the clock's zero; the horizon if it does not.
    pub reaches: Vec<f64>,
}

/// When a piece on the pit gets where, s since the clock's zero.
#[derive(Clone, Copy, Debug)]
pub(super) struct Timing {
    /// Middle and standard deviation of the time it reaches its pull temperature.
    pub pull: (f64, f64),
    /// How long from there until it is past it.
    pub grace: f64,
    /// The part of the doubt that is the piece's own drift from the model, s.
    pub drift: f64,
}

impl View<'_> {
    /// Everything told of the piece.
    pub(super) fn told(&self) -> Told {
        let now = to_seconds(self.setting.now - self.setting.zero);
        let core = band(&self.core(now), wet);
        let seating = self.evidence.seat.as_ref().map(|seat| self.seating(seat));
        let piece = self.history.id;
        let Some(Pull { proving, goes_back, .. }) = self.pull else {
            return Told { forecast: self.resting(core, seating), run: None };
        };
        let reaches = self.reaches(self.history.pull_at);
        let past = self.reaches(past(self.history.pull_at));
        let pull = self.crossing(&reaches);
        let window = pull.as_ref().map(|pull| band(pull, |s| s));
        let (core, window) = self.with_what_was_low(core, window);
        let check_by = self.check_by(&past, seating.as_ref());
        let timing = pull.as_ref().zip(self.crossing(&past)).map(|(pull, past)| {
            let middle = pull.quantile(0.5);
            let spread = (pull.quantile(0.9) - pull.quantile(0.1)) / 2.56;
            let grace = past.quantile(0.5) - middle;
            Timing { pull: (middle, spread), grace, drift: self.drift(middle) }
        });
        // Past its pull already it comes off as it is.
        let comes_off = core.middle.max(self.history.pull_at);
        let rise = self.rise(comes_off).or_else(|| self.rise(self.history.pull_at));
        let peak = rise
            .as_ref()
            .zip(window)
            .map(|(rise, window)| self.peak(comes_off, rise, window.middle.max(now)));
        let forecast = PieceForecast {
            piece,
            core,
            pull_at: self.history.pull_at,
            proving: *proving,
            goes_back: Some(*goes_back),
            pull: window.map(|window| window.map(|s| self.moment(s))),
            ready: ready(self.history, pull.as_ref().map_or(0.0, |pull| pull.below(now))),
            check_by: Some(self.moment(check_by)),
            peak,
            seating,
            curve: curve::on_the_pit(self, window, rise.as_ref()),
            left_on: curve::left_on(self, now),
        };
        let never = self.traces.on + to_seconds(HORIZON);
        let reaches = reaches.into_iter().map(|at| at.unwrap_or(never)).collect();
        let poked = self.history.last_poke().map(|poked| self.since_zero(poked.at));
        Told {
            forecast,
            run: Some(Run {
                timing,
                check_by,
                on: self.traces.on,
                poked,
                called_off: self.is_called_off(),
                reaches,
            }),
        }
    }

    /// When it is to be read next at the latest, s since the clock's zero, the times it is past its
    /// pull temperature given by cell: while the chance of that is small, when its leave-in shows its
    /// pull temperature, and every now and then.
    fn check_by(&self, past: &[Option<f64>], seating: Option<&Seating>) -> f64 {
        let reached = self.reached(past);
        let chance = self.risk / reached.max(NEGLIGIBLE);
        let by_risk = (chance < 1.0).then(|| {
            self.times(past, to_seconds(ARRIVAL_SPREAD)).quantile(chance) - to_seconds(TO_ARRIVE)
        });
        let looks = looks(self.history, self.setting.now);
        let look = |at: Moment| self.since_zero(at);
        let unlikely = (reached <= REACHED).then(|| look(looks.at_least));
        let after_poke = looks.after_poke.map(look);
        let shown = self.leave_in_at_pull(seating).map(look);
        let soonest = [by_risk, unlikely, after_poke, shown].into_iter().flatten().reduce(f64::min);
        let due = soonest.unwrap_or_else(|| look(looks.at_least));
        looks.not_before.map_or(due, |pause| due.max(look(pause)))
    }

    /// Whether readings that fit, or that the cook vouched for, call it off.
    fn is_called_off(&self) -> bool {
        let in_doubt = |poke: &CoreReading| {
            let fits = |seen: &Seen| seen.counts || seen.reading.entry != poke.entry;
            !poke.vouched && !self.evidence.seen.iter().all(fits)
        };
        self.history.called_off(in_doubt).is_some()
    }

    /// When the leave-in first showed the pull temperature since the piece was poked. It sits where it
    /// sits: the piece comes off by an instant-read of several places (common practice, no source).
    fn leave_in_at_pull(&self, seating: Option<&Seating>) -> Option<Moment> {
        let since_poke = self
            .history
            .this_spell()
            .rev()
            .take_while(|reading| reading.instrument == Instrument::LeaveIn)
            .filter(|reading| reading.temperature >= self.history.pull_at);
        let trusted = seating.is_none_or(|seating| !seating.is_suspect());
        since_poke.last().filter(|_| trusted).map(|reading| reading.at)
    }

    fn since_zero(&self, at: Moment) -> f64 {
        to_seconds(at - self.setting.zero)
    }

    /// A piece that came off.
    fn resting(&self, core: Band<Temperature>, seating: Option<Seating>) -> PieceForecast {
        let zero = self.setting.zero;
        let off = self.history.off().map_or(0.0, |off| to_seconds(off - zero));
        let (at, peak) = self.peak_of_rest(off);
        PieceForecast {
            piece: self.history.id,
            core,
            pull_at: self.history.pull_at,
            proving: self.history.pull_at,
            goes_back: None,
            pull: None,
            ready: Probability::new(0.0),
            check_by: None,
            peak: Some(Peak { at: self.moment(at), temperature: band(&peak, wet) }),
            seating,
            curve: curve::resting(self, off),
            left_on: Vec::new(),
        }
    }

    /// The moment so many seconds after the clock's zero.
    pub(super) fn moment(&self, s: f64) -> Moment {
        self.setting.zero + seconds(s)
    }

    /// The peak after a pull at a temperature and a time.
    fn peak(&self, pull_at: Temperature, rise: &Rise, pull: f64) -> Peak {
        let (speed, _) = self.typical();
        let high = pull_at + TemperatureDifference::from_c(rise.by);
        let spread = 1.2816 * libm::hypot(prior::RISE_SPREAD * rise.by, prior::MISFIT);
        let spread = TemperatureDifference::from_c(spread);
        let temperature = Band { low: high - spread, middle: high, high: high + spread };
        let temperature = temperature.map(|core| wet(core.c()));
        Peak { at: self.moment(pull + rise.after * libm::exp(-speed)), temperature }
    }

    /// When the core of a piece that came off is likely at its peak, and how high that is.
    fn peak_of_rest(&self, off: f64) -> (f64, Mixture<'_>) {
        let typical = self.typical();
        let at_off = self.traces.at(Spot::Core, typical, off);
        let mut best = (off, at_off);
        let mut at = off;
        while at < off + to_seconds(REST) {
            let core = self.traces.at(Spot::Core, typical, at);
            if core > best.1 {
                best = (at, core);
            }
            at += 60.0;
        }
        let all = self.cores(best.0);
        let before = self.evidence.last.map_or(off, |last| last.min(best.0));
        let since = best.1 - self.traces.at(Spot::Core, typical, before.max(off));
        let spread = libm::hypot(self.misfit(best.0), prior::RISE_SPREAD * since);
        (best.0, self.mixture(|cell| Some((all[cell], spread))))
    }

    /// What is known of the leave-in's seat.
    fn seating(&self, seat: &Seat) -> Seating {
        let chances = seat.chances(self.weights);
        let (mut missed, mut missed_by, mut off_by) = (0.0, 0.0, 0.0);
        for (place, chance) in seat.places.iter().zip(&chances) {
            let by = chance * place.depth.mm();
            off_by += by;
            if place.missed {
                missed += chance;
                missed_by += by;
            }
        }
        let poked = self.evidence.poked;
        let misplaced = Probability::new(missed);
        let seating = Seating { misplaced, off_by: Length::from_mm(off_by), poked };
        if !seating.is_suspect() {
            return seating;
        }
        Seating { off_by: Length::from_mm(missed_by / missed), ..seating }
    }
}

/// The central 80 % of a mixture.
pub(super) fn band<T>(mixture: &Mixture<'_>, of: impl Fn(f64) -> T) -> Band<T> {
    Band {
        low: of(mixture.quantile(0.1)),
        middle: of(mixture.quantile(0.5)),
        high: of(mixture.quantile(0.9)),
    }
}

impl<T> Band<T> {
    /// The same band on another scale, which must rise with this one.
    pub(crate) fn map<U>(self, of: impl Fn(T) -> U) -> Band<U> {
        Band { low: of(self.low), middle: of(self.middle), high: of(self.high) }
    }
}
