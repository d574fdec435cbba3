"""The yarn: read, written, asked."""

import json
import pickle

import hankwise as hw
import pytest
from hypothesis import given
from hypothesis import strategies as st

STANDARD = "34 tex S 600 × 2 Z 400; R 69.3 tex"


def test_a_yarn_is_read_written_and_asked():
    yarn = hw.yarn.parse("R 69.3 tex Z 400/2 S 600; 34 tex")
    assert str(yarn) == yarn.format() == STANDARD
    assert yarn.format("fold-to-single") == "R 69.3 tex Z 400/2 S 600; 34 tex"
    assert (yarn.what, yarn.singles, yarn.is_measured) == ("folded yarn", 2, True)
    assert yarn.resultant == hw.q("69.3 tex")
    assert yarn.nominal == hw.q("68 tex")
    assert yarn.number("Nm") == pytest.approx(1000 / 69.3)
    assert yarn.contraction.number("%") == pytest.approx(100 * (1 - 68 / 69.3))
    assert (yarn.twist, yarn.direction) == (hw.q("400 turns/m"), "Z")
    assert [str(part) for part in yarn.ends] == ["34 tex S 600"] * 2
    assert yarn.twist_ratio() == pytest.approx(2 / 3)
    # 600 turns stay while 1 m becomes 68/69.3 m; 400 are taken out.
    direction, left = yarn.twist_left()
    assert (direction, left.number("turns/m")) == ("S", pytest.approx(600 * 69.3 / 68 - 400))
    assert yarn.twist_factor.number("turns/cm √tex") == pytest.approx(4 * 69.3**0.5)


def test_resultant_is_thought_of_in_the_system_of_the_yarn():
    assert repr(hw.yarn.parse("2/24 worsted").resultant).endswith("12 worsted>")
    assert hw.yarn.parse("2/16 YSW").folded("4 %").number("YSW") == pytest.approx(8 * 0.96)
    measured = hw.yarn.parse("16 YSW × 2").measured("7.7 YSW")
    assert measured.contraction.number("%") == pytest.approx(100 * (1 - 7.7 / 8))


def test_what_is_known_of_a_yarn_stays_with_it():
    yarn = hw.yarn.parse(STANDARD, material="wool", state="in oil", relaxed=False)
    assert repr(yarn) == f"<folded yarn: {STANDARD}; wool, in oil, not relaxed>"
    scoured = yarn.known(state="scoured", relaxed=True)
    assert (scoured.material, scoured.state, scoured.relaxed) == ("wool", "scoured", True)
    assert scoured != yarn
    assert all(part.material == "wool" for part in yarn.ends)


@pytest.mark.parametrize(
    "text",
    [STANDARD, "R 60 tex/2", "13/15 den", "Tkt 75 metric", "60/2 spun-silk", "20 tex × 2 × 3",
     "(25 tex S 420 + 60 tex Z 80) S 360", "133 dtex f40 t0", "70 den f34 t0; B 80 den"],
)  # fmt: skip
def test_a_yarn_is_the_same_after_a_pickle(text):
    yarn = hw.yarn.parse(text, material="wool", relaxed=True)
    again = pickle.loads(pickle.dumps(yarn))
    assert again == yarn
    assert hash(again) == hash(yarn)
    assert repr(again) == repr(yarn)


@pytest.mark.parametrize(
    ("what", "answer"),
    [
        ("nominal", 68),
        ("contraction", 1 - 68 / 69.3),
        ("twist_ratio", 2 / 3),
        ("twist_left", 600 * 69.3 / 68 - 400),
    ],
)
def test_each_value_has_its_working(what, answer):
    working = hw.yarn.parse(STANDARD).working(what)
    assert working.value == pytest.approx(answer)
    assert working.name == what
    assert "34 tex" in working.text() or "600" in working.text()


def test_wrong_things_are_refused():
    yarn = hw.yarn.parse("34 tex × 2")
    with pytest.raises(hw.NotationError, match=r"single-to-fold.*fold-to-single.*trade"):
        yarn.format("ply-to-single")  # type: ignore[arg-type]
    with pytest.raises(hw.NotationError, match=r"R 257 tex"):
        yarn.format("fold-to-single")
    with pytest.raises(hw.NotationError, match="direction"):
        hw.yarn.parse("34 tex × 2 Z 400").twist_left()
    with pytest.raises(hw.RangeError, match="100 %"):
        yarn.folded("100 %")
    with pytest.raises(hw.UnitError, match="write '2 %' for 2 percent"):
        yarn.folded(2)
    with pytest.raises(hw.UnitError, match="69 has no unit"):
        yarn.measured(69)
    with pytest.raises(hw.NotationError, match="count/ends"):
        hw.yarn.parse("2/3", system="Nm", order="count-first")  # type: ignore[arg-type]
    with pytest.raises(hw.UnitError, match="galashiels-cut"):
        hw.yarn.parse("2/22", system="cut")
    with pytest.raises(hw.NotationError, match="this says Ne, but the system given is Nm"):
        hw.yarn.parse("2/22 Ne", system="Nm")
    with pytest.raises(hw.NotationError, match="no working"):
        yarn.working("resultent")  # type: ignore[arg-type]
    with pytest.raises(TypeError, match="write a yarn as a text such as 'Nm 13/2', not 34"):
        hw.yarn.parse(34)  # type: ignore[arg-type]
    with pytest.raises(hw.RangeError, match="component -1"):
        hw.yarn.parse(STANDARD).twist_ratio(-1)
    with pytest.raises(hw.RangeError, match="end 2"):
        hw.yarn.parse(STANDARD).working("nominal", 2)
    with pytest.raises(hw.RangeError, match="not possible for a contraction"):
        _ = yarn.measured("30 tex").contraction


