"""What hankwise.quality has besides its formulas."""

from typing import Literal

from hankwise._hankwise import (
    Capability,
    Chart,
    Quantity,
    Summary,
    Table,
    _Measure,
    _Measures,
    _Plain,
    _Plains,
)

def capability(
    values: Quantity | _Measures | _Plains,
    low: _Measure | float,
    high: _Measure | float,
    subgroup: int | None = None,
) -> Capability: ...
def chart(
    values: Quantity | _Measures | _Plains,
    subgroup: int | None = None,
    kind: Literal["mean", "range", "deviation", "individuals", "moving range"] | None = None,
    *,
    centre: _Measure | float | None = None,
    sigma: _Measure | float | None = None,
    baseline: int | None = None,
) -> Chart: ...
def chart_constants(n: int) -> dict[str, float]: ...
def chi_square(share: _Plain, readings: int) -> float: ...
def deviations(
    values: Quantity | _Measures | _Plains,
    wanted: _Measure | float,
    tolerance: _Plain | None = None,
) -> Table: ...
def student_t(confidence: _Plain, readings: int) -> float: ...
def summary(
    values: Quantity | _Measures | _Plains,
    confidence: _Plain | None = None,
    precision: _Plain | None = None,
) -> Summary: ...
