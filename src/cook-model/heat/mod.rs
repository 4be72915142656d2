//! How heat gets into a breast, and out of it again.
//!
//! A [`Body`] and a [`Start`] go through [`Surroundings`] (legs: in the pit, under foil, in a bath);
//! [`trace`] follows them and the [`Trace`] answers. [`Tuning`] holds the few lumped numbers by
//! which a real cook departs from the defaults.
//!
//! ```
//! use cook_model::heat::{Body, Leg, PitKind, Start, Surface, Surroundings, Tuning, trace};
//! use cook_model::piece::{Piece, Shape};
//! use cook_model::quantity::{Length, Mass, Temperature, minutes};
//!
//! let piece = Piece {
//!     weight: Mass::from_g(280.0),
//!     thickest: Some(Length::from_mm(38.0)),
//!     shape: Shape::Natural,
//!     start: Temperature::from_c(4.0),
//!     icy: false,
//! };
//! let (body, start) = (Body::of_piece(&piece), Start::of_piece(&piece)?);
//! let pit = Leg::pit(Surface::pit(PitKind::Indirect), &[], Temperature::from_f(250.0));
//! let cook = Surroundings::new(pit);
//! let tuning = Tuning::default();
//!
//! let on = trace(&body, start, &cook, minutes(120.0), &tuning);
//! let pull = on.core_reaches(Temperature::from_f(160.0)).expect("done within two hours");
//!
//! let foil = Leg::steady(Surface::under_foil(), Temperature::from_c(20.0));
//! let cook = cook.then(pull, foil);
//! let rest = cook_model::heat::resume(&body, &on.state(pull), &cook, pull + minutes(30.0), &tuning);
//! let (when, peak) = rest.core_peak(pull);
//! assert!(peak > Temperature::from_f(162.0) && when < pull + minutes(15.0));
//! # Ok::<(), cook_model::heat::StartProblem>(())
//! ```
//!
#![doc = include_str!("model.md")]

mod body;
mod column;
mod composition;
mod equations;
mod footprint;
mod matrix;
mod medium;
mod pit;
mod shape;
mod solver;
mod start;
mod surface;
mod surroundings;
mod system;
mod trace;
mod tridiagonal;
mod units;

pub use body::Body;
pub use composition::Composition;
pub(crate) use composition::FUSION;
pub use medium::Medium;
pub use pit::PitKind;
pub use solver::{State, Tuning, resume, resume_to_core, trace};
pub use start::{COLDEST, Start, StartProblem};
pub use surface::{Evaporation, Surface};
pub use surroundings::{Leg, LidResponse, Surroundings};
pub use system::System;
pub use trace::Trace;
pub use units::{
    AreaHeat, AreaMass, Conductivity, Density, Diffusivity, HeatCapacity, HeatTransferCoefficient,
    VapourPressure,
};
