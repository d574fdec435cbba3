//! The yarn: its count, folding, twist and hanks.

mod count;
mod folding;
mod hank;
mod rounding;
mod twist;

pub use count::*;
pub use folding::*;
pub use hank::*;
pub use rounding::*;
pub use twist::*;

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] =
    &[count::FORMULAS, folding::FORMULAS, hank::FORMULAS, twist::FORMULAS];
