//! Oil and water, scour liquor and dye bath for a lot: the formulas in a chain.

mod dye;
mod emulsion;
mod scour;
mod washes;

pub use dye::{
    Addition, AdditionAmount, AdditionResults, DYE_BATH, DyeBathInputs, DyeBathResults, DyedYarn,
    GoodsRegain, dye_bath,
};
pub use emulsion::{EMULSION, EmulsionInputs, EmulsionResults, Oiling, WoolToOil, emulsion};
pub use scour::{
    LiquorResults, RinseResults, Rinsing, SCOUR_LIQUOR, ScourLiquor, ScourLiquorInputs,
    ScourLiquorResults, Squeeze, scour_liquor,
};
pub use washes::{WASHES, Wash, WashResults, WashesInputs, WashesResults, washes};

use crate::calculation::Calculation;

/// The calculations of this folder.
pub(crate) const CALCULATIONS: &[&Calculation] = &[&DYE_BATH, &EMULSION, &SCOUR_LIQUOR, &WASHES];
