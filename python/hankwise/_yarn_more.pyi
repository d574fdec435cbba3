"""What hankwise.yarn has besides its formulas."""

from typing import Literal

from hankwise._hankwise import Wraps, Yarn, _Measure

def parse(
    text: str,
    /,
    *,
    system: str | None = None,
    order: Literal["ends/count", "count/ends", "resultant/ends", "count/count"] | None = None,
    material: str | None = None,
    state: str | None = None,
    relaxed: bool | None = None,
) -> Yarn: ...
def wraps(count: _Measure, /) -> Wraps: ...
