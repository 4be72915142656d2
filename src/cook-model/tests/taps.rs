//! Stepping back and forward through what was tapped. The expectations are what a person means by
//! undo and redo (common practice, no source): back takes the last thing done, as often as one
//! likes; forward gives it back; neither turns the other round.

mod support;

use cook_model::cook::{DeviceId, EntryId, Log, What};
use cook_model::log::Event;
use cook_model::taps::{Taps, undoings};
use proptest::prelude::*;
use support::{OTHER_PHONE, PHONE, at, put_on, read, set_out};

/// Taps on a log, each at a time of its own.
#[derive(Clone, Default)]
struct Tapping {
    log: Log,
    moment: u32,
}

impl Tapping {
    fn tap_as(&mut self, by: DeviceId, what: Vec<What>) -> Vec<EntryId> {
        self.moment += 1;
        let now = at(f64::from(self.moment));
        let mut ids = Vec::new();
        for what in what {
            let entry = self.log.next(by, now, now, what);
            ids.push(entry.id);
            self.log.insert(entry);
        }
        ids
    }

    fn tap(&mut self, what: Vec<What>) -> Vec<EntryId> {
        self.tap_as(PHONE, what)
    }

    /// One step back; whether there was one.
    fn back(&mut self) -> bool {
        let taps = Taps::of(&self.log);
        let Some(ids) = taps.back() else { return false };
        self.tap(ids.iter().map(|id| What::undoing(*id)).collect());
        true
    }

    /// One step forward; whether there was one.
    fn forward(&mut self) -> bool {
        let taps = Taps::of(&self.log);
        let Some(ids) = taps.forward() else { return false };
        self.tap(undoings(&self.log, ids).into_iter().map(What::undoing).collect());
        true
    }

    /// The notes that count, by their texts.
    fn stand(&self) -> Vec<String> {
        let text = |what: &What| match what {
            What::Noted { text } => text.clone(),
            other => format!("{other:?}"),
        };
        self.log.standing().into_iter().map(|entry| text(&entry.what)).collect()
    }
}

fn note(text: &str) -> What {
    What::Noted { text: text.to_owned() }
}

fn noted(texts: &[&str]) -> Tapping {
    let mut tapping = Tapping::default();
    for text in texts {
        tapping.tap(vec![note(text)]);
    }
    tapping
}

#[test]
fn a_second_undo_takes_the_tap_before_and_not_the_undo() {
    let mut tapping = noted(&["a", "b", "c"]);
    assert!(tapping.back());
    assert_eq!(tapping.stand(), ["a", "b"]);
    assert!(tapping.back());
    assert_eq!(tapping.stand(), ["a"]);
    assert!(tapping.back());
    assert!(tapping.stand().is_empty());
    assert!(!tapping.back(), "there is nothing before the beginning");
}

#[test]
fn forward_gives_back_in_the_order_in_which_it_was_done() {
    let mut tapping = noted(&["a", "b", "c"]);
    while tapping.back() {}
    for expected in [vec!["a"], vec!["a", "b"], vec!["a", "b", "c"]] {
        assert!(tapping.forward());
        assert_eq!(tapping.stand(), expected);
    }
    assert!(!tapping.forward(), "there is nothing after the last");
    assert!(tapping.back());
    assert_eq!(tapping.stand(), ["a", "b"], "and back again");
}

#[test]
fn what_one_tap_did_goes_and_comes_together() {
    let mut tapping = noted(&["a"]);
    tapping.tap(vec![note("b1"), note("b2"), note("b3")]);
    assert!(tapping.back());
    assert_eq!(tapping.stand(), ["a"]);
    assert!(tapping.forward());
    assert_eq!(tapping.stand(), ["a", "b1", "b2", "b3"]);
}

#[test]
fn a_new_tap_ends_the_way_forward() {
    let mut tapping = noted(&["a", "b"]);
    assert!(tapping.back());
    tapping.tap(vec![note("c")]);
    assert!(!tapping.forward());
    assert_eq!(tapping.stand(), ["a", "c"]);
    assert!(tapping.back() && tapping.back());
    assert!(tapping.stand().is_empty());
}

#[test]
fn what_was_undone_in_the_list_is_passed_over_and_brought_back_first() {
    let mut tapping = noted(&["a"]);
    let b = tapping.tap(vec![note("b")]);
    tapping.tap(vec![note("c")]);
    tapping.tap(vec![What::undoing(b[0])]);
    assert_eq!(tapping.stand(), ["a", "c"]);
    assert!(tapping.back());
    assert_eq!(tapping.stand(), ["a"], "c was done last of what counts");
    assert!(tapping.forward() && tapping.forward());
    assert_eq!(tapping.stand(), ["a", "b", "c"]);
}

