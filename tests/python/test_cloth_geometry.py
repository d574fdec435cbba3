"""Plain cloth against SciPy's root finders on the same equations; workings with a solved step."""

import math
import warnings

import hankwise as hw
import numpy as np
import openpyxl
import pytest
from scipy.optimize import brentq, root

CLOTH = {
    "warp_sett": "9 ends/cm",
    "weft_sett": "10 picks/cm",
    "warp_crimp": "4.5 %",
    "warp_diameter": "0.36 mm",
    "weft_diameter": "0.34 mm",
}


def cloths(n: int) -> dict[str, np.ndarray]:
    """Fabrics that can be, in base units."""
    rng = np.random.default_rng(5)
    d1, d2 = rng.uniform(0.15, 0.6, (2, n))
    p1, p2 = rng.uniform(1.05, 2.0, (2, n)) * (d1 + d2)
    crimp = (rng.uniform(0.25, 0.7, n) * 0.75 * (d1 + d2) / p2) ** 2
    return {"ends": 10 / p1, "picks": 10 / p2, "crimp": crimp, "d1": d1, "d2": d2}


def weft_crimps(c: dict[str, np.ndarray]) -> np.ndarray:
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", hw.RangeWarning)
        crimp = hw.cloth.weft_crimp(
            warp_sett=hw.q(c["ends"], "threads/cm"),
            weft_sett=hw.q(c["picks"], "threads/cm"),
            warp_crimp=hw.q(c["crimp"], "fraction"),
            warp_diameter=hw.q(c["d1"], "mm"),
            weft_diameter=hw.q(c["d2"], "mm"),
        )
    return crimp.number("fraction")


def by_brent(ends: float, picks: float, crimp: float, d1: float, d2: float) -> float:
    """Peirce's equations, one wave after the other, each by a bracket."""
    d, p1, p2 = d1 + d2, 10 / ends, 10 / picks
    l1 = p2 * (1 + crimp)
    t1 = brentq(
        lambda t: (l1 - d * t) * math.cos(t) + d * math.sin(t) - p2,
        0,
        min(l1 / d, math.pi / 2),
        xtol=1e-15,
        rtol=1e-15,
    )
    h2 = d - ((l1 - d * t1) * math.sin(t1) + d * (1 - math.cos(t1)))
    # The weft: the angle at which a straight line to the next thread has this height.
    t2 = brentq(
        lambda t: p1 * math.sin(t) + (d - h2) * math.cos(t) - d,
        0,
        math.pi / 2,
        xtol=1e-15,
        rtol=1e-15,
    )
    return (d * t2 + (p1 - d * math.sin(t2)) / math.cos(t2)) / p1 - 1


def test_against_brentq() -> None:
    c = cloths(2000)
    ours = weft_crimps(c)
    theirs = np.array([by_brent(*row) for row in zip(*c.values(), strict=True)])
    assert np.isfinite(ours).all()
    np.testing.assert_allclose(ours, theirs, rtol=1e-10, atol=1e-13)


def test_all_equations_at_once() -> None:
    cloth = hw.cloth.plain_cloth(**CLOTH)
    d, p1, p2, l1 = 0.7, 10 / 9, 1.0, 1.045

    def off(v: np.ndarray) -> list[float]:
        t1, t2, h1, h2, l2 = v
        return [
            (l1 - d * t1) * math.cos(t1) + d * math.sin(t1) - p2,
            (l1 - d * t1) * math.sin(t1) + d * (1 - math.cos(t1)) - h1,
            (l2 - d * t2) * math.cos(t2) + d * math.sin(t2) - p1,
            (l2 - d * t2) * math.sin(t2) + d * (1 - math.cos(t2)) - h2,
            h1 + h2 - d,
        ]

    found = root(off, [0.3, 0.3, d / 2, d / 2, p1 * 1.05], tol=1e-14).x
    names = ["warp_angle", "weft_angle", "warp_height", "weft_height", "weft_thread_length"]
    ours = [cloth[name].number(cloth[name].unit) for name in names]
    ours[:2] = np.radians(ours[:2])
    np.testing.assert_allclose(ours, found, rtol=1e-12)


