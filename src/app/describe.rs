//! Entries, problems and steps in the person's words.

use cook_model::cook::{Action, Chore, CookState, Entry, EntryId, Log, Problem, Step, What, fold};
use cook_model::history::{CoreReading, Instrument};
use cook_model::piece::PieceId;
use cook_model::plan::{Outlook, Standing};
use cook_model::quantity::Span;

use crate::device::files::Handed;
use crate::{safety_words, say, show};

/// What was just done, in one line.
pub fn done(log: &Log, entries: &[Entry]) -> String {
    let state = fold(log);
    match entries {
        [] => String::new(),
        [one] => entry(log, &state, one),
        [first, ..] => {
            let pieces: Vec<PieceId> =
                entries.iter().filter_map(|entry| entry.what.piece()).collect();
            match &first.what {
                What::PutOn { .. } => say!("entry-put-on", piece = show::pieces(&state, &pieces)),
                What::Covered { .. } => {
                    say!("entry-covered", piece = show::pieces(&state, &pieces))
                }
                What::Packed { .. } => say!("entry-packed", piece = show::pieces(&state, &pieces)),
                What::Pulled { .. } => say!("entry-pulled", piece = show::pieces(&state, &pieces)),
                What::CoreRead { .. } => entry(log, &state, first),
                _ => {
                    let each: Vec<String> =
                        entries.iter().map(|one| entry(log, &state, one)).collect();
                    each.join(", ")
                }
            }
        }
    }
}

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
        What::DinnerSet { at: Some(at) } => say!("entry-dinner", time = show::clock(*at)),
        What::DinnerSet { at: None } => say!("entry-dinner-none"),
        What::PullTargetSet { piece: None, target } => {
            say!("entry-pull-target", temperature = show::temperature(*target))
        }
        What::PullTargetSet { piece: Some(id), target } => say!(
            "entry-pull-target-piece",
            piece = piece(*id),
            temperature = show::temperature(*target)
        ),
        What::ProofRuleSet { rule } => {
            say!("entry-proof-rule", rule = safety_words::rule(*rule))
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
        What::LidOpened { seconds } => say!(
            "entry-lid",
            span = show::countdown(cook_model::quantity::seconds(f64::from(*seconds)))
        ),
        What::Pulled { piece: id } => say!("entry-pulled", piece = piece(*id)),
        What::Covered { piece: id } => say!("entry-covered", piece = piece(*id)),
        What::ChoreDone { chore } => chore_done(*chore),
        What::PitKindSet { .. } => say!("entry-pit-kind"),
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
        What::PromptDismissed { .. } => say!("entry-prompt-dismissed"),
        What::PromptsSet { shown: true } => say!("entry-prompts-on"),
        What::PromptsSet { shown: false } => say!("entry-prompts-off"),
        What::ClockJumped => say!("entry-clock-jumped"),
        What::ClockUnwatched => say!("entry-clock-unwatched"),
        What::Packed { piece: id } => say!("entry-packed", piece = piece(*id)),
        What::Noted { text } => text.clone(),
        What::Undone { entry: target } => say!("entry-undone", what = named(log, state, *target)),
        _ => say!("entry-other"),
    }
}

fn named(log: &Log, state: &CookState, id: EntryId) -> String {
    let target = log.entries().iter().find(|entry| entry.id == id);
    target.map_or_else(|| say!("entry-other"), |target| entry(log, state, target))
}

/// The piece a reading was taken of.
pub fn piece_of_reading(state: &CookState, reading: EntryId) -> Option<PieceId> {
    let holds = |readings: &[CoreReading]| readings.iter().any(|one| one.entry == reading);
    state.history.pieces.iter().find(|piece| holds(&piece.readings)).map(|piece| piece.id)
}

/// Why an entry was not counted.
pub fn problem(why: Problem) -> String {
    match why {
        Problem::UnknownPiece => say!("problem-unknown-piece"),
        Problem::NotOnYet => say!("problem-not-on-yet"),
        Problem::AlreadyOn => say!("problem-already-on"),
        Problem::AlreadyOff => say!("problem-already-off"),
        Problem::AlreadyPacked => say!("problem-already-packed"),
        Problem::UnknownReading => say!("problem-unknown-reading"),
        Problem::TooLate => say!("problem-too-late"),
        Problem::ImpossibleValue => say!("problem-impossible-value"),
        _ => say!("problem-other"),
    }
}

