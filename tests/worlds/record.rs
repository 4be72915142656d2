//! A cook played through: what was truly so, and all that the cook saw of it.

use serde::{Deserialize, Serialize};

use crate::chance::Chance;
use crate::draw::Setup;
use crate::fire::Pit;
use crate::kinds::{KINDS, PER_F};
use crate::piece::Piece;

/// Step of pit and pieces, s.
const STEP: f64 = 10.0;
/// Cells through the thickness, of the rehearsal and of the cook.
const ACROSS: (usize, usize) = (5, 9);
/// What has not come to its pull temperature by then, s, is left out.
const LONGEST: f64 = 4.0 * 3600.0;
/// A rest is watched this long, s.
const RESTS: f64 = 2400.0;
/// Readings planned within this of an opening, s, are made at it.
const AT_ONCE: f64 = 180.0;
/// Of two readings, and of one, how long before the pull the rehearsal has it, s.
const AHEAD: ([f64; 2], f64) = ([1500.0, 720.0], 900.0);
/// No reading before this, s.
const SOONEST: f64 = 480.0;
/// Spread of where a poke ends around the coldest spot, m, and flicker of what is shown, K.
pub(crate) const SCATTER: f64 = 4.0e-3;
pub(crate) const FLICKER: f64 = 0.25;

/// A core temperature read. Times in s since the pieces went on, temperatures in C.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub struct Reading {
    /// Which piece.
    pub piece: usize,
    /// When.
    pub at: f64,
    /// What was shown.
    pub celsius: f64,
    /// Whether it was made as the piece came off.
    pub at_pull: bool,
}

/// An opening of the lid.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub struct Opening {
    /// When.
    pub at: f64,
    /// For how long.
    pub lasted: f64,
    /// Whether the cook told it.
    pub told: bool,
}

/// What came of a cook.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Record {
    /// By piece: when its core was at the pull temperature; none if it never was.
    pub pull: Vec<Option<f64>>,
    /// By piece: the highest its core was after that.
    pub peak: Vec<f64>,
    /// By piece: its core minute by minute while it was on.
    pub core: Vec<Vec<f64>>,
    /// By piece: water lost from the surface by the pull, kg/m2.
    pub lost: Vec<f64>,
    /// Core temperatures read, in order of time.
    pub readings: Vec<Reading>,
    /// Pit temperatures read.
    pub pit: Vec<(f64, f64)>,
    /// Openings.
    pub openings: Vec<Opening>,
}

impl Record {
    /// Plays a cook through: once to see when pieces are done, and again with the readings that a
    /// cook makes ahead of that.
    pub fn play(setup: &Setup) -> Self {
        let rehearsed = Play::new(setup, ACROSS.0, Vec::new()).through();
        let mut plan: Vec<(f64, usize)> = Vec::new();
        for (piece, pull) in rehearsed.pull.iter().enumerate() {
            let Some(pull) = pull else { continue };
            let (two, one) = AHEAD;
            let ahead = if (piece as u64 + setup.seed).is_multiple_of(2) {
                two.to_vec()
            } else {
                vec![one]
            };
            plan.extend(ahead.iter().map(|ahead| (pull - ahead, piece)));
        }
        plan.retain(|(at, _)| *at >= SOONEST);
        plan.sort_by(|a, b| a.0.total_cmp(&b.0));
        Play::new(setup, ACROSS.1, plan).through()
    }
}

/// A cook under way.
struct Play<'a> {
    setup: &'a Setup,
    pit: Pit,
    pieces: Vec<Piece>,
    before: Vec<f64>,
    /// Readings to come.
    plan: Vec<(f64, usize)>,
    /// Openings to come that are for something else.
    others: Vec<f64>,
    luck: Chance,
    now: f64,
    record: Record,
}

impl<'a> Play<'a> {
    fn new(setup: &'a Setup, across: usize, plan: Vec<(f64, usize)>) -> Self {
        let count = setup.pieces.len();
        let mut luck = Chance::of(setup.seed, 2);
        let mut others: Vec<f64> = (0..luck.count(0, KINDS[setup.world].others.0))
            .map(|_| luck.range(300.0, 5400.0))
            .collect();
        others.sort_by(f64::total_cmp);
        Self {
            pit: Pit::new(setup.pit, Chance::of(setup.seed, 1)),
            pieces: setup.pieces.iter().map(|truth| Piece::new(*truth, across)).collect(),
            before: setup.pieces.iter().map(|truth| truth.start).collect(),
            plan,
            others,
            luck,
            now: 0.0,
            record: Record {
                pull: vec![None; count],
                peak: vec![f64::NAN; count],
                core: vec![Vec::new(); count],
                lost: vec![0.0; count],
                ..Record::default()
            },
            setup,
        }
    }

