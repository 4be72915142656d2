//! Putting things in order.

use core::cmp::Ordering;

/// Sorts as the standard library's stable `sort_by` does. Each kind of thing sorted by the standard
/// library's own brings another copy of its eight kilobytes into the program that a phone must
/// load; here all kinds share one copy, which sorts their places.
pub fn sort_by<T>(things: &mut [T], compare: impl Fn(&T, &T) -> Ordering) {
    let mut places: Vec<usize> = (0..things.len()).collect();
    sort_places(&mut places, &|a, b| compare(&things[a], &things[b]));
    // `places` says for each place where its thing stands now: follow each ring of moves once.
    for start in 0..places.len() {
        let mut place = start;
        while places[place] != start {
            let from = core::mem::replace(&mut places[place], place);
            things.swap(place, from);
            place = from;
        }
        places[place] = place;
    }
}

/// The same by a key, which is worked out anew for each comparison.
pub fn sort_by_key<T, K: Ord>(things: &mut [T], key: impl Fn(&T) -> K) {
    sort_by(things, |a, b| key(a).cmp(&key(b)));
}

fn sort_places(places: &mut [usize], compare: &dyn Fn(usize, usize) -> Ordering) {
    places.sort_by(|a, b| compare(*a, *b));
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn sorts_as_the_standard_library_does(things in prop::collection::vec((0_u8..9, any::<u16>()), 0..60)) {
            let (mut ours, mut theirs) = (things.clone(), things);
            sort_by_key(&mut ours, |thing| thing.0);
            theirs.sort_by_key(|thing| thing.0);
            prop_assert_eq!(ours, theirs);
        }
    }
}
