//! The mill: losses, oil, card, mule, twister, loom, gearing, time and money.

mod card;
mod change;
mod cost;
mod gearing;
mod hold_up;
mod jobs;
mod loss;
mod machines;
mod mule;
mod oil;
mod pieces;
mod tables;
mod wheels;

pub use card::*;
pub use change::*;
pub use cost::*;
pub use gearing::*;
pub use hold_up::*;
pub use jobs::*;
pub use loss::*;
pub use machines::*;
pub use mule::*;
pub use oil::*;
pub use pieces::*;
pub use wheels::{ChangeWheel, Fit, Law, change_wheel};

pub(crate) use jobs::JOBS;
pub(crate) use tables::TABLES;

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[
    card::FORMULAS,
    change::FORMULAS,
    cost::FORMULAS,
    gearing::FORMULAS,
    hold_up::FORMULAS,
    loss::FORMULAS,
    machines::FORMULAS,
    mule::FORMULAS,
    oil::FORMULAS,
    pieces::FORMULAS,
];
