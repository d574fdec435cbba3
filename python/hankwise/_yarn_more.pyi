"""What hankwise.yarn has besides its formulas."""

from collections.abc import Sequence
from typing import Literal

from hankwise._hankwise import (
    HandbookTable,
    Rounded,
    Table,
    Yarn,
    _Measure,
    _Measures,
    _Plain,
)

def parse(
    text: str | Yarn,
    /,
    *,
    system: str | None = None,
    order: Literal["ends/count", "count/ends", "resultant/ends", "count/count"] | None = None,
    material: str | None = None,
    state: str | None = None,
    relaxed: bool | None = None,
) -> Yarn: ...
def check_weight_card(
    count: _Measure,
    lengths: _Measure | _Measures,
    *,
    ends: int = 1,
    readings: int = 1,
    different_ends: int | None = None,
    cv: _Plain | None = None,
    cv_between_ends: _Plain | None = None,
    cv_readings: int | None = None,
    regain_stated: _Plain | None = None,
    regain_today: _Plain | None = None,
    oil_stated: _Plain | None = None,
    oil_today: _Plain | None = None,
    confidence: _Plain = 0.95,
    balance: str | Sequence[str] = "g",
) -> Table: ...
def weight_class(count: _Measure, country: str | None = None) -> HandbookTable: ...
def weight_band(word: str, country: str | None = None) -> HandbookTable: ...
def round_tex(count: _Measure, /, agreed: Sequence[float] | None = None) -> Rounded: ...
def round_count(
    count: _Measure, unit: str, /, agreed: Sequence[float] | None = None
) -> Rounded: ...
