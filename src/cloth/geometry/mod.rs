//! Geometry of plain cloth: crimp, height, angle, thickness, jam.

mod kemp;
mod peirce;
mod plain;
mod rules;
mod thread;

pub use kemp::*;
pub use peirce::*;
pub use plain::{PLAIN_CLOTH, PlainClothInputs, PlainClothResults, plain_cloth};
pub use rules::*;

/// The calculations of the geometry.
pub(super) const CALCULATIONS: &[&crate::calculation::Calculation] = &[&PLAIN_CLOTH];

pub(crate) use kemp::FORMULAS as KEMP;
pub(crate) use peirce::FORMULAS as PEIRCE;
pub(crate) use rules::FORMULAS as RULES;
