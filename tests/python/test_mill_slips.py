"""What is typed wrong of wool, wet processes and money: told what to write instead."""

import warnings

import hankwise as hw
import pandas as pd
import pytest

F, M = hw.fibre, hw.mill
STAGES = [{"name": "card", "loss": "10 %"}]
TARIFFS = {"tariff_in": "11 /kg", "tariff_out": "20 /kg"}


def dye(**more):
    return M.dye_bath(**{"mass": "10 kg", "depth": "2 %", "liquor_ratio": 30, **more})


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda: F.invoice(lot_mass="0 kg", regain="17 %", allowances=["16 %"]), "is not possible"),
        (lambda: F.invoice(lot_mass="1 kg", regain="17 %", allowance=["9 %"]), "mean 'allowances'"),
        (lambda: F.invoice(lot_mas="1 kg"), "no input 'lot_mas'; did you mean 'lot_mass'"),
        (lambda: F.clean_yields(wool_base="50 %", vegetable_base="60 %"), "beside 60 % of"),
        (
            lambda: F.test_wash(
                greasy_masses=["200 g", "100 g"], washed_masses=["20 g", "130 g"], regain="16 %"
            ),
            "sample 2 holds more",
        ),
        (lambda: M.scour_liquor(mass="20 kg", liquor_ratio=0), "0 is not possible for the litres"),
        (lambda: M.scour_liquor(mass="20 kg", liquor_ratio="30:1"), "30 for 30:1"),
        (lambda: M.scour_liquor(mass="20 kg", liquor_ratio="1:30"), "one number"),
        (lambda: M.scour_liquor(mass="20 kg"), 'write liquor_ratio=30'),
        (
            lambda: M.scour_liquor(mass="20 kg", liquor_ratio=30, temperature="55 C"),
            "units of temperature: °C",
        ),
        (lambda: dye(shrinkage="3 %"), "without count_before"),
        (lambda: dye(loss="100 %"), "all of the goods would be lost"),
        (lambda: M.blend(components={"white": "10 kg", "grey": "4 kg"}), "a list goes here"),
        (lambda: hw.q("2 lb/gal"), "'lb/imp gal' .of 4.546 L. or 'lb/US gal'"),
        (lambda: hw.q("10 gallons"), "'imp gal' .4.546 L. or 'US gal'"),
        (
            lambda: M.scour_liquor(
                mass="9 kg", liquor_ratio=30, soap_concentration="2 oz/gal"
            ),
            "'oz/US gal'",
        ),
        (lambda: hw.quality.coefficient_of_variation(3, 0), "mean more than 0$"),
        (
            lambda: M.cost_through(
                price_per_mass="4 /kg",
                stages={"card": {"hourly_cost": -24, "feed_rate": "12 kg/h"}},
            ),
            "what an hour costs; write 0 or more",
        ),
        (
            lambda: M.cost_through(price_per_mass="4 /kg", stages=STAGES, hourly_overhead=-1),
            "hourly_overhead: −1 is given",
        ),
        (
            lambda: M.cost_through(
                price_per_mass="4 /kg", stages=STAGES, goods={"card": "100 g"}
            ),
            "a name among the stages and among the goods; change one, such as to 'card 2'",
        ),
        (
            lambda: M.cost_through(price_per_mass="4 /kg", stages=STAGES, goods={3: "100 g"}),
            "a name goes here, not 3",
        ),
        (
            lambda: M.mule(
                spindles=120, travel="6 ft", cycle="22.5 s", count="150 tex", efficiency="85 %",
                break_rate=1e6, patrol_time="5 min",
            ),
            "thousand spindle hours",
        ),
    ],
)  # fmt: skip
def test_what_is_refused_and_what_to_write(call, words):
    with pytest.raises(hw.HankwiseError, match=words):
        call()


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (
            lambda: F.test_wash(
                greasy_masses=["200 g"] * 2, washed_masses=["210 g", "212 g"], regain="16 %"
            ),
            "clean_yield = 90.9",
        ),
        (lambda: F.us_grade("1.85 µm"), "diameter = 1.85 µm is unusual"),
        (
            lambda: M.compare_tariffs(greasy_mass="80 kg", yields=["45 %", "160 %"], **TARIFFS),
            "160 %",
        ),
    ],
)
def test_what_is_unusual(call, words):
    with pytest.warns(hw.RangeWarning, match=words):
        call()


def test_samples_that_do_not_differ_give_no_interval():
    wash = F.test_wash(greasy_masses=["200 g"] * 3, washed_masses=["124 g"] * 3, regain="16 %")
    said = repr(wash)
    assert "do not differ" in said
    assert "95 %" not in said
    assert "For the lot file" not in said


def test_wool_that_costs_nothing_has_no_shares():
    cost = M.cost_through(price_per_mass="0 /kg", stages=STAGES)
    assert "NaN" not in repr(cost)
    assert cost["cost_per_mass"].number("/kg") == 0


def test_a_density_in_kilograms_for_a_cubic_metre():
    lot = {
        "mass": "40 kg", "regain_before": "16 %", "oil_added": "4 %", "wanted_regain": "25 %"
    }  # fmt: skip
    one, other = (M.emulsion(oil_density=d, **lot) for d in ("920 kg/m³", "0.92 kg/L"))
    assert one.keys() == other.keys()
    assert [one[k].number(one[k].unit) for k in one] == pytest.approx(
        [other[k].number(other[k].unit) for k in other]
    )  # fmt: skip


def test_gallons_of_both_countries():
    gallons = {"imp gal": 4.54609, "US gal": 3.785411784}
    for unit, litres in gallons.items():
        assert hw.q(1, unit).number("L") == pytest.approx(litres, rel=1e-12)
        soap = hw.q(1, f"oz/{unit}").number("g/L")
        assert soap == pytest.approx(28.349523125 / litres, rel=1e-12)
        assert hw.q(1, f"lb/{unit}").number("g/L") == pytest.approx(16 * soap, rel=1e-12)


def test_what_a_lot_costs_asks_for_costs(root):
    made = hw.plan.load(root / "examples/first-lot.toml").run(lots=100, seed=1)
    for wrong, words in [
        ({"hourly_wag": "4"}, "did you mean 'hourly_wage'"),
        ({"stages": {"card": {"hourly_cost": "-24"}}}, "card.hourly_cost: −24 is given"),
        ({"stages": {"card": {"people": 1}}, "hourly_wage": "-2"}, "hourly_wage: −2 is given"),
    ]:
        with pytest.raises(hw.HankwiseError, match=words):
            made.cost(price_per_mass="4 /kg", **wrong)


def test_a_value_is_asked_for_by_its_name():
    cost = M.cost_through(price_per_mass="4 /kg", stages=STAGES)
    with pytest.raises(KeyError, match="by its name, such as"):
        cost[0]
    assert 0 not in cost
    assert "cost_per_mass" in cost


def test_a_message_is_one_line():
    with pytest.raises(hw.NotationError, match="2 of 2 rows") as caught:
        hw.yarn.twist_factor(twist=pd.Series(["nine", "ten"]), count="16 YSW")
    assert "\n" not in str(caught.value)


def test_nothing_usual_warns():
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        F.test_wash(
            greasy_masses=["200 g", "198 g"], washed_masses=["124 g", "119 g"], regain="16 %"
        )
        F.us_grade("18.5 µm")
        M.compare_tariffs(greasy_mass="80 kg", yields=["45 %", "60 %"], **TARIFFS)
