"""What hankwise.mill has besides its formulas."""

from collections.abc import Mapping, Sequence
from typing import Literal, NotRequired, TypedDict

from hankwise._hankwise import (
    Balance,
    ChangeWheel,
    Particulars,
    Week,
    _Measure,
    _Plain,
    _Plains,
)

class _CostedStage(TypedDict):
    name: str
    loss: NotRequired[_Plain]
    cost: NotRequired[_Measure]
    hourly: NotRequired[_Plain]
    rate: NotRequired[_Measure]
    waste_sold: NotRequired[_Plain]
    waste_value: NotRequired[_Measure]

class _Lot(TypedDict):
    name: str
    colour: str
    lightness: NotRequired[_Plain]
    hours: Mapping[str, _Measure]

class _Machine(TypedDict):
    hours: _Measure
    clean_down: NotRequired[_Measure]
    to_darker: NotRequired[_Measure]
    to_lighter: NotRequired[_Measure]
    from_to: NotRequired[Mapping[tuple[str, str], _Measure]]
    colour: NotRequired[str]
    lightness: NotRequired[_Plain]
    people: NotRequired[_Plain]

def change_wheel(
    constant: _Measure | float,
    wanted: _Measure | float,
    wheels: _Plains,
    law: Literal["inverse", "direct"] = "inverse",
) -> ChangeWheel: ...
def cost_through(
    *,
    price: _Measure,
    stages: Sequence[_CostedStage],
    pieces: Mapping[str, _Measure] | None = None,
    overhead: _Plain | None = None,
    hourly_overhead: _Plain | None = None,
    margin: _Plain | None = None,
    mark_up: _Plain | None = None,
) -> Particulars: ...
def compare_tariffs(
    *,
    greasy: _Measure,
    yields: _Plain | Sequence[_Plain],
    per_greasy: _Measure | None = None,
    per_clean: _Measure | None = None,
    per_finished: _Measure | None = None,
    clean_yield: _Plain | None = None,
    minimum: _Plain | None = None,
    rejects: _Plain | None = None,
    free_rejects: _Plain | None = None,
    per_reject: _Measure | None = None,
) -> Particulars: ...
def balance(into: str, out: Sequence[str]) -> Balance: ...
def week(
    lots: Sequence[_Lot],
    machines: Mapping[str, _Machine],
    order: Literal["light to dark", "dark to light", "as given"] = "light to dark",
    *,
    try_orders: bool = False,
) -> Week: ...
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
