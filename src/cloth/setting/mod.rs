//! The setting of a cloth: how close threads can be, by every theory, and what changes with them.

pub(super) mod change;
pub(super) mod diameters;
mod interlacing;
pub(super) mod limits;
mod report;
mod setts;
mod theories;

pub use change::*;
pub use diameters::*;
pub use interlacing::{Interlacing, WeaveClass};
pub use limits::*;
pub use setts::{SETTS, SettsInputs, SettsResults, setts};
pub use theories::Theory;
