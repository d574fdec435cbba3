//! Control limits, and whether a machine can keep within a tolerance.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Ratio, Reading, ReadingSpread, SignedRatio};

/// Upper control limit of means or of single readings.
#[formula(
    result = "x_u",
    sources = ["Table A.22"],
    limits = ["factor A₂ with the mean range, A₃ with the mean standard deviation, both for means of n; E₂ with the mean moving range for single readings", "subgroups of readings that were taken together, so that their spread is that of chance alone"],
    slips = ["the factor of another n", "limits of means held against single readings", "a tolerance drawn in as a control limit"]
)]
pub fn chart_upper<N: Number>(
    /// mean of all readings
    #[q("x̄", 0.001..=1000000.0)]
    mean: Reading<N>,
    /// mean range, mean standard deviation or mean moving range
    #[q("w̄", 0.0001..=100000.0)]
    spread: ReadingSpread<N>,
    /// factor A₂, A₃ or E₂
    #[q("A", 0.05..=2.7)]
    chart_factor: Ratio<N>,
) -> Reading<N> {
    mean + chart_factor * spread
}

/// Lower control limit of means or of single readings.
#[formula(
    result = "x_l",
    sources = ["Table A.22"],
    limits = ["factor A₂ with the mean range, A₃ with the mean standard deviation, both for means of n; E₂ with the mean moving range for single readings", "may fall below 0 where the spread is wide"],
    slips = ["the factor of another n", "limits of means held against single readings", "a tolerance drawn in as a control limit"]
)]
pub fn chart_lower<N: Number>(
    /// mean of all readings
    #[q("x̄", 0.001..=1000000.0)]
    mean: Reading<N>,
    /// mean range, mean standard deviation or mean moving range
    #[q("w̄", 0.0001..=100000.0)]
    spread: ReadingSpread<N>,
    /// factor A₂, A₃ or E₂
    #[q("A", 0.05..=2.7)]
    chart_factor: Ratio<N>,
) -> Reading<N> {
    mean - chart_factor * spread
}

/// Control limit of ranges or of standard deviations.
#[formula(
    result = "w_l",
    sources = ["Table A.22"],
    limits = ["D₃ and D₄ with the mean range, B₃ and B₄ with the mean standard deviation, all of one n"],
    slips = ["the factor of another n", "no lower limit (0) read as a fault: below n = 7 a range of 0 can be chance"]
)]
pub fn spread_limit<N: Number>(
    /// mean range or mean standard deviation
    #[q("w̄", 0.0001..=100000.0)]
    spread: ReadingSpread<N>,
    /// factor D₃, D₄, B₃ or B₄
    #[q("D", 0.0..=3.3)]
    spread_factor: Ratio<N>,
) -> ReadingSpread<N> {
    spread_factor * spread
}

/// Standard deviation within subgroups, from their mean range or their mean standard deviation.
#[formula(
    result = "σ",
    sources = ["Table A.22"],
    limits = ["what changes from subgroup to subgroup is not in it"],
    slips = ["d₂ for a standard deviation, c₄ for a range", "the constant of another n"]
)]
pub fn sd_within<N: Number>(
    /// mean range or mean standard deviation
    #[q("w̄", 0.0001..=100000.0)]
    spread: ReadingSpread<N>,
    /// d₂ for ranges, c₄ for standard deviations
    #[q("d", 0.79..=5.1)]
    sd_factor: Ratio<N>,
) -> ReadingSpread<N> {
    spread / sd_factor
}

/// How often the spread of a process goes into its tolerance.
#[formula(
    result = "C_p",
    sources = ["practice"],
    limits = ["with the standard deviation within subgroups it is C_p, what the machine could do; with that of all readings P_p, what it did", "a process that is steady, readings that follow the normal law"],
    slips = ["control limits taken for the tolerance", "of a process that has moved it says nothing of what comes next"]
)]
pub fn capability_ratio<N: Number>(
    /// upper end of the tolerance
    #[q("U", 0.001..=1000000.0)]
    upper: Reading<N>,
    /// lower end of the tolerance
    #[q("L", 0.0..=1000000.0)]
    lower: Reading<N>,
    /// standard deviation
    #[q("s", 0.0001..=100000.0)]
    sd: ReadingSpread<N>,
) -> Ratio<N> {
    (upper - lower) / (6.0 * sd)
}

/// How often half the spread of a process goes between its mean and the nearer end of the tolerance;
/// negative where the mean is outside.
#[formula(
    result = "C_pk",
    sources = ["practice"],
    limits = ["with the standard deviation within subgroups it is C_pk, with that of all readings P_pk", "a process that is steady, readings that follow the normal law"],
    slips = ["the farther end of the tolerance", "judging by C_p where the mean is off the middle"]
)]
pub fn capability_to_nearest<N: Number>(
    /// mean
    #[q("x̄", 0.001..=1000000.0)]
    mean: Reading<N>,
    /// upper end of the tolerance
    #[q("U", 0.001..=1000000.0)]
    upper: Reading<N>,
    /// lower end of the tolerance
    #[q("L", 0.0..=1000000.0)]
    lower: Reading<N>,
    /// standard deviation
    #[q("s", 0.0001..=100000.0)]
    sd: ReadingSpread<N>,
) -> SignedRatio<N> {
    let nearest = (upper - mean).min(mean - lower) / (3.0 * sd);
    upper.if_less(lower, f64::NAN, nearest)
}
