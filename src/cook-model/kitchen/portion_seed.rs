//! A good first allotment, from which the search has little left to improve: each lot in its turn
//! takes the pieces that meet its wish with the least over.

use super::portion_search::Want;

/// The place of each piece, `rest` where no lot takes it. `fixed` pieces stay where they are;
/// `need` is what each lot wants beyond them.
pub(super) fn seed(
    weights: &[f64],
    wants: &[Want],
    fixed: &[Option<usize>],
    need: &[f64],
    rest: usize,
) -> Vec<usize> {
    let mut places: Vec<Option<usize>> = fixed.to_vec();
    for (lot, want) in wants.iter().enumerate() {
        let free: Vec<usize> = (0..weights.len()).filter(|i| places[*i].is_none()).collect();
        let taken = match want {
            Want::Weight(_) => least_over(weights, &free, need[lot]),
            Want::Pieces(_) => {
                let count = (0..free.len()).take_while(|i| (*i as f64) < need[lot]).count();
                free[..count].to_vec()
            }
            Want::Rest => Vec::new(),
        };
        for piece in taken {
            places[piece] = Some(lot);
        }
    }
    places.into_iter().map(|place| place.unwrap_or(rest)).collect()
}

/// The pieces of `free` that weigh at least `need` together with the least over; all of them where
/// that is not enough. By the sums that can be reached, in whole grams.
fn least_over(weights: &[f64], free: &[usize], need: f64) -> Vec<usize> {
    let gram = |piece: usize| weights[piece].round().max(0.0) as usize;
    if need <= 0.0 {
        return Vec::new();
    }
    let all: usize = free.iter().map(|piece| gram(*piece)).sum();
    let need = need.round() as usize;
    if all <= need {
        return free.to_vec();
    }
    // For each sum the last piece that reached it first; sums beyond the heaviest piece over the
    // need are never the least.
    let heaviest = free.iter().map(|piece| gram(*piece)).max().unwrap_or(0);
    let mut reached: Vec<Option<usize>> = vec![None; (need + heaviest).min(all) + 1];
    for (turn, piece) in free.iter().enumerate() {
        let weight = gram(*piece);
        for sum in (weight.max(1)..reached.len()).rev() {
            let before = sum - weight;
            if reached[sum].is_none() && (before == 0 || reached[before].is_some()) {
                reached[sum] = Some(turn);
            }
        }
    }
    let Some(mut sum) = (need..reached.len()).find(|sum| reached[*sum].is_some()) else {
        return free.to_vec();
    };
    // Each sum was reached first by its turn from a sum that was reached by an earlier one.
    let mut taken = Vec::new();
    while let Some(turn) = reached[sum].filter(|_| sum > 0) {
        taken.push(free[turn]);
        sum -= gram(free[turn]);
    }
    taken
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn no_subset_is_less_over(
            weights in prop::collection::vec(50_u32..400, 1..9),
            need in 1_u32..1500,
        ) {
            let grams: Vec<f64> = weights.iter().map(|g| f64::from(*g)).collect();
            let free: Vec<usize> = (0..grams.len()).collect();
            let mut taken = least_over(&grams, &free, f64::from(need));
            let sum: f64 = taken.iter().map(|i| grams[*i]).sum();
            let count = taken.len();
            taken.sort_unstable();
            taken.dedup();
            prop_assert_eq!(taken.len(), count, "a piece taken twice");
            let subsets = 1_u32 << weights.len();
            let of = |set: u32| -> u32 {
                weights.iter().enumerate().filter(|(i, _)| set >> i & 1 == 1).map(|(_, g)| g).sum()
            };
            let least = (0..subsets).map(of).filter(|sum| *sum >= need).min();
            let expected = least.unwrap_or_else(|| weights.iter().sum());
            prop_assert_eq!(sum, f64::from(expected));
        }
    }
}
