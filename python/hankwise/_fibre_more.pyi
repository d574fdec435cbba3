"""What hankwise.fibre has besides its formulas."""

from collections.abc import Sequence
from typing import Literal

from hankwise._hankwise import (
    HandbookTable,
    Particulars,
    Quantity,
    _Measure,
    _Plain,
)

def allowance(fibre: str, list: Literal["EU", "ASTM", "trade"] | None = None) -> Quantity: ...
def allowances(fibre: str) -> HandbookTable: ...
def equilibrium_regain(humidity: _Plain) -> Particulars: ...
def humidity_for_regain(regain: _Plain) -> Particulars: ...
def invoice(
    *,
    mass: _Measure,
    allowances: Sequence[_Plain] | _Plain,
    sample: _Measure | None = None,
    dry: _Measure | None = None,
    regain: _Plain | None = None,
    content: _Plain | None = None,
    fat: _Plain | None = None,
) -> Particulars: ...
