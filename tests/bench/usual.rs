//! The trace that is timed.

use cook_model::heat::{
    Body, Leg, PitKind, Start, State, Surface, Surroundings, Trace, Tuning, resume,
};
use cook_model::piece::{Piece, Shape};
use cook_model::quantity::{Length, Mass, Span, Temperature};

/// A usual breast from the refrigerator, an hour and a half at 250 F indirect, then half an hour
/// under loose foil.
pub struct Usual {
    /// The breast.
    pub body: Body,
    /// As it is taken from the refrigerator.
    pub start: Start,
    /// The pit.
    pub pit: Leg,
    /// The foil.
    pub foil: Leg,
    around: Surroundings,
}

impl Usual {
    /// When the breast comes off.
    pub const OFF: Span = Span::minutes(90);
    /// When it has rested.
    pub const END: Span = Span::minutes(120);

    /// The usual breast.
    pub fn new() -> Self {
        Self::of(Mass::from_g(320.0), Length::from_mm(38.0))
    }

    /// A breast of another size.
    pub fn of(weight: Mass, thickness: Length) -> Self {
        let start = Temperature::from_f(38.0);
        let piece =
            Piece { weight, thickest: Some(thickness), shape: Shape::Natural, start, icy: false };
        let pit = Leg::pit(Surface::pit(PitKind::Indirect), &[], Temperature::from_f(250.0));
        let foil = Leg::steady(Surface::under_foil(), Temperature::from_f(68.0));
        Self {
            body: Body::of_piece(&piece),
            start: Start::even(start).unwrap_or(Start::cooked(start)),
            around: Surroundings::new(pit.clone()).then(Self::OFF, foil.clone()),
            pit,
            foil,
        }
    }

    /// Follows it.
    pub fn trace(&self) -> Trace {
        self.trace_of(&self.body)
    }

    /// Follows a body of the same make on other cells and steps.
    pub fn trace_of(&self, body: &Body) -> Trace {
        let state = State::begin(body, self.start);
        resume(body, &state, &self.around, Self::END, &Tuning::default())
    }
}

impl Default for Usual {
    fn default() -> Self {
        Self::new()
    }
}
