//! The mill: losses, oil, card, mule, twister, loom, gearing, time and money.

mod card;
mod change;
mod cost;
mod drafting;
mod gearing;
mod loss;
mod machines;
mod minding;
mod mule;
mod oil;
mod passages;
mod pieces;
mod run;
mod spinning;
mod tables;
mod weaving;
mod wheels;
mod winders;

pub use card::*;
pub use change::*;
pub use cost::*;
pub use drafting::*;
pub use gearing::*;
pub use loss::*;
pub use machines::*;
pub use minding::*;
pub use mule::*;
pub use oil::*;
pub use passages::*;
pub use pieces::*;
pub use run::{Asked, MACHINES, Machine};
pub use spinning::*;
pub use weaving::*;
pub use wheels::{ChangeWheel, Fit, Law, change_wheel};
pub use winders::*;

pub(crate) use tables::TABLES;

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[
    card::FORMULAS,
    change::FORMULAS,
    cost::FORMULAS,
    drafting::FORMULAS,
    gearing::FORMULAS,
    loss::FORMULAS,
    machines::FORMULAS,
    minding::FORMULAS,
    mule::FORMULAS,
    oil::FORMULAS,
    passages::FORMULAS,
    pieces::FORMULAS,
    spinning::FORMULAS,
    weaving::FORMULAS,
    winders::FORMULAS,
];
