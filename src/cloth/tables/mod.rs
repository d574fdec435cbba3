//! Handbook tables of the cloth.

mod reeds;
pub(super) mod setting;

use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[
    &reeds::REED_SYSTEMS,
    &setting::BRIERLEY_CONSTANTS,
    &setting::BRIERLEY_EXPONENTS,
    &setting::GALCERAN_MATERIALS,
    &setting::WEAVING_LOAD,
    &setting::WORKING_SETTS,
    &setting::WRAPS_RULES,
];
