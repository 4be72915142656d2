//! The native side of the comparison with the browser.
//!
//! `native bits` prints what must come out alike there; `native time` how long each call takes, ns;
//! `native trace` the core of the usual breast minute by minute, C. All as JSON.

use std::process::ExitCode;
use std::time::Instant;

use bench::{Cook, Usual, heat_bits, heat_trace, plan_three_waves};
use chrono::TimeDelta;
use serde_json::{Value, json};

/// Pieces and readings of the cooks whose forecasts are compared.
const COOKS: [(u32, u32); 3] = [(1, 0), (4, 3), (20, 10)];
/// Calls that are timed together.
const TRACES: u32 = 200;
const FORECASTS: u32 = 5;
const PLANS: u32 = 2;

fn main() -> ExitCode {
    let told = match std::env::args().nth(1).as_deref() {
        Some("bits") => bits(),
        Some("time") => time(),
        Some("trace") => trace(),
        _ => {
            eprintln!("usage: native bits|time|trace");
            return ExitCode::FAILURE;
        }
    };
    println!("{told}");
    ExitCode::SUCCESS
}

fn bits() -> Value {
    let cooks: Vec<Value> = COOKS
        .iter()
        .map(|(pieces, readings)| {
            let forecast = Cook::new(*pieces, *readings).forecast_bits();
            json!({ "pieces": pieces, "readings": readings, "forecast": forecast })
        })
        .collect();
    json!({ "heat": heat_bits(), "cooks": cooks })
}

fn time() -> Value {
    let cook = Cook::new(20, 10);
    json!({
        "heat_trace": timed(TRACES, || { heat_trace(TRACES); }),
        "forecast": timed(FORECASTS, || { cook.forecast(FORECASTS); }),
        "plan": timed(PLANS, || { plan_three_waves(PLANS); }),
    })
}

/// Nanoseconds a call.
fn timed(calls: u32, run: impl Fn()) -> f64 {
    run();
    let began = Instant::now();
    run();
    began.elapsed().as_secs_f64() * 1e9 / f64::from(calls)
}

fn trace() -> Value {
    let trace = Usual::new().trace();
    let core = |minute| trace.core(TimeDelta::minutes(minute)).c();
    (0..=Usual::END.num_minutes()).map(core).collect::<Vec<f64>>().into()
}
