//! Handbook tables of the mill.

use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[];
