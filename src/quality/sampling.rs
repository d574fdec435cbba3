//! Samples: how sure a mean is, how many readings it takes, which reading is an outlier.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Count, Deviation, Fraction, Ratio, Reading, ReadingSpread};

/// What is omitted before rounding up, so that 100 readings computed with the last digit of binary
/// arithmetic do not become 101.
const SLACK: f64 = 1e-9;

/// Standard deviation as a share of the mean.
#[formula(
    result = "CV",
    sources = ["definition"],
    limits = ["values with a true zero: masses, counts, strengths; not temperatures"],
    slips = ["the mean over the standard deviation"]
)]
pub fn coefficient_of_variation<N: Number>(
    /// standard deviation
    #[q("s", 0.0001..=100000.0)]
    sd: ReadingSpread<N>,
    /// mean
    #[q("x̄", 0.001..=1000000.0)]
    mean: Reading<N>,
) -> Ratio<N> {
    sd / mean
}

/// Standard deviation of the mean of readings.
#[formula(
    result = "s_m",
    sources = ["NPTEL textile testing", "Confidence interval"],
    limits = ["readings that do not hang together: several along one end are fewer than they seem"],
    slips = ["dividing by n instead of its root", "reading the spread of the mean as that of single readings"]
)]
pub fn standard_error<N: Number>(
    /// standard deviation of single readings
    #[q("s", 0.0001..=100000.0)]
    sd: ReadingSpread<N>,
    /// readings
    #[q("n", 2.0..=10000.0)]
    readings: Count<N>,
) -> ReadingSpread<N> {
    sd / readings.sqrt()
}

/// Half the width of the interval in which the true mean lies.
#[formula(
    result = "h",
    sources = ["Confidence interval", "Tenacity limits"],
    limits = ["the deviations are z (1.96 for 95 %) where the standard deviation is known from many readings, and Student's t with n − 1 degrees of freedom where it comes from these", "readings that do not hang together"],
    slips = ["z where few readings gave the standard deviation: of 5 readings, 2.78 and not 1.96 takes in 95 %", "the interval of the mean taken for that of single readings"]
)]
pub fn mean_half_width<N: Number>(
    /// standard deviations to each side, z or t
    #[q("z", 0.5..=15.0)]
    sd_multiple: Ratio<N>,
    /// standard deviation of single readings
    #[q("s", 0.0001..=100000.0)]
    sd: ReadingSpread<N>,
    /// readings
    #[q("n", 2.0..=10000.0)]
    readings: Count<N>,
) -> ReadingSpread<N> {
    sd_multiple * sd / readings.sqrt()
}

/// Lower end of the interval in which the true mean lies.
#[formula(
    result = "x_l",
    sources = ["Confidence interval"],
    limits = ["as for the half width: z where the standard deviation is known, t where it comes from few readings"],
    slips = ["the standard deviation of single readings, not divided by the root of their number"]
)]
pub fn mean_lower_limit<N: Number>(
    /// mean of the readings
    #[q("x̄", 0.001..=1000000.0)]
    mean: Reading<N>,
    /// standard deviations to each side, z or t
    #[q("z", 0.5..=15.0)]
    sd_multiple: Ratio<N>,
    /// standard deviation of single readings
    #[q("s", 0.0001..=100000.0)]
    sd: ReadingSpread<N>,
    /// readings
    #[q("n", 2.0..=10000.0)]
    readings: Count<N>,
) -> Reading<N> {
    let half = (sd_multiple * sd / readings.sqrt()).named([
        "h",
        "",
        "half of the interval, in the unit of the readings",
    ]);
    mean - half
}

/// Upper end of the interval in which the true mean lies.
#[formula(
    result = "x_u",
    sources = ["Confidence interval"],
    limits = ["as for the half width: z where the standard deviation is known, t where it comes from few readings"],
    slips = ["the standard deviation of single readings, not divided by the root of their number"]
)]
pub fn mean_upper_limit<N: Number>(
    /// mean of the readings
    #[q("x̄", 0.001..=1000000.0)]
    mean: Reading<N>,
    /// standard deviations to each side, z or t
    #[q("z", 0.5..=15.0)]
    sd_multiple: Ratio<N>,
    /// standard deviation of single readings
    #[q("s", 0.0001..=100000.0)]
    sd: ReadingSpread<N>,
    /// readings
    #[q("n", 2.0..=10000.0)]
    readings: Count<N>,
) -> Reading<N> {
    let half = (sd_multiple * sd / readings.sqrt()).named([
        "h",
        "",
        "half of the interval, in the unit of the readings",
    ]);
    mean + half
}

