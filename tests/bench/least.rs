//! `cargo bench`: the least time of many calls, natively. Beside general-purpose solvers and in the
//! browser: `cargo xtask bench`.

use std::hint::black_box;
use std::time::Instant;

use bench::{Cook, heat_trace, plan_three_waves};

/// Groups of calls, of which the quickest counts.
const GROUPS: u32 = 30;

fn main() {
    tell("heat trace, 90 min and rest", 100, |calls| _ = black_box(heat_trace(calls)));
    // In pieces and in readings alike the cost is to grow no faster than in proportion.
    for (pieces, readings) in [(20, 10), (40, 10), (100, 10), (20, 20), (20, 50)] {
        let cook = Cook::new(pieces, readings);
        let what = format!("forecast, {pieces} pieces x {readings} readings");
        tell(&what, 2, |calls| _ = black_box(cook.forecast(calls)));
    }
    tell("plan, 20 pieces in three waves", 1, |calls| _ = black_box(plan_three_waves(calls)));
}

fn tell(what: &str, calls: u32, run: impl Fn(u32)) {
    let timed = |_| {
        let began = Instant::now();
        run(calls);
        began.elapsed() / calls
    };
    let least = (0..GROUPS).map(timed).min().unwrap_or_default();
    println!("{what}: {:.1} us", least.as_secs_f64() * 1e6);
}
