//! A small, fixed part of the study of conduct, for every test run. The whole is `twin conduct`; its
//! results are in `results/conduct.md`.

use std::sync::LazyLock;

use twin::cooks;
use twin::study::conduct::{self, Day, Figures, Outcome};

/// Weeknights of four pieces: enough to notice a conduct that is broken, few enough to wait for.
static COOKS: LazyLock<Vec<Outcome>> = LazyLock::new(|| {
    (0..6).map(|seed| conduct::cook(&cooks::draw_with(seed, 4), &Day::draw(seed, 4))).collect()
});

#[test]
fn by_the_duties_alone_every_piece_is_served() {
    for cook in COOKS.iter() {
        assert!(cook.is_finished(), "seed {}: {:#?}", cook.seed, cook.story);
        assert_eq!(cook.stuck, 0, "seed {}: {:#?}", cook.seed, cook.story);
        assert!(cook.pieces.iter().all(|piece| !piece.discarded), "{:#?}", cook.story);
    }
}

#[test]
fn no_duty_goes_away_by_itself() {
    for cook in COOKS.iter() {
        assert_eq!(cook.vanished, 0, "seed {}: {:#?}", cook.seed, cook.story);
    }
}

#[test]
fn nothing_is_called_proved_that_was_not_hot() {
    // Of so few pieces none: at most one in two hundred is.
    assert_eq!(Figures::of(&COOKS).falsely_proved, 0);
}

#[test]
fn a_weeknight_stays_within_reach_of_its_goals() {
    // Wide bounds around the goals of 5 openings, 70 taps, 3 alarms in ten minutes, 1.2 proof readings
    // and 3 in 100 put back: the person may be unlucky.
    let figures = Figures::of(&COOKS);
    assert!(figures.openings <= 8.0, "{figures:?}");
    assert!(figures.taps <= 100.0, "{figures:?}");
    assert!(figures.alarms[0] <= 4.0, "{figures:?}");
    assert!(figures.proof_readings <= 2.0, "{figures:?}");
    assert!(figures.put_back <= 0.15, "{figures:?}");
}
