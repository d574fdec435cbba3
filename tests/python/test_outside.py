"""Against others: pint's units of yarn, exact distributions of SciPy, the chain in plain NumPy."""

import re

import hankwise as hw
import numpy as np
import pint
import pytest
from scipy import stats

DRAWS = 200_000
Z95 = stats.norm.ppf(0.95)


# --- pint -------------------------------------------------------------------------------------

PINT = pint.UnitRegistry()
# Its units of yarn and their names here. RKM is a strength, no count.
COUNTS = {
    "tex": "tex",
    "dtex": "dtex",
    "denier": "den",
    "jute": "lb/spyndle",
    "aberdeen": "lb/spyndle",
    "number_english": "Ne",
    "number_meter": "Nm",
}
NO_COUNTS = {"RKM"}
# What it can say with a mass and a length, for systems that it does not know by name.
BY_DEFINITION = {
    "worsted": 560 * PINT.yard / PINT.pound,
    "NeL": 300 * PINT.yard / PINT.pound,
    "YSW": 256 * PINT.yard / PINT.pound,
    "galashiels-cut": 300 * PINT.yard / (24 * PINT.ounce),
    "hawick-cut": 300 * PINT.yard / (26 * PINT.ounce),
    "american-cut": 300 * PINT.yard / PINT.pound,
    "american-run": 100 * PINT.yard / PINT.ounce,
    "west-of-england": 320 * PINT.yard / PINT.pound,
    "yd/lb": PINT.yard / PINT.pound,
    "yd/oz": PINT.yard / PINT.ounce,
    "typp": 1000 * PINT.yard / PINT.pound,
    "gr/yd": PINT.grain / PINT.yard,
    "dr/1000yd": PINT.dram / (1000 * PINT.yard),
    "drex": PINT.gram / (10 * PINT.kilometer),
}
FIGURES = [0.5, 1.0, 16.0, 40.0, 1234.5]


def in_tex(quantity) -> float:
    """An indirect count is a length for a mass: its reciprocal is a linear density."""
    direct = quantity if quantity.check("[mass]/[length]") else 1 / quantity
    return direct.to("tex").magnitude


def test_no_unit_of_yarn_of_pint_is_left_out():
    group = set(PINT.get_group("Textile").members)
    assert group == set(COUNTS) | NO_COUNTS
    for name in NO_COUNTS:
        assert PINT.get_dimensionality(name) != PINT.get_dimensionality("tex")


@pytest.mark.parametrize(("theirs", "ours"), COUNTS.items())
def test_counts_of_pint(theirs, ours):
    for x in FIGURES:
        expected = in_tex(x * PINT(theirs))
        assert hw.convert(x, ours, "tex") == pytest.approx(expected, rel=1e-12)
        assert hw.convert(expected, "tex", ours) == pytest.approx(x, rel=1e-12)


@pytest.mark.parametrize(("ours", "theirs"), BY_DEFINITION.items())
def test_counts_by_their_definition_in_pint(ours, theirs):
    for x in FIGURES:
        assert hw.convert(x, ours, "tex") == pytest.approx(in_tex(x * theirs), rel=1e-12)


@pytest.mark.parametrize(
    ("ours", "theirs"),
    {
        "lb": "pound", "oz": "ounce", "dr": "dram", "gr": "grain", "yd": "yard", "ft": "foot",
        "in": "inch", "mile": "mile", "tpi": "1/inch", "threads/in": "1/inch", "min": "minute",
        "oz/yd²": "ounce/yard**2", "g/m²": "gram/meter**2", "yd/min": "yard/minute",
        "lb/h": "pound/hour", "kg/L": "kilogram/liter", "mL": "milliliter", "rad": "radian",
        "cN": "centinewton", "gf": "force_gram", "kgf": "kilogram_force", "lbf": "pound_force",
        "mN/tex": "millinewton/tex", "gf/tex": "force_gram/tex", "gf/dtex": "force_gram/dtex",
        "gf/den": "force_gram/denier", "RKM": "RKM", "psi": "psi",
        "kgf/mm²": "kilogram_force/millimeter**2", "L/kg": "liter/kilogram", "mil": "thou",
    }.items(),
)  # fmt: skip
def test_other_units_of_pint(ours, theirs):
    kind = hw.q(1, ours).kind
    base = {
        "mass": "kg", "length": "m", "twist": "turns/m", "sett": "threads/cm", "time": "h",
        "mass per area": "g/m²", "speed": "m/min", "mass per time": "kg/h", "density": "kg/L",
        "volume": "L", "angle": "°", "force": "N", "tenacity": "cN/tex", "stress": "MPa",
        "specific volume": "cm³/g", "yarn diameter": "mm",
    }[kind]  # fmt: skip
    to = base.replace("turns", "1").replace("threads", "1").replace("²", "**2")
    to = to.replace("³", "**3").replace("cN", "centinewton").replace("°", "degree")
    to = re.sub(r"\bh\b", "hour", to)
    expected = PINT.Quantity(7.0, theirs).to(to)
    assert hw.convert(7.0, ours, base) == pytest.approx(expected.magnitude, rel=1e-12)


