//! Handbook tables of the mill.

mod machines;

use super::norms;
use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] =
    &[&norms::COST_SHARES, &machines::MACHINE_FIGURES, &norms::REALISATION_NORMS];
