//! Handbook tables of the fibre.

mod densities;
pub(super) mod fineness;
pub(super) mod moisture;
pub(super) mod raw;

use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[
    &densities::DENSITIES,
    &fineness::US_GRADES,
    &fineness::TOP_GRADES,
    &fineness::MINIMUM_FIBRES,
    &fineness::EVENNESS,
    &raw::CUSTOMS,
    &raw::COMPOSITION,
    &raw::BREED_YIELDS,
    &raw::FLEECES,
    &raw::LOSSES,
    &moisture::ALLOWANCES,
    &moisture::ATMOSPHERES,
    &moisture::AT_STANDARD,
    &moisture::WOOL_ISOTHERM,
];
