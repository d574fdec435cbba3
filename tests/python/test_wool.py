"""Raw wool, grades, blends: against SciPy, and the plan that reads a test wash."""

import re
from pathlib import Path

import hankwise as hw
import pytest
from scipy import stats

LOT = Path(__file__).parents[2] / "examples" / "first-lot.toml"
GREASY, CLEAN = [200.0, 198.0, 205.0, 201.0], [124.0, 119.0, 130.0, 122.0]


def grams(masses: list[float]) -> list[str]:
    return [f"{mass} g" for mass in masses]


def test_the_interval_of_a_wash_is_students() -> None:
    wash = hw.fibre.test_wash(
        greasy_masses=grams(GREASY),
        washed_masses=grams(CLEAN),
        regain="16 %",
        confidence="95 %",
    )
    fibre = [mass / 1.16 for mass in CLEAN]
    share = sum(fibre) / sum(GREASY)
    off = sum((f - share * g) ** 2 for f, g in zip(fibre, GREASY, strict=True))
    error = (4 / 3 * off) ** 0.5 / sum(GREASY)
    low, high = stats.t.interval(0.95, 3, share, error)
    assert wash["clean_yield"].number("fraction") == pytest.approx(share, rel=1e-12)
    assert wash["low"].number("fraction") == pytest.approx(low, rel=1e-9)
    assert wash["high"].number("fraction") == pytest.approx(high, rel=1e-9)


def test_the_plan_reads_the_line_of_a_wash() -> None:
    wash = hw.fibre.test_wash(
        greasy_masses=grams(GREASY), washed_masses=grams(CLEAN), regain="16 %"
    )
    words = " ".join(str(wash).split())
    found = re.search(r"clean = \{[^}]*\}", words)
    assert found
    text, times = re.subn(r"^clean = \{[^}]*\}", found[0], LOT.read_text(), flags=re.M)
    assert times == 1
    assert "mean" in found[0]
    hw.plan.loads(text, str(LOT)).run(lots=200, seed=1)


def test_samples_of_one_and_of_unlike_numbers() -> None:
    with pytest.warns(hw.RangeWarning, match="one sample"):
        hw.fibre.test_wash(greasy_masses=["3 oz"], washed_masses=["2.25 oz"], regain="16 %")
    with pytest.raises(hw.RangeError, match="both masses"):
        hw.fibre.test_wash(greasy_masses=["3 oz", "3 oz"], washed_masses=["2.25 oz"], regain="16 %")


def test_yields_go_round_from_any_one() -> None:
    first = hw.fibre.clean_yields(wool_base="52 %", vegetable_base="1.5 %")
    for name in first:
        again = hw.fibre.clean_yields(**{name: first[name]}, vegetable_base="1.5 %")
        for other in first:
            assert again[other].number("%") == pytest.approx(first[other].number("%"), abs=1e-9)
    with pytest.raises(hw.NotationError, match="omit all but one"):
        hw.fibre.clean_yields(wool_base="52 %", iwto_17="61 %")


def test_a_grade_drops_one_where_it_spreads() -> None:
    assert hw.fibre.us_grade("18.5 µm").name == "80s"
    assert hw.fibre.us_grade("17.69 µm").number is None
    dropped = hw.fibre.us_grade("18.5 µm", sd="4.10 µm")
    assert (dropped.name, dropped.dropped) == ("70s", True)
    with pytest.raises(hw.RangeError, match="coarser than any grade"):
        hw.fibre.us_grade("41 µm")


def test_too_few_fibres_are_told() -> None:
    with pytest.warns(hw.RangeWarning, match="below the 100 to 120"):
        hw.fibre.will_spin(fibre_diameter="32 µm", diameter_cv="25 %", count="90 tex")
    with pytest.raises(hw.NotationError, match="semi-worsted"):
        hw.fibre.will_spin(
            fibre_diameter="32 µm", diameter_cv="25 %", count="90 tex", system="mule"
        )


def test_what_is_weighed_gives_the_shares_that_were_wanted() -> None:
    parts = {
        "white": {"share": "60 %", "regain": "16 %", "fat": "1 %"},
        "moorit": {"share": "40 %", "regain": "12 %"},
    }
    wanted = hw.mill.blend(components=parts, blend_mass="58 kg", stated_regain="16 %")
    weighed = {
        name: {"mass": wanted[f"{name}.mass"], "regain": said["regain"], "fat": said.get("fat")}
        for name, said in parts.items()
    }
    found = hw.mill.blend(components=weighed)
    assert found["white.share"].number("%") == pytest.approx(60, abs=1e-9)
    assert found["fibre_mass"].number("kg") == pytest.approx(50, abs=1e-9)
    with pytest.raises(hw.RangeError, match="sum to"):
        hw.mill.blend(
            components={
                "a": {"share": "60 %", "regain": "9 %"},
                "b": {"share": "30 %", "regain": "9 %"},
            },
            blend_mass="9 kg",
            stated_regain="9 %",
        )


def test_less_than_chance_leaves_is_not_promised() -> None:
    with pytest.warns(hw.RangeWarning, match="less than chance leaves"):
        hw.mill.evenness_of_blend(
            component_share="30 %",
            layers=6,
            layer_cv="25 %",
            tuft_mass="20 mg",
            sample_mass="2 g",
            wanted_share_sd="1 %",
        )
