//! The yarn: its count, folding, twist, hanks and balls.

mod ball;
mod count;
mod folding;
mod hank;
mod tables;
mod twist;

pub use ball::*;
pub use count::*;
pub use folding::*;
pub use hank::*;
pub use twist::*;

pub(crate) use tables::TABLES;

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] =
    &[ball::FORMULAS, count::FORMULAS, folding::FORMULAS, hank::FORMULAS, twist::FORMULAS];
