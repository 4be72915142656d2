//! The demo: a weeknight with four breasts, cooked by an invented cook who does what the app says,
//! while time runs fast. Nothing of it is stored.

use cook_model::cook::{Action, CookState, Step, What};
use cook_model::forecast::Forecast;
use cook_model::history::Instrument;
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::quantity::{Length, Mass, Span, Temperature, TemperatureDifference};
use leptos::prelude::*;

use crate::open_cook::OpenCook;
use crate::parts::open_question;

/// How many times as fast as life the demo runs.
pub const TIMES: i32 = 60;
/// The weights in grams and thickest parts in millimetres of our four breasts.
const PIECES: [(f64, f64); 4] = [(176.0, 30.0), (228.0, 36.0), (262.0, 40.0), (338.0, 47.0)];
/// The meat runs a little ahead of the forecast, as if the pit were a shade livelier.
const AHEAD: TemperatureDifference = TemperatureDifference::from_f(2.0);
/// The pit is a little hotter than it is set for.
const PIT_OVER: TemperatureDifference = TemperatureDifference::from_f(6.0);
/// Thin pieces carry over little, so this cook pulls a little later than most.
const PULL: Temperature = Temperature::from_f(162.0);
/// From the start to dinner.
const TO_DINNER: Span = Span::minutes(110);
/// The invented cook waits this many ticks before doing what is due, so that it can be seen.
const TICKS_TO_SEE: u32 = 2;

/// Begins the demo.
pub fn start(cook: OpenCook) {
    cook.open_demo(TIMES);
    let now = untrack(|| cook.now());
    let mut begin = vec![
        What::DinnerSet { at: Some(now + TO_DINNER) },
        What::PullTargetSet { piece: None, target: PULL },
    ];
    for (number, (grams, millimetres)) in (1..).zip(PIECES) {
        let facts = Piece {
            weight: Mass::from_g(grams),
            thickest: Some(Length::from_mm(millimetres)),
            shape: Shape::Natural,
            start: Temperature::from_f(38.0),
            icy: false,
        };
        begin.push(What::PieceSetOut { piece: PieceId(number), facts, name: String::new() });
    }
    begin.extend((1..).take(PIECES.len()).map(|number| What::PutOn { piece: PieceId(number) }));
    cook.record_all(begin);
}

/// Lets the invented cook follow the advice whenever the demo runs. Called once for the page.
pub fn follow_advice(cook: OpenCook) {
    let question = open_question(cook);
    let waited = StoredValue::new(0_u32);
    Effect::new(move || {
        let now = cook.now();
        if !cook.is_demo() {
            return;
        }
        let asked = untrack(|| question.get());
        let due = untrack(|| cook.step().filter(|step| step.due <= now));
        if asked.is_none() && due.is_none() {
            return waited.set_value(0);
        }
        waited.update_value(|ticks| *ticks += 1);
        if waited.get_value() <= TICKS_TO_SEE {
            return;
        }
        waited.set_value(0);
        let (state, forecast) = (cook.state().read_untracked(), cook.forecast().read_untracked());
        cook.record_all(match (asked, due) {
            // Our thermometer is right.
            (Some(surprise), _) => vec![What::ReadingVouched { reading: surprise.entry }],
            (None, Some(step)) => answer(&step, &state, &forecast),
            (None, None) => Vec::new(),
        });
    });
}

/// What the invented cook does about a step.
fn answer(step: &Step, state: &CookState, forecast: &Forecast) -> Vec<What> {
    let all = |what: fn(PieceId) -> What| step.pieces.iter().copied().map(what).collect();
    let Some(first) = step.pieces.first().copied() else {
        return match step.action {
            Action::ReadPit => {
                vec![What::PitRead { temperature: state.settings.pit_target + PIT_OVER }]
            }
            Action::Chore { chore } => vec![What::ChoreDone { chore }],
            _ => Vec::new(),
        };
    };
    match &step.action {
        Action::Check => read(first, AHEAD, forecast),
        Action::Prove => read(first, TemperatureDifference::ZERO, forecast)
            .into_iter()
            .map(|what| at_least(what, state.settings.proof_rule.instant()))
            .collect(),
        Action::TrySecondPlace { reading } => vec![What::SecondPlaceTried { reading: *reading }],
        Action::Pull => vec![What::Pulled { piece: first }],
        Action::PutBack | Action::PutOn => vec![What::PutOn { piece: first }],
        Action::Reseat => vec![What::LeaveInSeated { piece: first }],
        Action::Cover => all(|piece| What::Covered { piece }),
        Action::Pack => all(|piece| What::Packed { piece }),
        Action::ReadPit | Action::SetOut | Action::Chore { .. } => Vec::new(),
    }
}

/// A reading a little off the forecast, to the whole degree as a thermometer shows it.
fn read(piece: PieceId, off: TemperatureDifference, forecast: &Forecast) -> Vec<What> {
    let Some(piece_forecast) = forecast.piece(piece) else { return Vec::new() };
    let shown = (piece_forecast.core.middle + off).f().round();
    vec![What::CoreRead {
        piece,
        temperature: Temperature::from_f(shown),
        instrument: Instrument::InstantRead,
        places: 2,
    }]
}

/// In our story every piece is proved at its first try.
fn at_least(mut what: What, rule: Temperature) -> What {
    if let What::CoreRead { temperature, .. } = &mut what {
        *temperature = temperature.max(rule);
    }
    what
}
