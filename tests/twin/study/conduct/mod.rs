//! A whole cook as a person conducts it who acts on the duties alone, from putting on until every piece
//! is served or bagged; and what is counted of it.

mod day;
mod figures;
mod hands;
mod look;
mod outcome;
mod person;
mod typing;
mod world;

pub use day::Day;
pub use figures::Figures;
pub use outcome::{OfPiece, Outcome};
pub use world::World;

use crate::cook::{Cook, Setup};
use crate::record::MESH;

use person::Person;

/// Has a person cook a setup of the simulator's on such a day.
pub fn cook(setup: &Setup, day: &Day) -> Outcome {
    Person::new(Cook::new(setup.clone(), MESH), setup, day).cook()
}