/// An error that is allowed as a share of the mean, in the unit of the readings.
#[formula(
    result = "E",
    sources = ["Sample size for count"],
    slips = ["the error as a share, in place of the error in the unit"]
)]
pub fn error_from_share<N: Number>(
    /// mean
    #[q("x̄", 0.001..=1000000.0)]
    mean: Reading<N>,
    /// error allowed, as a share of the mean
    #[q("e", 0.001..=0.3)]
    relative_error: Fraction<N>,
) -> ReadingSpread<N> {
    mean * relative_error
}

/// Readings to take so that the mean is within an error, in the unit of the readings.
#[formula(
    result = "n",
    sources = ["Sample size for count"],
    limits = ["the standard deviation is known from many readings; where it comes from few, take t and go round again, as the summary of a sample does"],
    slips = ["rounding down", "the number where the root of it is"]
)]
pub fn readings_for_error<N: Number>(
    /// standard deviations to each side: 1.96 for 95 %
    #[q("z", 0.5..=5.0)]
    sd_multiple: Ratio<N>,
    /// standard deviation of single readings
    #[q("s", 0.0001..=100000.0)]
    sd: ReadingSpread<N>,
    /// error allowed
    #[q("E", 0.0001..=100000.0)]
    error: ReadingSpread<N>,
) -> Count<N> {
    (sd_multiple * sd / error).squared().round_up(SLACK).max(1.0)
}

/// Readings to take so that the mean is within a share of it.
#[formula(
    result = "n",
    sources = ["GATE solutions", "Sample size for count"],
    limits = ["the variation is known from many readings; where it comes from few, take t and go round again"],
    slips = ["4.75 for 5 %: the error taken off 95 % of the mean", "rounding down", "the variation of means for that of single readings"]
)]
pub fn readings_for_variation<N: Number>(
    /// standard deviations to each side: 1.96 for 95 %
    #[q("z", 0.5..=5.0)]
    sd_multiple: Ratio<N>,
    /// variation of single readings
    #[q("CV", 0.001..=0.5)]
    cv: Fraction<N>,
    /// error allowed, as a share of the mean
    #[q("e", 0.001..=0.3)]
    relative_error: Fraction<N>,
) -> Count<N> {
    (sd_multiple * cv / relative_error).squared().round_up(SLACK).max(1.0)
}

/// Readings to take for narrower limits, from those that a number of readings gave.
#[formula(
    result = "n₂",
    sources = ["Tenacity limits", "GATE solutions"],
    limits = ["both half widths at one confidence; t for few readings would need a few more", "at least 2: one reading has no limits"],
    slips = ["three times the readings for a third of the width: it takes nine times", "the whole width for one and half for the other"]
)]
pub fn readings_from_limits<N: Number>(
    /// readings taken
    #[q("n", 2.0..=10000.0)]
    readings: Count<N>,
    /// half the width that they gave
    #[q("h₁", 0.001..=10000.0)]
    half_width: ReadingSpread<N>,
    /// half the width that is wanted
    #[q("h₂", 0.001..=10000.0)]
    wanted_half_width: ReadingSpread<N>,
) -> Count<N> {
    (readings * (half_width / wanted_half_width).squared()).round_up(SLACK).max(2.0)
}

/// An end of the interval in which the true standard deviation lies.
#[formula(
    result = "σ",
    sources = ["definition"],
    limits = ["readings that follow the normal law", "for the lower end the chi-square below which 97.5 % lie, for the upper that below which 2.5 % lie, for 95 %; n − 1 degrees of freedom"],
    slips = ["the larger chi-square for the upper end", "n for n − 1"]
)]
pub fn sd_limit<N: Number>(
    /// standard deviation of the readings
    #[q("s", 0.0001..=100000.0)]
    sd: ReadingSpread<N>,
    /// readings
    #[q("n", 2.0..=10000.0)]
    readings: Count<N>,
    /// chi-square with n − 1 degrees of freedom
    #[q("χ²", 0.001..=11000.0)]
    chi_square: Ratio<N>,
) -> ReadingSpread<N> {
    sd * ((readings - 1.0) / chi_square).sqrt()
}

