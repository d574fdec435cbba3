"""docs/mill.md: what its tables say is what happens."""

import inspect
import re

import hankwise as hw
import pytest
from pages import Page, plain

PAGE = Page("mill.md")
REFUSED = PAGE.tables["refused", "because", "write instead"]
SLIPS = PAGE.tables["slip", "done so", "gives", "ask instead", "answer"]
# Calculations of the mill that are elsewhere on the page.
ELSEWHERE = {
    "blend", "card", "change_wheel", "dye_bath", "emulsion", "evenness_of_blend", "lot_on_card",
    "scour_liquor", "washes",
}  # fmt: skip
# Calculations of the mill that are on the page of money.
MONEY = {"balance", "compare_tariffs", "cost_through", "lot_cost", "week"}
MACHINES = PAGE.tables["above", "function", "asks", "answers, among others"]
CAUTIONS = PAGE.tables["caution", "where it is shown, for example"]


@pytest.mark.filterwarnings("ignore:.*is from memory; confirm it:hankwise.RangeWarning")
@pytest.mark.parametrize(("ask", "answer", "line"), PAGE.asked, ids=[a for a, *_ in PAGE.asked])
def test_what_is_answered(ask, answer, line):
    assert str(eval(ask, PAGE.names_above(line))) == answer


@pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")
@pytest.mark.parametrize(("wrong", "why", "right"), REFUSED)
def test_what_is_refused_and_what_to_write(wrong, why, right):
    assert why
    with pytest.raises(hw.HankwiseError) as refused:
        eval(plain(wrong), {"hw": hw})
    assert str(refused.value).startswith(plain(wrong).split("(")[0].split(".")[-1])
    eval(plain(right), {"hw": hw})


@pytest.mark.parametrize(("slip", "done", "gives", "ask", "answer"), SLIPS)
def test_a_slip_gives_another_value(slip, done, gives, ask, answer):
    assert slip
    wrong = eval(plain(done))
    assert f"{wrong:.4g}" == plain(gives)
    right = float(plain(answer).split()[0])
    assert wrong != pytest.approx(right, rel=2e-3)
    assert plain(ask).startswith("hw.")


@pytest.mark.parametrize(("above", "function", "asks", "answers"), MACHINES)
def test_what_a_machine_asks_and_answers(above, function, asks, answers):
    shown = inspect.signature(getattr(hw.mill, plain(function))).parameters
    needed = [p.name for p in shown.values() if p.default is p.empty]
    assert re.findall("`(.*?)`", asks) == needed
    run = PAGE.names_above(PAGE.text.count("\n"))[plain(above)]
    assert set(re.findall("`(.*?)`", answers)) <= set(run.keys())


def test_every_machine_has_a_row():
    told = {plain(row[1]) for row in MACHINES} | ELSEWHERE
    machines = {name for name, one in vars(hw.mill).items() if isinstance(one, hw.Calculation)}
    assert told | MONEY == machines
    assert all(f"hw.mill.{name}(" in PAGE.text for name in ELSEWHERE)
    money = Page("money.md").text
    assert all(f"hw.mill.{name}" in money for name in MONEY)


@pytest.mark.parametrize(("caution", "formula"), CAUTIONS)
def test_where_a_caution_is_shown(caution, formula):
    told = hw.formulas[plain(formula)].cautions
    assert any(line.startswith(f"{caution}:") for line in told)


def test_every_caution_of_a_formula_is_named():
    told = {line.split(":")[0] for f in hw.formulas.values() for line in f.cautions}
    assert told == {row[0] for row in CAUTIONS}


def test_how_a_result_is_read(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    wash = hw.fibre.test_wash(
        greasy_masses=["200 g", "198 g"], washed_masses=["124 g", "119 g"], regain="16 %"
    )
    for write, what in PAGE.tables["write", "what you get"]:
        assert what
        eval(plain(write), {"wash": wash})
    assert (tmp_path / "wash.xlsx").stat().st_size > 1000


def test_no_table_is_left_out():
    others = {
        ("refused", "because", "write instead"),
        ("above", "function", "asks", "answers, among others"),
        ("caution", "where it is shown, for example"),
        ("write", "what you get"),
    }
    assert all(head in others or "answer" in head for head in PAGE.tables)
    assert len(PAGE.asked) > 80
