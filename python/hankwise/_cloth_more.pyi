"""What hankwise.cloth has besides its formulas."""

from hankwise._hankwise import Particulars, _Measure

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
