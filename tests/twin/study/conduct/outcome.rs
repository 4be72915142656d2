//! What came of one cook.

/// What came of one piece. Temperatures in C.
#[derive(Clone, Debug, Default)]
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
    /// When it was first called proved, s.
    pub proved: Option<f64>,
    /// When it last came off, s.
    pub off: Option<f64>,
    /// The hottest that its coldest spot has been.
    pub hottest: f64,
    /// Forecast peak, made at the pull.
    pub peak_told: Option<f64>,
    /// Whether it was thrown away.
    pub discarded: bool,
    /// When it was served or bagged, s.
    pub done: Option<f64>,
}

/// What came of one cook.
#[derive(Clone, Debug, Default)]
pub struct Outcome {
    /// Seed.
    pub seed: u64,
    /// Each piece.
    pub pieces: Vec<OfPiece>,
    /// Lid openings after the last piece was put on raw until the last was off.
    pub openings: usize,
    /// When each alarm rang, s.
    pub rings: Vec<f64>,
    /// Taps from the first put-on on.
    pub taps: usize,
    /// Times the person came for a bell and found nothing due.
    pub in_vain: usize,
    /// Duties that were due and went away without a new entry: not at the end that they told.
    pub vanished: usize,
    /// Duties that were due and ran out, at the end that they told, unfulfilled.
    pub ran_out: usize,
    /// Times that the first duty, done, did not change the list: the person gave up on it.
    pub stuck: usize,
    /// The chance of being in time that the plan told.
    pub told_in_time: Option<f64>,
    /// How long before dinner everything for tonight was proved, rested and could be carved, s;
    /// negative where later.
    pub early: Option<f64>,
    /// Whether the fire died.
    pub fire_died: bool,
    /// Whether dinner was moved.
    pub dinner_moved: bool,
    /// What was done, for a closer look.
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
