//! Mass of cloth.

use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{Crimp, Length, LinearDensity, Mass, MassPerArea, Sett};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] =
    &[&MASS_PER_AREA, &LINEAR_DENSITY_OF_CLOTH, &MASS_PER_AREA_OF_CLOTH, &MASS_OF_PIECE];

/// Mass of a square metre of cloth from its threads.
#[formula(
    result = "w",
    sources = ["GATE solutions"],
    limits = ["setts, crimps and counts of one state of the cloth", "the counts with what is on the yarn: oil, size, water"],
    slips = ["leaving out the crimp", "a crimp on cloth where a take-up on yarn was measured"]
)]
pub fn mass_per_area<N: Number>(
    /// ends
    #[q("n₁", 1.0..=60.0)]
    ends: Sett<N>,
    /// count of the warp
    #[q("T₁", 5.0..=2000.0)]
    warp: LinearDensity<N>,
    /// crimp of the warp
    #[q("c₁", 0.0..=0.3)]
    warp_crimp: Crimp<N>,
    /// picks
    #[q("n₂", 1.0..=60.0)]
    picks: Sett<N>,
    /// count of the weft
    #[q("T₂", 5.0..=2000.0)]
    weft: LinearDensity<N>,
    /// crimp of the weft
    #[q("c₂", 0.0..=0.3)]
    weft_crimp: Crimp<N>,
) -> MassPerArea<N> {
    let warp_mass = (ends * warp * (1.0 + warp_crimp) / 10.0).named("w₁");
    let weft_mass = (picks * weft * (1.0 + weft_crimp) / 10.0).named("w₂");
    warp_mass + weft_mass
}

/// Mass of a running metre of cloth.
#[formula(
    result = "T",
    sources = ["definition"],
    limits = ["ounces of a running yard say nothing without the width: 56, 58 and 60 in are all in use"],
    slips = ["taking ounces of a running yard for ounces of a square yard"]
)]
pub fn linear_density_of_cloth<N: Number>(
    /// mass per area
    #[q("w", 20.0..=2000.0)]
    area: MassPerArea<N>,
    /// width
    #[q("B", 0.05..=4.0)]
    width: Length<N>,
) -> LinearDensity<N> {
    1000.0 * area * width
}

/// Mass per area from the mass of a running metre.
#[formula(
    result = "w",
    sources = ["definition"],
    limits = ["the width at which the running metre or yard was weighed"],
    slips = ["the wrong width: 56, 58 and 60 in are all in use"]
)]
pub fn mass_per_area_of_cloth<N: Number>(
    /// mass of a running metre
    #[q("T", 1000.0..=5000000.0)]
    running: LinearDensity<N>,
    /// width
    #[q("B", 0.05..=4.0)]
    width: Length<N>,
) -> MassPerArea<N> {
    running / (1000.0 * width)
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
    #[q("w", 20.0..=2000.0)]
    area: MassPerArea<N>,
    /// width
    #[q("B", 0.05..=4.0)]
    width: Length<N>,
    /// length
    #[q("L", 0.05..=500.0)]
    length: Length<N>,
) -> Mass<N> {
    area * width * length / 1000.0
}
