//! The pit's air over time, as far as it is known: readings, the target, and the lid.

use crate::dial::{WANDERS, of_the_fire};
use crate::heat::{Leg, LidResponse, Surface};
use crate::history::{History, Instrument, LidOpening, PitAim, PitHistory};
use crate::quantity::{Moment, Span, Temperature, minutes, to_minutes};
use crate::sorting::{sort_by, sort_by_key};

/// The time over which a fire forgets that it burned hot or low (common practice, no source).
const FORGETS: Span = Span::minutes(30);
/// How far back and ahead of the readings the air is laid out.
const KNOT_MINUTES: [f64; 5] = [10.0, 20.0, 35.0, 60.0, 120.0];
/// The time over which a fire follows a target newly set (common practice, no source: 25 F take a
/// quarter of an hour).
const FOLLOWS: Span = Span::minutes(8);
/// How long after a change of target the air is laid out.
const AIM_KNOT_MINUTES: [f64; 4] = [4.0, 9.0, 16.0, 30.0];
/// The target counts as much as so many readings in how far off it the fire is taken to burn.
const TARGET_COUNTS: f64 = 2.0;
/// An opening that was not told but must have been: to poke a piece or to move it.
const UNTOLD: Span = Span::seconds(40);
/// Things done this close together were done with the lid open once.
const ONE_OPENING: Span = Span::minutes(3);

/// The lid will be opened to check: no sooner than this after the first piece went on,
const FIRST_CHECK: Span = Span::minutes(35);
/// nor than this from now,
const NEXT_CHECK: Span = Span::minutes(5);
/// and then about every quarter of an hour for three quarters of a minute (common practice, no
/// source), which costs on average this share of what the air is above the air outside.
const LOST_TO_CHECKS: f64 = 0.10;
/// How gradually that sets in.
const CHECKS_SET_IN: Span = Span::minutes(8);

/// The openings told, and those that readings and pulls imply, in order of time.
pub(super) fn openings(history: &History) -> Vec<LidOpening> {
    let mut openings = history.pit.lid.clone();
    let mut done: Vec<Moment> = history
        .pieces
        .iter()
        .flat_map(|piece| {
            let on = |at: Moment| {
                piece.spells.iter().any(|s| s.on <= at && s.off.is_none_or(|off| at <= off))
            };
            let poked = piece
                .readings
                .iter()
                .filter(move |r| r.instrument == Instrument::InstantRead && on(r.at))
                .map(|r| r.at);
            poked.chain(piece.spells.iter().filter_map(|spell| spell.off))
        })
        .collect();
    sort_by(&mut done, Ord::cmp);
    for at in done {
        let told = openings
            .iter()
            .any(|o| o.at - ONE_OPENING <= at && at <= o.at + o.lasted + ONE_OPENING);
        if !told {
            openings.push(LidOpening { at, lasted: UNTOLD });
        }
    }
    sort_by_key(&mut openings, |opening| opening.at);
    openings
}

/// The pit as a leg of a piece's surroundings; spans count from `zero`.
pub(super) fn leg(history: &History, zero: Moment, now: Moment) -> Leg {
    let openings = openings(history);
    let told = of_the_fire(&history.pit, &openings).into_iter();
    let mut read: Vec<(Moment, f64)> =
        told.map(|told| (told.reading.at, told.at_most.c())).collect();
    sort_by_key(&mut read, |(at, _)| *at);
    let fire = Fire::new(Aims::new(&history.pit, zero), read);
    let outside = history.pit.ambient.c();
    let response = LidResponse::of(history.pit.kind, history.pit.target, history.pit.ambient);
    let checks_from = (zero + FIRST_CHECK).max(now + NEXT_CHECK);
    let knots: Vec<(Span, Temperature)> = fire
        .knots(&[checks_from, checks_from + CHECKS_SET_IN])
        .into_iter()
        .map(|at| {
            let air = fire.air(at);
            let begun = to_minutes(at - checks_from) / to_minutes(CHECKS_SET_IN);
            let lost = LOST_TO_CHECKS * begun.clamp(0.0, 1.0) * (air - outside).max(0.0);
            (at - zero, Temperature::from_c(air - lost))
        })
        .collect();
    let mut leg = Leg::pit(Surface::pit(history.pit.kind), &knots, history.pit.target);
    for opening in openings {
        leg = leg.lid_open(opening.at - zero, opening.lasted, &response);
    }
    leg
}

