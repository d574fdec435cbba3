//! Evenness: what folding and each process do to the irregularity of a yarn.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{Count, Fraction, LinearDensity, Ratio};

/// How many times more irregular a yarn is than fibres laid by chance would make it.
#[formula(
    result = "I",
    sources = ["GATE solutions"],
    limits = ["fibres in the section of the yarn clean and conditioned", "k is 1.00 for uniform fibres, 1.06 for cotton; 1.12 for wool is from memory", "the irregularity measured at short lengths, about 8 mm: over longer ones it is less"],
    slips = ["taking n instead of its root", "giving the index as a percentage"]
)]
pub fn irregularity_index<N: Number>(
    /// irregularity of the yarn, as coefficient of variation
    #[q("CV", 0.02..=0.5)]
    cv: Fraction<N>,
    /// factor for the spread of the fibres' mass
    #[q("k", 1.0..=1.2)]
    limit_factor: Ratio<N>,
    /// fibres in the section
    #[q("n", 20.0..=1000.0)]
    fibres: Count<N>,
) -> Ratio<N> {
    cv * fibres.sqrt() / limit_factor
}

/// Irregularity of a fold of ends whose thick places fall by chance.
#[formula(
    result = "CV_R",
    sources = ["Textile handbook 2023"],
    limits = ["ends alike and independent: not for a fault that comes at the same place in all of them"],
    slips = ["dividing by the number of ends instead of its root"]
)]
pub fn irregularity_of_fold<N: Number>(
    /// irregularity of an end, as coefficient of variation
    #[q("CV", 0.01..=0.5)]
    cv: Fraction<N>,
    /// number of ends
    #[q("N", 1.0..=120.0)]
    ends: Count<N>,
) -> Fraction<N> {
    cv / ends.sqrt()
}

/// Irregularity after processes in a row, each of which adds its own.
#[formula(
    result = "CV_t",
    sources = ["Textile handbook 2023"],
    limits = ["what each adds is independent of what came in, measured over lengths that the drafts make correspond", "where ends are doubled, take what comes in for the fold"],
    slips = ["adding the coefficients of variation instead of their squares"]
)]
pub fn irregularity_after_processes<N: Number>(
    /// irregularity of the feed, then what each process adds, as coefficients of variation
    #[q("CV", 0.0..=0.5)]
    cvs: &[Fraction<N>],
) -> Fraction<N> {
    V::sum(cvs.map(V::squared)).sqrt()
}

/// Irregularity that a process added of its own.
#[formula(
    result = "CV_a",
    sources = ["Textile handbook 2023"],
    limits = ["the material leaves no more even than it came: where ends are doubled, take what comes in for the fold"],
    slips = ["subtracting the coefficients of variation instead of their squares"]
)]
pub fn added_irregularity<N: Number>(
    /// irregularity before, as coefficient of variation
    #[q("CV₁", 0.0..=0.5)]
    cv_before: Fraction<N>,
    /// irregularity after, as coefficient of variation
    #[q("CV₂", 0.01..=0.5)]
    cv_after: Fraction<N>,
) -> Fraction<N> {
    (cv_after.squared() - cv_before.squared()).sqrt()
}

/// Coefficient of variation from the mean deviation, the U of the evenness tester.
#[formula(
    result = "CV",
    sources = ["Collegedunia", "definition"],
    limits = ["deviations that lie as the normal distribution; the trade rounds the factor to 1.25"],
    slips = ["multiplying to get U from CV"]
)]
pub fn irregularity_from_mean_deviation<N: Number>(
    /// mean deviation from the mean, as a share of it
    #[q("U", 0.005..=0.4)]
    mean_deviation_share: Fraction<N>,
) -> Fraction<N> {
    mean_deviation_share * (std::f64::consts::PI / 2.0).sqrt()
}

/// Mean deviation of a yarn as a share of its mean count: the U of the evenness tester.
#[formula(
    result = "U",
    sources = ["IE Garments 2025"],
    limits = ["the mean of the deviations without their sign"],
    slips = ["taking it for the coefficient of variation, which is a quarter larger"]
)]
pub fn mean_deviation_share<N: Number>(
    /// mean deviation from the mean count
    #[q("D", 0.05..=500.0)]
    count_deviation: LinearDensity<N>,
    /// mean count
    #[q("T_m", 1.0..=2000.0)]
    mean_count: LinearDensity<N>,
) -> Fraction<N> {
    count_deviation / mean_count
}
