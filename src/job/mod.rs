//! What a chain of formulas asks, and what was given for it, by name.

mod ask;
mod given;

pub(crate) use ask::place;
pub use ask::{Ask, Missing};
pub use given::Given;
