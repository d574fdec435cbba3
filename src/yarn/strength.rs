//! Strength: force, tenacity, breaking length, lea product, stress.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::counts::ENGLISH_COTTON;
use crate::quantity::{Density, Force, Length, LinearDensity, Ratio, Stress, Tenacity};

/// Strength of a yarn for its count.
#[formula(
    result = "f",
    sources = ["Textile School", "definition"],
    limits = ["the count of the yarn as it was broken, at its regain", "a value goes with the length between the jaws and the time to break"],
    slips = ["newtons for centinewtons", "force over an indirect count"]
)]
#[inverse(
    "Force that breaks a yarn, from its tenacity.",
    breaking_force(tenacity: 0.5..=200.0, count) -> breaking_force = tenacity * count / 100.0,
    limits = ["the mean of single ends; the weakest place breaks first, so a longer length breaks sooner"],
    slips = ["tenacity of the fibre for that of the yarn, which is weaker"]
)]
pub fn tenacity<N: Number>(
    /// breaking force
    #[q("F", 0.02..=1000.0)]
    breaking_force: Force<N>,
    /// yarn count
    #[q("T", 0.1..=5000.0)]
    count: LinearDensity<N>,
) -> Tenacity<N> {
    100.0 * breaking_force / count
}

/// Length of yarn whose own weight would break it.
#[formula(
    result = "L_b",
    sources = ["pint 0.25.3", "definition"],
    limits = ["at standard gravity, 9.80665 m/s²; in kilometres it is the tenacity in gf/tex, the RKM"],
    slips = ["taking it for cN/tex: it is 2 % more"]
)]
pub fn breaking_length<N: Number>(
    /// breaking force
    #[q("F", 0.02..=1000.0)]
    breaking_force: Force<N>,
    /// yarn count
    #[q("T", 0.1..=5000.0)]
    count: LinearDensity<N>,
) -> Length<N> {
    1e6 * breaking_force / (9.80665 * count)
}

/// Count-strength product of a cotton lea: English cotton count times the pounds that break it.
#[formula(
    result = "P",
    sources = ["Brooks 1892", "Collegedunia"],
    limits = ["a lea of 120 yd wound on a reel of 1½ yd and broken as a skein: it tells nothing of single ends", "the count as found in the lea, at the regain of the test"],
    slips = ["newtons or kilograms for pounds", "the nominal count in place of the count found"]
)]
pub fn lea_product<N: Number>(
    /// force that breaks the lea
    #[q("F", 30.0..=2000.0)]
    lea_force: Force<N>,
    /// yarn count
    #[q("T", 3.0..=300.0)]
    count: LinearDensity<N>,
) -> Ratio<N> {
    let number = (ENGLISH_COTTON / count).named(["N", "Ne", "count"]);
    let pounds = (lea_force / (0.453_592_37 * 9.80665)).named(["S", "lbf", "force on the lea"]);
    number * pounds
}

/// Stress that a tenacity means in a fibre or yarn of a density.
#[formula(
    result = "σ",
    sources = ["Textile School", "definition"],
    limits = ["of the solid section: for a yarn take its own density, air and all"],
    slips = ["density of the fibre with a section of the yarn"]
)]
pub fn stress_of_tenacity<N: Number>(
    /// tenacity
    #[q("f", 0.5..=400.0)]
    tenacity: Tenacity<N>,
    /// density
    #[q("ρ", 0.1..=8.0)]
    density: Density<N>,
) -> Stress<N> {
    10.0 * tenacity * density
}
