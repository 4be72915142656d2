//! What came of one cook by the advice.

/// What came of one cook.
#[derive(Clone, Debug, Default)]
pub struct Outcome {
    /// Pieces in the cook.
    pub pieces: usize,
    /// Lid openings after loading until the last piece was off.
    pub openings: usize,
    /// When the last piece came off, s since they went on.
    pub last_off: f64,
    /// Pieces that their readings proved by 165 F, then or while they rested; looked at only where
    /// the pull temperature is that high.
    pub proved: usize,
    /// When the last of these was proved, s since they went on.
    pub last_proved: f64,
    /// Pieces never pulled.
    pub left: usize,
    /// How often the pit was raised for dinner's sake.
    pub raised: usize,
    /// True core of each piece as it was pulled, less its pull temperature, C.
    pub above_pull: Vec<f64>,
    /// Pieces whose true core was above 165 F when pulled.
    pub over: usize,
    /// Pieces pulled although neither their last instant-read nor the leave-in after it showed the pull
    /// temperature.
    pub under: usize,
    /// Forecast peak, made at the pull, less the true one, C.
    pub peak_errors: Vec<f64>,
    /// The same for the trade's rule: what was read at the pull and 5 F.
    pub rule_peak_errors: Vec<f64>,
}
