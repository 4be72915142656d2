//! What counts as proof that a piece is safe, and the limits that matter after that.
//!
//! A forecast never proves anything: every function here takes readings that a person typed.

mod proof;

pub use proof::{Proof, ProofRule, prove};
