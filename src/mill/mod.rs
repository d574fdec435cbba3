//! The mill: losses, oil, card, mule, twister, loom, gearing, time and money.

mod blending;
mod card;
mod change;
mod cost;
mod gearing;
mod loss;
mod machines;
mod mule;
mod oil;
mod pieces;
mod tables;
mod wheels;

pub use blending::*;
pub use card::*;
pub use change::*;
pub use cost::*;
pub use gearing::*;
pub use loss::*;
pub use machines::*;
pub use mule::*;
pub use oil::*;
pub use pieces::*;
pub use wheels::{ChangeWheel, Fit, Law, change_wheel};

pub(crate) use tables::TABLES;

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[
    blending::FORMULAS,
    card::FORMULAS,
    change::FORMULAS,
    cost::FORMULAS,
    gearing::FORMULAS,
    loss::FORMULAS,
    machines::FORMULAS,
    mule::FORMULAS,
    oil::FORMULAS,
    pieces::FORMULAS,
];
