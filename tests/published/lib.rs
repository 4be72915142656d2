//! The model against the outside: published tables, worked examples, general-purpose solvers and
//! facts of the trade. One test file a check, each with its source beside it.
