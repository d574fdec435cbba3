//! Changing a cloth and keeping its firmness: weave, weight, yarn. And Taylor's rule of take-up.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::counts::ENGLISH_COTTON;
use crate::quantity::{Count, Crimp, LinearDensity, Ratio, Sett};

/// The sett for another weave of the same yarn at the same firmness.
#[formula(
    result = "n₂",
    sources = ["Taylor 1909"],
    limits = ["by diameters and intersections; the same yarn and the same relation of ends to picks"],
    slips = ["the ratio upside down: the weave with fewer intersections takes more ends", "one value for all twills: 2/1 takes 1.2 times the ends of plain, 2/2 takes 1⅓"]
)]
pub fn sett_for_weave<N: Number>(
    /// sett of the cloth at hand
    #[q("n", 1.0..=80.0)]
    sett: Sett<N>,
    /// threads in its repeat
    #[q("R", 2.0..=40.0)]
    repeat: Count<N>,
    /// intersections in its repeat
    #[q("I", 2.0..=40.0)]
    intersections: Count<N>,
    /// threads in the new repeat
    #[q("R₂", 2.0..=40.0)]
    new_repeat: Count<N>,
    /// intersections in the new repeat
    #[q("I₂", 2.0..=40.0)]
    new_intersections: Count<N>,
) -> Sett<N> {
    sett * ((repeat + intersections) / repeat) / ((new_repeat + new_intersections) / new_repeat)
}

/// The sett for another count of yarn at the same firmness, in the same weave.
#[formula(
    result = "n₂",
    sources = ["Taylor 1909"],
    limits = ["yarns of one make: fibre, spinning and twist factor alike"],
    slips = ["proportion instead of square root", "the counts the wrong way round: the coarser yarn takes the fewer ends"]
)]
pub fn sett_for_count<N: Number>(
    /// sett of the cloth at hand
    #[q("n", 1.0..=160.0)]
    sett: Sett<N>,
    /// count of its yarn
    #[q("T", 1.0..=2000.0)]
    count: LinearDensity<N>,
    /// count of the new yarn
    #[q("T₂", 1.0..=2000.0)]
    new_count: LinearDensity<N>,
) -> Sett<N> {
    sett * (count / new_count).sqrt()
}

/// The count for a heavier or lighter cloth of the same weave and firmness.
///
/// The yarn goes as the square of the weight, and the sett the other way, see `sett_for_weight`.
#[formula(
    result = "T₂",
    sources = ["Yarn and weight 2026"],
    limits = ["warp, weft, ends and picks are all changed", "the crimp stays as it was"],
    slips = ["changing the yarn in proportion to the weight and leaving the sett: the cloth gets firmer", "multiplying an indirect count by the square: it is divided"]
)]
pub fn count_for_weight<N: Number>(
    /// count of the yarn at hand
    #[q("T", 1.0..=2000.0)]
    count: LinearDensity<N>,
    /// new weight over the old
    #[q("μ", 0.5..=2.0)]
    mass_ratio: Ratio<N>,
) -> LinearDensity<N> {
    count * mass_ratio.squared()
}

/// The sett for a heavier or lighter cloth of the same weave and firmness, in the yarn that suits it.
#[formula(
    result = "n₂",
    sources = ["Yarn and weight 2026"],
    limits = ["with the yarn of count_for_weight in warp and weft"],
    slips = ["more ends for the heavier cloth: it is the yarn that gets thicker, and the ends fewer"]
)]
pub fn sett_for_weight<N: Number>(
    /// sett of the cloth at hand
    #[q("n", 1.0..=80.0)]
    sett: Sett<N>,
    /// new weight over the old
    #[q("μ", 0.5..=2.0)]
    mass_ratio: Ratio<N>,
) -> Sett<N> {
    sett / mass_ratio
}

/// Intersections that an end makes in a length of cloth.
#[formula(
    result = "i",
    sources = ["Taylor 1909"],
    limits = ["ends of one interlacing; where they differ take each for itself"],
    slips = ["every pick taken for an intersection in a weave that floats"]
)]
pub fn intersections_in_length<N: Number>(
    /// picks
    #[q("n₂", 1.0..=120.0)]
    weft_sett: Sett<N>,
    /// picks in the repeat
    #[q("R", 2.0..=32.0)]
    repeat: Count<N>,
    /// intersections of an end in the repeat
    #[q("I", 2.0..=32.0)]
    intersections: Count<N>,
) -> Sett<N> {
    weft_sett * intersections / repeat
}

/// What the warp must be longer than the cloth, by Taylor's rule for cotton.
///
/// In per cent: intersections in an inch times 3 (medium cloths) or 4 (fine ones tightly picked), over
/// the cotton count of the weft.
#[formula(
    result = "c",
    sources = ["Taylor 1909"],
    limits = ["cotton; for wool measure a piece", "3 for medium cloths, 4 for fine ones tightly picked"],
    slips = ["the count of the warp for that of the weft", "on the length of the warp: it is added to that of the cloth"]
)]
pub fn taylor_crimp<N: Number>(
    /// intersections of an end
    #[q("i", 5.0..=60.0)]
    intersection_sett: Sett<N>,
    /// multiplier
    #[q("m", 3.0..=4.0)]
    taylor_multiplier: Ratio<N>,
    /// count of the weft
    #[q("T₂", 5.0..=60.0)]
    weft_count: LinearDensity<N>,
) -> Crimp<N> {
    let number = (ENGLISH_COTTON / weft_count).named(["N", "Ne", "weft count"]);
    2.54 * intersection_sett * taylor_multiplier / number / 100.0
}
