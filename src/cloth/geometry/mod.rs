//! Geometry of plain cloth: crimp, height, angle, thickness, jam.

mod kemp;
mod peirce;
mod plain;
mod rules;
mod thread;

pub use kemp::*;
pub use peirce::*;
pub use plain::{KNOWN_OF_PLAIN_CLOTH, KnownOfCloth, plain_cloth};
pub use rules::*;

pub(crate) use kemp::FORMULAS as KEMP;
pub(crate) use peirce::FORMULAS as PEIRCE;
pub(crate) use rules::FORMULAS as RULES;
