//! What belongs to a phone's owner and not to one cook: thermometers, pits, and the proof rule. A new
//! cook starts from it by entries of its own, so that its log stays whole by itself.

use serde::{Deserialize, Serialize};

use super::{CookState, Settings, What};
use crate::heat::PitKind;
use crate::history::{Instrument, Tolerances};
use crate::plan::{FireHabits, Habits};
use crate::quantity::{Moment, TemperatureDifference};
use crate::safety::ProofRule;

/// A thermometer for food.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Thermometer {
    /// The owner's word for it; may be empty.
    #[serde(default)]
    pub name: String,
    /// What it is used as.
    pub instrument: Instrument,
    /// What to add to what it shows, by its last check.
    #[serde(rename = "offset_c")]
    pub offset: TemperatureDifference,
    /// When that was found; none if it was never checked.
    #[serde(default)]
    pub checked: Option<Moment>,
    /// How far it may be off, by its maker.
    #[serde(rename = "tolerance_c")]
    pub tolerance: TemperatureDifference,
}

/// A pit with its rack, its fuel's times and its thermometer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Pit {
    /// The owner's word for it; may be empty.
    #[serde(default)]
    pub name: String,
    /// How it heats.
    pub kind: PitKind,
    /// How much hotter than the rack's mean each place is.
    pub rack_c: Vec<TemperatureDifference>,
    /// How long things take around it.
    pub habits: Habits,
    /// How far its thermometer may be off, by its maker.
    #[serde(rename = "tolerance_c")]
    pub tolerance: TemperatureDifference,
}

/// All of it. Of each kind the first is in use.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Gear {
    /// The thermometers for food, those used last first.
    pub thermometers: Vec<Thermometer>,
    /// The pits, the one used last first.
    pub pits: Vec<Pit>,
    /// How readings prove a piece; none while the usual way was never left.
    pub proof_rule: Option<ProofRule>,
}

impl Thermometer {
    /// One of which nothing is known.
    pub fn unknown(instrument: Instrument) -> Self {
        let usual = Tolerances::default();
        let tolerance = match instrument {
            Instrument::InstantRead => usual.instant_read,
            Instrument::LeaveIn => usual.leave_in,
        };
        let offset = TemperatureDifference::ZERO;
        Self { name: String::new(), instrument, offset, checked: None, tolerance }
    }
}

impl Pit {
    /// One of which nothing is known.
    pub fn unknown() -> Self {
        let usual = Settings::default();
        Self {
            name: String::new(),
            kind: usual.pit_kind,
            rack_c: usual.rack,
            habits: usual.habits,
            tolerance: usual.tolerances.pit,
        }
    }
}

impl Gear {
    /// The thermometer in use as this, if any is known.
    pub fn thermometer(&self, instrument: Instrument) -> Option<&Thermometer> {
        self.thermometers.iter().find(|one| one.instrument == instrument)
    }

    /// The pit in use, if any is known.
    pub fn pit(&self) -> Option<&Pit> {
        self.pits.first()
    }

    /// The entries with which a cook comes to use what is in use here, given what holds in it. None
    /// where that is so already.
    pub fn entries_for(&self, state: &CookState) -> Vec<What> {
        let Settings { pit_kind, rack, habits, tolerances, proof_rule, .. } = &state.settings;
        let mut entries = Vec::new();
        let pit = self.pit();
        if let Some(pit) = pit {
            let told = [
                (pit.kind != *pit_kind, What::PitKindSet { pit: pit.kind }),
                (pit.rack_c != *rack, What::RackSet { places_c: pit.rack_c.clone() }),
                (pit.habits != *habits, What::HabitsSet { habits: pit.habits }),
            ];
            entries.extend(told.into_iter().filter(|(differs, _)| *differs).map(|(_, what)| what));
        }
        let of = |instrument, held| self.thermometer(instrument).map_or(held, |one| one.tolerance);
        let wanted = Tolerances {
            instant_read: of(Instrument::InstantRead, tolerances.instant_read),
            leave_in: of(Instrument::LeaveIn, tolerances.leave_in),
            pit: pit.map_or(tolerances.pit, |pit| pit.tolerance),
        };
        if wanted != *tolerances {
            entries.push(What::TolerancesSet { tolerances: wanted });
        }
        for instrument in [Instrument::InstantRead, Instrument::LeaveIn] {
            let offset = self.thermometer(instrument).map(|one| one.offset);
            if let Some(offset) = offset.filter(|offset| *offset != state.offset(instrument)) {
                // What was found of another one says nothing of this.
                if state.was_checked(instrument) {
                    entries.push(What::ThermometerReplaced { instrument });
                }
                if offset != TemperatureDifference::ZERO {
                    entries.push(What::ThermometerChecked { instrument, offset });
                }
            }
        }
        if let Some(rule) = self.proof_rule.filter(|rule| rule != proof_rule) {
            entries.push(What::ProofRuleSet { rule });
        }
        entries
    }

