//! Reheating a bag: minutes in a water bath, and guidance for pan and oven.

use core::ops::RangeInclusive;

use thiserror::Error;

use super::caution::Caution;
use super::form::Form;
use super::shape::Portion;
use super::storage::{Packing, Place};
use super::thaw::Bath;
use crate::heat::{Leg, Start, Surface, Surroundings, Tuning, trace};
use crate::quantity::{Span, Temperature, TemperatureDifference};
use crate::safety::LONGEST_WARM_UP;

/// Core temperatures a bath is used for. From the first on food may be held hot: FDA Food Code 2022,
/// 3-501.16 (from memory; its 130 F is for roasts alone).
pub const CORE: RangeInclusive<Temperature> =
    Temperature::from_f(135.0)..=Temperature::from_f(185.0);
/// Usual core: hot food is held and served at 135 F or above (FDA Food Code 3-501.16).
pub const USUAL_CORE: Temperature = Temperature::from_f(135.0);
/// Usual bath: a sealed whole breast in it for about an hour is hot through (common practice, no
/// source).
pub const USUAL_BATH: Temperature = Temperature::from_f(145.0);
/// The core creeps up to the bath at last: nearer than 3 F takes for ever (common practice, no source). A
/// thousandth less, so that 3 F typed in whole degrees are 3 F.
const LEAST_LEAD: TemperatureDifference = TemperatureDifference::from_f(2.999);
/// The hottest water.
const HOTTEST_BATH: Temperature = Temperature::from_f(212.0);

/// How cold a bag is out of the refrigerator, and out of the freezer.
const CHILLED: Temperature = Temperature::from_f(38.0);
const FROZEN: Temperature = Temperature::from_f(0.0);

/// How much thicker than measured a bag may be, or its water slower: the later of the two times.
const MARGIN: f64 = 1.12;
/// Nothing a kitchen reheats takes longer.
const LONGEST: Span = Span::hours(24);
/// How far the traces go, one after another, until one is long enough.
const UNTIL: [Span; 3] = [Span::hours(1), Span::hours(5), LONGEST];
/// The longest that reheating may take. Source: FDA Food Code 2022, 3-403.11; COMAR 10.15.03.11: 165 F
/// within 2 h.
const LONGEST_REHEAT: Span = Span::hours(2);
/// Under it food must not be for long on its way up. Source: FDA Food Code 2022, 3-501.19, time as the
/// only control, which counts below the temperature of hot holding (from memory).
const DANGER_TOP: Temperature = Temperature::from_f(135.0);

/// What is to be reheated, how.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BathPlan {
    /// The bag.
    pub portion: Portion,
    /// Where it comes from.
    pub from: Place,
    /// The water.
    pub bath: Temperature,
    /// The core temperature wanted.
    pub core: Temperature,
    /// How long the meat was between 41 and 140 F before, as far as that is known.
    pub warm: Span,
}

/// How long a bag needs in the bath.
#[derive(Clone, Debug, PartialEq)]
pub struct BathTime {
    /// The likeliest time to the core temperature.
    pub likely: Span,
    /// By then even a bag 12 % thicker is there.
    pub surely: Span,
    /// How long the core is under 135 F of the time that is sure.
    pub warming: Span,
    /// What to say beside it.
    pub cautions: Vec<Caution>,
}

/// Why no time can be given.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum ReheatProblem {
    /// The bath is not hot enough for that core.
    #[error("the bath must be at least 3 F (2 C) hotter than the core wanted")]
    BathTooCool,
    /// The water would boil.
    #[error("water boils at 212 F (100 C); a bath up to that is accepted")]
    BathTooHot,
    /// A core that is not safe to hold, or is overdone.
    #[error(
        "a core of 135 F to 185 F (57.3 C to 85 C) is accepted: colder is not hot enough to keep"
    )]
    Core,
    /// A weight or thickness no bag has.
    #[error("a bag of 10 g to 5 kg and 5 to 100 mm (0.2 to 4 in) thick is accepted")]
    Bag,
    /// It does not get there within a day.
    #[error("that would take more than a day; use a hotter bath or a thinner bag")]
    TooLong,
}