#[test]
fn a_mended_entry_is_one_tap_back_to_what_it_was() {
    let mut tapping = Tapping::default();
    tapping.tap(vec![set_out(1, 38.0)]);
    tapping.tap(vec![put_on(1)]);
    let typed = tapping.tap(vec![read(1, 160.0, 1)]);
    let before = tapping.stand();
    tapping.tap(vec![What::undoing(typed[0]), read(1, 106.0, 1)]);
    let mended = tapping.stand();
    assert!(tapping.back());
    assert_eq!(tapping.stand(), before);
    assert!(tapping.forward());
    assert_eq!(tapping.stand(), mended);
    assert!(tapping.back() && tapping.back());
    assert_eq!(tapping.stand().len(), 2, "then the reading itself");
}

#[test]
fn what_the_app_noted_by_itself_is_no_step() {
    let mut tapping = noted(&["a"]);
    tapping.tap(vec![What::ClockUnwatched]);
    assert!(tapping.back());
    assert_eq!(tapping.stand(), ["ClockUnwatched"]);
    assert!(tapping.forward());
    tapping.tap(vec![What::ClockJumped]);
    assert!(tapping.back());
    assert!(!tapping.stand().contains(&"a".to_owned()));
}

#[test]
fn two_windows_that_undo_the_same_tap_at_once_are_one_step() {
    let mut one = noted(&["a", "b"]);
    let mut other = one.clone();
    assert!(one.back());
    let id = Taps::of(&other.log).back().map(<[_]>::to_vec);
    other.tap_as(OTHER_PHONE, id.into_iter().flatten().map(What::undoing).collect());
    for entry in other.log.entries() {
        one.log.insert(entry.clone());
    }
    one.moment += 1;
    assert_eq!(one.stand(), ["a"]);
    assert!(one.forward());
    assert_eq!(one.stand(), ["a", "b"], "both undoings are undone");
    assert!(one.back() && one.back());
    assert!(one.stand().is_empty());
}

/// What a person, or two, may do.
#[derive(Clone, Debug)]
enum Act {
    Note(u8),
    Back,
    Forward,
    /// Undoes, or brings back, the entry at this place in the list.
    InTheList(usize),
    Unasked,
    Other(u8),
}

fn act() -> impl Strategy<Value = Act> {
    prop_oneof![
        4 => (1_u8..4).prop_map(Act::Note),
        3 => Just(Act::Back),
        2 => Just(Act::Forward),
        1 => (0_usize..40).prop_map(Act::InTheList),
        1 => Just(Act::Unasked),
        1 => (1_u8..3).prop_map(Act::Other),
    ]
}

fn after(acts: &[Act]) -> Tapping {
    let mut tapping = Tapping::default();
    for (place, act) in acts.iter().enumerate() {
        let notes = |count: u8| (0..count).map(|n| note(&format!("{place}.{n}"))).collect();
        match act {
            Act::Note(count) => drop(tapping.tap(notes(*count))),
            Act::Other(count) => drop(tapping.tap_as(OTHER_PHONE, notes(*count))),
            Act::Back => drop(tapping.back()),
            Act::Forward => drop(tapping.forward()),
            Act::Unasked => drop(tapping.tap(vec![What::ClockJumped])),
            Act::InTheList(place) => {
                let told = tapping.log.entries().iter().filter(|e| e.what.undoes().is_none());
                let Some(id) = told.map(|entry| entry.id).nth(*place) else { continue };
                let id = tapping.log.undone_by().get(&id).copied().unwrap_or(id);
                tapping.tap(vec![What::undoing(id)]);
            }
        }
    }
    tapping
}

proptest! {
    #[test]
    fn forward_is_the_way_back_again(acts in proptest::collection::vec(act(), 0..30), steps in 0_usize..30) {
        let mut tapping = after(&acts);
        let before = tapping.stand();
        let gone = (0..steps).take_while(|_| tapping.back()).count();
        for _ in 0..gone {
            prop_assert!(tapping.forward());
        }
        prop_assert_eq!(tapping.stand(), before);
    }

    #[test]
    fn each_step_back_takes_something_and_gives_nothing(acts in proptest::collection::vec(act(), 0..30)) {
        let mut tapping = after(&acts);
        let mut before = tapping.stand();
        while tapping.back() {
            let now = tapping.stand();
            prop_assert!(now.len() < before.len());
            prop_assert!(now.iter().all(|text| before.contains(text)));
            before = now;
        }
        let told = before.iter().filter(|text| !text.starts_with("Clock")).count();
        prop_assert_eq!(told, 0, "all the way back to the beginning");
    }
}
