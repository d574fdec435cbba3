"""What several tests use."""

import os
import re
from pathlib import Path

import pytest
from hypothesis import settings

# The same cases at every run, so that a red run means a fault; `make fuzz` draws others. The clock
# passes no judgement: a machine may be busy.
ASKED = os.environ.get("FUZZ_CASES")
settings.register_profile("hankwise", deadline=None, derandomize=True)
settings.register_profile("fuzz", deadline=None, max_examples=int(ASKED or 100), print_blob=True)
settings.load_profile("fuzz" if ASKED else "hankwise")

ROOT = Path(__file__).resolve().parents[2]
EXAMPLES = sorted(path for path in (ROOT / "examples").glob("*.toml") if path.stem != "mill")


def cases(usual: int) -> int:
    """As many cases as are usual for a test, or as many as `make fuzz` asks for."""
    return int(ASKED or usual)


@pytest.fixture(scope="session")
def root() -> Path:
    return ROOT


@pytest.fixture(scope="session")
def first_lot(root: Path) -> str:
    return (root / "tests/lot/whole-lot.toml").read_text(encoding="utf-8")


def with_figure(text: str, name: str, figure: str) -> str:
    """A lot file with another figure: `card.loss`, "6 %". A range keeps its ends."""
    section, key = name.rsplit(".", 1)
    head, found, rest = text.partition(f"[{section}]\n")
    body, more, tail = rest.partition("\n[")
    lines = body.splitlines()
    places = [i for i, line in enumerate(lines) if line.split("=")[0].strip() == key]
    if found and places:
        line = lines[places[0]]
        old = re.search(r'likely = ("[^"]*")', line) or re.search(r'= *("[^"]*"|[\d.]+)', line)
        assert old, line
        lines[places[0]] = line.replace(old[1], figure, 1)
    else:
        assert found, f"there is no [{section}]"
        lines.append(f"{key} = {figure}")
    return head + found + "\n".join(lines) + "\n" + more + tail
