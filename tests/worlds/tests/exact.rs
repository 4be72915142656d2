//! Each world's own physics against what is known exactly: conduction, a wet surface, radiation, the
//! lid, the fire, and the volumes of the shapes.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use twin::solid::{Body, Patch, series};
use worlds::chance::Chance;
use worlds::fire::{Pit, Truth, Wander};
use worlds::kinds::KINDS;
use worlds::lid::{Chill, Lid};
use worlds::meat::{DENSITY, Meat};
use worlds::piece::{self, Piece};
use worlds::shape::{Form, Solid};
use worlds::skin::{Around, Law, Spot, saturation};

const CONDUCTIVITY: f64 = 0.5;
const CAPACITY: f64 = 3500.0;

fn dry_brick() -> piece::Truth {
    piece::Truth {
        weight: 0.28,
        thickness: 0.036,
        form: Form { width: 0.6, taper: (0.0, 0.0), round: [2.0; 3], brick: true },
        meat: Meat::Constant { conductivity: CONDUCTIVITY, capacity: CAPACITY },
        start: 4.0,
        // A skin that lets no vapour through.
        law: Law::Film(1.0e12),
        convection: 20.0,
        top_bias: 0.0,
        emissivity: 0.0,
        place: 0.0,
        rest: [20.0, 20.0, 20.0],
    }
}

/// The product of three series (Carslaw & Jaeger 1959, section 5.6).
#[test]
fn a_dry_brick_heats_as_the_exact_product() {
    let truth = dry_brick();
    let mut brick = Piece::new(truth, 9);
    let length = (truth.weight / DENSITY / truth.thickness / truth.form.width).sqrt();
    let half = truth.thickness / 2.0;
    let edges = [half, 0.5 * truth.form.width * length, 0.5 * length];
    let biot = truth.convection * half / CONDUCTIVITY;
    let mut minutes = 0.0;
    for _ in 0..6 {
        brick.cook(120.0, 120.0, 0.0, 600.0);
        minutes += 10.0;
        let fourier = CONDUCTIVITY / (DENSITY * CAPACITY) * 60.0 * minutes / (half * half);
        let exact = 120.0 - 116.0 * series::brick(edges, biot, fourier);
        // The coldest cell of nine is not quite the centre: 1 K of 116.
        assert!((brick.core() - exact).abs() < 1.0, "{minutes} min: {} for {exact}", brick.core());
    }
}

/// A surface that gets nothing from within settles where heat and vapour balance; with a Lewis factor
/// near one that is near the adiabatic saturation of air (any handbook of psychrometry), here worked
/// out from the mass balance of the mixing.
#[test]
fn a_wet_surface_settles_at_the_wet_bulb() {
    let patch = Patch { cell: 0, area: 1.0, normal: [0.0, 0.0, 1.0], gap: 1.0, point: [0.0; 3] };
    for (air, dew) in [(107.0, 45.0), (121.0, 40.0), (150.0, 55.0)] {
        let around =
            Around { air, walls: air, vapour: saturation(dew), convection: 12.0, emissivity: 0.0 };
        let mut spot = Spot::raw(&Law::Film(0.0), 40.0);
        for _ in 0..200 {
            spot.in_pit(&Law::Film(0.0), &patch, &around, (spot.celsius, 1e-9), 1.0);
        }
        let ratio = |celsius: f64| 0.622 * saturation(celsius) / (101_325.0 - saturation(celsius));
        let wet_bulb = (0..4000).map(|i| f64::from(i) * 0.02 + 20.0).min_by(|a, b| {
            let lack = |t: f64| {
                let heat = 1006.0 + 1860.0 * ratio(dew);
                (heat * (air - t) - (2.501e6 - 2360.0 * t) * (ratio(t) - ratio(dew))).abs()
            };
            lack(*a).total_cmp(&lack(*b))
        });
        let off = spot.celsius - wet_bulb.unwrap();
        assert!(off.abs() < 3.0, "air {air}, dew point {dew}: {} off by {off}", spot.celsius);
    }
}

