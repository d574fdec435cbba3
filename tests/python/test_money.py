"""Costs, prices and tariffs, as users meet them."""

import hankwise as hw
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


def test_without_stage_costs_it_is_the_price_through_losses():
    cost = hw.mill.cost_through(price="4.0 /kg", stages=STAGES)
    # Published with the chain of losses: 8.221 for a kilogram out.
    assert cost["cost"].number("/kg") == pytest.approx(8.221, abs=5e-4)
    assert cost["bought"].number("") == pytest.approx(1)
    assert cost["sort.in"].number("kg") == pytest.approx(51.384 / 25, rel=1e-4)


def test_overhead_and_machine_hours_by_hand():
    stages = [{"name": "card", "loss": "20 %", "hourly": "24", "rate": "12 kg/h"}]
    cost = hw.mill.cost_through(
        price="4 /kg", stages=stages, overhead="50 %", hourly_overhead="6", mark_up="25 %",
        pieces={"hank": "100 g"},
    )  # fmt: skip
    # 2 for the machine, 1 on it, 0.5 for its hour; on 4, and 80 % come out.
    assert cost["card.added"].number("/kg") == pytest.approx(3.5)
    assert cost["cost"].number("/kg") == pytest.approx(7.5 / 0.8)
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
    with pytest.raises(hw.NotationError, match="give one of them"):
        hw.mill.cost_through(price="4 /kg", stages=STAGES, margin="30 %", mark_up="30 %")


def test_a_costing_recalculates_in_its_workbook(tmp_path):
    openpyxl = pytest.importorskip("openpyxl")
    path = tmp_path / "cost.xlsx"
    hw.mill.cost_through(price="4 /kg", stages=STAGES, pieces={"throw": "1.2 kg"}).to_sheet(path)
    book = openpyxl.load_workbook(path)
    cells = [c.value for sheet in book for row in sheet for c in row]
    assert any(isinstance(value, str) and value.startswith("=") for value in cells)


def test_tariffs_cross_at_the_equal_yield():
    lot = {"greasy": "80 kg", "per_greasy": "11 /kg", "per_finished": "20 /kg"}
    charge = hw.mill.compare_tariffs(yields=["45 %", "52 %", "60 %"], **lot)
    assert charge["equal_yield"].number("%") == pytest.approx(55)
    [tariff] = hw.mill.yield_of_equal_charge.solve(
        "tariff_out", yield_of_equal_charge="55 %", tariff_in="11 /kg"
    )
    assert tariff.number("/kg") == pytest.approx(20)
    assert charge["by_finished_low"].number("") == pytest.approx(720)
    assert "within the range" in words(charge)
    assert "no dearer" in words(hw.mill.compare_tariffs(yields=["45 %", "50 %"], **lot))
    assert "no cheaper" in words(hw.mill.compare_tariffs(yields="58 %", **lot))
    # Where the minimum rules, the two are equal up to a yield.
    small = hw.mill.compare_tariffs(yields="50 %", minimum="90", **{**lot, "greasy": "3 kg"})
    assert small["by_greasy"].number("") == small["by_finished_likely"].number("") == 90
    assert "both charge the minimum" in words(small)


def test_rejects_beyond_fifteen_percent_are_charged():
    lot = {"greasy": "80 kg", "per_greasy": "11 /kg", "per_finished": "20 /kg", "yields": "50 %"}
    charge = hw.mill.compare_tariffs(rejects="20 %", per_reject="2 /kg", **lot)
    assert charge["rejects_charge"].number("") == pytest.approx(8)
    free = hw.mill.compare_tariffs(rejects="12 %", per_reject="2 /kg", **lot)
    assert free["rejects_charge"].number("") == 0
    own = hw.mill.compare_tariffs(rejects="12 %", free_rejects="10 %", per_reject="2 /kg", **lot)
    assert own["rejects_charge"].number("") == pytest.approx(3.2)


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"yields": ["60 %", "45 %"]}, "rising"),
        ({"yields": "0 %"}, "nothing comes out"),
        ({"per_finished": None}, "two tariffs"),
        ({"per_clean": "17 /kg"}, "clean_yield .* is missing"),
        ({"rejects": "20 %"}, "per_reject .* is missing"),
        ({"per_finnished": "20 /kg"}, "did you mean 'per_finished'"),
        ({"greasy": "80"}, "unit"),
    ],
)
def test_what_a_comparison_lacks_is_said(change, says):
    lot = {"greasy": "80 kg", "per_greasy": "11 /kg", "per_finished": "20 /kg", "yields": "50 %"}
    with pytest.raises(hw.HankwiseError, match=says):
        hw.mill.compare_tariffs(**{**lot, **change})


@pytest.fixture(scope="module")
def planned():
    return hw.plan.load("examples/first-lot.toml").run(draws=0)


def test_the_cost_of_a_planned_lot_is_all_borne(planned):
    cost = planned.cost(
        wool="4.20 /kg", hourly={"card": 18, "mule": "12", "loom": 10}, per_kg={"scour": "0.9 /kg"},
        hours={"loom": "6 h"}, people={"card": 1, "loom": 1}, wage=14, overhead="20 %",
        margin="30 %",
    )  # fmt: skip
    whole = cost.whole.number("")
    assert sum(line["cost"] for line in cost.lines) == pytest.approx(whole)
    borne = sum(good["whole"] for good in cost.goods) + cost.left_over.number("")
    assert borne == pytest.approx(whole)
    throw, hank = cost.goods
    # By the clean dry fibre that each takes; only the throw has been at the loom.
    assert throw["joint"] / throw["fibre"] == pytest.approx(hank["joint"] / hank["fibre"])
    assert hank["own"] == 0
    assert throw["own"] > 0
    assert throw["price"] == pytest.approx(throw["each"] / 0.7)
    running = next(s["value"] for s in planned.settings if s["name"] == "card.time")
    assert cost.person_hours["card"] == pytest.approx(running)
    assert "shared by the clean dry fibre" in words(cost)
    assert "tax" in cost._repr_html_()


@pytest.mark.parametrize(
    ("rates", "says"),
    [
        ({"hourly": {"card": 18}}, "wool is missing"),
        ({"wool": "4"}, "unit"),
        ({"wool": "4 /kg", "hourly": {"crad": 18}}, "did you mean 'card'"),
        ({"wool": "4 /kg", "hourly": {"scour": 18}}, "no running time for scour"),
        ({"wool": "4 /kg", "hourly": 18}, "a dictionary is wanted"),
        ({"wool": "4 /kg", "margin": "30 %", "mark_up": "30 %"}, "give one of them"),
        ({"wool": "4 /kg", "margin": "100 %"}, "not possible"),
        ({"wool": "4 /kg", "wages": 14}, "did you mean 'wage'"),
    ],
)
def test_what_a_lots_cost_lacks_is_said(planned, rates, says):
    with pytest.raises(hw.HankwiseError, match=says):
        planned.cost(**rates)
