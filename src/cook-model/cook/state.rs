use std::collections::BTreeMap;

use super::limits;
use super::problem::Ignored;
use super::undo::standing;
use super::{Entry, EntryId, Log, Problem, Settings, Stage, What};
use crate::history::{
    CoreReading, History, LidOpening, PieceHistory, PitHistory, PitReading, Spell,
};
use crate::piece::{Piece, PieceId};
use crate::quantity::{Moment, Temperature, seconds};
use crate::safety::{Proof, prove};

/// One piece: where it stands, and what has happened to it.
#[derive(Clone, Debug, PartialEq)]
pub struct PieceState {
    /// The cook's own name for it; empty where its number is enough.
    pub name: String,
    /// Where it stands.
    pub stage: Stage,
    /// The readings that prove it, if they do.
    pub proof: Option<Proof>,
}

/// Everything a log adds up to.
#[derive(Clone, Debug, PartialEq)]
pub struct CookState {
    /// What the cook decided for the whole cook.
    pub settings: Settings,
    /// What happened, as plain facts.
    pub history: History,
    /// Where each piece stands, in the order of `history.pieces`.
    pub pieces: Vec<PieceState>,
    /// The entries that changed nothing, and why.
    pub ignored: Vec<Ignored>,
}

impl CookState {
    /// A piece's standing and its history.
    pub fn piece(&self, id: PieceId) -> Option<(&PieceState, &PieceHistory)> {
        let place = self.history.pieces.iter().position(|piece| piece.id == id)?;
        Some((self.pieces.get(place)?, self.history.pieces.get(place)?))
    }

    /// Every piece's standing with its history, by number.
    pub fn each_piece(&self) -> impl Iterator<Item = (&PieceState, &PieceHistory)> {
        self.pieces.iter().zip(&self.history.pieces)
    }
}

/// The state that a log adds up to.
///
/// Entries count in the order in which they happened, and those of one moment in the order in
/// which they were written. An entry that makes no sense where it stands (a reading of a piece
/// that was not on) changes nothing and is listed with the reason.
pub fn fold(log: &Log) -> CookState {
    let mut entries = standing(log.entries());
    entries.sort_by_key(|entry| (entry.happened, entry.id));
    let mut folding = Folding::default();
    for entry in entries {
        if let Err(why) = folding.apply(entry) {
            folding.ignored.push(Ignored { entry: entry.id, why });
        }
    }
    folding.finish()
}

/// One piece while the log is folded.
struct Draft {
    name: String,
    piece: Piece,
    own_pull_target: Option<Temperature>,
    spells: Vec<Spell>,
    readings: Vec<CoreReading>,
    placements: Vec<Moment>,
    packed: bool,
}

impl Draft {
    fn new(name: String, piece: Piece) -> Self {
        Self {
            name,
            piece,
            own_pull_target: None,
            spells: Vec::new(),
            readings: Vec::new(),
            placements: Vec::new(),
            packed: false,
        }
    }

    fn is_on(&self) -> bool {
        self.spells.last().is_some_and(|spell| spell.off.is_none())
    }

    fn finish(self, id: PieceId, settings: &Settings) -> (PieceState, PieceHistory) {
        let history = PieceHistory {
            id,
            piece: self.piece,
            pull_at: self.own_pull_target.unwrap_or(settings.pull_target),
            spells: self.spells,
            readings: self.readings,
            placements: self.placements,
        };
        let proof = prove(&history, settings.proof_rule);
        let stage = match (history.spells.last(), &proof) {
            (None, _) => Stage::Raw,
            (Some(_), _) if self.packed => Stage::Packed,
            (Some(spell), _) if spell.off.is_none() => Stage::On,
            (Some(_), None) => Stage::Resting,
            (Some(_), Some(_)) => Stage::Proved,
        };
        (PieceState { name: self.name, stage, proof }, history)
    }
}

/// The state under way.
#[derive(Default)]
struct Folding {
    settings: Settings,
    pieces: BTreeMap<PieceId, Draft>,
    pit_readings: Vec<PitReading>,
    lid: Vec<LidOpening>,
    ignored: Vec<Ignored>,
}

