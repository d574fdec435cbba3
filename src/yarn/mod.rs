//! The yarn: its count, folding, twist, hanks, diameter, strength and evenness.

mod count;
pub mod designation;
mod diameter;
mod evenness;
mod folding;
mod hank;
mod strength;
mod twist;
mod wraps;

pub use count::*;
pub use designation::Yarn;
pub use diameter::*;
pub use evenness::*;
pub use folding::*;
pub use hank::*;
pub use strength::*;
pub use twist::*;
pub use wraps::*;

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[
    count::FORMULAS,
    folding::FORMULAS,
    hank::FORMULAS,
    twist::FORMULAS,
    diameter::FORMULAS,
    wraps::FORMULAS,
    strength::FORMULAS,
    evenness::FORMULAS,
];
