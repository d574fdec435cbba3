"""Diameter, twist slope, wraps, strength and evenness against NumPy, SciPy and pint."""

import pickle

import hankwise as hw
import numpy as np
import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

PINT = pint.UnitRegistry()
TEX = st.floats(3, 1900)


@given(TEX, st.floats(0.7, 6))
def test_a_yarn_is_a_rod_of_its_mass(tex, volume):
    """The rod of the computed diameter weighs what the count says, by pint's units."""
    d = hw.yarn.yarn_diameter(f"{volume} cm³/g", f"{tex} tex").number("mm") * PINT.mm
    density = PINT.Quantity(1 / volume, "g/cm**3")
    assert (np.pi / 4 * d**2 * density).to("tex").magnitude == pytest.approx(tex, rel=1e-12)


@given(st.floats(20, 3000), st.floats(0.03, 6))
def test_a_fibre_on_the_surface(twist, diameter):
    """The length of a drawn helix is that of its slope: one turn, ten thousand chords."""
    angle = hw.yarn.helix_angle(f"{twist} turns/m", f"{diameter} mm").number("rad")
    turn = np.linspace(0, 2 * np.pi, 10_001)
    r, height = diameter / 2, 1000 / twist
    path = np.stack([r * np.cos(turn), r * np.sin(turn), height * turn / (2 * np.pi)])
    length = np.linalg.norm(np.diff(path), axis=0).sum()
    assert height / np.cos(angle) == pytest.approx(length, rel=1e-6)


def test_the_mean_deviation_of_a_normal_distribution():
    normal = stats.norm(30, 4.2)
    mean_deviation = normal.expect(lambda x: abs(x - 30)) / 30
    variation = hw.yarn.irregularity_from_mean_deviation(mean_deviation).number("fraction")
    assert variation == pytest.approx(4.2 / 30, rel=1e-6)


def test_folding_and_processes_in_drawn_yarns():
    """Ends drawn at random, folded and disturbed again, vary as the formulas say."""
    rng = np.random.default_rng(4)
    ends = rng.normal(1, 0.14, (400_000, 3))
    fold = ends.mean(axis=1)
    near = 4 / (2 * len(fold)) ** 0.5
    assert stats.variation(fold) == pytest.approx(
        hw.yarn.irregularity_of_fold("14 %", 3).number("fraction"), rel=near
    )
    after = fold + rng.normal(0, 0.06, len(fold))
    before = hw.yarn.irregularity_of_fold("14 %", 3)
    both = hw.yarn.irregularity_after_processes([before, "6 %"])
    assert stats.variation(after) == pytest.approx(both.number("fraction"), rel=near)
    added = hw.yarn.added_irregularity(before, both)
    assert added.number("%") == pytest.approx(6, rel=1e-12)


def test_fibres_laid_by_chance_have_index_one():
    """The number of fibres in a section is Poisson's, where they are laid by chance."""
    for n in (20, 100, 400):
        poisson = stats.poisson(n)
        index = hw.yarn.irregularity_index(poisson.std() / poisson.mean(), 1, n)
        assert index.number("") == pytest.approx(1, rel=1e-12)


@given(st.floats(0.1, 500), TEX)
def test_the_breaking_length_hangs_by_the_breaking_force(force, tex):
    length = hw.yarn.breaking_length(f"{force} N", f"{tex} tex").number("km") * PINT.km
    weight = length * PINT.Quantity(tex, "tex") * PINT.standard_gravity
    assert weight.to("N").magnitude == pytest.approx(force, rel=1e-12)


# --- wraps ------------------------------------------------------------------------------------


def test_wraps_are_a_band_with_its_grounds():
    wraps = hw.yarn.wraps(count="6135 yd/lb")
    low, likely, high = (wraps[name].number("wpi") for name in ("low", "touching", "high"))
    assert low == pytest.approx(25 / 0.75)
    assert likely == pytest.approx(0.9 * 6135**0.5)
    assert high == pytest.approx((6135 / 0.884) ** 0.5)
    said = repr(wraps)
    assert "stimate" in said
    # The factors, from the fewest wraps to the most.
    assert f"33  {low / 6135**0.5:.2f}" in said.replace("    ", "  ")
    assert "Grist experiment" in said
    # The middle value is one formula of the catalogue, where a factor of one's own goes in too.
    assert wraps["touching"] == hw.yarn.wraps_estimate(0.9, "6135 yd/lb")


@pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")
@given(TEX)
def test_the_band_is_as_wide_whatever_the_count(tex):
    wraps = hw.yarn.wraps(count=hw.q(tex, "tex"))
    assert wraps["high"] / wraps["low"] == pytest.approx(0.884**-0.5 / (25 / 0.75 / 6135**0.5))


def test_wraps_of_what_is_no_count_are_refused():
    with pytest.raises(hw.UnitError):
        hw.yarn.wraps(count="6135 yd")
    with pytest.raises(TypeError, match="by name"):
        hw.yarn.wraps("60 tex")


# --- diameters --------------------------------------------------------------------------------


def test_a_length_serves_as_a_diameter():
    expected = hw.yarn.helix_angle("500 turns/m", "0.4 mm")
    lengths = hw.q("0.4 mm"), hw.q([0.4], "mm")[0], hw.q("400 µm"), hw.q("0.04 cm")
    for length in lengths:
        angle = hw.yarn.helix_angle("500 turns/m", length).number("°")
        assert angle == pytest.approx(expected.number("°"), rel=1e-12)
    column = hw.yarn.helix_angle("500 turns/m", hw.q(np.array([0.4, 0.4]), "mm"))
    np.testing.assert_allclose(column.number("°"), expected.number("°"))
    with pytest.raises(hw.UnitError, match=r"yarn diameter.*0\.35 mm"):
        hw.yarn.helix_angle("500 turns/m", hw.q("1 yd"))


def test_a_diameter_and_how_many_in_an_inch():
    d = hw.q("0.254 mm")
    assert d.kind == "length"
    assert d.to("1/in").kind == "yarn diameter"
    assert d.number("1/in") == pytest.approx(100)
    assert hw.convert(100, "1/in", "mm") == pytest.approx(0.254)
    with pytest.raises(hw.UnitError, match=r"reciprocals.*'mm'"):
        hw.q([156.0, 110.0], "1/in").mean()
    answer = hw.yarn.yarn_diameter("1.1 cm³/g", "20 Ne")
    assert pickle.loads(pickle.dumps(answer)) == answer
