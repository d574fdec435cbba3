"""How many to test, how sure a mean is, whether a machine has moved."""

# Written by python -m hankwise._stubs from the catalogue.

from typing import Literal, final

from hankwise._hankwise import (
    Formula,
    Quantity,
    Working,
    _Measure,
    _Plain,
)
from hankwise._quality_more import capability as capability
from hankwise._quality_more import chart as chart
from hankwise._quality_more import chart_constants as chart_constants
from hankwise._quality_more import chi_square as chi_square
from hankwise._quality_more import deviations as deviations
from hankwise._quality_more import readings_needed as readings_needed
from hankwise._quality_more import skein_count as skein_count
from hankwise._quality_more import student_t as student_t
from hankwise._quality_more import summary as summary

@final
class _CapabilityRatio(Formula):
    """How often the spread of a process goes into its tolerance.

    C_p = (U − L) / (6 × s)

    upper: upper end of the tolerance
    lower: lower end of the tolerance
    sd: standard deviation
    """

    def __call__(self, upper: _Plain, lower: _Plain, sd: _Plain) -> Quantity: ...
    def working(
        self,
        upper: _Plain,
        lower: _Plain,
        sd: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["upper", "lower", "sd"],
        *,
        capability_ratio: _Plain,
        upper: _Plain = ...,
        lower: _Plain = ...,
        sd: _Plain = ...,
    ) -> list[Quantity]: ...

capability_ratio: _CapabilityRatio

@final
class _CapabilityToNearest(Formula):
    """How often half the spread of a process goes between its mean and the nearer end of the
    tolerance; negative where the mean is outside.

    C_pk = smaller of (U − x̄, x̄ − L) / (3 × s)

    mean: mean
    upper: upper end of the tolerance
    lower: lower end of the tolerance
    sd: standard deviation
    """

    def __call__(self, mean: _Plain, upper: _Plain, lower: _Plain, sd: _Plain) -> Quantity: ...
    def working(
        self,
        mean: _Plain,
        upper: _Plain,
        lower: _Plain,
        sd: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mean", "upper", "lower", "sd"],
        *,
        capability_to_nearest: _Plain,
        mean: _Plain = ...,
        upper: _Plain = ...,
        lower: _Plain = ...,
        sd: _Plain = ...,
    ) -> list[Quantity]: ...

capability_to_nearest: _CapabilityToNearest

@final
class _ChartLower(Formula):
    """Lower control limit of means or of single readings.

    x_l = x̄ − A × w̄

    mean: mean of all readings
    spread: mean range, mean standard deviation or mean moving range
    chart_factor: factor A₂, A₃ or E₂
    """

    def __call__(self, mean: _Plain, spread: _Plain, chart_factor: _Plain) -> Quantity: ...
    def working(
        self,
        mean: _Plain,
        spread: _Plain,
        chart_factor: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mean", "spread", "chart_factor"],
        *,
        chart_lower: _Plain,
        mean: _Plain = ...,
        spread: _Plain = ...,
        chart_factor: _Plain = ...,
    ) -> list[Quantity]: ...

chart_lower: _ChartLower

@final
class _ChartUpper(Formula):
    """Upper control limit of means or of single readings.

    x_u = x̄ + A × w̄

    mean: mean of all readings
    spread: mean range, mean standard deviation or mean moving range
    chart_factor: factor A₂, A₃ or E₂
    """

    def __call__(self, mean: _Plain, spread: _Plain, chart_factor: _Plain) -> Quantity: ...
    def working(
        self,
        mean: _Plain,
        spread: _Plain,
        chart_factor: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mean", "spread", "chart_factor"],
        *,
        chart_upper: _Plain,
        mean: _Plain = ...,
        spread: _Plain = ...,
        chart_factor: _Plain = ...,
    ) -> list[Quantity]: ...

chart_upper: _ChartUpper

@final
class _CoefficientOfVariation(Formula):
    """Standard deviation as a share of the mean.

    CV = s / x̄

    sd: standard deviation
    mean: mean
    """

    def __call__(self, sd: _Plain, mean: _Plain) -> Quantity: ...
    def working(
        self,
        sd: _Plain,
        mean: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sd", "mean"],
        *,
        coefficient_of_variation: _Plain,
        sd: _Plain = ...,
        mean: _Plain = ...,
    ) -> list[Quantity]: ...

