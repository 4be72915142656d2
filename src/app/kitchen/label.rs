//! A bag's label: the lines to write by hand or print, and the code that opens its reheat screen.

use cook_model::kitchen::card::Card;
use cook_model::kitchen::card_limit::Limit;
use cook_model::kitchen::log::BagState;
use cook_model::kitchen::qr::{QrPath, qr_path};
use cook_model::kitchen::reheat::{BathPlan, USUAL_BATH, USUAL_CORE};
use cook_model::quantity::{Span, to_minutes};
use leptos::prelude::window;

use super::{OpenKitchen, words};
use crate::{say, show};

/// A bag is not hurt by a few minutes more, and a round number is read at a glance.
const ROUND_UP_TO: f64 = 5.0;

/// What a label says.
#[derive(Clone, Debug, PartialEq)]
pub struct Label {
    /// Its lines.
    pub lines: Vec<String>,
    /// The address its code holds.
    pub address: String,
    /// The code.
    pub code: Option<QrPath>,
}

/// The label of a bag that is still there.
pub fn label_of(kitchen: OpenKitchen, state: &BagState) -> Option<Label> {
    let card = Card::of(state)?;
    let bag = &state.bag;
    let weight = show::mass(bag.weight);
    let mut lines = vec![
        say!("label-what", form = words::form(bag.form)),
        format!("{}, {weight}", words::bag(state)),
        say!("label-cooked", cooked = words::day(bag.cooked)),
        show::capital(words::keeps(state)),
    ];
    let plan = BathPlan {
        portion: bag.portion(),
        from: card.place,
        bath: USUAL_BATH,
        core: USUAL_CORE,
        warm: bag.brings.warm,
    };
    let keeps = !matches!(card.limit, Limit::ThrowAway(_));
    if let Some(time) = kitchen.bath_time(&plan).filter(|_| keeps) {
        let (bath, minutes) = (show::temperature(USUAL_BATH), rounded_up(time.surely));
        lines.push(if bag.form.lies_flat() {
            say!("label-bath-flat", bath = bath, minutes = minutes)
        } else {
            say!("label-bath", bath = bath, minutes = minutes)
        });
    }
    let address = card.address(&here());
    let code = qr_path(&address).ok();
    Some(Label { lines, address, code })
}

fn rounded_up(span: Span) -> i64 {
    ((to_minutes(span) / ROUND_UP_TO).ceil() * ROUND_UP_TO) as i64
}

/// The app's own address, wherever it is hosted.
fn here() -> String {
    let location = window().location();
    let (origin, path) = (location.origin(), location.pathname());
    format!("{}{}", origin.unwrap_or_default(), path.unwrap_or_default())
}
