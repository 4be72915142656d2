//! Which piece goes in which wave, where there are more pieces than places on the rack.
//!
//! Up to [`EXACT_UP_TO`] pieces every way to fill the waves is tried. Beyond that the best of a
//! few sensible loadings, first-come among them, is improved by moving and swapping pieces until
//! nothing helps: never worse than first-come, not proved the best.

use super::loading::{Cost, Setting, Waves};
use crate::sorting::sort_by;

/// The most pieces for which every way is tried.
const EXACT_UP_TO: usize = 8;

/// The best waves found, and what they cost.
pub(super) fn best_waves(setting: &Setting<'_>) -> (Waves, Cost) {
    let pieces = setting.draws.pieces();
    let count = pieces.div_ceil(setting.places.len().max(1));
    let mut best = Best::new(setting);
    if count <= 1 {
        best.offer(&vec![(0..pieces).collect()]);
    } else if pieces <= EXACT_UP_TO {
        every_way(setting.places.len(), &mut vec![Vec::new(); count], 0, pieces, &mut best);
    } else {
        for start in starts(setting, count) {
            improve(start, &mut best);
        }
    }
    best.found
}

/// The best loading met so far.
struct Best<'a> {
    setting: &'a Setting<'a>,
    found: (Waves, Cost),
}

impl<'a> Best<'a> {
    /// Starts from first-come: the order in which the pieces were set out.
    fn new(setting: &'a Setting<'a>) -> Self {
        let order: Vec<usize> = (0..setting.draws.pieces()).collect();
        let waves = filled(&order, setting.places.len());
        let cost = setting.cost(&waves);
        Self { setting, found: (waves, cost) }
    }

    /// Keeps the waves if they are better than all before, and says what they cost.
    fn offer(&mut self, waves: &Waves) -> Cost {
        let cost = self.setting.cost(waves);
        if cost.compare(&self.found.1).is_lt() {
            self.found = (waves.clone(), cost);
        }
        cost
    }
}

/// Pieces in this order, wave after wave.
fn filled(order: &[usize], places: usize) -> Waves {
    order.chunks(places.max(1)).map(<[usize]>::to_vec).collect()
}

/// Tries each wave with room for each piece in turn.
fn every_way(places: usize, waves: &mut Waves, piece: usize, pieces: usize, best: &mut Best<'_>) {
    if piece == pieces {
        if waves.iter().all(|wave| !wave.is_empty()) {
            best.offer(waves);
        }
        return;
    }
    for wave in 0..waves.len() {
        if waves[wave].len() < places {
            waves[wave].push(piece);
            every_way(places, waves, piece + 1, pieces, best);
            waves[wave].pop();
        }
    }
}

/// Loadings worth improving: first-come; later pieces first and tonight's last, by size either
/// way, with the short wave first or last.
fn starts(setting: &Setting<'_>, count: usize) -> Vec<Waves> {
    let pieces = setting.draws.pieces();
    let places = setting.places.len();
    let first_come: Vec<usize> = (0..pieces).collect();
    let mut orders = vec![first_come.clone()];
    for slow_first in [false, true] {
        let mut order = first_come.clone();
        sort_by(&mut order, |&a, &b| {
            let by_time = setting.draws.middle[a].total_cmp(&setting.draws.middle[b]);
            let by_time = if slow_first { by_time.reverse() } else { by_time };
            setting.tonight[a].cmp(&setting.tonight[b]).then(by_time)
        });
        orders.push(order);
    }
    let short = pieces - places * (count - 1);
    let mut starts = Vec::new();
    for order in orders {
        let (first, rest) = order.split_at(short);
        let mut short_first = vec![first.to_vec()];
        short_first.extend(filled(rest, places));
        starts.push(short_first);
        starts.push(filled(&order, places));
    }
    starts
}

/// Moves and swaps pieces between waves for as long as that helps.
fn improve(mut waves: Waves, best: &mut Best<'_>) {
    let mut cost = best.offer(&waves);
    while let Some((better, lower)) = step(&waves, cost, best) {
        (waves, cost) = (better, lower);
    }
}

