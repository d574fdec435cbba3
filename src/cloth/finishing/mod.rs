//! Finishing: what it makes of size, sett, mass and yarn; the chain of processes, forward and back.

mod chain;
pub(super) mod change;
pub(super) mod mass;
mod names;
mod process;
mod report;
mod sample;
pub(super) mod size;
mod state;
pub(super) mod yarn;

pub use chain::*;
pub use change::*;
pub use mass::*;
pub use process::{
    LengthBand, LengthLoss, LengthOfProcess, MassBand, MassChange, PROCESS, Process,
    ProcessResults, WidthBand, WidthLoss, WidthOfProcess, process,
};
pub use sample::{MeasuredLength, MeasuredMass, MeasuredWidth};
pub use size::*;
pub use yarn::*;
