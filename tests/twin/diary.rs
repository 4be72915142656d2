//! What a cook would have typed, as cook-model's own log.

use chrono::DateTime;
use cook_model::cook::{DeviceId, Log, What};
use cook_model::history::{Instrument, Tolerances};
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::quantity::{
    Length, Mass, Moment, Temperature, TemperatureDifference, seconds, to_seconds,
};

use crate::cook::{Cut, Setup, Told};
use crate::thermometer;

/// When the pieces of every simulated cook go on, s since 1970: an afternoon in June.
const START: i64 = 1_780_000_000;
const DEVICE: DeviceId = DeviceId(1);

/// All is set out this long before, s.
const BEFORE: f64 = -600.0;

/// What is said of a piece.
fn raw(told: &Told) -> Piece {
    Piece {
        weight: Mass::from_kg(told.weight),
        thickest: told.thickness.map(Length::from_m),
        shape: match told.cut {
            Cut::Natural => Shape::Natural,
            Cut::Even => Shape::Even,
            Cut::Thick => Shape::Thick,
        },
        start: Temperature::from_c(told.start),
        icy: false,
    }
}

/// A log being written. Times are seconds since the pieces went on.
#[derive(Clone, Debug)]
pub struct Diary {
    log: Log,
}

/// The moment so many seconds after the pieces went on.
pub fn moment(at: f64) -> Moment {
    DateTime::from_timestamp(START, 0).unwrap_or_default() + seconds(at)
}

/// Seconds since the pieces went on.
pub fn since_start(moment: Moment) -> f64 {
    to_seconds(moment - self::moment(0.0))
}

/// The id of the piece at a place in the setup.
pub fn id(piece: usize) -> PieceId {
    PieceId(piece as u32 + 1)
}

/// The place in the setup of a piece.
pub fn place(id: PieceId) -> usize {
    id.0 as usize - 1
}

impl Diary {
    /// The settings and all pieces as told, none of them on yet.
    pub fn new(setup: &Setup) -> Self {
        Self::of(setup, 0..setup.told.len())
    }

    /// The same with only some of the pieces set out.
    pub fn of(setup: &Setup, pieces: impl IntoIterator<Item = usize>) -> Self {
        let pieces = pieces.into_iter().map(|piece| (id(piece), raw(&setup.told[piece])));
        let mut diary = Self::set_out(setup.pit.set, pieces);
        let target = Some(Temperature::from_c(setup.pull_at));
        diary.write(BEFORE, What::PullTargetSet { piece: None, target });
        diary
    }

    /// The same with every pull left open: each piece is to be pulled so that its rest proves it.
    pub fn with_pulls_left_open(setup: &Setup) -> Self {
        let pieces = setup.told.iter().enumerate();
        Self::set_out(setup.pit.set, pieces.map(|(piece, told)| (id(piece), raw(told))))
    }

    /// A pit set to so many C, and pieces set out.
    pub fn set_out(set: f64, pieces: impl IntoIterator<Item = (PieceId, Piece)>) -> Self {
        let mut diary = Self { log: Log::default() };
        diary.write(BEFORE, What::PitTargetSet { target: Temperature::from_c(set) });
        let tolerances = Tolerances {
            instant_read: TemperatureDifference::from_c(thermometer::INSTANT_TOLERANCE),
            leave_in: TemperatureDifference::from_c(thermometer::LEAVE_IN_TOLERANCE),
            pit: TemperatureDifference::from_c(thermometer::PIT_TOLERANCE),
        };
        diary.write(BEFORE, What::TolerancesSet { tolerances });
        for (piece, facts) in pieces {
            diary.write(BEFORE, What::PieceSetOut { piece, facts, name: String::new() });
        }
        diary
    }

    /// The log so far.
    pub fn log(&self) -> &Log {
        &self.log
    }

    /// Writes down something that happened at a time. No two entries are typed at one instant: a
    /// person has one hand free.
    pub fn write(&mut self, at: f64, what: What) {
        let at = moment(at);
        let last = self.log.entries().last().map(|last| last.typed + seconds(1.0));
        let typed = last.map_or(at, |soonest| soonest.max(at));
        let entry = self.log.next(DEVICE, at, typed, what);
        self.log.insert(entry);
    }

    /// The pieces went on.
    pub fn all_on(&mut self, pieces: impl IntoIterator<Item = usize>, lid_open: f64) {
        for piece in pieces {
            self.write(0.0, What::PutOn { piece: id(piece) });
        }
        self.lid(0.0, lid_open);
    }

    /// The lid came up.
    pub fn lid(&mut self, at: f64, lasted: f64) {
        self.write(at, What::LidOpened { seconds: lasted.round() as u32 });
    }

    /// The pit thermometer was read, C.
    pub fn pit(&mut self, at: f64, celsius: f64) {
        self.write(at, What::PitRead { temperature: Temperature::from_c(celsius) });
    }

    /// A piece was read with the instant-read, C.
    pub fn instant(&mut self, at: f64, piece: usize, celsius: f64) {
        self.core(at, piece, celsius, Instrument::InstantRead, 3);
    }

    /// The leave-in was read, C.
    pub fn leave_in(&mut self, at: f64, piece: usize, celsius: f64) {
        self.core(at, piece, celsius, Instrument::LeaveIn, 1);
    }

    /// The leave-in was put into a piece before it went on.
    pub fn seated(&mut self, piece: usize) {
        self.write(0.0, What::LeaveInSeated { piece: id(piece) });
    }

    fn core(&mut self, at: f64, piece: usize, celsius: f64, instrument: Instrument, places: u8) {
        let temperature = Temperature::from_c(celsius);
        self.write(at, What::CoreRead { piece: id(piece), temperature, instrument, places });
    }
}
