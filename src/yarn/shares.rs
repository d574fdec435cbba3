//! Shares: what each end of a fold has of its mass, its length and its cost.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{CostPerMass, Fraction, LinearDensity, Mass, Ratio};

/// Share of the mass of a fold that its first end has.
#[formula(
    result = "s",
    sources = ["Taylor 1909", "Davis 1920"],
    limits = ["the end asked for is first, in both lists; any order will do for the others"],
    slips = ["sharing by the numbers of an indirect count: the finer end weighs less", "leaving out that an end is fed longer than the others"]
)]
pub fn mass_share<N: Number>(
    /// counts of the ends, the one asked for first
    #[q("T", 1.0..=2000.0)]
    counts: &[LinearDensity<N>],
    /// length of each end in a unit length of the folded yarn
    #[q("u", 0.2..=6.0)]
    relative_lengths: &[Ratio<N>],
) -> Fraction<N> {
    let masses = counts.zip(relative_lengths).map(|(t, u)| u * t);
    V::first(masses.clone()) / V::sum(masses)
}

/// Mass of the first end in a mass of folded yarn.
#[formula(
    result = "m₁",
    sources = ["Taylor 1909", "Davis 1920"],
    limits = ["the end asked for is first, in both lists", "what is wasted in folding comes on top"],
    slips = ["sharing by the numbers of an indirect count: the finer end weighs less"]
)]
pub fn mass_of_component<N: Number>(
    /// mass of the folded yarn
    #[q("m_y", 0.01..=10000.0)]
    yarn_mass: Mass<N>,
    /// counts of the ends, the one asked for first
    #[q("T", 1.0..=2000.0)]
    counts: &[LinearDensity<N>],
    /// length of each end in a unit length of the folded yarn
    #[q("u", 0.2..=6.0)]
    relative_lengths: &[Ratio<N>],
) -> Mass<N> {
    let masses = counts.zip(relative_lengths).map(|(t, u)| u * t);
    yarn_mass * V::first(masses.clone()) / V::sum(masses)
}

/// Share of the length of all yarns that the first has, from their masses.
#[formula(
    result = "λ",
    sources = ["definition"],
    limits = ["the yarn asked for is first, in both lists", "masses and counts in one state"],
    slips = ["sharing the length by mass: of equal masses the finer yarn is longer"]
)]
pub fn length_share<N: Number>(
    /// counts of the yarns, the one asked for first
    #[q("T", 1.0..=2000.0)]
    counts: &[LinearDensity<N>],
    /// mass of each yarn
    #[q("m", 0.01..=10000.0)]
    masses: &[Mass<N>],
) -> Fraction<N> {
    let lengths = counts.zip(masses).map(|(t, m)| m / t);
    V::first(lengths.clone()) / V::sum(lengths)
}

/// The count that the first end of a fold must have for its share of the mass.
#[formula(
    result = "T",
    sources = ["Davis 1920"],
    limits = ["ends of equal length in the fold; the shares are all there are, and sum to 1", "the share asked for is first"],
    slips = ["shares that do not sum to 1: no fold of the wanted count has them", "multiplying an indirect count by the share: it is divided"]
)]
pub fn count_for_share<N: Number>(
    /// resultant count wanted
    #[q("T_R", 2.0..=4000.0)]
    resultant_count: LinearDensity<N>,
    /// shares of all ends, the one asked for first
    #[q("p", 0.001..=1.0, whole)]
    shares: &[Fraction<N>],
) -> LinearDensity<N> {
    resultant_count * V::first(shares.clone()) / V::sum(shares)
}

/// Cost of a folded yarn from the prices of its ends.
#[formula(
    result = "p_R",
    sources = ["Davis 1920"],
    limits = ["material alone: folding and its waste come on top", "prices for a mass in the same state as the counts"],
    slips = ["the plain mean of the prices: the heavier end counts for more"]
)]
pub fn fold_cost<N: Number>(
    /// counts of the ends, one for each end
    #[q("T", 1.0..=2000.0)]
    counts: &[LinearDensity<N>],
    /// length of each end in a unit length of the folded yarn
    #[q("u", 0.2..=6.0)]
    relative_lengths: &[Ratio<N>],
    /// price of each end
    #[q("p", 0.0..=200.0)]
    prices_per_mass: &[CostPerMass<N>],
) -> CostPerMass<N> {
    let mass = V::sum(counts.clone().zip(relative_lengths.clone()).map(|(t, u)| u * t)).named([
        "T_R",
        "tex",
        "count of the components together",
    ]);
    V::sum(counts.zip(relative_lengths).zip(prices_per_mass).map(|((t, u), p)| u * t * p)) / mass
}

/// Share of the cost of a folded yarn that its first end has.
#[formula(
    result = "s",
    sources = ["Davis 1920"],
    limits = ["the end asked for is first, in all lists", "material alone, with some of it at a price"],
    slips = ["sharing the cost by mass: a dear fine end costs more than it weighs"]
)]
pub fn fold_cost_share<N: Number>(
    /// counts of the ends, the one asked for first
    #[q("T", 1.0..=2000.0)]
    counts: &[LinearDensity<N>],
    /// length of each end in a unit length of the folded yarn
    #[q("u", 0.2..=6.0)]
    relative_lengths: &[Ratio<N>],
    /// price of each end
    #[q("p", 0.0..=200.0)]
    prices_per_mass: &[CostPerMass<N>],
) -> Fraction<N> {
    let costs = counts.zip(relative_lengths).zip(prices_per_mass).map(|((t, u), p)| u * t * p);
    V::first(costs.clone()) / V::sum(costs)
}

/// Mean of values by the shares of their parts in a whole.
#[formula(
    result = "x_m",
    sources = ["Mill note on yarn", "definition"],
    limits = ["for values that go with the shares: prices, regains and fibre constants with shares of mass, tex with shares of length", "not for indirect counts"],
    slips = ["shares that do not sum to 1", "shares of mass for what goes by length"]
)]
pub fn mean_by_share<N: Number>(
    /// share of each part
    #[q("p", 0.0..=1.0, whole)]
    shares: &[Fraction<N>],
    /// value of each part
    #[q("x", 0.0..=1000000.0)]
    values: &[Ratio<N>],
) -> Ratio<N> {
    V::sum(shares.zip(values).map(|(s, x)| s * x))
}
