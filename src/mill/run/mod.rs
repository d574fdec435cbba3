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

pub use card::*;
pub use finishing::*;
pub use fringe::*;
pub use loom::*;
pub use lot::{Lot as LotOnMachine, LotResults, PackageSize, Packages};
pub use lot_on_card::*;
pub use minding::*;
pub use mule::{
    Delivery, DeliveryResults, DeliveryWheels, MULE, MuleInputs, MuleMachine, MuleResults,
    TwistResults, TwistWheels, mule,
};
pub use reel::*;
pub use ring_frame::*;
pub use spindles::*;
pub use twister::*;
pub use warping::*;
pub use winder::*;
