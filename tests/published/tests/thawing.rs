//! Thawing and freezing against Plank's equation, Pham's improvement of it, and published figures.

use cook_model::heat::{Composition, Conductivity, Density, HeatCapacity, HeatTransferCoefficient};
use cook_model::kitchen::thaw::{Bath, FreezingMeat, Frozen, HeatByMass, Layer, Unfrozen};
use cook_model::quantity::{Length, Span, Temperature, to_seconds};

const LONG: Span = Span::hours(200);

fn c(celsius: f64) -> Temperature {
    Temperature::from_c(celsius)
}

/// A meat as Plank takes it: all ice at one temperature, next to no heat but the latent one.
fn plank_meat(density: f64, latent_kj: f64, conductivity: f64) -> FreezingMeat {
    let conductivity = Conductivity::from_w_per_mk(conductivity);
    let capacity = HeatCapacity::from_j_per_kgk(100.0);
    FreezingMeat::new(
        Density::from_kg_per_m3(density),
        c(-0.002),
        HeatByMass::from_kj_per_kg(latent_kj),
        Unfrozen {
            capacity,
            conductivity,
            conductivity_per_degree: Conductivity::from_w_per_mk(0.0),
        },
        Frozen { capacity, conductivity },
    )
}

fn bath(celsius: f64, h: f64) -> Bath {
    Bath { temperature: c(celsius), transfer: HeatTransferCoefficient::from_w_per_m2k(h) }
}

/// Plank 1913: `t = density latent / (Ta - Tf) (P D / h + R D^2 / k)`, P and R 1/2 and 1/8 for a
/// slab, 1/6 and 1/24 for a sphere (Encyclopaedia of Food Science, Food Technology and Nutrition,
/// "Freezing"; Singh & Heldman, Introduction to Food Engineering).
fn plank(p: f64, r: f64, [density, latent_kj, k, h, across, fall]: [f64; 6]) -> f64 {
    density * latent_kj * 1e3 / fall * (p * across / h + r * across * across / k)
}

#[test]
fn a_handbook_sphere_freezes_as_plank_says() {
    // Singh & Heldman, a worked example: sphere of 7 cm, 1000 kg/m3, 250 kJ/kg, frozen k 1.2
    // W/mK, h 50 W/m2K, freezing at -1.25 C in air of -40 C. Solutions in circulation give
    // 2603 s (0.72 h), and 3732 s (1.037 h) when 3 mm of plastic of 0.2 W/mK is wrapped round it.
    let film = 1.0 / (1.0 / 50.0 + 0.003 / 0.2);
    for (h, published) in [(50.0, 2603.0), (film, 3732.06)] {
        let formula = plank(1.0 / 6.0, 1.0 / 24.0, [1000.0, 250.0, 1.2, h, 0.07, 38.75]);
        assert!((formula / published - 1.0).abs() < 0.001, "the example itself: {formula}");
        let sphere = Layer::sphere(Length::from_mm(70.0), plank_meat(1000.0, 250.0, 1.2));
        // Nothing but latent heat counts: done once the middle is well below its freezing point.
        let frozen = sphere.reaches(c(0.0), &bath(-38.752, h), c(-2.0), LONG).unwrap();
        let ratio = to_seconds(frozen) / published;
        assert!((ratio - 1.0).abs() < 0.03, "{ratio} of the published time");
    }
}

#[test]
fn slabs_thaw_as_plank_says() {
    // Plank's equation for a thawing slab, k that of thawed meat; bags as a cook has them.
    for [mm, h, water] in [[20.0, 95.0, 10.0], [30.0, 95.0, 60.0], [40.0, 25.0, 20.0]] {
        let formula = plank(0.5, 0.125, [1060.0, 220.0, 0.48, h, mm / 1e3, water]);
        let slab = Layer::slab(Length::from_mm(mm), plank_meat(1060.0, 220.0, 0.48));
        let thawed = slab.reaches(c(-0.5), &bath(water, h), c(0.2), LONG).unwrap();
        let ratio = to_seconds(thawed) / formula;
        assert!((ratio - 1.0).abs() < 0.03, "{mm} mm: {ratio} of Plank's time");
    }
}

/// The food analogue in which freezing and thawing were measured most, a gel of 77 % water:
/// properties as used with those measurements (from memory). Frozen first, thawed second.
const GEL_DENSITY: f64 = 1000.0;
const GEL_CAPACITY: [f64; 2] = [1900.0, 3710.0];
const GEL_K: [f64; 2] = [1.65, 0.49];
const GEL_LATENT: f64 = 209e3;
const GEL_FREEZING: f64 = -0.6;

