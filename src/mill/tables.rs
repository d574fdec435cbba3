//! Handbook tables of the mill.

use super::norms;
use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[&norms::COST_SHARES, &norms::REALISATION_NORMS];
