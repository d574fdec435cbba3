"""docs/cloth.md: what its tables and commands say is what happens."""

import re
import shlex

import hankwise as hw
import pytest
from hankwise.cli import main
from pages import Page, plain

PAGE = Page("cloth.md")
TABLES = PAGE.tables


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


@pytest.mark.parametrize(("ask", "answer", "line"), PAGE.asked, ids=[a for a, *_ in PAGE.asked])
def test_what_is_answered(ask, answer, line):
    assert str(eval(ask, PAGE.names_above(line))) == answer


@pytest.mark.parametrize(("theory", "assumes", "basis"), TABLES["theory", "assumes", "basis"])
def test_the_theories_are_these(theory, assumes, basis):
    told = [
        str(hw.cloth.setts(weave=weave, warp_count="100 tex")) for weave in ("plain", "2/2 twill")
    ]
    assert any(f"{theory}: {assumes} [" in " ".join(page.split()) for page in told)
    lines = [
        line for page in told for line in page.splitlines() if line.startswith(f"  {theory}  ")
    ]
    assert any(line.endswith(f"  {basis}") for line in lines), lines


@pytest.mark.parametrize(("picture", "what"), TABLES["picture", "what it draws"])
def test_a_picture_draws_what_is_said(picture, what):
    weave = hw.cloth.weave("2/2 herringbone")
    svg = eval(plain(picture), {"weave": weave}).svg
    told = {
        "point paper": 'class="design"',
        "drawing-in": 'class="drawing-in"',
        "lifting plan": 'class="lifting-plan"',
        "tie-up": 'class="tie-up"',
        "scale bar": 'class="scale"',
    }
    assert any(words in what for words in told)
    for words, drawn in told.items():
        assert (words in what) == (drawn in svg) or (words == "point paper" and drawn in svg)


def test_no_table_is_left_out():
    run = {("form", "example", "what it is"), ("refused", "because", "write instead")}
    run |= {("theory", "assumes", "basis"), ("picture", "what it draws")}
    assert all(head in run or "answer" in head for head in TABLES)
    assert len(PAGE.asked) > 50
    assert len(PAGE.commands()) >= 4


@pytest.mark.parametrize(("command", "expected"), PAGE.commands())
def test_the_commands_print_that(command, expected, capsys):
    main(shlex.split(command))
    told = capsys.readouterr()
    assert (told.out + told.err).rstrip() == expected.rstrip()
