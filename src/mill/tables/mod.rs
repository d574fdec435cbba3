//! Handbook tables of the mill.

mod machines;
mod wet;

use super::norms;
use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[
    &norms::COST_SHARES,
    &machines::MACHINE_FIGURES,
    &wet::OIL_ON_WOOL,
    &norms::REALISATION_NORMS,
    &wet::SCOUR_LIQUORS,
];
