"""Costs, prices and tariffs, as users meet them."""

import pickle

import hankwise as hw
import numpy as np
import pytest


def words(shown):
    """Give what is shown on one line, for sentences are broken where they are long."""
    return " ".join(repr(shown).split())


STAGES = [
    {"name": "sort", "loss": "6 %"},
    {"name": "scour", "loss": "42 %"},
    {"name": "card", "loss": "8 %"},
    {"name": "spin", "loss": "3 %"},
]


LOT = {"greasy_mass": "80 kg", "tariff_in": "11 /kg", "tariff_out": "20 /kg", "yields": ["50 %"]}


def test_without_stage_costs_it_is_the_price_through_losses():
    cost = hw.mill.cost_through(price_per_mass="4.0 /kg", stages=STAGES)
    # Published with the chain of losses: 8.221 for a kilogram out.
    assert cost["cost_per_mass"].number("/kg") == pytest.approx(8.221, abs=5e-4)
    assert cost["bought_per_mass"].number("/kg") == pytest.approx(8.221, abs=5e-4)
    assert cost["sort.mass_in"].number("kg") == pytest.approx(51.384 / 25, rel=1e-4)
    assert [row["name"] for row in cost["stages"]] == ["sort", "scour", "card", "spin"]
    assert cost["kilogram.cost"].number("") == pytest.approx(8.221, abs=5e-4)


def test_overhead_and_machine_hours_by_hand():
    stages = [{"name": "card", "loss": "20 %", "hourly_cost": "24", "feed_rate": "12 kg/h"}]
    cost = hw.mill.cost_through(
        price_per_mass="4 /kg", stages=stages, overhead="50 %", hourly_overhead="6",
        mark_up="25 %", goods={"hank": "100 g"},
    )  # fmt: skip
    # 2 for the machine, 1 on it, 0.5 for its hour; on 4, and 80 % come out.
    assert cost["card.added_per_mass"].number("/kg") == pytest.approx(3.5)
    assert cost["cost_per_mass"].number("/kg") == pytest.approx(7.5 / 0.8)
    assert cost["hank.price"].number("") == pytest.approx(1.25 * 0.1 * 7.5 / 0.8)
    assert "50 % on what each stage costs" in words(cost)
    assert "tax" in words(cost)


def test_a_margin_is_no_mark_up():
    mark_up = hw.mill.mark_up_of_margin(margin="30 %")
    assert mark_up.number("%") == pytest.approx(300 / 7)
    same = hw.mill.price_at_mark_up(cost="7", mark_up=mark_up).number("")
    assert same == pytest.approx(hw.mill.price_at_margin(cost="7", margin="30 %").number(""))
    with pytest.raises(hw.UnitError, match="mark-up on the cost was given for a margin"):
        hw.mill.price_at_margin(cost="7", margin=mark_up)
    with pytest.raises(hw.NotationError, match="the price of the goods: omit all but one"):
        hw.mill.cost_through(price_per_mass="4 /kg", stages=STAGES, margin="30 %", mark_up="30 %")


def test_a_costing_recalculates_in_its_workbook(tmp_path):
    openpyxl = pytest.importorskip("openpyxl")
    path = tmp_path / "cost.xlsx"
    cost = hw.mill.cost_through(price_per_mass="4 /kg", stages=STAGES, goods={"throw": "1.2 kg"})
    cost.to_workbook(path)
    book = openpyxl.load_workbook(path)
    cells = [c.value for sheet in book for row in sheet for c in row]
    assert any(isinstance(value, str) and value.startswith("=") for value in cells)


def test_tariffs_cross_at_the_equal_yield():
    lot = {"greasy_mass": "80 kg", "tariff_in": "11 /kg", "tariff_out": "20 /kg"}
    charge = hw.mill.compare_tariffs(yields=["45 %", "52 %", "60 %"], **lot)
    assert charge["equal_yield"].number("%") == pytest.approx(55)
    [tariff] = hw.mill.yield_of_equal_charge.solve(
        "tariff_out", yield_of_equal_charge="55 %", tariff_in="11 /kg"
    )
    assert tariff.number("/kg") == pytest.approx(20)
    assert charge["low.charge_out"].number("") == pytest.approx(720)
    assert "within the range" in words(charge)
    assert "no dearer" in words(hw.mill.compare_tariffs(yields=["45 %", "50 %"], **lot))
    assert "no cheaper" in words(hw.mill.compare_tariffs(yields=["58 %"], **lot))
    # Where the minimum rules, the two are equal up to a yield.
    lot["greasy_mass"] = "3 kg"
    small = hw.mill.compare_tariffs(yields=["50 %"], minimum_charge="90", **lot)
    assert small["charge_in"].number("") == small["likely.charge_out"].number("") == 90
    assert "both charge the minimum" in words(small)


def test_rejects_beyond_fifteen_percent_are_charged():
    charge = hw.mill.compare_tariffs(rejects="20 %", reject_charge="2 /kg", **LOT)
    assert charge["charge_for_rejects"].number("") == pytest.approx(8)
    free = hw.mill.compare_tariffs(rejects="12 %", reject_charge="2 /kg", **LOT)
    assert free["charge_for_rejects"].number("") == 0
    own = hw.mill.compare_tariffs(rejects="12 %", free_rejects="10 %", reject_charge="2 /kg", **LOT)
    assert own["charge_for_rejects"].number("") == pytest.approx(3.2)


