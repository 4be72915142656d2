use core::ops::RangeInclusive;

use cook_model::cook::What;
use cook_model::history::Instrument;
use cook_model::quantity::{Length, Temperature, TemperatureDifference};
use cook_model::safety::{ALLOWED, Bath, CheckProblem, boiling_point, lower_offset};
use leptos::prelude::*;

use crate::derived::Derived;
use crate::open_cook::open_cook;
use crate::parts::{Choice, Field, Heading, If, NamedGear};
use crate::typed::{Altitude, Typed, quantity, quantity_or_blank};
use crate::words::wording;
use crate::{gear, safety_words, say, show};

/// What a thermometer could show in water, however wrong it is.
const SHOWN: RangeInclusive<Temperature> = Temperature::from_f(-20.0)..=Temperature::from_f(260.0);
/// Where people cook; the model checks it again.
const ALTITUDES: RangeInclusive<Altitude> =
    Altitude(Length::from_m(-450.0))..=Altitude(Length::from_m(5500.0));
const SEA_LEVEL: Altitude = Altitude(Length::from_m(0.0));
const ICE: Temperature = Temperature::from_c(0.0);
/// The offset beyond which the model makes no correction.
const MOST: TemperatureDifference = *cook_model::cook::limits::OFFSET.end();

/// What one field gives: nothing yet, an offset, or what is wrong.
type Found = Result<Option<TemperatureDifference>, String>;