# --- exact distributions ----------------------------------------------------------------------


def known(text: str) -> str:
    """The lot file with every range replaced by its likely figure."""
    return re.sub(r'\{[^{}]*likely = ("[^"]*")[^{}]*\}', r"\1", text)


def test_only_the_clean_share_uncertain(first_lot):
    text = known(first_lot).replace('clean = "52 %"', 'clean = { mean = "52 %", sd = "2 %" }')
    plan = hw.plan.loads(text)
    assert [given["name"] for given in plan.given if given["uncertain"]] == ["lot.clean"]
    result = plan.run(DRAWS, 1)
    # The margin is a straight line of the clean share: worked by hand, 7.495 hanks a point.
    (slope,) = [
        s["slope"]
        for s in result.working("hank.unrounded").sensitivities
        if s["input"] == "lot.clean"
    ]
    assert slope == pytest.approx(7.495, abs=0.0005)
    exact = stats.norm(result.spare["planned"], 2 * slope)
    assert exact.std() == pytest.approx(14.99, abs=0.005)
    margin = result.samples["spare"]
    assert np.mean(margin) == pytest.approx(exact.mean(), abs=4 * exact.std() / DRAWS**0.5)
    assert np.std(margin) == pytest.approx(exact.std(), rel=4 / (2 * DRAWS) ** 0.5)
    chance = exact.sf(0)
    assert chance == pytest.approx(0.730, abs=0.0005)
    assert result.chance == pytest.approx(chance, abs=4 * (chance * (1 - chance) / DRAWS) ** 0.5)
    assert stats.kstest(margin, exact.cdf).pvalue > 1e-3
    for name, share in (("low", 0.05), ("middle", 0.5), ("high", 0.95)):
        error = (share * (1 - share) / DRAWS) ** 0.5 / exact.pdf(exact.ppf(share))
        assert result.spare[name] == pytest.approx(exact.ppf(share), abs=4 * error)


# --- the chain in plain NumPy -----------------------------------------------------------------


def two_piece(rng, low: float, likely: float, high: float, there, back) -> np.ndarray:
    """Low, likely, high are the 5 %, 50 % and 95 % points; normal to each side on a scale."""
    a, b, c = there(low), there(likely), there(high)
    z = rng.standard_normal(DRAWS)
    return back(b + z * np.where(z < 0, b - a, c - b) / Z95)


def share(rng, low, likely, high):
    return two_piece(
        rng, low, likely, high, lambda p: np.log(p / (1 - p)), lambda y: 1 / (1 + np.exp(-y))
    )


