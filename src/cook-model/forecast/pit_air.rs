//! The pit's air over time, as far as it is known: readings, the target, and the lid.

use crate::heat::{Leg, LidResponse, Surface};
use crate::history::{History, Instrument, LidOpening, PitAim, PitHistory};
use crate::quantity::{Moment, Span, Temperature, minutes, to_minutes};
use crate::sorting::{sort_by, sort_by_key};

/// A dial hides no more than this, K (20 F: common practice, no source); and what is wet is no hotter
/// than boiling, C.
const DIAL_HIDES: f64 = 11.0;
const BOILING: f64 = 100.0;
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
/// While the air comes back after an opening the dial says nothing of the fire.
const LID_DISTURBS: Span = Span::minutes(6);

/// To load a pit the lid is open for about this long.
const LOADING: Span = Span::seconds(70);
/// The lid will be opened to check: no sooner than this after the first piece went on,
const FIRST_CHECK: Span = Span::minutes(30);
/// nor than this from now,
const NEXT_CHECK: Span = Span::minutes(10);
/// and then about this often and for so long (common practice, no source).
const CHECK_EVERY: Span = Span::minutes(12);
const CHECK_LASTS: Span = Span::seconds(45);
/// How gradually that sets in.
const CHECKS_SET_IN: Span = Span::minutes(8);

/// How the pit's air answers its lid.
pub(super) fn response(history: &History) -> LidResponse {
    LidResponse { outside: history.pit.ambient, ..LidResponse::default() }
}

/// The openings told, and those that loading, readings and pulls imply, in order of time; a pit where
/// nothing is on yet is loaded now.
pub(super) fn openings(history: &History, now: Moment) -> Vec<LidOpening> {
    let mut openings = history.pit.lid.clone();
    let loaded = |at: Moment| (at, LOADING);
    let mut done: Vec<(Moment, Span)> = history
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
            let pulled = piece.spells.iter().filter_map(|spell| spell.off);
            let opened = poked.chain(pulled).map(|at| (at, UNTOLD));
            opened.chain(piece.spells.iter().map(move |spell| loaded(spell.on)))
        })
        .collect();
    if history.first_on().is_none() {
        done.push(loaded(now));
    }
    sort_by(&mut done, Ord::cmp);
    for (at, lasted) in done {
        let told = openings
            .iter()
            .any(|o| o.at - ONE_OPENING <= at && at <= o.at + o.lasted + ONE_OPENING);
        if !told {
            openings.push(LidOpening { at, lasted });
        }
    }
    sort_by_key(&mut openings, |opening| opening.at);
    openings
}

/// What no core can be hotter than: the hottest the pit was set to or read, and what a dial may hide.
pub(super) fn hottest(history: &History) -> Temperature {
    let pit = &history.pit;
    let aims = pit.aims.iter().map(|aim| aim.temperature);
    let seen = aims.chain(pit.readings.iter().map(|reading| reading.temperature));
    let most = seen.map(Temperature::c).fold(pit.target.c(), f64::max);
    Temperature::from_c((most + DIAL_HIDES).min(BOILING))
}

/// The pit as a leg of a piece's surroundings; spans count from `zero`.
pub(super) fn leg(history: &History, zero: Moment, now: Moment) -> Leg {
    let openings = openings(history, now);
    let disturbed =
        |at: Moment| openings.iter().any(|o| o.at < at && at < o.at + o.lasted + LID_DISTURBS);
    let mut read: Vec<(Moment, f64)> = history
        .pit
        .readings
        .iter()
        .filter(|reading| !disturbed(reading.at))
        .map(|reading| (reading.at, reading.temperature.c()))
        .collect();
    sort_by_key(&mut read, |(at, _)| *at);
    let fire = Fire::new(Aims::new(&history.pit, zero), read);
    let outside = history.pit.ambient.c();
    let response = response(history);
    let lost_to_checks = to_minutes(response.costs(CHECK_LASTS)) / to_minutes(CHECK_EVERY);
    let checks_from = (zero + FIRST_CHECK).max(now + NEXT_CHECK);
    let knots: Vec<(Span, Temperature)> = fire
        .knots(&[checks_from, checks_from + CHECKS_SET_IN])
        .into_iter()
        .map(|at| {
            let air = fire.air(at);
            let begun = to_minutes(at - checks_from) / to_minutes(CHECKS_SET_IN);
            let lost = lost_to_checks * begun.clamp(0.0, 1.0) * (air - outside).max(0.0);
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
    /// How far above its target the fire burns by all readings, K.
    above: f64,
}

impl Fire {
    fn new(aims: Aims, read: Vec<(Moment, f64)>) -> Self {
        let above: f64 = read.iter().map(|(at, c)| c - aims.followed(*at)).sum();
        let above = above / (read.len() as f64 + TARGET_COUNTS);
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
