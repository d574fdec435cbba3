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
    (field,) = of_class(root, name)
    (path,) = of_class(field, "filled")
    return path.get("d").count("M")


def words(root: ET.Element) -> list[str]:
    return [text.text for text in root.iter(f"{SVG}text")]


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
    assert squares(root, "design") == satin.matrix.sum() * across * up


FIELDS = ("threading", "tie-up", "treadling", "design")


def test_a_treadle_draft_has_its_four_fields():
    weave = hw.cloth.weave("2/2 herringbone")
    root = tree(weave.picture("draft", treadles=True, repeats=(1, 1)))
    # Eight ends, each treadle raises two of four shafts, four picks, half of the squares.
    fields = {"threading": 8, "tie-up": 8, "treadling": 4, "design": 16}
    assert {name: squares(root, name) for name in FIELDS} == fields


def test_the_draft_of_a_mill_is_design_drawing_in_and_lifting_plan():
    draft = hw.cloth.draft("1 2 3 4 2 1 4 3", lifts=["1 2", "2 3", "3 4", "4 1"])
    root = tree(draft.picture(repeats=(1, 1)))
    (numbers,) = of_class(root, "drawing-in")
    assert [int(text) for text in words(numbers)] == draft.threading
    assert squares(root, "lifting-plan") == sum(map(len, draft.lifts)) == 8
    assert squares(root, "design") == draft.weave.matrix.sum()
    assert not of_class(root, "tie-up")


def test_a_draft_of_ones_own_is_drawn_as_it_is():
    # Plain on four shafts: no draft that is found for the weave would use four.
    draft = hw.cloth.draft([1, 2, 3, 4], [[1, 3], [2, 4]], [1, 2])
    root = tree(draft.picture(treadles=True, repeats=(2, 3), title="On four"))
    assert root.find(f"{SVG}title").text == "On four"
    fields = {"threading": 8, "tie-up": 4, "treadling": 6, "design": 24}
    assert {name: squares(root, name) for name in FIELDS} == fields
    assert squares(tree(draft.picture(repeats=(2, 3))), "lifting-plan") == 12


def test_the_face_of_a_dogtooth():
    order = "4 black 4 white"
    twill = hw.cloth.weave("2/2 twill")
    setts = {"warp_sett": "9 ends/cm", "weft_sett": "9 picks/cm"}
    root = tree(
        twill.picture(
            "face",
            warp=order,
            weft=hw.cloth.colour_order(order),
            warp_count="1350 m/kg",
            weft_count="1350 m/kg",
            title="Dogtooth",
            inches=True,
            **setts,
        )
    )
    for name in ("warp", "weft"):
        (threads,) = of_class(root, name)
        fills = [thread.get("fill") for thread in threads.iter(f"{SVG}rect")]
        assert fills[:8] == ["#000000"] * 4 + ["#ffffff"] * 4
        assert fills == fills[:8] * (len(fills) // 8)
    assert words(root)[0] == "Dogtooth"
    assert len(of_class(root, "scale")) == 2
    assert any(word.endswith(" mm") for word in words(root))
    assert any(word.endswith(" in") for word in words(root))
    told = " ".join(words(root))
    assert "9 threads/cm" in told
    assert "from memory" in told


def test_what_is_refused():
    twill = hw.cloth.weave("2/2 twill")
    with pytest.raises(hw.NotationError, match="kind='face'"):
        twill.picture(warp="red")
    with pytest.raises(hw.NotationError, match="'point paper', 'draft' or 'face'"):
        twill.picture("photograph")
    with pytest.raises(hw.NotationError, match="did you mean 'black'"):
        twill.picture("face", warp="6 blak")
    with pytest.raises(hw.UnitError, match="9 has no"):
        twill.picture("face", warp_sett=9)
    with pytest.raises(hw.RangeError, match="at most 256 ends"):
        twill.picture(repeats=(100, 1))
    with pytest.raises(TypeError, match="warp_diameter"):
        twill.picture("face", thickness="1 mm")
    with pytest.raises(hw.NotationError, match="kind='draft'"):
        twill.picture(treadles=True)
    with pytest.raises(TypeError, match="inches: write True or False"):
        twill.picture("face", inches="yes")


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
    setts = ["--warp-sett", "9 ends/cm", "--weft-diameter", "0.7 mm", "--inches"]
    assert main(["weave", "plain", "--picture", str(path), *setts]) == 0
    told = " ".join(words(ET.fromstring(path.read_text(encoding="utf-8"))))
    assert "9 threads/cm" in told
    assert "0.7 mm thick" in told
    draft = ["weave", "plain", "--picture", str(path), "--kind", "draft"]
    for more, field in (([], "lifting-plan"), (["--treadles"], "tie-up")):
        assert main([*draft, *more]) == 0
        assert of_class(ET.fromstring(path.read_text(encoding="utf-8")), field)
    capsys.readouterr()


@pytest.mark.parametrize(
    ("given", "why"),
    [
        (["--kind", "draft"], "write --picture FILE.svg with it"),
        (["--inches"], "--inches: this says how to draw a picture"),
        (["--picture", "a.svg", "--kind", "draft", "--warp-sett", "9 ends/cm"], "--kind face"),
        (["--treadles"], "write --draft or --kind draft too"),
        (["--picture", "a.svg", "--treadles"], "write --draft or --kind draft too"),
    ],
)
def test_on_the_command_line_what_does_not_go_together(given, why, capsys):
    assert main(["weave", "plain", *given]) != 0
    assert why in capsys.readouterr().err


def test_the_picture_of_a_plan_writes_the_masses_of_its_screen():
    result = hw.plan.load("examples/first-lot.toml").run(2_000)
    written = [text.get_text() for text in plan_figure(result).axes[0].texts]
    assert written[1:] == [f"{stage['planned']:.1f}" for stage in result.stages]
