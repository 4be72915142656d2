//! The plan back from dinner.
mod draws;
mod loading;
mod request;
mod sampling;
mod spread;
mod timetable;
mod waves;

pub use loading::Style;
pub use request::{FireHabits, Habits, PlanProblem, Request, Wanted};
pub use timetable::{PiecePlan, Plan, plan};
