//! Machines at work: from what is set and wanted to output, doffs, packages, hours and people.

mod asks;
mod cloth;
mod common;
mod loom;
mod mule;
mod reel;
mod spindles;
mod warping;
mod winder;

use crate::job::Job;

/// Every machine.
pub(crate) const JOBS: &[&Job] = &[
    &mule::MULE,
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
