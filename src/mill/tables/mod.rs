//! Handbook tables of the mill.

mod wet;

use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[&wet::OIL_ON_WOOL, &wet::SCOUR_LIQUORS];
