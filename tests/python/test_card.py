"""The mill's sheet and the cautions: each written once, shown apart, never a setting."""

import re
from html.parser import HTMLParser

import hankwise as hw
import pytest

STAGES = ["sort", "scour", "dust", "oil", "tease", "card", "mule", "twister", "hank-scour", "loom"]


@pytest.fixture(scope="module")
def result(root):
    return hw.plan.load(root / "examples/first-lot.toml").run(lots=200, seed=1)


class Page(HTMLParser):
    """The headings of a page, and the text of its boxes of cautions under each."""

    def __init__(self, text):
        super().__init__()
        self.tags, self.headings, self.boxed, self.plain = [], [], {}, []
        self.feed(text)

    def handle_starttag(self, tag, attrs):
        if tag not in ("meta", "br"):
            self.tags.append(tag)

    def handle_endtag(self, tag):
        assert self.tags.pop() == tag

    def handle_data(self, data):
        if self.tags[-1:] == ["h4"]:
            self.headings.append(data)
        elif "aside" in self.tags:
            self.boxed.setdefault(self.headings[-1], []).append(data)
        else:
            self.plain.append(data)


def test_every_stage_is_on_the_mills_sheet_with_its_cautions_in_a_box(result):
    page = Page(result.paper("mill"))
    assert page.tags == []
    cautioned = {row["name"]: row["cautions"] for row in result.stages}
    for stage in STAGES:
        heading = next(h for h in page.headings if h.split(":")[0] == stage)
        told = [line.split(":")[0].lower() for line in page.boxed[heading]]
        assert sorted(told) == sorted(cautioned.get(stage, ["loom"]))
    # What is set is outside of the boxes, what is dangerous nowhere else.
    plain = " ".join(page.plain)
    for row in result.settings:
        assert row["meaning"] in plain
    for lines in page.boxed.values():
        assert not any(line in plain for line in lines)


def test_cautions_are_in_the_text_short_or_long(result):
    short = re.sub(r"\n  !   ", " ", result.text())
    assert re.search(
        r"^  ! Cautions for 11 hazards on this route \(raw fleece, .*--all or the papers",
        short,
        re.M,
    )
    long = result.text(all=True)
    assert "  ! Raw fleece (sort, scour): " in long
    assert "Reminders only" in long


def test_papers_that_cannot_be_written_leave_none(result, tmp_path):
    with pytest.raises(hw.PlanError, match="cannot be written"):
        result.to_papers(tmp_path / "no folder")
    assert list(tmp_path.iterdir()) == []


def test_formulas_tell_their_cautions_apart_from_their_limits():
    card = hw.formulas["sorted_mass"]
    assert [line.split(":")[0] for line in card.cautions] == ["Raw fleece", "Dust"]
    assert f" ! {card.cautions[0]}" in " ".join(str(card).split())
    assert '<aside role="note"' in card._repr_html_()
    said = {line for f in hw.formulas.values() for line in f.cautions}
    for formula in hw.formulas.values():
        assert not said & set(formula.limits)
