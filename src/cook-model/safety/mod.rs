//! What counts as proof that a piece is safe, and the limits that matter after that.
//!
//! A forecast never proves anything: every function here that speaks of proof takes readings
//! that a person typed, and a forecast's doubts can only take a proof away.
//!
//! Which readings count is decided in `witness`, for every rule alike. Only the instant-read
//! proves, poked in two places or more: a leave-in shows one place, which may not be the coldest,
//! so it tells when to look and, where it is lower, that a proof does not hold. A reading must
//! belong to the piece's last spell by its time and by its id, be typed as it was read, not be
//! hotter than the piece can have become, and not be contradicted by a colder one.
//!
//! `proof` and `held` apply the rules of `rule` to them, with the table of `dwell`; `clocks` has the
//! limits of time, `life` adds them up, `run_out` says what one that ran out means; `lethality` and `pull_target` what a forecast is good for.

mod cautions;
mod clocks;
mod dwell;
mod held;
mod hygiene;
mod lethality;
mod life;
mod order;
mod plausible;
mod proof;
mod pull_target;
mod rule;
mod run_out;
mod second_place;
mod thermometer;
mod witness;

pub use cautions::Caution;
pub use clocks::{
    COOL_FIRST, COOL_FROM, COOL_SECOND, Clock, ClockKind, HOT, LONGEST_WARM_UP, cooling,
    longest_out, longest_out_by_plan,
};
pub use dwell::{DwellRow, FatColumn, LOWEST_HELD, dwell_at, dwell_rows};
pub use held::{HoldProgress, LONGEST_GAP, hold_progress};
pub use hygiene::{Prompt, prompts};
pub use lethality::{ASKED_OF_POULTRY, DeathKinetics, Lethality, SALMONELLA_IN_CHICKEN};
pub use life::{Life, life};
pub use proof::{Proof, prove, shortfall};
pub use pull_target::{lowest_pull, pull_target};
pub use rule::{INSTANT_KILL, ProofRule, RuleCaution};
pub use run_out::{COME_UP, RunOut, Standing, Then, standing};
pub use second_place::SecondPlace;
pub use thermometer::{ALLOWED, Bath, CheckProblem, boiling_point, lower_offset};
pub use witness::{Shortfall, could_prove};
