//! The cloth: weave, sett and reed, the piece, its mass, knitting, finishing.

pub(crate) mod article;
mod colours;
mod cover;
mod finish;
mod finishing;
mod geometry;
mod knit;
mod mass;
mod picture;
mod piece;
mod reed;
mod sett;
mod setting;
mod sleying;
mod tables;
mod weave;

pub use article::{ASKED, Article, Asked};
pub use colours::{ColourOrder, Edge, Laid, Stripe};
pub use cover::*;
pub use finish::*;
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

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[
    cover::FORMULAS,
    finishing::change::FORMULAS,
    finishing::mass::FORMULAS,
    finishing::size::FORMULAS,
    finishing::yarn::FORMULAS,
    geometry::KEMP,
    geometry::PEIRCE,
    geometry::RULES,
    knit::FORMULAS,
    mass::FORMULAS,
    piece::FORMULAS,
    reed::FORMULAS,
    sett::FORMULAS,
    setting::change::FORMULAS,
    setting::diameters::FORMULAS,
    setting::limits::FORMULAS,
];
