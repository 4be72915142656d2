//! Cooling cooked meat: how long it takes, against the two-hour and the two-step limit.

use thiserror::Error;

use super::caution::Caution;
use super::shape::Portion;
use super::thaw::Bath;
use crate::heat::{
    HeatTransferCoefficient, Leg, Start, Surface, Surroundings, Trace, Tuning, trace,
};
use crate::quantity::{Moment, Span, Temperature};
use crate::safety::{COOL_FIRST, COOL_FROM, COOL_SECOND, longest_out};

/// The two steps of cooling, by the safety room's limits.
const HOT: Temperature = COOL_FROM;
const MIDDLE: Temperature = COOL_FIRST.0;
const COLD: Temperature = COOL_SECOND.0;

/// A refrigerator as it should be set (common practice, no source): 37 F, to keep 40 F at the door.
const FRIDGE: Temperature = Temperature::from_f(37.0);
/// Slow air moved by a fan now and then, W/m2K; radiation comes on top.
const FRIDGE_AIR: f64 = 5.0;
/// Emissivity of meat and of bags (textbook value, from memory).
const EMISSIVITY: f64 = 0.9;
/// A wet bag packed in crushed ice touches ice and melt water, W/m2K: the authors' judgement,
/// between still water and a stirred bath.
const ON_ICE: f64 = 60.0;
/// Ice water that is stirred now and then, W/m2K: as a stirred bath.
const ICE_BATH: f64 = 95.0;
const ICE: Temperature = Temperature::from_c(0.0);
/// Cold tap water, changed every half hour, and its transfer without stirring, W/m2K: natural
/// convection about a bag ten degrees colder (the authors' estimate).
const TAP: Temperature = Temperature::from_f(60.0);
const STILL_WATER: f64 = 100.0;

/// The limits are held against a portion so many times as thick: what was measured may be off, and
/// a bag bulges.
const MARGIN: f64 = 1.12;

/// Longer than anything here should take.
const LONGEST: Span = Span::hours(36);
/// Long enough for most.
const SHORT: Span = Span::hours(5);

/// Where meat is cooled.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Cooling {
    /// On a rack in the refrigerator, air on all sides.
    #[default]
    Fridge,
    /// In a sealed bag packed in crushed ice.
    OnIce,
    /// In a sealed bag in ice water, stirred now and then.
    IceBath,
}

impl Cooling {
    /// All ways, the slowest first.
    pub const ALL: [Self; 3] = [Self::Fridge, Self::OnIce, Self::IceBath];

    fn leg(self) -> Leg {
        let water = |h| Surface::convective(HeatTransferCoefficient::from_w_per_m2k(h));
        match self {
            Self::Fridge => {
                Leg::steady(Surface { emissivity: EMISSIVITY, ..water(FRIDGE_AIR) }, FRIDGE)
            }
            Self::OnIce => Leg::steady(water(ON_ICE), ICE),
            Self::IceBath => Leg::steady(water(ICE_BATH), ICE),
        }
    }
}

/// How long a portion takes to cool.
#[derive(Clone, Debug, PartialEq)]
pub struct Chilled {
    /// Until the core is at 135 F; nothing if it is there already.
    pub to_hot: Span,
    /// Until it is at 70 F.
    pub to_middle: Span,
    /// Until it is at 41 F.
    pub to_cold: Span,
    /// What to say beside it: the limits it does not keep.
    pub cautions: Vec<Caution>,
}

/// Why no cooling time can be given.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum ChillProblem {
    /// A weight or thickness no bag has.
    #[error("a portion of 10 g to 5 kg and 5 to 100 mm (0.2 to 4 in) thick is accepted")]
    Portion,
    /// A core temperature that needs no cooling, or is none.
    #[error("a core temperature of 42 F to 212 F (6 C to 100 C) is accepted")]
    Core,
}

/// How long a portion takes to cool from a core temperature, and whether that keeps the two-step
/// limit. `under_hot` is how long its core has been under 135 F already.
///
/// # Errors
/// [`ChillProblem`] says what is not possible and what is accepted.
pub fn chill(
    portion: &Portion,
    core: Temperature,
    under_hot: Span,
    cooling: Cooling,
) -> Result<Chilled, ChillProblem> {
    if !portion.is_possible() {
        return Err(ChillProblem::Portion);
    }
    if !(Temperature::from_f(42.0)..=Temperature::from_f(212.0)).contains(&core) {
        return Err(ChillProblem::Core);
    }
    let [to_hot, to_middle, to_cold] = times(portion, core, cooling);
    let late = times(&portion.thicker(MARGIN), core, cooling);
    let before = if core < HOT { under_hot } else { Span::zero() };
    let mut cautions = vec![Caution::TwoHours];
    if before > COOL_SECOND.1 || (before > COOL_FIRST.1 && core >= MIDDLE) {
        cautions.push(Caution::CoolingOver);
    } else if before > COOL_FIRST.1 {
        cautions.push(Caution::MiddleNotSeen);
    } else if before + (late[1] - late[0]) > COOL_FIRST.1 {
        cautions.push(Caution::FirstStepSlow);
    }
    if before + (late[2] - late[0]) > COOL_SECOND.1 {
        cautions.push(Caution::SecondStepSlow);
    }
    Ok(Chilled { to_hot, to_middle, to_cold, cautions })
}

/// Until the core is at 135, 70 and 41 F.
fn times(portion: &Portion, core: Temperature, cooling: Cooling) -> [Span; 3] {
    let surroundings = Surroundings::new(cooling.leg());
    let start = Start::cooked(core);
    let body = portion.body();
    let trace = |until| trace(&body, start, &surroundings, until, &Tuning::default());
    // Most are cold long before the longest: a short trace costs less.
    let short = trace(SHORT);
    let cooled = if short.core(SHORT) <= COLD { short } else { trace(LONGEST) };
    [HOT, MIDDLE, COLD].map(|target| falls_to(&cooled, core, target))
}

/// When the core falls to a temperature. It starts even and cools, so it never rises; what has not
/// got there by the end of the trace is taken as the end, which breaks every limit.
fn falls_to(cooled: &Trace, core: Temperature, target: Temperature) -> Span {
    if core <= target {
        return Span::zero();
    }
    cooled.core_falls_to(target, Span::zero()).unwrap_or(LONGEST)
}

/// By when a portion must be in the cold.
///
/// The two-hour limit counts from the moment it came off the pit; the two-step one from the moment
/// its core fell under 135 F, if that is known, less the time the cold itself needs to 70 F.
pub fn into_cold_by(
    off: Moment,
    ambient: Temperature,
    under_hot_since: Option<Moment>,
    chilled: &Chilled,
) -> Moment {
    let at_room = off + longest_out(ambient);
    let two_step =
        under_hot_since.map(|since| since + (COOL_FIRST.1 - (chilled.to_middle - chilled.to_hot)));
    two_step.map_or(at_room, |two_step| two_step.min(at_room))
}

/// The air of a refrigerator, radiation included as it is near the cold.
pub(super) fn fridge_air() -> Bath {
    // 4 eps sigma T^3 at 2 C.
    const RADIATION: f64 = 4.25;
    let transfer = HeatTransferCoefficient::from_w_per_m2k(FRIDGE_AIR + RADIATION);
    Bath { temperature: FRIDGE, transfer }
}

/// Cold tap water in a bowl.
pub(super) fn cold_tap_water() -> Bath {
    let transfer = HeatTransferCoefficient::from_w_per_m2k(STILL_WATER);
    Bath { temperature: TAP, transfer }
}
