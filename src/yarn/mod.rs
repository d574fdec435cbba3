//! The yarn: designation, count, folding, twist, hanks and winding, diameter, strength and evenness.

mod ball;
mod check;
mod check_card;
mod contraction;
mod count;
pub mod designation;
mod diameter;
mod evenness;
mod folding;
mod hank;
mod rounding;
mod shares;
mod spindle;
mod strength;
pub(crate) mod tables;
mod twist;
mod whole;
mod winding;
mod wraps;

pub use ball::*;
pub use check::*;
pub use check_card::*;
pub use contraction::*;
pub use count::*;
pub use designation::Yarn;
pub use diameter::*;
pub use evenness::*;
pub use folding::*;
pub use hank::*;
pub use rounding::*;
pub use shares::*;
pub use spindle::*;
pub use strength::*;
pub use twist::*;
pub use whole::{asks_a_single, read_input};
pub use winding::*;
pub use wraps::*;

pub(crate) use tables::TABLES;
