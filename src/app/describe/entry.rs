//! An entry of the log in the person's words.

use cook_model::cook::{Chore, CookState, Entry, EntryId, Log, What};
use cook_model::heat::PitKind;
use cook_model::history::Instrument;
use cook_model::piece::PieceId;

use super::piece_of_reading;
use crate::parts::pit_kind;
use crate::{safety_words, say, show};

/// An entry in one line.
pub fn entry(log: &Log, state: &CookState, entry: &Entry) -> String {
    let piece = |id: PieceId| show::piece(state, id);
    match &entry.what {
        What::PitTargetSet { target } => {
            say!("entry-pit-target", temperature = show::temperature(*target))
        }
        What::AmbientSet { ambient } => {
            say!("entry-ambient", temperature = show::temperature(*ambient))
        }
        What::DinnerSet { at: Some(at) } => say!("entry-dinner", time = show::the_time(*at)),
        What::DinnerSet { at: None } => say!("entry-dinner-none"),
        What::PullTargetSet { piece: None, target: Some(target) } => {
            say!("entry-pull-target", temperature = show::temperature(*target))
        }
        What::PullTargetSet { piece: None, target: None } => say!("entry-pull-proving"),
        What::PullTargetSet { piece: Some(id), target: Some(target) } => say!(
            "entry-pull-target-piece",
            piece = piece(*id),
            temperature = show::temperature(*target)
        ),
        What::PullTargetSet { piece: Some(id), target: None } => {
            say!("entry-pull-proving-piece", piece = piece(*id))
        }
        What::ProofRuleSet { rule } => {
            say!("entry-proof-rule", rule = safety_words::rule(*rule))
        }
        What::PieceSetOut { piece: id, facts, .. } if was_there(log, entry) => {
            say!("entry-piece-changed", piece = piece(*id), facts = show::facts(facts))
        }
        What::PieceSetOut { piece: id, facts, .. } => {
            say!("entry-set-out", piece = piece(*id), facts = show::facts(facts))
        }
        What::PieceTakenAway { piece: id } => say!("entry-taken-away", piece = piece(*id)),
        What::PutOn { piece: id } => say!("entry-put-on", piece = piece(*id)),
        What::PitRead { temperature } => {
            say!("entry-pit-read", temperature = show::reading(*temperature))
        }
        What::CoreRead { piece: id, temperature, instrument, places } => {
            let (piece, temperature) = (piece(*id), show::reading(*temperature));
            let reading = match instrument {
                Instrument::InstantRead => {
                    say!("entry-read-instant", piece = piece, temperature = temperature)
                }
                Instrument::LeaveIn => {
                    say!("entry-read-leave-in", piece = piece, temperature = temperature)
                }
            };
            if *places >= 2 { say!("entry-read-two", reading = reading) } else { reading }
        }
        What::SecondPlaceTried { reading } => match piece_of_reading(state, *reading) {
            Some(id) => say!("entry-second-place-piece", piece = piece(id)),
            None => say!("entry-second-place"),
        },
        What::ReadingVouched { .. } => say!("entry-vouched"),
        What::LeaveInSeated { piece: id } => say!("entry-seated", piece = piece(*id)),
        What::RoundBegan { pieces } => {
            say!("entry-round-began", pieces = show::the_pieces(state, pieces))
        }
        What::PieceSkipped { piece: id } => say!("entry-skipped", piece = piece(*id)),
        What::RoundEnded => say!("entry-round-ended"),
        What::LidOpened { seconds } => say!(
            "entry-lid",
            span = show::countdown(cook_model::quantity::seconds(f64::from(*seconds)))
        ),
        What::Pulled { piece: id } => say!("entry-pulled", piece = piece(*id)),
        What::TakenOut { pieces } => {
            say!("entry-taken-out", piece = show::pieces(state, pieces))
        }
        What::BackInFridge { pieces } => {
            say!("entry-back-in-fridge", piece = show::pieces(state, pieces))
        }
        What::Covered { piece: id } => say!("entry-covered", piece = piece(*id)),
        What::ChoreDone { chore } => chore_done(*chore, state.settings.pit_kind),
        What::PitKindSet { pit } => say!("entry-pit-kind", kind = pit_kind(*pit)),
        What::RackSet { .. } => say!("entry-rack"),
        What::HabitsSet { .. } => say!("entry-habits"),
        What::StyleSet { .. } => say!("entry-style"),
        What::TonightSet { piece: id, tonight: true } => {
            say!("entry-tonight", piece = piece(*id))
        }
        What::TonightSet { piece: id, tonight: false } => say!("entry-later", piece = piece(*id)),
        What::TolerancesSet { .. } => say!("entry-tolerances"),
        What::CheckRiskSet { .. } => say!("entry-check-risk"),
        What::ThermometerChecked { instrument, offset } => say!(
            "entry-thermometer",
            thermometer = safety_words::instrument(*instrument),
            offset = safety_words::offset(*offset)
        ),
        What::ThermometerReplaced { instrument } => {
            say!("entry-thermometer-replaced", thermometer = safety_words::instrument(*instrument))
        }
        What::PromptDismissed { .. } => say!("entry-prompt-dismissed"),
        What::PromptsSet { shown: true } => say!("entry-prompts-on"),
        What::PromptsSet { shown: false } => say!("entry-prompts-off"),
        What::ClockJumped => say!("entry-clock-jumped"),
        What::ClockUnwatched => say!("entry-clock-unwatched"),
        What::Packed { piece: id } => say!("entry-packed", piece = piece(*id)),
        What::Discarded { piece: id } => say!("entry-discarded", piece = piece(*id)),
        What::Noted { text } => text.clone(),
        What::Undone { entry: target } => say!("entry-undone", what = named(log, state, *target)),
        _ => say!("entry-other"),
    }
}

fn named(log: &Log, state: &CookState, id: EntryId) -> String {
    let target = log.entries().iter().find(|entry| entry.id == id);
    target.map_or_else(|| say!("entry-other"), |target| entry(log, state, target))
}

/// Whether a piece was set out by another entry before this one, which then changes it.
fn was_there(log: &Log, entry: &Entry) -> bool {
    let piece = entry.what.piece();
    let mut before = log.entries().iter().take_while(|other| other.id != entry.id);
    before
        .any(|other| matches!(other.what, What::PieceSetOut { .. }) && other.what.piece() == piece)
}

/// A chore, as something done.
pub fn chore_done(chore: Chore, pit: PitKind) -> String {
    match chore {
        Chore::OutOfFridge => say!("entry-out-of-fridge"),
        Chore::Season => say!("entry-season"),
        Chore::LightFire if !pit.is_fed() => say!("entry-start-pit"),
        Chore::LightFire => say!("entry-light-fire"),
        Chore::FeedFire => say!("entry-feed-fire"),
    }
}