coefficient_of_variation: _CoefficientOfVariation

@final
class _CommercialCount(Formula):
    """Count from the oven-dry mass of a skein and what is added to it by agreement.

    T = m_d / L × (1 + A) × 1000000

    skein_length: length of the skein
    oven_dry_mass: its oven-dry mass
    allowance: regain or commercial allowance, on the oven-dry mass
    """

    def __call__(
        self,
        skein_length: _Measure,
        oven_dry_mass: _Measure,
        allowance: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        skein_length: _Measure,
        oven_dry_mass: _Measure,
        allowance: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["skein_length", "oven_dry_mass", "allowance"],
        *,
        commercial_count: _Measure,
        skein_length: _Measure = ...,
        oven_dry_mass: _Measure = ...,
        allowance: _Plain = ...,
    ) -> list[Quantity]: ...

commercial_count: _CommercialCount

@final
class _DeviationFromWanted(Formula):
    """How far a reading is from what was wanted, as a share of it: above it positive, below
    negative.

    d = x / x₀ − 1

    reading: reading
    wanted_reading: what was wanted: on the label, in the order
    """

    def __call__(self, reading: _Plain, wanted_reading: _Plain) -> Quantity: ...
    def working(
        self,
        reading: _Plain,
        wanted_reading: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reading", "wanted_reading"],
        *,
        deviation_from_wanted: _Plain,
        reading: _Plain = ...,
        wanted_reading: _Plain = ...,
    ) -> list[Quantity]: ...

deviation_from_wanted: _DeviationFromWanted

@final
class _ErrorFromShare(Formula):
    """An error that is allowed as a share of the mean, in the unit of the readings.

    E = x̄ × e

    mean: mean
    relative_error: error allowed, as a share of the mean
    """

    def __call__(self, mean: _Plain, relative_error: _Plain) -> Quantity: ...
    def working(
        self,
        mean: _Plain,
        relative_error: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mean", "relative_error"],
        *,
        error_from_share: _Plain,
        mean: _Plain = ...,
        relative_error: _Plain = ...,
    ) -> list[Quantity]: ...

error_from_share: _ErrorFromShare

@final
class _MeanHalfWidth(Formula):
    """Half the width of the interval in which the true mean lies.

    h = z × s / √n

    sd_multiple: standard deviations to each side, z or t
    sd: standard deviation of single readings
    readings: readings
    """

    def __call__(self, sd_multiple: _Plain, sd: _Plain, readings: _Plain) -> Quantity: ...
    def working(
        self,
        sd_multiple: _Plain,
        sd: _Plain,
        readings: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sd_multiple", "sd", "readings"],
        *,
        mean_half_width: _Plain,
        sd_multiple: _Plain = ...,
        sd: _Plain = ...,
        readings: _Plain = ...,
    ) -> list[Quantity]: ...

mean_half_width: _MeanHalfWidth

@final
class _MeanLowerLimit(Formula):
    """Lower end of the interval in which the true mean lies.

    h = z × s / √n; x_l = x̄ − h

    mean: mean of the readings
    sd_multiple: standard deviations to each side, z or t
    sd: standard deviation of single readings
    readings: readings
    """

    def __call__(
        self,
        mean: _Plain,
        sd_multiple: _Plain,
        sd: _Plain,
        readings: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        mean: _Plain,
        sd_multiple: _Plain,
        sd: _Plain,
        readings: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mean", "sd_multiple", "sd", "readings"],
        *,
        mean_lower_limit: _Plain,
        mean: _Plain = ...,
        sd_multiple: _Plain = ...,
        sd: _Plain = ...,
        readings: _Plain = ...,
    ) -> list[Quantity]: ...

mean_lower_limit: _MeanLowerLimit

