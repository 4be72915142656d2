use serde::{Deserialize, Serialize};

use crate::history::EntryId;
use crate::piece::PieceId;
use crate::quantity::{Length, Moment, Temperature, TemperatureDifference, to_seconds};

/// The central 80 % of what is likely: one chance in ten below it, one in ten above.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Band<T> {
    /// One chance in ten lies below.
    pub low: T,
    /// As likely above as below.
    pub middle: T,
    /// One chance in ten lies above.
    pub high: T,
}

/// A piece hotter than this when it is pulled is past it: drier than it need be (common practice, no
/// source: two degrees above the 165 F that prove it).
const PAST: Temperature = Temperature::from_f(167.0);
/// But no piece is past its pull within so little above it: nobody pulls to the degree.
const PAST_BY: TemperatureDifference = TemperatureDifference::from_f(3.0);

/// From which temperature on a piece is past its pull.
pub fn past(pull_at: Temperature) -> Temperature {
    PAST.max(pull_at + PAST_BY)
}

/// A probability, from 0 to 1.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Probability(f64);

impl Probability {
    /// A probability; a number outside 0 to 1 is taken to the nearer end, not-a-number to 0.
    pub fn new(value: f64) -> Self {
        Self(if value > 0.0 { value.min(1.0) } else { 0.0 })
    }

    /// From 0 to 1.
    pub const fn value(self) -> f64 {
        self.0
    }
}

/// The highest core temperature after the pull.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Peak {
    /// When it is likely to come.
    pub at: Moment,
    /// How high it is likely to be.
    #[serde(rename = "temperature_c")]
    pub temperature: Band<Temperature>,
}

/// What the readings say of where the leave-in sits.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Seating {
    /// How likely it is that the leave-in is not in the coldest spot.
    pub misplaced: Probability,
    /// About how far off it is.
    #[serde(rename = "off_by_mm")]
    pub off_by: Length,
    /// Whether an instant-read of the piece was taken since it was put in.
    pub poked: bool,
}

/// A leave-in more likely than this to be misplaced is suspected: to re-seat one in vain costs a
/// minute, to trust one that missed costs the piece.
const SUSPECT: f64 = 0.3;
/// The same while no instant-read was taken beside it: what speaks against it is then the forecast
/// alone, and the lid would be opened for it.
const SUSPECT_UNREAD: f64 = 0.5;

impl Seating {
    /// Whether the leave-in is worth re-seating, and not to be trusted before.
    pub fn is_suspect(&self) -> bool {
        self.misplaced.value() > if self.poked { SUSPECT } else { SUSPECT_UNREAD }
    }
}

/// What is likely to happen to one piece. Times are absolute.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PieceForecast {
    /// Which piece.
    pub piece: PieceId,
    /// Its core now.
    #[serde(rename = "core_c")]
    pub core: Band<Temperature>,
    /// The temperature at which to pull it: the cook's choice, or the lowest after which its rest
    /// proves it.
    #[serde(rename = "pull_at_c")]
    pub pull_at: Temperature,
    /// The lowest pull after which readings at rest prove it in 19 cases of 20, whatever was chosen.
    #[serde(rename = "proving_pull_c")]
    pub proving: Temperature,
    /// The chance that a pull at `pull_at` leaves it short of what proves it, so that it must go back.
    /// None once it is off.
    pub goes_back: Option<Probability>,
    /// When it reaches its pull temperature if left on: the pull window. None once it is off, or
    /// where it would not get there within the hours looked at.
    pub pull: Option<Band<Moment>>,
    /// The chance that it is at its pull temperature now.
    pub ready: Probability,
    /// The latest moment for the next check: until then the chance that it is past its pull
    /// temperature ([`past`]) stays within the cook's limit. Where
    /// it is not likely to get there, the next look, to find out why. None once it is off.
    pub check_by: Option<Moment>,
    /// The peak after the pull, taken at the middle of its window; after the pull, of this rest.
    pub peak: Option<Peak>,
    /// What is known of the leave-in's seat, if one is in this piece and was read.
    pub seating: Option<Seating>,
    /// The core over time, from when it went on to the end of its rest: moments and bands.
    #[serde(rename = "curve_c", with = "super::points")]
    pub curve: Vec<(Moment, Band<Temperature>)>,
    /// The core over time if it is left on, from the moment of the forecast on. Empty once it is off.
    #[serde(rename = "left_on_c", with = "super::points")]
    pub left_on: Vec<(Moment, Band<Temperature>)>,
}

