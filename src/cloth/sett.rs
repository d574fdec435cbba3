//! Sett and reed.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Count, Length, LinearDensity, Ratio, ReedCount, Sett};

/// Ends across the reed.
#[formula(
    result = "n_r",
    sources = ["Taylor 1909", "Brooks 1892"],
    limits = ["in the reed; off the loom the cloth has drawn in and the sett is closer"],
    slips = ["a reed system that counts two-ended splits, doubled once more"]
)]
#[inverse(
    "The reed for a sett.",
    reed_for_sett(reed_sett "sett in the reed": 1.0..=60.0, ends_per_dent) -> reed
        = reed_sett / ends_per_dent,
    limits = ["choose the nearest reed that the mill owns"],
    slips = ["the sett off the loom taken for that in the reed"]
)]
pub fn sett_in_reed<N: Number>(
    /// reed
    #[q("r", 0.5..=30.0)]
    reed: ReedCount<N>,
    /// ends in a dent
    #[q("e", 1.0..=6.0)]
    ends_per_dent: Count<N>,
) -> Sett<N> {
    reed * ends_per_dent
}

/// Threads in a width.
#[formula(
    result = "N",
    sources = ["Taylor 1909", "Brooks 1892"],
    limits = ["selvedge ends are extra"],
    slips = ["the width of the cloth with the sett of the reed"]
)]
pub fn ends_in_width<N: Number>(
    /// sett
    #[q("n", 1.0..=60.0)]
    sett: Sett<N>,
    /// width in the same state
    #[q("b", 0.05..=4.0)]
    cloth_width: Length<N>,
) -> Count<N> {
    100.0 * sett * cloth_width
}

/// Ends that fill whole dents within a width.
#[formula(
    result = "N",
    sources = ["practice"],
    limits = ["rounded down, so that the warp is never wider than wanted"],
    slips = ["an end count that leaves a dent half filled"]
)]
pub fn ends_for_reed<N: Number>(
    /// reed
    #[q("r", 0.5..=30.0)]
    reed: ReedCount<N>,
    /// ends in a dent
    #[q("e", 1.0..=6.0)]
    ends_per_dent: Count<N>,
    /// width in the reed
    #[q("B", 0.05..=4.0)]
    reed_width: Length<N>,
) -> Count<N> {
    // A millionth of a dent: 29 dents must not become 28.999… by the rounding of binary figures.
    (100.0 * reed * reed_width).round_down(1e-6) * ends_per_dent
}

/// Diameters of a yarn that lie side by side in a centimetre.
///
/// In the trade's units: the factor times the root of the yards in a pound, in an inch.
#[formula(
    result = "D",
    sources = ["Ashenhurst 1884", "Ashenhurst page 1999", "Ground Weave", "Taylor 1909"],
    limits = ["the factor is 0.84 or 0.85 for woollen, 0.90 for worsted, 0.90 to 0.95 for cotton: sources differ"],
    slips = ["proportion instead of square root when the count changes"]
)]
pub fn diameters_side_by_side<N: Number>(
    /// factor of the yarn
    #[q("k", 0.8..=1.0)]
    yarn_factor: Ratio<N>,
    /// yarn count
    #[q("T", 5.0..=1000.0)]
    count: LinearDensity<N>,
) -> Sett<N> {
    crate::yarn::side_by_side(yarn_factor, count)
}

/// The maximum sett of a weave by diameters and intersections, for a square cloth.
#[formula(
    result = "n_m",
    sources = ["Ashenhurst 1884", "Ashenhurst page 1999", "Ground Weave"],
    limits = ["round hard threads in one plane: too open for long floats, too close for soft loose yarn", "warp and weft alike", "handweavers set about three quarters to four fifths of it; cloth that is to be milled or raised is commonly set more open, as it closes up in finishing"],
    slips = ["taking the maximum for the sett to weave"]
)]
pub fn maximum_sett<N: Number>(
    /// diameters side by side
    #[q("D", 1.0..=60.0)]
    side_by_side: Sett<N>,
    /// threads in the repeat
    #[q("R", 2.0..=32.0)]
    repeat: Count<N>,
    /// intersections in the repeat
    #[q("I", 2.0..=32.0)]
    intersections: Count<N>,
) -> Sett<N> {
    side_by_side * repeat / (repeat + intersections)
}
