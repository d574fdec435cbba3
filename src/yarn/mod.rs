//! The yarn: its count and check weights, folding, twist, hanks and winding.

mod check;
mod check_card;
mod count;
mod folding;
mod hank;
mod spindle;
mod twist;
mod winding;

pub use check::*;
pub use check_card::*;
pub use count::*;
pub use folding::*;
pub use hank::*;
pub use spindle::*;
pub use twist::*;
pub use winding::*;

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[
    check::FORMULAS,
    count::FORMULAS,
    folding::FORMULAS,
    hank::FORMULAS,
    spindle::FORMULAS,
    twist::FORMULAS,
    winding::FORMULAS,
];