/// A chore, as something to do.
pub fn chore_to_do(chore: Chore) -> String {
    match chore {
        Chore::OutOfFridge => say!("do-out-of-fridge"),
        Chore::Season => say!("do-season"),
        Chore::LightFire => say!("do-light-fire"),
        Chore::FeedFire => say!("do-feed-fire"),
    }
}

/// A chore, as something done.
fn chore_done(chore: Chore) -> String {
    match chore {
        Chore::OutOfFridge => say!("entry-out-of-fridge"),
        Chore::Season => say!("entry-season"),
        Chore::LightFire => say!("entry-light-fire"),
        Chore::FeedFire => say!("entry-feed-fire"),
    }
}

/// A step in words.
pub struct StepWords {
    /// What to do.
    pub what: String,
    /// Why, or how.
    pub why: String,
    /// What the one button says.
    pub button: String,
}

/// A step in words.
pub fn step(state: &CookState, step: &Step) -> StepWords {
    let pieces = show::pieces(state, &step.pieces);
    let first = step.pieces.first().map(|id| show::piece(state, *id)).unwrap_or_default();
    let all = match step.pieces.len() {
        1 => first.clone(),
        count => say!("all-pieces", count = count),
    };
    let (what, why, button) = match &step.action {
        Action::Pull => {
            (say!("do-pull", pieces = pieces), say!("why-pull"), say!("act-pulled", piece = first))
        }
        Action::Check => {
            (say!("do-check", pieces = pieces), say!("why-check"), say!("act-read", piece = first))
        }
        Action::Cover => (
            say!("do-cover", pieces = pieces),
            say!("why-cover"),
            say!("act-covered", pieces = all),
        ),
        Action::TrySecondPlace { .. } => (
            say!("do-second-place", pieces = pieces),
            say!("why-second-place"),
            say!("act-second-place"),
        ),
        Action::Prove => {
            (say!("do-prove", pieces = pieces), say!("why-prove"), say!("act-read", piece = first))
        }
        Action::PutBack => (
            say!("do-put-back", pieces = pieces),
            say!("why-put-back"),
            say!("act-put-back", piece = first),
        ),
        Action::Reseat => {
            (say!("do-reseat", pieces = pieces), say!("why-reseat"), say!("act-reseated"))
        }
        Action::ReadPit => (say!("do-read-pit"), say!("why-read-pit"), say!("act-read-pit")),
        Action::Chore { chore } => (chore_to_do(*chore), say!("why-chore"), chore_done(*chore)),
        Action::PutOn => (
            say!("do-put-on", pieces = all.clone()),
            say!("why-put-on"),
            say!("act-put-on", pieces = all),
        ),
        Action::SetOut => (say!("do-set-out"), say!("why-set-out"), say!("act-set-out")),
        Action::Pack => {
            (say!("do-pack", pieces = pieces), say!("why-pack"), say!("act-packed", pieces = all))
        }
    };
    StepWords { what, why, button }
}

/// Dinner this little early or late counts as on time.
const ABOUT_ON_TIME: Span = Span::minutes(5);

/// Where dinner stands, in a few words.
pub fn dinner(now: &Outlook) -> String {
    let span = show::span(now.late_by());
    match now.standing(ABOUT_ON_TIME) {
        Standing::Late => say!("live-dinner-late", span = span),
        Standing::Early => say!("live-dinner-early", span = span),
        Standing::OnTime => say!("live-dinner-on-time"),
    }
}

/// What is said of a file that was to leave the app; nothing where the person kept it.
pub fn handed(what: Handed, name: &str) -> Option<String> {
    match what {
        Handed::Taken => Some(say!("file-saved", name = name)),
        Handed::Cancelled => None,
        Handed::Refused => Some(say!("file-refused")),
    }
}
