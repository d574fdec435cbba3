"""The JSON of a result against its schema."""

import copy
import csv
import json

import hankwise as hw
import jsonschema
import pytest
from conftest import EXAMPLES, ROOT, with_figure

SCHEMA = json.loads((ROOT / "schema/plan-result-2.json").read_text(encoding="utf-8"))
CHECK = jsonschema.Draft202012Validator(SCHEMA)


def faults(result: hw.PlanResult) -> list[str]:
    return [error.message for error in CHECK.iter_errors(json.loads(result.to_json()))]


def objects(schema: object):
    """Every part of the schema that describes an object."""
    if isinstance(schema, dict):
        if schema.get("type") == "object":
            yield schema
        for part in schema.values():
            yield from objects(part)
    elif isinstance(schema, list):
        for part in schema:
            yield from objects(part)


def test_the_schema_is_one_and_leaves_nothing_open():
    jsonschema.Draft202012Validator.check_schema(SCHEMA)
    described = list(objects(SCHEMA))
    assert len(described) > 8
    for part in described:
        assert part["additionalProperties"] is False
        assert sorted(part["required"]) == sorted(part["properties"])
        assert all("description" in p or "$ref" in p for p in part["properties"].values())


@pytest.mark.parametrize("lots", [0, 1, 500])
@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_results_of_the_examples(path, lots):
    assert faults(hw.plan.load(path).run(lots, 2**64 - 1)) == []


def test_results_of_odd_lots(first_lot):
    for name, value in (("lot.greasy", '"3 kg"'), ("goods.throw.promised", "0")):
        assert faults(hw.plan.loads(with_figure(first_lot, name, value)).run(50)) == []


def test_what_is_missing_too_much_or_of_another_kind_is_found():
    right = json.loads(hw.plan.load(EXAMPLES[0]).run(10).to_json())
    assert CHECK.is_valid(right)
    for name in right:
        wrong = copy.deepcopy(right)
        del wrong[name]
        assert not CHECK.is_valid(wrong), name
    assert not CHECK.is_valid({**right, "more": 1})
    assert not CHECK.is_valid({**right, "schema": "hankwise/plan-result/1"})
    assert not CHECK.is_valid({**right, "simulated": "10"})
    right["goods"][0]["planned"] = None
    assert not CHECK.is_valid(right)


def test_the_command_says_which_schema():
    told = json.loads(hw.plan.load(EXAMPLES[0]).run(10).to_json())
    assert told["schema"] == SCHEMA["properties"]["schema"]["const"]
    assert told["hankwise"] == hw.__version__
    assert set(told["formulas"]) <= set(hw.formulas)


def keys(schema: object):
    """Every name of the schema with its description."""
    for part in objects(schema):
        for name, said in part["properties"].items():
            yield name, said.get("description", "")


def test_every_name_is_in_the_glossary_and_python_has_no_other():
    with (ROOT / "tests/glossary.csv").open(encoding="utf-8", newline="") as file:
        glossary = {row["name"]: row for row in csv.DictReader(file)}
    told = {name for name, _ in keys(SCHEMA)}
    of_plan = {name for name, row in glossary.items() if "plan" in row["of"].split()}
    assert told == of_plan
    result = hw.plan.load(EXAMPLES[0]).run(10)
    tables = (result.goods, result.stages, result.settings, result.measure_first, result.account)
    for row in (result.spare, *(table[0] for table in tables)):
        # Python has the mass of a stage in one row, and says what to beware of.
        assert set(row) - {"on_scale", "cautions"} <= told, row


def test_python_and_json_say_the_same(first_lot):
    """A promise that the planned values just keep: one truth, under one name for each."""
    text = with_figure(first_lot, "goods.hank.promised", "249")
    result = hw.plan.loads(text).run(2_000)
    told = json.loads(result.to_json())
    assert told["planned_enough"] is result.planned_enough is True
    assert told["chance"] == result.chance
    assert result.chance < 0.6
    assert told["simulated"] == result.simulated == 2_000
    assert told["spare"] == result.spare
    for mine, theirs in zip(result.goods, told["goods"], strict=True):
        assert mine == theirs
    for mine, theirs in zip(result.stages, told["stages"], strict=True):
        assert {name: mine[name] for name in theirs["stated_mass"]} == theirs["stated_mass"]
        assert mine["on_scale"] == theirs["stock"]["mass"]
    # The screen says the chance, in lots of a hundred.
    assert f"{100 * result.chance:.0f} lots in 100" in result.answer