@final
class _MeanUpperLimit(Formula):
    """Upper end of the interval in which the true mean lies.

    h = z × s / √n; x_u = x̄ + h

    mean: mean of the readings
    sd_multiple: standard deviations to each side, z or t
    sd: standard deviation of single readings
    readings: readings
    """

    def __call__(
        self,
        mean: _Plain,
        sd_multiple: _Plain,
        sd: _Plain,
        readings: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        mean: _Plain,
        sd_multiple: _Plain,
        sd: _Plain,
        readings: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mean", "sd_multiple", "sd", "readings"],
        *,
        mean_upper_limit: _Plain,
        mean: _Plain = ...,
        sd_multiple: _Plain = ...,
        sd: _Plain = ...,
        readings: _Plain = ...,
    ) -> list[Quantity]: ...

mean_upper_limit: _MeanUpperLimit

@final
class _OutlierLimit(Formula):
    """How far the reading farthest out of several may stand from the mean, in standard deviations,
    before chance hardly explains it.

    G_c = (n − 1) / √n × √(t × t / (n − 2 + t × t))

    readings: readings
    student_t: Student's t
    """

    def __call__(self, readings: _Plain, student_t: _Plain) -> Quantity: ...
    def working(
        self,
        readings: _Plain,
        student_t: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["readings", "student_t"],
        *,
        outlier_limit: _Plain,
        readings: _Plain = ...,
        student_t: _Plain = ...,
    ) -> list[Quantity]: ...

outlier_limit: _OutlierLimit

@final
class _OutlierRatio(Formula):
    """How far a reading stands from the mean, in standard deviations.

    G = greater of (x − x̄, −(x − x̄)) / s

    reading: the reading
    mean: mean of all readings
    sd: standard deviation of all readings
    """

    def __call__(self, reading: _Plain, mean: _Plain, sd: _Plain) -> Quantity: ...
    def working(
        self,
        reading: _Plain,
        mean: _Plain,
        sd: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reading", "mean", "sd"],
        *,
        outlier_ratio: _Plain,
        reading: _Plain = ...,
        mean: _Plain = ...,
        sd: _Plain = ...,
    ) -> list[Quantity]: ...

outlier_ratio: _OutlierRatio

@final
class _ReadingsForError(Formula):
    """Readings to take so that the mean is within an error, in the unit of the readings.

    n = round up(z × s / E × z × s / E − 1e−9)

    sd_multiple: standard deviations to each side: 1.96 for 95 %
    sd: standard deviation of single readings
    error: error allowed
    """

    def __call__(self, sd_multiple: _Plain, sd: _Plain, error: _Plain) -> Quantity: ...
    def working(
        self,
        sd_multiple: _Plain,
        sd: _Plain,
        error: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sd_multiple", "sd", "error"],
        *,
        readings_for_error: _Plain,
        sd_multiple: _Plain = ...,
        sd: _Plain = ...,
        error: _Plain = ...,
    ) -> list[Quantity]: ...

readings_for_error: _ReadingsForError

@final
class _ReadingsForVariation(Formula):
    """Readings to take so that the mean is within a share of it.

    n = round up(z × CV / e × z × CV / e − 1e−9)

    sd_multiple: standard deviations to each side: 1.96 for 95 %
    cv: variation of single readings
    relative_error: error allowed, as a share of the mean
    """

    def __call__(self, sd_multiple: _Plain, cv: _Plain, relative_error: _Plain) -> Quantity: ...
    def working(
        self,
        sd_multiple: _Plain,
        cv: _Plain,
        relative_error: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sd_multiple", "cv", "relative_error"],
        *,
        readings_for_variation: _Plain,
        sd_multiple: _Plain = ...,
        cv: _Plain = ...,
        relative_error: _Plain = ...,
    ) -> list[Quantity]: ...

readings_for_variation: _ReadingsForVariation

@final
class _ReadingsFromLimits(Formula):
    """Readings to take for narrower limits, from those that a number of readings gave.

    n₂ = round up(n × h₁ / h₂ × h₁ / h₂ − 1e−9)

    readings: readings taken
    half_width: half the width that they gave
    wanted_half_width: half the width that is wanted
    """

    def __call__(
        self,
        readings: _Plain,
        half_width: _Plain,
        wanted_half_width: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        readings: _Plain,
        half_width: _Plain,
        wanted_half_width: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["readings", "half_width", "wanted_half_width"],
        *,
        readings_from_limits: _Plain,
        readings: _Plain = ...,
        half_width: _Plain = ...,
        wanted_half_width: _Plain = ...,
    ) -> list[Quantity]: ...

