//! Setting by the diameters of the yarn, after Ashenhurst, and by its wraps.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::counts::YARD_PER_POUND;
use crate::quantity::{Count, LinearDensity, Ratio, Sett};

/// The maximum sett of one system by diameters and intersections, where the other is of another yarn.
///
/// Each intersection lets one thread of the other system through: for ends, count those of a pick.
#[formula(
    result = "n_m",
    sources = ["Ashenhurst 1884", "Ashenhurst page 1999", "definition"],
    limits = ["the printed rule is for like yarns; here the room at an intersection is a diameter of the other yarn", "round hard threads in one plane"],
    slips = ["the intersections of the ends for the sett of the ends: it is the picks that pass between ends"]
)]
pub fn maximum_sett_unlike<N: Number>(
    /// diameters of the yarn that is set, side by side
    #[q("D₁", 1.0..=60.0)]
    own_side_by_side: Sett<N>,
    /// diameters of the yarn that crosses it, side by side
    #[q("D₂", 1.0..=60.0)]
    crossing_side_by_side: Sett<N>,
    /// threads in the repeat
    #[q("R", 2.0..=32.0)]
    repeat: Count<N>,
    /// intersections of a crossing thread in the repeat
    #[q("I", 2.0..=32.0)]
    intersections: Count<N>,
) -> Sett<N> {
    repeat / (repeat / own_side_by_side + intersections / crossing_side_by_side)
}

/// The maximum sett of a weave by the curvature of the threads, for a square cloth of like yarns.
///
/// At an intersection two neighbours are √3 diameters apart, elsewhere one: the crossing thread bends
/// round them instead of passing straight between.
#[formula(
    result = "n_m",
    sources = ["memory", "definition"],
    limits = ["the name is Ashenhurst's and is remembered; the geometry was worked out: it is Peirce's jam of a square cloth, and Love's for other weaves", "round incompressible threads"],
    slips = ["taking the maximum for the sett to weave", "comparing it with one by diameters and intersections: it is 15 % closer in plain"]
)]
pub fn curvature_sett<N: Number>(
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
    side_by_side * repeat / (repeat + (3.0_f64.sqrt() - 1.0) * intersections)
}

/// The maximum sett of one system by curvature, where the other is of another yarn.
///
/// Both systems take an equal part of the bend, so that neighbours at an intersection are √3/2 times
/// the sum of both diameters apart.
#[formula(
    result = "n_m",
    sources = ["definition"],
    limits = ["worked out from the jam with warp and weft bent alike; other shares of the bend give other setts", "round incompressible threads"],
    slips = ["the intersections of the ends for the sett of the ends: it is the picks that pass between ends"]
)]
pub fn curvature_sett_unlike<N: Number>(
    /// diameters of the yarn that is set, side by side
    #[q("D₁", 1.0..=60.0)]
    own_side_by_side: Sett<N>,
    /// diameters of the yarn that crosses it, side by side
    #[q("D₂", 1.0..=60.0)]
    crossing_side_by_side: Sett<N>,
    /// threads in the repeat
    #[q("R", 2.0..=32.0)]
    repeat: Count<N>,
    /// intersections of a crossing thread in the repeat
    #[q("I", 2.0..=32.0)]
    intersections: Count<N>,
) -> Sett<N> {
    let at_crossing = (3.0_f64.sqrt() / 2.0
        * (1.0 / own_side_by_side + 1.0 / crossing_side_by_side))
        .named(["p", "cm", "room that an end takes where the weft crosses"]);
    repeat / ((repeat - intersections) / own_side_by_side + intersections * at_crossing)
}

/// The maximum sett of a balanced plain cloth by Taylor: half of the diameters and a little more.
#[formula(
    result = "n_m",
    sources = ["Taylor 1909"],
    limits = ["plain cloth, cotton, ends and picks alike; he says about 5 per cent, as threads leave the plane"],
    slips = ["the 5 per cent once more, where the diameters were taken with 0.95"]
)]
pub fn taylor_plain_sett<N: Number>(
    /// diameters side by side
    #[q("D", 1.0..=160.0)]
    side_by_side: Sett<N>,
    /// allowance
    #[q("a", 0.0..=0.1)]
    taylor_allowance: Ratio<N>,
) -> Sett<N> {
    side_by_side / 2.0 * (1.0 + taylor_allowance)
}

