//! Water, fat and vegetable matter on clean dry fibre.

mod humidity;
mod invoice;
mod state;
mod water;

pub use humidity::*;
pub use invoice::*;
pub use state::*;
pub use water::*;

use crate::formula::Formula;

/// The formulas of moisture, file by file.
pub(super) const FORMULAS: [&[&Formula]; 4] =
    [invoice::FORMULAS, water::FORMULAS, humidity::FORMULAS, state::FORMULAS];
