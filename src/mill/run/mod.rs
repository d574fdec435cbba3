//! Machines at work: from what is set and wanted to output, doffs, packages, hours and people.

mod asks;
mod card;
mod common;
mod finishing;
mod loom;
mod lot;
mod lot_on_card;
mod minding;
mod mule;
mod reel;
mod spindles;
mod warping;
mod winder;

pub use card::{CARD, CardInputs, CardMachine, CardResults, CardWaste, HeldUpResults, card};
pub use finishing::{
    BATCHES, BatchesInputs, BatchesResults, DRYER, DryerInputs, DryerResults, MachinesAtWork,
    PASSAGES, PassagesInputs, PassagesResults, batches, dryer, passages,
};
pub use loom::{
    LOOM, LoomInputs, LoomMachine, LoomResults, LoomRunning, LoomStops, LoomWeft, LoomsMinded,
    StopsCounted, WeaverTime, loom,
};
pub use lot::{Lot as LotOnMachine, LotResults, Packages};
pub use lot_on_card::{LOT_ON_CARD, LotOfSize, LotOnCardInputs, LotOnCardResults, lot_on_card};
pub use minding::{BrokenEnds, Minding, MindingResults, People, Piecing, SpindlesMinded};
pub use mule::{
    Delivery, DeliveryResults, DeliveryWheels, MULE, MuleInputs, MuleMachine, MuleResults,
    TwistResults, TwistWheels, mule,
};

use crate::calculation::Calculation;
use crate::job::Job;

/// Every machine.
pub(crate) const JOBS: &[&Job] =
    &[&spindles::RING_FRAME, &spindles::TWISTER, &winder::WINDER, &reel::REEL, &warping::WARPING];

/// Every calculation of a machine.
pub(crate) const CALCULATIONS: &[&Calculation] =
    &[&MULE, &CARD, &LOT_ON_CARD, &LOOM, &PASSAGES, &BATCHES, &DRYER];
