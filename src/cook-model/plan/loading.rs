//! A way to load the rack, and what it costs.

use core::cmp::Ordering;

use serde::{Deserialize, Serialize};

use super::draws::{Draw, Draws, quantile};
use crate::sorting::sort_by;

/// The certainty with which dinner is to be ready by its time.
pub(super) const CERTAINTY: f64 = 0.9;
/// Minutes within which pieces that come off, or go on, share one opening of the lid.
const ONE_OPENING: f64 = 4.0;
/// Minutes between a wave's last pull and the next wave on the rack: lifting off, loading, fire.
const BETWEEN_WAVES: f64 = 5.0;

/// How the pieces of one wave follow each other.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Style {
    /// All go on at once and come off one by one.
    #[default]
    OnTogether,
    /// The slow ones go on first, so that all come off at about the same time.
    OffTogether,
}

/// One piece of a wave: which, how hot its place is, how long after the wave's first it goes on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Slot {
    /// The piece, by its place in the request.
    pub piece: usize,
    /// The rack place, by its place in the request.
    pub place: usize,
    /// Factor on its time on the pit for the heat of that place.
    pub pace: f64,
    /// Minutes after the wave began.
    pub delay: f64,
}

/// What is the same for every loading that is compared.
pub(super) struct Setting<'a> {
    /// How the day could go.
    pub draws: &'a Draws,
    /// How much hotter than the rack's mean each place is, K.
    pub places: &'a [f64],
    /// Which pieces are for tonight.
    pub tonight: &'a [bool],
    /// How the pieces of a wave follow each other.
    pub style: Style,
    /// From the last piece of dinner rested to people eating, min.
    pub carving: f64,
    /// Minutes from the earliest moment at which anything can go on to dinner.
    pub available: f64,
}

/// The waves, each the pieces that are on the pit together.
pub(super) type Waves = Vec<Vec<usize>>;

/// What a loading costs, in the order in which it matters.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Cost {
    /// The chance that dinner is ready by its time.
    pub in_time: f64,
    /// Minutes that tonight's pieces wait for dinner, all of them together, on average.
    pub held: f64,
    /// Openings of the lid to load and to pull.
    pub openings: usize,
    /// Minutes from the first piece on to the last one off, on average.
    pub fuel: f64,
    /// Minutes that something is still on the pit while people eat, on average.
    pub after: f64,
    /// How long before dinner the first wave goes on, min.
    pub lead: f64,
}

impl Cost {
    /// Less for the better loading: in time first, then held, openings, fuel, and last
    /// what keeps the cook at the pit during dinner. Chances above the
    /// wanted certainty are equal; times are compared by the minute, which is as finely as a
    /// cook can act.
    pub fn compare(&self, other: &Self) -> Ordering {
        let chance = |cost: &Self| (cost.in_time.min(CERTAINTY) * 1e3).round();
        chance(other)
            .total_cmp(&chance(self))
            .then(self.held.round().total_cmp(&other.held.round()))
            .then(self.openings.cmp(&other.openings))
            .then(self.fuel.round().total_cmp(&other.fuel.round()))
            .then(self.after.round().total_cmp(&other.after.round()))
    }
}