/// The count of yarn that suits a sett wanted, by diameters and intersections.
#[formula(
    result = "T",
    sources = ["Ashenhurst 1884", "Ashenhurst page 1999", "Ground Weave"],
    limits = ["a square cloth of like yarns", "the share of the maximum is the mill's own; see the table working_setts"],
    slips = ["leaving out the share: the yarn would suit the densest cloth that can be woven", "forgetting the square: a tenth more ends want a fifth finer yarn"]
)]
pub fn count_for_sett<N: Number>(
    /// factor of the yarn
    #[q("k", 0.8..=1.0)]
    yarn_factor: Ratio<N>,
    /// sett wanted
    #[q("n", 1.0..=60.0)]
    sett: Sett<N>,
    /// share of the maximum
    #[q("s", 0.4..=1.0)]
    sett_share: Ratio<N>,
    /// threads in the repeat
    #[q("R", 2.0..=32.0)]
    repeat: Count<N>,
    /// intersections in the repeat
    #[q("I", 2.0..=32.0)]
    intersections: Count<N>,
) -> LinearDensity<N> {
    let diameters = (sett / sett_share * (repeat + intersections) / repeat).named([
        "D",
        "/cm",
        "threads and crossings in a centimetre",
    ]);
    let yards_per_pound =
        (2.54 * diameters / yarn_factor).squared().named(["Y", "yd/lb", "yards in a pound"]);
    YARD_PER_POUND / yards_per_pound
}

/// The sett to weave, as a share of the maximum.
#[formula(
    result = "n",
    sources = ["Ashenhurst page 1999", "Osterkamp"],
    limits = ["the share goes by use, finish and fibre and is the mill's to give; handweavers' rules run from three quarters to four fifths, and cloth that is to be milled or raised is commonly set more open"],
    slips = ["a share of wraps for a share of the maximum: wraps are not diameters"]
)]
#[inverse(
    "A sett as a share of the maximum.",
    share_of_maximum(sett: 1.0..=80.0, maximum_sett) -> sett_share = sett / maximum_sett,
    limits = ["only as good as the theory that gave the maximum sett: say which"],
    slips = ["comparing shares by different theories", "a square maximum for a cloth with many more ends than picks"]
)]
pub fn working_sett<N: Number>(
    /// maximum sett by a theory
    #[q("n_m", 1.0..=80.0)]
    maximum_sett: Sett<N>,
    /// share of it
    #[q("s", 0.4..=1.0)]
    sett_share: Ratio<N>,
) -> Sett<N> {
    maximum_sett * sett_share
}

/// A sett by a rule of wraps.
#[formula(
    result = "n",
    sources = ["Lucerne workshop", "Yield table"],
    limits = ["a rule of thumb for a first sample, already a sett to weave; wraps go by the hand", "see the table wraps_rules"],
    slips = ["wraps in a centimetre with a sett in an inch", "taking a share off it once more, as of a maximum"]
)]
pub fn sett_from_wraps<N: Number>(
    /// wraps
    #[q("w", 1.0..=60.0)]
    wraps: Sett<N>,
    /// share of the wraps
    #[q("s", 0.3..=1.6)]
    wraps_share: Ratio<N>,
) -> Sett<N> {
    wraps * wraps_share
}

/// The maximum sett from wraps: these are fewer than diameters.
#[formula(
    result = "n_m",
    sources = ["Osterkamp"],
    limits = ["one weaver's rule: wraps over 0.7 stand for diameters", "wraps go by the hand, the tension and the twist"],
    slips = ["half of the wraps taken for the maximum of plain: that is a sett to weave, and the maximum is closer by 1/0.7"]
)]
pub fn maximum_sett_from_wraps<N: Number>(
    /// wraps
    #[q("w", 1.0..=60.0)]
    wraps: Sett<N>,
    /// wraps for a diameter
    #[q("c", 0.5..=1.0)]
    wraps_per_diameter: Ratio<N>,
    /// threads in the repeat
    #[q("R", 2.0..=32.0)]
    repeat: Count<N>,
    /// intersections in the repeat
    #[q("I", 2.0..=32.0)]
    intersections: Count<N>,
) -> Sett<N> {
    wraps / wraps_per_diameter * repeat / (repeat + intersections)
}
