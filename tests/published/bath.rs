//! Water-bath tables: what the model gives under the author's stated assumptions.
//!
//! Source: Baldwin, A Practical Guide to Sous Vide Cooking, poultry pasteurisation table (number
//! 4.1 from memory), 57-65 C as two agreeing copies have it, the column of 55 C from an e-mail of
//! the author; heating table 2.2 from memory, marked so in the file.

use cook_model::heat::{
    Body, Conductivity, Diffusivity, HeatTransferCoefficient, Leg, Medium, Start, Surface,
    Surroundings, Trace, Tuning, trace,
};
use cook_model::quantity::{Length, Span, Temperature, minutes};

/// The author's assumptions (from memory): diffusivity, m2/s; heat transfer, W/m2K; shape exponent
/// 1 up to 30 mm and 1.28 above; a sixfold decimal reduction of Listeria, D at 60 C in minutes.
const ALPHA: f64 = 1.08e-7;
const H: f64 = 95.0;
const THICK_MM: f64 = 30.0;
const THICK_EXPONENT: f64 = 1.28;
const DECADES: f64 = 6.0;
const D_60: f64 = 5.94;
/// Not stated by the author, and chosen to fit: conductivity, W/mK, and z, K.
const K: f64 = 0.42;
const Z: f64 = 5.4;

/// For the heating table, which is for slabs only; from memory.
const HEATING_ALPHA: f64 = 1.4e-7;
const HEATING_K: f64 = 0.48;

fn c(celsius: f64) -> Temperature {
    Temperature::from_c(celsius)
}

fn in_bath(body: &Body, bath: f64, until: Span) -> Trace {
    let surface = Surface::convective(HeatTransferCoefficient::from_w_per_m2k(H));
    let around = Surroundings::new(Leg::steady(surface, c(bath)));
    trace(body, Start::cooked(c(5.0)), &around, until, &Tuning::default())
}

fn medium(alpha: f64, k: f64) -> Medium {
    Medium::of_diffusivity(Conductivity::from_w_per_mk(k), Diffusivity::from_m2_per_s(alpha))
}

/// Half the step the author rounds a time to: 5 minutes under an hour, 15 above.
pub fn rounding(minutes: f64) -> f64 {
    if minutes < 60.0 { 2.5 } else { 7.5 }
}

/// Minutes until a piece of a thickness, mm, is pasteurised in a bath, C.
pub fn pasteurised_after(mm: f64, bath: f64) -> f64 {
    let exponent = if mm <= THICK_MM { 1.0 } else { THICK_EXPONENT };
    let body = Body::of_exponent(Length::from_mm(mm), exponent, medium(ALPHA, K));
    let trace = in_bath(&body, bath, minutes(1000.0));
    let step = 0.1;
    let (mut at, mut reduced) = (0.0, 0.0);
    while reduced < DECADES {
        let core = trace.core(minutes(at + 0.5 * step)).c();
        reduced += step / D_60 * 10f64.powf((core - 60.0) / Z);
        at += step;
    }
    at
}

/// A slab of a thickness, mm, heated from 5 C in a bath of 60 C.
pub fn heated_slab(mm: f64) -> Trace {
    let body = Body::slab(Length::from_mm(mm), medium(HEATING_ALPHA, HEATING_K));
    in_bath(&body, 60.0, minutes(600.0))
}

/// The pasteurisation table: thickness, mm; bath, C; minutes printed.
pub fn pasteurisation_table() -> impl Iterator<Item = [f64; 3]> {
    let rows = include_str!("tables/bath_pasteurisation.csv").lines().skip(1);
    rows.map(|row| {
        let mut cells = row.split(',').map(|cell| cell.parse().unwrap_or(f64::NAN));
        [(); 3].map(|()| cells.next().unwrap_or(f64::NAN))
    })
}

/// The slabs of the heating table that can be right: thickness, mm; minutes remembered.
///
/// Cylinders and spheres are 10-50 % above what any series gives: not remembered well. At 5 mm the
/// remembered 5 minutes is less than the film alone takes (8).
pub fn heating_table() -> impl Iterator<Item = [f64; 2]> {
    let rows = include_str!("tables/bath_heating.csv").lines().skip(1);
    let slabs = rows.filter(|row| row.contains(",slab,") && !row.starts_with("5,"));
    slabs.map(|row| {
        let cells: Vec<&str> = row.split(',').collect();
        [cells[0], cells[2]].map(|cell| cell.parse().unwrap_or(f64::NAN))
    })
}