#[test]
fn a_surface_that_only_radiates_comes_to_the_walls() {
    let patch = Patch { cell: 0, area: 1.0, normal: [0.0, 0.0, 1.0], gap: 1.0, point: [0.0; 3] };
    let around = Around { air: 20.0, walls: 120.0, vapour: 0.0, convection: 1e-9, emissivity: 0.9 };
    let law = Law::Film(1.0e12);
    let mut spot = Spot::raw(&law, 4.0);
    for _ in 0..200 {
        spot.in_pit(&law, &patch, &around, (spot.celsius, 1e-9), 1.0);
    }
    assert!((spot.celsius - 120.0).abs() < 0.1, "{}", spot.celsius);
    // Stefan and Boltzmann's law between 4 C and 120 C: 0.9 times 5.67e-8 times the fourth powers.
    let mut cold = Spot::raw(&law, 4.0);
    let entering = cold.in_pit(&law, &Patch { gap: 0.0, ..patch }, &around, (4.0, 0.5), 1.0);
    let exact = 0.9 * 5.67e-8 * (393.15_f64.powi(4) - 277.15_f64.powi(4));
    assert!((entering / exact - 1.0).abs() < 0.01, "{entering} for {exact}");
}

#[test]
fn the_air_comes_back_as_each_lid_says() {
    let drop = |lid: &Lid, shut: f64| {
        let mut chill = Chill::default();
        chill.advance(lid, 80.0, 1000.0, 1000.0);
        for _ in 0..(shut / 10.0) as usize {
            chill.advance(lid, 80.0, 0.0, 10.0);
        }
        chill.kelvin()
    };
    let fades = drop(&Lid::Fades(120.0), 240.0);
    assert!((fades - 80.0 * (-2.0_f64).exp()).abs() < 1e-6, "{fades}");
    let climbs = drop(&Lid::Climbs(0.2), 240.0);
    assert!((climbs - 32.0).abs() < 1e-6, "{climbs}");
    let walls = drop(&Lid::Walls(0.5, 300.0), 300.0);
    let exact = 40.0 * ((-1.0_f64).exp() + (-10.0_f64).exp());
    assert!((walls - exact).abs() < 1e-6, "{walls} for {exact}");
}

#[test]
fn a_fire_that_forgets_keeps_its_spread_and_its_memory() {
    let truth = Truth {
        set: 120.0,
        dial_off: 0.0,
        wander: Wander::Forgets(5.0, 600.0),
        unrest: 0.0,
        lid: Lid::Fades(100.0),
        keeps: 0.5,
        loading: (0.0, 100.0),
        walls: (0.0, 300.0),
        outside: 20.0,
        dew: 40.0,
    };
    let (mut squares, mut products, mut count) = (0.0, 0.0, 0.0);
    for seed in 0..400 {
        let mut pit = Pit::new(truth, Chance::of(seed, 1));
        for _ in 0..5 {
            let before = pit.air() - 120.0;
            (0..60).for_each(|_| pit.advance(10.0));
            let after = pit.air() - 120.0;
            (squares, products, count) =
                (squares + after * after, products + before * after, count + 1.0);
        }
    }
    let spread = (squares / count).sqrt();
    assert!((spread - 5.0).abs() < 0.4, "{spread}");
    let kept = products / squares;
    assert!((kept - (-1.0_f64).exp()).abs() < 0.08, "{kept}");
}

#[test]
fn shapes_hold_their_weight_and_their_thickness() {
    for (world, kind) in KINDS.iter().enumerate() {
        let form = (kind.form)(&mut Chance::of(world as u64, 0));
        let solid = Solid::new(form, 0.28, 0.038);
        let body = Body::new(&solid, solid.mesh(12));
        let weight = 2.0 * body.volume() * DENSITY;
        assert!((weight / 0.28 - 1.0).abs() < 0.02, "{}: {weight}", kind.name);
        let heights = || body.patches.iter().map(|patch| patch.point[2]);
        let whole = heights().fold(f64::MIN, f64::max) - heights().fold(f64::MAX, f64::min);
        assert!((whole / 0.038 - 1.0).abs() < 0.04, "{}: {whole}", kind.name);
    }
}
