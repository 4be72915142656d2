//! One file a screen.

mod alarms_here;
mod cautions;
mod cook_log;
mod curves;
mod habits;
pub mod kitchen;
mod live;
mod more;
mod pit_reading;
mod plan;
mod plan_levers;
mod reading;
mod rest;
mod safety;
mod safety_rule;
mod set_out;
mod set_out_dinner;
mod settings;
mod start;
mod thermometer_check;

pub use alarms_here::AlarmsHere;
pub use cautions::Cautions;
pub use cook_log::CookLog;
pub use curves::Curves;
pub use habits::HabitsScreen;
pub use live::Live;
pub use more::More;
pub use pit_reading::PitReading;
pub use plan::PlanScreen;
pub use reading::Reading;
pub use rest::Rest;
pub use safety::Safety;
pub use set_out::SetOut;
pub use settings::Settings;
pub use start::Start;
pub use thermometer_check::ThermometerCheck;
