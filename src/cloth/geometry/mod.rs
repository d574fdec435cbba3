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
