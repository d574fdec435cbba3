//! Machines at work: from what is set and wanted to output, doffs, packages, hours and people.

mod asks;
mod cloth;
mod common;
mod loom;
mod lot;
mod minding;
pub(crate) mod mule;
mod reel;
mod ring_frame;
mod spindles;
mod twister;
mod warping;
mod winder;

pub use lot::{Lot as LotOnMachine, LotResults, PackageSize, Packages};
pub use minding::{BrokenEnds, Minding, MindingResults, People, Piecing, SpindlesMinded};
pub use mule::{
    Delivery, DeliveryResults, DeliveryWheels, MULE, MuleInputs, MuleMachine, MuleResults,
    TwistResults, TwistWheels, mule,
};
pub use reel::{
    FinishedHank, HankSize, REEL, Reel, ReelAmount, ReelInputs, ReelLot, ReelLotResults,
    ReelMachine, ReelResults, reel,
};
pub use ring_frame::{
    PackageDiameters, RING_FRAME, RingFrameInputs, RingFrameResults, TravellerResults, ring_frame,
};
pub use spindles::{SpindleTwist, SpindleTwistResults, SpindleTwistWheels, Spindles, TwistByWheel};
pub use twister::{
    Fold, SpindleType, TWISTER, TwisterInputs, TwisterMachine, TwisterResults, twister,
};
pub use warping::{WARPING, WarpYarn, WarpingInputs, WarpingMachine, WarpingResults, warping};
pub use winder::{
    DrumsNeeded, WINDER, WinderInputs, WinderLot, WinderMachine, WinderResults, winder,
};

use crate::calculation::Calculation;
use crate::job::Job;

/// Every machine.
pub(crate) const JOBS: &[&Job] = &[&loom::LOOM, &cloth::PASSAGES, &cloth::BATCHES, &cloth::DRYER];

/// Every calculation of a machine.
pub(crate) const CALCULATIONS: &[&Calculation] =
    &[&MULE, &RING_FRAME, &TWISTER, &WINDER, &REEL, &WARPING];
