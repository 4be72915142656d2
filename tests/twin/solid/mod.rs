//! Three-dimensional transient conduction in a solid cut from a regular mesh.
//!
//! Finite volumes with cut cells: each cell knows how much of it, and of its faces, lies inside the
//! shape; the outer surface is what the faces leave open. Checked in `tests/solid.rs` against the
//! exact series of [`series`].

mod body;
mod centre;
mod conduct;
mod mesh;
pub mod series;
mod shape;

pub use body::{Body, Link, Patch};
pub use centre::{brick_centre_time, ellipsoid_centre_time};
pub use conduct::{Constant, Field, Material, longest_step, robin};
pub use mesh::Mesh;
pub use shape::{Brick, Ellipsoid, Shape};
