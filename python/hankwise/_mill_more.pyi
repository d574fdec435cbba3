"""What hankwise.mill has besides its formulas."""

from collections.abc import Mapping
from typing import Literal

from hankwise._hankwise import ChangeWheel, Particulars, _Measure, _Plain, _Plains

def change_wheel(
    constant: _Measure | float,
    wanted: _Measure | float,
    wheels: _Plains,
    law: Literal["inverse", "direct"] = "inverse",
) -> ChangeWheel: ...
def blend(
    components: Mapping[str, Mapping[str, _Measure | _Plain | None]],
    /,
    *,
    total: _Measure | None = None,
    regain: _Plain | None = None,
    fat: _Plain | None = None,
) -> Particulars: ...
def evenness_of_blend(
    *,
    share: _Plain,
    layers: _Plain,
    variation: _Plain,
    tuft: _Measure,
    sample: _Measure,
    passes: _Plain | None = None,
    doublings: _Plain | None = None,
    wanted: _Plain | None = None,
) -> Particulars: ...
