//! Entries and steps in the person's words.

mod entry;

pub use entry::entry;

use cook_model::cook::duties::{Act, Duty, HOT, Why};
use cook_model::cook::{Chore, CookState, EntryId, Seen};
use cook_model::forecast::{Band, PieceForecast};
use cook_model::heat::PitKind;
use cook_model::history::CoreReading;
use cook_model::piece::PieceId;
use cook_model::plan::{Drift, OffTarget, Outlook, Standing};
use cook_model::quantity::{Moment, Span};
use cook_model::safety::SecondPlace;

use crate::device::files::Handed;
use crate::{safety_words, say, show};
use entry::chore_done;

/// The piece a reading was taken of.
pub fn piece_of_reading(state: &CookState, reading: EntryId) -> Option<PieceId> {
    let holds = |readings: &[CoreReading]| readings.iter().any(|one| one.entry == reading);
    state.history.pieces.iter().find(|piece| holds(&piece.readings)).map(|piece| piece.id)
}

/// A chore, as something to do.
pub fn chore_to_do(chore: Chore, pit: PitKind) -> String {
    match chore {
        Chore::OutOfFridge => say!("do-out-of-fridge"),
        Chore::Season => say!("do-season"),
        Chore::LightFire => light_fire(pit),
        Chore::FeedFire => say!("do-feed-fire"),
    }
}

/// To get the pit hot: not every pit has a fire to light.
pub fn light_fire(pit: PitKind) -> String {
    if pit.is_fed() { say!("do-light-fire") } else { say!("do-start-pit") }
}

/// A duty in words.
pub struct DutyWords {
    /// What to do.
    pub what: String,
    /// Why, or how.
    pub why: String,
    /// What the one button says.
    pub button: String,
}

/// A duty in words.
pub fn duty(seen: &Seen, duty: &Duty) -> DutyWords {
    let state = &seen.state;
    let kind = state.settings.pit_kind;
    let pieces = show::the_pieces(state, &duty.pieces);
    let first = duty.pieces.first().map(|id| show::the_piece(state, *id)).unwrap_or_default();
    let all = match duty.pieces.len() {
        1 => first.clone(),
        count => say!("all-pieces", count = count),
    };
    let (what, why, button) = match &duty.act {
        Act::Answer { .. } => (say!("do-answer", piece = first), why(duty), say!("act-answer")),
        Act::Pull => (
            say!("do-pull", pieces = pieces),
            why_pull(seen, duty),
            say!("act-pulled", piece = first),
        ),
        Act::Reseat => {
            (say!("do-reseat", pieces = pieces), say!("why-reseat"), say!("act-reseated"))
        }
        Act::Read => (
            say!("do-read", piece = first.clone()),
            say!("why-check"),
            say!("act-read", piece = first),
        ),
        Act::MendFire if !kind.is_fed() => (say!("do-mend-pit"), why(duty), say!("act-read-pit")),
        Act::MendFire => (say!("do-mend-fire"), why(duty), say!("act-read-pit")),
        Act::HurryUp => {
            (say!("do-hurry", pieces = pieces), why(duty), say!("act-read", piece = first))
        }
        Act::Chill => {
            (say!("do-chill", pieces = pieces), why(duty), say!("act-chilled", pieces = all))
        }
        Act::PutBack => (
            say!("do-put-back", pieces = pieces),
            say!("why-put-back"),
            say!("act-put-back", piece = first),
        ),
        Act::TrySecondPlace { told, .. } => {
            let (why, button) = second_place(duty, *told, first);
            (say!("do-second-place", pieces = pieces), why, button)
        }
        Act::Check => (say!("do-check", pieces = pieces), say!("why-check"), say!("act-check")),
        Act::Prove => {
            (say!("do-prove", pieces = pieces), say!("why-prove"), say!("act-read", piece = first))
        }
        Act::Cover => (
            say!("do-cover", pieces = pieces),
            say!("why-cover"),
            say!("act-covered", pieces = all),
        ),
        Act::ReadPit => (say!("do-read-pit"), say!("why-read-pit"), say!("act-read-pit")),
        Act::Chore { chore } => {
            (chore_to_do(*chore, kind), why_chore(state, *chore), chore_done(*chore, kind))
        }
        Act::TakeOut => (
            say!("do-take-out", pieces = all.clone()),
            say!("why-take-out", pieces = pieces),
            say!("act-taken-out", pieces = all),
        ),
        Act::PutAway => {
            (say!("do-put-away", pieces = pieces), why(duty), say!("act-put-away", pieces = all))
        }
        Act::PutOn => (
            say!("do-put-on", pieces = all.clone()),
            say!("why-put-on"),
            say!("act-put-on", pieces = all),
        ),
        Act::Discard => {
            (say!("do-discard", pieces = pieces), why(duty), say!("act-discarded", pieces = all))
        }
        Act::KeepHot => (
            say!("do-keep-hot", pieces = pieces),
            say!("why-keep-hot"),
            say!("act-read", piece = first),
        ),
        Act::Serve => {
            (say!("do-serve", pieces = pieces), say!("why-pack"), say!("act-served", pieces = all))
        }
        Act::Pack => {
            (say!("do-pack", pieces = pieces), say!("why-pack"), say!("act-packed", pieces = all))
        }
        Act::AddPieces => (say!("do-set-out"), say!("why-set-out"), say!("act-set-out")),
    };
    DutyWords { what, why, button }
}