def demo_lot(rng) -> dict[str, np.ndarray]:
    """The first lot as it is worked by hand, for many draws at once; kg of clean dry fibre."""
    clean = share(rng, 0.485, 0.52, 0.55)
    rejects = share(rng, 0.05, 0.08, 0.12)
    card = share(rng, 0.04, 0.05, 0.07)
    held_up = two_piece(rng, 0.45, 0.60, 0.85, np.log, np.exp)
    mule = share(rng, 0.02, 0.03, 0.045)
    take_up = share(rng, 0.07, 0.08, 0.095)
    narrower = share(rng, 0.105, 0.12, 0.135)
    shorter = share(rng, 0.085, 0.10, 0.12)

    hopper = 80 * (1 - rejects) * clean * 0.99 * 0.98 * 0.99
    yarn = (hopper * (1 - card) - held_up) * (1 - mule) * 0.985 * 0.995

    tex = 1e5 / 330 / 1.176
    ends = np.floor(1.40 / ((1 - narrower) * 0.94) * 240 + 1e-6) * 2
    warp = ((1.80 / (1 - shorter) / (1 - take_up) + 0.24) * 12 + 1.0) * ends
    weft = 460 * 1.80 / (1 - shorter) * (ends / 480 + 0.02) * 12 * 1.03
    throws = (warp + weft) * tex / 1e6 / 0.99
    hank = 232 * 1.5 * 0.95 * tex / 1e6
    hanks = (yarn - throws) / hank
    # Up again: the greasy mass that would just do for the promise.
    wanted = throws + 240 * hank
    fed = (wanted / (0.995 * 0.985 * (1 - mule)) + held_up) / (1 - card)
    greasy = fed / (0.99 * 0.98 * 0.99) / clean / (1 - rejects)
    return {"hanks": hanks, "yarn": yarn, "card": hopper * (1 - card) - held_up, "greasy": greasy}


@pytest.fixture(scope="module")
def drawn(first_lot):
    return demo_lot(np.random.default_rng(2)), hw.plan.loads(first_lot)


def assert_alike(ours: np.ndarray, theirs: np.ndarray) -> None:
    """Two samples of one distribution, by their means, spreads and quantiles, and as a whole."""
    spread = theirs.std()
    assert abs(ours.mean() - theirs.mean()) < 4 * spread * (2 / DRAWS) ** 0.5
    assert ours.std() == pytest.approx(spread, rel=4 / DRAWS**0.5)
    assert stats.ks_2samp(ours, theirs).pvalue > 1e-3


def test_the_margin_and_the_chance(drawn):
    theirs, plan = drawn
    result = plan.run(DRAWS, 5)
    assert_alike(result.samples["spare"], theirs["hanks"] - 240)
    chance = np.mean(theirs["hanks"] >= 240)
    assert abs(result.chance - chance) < 4 * (2 * chance * (1 - chance) / DRAWS) ** 0.5
    # Whole hanks are counted in each draw.
    assert set(np.unique(result.samples["throw"])) == {12.0}
    whole = np.floor(theirs["hanks"])
    assert abs(result.samples["hank"].mean() - whole.mean()) < 4 * whole.std() * (2 / DRAWS) ** 0.5


def test_the_bands_down_the_stages(drawn):
    theirs, plan = drawn
    stages = {row["name"]: row for row in plan.run(DRAWS, 5).stages}
    for stage, key in (("card", "card"), ("hank-scour", "yarn")):
        fibre = theirs[key] * 1.17
        for name, at in (("low", 0.05), ("middle", 0.5), ("high", 0.95)):
            batches = np.quantile(fibre.reshape(20, -1), at, axis=1)
            error = batches.std(ddof=1) / 20**0.5
            expected = np.quantile(fibre, at)
            assert abs(stages[stage][name] - expected) < 5 * 2**0.5 * error, (stage, name)


def test_the_greasy_mass_to_be_sure(drawn):
    theirs, plan = drawn
    for confidence in (0.5, 0.8, 0.95):
        needed = plan.needed(confidence=confidence, lots=DRAWS, seed=9).greasy_mass.number("kg")
        batches = np.quantile(theirs["greasy"].reshape(20, -1), confidence, axis=1)
        error = batches.std(ddof=1) / 20**0.5
        assert abs(needed - np.quantile(theirs["greasy"], confidence)) < 5 * 2**0.5 * error


def test_what_moves_the_hanks(first_lot):
    """The gradient of the unrounded hanks, worked by hand: for a point, or for 0.1 kg held up."""
    working = hw.plan.loads(first_lot).run(0).working("hank.unrounded")
    slope = {s["input"]: s["slope"] for s in working.sensitivities}
    assert slope["lot.clean"] == pytest.approx(7.495, abs=0.0005)
    assert slope["sort.rejects"] == pytest.approx(-4.236, abs=0.0005)
    assert slope["card.loss"] == pytest.approx(-4.102, abs=0.0005)
    assert slope["card.held_up"] / 10 == pytest.approx(-1.116, abs=0.0005)
