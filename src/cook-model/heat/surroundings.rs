//! What is around a piece, over time: the pit, its lid, and where the piece goes after the pull.

use super::pit::PitKind;
use super::surface::Surface;
use crate::quantity::{Span, Temperature, to_seconds};

/// How what the meat feels answers an opened lid.
///
/// No measured record of a pit was found. An oven opened for a minute at 350 F falls by 100 F or
/// more and is back within minutes of closing (kitchen-science writing); a pit has less stored heat
/// in its walls and recovers more slowly.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LidResponse {
    /// The temperature towards which the air falls while the lid is open.
    pub floor: Temperature,
    /// Time constant of the fall.
    pub fall: Span,
    /// Time constant of the recovery after closing.
    pub recovery: Span,
}

/// With the lid open what the meat feels heads for this share of what it was above the air outside,
/// with this time constant: the air falls within seconds, but the walls, which give half of the heat,
/// cool slowly (this project's own estimates, no source).
const LID_KEEPS: f64 = 0.55;
const LID_FALL: Span = Span::seconds(120);

impl LidResponse {
    /// That of a pit set to a temperature, with air of another outside.
    pub fn of(kind: PitKind, target: Temperature, outside: Temperature) -> Self {
        let floor = outside + (target - outside) * LID_KEEPS;
        Self { floor, fall: LID_FALL, recovery: kind.lid_recovery() }
    }
}

/// A knot of the air's temperature, which runs straight from each to the next.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Knot {
    /// Seconds from the start.
    pub at: f64,
    /// Air temperature, C.
    pub air: f64,
}

/// One stay of a piece with one surface: on the grate, under foil, in a bath.
#[derive(Clone, Debug, PartialEq)]
pub struct Leg {
    pub(super) surface: Surface,
    /// Whether the air is a pit's, to which the dial-to-grate offset applies.
    pub(super) pit: bool,
    pub(super) knots: Vec<Knot>,
}

impl Leg {
    /// In a pit whose temperature was read at these spans from the start of the cook, straight
    /// between readings and level before the first and after the last.
    ///
    /// Readings must be in order of time; without any, the pit is taken at `otherwise`.
    pub fn pit(surface: Surface, readings: &[(Span, Temperature)], otherwise: Temperature) -> Self {
        let mut knots: Vec<Knot> =
            readings.iter().map(|(at, t)| Knot { at: to_seconds(*at), air: t.c() }).collect();
        if knots.is_empty() {
            knots.push(Knot { at: 0.0, air: otherwise.c() });
        }
        Self { surface, pit: true, knots }
    }

    /// In still surroundings of one temperature: the kitchen, a bath, a refrigerator.
    pub fn steady(surface: Surface, temperature: Temperature) -> Self {
        Self { surface, pit: false, knots: vec![Knot { at: 0.0, air: temperature.c() }] }
    }

    /// Opens the lid at a span from the start of the cook for a while.
    ///
    /// The fall and the recovery are exponential, laid in as straight pieces that follow them to
    /// 2 % of the drop.
    #[must_use]
    pub fn lid_open(mut self, at: Span, open: Span, response: &LidResponse) -> Self {
        let (at, open) = (to_seconds(at), to_seconds(open).max(0.0));
        let fall = to_seconds(response.fall).max(1.0);
        let recovery = to_seconds(response.recovery).max(1.0);
        let closed = at + open;
        let mut times: Vec<(f64, f64)> = Vec::new();
        for part in PARTS {
            let t = (part * fall).min(open);
            times.push((at + t, 1.0 - libm::exp(-t / fall)));
        }
        let deepest = 1.0 - libm::exp(-open / fall);
        times.push((closed, deepest));
        for part in &PARTS[1..] {
            times.push((closed + part * recovery, deepest * libm::exp(-part)));
        }
        let end = closed + LAST_PART * recovery;
        times.push((end, 0.0));
        let old = self.knots.clone();
        for knot in &old {
            if knot.at > at && knot.at < end {
                times.push((knot.at, share(&times, knot.at)));
            }
        }
        times.sort_by(|a, b| a.0.total_cmp(&b.0));
        times.dedup_by(|a, b| a.0 == b.0);
        let floor = response.floor.c();
        self.knots.retain(|k| k.at <= at || k.at >= end);
        self.knots.extend(times.iter().map(|(at, share)| {
            let air = air_at(&old, *at);
            Knot { at: *at, air: air + share * (floor.min(air) - air) }
        }));
        self.knots.sort_by(|a, b| a.at.total_cmp(&b.at));
        self.knots.dedup_by(|a, b| a.at == b.at);
        self
    }

    /// Air temperature, C, at a time in seconds.
    pub(super) fn air(&self, at: f64) -> f64 {
        air_at(&self.knots, at)
    }

