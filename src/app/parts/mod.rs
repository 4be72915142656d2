//! What the screens are made of.

mod alarm_bar;
mod axes;
mod back_to_cook;
mod banners;
mod choice;
mod cross_section;
mod curve;
mod dock;
mod field;
mod frame;
mod heading;
mod keypad;
mod next_step;
mod piece_row;
mod piece_shape;
mod pit_curve;
mod question;
mod setting_field;
mod trouble;

pub use alarm_bar::AlarmBar;
pub use back_to_cook::BackToCook;
pub use banners::{DemoBanner, NewVersion};
pub use choice::Choice;
pub use cross_section::CrossSection;
pub use curve::{Curve, Zoom};
pub use dock::Dock;
pub use field::Field;
pub use heading::Heading;
pub use keypad::Keypad;
pub use next_step::{NextStep, perform};
pub use piece_row::{PieceRow, last_reading, level, relative_size};
pub use piece_shape::{PieceShape, stage_name};
pub use pit_curve::PitCurve;
pub use question::Question;
pub use setting_field::SettingField;
pub use trouble::Trouble;
