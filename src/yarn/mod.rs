//! The yarn: its count, folding, twist and hanks.

mod contraction;
mod count;
mod folding;
mod hank;
mod shares;
mod twist;

pub use contraction::*;
pub use count::*;
pub use folding::*;
pub use hank::*;
pub use shares::*;
pub use twist::*;

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[
    contraction::FORMULAS,
    count::FORMULAS,
    folding::FORMULAS,
    hank::FORMULAS,
    shares::FORMULAS,
    twist::FORMULAS,
];
