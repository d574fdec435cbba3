"""A designation read by a compiled regular expression in Python: the peer of our reader."""

from __future__ import annotations

import re
from dataclasses import dataclass

_TWIST = r"(t0|[SZ](?:\s*[\d.]+)?)"
_WHOLE = re.compile(
    rf"\s*R\s*([\d.]+)\s*([A-Za-z]+)(?:\s*{_TWIST})?"
    rf"((?:\s*/\s*\d+(?:\s*(?:t0|[SZ](?:\s*[\d.]+)?))?)*)"
    r"(?:\s*f(\d+))?(?:\s*;\s*([\d.]+)\s*([A-Za-z]+))?\s*"
)
_LEVEL = re.compile(rf"/\s*(\d+)(?:\s*{_TWIST})?")
_UNITS = {"tex": 1.0, "dtex": 0.1, "ktex": 1000.0, "den": 1 / 9}


@dataclass(frozen=True, slots=True)
class Count:
    """A number in a unit."""

    number: float
    unit: str


@dataclass(frozen=True, slots=True)
class Twist:
    """A direction and turns a metre."""

    direction: str
    turns: float | None


@dataclass(frozen=True, slots=True)
class Single:
    """A single."""

    count: Count | None
    twist: Twist | None
    filaments: int | None


@dataclass(frozen=True, slots=True)
class Fold:
    """Ends that are alike, folded."""

    strand: Single | Fold
    ends: int
    twist: Twist | None


@dataclass(frozen=True, slots=True)
class Yarn:
    """A build and the count of the whole."""

    build: Single | Fold
    whole: Count


def _count(number: str, unit: str) -> Count:
    if unit not in _UNITS:
        raise ValueError(unit)
    return Count(float(number), unit)


def _twist(text: str | None) -> Twist | None:
    if text is None:
        return None
    if text == "t0":
        return Twist("", 0.0)
    return Twist(text[0], float(text[1:]) if len(text) > 1 else None)


def parse(text: str) -> Yarn:
    """Read a designation from the fold to the single."""
    found = _WHOLE.fullmatch(text)
    if found is None:
        raise ValueError(text)
    number, unit, top, levels, filaments, single, single_unit = found.groups()
    twists, ends = [_twist(top)], []
    for count, twist in _LEVEL.findall(levels):
        ends.append(int(count))
        twists.append(_twist(twist or None))
    build: Single | Fold = Single(
        _count(single, single_unit) if single else None,
        twists.pop(),
        int(filaments) if filaments else None,
    )
    while ends:
        build = Fold(build, ends.pop(), twists.pop())
    return Yarn(build, _count(number, unit))
