//! Cooks from worlds whose laws differ, not only their numbers: how a surface dries, how a fire
//! wanders, how a pit answers its lid, what a piece is shaped like.
//!
//! They share no code with cook-model's heat model. A forecast whose constants were chosen on some of
//! them is judged on the others: what it owes to the worlds it was tuned to, it loses there.

pub mod chance;
pub mod diary;
pub mod draw;
pub mod fire;
pub mod kinds;
pub mod lid;
pub mod live;
pub mod meat;
pub mod piece;
pub mod record;
pub mod shape;
pub mod skin;
pub mod study;
