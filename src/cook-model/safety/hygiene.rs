//! Where raw could reach cooked, and the prompt that belongs there.

use serde::{Deserialize, Serialize};

use super::clocks::HOT;
use crate::history::{CoreReading, EntryId, History, Instrument};

/// Something to do so that raw does not reach cooked (common practice; USDA's "separate").
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(remote = "Self", rename_all = "snake_case")]
pub enum Prompt {
    /// Clean the probe before the next piece: this reading was under 140 F.
    CleanProbe {
        /// The reading.
        after: EntryId,
    },
    /// Take a clean plate for what comes off, not the one the raw pieces lay on.
    CleanPlate,
}

crate::tagged::stored_with_kind!(Prompt);

/// The prompts that belong to this moment of a cook, without those dismissed.
pub fn prompts(history: &History, dismissed: &[Prompt]) -> Vec<Prompt> {
    let probe = last_poke(history)
        .filter(|reading| reading.for_proof < HOT)
        .map(|reading| Prompt::CleanProbe { after: reading.entry });
    let plate = something_comes_off(history).then_some(Prompt::CleanPlate);
    probe.into_iter().chain(plate).filter(|prompt| !dismissed.contains(prompt)).collect()
}

/// The last reading for which a probe was poked into some piece.
fn last_poke(history: &History) -> Option<&CoreReading> {
    let all = history.pieces.iter().flat_map(|piece| &piece.readings);
    all.filter(|reading| reading.instrument == Instrument::InstantRead)
        .max_by_key(|reading| (reading.at, reading.entry))
}

/// Whether a piece has been read at its pull temperature, or was pulled, and not all are packed.
fn something_comes_off(history: &History) -> bool {
    history.pieces.iter().filter(|piece| piece.packed.is_none()).any(|piece| {
        let ready = piece.readings.iter().any(|reading| reading.temperature >= piece.pull_at);
        piece.off().is_some() || (piece.is_on() && ready)
    })
}
