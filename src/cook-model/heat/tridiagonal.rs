//! A tridiagonal matrix, factored and solved from both ends towards the middle.
//!
//! Gaussian elimination from either end is a chain in which each row waits for the one before; two
//! chains of half the length run beside each other in one processor (a "twisted" factorisation:
//! van der Vorst 1987, Parallel Computing 5:45, from memory).

/// One row of a factored matrix.
#[derive(Clone, Copy, Debug, Default)]
struct Row {
    /// Coefficient of the row before, on the way from its end; in the middle row, of the one from
    /// the first end.
    behind: f64,
    /// One over the pivot.
    pivot: f64,
    /// Coefficient of the row after, over the pivot; in the middle row, of the one from the last end,
    /// as it is.
    ahead: f64,
}

/// A factored tridiagonal matrix.
pub(super) struct Tridiagonal {
    rows: Vec<Row>,
}

/// Where elimination from both ends meets, of so many rows.
#[derive(Clone, Copy)]
struct Meeting {
    /// The middle row: as many rows come before it as after it, or one more.
    middle: usize,
    /// Rows after it.
    after: usize,
}

impl Meeting {
    #[inline]
    fn of(rows: usize) -> Self {
        let middle = rows / 2;
        Self { middle, after: rows - middle - 1 }
    }
}

impl Tridiagonal {
    /// Room for a matrix of so many rows, at least one.
    pub(super) fn new(rows: usize) -> Self {
        Self { rows: vec![Row::default(); rows] }
    }

    /// Factors the matrix whose rows are given by number, each asked for once: the coefficients of the
    /// row before, of itself and of the row after. Beyond either end they must be nought.
    #[inline]
    pub(super) fn factor(&mut self, mut row: impl FnMut(usize) -> [f64; 3]) {
        let n = self.rows.len();
        let Meeting { middle, after } = Meeting::of(n);
        let (mut first, mut last) = (Row::default(), Row::default());
        for i in 0..after {
            let [behind, own, ahead] = row(i);
            first = first.next(behind, own, ahead);
            self.rows[i] = first;
            let [ahead, own, behind] = row(n - 1 - i);
            last = last.next(behind, own, ahead);
            self.rows[n - 1 - i] = last;
        }
        if middle > after {
            let [behind, own, ahead] = row(after);
            first = first.next(behind, own, ahead);
            self.rows[after] = first;
        }
        let [behind, own, ahead] = row(middle);
        let pivot = 1.0 / (own - behind * first.ahead - ahead * last.ahead);
        self.rows[middle] = Row { behind, pivot, ahead };
    }

    /// Solves in place.
    #[inline]
    pub(super) fn solve(&self, x: &mut [f64]) {
        let n = self.rows.len();
        let (rows, x) = (&self.rows[..n], &mut x[..n]);
        let Meeting { middle, after } = Meeting::of(n);
        let (mut first, mut last) = (0.0, 0.0);
        for i in 0..after {
            let (a, b) = (rows[i], rows[n - 1 - i]);
            first = (x[i] - a.behind * first) * a.pivot;
            x[i] = first;
            last = (x[n - 1 - i] - b.behind * last) * b.pivot;
            x[n - 1 - i] = last;
        }
        if middle > after {
            first = (x[after] - rows[after].behind * first) * rows[after].pivot;
            x[after] = first;
        }
        let Row { behind, pivot, ahead } = rows[middle];
        let met = (x[middle] - behind * first - ahead * last) * pivot;
        x[middle] = met;
        (first, last) = (met, met);
        if middle > after {
            first = x[after] - rows[after].ahead * first;
            x[after] = first;
        }
        for i in (0..after).rev() {
            first = x[i] - rows[i].ahead * first;
            x[i] = first;
            last = x[n - 1 - i] - rows[n - 1 - i].ahead * last;
            x[n - 1 - i] = last;
        }
    }
}

impl Row {
    /// The row after this one, on the way from either end.
    #[inline]
    fn next(self, behind: f64, own: f64, ahead: f64) -> Self {
        let pivot = 1.0 / (own - behind * self.ahead);
        Self { behind, pivot, ahead: ahead * pivot }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_solution_solves_the_rows() {
        for n in 1..=18 {
            let row = |i: usize| {
                let at = i as f64;
                let before = if i == 0 { 0.0 } else { -1.0 - 0.1 * at };
                let after = if i + 1 == n { 0.0 } else { -0.7 + 0.02 * at };
                [before, 4.0 + 0.3 * at, after]
            };
            let right: Vec<f64> = (0..n).map(|i| 1.0 + (i * i % 7) as f64).collect();
            let mut x = right.clone();
            let mut matrix = Tridiagonal::new(n);
            matrix.factor(row);
            matrix.solve(&mut x);
            for (i, right) in right.iter().enumerate() {
                let [before, own, after] = row(i);
                let mut sum = own * x[i];
                if i > 0 {
                    sum += before * x[i - 1];
                }
                if i + 1 < n {
                    sum += after * x[i + 1];
                }
                assert!((sum - right).abs() < 1e-12 * right.abs(), "row {i} of {n}: {sum}");
            }
        }
    }
}
