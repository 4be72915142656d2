//! How far each constant of the heat model, and each doubt of the forecast, moves a pull and the rise after
//! it: a table for `results/sensitivities.md`.

use std::fmt::Write as _;

use cook_model::heat::{
    AreaMass, Body, Evaporation, HeatTransferCoefficient, Leg, PitKind, Start, Surface,
    Surroundings, Tuning, VapourPressure, resume, trace,
};
use cook_model::piece::Piece;
use cook_model::quantity::{Length, Mass, Temperature, TemperatureDifference, minutes, to_minutes};
use published::trade::{PULL, USUAL, breast};

const PREFACE: &str = "# How far each constant moves a pull

Made with `cargo run -p published --release --example plots`. Breasts of 32, 38 and 45 mm from the refrigerator \
at 250 F over wood or charcoal to 160 F, then ten minutes under loose foil: minutes until the pull and F of rise \
by the defaults, and what is added to them where one constant is changed and all others are as they are. The \
last three rows change it by the standard deviation that the forecast gives it before any reading \
(`src/cook-model/forecast/model.md`).

| changed | 32 mm: pull, min | rise, F | 38 mm: pull, min | rise, F | 45 mm: pull, min | rise, F |
| --- | --- | --- | --- | --- | --- | --- |
";

/// All that a cook of one piece follows from.
#[derive(Clone)]
struct Setup {
    piece: Piece,
    pit: Surface,
    foil: Surface,
    tuning: Tuning,
}

type Change = fn(&mut Setup);

const CHANGES: [(&str, Change); 15] = [
    ("coefficient of the air + 2 W/m2K", |s| s.pit.convection = more(s.pit.convection, 2.0)),
    ("the same - 2 W/m2K", |s| s.pit.convection = more(s.pit.convection, -2.0)),
    ("emissivity - 0.1", |s| s.pit.emissivity -= 0.1),
    ("vapour + 3 kPa", |s| evaporation(s, |e| e.vapour = kpa(e.vapour.kpa() + 3.0))),
    ("vapour - 3 kPa", |s| evaporation(s, |e| e.vapour = kpa(e.vapour.kpa() - 3.0))),
    ("dries after + 0.02 kg/m2", |s| evaporation(s, |e| e.halves_after = kg(e, 0.02))),
    ("dries after - 0.02 kg/m2", |s| evaporation(s, |e| e.halves_after = kg(e, -0.02))),
    ("under foil + 3 W/m2K", |s| s.foil.convection = more(s.foil.convection, 3.0)),
    ("under foil - 3 W/m2K", |s| s.foil.convection = more(s.foil.convection, -3.0)),
    ("start + 5 F", |s| s.piece.start += TemperatureDifference::from_f(5.0)),
    ("weight + 10 %, as thick", |s| s.piece.weight = Mass::from_g(1.1 * s.piece.weight.g())),
    ("thickness + 2 mm", |s| s.piece.thickest = s.piece.thickest.map(thicker)),
    ("speed + 9 % (all pieces)", |s| s.tuning.speed *= 1.09),
    ("offset of the air + 5 K (all pieces)", |s| s.tuning.offset = kelvin(5.0)),
    ("offset of the air + 2.2 K (one piece)", |s| s.tuning.offset = kelvin(2.2)),
];

/// The page.
pub fn page() -> String {
    let usual = USUAL.map(|(g, mm)| Setup::usual(g, mm));
    let by_default = usual.clone().map(|setup| setup.pull_and_rise());
    let mut page = String::from(PREFACE);
    row(&mut page, "nothing", &by_default, false);
    for (name, change) in CHANGES {
        let mut changed = usual.clone();
        changed.iter_mut().for_each(change);
        let found = changed.map(|setup| setup.pull_and_rise());
        let moved: Vec<(f64, f64)> = found
            .iter()
            .zip(&by_default)
            .map(|(now, was)| (now.0 - was.0, now.1 - was.1))
            .collect();
        row(&mut page, name, &moved, true);
    }
    page
}

fn row(page: &mut String, name: &str, figures: &[(f64, f64)], signed: bool) {
    let _ = write!(page, "| {name} |");
    for (minutes, fahrenheit) in figures {
        let _ = if signed {
            write!(page, " {minutes:+.1} | {fahrenheit:+.1} |")
        } else {
            write!(page, " {minutes:.1} | {fahrenheit:.1} |")
        };
    }
    page.push('\n');
}

impl Setup {
    fn usual(g: f64, mm: f64) -> Self {
        let piece = breast(Mass::from_g(g), Some(Length::from_mm(mm)));
        let (pit, foil) = (Surface::pit(PitKind::Indirect), Surface::under_foil());
        Self { piece, pit, foil, tuning: Tuning::default() }
    }

    /// Minutes until the pull, and F of rise in the ten minutes after it.
    fn pull_and_rise(&self) -> (f64, f64) {
        let body = Body::of_piece(&self.piece);
        let pit = Leg::pit(self.pit, &[], Temperature::from_f(250.0));
        let around = Surroundings::new(pit);
        let start = Start::cooked(self.piece.start);
        let on = trace(&body, start, &around, minutes(240.0), &self.tuning);
        let Some(pull) = on.core_reaches(PULL) else { return (f64::NAN, f64::NAN) };
        let around = around.then(pull, Leg::steady(self.foil, Temperature::from_f(68.0)));
        let later = pull + minutes(10.0);
        let rest = resume(&body, &on.state(pull), &around, later, &self.tuning);
        (to_minutes(pull), (rest.core(later) - PULL).f())
    }
}

fn evaporation(setup: &mut Setup, change: fn(&mut Evaporation)) {
    setup.pit.evaporation.iter_mut().for_each(change);
}

fn more(h: HeatTransferCoefficient, by: f64) -> HeatTransferCoefficient {
    HeatTransferCoefficient::from_w_per_m2k(h.w_per_m2k() + by)
}

fn kpa(kpa: f64) -> VapourPressure {
    VapourPressure::from_kpa(kpa)
}

fn kg(evaporation: &Evaporation, more: f64) -> AreaMass {
    AreaMass::from_kg_per_m2(evaporation.halves_after.kg_per_m2() + more)
}

fn thicker(thickest: Length) -> Length {
    Length::from_mm(thickest.mm() + 2.0)
}

fn kelvin(by: f64) -> TemperatureDifference {
    TemperatureDifference::from_c(by)
}
