//! Handbook tables of the yarn.

mod diameter;
mod reels;
mod rounded;
mod twist;
pub(super) mod weights;

use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[
    &diameter::DIAMETER_FACTORS,
    &diameter::PACKING,
    &reels::LEA_STRENGTH,
    &reels::REELS,
    &rounded::ROUNDED_COUNTS,
    &twist::FOLDING_TWIST_RATIOS,
    &twist::TWIST_MULTIPLIERS,
    &weights::HAND_KNITTING_WEIGHTS,
];
