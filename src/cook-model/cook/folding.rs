//! Adds up a log, entry by entry, to the state of the cook.

use std::collections::BTreeMap;

use super::clock::{clock_jumps, clock_unwatched, mark_copies};
use super::draft::Draft;
use super::limits;
use super::offset::Offsets;
use super::problem::Ignored;
use super::round::Round;
use super::state::stage;
use super::{Chore, CookState, Entry, EntryId, Log, PieceState, Problem, Settings, What};
use crate::history::{
    ClockJump, CoreReading, History, LidOpening, PieceHistory, PitAim, PitHistory, PitReading,
};
use crate::piece::{Piece, PieceId};
use crate::quantity::{Moment, seconds};
use crate::safety::{Prompt, Standing, standing};
use crate::sorting::sort_by_key;

/// The state that a log adds up to.
///
/// Entries count in the order in which they happened, and those of one moment in the order in
/// which they were written. An entry that makes no sense where it stands (a reading of a piece
/// that was not on) changes nothing and is listed with the reason.
pub fn fold(log: &Log) -> CookState {
    let mut folding = Folding {
        clock_jumps: clock_jumps(log.entries()),
        clock_unwatched: clock_unwatched(log.entries()),
        ..Folding::default()
    };
    for entry in log.standing() {
        if let Err(why) = folding.apply(entry) {
            folding.ignored.push(Ignored { entry: entry.id, why });
        }
    }
    folding.finish()
}

/// The state under way.
#[derive(Default)]
struct Folding {
    settings: Settings,
    pieces: BTreeMap<PieceId, Draft>,
    /// The last written entry that puts each piece on, whether or not it made sense by its time.
    last_put_on: BTreeMap<PieceId, EntryId>,
    pit_aims: Vec<PitAim>,
    pit_readings: Vec<PitReading>,
    lid: Vec<LidOpening>,
    offsets: Offsets,
    clock_jumps: Vec<ClockJump>,
    clock_unwatched: Vec<EntryId>,
    chores: Vec<(Moment, Chore)>,
    dismissed: Vec<Prompt>,
    rounds: Vec<Round>,
    ignored: Vec<Ignored>,
}

