//! Folding: several ends twisted together.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{Contraction, Count, Length, LinearDensity, Ratio, TwistedContraction};

/// Resultant count of ends folded together.
#[formula(
    result = "T_R",
    sources = ["Davis 1920", "Taylor 1909", "Wilkinson 1912"],
    limits = ["contraction on the untwisted length, the same for all ends; not for loops and other ends fed at a length of their own"],
    slips = ["adding indirect counts", "contraction of the twisted length taken for that of the untwisted: 10 % gives 0.909 or 0.900 of an indirect count"]
)]
pub fn fold<N: Number>(
    /// contraction in folding, on the untwisted length
    #[q("k", -0.02..=0.15)]
    contraction: Contraction<N>,
    /// counts of the ends, one for each end
    #[q("T", 1.0..=2000.0)]
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
#[inverse(
    "The single to spin for a wanted resultant of equal ends.",
    single_for_fold(resultant_count "resultant count wanted": 2.0..=4000.0, ends, contraction) -> single_count
        = resultant_count * (1.0 - contraction) / ends,
    limits = ["both counts in one state: fold losses and oil apart"],
    slips = ["forgetting that the folded yarn is shorter, so the single must be finer"]
)]
pub fn fold_alike<N: Number>(
    /// count of one end
    #[q("T_s", 1.0..=2000.0)]
    single_count: LinearDensity<N>,
    /// number of ends
    #[q("N", 1.0..=12.0)]
    ends: Count<N>,
    /// contraction in folding, on the untwisted length
    #[q("k", -0.02..=0.15)]
    contraction: Contraction<N>,
) -> LinearDensity<N> {
    single_count * ends / (1.0 - contraction)
}

/// Resultant count of ends that are fed each at a length of its own, as for loops and knops.
#[formula(
    result = "T_R",
    sources = ["Davis 1920"],
    limits = ["take-up or contraction, never both: a contraction k of the straight ends is a length of 1/(1 − k)"],
    slips = ["one length for all: the end that loops weighs most", "50 % more fed is a length of 1.5, not of 0.5", "ends fewer than lengths: write the count of a doubled end twice"]
)]
pub fn fold_fed<N: Number>(
    /// counts of the ends, one for each end
    #[q("T", 1.0..=2000.0)]
    counts: &[LinearDensity<N>],
    /// length of each end in a unit length of the folded yarn
    #[q("u", 0.2..=6.0)]
    relative_lengths: &[Ratio<N>],
) -> LinearDensity<N> {
    V::sum(counts.zip(relative_lengths).map(|(t, u)| u * t))
}

/// Resultant count of ends folded together, with the contraction on the twisted length.
#[formula(
    result = "T_R",
    sources = ["definition"],
    limits = ["where a contraction is said as so much added to the twisted length; for one on the untwisted length there is fold"],
    slips = ["contraction of the untwisted length taken for that of the twisted: 10 % gives 0.900 or 0.909 of an indirect count"]
)]
pub fn fold_on_twisted<N: Number>(
    /// contraction in folding, on the twisted length
    #[q("k_t", -0.02..=0.18)]
    contraction_on_twisted: TwistedContraction<N>,
    /// counts of the ends, one for each end
    #[q("T", 1.0..=2000.0)]
    counts: &[LinearDensity<N>],
) -> LinearDensity<N> {
    V::sum(counts) * (1.0 + contraction_on_twisted)
}

/// The single to spin for a wanted resultant of equal ends, with the contraction on the twisted
/// length.
#[formula(
    result = "T_s",
    sources = ["definition"],
    limits = ["both counts in one state: fold losses and oil not included", "for a contraction on the untwisted length there is single_for_fold"],
    slips = ["multiplying by 1 − k: that is for a contraction on the untwisted length"]
)]
pub fn single_on_twisted<N: Number>(
    /// resultant count wanted
    #[q("T_R", 2.0..=4000.0)]
    resultant_count: LinearDensity<N>,
    /// number of ends
    #[q("N", 1.0..=12.0)]
    ends: Count<N>,
    /// contraction in folding, on the twisted length
    #[q("k_t", -0.02..=0.18)]
    contraction_on_twisted: TwistedContraction<N>,
) -> LinearDensity<N> {
    resultant_count / ((1.0 + contraction_on_twisted) * ends)
}

/// Length of singles, all ends together, for a length of folded yarn.
#[formula(
    result = "L_s",
    sources = ["Weft-Handed Weaver 2010", "definition"],
    limits = ["contraction on the untwisted length", "waste in folding comes on top"],
    slips = ["forgetting the contraction: the fold is shorter than its ends", "adding the contraction to the length instead of dividing by 1 − k"]
)]
pub fn singles_length<N: Number>(
    /// length of the folded yarn
    #[q("L", 0.5..=10000000.0)]
    folded_length: Length<N>,
    /// number of ends
    #[q("N", 1.0..=12.0)]
    ends: Count<N>,
    /// contraction in folding, on the untwisted length
    #[q("k", -0.02..=0.15)]
    contraction: Contraction<N>,
) -> Length<N> {
    folded_length * ends / (1.0 - contraction)
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
    #[q("T_R", 2.0..=4000.0)]
    resultant_count: LinearDensity<N>,
    /// counts of the known ends
    #[q("T", 1.0..=2000.0)]
    known_counts: &[LinearDensity<N>],
) -> LinearDensity<N> {
    known_counts.fold(resultant_count, |left, t| left - t)
}

/// The end that is missing from a fold of a wanted resultant that contracts in folding.
#[formula(
    result = "T_x",
    sources = ["Davis 1920", "definition"],
    limits = ["contraction on the untwisted length, the same for all ends", "the known ends together are finer than the ends must be"],
    slips = ["taking the contraction off the missing end alone", "subtracting indirect counts"]
)]
pub fn missing_component_contracted<N: Number>(
    /// resultant count wanted
    #[q("T_R", 2.0..=4000.0)]
    resultant_count: LinearDensity<N>,
    /// contraction in folding, on the untwisted length
    #[q("k", -0.02..=0.15)]
    contraction: Contraction<N>,
    /// counts of the known ends
    #[q("T", 1.0..=2000.0)]
    known_counts: &[LinearDensity<N>],
) -> LinearDensity<N> {
    known_counts.fold(resultant_count * (1.0 - contraction), |left, t| left - t)
}

/// Contraction in folding, from the nominal and the measured count.
#[formula(
    result = "k",
    sources = ["Wilkinson 1912", "Designation practice"],
    limits = ["on the untwisted length; negative where the yarn has grown", "both counts in one state, at one regain: oil or water lost between the two weighings would pass for a growth of the yarn"],
    slips = ["dividing by the nominal count: that gives the contraction on the twisted length"]
)]
pub fn contraction_from_counts<N: Number>(
    /// sum of the counts of the ends
    #[q("T₀", 2.0..=4000.0)]
    nominal_count: LinearDensity<N>,
    /// count of the folded yarn, as measured
    #[q("T_R", 2.0..=4000.0)]
    resultant_count: LinearDensity<N>,
) -> Contraction<N> {
    1.0 - nominal_count / resultant_count
}
