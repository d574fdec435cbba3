//! The mill: losses, oil, card, mule, twister, loom, gearing, time and money.

mod balance;
mod blending;
mod card;
mod change;
mod drafting;
mod dyeing;
mod gearing;
mod hold_up;
mod liquor;
mod loss;
mod machines;
mod minding;
mod money;
mod mule;
mod oil;
mod passages;
mod pieces;
pub(crate) mod run;
mod spinning;
mod tables;
mod weaving;
mod week;
mod wet;
mod wheels;
mod winders;

pub use balance::*;
pub use blending::*;
pub use card::*;
pub use change::*;
pub use drafting::*;
pub use dyeing::*;
pub use gearing::*;
pub use hold_up::*;
pub use liquor::*;
pub use loss::*;
pub use machines::*;
pub use minding::*;
pub use money::*;
pub use mule::*;
pub use oil::*;
pub use passages::*;
pub use pieces::*;
pub use run::*;
pub use spinning::*;
pub use weaving::*;
pub use week::{
    ColourChange, LotInTurn, LotTime, MachineWeek, Order, SHADES, Visit, WEEK, WeekInputs, WeekLot,
    WeekMachine, WeekResults, lightness, week,
};
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
    drafting::FORMULAS,
    gearing::FORMULAS,
    hold_up::FORMULAS,
    dyeing::FORMULAS,
    liquor::FORMULAS,
    loss::FORMULAS,
    machines::FORMULAS,
    minding::FORMULAS,
    money::charge::FORMULAS,
    money::cost::FORMULAS,
    money::price::FORMULAS,
    mule::FORMULAS,
    oil::FORMULAS,
    passages::FORMULAS,
    pieces::FORMULAS,
    spinning::FORMULAS,
    weaving::FORMULAS,
    winders::FORMULAS,
];

/// The calculations of the room.
pub(crate) const CALCULATIONS: &[&[&crate::calculation::Calculation]] = &[
    balance::CALCULATIONS,
    blending::CALCULATIONS,
    money::CALCULATIONS,
    run::CALCULATIONS,
    wet::CALCULATIONS,
    &[&WEEK, &CHANGE_WHEEL],
];
