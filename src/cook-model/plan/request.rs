use serde::{Deserialize, Serialize};
use thiserror::Error;

use super::Style;
use crate::heat::PitKind;
use crate::history::{History, PieceHistory, PitHistory, Tolerances};
use crate::piece::{Piece, PieceId};
use crate::quantity::{Moment, Span, Temperature, TemperatureDifference, as_minutes};
use crate::safety::{ProofRule, pull_target};

/// One piece to plan for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wanted {
    /// Its number.
    pub id: PieceId,
    /// What is known of it.
    pub piece: Piece,
    /// Whether it is for tonight's dinner; the others only have to be cooked.
    pub tonight: bool,
}

/// What the cook is used to doing with the fire.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct FireHabits {
    /// From lighting to the pit being up to temperature.
    #[serde(rename = "preheat_min", with = "as_minutes")]
    pub preheat: Span,
    /// How often wood or charcoal goes on; zero where one load lasts.
    #[serde(rename = "feed_every_min", with = "as_minutes")]
    pub feed_every: Span,
}

impl FireHabits {
    /// What owners of such a pit do (common practice, no source): a burner is hot in a quarter of an hour,
    /// thick walls take longest; an offset is fed every three quarters of an hour, a kettle every hour, and
    /// one load of charcoal in the others outlasts a cook of breasts.
    pub const fn usual(kind: PitKind) -> Self {
        let (preheat, feed_every) = match kind {
            PitKind::Indirect => (40, 45),
            PitKind::Kettle => (30, 60),
            PitKind::Ceramic => (45, 0),
            PitKind::Drum | PitKind::Water => (40, 0),
            PitKind::Pellet | PitKind::Gas => (15, 0),
            PitKind::Electric => (40, 0),
        };
        Self { preheat: Span::minutes(preheat), feed_every: Span::minutes(feed_every) }
    }

    /// How often the fire is fed; none where the pit feeds itself or one load lasts.
    pub fn fed_every(&self, kind: PitKind) -> Option<Span> {
        (kind.is_fed() && self.feed_every >= Span::minutes(1)).then_some(self.feed_every)
    }
}

/// How long things take around the cook itself.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Habits {
    /// The fire.
    pub fire: FireHabits,
    /// How long before it goes on meat leaves the refrigerator.
    #[serde(rename = "out_of_fridge_min", with = "as_minutes")]
    pub out_of_fridge: Span,
    /// How long seasoning takes.
    #[serde(rename = "seasoning_min", with = "as_minutes")]
    pub seasoning: Span,
    /// How long a piece rests under foil before it is carved.
    #[serde(rename = "rest_min", with = "as_minutes")]
    pub rest: Span,
    /// From the last piece rested to people eating: carving, and sides that wait for the cook.
    #[serde(rename = "carving_min", with = "as_minutes")]
    pub carving: Span,
}

impl Default for Habits {
    /// Common practice, no source; a cook's own times replace these.
    fn default() -> Self {
        Self {
            fire: FireHabits::usual(PitKind::default()),
            out_of_fridge: Span::minutes(20),
            seasoning: Span::minutes(10),
            rest: Span::minutes(10),
            carving: Span::minutes(10),
        }
    }
}

/// Everything a plan starts from.
#[derive(Clone, Debug, PartialEq)]
pub struct Request {
    /// The pieces, in the order in which they were set out.
    pub pieces: Vec<Wanted>,
    /// How much hotter than the rack's mean each place on it is; as many places as pieces fit.
    pub places: Vec<TemperatureDifference>,
    /// The kind of pit.
    pub pit_kind: PitKind,
    /// The pit temperature.
    pub pit: Temperature,
    /// The air where the pieces rest.
    pub ambient: Temperature,
    /// The pull temperature that the cook chose for all pieces; none leaves it to the lowest after which
    /// the rest proves a piece.
    pub pull_choice: Option<Temperature>,
    /// How readings prove a piece.
    pub proof_rule: ProofRule,
    /// When people eat.
    pub dinner: Moment,
    /// How the pieces of a wave follow each other.
    pub style: Style,
    /// How long things take.
    pub habits: Habits,
    /// The moment of planning: nothing can be planned before it.
    pub now: Moment,
}

impl Request {
    /// The pieces as if none had been on yet, on a pit that keeps its target: what the forecast of
    /// the times on the pit starts from.
    pub fn raw(&self) -> History {
        let piece = |wanted: &Wanted| PieceHistory {
            id: wanted.id,
            piece: wanted.piece,
            tonight: wanted.tonight,
            pull_choice: self.pull_choice,
            pull_at: pull_target(self.proof_rule, false, self.pull_choice, None),
            raw_out: Vec::new(),
            spells: Vec::new(),
            readings: Vec::new(),
            placements: Vec::new(),
            last_put_on: None,
            packed: None,
            discarded: false,
            packed_at: None,
        };
        History {
            pieces: self.pieces.iter().map(piece).collect(),
            pit: PitHistory {
                kind: self.pit_kind,
                target: self.pit,
                aims: Vec::new(),
                readings: Vec::new(),
                lid: Vec::new(),
                ambient: self.ambient,
            },
            proof_rule: self.proof_rule,
            tolerances: Tolerances::default(),
            check_risk_percent: 10,
            clock_jumps: Vec::new(),
            clock_unwatched: Vec::new(),
        }
    }
}

/// Why there is no plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error, Serialize, Deserialize)]
#[non_exhaustive]
pub enum PlanProblem {
    /// No piece was set out.
    #[error("set out at least one piece first")]
    NoPieces,
    /// The rack has no place.
    #[error("the rack needs at least one place")]
    NoPlaces,
    /// Dinner is not in the future.
    #[error("dinner must be later than now")]
    DinnerPast,
    /// At this pit temperature a piece would not get to its pull temperature within the day.
    #[error("the pit is too cool for this pull temperature")]
    NeverDone,
}
