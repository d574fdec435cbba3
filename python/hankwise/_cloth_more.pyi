"""What hankwise.cloth has besides its formulas."""

from collections.abc import Sequence

from hankwise._hankwise import Draft, Weave, _Threads, _Woven

def weave(weave: _Woven, /) -> Weave: ...
def satin_moves(ends: int, /) -> list[int]: ...
def draft(
    threading: _Threads,
    tie_up: Sequence[_Threads] | None = None,
    treadling: _Threads | None = None,
    *,
    lifts: Sequence[_Threads] | None = None,
) -> Draft: ...
