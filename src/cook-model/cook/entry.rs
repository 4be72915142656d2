use serde::{Deserialize, Serialize};

use crate::heat::PitKind;
use crate::history::{EntryId, Instrument, Tolerances};
use crate::log;
use crate::piece::{Piece, PieceId};
use crate::plan::{Habits, Style};
use crate::quantity::{Moment, Temperature, TemperatureDifference};
use crate::safety::{Prompt, ProofRule};

/// One thing that happened in a cook.
pub type Entry = log::Entry<What>;

/// All entries of one cook.
pub type Log = log::Log<What>;

/// Something to do around the cook that no reading tells of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Chore {
    /// Take the meat from the refrigerator: all pieces that are raw then. Pieces taken out at
    /// different times have [`What::TakenOut`].
    OutOfFridge,
    /// Season it.
    Season,
    /// Light the fire, or switch the pit on.
    LightFire,
    /// Put on wood or charcoal.
    FeedFire,
}

/// What can happen in a cook. In the stored form each has its `kind`; temperatures are in
/// degrees Celsius, lengths in millimetres, weights in grams, spans in seconds.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(remote = "Self", rename_all = "snake_case")]
#[non_exhaustive]
pub enum What {
    /// The pit temperature to aim for was set.
    PitTargetSet {
        /// The temperature at the rack.
        #[serde(rename = "target_c")]
        target: Temperature,
    },
    /// The kind of pit was told.
    PitKindSet {
        /// How it heats.
        pit: PitKind,
    },
    /// The places on the rack were told.
    RackSet {
        /// How much hotter than the rack's mean each place is; as many as pieces fit.
        places_c: Vec<TemperatureDifference>,
    },
    /// The times that things take around the cook were told.
    HabitsSet {
        /// Each one's.
        habits: Habits,
    },
    /// How pieces follow each other was chosen.
    StyleSet {
        /// All on together, or all off together.
        style: Style,
    },
    /// Whether a piece is for tonight's dinner was told.
    TonightSet {
        /// Which piece.
        piece: PieceId,
        /// Whether it is; a piece is until told otherwise.
        tonight: bool,
    },
    /// The air where the pieces rest was told.
    AmbientSet {
        /// Its temperature.
        #[serde(rename = "ambient_c")]
        ambient: Temperature,
    },
    /// The time to eat was set, or taken back.
    DinnerSet {
        /// When people eat.
        at: Option<Moment>,
    },
    /// The pull temperature was set for one piece, or for all that have none of their own.
    PullTargetSet {
        /// Which piece; none means all.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        piece: Option<PieceId>,
        /// The temperature at which to pull; none leaves it to the lowest after which the rest proves.
        #[serde(rename = "target_c")]
        target: Option<Temperature>,
    },
    /// The rule by which readings prove a piece was chosen.
    ProofRuleSet {
        /// The rule.
        rule: ProofRule,
    },
    /// The thermometers' tolerances were told.
    TolerancesSet {
        /// Each one's.
        tolerances: Tolerances,
    },
    /// The chance that a piece may be past its pull temperature at a check was chosen.
    CheckRiskSet {
        /// In percent.
        percent: u8,
    },
    /// A piece was set out, or its facts were typed again.
    PieceSetOut {
        /// Its number.
        piece: PieceId,
        /// What is known of it.
        facts: Piece,
        /// The cook's own name for it, where a number is not enough.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        name: String,
    },
    /// A piece set out by mistake was taken away before it went on.
    PieceTakenAway {
        /// Which piece.
        piece: PieceId,
    },
    /// Raw pieces were taken out of the refrigerator: their time above 41 F counts from here.
    TakenOut {
        /// Which pieces.
        pieces: Vec<PieceId>,
    },
    /// Raw pieces were put back into the refrigerator. The time they were out stays with them.
    BackInFridge {
        /// Which pieces.
        pieces: Vec<PieceId>,
    },
    /// A piece went on the pit, for the first time or again.
    PutOn {
        /// Which piece.
        piece: PieceId,
    },
    /// A chore was done.
    ChoreDone {
        /// Which.
        chore: Chore,
    },
    /// The pit thermometer was read.
    PitRead {
        /// What it showed.
        #[serde(rename = "temperature_c")]
        temperature: Temperature,
    },
    /// A core temperature was read.
    CoreRead {
        /// Of which piece.
        piece: PieceId,
        /// What the thermometer showed: the lowest of the places tried.
        #[serde(rename = "temperature_c")]
        temperature: Temperature,
        /// Which thermometer.
        instrument: Instrument,
        /// In how many places of the thickest part it was tried.
        places: u8,
    },
    /// A second place of the same piece was tried and showed no lower than the reading named.
    SecondPlaceTried {
        /// The reading.
        reading: EntryId,
    },
    /// The cook was asked about a surprising reading and said that it is right.
    ReadingVouched {
        /// The reading.
        reading: EntryId,
    },
    /// The leave-in was put into a piece, or re-seated in it.
    LeaveInSeated {
        /// Which piece.
        piece: PieceId,
    },
    /// A thermometer was checked in ice water or boiling water.
    ThermometerChecked {
        /// Which thermometer.
        instrument: Instrument,
        /// What to add to what it shows: negative where it reads high.
        #[serde(rename = "offset_c")]
        offset: TemperatureDifference,
    },
    /// A thermometer got a new battery, or another one took its place: what was found of it before
    /// does not hold of it any more.
    ThermometerReplaced {
        /// Which thermometer.
        instrument: Instrument,
    },
    /// A hygiene prompt was seen to, or waved away.
    PromptDismissed {
        /// Which.
        prompt: Prompt,
    },
    /// Hygiene prompts were turned off or on.
    PromptsSet {
        /// Whether they are shown.
        shown: bool,
    },
    /// The phone found its clock set forward or back while the app ran.
    ClockJumped,
    /// The phone slept, or its clock was set forward, while nobody could tell which: time at
    /// temperature is not credited across it. Only written where that matters
    /// ([`hold_may_be_under_way`](super::hold_may_be_under_way)).
    ClockUnwatched,
    /// The lid goes up to read these pieces, one after another.
    RoundBegan {
        /// Which, in the order in which they are read.
        pieces: Vec<PieceId>,
    },
    /// A piece named in the round under way is not read this time.
    PieceSkipped {
        /// Which piece.
        piece: PieceId,
    },
    /// The lid is down again.
    RoundEnded,
    /// The lid was opened.
    LidOpened {
        /// For how long.
        seconds: u32,
    },
    /// A piece came off the pit.
    Pulled {
        /// Which piece.
        piece: PieceId,
    },
    /// A resting piece was covered with loose foil.
    Covered {
        /// Which piece.
        piece: PieceId,
    },
    /// A piece was served, or portioned and bagged: it is no longer watched.
    Packed {
        /// Which piece.
        piece: PieceId,
    },
    /// A piece was thrown away: a safety limit had run out, or for a reason of the cook's own.
    Discarded {
        /// Which piece.
        piece: PieceId,
    },
    /// The cook wrote something down.
    Noted {
        /// In their own words.
        text: String,
    },
    /// An earlier entry was undone. Undoing an undoing brings the entry back.
    Undone {
        /// Which entry.
        entry: EntryId,
    },
}

