//! What a core cannot be, whatever a forecast says: worked by hand for a lumped piece, which heats and
//! cools no slower than any real one of its size does: `T = air + (from - air) exp(-t / tau)`, `tau = rho
//! c thickness / (2 * 1.5 h)`. With 1050 kg/m3 (from memory) and 3390 J/(kg K) (Morley, in James & James,
//! Meat Refrigeration) a piece of 38 mm has a `tau` of 19 min under the hardest fan, 40 W/(m2 K), and of
//! 38 min in a draught, 20 W/(m2 K); both coefficients are beyond what smokers and kitchens give.

use cook_model::cook::What;
use cook_model::quantity::{Temperature, minutes};
use cook_model::safety::Shortfall;

use crate::support::{Cook, at, piece, pulled, put_on, read, set_out};
use crate::{why_not, why_not_the_first};

fn pit_at(f: f64) -> Cook {
    let mut cook = Cook::two_on();
    cook.write(0.0, What::PitTargetSet { target: Temperature::from_f(f) });
    cook
}

fn pit_read(cook: &mut Cook, f: f64, minutes: impl Iterator<Item = u32>) {
    for minute in minutes {
        let temperature = Temperature::from_f(f);
        cook.write(f64::from(minute), What::PitRead { temperature });
    }
}

/// Set to 250 F and not read, a pit may be at 300 F: `exp(-t / 19 min) = (300 - 163) / (300 - 38)` after
/// 12.2 min. Before, no core is near 165 F; after, only a forecast can say.
#[test]
fn a_core_warms_no_faster_than_a_lump_under_a_fan() {
    for (minute, why) in [(11.0, Some(Shortfall::TooFast)), (13.0, None)] {
        let mut cook = pit_at(250.0);
        cook.write(minute, read(1, 166.0, 2));
        assert_eq!(why_not(&cook), why, "minute {minute}");
    }
}

/// A piece that nobody measured may be thin, but no whole breast is thinner than 20 mm at its thickest
/// (portioned fillets: 25.8 mm in the mean, Poultry Science 100(8), 2021): 6.4 min.
#[test]
fn a_piece_that_nobody_measured_is_no_cutlet() {
    for (minute, why) in [(5.0, Some(Shortfall::TooFast)), (8.0, None)] {
        let mut cook = Cook::default();
        cook.write(0.0, What::PitTargetSet { target: Temperature::from_f(250.0) });
        let What::PieceSetOut { piece, mut facts, name } = set_out(1, 38.0) else { panic!() };
        facts.thickest = None;
        cook.write(0.0, What::PieceSetOut { piece, facts, name });
        cook.write(0.0, put_on(1));
        cook.write(minute, read(1, 166.0, 2));
        assert_eq!(why_not(&cook), why, "minute {minute}");
    }
}

/// A dial in a lid reads 20 F low often enough (common practice, no source), not 30.
#[test]
fn a_core_is_no_hotter_than_the_pit_that_was_read() {
    for (f, why) in [(176.0, None), (187.0, Some(Shortfall::TooFast))] {
        let mut cook = pit_at(250.0);
        pit_read(&mut cook, 160.0, (0..=180).step_by(20));
        cook.write(180.0, read(1, f, 2));
        assert_eq!(why_not(&cook), why, "{f} F");
    }
}

/// A pit that nobody read for an hour may have been as hot as it was set; one read every half hour and
/// more was not (our choice).
#[test]
fn a_pit_not_read_for_an_hour_may_have_been_hot() {
    for (every, why) in [(40, Some(Shortfall::TooFast)), (60, None)] {
        let mut cook = pit_at(250.0);
        pit_read(&mut cook, 160.0, (0..=240).step_by(every));
        cook.write(240.0, read(1, 190.0, 2));
        assert_eq!(why_not(&cook), why, "read every {every} min");
    }
}

/// A fire that dies cools no core at once: what was hot may be as hot half an hour later.
#[test]
fn what_was_hot_may_still_be_hot_in_a_pit_that_fell() {
    let mut cook = pit_at(250.0);
    pit_read(&mut cook, 120.0, (90..=130).step_by(10));
    cook.write(95.0, read(1, 164.0, 2));
    cook.write(128.0, read(1, 166.0, 2));
    assert_eq!(why_not(&cook), None);
}

