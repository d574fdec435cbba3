//! The setting of a cloth: how close threads can stand, by every theory, and what changes with them.

mod bench;
pub(super) mod change;
pub(super) mod diameters;
pub(super) mod limits;
mod show;
mod theories;

pub use change::*;
pub use diameters::*;
pub use limits::*;
pub use theories::*;
