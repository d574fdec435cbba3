"""The cloth room against SciPy and NumPy on the same figures."""

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


def ours(c: dict[str, np.ndarray]) -> np.ndarray:
    crimp = hw.cloth.weft_crimp(
        ends=hw.q(c["ends"], "threads/cm"),
        picks=hw.q(c["picks"], "threads/cm"),
        warp_crimp=hw.q(c["crimp"], "fraction"),
        warp_diameter=hw.q(c["d1"], "mm"),
        weft_diameter=hw.q(c["d2"], "mm"),
    )
    return crimp.number("fraction")


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
    times = []
    for _ in range(repeats):
        begin = time.perf_counter()
        way()
        times.append(time.perf_counter() - begin)
    return min(times)


def geometry(n: int = 1_000_000, looped: int = 20_000) -> None:
    c = fabrics(n)
    found, newton = ours(c), by_newton(c)
    fits = np.isfinite(found)
    c = {name: column[fits] for name, column in c.items()}
    found, newton = found[fits], newton[fits]
    off = np.abs(found - newton).max()
    few = [row for _, row in zip(range(looped), zip(*c.values(), strict=True), strict=False)]
    brent = np.array([by_brentq(*row) for row in few])
    print(
        f"plain cloth, {len(found):,} fabrics: apart from NumPy's Newton by {off:.0e} at most, from "
        f"brentq by {np.abs(brent - found[:looped]).max():.0e}"
    )
    mine = best(lambda: ours(c), 9)
    theirs = best(lambda: by_newton(c), 5)
    loop = best(lambda: [by_brentq(*row) for row in few], 3) * len(found) / looped
    print(f"plain cloth: NumPy's Newton / ours: {theirs / mine:.1f} × (aim: 5 or more)")
    print(f"plain cloth: scipy's brentq in a loop / ours: {loop / mine:.0f} × (aim: 50 or more)")
    print(f"plain cloth: {mine / len(found) * 1e9:.0f} ns a fabric")


def main() -> None:
    """Measure and print."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", hw.RangeWarning)
        geometry()


if __name__ == "__main__":
    main()
