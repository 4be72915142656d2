//! The kitchen's things in words.

use cook_model::kitchen::amounts::Volume;
use cook_model::kitchen::caution::Caution;
use cook_model::kitchen::chill::Cooling;
use cook_model::kitchen::form::Form;
use cook_model::kitchen::log::{BagState, KitchenEntry, KitchenLog, KitchenWhat};
use cook_model::kitchen::spice::Spice;
use cook_model::kitchen::storage::{Keeps, Packing, Place};
use cook_model::piece::PieceId;
use cook_model::quantity::Moment;

use super::day::typed_place;
use crate::{preferences, say, show, tap_words};

/// The day as it stands on a label: "Sun 7 Jun".
pub fn day(moment: Moment) -> String {
    let options = js_sys::Object::new();
    for (part, form) in [("weekday", "short"), ("day", "numeric"), ("month", "short")] {
        // Setting a field of a plain object cannot fail.
        let _ = js_sys::Reflect::set(&options, &part.into(), &form.into());
    }
    let tag = preferences::language().tag();
    show::date(moment).to_locale_date_string(tag, &options).into()
}

/// What the meat was made into.
pub fn form(form: Form) -> String {
    match form {
        Form::Whole => say!("form-whole"),
        Form::Sliced => say!("form-sliced"),
        Form::Chunked => say!("form-chunked"),
        Form::Shredded => say!("form-shredded"),
    }
}

/// Where a bag is.
pub fn place(place: Place) -> String {
    match place {
        Place::Fridge => say!("place-fridge"),
        Place::Freezer => say!("place-freezer"),
    }
}

/// What the meat lies in.
pub fn packing(packing: Packing) -> String {
    match packing {
        Packing::Plain => say!("packing-plain"),
        Packing::Covered => say!("packing-covered"),
        Packing::Vacuum => say!("packing-vacuum"),
    }
}

/// Where meat is cooled.
pub fn cooling(cooling: Cooling) -> String {
    match cooling {
        Cooling::Fridge => say!("cooling-fridge"),
        Cooling::OnIce => say!("cooling-on-ice"),
        Cooling::IceBath => say!("cooling-ice-bath"),
    }
}

/// What a bag is called: "Rice bowls, bag 7".
pub fn bag(state: &BagState) -> String {
    let number = state.id.count;
    if state.bag.name.is_empty() {
        say!("bag-number", number = number)
    } else {
        say!("bag-name", name = state.bag.name.as_str(), number = number)
    }
}

/// Until when it keeps, and what that means.
pub fn keeps(state: &BagState) -> String {
    match state.keeps() {
        Some(Keeps::Fridge { eat_by, .. }) => say!("bag-eat-by", day = day(eat_by)),
        Some(Keeps::Freezer { best_by, .. }) => say!("bag-best-by", day = day(best_by)),
        Some(Keeps::ThrowAway { .. }) => say!("bag-does-not-keep"),
        None => String::new(),
    }
}

/// A piece of the day.
pub fn piece(id: PieceId) -> String {
    match typed_place(id) {
        Some(place) => say!("portions-typed-piece", number = place + 1),
        None => say!("piece", number = id.0),
    }
}

/// A volume by the spoon.
pub fn spoons(volume: Volume) -> String {
    let teaspoons = volume.teaspoons();
    if teaspoons >= 3.0 {
        say!("tablespoons", count = show::number(teaspoons / 3.0, 1))
    } else {
        say!("teaspoons", count = show::number(teaspoons, 1))
    }
}

/// What is sold as.
pub fn spice(spice: Spice) -> String {
    match spice {
        Spice::TableSalt => say!("spice-table-salt"),
        Spice::CoarseSalt => say!("spice-coarse-salt"),
        Spice::FlakeSalt => say!("spice-flake-salt"),
        Spice::Sugar => say!("spice-sugar"),
        Spice::BrownSugar => say!("spice-brown-sugar"),
        Spice::Paprika => say!("spice-paprika"),
        Spice::BlackPepper => say!("spice-black-pepper"),
        Spice::GarlicPowder => say!("spice-garlic"),
        Spice::OnionPowder => say!("spice-onion"),
        Spice::ChilliPowder => say!("spice-chilli"),
        Spice::Cumin => say!("spice-cumin"),
        Spice::Cayenne => say!("spice-cayenne"),
        Spice::MustardPowder => say!("spice-mustard"),
        Spice::Blend { .. } => say!("spice-blend"),
        _ => say!("spice-other"),
    }
}

/// What to say beside chilling, storing and reheating.
pub fn caution(caution: Caution) -> String {
    match caution {
        Caution::LeftoversTo165 => {
            say!("caution-leftovers", advised = show::temperature(Caution::LEFTOVERS))
        }
        Caution::ServeOrHoldHot => say!("caution-serve-or-hold"),
        Caution::SlowToWarm => say!("caution-slow-to-warm"),
        Caution::Vacuum => say!("caution-vacuum"),
        Caution::TwoHours => say!("caution-two-hours"),
        Caution::FirstStepSlow => say!("caution-first-step"),
        Caution::SecondStepSlow => say!("caution-second-step"),
        Caution::PastEatBy => say!("caution-past-eat-by"),
        Caution::TooLateIntoCold => say!("caution-too-late"),
        Caution::CoolingOver => say!("caution-cooling-over"),
        Caution::MiddleNotSeen => say!("caution-middle-not-seen"),
        Caution::SlowToReheat => say!("caution-slow-to-reheat"),
        Caution::SlowToThaw => say!("caution-slow-to-thaw"),
        Caution::DaysUnknown => say!("caution-days-unknown"),
        _ => say!("caution-local-code"),
    }
}

/// What a tap in the kitchen did.
pub fn done(log: &KitchenLog, entries: &[KitchenEntry]) -> String {
    tap_words::turned(log, entries, told)
}

fn told(entries: &[KitchenEntry]) -> String {
    let packed = |entry: &&KitchenEntry| matches!(entry.what, KitchenWhat::BagPacked { .. });
    match entries.first().map(|entry| &entry.what) {
        Some(KitchenWhat::BagPacked { .. }) => {
            say!("done-packed", count = entries.iter().filter(packed).count())
        }
        Some(KitchenWhat::BagMoved { bag, to }) => {
            say!("done-moved", number = bag.count, place = place(*to))
        }
        Some(KitchenWhat::BagUsed { bag }) => say!("done-used", number = bag.count),
        Some(KitchenWhat::BagThrownAway { bag }) => say!("done-thrown", number = bag.count),
        Some(KitchenWhat::Weighed { .. }) => say!("done-weighed"),
        Some(KitchenWhat::RubKept { .. } | KitchenWhat::RubDropped { .. }) => say!("done-rub"),
        _ => String::new(),
    }
}
