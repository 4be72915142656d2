//! How a pit answers its lid: three laws.

/// The law by which the air comes back.
#[derive(Clone, Copy, Debug)]
pub enum Lid {
    /// Towards what it was, with this time constant, s.
    Fades(f64),
    /// By so many K/s, as a fire of fixed strength has it.
    Climbs(f64),
    /// A part, given here, at once within half a minute, the rest with a time constant, s: thick walls.
    Walls(f64, f64),
}

/// Time in which the air falls with the lid open, s.
const FALL: f64 = 20.0;
/// What comes at once comes within this, s.
const AT_ONCE: f64 = 30.0;

/// How far the air is below what it would be had the lid stayed shut.
#[derive(Clone, Copy, Debug, Default)]
pub struct Chill {
    quick: f64,
    slow: f64,
}

impl Chill {
    /// K.
    pub fn kelvin(&self) -> f64 {
        self.quick + self.slow
    }

    /// Lets the lid be open for `open` of a step, s, where `most` K would be lost were it open long.
    pub fn advance(&mut self, lid: &Lid, most: f64, open: f64, step: f64) {
        let lost = (most - self.kelvin()).max(0.0) * (1.0 - (-open / FALL).exp());
        let at_once = if let Lid::Walls(part, _) = lid { *part } else { 0.0 };
        self.quick += at_once * lost;
        self.slow += (1.0 - at_once) * lost;
        let shut = step - open;
        self.quick *= (-shut / AT_ONCE).exp();
        self.slow = match *lid {
            Lid::Fades(time) | Lid::Walls(_, time) => self.slow * (-shut / time).exp(),
            Lid::Climbs(rate) => (self.slow - rate * shut).max(0.0),
        };
    }
}
