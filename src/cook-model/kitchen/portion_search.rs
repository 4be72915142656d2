//! The search behind [`allot`](super::portions::allot): branch and bound over who gets each piece.

use super::portion_seed::seed;
use super::portions::MOST_LOTS;

/// What one lot wants.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Want {
    /// So many grams.
    Weight(f64),
    /// So many pieces.
    Pieces(usize),
    /// What is left, at no cost.
    Rest,
}

/// Cost of a gram short in the last lot; each lot before it costs so much more again, so that what
/// is short is short late.
const SHORT: f64 = 10.0;
/// Cost of a piece short, as grams short: a small breast.
const PIECE: f64 = 150.0;
/// After this many steps the best seen is taken: some tenths of a second on a slow phone.
const STEPS: usize = 150_000;

/// One search. Places are the lots in their order, and one more for pieces no lot takes.
pub(super) struct Search<'a> {
    weights: &'a [f64],
    fixed: &'a [Option<usize>],
    /// Cost of a gram short in each lot.
    short: Vec<f64>,
    wants: &'a [Want],
    /// Where pieces go that no lot needs: the first lot that takes the rest, or the place behind
    /// them all.
    rest: usize,
    /// Weight of the pieces from each on that the search may still place.
    remaining: Vec<f64>,
    close: f64,
    steps: usize,
    best: Option<(f64, Vec<usize>)>,
    places: Vec<usize>,
    /// Grams, or pieces, each lot still wants; negative when it has more.
    need: Vec<f64>,
}

impl<'a> Search<'a> {
    /// `close`: differences of cost below it are not searched for.
    pub fn new(
        weights: &'a [f64],
        wants: &'a [Want],
        fixed: &'a [Option<usize>],
        close: f64,
    ) -> Self {
        let mut need: Vec<f64> = wants
            .iter()
            .map(|want| match want {
                Want::Weight(grams) => *grams,
                Want::Pieces(count) => *count as f64,
                Want::Rest => 0.0,
            })
            .collect();
        need.push(0.0);
        // The cook's own choices come first, so that the search knows of them from its start.
        for (weight, place) in weights.iter().zip(fixed) {
            if let Some(place) = place {
                need[*place] -= unit(wants.get(*place), *weight);
            }
        }
        let mut remaining = vec![0.0; weights.len() + 1];
        for i in (0..weights.len()).rev() {
            let free = if fixed[i].is_none() { weights[i] } else { 0.0 };
            remaining[i] = remaining[i + 1] + free;
        }
        let short = (0..wants.len()).map(|i| SHORT * (wants.len() - i) as f64).collect();
        Self {
            weights,
            fixed,
            short,
            wants,
            rest: wants.iter().position(|want| *want == Want::Rest).unwrap_or(wants.len()),
            remaining,
            close,
            steps: 0,
            best: None,
            places: vec![0; weights.len()],
            need,
        }
    }

    /// The place of each piece, and whether the search was finished.
    pub fn run(mut self) -> (Vec<usize>, bool) {
        let first = seed(self.weights, self.wants, self.fixed, &self.need, self.rest);
        self.best = Some((self.cost_at(&first), first));
        self.place(0);
        let finished = self.steps < STEPS;
        let places = self.best.map_or_else(|| self.places.clone(), |(_, places)| places);
        (places, finished)
    }

    fn place(&mut self, piece: usize) {
        if let Some((best, _)) = &self.best
            && (self.steps >= STEPS || self.least_cost(piece) >= best - self.close)
        {
            return;
        }
        self.steps += 1;
        if piece == self.weights.len() {
            let cost = self.cost();
            if self.best.as_ref().is_none_or(|(best, _)| cost < *best) {
                self.best = Some((cost, self.places.clone()));
            }
            return;
        }
        if let Some(place) = self.fixed[piece] {
            self.places[piece] = place;
            self.place(piece + 1);
            return;
        }
        let (count, places) = self.candidates(piece);
        for &place in &places[..count] {
            let unit = unit(self.wants.get(place), self.weights[piece]);
            self.need[place] -= unit;
            self.places[piece] = place;
            self.place(piece + 1);
            self.need[place] += unit;
        }
    }

    /// Where a piece may go, likeliest first: where most is still wanted, then the rest; a place
    /// that would take it for nothing only once. How many there are, and they.
    fn candidates(&self, piece: usize) -> (usize, [usize; MOST_LOTS + 1]) {
        let mut places = [self.rest; MOST_LOTS + 1];
        let mut count = 0;
        let grams = |i: usize| match self.wants[i] {
            Want::Pieces(_) => self.need[i] * self.weights[piece],
            _ => self.need[i],
        };
        for (i, want) in self.wants.iter().enumerate() {
            let may = match want {
                Want::Weight(_) => true,
                Want::Pieces(_) => self.need[i] > 0.0,
                Want::Rest => false,
            };
            if !may {
                continue;
            }
            // Sorted in as it is found: the lists are short.
            let mut at = count;
            while at > 0 && grams(places[at - 1]) < grams(i) {
                places[at] = places[at - 1];
                at -= 1;
            }
            places[at] = i;
            count += 1;
        }
        places[count] = self.rest;
        (count + 1, places)
    }

