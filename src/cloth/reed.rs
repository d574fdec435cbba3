//! Reed and healds: dents, ends and heddles.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Count, Length, ReedCount, Sett};

/// Dents in a width of the reed.
#[formula(
    result = "N",
    sources = ["Brooks 1892"],
    limits = ["a warp takes whole dents: round down so that it is never wider than wanted"],
    slips = ["the width of the cloth for that in the reed"]
)]
pub fn dents_in_width<N: Number>(
    /// reed
    #[q("r", 0.5..=30.0)]
    reed: ReedCount<N>,
    /// width in the reed
    #[q("B", 0.05..=4.0)]
    reed_width: Length<N>,
) -> Count<N> {
    100.0 * reed * reed_width
}

/// The sett from the repeats of the weave counted in a width.
///
/// A cloth is analysed so: count the repeats under the glass and the ends in one of them.
#[formula(
    result = "n",
    sources = ["Wolfensberger 1921", "Brooks 1892"],
    limits = ["repeats counted over as wide a piece as can be: half a repeat in a quarter of an inch is far off"],
    slips = ["repeats in a quarter of an inch taken for those in an inch"]
)]
pub fn sett_from_repeats<N: Number>(
    /// repeats
    #[q("n_R", 0.1..=60.0)]
    repeat_sett: Sett<N>,
    /// ends in a repeat
    #[q("R", 2.0..=64.0)]
    repeat: Count<N>,
) -> Sett<N> {
    repeat_sett * repeat
}

/// How close the heddles are on a shaft.
///
/// A straight draft puts one end of as many as there are shafts on each; another puts on a shaft the
/// ends of the repeat that it carries.
#[formula(
    result = "h",
    sources = ["Brooks 1892", "Wolfensberger 1921"],
    limits = ["heddles that slide may be moved along; knitted healds have their stitches where they were made for"],
    slips = ["one heddle density for all shafts of a draft that uses some of them more"]
)]
pub fn heald_density<N: Number>(
    /// sett in the reed
    #[q("n_r", 1.0..=60.0)]
    reed_sett: Sett<N>,
    /// ends of the repeat of the draft on the shaft
    #[q("R_s", 1.0..=32.0)]
    ends_on_shaft: Count<N>,
    /// ends in the repeat of the draft
    #[q("R", 2.0..=64.0)]
    repeat: Count<N>,
) -> Sett<N> {
    reed_sett * ends_on_shaft / repeat
}