/// What the pit thermometer shows, as far as it is known.
struct Fire {
    aims: Aims,
    /// Readings, C, in order of time.
    read: Vec<(Moment, f64)>,
    /// How far above its target the fire burns by all readings of one that burns, K: one that is out, or
    /// blazes, says nothing of how it burns once it was seen to.
    above: f64,
}

impl Fire {
    fn new(aims: Aims, read: Vec<(Moment, f64)>) -> Self {
        let off = read.iter().map(|(at, c)| c - aims.followed(*at));
        let burning: Vec<f64> = off.filter(|off| off.abs() <= (WANDERS * 2.0).c()).collect();
        let above = burning.iter().sum::<f64>() / (burning.len() as f64 + TARGET_COUNTS);
        Self { aims, read, above }
    }

    /// Between readings straight; before the first and after the last the reading is forgotten
    /// towards the target, and how far off it the fire burns by all readings.
    fn air(&self, at: Moment) -> f64 {
        let next = self.read.partition_point(|(read, _)| *read <= at);
        let before = next.checked_sub(1).map(|i| self.read[i]);
        match (before, self.read.get(next).copied()) {
            (Some((t0, c0)), Some((t1, c1))) => {
                c0 + (c1 - c0) * to_minutes(at - t0) / to_minutes(t1 - t0)
            }
            (Some(read), None) | (None, Some(read)) => self.forgotten(read, at),
            (None, None) => self.level(at),
        }
    }

    /// Where the fire is at a moment if nothing disturbs it.
    fn level(&self, at: Moment) -> f64 {
        self.aims.followed(at) + self.above
    }

    fn forgotten(&self, (read, c): (Moment, f64), at: Moment) -> f64 {
        let minutes = to_minutes(at - read).abs();
        let left = libm::exp(-minutes / to_minutes(FORGETS));
        self.level(at) + (c - self.level(read)) * left
    }

    /// The moments between which the air is near enough straight, and `others`.
    fn knots(&self, others: &[Moment]) -> Vec<Moment> {
        let mut knots: Vec<Moment> = self.read.iter().map(|(at, _)| *at).collect();
        if let (Some(&first), Some(&last)) = (knots.first(), knots.last()) {
            knots.extend(KNOT_MINUTES.iter().map(|&m| first - minutes(m)));
            knots.extend(KNOT_MINUTES.iter().map(|&m| last + minutes(m)));
        }
        knots.extend(self.aims.knots());
        knots.extend_from_slice(others);
        sort_by(&mut knots, Ord::cmp);
        knots.dedup();
        knots
    }
}

/// The temperatures aimed for.
struct Aims {
    /// As the first piece went on, C: a pit is brought to temperature before it is loaded.
    first: f64,
    /// Set since.
    changes: Vec<PitAim>,
}

impl Aims {
    fn new(pit: &PitHistory, zero: Moment) -> Self {
        let changes = pit.aims.iter().filter(|aim| aim.at > zero).copied().collect();
        Self { first: pit.aim(zero).c(), changes }
    }

    /// The target as a fire follows it, C: a new one not at once.
    fn followed(&self, at: Moment) -> f64 {
        let towards = |level: f64, aim: f64, span: Span| {
            aim + (level - aim) * libm::exp(-to_minutes(span) / to_minutes(FOLLOWS))
        };
        let (mut level, mut aim, mut since) = (self.first, self.first, at);
        for change in self.changes.iter().take_while(|change| change.at <= at) {
            level = towards(level, aim, change.at - since.min(change.at));
            (aim, since) = (change.temperature.c(), change.at);
        }
        towards(level, aim, at - since)
    }

    /// The moments between which that is near enough straight.
    fn knots(&self) -> impl Iterator<Item = Moment> {
        self.changes.iter().flat_map(|change| {
            let after = AIM_KNOT_MINUTES.iter().map(|&m| change.at + minutes(m));
            core::iter::once(change.at).chain(after)
        })
    }
}
