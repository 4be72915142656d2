//! Cooks for the facts of the trade, all from the model's own defaults.

use cook_model::heat::{
    Body, Leg, PitKind, Start, Surface, Surroundings, Trace, Tuning, resume, trace,
};
use cook_model::piece::{Piece, Shape};
use cook_model::quantity::{Length, Mass, Span, Temperature, minutes, to_minutes};

/// Weight, g, and thickness, mm: a thin breast, and three of usual thickness.
pub const THIN: (f64, f64) = (150.0, 25.0);
/// See [`THIN`].
pub const USUAL: [(f64, f64); 3] = [(230.0, 32.0), (320.0, 38.0), (420.0, 45.0)];

/// When they come off.
pub const PULL: Temperature = Temperature::from_f(160.0);

/// A cook with its rest.
pub struct Cook {
    /// The breast.
    pub body: Body,
    /// On the pit, as if it stayed there.
    pub on: Trace,
    /// When it comes off.
    pub pull: Span,
    /// From then on.
    pub rest: Trace,
}

/// Cooked at 250 F indirect from the refrigerator to 160 F, then under loose foil.
///
/// # Panics
/// If it does not get there within two and a half hours: no usual breast does that.
pub fn cook(size: (f64, f64)) -> Cook {
    cook_in(PitKind::Indirect, size)
}

/// The same in a pit of any kind.
///
/// # Panics
/// As [`cook`] does.
pub fn cook_in(kind: PitKind, (g, mm): (f64, f64)) -> Cook {
    let piece = breast(Mass::from_g(g), Some(Length::from_mm(mm)));
    let body = Body::of_piece(&piece);
    let around = pit(kind, 250.0);
    let start = Start::cooked(piece.start);
    let on = trace(&body, start, &around, minutes(150.0), &Tuning::default());
    let pull = on.core_reaches(PULL).expect("a breast is done in time");
    let foil = Leg::steady(Surface::under_foil(), Temperature::from_f(68.0));
    let around = around.then(pull, foil);
    let rest = resume(&body, &on.state(pull), &around, pull + minutes(120.0), &Tuning::default());
    Cook { body, on, pull, rest }
}

/// Minutes until a breast of so many ounces, of a usual thickness, is at a temperature in a pit of a kind set
/// to so many degrees F.
///
/// # Panics
/// If it does not get there within three hours.
pub fn minutes_to(temperature: Temperature, oz: f64, kind: PitKind, set_f: f64) -> f64 {
    let piece = breast(Mass::from_ounces(oz), None);
    let (body, start) = (Body::of_piece(&piece), Start::cooked(piece.start));
    let on = trace(&body, start, &pit(kind, set_f), minutes(180.0), &Tuning::default());
    to_minutes(on.core_reaches(temperature).expect("a breast is done in time"))
}

/// A breast from the refrigerator.
pub fn breast(weight: Mass, thickest: Option<Length>) -> Piece {
    let start = Temperature::from_f(38.0);
    Piece { weight, thickest, shape: Shape::Natural, start, icy: false }
}

fn pit(kind: PitKind, set_f: f64) -> Surroundings {
    Surroundings::new(Leg::pit(Surface::pit(kind), &[], Temperature::from_f(set_f)))
}

impl Cook {
    /// Rise of the core ten minutes after the pull, F.
    pub fn risen_in_ten_minutes(&self) -> f64 {
        (self.rest.core(self.pull + minutes(10.0)) - PULL).f()
    }

    /// Rise of the core after the pull, F, and minutes until its peak.
    pub fn carryover(&self) -> (f64, f64) {
        let (when, peak) = self.rest.core_peak(self.pull);
        ((peak - PULL).f(), to_minutes(when - self.pull))
    }

    /// Minutes the last 20 F take.
    pub fn last_twenty(&self) -> f64 {
        let at_140 = self.on.core_reaches(Temperature::from_f(140.0));
        at_140.map_or(f64::NAN, |at| to_minutes(self.pull - at))
    }
}
