//! What is timed, and what must come out alike to the last bit: native and in the browser.
//!
//! The same functions serve `cargo bench`, the program `native`, and, built for wasm32, the page
//! that `cargo xtask bench` opens.

mod cook;
mod planned;
mod usual;

pub use usual::Usual;

use chrono::TimeDelta;
use cook_model::forecast::forecast;
use cook_model::history::History;
use cook_model::plan::plan;
use cook_model::quantity::Moment;
use wasm_bindgen::prelude::wasm_bindgen;

/// Follows the usual breast through its cook and rest so many times. The sum of the peaks, C, so
/// that no call can be left out.
#[wasm_bindgen]
pub fn heat_trace(times: u32) -> f64 {
    let usual = Usual::new();
    (0..times).map(|_| usual.trace().core_peak(TimeDelta::zero()).1.c()).sum()
}

/// The bits of the core temperature, C, of the usual breast at each minute of its cook and rest, in
/// hexadecimal.
#[wasm_bindgen]
pub fn heat_bits() -> String {
    let trace = Usual::new().trace();
    let minutes = trace.end().num_minutes();
    let bits = |minute| trace.core(TimeDelta::minutes(minute)).c().to_bits();
    (0..=minutes).map(|minute| format!("{:016x}\n", bits(minute))).collect()
}

/// Plans twenty pieces on seven places, so in three waves, so many times. The sum of the lid
/// openings, so that no call can be left out.
#[wasm_bindgen]
pub fn plan_three_waves(times: u32) -> u32 {
    let request = planned::request(20, 7);
    (0..times).map(|_| plan(&request).map_or(0, |plan| plan.openings as u32)).sum()
}

/// A cook that is forecast again and again.
#[wasm_bindgen]
pub struct Cook {
    history: History,
    now: Moment,
}

#[wasm_bindgen]
impl Cook {
    /// So many pieces of usual sizes, each read so many times, all still on the pit.
    #[wasm_bindgen(constructor)]
    pub fn new(pieces: u32, readings: u32) -> Self {
        let (history, now) = cook::cook(pieces, readings);
        Self { history, now }
    }

    /// Forecasts so many times. The sum of the checks, so that no call can be left out.
    pub fn forecast(&self, times: u32) -> u32 {
        (0..times).map(|_| forecast(&self.history, self.now).checks.len() as u32).sum()
    }

    /// The forecast as text, every number to its last bit.
    pub fn forecast_bits(&self) -> String {
        serde_json::to_string(&forecast(&self.history, self.now)).unwrap_or_else(|e| e.to_string())
    }
}