    /// Cost of given places, of which the fixed ones are in `need` already.
    fn cost_at(&mut self, places: &[usize]) -> f64 {
        let need = self.need.clone();
        for (piece, place) in places.iter().enumerate() {
            if self.fixed[piece].is_none() {
                self.need[*place] -= unit(self.wants.get(*place), self.weights[piece]);
            }
        }
        let cost = self.cost();
        self.need = need;
        cost
    }

    /// Cost of a finished allotment. Pieces that no lot takes count as over.
    fn cost(&self) -> f64 {
        let lots = (0..self.wants.len()).map(|i| self.cost_of(i, self.need[i]));
        let unplaced = -self.need[self.wants.len()];
        lots.sum::<f64>() + unplaced
    }

    fn cost_of(&self, lot: usize, need: f64) -> f64 {
        match self.wants[lot] {
            Want::Weight(_) if need > 0.0 => self.short[lot] * need,
            Want::Weight(_) => -need,
            Want::Pieces(_) => self.short[lot] * PIECE * need.max(0.0),
            Want::Rest => 0.0,
        }
    }

    /// No way of placing the pieces from `piece` on costs less than this: what is over already
    /// stays over, and the remaining weight, poured out like water, fills the dearest wants first
    /// (a relaxation: a real piece cannot be poured). A piece short may cost nothing at all here.
    fn least_cost(&self, piece: usize) -> f64 {
        let mut water = self.remaining[piece];
        let mut cost = -self.need[self.wants.len()];
        let mut takes_rest = false;
        // Earlier lots are the dearer ones.
        for (i, want) in self.wants.iter().enumerate() {
            match want {
                Want::Weight(_) => {
                    let poured = self.need[i].clamp(0.0, water);
                    water -= poured;
                    cost += self.cost_of(i, self.need[i] - poured);
                }
                Want::Pieces(_) => takes_rest |= self.need[i] > 0.0,
                Want::Rest => takes_rest = true,
            }
        }
        if takes_rest { cost } else { cost + water }
    }
}

/// What a piece takes off a lot's need: its weight, or one piece.
fn unit(want: Option<&Want>, weight: f64) -> f64 {
    match want {
        Some(Want::Pieces(_)) => 1.0,
        _ => weight,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const CLOSE: f64 = 5.0;

    /// Cost of given places, worked out afresh.
    fn cost_of(weights: &[f64], wants: &[Want], places: &[usize]) -> f64 {
        let n = wants.len();
        let sum = |lot: usize| -> f64 {
            weights.iter().zip(places).filter(|(_, p)| **p == lot).map(|(w, _)| w).sum()
        };
        let count = |lot: usize| places.iter().filter(|p| **p == lot).count();
        let mut cost = sum(n);
        for (i, want) in wants.iter().enumerate() {
            let short = 10.0 * (n - i) as f64;
            cost += match want {
                Want::Weight(grams) if sum(i) < *grams => short * (grams - sum(i)),
                Want::Weight(grams) => sum(i) - grams,
                Want::Pieces(wanted) => short * 150.0 * wanted.saturating_sub(count(i)) as f64,
                Want::Rest => 0.0,
            };
        }
        cost
    }

    /// Every possible allotment, tried.
    fn brute(weights: &[f64], wants: &[Want], fixed: &[Option<usize>]) -> f64 {
        let places = wants.len() + 1;
        let ways = places.pow(u32::try_from(weights.len()).unwrap());
        let mut least = f64::INFINITY;
        for way in 0..ways {
            let mut rest = way;
            let chosen: Vec<usize> = weights
                .iter()
                .map(|_| {
                    let place = rest % places;
                    rest /= places;
                    place
                })
                .collect();
            let kept = fixed.iter().zip(&chosen).all(|(f, c)| f.is_none_or(|f| f == *c));
            let extra = wants.iter().enumerate().any(|(i, want)| {
                let free = |p: &usize| chosen[*p] == i && fixed[*p].is_none();
                let held = (0..chosen.len()).filter(|p| chosen[*p] == i).count();
                matches!(want, Want::Pieces(n) if held > *n) && (0..chosen.len()).any(|p| free(&p))
            });
            if kept && !extra {
                least = least.min(cost_of(weights, wants, &chosen));
            }
        }
        least
    }

    fn wants() -> impl Strategy<Value = Vec<Want>> {
        let want = prop_oneof![
            (100.0..900.0_f64).prop_map(Want::Weight),
            (0_usize..3).prop_map(Want::Pieces),
            Just(Want::Rest),
        ];
        prop::collection::vec(want, 1..4)
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]
        #[test]
        fn nothing_beats_it_but_by_a_hair(
            weights in prop::collection::vec(100.0..320.0_f64, 1..7),
            wants in wants(),
            lock in prop::option::of((0_usize..7, 0_usize..4)),
        ) {
            let mut fixed = vec![None; weights.len()];
            if let Some((piece, place)) = lock {
                fixed[piece % weights.len()] = Some(place % wants.len());
            }
            let (places, finished) = Search::new(&weights, &wants, &fixed, CLOSE).run();
            prop_assert!(finished);
            let got = cost_of(&weights, &wants, &places);
            let least = brute(&weights, &wants, &fixed);
            prop_assert!(got <= least + CLOSE + 1e-6, "{got} against {least}: {places:?}");
        }
    }
}
