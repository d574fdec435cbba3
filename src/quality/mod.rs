//! Quality: how many to test, how sure a mean is, whether a machine has moved.

mod capability;
pub mod chart;
mod constants;
mod deviations;
mod instrument;
mod limits;
mod needed;
mod sample;
mod sampling;
mod skein;
mod summary;
mod tables;

pub use capability::Capability;
pub use constants::ChartConstants;
pub use deviations::*;
pub use instrument::*;
pub use limits::*;
pub use needed::{READINGS_NEEDED, ReadingsNeededInputs, ReadingsNeededResults, readings_needed};
pub use sample::Sample;
pub use sampling::*;
pub use skein::*;
pub use summary::*;

pub(crate) use tables::TABLES;
