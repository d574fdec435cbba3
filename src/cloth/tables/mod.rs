//! Handbook tables of the cloth.

mod cover;
pub(super) mod finishing;
mod knit;
mod reeds;
pub(super) mod setting;

use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[
    &cover::WEAVABILITY,
    &finishing::DIMENSIONAL_CHANGE_SPECIMENS,
    &finishing::FINISHING_PROCESSES,
    &finishing::FINISHING_SHRINKAGES,
    &knit::KNIT_MASS_CONSTANTS,
    &knit::MUNDEN_CONSTANTS,
    &reeds::REED_SYSTEMS,
    &setting::BRIERLEY_CONSTANTS,
    &setting::BRIERLEY_EXPONENTS,
    &setting::GALCERAN_MATERIALS,
    &setting::WEAVING_LOAD,
    &setting::WORKING_SETTS,
    &setting::WRAPS_RULES,
];
