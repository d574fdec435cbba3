"""Plans made and changed in code."""

import pickle

import hankwise as hw
import pytest

MILL = "examples/mill.toml"


@pytest.fixture(scope="module")
def first():
    return hw.plan.load("examples/first-lot.toml")


def test_a_value_changed_in_code_is_the_value_changed_in_the_file(first, first_lot):
    text = first_lot.replace('loss = { low = "4 %", likely = "5 %", high = "7 %" }', 'loss = "9 %"')
    in_file = hw.plan.loads(text).run(lots=0)
    in_code = first.with_values({"card.loss": "9 %"}).run(lots=0)
    for one, other in zip(in_file.goods, in_code.goods, strict=True):
        assert one["planned"] == other["planned"]
    assert in_code.goods[1]["planned"] < first.run(lots=0).goods[1]["planned"]
    given = {row["name"]: row for row in first.with_values({"card.loss": "9 %"}).given}
    assert given["card.loss"]["came_from"] == "values"


def test_values_of_every_kind_are_taken(first):
    plan = first.with_values(
        {
            "lot.greasy": hw.q("40 kg"),
            "goods.throw.promised": 4,
            "mule.twist_wheels": [60, 64],
            "mule.spindles": 100,
            "card.cleared": False,
        }
    )
    assert plan.promise["throw"] == 4
    assert plan.run(lots=0).intake[0] == pytest.approx(40)


def test_a_wrong_value_says_what_to_write(first):
    with pytest.raises(hw.PlanError, match=r"values:\d+: card.loss: .*'kg'"):
        first.with_values({"card.loss": "9 kg"})
    with pytest.raises(hw.PlanError, match=r"card.los: unknown key; did you mean 'loss'"):
        first.with_values({"card.los": "9 %"})


def test_a_sweep_is_the_plans_one_by_one(first):
    losses = ["4 %", "5 %", "9 %"]
    table = first.sweep({"card.loss": losses})
    for row, loss in zip(table, losses, strict=True):
        alone = first.with_values({"card.loss": loss}).run(lots=0)
        assert row["hank planned"] == alone.goods[1]["planned"]
    with pytest.raises(hw.CallError, match="as many for each"):
        first.sweep({"card.loss": losses, "mule.loss": losses[:2]})


def test_a_plan_made_in_code_is_the_plan_of_the_file():
    made = hw.plan.make(
        {
            "lot": {"greasy": "9 kg", "clean": "58 %", "diameter": "27 µm"},
            "yarn": {"two-fold": {"ends": 2}},
            "goods": {"hank": "rest"},
        },
        MILL,
    )
    filed = hw.plan.load("examples/nine-kilos.toml").run(lots=0)
    assert made.run(lots=0).goods[0]["planned"] == filed.goods[0]["planned"] == 42
    again = pickle.loads(pickle.dumps(made))
    assert again == made
    assert again.run(50, 3).to_json() == made.run(50, 3).to_json()


def test_several_lots_in_one_call_are_the_lots_one_by_one(first):
    table = hw.plan.run_all([first, "examples/nine-kilos.toml"], lots=300)
    assert [row["lot"] for row in table] == ["First lot", "Nine kilos"]
    assert table[0]["chance"] == first.run(lots=300).chance
    assert table[1]["throw planned"] is None