/// The first move or swap between two waves that costs less.
fn step(waves: &Waves, cost: Cost, best: &mut Best<'_>) -> Option<(Waves, Cost)> {
    let places = best.setting.places.len();
    for from in 0..waves.len() {
        for to in (0..waves.len()).filter(|&to| to != from) {
            for i in 0..waves[from].len() {
                let swaps = (from < to).then_some(0..waves[to].len()).into_iter().flatten();
                let room = waves[to].len() < places && waves[from].len() > 1;
                for other in swaps.map(Some).chain(room.then_some(None)) {
                    let mut tried = waves.clone();
                    match other {
                        Some(j) => {
                            tried[from][i] = waves[to][j];
                            tried[to][j] = waves[from][i];
                        }
                        None => {
                            let piece = tried[from].remove(i);
                            tried[to].push(piece);
                        }
                    }
                    let reached = best.offer(&tried);
                    if reached.compare(&cost).is_lt() {
                        return Some((tried, reached));
                    }
                }
            }
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::super::draws::{Draw, Draws};
    use super::super::loading::Style;
    use super::*;

    fn draws_of(rows: &[Vec<f64>]) -> Draws {
        let draws = rows
            .iter()
            .map(|on_pit| Draw { on_pit: on_pit.clone(), rest: vec![8.0; on_pit.len()] })
            .collect();
        Draws::new(draws, vec![-0.005; rows[0].len()])
    }

    /// Every assignment of pieces to waves by counting in base `waves`, full or not.
    fn brute_force(setting: &Setting<'_>) -> Cost {
        let (pieces, places) = (setting.draws.pieces(), setting.places.len());
        let count = pieces.div_ceil(places);
        let assignments = (0..count.pow(pieces as u32)).filter_map(|code| {
            let mut waves: Waves = vec![Vec::new(); count];
            (0..pieces).fold(code, |rest, piece| {
                waves[rest % count].push(piece);
                rest / count
            });
            waves.iter().all(|w| !w.is_empty() && w.len() <= places).then(|| setting.cost(&waves))
        });
        assignments.min_by(Cost::compare).unwrap()
    }

    /// Up to seven pieces, a rack of up to three places, and five ways the day could go.
    fn any_day() -> impl Strategy<Value = (Vec<Vec<f64>>, Vec<f64>, Vec<bool>, bool)> {
        (2..8_usize, 1..4_usize).prop_flat_map(|(pieces, places)| {
            (
                prop::collection::vec(prop::collection::vec(30.0..90.0_f64, pieces), 5),
                prop::collection::vec(-8.0..8.0_f64, places),
                prop::collection::vec(any::<bool>(), pieces),
                any::<bool>(),
            )
        })
    }

    fn setting<'a>(
        draws: &'a Draws,
        places: &'a [f64],
        tonight: &'a [bool],
        off_together: bool,
    ) -> Setting<'a> {
        let style = if off_together { Style::OffTogether } else { Style::OnTogether };
        Setting { draws, places, tonight, style, carving: 10.0, available: 600.0 }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(32))]

        #[test]
        fn the_search_finds_what_brute_force_finds((rows, places, tonight, style) in any_day()) {
            let draws = draws_of(&rows);
            let setting = setting(&draws, &places, &tonight, style);
            let (_, cost) = best_waves(&setting);
            prop_assert!(cost.compare(&brute_force(&setting)).is_eq());
        }

        #[test]
        fn no_piece_is_lost_or_doubled((rows, places, tonight, style) in any_day()) {
            let draws = draws_of(&rows);
            let (waves, _) = best_waves(&setting(&draws, &places, &tonight, style));
            let mut all: Vec<usize> = waves.concat();
            all.sort_unstable();
            prop_assert_eq!(all, (0..draws.pieces()).collect::<Vec<_>>());
            prop_assert!(waves.iter().all(|wave| wave.len() <= places.len()));
        }

        #[test]
        fn twenty_pieces_are_never_worse_than_first_come(
            row in prop::collection::vec(30.0..90.0_f64, 20),
            tonight in prop::collection::vec(any::<bool>(), 20),
        ) {
            let draws = draws_of(&[row.clone(), row.iter().map(|m| m * 1.1).collect()]);
            let places = [0.0; 7];
            let setting = setting(&draws, &places, &tonight, false);
            let first_come = setting.cost(&filled(&(0..20).collect::<Vec<_>>(), 7));
            prop_assert!(best_waves(&setting).1.compare(&first_come).is_le());
        }
    }

    #[test]
    fn tonight_goes_last_so_that_it_is_not_held() {
        let draws = draws_of(&[vec![50.0, 50.0, 50.0, 50.0]]);
        let tonight = [true, false, true, false];
        let (waves, cost) = best_waves(&setting(&draws, &[0.0, 0.0], &tonight, false));
        assert_eq!(waves, [vec![1, 3], vec![0, 2]]);
        assert_eq!(cost.held, 0.0);
    }
}
