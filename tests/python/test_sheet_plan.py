"""The live workbook of a plan against the plan itself: change values, recalculate, compare."""

import hankwise as hw
import openpyxl
import pytest
from conftest import ROOT, with_figure
from sheets import NAME, STALE, assert_live, column, near, put, recalculate, rows_of

# A value of the workbook as typed there, and as written in the lot file.
FIGURES = {
    "lot.greasy": (85.0, '"85 kg"'),
    "lot.clean": (50.5, '"50.5 %"'),
    "card.loss": (5.6, '"5.6 %"'),
    "finish.length_shrinkage": (10.6, '"10.6 %"'),
    "goods.throw.promised": (10.0, "10"),
}
PARTS = {
    "mule.twist_wheel": (68.0, "68"),
    "twister.twist_wheel": (32.0, "32"),
    "loom.reed": (3.0, '"30 dents/10 cm"'),
}
# So little that nothing can be woven: the other side of the bends.
LITTLE = {"lot.greasy": (3.0, '"3 kg"')}
# Two woven goods from one reed: its cell serves both.
WRAP = """
[goods.wrap]
kind = "woven"
yarn = "two-fold"
promised = 3
width = "0.60 m"
length = "1.70 m"

[goods.hank]"""
FIRST = (ROOT / "tests/lot/whole-lot.toml").read_text(encoding="utf-8")
SHORT = (ROOT / "examples/short-lot.toml").read_text(encoding="utf-8")
CHANGES = {
    "figures": (FIRST, FIGURES),
    "parts": (FIRST, PARTS),
    "little": (FIRST, LITTLE),
    "two woven": (FIRST.replace("\n[goods.hank]", WRAP), {"loom.reed": PARTS["loom.reed"]}),
    "short lot": (SHORT, {"lot.greasy": (44.0, '"44 kg"')}),
}
# Where goods are alike, the name of a part says for which it was chosen first.
ELSEWHERE = {("two woven", "loom.reed"): "loom.throw.reed"}


@pytest.fixture(scope="module")
def sheets(tmp_path_factory):
    """By change: the result for the changed lot file, the workbook's lines, the library's."""
    folder = tmp_path_factory.mktemp("plan")
    (folder / "library").mkdir()
    results = {}
    for name, (text, changes) in CHANGES.items():
        hw.plan.loads(text).run(lots=2000).to_workbook(folder / f"{name}.xlsx")
        typed = {ELSEWHERE.get((name, key), key): figure for key, (figure, _) in changes.items()}
        put(folder / f"{name}.xlsx", typed)
        for key, (_, written) in changes.items():
            text = with_figure(text, key, written)
        results[name] = hw.plan.loads(text).run(lots=2000)
        results[name].to_workbook(folder / "library" / f"{name}.xlsx")
    out = recalculate(folder)
    return {
        name: (
            result,
            *(column(rows_of(at / f"{name}.xlsx")) for at in (out, folder / "library")),
        )
        for name, result in results.items()
    }


def test_inputs_have_names_and_all_else_is_a_formula(tmp_path, first_lot):
    plan = hw.plan.loads(first_lot)
    plan.run(lots=0).to_workbook(tmp_path / "plan.xlsx")
    parts = {"mule.delivery_wheel", "mule.twist_wheel", "twister.twist_wheel", "loom.reed"}
    book = openpyxl.load_workbook(tmp_path / "plan.xlsx")
    assert_live(book, {given["name"] for given in plan.given} | parts)


@pytest.mark.parametrize("change", CHANGES)
def test_a_changed_workbook_says_what_the_changed_plan_says(sheets, change):
    result, sheet, _ = sheets[change]
    wrong = []
    for row in result.settings:
        if not near(sheet[row["name"]][-1], row["value"]):
            wrong.append((row["name"], sheet[row["name"]][-1], row["value"]))
    for row in result.goods:
        for key, value in (("made", row["planned"]), ("unrounded", row["unrounded"])):
            if not near(sheet[f"{row['name']}.{key}"][-1], value):
                wrong.append((row["name"], key, sheet[f"{row['name']}.{key}"][-1], value))
    margin = sheet["promise.spare"][-1] / sheet[f"{result.spare['counted_in']}.each"][-1]
    if not near(margin, result.spare["planned"]):
        wrong.append(("margin", margin, result.spare["planned"]))
    assert not wrong


@pytest.mark.parametrize("change", CHANGES)
def test_every_line_of_a_changed_workbook_is_that_of_the_changed_plan(sheets, change):
    _, sheet, library = sheets[change]
    assert sheet.keys() == library.keys()
    wrong = {
        name: (figures, library[name])
        for name, figures in sheet.items()
        if len(figures) != len(library[name]) or not all(map(near, figures, library[name]))
    }
    assert not wrong


def test_a_chosen_part_tells_when_it_was_chosen_for_something_else(tmp_path):
    """A wheel does not follow the twist: its cell stays, and the one beside it is no longer 0."""
    plan = hw.plan.loads(FIRST)
    typed = {"same": {"card.loss": 0.056}, "twisted": {"yarn.twist_factor": 30.0}}
    for name, figures in typed.items():
        plan.run(lots=0).to_workbook(tmp_path / f"{name}.xlsx")
        put(tmp_path / f"{name}.xlsx", figures)
    out = recalculate(tmp_path)
    old = {}
    for name in typed:
        rows = rows_of(out / f"{name}.xlsx")
        old[name] = {row[NAME - 1]: row[STALE - 1] for row in rows if row[STALE - 1] is not None}
    parts = {"mule.delivery_wheel", "mule.twist_wheel", "twister.twist_wheel", "loom.reed"}
    assert old["same"] == dict.fromkeys(parts, 0)
    # The folding twist is a share of the twist that the wheel gives: it stays while that does.
    assert {part for part in parts if old["twisted"][part] != 0} == {"mule.twist_wheel"}


def test_what_was_changed_matters(sheets):
    for name, (result, _, _) in sheets.items():
        before = hw.plan.loads(CHANGES[name][0]).run(lots=0)
        assert result.spare["planned"] != pytest.approx(before.spare["planned"], rel=1e-6)
    little = sheets["little"][0]
    assert little.goods[0]["planned"] == 0


def test_a_line_is_written_once(sheets):
    _, sheet, _ = sheets["figures"]
    # An input typed in a unit of its own has a second line, in the base unit; plain symbols recur.
    given = {row["name"] for row in hw.plan.loads(FIRST).given}
    named = {name: figures for name, figures in sheet.items() if "." in name}
    assert not [name for name, figures in named.items() if len(figures) > 1 + (name in given)]