def test_what_has_one_meaning_is_taken():
    yarn = hw.yarn.parse(STANDARD)
    assert hw.yarn.parse(yarn) == yarn
    assert yarn.format("Fold to single") == yarn.format("fold-to-single")  # type: ignore[arg-type]
    assert hw.yarn.parse(yarn, material="wool").material == "wool"
    assert hw.yarn.parse("34 tex", material=" ").material is None
    told = hw.yarn.parse("2/3", system="Nm", order="Ends / Count")  # type: ignore[arg-type]
    assert str(told) == "3 Nm × 2"
    assert str(hw.yarn.parse("34 tex × 2").folded("3 %")) == "34 tex × 2; R 70.103093 tex"


@given(st.text("RBSZNmtexf0123456789 ./;()+×-", max_size=40))
def test_whatever_is_typed_is_read_or_refused(text):
    try:
        yarn = hw.yarn.parse(text)
    except hw.HankwiseError:
        return
    assert hw.yarn.parse(str(yarn)) == yarn


def test_shares_and_cost_go_by_the_ends_and_their_lengths():
    # Davis, Hosiery Manufacture, 1920, example 31: 90s silk at 12s 6d with 20s worsted at 5s.
    yarn = hw.yarn.parse("(90 Ne + 20 Ne)")
    assert yarn.mass_shares == pytest.approx([2 / 11, 9 / 11])
    assert yarn.cost(["12.5 /lb", "5 /lb"]).number("/lb") == pytest.approx(6.3636, abs=5e-5)
    assert yarn.cost_shares(["12.5 /lb", "5 /lb"]) == pytest.approx([5 / 14, 9 / 14])
    # Example 37: half as much again of 15s is taken up as of 10s: 5s, and equal masses.
    fed = hw.yarn.parse("(15 worsted + 10 worsted)").fed([1.5, 1.0])
    assert fed.number("worsted") == pytest.approx(5)
    assert fed.mass_shares == pytest.approx([0.5, 0.5])
    assert fed.length_shares == pytest.approx([0.6, 0.4])
    assert pickle.loads(pickle.dumps(fed)) == fed
    with pytest.raises(hw.NotationError, match="no one contraction"):
        _ = fed.contraction
    with pytest.raises(hw.NotationError, match="2 ends in its outermost fold and 1 prices"):
        yarn.cost(["5 /lb"])
    with pytest.raises(hw.NotationError, match="write a list such as"):
        yarn.fed(1.5)  # type: ignore[arg-type]
    with pytest.raises(hw.RangeError, match="end 2"):
        yarn.working("mass_share", 2)


def test_balance_is_a_ratio_beside_habits_and_no_verdict():
    said = hw.yarn.parse(STANDARD).balance()
    assert "0.6667 of the singles', the other way" in said
    assert "0.5 to 0.7 (from memory, unchecked)" in said
    assert "not by this number" in said
    assert "three-fold" not in said
    alike = hw.yarn.parse("125 tex Z 210 x 2 Z 120; R 257 tex")
    assert "the same way" in alike.balance()
    assert "0.5 to 0.7" not in alike.report()
    with pytest.raises(hw.NotationError, match="twist"):
        hw.yarn.parse("2/24 worsted").balance()


def test_contraction_on_both_bases():
    yarn = hw.yarn.parse("2/16 Ne").folded("10 %")
    assert yarn.number("Ne") == pytest.approx(7.2)
    assert yarn.contraction.number("%") == pytest.approx(10)
    assert yarn.contraction_on_twisted.number("%") == pytest.approx(100 / 9)


def test_a_yarn_stands_for_its_count():
    yarn = hw.yarn.parse("2/24 worsted")
    factor = hw.yarn.twist_for_factor("25 turns/cm √tex", yarn)
    assert factor == hw.yarn.twist_for_factor("25 turns/cm √tex", "12 worsted")
    with pytest.raises(hw.HankwiseError):
        hw.yarn.twist_for_factor(yarn, "12 worsted")


