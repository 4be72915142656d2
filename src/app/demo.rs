//! The demo: a weeknight with four breasts, cooked by an invented cook who does what the app says,
//! while time runs fast. Nothing of it is stored.

use cook_model::cook::duties::{Act, Doing, Duty};
use cook_model::cook::{Seen, What};
use cook_model::history::Instrument;
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::quantity::{Length, Mass, Moment, Span, Temperature, TemperatureDifference};
use leptos::prelude::*;

use crate::open_cook::OpenCook;

/// How many times as fast as life the demo runs.
pub const TIMES: i32 = 60;
/// The weights in grams and thickest parts in millimetres of our four breasts.
const PIECES: [(f64, f64); 4] = [(176.0, 30.0), (228.0, 36.0), (262.0, 40.0), (338.0, 47.0)];
/// The meat runs a little ahead of the forecast, as if the pit were a shade livelier.
const AHEAD: TemperatureDifference = TemperatureDifference::from_f(2.0);
/// The pit is a little hotter than it is set for.
const PIT_OVER: TemperatureDifference = TemperatureDifference::from_f(6.0);
/// The invented cook pulls early, as many do (common practice, no source), so that it is seen how a rest
/// finishes a piece.
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
        What::PullTargetSet { piece: None, target: Some(PULL) },
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

/// Lets the invented cook do what is due whenever the demo runs. Called once for the page.
pub fn follow_duties(cook: OpenCook) {
    let waited = StoredValue::new(0_u32);
    Effect::new(move || {
        let now = cook.now();
        if !cook.is_demo() {
            return;
        }
        let Some(duty) = untrack(|| cook.duty().filter(|duty| duty.is_due(now))) else {
            return waited.set_value(0);
        };
        waited.update_value(|ticks| *ticks += 1);
        if waited.get_value() <= TICKS_TO_SEE {
            return;
        }
        waited.set_value(0);
        cook.record_all(answer(&duty, &cook.seen().read_untracked(), now));
    });
}

/// What the invented cook does about a duty: what it says, with readings as its story has them.
fn answer(duty: &Duty, seen: &Seen, now: Moment) -> Vec<What> {
    match duty.doing().into_iter().next() {
        Some(Doing::Write { entries }) => entries,
        Some(Doing::TypeCore { pieces, .. }) => {
            let resting = duty.act != Act::Read;
            let read = |piece: &PieceId| read(*piece, resting, seen, now);
            pieces.first().and_then(read).into_iter().collect()
        }
        Some(Doing::TypePit) => {
            vec![What::PitRead { temperature: seen.state.settings.pit_target + PIT_OVER }]
        }
        Some(Doing::TypePieces) | None => Vec::new(),
    }
}

/// A reading a little ahead of the forecast, to the whole degree as a thermometer shows it; at rest
/// enough to prove the piece, for in our story each is proved at its first try.
fn read(piece: PieceId, resting: bool, seen: &Seen, now: Moment) -> Option<What> {
    let core = seen.piece_forecast(piece)?.core_at(now).middle;
    let core =
        if resting { core.max(seen.state.settings.proof_rule.instant()) } else { core + AHEAD };
    Some(What::CoreRead {
        piece,
        temperature: Temperature::from_f(core.f().round()),
        instrument: Instrument::InstantRead,
        places: 2,
    })
}
