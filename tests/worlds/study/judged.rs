//! One cook's forecasts, each beside the truth.

use cook_model::forecast::{Band, Forecast, PieceForecast, forecast};
use cook_model::quantity::{Moment, Temperature};
use serde::{Deserialize, Serialize};

use crate::diary::{Noted, moment, since};
use crate::draw::Setup;
use crate::record::{Reading, Record};

/// What was known when a forecast was made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum State {
    /// Nothing was read.
    Before,
    /// One reading of its own, some 15 min ahead.
    One,
    /// Two, some 25 and 12 min ahead.
    Two,
    /// None of its own, all readings of the thinnest left out; and counted.
    OthersWithout,
    /// See `OthersWithout`.
    Others,
    /// It has just come off: the peak, F.
    Peak,
}

/// A forecast beside the truth: minutes, or for a peak F.
#[derive(Clone, Copy, Debug)]
pub struct Judged {
    /// World, by its place.
    pub world: usize,
    /// Pit setting, F.
    pub set: f64,
    /// True thickness, mm.
    pub thickness: f64,
    /// Whether the thickness was measured.
    pub measured: bool,
    /// What was known.
    pub state: State,
    /// Forecast less truth.
    pub off: f64,
    /// Whether the window held the truth.
    pub held: bool,
    /// How wide the window was.
    pub width: f64,
    /// Truth.
    pub truth: f64,
}

/// A piece is judged ahead of its pull, s: not so near that nothing is left to foresee.
const AHEAD: (f64, f64) = (420.0, 2400.0);
/// The others are judged this long before their pull, s, or longer.
const OTHERS_AHEAD: f64 = 600.0;

/// One cook under judgement.
pub struct Bench<'a> {
    setup: &'a Setup,
    record: &'a Record,
    judged: Vec<Judged>,
}

/// All judgements of a cook.
pub fn judge(cook: &(Setup, Record)) -> Vec<Judged> {
    let mut bench = Bench { setup: &cook.0, record: &cook.1, judged: Vec::new() };
    bench.before();
    bench.own();
    bench.others();
    bench.peaks();
    bench.judged
}

impl Bench<'_> {
    fn forecast(&self, until: f64, readings: &dyn Fn(&Reading) -> bool) -> Forecast {
        let noted = Noted { setup: self.setup, record: self.record, until, readings };
        forecast(&noted.history(), moment(until))
    }

    fn before(&mut self) {
        let forecast = self.forecast(0.0, &|_| true);
        for piece in 0..self.setup.told.len() {
            self.pull(piece, State::Before, &forecast.pieces[piece]);
        }
    }

    /// After each piece's own last reading ahead of its pull.
    fn own(&mut self) {
        for piece in 0..self.setup.told.len() {
            let Some(pull) = self.record.pull[piece] else { continue };
            let own = |r: &&Reading| r.piece == piece && !r.at_pull;
            let count = self.record.readings.iter().filter(own).count();
            let Some(last) = self.record.readings.iter().rfind(own) else { continue };
            let state = if count == 1 { State::One } else { State::Two };
            if (AHEAD.0..AHEAD.1).contains(&(pull - last.at)) {
                let forecast = self.forecast(last.at, &|_| true);
                self.pull(piece, state, &forecast.pieces[piece]);
            }
        }
    }

    /// After the last reading of the thinnest before its pull.
    fn others(&mut self) {
        let told = |piece: &usize| {
            let told = &self.setup.told[*piece];
            told.thickness.unwrap_or_else(|| told.weight.cbrt())
        };
        let thinnest = (0..self.setup.told.len()).min_by(|a, b| told(a).total_cmp(&told(b)));
        let of_it = |r: &&Reading| Some(r.piece) == thinnest && !r.at_pull;
        let Some(last) = self.record.readings.iter().rfind(of_it) else { return };
        let until = last.at;
        let counted = self.forecast(until, &|r| of_it(&r));
        let without = self.forecast(until, &|_| false);
        for piece in 0..self.setup.told.len() {
            let later = self.record.pull[piece].is_some_and(|pull| pull > until + OTHERS_AHEAD);
            if Some(piece) != thinnest && later {
                self.pull(piece, State::Others, &counted.pieces[piece]);
                self.pull(piece, State::OthersWithout, &without.pieces[piece]);
            }
        }
    }

    /// As each comes off.
    fn peaks(&mut self) {
        for piece in 0..self.setup.told.len() {
            let Some(pull) = self.record.pull[piece] else { continue };
            let forecast = self.forecast(pull + 10.0, &|_| true);
            let Some(peak) = forecast.pieces[piece].peak else { continue };
            let band = on_scale(&peak.temperature, Temperature::f);
            let truth = Temperature::from_c(self.record.peak[piece]).f();
            self.add(piece, State::Peak, band, truth);
        }
    }

    fn pull(&mut self, piece: usize, state: State, forecast: &PieceForecast) {
        let Some(truth) = self.record.pull[piece] else { return };
        let never = f64::INFINITY;
        let minutes = |at: Moment| since(at) / 60.0;
        let band = forecast.pull.map_or(Band { low: never, middle: never, high: never }, |pull| {
            on_scale(&pull, minutes)
        });
        self.add(piece, state, band, truth / 60.0);
    }

    fn add(&mut self, piece: usize, state: State, band: Band<f64>, truth: f64) {
        self.judged.push(Judged {
            world: self.setup.world,
            set: self.setup.set,
            thickness: self.setup.pieces[piece].thickness * 1e3,
            measured: self.setup.told[piece].thickness.is_some(),
            state,
            off: band.middle - truth,
            held: band.low <= truth && truth <= band.high,
            width: band.high - band.low,
            truth,
        });
    }
}

/// A band as numbers.
fn on_scale<T: Copy>(band: &Band<T>, of: impl Fn(T) -> f64) -> Band<f64> {
    Band { low: of(band.low), middle: of(band.middle), high: of(band.high) }
}
