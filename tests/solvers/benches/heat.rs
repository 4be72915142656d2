//! One cook of an hour and a half with its rest: by the model's own steps, and by a general-purpose
//! solver within the same error (`tests/solvers/tests/equal_error.rs`).
#![allow(missing_docs, reason = "criterion's macro writes the main function")]

use std::hint::black_box;
use std::time::{Duration, Instant};

use bench::Usual;
use cook_model::quantity::TemperatureDifference;
use criterion::{Criterion, SamplingMode, criterion_group, criterion_main};
use solvers::{Method, TIMED, TIMED_BUT_WRONG, cores};

/// Turns in which all are timed for the ratios; the quickest of each counts.
const TURNS: usize = 100;
/// Own traces that are timed together, for one is too short.
const OWN: u32 = 10;

/// Only the end is asked for, which spares the general method all that lies between its steps.
fn general(usual: &Usual, (method, tolerance): (Method, TemperatureDifference)) {
    let cores = cores(black_box(usual), method, tolerance, &[Usual::OFF, Usual::END]);
    _ = black_box(cores.expect("the test of equal error solves the same"));
}

fn heat(criterion: &mut Criterion) {
    let usual = Usual::new();
    let mut group = criterion.benchmark_group("heat trace");
    group.sample_size(20).warm_up_time(Duration::from_secs(1));
    group.measurement_time(Duration::from_secs(3)).sampling_mode(SamplingMode::Flat);
    group.bench_function("own steps", |b| b.iter(|| black_box(&usual).trace()));
    for timed in all() {
        let name = format!("general solver, {:?}", timed.0);
        group.bench_function(name, |b| b.iter(|| general(&usual, timed)));
    }
    group.finish();
}

/// The ratios, which criterion does not tell. All are timed in turns, so that a busy machine slows
/// them alike.
fn ratios(_: &mut Criterion) {
    let usual = Usual::new();
    let mut own = Duration::MAX;
    let mut others = all().map(|_| Duration::MAX);
    for _ in 0..TURNS {
        let traces = || (0..OWN).for_each(|_| _ = black_box(black_box(&usual).trace()));
        own = own.min(took(traces) / OWN);
        for (other, timed) in others.iter_mut().zip(all()) {
            *other = took(|| general(&usual, timed)).min(*other);
        }
    }
    println!("least time of own steps: {:.1} us", micros(own));
    for ((method, _), other) in all().iter().zip(others) {
        let ratio = micros(other) / micros(own);
        println!("least time of {method:?}: {:.1} us, {ratio:.1} times as long", micros(other));
    }
}

/// All that are timed, the one that is not exact enough last.
fn all() -> [(Method, TemperatureDifference); 4] {
    let [a, b, c] = TIMED;
    [a, b, c, TIMED_BUT_WRONG]
}

fn micros(time: Duration) -> f64 {
    time.as_secs_f64() * 1e6
}

fn took(work: impl FnOnce()) -> Duration {
    let began = Instant::now();
    work();
    began.elapsed()
}

criterion_group!(benches, heat, ratios);
criterion_main!(benches);