@pytest.mark.parametrize("text", [STANDARD, "13/15 den", "Tkt 75 metric", "R 60 tex/2"])
def test_every_yarn_has_a_page(text):
    yarn = hw.yarn.parse(text)
    assert str(yarn) in yarn.report()
    assert "<table>" in yarn._repr_html_()


def test_the_command_reads_a_yarn(capsys):
    from hankwise.cli import main

    assert main(["yarn", "2/24", "worsted"]) == 0
    assert "12  worsted" in capsys.readouterr().out
    assert main(["yarn", "2/3", "--system", "Nm", "--order", "ends/count", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert (told["singles"], told["designation"]) == (2, "3 Nm × 2")
    assert told["tex"] == pytest.approx(2000 / 3)
    assert main(["yarn", STANDARD, "--working", "contraction"]) == 0
    assert "0.01876" in capsys.readouterr().out
    assert main(["yarn", "8/8", "Ne"]) == 1
    assert "8 Ne × 2" in capsys.readouterr().err


def test_a_folded_yarn_is_a_count_wherever_a_count_is_wanted():
    cloth = {"warp_sett": "20 ends/in", "weft_sett": "18 picks/in", "warp_crimp": "8 %"}
    cloth |= {"weft_crimp": "6 %"}
    # Two of 24 worsted are one of 12, without contraction.
    whole = hw.cloth.mass_per_area(warp_count="2/24 worsted", weft_count="Nm 32/2", **cloth)
    alone = hw.cloth.mass_per_area(warp_count="12 worsted", weft_count="16 Nm", **cloth)
    assert whole.number("g/m²") == pytest.approx(alone.number("g/m²"), rel=1e-12)
    text = hw.cloth.mass_per_area.working(
        warp_count="2/24 worsted", weft_count="12 worsted", **cloth
    ).text()
    assert "12 worsted, contraction not counted" in text
    assert hw.yarn.twist_factor("9 tpi", "34 tex S 600 x 2 Z 400; R 69.3 tex").number(
        "turns/cm √tex"
    ) == pytest.approx(hw.yarn.twist_factor("9 tpi", "69.3 tex").number("turns/cm √tex"))
    setts = [hw.cloth.setts(weave="plain", warp_count=c) for c in ["R 74 tex/2", "74 tex"]]
    assert str(setts[0]) == str(setts[1])


@pytest.mark.parametrize("fold", ["2/24 worsted", hw.yarn.parse("2/24 worsted")])
def test_a_folded_yarn_is_no_single(fold):
    with pytest.raises(hw.NotationError, match="single_count for the single and ends for how many"):
        hw.yarn.fold_alike(single_count=fold, ends=2, contraction="2 %")
    # A single in the notation of a yarn is one.
    one = hw.yarn.fold_alike(single_count="34 tex S 600", ends=2, contraction="0 %")
    assert one.number("tex") == pytest.approx(68)


def test_an_unsettled_yarn_stays_refused():
    with pytest.raises(hw.NotationError, match=r"does not say its count system; .*'2/24 worsted'"):
        hw.yarn.twist_factor("9 tpi", "2/24")


def test_a_column_of_yarns_is_a_column_of_counts():
    column = ["2/24 worsted", "12 worsted", hw.yarn.parse("Nm 32/2"), None]
    counts = hw.yarn.yarn_diameter("1.5 cm³/g", column).number("mm")
    alone = hw.yarn.yarn_diameter("1.5 cm³/g", "12 worsted").number("mm")
    assert list(counts[:2]) == pytest.approx([alone, alone], rel=1e-12)
    assert list(counts)[3] != list(counts)[3]
    with pytest.raises(hw.NotationError, match="one of its singles"):
        hw.yarn.fold_alike(single_count=["20 tex", "2/24 worsted"], ends=2, contraction="2 %")
    with pytest.raises(hw.NotationError, match=r"2 of 3 rows .*8 Ne × 8.*2/24 worsted"):
        hw.yarn.yarn_diameter("1.5 cm³/g", ["8/8 Ne", "2/24", "20 tex"])


def test_the_command_takes_a_yarn_for_a_count(capsys):
    from hankwise.cli import main

    said = []
    for count in ["2/24 worsted", "12 worsted"]:
        assert main(["calc", "twist_factor", "twist=9 tpi", f"count={count}"]) == 0
        said.append(capsys.readouterr().out)
    assert said[0].splitlines()[0] == said[1].splitlines()[0]
    assert "contraction not counted" in said[0]
    assert main(["convert", "2/24", "worsted", "tex"]) == 0
    assert "contraction not counted, = 73.8" in capsys.readouterr().out
    assert main(["calc", "fold_alike", "single_count=2/24 worsted", "ends=2", "contraction=0 %"])
    assert "one of its singles" in capsys.readouterr().err
