//! The coordinate through the thickness.

/// How much finer the grid is at the surface than at the middle: the cells' widths run linearly
/// from `1 + GRADING` to `1 - GRADING` of their mean.
const GRADING: f64 = 0.6;

/// How the area that heat crosses grows from the middle outwards, as a part of the surface's.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Area {
    /// `x^(n-1)`: 1 slab, 2 cylinder, 3 sphere.
    Power(f64),
    /// `exp(c (x^2 - 1) / 2)`: the middle of a body that thins away from it with curvature `c`.
    Curved(f64),
}

impl Area {
    fn at(self, x: f64) -> f64 {
        match self {
            Self::Power(n) => libm::pow(x, n - 1.0),
            Self::Curved(c) => libm::exp(0.5 * c * (x * x - 1.0)),
        }
    }

    /// Volume between two places.
    fn volume(self, from: f64, to: f64) -> f64 {
        match self {
            Self::Power(n) => (libm::pow(to, n) - libm::pow(from, n)) / n,
            // Simpson's rule: the integrand is smooth and the cell thin.
            Self::Curved(_) => {
                (to - from) / 6.0 * (self.at(from) + 4.0 * self.at(0.5 * (from + to)) + self.at(to))
            }
        }
    }
}

/// Nodes through the half-thickness, taken as one long, and the control volumes around them.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Column {
    /// Place of each node, 0 at the middle, 1 at the surface.
    pub x: Vec<f64>,
    /// One over the volume of each node's cell.
    pub per_volume: Vec<f64>,
    /// Area over distance between each node and the next.
    pub conductance: Vec<f64>,
    /// Each cell's share of the thickness: the weights of the mean over it.
    pub share: Vec<f64>,
    /// Mean of the square of the place over the thickness.
    pub mean_square: f64,
}

/// Nodes from 0 to `reach`, finer towards the end, and the edges of the cells around them.
pub(super) fn graded(cells: usize, reach: f64, grading: f64) -> (Vec<f64>, Vec<f64>) {
    let nodes: Vec<f64> = (0..=cells)
        .map(|i| {
            let s = i as f64 / cells as f64;
            reach * (s + grading * s * (1.0 - s))
        })
        .collect();
    let between = nodes.windows(2).map(|w| 0.5 * (w[0] + w[1]));
    let edges = core::iter::once(0.0).chain(between).chain([reach]).collect();
    (nodes, edges)
}

impl Column {
    pub(super) fn new(cells: usize, area: Area) -> Self {
        let (x, edges) = graded(cells, 1.0, GRADING);
        let share: Vec<f64> = edges.windows(2).map(|e| e[1] - e[0]).collect();
        Self {
            per_volume: edges.windows(2).map(|e| 1.0 / area.volume(e[0], e[1])).collect(),
            conductance: (0..cells).map(|i| area.at(edges[i + 1]) / (x[i + 1] - x[i])).collect(),
            mean_square: x.iter().zip(&share).map(|(x, share)| x * x * share).sum(),
            x,
            share,
        }
    }

    /// Mean over the thickness of values at the nodes; what follows them is left out.
    pub(super) fn mean(&self, values: &[f64]) -> f64 {
        dot(&self.share, &values[..self.share.len()])
    }
}

/// Sums that run beside each other: one alone would wait for itself at every term.
const LANES: usize = 4;

/// The sum of the products of two rows of the same length.
fn dot(a: &[f64], b: &[f64]) -> f64 {
    let (a, a_rest) = a.as_chunks::<LANES>();
    let (b, b_rest) = b.as_chunks::<LANES>();
    let mut lanes = [0.0; LANES];
    for (a, b) in a.iter().zip(b) {
        for lane in 0..LANES {
            lanes[lane] += a[lane] * b[lane];
        }
    }
    let rest: f64 = a_rest.iter().zip(b_rest).map(|(a, b)| a * b).sum();
    (lanes[0] + lanes[1]) + (lanes[2] + lanes[3]) + rest
}
