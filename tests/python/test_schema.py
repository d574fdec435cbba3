"""The JSON of a result against its schema."""

import copy
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


@pytest.mark.parametrize("draws", [0, 1, 500])
@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_results_of_the_examples(path, draws):
    assert faults(hw.plan.load(path).run(draws, 2**64 - 1)) == []


def test_results_of_odd_lots(first_lot):
    for name, figure in (("lot.greasy", '"3 kg"'), ("goods.throw.promised", "0")):
        assert faults(hw.plan.loads(with_figure(first_lot, name, figure)).run(50)) == []


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
    right["goods"][0]["band"]["low"] = None
    assert not CHECK.is_valid(right)


def test_the_command_says_which_schema():
    told = json.loads(hw.plan.load(EXAMPLES[0]).run(10).to_json())
    assert told["schema"] == SCHEMA["properties"]["schema"]["const"]
    assert told["hankwise"] == hw.__version__
    assert set(told["formulas"]) <= set(hw.formulas)
