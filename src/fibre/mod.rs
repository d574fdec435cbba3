//! The fibre: water on it, what is clean of it, how fine it is.

mod allowance;
mod clean_yields;
mod equilibrium;
mod fineness;
mod grade;
mod invoice;
mod moisture;
mod raw;
mod tables;
mod test_wash;
mod will_spin;

pub use allowance::{allowance, allowances};
pub use clean_yields::{clean_yields, clean_yields_items};
pub use equilibrium::{equilibrium_regain, humidity_for_regain};
pub use fineness::*;
pub use grade::{WoolGrade, us_grade};
pub use invoice::{Allowance, invoice, invoice_items};
pub use moisture::*;
pub use raw::*;
pub use test_wash::{Weighed, test_wash, test_wash_items};
pub use will_spin::{will_spin, will_spin_items};

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