def test_a_column_of_lots_is_charged_as_each_alone():
    masses = [3.0, 40.0, 80.0]
    lot = {**LOT, "minimum_charge": "90"}
    many = hw.mill.compare_tariffs(**{**lot, "greasy_mass": hw.q(np.array(masses), "kg")})
    for place, mass in enumerate(masses):
        one = hw.mill.compare_tariffs(**{**lot, "greasy_mass": f"{mass} kg"})
        for name in ("charge_in", "likely.charge_out", "equal_yield"):
            unit = one[name].unit
            assert many[name].number(unit)[place] == one[name].number(unit)


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"yields": ["60 %", "45 %"]}, "rising"),
        ({"yields": ["0 %"]}, "0 % is not possible for the finished mass"),
        ({"tariff_out": None}, "two tariffs"),
        ({"tariff_clean": "17 /kg"}, "tariff_clean was given without clean_yield"),
        ({"rejects": "20 %"}, "rejects was given without reject_charge"),
        ({"tarif_out": "20 /kg"}, "did you mean 'tariff_out'"),
        ({"greasy_mass": "80"}, "unit"),
    ],
)
def test_what_a_comparison_lacks_is_said(change, says):
    with pytest.raises(hw.HankwiseError, match=says):
        hw.mill.compare_tariffs(**{**LOT, **change})


@pytest.fixture(scope="module")
def planned():
    return hw.plan.load("examples/first-lot.toml").run(lots=0)


def test_the_cost_of_a_planned_lot_is_all_borne(planned):
    cost = planned.cost(
        price_per_mass="4.20 /kg",
        stages={
            "scour": {"stage_cost_per_mass": "0.9 /kg"},
            "card": {"hourly_cost": 18, "people": 1},
            "mule": {"hourly_cost": "12"},
            "loom": {"hourly_cost": 10, "people": 1, "extra_time": "6 h"},
        },
        hourly_wage=14, overhead="20 %", margin="30 %",
    )  # fmt: skip
    value = {name: cost[name].number(cost[name].unit) for name in cost}
    whole = value["cost"]
    rows = [*cost["stages"], *cost["own_stages"]]
    stages = [row["cost"].number("") for row in rows if "cost" in row]
    assert sum(stages) + value["greasy_cost"] == pytest.approx(whole)
    borne = sum(goods["cost"].number("") for goods in cost["goods"]) + value["left_over_cost"]
    assert borne == pytest.approx(whole)
    fibre = {row["name"]: row["fibre_mass"].number("kg") for row in cost.given["goods"]}
    # By the clean dry fibre that each takes; only the throw has been at the loom.
    assert value["throw.joint_share"] / fibre["throw"] == pytest.approx(
        value["hank.joint_share"] / fibre["hank"]
    )
    assert value["hank.own_cost"] == 0
    assert value["throw.own_cost"] > 0
    assert value["throw.price_per_piece"] == pytest.approx(value["throw.cost_per_piece"] / 0.7)
    running = next(s["value"] for s in planned.settings if s["name"] == "card.time")
    assert value["card.person_hours"] == pytest.approx(running)
    assert "shared by the clean dry fibre" in words(cost)
    assert "tax" in cost._repr_html_()
    for name in cost:
        assert cost.working(name).value == value[name]
    again = pickle.loads(pickle.dumps(cost))
    assert repr(again) == repr(cost)


def test_a_lots_cost_over_a_column_of_prices(planned):
    prices = hw.q(np.array([3.0, 4.2]), "/kg")
    many = planned.cost(price_per_mass=prices, stages={"card": {"hourly_cost": 18}})
    one = planned.cost(price_per_mass="4.2 /kg", stages={"card": {"hourly_cost": 18}})
    assert many.keys() == one.keys()
    for name in one:
        assert many[name].number(one[name].unit)[1] == one[name].number(one[name].unit)


@pytest.mark.parametrize(
    ("rates", "says"),
    [
        ({"stages": {"card": {"hourly_cost": 18}}}, "price_per_mass .* is missing"),
        ({"price_per_mass": "4"}, "unit"),
        ({"stages": {"crad": {"hourly_cost": 18}}}, "did you mean 'card'"),
        ({"stages": {"scour": {"hourly_cost": 18}}}, "no running time for scour"),
        ({"stages": 18}, "a list goes here"),
        ({"margin": "30 %", "mark_up": "30 %"}, "omit all but one"),
        ({"margin": "100 %"}, "not possible"),
        ({"hourly_wages": 14}, "did you mean 'hourly_wage'"),
        ({"greasy_mass": "8 kg"}, "greasy_mass was given twice"),
    ],
)
def test_what_a_lots_cost_lacks_is_said(planned, rates, says):
    price = {} if "missing" in says else {"price_per_mass": "4 /kg"}
    with pytest.raises(hw.HankwiseError, match=says):
        planned.cost(**{**price, **rates})
