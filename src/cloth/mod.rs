//! The cloth: weave, sett and reed, the piece, its mass, knitting, finishing.

mod colours;
mod cover;
mod finishing;
mod geometry;
mod knit;
mod mass;
mod picture;
pub(crate) mod piece;
mod reed;
mod sett;
mod setting;
mod sleying;
mod tables;
mod weave;

pub use colours::{ColourOrder, Edge, Laid, Stripe};
pub use cover::*;
pub use finishing::*;
pub use geometry::*;
pub use knit::*;
pub use mass::*;
pub use picture::{Face, Picture, Threads};
pub use piece::*;
pub use reed::*;
pub use sett::*;
pub use setting::*;
pub use sleying::*;
pub use weave::*;

pub(crate) use tables::TABLES;
