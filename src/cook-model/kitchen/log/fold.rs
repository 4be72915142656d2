//! The kitchen that its log adds up to.

use std::collections::BTreeMap;

use thiserror::Error;

use super::{Bag, BagId, KitchenEntry, KitchenLog, KitchenWhat};
use crate::history::EntryId;
use crate::kitchen::caution::Caution;
use crate::kitchen::cooked_weight::{OwnLoss, WeightProblem};
use crate::kitchen::rub::{Recipe, RubProblem};
use crate::kitchen::storage::{Keeps, Packing, Place, Spoiled, Stay, keeps};
use crate::quantity::{Mass, Moment, Span, Temperature};
use crate::safety::longest_out;
use crate::sorting::sort_by_key;

/// How long meat of which nothing else is known may have been out of the cold. See
/// [`longest_out`]: two hours.
const USUAL_OUT: Span = longest_out(ROOM);
const ROOM: Temperature = Temperature::from_f(70.0);

/// How a bag came to its end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ending {
    /// Eaten.
    Used,
    /// Thrown away.
    ThrownAway,
}

/// The end of a bag.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ended {
    /// How.
    pub how: Ending,
    /// When.
    pub at: Moment,
}

/// One bag: what it is, where it has been, and whether it is still there.
#[derive(Clone, Debug, PartialEq)]
pub struct BagState {
    /// Its name in the log.
    pub id: BagId,
    /// The bag as packed.
    pub bag: Bag,
    /// Where it has been, in order of time; the last is where it is. Never empty.
    pub stays: Vec<Stay>,
    /// Its end, if it has come to one.
    pub ended: Option<Ended>,
}

impl BagState {
    /// How long it keeps where it is; none once it is gone.
    pub fn keeps(&self) -> Option<Keeps> {
        if self.ended.is_some() {
            return None;
        }
        self.too_late().or_else(|| keeps(self.bag.cooked, &self.stays, self.bag.packing))
    }

    /// That it came too late into the cold, if it did.
    fn too_late(&self) -> Option<Keeps> {
        let brings = &self.bag.brings;
        let cold_at = brings.cold_at.or(self.stays.first().map(|stay| stay.from))?;
        let since = brings.cold_by.unwrap_or(self.bag.cooked + USUAL_OUT);
        (cold_at > since).then_some(Keeps::ThrowAway { since, why: Spoiled::TooLateIntoCold })
    }

    /// Where it is; none once it is gone.
    pub fn place(&self) -> Option<Place> {
        if self.ended.is_some() {
            return None;
        }
        self.stays.last().map(|stay| stay.place)
    }

    /// Whether it is to be thrown away: it lies in the refrigerator past its eat-by date, or a limit ran
    /// out before it lay where it is.
    pub fn is_past(&self, now: Moment) -> bool {
        match self.keeps() {
            Some(Keeps::Fridge { eat_by, .. }) => now > eat_by,
            Some(Keeps::ThrowAway { .. }) => true,
            Some(Keeps::Freezer { .. }) | None => false,
        }
    }

    /// Whether it lies in the refrigerator in its last days: to be eaten now.
    pub fn is_due(&self, now: Moment) -> bool {
        matches!(self.keeps(), Some(Keeps::Fridge { use_by, eat_by }) if use_by <= now && now <= eat_by)
    }

    /// What to say beside it now.
    pub fn cautions(&self, now: Moment) -> Vec<Caution> {
        let there = self.ended.is_none();
        let past = self.is_past(now).then(|| match self.keeps() {
            Some(Keeps::ThrowAway { why: Spoiled::TooLateIntoCold, .. }) => {
                Caution::TooLateIntoCold
            }
            _ => Caution::PastEatBy,
        });
        let vacuum = (there && self.bag.packing == Packing::Vacuum).then_some(Caution::Vacuum);
        past.into_iter().chain(vacuum).collect()
    }
}

/// Why an entry changed nothing. It stays in the log, and is shown with this reason.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum Problem {
    /// It names a bag that was never packed.
    #[error("it names a bag that was not packed")]
    UnknownBag,
    /// The bag was used or thrown away before.
    #[error("the bag was used or thrown away already")]
    Gone,
    /// A weight or thickness outside what a bag can have.
    #[error("a bag weighs from 1 g to 10 kg and is up to 200 mm thick")]
    ImpossibleValue,
    /// A weighing that cannot be.
    #[error(transparent)]
    Weighing(#[from] WeightProblem),
    /// A rub that cannot be.
    #[error(transparent)]
    Rub(#[from] RubProblem),
}

/// An entry and why it changed nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ignored {
    /// Which entry.
    pub entry: EntryId,
    /// Why.
    pub why: Problem,
}

/// Everything the kitchen's log adds up to.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Kitchen {
    /// Every bag ever packed and not undone, in the order they were packed.
    pub bags: Vec<BagState>,
    /// What this person's cooks lose, by all weighings.
    pub own_loss: OwnLoss,
    /// How many weighings that rests on.
    pub weighings: usize,
    /// The rubs, by name.
    pub rubs: Vec<Recipe>,
    /// The entries that changed nothing, and why.
    pub ignored: Vec<Ignored>,
}

