//! The mill: losses, oil, card, mule, twister, loom, gearing, time and money.

mod card;
mod change;
mod cost;
mod dyeing;
mod gearing;
mod liquor;
mod loss;
mod machines;
mod mule;
mod oil;
mod pieces;
mod tables;
mod wet;
mod wheels;

pub use card::*;
pub use change::*;
pub use cost::*;
pub use dyeing::*;
pub use gearing::*;
pub use liquor::*;
pub use loss::*;
pub use machines::*;
pub use mule::*;
pub use oil::*;
pub use pieces::*;
pub use wet::*;
pub use wheels::{ChangeWheel, Fit, Law, change_wheel};

pub(crate) use tables::TABLES;

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[
    card::FORMULAS,
    change::FORMULAS,
    cost::FORMULAS,
    dyeing::FORMULAS,
    gearing::FORMULAS,
    liquor::FORMULAS,
    loss::FORMULAS,
    machines::FORMULAS,
    mule::FORMULAS,
    oil::FORMULAS,
    pieces::FORMULAS,
];