/// In a draught at 70 F a core of 166 F can be down to `70 + 96 exp(-20 / 38) = 127` F after 20 min: 135
/// speaks against nothing. After 5 min it cannot be below 154.
#[test]
fn a_resting_core_cools_no_faster_than_a_lump_in_a_draught() {
    for (f, minutes, stands) in [(135.0, 20.0, true), (115.0, 20.0, false), (146.0, 5.0, false)] {
        let mut cook = pit_at(250.0);
        cook.write(0.0, What::AmbientSet { ambient: Temperature::from_f(70.0) });
        cook.write(75.0, read(1, 166.0, 2));
        cook.write(75.0, pulled(1));
        cook.write(75.0 + minutes, read(1, f, 2));
        let spoken_against =
            matches!(why_not_the_first(&cook), Some(Shortfall::Contradicted { .. }));
        assert_eq!(spoken_against, !stands, "{f} F");
    }
}

/// The colder of fire and yard decides how far a core can have cooled: a hot day does not make a colder
/// reading a contradiction, nor a cold one.
#[test]
fn a_core_that_cooled_over_a_dead_fire_is_no_contradiction_on_a_hot_day() {
    let mut cook = pit_at(250.0);
    cook.write(0.0, What::AmbientSet { ambient: Temperature::from_f(130.0) });
    cook.write(60.0, read(1, 166.0, 2));
    pit_read(&mut cook, 60.0, (61..=240).step_by(10));
    cook.write(241.0, pulled(1));
    cook.write(300.0, read(1, 80.0, 2));
    assert_eq!(why_not_the_first(&cook), None);
}

/// How long raw meat of 60 F must have lain out at the least: from 41 F in a kitchen of 80 F in a draught
/// `38 ln(39 / 20) = 25` min. In the yard in winter it did not get so warm: it lay in the kitchen. Meat as
/// warm as a kitchen lay there for longer than any limit.
#[test]
fn warm_meat_has_lain_out() {
    let lain = |start: f64, ambient: f64| {
        let What::PieceSetOut { piece: number, mut facts, name } = set_out(1, 38.0) else {
            panic!()
        };
        facts.start = Temperature::from_f(start);
        let mut cook = Cook::default();
        cook.write(0.0, What::AmbientSet { ambient: Temperature::from_f(ambient) });
        cook.write(0.0, What::PieceSetOut { piece: number, facts, name });
        cook.write(0.0, put_on(1));
        cook.state().life(piece(1), at(0.0)).unwrap().warm
    };
    for ambient in [20.0, 70.0] {
        let lay = lain(60.0, ambient);
        assert!((minutes(23.5)..minutes(26.5)).contains(&lay), "{lay} at {ambient} F");
    }
    // On a hot porch it gets so warm sooner: 38 ln(64 / 45) = 13 min.
    let lay = lain(60.0, 100.0);
    assert!((minutes(12.0)..minutes(14.5)).contains(&lay), "{lay}");
    assert_eq!(lain(41.0, 70.0), minutes(0.0));
    assert!(lain(43.0, 70.0) > minutes(0.5));
    assert!(lain(78.5, 70.0) < minutes(24.0 * 60.0));
    for warm in [81.0, 89.0] {
        assert!(lain(warm, 70.0) > minutes(6.0 * 60.0), "{warm}");
    }
}

/// What the pit was read before it was hot explains no colder core, nor what it is read later.
#[test]
fn only_the_pit_between_two_readings_explains_that_one_is_colder() {
    let contradicted = |pits: &[(f64, f64)]| {
        let mut cook = pit_at(250.0);
        for (minute, f) in pits {
            let temperature = Temperature::from_f(*f);
            cook.write(*minute, What::PitRead { temperature });
        }
        cook.write(75.0, read(1, 166.0, 2));
        cook.write(95.0, read(1, 150.0, 2));
        matches!(why_not_the_first(&cook), Some(Shortfall::Contradicted { .. }))
    };
    assert!(contradicted(&[(1.0, 60.0), (60.0, 250.0)]));
    assert!(contradicted(&[(60.0, 250.0), (120.0, 60.0)]));
    assert!(!contradicted(&[(60.0, 250.0), (80.0, 60.0)]));
    // It went on cold before the first of them and was not read well since.
    assert!(!contradicted(&[(70.0, 60.0)]));
}

/// A fire that went out after the pull cools nothing at rest.
#[test]
fn the_fire_cools_no_piece_that_is_off() {
    let mut cook = pit_at(250.0);
    cook.write(0.0, What::AmbientSet { ambient: Temperature::from_f(70.0) });
    cook.write(75.0, read(1, 166.0, 2));
    cook.write(76.0, pulled(1));
    cook.write(78.0, What::PitRead { temperature: Temperature::from_f(60.0) });
    cook.write(90.0, read(1, 100.0, 2));
    assert!(matches!(why_not_the_first(&cook), Some(Shortfall::Contradicted { .. })));
}