impl Folding {
    fn apply(&mut self, entry: &Entry) -> Result<(), Problem> {
        let at = entry.happened;
        match &entry.what {
            What::PitTargetSet { target } => {
                let target = limits::check(*target, &limits::PIT_TARGET)?;
                self.settings.pit_target = target;
                self.pit_aims.push(PitAim { at, temperature: target });
            }
            What::PitKindSet { pit } => self.settings.pit_kind = *pit,
            What::RackSet { places_c } => {
                self.settings.rack = limits::check_rack(places_c)?.to_vec();
            }
            What::HabitsSet { habits } => {
                self.settings.habits = limits::check_habits(habits)?;
            }
            What::StyleSet { style } => self.settings.style = *style,
            What::TonightSet { piece, tonight } => self.draft(*piece)?.later = !*tonight,
            What::AmbientSet { ambient } => {
                self.settings.ambient = limits::check(*ambient, &limits::AMBIENT)?;
            }
            What::DinnerSet { at } => self.settings.dinner = *at,
            What::PullTargetSet { piece, target } => {
                let target = *target;
                if let Some(target) = target {
                    limits::check(target, &limits::PULL_TARGET)?;
                }
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
            What::PutOn { piece } => {
                let last = self.last_put_on.entry(*piece).or_insert(entry.id);
                *last = entry.id.max(*last);
                self.draft(*piece)?.put_on(entry)?;
            }
            What::ChoreDone { chore } => {
                self.chores.push((at, *chore));
                if *chore == Chore::OutOfFridge {
                    self.take_all_out(at);
                }
            }
            What::TakenOut { pieces } => self.each_raw(pieces, |piece| piece.take_out(at))?,
            What::BackInFridge { pieces } => self.each_raw(pieces, |piece| piece.put_away(at))?,
            What::PitRead { temperature } => {
                limits::check(*temperature, &limits::PIT)?;
                self.pit_readings.push(PitReading { at, temperature: *temperature });
            }
            What::CoreRead { piece, temperature, instrument, places } => {
                limits::check(*temperature, &limits::CORE)?;
                let reading = CoreReading {
                    entry: entry.id,
                    at,
                    typed: entry.typed,
                    temperature: self.offsets.correct(*temperature, *instrument),
                    shown: *temperature,
                    for_proof: *temperature,
                    instrument: *instrument,
                    places: *places,
                    vouched: false,
                    copied: false,
                    barred: false,
                };
                self.draft(*piece)?.read_core(reading)?;
            }
            What::SecondPlaceTried { reading } => {
                self.draft_with(*reading)?.try_second_place(*reading, entry)?;
            }
            What::ReadingVouched { reading } => {
                let draft = self.draft_with(*reading)?;
                draft.reading(*reading).ok_or(Problem::UnknownReading)?.vouched = true;
            }
            What::ThermometerChecked { instrument, offset } => {
                self.offsets.set(*instrument, limits::check(*offset, &limits::FOUND_OFFSET)?);
            }
            What::ThermometerReplaced { instrument } => self.offsets.replace(*instrument, at),
            What::LeaveInSeated { piece } => self.draft(*piece)?.placements.push(at),
            What::RoundBegan { pieces } => {
                let on = pieces.iter().copied().filter(|piece| self.is_on(*piece)).collect();
                self.rounds.push(Round::begin(entry.id, at, on));
            }
            What::LidOpened { seconds: lasted } => {
                self.lid.push(LidOpening { at, lasted: seconds(f64::from(*lasted)) });
            }
            What::Pulled { piece } => self.draft(*piece)?.pull(at)?,
            What::Covered { piece } => self.draft(*piece)?.cover(at)?,
            What::Packed { piece } => self.draft(*piece)?.pack(entry)?,
            What::Discarded { piece } => self.draft(*piece)?.discard(entry),
            What::PromptDismissed { prompt } => self.dismissed.push(*prompt),
            What::PromptsSet { shown } => self.settings.prompts_shown = *shown,
            // A round hears of these below.
            What::PieceSkipped { .. } | What::RoundEnded => {}
            What::ClockJumped | What::ClockUnwatched | What::Noted { .. } | What::Undone { .. } => {
            }
        }
        // What is read at rest is read with the lid down.
        let at_rest = matches!(&entry.what, What::CoreRead { piece, .. } if !self.is_on(*piece));
        if let Some(round) = self.rounds.last_mut().filter(|_| !at_rest) {
            round.hear(at, &entry.what);
        }
        Ok(())
    }

    fn is_on(&self, piece: PieceId) -> bool {
        self.pieces.get(&piece).is_some_and(Draft::is_on)
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

    /// All pieces that are raw are out of the refrigerator.
    fn take_all_out(&mut self, at: Moment) {
        for piece in self.pieces.values_mut() {
            // One that is on the pit already was out before.
            let _ = piece.take_out(at);
        }
    }

    /// Does something to each of these pieces; of those that it makes no sense for, says why.
    fn each_raw(
        &mut self,
        pieces: &[PieceId],
        what: impl Fn(&mut Draft) -> Result<(), Problem>,
    ) -> Result<(), Problem> {
        let mut problem = Ok(());
        for piece in pieces {
            problem = self.draft(*piece).and_then(&what).and(problem);
        }
        problem
    }

    fn take_away(&mut self, id: PieceId) -> Result<(), Problem> {
        if self.draft(id)?.was_never_on() {
            self.pieces.remove(&id);
            Ok(())
        } else {
            Err(Problem::AlreadyOn)
        }
    }

    /// The piece that holds a reading.
    fn draft_with(&mut self, reading: EntryId) -> Result<&mut Draft, Problem> {
        self.pieces
            .values_mut()
            .find(|draft| draft.has_reading(reading))
            .ok_or(Problem::UnknownReading)
    }

    fn finish(mut self) -> CookState {
        self.lid.extend(self.rounds.iter().filter_map(Round::opening));
        sort_by_key(&mut self.lid, |opening| opening.at);
        let settings = self.settings;
        let (names, mut histories): (Vec<String>, Vec<PieceHistory>) = self
            .pieces
            .into_iter()
            .map(|(id, draft)| draft.finish(id, &settings, self.last_put_on.get(&id).copied()))
            .unzip();
        mark_copies(&mut histories);
        self.offsets.settle(&mut histories);
        let pit = PitHistory {
            kind: settings.pit_kind,
            target: settings.pit_target,
            aims: self.pit_aims,
            readings: self.pit_readings,
            lid: self.lid,
            ambient: settings.ambient,
        };
        let history = History {
            pieces: histories,
            pit,
            proof_rule: settings.proof_rule,
            tolerances: settings.tolerances,
            check_risk_percent: settings.check_risk_percent,
            clock_jumps: self.clock_jumps,
            clock_unwatched: self.clock_unwatched,
        };
        let pieces = names
            .into_iter()
            .zip(&history.pieces)
            .map(|(name, piece)| {
                let standing = standing(&history, piece, settings.proof_rule, &[], &[], None);
                let Standing { proof, run_out } = standing;
                PieceState { name, stage: stage(piece, proof.is_some()), proof, run_out }
            })
            .collect();
        let first_on = history.first_on();
        let first_chore = self.chores.first().map(|(at, _)| *at);
        CookState {
            began: first_on.into_iter().chain(first_chore).min(),
            chores: self.chores,
            rounds: self.rounds,
            settings,
            history,
            pieces,
            ignored: self.ignored,
            doubted: Vec::new(),
            dismissed: self.dismissed,
            offsets: self.offsets,
        }
    }
}