impl Folding {
    fn apply(&mut self, entry: &Entry) -> Result<(), Problem> {
        let at = entry.happened;
        match &entry.what {
            What::PitTargetSet { target } => {
                self.settings.pit_target = limits::check(*target, &limits::PIT_TARGET)?;
            }
            What::AmbientSet { ambient } => {
                self.settings.ambient = limits::check(*ambient, &limits::AMBIENT)?;
            }
            What::DinnerSet { at } => self.settings.dinner = *at,
            What::PullTargetSet { piece, target } => {
                let target = limits::check(*target, &limits::PULL_TARGET)?;
                match piece {
                    None => self.settings.pull_target = target,
                    Some(piece) => self.draft(*piece)?.own_pull_target = Some(target),
                }
            }
            What::ProofRuleSet { rule } => self.settings.proof_rule = *rule,
            What::TolerancesSet { tolerances } => {
                limits::check_tolerances(tolerances)?;
                self.settings.tolerances = *tolerances;
            }
            What::CheckRiskSet { percent } => {
                self.settings.check_risk_percent = limits::check(*percent, &limits::CHECK_RISK)?;
            }
            What::PieceSetOut { piece, facts, name } => {
                limits::check_piece(facts)?;
                self.set_out(*piece, *facts, name);
            }
            What::PieceTakenAway { piece } => self.take_away(*piece)?,
            What::PutOn { piece } => self.put_on(*piece, at)?,
            What::PitRead { temperature } => {
                limits::check(*temperature, &limits::PIT)?;
                self.pit_readings.push(PitReading { at, temperature: *temperature });
            }
            What::CoreRead { piece, temperature, instrument, places } => {
                limits::check(*temperature, &limits::CORE)?;
                let reading = CoreReading {
                    entry: entry.id,
                    at,
                    temperature: *temperature,
                    instrument: *instrument,
                    places: *places,
                    vouched: false,
                };
                self.read_core(*piece, reading)?;
            }
            What::SecondPlaceTried { reading } => {
                let reading = self.reading(*reading)?;
                reading.places = reading.places.max(2);
            }
            What::ReadingVouched { reading } => self.reading(*reading)?.vouched = true,
            What::LeaveInSeated { piece } => self.draft(*piece)?.placements.push(at),
            What::LidOpened { seconds: lasted } => {
                self.lid.push(LidOpening { at, lasted: seconds(f64::from(*lasted)) });
            }
            What::Pulled { piece } => self.pull(*piece, at)?,
            What::Covered { piece } => self.cover(*piece, at)?,
            What::Packed { piece } => self.pack(*piece)?,
            What::Noted { .. } | What::Undone { .. } => {}
        }
        Ok(())
    }

    fn draft(&mut self, piece: PieceId) -> Result<&mut Draft, Problem> {
        self.pieces.get_mut(&piece).ok_or(Problem::UnknownPiece)
    }

    fn set_out(&mut self, id: PieceId, facts: Piece, name: &str) {
        match self.pieces.get_mut(&id) {
            Some(draft) => {
                draft.piece = facts;
                name.clone_into(&mut draft.name);
            }
            None => {
                self.pieces.insert(id, Draft::new(name.to_owned(), facts));
            }
        }
    }

    fn take_away(&mut self, id: PieceId) -> Result<(), Problem> {
        if self.draft(id)?.spells.is_empty() {
            self.pieces.remove(&id);
            Ok(())
        } else {
            Err(Problem::AlreadyOn)
        }
    }

    fn put_on(&mut self, id: PieceId, at: Moment) -> Result<(), Problem> {
        let draft = self.draft(id)?;
        if draft.packed {
            return Err(Problem::AlreadyPacked);
        }
        if draft.is_on() {
            return Err(Problem::AlreadyOn);
        }
        draft.spells.push(Spell { on: at, off: None, covered: None });
        Ok(())
    }

    fn read_core(&mut self, id: PieceId, reading: CoreReading) -> Result<(), Problem> {
        let draft = self.draft(id)?;
        if draft.packed {
            return Err(Problem::AlreadyPacked);
        }
        if draft.spells.is_empty() {
            return Err(Problem::NotOnYet);
        }
        draft.readings.push(reading);
        Ok(())
    }

    fn reading(&mut self, id: EntryId) -> Result<&mut CoreReading, Problem> {
        self.pieces
            .values_mut()
            .flat_map(|draft| &mut draft.readings)
            .find(|reading| reading.entry == id)
            .ok_or(Problem::UnknownReading)
    }

    fn pull(&mut self, id: PieceId, at: Moment) -> Result<(), Problem> {
        let spell = self.draft(id)?.spells.last_mut().ok_or(Problem::NotOnYet)?;
        if spell.off.is_some() {
            return Err(Problem::AlreadyOff);
        }
        spell.off = Some(at);
        Ok(())
    }

    fn cover(&mut self, id: PieceId, at: Moment) -> Result<(), Problem> {
        let spell = self.draft(id)?.spells.last_mut().ok_or(Problem::NotOnYet)?;
        if spell.off.is_none() {
            return Err(Problem::AlreadyOn);
        }
        spell.covered.get_or_insert(at);
        Ok(())
    }

    fn pack(&mut self, id: PieceId) -> Result<(), Problem> {
        let draft = self.draft(id)?;
        if draft.spells.is_empty() {
            return Err(Problem::NotOnYet);
        }
        if draft.is_on() {
            return Err(Problem::AlreadyOn);
        }
        draft.packed = true;
        Ok(())
    }

    fn finish(self) -> CookState {
        let settings = self.settings;
        let (pieces, histories) =
            self.pieces.into_iter().map(|(id, draft)| draft.finish(id, &settings)).unzip();
        let pit = PitHistory {
            target: settings.pit_target,
            readings: self.pit_readings,
            lid: self.lid,
            ambient: settings.ambient,
        };
        let history = History {
            pieces: histories,
            pit,
            tolerances: settings.tolerances,
            check_risk_percent: settings.check_risk_percent,
        };
        CookState { settings, history, pieces, ignored: self.ignored }
    }
}
