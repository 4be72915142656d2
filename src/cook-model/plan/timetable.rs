//! From the best loading to the times on the clock.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::draws::quantile;
use super::loading::{Cost, Setting, Slot, Style};
use super::request::{PlanProblem, Request};
use super::sampling::draw_days;
use super::waves::best_waves;
use crate::forecast::{Band, Forecast, Probability, forecast};
use crate::piece::PieceId;
use crate::quantity::{Moment, Span, minutes, to_minutes};
use crate::safety::longest_out_by_plan;
use crate::sorting::sort_by_key;

/// When one piece goes on, is checked, comes off and is ready.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct PiecePlan {
    /// Which piece.
    pub piece: PieceId,
    /// In which wave, the first being 0.
    pub wave: usize,
    /// On which rack place, the first being 0.
    pub place: usize,
    /// Whether it is for tonight.
    pub tonight: bool,
    /// When it leaves the refrigerator: with its wave, where it does not lie out too long for that.
    pub out_of_fridge: Moment,
    /// When it goes on.
    pub on: Moment,
    /// Its pull window. The first check is at its beginning.
    pub pull: Band<Moment>,
    /// When it is likely to have rested.
    pub rested: Moment,
}

/// The times of a whole cook, back from dinner.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Plan {
    /// How the pieces of a wave follow each other.
    pub style: Style,
    /// When the first meat leaves the refrigerator; see [`PiecePlan::out_of_fridge`].
    pub out_of_fridge: Moment,
    /// When to season.
    pub season: Moment,
    /// When to light the fire.
    pub light: Moment,
    /// When the pit is up to temperature and the first pieces go on.
    pub first_on: Moment,
    /// When wood or charcoal goes on.
    pub feeds: Vec<Moment>,
    /// Each piece, in the order in which they go on.
    pub pieces: Vec<PiecePlan>,
    /// When people eat.
    pub dinner: Moment,
    /// The chance that dinner is ready by then.
    pub in_time: Probability,
    /// How long tonight's pieces wait for dinner, all of them together.
    pub held: Span,
    /// How often the lid is opened to load and to pull.
    pub openings: usize,
    /// From lighting the fire to the last piece off.
    pub fuel: Span,
}

impl Plan {
    /// What leaves the refrigerator together, and when, of the pieces asked for.
    pub fn trays(&self, of: impl Fn(&PiecePlan) -> bool) -> Vec<(Moment, Vec<PieceId>)> {
        let mut trays: Vec<(Moment, Vec<PieceId>)> = Vec::new();
        for planned in self.pieces.iter().filter(|planned| of(planned)) {
            match trays.iter_mut().find(|(at, _)| *at == planned.out_of_fridge) {
                Some((_, pieces)) => pieces.push(planned.piece),
                None => trays.push((planned.out_of_fridge, vec![planned.piece])),
            }
        }
        trays
    }
}

/// Plans a cook back from dinner: the waves that get dinner ready by its time with 90 % certainty,
/// then hold tonight's pieces least, open the lid least, and burn the least.
///
/// Where dinner is too close for that certainty, everything starts as soon as the pit can be hot,
/// and the plan says how likely dinner is to be in time.
///
/// # Errors
/// [`PlanProblem`] says what is missing.
pub fn plan(request: &Request) -> Result<Plan, PlanProblem> {
    check(request)?;
    plan_by(request, &forecast(&request.raw(), request.now))
}

/// The same where the forecast of the request's [`raw`](Request::raw) pieces is at hand. It takes
/// most of the time, and holds as long as they are the same, whenever it was made.
///
/// # Errors
/// As for [`plan`].
pub fn plan_by(request: &Request, raw: &Forecast) -> Result<Plan, PlanProblem> {
    check(request)?;
    let draws = draw_days(request, raw)?;
    let places: Vec<f64> = request.places.iter().map(|place| place.c()).collect();
    let tonight: Vec<bool> = request.pieces.iter().map(|wanted| wanted.tonight).collect();
    let soonest = request.now + request.habits.fire.preheat;
    let setting = Setting {
        draws: &draws,
        places: &places,
        tonight: &tonight,
        style: request.style,
        carving: to_minutes(request.habits.carving),
        available: to_minutes(request.dinner - soonest),
    };
    let (waves, cost) = best_waves(&setting);
    let loads: Vec<Vec<Slot>> = waves.iter().map(|wave| setting.slots(wave)).collect();
    Ok(timetable(request, &setting, &loads, cost))
}

