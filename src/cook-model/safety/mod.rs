//! What counts as proof that a piece is safe, and the limits that matter after that.
//!
//! A forecast never proves anything: every function here that speaks of proof takes readings
//! that a person typed.

mod dwell;
mod held;
mod lethality;
mod plausible;
mod proof;
mod rule;
mod witness;

pub use dwell::{DwellRow, FatColumn, dwell_at, dwell_rows};
pub use held::{HoldProgress, LONGEST_GAP, hold_progress};
pub use lethality::{ASKED_OF_POULTRY, DeathKinetics, Lethality, SALMONELLA_IN_CHICKEN};
pub use proof::{Proof, prove, shortfall};
pub use rule::{INSTANT_KILL, ProofRule, RuleCaution};
pub use witness::Shortfall;
