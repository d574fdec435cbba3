//! Oil and water, scour liquor and dye bath for a lot: the formulas in a chain.

mod dye;
mod emulsion;
mod scour;
mod washes;

pub use dye::{Addition, dye_bath, dye_bath_items};
pub use emulsion::{emulsion, emulsion_items};
pub use scour::{scour_liquor, scour_liquor_items};
pub use washes::{wash_items, washes, washes_items};
