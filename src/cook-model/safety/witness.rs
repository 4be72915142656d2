//! What a reading must be to say anything about safety.

use serde::Serialize;

use super::plausible::{coolest_after, warmest_after};
use crate::history::{CoreReading, EntryId, History, Instrument, PieceHistory, Spell};
use crate::quantity::{Span, Temperature, TemperatureDifference};

/// In how many places of the thickest part a piece must be tried before the lowest counts.
const PLACES_NEEDED: u8 = 2;
/// A reading typed longer after it was taken is a memory, not a reading.
const LATE: Span = Span::minutes(30);
/// A reading cannot be taken after it was typed; a little, for two clocks that nearly agree.
const AHEAD: Span = Span::minutes(1);
/// Two readings of one core at one moment may differ by this: two good thermometers, or one
/// that has not quite settled.
const NOISE: TemperatureDifference = TemperatureDifference::from_f(3.0);
/// How long a reading can still be contradicted by a lower one while the piece stays on the pit,
/// where no core cools.
const CONTRADICTED_ON: Span = Span::minutes(30);
/// The same for a resting piece.
const CONTRADICTED_RESTING: Span = Span::minutes(10);

/// Why a reading does not prove its piece. In the order in which a person should hear of them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "why", rename_all = "snake_case")]
#[non_exhaustive]
pub enum Shortfall {
    /// It was taken, or written, before the piece last went on.
    BeforeThisSpell,
    /// It was written after the piece was served or packed.
    AfterPacking,
    /// It says it was taken after it was typed: a clock is wrong.
    FromTheFuture,
    /// It was typed too long after it was taken.
    TypedLate,
    /// A reading of another piece was typed at the same instant.
    Copied,
    /// A leave-in shows one place only, and it may not be the coldest.
    LeaveIn,
    /// It is below the temperature the rule asks for.
    TooCool,
    /// The piece could not have warmed so fast.
    TooFast,
    /// It does not fit what is otherwise known of the piece, and the cook has not said that it is
    /// right.
    Doubted,
    /// A reading after it shows that some spot was colder.
    Contradicted {
        /// That reading.
        by: EntryId,
    },
    /// It was tried in one place only.
    OnePlace,
}

/// Whether it says it was taken after it was typed: some clock is wrong.
pub(super) fn is_from_the_future(reading: &CoreReading) -> bool {
    reading.at - reading.typed > AHEAD
}

/// The readings of one piece, and what the log says about their worth.
#[derive(Clone, Copy)]
pub(super) struct Witnesses<'a> {
    pub(super) history: &'a History,
    pub(super) piece: &'a PieceHistory,
    pub(super) spell: &'a Spell,
    pub(super) doubted: &'a [EntryId],
}

impl<'a> Witnesses<'a> {
    /// None where the piece was never on.
    pub(super) fn of(
        history: &'a History,
        piece: &'a PieceHistory,
        doubted: &'a [EntryId],
    ) -> Option<Self> {
        Some(Self { history, piece, spell: piece.spells.last()?, doubted })
    }

    /// All readings since it last went on, whatever they are worth.
    pub(super) fn in_spell(self) -> impl DoubleEndedIterator<Item = &'a CoreReading> {
        self.piece.readings.iter().filter(move |reading| self.belongs(reading))
    }

    /// A piece that was put back must be proved again: what was read before says nothing of what
    /// was done to it in between. The order of writing must agree with the order of time, for a
    /// clock can be wrong and the ids cannot.
    fn belongs(self, reading: &CoreReading) -> bool {
        reading.at >= self.spell.on && Some(reading.entry) > self.piece.last_put_on
    }

    /// Why the reading does not show that the whole core was this hot; none if it does.
    pub(super) fn shortfall(self, reading: &CoreReading, claim: Temperature) -> Option<Shortfall> {
        let late = reading.typed - reading.at;
        let too_late_to_count = self.piece.packed.is_some_and(|packed| reading.entry > packed);
        let found = [
            (!self.belongs(reading), Shortfall::BeforeThisSpell),
            (too_late_to_count, Shortfall::AfterPacking),
            (is_from_the_future(reading), Shortfall::FromTheFuture),
            (late > LATE, Shortfall::TypedLate),
            (reading.copied, Shortfall::Copied),
            (reading.instrument == Instrument::LeaveIn, Shortfall::LeaveIn),
            (reading.for_proof < claim, Shortfall::TooCool),
            (self.warmed_too_fast(reading), Shortfall::TooFast),
            (self.doubts(reading), Shortfall::Doubted),
        ];
        let first = found.into_iter().find(|(is_so, _)| *is_so).map(|(_, why)| why);
        first
            .or_else(|| self.contradiction(reading, claim))
            .or((reading.places < PLACES_NEEDED).then_some(Shortfall::OnePlace))
    }

    /// Whether a forecast finds that it does not fit, and the cook has not said that it is right.
    pub(super) fn doubts(self, reading: &CoreReading) -> bool {
        self.doubted.contains(&reading.entry) && !reading.vouched
    }

    /// Whether it is hotter than the piece can have become since it went on raw, or since any
    /// lower reading: a colder spot found two minutes ago is still cold.
    fn warmed_too_fast(self, reading: &CoreReading) -> bool {
        let raw = self.piece.on().map(|on| (on, self.piece.piece.start));
        let earlier = self.in_spell().filter(|other| other.at <= reading.at);
        raw.into_iter().chain(earlier.map(|other| (other.at, other.temperature))).any(
            |(at, from)| {
                let warmest =
                    warmest_after(from, reading.at - at, self.piece, &self.history.pit) + NOISE;
                reading.for_proof > warmest
            },
        )
    }

    /// A reading after it, below the claim, that the core cannot have cooled to by then.
    fn contradiction(self, reading: &CoreReading, claim: Temperature) -> Option<Shortfall> {
        let later = |other: &&CoreReading| (other.at, other.entry) > (reading.at, reading.entry);
        self.in_spell()
            .filter(later)
            .find(|other| {
                let waited = other.at - reading.at;
                let stayed_on = self.spell.off.is_none_or(|off| other.at <= off);
                let (within, coolest) = if stayed_on {
                    (CONTRADICTED_ON, reading.for_proof)
                } else {
                    let pit = &self.history.pit;
                    let coolest = coolest_after(reading.for_proof, waited, self.piece, pit);
                    (CONTRADICTED_RESTING, coolest)
                };
                waited <= within && other.for_proof < claim && other.for_proof + NOISE < coolest
            })
            .map(|other| Shortfall::Contradicted { by: other.entry })
    }
}
