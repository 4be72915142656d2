//! A log is kept in two places, so that damage to one is made good from the other.

use std::collections::{BTreeMap, BTreeSet};

use super::What;
use crate::history::EntryId;
use crate::kitchen::log::KitchenWhat;
use crate::log::{Event, read};

/// The stored texts of one cook, each under the id of its entry.
pub type Stored = BTreeMap<EntryId, String>;

/// A text to be written over what a copy holds under an id.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Repair {
    /// Under which id.
    pub id: EntryId,
    /// The text.
    pub text: String,
    /// What it replaces. It must be kept elsewhere before it is written over.
    pub replaces: Option<String>,
}

/// What two copies of one log add up to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Healed {
    /// Every text that either copy holds, each once, whole or not: what [`crate::log::Log::from_stored`]
    /// reads, setting the damaged ones aside.
    pub texts: Vec<String>,
    /// What the first copy lacks.
    pub first: Vec<Repair>,
    /// What the second copy lacks.
    pub second: Vec<Repair>,
}

/// Adds up two copies of one log. A whole text wins over a missing or damaged one, and the first
/// copy over the second where both are whole and differ. No text of either is dropped.
pub fn heal(first: &Stored, second: &Stored) -> Healed {
    let ids: BTreeSet<EntryId> = first.keys().chain(second.keys()).copied().collect();
    let mut healed = Healed::default();
    for id in ids {
        healed.add(id, first.get(&id), second.get(&id));
    }
    healed
}

impl Healed {
    fn add(&mut self, id: EntryId, first: Option<&String>, second: Option<&String>) {
        let first_wins = match (first, second) {
            (Some(first), Some(second)) => is_whole(id, first) || !is_whole(id, second),
            (first, _) => first.is_some(),
        };
        let (best, other) = if first_wins { (first, second) } else { (second, first) };
        let Some(best) = best else { return };
        self.texts.push(best.clone());
        if other == Some(best) {
            return;
        }
        self.texts.extend(other.cloned());
        let repair = Repair { id, text: best.clone(), replaces: other.cloned() };
        if first_wins { self.second.push(repair) } else { self.first.push(repair) }
    }
}

/// Whether a text is an entry, of a cook or of the kitchen, that can be read, and the one that
/// belongs here.
fn is_whole(id: EntryId, text: &str) -> bool {
    is_entry::<What>(id, text) || is_entry::<KitchenWhat>(id, text)
}

fn is_entry<E: Event>(id: EntryId, text: &str) -> bool {
    read::<E>(text).is_ok_and(|entry| entry.id == id)
}

#[cfg(test)]
mod tests {
    use super::super::{DeviceId, Log};
    use super::*;
    use crate::kitchen::log::KitchenLog;
    use crate::quantity::Moment;
    use proptest::prelude::*;

    fn id(count: u64) -> EntryId {
        EntryId { count, device: DeviceId(7) }
    }

    fn whole(count: u64) -> String {
        let what = What::Noted { text: format!("note {count}") };
        let at = Moment::UNIX_EPOCH;
        let mut entry = Log::default().next(id(count).device, at, at, what);
        entry.id = id(count);
        serde_json::to_string(&entry).unwrap()
    }

    /// What may lie under one id in one copy: nothing, the whole text, or its beginning.
    fn kept() -> impl Strategy<Value = Option<Option<usize>>> {
        prop_oneof![Just(None), Just(Some(None)), (0_usize..60).prop_map(|cut| Some(Some(cut)))]
    }

    fn copy(kept: &[Option<Option<usize>>]) -> Stored {
        let texts = (1..).zip(kept).filter_map(|(count, kept)| {
            let text = whole(count);
            kept.map(|cut| (id(count), cut.map_or(text.clone(), |cut| text[..cut].to_owned())))
        });
        texts.collect()
    }

    fn repaired(mut copy: Stored, repairs: &[Repair]) -> Stored {
        copy.extend(repairs.iter().map(|repair| (repair.id, repair.text.clone())));
        copy
    }

    #[test]
    fn a_whole_entry_of_the_kitchen_wins_over_a_damaged_one() {
        let what = KitchenWhat::RubDropped { name: "plain".to_owned() };
        let at = Moment::UNIX_EPOCH;
        let entry = KitchenLog::default().next(id(1).device, at, at, what);
        let text = serde_json::to_string(&entry).unwrap();
        let damaged = text[..text.len() / 2].to_owned();
        let healed =
            heal(&Stored::from([(id(1), damaged.clone())]), &Stored::from([(id(1), text.clone())]));
        assert_eq!(healed.first, [Repair { id: id(1), text, replaces: Some(damaged) }]);
    }

    #[test]
    fn a_whole_text_wins_and_the_damaged_one_is_kept_aside() {
        let first = Stored::from([(id(1), whole(1)), (id(2), "{\"v\":1,".to_owned())]);
        let second = Stored::from([(id(2), whole(2)), (id(3), whole(3))]);
        let healed = heal(&first, &second);
        let log = Log::from_stored(healed.texts.iter().map(String::as_str));
        assert_eq!(log.entries().len(), 3);
        assert_eq!(log.set_aside()[0].text, "{\"v\":1,");
        assert_eq!(healed.first[0].replaces.as_deref(), Some("{\"v\":1,"));
        assert_eq!(healed.second.len(), 1);
    }

    #[test]
    fn a_text_under_the_wrong_id_is_not_whole() {
        let first = Stored::from([(id(1), whole(2))]);
        let second = Stored::from([(id(1), whole(1))]);
        assert_eq!(heal(&first, &second).first.len(), 1);
    }

    proptest! {
        #[test]
        fn whatever_either_copy_has_whole_is_whole_in_both_afterwards(
            kept in proptest::collection::vec((kept(), kept()), 0..12)
        ) {
            let (first, second): (Vec<_>, Vec<_>) = kept.into_iter().unzip();
            let (first, second) = (copy(&first), copy(&second));
            let healed = heal(&first, &second);
            for (id, text) in first.iter().chain(&second) {
                prop_assert!(healed.texts.contains(text));
                if is_whole(*id, text) {
                    prop_assert!(is_whole(*id, &repaired(first.clone(), &healed.first)[id]));
                    prop_assert!(is_whole(*id, &repaired(second.clone(), &healed.second)[id]));
                }
            }
        }

        #[test]
        fn healed_copies_need_no_more_healing(
            kept in proptest::collection::vec((kept(), kept()), 0..12)
        ) {
            let (first, second): (Vec<_>, Vec<_>) = kept.into_iter().unzip();
            let (first, second) = (copy(&first), copy(&second));
            let healed = heal(&first, &second);
            let again = heal(&repaired(first, &healed.first), &repaired(second, &healed.second));
            prop_assert!(again.first.is_empty() && again.second.is_empty());
        }
    }
}
