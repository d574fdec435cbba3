//! Cover: how closely threads lie for their thickness.
//!
//! A *fractional cover* comes from a real diameter and is a share of the surface. A *cover factor* comes
//! from sett and count alone; it is printed in several forms, each of which is a unit of its own here,
//! so that two forms can be distinguished and never be compared by their bare numbers.

use std::f64::consts::PI;

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{CoverFactor, Diameter, Fraction, LinearDensity, Sett, SpecificVolume};

/// How closely the threads of one direction lie for their count.
#[formula(
    result = "K_c",
    sources = ["Woven fabric handout", "GATE solutions"],
    limits = ["compares yarns of one make, packed alike; it knows neither density nor twist", "a number alone says nothing: the same cloth has 12.5 in the SI form and 13.1 in Peirce's"],
    slips = ["the count instead of its root: 'threads/cm × tex × 0.1' is a misprint", "comparing the SI form with Peirce's: 4.5 % apart", "another system's count in Peirce's form"]
)]
#[inverse(
    "The sett that gives a cover factor.",
    sett_for_cover_factor(cover_factor: 2.0..=30.0, count) -> sett
        = 10.0 * cover_factor / count.sqrt(),
    limits = ["whether it can be woven is another matter: see weavability and the theories of setting"],
    slips = ["the same sett for another count", "proportion instead of square root when the count changes"]
)]
#[inverse(
    "The count that gives a cover factor at a sett.",
    count_for_cover_factor(cover_factor: 2.0..=30.0, sett) -> count
        = (10.0 * cover_factor / sett).squared(),
    limits = ["yarn of the make that the factor is known of"],
    slips = ["forgetting the square: twice the cover asks for four times the count"]
)]
pub fn cover_factor<N: Number>(
    /// sett
    #[q("n", 1.0..=80.0)]
    sett: Sett<N>,
    /// yarn count
    #[q("T", 1.0..=2000.0)]
    count: LinearDensity<N>,
) -> CoverFactor<N> {
    sett * count.sqrt() / 10.0
}

/// Cover factor of the cloth from those of warp and weft.
#[formula(
    result = "K_c",
    sources = ["memory", "Textile School"],
    limits = ["the limit is that of the yarn, threads touching: 28 in Peirce's form belongs to cotton; see cover_factor_limit", "the page prints (K₁ − K₂)/28 for K₁K₂/28: a misprint"],
    slips = ["adding the two: where they cross they cover once", "28 with cover factors of the SI form"]
)]
pub fn cloth_cover_factor<N: Number>(
    /// cover factor of the warp
    #[q("K₁", 2.0..=28.0)]
    warp_cover_factor: CoverFactor<N>,
    /// cover factor of the weft
    #[q("K₂", 2.0..=28.0)]
    weft_cover_factor: CoverFactor<N>,
    /// cover factor at which threads touch
    #[q("K_l", 10.0..=35.0)]
    cover_factor_limit: CoverFactor<N>,
) -> CoverFactor<N> {
    warp_cover_factor + weft_cover_factor
        - warp_cover_factor * weft_cover_factor / cover_factor_limit
}

/// Cover factor at which round threads lie side by side and touch.
#[formula(
    result = "K_l",
    sources = ["Balasubramanian", "definition"],
    limits = ["round threads in one plane; cotton of 1.1 cm³/g has 27.9 in Peirce's form, called 28"],
    slips = ["28 for every yarn: wool and woollen yarns are thicker for their count and touch sooner"]
)]
pub fn cover_factor_limit<N: Number>(
    /// specific volume of the yarn
    #[q("v", 0.7..=6.0)]
    specific_volume: SpecificVolume<N>,
) -> CoverFactor<N> {
    (1000.0 * PI / 4.0 / specific_volume).sqrt()
}

/// Cover factor at which a square plain cloth jams: threads √3 diameters apart both ways.
#[formula(
    result = "K_c",
    sources = ["Balasubramanian", "Woven fabric handout"],
    limits = ["round hard threads alike in warp and weft, sett alike: 16 in Peirce's form for cotton; one system can lie closer where the other lies more open"],
    slips = ["taking it for the limit of a twill or satin, which go closer"]
)]
pub fn jam_cover_factor<N: Number>(
    /// cover factor at which threads touch
    #[q("K_l", 10.0..=35.0)]
    cover_factor_limit: CoverFactor<N>,
) -> CoverFactor<N> {
    cover_factor_limit / 3.0_f64.sqrt()
}

/// Share of the surface that the threads of one direction cover.
#[formula(
    result = "e",
    sources = ["GATE solutions", "Fibres2Fabrics 2013"],
    limits = ["real diameters as they lie in the cloth: flattened threads cover more", "threads that would overlap (n·d of 1 and more) cover the whole: they are pushed out of the plane or squeezed, and how far above 1 makes no difference"],
    slips = ["a diameter from the count of another fibre or make", "diameter in one unit, sett in another"]
)]
pub fn fractional_cover<N: Number>(
    /// sett
    #[q("n", 1.0..=80.0)]
    sett: Sett<N>,
    /// diameter of the yarn
    #[q("d", 0.03..=6.0)]
    yarn_diameter: Diameter<N>,
) -> Fraction<N> {
    let close = (sett * yarn_diameter / 10.0).named([
        "n·d",
        "",
        "width that the threads take, on the width of cloth",
    ]);
    close.min(1.0)
}

/// Share of the surface that threads cover, from their cover factor and what a gram of yarn fills.
#[formula(
    result = "e",
    sources = ["definition", "memory"],
    limits = ["round threads; wool of 1.31 g/cm³ packed to 0.65 covers 0.0387 a unit of the SI form (from memory), a woollen yarn packs looser: measure it", "threads that would overlap cover the whole"],
    slips = ["density of the fibre for that of the yarn"]
)]
pub fn fractional_cover_of_factor<N: Number>(
    /// cover factor
    #[q("K_c", 0.5..=30.0)]
    cover_factor: CoverFactor<N>,
    /// specific volume of the yarn
    #[q("v", 0.7..=6.0)]
    specific_volume: SpecificVolume<N>,
) -> Fraction<N> {
    let close = (cover_factor * (4.0 / (1000.0 * PI) * specific_volume).sqrt()).named([
        "K_c/K_l",
        "",
        "cover factor on that of threads side by side",
    ]);
    close.min(1.0)
}

/// Share of the surface that warp and weft cover together.
#[formula(
    result = "e",
    sources = ["GATE solutions", "Fibres2Fabrics 2013"],
    limits = ["looking straight down, threads even in thickness and spacing"],
    slips = ["adding the two: two halves would leave no holes"]
)]
pub fn total_cover<N: Number>(
    /// fractional cover of the warp
    #[q("e₁", 0.05..=1.0)]
    warp_cover: Fraction<N>,
    /// fractional cover of the weft
    #[q("e₂", 0.05..=1.0)]
    weft_cover: Fraction<N>,
) -> Fraction<N> {
    warp_cover + weft_cover - warp_cover * weft_cover
}
