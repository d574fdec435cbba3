"""docs/cloth.md: what its tables and commands say is what happens."""

import doctest
import re
import shlex
from itertools import pairwise

import hankwise as hw
import pytest
from conftest import ROOT
from hankwise.cli import main

PAGE = (ROOT / "docs/cloth.md").read_text(encoding="utf-8")


def tables() -> dict[tuple[str, ...], list[list[str]]]:
    """The rows of the tables, by their columns, without the marks of code."""
    found: dict[tuple[str, ...], list[list[str]]] = {}
    head: tuple[str, ...] | None = None
    for line in re.sub(r"^```.*?^```", "", PAGE, flags=re.MULTILINE | re.DOTALL).splitlines():
        if not line.startswith("|"):
            head = None
        elif head is None:
            head = tuple(cells(line))
        elif set(line) - set("|-"):
            found.setdefault(head, []).append(cells(line))
    return found


def cells(line: str) -> list[str]:
    return [cell.strip() for cell in line.strip("|").split(" | ")]


def plain(cell: str) -> str:
    assert cell[0] == cell[-1] == "`", cell
    return cell[1:-1]


def fenced(kind: str) -> list[str]:
    return re.findall(rf"^```{kind}\n(.*?)^```", PAGE, re.MULTILINE | re.DOTALL)


TABLES = tables()
# Every table that has answers; where they stand depends on its columns.
ASKED = [
    (row[head.index(next(name for name in head if name.startswith("ask")))], row, head)
    for head, rows in TABLES.items()
    if "answer" in head
    for row in rows
]


@pytest.fixture(scope="module")
def page() -> dict[str, object]:
    """What the Python of the page has made."""
    names: dict[str, object] = {"hw": hw}
    for block in fenced("python"):
        for example in doctest.DocTestParser().get_examples(block):
            exec(compile(example.source, "cloth.md", "single"), names)
    return names


@pytest.mark.parametrize(("form", "example", "what"), TABLES["form", "example", "what it is"])
def test_how_a_weave_is_written(form, example, what):
    assert str(hw.cloth.weave(plain(example))) == what, form


@pytest.mark.parametrize(("text", "why", "instead"), TABLES["refused", "because", "write instead"])
def test_what_is_refused_and_what_to_write(text, why, instead):
    with pytest.raises(hw.HankwiseError) as refused:
        hw.cloth.weave(plain(text))
    proposed = re.findall("`(.*?)`", instead)
    assert proposed, why
    for words in proposed:
        if plain(text)[0] not in "01":
            assert words in str(refused.value)
        # What it says to write is read: alone, or in the place of a part of what was written.
        told = plain(text).split()
        written = [[*told[:i], words, *told[k:]] for i in range(len(told)) for k in range(i, 9)]
        assert any(is_read(" ".join(name)) for name in written), words


def is_read(text: str) -> bool:
    try:
        hw.cloth.weave(text)
    except hw.HankwiseError:
        return False
    return True


@pytest.mark.parametrize(("ask", "row", "head"), ASKED, ids=[ask for ask, _, _ in ASKED])
def test_what_is_answered(ask, row, head, page):
    assert str(eval(plain(ask), dict(page))) == plain(row[head.index("answer")])


@pytest.mark.parametrize(("theory", "assumes", "grade"), TABLES["theory", "assumes", "grade"])
def test_the_theories_are_these(theory, assumes, grade):
    told = [
        (row["theory"], row["assumes"], row["grade"])
        for weave in ("plain", "2/2 twill")
        for row in hw.cloth.settings(weave, "100 tex").rows
    ]
    assert (theory, assumes, grade) in told
    assert {name for name, _, _ in told} == {row[0] for row in TABLES["theory", "assumes", "grade"]}


def test_no_table_is_left_out():
    run = {("form", "example", "what it is"), ("refused", "because", "write instead")}
    run.add(("theory", "assumes", "grade"))
    assert all(head in run or "answer" in head for head in TABLES)
    assert len(ASKED) > 50


def test_the_commands_print_that(capsys):
    run = 0
    for block in fenced("console"):
        parts = re.split(r"^\$ hankwise (.*)\n", block, flags=re.MULTILINE)
        assert parts[0] == ""
        for command, expected in list(pairwise(parts[1:]))[::2]:
            main(shlex.split(command))
            told = capsys.readouterr()
            assert (told.out + told.err).rstrip() == expected.rstrip(), command
            run += 1
    assert run >= 4
