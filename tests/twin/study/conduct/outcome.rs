//! What came of one cook.

use cook_model::quantity::Temperature;
use serde::{Deserialize, Serialize};

/// The first rest of a piece, until it is warmed again on purpose. Temperatures in C.
#[derive(Clone, Copy, Debug, Default, Serialize, Deserialize)]
pub enum FirstRest {
    /// It is still to come.
    #[default]
    Before,
    /// The hottest that the coldest spot has been in it so far.
    During(f64),
    /// The peak, if that had come when it was warmed again.
    Over(Option<f64>),
}

impl FirstRest {
    /// It came off.
    pub(super) fn begins(&mut self, core: f64) {
        if matches!(self, Self::Before) {
            *self = Self::During(core);
        }
    }

    /// Its coldest spot is so hot now.
    fn goes_on(&mut self, core: f64) {
        if let Self::During(hottest) = self {
            *hottest = hottest.max(core);
        }
    }

    /// It is put back, or where it stays hot: what it rises to from now on is no peak of its rest.
    pub(super) fn ends(&mut self, core: f64) {
        if let Self::During(hottest) = *self {
            *self = Self::Over((core < hottest).then_some(hottest));
        }
    }

    /// How hot it got, if nothing cut that short.
    pub fn peak(self) -> Option<f64> {
        match self {
            Self::Before => None,
            Self::During(peak) => Some(peak),
            Self::Over(peak) => peak,
        }
    }
}

/// What came of one piece. Temperatures in C.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct OfPiece {
    /// True core at each pull.
    pub pulled: Vec<f64>,
    /// What the app had as its pull temperature at the first pull.
    pub pull_at: Option<f64>,
    /// How often it was put back.
    pub put_back: usize,
    /// Readings typed while it rested.
    pub proof_readings: usize,
    /// Readings typed while it was on the pit.
    pub checks: usize,
    /// Readings typed as its own that were another piece's, or another figure than was shown.
    pub slips: usize,
    /// When it was first called proved, s.
    pub proved: Option<f64>,
    /// When it last came off, s.
    pub off: Option<f64>,
    /// The hottest that its coldest spot has been.
    pub hottest: f64,
    /// Its first rest.
    pub rest: FirstRest,
    /// Forecast peak of that, made at the pull.
    pub peak_told: Option<f64>,
    /// What the forecast had as its core at the pull.
    pub core_told: Option<f64>,
    /// Whether it was thrown away.
    pub discarded: bool,
    /// When it was served or bagged, s.
    pub done: Option<f64>,
}

/// Called proved though it never got so hot is false: two degrees below what proves at once.
const HOT_ENOUGH: Temperature = Temperature::from_f(163.0);

impl OfPiece {
    /// Whether it was called proved though its coldest spot never was hot enough.
    pub fn is_falsely_proved(&self) -> bool {
        self.proved.is_some() && Temperature::from_c(self.hottest) < HOT_ENOUGH
    }

    /// How far it rose in its first rest, and how far it was told to; K.
    pub fn rises(&self) -> Option<[f64; 2]> {
        let true_rise = self.rest.peak()? - self.pulled.first()?;
        Some([true_rise, self.peak_told? - self.core_told?])
    }

    /// Whether it is off the pit again.
    pub(super) fn is_off(&self) -> bool {
        self.pulled.len() > self.put_back
    }

    /// Its coldest spot is so hot now.
    pub(super) fn is_at(&mut self, core: f64) {
        self.hottest = self.hottest.max(core);
        self.rest.goes_on(core);
    }
}

/// What came of one cook.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Outcome {
    /// Seed.
    pub seed: u64,
    /// Each piece.
    pub pieces: Vec<OfPiece>,
    /// Lid openings after the last piece was put on raw until the last was off.
    pub openings: usize,
    /// When each alarm rang, s.
    pub rings: Vec<f64>,
    /// Instant-reads typed as they were shown, of the piece that was meant.
    pub honest: usize,
    /// How many of these the person was asked about.
    pub needless_questions: usize,
    /// Taps from the first put-on on.
    pub taps: usize,
    /// Times the person came for a bell and found nothing due.
    pub in_vain: usize,
    /// Bells whose duty was not among what was due as they rang.
    pub off_card: usize,
    /// Duties that were due and went away without a new entry: not at the end that they told.
    pub vanished: usize,
    /// Duties that were due and ran out, at the end that they told, unfulfilled.
    pub ran_out: usize,
    /// Times that the first duty, done, did not change the list: the person gave up on it.
    pub stuck: usize,
    /// The chance of being in time that the plan told.
    pub told_in_time: Option<f64>,
    /// How long before dinner everything for tonight was proved, rested and could be carved, s;
    /// negative where later; none too where something for tonight never was, and the outcome was kept.
    pub early: Option<f64>,
    /// Whether the fire died.
    pub fire_died: bool,
    /// Whether dinner was moved.
    pub dinner_moved: bool,
    /// What was done, for a closer look; not kept.
    #[serde(skip)]
    pub story: Vec<String>,
}

impl Outcome {
    /// Keeps a line of the story.
    pub(super) fn tell(&mut self, at: f64, line: impl Fn() -> String) {
        self.story.push(format!("{:7.1} min  {}", at / 60.0, line()));
    }

    /// Alarms in the worst ten minutes.
    pub fn worst_ten_minutes(&self) -> usize {
        let within = |from: &f64| {
            let window = *from..from + 600.0;
            self.rings.iter().filter(|at| window.contains(*at)).count()
        };
        self.rings.iter().map(within).max().unwrap_or(0)
    }

    /// Whether every piece was served or bagged.
    pub fn is_finished(&self) -> bool {
        self.pieces.iter().all(|piece| piece.done.is_some())
    }
}