impl Kitchen {
    /// One bag.
    pub fn bag(&self, id: BagId) -> Option<&BagState> {
        self.bags.iter().find(|bag| bag.id == id)
    }

    /// The bags still in a place, the one to eat first at the front: by the date it keeps until,
    /// then by when it was cooked.
    pub fn in_place(&self, place: Place) -> Vec<&BagState> {
        let mut bags: Vec<&BagState> =
            self.bags.iter().filter(|bag| bag.place() == Some(place)).collect();
        sort_by_key(&mut bags, |bag| (bag.keeps().map(Keeps::until), bag.bag.cooked, bag.id));
        bags
    }

    /// The weight of all bags still there.
    pub fn weight(&self) -> Mass {
        self.bags.iter().filter(|bag| bag.ended.is_none()).map(|bag| bag.bag.weight).sum()
    }
}

/// What the log adds up to. A move typed late counts where it happened; one that a slow clock puts
/// before what was written of its bag already, after that.
pub fn fold(log: &KitchenLog) -> Kitchen {
    let mut folding = Folding::default();
    let mut ignored = Vec::new();
    let mut entries = by_sound_clocks(log);
    sort_by_key(&mut entries, |(at, entry)| (*at, entry.id));
    for (at, entry) in entries {
        if let Err(why) = folding.apply(at, entry) {
            ignored.push(Ignored { entry: entry.id, why });
        }
    }
    Kitchen {
        bags: folding.bags.into_values().collect(),
        own_loss: folding.own_loss,
        weighings: folding.weighings,
        rubs: folding.rubs.into_values().collect(),
        ignored,
    }
}

/// Each entry with its moment. Of two clocks that disagree about the order in which a bag's entries were
/// written, which their ids tell, the one behind is the slow one.
fn by_sound_clocks(log: &KitchenLog) -> Vec<(Moment, &KitchenEntry)> {
    let mut entries = log.standing();
    sort_by_key(&mut entries, |entry| entry.id);
    // Of each bag: when it was packed, when an entry of it was typed last, and the last that happened.
    let mut known: BTreeMap<BagId, [Moment; 3]> = BTreeMap::new();
    let at = |entry: &KitchenEntry| {
        let happened = entry.happened;
        if matches!(entry.what, KitchenWhat::BagPacked { .. }) {
            known.insert(entry.id, [happened, entry.typed, happened]);
        }
        let Some([packed, typed, last]) = entry.what.bag().and_then(|bag| known.get_mut(&bag))
        else {
            return happened;
        };
        let at = happened.max(if entry.typed < *typed { *last } else { *packed });
        *typed = entry.typed.max(*typed);
        *last = at.max(*last);
        at
    };
    entries.iter().copied().map(at).zip(entries.iter().copied()).collect()
}

/// What the entries so far add up to.
#[derive(Default)]
struct Folding {
    bags: BTreeMap<BagId, BagState>,
    own_loss: OwnLoss,
    weighings: usize,
    rubs: BTreeMap<String, Recipe>,
}

impl Folding {
    fn apply(&mut self, at: Moment, entry: &KitchenEntry) -> Result<(), Problem> {
        match &entry.what {
            KitchenWhat::BagPacked { bag, place } => {
                check(bag)?;
                let stays = vec![Stay { place: *place, from: at }];
                let state = BagState { id: entry.id, bag: bag.clone(), stays, ended: None };
                self.bags.insert(entry.id, state);
            }
            KitchenWhat::BagMoved { bag, to } => {
                let bag = self.still_there(*bag)?;
                if bag.place() != Some(*to) {
                    bag.stays.push(Stay { place: *to, from: at });
                }
            }
            KitchenWhat::BagUsed { bag } => {
                self.still_there(*bag)?.ended = Some(Ended { how: Ending::Used, at });
            }
            KitchenWhat::BagThrownAway { bag } => {
                self.still_there(*bag)?.ended = Some(Ended { how: Ending::ThrownAway, at });
            }
            KitchenWhat::Weighed { weighing } => {
                self.own_loss = self.own_loss.after(weighing)?;
                self.weighings += 1;
            }
            KitchenWhat::RubKept { recipe } => {
                recipe.salt_share()?;
                self.rubs.insert(recipe.name.clone(), recipe.clone());
            }
            KitchenWhat::RubDropped { name } => {
                self.rubs.remove(name);
            }
            KitchenWhat::Undone { .. } => {}
        }
        Ok(())
    }

    fn still_there(&mut self, id: BagId) -> Result<&mut BagState, Problem> {
        let bag = self.bags.get_mut(&id).ok_or(Problem::UnknownBag)?;
        if bag.ended.is_some() { Err(Problem::Gone) } else { Ok(bag) }
    }
}

fn check(bag: &Bag) -> Result<(), Problem> {
    let weight = (1.0..=10_000.0).contains(&bag.weight.g());
    let thickness = bag.thickness.is_none_or(|t| (1.0..=200.0).contains(&t.mm()));
    if weight && thickness { Ok(()) } else { Err(Problem::ImpossibleValue) }
}
