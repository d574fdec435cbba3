//! Quality: how many to test, how sure a mean is, whether a machine has moved.

use crate::formula::Formula;
use crate::handbook::Table;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[];

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[];
