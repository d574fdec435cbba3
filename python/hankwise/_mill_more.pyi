"""What hankwise.mill has besides its formulas."""

from typing import Literal

from hankwise._hankwise import ChangeWheel, _Measure, _Plains

def change_wheel(
    constant: _Measure | float,
    wanted: _Measure | float,
    wheels: _Plains,
    law: Literal["inverse", "direct"] = "inverse",
) -> ChangeWheel: ...
