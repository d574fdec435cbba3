"""What hankwise.fibre has besides its formulas."""
# ruff: noqa: PT028  (a test wash is of wool, and no test of pytest)

from collections.abc import Sequence
from typing import Literal

from hankwise._hankwise import (
    HandbookTable,
    Particulars,
    Quantity,
    WoolGrade,
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
def clean_yields(
    *,
    wool_base: _Plain | None = None,
    vegetable_base: _Plain | None = None,
    iwto_16: _Plain | None = None,
    iwto_17: _Plain | None = None,
    japanese: _Plain | None = None,
    top_and_noil: _Plain | None = None,
    customs_content: _Plain | None = None,
    customs_yield: _Plain | None = None,
    **shrinkage: _Plain | None,
) -> Particulars: ...
def test_wash(
    greasy: Sequence[_Measure] | _Measure,
    clean: Sequence[_Measure] | _Measure,
    *,
    regain: _Plain,
    fat: _Plain | None = None,
    vegetable: _Plain | None = None,
    confidence: _Plain | None = None,
    reading: _Measure | None = None,
) -> Particulars: ...
def us_grade(diameter: _Measure, sd: _Measure | None = None) -> WoolGrade: ...
def will_spin(
    *,
    diameter: _Measure,
    variation: _Plain,
    count: _Measure,
    system: Literal["woollen", "semi-worsted", "worsted"] = "woollen",
    staple: _Measure | None = None,
    setting: _Measure | None = None,
) -> Particulars: ...