fn check(request: &Request) -> Result<(), PlanProblem> {
    if request.pieces.is_empty() {
        return Err(PlanProblem::NoPieces);
    }
    if request.places.is_empty() {
        return Err(PlanProblem::NoPlaces);
    }
    if request.dinner <= request.now {
        return Err(PlanProblem::DinnerPast);
    }
    Ok(())
}

/// Lets the pieces of a wave leave the refrigerator together, in the order in which they go on, where
/// none lies out for longer than `at_most` for that.
fn take_out_by_wave(pieces: &mut [PiecePlan], at_most: Span) {
    let mut taken: BTreeMap<usize, Moment> = BTreeMap::new();
    for piece in pieces {
        let with = taken.get(&piece.wave).filter(|with| piece.on - **with <= at_most);
        piece.out_of_fridge = with.copied().unwrap_or(piece.out_of_fridge);
        taken.insert(piece.wave, piece.out_of_fridge);
    }
}

/// The plan for loads whose cost is known.
fn timetable(request: &Request, setting: &Setting<'_>, loads: &[Vec<Slot>], cost: Cost) -> Plan {
    let habits = &request.habits;
    // No habit takes raw meat out for longer than it may lie there.
    let longest = longest_out_by_plan(request.ambient);
    let out = habits.out_of_fridge.max(habits.seasoning).min(longest);
    let first_on = request.dinner - minutes(cost.lead);
    let light = first_on - habits.fire.preheat;
    let ends = first_on + minutes(cost.fuel);
    let mut pieces: Vec<PiecePlan> = piece_times(setting, loads)
        .into_iter()
        .map(|times| PiecePlan {
            piece: request.pieces[times.slot.piece].id,
            wave: times.wave,
            place: times.slot.place,
            tonight: setting.tonight[times.slot.piece],
            out_of_fridge: first_on + minutes(times.on) - out,
            on: first_on + minutes(times.on),
            pull: Band {
                low: first_on + minutes(times.off.low),
                middle: first_on + minutes(times.off.middle),
                high: first_on + minutes(times.off.high),
            },
            rested: first_on + minutes(times.off.middle) + habits.rest,
        })
        .collect();
    sort_by_key(&mut pieces, |piece| (piece.on, piece.pull.middle, piece.piece));
    take_out_by_wave(&mut pieces, out.max(longest / 2));
    Plan {
        style: request.style,
        out_of_fridge: first_on - out,
        season: first_on - habits.seasoning,
        light,
        first_on,
        feeds: feeds(light, ends, habits.fire.fed_every(request.pit_kind)),
        pieces,
        dinner: request.dinner,
        in_time: Probability::new(cost.in_time),
        held: minutes(cost.held),
        openings: cost.openings,
        fuel: ends - light,
    }
}

/// One slot's times, in minutes from the first piece on.
struct Times {
    wave: usize,
    slot: Slot,
    on: f64,
    off: Band<f64>,
}

/// When each slot goes on and comes off. A later wave goes on in the middle of when it can.
fn piece_times(setting: &Setting<'_>, loads: &[Vec<Slot>]) -> Vec<Times> {
    let begins: Vec<Vec<f64>> =
        setting.draws.draws.iter().map(|draw| setting.wave_starts(loads, draw)).collect();
    let mut all = Vec::new();
    for (wave, load) in loads.iter().enumerate() {
        let begin = quantile(begins.iter().map(|starts| starts[wave]).collect(), 0.5);
        for slot in load {
            let on = begin + slot.delay;
            let offs: Vec<f64> = setting
                .draws
                .draws
                .iter()
                .zip(&begins)
                .map(|(draw, starts)| {
                    starts[wave] + slot.delay + slot.pace * draw.on_pit[slot.piece]
                })
                .collect();
            let at = |share| quantile(offs.clone(), share);
            let off = Band { low: at(0.1), middle: at(0.5), high: at(0.9) };
            all.push(Times { wave, slot: *slot, on, off });
        }
    }
    all
}

/// When to feed the fire between lighting it and the last piece off.
fn feeds(light: Moment, ends: Moment, every: Option<Span>) -> Vec<Moment> {
    let Some(every) = every else { return Vec::new() };
    core::iter::successors(Some(light + every), |last| Some(*last + every))
        .take_while(|feed| *feed < ends)
        .collect()
}
