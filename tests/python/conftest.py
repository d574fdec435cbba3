"""What several tests use."""

from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
EXAMPLES = sorted((ROOT / "examples").glob("*.toml"))


@pytest.fixture(scope="session")
def root() -> Path:
    return ROOT


@pytest.fixture(scope="session")
def first_lot(root: Path) -> str:
    return (root / "examples/first-lot.toml").read_text(encoding="utf-8")
