//! The plain facts of a cook that the log adds up to: what was done to each piece and to the pit,
//! and what was read, in order of time. The forecast, the safety rules and the plan start from
//! these, and know nothing of entries or undo.

use serde::{Deserialize, Serialize};

use crate::heat::PitKind;
use crate::piece::{Piece, PieceId};
use crate::quantity::{Moment, Span, Temperature, TemperatureDifference};
use crate::safety::ProofRule;

/// Names the phone that wrote an entry, so that two phones' logs of one cook can be merged.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct DeviceId(pub u32);

/// Names an entry. Ids are unique, and ordered as the entries were written: a count one higher
/// than any the device had seen (Lamport, 1978), the device deciding between equals.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub struct EntryId {
    /// One more than the highest count seen before.
    pub count: u64,
    /// Who wrote it.
    pub device: DeviceId,
}

/// The thermometer a core temperature was read with.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Instrument {
    /// Poked in for the reading; the lowest of the places tried counts.
    InstantRead,
    /// Left in the piece, so its depth stays the same until it is re-seated.
    LeaveIn,
}

/// One core temperature typed by the cook.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoreReading {
    /// The entry that holds it.
    pub entry: EntryId,
    /// When the thermometer showed it.
    pub at: Moment,
    /// When it was typed.
    pub typed: Moment,
    /// What the thermometer showed, with the offset found for the instrument already applied.
    pub temperature: Temperature,
    /// What the thermometer showed, as typed.
    pub shown: Temperature,
    /// What a proof may take it for: never above what was shown, and lower where any check in
    /// this cook, before or after, found the thermometer to read high.
    pub for_proof: Temperature,
    /// Which thermometer.
    pub instrument: Instrument,
    /// In how many places of the thickest part it was tried; the lowest was typed.
    pub places: u8,
    /// The cook was asked about a surprising value and said that it is right.
    pub vouched: bool,
    /// The same phone holds a reading of another piece typed at the same instant, which no person
    /// can do: one of them is a copy.
    pub copied: bool,
    /// It was taken with a thermometer that a check found further out than can be made good.
    pub barred: bool,
}

/// A time raw meat lay out of the refrigerator.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RawOut {
    /// From when.
    pub from: Moment,
    /// Until when it lay there, if it was put back into the refrigerator.
    pub to: Option<Moment>,
}

/// One spell of a piece on the pit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spell {
    /// When it went on.
    pub on: Moment,
    /// When it came off, if it has.
    pub off: Option<Moment>,
    /// When it was covered with loose foil after coming off, if it was.
    pub covered: Option<Moment>,
}

/// What has happened to one piece.
#[derive(Clone, Debug, PartialEq)]
pub struct PieceHistory {
    /// Which piece.
    pub id: PieceId,
    /// What is known of it raw.
    pub piece: Piece,
    /// Whether it is for tonight's dinner.
    pub tonight: bool,
    /// The pull temperature that the cook chose; none leaves it to the lowest after which the rest
    /// proves the piece.
    pub pull_choice: Option<Temperature>,
    /// The temperature at which to pull it: the choice, what proves a piece that was put back, or, once
    /// a forecast found it, the lowest after which the rest proves.
    pub pull_at: Temperature,
    /// When it lay raw out of the refrigerator before it first went on, as far as that was told.
    pub raw_out: Vec<RawOut>,
    /// Its spells on the pit, in order; none while it is raw, more than one if it was put back.
    pub spells: Vec<Spell>,
    /// The core temperatures read, in order of time.
    pub readings: Vec<CoreReading>,
    /// When the leave-in was put into this piece, or re-seated in it; each begins a new placement.
    pub placements: Vec<Moment>,
    /// The last written entry that puts it on the pit, even one that made no sense by its time.
    /// Ids keep their order when a clock is wrong.
    pub last_put_on: Option<EntryId>,
    /// The entry by which it was served, packed or thrown away.
    pub packed: Option<EntryId>,
    /// Whether it was thrown away.
    pub discarded: bool,
    /// When it was served, packed or thrown away.
    pub packed_at: Option<Moment>,
}

impl PieceHistory {
    /// Whether it was in the refrigerator all the time: not out of it, and not on.
    pub fn was_never_out(&self) -> bool {
        self.raw_out.is_empty() && self.spells.is_empty()
    }

    /// The readings since it last went on.
    pub fn this_spell(&self) -> impl DoubleEndedIterator<Item = &CoreReading> {
        let since = self.spells.last().map(|spell| spell.on);
        self.readings.iter().filter(move |reading| Some(reading.at) >= since)
    }

    /// Its instant-reads since it last went on, in order of time.
    pub fn pokes(&self) -> impl DoubleEndedIterator<Item = &CoreReading> {
        self.this_spell().filter(|reading| reading.instrument == Instrument::InstantRead)
    }

    /// The last of these.
    pub fn last_poke(&self) -> Option<&CoreReading> {
        self.pokes().next_back()
    }

