//! How far each constant of the heat model moves a pull and the rise after it.

use cook_model::heat::{
    AreaMass, Body, Evaporation, HeatTransferCoefficient, Leg, LidResponse, PitKind, Start,
    Surface, Surroundings, Tuning, VapourPressure, resume, trace,
};
use cook_model::piece::{Piece, Shape};
use cook_model::quantity::{
    Length, Mass, Temperature, TemperatureDifference, minutes, seconds, to_minutes,
};

/// A usual piece (8 oz) in a pit, each number as the model has it times or plus something.
#[derive(Clone, Copy, Debug)]
pub struct Moved {
    /// Times.
    pub convection: f64,
    /// Times.
    pub emissivity: f64,
    /// Times.
    pub vapour: f64,
    /// Times.
    pub halves_after: f64,
    /// Times, under foil.
    pub foil: f64,
    /// Of the lid: times the recovery.
    pub recovery: f64,
    /// K more at the grate.
    pub offset: f64,
    /// K more at the start.
    pub start: f64,
    /// Times the thickness.
    pub thickness: f64,
}

/// As the model has them.
pub const AS_IT_IS: Moved = Moved {
    convection: 1.0,
    emissivity: 1.0,
    vapour: 1.0,
    halves_after: 1.0,
    foil: 1.0,
    recovery: 1.0,
    offset: 0.0,
    start: 0.0,
    thickness: 1.0,
};

/// Each constant moved by about what it is in doubt by.
pub const MOVES: [(&str, Moved); 9] = [
    ("convection 20 % more", Moved { convection: 1.2, ..AS_IT_IS }),
    ("emissivity 0.9 to 0.75", Moved { emissivity: 0.833, ..AS_IT_IS }),
    ("vapour pressure twice", Moved { vapour: 2.0, ..AS_IT_IS }),
    ("dries half as fast", Moved { halves_after: 2.0, ..AS_IT_IS }),
    ("foil 25 % more", Moved { foil: 1.25, ..AS_IT_IS }),
    ("the lid's air back in twice the time", Moved { recovery: 2.0, ..AS_IT_IS }),
    ("grate 5 K hotter", Moved { offset: 5.0, ..AS_IT_IS }),
    ("start 4 K warmer", Moved { start: 4.0, ..AS_IT_IS }),
    ("5 % thicker", Moved { thickness: 1.05, ..AS_IT_IS }),
];

/// Minutes to 160 F in a pit set to so many F with the lid opened every quarter of an hour, and the
/// rise after that, F; none if it does not get there.
pub fn pull_and_rise(moved: &Moved, set: f64) -> Option<(f64, f64)> {
    let usual = Surface::pit(PitKind::Indirect);
    let h = |h: HeatTransferCoefficient, times: f64| {
        HeatTransferCoefficient::from_w_per_m2k(h.w_per_m2k() * times)
    };
    let evaporation = usual.evaporation.map(|evaporation| Evaporation {
        vapour: VapourPressure::from_kpa(evaporation.vapour.kpa() * moved.vapour),
        halves_after: AreaMass::from_kg_per_m2(
            evaporation.halves_after.kg_per_m2() * moved.halves_after,
        ),
    });
    let surface = Surface {
        convection: h(usual.convection, moved.convection),
        emissivity: usual.emissivity * moved.emissivity,
        evaporation,
    };
    let lid = LidResponse::default();
    let lid = LidResponse { recovery: seconds(180.0 * moved.recovery), ..lid };
    let mut pit = Leg::pit(surface, &[], Temperature::from_f(set));
    for check in 0..10 {
        pit = pit.lid_open(minutes(15.0 * f64::from(check)), seconds(45.0), &lid);
    }
    let piece = Piece {
        weight: Mass::from_g(227.0),
        thickest: Some(Length::from_mm(33.0 * moved.thickness)),
        shape: Shape::Natural,
        start: Temperature::from_f(40.0),
        icy: false,
    };
    let body = Body::of_piece(&piece);
    let start = Start::cooked(piece.start + TemperatureDifference::from_c(moved.start));
    let offset = TemperatureDifference::from_c(moved.offset);
    let tuning = Tuning { offset, ..Tuning::default() };
    let on = trace(&body, start, &Surroundings::new(pit), minutes(300.0), &tuning);
    let at = Temperature::from_f(160.0);
    let pull = on.core_reaches(at)?;
    let foil = Surface::under_foil();
    let foil = Surface { convection: h(foil.convection, moved.foil), ..foil };
    let foil = Surroundings::new(Leg::steady(foil, Temperature::from_f(70.0)));
    let rest = resume(&body, &on.state(pull).at(seconds(0.0)), &foil, minutes(40.0), &tuning);
    Some((to_minutes(pull), (rest.core_peak(seconds(0.0)).1 - at).f()))
}
