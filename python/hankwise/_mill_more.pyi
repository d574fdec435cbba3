"""What hankwise.mill has besides its formulas."""

from collections.abc import Mapping, Sequence
from typing import Literal

from hankwise._hankwise import (
    Balance,
    ChangeWheel,
    Particulars,
    _Measure,
    _Plain,
    _Plains,
)

def change_wheel(
    constant: _Measure | float,
    wanted: _Measure | float,
    wheels: _Plains,
    law: Literal["inverse", "direct"] = "inverse",
) -> ChangeWheel: ...
def balance(into: str, out: Sequence[str]) -> Balance: ...
def emulsion(
    *,
    mass: _Measure | None = None,
    fibre: _Measure | None = None,
    regain: _Plain,
    oil: _Plain,
    wanted: _Plain | None = None,
    oil_share: _Plain | None = None,
    density: _Measure | None = None,
    fat: _Plain | None = None,
    vegetable: _Plain | None = None,
) -> Particulars: ...
def scour_liquor(
    *,
    mass: _Measure,
    liquor_ratio: _Plain,
    soap: _Measure | None = None,
    alkali: _Measure | None = None,
    pickup: _Plain | None = None,
    rinses: _Plain | None = None,
    rinse_ratio: _Plain | None = None,
    regain: _Plain | None = None,
    temperature: _Measure | None = None,
) -> Particulars: ...
def washes(
    washes: Sequence[Mapping[str, _Measure | _Plain | None]],
    /,
    *,
    mass: _Measure,
    fat: _Plain | None = None,
) -> Particulars: ...
def dye_bath(
    *,
    mass: _Measure,
    depth: _Plain,
    liquor_ratio: _Plain,
    regain: _Plain | None = None,
    recipe_regain: _Plain | None = None,
    strength: _Plain | None = None,
    stock: _Measure | None = None,
    wet: _Measure | None = None,
    additions: Mapping[str, _Plain] | None = None,
    exhaustion: _Plain | None = None,
    loss: _Plain | None = None,
    regain_after: _Plain | None = None,
    count: _Measure | None = None,
    shrinkage: _Plain | None = None,
    source: str | None = None,
) -> Particulars: ...