    fn through(mut self) -> Record {
        self.read_pit(0.0);
        self.pit.open(30.0 + 10.0 * self.pieces.len() as f64);
        let mut pit_next = self.luck.range(420.0, 900.0);
        while self.now < LONGEST && self.busy() {
            self.look();
            if self.now >= pit_next && self.setup.pit_read {
                self.read_pit(self.now);
                pit_next += self.luck.range(900.0, 1800.0);
            }
            self.step();
        }
        self.record
    }

    fn busy(&self) -> bool {
        let rests = |pull: &Option<f64>| pull.is_none_or(|pull| self.now < pull + RESTS);
        self.record.pull.iter().any(rests)
    }

    /// Opens the lid for what is due.
    fn look(&mut self) {
        let other = self.others.first().is_some_and(|at| *at <= self.now);
        if other {
            self.others.remove(0);
            let lasted = self.luck.range(20.0, 100.0);
            let told = self.luck.happens(KINDS[self.setup.world].others.1);
            self.open(lasted, told);
        }
        if self.plan.first().is_none_or(|(at, _)| *at > self.now) {
            return;
        }
        let due = self.plan.partition_point(|(at, _)| *at <= self.now + AT_ONCE);
        let mut due: Vec<usize> = self.plan.drain(..due).map(|(_, piece)| piece).collect();
        due.retain(|piece| self.record.pull[*piece].is_none());
        due.dedup();
        if due.is_empty() {
            return;
        }
        let told = self.luck.happens(0.5);
        self.open(25.0 + 12.0 * due.len() as f64, told);
        for piece in due {
            self.read(piece, false);
        }
    }

    fn open(&mut self, lasted: f64, told: bool) {
        self.pit.open(lasted);
        self.record.openings.push(Opening { at: self.now, lasted, told });
    }

    fn read(&mut self, piece: usize, at_pull: bool) {
        let pokes = self.luck.count(2, 4);
        let there = self.pieces[piece].poked(pokes, SCATTER, &mut self.luck);
        let shown = there + self.setup.instant_off + self.luck.normal(0.0, FLICKER);
        let celsius = whole_fahrenheit(shown);
        self.record.readings.push(Reading { piece, at: self.now, celsius, at_pull });
    }

    fn read_pit(&mut self, at: f64) {
        let shown = self.pit.dial() + self.setup.dial_shows + self.luck.normal(0.0, FLICKER);
        self.record.pit.push((at, whole_fahrenheit(shown)));
    }

    fn step(&mut self) {
        self.pit.advance(STEP);
        let (air, walls, vapour) = (self.pit.air(), self.pit.walls(), self.pit.vapour());
        let whole_minute = (self.now / 60.0).fract() == 0.0;
        for piece in 0..self.pieces.len() {
            let body = &mut self.pieces[piece];
            if let Some(pull) = self.record.pull[piece] {
                if self.now < pull + RESTS {
                    body.rest(STEP);
                    self.record.peak[piece] = self.record.peak[piece].max(body.core());
                }
                continue;
            }
            if whole_minute {
                self.record.core[piece].push(self.before[piece]);
            }
            body.cook(air, walls, vapour, STEP);
            let (had, has, at) = (self.before[piece], body.core(), self.setup.pull_at);
            self.before[piece] = has;
            if has >= at {
                self.record.pull[piece] = Some(self.now + STEP * (at - had) / (has - had));
                self.record.peak[piece] = has;
                self.record.lost[piece] = body.lost();
                self.take_off(piece);
            }
        }
        self.now += STEP;
    }

    /// A piece comes off, read once more; the lid is opened if it is not open.
    fn take_off(&mut self, piece: usize) {
        self.read(piece, true);
        let open = self.record.openings.last().is_some_and(|o| self.now <= o.at + o.lasted + 30.0);
        if !open {
            self.open(25.0, false);
        }
    }
}

/// Thermometers show whole degrees Fahrenheit.
fn whole_fahrenheit(celsius: f64) -> f64 {
    ((celsius / PER_F + 32.0).round() - 32.0) * PER_F
}
