//! Cooks of the worlds as a person conducts them by the duties alone.

use twin::diary::{self, Diary};
use twin::study::conduct::{Day, Outcome, SIZES, cook_in};

use crate::diary::raw;
use crate::draw::draw_with;
use crate::kinds::KINDS;
use crate::live::Live;

/// How a cook of a world goes.
pub fn conduct(world: usize, number: u64, size: usize) -> Outcome {
    let setup = draw_with(world, number, Some(size));
    let pieces = setup.told.iter().enumerate().map(|(piece, told)| (diary::id(piece), raw(told)));
    let diary = Diary::set_out(setup.pit.set, pieces);
    cook_in(Live::new(&setup), diary, &Day::draw(setup.seed, size))
}

/// So many cooks of each size from a number on, the worlds taking turns.
pub fn cooks(first: u64, each: u64) -> [Vec<Outcome>; 3] {
    SIZES.map(|size| of_size(first, each, size))
}

/// The same of one size.
pub fn of_size(first: u64, each: u64, size: usize) -> Vec<Outcome> {
    let numbers: Vec<u64> = (first..first + each).collect();
    let worlds = KINDS.len() as u64;
    twin::cores::each(&numbers, |number| conduct((number % worlds) as usize, number / worlds, size))
}
