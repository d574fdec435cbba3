//! Handbook tables of the fibre.

mod densities;
pub(super) mod moisture;

use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[
    &densities::DENSITIES,
    &moisture::ALLOWANCES,
    &moisture::AT_STANDARD,
    &moisture::WOOL_ISOTHERM,
];