/// An end of the interval in which the true coefficient of variation lies.
#[formula(
    result = "CV_l",
    sources = ["memory"],
    limits = ["readings that follow the normal law, with a variation up to about 33 %", "Vangel's closer form of McKay's, from memory", "for the lower end the chi-square below which 97.5 % lie, for the upper that below which 2.5 % lie, for 95 %; n − 1 degrees of freedom"],
    slips = ["the larger chi-square for the upper end"]
)]
pub fn variation_limit<N: Number>(
    /// variation of the readings
    #[q("CV", 0.001..=0.33)]
    cv: Fraction<N>,
    /// readings
    #[q("n", 2.0..=10000.0)]
    readings: Count<N>,
    /// chi-square with n − 1 degrees of freedom
    #[q("χ²", 0.001..=11000.0)]
    chi_square: Ratio<N>,
) -> Ratio<N> {
    let inner =
        ((chi_square + 2.0) / readings - 1.0) * cv.squared() + chi_square / (readings - 1.0);
    cv / inner.sqrt()
}

/// How far a reading is from the mean, in standard deviations.
#[formula(
    result = "G",
    sources = ["Grubbs 1969"],
    limits = ["mean and standard deviation of all readings, the doubtful one among them"],
    slips = ["leaving the doubtful reading out of the standard deviation", "throwing an outlier away: look for a cause first"]
)]
pub fn outlier_ratio<N: Number>(
    /// the reading
    #[q("x", 0.001..=1000000.0)]
    reading: Reading<N>,
    /// mean of all readings
    #[q("x̄", 0.001..=1000000.0)]
    mean: Reading<N>,
    /// standard deviation of all readings
    #[q("s", 0.0001..=100000.0)]
    sd: ReadingSpread<N>,
) -> Ratio<N> {
    let off = reading - mean;
    off.max(-off) / sd
}

/// How far the reading farthest out of several may be from the mean, in standard deviations, before
/// chance hardly explains it.
#[formula(
    result = "G_c",
    sources = ["Grubbs 1969"],
    limits = ["at least 3 readings that follow the normal law", "one reading is tested: two outliers on the same side hide each other", "for 95 % on both sides, the t above which 2.5 % ÷ n of Student's law with n − 2 degrees of freedom lies"],
    slips = ["t for 2.5 % instead of 2.5 % ÷ n: the farthest of many is far by chance", "repeating the test until no outlier is left"]
)]
pub fn outlier_limit<N: Number>(
    /// readings
    #[q("n", 3.0..=1000.0)]
    readings: Count<N>,
    /// Student's t
    #[q("t", 2.0..=200.0)]
    student_t: Ratio<N>,
) -> Ratio<N> {
    let square = student_t.squared();
    (readings - 1.0) / readings.sqrt() * (square / (readings - 2.0 + square)).sqrt()
}

/// Share of a sample that is found to have a fault or a mark.
#[formula(
    result = "p",
    sources = ["definition"],
    limits = ["the sample was drawn by chance from what it is to speak for"],
    slips = ["what was found over what was not found"]
)]
pub fn share_from_number<N: Number>(
    /// how many have it
    #[q("k", 0.0..=10000.0)]
    affected: Count<N>,
    /// how many were looked at
    #[q("n", 1.0..=10000.0)]
    tested: Count<N>,
) -> Fraction<N> {
    affected / tested
}

/// How far a reading is from what was wanted, as a share of it: above it positive, below negative.
#[formula(
    result = "d",
    sources = ["definition"],
    limits = ["both in one state: a ball at the regain of its label"],
    slips = ["on the reading instead of on what was wanted", "several that are off put together: what one has more, another may have less"]
)]
pub fn deviation_from_wanted<N: Number>(
    /// reading
    #[q("x", 0.001..=1000000.0)]
    reading: Reading<N>,
    /// what was wanted: on the label, in the order
    #[q("x₀", 0.001..=1000000.0)]
    wanted_reading: Reading<N>,
) -> Deviation<N> {
    reading / wanted_reading - 1.0
}
