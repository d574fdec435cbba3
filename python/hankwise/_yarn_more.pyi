"""What hankwise.yarn has besides its formulas."""

from collections.abc import Sequence
from typing import Literal

from hankwise._hankwise import (
    HandbookTable,
    Rounded,
    Yarn,
    _Measure,
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
def weight_class(count: _Measure, country: str | None = None) -> HandbookTable: ...
def weight_band(word: str, country: str | None = None) -> HandbookTable: ...
def round_tex(count: _Measure, /, agreed: Sequence[float] | None = None) -> Rounded: ...
def round_count(
    count: _Measure, unit: str, /, agreed: Sequence[float] | None = None
) -> Rounded: ...
