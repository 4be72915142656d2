//! What became of the piece and of its log: undone, merged, out of order, put back, renamed.

use cook_model::cook::{Log, Stage, What, fold};
use cook_model::safety::Shortfall;

use crate::support::{
    Cook, OTHER_PHONE, PHONE, held_rule, packed, piece, pulled, put_on, read, set_out, undo,
};
use crate::{proved_cook, why_not};

#[test]
fn a_chain_of_undoing() {
    let mut cook = proved_cook();
    let (reading, undoing, bringing_back) = (5, 7, 8);
    cook.write(77.0, undo(reading));
    assert!(!cook.is_proved(1));
    cook.write(77.5, undo(undoing));
    assert!(cook.is_proved(1));
    cook.write(78.0, undo(bringing_back));
    assert!(!cook.is_proved(1));
    // A reading corrected: the mistyped one undone, the right one typed.
    cook.write(78.5, read(1, 156.0, 2));
    assert!(!cook.is_proved(1));
    // Undoing that the piece went on leaves nothing to prove.
    let mut cook = proved_cook();
    cook.write(77.0, undo(3));
    assert!(!cook.is_proved(1));
    assert_eq!(cook.stage(1), Stage::Raw);
}

#[test]
fn two_devices_wrote_the_log() {
    // The other phone's clock is an hour behind. It puts the piece back, by its time while it was
    // still on; the reading before that proves nothing any more.
    let mut cook = proved_cook();
    cook.write_as(OTHER_PHONE, 20.0, 20.0, put_on(1));
    assert!(!cook.is_proved(1));
    // An hour ahead: a reading from before the put-back carries a later time.
    let mut cook = Cook::two_on();
    cook.write(76.0, pulled(1));
    cook.write_as(OTHER_PHONE, 137.0, 137.0, read(1, 166.0, 2));
    cook.write(85.0, put_on(1));
    cook.write(150.0, pulled(1));
    assert!(!cook.is_proved(1));
    // Time between the readings of two phones is the difference of two clocks.
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write(75.0, read(1, 153.0, 2));
    cook.write_as(OTHER_PHONE, 85.0, 85.0, read(1, 153.0, 2));
    assert!(!cook.is_proved(1));
}

#[test]
fn two_devices_may_merge_in_any_order() {
    // Both phones go on from one log, apart; each merge sees the same.
    let base = proved_cook();
    let (mut here, mut there) = (base.clone(), base);
    here.write(78.0, What::Covered { piece: piece(1) });
    there.write_as(OTHER_PHONE, 78.5, 78.5, undo(5));
    let merge = |one: &Cook, other: &Cook| {
        let entries = one.log.entries().iter().chain(other.log.entries()).cloned();
        fold(&Log::from_entries(entries))
    };
    assert_eq!(merge(&here, &there), merge(&there, &here));
    assert_eq!(merge(&here, &there).pieces[0].proof, None);
}

#[test]
fn entries_came_out_of_order() {
    // By time the reading is the first thing of the spell, but it was written before.
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(0.5, put_on(1));
    cook.write(80.0, pulled(1));
    assert!(!cook.is_proved(1));
    // Two readings written in the other order than they were taken hold no time.
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write_as(PHONE, 80.0, 80.0, read(1, 153.0, 2));
    cook.write_as(PHONE, 75.0, 80.5, read(1, 153.0, 2));
    assert!(!cook.is_proved(1));
}

#[test]
fn it_was_read_before_it_was_on_or_after_it_was_packed() {
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    cook.write(1.0, read(1, 166.0, 2));
    cook.write(2.0, put_on(1));
    cook.write(80.0, pulled(1));
    assert!(!cook.is_proved(1));
    let mut cook = Cook::two_on();
    cook.write(76.0, pulled(1));
    cook.write(80.0, packed(1));
    cook.write(81.0, read(1, 166.0, 2));
    // Said to be from before the packing, but written after it.
    cook.write_as(PHONE, 79.0, 82.0, read(1, 166.0, 2));
    assert!(!cook.is_proved(1));
    assert_eq!(cook.stage(1), Stage::Packed);
}

#[test]
fn it_was_put_back_on() {
    let mut cook = proved_cook();
    cook.write(80.0, put_on(1));
    cook.write(90.0, pulled(1));
    assert!(!cook.is_proved(1));
    assert_eq!(why_not(&cook, 1), Some(Shortfall::BeforeThisSpell));
    // Time held does not run on across it.
    let mut cook = Cook::two_on();
    cook.write(0.0, held_rule());
    cook.write(75.0, read(1, 153.0, 2));
    cook.write(76.0, pulled(1));
    cook.write(77.0, put_on(1));
    cook.write(81.0, read(1, 153.0, 2));
    assert!(!cook.is_proved(1));
}

#[test]
fn a_piece_was_renamed() {
    let named = |number, name: &str| match set_out(number, 38.0) {
        What::PieceSetOut { piece, facts, .. } => {
            What::PieceSetOut { piece, facts, name: name.to_owned() }
        }
        other => other,
    };
    let mut cook = Cook::default();
    for what in [named(1, "left"), named(2, "right"), put_on(1), put_on(2)] {
        cook.write(0.0, what);
    }
    cook.write(75.0, read(1, 166.0, 2));
    for (minute, what) in [(76.0, pulled(1)), (76.0, pulled(2))] {
        cook.write(minute, what);
    }
    cook.write(77.0, named(1, "right"));
    cook.write(77.5, named(2, "left"));
    assert!(!cook.is_proved(2), "the proof went with the name");
    // Taken away before it went on and set out again, it is another breast.
    let mut cook = Cook::default();
    cook.write(0.0, set_out(1, 38.0));
    cook.write(1.0, What::PieceTakenAway { piece: piece(1) });
    cook.write(2.0, read(1, 166.0, 2));
    cook.write(3.0, set_out(1, 38.0));
    assert!(!cook.is_proved(1));
}
