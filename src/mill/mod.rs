//! The mill: losses, oil, card, mule, twister, loom, time and money.

mod card;
mod cost;
mod loss;
mod machines;
mod mule;
mod oil;
mod pieces;

pub use card::*;
pub use cost::*;
pub use loss::*;
pub use machines::*;
pub use mule::*;
pub use oil::*;
pub use pieces::*;

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[
    card::FORMULAS,
    cost::FORMULAS,
    loss::FORMULAS,
    machines::FORMULAS,
    mule::FORMULAS,
    oil::FORMULAS,
    pieces::FORMULAS,
];