/// Checks a thermometer against the two temperatures that water gives.
#[component]
pub fn ThermometerCheck() -> impl IntoView {
    let cook = open_cook();
    let state = cook.state();
    let instrument = RwSignal::new(Instrument::InstantRead);
    let kept = gear::kept();
    let others = move || {
        let of = instrument.get();
        let all = kept.get().thermometers.into_iter().enumerate();
        let same = all.filter(|(_, one)| one.instrument == of).skip(1);
        same.map(|(place, one)| (place, one.name)).collect()
    };
    let (ice, bad_ice) = (RwSignal::new(String::new()), RwSignal::new(None));
    let (boiling, bad_boiling) = (RwSignal::new(String::new()), RwSignal::new(None));
    let (height, bad_height) = (RwSignal::new(SEA_LEVEL.in_field()), RwSignal::new(None));
    let altitude = Derived::new(move || quantity(&height.read(), &ALTITUDES, SEA_LEVEL));
    let in_ice = move || in_water(&ice.read(), Bath::IceWater, ICE);
    let in_boiling = move || match altitude.get() {
        Ok(Altitude(altitude)) => {
            let bath = Bath::BoilingWater { altitude };
            in_water(&boiling.read(), bath, boiling_point(altitude))
        }
        Err(_) => Ok(None),
    };
    let found = Derived::new(move || match (in_ice().ok()?, in_boiling().ok()?) {
        (Some(one), Some(other)) => Some(lower_offset(one, other)),
        (one, other) => one.or(other),
    });
    let too_far = move || {
        let by_altitude = altitude.get().ok().map(|Altitude(altitude)| altitude);
        let boiling_bath = by_altitude.map(|altitude| Bath::BoilingWater { altitude });
        far_off(&ice.read(), Bath::IceWater)
            .or_else(|| boiling_bath.and_then(|bath| far_off(&boiling.read(), bath)))
    };
    let replaced = move |_| {
        cook.record(What::ThermometerReplaced { instrument: instrument.get_untracked() });
    };
    let take = move |_| {
        bad_height.set(altitude.get_untracked().err());
        bad_ice.set(untrack(in_ice).err());
        bad_boiling.set(untrack(in_boiling).err());
        let any_bad = [bad_height, bad_ice, bad_boiling]
            .into_iter()
            .any(|bad: RwSignal<Option<String>>| bad.read_untracked().is_some());
        let instrument = instrument.get_untracked();
        if let Some(offset) = untrack(too_far) {
            // What is wrong is said beside the field, and it stays there.
            cook.record(What::ThermometerChecked { instrument, offset });
        }
        match found.get_untracked() {
            _ if any_bad => {}
            Some(offset) => {
                cook.record(What::ThermometerChecked { instrument, offset });
                ice.set(String::new());
                boiling.set(String::new());
            }
            None => bad_ice.set(Some(say!("bad-blank", example = ICE.in_field()))),
        }
    };
    let boils_at = move || {
        let Altitude(altitude) = altitude.get().ok()?;
        let temperature = show::reading(boiling_point(altitude));
        Some(say!("check-boils-at", temperature = temperature))
    };
    let now = move || {
        let thermometer = safety_words::instrument(instrument.get());
        let offset = safety_words::offset(state.read().offset(instrument.get()));
        say!("check-now", thermometer = thermometer, offset = offset)
    };
    let told = move || found.get().map(safety_words::offset);
    let over_allowed = move || {
        found.get().filter(|offset| offset.abs() > ALLOWED).map(|_| {
            let words = say!("check-over-allowed", allowed = show::difference(ALLOWED));
            view! { <p class="caution">{words}</p> }
        })
    };
    view! {
        <section class="screen check">
            <Heading text=wording("check-title") />
            <p>{move || say!("check-lead", ice = show::temperature(ICE))}</p>
            <Choice
                name="instrument"
                label=wording("check-which")
                options=vec![
                    (Instrument::InstantRead, wording("instant-read")),
                    (Instrument::LeaveIn, wording("leave-in")),
                ]
                chosen=instrument
                on_choose=move |chosen| instrument.set(chosen)
            />
            <NamedGear
                name="thermometer-name"
                label=wording("gear-thermometer")
                in_use=move || kept.get().thermometer(instrument.get()).map(|it| it.name.clone()).unwrap_or_default()
                others=others
                on_name=move |name: String| kept.change(|gear| gear.name_thermometer(instrument.get_untracked(), name))
                on_use=move |place: usize| {
                    kept.change(|gear| gear.use_thermometer(place));
                    gear::use_in(cook);
                }
                on_new=move |()| {
                    kept.change(|gear| gear.new_thermometer(instrument.get_untracked()));
                    gear::use_in(cook);
                }
            />
            <p class="note">{move || now()}</p>
            <div class="card">
                <Field
                    name="ice"
                    label=|| say!("check-ice", unit = show::temperature_unit())
                    text=ice
                    bad=bad_ice
                    on_done=move |()| bad_ice.set(untrack(in_ice).err())
                />
                <Field
                    name="altitude"
                    label=|| say!("check-altitude", unit = Altitude::unit())
                    text=height
                    bad=bad_height
                    hint=move || boils_at().unwrap_or_default()
                    on_done=move |()| bad_height.set(altitude.get_untracked().err())
                />
                <Field
                    name="boiling"
                    label=|| say!("check-boiling", unit = show::temperature_unit())
                    text=boiling
                    bad=bad_boiling
                    hint=wording("check-both")
                    on_done=move |()| bad_boiling.set(untrack(in_boiling).err())
                />
                <p class="note" role="status">
                    {move || told()}
                </p>
                {move || over_allowed()}
                <If holds=move || state.read().is_barred(instrument.get())>
                    <p class="caution" role="alert">
                        {wording("check-barred")}
                    </p>
                    <button on:click=replaced>{wording("check-replaced")}</button>
                </If>
                <button on:click=take>{wording("check-use")}</button>
            </div>
        </section>
    }
}

/// How far off the thermometer is in one water, if that is further than can be made good.
fn far_off(text: &str, bath: Bath) -> Option<TemperatureDifference> {
    let shown = quantity_or_blank(text, &SHOWN, ICE).ok()??;
    let offset = bath.temperature().ok()? - shown;
    (bath.offset(shown) == Err(CheckProblem::TooFarOff)).then_some(offset)
}

/// The offset that one water gives, from what was typed.
fn in_water(text: &str, bath: Bath, usual: Temperature) -> Found {
    let Some(shown) = quantity_or_blank(text, &SHOWN, usual)? else { return Ok(None) };
    match bath.offset(shown) {
        Ok(offset) => Ok(Some(offset)),
        Err(CheckProblem::TooFarOff) => Err(say!("check-too-far", most = show::difference(MOST))),
        Err(_) => Err(say!("check-altitude-bad")),
    }
}
