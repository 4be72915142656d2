//! What the screens are made of.

mod choice;
mod dock;
mod field;
mod heading;
mod keypad;
mod next_step;
mod piece_row;
mod piece_shape;
mod question;
mod setting_field;
mod trouble;

pub use choice::Choice;
pub use dock::Dock;
pub use field::Field;
pub use heading::Heading;
pub use keypad::Keypad;
pub use next_step::{NextStep, perform};
pub use piece_row::{PieceRow, last_reading, level, relative_size};
pub use piece_shape::{PieceShape, stage_name};
pub use question::Question;
pub use setting_field::SettingField;
pub use trouble::Trouble;
