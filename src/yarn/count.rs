//! Count, mass and length.

use crate::formula::{Formula, formula};
use crate::number::{Number, V};
use crate::quantity::{Count, Length, LinearDensity, Mass};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] =
    &[&COUNT_OF, &MASS_OF_LENGTH, &LENGTH_OF_MASS, &CHECK_WEIGHT, &MEAN_BY_LENGTH, &MEAN_BY_MASS];

/// Count of a yarn, a slubbing or a sliver, from a length and what it weighs.
#[formula(
    result = "T",
    sources = ["Davis 1920", "Howard and Bullough 1909"],
    limits = ["the count is in the state of the weighing: in oil, at its regain"],
    slips = ["grains for drams, yards for metres", "comparing a count in oil with one scoured"]
)]
pub fn count_of<N: Number>(
    /// length measured off
    #[q("L", 0.5..=20000.0)]
    length: Length<N>,
    /// its mass
    #[q("m", 0.00001..=100.0)]
    mass: Mass<N>,
) -> LinearDensity<N> {
    mass / length * 1e6
}

/// What a length of yarn weighs.
#[formula(
    result = "m",
    sources = ["Davis 1920", "Howard and Bullough 1909"],
    slips = ["multiplying by an indirect count instead of dividing"]
)]
pub fn mass_of_length<N: Number>(
    /// count
    #[q("T", 2.0..=2000.0)]
    count: LinearDensity<N>,
    /// length
    #[q("L", 0.5..=1000000.0)]
    length: Length<N>,
) -> Mass<N> {
    count * length * 1e-6
}

/// How long a mass of yarn is.
#[formula(
    result = "L",
    sources = ["Davis 1920", "Howard and Bullough 1909"],
    slips = ["forgetting that the mass holds water and oil that the count may not"]
)]
pub fn length_of_mass<N: Number>(
    /// mass
    #[q("m", 0.00001..=10000.0)]
    mass: Mass<N>,
    /// count, in the same state
    #[q("T", 2.0..=2000.0)]
    count: LinearDensity<N>,
) -> Length<N> {
    mass / count * 1e6
}

/// What the balance should read for a number of ends of a length.
#[formula(
    result = "m",
    sources = ["practice"],
    limits = ["the count in the state that the material has at that machine", "after a change of the feed wait about three times hold-up over feed rate before weighing again"],
    slips = ["weighing one end where the figure is for several"]
)]
pub fn check_weight<N: Number>(
    /// count in the state at the machine
    #[q("T", 2.0..=2000.0)]
    count: LinearDensity<N>,
    /// length of each end
    #[q("L", 0.5..=500.0)]
    length: Length<N>,
    /// ends weighed together
    #[q("k", 1.0..=200.0)]
    ends: Count<N>,
) -> Mass<N> {
    count * length * ends * 1e-6
}

/// Mean count of yarns of equal length, such as threads that lie side by side.
#[formula(
    result = "T_m",
    sources = ["Davis 1920"],
    slips = ["taking the plain mean of indirect counts: for equal lengths it is their harmonic mean"]
)]
pub fn mean_by_length<N: Number>(
    /// counts
    #[q("T", 2.0..=2000.0)]
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
    #[q("T", 2.0..=2000.0)]
    counts: &[LinearDensity<N>],
) -> LinearDensity<N> {
    let n = counts.len() as f64;
    n / V::sum(counts.map(|t| 1.0 / t))
}
