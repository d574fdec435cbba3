//! The yarn: designation, count, folding, twist, hanks and winding, diameter, strength and evenness.

mod ball;
mod check;
mod check_card;
mod contraction;
mod count;
pub mod designation;
mod diameter;
mod evenness;
mod folding;
mod hank;
mod rounding;
mod shares;
mod spindle;
mod strength;
mod tables;
mod twist;
mod winding;
mod wraps;

pub use ball::*;
pub use check::*;
pub use check_card::*;
pub use contraction::*;
pub use count::*;
pub use designation::Yarn;
pub use diameter::*;
pub use evenness::*;
pub use folding::*;
pub use hank::*;
pub use rounding::*;
pub use shares::*;
pub use spindle::*;
pub use strength::*;
pub use twist::*;
pub use winding::*;
pub use wraps::*;

pub(crate) use tables::TABLES;

use crate::calculation::Calculation;
use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[
    ball::FORMULAS,
    check::FORMULAS,
    contraction::FORMULAS,
    count::FORMULAS,
    diameter::FORMULAS,
    evenness::FORMULAS,
    folding::FORMULAS,
    hank::FORMULAS,
    shares::FORMULAS,
    spindle::FORMULAS,
    strength::FORMULAS,
    twist::FORMULAS,
    winding::FORMULAS,
    wraps::FORMULAS,
];

/// The calculations of the room.
pub(crate) const CALCULATIONS: &[&Calculation] = &[&BALL_BAND, &CHECK_WEIGHT_CARD, &WRAPS];
