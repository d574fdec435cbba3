"""What the documentation shows is what happens: docstrings and the Python in the pages."""

import doctest
import importlib
import inspect
import pkgutil
import re

import hankwise as hw
import pytest
from conftest import ROOT

FLAGS = doctest.NORMALIZE_WHITESPACE | doctest.ELLIPSIS
PAGES = sorted([ROOT / "README.md", *ROOT.glob("docs/**/*.md"), ROOT / "DEVELOPERS.md"])
FENCE = re.compile(r"^```(?:python|pycon)\n(.*?)^```", re.MULTILINE | re.DOTALL)


def names() -> list[str]:
    found = [module.name for module in pkgutil.iter_modules(hw.__path__, "hankwise.")]
    # The rooms are made when the package is imported; they have no file.
    found += [f"hankwise.{room}" for room in ("fibre", "yarn", "cloth", "mill", "quality")]
    return ["hankwise", *sorted(set(found) - {"hankwise.__main__"})]


def told(text: str, name: str) -> tuple[int, str]:
    """How many examples there are, and what went otherwise than they say."""
    runner, said = doctest.DocTestRunner(verbose=False, optionflags=FLAGS), []
    test = doctest.DocTestParser().get_doctest(text, {}, name, name, 0)
    runner.run(test, out=said.append)
    return len(test.examples), "".join(said)


def docstrings(name: str) -> dict[str, str]:
    """The docstrings of a module: its own, those of what it defines and of their members."""
    module = importlib.import_module(name)
    texts = {name: inspect.getdoc(module) or ""}
    for key, value in vars(module).items():
        if not (inspect.isclass(value) or callable(value)) or isinstance(value, hw.Formula):
            continue
        if not str(getattr(value, "__module__", "")).startswith("hankwise"):
            continue
        texts[f"{name}.{key}"] = inspect.getdoc(value) or ""
        if inspect.isclass(value):
            for member, inner in vars(value).items():
                if isinstance(getattr(inner, "__doc__", None), str):
                    texts[f"{name}.{key}.{member}"] = inspect.getdoc(inner) or ""
    return texts


@pytest.mark.parametrize("name", names())
def test_examples_of_docstrings(name, monkeypatch):
    monkeypatch.chdir(ROOT)
    wrong = [said for key, text in docstrings(name).items() if (said := told(text, key)[1])]
    assert not wrong, "\n".join(wrong)


def test_there_are_examples_in_docstrings():
    texts = {key: text for name in names() for key, text in docstrings(name).items()}
    with_examples = {key for key, text in texts.items() if ">>>" in text}
    assert {"hankwise", "hankwise.plan"} <= with_examples
    assert {"hankwise._hankwise.q", "hankwise._hankwise.convert"} <= with_examples
    assert "hankwise.yarn.check_weight_card" in with_examples
    assert "hankwise.yarn.ball_band" in with_examples


@pytest.mark.parametrize("path", [p for p in PAGES if p.exists()], ids=lambda path: path.name)
def test_examples_of_pages(path, monkeypatch, tmp_path):
    # The examples of a page follow one another; what they write goes elsewhere.
    (tmp_path / "examples").symlink_to(ROOT / "examples")
    monkeypatch.chdir(tmp_path)
    blocks = FENCE.findall(path.read_text(encoding="utf-8"))
    count, said = told("\n".join(blocks), path.name)
    assert not said, said
    if path.name == "README.md":
        assert count > 3


def test_a_wrong_example_would_be_found():
    assert "Expected:\n    3" in told(">>> 1 + 1\n3\n", "wrong")[1]
    assert told(">>> 1 + 1\n2\n", "right") == (1, "")
