//! The core over time as a curve with its band, for drawing.

use super::bounds::wet;
use super::cells;
use super::outcome::Band;
use super::rests::Rise;
use super::traces::REST;
use super::view::View;
use crate::quantity::{Moment, Temperature, seconds, to_seconds};

/// Between the points of a curve, s.
const STEP: f64 = 180.0;
/// Standard deviations from the middle of a normal distribution to either end of its central 80 %.
const TO_EDGE: f64 = 1.2816;
/// How long after its peak the curve is drawn.
const AFTER_PEAK: f64 = 900.0;

type Point = (Moment, Band<Temperature>);

/// A piece on the pit, or not yet on it: up to the middle of its window, then its rest.
pub(super) fn on_the_pit(
    view: &View<'_>,
    window: Option<Band<f64>>,
    rise: Option<&Rise>,
) -> Vec<Point> {
    let on = view.traces.on;
    let now = to_seconds(view.setting.now - view.setting.zero);
    let end = window.map_or(now + 3600.0, |window| window.middle.max(now)).max(on);
    let mut points = heating(view, on, end);
    let (Some(&(_, last)), Some(rise)) = (points.last(), rise) else { return points };
    let (speed, _) = view.typical();
    let slower = libm::exp(-speed);
    let mut after = STEP;
    while after < rise.after * slower + AFTER_PEAK {
        let risen = rise.risen(seconds(after / slower));
        let raised = |edge: Temperature| wet((edge + risen).c());
        let band =
            Band { low: raised(last.low), middle: raised(last.middle), high: raised(last.high) };
        points.push((view.moment(end + after), band));
        after += STEP;
    }
    points
}

/// How long a piece left on is followed: a cook who forgot it for longer finds it done anyway.
const LEFT_ON: f64 = 3.0 * 3600.0;

/// A piece on the pit, or not yet on it, as if it were left on.
pub(super) fn left_on(view: &View<'_>, now: f64) -> Vec<Point> {
    let from = view.traces.on.max(now);
    heating(view, from, view.traces.ends().min(from + LEFT_ON).max(from))
}

/// A piece that came off: up to the end of its rest.
pub(super) fn resting(view: &View<'_>, off: f64) -> Vec<Point> {
    let now = to_seconds(view.setting.now - view.setting.zero);
    heating(view, view.traces.on, now.max(off) + to_seconds(REST) / 2.0)
}

/// The traces of a slow, a middling and a fast cell, widened by what the model misses.
fn heating(view: &View<'_>, from: f64, to: f64) -> Vec<Point> {
    let picked = slow_to_fast(view);
    let steps = ((to - from) / STEP).ceil().max(1.0);
    (0..=steps as usize)
        .map(|i| {
            let at = from + (to - from) * i as f64 / steps;
            let [slow, middle, fast] = picked.map(|(cell, values)| view.core_of(cell, values, at));
            let misfit = TO_EDGE * view.misfit(at);
            let low = middle - libm::hypot(middle - slow.min(middle), misfit);
            let high = middle + libm::hypot(fast.max(middle) - middle, misfit);
            (view.moment(at), Band { low, middle, high }.celsius())
        })
        .collect()
}

impl Band<f64> {
    fn celsius(self) -> Band<Temperature> {
        self.map(wet)
    }
}

/// The cells below which a tenth, a half and nine tenths of the weight lie, ordered by how fast they heat,
/// with their ln(speed) and offset.
fn slow_to_fast(view: &View<'_>) -> [(usize, (f64, f64)); 3] {
    // One kelvin of offset hastens a cook at a usual pit by about 1.6 %.
    const PER_KELVIN: f64 = 0.016;
    let values: Vec<(f64, f64)> = cells::each().collect();
    let mut order: Vec<(f64, f64, usize)> = view
        .cells()
        .map(|(cell, weight)| (values[cell].0 + PER_KELVIN * values[cell].1, weight, cell))
        .collect();
    order.sort_by(|a, b| a.0.total_cmp(&b.0));
    let all: f64 = order.iter().map(|(_, weight, _)| weight).sum();
    [0.1, 0.5, 0.9].map(|share| {
        let mut below = 0.0;
        let found = order.iter().find(|(_, weight, _)| {
            below += weight / all;
            below >= share
        });
        let (_, _, cell) = found.or(order.last()).copied().unwrap_or((0.0, 0.0, cells::COUNT / 2));
        (cell, values[cell])
    })
}
