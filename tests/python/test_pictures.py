"""Pictures of weaves: well-formed, scaling, told in words; squares and colours counted."""

import xml.etree.ElementTree as ET

import hankwise as hw
import pytest
from hankwise._plot import plan_figure
from hankwise.cli import main
from hypothesis import given
from hypothesis import strategies as st

SVG = "{http://www.w3.org/2000/svg}"


def tree(picture: hw.Picture) -> ET.Element:
    return ET.fromstring(picture.svg)


def of_class(root: ET.Element, name: str) -> list[ET.Element]:
    return [e for e in root.iter() if e.get("class") == name]


def squares(root: ET.Element, name: str) -> int:
    (path,) = of_class(root, name)
    return path.get("d").count("M")


@pytest.mark.parametrize("kind", ["point paper", "draft", "face"])
def test_a_picture_scales_and_says_what_it_is(kind):
    root = tree(hw.cloth.weave("2/2 twill").picture(kind))
    assert root.tag == f"{SVG}svg"
    assert root.get("role") == "img"
    assert root.get("viewBox") == f"0 0 {root.get('width')} {root.get('height')}"
    title, about = root.find(f"{SVG}title"), root.find(f"{SVG}desc")
    assert "2/2 twill" in title.text
    assert len(about.text) > 60
    # Nothing is fetched from elsewhere and nothing runs.
    assert not [e for e in root.iter() if e.tag in {f"{SVG}script", f"{SVG}image", f"{SVG}style"}]


@given(st.integers(1, 5), st.integers(1, 5))
def test_squares_of_a_satin(across, up):
    satin = hw.cloth.weave("8-end satin")
    root = tree(satin.picture(repeats=(across, up)))
    assert squares(root, "up") == satin.matrix.sum() * across * up


def test_a_draft_has_its_four_fields():
    root = tree(hw.cloth.weave("2/2 herringbone").picture("draft", repeats=(1, 1)))
    fields = {name: squares(root, name) for name in ("threading", "tie-up", "treadling", "up")}
    # Eight ends, each treadle raises two of four shafts, four picks, half of the squares.
    assert fields == {"threading": 8, "tie-up": 8, "treadling": 4, "up": 16}


def test_a_draft_of_ones_own_is_drawn_as_it_is():
    # Plain on four shafts: no draft that is found for the weave would use four.
    draft = hw.cloth.draft([1, 2, 3, 4], [[1, 3], [2, 4]], [1, 2])
    root = tree(draft.picture(repeats=(2, 3), title="On four"))
    assert root.find(f"{SVG}title").text == "On four"
    fields = {name: squares(root, name) for name in ("threading", "tie-up", "treadling", "up")}
    assert fields == {"threading": 8, "tie-up": 4, "treadling": 6, "up": 24}


def test_the_face_of_a_dogtooth():
    order = "4 black 4 white"
    twill = hw.cloth.weave("2/2 twill")
    setts = {"ends": "9 ends/cm", "picks": "9 picks/cm"}
    root = tree(
        twill.picture(
            "face",
            warp=order,
            weft=hw.cloth.colour_order(order),
            warp_count="16 YSW",
            weft_count="16 YSW",
            title="Dogtooth",
            **setts,
        )
    )
    for name in ("warp", "weft"):
        fills = [thread.get("fill") for thread in of_class(root, name)]
        assert fills[:8] == ["#000000"] * 4 + ["#ffffff"] * 4
        assert fills == fills[:8] * (len(fills) // 8)
    words = [text.text for text in root.iter(f"{SVG}text")]
    assert words[0] == "Dogtooth"
    assert any(word.endswith(" mm") for word in words)
    assert any("9 threads/cm" in word and "from memory" in word for word in words)


def test_what_is_refused():
    twill = hw.cloth.weave("2/2 twill")
    with pytest.raises(hw.NotationError, match="kind='face'"):
        twill.picture(warp="red")
    with pytest.raises(hw.NotationError, match="'point paper', 'draft' or 'face'"):
        twill.picture("photograph")
    with pytest.raises(hw.NotationError, match="did you mean 'black'"):
        twill.picture("face", warp="6 blak")
    with pytest.raises(hw.UnitError, match="9 has no"):
        twill.picture("face", ends=9)
    with pytest.raises(hw.RangeError, match="at most 256 ends"):
        twill.picture(repeats=(100, 1))
    with pytest.raises(TypeError, match="warp_diameter"):
        twill.picture("face", thickness="1 mm")


def test_a_file_is_whole(tmp_path):
    picture = hw.cloth.weave("plain").picture()
    path = tmp_path / "plain.svg"
    picture.save(path)
    assert path.read_text(encoding="utf-8") == picture.svg == picture._repr_svg_()
    assert picture == hw.cloth.weave("plain").picture()
    with pytest.raises(hw.HankwiseError, match="cannot be written"):
        picture.save(tmp_path / "none" / "plain.svg")
    assert [p.name for p in tmp_path.iterdir()] == ["plain.svg"]


def test_on_the_command_line(tmp_path, capsys):
    path = tmp_path / "twill.svg"
    assert main(["weave", "2/2", "twill", "--picture", str(path)]) == 0
    told = capsys.readouterr()
    assert str(path) in told.err
    assert path.read_text(encoding="utf-8") == hw.cloth.weave("2/2 twill").picture().svg
    assert main(["weave", "plain", "--picture", str(path), "--warp", "navy"]) == 0
    assert "#000080" in path.read_text(encoding="utf-8")
    assert main(["weave", "plain", "--kind", "draft"]) != 0
    assert "--picture FILE.svg" in capsys.readouterr().err


def test_the_picture_of_a_plan_writes_the_masses_of_its_screen():
    result = hw.plan.load("examples/first-lot.toml").run(2_000)
    written = [text.get_text() for text in plan_figure(result).axes[0].texts]
    assert written[1:] == [f"{stage['planned']:.1f}" for stage in result.stages]
