//! Mass of cloth.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::counts::ENGLISH_COTTON;
use crate::quantity::{
    Count, Crimp, Length, LinearDensity, Mass, MassPerArea, OnFibre, Ratio, Sett,
};

/// Mass that the warp alone, or the weft alone, adds to a square metre of cloth.
#[formula(
    result = "ω",
    sources = ["GATE solutions"],
    limits = ["sett, crimp and count of one state of the cloth", "the count with what is on the yarn: oil, size, water"],
    slips = ["the crimp of the other threads", "a take-up on yarn where a crimp on cloth is meant"]
)]
pub fn mass_per_area_of_threads<N: Number>(
    /// sett of these threads
    #[q("n", 1.0..=60.0)]
    sett: Sett<N>,
    /// their count
    #[q("T", 5.0..=2000.0)]
    count: LinearDensity<N>,
    /// their crimp
    #[q("c", 0.0..=0.3)]
    crimp: Crimp<N>,
) -> MassPerArea<N> {
    sett * count * (1.0 + crimp) / 10.0
}

/// Mass of a square metre of cloth from its threads.
#[formula(
    result = "ω",
    sources = ["GATE solutions"],
    limits = ["setts, crimps and counts of one state of the cloth", "the counts with what is on the yarn: oil, size, water"],
    slips = ["leaving out the crimp", "a crimp on cloth where a take-up on yarn was measured"]
)]
pub fn mass_per_area<N: Number>(
    /// ends
    #[q("n₁", 1.0..=60.0)]
    warp_sett: Sett<N>,
    /// count of the warp
    #[q("T₁", 5.0..=2000.0)]
    warp_count: LinearDensity<N>,
    /// crimp of the warp
    #[q("c₁", 0.0..=0.3)]
    warp_crimp: Crimp<N>,
    /// picks
    #[q("n₂", 1.0..=60.0)]
    weft_sett: Sett<N>,
    /// count of the weft
    #[q("T₂", 5.0..=2000.0)]
    weft_count: LinearDensity<N>,
    /// crimp of the weft
    #[q("c₂", 0.0..=0.3)]
    weft_crimp: Crimp<N>,
) -> MassPerArea<N> {
    let warp_mass = (warp_sett * warp_count * (1.0 + warp_crimp) / 10.0).named([
        "ω₁",
        "g/m²",
        "warp in the cloth",
    ]);
    let weft_mass = (weft_sett * weft_count * (1.0 + weft_crimp) / 10.0).named([
        "ω₂",
        "g/m²",
        "weft in the cloth",
    ]);
    warp_mass + weft_mass
}

/// Mass per area as the trade's pages have it: threads in an inch over the cotton count, times a
/// rounded multiplier.
#[formula(
    result = "ω",
    sources = ["GSM pages", "definition"],
    limits = ["to check a printed figure: the multiplier is 23.2496 exactly, and pages print 23.25, 23.27 and 23.5", "for your own cloth the exact formula is mass_per_area"],
    slips = ["a rounded multiplier: 23.5 is 1.1 % too high", "100 + 6 % read as 100.06: the crimp is lost"]
)]
pub fn mass_per_area_by_multiplier<N: Number>(
    /// multiplier, for threads in an inch, cotton counts and g/m²
    #[q("k", 23.0..=24.0)]
    mass_multiplier: Ratio<N>,
    /// ends
    #[q("n₁", 1.0..=60.0)]
    warp_sett: Sett<N>,
    /// count of the warp
    #[q("T₁", 5.0..=2000.0)]
    warp_count: LinearDensity<N>,
    /// crimp of the warp
    #[q("c₁", 0.0..=0.3)]
    warp_crimp: Crimp<N>,
    /// picks
    #[q("n₂", 1.0..=60.0)]
    weft_sett: Sett<N>,
    /// count of the weft
    #[q("T₂", 5.0..=2000.0)]
    weft_count: LinearDensity<N>,
    /// crimp of the weft
    #[q("c₂", 0.0..=0.3)]
    weft_crimp: Crimp<N>,
) -> MassPerArea<N> {
    // Ends in an inch over the cotton count: 2.54 n, and T over 590.54.
    let per_count = 2.54 / ENGLISH_COTTON;
    let warp_term = (warp_sett * warp_count * per_count * (1.0 + warp_crimp)).named([
        "t₁",
        "",
        "ends in an inch over their cotton count, with the crimp",
    ]);
    let weft_term = (weft_sett * weft_count * per_count * (1.0 + weft_crimp)).named([
        "t₂",
        "",
        "picks in an inch over their cotton count, with the crimp",
    ]);
    mass_multiplier * (warp_term + weft_term)
}

/// Count of a yarn with size or oil on it.
#[formula(
    result = "T₂",
    sources = ["definition"],
    limits = ["the share is on the yarn without it", "the length of the yarn does not change"],
    slips = ["taking the share of the sized yarn", "size on the weft too: it is put on the warp alone"]
)]
pub fn count_with_added<N: Number>(
    /// count without it
    #[q("T", 5.0..=2000.0)]
    count: LinearDensity<N>,
    /// size or oil, on the yarn without it
    #[q("z", 0.0..=0.5)]
    size_or_oil: OnFibre<N>,
) -> LinearDensity<N> {
    count * (1.0 + size_or_oil)
}