fn gel() -> FreezingMeat {
    let [frozen, thawed] = GEL_CAPACITY.map(HeatCapacity::from_j_per_kgk);
    let [ice, wet] = GEL_K.map(Conductivity::from_w_per_mk);
    let unfrozen = Unfrozen {
        capacity: thawed,
        conductivity: wet,
        conductivity_per_degree: Conductivity::from_w_per_mk(0.0),
    };
    FreezingMeat::new(
        Density::from_kg_per_m3(GEL_DENSITY),
        c(GEL_FREEZING),
        HeatByMass::from_kj_per_kg(GEL_LATENT / 1e3),
        unfrozen,
        Frozen { capacity: frozen, conductivity: ice },
    )
}

/// Mean final temperature when the middle is at `centre` (Pham 1984).
fn final_mean(centre: f64, ambient: f64, biot: f64) -> f64 {
    centre - (centre - ambient) / (2.0 + 4.0 / biot)
}

fn log_mean(from: f64, to: f64, ambient: f64) -> f64 {
    (from - to).abs() / ((from - ambient) / (to - ambient)).ln().abs()
}

/// Freezing time of a slab of the gel. Pham 1984, "Extension to Planck's equation for predicting
/// freezing times of foodstuffs of simple shapes", Int. J. Refrigeration 7:377-383, with table 2 of
/// its erratum: `t = Q / (h A dT) (1 + Bi / K)` for cooling, freezing and subcooling, K 6, 4, 6,
/// `Bi = h D / k`.
fn pham(h: f64, across: f64, start: f64, ambient: f64, centre: f64) -> f64 {
    let [frozen, thawed] = GEL_K.map(|k| h * across / k);
    let end = final_mean(centre, ambient, frozen);
    let phases = [
        (
            GEL_CAPACITY[1] * (start - GEL_FREEZING),
            log_mean(start, GEL_FREEZING, ambient),
            (frozen + thawed) / 2.0 / 6.0,
        ),
        (GEL_LATENT, GEL_FREEZING - ambient, frozen / 4.0),
        (
            GEL_CAPACITY[0] * (GEL_FREEZING - end),
            log_mean(GEL_FREEZING, end, ambient),
            frozen / 6.0,
        ),
    ];
    let volume_over_area = across / 2.0;
    let time = |(heat, drive, biot): (f64, f64, f64)| {
        GEL_DENSITY * heat * volume_over_area / (h * drive) * (1.0 + biot)
    };
    phases.into_iter().map(time).sum()
}

/// Thawing time of a slab of the gel, to 0 C at the middle. Cleland, Cleland, Earle & Byrne 1987,
/// "Prediction of thawing times for foods of simple shape", Int. J. Refrigeration 10:32-39: the
/// one of their four improvements of Plank's equation that raises his terms to a power
/// (coefficients from memory). The heat is that from -10 to 0 C.
fn cleland(h: f64, across: f64, start: f64, ambient: f64) -> f64 {
    let ice = GEL_CAPACITY[0] * (10.0 + GEL_FREEZING);
    let heat = ice + GEL_LATENT - GEL_CAPACITY[1] * GEL_FREEZING;
    let biot = h * across / GEL_K[1];
    let stefan = GEL_CAPACITY[1] * (ambient - GEL_FREEZING) / heat;
    let plank = GEL_CAPACITY[0] * (GEL_FREEZING - start) / heat;
    let fourier = 1.4291
        * (0.5 / (biot * stefan) + 0.125 / stefan).powf(1.0248)
        * stefan.powf(0.2712)
        * plank.powf(0.061);
    fourier * across * across * GEL_DENSITY * GEL_CAPACITY[1] / GEL_K[1]
}

#[test]
fn phams_own_numbers_come_out() {
    // The erratum's worked figures: 31.7 and 12.1 K, and -13.7 C (at the Biot number it implies).
    assert!((log_mean(28.5, -2.1, -20.9) - 31.7).abs() < 0.05);
    assert!((log_mean(-2.1, -13.7, -20.9) - 12.1).abs() < 0.05);
    assert!((final_mean(-10.0, -20.9, 4.23) + 13.7).abs() < 0.05);
}

