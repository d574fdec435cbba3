"""What hankwise.cloth has besides its formulas."""

from collections.abc import Sequence

from hankwise._hankwise import (
    ColourOrder,
    Draft,
    ReedChoice,
    Weave,
    _Measure,
    _Measures,
    _Plain,
    _Plains,
    _Threads,
    _Woven,
)

def weave(weave: _Woven, /) -> Weave: ...
def satin_moves(ends: int, /) -> list[int]: ...
def draft(
    threading: _Threads,
    tie_up: Sequence[_Threads] | None = None,
    treadling: _Threads | None = None,
    *,
    lifts: Sequence[_Threads] | None = None,
) -> Draft: ...
def colour_order(order: str, ends: int | None = None, *, even: bool = True) -> ColourOrder: ...
def choose_reed(
    sett: _Measure,
    reeds: _Measure | _Measures,
    ends_per_dent: _Plain | _Plains | None = None,
    width: _Measure | None = None,
    *,
    period: int = 4,
    selvedge_ends_per_dent: _Plain | None = None,
    selvedge_dents: _Plain | None = None,
    selvedge_width: _Measure | None = None,
) -> ReedChoice: ...
