//! A cook as a log of entries, the state that the log adds up to, one look at it, and what to do.

pub mod alarms;
mod back_on;
mod clock;
mod draft;
pub mod duties;
mod entry;
pub mod export;
pub mod gear;
pub mod heal;
mod heed;
pub mod limits;
pub mod mend;
mod offset;
mod planning;
mod problem;
pub mod rack;
pub mod ringing;
mod round;
mod seen;
mod settings;
mod stage;
mod state;
pub mod thinking;
mod watch;

pub use crate::history::{DeviceId, EntryId};
pub use clock::{CLOCK_SET, hold_may_be_under_way, was_set_back, was_unwatched};
pub use draft::SECOND_PLACE_WITHIN;
pub use entry::{Chore, Entry, Log, What};
pub use problem::{Ignored, Problem};
pub use round::{ROUND_LASTS, Round};
pub use seen::Seen;
pub use settings::Settings;
pub use stage::Stage;
pub use state::{CookState, PieceState, fold};
pub use watch::forecast_lethality;
