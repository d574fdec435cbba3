"""How many to test, how sure a mean is, whether a machine has moved."""

# Written by python -m hankwise._stubs from the catalogue.

from collections.abc import Sequence
from typing import Any, Literal, TypeAlias

from hankwise._hankwise import (
    Quantity,
    Results,
    _as_calculation,
    _as_formula,
    _Measure,
    _Measures,
    _Plain,
    capability as capability,
    chart as chart,
    chart_constants as chart_constants,
    chi_square as chi_square,
    deviations as deviations,
    student_t as student_t,
    summary as summary,
)

@_as_formula
def capability_ratio(upper: _Plain, lower: _Plain, sd: _Plain) -> Quantity:
    """How often the spread of a process goes into its tolerance.

    C_p = (U − L) / (6 × s)

    upper: upper end of the tolerance
    lower: lower end of the tolerance
    sd: standard deviation
    """

@_as_formula
def capability_to_nearest(mean: _Plain, upper: _Plain, lower: _Plain, sd: _Plain) -> Quantity:
    """How often half the spread of a process goes between its mean and the nearer end of the
    tolerance; negative where the mean is outside.

    C_pk = (no answer if U < L, else smaller of (U − x̄, x̄ − L) / (3 × s))

    mean: mean
    upper: upper end of the tolerance
    lower: lower end of the tolerance
    sd: standard deviation
    """

@_as_formula
def chart_lower(mean: _Plain, spread: _Plain, chart_factor: _Plain) -> Quantity:
    """Lower control limit of means or of single readings.

    x_l = x̄ − A × w̄

    mean: mean of all readings
    spread: mean range, mean standard deviation or mean moving range
    chart_factor: factor A₂, A₃ or E₂
    """

@_as_formula
def chart_upper(mean: _Plain, spread: _Plain, chart_factor: _Plain) -> Quantity:
    """Upper control limit of means or of single readings.

    x_u = x̄ + A × w̄

    mean: mean of all readings
    spread: mean range, mean standard deviation or mean moving range
    chart_factor: factor A₂, A₃ or E₂
    """

@_as_formula
def coefficient_of_variation(sd: _Plain, mean: _Plain) -> Quantity:
    """Standard deviation as a share of the mean.

    CV = s / x̄

    sd: standard deviation
    mean: mean
    """

@_as_formula
def commercial_count(
    skein_length: _Measure,
    oven_dry_mass: _Measure,
    allowance: _Plain,
) -> Quantity:
    """Count from the oven-dry mass of a skein and what is added to it by agreement.

    T = m_d / L × (1 + A) × 1000000

    skein_length: length of the skein
    oven_dry_mass: its oven-dry mass
    allowance: regain or commercial allowance, on the oven-dry mass
    """

@_as_formula
def corrected_reading(reading: _Plain, correction_factor: _Plain) -> Quantity:
    """A reading corrected by the factor that a check of the instrument against a standard gave.

    x_k = x × f_c

    reading: reading
    correction_factor: correction factor of the instrument
    """

@_as_formula
def correction_factor(certified_value: _Plain, standard_reading: _Plain) -> Quantity:
    """Correction factor of an instrument from its check against a standard: what to multiply
    readings by (calibration).

    f_c = x_c / x_s

    certified_value: certified value of the standard
    standard_reading: what the instrument reads of the standard, as a mean of several readings
    """

@_as_formula
def deviation_from_wanted(reading: _Plain, wanted_reading: _Plain) -> Quantity:
    """How far a reading is from what was wanted, as a share of it: above it positive, below
    negative.

    d = x / x₀ − 1

    reading: reading
    wanted_reading: what was wanted: on the label, in the order
    """

@_as_formula
def error_from_share(mean: _Plain, relative_error: _Plain) -> Quantity:
    """An error that is allowed as a share of the mean, in the unit of the readings.

    E = x̄ × e

    mean: mean
    relative_error: error allowed, as a share of the mean
    """

@_as_formula
def mean_half_width(sd_multiple: _Plain, sd: _Plain, readings: _Plain) -> Quantity:
    """Half the width of the interval in which the true mean lies.

    h = z × s / √n

    sd_multiple: standard deviations to each side, z or t
    sd: standard deviation of single readings
    readings: readings
    """

@_as_formula
def mean_lower_limit(mean: _Plain, sd_multiple: _Plain, sd: _Plain, readings: _Plain) -> Quantity:
    """Lower end of the interval in which the true mean lies.

    h = z × s / √n; x_l = x̄ − h

    mean: mean of the readings
    sd_multiple: standard deviations to each side, z or t
    sd: standard deviation of single readings
    readings: readings
    """

@_as_formula
def mean_upper_limit(mean: _Plain, sd_multiple: _Plain, sd: _Plain, readings: _Plain) -> Quantity:
    """Upper end of the interval in which the true mean lies.

    h = z × s / √n; x_u = x̄ + h

    mean: mean of the readings
    sd_multiple: standard deviations to each side, z or t
    sd: standard deviation of single readings
    readings: readings
    """

