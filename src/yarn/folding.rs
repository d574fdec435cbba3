//! Folding: several ends twisted together.

use crate::formula::{Formula, formula};
use crate::number::{Number, V};
use crate::quantity::{Contraction, Count, LinearDensity};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] =
    &[&FOLD, &FOLD_ALIKE, &SINGLE_FOR_FOLD, &MISSING_COMPONENT, &CONTRACTION_FOUND];

/// Resultant count of ends folded together.
#[formula(
    result = "T_R",
    sources = ["Davis 1920", "Taylor 1909", "Wilkinson 1912"],
    limits = ["contraction on the untwisted length, the same for all ends; not for loops and other ends fed at a length of their own"],
    slips = ["adding indirect counts", "contraction of the twisted length taken for that of the untwisted: 10 % gives 0.909 or 0.900 of an indirect count"]
)]
pub fn fold<N: Number>(
    /// contraction in folding, on the untwisted length
    #[q("c", -0.02..=0.15)]
    contraction: Contraction<N>,
    /// counts of the ends, one for each end
    #[q("T", 2.0..=2000.0)]
    counts: &[LinearDensity<N>],
) -> LinearDensity<N> {
    V::sum(counts) / (1.0 - contraction)
}

/// Resultant count of equal ends folded together.
#[formula(
    result = "T_R",
    sources = ["Taylor 1909", "Spinning cards"],
    limits = ["contraction on the untwisted length"],
    slips = ["dividing tex by the number of ends: that is for indirect counts"]
)]
pub fn fold_alike<N: Number>(
    /// count of one end
    #[q("T", 2.0..=2000.0)]
    single: LinearDensity<N>,
    /// number of ends
    #[q("n", 1.0..=12.0)]
    ends: Count<N>,
    /// contraction in folding, on the untwisted length
    #[q("c", -0.02..=0.15)]
    contraction: Contraction<N>,
) -> LinearDensity<N> {
    single * ends / (1.0 - contraction)
}

/// The single to spin for a wanted resultant of equal ends.
#[formula(
    result = "T",
    sources = ["Taylor 1909", "Spinning cards"],
    limits = ["both counts in one state: fold losses and oil apart"],
    slips = ["forgetting that the folded yarn is shorter, so the single must be finer"]
)]
pub fn single_for_fold<N: Number>(
    /// resultant count wanted
    #[q("T_R", 4.0..=4000.0)]
    resultant: LinearDensity<N>,
    /// number of ends
    #[q("n", 1.0..=12.0)]
    ends: Count<N>,
    /// contraction in folding, on the untwisted length
    #[q("c", -0.02..=0.15)]
    contraction: Contraction<N>,
) -> LinearDensity<N> {
    resultant * (1.0 - contraction) / ends
}

/// The end that is missing from a fold of a wanted resultant, without contraction.
#[formula(
    result = "T_x",
    sources = ["Davis 1920"],
    limits = ["the known ends together are finer than the resultant"],
    slips = ["subtracting indirect counts"]
)]
pub fn missing_component<N: Number>(
    /// resultant count wanted
    #[q("T_R", 4.0..=4000.0)]
    resultant: LinearDensity<N>,
    /// counts of the known ends
    #[q("T", 2.0..=2000.0)]
    known: &[LinearDensity<N>],
) -> LinearDensity<N> {
    known.fold(resultant, |left, t| left - t)
}

/// Contraction in folding, from the nominal and the measured count.
#[formula(
    result = "c",
    sources = ["Wilkinson 1912", "Designation practice"],
    limits = ["on the untwisted length; negative where the yarn has grown"],
    slips = ["dividing by the nominal count: that gives the contraction on the twisted length"]
)]
pub fn contraction_found<N: Number>(
    /// sum of the counts of the ends
    #[q("T_0", 4.0..=4000.0)]
    nominal: LinearDensity<N>,
    /// count of the folded yarn, as measured
    #[q("T_R", 4.0..=4000.0)]
    resultant: LinearDensity<N>,
) -> Contraction<N> {
    1.0 - nominal / resultant
}