impl Setting<'_> {
    /// The slots of one wave: the slowest piece in the hottest place, which is what lets the last
    /// of them come off soonest (by exchange: swapping any two puts the slower in the cooler).
    pub fn slots(&self, wave: &[usize]) -> Vec<Slot> {
        let mut by_time: Vec<usize> = wave.to_vec();
        sort_by(&mut by_time, |&a, &b| {
            self.draws.middle[b].total_cmp(&self.draws.middle[a]).then(a.cmp(&b))
        });
        let mut by_heat: Vec<usize> = (0..self.places.len()).collect();
        sort_by(&mut by_heat, |&a, &b| self.places[b].total_cmp(&self.places[a]).then(a.cmp(&b)));
        let mut slots: Vec<Slot> = by_time
            .into_iter()
            .zip(by_heat)
            .map(|(piece, place)| Slot {
                piece,
                place,
                pace: libm::exp(self.draws.per_kelvin[piece] * self.places[place]),
                delay: 0.0,
            })
            .collect();
        if self.style == Style::OffTogether {
            let time = |slot: &Slot| slot.pace * self.draws.middle[slot.piece];
            let longest = slots.iter().map(time).fold(0.0, f64::max);
            for slot in &mut slots {
                slot.delay = longest - time(slot);
            }
        }
        slots
    }

    /// What it costs to load the rack in these waves.
    pub fn cost(&self, waves: &Waves) -> Cost {
        let loads: Vec<Vec<Slot>> = waves.iter().map(|wave| self.slots(wave)).collect();
        let mut ready = Vec::new();
        let day = |draw| self.day(&loads, draw, &mut ready);
        let days: Vec<Day> = self.draws.draws.iter().map(day).collect();
        let finishes: Vec<f64> = days.iter().map(|day| day.dinner + self.carving).collect();
        let lead = quantile(finishes.clone(), CERTAINTY).min(self.available);
        let count = days.len() as f64;
        let in_time = finishes.iter().filter(|&&finish| finish <= lead).count() as f64 / count;
        let waits = ready.iter().map(|ready| (lead - self.carving - ready).max(0.0));
        Cost {
            in_time,
            held: waits.sum::<f64>() / count,
            openings: loads.iter().map(|load| self.openings(load)).sum(),
            fuel: days.iter().map(|day| day.last_off).sum::<f64>() / count,
            after: days.iter().map(|day| (day.last_off - lead).max(0.0)).sum::<f64>() / count,
            lead,
        }
    }

    /// When each wave begins in one draw of the day, min from the first piece on.
    pub fn wave_starts(&self, loads: &[Vec<Slot>], draw: &Draw) -> Vec<f64> {
        let mut begins = 0.0;
        loads
            .iter()
            .map(|load| {
                let begin = begins;
                let off = |slot: &Slot| begin + slot.delay + slot.pace * draw.on_pit[slot.piece];
                begins = load.iter().map(off).fold(begin, f64::max) + BETWEEN_WAVES;
                begin
            })
            .collect()
    }

    /// How one draw of the day goes with these loads, in minutes from the first piece on. When each of
    /// tonight's pieces is ready is put behind the others.
    fn day(&self, loads: &[Vec<Slot>], draw: &Draw, ready_tonight: &mut Vec<f64>) -> Day {
        let mut day = Day { dinner: 0.0, last_off: 0.0 };
        let begins = self.wave_starts(loads, draw);
        for (begin, slot) in
            begins.iter().zip(loads).flat_map(|(b, load)| load.iter().map(move |s| (b, s)))
        {
            let off = begin + slot.delay + slot.pace * draw.on_pit[slot.piece];
            day.last_off = day.last_off.max(off);
            if self.tonight[slot.piece] {
                let ready = off + draw.rest[slot.piece];
                day.dinner = day.dinner.max(ready);
                ready_tonight.push(ready);
            }
        }
        day
    }

    /// Openings of the lid for one wave, at the middle of its times.
    fn openings(&self, load: &[Slot]) -> usize {
        let offs = load.iter().map(|s| s.delay + s.pace * self.draws.middle[s.piece]).collect();
        clusters(load.iter().map(|slot| slot.delay).collect()) + clusters(offs)
    }
}

/// How a day went.
struct Day {
    dinner: f64,
    last_off: f64,
}

/// Into how many openings these moments fall, min.
fn clusters(mut moments: Vec<f64>) -> usize {
    moments.sort_by(f64::total_cmp);
    let mut opened: Option<f64> = None;
    let mut count = 0;
    for moment in moments {
        if opened.is_none_or(|first| moment - first > ONE_OPENING) {
            opened = Some(moment);
            count += 1;
        }
    }
    count
}