/// The reason of a duty, with its figures.
fn why(duty: &Duty) -> String {
    match &duty.why {
        Why::Reading { shown, .. } => say!("why-reads", temperature = show::reading(*shown)),
        Why::Pit(off) => pit(off),
        Why::Limit(clock) => safety_words::limit(clock),
        Why::Peak { temperature } => {
            say!("why-peak", temperature = show::temperature(*temperature))
        }
        Why::Unproved => say!("why-unproved"),
        Why::Usual | Why::Forecast { .. } => String::new(),
    }
}

/// Why a piece comes off. A reading moves the temperature at which it does, so both are told.
fn why_pull(seen: &Seen, duty: &Duty) -> String {
    let known = duty.pieces.first().and_then(|piece| seen.piece_forecast(*piece));
    match (&duty.why, known) {
        (Why::Reading { shown, .. }, Some(forecast)) => {
            say!("why-pull", temperature = show::reading(*shown), pull = pull_at(forecast))
        }
        _ => why(duty),
    }
}

/// What a chore is good for: those before the cook serve its plan, and there is none without a dinner.
fn why_chore(state: &CookState, chore: Chore) -> String {
    if chore == Chore::FeedFire {
        let aim = show::temperature(state.settings.pit_target);
        return say!("why-feed-fire", temperature = aim);
    }
    say!("why-chore")
}

/// The temperature at which a piece is to be pulled, as every screen tells it.
pub fn pull_at(forecast: &PieceForecast) -> String {
    show::temperature(forecast.pull_at)
}

/// When a pull is likely, of what is left of that; none once it has gone by.
pub fn pull_window(pull: &Band<Moment>, now: Moment) -> Option<String> {
    (pull.high >= now).then(|| show::clock_range(pull.low.max(now), pull.high))
}

/// How the pit is off its setting.
pub fn pit(off: &OffTarget) -> String {
    let read = show::temperature(off.read);
    match off.drift {
        Drift::Low => say!("pit-low", temperature = read),
        Drift::High => say!("pit-high", temperature = read),
        Drift::Recovering => say!("pit-recovering", temperature = read),
        Drift::Settling => say!("pit-settling", temperature = read),
    }
}

/// What has got worse while a duty waited, if anything has.
pub fn overdue(duty: &Duty, now: Moment) -> Option<String> {
    let Why::Forecast { past, hot } = duty.why else { return None };
    let since = |at: Option<Moment>| at.filter(|at| *at <= now);
    match (since(hot), since(past)) {
        (Some(hot), _) => Some(say!(
            "overdue-hot",
            temperature = show::temperature(HOT),
            time = show::the_time(hot)
        )),
        (None, Some(past)) => Some(say!("overdue-past", time = show::the_time(past))),
        (None, None) => None,
    }
}

/// Why a second place is tried, and the button: both name what the first one read, for "no lower" says
/// nothing by itself.
fn second_place(duty: &Duty, told: SecondPlace, piece: String) -> (String, String) {
    let Why::Reading { shown, .. } = duty.why else { return Default::default() };
    let temperature = show::reading(shown);
    match told {
        SecondPlace::NoLower => (
            say!("why-second-place-of", piece = piece.clone(), temperature = temperature.clone()),
            say!("act-second-place-of", piece = piece, temperature = temperature),
        ),
        SecondPlace::Figure => (
            say!("why-second-place-figure", piece = piece.clone(), temperature = temperature),
            say!("act-read", piece = piece),
        ),
    }
}

/// What a button beside a piece says for a duty; none where it has none of its own there.
pub fn offer(duty: &Duty) -> Option<String> {
    Some(match &duty.act {
        Act::Pull => say!("offer-pulled"),
        Act::Reseat => say!("act-reseated"),
        Act::Read | Act::Prove | Act::KeepHot | Act::HurryUp => say!("rest-read"),
        Act::Chill => say!("offer-chilled"),
        Act::PutBack => say!("rest-put-back"),
        Act::TrySecondPlace { told: SecondPlace::Figure, .. } => say!("rest-read"),
        Act::TrySecondPlace { told: SecondPlace::NoLower, .. } => match duty.why {
            Why::Reading { shown, .. } => {
                say!("rest-second-of", temperature = show::reading(shown))
            }
            _ => return None,
        },
        Act::Cover => say!("rest-cover"),
        Act::TakeOut => say!("offer-taken-out"),
        Act::PutAway => say!("offer-put-away"),
        Act::PutOn => say!("offer-put-on"),
        Act::Discard => say!("offer-discarded"),
        Act::Serve | Act::Pack => say!("rest-pack"),
        Act::Answer { .. }
        | Act::MendFire
        | Act::Check
        | Act::ReadPit
        | Act::Chore { .. }
        | Act::AddPieces => return None,
    })
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