impl PieceForecast {
    /// Its core at a moment: on the pit as if left on, later as it rests.
    pub fn core_at(&self, at: Moment) -> Band<Temperature> {
        let to_come = self.left_on.first().is_some_and(|(from, _)| *from <= at);
        let curve = if to_come { &self.left_on } else { &self.curve };
        let next = curve.partition_point(|(moment, _)| *moment <= at);
        match (next.checked_sub(1).and_then(|i| curve.get(i)), curve.get(next)) {
            (Some((from, a)), Some((to, b))) => {
                let share = to_seconds(at - *from) / to_seconds(*to - *from);
                let between = |a: Temperature, b: Temperature| a + (b - a) * share;
                Band {
                    low: between(a.low, b.low),
                    middle: between(a.middle, b.middle),
                    high: between(a.high, b.high),
                }
            }
            (Some((_, only)), None) | (None, Some((_, only))) => *only,
            (None, None) => self.core,
        }
    }

    /// When its core, left on, is likely to have reached a temperature. None where that is further off
    /// than it is followed, or before the forecast was made.
    pub fn reaches(&self, temperature: Temperature) -> Option<Moment> {
        let above = |(_, core): &&(Moment, Band<Temperature>)| core.middle >= temperature;
        self.left_on.iter().find(above).map(|(at, _)| *at)
    }
}

/// A reading that does not fit what is otherwise known, and about which the cook is to be asked.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Surprise {
    /// The piece.
    pub piece: PieceId,
    /// The entry that holds the reading.
    pub entry: EntryId,
    /// What was read.
    #[serde(rename = "read_c")]
    pub read: Temperature,
    /// What this thermometer would have shown at that moment, by all other readings.
    #[serde(rename = "expected_c")]
    pub expected: Band<Temperature>,
    /// The chance that it is a slip: mistyped, of another piece, or not in the meat.
    pub slip: Probability,
}

/// One opening of the lid to come, and the pieces to read at it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Check {
    /// When to open.
    pub at: Moment,
    /// The pieces to read, the one due first at the front.
    pub pieces: Vec<PieceId>,
}

/// What is likely to happen, as seen at one moment.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Forecast {
    /// The moment it was made for.
    pub at: Moment,
    /// Each piece, in the order in which they were set out.
    pub pieces: Vec<PieceForecast>,
    /// The pull order: pieces not yet off, the earliest middle of the pull window first.
    pub order: Vec<PieceId>,
    /// For each piece in the order but the last, the chance that it is ready before the next.
    pub order_certainty: Vec<Probability>,
    /// The lid openings to come until the last piece is off, in order of time. Those after the
    /// first assume that each reading comes out as expected.
    pub checks: Vec<Check>,
    /// Readings to ask the cook about, the latest last.
    pub surprises: Vec<Surprise>,
}

impl Forecast {
    /// The forecast of a cook of which nothing is known.
    pub fn nothing(at: Moment) -> Self {
        Self {
            at,
            pieces: Vec::new(),
            order: Vec::new(),
            order_certainty: Vec::new(),
            checks: Vec::new(),
            surprises: Vec::new(),
        }
    }

    /// The forecast of one piece, if it was set out.
    pub fn piece(&self, id: PieceId) -> Option<&PieceForecast> {
        self.pieces.iter().find(|piece| piece.piece == id)
    }
}