def test_a_root_has_its_equation_and_its_slope() -> None:
    working = hw.cloth.weft_crimp.working(**CLOTH)
    text = str(working)
    equation = "root of (l₁ − D × θ₁) × cos(θ₁) + D × sin(θ₁) − p₂"
    numbers = "root of (1.045 − 0.7 × θ₁) × cos(θ₁) + 0.7 × sin(θ₁) − 1"
    assert f"θ₁ = {equation} = {numbers} = 0.318133 rad" in text
    assert "s₁ = l₁ − D × θ₁ = 1.045 − 0.7 × 0.318133 = 0.8223 mm" in text
    assert "found by iteration" in text
    # The slope through the root, against the formula moved a little either way.
    slopes = {s["input"]: s["slope"] for s in working.sensitivities}
    low, high = (
        hw.cloth.weft_crimp(**{**CLOTH, "warp_crimp": f"{4.5 + by} %"}).number("fraction")
        for by in (-1e-4, 1e-4)
    )
    assert slopes["warp_crimp"] == pytest.approx((high - low) / 2e-4, rel=1e-6)


def test_a_root_in_a_workbook(tmp_path) -> None:
    path = tmp_path / "cloth.xlsx"
    hw.cloth.plain_cloth(**CLOTH).to_workbook(path)
    sheet = openpyxl.load_workbook(path)["Working"]
    rows = {row[0].value: row for row in sheet.iter_rows(min_row=3)}
    theta = rows["θ₁"]
    # A value, and beside it what its equation leaves of zero.
    assert theta[2].value == pytest.approx(0.31813325)
    assert str(theta[6].value).startswith("=")
    assert "out of date when not 0" in sheet["G2"].value
    assert str(rows["weft_crimp"][2].value).startswith("=")


def test_what_has_no_solution_says_what_to_change() -> None:
    words = r"warp_sett at most 15\.7. threads/cm; or|weft_sett at most"
    with pytest.raises(hw.RangeError, match=words):
        hw.cloth.plain_cloth(**{**CLOTH, "warp_sett": "19 ends/cm"})
    with pytest.raises(
        hw.RangeError, match=r"each is possible, but not together.*warp_sett at most"
    ):
        hw.cloth.weft_crimp(**{**CLOTH, "warp_sett": "19 ends/cm"})
    with pytest.raises(hw.CallError, match="no input 'warp_set'; did you mean 'warp_sett'"):
        hw.cloth.plain_cloth(warp_set="9 ends/cm")


def test_a_column_of_crimps() -> None:
    crimps = np.array([3.0, 4.5, 6.0])
    many = hw.cloth.plain_cloth(**{**CLOTH, "warp_crimp": hw.q(crimps, "%")})
    one = hw.cloth.plain_cloth(**CLOTH)
    thickness = many["thickness"].number("mm")
    assert thickness[1] == one["thickness"].number("mm")
    assert thickness[0] != thickness[2]


def test_results_are_a_mapping() -> None:
    cloth = hw.cloth.plain_cloth(**CLOTH)
    assert set(cloth) == set(cloth.keys()) == set(cloth.meanings)
    assert len(cloth) == len(cloth.keys())
    assert "thickness" in cloth
    assert "thicknes" not in cloth
    with pytest.raises(KeyError, match="did you mean 'thickness'"):
        cloth["thicknes"]
    assert dict(cloth)["warp_sett"] == hw.q("9 threads/cm")
    assert "<table" in cloth._repr_html_()
    assert cloth.warnings == []
    assert "weft_crimp" in str(cloth.working("weft_crimp"))


def test_a_cloth_is_told_in_the_units_it_was_given_in():
    inch = {"warp_diameter": "16 mil", "weft_diameter": "16 mil"}
    text = str(
        hw.cloth.plain_cloth(**inch, warp_sett="22 epi", weft_sett="20 ppi", warp_crimp="8 %")
    )
    assert "22 threads/in  20 threads/in" in text
    assert "sum of the diameters 32 mil" in text
    with pytest.raises(hw.RangeError, match=r"warp_sett at most [0-9.]+ threads/in"):
        hw.cloth.plain_cloth(**inch, warp_sett="40 epi", weft_sett="40 ppi", warp_crimp="8 %")
    assert "threads/cm" in str(hw.cloth.plain_cloth(**CLOTH))
