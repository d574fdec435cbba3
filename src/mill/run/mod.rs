//! Machines at work: from what is set and wanted to output, doffs, packages, hours and people.

mod asks;
mod cloth;
mod common;
mod loom;
mod lot;
mod minding;
pub(crate) mod mule;
mod reel;
mod spindles;
mod warping;
mod winder;

pub use lot::{Lot as LotOnMachine, LotResults, Packages};
pub use minding::{BrokenEnds, Minding, MindingResults, Piecing, SpindlesMinded};
pub use mule::{
    Delivery, DeliveryResults, DeliveryWheels, MULE, MuleInputs, MuleMachine, MuleResults,
    TwistResults, TwistWheels, mule,
};

use crate::calculation::Calculation;
use crate::job::Job;

/// Every machine.
pub(crate) const JOBS: &[&Job] = &[
    &spindles::RING_FRAME,
    &spindles::TWISTER,
    &winder::WINDER,
    &reel::REEL,
    &warping::WARPING,
    &loom::LOOM,
    &cloth::PASSAGES,
    &cloth::BATCHES,
    &cloth::DRYER,
];

/// Every calculation of a machine.
pub(crate) const CALCULATIONS: &[&Calculation] = &[&MULE];
