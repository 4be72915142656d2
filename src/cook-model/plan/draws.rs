//! Joint draws of how long each piece takes, which every choice of the plan is judged over.

/// One way the day could go: minutes for each piece, by its place in the request.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Draw {
    /// On the pit until its pull, at the rack's mean heat, min.
    pub on_pit: Vec<f64>,
    /// From its pull until its rest is over, min.
    pub rest: Vec<f64>,
}

/// Equally likely ways the day could go. The part of the uncertainty that belongs to the pit is
/// the same for all pieces within one draw.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Draws {
    /// The draws.
    pub draws: Vec<Draw>,
    /// For each piece, by how much its time on the pit shrinks for each kelvin of a hotter place,
    /// as a fraction: d ln(minutes) / d T, 1/K, negative.
    pub per_kelvin: Vec<f64>,
    /// For each piece, the middle of its time on the pit over all draws, min.
    pub middle: Vec<f64>,
}

impl Draws {
    /// From draws that all cover the same pieces as `per_kelvin`.
    pub fn new(draws: Vec<Draw>, per_kelvin: Vec<f64>) -> Self {
        let middle = (0..per_kelvin.len())
            .map(|piece| quantile(draws.iter().map(|draw| draw.on_pit[piece]).collect(), 0.5))
            .collect();
        Self { draws, per_kelvin, middle }
    }

    /// How many pieces there are.
    pub fn pieces(&self) -> usize {
        self.per_kelvin.len()
    }
}

/// The value below which a share of equally likely values lies (the nearest one at or above).
pub(super) fn quantile(mut values: Vec<f64>, share: f64) -> f64 {
    let rank = (share * values.len() as f64).ceil() as usize;
    let place = rank.max(1) - 1;
    if place >= values.len() {
        return 0.0;
    }
    *values.select_nth_unstable_by(place, f64::total_cmp).1
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantiles_of_ten_values() {
        let ten: Vec<f64> = (1..=10).rev().map(f64::from).collect();
        for (share, expected) in [(0.05, 1.0), (0.1, 1.0), (0.5, 5.0), (0.9, 9.0), (1.0, 10.0)] {
            assert_eq!(quantile(ten.clone(), share), expected, "share {share}");
        }
    }
}
