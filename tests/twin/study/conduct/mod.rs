//! A whole cook as a person conducts it who acts on the duties alone, from putting on until every piece
//! is served or bagged; and what is counted of it.

mod day;
mod figures;
mod hands;
pub mod kept;
mod look;
mod outcome;
mod person;
pub mod pulls;
mod table;
mod typing;
mod world;

pub use day::Day;
pub use figures::Figures;
pub use outcome::{FirstRest, OfPiece, Outcome};
pub use table::{SIZES, table};
pub use world::World;

use crate::cook::{Cook, Setup};
use crate::diary::Diary;
use crate::record::MESH;

use person::Person;

/// Has a person cook a setup of the simulator's on such a day.
pub fn cook(setup: &Setup, day: &Day) -> Outcome {
    cook_in(Cook::new(setup.clone(), MESH), Diary::with_pulls_left_open(setup), day)
}

/// Has a person cook what a diary has set out, in some world.
pub fn cook_in(world: impl World, diary: Diary, day: &Day) -> Outcome {
    Person::new(world, diary, day).cook()
}
