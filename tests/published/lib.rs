//! The model against the outside: published tables, worked examples, general-purpose solvers and
//! facts of the trade. One test file a check, each with its source beside it; here is what the tests
//! share with the plots (`cargo run -p published --release --example plots`).

pub mod bath;
pub mod series;
pub mod shapes;
pub mod trade;
