//! One piece while the log is folded: what each entry does to it, and when it makes no sense.

use super::{Entry, EntryId, Problem, Settings};
use crate::history::{CoreReading, PieceHistory, RawOut, Spell};
use crate::piece::{Piece, PieceId};
use crate::quantity::{Moment, Span, Temperature};
use crate::safety::pull_target;

/// A second place tried later than this after the reading says nothing of the moment of the
/// reading: it is a new reading.
pub const SECOND_PLACE_WITHIN: Span = Span::minutes(5);

/// One piece under way.
pub(super) struct Draft {
    pub(super) name: String,
    pub(super) piece: Piece,
    /// What was chosen for it, none being a choice too; none where nothing was chosen.
    pub(super) own_pull_target: Option<Option<Temperature>>,
    pub(super) placements: Vec<Moment>,
    pub(super) later: bool,
    raw_out: Vec<RawOut>,
    spells: Vec<Spell>,
    readings: Vec<CoreReading>,
    packed: Option<(EntryId, Moment)>,
    discarded: bool,
}

impl Draft {
    pub(super) fn new(name: String, piece: Piece) -> Self {
        Self {
            name,
            piece,
            own_pull_target: None,
            placements: Vec::new(),
            later: false,
            raw_out: Vec::new(),
            spells: Vec::new(),
            readings: Vec::new(),
            packed: None,
            discarded: false,
        }
    }

    pub(super) fn was_never_on(&self) -> bool {
        self.spells.is_empty()
    }

    pub(super) fn is_on(&self) -> bool {
        self.spells.last().is_some_and(|spell| spell.off.is_none())
    }

    /// It lies raw out of the refrigerator from now on; nothing new if it did already.
    pub(super) fn take_out(&mut self, at: Moment) -> Result<(), Problem> {
        if !self.spells.is_empty() {
            return Err(Problem::AlreadyOn);
        }
        if self.raw_out.last().is_none_or(|out| out.to.is_some()) {
            self.raw_out.push(RawOut { from: at, to: None });
        }
        Ok(())
    }

    /// It is back in the refrigerator, raw.
    pub(super) fn put_away(&mut self, at: Moment) -> Result<(), Problem> {
        if !self.spells.is_empty() {
            return Err(Problem::AlreadyOn);
        }
        if let Some(out) = self.raw_out.last_mut().filter(|out| out.to.is_none()) {
            out.to = Some(at);
        }
        Ok(())
    }

    pub(super) fn put_on(&mut self, entry: &Entry) -> Result<(), Problem> {
        if self.packed.is_some() {
            return Err(Problem::AlreadyPacked);
        }
        if self.is_on() {
            return Err(Problem::AlreadyOn);
        }
        self.spells.push(Spell { on: entry.happened, off: None, covered: None });
        Ok(())
    }

    pub(super) fn read_core(&mut self, reading: CoreReading) -> Result<(), Problem> {
        if self.packed.is_some() {
            return Err(Problem::AlreadyPacked);
        }
        if self.spells.is_empty() {
            return Err(Problem::NotOnYet);
        }
        self.readings.push(reading);
        Ok(())
    }

    pub(super) fn has_reading(&self, id: EntryId) -> bool {
        self.readings.iter().any(|reading| reading.entry == id)
    }

    pub(super) fn reading(&mut self, id: EntryId) -> Option<&mut CoreReading> {
        self.readings.iter_mut().find(|reading| reading.entry == id)
    }

    pub(super) fn try_second_place(&mut self, id: EntryId, entry: &Entry) -> Result<(), Problem> {
        if self.packed.is_some() {
            return Err(Problem::AlreadyPacked);
        }
        let since_on = self.spells.last().map(|spell| spell.on);
        let reading = self.reading(id).ok_or(Problem::UnknownReading)?;
        let in_time = entry.happened - reading.at <= SECOND_PLACE_WITHIN;
        if id >= entry.id || !in_time || Some(reading.at) < since_on {
            return Err(Problem::TooLate);
        }
        reading.places = reading.places.max(2);
        Ok(())
    }

    pub(super) fn pull(&mut self, at: Moment) -> Result<(), Problem> {
        let spell = self.spells.last_mut().ok_or(Problem::NotOnYet)?;
        if spell.off.is_some() {
            return Err(Problem::AlreadyOff);
        }
        spell.off = Some(at);
        Ok(())
    }

    pub(super) fn cover(&mut self, at: Moment) -> Result<(), Problem> {
        let spell = self.spells.last_mut().ok_or(Problem::NotOnYet)?;
        if spell.off.is_none() {
            return Err(Problem::AlreadyOn);
        }
        spell.covered.get_or_insert(at);
        Ok(())
    }

    pub(super) fn pack(&mut self, entry: &Entry) -> Result<(), Problem> {
        if self.spells.is_empty() {
            return Err(Problem::NotOnYet);
        }
        if self.is_on() {
            return Err(Problem::AlreadyOn);
        }
        self.packed.get_or_insert((entry.id, entry.happened));
        Ok(())
    }

    /// Throws it away, from wherever it is.
    pub(super) fn discard(&mut self, entry: &Entry) {
        if let Some(spell) = self.spells.last_mut() {
            spell.off.get_or_insert(entry.happened);
        }
        self.packed.get_or_insert((entry.id, entry.happened));
        self.discarded = true;
    }

    /// The name and what has happened, with the pull temperature of all pieces where none was chosen
    /// for it, and the last entry that puts it on.
    pub(super) fn finish(
        self,
        id: PieceId,
        settings: &Settings,
        last_put_on: Option<EntryId>,
    ) -> (String, PieceHistory) {
        let pull_choice = self.own_pull_target.unwrap_or(settings.pull_target);
        let history = PieceHistory {
            id,
            piece: self.piece,
            tonight: !self.later,
            pull_choice,
            pull_at: pull_target(settings.proof_rule, self.spells.len() > 1, pull_choice, None),
            raw_out: self.raw_out,
            spells: self.spells,
            readings: self.readings,
            placements: self.placements,
            last_put_on,
            packed: self.packed.map(|(entry, _)| entry),
            packed_at: self.packed.map(|(_, at)| at),
            discarded: self.discarded,
        };
        (self.name, history)
    }
}
