//! The fibre: water on it, what is clean of it, how fine it is.

mod fineness;
mod grade;
mod moisture;
mod raw;
mod tables;

pub use fineness::*;
pub use grade::{WoolGrade, us_grade};
pub use moisture::*;
pub use raw::*;

pub(crate) use tables::TABLES;

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[
    fineness::FORMULAS,
    moisture::FORMULAS[0],
    moisture::FORMULAS[1],
    moisture::FORMULAS[2],
    moisture::FORMULAS[3],
    raw::FORMULAS,
];
