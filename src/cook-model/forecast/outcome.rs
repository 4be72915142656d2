use serde::Serialize;

use crate::piece::PieceId;
use crate::quantity::{Length, Moment, Temperature};

/// The central 80 % of what is likely: one chance in ten below it, one in ten above.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Band<T> {
    /// One chance in ten lies below.
    pub low: T,
    /// As likely above as below.
    pub middle: T,
    /// One chance in ten lies above.
    pub high: T,
}

/// A probability, from 0 to 1.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize)]
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
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Peak {
    /// When it is likely to come.
    pub at: Moment,
    /// How high it is likely to be.
    pub temperature: Band<Temperature>,
}

/// What the readings say of where the leave-in sits.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Seating {
    /// How likely it is that the leave-in is not in the coldest spot.
    pub misplaced: Probability,
    /// About how far off it is.
    #[serde(rename = "off_by_mm")]
    pub off_by: Length,
}

/// What is likely to happen to one piece. Times are absolute.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PieceForecast {
    /// Which piece.
    pub piece: PieceId,
    /// Its core now.
    pub core: Band<Temperature>,
    /// When it reaches its pull temperature if left on: the pull window. None once it is off, or
    /// where it would not get there within the hours looked at.
    pub pull: Option<Band<Moment>>,
    /// The chance that it is at its pull temperature now.
    pub ready: Probability,
    /// The peak after the pull, taken at the middle of its window; after the pull, of this rest.
    pub peak: Option<Peak>,
    /// What is known of the leave-in's seat, if one is in this piece and was read.
    pub seating: Option<Seating>,
    /// The core over time, from when it went on to the end of its rest: moments and bands.
    pub curve: Vec<(Moment, Band<Temperature>)>,
}

/// What is likely to happen, as seen at one moment.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Forecast {
    /// The moment it was made for.
    pub at: Moment,
    /// Each piece, in the order in which they were set out.
    pub pieces: Vec<PieceForecast>,
    /// The pull order: pieces not yet off, the earliest middle of the pull window first.
    pub order: Vec<PieceId>,
}

impl Forecast {
    /// The forecast of one piece, if it was set out.
    pub fn piece(&self, id: PieceId) -> Option<&PieceForecast> {
        self.pieces.iter().find(|piece| piece.piece == id)
    }
}