    /// Remembers what a cook says of what is in use.
    pub fn learn(&mut self, state: &CookState, now: Moment) {
        let Settings { pit_kind, rack, habits, tolerances, proof_rule, .. } = &state.settings;
        let told = Pit {
            name: self.pit().map(|pit| pit.name.clone()).unwrap_or_default(),
            kind: *pit_kind,
            rack_c: rack.clone(),
            habits: *habits,
            tolerance: tolerances.pit,
        };
        match self.pits.first_mut() {
            Some(pit) => *pit = told,
            None if told != Pit::unknown() => self.pits.push(told),
            None => {}
        }
        self.learn_thermometer(Instrument::InstantRead, tolerances.instant_read, state, now);
        self.learn_thermometer(Instrument::LeaveIn, tolerances.leave_in, state, now);
        let usual = self.proof_rule.is_none() && *proof_rule == ProofRule::default();
        self.proof_rule = (!usual).then_some(*proof_rule);
    }

    fn learn_thermometer(
        &mut self,
        instrument: Instrument,
        tolerance: TemperatureDifference,
        state: &CookState,
        now: Moment,
    ) {
        let offset = state.offset(instrument);
        let known = self.thermometers.iter_mut().find(|one| one.instrument == instrument);
        let mut told = known.as_deref().cloned().unwrap_or(Thermometer::unknown(instrument));
        if offset != told.offset {
            told.checked = Some(now);
        }
        (told.offset, told.tolerance) = (offset, tolerance);
        match known {
            Some(known) => *known = told,
            None if told != Thermometer::unknown(instrument) => self.thermometers.push(told),
            None => {}
        }
    }

    /// Names the thermometer in use as this.
    pub fn name_thermometer(&mut self, instrument: Instrument, name: String) {
        match self.thermometers.iter_mut().find(|one| one.instrument == instrument) {
            Some(one) => one.name = name,
            None => {
                self.thermometers.push(Thermometer { name, ..Thermometer::unknown(instrument) })
            }
        }
    }

    /// Uses one of which nothing is known yet.
    pub fn new_thermometer(&mut self, instrument: Instrument) {
        self.thermometers.insert(0, Thermometer::unknown(instrument));
    }

    /// Names the pit in use.
    pub fn name_pit(&mut self, name: String) {
        match self.pits.first_mut() {
            Some(pit) => pit.name = name,
            None => self.pits.push(Pit { name, ..Pit::unknown() }),
        }
    }

    /// Uses a pit of which nothing is known yet.
    pub fn new_pit(&mut self) {
        self.pits.insert(0, Pit::unknown());
    }

    /// Uses another thermometer from now on, by its place in the list.
    pub fn use_thermometer(&mut self, place: usize) {
        if place < self.thermometers.len() {
            let used = self.thermometers.remove(place);
            self.thermometers.insert(0, used);
        }
    }

    /// Uses another pit from now on, by its place in the list.
    pub fn use_pit(&mut self, place: usize) {
        if place < self.pits.len() {
            let used = self.pits.remove(place);
            self.pits.insert(0, used);
        }
    }
}

/// The entries with which another kind of pit is chosen: its usual times come with it, unless the owner
/// told other times than the usual ones of the kind before.
pub fn pit_chosen(settings: &Settings, kind: PitKind) -> Vec<What> {
    let Settings { pit_kind, habits, .. } = settings;
    let usual = FireHabits::usual(kind);
    let untold = habits.fire == FireHabits::usual(*pit_kind) && habits.fire != usual;
    let times = untold.then_some(What::HabitsSet { habits: Habits { fire: usual, ..*habits } });
    core::iter::once(What::PitKindSet { pit: kind }).chain(times).collect()
}

/// What a cook says of the gear in use, to be compared with what it said before.
pub fn said_by(state: &CookState) -> Gear {
    let mut gear = Gear::default();
    gear.learn(state, Moment::UNIX_EPOCH);
    gear
}
