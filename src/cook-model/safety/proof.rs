use serde::Serialize;

use super::held::held;
use super::rule::ProofRule;
use super::witness::{Shortfall, Witnesses};
use crate::history::{CoreReading, EntryId, History, PieceHistory};
use crate::quantity::{Moment, Temperature};

/// The readings that proved a piece.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Proof {
    /// The entry that completed it.
    pub entry: EntryId,
    /// When that was read.
    pub at: Moment,
    /// The temperature proved: as read by a rule that proves at once, or the lowest of the
    /// readings through which the piece was held.
    #[serde(rename = "temperature_c")]
    pub temperature: Temperature,
    /// The first of the readings through which it was held; none where it was proved at once.
    pub held_since: Option<EntryId>,
}

/// The proof of a piece under a rule, if its own readings since it last went on give one.
///
/// Each reading must stand on its own: see [`Shortfall`] for what makes it say nothing. No
/// forecast helps to prove a piece; `doubted` are the readings that one finds not to fit, which
/// prove nothing until the cook vouches for them.
pub fn prove(
    history: &History,
    piece: &PieceHistory,
    rule: ProofRule,
    doubted: &[EntryId],
) -> Option<Proof> {
    let witnesses = Witnesses::of(history, piece, doubted)?;
    let at_once = witnesses
        .in_spell()
        .find(|reading| witnesses.shortfall(reading, rule.instant()).is_none())
        .map(|reading| Proof {
            entry: reading.entry,
            at: reading.at,
            temperature: reading.for_proof,
            held_since: None,
        });
    match rule {
        ProofRule::Held { fat } => at_once.or_else(|| held(witnesses, fat)),
        ProofRule::Instant | ProofRule::Stricter { .. } => at_once,
    }
}

/// Why a reading of this piece does not prove it at once; none if it does.
pub fn shortfall(
    history: &History,
    piece: &PieceHistory,
    rule: ProofRule,
    doubted: &[EntryId],
    reading: &CoreReading,
) -> Option<Shortfall> {
    match Witnesses::of(history, piece, doubted) {
        Some(witnesses) => witnesses.shortfall(reading, rule.instant()),
        None => Some(Shortfall::BeforeThisSpell),
    }
}
