"""What hankwise.mill has besides its formulas."""

from collections.abc import Mapping, Sequence
from typing import Literal

from hankwise._hankwise import (
    Balance,
    Particulars,
    _Measure,
    _Plain,
)

def balance(into: str, out: Sequence[str]) -> Balance: ...