/// Mass of a running metre of cloth.
#[formula(
    result = "λ",
    sources = ["definition"],
    limits = ["ounces of a running yard say nothing without the width: 56, 58 and 60 in are all in use"],
    slips = ["taking ounces of a running yard for ounces of a square yard"]
)]
#[inverse(
    "Mass per area from the mass of a running metre.",
    mass_per_area_of_cloth(running_mass "mass of a running metre": 1000.0..=5000000.0, cloth_width) -> mass_per_area
        = running_mass / (1000.0 * cloth_width),
    limits = ["the width at which the running metre or yard was weighed"],
    slips = ["the wrong width: 56, 58 and 60 in are all in use"]
)]
pub fn running_mass_of_cloth<N: Number>(
    /// mass per area
    #[q("ω", 20.0..=2000.0)]
    mass_per_area: MassPerArea<N>,
    /// width
    #[q("b", 0.05..=4.0)]
    cloth_width: Length<N>,
) -> LinearDensity<N> {
    1000.0 * mass_per_area * cloth_width
}

/// Mass of a piece from its mass per area.
#[formula(
    result = "m",
    sources = ["definition"],
    limits = ["without fringes"],
    slips = ["loom sizes with a finished mass per area"]
)]
pub fn mass_of_piece<N: Number>(
    /// mass per area
    #[q("ω", 20.0..=2000.0)]
    mass_per_area: MassPerArea<N>,
    /// width
    #[q("b", 0.05..=4.0)]
    cloth_width: Length<N>,
    /// length
    #[q("L", 0.05..=500.0)]
    cloth_length: Length<N>,
) -> Mass<N> {
    mass_per_area * cloth_width * cloth_length / 1000.0
}

/// Mass of the yarn in a warp.
#[formula(
    result = "m₁",
    sources = ["Brooks 1892", "Taylor 1909"],
    limits = ["the length of the warp, not of the cloth", "without size"],
    slips = ["the length of the cloth instead of that of the warp", "the hank of another trade: 840 yards of cotton, 560 of worsted"]
)]
pub fn warp_mass<N: Number>(
    /// ends
    #[q("N", 10.0..=20000.0)]
    ends: Count<N>,
    /// length of the warp
    #[q("W", 0.5..=5000.0)]
    warp_length: Length<N>,
    /// count of the warp
    #[q("T₁", 5.0..=2000.0)]
    warp_count: LinearDensity<N>,
) -> Mass<N> {
    ends * warp_length * warp_count * 1e-6
}

/// Mass of the size on a warp.
#[formula(
    result = "m_z",
    sources = ["Brooks 1892"],
    limits = ["the share is on the yarn of the warp without size"],
    slips = ["reckoning the size on the whole piece, weft and all"]
)]
pub fn size_mass<N: Number>(
    /// mass of the warp without size
    #[q("m₁", 0.1..=2000.0)]
    warp_mass: Mass<N>,
    /// size, on the warp without it
    #[q("z", 0.0..=0.5)]
    size: OnFibre<N>,
) -> Mass<N> {
    warp_mass * size
}

/// Mass of the weft in a length of cloth.
#[formula(
    result = "m₂",
    sources = ["Brooks 1892", "Taylor 1909"],
    limits = ["a pick is as long as the reed is wide: its crimp is already in that width", "waste is extra"],
    slips = ["the width of the cloth instead of that in the reed"]
)]
pub fn weft_mass<N: Number>(
    /// width in the reed
    #[q("B", 0.05..=4.0)]
    reed_width: Length<N>,
    /// length of the cloth
    #[q("L", 0.2..=5000.0)]
    cloth_length: Length<N>,
    /// picks in the cloth
    #[q("n₂", 1.0..=60.0)]
    weft_sett: Sett<N>,
    /// count of the weft
    #[q("T₂", 5.0..=2000.0)]
    weft_count: LinearDensity<N>,
) -> Mass<N> {
    100.0 * weft_sett * cloth_length * reed_width * weft_count * 1e-6
}

/// Mass of a piece as it leaves the loom: warp with its size, and weft.
#[formula(
    result = "m",
    sources = ["Brooks 1892"],
    limits = ["size is on the warp alone"],
    slips = ["reckoning the size on the whole piece, weft and all"]
)]
pub fn grey_mass<N: Number>(
    /// mass of the warp without size
    #[q("m₁", 0.1..=2000.0)]
    warp_mass: Mass<N>,
    /// size, on the warp without it
    #[q("z", 0.0..=0.5)]
    size: OnFibre<N>,
    /// mass of the weft
    #[q("m₂", 0.1..=2000.0)]
    weft_mass: Mass<N>,
) -> Mass<N> {
    warp_mass * (1.0 + size) + weft_mass
}