    /// The reading by which it is to come off while it is on the pit: the first of its latest instant-reads
    /// that are all at its pull temperature; one below it told that those before it were not of the
    /// coldest spot. A reading in doubt commands nothing.
    pub fn called_off(&self, in_doubt: impl Fn(&CoreReading) -> bool) -> Option<&CoreReading> {
        let hot = |reading: &&CoreReading| reading.temperature >= self.pull_at;
        let certain = self.pokes().rev().filter(|reading| !in_doubt(reading));
        certain.take_while(hot).last().filter(|_| self.is_on())
    }

    /// When it first went on.
    pub fn on(&self) -> Option<Moment> {
        self.spells.first().map(|spell| spell.on)
    }

    /// When it last came off, unless it is on the pit or was never on.
    pub fn off(&self) -> Option<Moment> {
        self.spells.last().and_then(|spell| spell.off)
    }

    /// Whether it came off unproved and was put back, so that the pit must finish it.
    pub fn was_put_back(&self) -> bool {
        self.spells.len() > 1
    }

    /// Whether it is on the pit.
    pub fn is_on(&self) -> bool {
        self.spells.last().is_some_and(|spell| spell.off.is_none())
    }
}

/// One pit temperature typed by the cook.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PitReading {
    /// When the pit thermometer showed it.
    pub at: Moment,
    /// What it showed.
    pub temperature: Temperature,
}

/// A pit temperature aimed for from a moment on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PitAim {
    /// From when.
    pub at: Moment,
    /// What the cook aims for.
    pub temperature: Temperature,
}

/// One opening of the lid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LidOpening {
    /// When it was opened.
    pub at: Moment,
    /// For how long.
    pub lasted: Span,
}

/// What has happened to the pit.
#[derive(Clone, Debug, PartialEq)]
pub struct PitHistory {
    /// How it heats.
    pub kind: PitKind,
    /// The pit temperature the cook aims for, and expects where nothing was read.
    pub target: Temperature,
    /// Each temperature aimed for, in order of time; the last of them is the target.
    pub aims: Vec<PitAim>,
    /// The pit temperatures read, in order of time.
    pub readings: Vec<PitReading>,
    /// The lid openings told, in order of time.
    pub lid: Vec<LidOpening>,
    /// The air where the pieces rest.
    pub ambient: Temperature,
}

/// How far each thermometer may be off, either way: the figure its maker gives.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Tolerances {
    /// The instant-read.
    #[serde(rename = "instant_read_c")]
    pub instant_read: TemperatureDifference,
    /// The leave-in.
    #[serde(rename = "leave_in_c")]
    pub leave_in: TemperatureDifference,
    /// The pit thermometer.
    #[serde(rename = "pit_c")]
    pub pit: TemperatureDifference,
}

impl Default for Tolerances {
    /// The worst a food business may use: 2 F for food, 3 F for air (FDA Food Code 2022, 4-203.11
    /// and 4-203.12; from memory).
    fn default() -> Self {
        Self {
            instant_read: TemperatureDifference::from_f(2.0),
            leave_in: TemperatureDifference::from_f(2.0),
            pit: TemperatureDifference::from_f(3.0),
        }
    }
}

/// A jump of a phone's clock.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClockJump {
    /// The entry that shows it: the first written by the clock as it is since.
    pub entry: EntryId,
    /// What the clock showed at the last entry before it.
    pub before: Moment,
    /// What it showed at this one.
    pub after: Moment,
}

/// What has happened in one cook.
#[derive(Clone, Debug, PartialEq)]
pub struct History {
    /// Each piece, by its number.
    pub pieces: Vec<PieceHistory>,
    /// The pit.
    pub pit: PitHistory,
    /// How readings prove a piece.
    pub proof_rule: ProofRule,
    /// How far the thermometers may be off.
    pub tolerances: Tolerances,
    /// The chance, in percent, that the cook accepts of finding a piece past its pull temperature
    /// at a check.
    pub check_risk_percent: u8,
    /// Each sign in the log that a phone's clock jumped, in the order of writing: no span of time
    /// across one can be trusted, nor any order by the clock.
    pub clock_jumps: Vec<ClockJump>,
    /// Each note in the log that nobody watched a phone's clock for a while: no span of time across
    /// one can be trusted.
    pub clock_unwatched: Vec<EntryId>,
}

impl PitHistory {
    /// The temperature aimed for at a moment: the first one also before it was set.
    pub fn aim(&self, at: Moment) -> Temperature {
        let set = self.aims.partition_point(|aim| aim.at <= at);
        self.aims.get(set.saturating_sub(1)).map_or(self.target, |aim| aim.temperature)
    }
}

impl History {
    /// The history of one piece, if it was set out.
    pub fn piece(&self, id: PieceId) -> Option<&PieceHistory> {
        self.pieces.iter().find(|piece| piece.id == id)
    }

    /// When the first piece went on.
    pub fn first_on(&self) -> Option<Moment> {
        self.pieces.iter().filter_map(PieceHistory::on).min()
    }
}
