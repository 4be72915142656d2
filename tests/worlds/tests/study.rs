//! A small fixed part of the study: every state is judged, and nothing absurd is said.
#![allow(clippy::unwrap_used, reason = "in a test a failed unwrap is a failed test")]

use worlds::draw::draw;
use worlds::kinds::KINDS;
use worlds::record::Record;
use worlds::study::judged::{Judged, judge};
use worlds::study::table::{Figures, STATES};

/// Cooks of every world: one at each setting.
const EACH: u64 = 5;

fn judged() -> Vec<Judged> {
    let cooks = (0..KINDS.len()).flat_map(|world| (0..EACH).map(move |number| draw(world, number)));
    let cooks: Vec<_> = cooks.collect();
    let judge_one = |setup: &worlds::draw::Setup| judge(&(setup.clone(), Record::play(setup)));
    twin::cores::each(&cooks, judge_one).into_iter().flatten().collect()
}

#[test]
fn forecasts_hold_in_a_few_cooks_of_every_world() {
    let all = judged();
    for (state, title) in STATES {
        let of_state: Vec<&Judged> = all.iter().filter(|j| j.state == state).collect();
        let figures = Figures::of(&of_state);
        assert!(figures.count > 100, "{title}: {}", figures.count);
        // Wide enough for so few cooks; the whole study is the command's.
        assert!(figures.off[0] < 15.0, "{title}: off by {}", figures.off[0]);
        assert!((0.5..0.97).contains(&figures.held), "{title}: held {}", figures.held);
    }
}
