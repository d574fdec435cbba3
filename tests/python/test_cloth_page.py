"""docs/cloth.md: what its tables say is what the library answers."""

import re

import hankwise as hw
import pytest
from conftest import ROOT

PAGE = (ROOT / "docs/cloth.md").read_text(encoding="utf-8")

pytestmark = pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")


def rows(*, first: str | None = None, has: str | None = None) -> list[dict[str, str]]:
    """The rows of the tables whose head begins with a word, or has a column."""
    found: list[dict[str, str]] = []
    head: list[str] = []
    for line in PAGE.splitlines():
        if not line.startswith("|"):
            head = []
            continue
        cells = [cell.strip() for cell in line.strip("|").split(" | ")]
        cells = [cell.strip("| ") for cell in cells]
        if not head:
            head = cells
        elif set(line) - set("|-") and (head[0] == first or has in head):
            found.append(dict(zip(head, cells, strict=True)))
    assert found, (first, has)
    return found


def code(cell: str) -> str:
    return cell.strip("`")


@pytest.mark.parametrize("row", rows(first="form"), ids=lambda row: code(row["example"]))
def test_forms_are_read(row: dict[str, str]) -> None:
    assert str(hw.cloth.weave(code(row["example"]))).splitlines()[0] == row["what it is"]


@pytest.mark.parametrize("row", rows(first="refused"), ids=lambda row: code(row["refused"]))
def test_what_is_refused_says_what_to_write(row: dict[str, str]) -> None:
    with pytest.raises(hw.HankwiseError) as refusal:
        hw.cloth.weave(code(row["refused"]))
    for instead in re.findall("`([^`]*)`", row["write instead"]):
        assert instead in str(refusal.value) or instead == "10 01", str(refusal.value)


def asked() -> list[tuple[str, str]]:
    pairs = []
    for row in rows(has="answer"):
        ask = next((row[k] for k in row if k.startswith("ask")), None)
        if ask and ask.startswith("`") and row["answer"].startswith("`"):
            pairs.append((code(ask), code(row["answer"])))
    return pairs


@pytest.mark.parametrize(("ask", "answer"), asked())
def test_answers(ask: str, answer: str) -> None:
    # The names that the blocks of code on the page have made before.
    known: dict[str, object] = {"hw": hw}
    for block in re.findall(r"^```python\n(.*?)^```", PAGE, re.MULTILINE | re.DOTALL):
        source = re.findall(r"^(?:>>>|\.\.\.) ?(.*)$", block, re.MULTILINE)
        exec(compile("\n".join(line for line in source), "docs/cloth.md", "exec"), known)
    said = eval(ask, known)
    assert answer in (str(said), repr(said)), (str(said), repr(said))