readings_from_limits: _ReadingsFromLimits

@final
class _SdLimit(Formula):
    """An end of the interval in which the true standard deviation lies.

    σ = s × √((n − 1) / χ²)

    sd: standard deviation of the readings
    readings: readings
    chi_square: chi-square with n − 1 degrees of freedom
    """

    def __call__(self, sd: _Plain, readings: _Plain, chi_square: _Plain) -> Quantity: ...
    def working(
        self,
        sd: _Plain,
        readings: _Plain,
        chi_square: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sd", "readings", "chi_square"],
        *,
        sd_limit: _Plain,
        sd: _Plain = ...,
        readings: _Plain = ...,
        chi_square: _Plain = ...,
    ) -> list[Quantity]: ...

sd_limit: _SdLimit

@final
class _SdWithin(Formula):
    """Standard deviation within subgroups, from their mean range or their mean standard deviation.

    σ = w̄ / d

    spread: mean range or mean standard deviation
    sd_factor: d₂ for ranges, c₄ for standard deviations
    """

    def __call__(self, spread: _Plain, sd_factor: _Plain) -> Quantity: ...
    def working(
        self,
        spread: _Plain,
        sd_factor: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spread", "sd_factor"],
        *,
        sd_within: _Plain,
        spread: _Plain = ...,
        sd_factor: _Plain = ...,
    ) -> list[Quantity]: ...

sd_within: _SdWithin

@final
class _ShareFromNumber(Formula):
    """Share of a sample that is found to have a fault or a mark.

    p = k / n

    affected: how many have it
    tested: how many were looked at
    """

    def __call__(self, affected: _Plain, tested: _Plain) -> Quantity: ...
    def working(
        self,
        affected: _Plain,
        tested: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["affected", "tested"],
        *,
        share_from_number: _Plain,
        affected: _Plain = ...,
        tested: _Plain = ...,
    ) -> list[Quantity]: ...

share_from_number: _ShareFromNumber

@final
class _SpreadLimit(Formula):
    """Control limit of ranges or of standard deviations.

    w_l = D × w̄

    spread: mean range or mean standard deviation
    spread_factor: factor D₃, D₄, B₃ or B₄
    """

    def __call__(self, spread: _Plain, spread_factor: _Plain) -> Quantity: ...
    def working(
        self,
        spread: _Plain,
        spread_factor: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spread", "spread_factor"],
        *,
        spread_limit: _Plain,
        spread: _Plain = ...,
        spread_factor: _Plain = ...,
    ) -> list[Quantity]: ...

spread_limit: _SpreadLimit

@final
class _StandardError(Formula):
    """Standard deviation of the mean of readings.

    s_m = s / √n

    sd: standard deviation of single readings
    readings: readings
    """

    def __call__(self, sd: _Plain, readings: _Plain) -> Quantity: ...
    def working(
        self,
        sd: _Plain,
        readings: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sd", "readings"],
        *,
        standard_error: _Plain,
        sd: _Plain = ...,
        readings: _Plain = ...,
    ) -> list[Quantity]: ...

standard_error: _StandardError

@final
class _VariationLimit(Formula):
    """An end of the interval in which the true coefficient of variation lies.

    CV_l = CV / √(((χ² + 2) / n − 1) × CV × CV + χ² / (n − 1))

    cv: variation of the readings
    readings: readings
    chi_square: chi-square with n − 1 degrees of freedom
    """

    def __call__(self, cv: _Plain, readings: _Plain, chi_square: _Plain) -> Quantity: ...
    def working(
        self,
        cv: _Plain,
        readings: _Plain,
        chi_square: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cv", "readings", "chi_square"],
        *,
        variation_limit: _Plain,
        cv: _Plain = ...,
        readings: _Plain = ...,
        chi_square: _Plain = ...,
    ) -> list[Quantity]: ...

variation_limit: _VariationLimit
