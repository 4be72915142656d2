//! What the rules of safety say, in the person's words.

use cook_model::cook::CookState;
use cook_model::history::{CoreReading, EntryId, Instrument, PieceHistory};
use cook_model::quantity::{Moment, Temperature, TemperatureDifference};
use cook_model::safety::{
    COOL_FIRST, COOL_FROM, COOL_SECOND, Clock, ClockKind, FatColumn, HOT, INSTANT_KILL, ProofRule,
    RunOut, Shortfall, Then, shortfall,
};

use crate::{say, show};

/// Where the danger zone begins. Source: USDA FSIS, 40 to 140 F.
const COLD: Temperature = Temperature::from_f(40.0);

/// A rule in a few words.
pub fn rule(rule: ProofRule) -> String {
    match rule {
        ProofRule::Held { fat } => say!("rule-held", fat = percent(fat)),
        _ => say!("rule-instant", temperature = show::temperature(rule.instant())),
    }
}

const fn percent(fat: FatColumn) -> u8 {
    match fat {
        FatColumn::Five => 5,
        FatColumn::Twelve => 12,
    }
}

/// A thermometer's name.
pub fn instrument(instrument: Instrument) -> String {
    match instrument {
        Instrument::InstantRead => say!("instant-read"),
        Instrument::LeaveIn => say!("leave-in"),
    }
}

/// What an offset means for what the thermometer shows.
pub fn offset(offset: TemperatureDifference) -> String {
    let by = show::difference(offset);
    if offset.abs() < show::LEAST_OFFSET {
        say!("offset-true")
    } else if offset < TemperatureDifference::ZERO {
        say!("offset-high", by = by)
    } else {
        say!("offset-low", by = by)
    }
}

/// What a limit that ran out means for a piece, and where it comes from.
pub fn run_out(run_out: &RunOut) -> String {
    let time = show::the_time(run_out.deadline);
    let what = match run_out.kind {
        ClockKind::RawOut => say!("over-raw", time = time),
        ClockKind::WarmUp => say!("over-warm-up", time = time),
        ClockKind::ToFridge => say!("over-fridge", time = time),
        ClockKind::CoolTo70 | ClockKind::CoolTo41 => say!("over-cooling", time = time),
    };
    match run_out.then {
        Then::ThrowAway => what,
        Then::ThrowAwayUnlessProcessor => format!("{what} {}", say!("over-processor")),
    }
}

/// Why the last reading of a piece does not prove it.
pub fn why_unproved(state: &CookState, history: &PieceHistory) -> String {
    let own = state.piece(history.id).and_then(|(own, _)| own.run_out);
    if let Some(over) = own {
        return run_out(&over);
    }
    let Some(last) = history.readings.last() else { return say!("short-not-read") };
    let rule = state.settings.proof_rule;
    let why = shortfall(&state.history, history, rule, state.doubted(), last);
    match why {
        Some(Shortfall::BeforeThisSpell) => say!("short-before"),
        Some(Shortfall::AfterPacking) => say!("short-packed"),
        Some(Shortfall::FromTheFuture) => say!("short-future"),
        Some(Shortfall::TypedLate) => say!("short-late"),
        Some(Shortfall::Copied) => say!("short-copied"),
        Some(Shortfall::BadThermometer) => say!("short-bad-thermometer"),
        Some(Shortfall::LeaveIn) => say!("short-leave-in"),
        Some(Shortfall::TooCool) => {
            say!("short-cool", reading = for_proof(last), rule = show::temperature(rule.instant()))
        }
        Some(Shortfall::TooFast) => say!("short-fast"),
        Some(Shortfall::Doubted) => say!("short-doubted"),
        Some(Shortfall::Contradicted { by }) => contradicted(history, by),
        Some(Shortfall::OnePlace) => say!("short-one-place"),
        _ => say!("short-other"),
    }
}

/// A reading, and what it counts as for a proof where that is less.
fn for_proof(reading: &CoreReading) -> String {
    let shown = show::reading(reading.shown);
    if (reading.shown - reading.for_proof).abs() < show::LEAST_OFFSET {
        shown
    } else {
        say!("reading-counted", shown = shown, counted = show::reading(reading.for_proof))
    }
}

fn contradicted(history: &PieceHistory, by: EntryId) -> String {
    match history.readings.iter().find(|reading| reading.entry == by) {
        Some(colder) => say!("short-contradicted", reading = for_proof(colder)),
        None => say!("short-other"),
    }
}

/// A limit that is about to run out, or has, in one line.
pub fn limit(clock: &Clock) -> String {
    let time = show::the_time(clock.deadline);
    match clock.kind {
        ClockKind::WarmUp => say!("limit-warm-up", time = time),
        _ => say!("limit-out", time = time),
    }
}

/// A clock in words: its end, and what to know of it.
pub struct ClockWords {
    /// What must be reached, and by when.
    pub what: String,
    /// Why it runs; what to do, once it has run out.
    pub why: String,
    /// What the forecast expects.
    pub expected: Option<String>,
}

/// A clock in words.
pub fn clock(clock: &Clock, now: Moment) -> ClockWords {
    let (time, since) = (show::the_time(clock.deadline), show::the_time(clock.since));
    let (hot, cold) = (show::temperature(HOT), show::temperature(COLD));
    let to = |step: Temperature| show::temperature(step);
    let over = clock.has_run_out(now);
    let (what, why) = match clock.kind {
        ClockKind::RawOut => (
            say!("clock-raw", time = time),
            if over { say!("clock-raw-over") } else { say!("clock-raw-why", since = since) },
        ),
        ClockKind::WarmUp => (
            say!("clock-warm-up", hot = hot.clone(), time = time),
            if over {
                say!("clock-warm-up-over", hot = hot, cold = cold)
            } else {
                say!("clock-warm-up-why", hot = hot, cold = cold, since = since)
            },
        ),
        ClockKind::ToFridge => (
            say!("clock-fridge", time = time),
            if over {
                say!("clock-fridge-over")
            } else {
                say!("clock-fridge-why", hot = hot, since = since)
            },
        ),
        ClockKind::CoolTo70 => (
            say!("clock-cool-70", to = to(COOL_FIRST.0), time = time),
            if over {
                say!("clock-cool-70-over", instant = to(INSTANT_KILL))
            } else {
                say!("clock-cool-70-why", from = to(COOL_FROM), since = since)
            },
        ),
        ClockKind::CoolTo41 => (
            say!("clock-cool-41", to = to(COOL_SECOND.0), time = time),
            if over { say!("clock-cool-41-over") } else { say!("clock-cool-41-why") },
        ),
    };
    ClockWords { what, why, expected: (!over).then(|| expected(clock, now)).flatten() }
}

fn expected(clock: &Clock, now: Moment) -> Option<String> {
    if clock.kind == ClockKind::ToFridge {
        let below = clock.expected.filter(|at| *at > now)?;
        let (hot, time) = (show::temperature(HOT), show::the_time(below));
        return Some(say!("clock-expected-below", hot = hot, time = time));
    }
    if clock.is_expected_to_run_out() {
        return Some(say!("clock-not-expected"));
    }
    clock
        .expected
        .filter(|at| *at > now)
        .map(|at| say!("clock-expected", time = show::the_time(at)))
}
