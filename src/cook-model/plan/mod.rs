//! The plan back from dinner.
mod draws;
mod fire;
mod late;
mod levers;
mod loading;
mod outlook;
mod request;
mod sampling;
mod slowing;
mod spread;
mod timetable;
mod waves;

pub use fire::{Drift, OffTarget, off_target};
pub use levers::{Lever, Move, levers};
pub use loading::Style;
pub use outlook::{Clock, Outlook, Standing, outlook};
pub use request::{FireHabits, Habits, PlanProblem, Request, Wanted};
pub use timetable::{PiecePlan, Plan, plan, plan_by};
