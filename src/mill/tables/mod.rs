//! Handbook tables of the mill.

mod machines;

use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[&machines::MACHINE_FIGURES];
