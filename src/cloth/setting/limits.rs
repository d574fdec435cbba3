//! The maximum sett by Galceran, Brierley, Peirce, Love and Milašius.

use std::f64::consts::PI;

use crate::cloth::jam_spacing;
use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{Density, Diameter, LinearDensity, Ratio, Sett, Thickness};

/// Galceran's greatest coefficient of density.
#[formula(
    result = "K",
    sources = ["Galceran", "memory"],
    limits = ["Q is 8.8 to 10 by the material", "intersections for each thread, 1 in plain, is how the coefficient was remembered: the page read does not define it", "by his own paper cloths of single yarn may not reach it"],
    slips = ["the intersections of the warp for the coefficient of the warp: those of the weft count"]
)]
pub fn galceran_coefficient<N: Number>(
    /// coefficient of the material
    #[q("Q", 8.8..=10.0)]
    material_coefficient: Ratio<N>,
    /// intersections for each thread of the other system
    #[q("l", 0.05..=1.0)]
    crossings: Ratio<N>,
) -> Ratio<N> {
    material_coefficient / (1.0 + 0.73 * crossings)
}

/// Sett by Galceran's coefficient of density.
#[formula(
    result = "n",
    sources = ["Galceran"],
    limits = ["the coefficient is for a centimetre and the metric count"],
    slips = ["tex for the metric count: then 31.62 times the coefficient over its root"]
)]
pub fn galceran_sett<N: Number>(
    /// coefficient of density
    #[q("K", 1.0..=10.0)]
    density_coefficient: Ratio<N>,
    /// yarn count
    #[q("T", 5.0..=1000.0)]
    count: LinearDensity<N>,
) -> Sett<N> {
    let number = (1000.0 / count).named(["Nm", "Nm", "count"]);
    density_coefficient * number.sqrt()
}

/// The maximum sett of a square cloth by Brierley.
///
/// In the trade's units: the average float to a power by the class of weave, times the root of a
/// constant times the yards in a pound, in an inch.
#[formula(
    result = "n_q",
    sources = ["Brierley 1931"],
    limits = ["remembered and not read again: check it in a printed copy before you rely on it", "k is 0.239: his 134 for worsted and 200 for cotton over the yards of a hank; see the table brierley_constants", "m is 0.39 for twill, 0.42 for satin, 0.45 for hopsack; that for ribs is not known here", "worsted and cotton mill practice; warp and weft alike"],
    slips = ["the constant of another count system", "the length of the longest float for the average"]
)]
pub fn brierley_sett<N: Number>(
    /// average float, threads for each intersection
    #[q("F", 1.0..=8.0)]
    mean_float: Ratio<N>,
    /// exponent of the class of weave
    #[q("m", 0.3..=0.5, basis = "Brierley 1931")]
    weave_exponent: Ratio<N>,
    /// constant on the yards in a pound
    #[q("k", 0.2..=0.3, basis = "Brierley 1931")]
    brierley_constant: Ratio<N>,
    /// yarn count
    #[q("T", 5.0..=1000.0)]
    count: LinearDensity<N>,
) -> Sett<N> {
    // F to the power m.
    let weave =
        (weave_exponent * mean_float.ln()).exp().named(["Fᵐ", "", "mean float to the power m"]);
    weave * crate::yarn::side_by_side(brierley_constant.sqrt(), count)
}

/// The most picks at a number of ends, by Brierley: the ends to the power ⅔ times the picks stay.
#[formula(
    result = "n₂",
    sources = ["Brierley 1931"],
    limits = ["remembered and not read again", "warp and weft of one count"],
    slips = ["ends and picks to a constant sum: each tenth more ends costs less than a tenth of the picks"]
)]
pub fn brierley_weft_sett<N: Number>(
    /// maximum sett of the square cloth
    #[q("n_q", 1.0..=80.0)]
    square_sett: Sett<N>,
    /// ends
    #[q("n₁", 1.0..=80.0)]
    warp_sett: Sett<N>,
) -> Sett<N> {
    square_sett.powf(5.0 / 3.0) * warp_sett.powf(-2.0 / 3.0)
}

/// The most picks at a number of ends, by Brierley, where warp and weft are of unlike count.
#[formula(
    result = "n₂",
    sources = ["Brierley 1931"],
    limits = ["the exponent ⅔ √(T₁/T₂) is quoted from memory, its sign and the order of the counts to be verified: do not set a loom by it", "the square sett is that of the average count"],
    slips = ["using it where warp and weft are alike and a printed value is at hand"]
)]
pub fn brierley_weft_sett_unlike<N: Number>(
    /// maximum sett of the square cloth
    #[q("n_q", 1.0..=80.0)]
    square_sett: Sett<N>,
    /// ends
    #[q("n₁", 1.0..=80.0)]
    warp_sett: Sett<N>,
    /// count of the warp
    #[q("T₁", 10.0..=500.0)]
    warp_count: LinearDensity<N>,
    /// count of the weft
    #[q("T₂", 10.0..=500.0)]
    weft_count: LinearDensity<N>,
) -> Sett<N> {
    let power =
        (2.0 / 3.0 * (warp_count / weft_count).sqrt()).named(["a", "", "exponent of the setts"]);
    square_sett * (power * (square_sett / warp_sett).ln()).exp()
}

