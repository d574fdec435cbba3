"""docs/money.md: what its examples say is what happens."""

import doctest

from conftest import ROOT


def test_the_examples_hold(monkeypatch):
    monkeypatch.chdir(ROOT)
    told = doctest.testfile(str(ROOT / "docs/money.md"), module_relative=False)
    assert told.attempted > 8
    assert told.failed == 0