    /// The straight line that stands for the air between two times in seconds.
    pub(super) fn line(&self, from: f64, to: f64) -> Line {
        let (first, last) = (self.air(from), self.air(to));
        let begin = self.knots.partition_point(|k| k.at <= from);
        let end = self.knots.partition_point(|k| k.at < to);
        if begin >= end {
            return Line { first, last, off: 0.0 };
        }
        let place = |k: &Knot| ((k.at - from) / (to - from), k.air);
        let inside = || self.knots[begin..end].iter().map(place);
        let (mut before, mut mean, mut moment) = ((0.0, first), 0.0, 0.0);
        for (s, air) in inside().chain([(1.0, last)]) {
            let ((s0, air0), width) = (before, s - before.0);
            mean += width * (air0 + air) / 2.0;
            moment += width * (air0 * (2.0 * s0 + s) + air * (s0 + 2.0 * s)) / 6.0;
            before = (s, air);
        }
        let rise = 12.0 * (moment - mean / 2.0);
        let off = |(s, air): (f64, f64)| (air - mean - rise * (s - 0.5)).abs();
        let off = inside().chain([(0.0, first), (1.0, last)]).map(off).fold(0.0, f64::max);
        Line { first: mean - rise / 2.0, last: mean + rise / 2.0, off }
    }
}

/// A straight line through the air's temperature over a while, of the same mean and the same first
/// moment, so that no heat is lost where the air goes up and down meanwhile.
#[derive(Clone, Copy, Debug)]
pub(super) struct Line {
    /// Air temperature, C, at the start and at the end.
    pub first: f64,
    pub last: f64,
    /// How far off it the air is at most, K.
    pub off: f64,
}

/// Knots of an exponential, in time constants.
const PARTS: [f64; 6] = [0.0, 0.3, 0.7, 1.2, 2.0, 3.2];
/// When an exponential is taken as over, in time constants.
const LAST_PART: f64 = 5.0;

/// The share of the drop between the knots of one opening, which are in order of time.
fn share(times: &[(f64, f64)], at: f64) -> f64 {
    let next = times.iter().position(|(t, _)| *t >= at).unwrap_or(0);
    if next == 0 {
        return times[0].1;
    }
    let ((t0, s0), (t1, s1)) = (times[next - 1], times[next]);
    s0 + (s1 - s0) * (at - t0) / (t1 - t0)
}

fn air_at(knots: &[Knot], at: f64) -> f64 {
    let next = knots.partition_point(|k| k.at <= at);
    match (next.checked_sub(1).map(|i| knots[i]), knots.get(next)) {
        (Some(before), Some(after)) => {
            before.air + (after.air - before.air) * (at - before.at) / (after.at - before.at)
        }
        (Some(only), None) => only.air,
        (None, Some(only)) => only.air,
        (None, None) => 0.0,
    }
}

/// The legs of a cook, one after another.
#[derive(Clone, Debug, PartialEq)]
pub struct Surroundings {
    /// When each leg begins, s, and the leg; the first begins at once.
    pub(super) legs: Vec<(f64, Leg)>,
}

impl Surroundings {
    /// One leg from the start.
    pub fn new(leg: Leg) -> Self {
        Self { legs: vec![(0.0, leg)] }
    }

    /// Moves the piece into another leg at a span from the start, which must be later than the
    /// moves before it; earlier ones at or after that span are dropped.
    #[must_use]
    pub fn then(mut self, at: Span, leg: Leg) -> Self {
        let at = to_seconds(at);
        self.legs.retain(|(from, _)| *from < at);
        self.legs.push((at, leg));
        self
    }

    /// The leg at a time in seconds.
    pub(super) fn leg(&self, at: f64) -> &Leg {
        let after = self.legs.partition_point(|(from, _)| *from <= at);
        &self.legs[after.saturating_sub(1)].1
    }

    /// The temperature of the air around the piece.
    pub fn air(&self, at: Span) -> Temperature {
        let at = to_seconds(at);
        Temperature::from_c(self.leg(at).air(at))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::seconds;

    #[test]
    fn a_line_has_the_mean_and_the_first_moment_of_the_air() {
        const PARTS: u32 = 100_000;
        let hot = Temperature::from_f(250.0);
        let leg = Leg::pit(Surface::pit(PitKind::Indirect), &[], hot);
        let lid = LidResponse::of(PitKind::Indirect, hot, Temperature::from_f(70.0));
        let leg = leg.lid_open(seconds(600.0), seconds(120.0), &lid);
        for (from, to) in [(0.0, 500.0), (560.0, 700.0), (590.0, 620.0), (560.0, 900.0)] {
            let line = leg.line(from, to);
            let (mut mean, mut moment, mut off) = (0.0, 0.0, 0.0_f64);
            for part in 0..PARTS {
                let s = (f64::from(part) + 0.5) / f64::from(PARTS);
                let above =
                    leg.air(from + s * (to - from)) - (line.first + s * (line.last - line.first));
                mean += above / f64::from(PARTS);
                moment += s * above / f64::from(PARTS);
                off = off.max(above.abs());
            }
            assert!(mean.abs() < 1e-6 && moment.abs() < 1e-6, "{from} to {to}: {mean}, {moment}");
            assert!((line.off - off).abs() < 0.01, "{from} to {to}: {} for {off}", line.off);
        }
        let bent = leg.line(560.0, 900.0).off;
        assert!(bent > 5.0, "{bent}");
    }
}
