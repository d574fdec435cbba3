//! Handbook tables of the cloth.

pub(super) mod finishing;

use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[
    &finishing::DIMENSIONAL_CHANGE_SPECIMENS,
    &finishing::FINISHING_PROCESSES,
    &finishing::FINISHING_SHRINKAGES,
];
