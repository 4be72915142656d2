//! What a reading must be to say anything about safety.

use serde::Serialize;

use super::dwell::LOWEST_HELD;
use super::order::waited;
use super::plausible::{coolest_after, coolest_on, warmest_after};
use crate::history::{CoreReading, EntryId, History, Instrument, PieceHistory, Spell};
use crate::quantity::{Moment, Span, Temperature, TemperatureDifference};

/// The most that carryover adds at rest, where nothing heats a piece any more: 5 to 25 F are told, by
/// size (encyclopedias; common practice).
const CARRYOVER: TemperatureDifference = TemperatureDifference::from_f(25.0);
/// In how many places of the thickest part a piece must be tried before the lowest counts.
const PLACES_NEEDED: u8 = 2;
/// A reading typed longer after it was taken is a memory, not a reading.
const LATE: Span = Span::minutes(30);
/// A reading cannot be taken after it was typed; a little, for two clocks that nearly agree.
const AHEAD: Span = Span::minutes(1);
/// Two readings of one core at one moment may differ by this: two good thermometers, or one
/// that has not quite settled.
const NOISE: TemperatureDifference = TemperatureDifference::from_f(3.0);
/// Readings of one rest closer together than this are looked at together: a core hardly moves
/// meanwhile, and one who pokes until a reading is lucky pokes often (common practice, no source:
/// a reading that does not prove is taken again no sooner).
const ONE_LOOK: Span = Span::minutes(5);
/// Two readings of one core at one moment by one thermometer agree to this: each within 1 F, as
/// makers state for repeated readings (from memory).
const REPEATS: TemperatureDifference = TemperatureDifference::from_f(2.0);

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
    /// The thermometer was found further out than can be made good.
    BadThermometer,
    /// A leave-in shows one place only, and it may not be the coldest.
    LeaveIn,
    /// It is below the temperature the rule asks for.
    TooCool,
    /// The piece could not have warmed so fast.
    TooFast,
    /// It does not fit what is otherwise known of the piece, and the cook has not said that it is
    /// right.
    Doubted,
    /// A reading after it, or one of the same look, shows that some spot was colder.
    Contradicted {
        /// That reading.
        by: EntryId,
    },
    /// It was tried in one place only.
    OnePlace,
}

/// Whether a proof could rest on this reading: an instant-read at a temperature that some rule takes.
pub fn could_prove(reading: &CoreReading) -> bool {
    reading.instrument == Instrument::InstantRead && reading.for_proof >= LOWEST_HELD
}

/// Whether it says it was taken after it was typed: some clock is wrong.
pub(super) fn is_from_the_future(reading: &CoreReading) -> bool {
    reading.at - reading.typed > AHEAD
}

/// The readings of one spell of a piece, and what the log says about their worth.
#[derive(Clone, Copy)]
pub(super) struct Witnesses<'a> {
    pub(super) history: &'a History,
    pub(super) piece: &'a PieceHistory,
    pub(super) spell: &'a Spell,
    /// When the next spell began, if one did.
    next: Option<Moment>,
    pub(super) doubted: &'a [EntryId],
}

impl<'a> Witnesses<'a> {
    /// Those of the last spell. None where the piece was never on.
    pub(super) fn of(
        history: &'a History,
        piece: &'a PieceHistory,
        doubted: &'a [EntryId],
    ) -> Option<Self> {
        Self::of_each_spell(history, piece, doubted).next_back()
    }

    /// Those of each spell, in order.
    pub(super) fn of_each_spell(
        history: &'a History,
        piece: &'a PieceHistory,
        doubted: &'a [EntryId],
    ) -> impl DoubleEndedIterator<Item = Self> {
        piece.spells.iter().enumerate().map(move |(place, spell)| {
            let next = piece.spells.get(place + 1).map(|next| next.on);
            Self { history, piece, spell, next, doubted }
        })
    }

