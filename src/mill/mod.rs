//! The mill: losses, oil, card, mule, twister, loom, gearing, time and money.

mod balance;
mod blending;
mod card;
mod change;
mod cost;
mod costing;
mod drafting;
mod dyeing;
mod gearing;
mod hold_up;
mod liquor;
mod loss;
mod machines;
mod minding;
mod mule;
mod norms;
mod oil;
mod passages;
mod pieces;
mod price;
pub(crate) mod run;
mod spinning;
mod tables;
mod tariff;
mod tariffs;
mod weaving;
mod week;
mod wet;
mod wheels;
mod winders;

pub use balance::{Balance, Weighed, balance};
pub use blending::*;
pub use card::*;
pub use change::*;
pub use cost::*;
pub(crate) use costing::hour_costs;
pub use costing::{CostedStage, Costing};
pub use drafting::*;
pub use dyeing::*;
pub use gearing::*;
pub use hold_up::*;
pub use liquor::*;
pub use loss::*;
pub use machines::*;
pub use minding::*;
pub use mule::*;
pub use oil::*;
pub use passages::*;
pub use pieces::*;
pub use price::*;
pub use run::*;
pub use spinning::*;
pub use tariff::*;
pub use tariffs::Tariffs;
pub use weaving::*;
pub use week::{Lot, Machine, MachineWeek, Order, SHADES, Visit, Week, doubts, lightness, week};
pub use wet::*;
pub use wheels::{
    CHANGE_WHEEL, ChangeWheelInputs, ChangeWheelResults, DraftChange, LengthChange, TwistChange,
    WheelFit, WheelLaw, WheelNeighbour, WheelSets, change_wheel,
};
pub use winders::*;

pub(crate) use tables::TABLES;

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[
    blending::FORMULAS,
    card::FORMULAS,
    change::FORMULAS,
    cost::FORMULAS,
    drafting::FORMULAS,
    gearing::FORMULAS,
    hold_up::FORMULAS,
    dyeing::FORMULAS,
    liquor::FORMULAS,
    loss::FORMULAS,
    machines::FORMULAS,
    minding::FORMULAS,
    mule::FORMULAS,
    oil::FORMULAS,
    passages::FORMULAS,
    pieces::FORMULAS,
    price::FORMULAS,
    tariff::FORMULAS,
    spinning::FORMULAS,
    weaving::FORMULAS,
    winders::FORMULAS,
];

/// The calculations of the room.
pub(crate) const CALCULATIONS: &[&[&crate::calculation::Calculation]] =
    &[blending::CALCULATIONS, run::CALCULATIONS, wet::CALCULATIONS, &[&wheels::CHANGE_WHEEL]];
