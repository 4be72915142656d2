//! Limits of time. FDA Food Code 2022, 3-501.14: cooling from 135 F to 70 F within 2 hours, and to 41 F
//! within 6 hours in all. USDA FSIS: two hours out of the refrigerator, one above 90 F.

use cook_model::quantity::{Moment, Span, Temperature, minutes};
use cook_model::safety::{
    COME_UP, COOL_FIRST, COOL_FROM, COOL_SECOND, HOT, INSTANT_KILL, LONGEST_WARM_UP, Prompt,
    cooling, longest_out, longest_out_by_plan,
};

use crate::support::{Cook, at, read};

fn core(points: &[(f64, f64)]) -> Vec<(Moment, Temperature)> {
    points.iter().map(|(minute, f)| (at(*minute), Temperature::from_f(*f))).collect()
}

#[test]
fn the_figures_of_the_sources() {
    let f = |temperature: Temperature| (temperature.f() * 1000.0).round() / 1000.0;
    // FDA Food Code 2022, 3-401.11(A)(3); USDA FSIS danger zone, 40 to 140 F.
    assert_eq!((f(INSTANT_KILL), f(HOT)), (165.0, 140.0));
    assert_eq!((f(COOL_FROM), f(COOL_FIRST.0), f(COOL_SECOND.0)), (135.0, 70.0, 41.0));
    assert_eq!((COOL_FIRST.1, COOL_SECOND.1), (Span::hours(2), Span::hours(6)));
    // Food Code 2022, 3-501.19(B), from memory; FSIS Revised Appendix A, 2021, come-up.
    assert_eq!((LONGEST_WARM_UP, COME_UP), (Span::hours(4), Span::hours(6)));
    for (ambient, hours) in [(40.0, 2), (75.0, 2), (90.0, 2), (90.5, 1), (110.0, 1)] {
        let ambient = Temperature::from_f(ambient);
        assert_eq!(longest_out(ambient), Span::hours(hours));
        // A plan leaves time to do something about it.
        let planned = longest_out_by_plan(ambient);
        assert!(
            planned >= longest_out(ambient) / 2 && planned <= longest_out(ambient) - minutes(10.0)
        );
    }
}

#[test]
fn each_step_of_cooling_ends_at_its_own_figure() {
    // Above 70 F is not at 70 F, and 41 F is the end of the second step alone.
    let done = |f: f64| cooling(at(0.0), &core(&[(100.0, f)]), &[]).map(|step| step.done.is_some());
    assert_eq!(done(70.5), [false, false]);
    assert_eq!(done(70.0), [true, false]);
    assert_eq!(done(41.5), [true, false]);
    assert_eq!(done(41.0), [true, true]);
    let [first, second] = cooling(at(0.0), &[], &[]);
    assert_eq!((first.deadline, second.deadline), (at(120.0), at(360.0)));
}

/// It cools from when it was last at 135 F or above; a little below, the clock runs already.
#[test]
fn cooling_counts_from_135_f() {
    let since = |f: f64| cooling(at(0.0), &core(&[(30.0, f)]), &[])[0].since;
    assert_eq!((since(134.5), since(135.0), since(150.0)), (at(0.0), at(30.0), at(30.0)));
    // Neither an older hot reading nor an older cold one counts from before it was last known hot.
    let [first, _] = cooling(at(60.0), &core(&[(20.0, 140.0), (40.0, 60.0)]), &[]);
    assert_eq!((first.since, first.done), (at(60.0), None));
}

/// A clock is told of until it is done in time; one that ran out stays.
#[test]
fn a_clock_matters_until_it_is_done() {
    let [first, _] = cooling(at(0.0), &[], &[]);
    assert!(first.matters(at(10.0)) && first.is_expected_to_run_out());
    let [done, _] = cooling(at(0.0), &core(&[(60.0, 69.0)]), &core(&[(200.0, 60.0)]));
    assert!(!done.matters(at(70.0)) && !done.is_expected_to_run_out());
    let [soon, _] = cooling(at(0.0), &[], &core(&[(100.0, 69.0)]));
    let [late, _] = cooling(at(0.0), &[], &core(&[(140.0, 69.0)]));
    assert!(!soon.is_expected_to_run_out() && late.is_expected_to_run_out());
    // The last hot reading is the one that it cools from.
    let [first, _] = cooling(at(0.0), &core(&[(10.0, 150.0), (40.0, 140.0)]), &[]);
    assert_eq!(first.since, at(40.0));
}

/// USDA FSIS: the danger zone ends at 140 F. A probe that was in just that much need not be cleaned of what was
/// raw.
#[test]
fn a_probe_is_cleaned_after_what_is_under_140_f() {
    for (f, cleaned) in [(139.9, true), (140.0, false)] {
        let mut cook = Cook::two_on();
        let after = cook.write(60.0, read(1, f, 2));
        assert_eq!(cook.state().prompts().contains(&Prompt::CleanProbe { after }), cleaned, "{f}");
    }
}