#[test]
fn a_gel_freezes_as_pham_says() {
    // His claim: within 10 % of measurements on slabs of the gel.
    for [mm, h, air] in
        [[26.0, 50.0, -30.0], [52.0, 50.0, -25.0], [77.0, 20.0, -35.0], [100.0, 100.0, -30.0]]
    {
        let slab = Layer::slab(Length::from_mm(mm), gel());
        let model = slab.reaches(c(15.0), &bath(air, h), c(-10.0), LONG).unwrap();
        let ratio = to_seconds(model) / pham(h, mm / 1e3, 15.0, air, -10.0);
        println!("{mm} mm in {air} C: {ratio:.3} of Pham's time");
        assert!((ratio - 1.0).abs() < 0.10, "{mm} mm in {air} C: {ratio} of Pham's time");
    }
}

#[test]
fn a_gel_thaws_as_cleland_says() {
    // Their claim: within 10 % of 104 measurements at the 95 % level; a little is added for the
    // gel's properties, which are from memory.
    for [mm, h, water] in [
        [26.0, 50.0, 13.0],
        [26.0, 172.0, 43.0],
        [52.0, 50.0, 13.0],
        [52.0, 172.0, 43.0],
        [77.0, 37.0, 20.0],
        [100.0, 172.0, 5.0],
    ] {
        let slab = Layer::slab(Length::from_mm(mm), gel());
        let model = slab.reaches(c(-25.0), &bath(water, h), c(0.0), LONG).unwrap();
        let ratio = to_seconds(model) / cleland(h, mm / 1e3, -25.0, water);
        println!("{mm} mm in {water} C: {ratio:.3} of Cleland's time");
        assert!((ratio - 1.0).abs() < 0.12, "{mm} mm in {water} C: {ratio} of Cleland's time");
    }
}

#[test]
fn the_layers_own_grid_is_fine_enough() {
    let meat = FreezingMeat::of(&Composition::RAW_BREAST);
    for (mm, water, h, target) in
        [(25.0, 62.8, 95.0, 57.2), (10.0, 62.8, 95.0, 57.2), (50.0, 3.0, 9.0, -0.9)]
    {
        let slab = Layer::slab(Length::from_mm(mm), meat);
        let time = |slab: &Layer| {
            to_seconds(slab.reaches(c(-18.0), &bath(water, h), c(target), LONG).unwrap())
        };
        let ratio = time(&slab) / time(&slab.clone().refined(3));
        println!("{mm} mm: {ratio:.4} of the time on a finer grid");
        assert!((ratio - 1.0).abs() < 0.01, "{mm} mm: {ratio}");
    }
}

#[test]
fn frozen_properties_are_those_of_handbooks() {
    let meat = FreezingMeat::of(&Composition::RAW_BREAST);
    // Lean beef of 75 % water: 255 kJ/kg latent, 3.22 kJ/kgK above and 1.67 below freezing
    // (Earle & Earle, Unit Operations in Food Processing, appendix 7, from ASHRAE data books;
    // the latent heat there counts all water as ice; here the cooling of the ice makes up for it).
    let latent = meat.heat_between(c(-18.0), c(-1.0)).kj_per_kg();
    assert!((latent / 255.0 - 1.0).abs() < 0.10, "{latent}");
    // Share of all water that is ice in lean meat: 48, 74, 82 and 87 % at -2, -5, -10 and -20 C
    // (Riedel 1957, from memory).
    let freezable = (73.90 - 0.4 * 22.50) / 73.90;
    for (t, measured) in [(-2.0, 0.48), (-5.0, 0.74), (-10.0, 0.82), (-20.0, 0.87)] {
        let ice = meat.ice(c(t)) * freezable;
        assert!((ice - measured).abs() < 0.06, "{t} C: {ice}");
    }
    let above = meat.heat_between(c(0.0), c(10.0)).kj_per_kg() / 10.0;
    assert!((above / 3.22 - 1.0).abs() < 0.15, "{above}");
    // Frozen white chicken: 1.07 - 0.0149 T - 1.04e-4 T^2 W/mK (Sweat, Haugh & Stadelman 1973),
    // unfrozen 0.476 + 0.0006 T.
    for t in [-10.0, -20.0, -30.0] {
        let measured = 1.07 - 0.0149 * t - 1.04e-4 * t * t;
        let ratio = meat.conductivity(c(t)).w_per_mk() / measured;
        assert!((ratio - 1.0).abs() < 0.10, "{t} C: {ratio}");
    }
    let unfrozen = meat.conductivity(c(5.0)).w_per_mk() / (0.476 + 0.0006 * 5.0);
    assert!((unfrozen - 1.0).abs() < 0.05, "{unfrozen}");
}
