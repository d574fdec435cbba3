//! Count, mass and length.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{Count, Length, LinearDensity, Mass, ShareLost};

/// Count of a yarn, a slubbing or a sliver, from a length and what it weighs.
#[formula(
    result = "T",
    sources = ["Davis 1920", "Howard and Bullough 1909"],
    limits = ["the count is in the state of the weighing: in oil, at its regain"],
    slips = ["grains for drams, yards for metres", "comparing a count in oil with one scoured"]
)]
#[inverse(
    "What a length of yarn weighs.",
    mass_of_length(count: 1.0..=100000.0, length) -> mass = count * length * 1e-6,
    slips = ["multiplying by an indirect count instead of dividing"]
)]
#[inverse(
    "How long a mass of yarn is.",
    length_of_mass(mass, count "count, in the same state": 1.0..=100000.0) -> length
        = mass / count * 1e6,
    slips = ["forgetting that the mass holds water and oil that the count may not"]
)]
pub fn count_of<N: Number>(
    /// length
    #[q("L", 0.05..=1000000.0)]
    length: Length<N>,
    /// mass
    #[q("m", 0.00001..=10000.0)]
    mass: Mass<N>,
) -> LinearDensity<N> {
    mass / length * 1e6
}

/// What ends of a length weigh, with an allowance for waste.
#[formula(
    result = "m",
    sources = ["Wolfensberger 1921"],
    limits = ["waste on the yarn that is used, as the books add it; where it is a share of the yarn taken out of store, divide by 1 − w"],
    slips = ["waste on the wrong base", "forgetting the selvedge ends"]
)]
pub fn mass_of_ends<N: Number>(
    /// count
    #[q("T", 0.5..=2000.0)]
    count: LinearDensity<N>,
    /// length of each end
    #[q("L", 0.5..=2000000.0)]
    length: Length<N>,
    /// ends
    #[q("N", 1.0..=20000.0)]
    ends: Count<N>,
    /// waste, on the yarn used
    #[q("w_y", 0.0..=0.2)]
    yarn_waste: ShareLost<N>,
) -> Mass<N> {
    count * length * ends * (1.0 + yarn_waste) * 1e-6
}

/// Length of the ends, lying side by side as on a beam, that a mass of yarn makes.
#[formula(
    result = "L",
    sources = ["Taylor 1909"],
    limits = ["the mass without the beam, in the state of the count: size adds to it"],
    slips = ["the length of one end for that of all"]
)]
pub fn length_of_ends<N: Number>(
    /// mass
    #[q("m", 0.001..=10000.0)]
    mass: Mass<N>,
    /// count, in the same state
    #[q("T", 1.0..=2000.0)]
    count: LinearDensity<N>,
    /// ends
    #[q("N", 1.0..=20000.0)]
    ends: Count<N>,
) -> Length<N> {
    1e6 * mass / (count * ends)
}

/// Mean count of yarns of equal length, such as threads that lie side by side.
#[formula(
    result = "T_m",
    sources = ["Davis 1920"],
    slips = ["taking the plain mean of indirect counts: for equal lengths it is their harmonic mean"]
)]
pub fn mean_by_length<N: Number>(
    /// counts
    #[q("T", 1.0..=2000.0)]
    counts: &[LinearDensity<N>],
) -> LinearDensity<N> {
    let n = counts.len() as f64;
    V::sum(counts) / n
}

/// Mean count of yarns of equal mass, such as lots of one weight.
#[formula(
    result = "T_m",
    sources = ["GATE solutions", "definition"],
    slips = ["taking the plain mean of tex: for equal masses it is their harmonic mean"]
)]
pub fn mean_by_mass<N: Number>(
    /// counts
    #[q("T", 1.0..=2000.0)]
    counts: &[LinearDensity<N>],
) -> LinearDensity<N> {
    let n = counts.len() as f64;
    n / V::sum(counts.map(|t| 1.0 / t))
}

/// Mean count of lots of any mass: all that they weigh over all their length.
#[formula(
    result = "T_m",
    sources = ["definition"],
    limits = ["masses and counts in one state", "with equal masses it is mean_by_mass, with equal lengths mean_by_length"],
    slips = ["weighting tex by mass: that is for indirect counts", "the plain mean of the counts"]
)]
pub fn mean_of_lots<N: Number>(
    /// counts
    #[q("T", 1.0..=2000.0)]
    counts: &[LinearDensity<N>],
    /// mass of each lot
    #[q("m", 0.01..=10000.0)]
    masses: &[Mass<N>],
) -> LinearDensity<N> {
    let mass = V::sum(masses.clone()).named(["m", "kg", "mass of all lots"]);
    mass / V::sum(counts.zip(masses).map(|(t, m)| m / t))
}