/// How long a bag needs in a water bath.
///
/// # Errors
/// [`ReheatProblem`] says what is not possible and what is accepted.
pub fn bath_time(plan: &BathPlan) -> Result<BathTime, ReheatProblem> {
    if !CORE.contains(&plan.core) {
        return Err(ReheatProblem::Core);
    }
    if plan.bath < plan.core + LEAST_LEAD || !plan.bath.c().is_finite() {
        return Err(ReheatProblem::BathTooCool);
    }
    if plan.bath > HOTTEST_BATH {
        return Err(ReheatProblem::BathTooHot);
    }
    if !plan.portion.is_possible() {
        return Err(ReheatProblem::Bag);
    }
    let to = |portion: &Portion, core| {
        time_to(portion, plan.from, plan.bath, core).ok_or(ReheatProblem::TooLong)
    };
    let likely = to(&plan.portion, plan.core)?;
    let surely = to(&plan.portion.thicker(MARGIN), plan.core)?;
    let warming = to(&plan.portion.thicker(MARGIN), DANGER_TOP)?;
    Ok(BathTime { likely, surely, warming, cautions: cautions(plan, warming) })
}

fn time_to(portion: &Portion, from: Place, bath: Temperature, core: Temperature) -> Option<Span> {
    let surface = Surface::water_bath();
    match from {
        Place::Fridge => {
            let cook = Surroundings::new(Leg::steady(surface, bath));
            let start = Start::cooked(CHILLED);
            let body = portion.body();
            let warmed = |until| trace(&body, start, &cook, until, &Tuning::default());
            // Most are warm long before the longest: a short trace costs less.
            UNTIL.iter().find_map(|until| warmed(*until).core_reaches(core))
        }
        Place::Freezer => {
            let water = Bath { temperature: bath, transfer: surface.convection };
            portion.layer().reaches(FROZEN, &water, core, LONGEST)
        }
    }
}

fn cautions(plan: &BathPlan, warming: Span) -> Vec<Caution> {
    let mut cautions = Vec::new();
    if plan.core < Caution::LEFTOVERS {
        cautions.push(Caution::LeftoversTo165);
    }
    cautions.push(Caution::ServeOrHoldHot);
    if plan.warm + warming > LONGEST_WARM_UP {
        cautions.push(Caution::SlowToWarm);
    } else if warming > LONGEST_REHEAT {
        cautions.push(Caution::SlowToReheat);
    }
    if plan.portion.packing == Packing::Vacuum {
        cautions.push(Caution::Vacuum);
    }
    cautions
}

/// How to reheat without a bath. No time is computed: a thermometer says when it is done.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Guidance {
    /// In a covered pan over low heat, with a splash of broth or water.
    Pan {
        /// Stirring helps what is in small pieces; a whole one is turned.
        stir: bool,
    },
    /// In the oven, covered, with a splash of broth or water.
    Oven {
        /// No lower than this (USDA consumer advice on reheating leftovers, from memory).
        at_least: Temperature,
    },
}

/// Guidance for pan and oven, both to 165 F read in the middle.
pub const fn guidance(form: Form) -> [Guidance; 2] {
    [
        Guidance::Pan { stir: form.lies_flat() },
        Guidance::Oven { at_least: Temperature::from_f(325.0) },
    ]
}

/// The longest in tap water. Source: USDA consumer advice on thawing (as extensions repeat it): even a
/// package of three to four pounds thaws in two to three hours.
const LONGEST_IN_WATER: Span = Span::hours(3);

/// Where frozen bags thaw.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Thawing {
    /// On a plate in the refrigerator.
    Fridge,
    /// In cold water that is changed every half hour, the bag tight; to be heated at once.
    ColdWater,
}

/// How long a frozen bag needs to thaw.
#[derive(Clone, Debug, PartialEq)]
pub struct Thaw {
    /// Until the middle is thawed.
    pub time: Span,
    /// What to say beside it.
    pub cautions: Vec<Caution>,
}

/// How long a frozen bag needs to thaw to the middle. In tap water its outside is warmer than a
/// refrigerator all the while.
///
/// # Errors
/// [`ReheatProblem::Bag`] for a weight or thickness no bag has, [`ReheatProblem::TooLong`] where
/// it takes more than four days.
pub fn thaw_time(portion: &Portion, thawing: Thawing) -> Result<Thaw, ReheatProblem> {
    /// The middle gives way to a finger: next to no ice is left (common practice, no source).
    const THAWED: Temperature = Temperature::from_c(-0.9);
    if !portion.is_possible() {
        return Err(ReheatProblem::Bag);
    }
    let bath = match thawing {
        Thawing::Fridge => super::chill::fridge_air(),
        Thawing::ColdWater => super::chill::cold_tap_water(),
    };
    let thawed = |portion: &Portion| {
        let layer = portion.layer();
        layer.reaches(FROZEN, &bath, THAWED, Span::days(4)).ok_or(ReheatProblem::TooLong)
    };
    let time = thawed(portion)?;
    let slow =
        thawing == Thawing::ColdWater && thawed(&portion.thicker(MARGIN))? > LONGEST_IN_WATER;
    Ok(Thaw { time, cautions: slow.then_some(Caution::SlowToThaw).into_iter().collect() })
}
