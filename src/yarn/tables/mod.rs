//! Handbook tables of the yarn.

mod contraction;
mod diameter;
mod reels;
mod rounded;
pub(super) mod twist;
pub(super) mod weights;

use crate::handbook::Table;

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[
    &contraction::FOLDING_CONTRACTIONS,
    &diameter::DIAMETER_FACTORS,
    &diameter::PACKING,
    &reels::LEA_STRENGTH,
    &reels::REELS,
    &rounded::COUNT_CONSTANTS,
    &rounded::ROUNDED_COUNTS,
    &twist::FOLDING_TWIST_RATIOS,
    &twist::TWIST_MULTIPLIERS,
    &weights::HAND_KNITTING_WEIGHTS,
];
