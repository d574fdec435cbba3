//! Machines at work: from what is set and wanted to output, doffs, packages, hours and people.

pub(crate) mod card;
mod finishing;
mod fringe;
pub(crate) mod loom;
mod lot;
mod lot_on_card;
mod minding;
pub(crate) mod mule;
pub(crate) mod reel;
mod ring_frame;
pub(crate) mod spindles;
pub(crate) mod twister;
mod warping;
mod winder;

pub use card::{
    CARD, CardInputs, CardMachine, CardResults, CardWaste, CardWeb, HeldUpResults, card,
};
pub use finishing::{
    BATCHES, BatchesInputs, BatchesResults, DRYER, DryerInputs, DryerResults, MachinesAtWork,
    PASSAGES, PassagesInputs, PassagesResults, batches, dryer, passages,
};
pub use fringe::{
    FRINGE_TWISTING, FringeSize, FringeTwistingInputs, FringeTwistingResults, FringeWork, Tassel,
    Twisting, fringe_twisting,
};
pub use loom::{
    LOOM, LoomInputs, LoomMachine, LoomResults, LoomRunning, LoomStops, LoomWeft, LoomsMinded,
    StopsCounted, WeaverTime, loom,
};
pub use lot::{Lot as LotOnMachine, LotResults, PackageSize, Packages};
pub use lot_on_card::{LOT_ON_CARD, LotOfSize, LotOnCardInputs, LotOnCardResults, lot_on_card};
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

/// Every calculation of a machine.
pub(crate) const CALCULATIONS: &[&Calculation] = &[
    &CARD,
    &LOT_ON_CARD,
    &MULE,
    &RING_FRAME,
    &TWISTER,
    &WINDER,
    &REEL,
    &WARPING,
    &LOOM,
    &PASSAGES,
    &BATCHES,
    &DRYER,
    &FRINGE_TWISTING,
];
