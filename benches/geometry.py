"""Crimp from crimp in plain cloth: against SciPy and NumPy on the same figures."""

from __future__ import annotations

import math
import time
import warnings
from collections.abc import Callable

import hankwise as hw
import numpy as np
from scipy.optimize import brentq


def fabrics(n: int) -> dict[str, np.ndarray]:
    """Plain cloths that can be, in base units: setts, a crimp, diameters."""
    rng = np.random.default_rng(3)
    d1, d2 = rng.uniform(0.15, 0.6, (2, n))
    p1, p2 = rng.uniform(1.0, 2.5, (2, n)) * (d1 + d2)
    crimp = (rng.uniform(0.25, 0.75, n) * 0.75 * (d1 + d2) / p2) ** 2
    return {"ends": 10 / p1, "picks": 10 / p2, "crimp": crimp, "d1": d1, "d2": d2}


def quantities(c: dict[str, np.ndarray]) -> dict[str, hw.Quantity]:
    """The same values as the library takes them."""
    units = {"ends": "threads/cm", "picks": "threads/cm", "crimp": "fraction"}
    return {name: hw.q(column, units.get(name, "mm")) for name, column in c.items()}


def ours(q: dict[str, hw.Quantity]) -> np.ndarray:
    """All fabrics at once by the library."""
    return hw.cloth.weft_crimp(
        warp_sett=q["ends"],
        weft_sett=q["picks"],
        warp_crimp=q["crimp"],
        warp_diameter=q["d1"],
        weft_diameter=q["d2"],
    ).number("fraction")


def by_newton(c: dict[str, np.ndarray], tolerance: float = 1e-14) -> np.ndarray:
    """All fabrics at once by Newton's method from the first term of the series."""
    d = c["d1"] + c["d2"]
    p1, p2 = 10 / c["ends"] / d, 10 / c["picks"] / d
    length = p2 * (1 + c["crimp"])
    t = np.sqrt(2 * (length - p2) / length)
    for _ in range(60):
        sin = np.sin(t)
        straight = length - t
        step = (straight * np.cos(t) + sin - p2) / (straight * sin)
        t += step
        if np.abs(step).max() < tolerance:
            break
    h2 = 1 - ((length - t) * np.sin(t) + 1 - np.cos(t))
    t2 = 2 * np.arctan(h2 / (p1 + np.sqrt(p1 * p1 - h2 * (2 - h2))))
    return (t2 + (p1 - np.sin(t2)) / np.cos(t2)) / p1 - 1


def by_brentq(ends: float, picks: float, crimp: float, d1: float, d2: float) -> float:
    """One fabric by a bracketing root finder, as one would write it in a loop."""
    d = d1 + d2
    p1, p2 = 10 / ends / d, 10 / picks / d
    length = p2 * (1 + crimp)
    t = brentq(
        lambda t: (length - t) * math.cos(t) + math.sin(t) - p2,
        0,
        min(length, math.pi / 2),
        xtol=1e-15,
        rtol=1e-15,
    )
    h2 = 1 - ((length - t) * math.sin(t) + 1 - math.cos(t))
    t2 = 2 * math.atan(h2 / (p1 + math.sqrt(p1 * p1 - h2 * (2 - h2))))
    return (t2 + (p1 - math.sin(t2)) / math.cos(t2)) / p1 - 1


def best(way: Callable[[], object], repeats: int) -> float:
    """Best wall time."""
    times = []
    for _ in range(repeats):
        begin = time.perf_counter()
        way()
        times.append(time.perf_counter() - begin)
    return min(times)


def compare(n: int = 1_000_000, looped: int = 20_000) -> None:
    """Crimp from crimp: how far the ways are apart, and how long each takes."""
    warnings.simplefilter("ignore", hw.RangeWarning)
    c = fabrics(n)
    q = quantities(c)
    found, newton = ours(q), by_newton(c)
    few = [row for _, row in zip(range(looped), zip(*c.values(), strict=True), strict=False)]
    brent = np.array([by_brentq(*row) for row in few])
    off = [np.abs(newton - found).max(), np.abs(brent - found[:looped]).max()]
    print(f"plain cloth, {n:,} fabrics: at most {off[0]:.0e} from Newton, {off[1]:.0e} from brentq")
    mine = best(lambda: ours(q), 15)
    theirs = best(lambda: by_newton(c), 7)
    loop = best(lambda: [by_brentq(*row) for row in few], 3) * n / looped
    print(f"plain cloth: NumPy's Newton / ours: {theirs / mine:.1f} × (aim: 5 or more)")
    print(f"plain cloth: scipy's brentq in a loop / ours: {loop / mine:.0f} × (aim: 50 or more)")
