//! `cargo bench`: the least time of many calls, natively. Beside general-purpose solvers and in the
//! browser: `cargo xtask bench`.

use std::hint::black_box;
use std::time::Instant;

use bench::{Cook, heat_trace};

/// Groups of calls, of which the quickest counts.
const GROUPS: u32 = 30;

fn main() {
    let cook = Cook::new(20, 10);
    tell("heat trace, 90 min and rest", 100, |calls| _ = black_box(heat_trace(calls)));
    tell("forecast, 20 pieces x 10 readings", 2, |calls| _ = black_box(cook.forecast(calls)));
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