crate::tagged::stored_with_kind!(What);

impl What {
    /// The piece it is about, if it is about one.
    pub fn piece(&self) -> Option<PieceId> {
        match self {
            Self::PullTargetSet { piece, .. } => *piece,
            Self::PieceSetOut { piece, .. }
            | Self::TonightSet { piece, .. }
            | Self::PieceTakenAway { piece }
            | Self::PutOn { piece }
            | Self::CoreRead { piece, .. }
            | Self::PieceSkipped { piece }
            | Self::LeaveInSeated { piece }
            | Self::Pulled { piece }
            | Self::Covered { piece }
            | Self::Packed { piece }
            | Self::Discarded { piece } => Some(*piece),
            _ => None,
        }
    }
}

impl log::Event for What {
    const VERSION: u16 = 1;

    fn undoes(&self) -> Option<EntryId> {
        match self {
            Self::Undone { entry } => Some(*entry),
            _ => None,
        }
    }

    fn moments(&self) -> Vec<Moment> {
        match self {
            Self::DinnerSet { at } => at.iter().copied().collect(),
            _ => Vec::new(),
        }
    }

    fn undoing(entry: EntryId) -> Self {
        Self::Undone { entry }
    }

    fn is_noted_unasked(&self) -> bool {
        matches!(self, Self::ClockJumped | Self::ClockUnwatched)
    }
}
