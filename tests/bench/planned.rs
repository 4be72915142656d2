//! The dinner that is planned.

use chrono::DateTime;
use cook_model::heat::PitKind;
use cook_model::piece::PieceId;
use cook_model::plan::{Habits, Request, Style, Wanted};
use cook_model::quantity::{Span, Temperature, TemperatureDifference};
use cook_model::safety::ProofRule;

use crate::cook::{PIT, facts};

/// So many pieces of usual sizes for a rack with so many places, half of them for tonight.
pub fn request(pieces: u32, places: u32) -> Request {
    let now = DateTime::from_timestamp(1_780_000_000, 0).unwrap_or_default();
    let wanted = |n| Wanted { id: PieceId(n), piece: facts(n), tonight: n % 2 == 0 };
    Request {
        pieces: (1..=pieces).map(wanted).collect(),
        places: vec![TemperatureDifference::ZERO; places as usize],
        pit_kind: PitKind::Indirect,
        pit: PIT,
        ambient: Temperature::from_f(68.0),
        pull_choice: Some(Temperature::from_f(160.0)),
        proof_rule: ProofRule::Instant,
        dinner: now + Span::hours(8),
        style: Style::default(),
        habits: Habits::default(),
        now,
    }
}
