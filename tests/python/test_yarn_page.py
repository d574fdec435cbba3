"""docs/yarn.md: what its tables and commands say is what happens."""

import re
import shlex
from collections.abc import Iterator
from itertools import pairwise

import hankwise as hw
import pytest
from conftest import ROOT
from hankwise.cli import main

PAGE = (ROOT / "docs/yarn.md").read_text(encoding="utf-8")
OF_THE_PAGE = "125 tex Z 210 × 2 S 120; R 257 tex"


def rows(*head: str) -> list[list[str]]:
    """The rows of the tables that have these columns, without the marks of code."""
    found, inside = [], False
    for line in PAGE.splitlines():
        cells = [cell.strip() for cell in line.strip("|").split("|")] if "|" in line else []
        if inside and cells and set(line) - set("|-"):
            found.append(cells)
        inside = cells == list(head) or (inside and bool(cells))
    assert found, head
    return found


def plain(cell: str) -> str:
    return cell.strip("`")


def fenced(kind: str) -> list[str]:
    return re.findall(rf"^```{kind}\n(.*?)^```", PAGE, re.MULTILINE | re.DOTALL)


def commands() -> Iterator[tuple[str, str]]:
    """Each command, and what it prints."""
    for block in fenced("console"):
        parts = re.split(r"^\$ hankwise (.*)\n", block, flags=re.MULTILINE)
        assert parts[0] == ""
        yield from list(pairwise(parts[1:]))[::2]


HEAD = ("from the single to the fold", "from the fold to the single", "what it is")


@pytest.mark.parametrize(("single", "fold", "what"), rows(*HEAD))
def test_both_notations_are_one_yarn(single, fold, what):
    single, fold = plain(single), plain(fold)
    yarn = hw.yarn.parse(single)
    assert hw.yarn.parse(fold) == yarn
    assert (yarn.format(), yarn.format("fold-to-single"), yarn.what) == (single, fold, what)


@pytest.mark.parametrize(("rule", "written", "read"), rows("what settles it", "written", "read as"))
def test_what_is_settled(rule, written, read):
    assert str(hw.yarn.parse(plain(written))) == plain(read), rule


@pytest.mark.parametrize(("text", "why", "instead"), rows("refused", "because", "write instead"))
def test_what_is_refused_and_what_to_write(text, why, instead):
    with pytest.raises(hw.NotationError) as refused:
        hw.yarn.parse(plain(text))
    proposed = re.findall("`(.*?)`", instead)
    assert proposed, why
    for words in proposed:
        assert words in str(refused.value)
        # What it says to write is read: a whole name, or the last word of this one.
        written = (words, plain(text).rpartition(" ")[0] + " " + words)
        assert any(map(is_read, written)), words


def is_read(text: str) -> bool:
    try:
        hw.yarn.parse(text)
    except hw.HankwiseError:
        return False
    return True


@pytest.mark.parametrize(("ask", "answer", "what"), rows("ask", "answer", "what it is"))
def test_what_is_answered(ask, answer, what):
    yarn = hw.yarn.parse(OF_THE_PAGE)
    assert str(eval(plain(ask), {"hw": hw, "yarn": yarn})) == plain(answer), what


@pytest.mark.parametrize(("table", "has"), rows("table", "has"))
def test_the_handbook_has_these_tables(table, has):
    assert hw.handbook[plain(table)].title == has


def test_the_commands_print_that(capsys, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    for text in fenced("toml"):
        (tmp_path / text.splitlines()[0].strip("# ")).write_text(text, encoding="utf-8")
    run = 0
    for command, expected in commands():
        main(shlex.split(command))
        told = capsys.readouterr()
        assert (told.out + told.err).rstrip() == expected.rstrip(), command
        run += 1
    assert run >= 5