@_as_formula
def outlier_limit(readings: _Plain, student_t: _Plain) -> Quantity:
    """How far the reading farthest out of several may be from the mean, in standard deviations,
    before chance hardly explains it.

    G_c = (n − 1) / √n × √(t² / (n − 2 + t²))

    readings: readings
    student_t: Student's t
    """

@_as_formula
def outlier_ratio(reading: _Plain, mean: _Plain, sd: _Plain) -> Quantity:
    """How far a reading is from the mean, in standard deviations.

    G = greater of (x − x̄, −(x − x̄)) / s

    reading: the reading
    mean: mean of all readings
    sd: standard deviation of all readings
    """

@_as_formula
def readings_for_error(sd_multiple: _Plain, sd: _Plain, error: _Plain) -> Quantity:
    """Readings to take so that the mean is within an error, in the unit of the readings.

    n = greater of (round up((z × s / E)²), 1)

    sd_multiple: standard deviations to each side: 1.96 for 95 %
    sd: standard deviation of single readings
    error: error allowed
    """

@_as_formula
def readings_for_variation(sd_multiple: _Plain, cv: _Plain, relative_error: _Plain) -> Quantity:
    """Readings to take so that the mean is within a share of it.

    n = greater of (round up((z × CV / e)²), 1)

    sd_multiple: standard deviations to each side: 1.96 for 95 %
    cv: variation of single readings
    relative_error: error allowed, as a share of the mean
    """

@_as_formula
def readings_from_limits(
    readings: _Plain,
    half_width: _Plain,
    wanted_half_width: _Plain,
) -> Quantity:
    """Readings to take for narrower limits, from those that a number of readings gave.

    n₂ = greater of (round up(n × (h₁ / h₂)²), 2)

    readings: readings taken
    half_width: half the width that they gave
    wanted_half_width: half the width that is wanted
    """

@_as_formula
def sd_limit(sd: _Plain, readings: _Plain, chi_square: _Plain) -> Quantity:
    """An end of the interval in which the true standard deviation lies.

    σ = s × √((n − 1) / χ²)

    sd: standard deviation of the readings
    readings: readings
    chi_square: chi-square with n − 1 degrees of freedom
    """

@_as_formula
def sd_within(spread: _Plain, sd_factor: _Plain) -> Quantity:
    """Standard deviation within subgroups, from their mean range or their mean standard deviation.

    σ = w̄ / d

    spread: mean range or mean standard deviation
    sd_factor: d₂ for ranges, c₄ for standard deviations
    """

@_as_formula
def share_from_number(affected: _Plain, tested: _Plain) -> Quantity:
    """Share of a sample that is found to have a fault or a mark.

    p = k / n

    affected: how many have it
    tested: how many were looked at
    """

@_as_formula
def spread_limit(spread: _Plain, spread_factor: _Plain) -> Quantity:
    """Control limit of ranges or of standard deviations.

    w_l = D × w̄

    spread: mean range or mean standard deviation
    spread_factor: factor D₃, D₄, B₃ or B₄
    """

@_as_formula
def standard_error(sd: _Plain, readings: _Plain) -> Quantity:
    """Standard deviation of the mean of readings.

    s_m = s / √n

    sd: standard deviation of single readings
    readings: readings
    """

@_as_formula
def variation_limit(cv: _Plain, readings: _Plain, chi_square: _Plain) -> Quantity:
    """An end of the interval in which the true coefficient of variation lies.

    CV_l = CV / √(((χ² + 2) / n − 1) × CV² + χ² / (n − 1))

    cv: variation of the readings
    readings: readings
    chi_square: chi-square with n − 1 degrees of freedom
    """

@_as_calculation
def readings_needed(
    *,
    cv: _Plain,
    relative_error: _Plain,
    confidence: _Plain | None = None,
) -> Results[Literal["readings", "student_t", "error_left"], Quantity]:
    """How many readings give the mean within a share of it, where the variation will be known from
    those readings alone: with Student's t, which depends on their number in turn.

    cv: coefficient of variation of single readings
    relative_error: error allowed, as a share of the mean
    confidence: share of cases in which the mean is within it
    """

_SkeinCountOption: TypeAlias = Literal[
    "conditioned",
    "oven-dry",
    "oven-dry plus regain",
    "scoured, conditioned",
    "scoured, oven-dry",
    "scoured, oven-dry plus regain",
    "scoured, oven-dry plus commercial allowance",
]

@_as_calculation
def skein_count(
    *,
    masses: _Measures,
    skein_length: _Measure | Sequence[_Measure],
    option: _SkeinCountOption | None = None,
    allowance: _Plain | None = None,
    stretch: _Plain | None = None,
    confidence: _Plain | None = None,
) -> Results[str, Any]:
    """The count of a yarn from the masses of skeins of one length, with its interval, in the state
    that an option of ASTM D1907 names.

    masses: mass of each skein, in the state of the option
    skein_length: length of each skein
    option: option of ASTM D1907: the state in which the skeins were weighed, and what is added
    allowance: regain or commercial allowance that is added, on the oven-dry mass
    stretch: stretch of the yarn from 0.25 to 0.75 cN/tex
    confidence: share of cases in which the true count is within the limits
    """
