//! The mill: losses, oil, card, mule, twister, loom, gearing, time and money.

mod balance;
mod card;
mod change;
mod cost;
mod costing;
mod gearing;
mod hold_up;
mod jobs;
mod loss;
mod machines;
mod mule;
mod norms;
mod oil;
mod pieces;
mod price;
mod said;
mod tables;
mod tariff;
mod tariffs;
mod week;
mod wheels;

pub use balance::{Balance, Weighed, balance};
pub use card::*;
pub use change::*;
pub use cost::*;
pub use costing::{CostedStage, Costing};
pub use gearing::*;
pub use hold_up::*;
pub use jobs::*;
pub use loss::*;
pub use machines::*;
pub use mule::*;
pub use oil::*;
pub use pieces::*;
pub use price::*;
pub use said::Said;
pub use tariff::*;
pub use tariffs::Tariffs;
pub use week::{Lot, Machine, MachineWeek, Order, SHADES, Visit, Week, lightness, week};
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
    price::FORMULAS,
    tariff::FORMULAS,
];
