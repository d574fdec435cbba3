"""What hankwise.cloth has besides its formulas."""

from hankwise._hankwise import (
    Particulars,
    ReedChoice,
    Settings,
    _Measure,
    _Measures,
    _Plain,
    _Plains,
)

def settings(
    weave: str,
    warp: _Measure,
    weft: _Measure | None = None,
    factor: _Plain | None = None,
    *,
    volume: _Measure | None = None,
    ends: _Measure | None = None,
    picks: _Measure | None = None,
    unit: str | None = None,
) -> Settings: ...
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
def plain_cloth(
    *,
    warp_diameter: _Measure = ...,
    weft_diameter: _Measure = ...,
    picks: _Measure = ...,
    warp_crimp: _Measure | float = ...,
    warp_length: _Measure = ...,
    warp_height: _Measure = ...,
    warp_angle: _Measure = ...,
    ends: _Measure = ...,
    weft_crimp: _Measure | float = ...,
    weft_length: _Measure = ...,
    weft_height: _Measure = ...,
    weft_angle: _Measure = ...,
) -> Particulars: ...