    /// All readings of the spell, whatever they are worth.
    pub(super) fn in_spell(self) -> impl DoubleEndedIterator<Item = &'a CoreReading> {
        self.piece.readings.iter().filter(move |reading| self.belongs(reading))
    }

    /// A piece that was put back must be proved again: what was read before says nothing of what
    /// was done to it in between. The order of writing must agree with the order of time, for a
    /// clock can be wrong and the ids cannot.
    fn belongs(self, reading: &CoreReading) -> bool {
        let written_since_on = Some(reading.entry) >= self.piece.last_put_on;
        match self.next {
            None => reading.at >= self.spell.on && written_since_on,
            Some(next) => (self.spell.on..next).contains(&reading.at) && !written_since_on,
        }
    }

    /// Why the reading does not show that the whole core was this hot; none if it does.
    pub(super) fn shortfall(self, reading: &CoreReading, claim: Temperature) -> Option<Shortfall> {
        let late = reading.typed - reading.at;
        let too_late_to_count = self.piece.packed.is_some_and(|packed| reading.entry >= packed);
        let found = [
            (!self.belongs(reading), Shortfall::BeforeThisSpell),
            (too_late_to_count, Shortfall::AfterPacking),
            (is_from_the_future(reading), Shortfall::FromTheFuture),
            (late > LATE, Shortfall::TypedLate),
            (reading.copied, Shortfall::Copied),
            (reading.barred, Shortfall::BadThermometer),
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
        let (piece, history) = (self.piece, self.history);
        let told = (reading.at, reading.entry);
        let raw = piece.on().and_then(|on| {
            let written = piece.last_put_on.filter(|_| piece.spells.len() == 1);
            let waited =
                written.map_or(Some(reading.at - on), |id| waited(history, (on, id), told));
            waited.map(|waited| (on, waited, piece.piece.start))
        });
        let earlier = self.in_spell().filter_map(|other| {
            let waited = waited(history, (other.at, other.entry), told)?;
            Some((other.at, waited, other.temperature))
        });
        raw.into_iter().chain(earlier).any(|(since, waited, from)| {
            let by_pit = warmest_after(from, since, waited, piece, &history.pit);
            let resting = self.spell.off.is_some_and(|off| since >= off);
            let warmest = if resting { by_pit.min(from + CARRYOVER) } else { by_pit };
            reading.for_proof > warmest + NOISE
        })
    }

    /// A reading below the claim that speaks against it: one that the core cannot have cooled to
    /// since, or one of the same look at a resting piece.
    fn contradiction(self, reading: &CoreReading, claim: Temperature) -> Option<Shortfall> {
        let colder = |other: &&CoreReading| {
            other.for_proof < claim
                && (self.is_unexplained(reading, other) || self.is_one_look(reading, other))
        };
        self.in_spell().find(colder).map(|other| Shortfall::Contradicted { by: other.entry })
    }

    /// Whether the other came later and is colder than the core can have become.
    fn is_unexplained(self, reading: &CoreReading, other: &CoreReading) -> bool {
        let (first, then) = ((reading.at, reading.entry), (other.at, other.entry));
        waited(self.history, first, then)
            .is_some_and(|waited| other.for_proof + NOISE < self.coolest(reading, other, waited))
    }

    /// The coldest the core can be at the other reading. On the pit no core cools unless the fire
    /// fails.
    fn coolest(self, reading: &CoreReading, other: &CoreReading, waited: Span) -> Temperature {
        let pit = &self.history.pit;
        let since_off = self.spell.off.map_or(Span::zero(), |off| other.at - off);
        let resting = waited.min(since_off).max(Span::zero());
        let on = coolest_on(reading, other.at, waited - resting, self.piece, pit);
        coolest_after(on, resting, self.piece, pit)
    }

    /// Whether both were read in one look at a resting piece and differ by more than readings of one
    /// core do: they count as the lower, so that nobody proves a piece by poking until one is lucky.
    fn is_one_look(self, reading: &CoreReading, other: &CoreReading) -> bool {
        let resting = |one: &CoreReading| self.spell.off.is_some_and(|off| one.at >= off);
        let (one, two) = ((reading.at, reading.entry), (other.at, other.entry));
        let apart = waited(self.history, one, two).or_else(|| waited(self.history, two, one));
        resting(reading)
            && resting(other)
            && apart.is_some_and(|apart| apart < ONE_LOOK)
            && other.for_proof + REPEATS < reading.for_proof
    }
}
