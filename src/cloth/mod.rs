//! The cloth: weave, sett and reed, the piece, its mass, knitting, finishing.

mod finish;
mod finishing;
mod geometry;
mod knit;
mod mass;
mod piece;
mod sett;
mod tables;
mod weave;

pub use finish::*;
pub use finishing::*;
pub use geometry::*;
pub use knit::*;
pub use mass::*;
pub use piece::*;
pub use sett::*;
pub use weave::*;

pub(crate) use finish::CAUTION as FINISHING_CAUTION;
pub(crate) use tables::TABLES;

use crate::formula::Formula;

/// The formulas of this room, file by file.
pub(crate) const FORMULAS: &[&[&Formula]] = &[
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
    sett::FORMULAS,
];
