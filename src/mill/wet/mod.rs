//! Oil and water, scour liquor and dye bath for a lot: the formulas in a chain.

mod dye;
mod emulsion;
mod scour;
mod washes;

pub use dye::*;
pub use emulsion::*;
pub use scour::*;
pub use washes::*;