/// The most picks of plain cloth at a number of ends: both systems jammed, by Peirce.
///
/// √(1 − (p₁/D)²) + √(1 − (p₂/D)²) = 1, with the spacings p and the sum of both diameters D.
#[formula(
    result = "n₂",
    sources = ["Peirce 1937", "Balasubramanian", "definition"],
    limits = ["plain weave, round yarns that neither flatten nor stretch: real yarn does both", "ends further apart than both diameters jam no picks: there is no answer"],
    slips = ["the jam taken for a sett to weave", "the diameter of the yarn on the cone where it is flattened in cloth"]
)]
pub fn jam_weft_sett<N: Number>(
    /// ends
    #[q("n₁", 2.0..=60.0)]
    warp_sett: Sett<N>,
    /// diameter of the warp
    #[q("d₁", 0.08..=2.0)]
    warp_diameter: Diameter<N>,
    /// diameter of the weft
    #[q("d₂", 0.08..=2.0)]
    weft_diameter: Diameter<N>,
) -> Sett<N> {
    let both = Thickness::from((warp_diameter + weft_diameter).named([
        "D",
        "mm",
        "sum of the two diameters",
    ]));
    let spacing = Thickness::from((10.0 / warp_sett).named(["p₁", "mm", "spacing of the ends"]));
    10.0 / jam_spacing(spacing, both).v()
}

/// The most picks of any weave at a number of ends: both systems jammed, after Love.
///
/// Peirce's jam holds between the spacings at intersections; the threads under a float lie side by
/// side.
#[formula(
    result = "n₂",
    sources = ["Love 1954", "definition"],
    limits = ["remembered; Love gives it as graphs, with factors for threads that flatten, which are omitted here", "evenly interlaced threads: a mean float of unlike threads hides the tightest"],
    slips = ["the floats of the warp for the ends: the picks pass between ends"]
)]
pub fn jam_weft_sett_of_weave<N: Number>(
    /// ends
    #[q("n₁", 2.0..=60.0)]
    warp_sett: Sett<N>,
    /// diameter of the warp
    #[q("d₁", 0.08..=2.0)]
    warp_diameter: Diameter<N>,
    /// diameter of the weft
    #[q("d₂", 0.08..=2.0)]
    weft_diameter: Diameter<N>,
    /// average float of the picks
    #[q("F₂", 1.0..=8.0)]
    weft_float: Ratio<N>,
    /// average float of the ends
    #[q("F₁", 1.0..=8.0)]
    warp_float: Ratio<N>,
) -> Sett<N> {
    let both = Thickness::from((warp_diameter + weft_diameter).named([
        "D",
        "mm",
        "sum of the two diameters",
    ]));
    let spacing = (weft_float * 10.0 / warp_sett - (weft_float - 1.0) * warp_diameter).named([
        "p₁′",
        "mm",
        "spacing of the ends at a crossing",
    ]);
    let picks = jam_spacing(Thickness::from(spacing), both).v();
    let setting = 10.0 * warp_float / (picks + (warp_float - 1.0) * weft_diameter);
    // Ends that leave no room between those under a float.
    V::constant(0.0).if_less(spacing, setting, f64::NAN)
}

/// Firmness of a cloth by Milašius: 1 would be the densest that round threads allow.
#[formula(
    result = "φ",
    sources = ["memory"],
    limits = ["remembered and not read again; the scale of the units was worked out", "the weave factor is 1 for plain; those of other weaves are not given here"],
    slips = ["a firmness set beside a share of another theory's maximum"]
)]
pub fn milasius_firmness<N: Number>(
    /// weave factor
    #[q("P", 1.0..=2.0)]
    weave_factor: Ratio<N>,
    /// average count
    #[q("T_m", 5.0..=500.0)]
    mean_count: LinearDensity<N>,
    /// density of the fibre
    #[q("ρ", 0.9..=2.6)]
    fibre_density: Density<N>,
    /// count of the warp
    #[q("T₁", 5.0..=500.0)]
    warp_count: LinearDensity<N>,
    /// count of the weft
    #[q("T₂", 5.0..=500.0)]
    weft_count: LinearDensity<N>,
    /// ends
    #[q("n₁", 1.0..=80.0)]
    warp_sett: Sett<N>,
    /// picks
    #[q("n₂", 1.0..=80.0)]
    weft_sett: Sett<N>,
) -> Ratio<N> {
    let power =
        (2.0 / 3.0 * (warp_count / weft_count).sqrt()).named(["a", "", "exponent of the setts"]);
    let mean = ((weft_sett.ln() + power * warp_sett.ln()) / (1.0 + power)).exp().named([
        "S",
        "threads/cm",
        "sett of the square cloth that is as firm",
    ]);
    // 10^−2.5 brings threads in a centimetre, tex and kg/L to one unit.
    10.0_f64.powf(-2.5) * (12.0 / PI).sqrt() / weave_factor
        * (mean_count / fibre_density).sqrt()
        * mean
}
