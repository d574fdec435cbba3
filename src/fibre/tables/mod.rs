//! Handbook tables of the fibre.

mod densities;

use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[&densities::DENSITIES];
