"""Quotations, as users meet them."""

import json
import pickle

import hankwise as hw
import pytest
from hankwise.cli import main

LOT = "examples/nine-kilos.toml"


@pytest.fixture(scope="module")
def nine():
    return hw.plan.load(LOT).run(lots=500)


def words(shown):
    """Give what is shown on one line, for sentences are broken where they are long."""
    return " ".join(str(shown).split())


def test_the_price_the_cost_and_the_lots_that_pay(nine):
    quote = nine.quote()
    assert (quote.price, quote.minimum_applies, quote.money) == (260, True, "GBP")
    assert quote.cost == 250 + 9 * 4.50
    assert quote.margin == pytest.approx((260 - 290.5) / 260)
    assert quote.pays_from["greasy_mass"] == pytest.approx(22.6, abs=0.05)
    assert quote.sum == pytest.approx(sum(line["amount"] for line in quote.lines))
    for line in quote.lines:
        assert line["amount"] == pytest.approx(line["quantity"] * line["rate"])
    assert [row["stage"] for row in quote.not_priced] == ["dust", "oil", "tease"]
    assert quote.price_over_lots == {"planned": 260, "low": 260, "middle": 260, "high": 260}
    assert quote.planned_only is None


def test_what_the_goods_bear_by_clean_dry_fibre():
    quote = hw.plan.load("examples/two-looms.toml").run(lots=0).quote()
    assert quote.planned_only == "no lots were simulated"
    borne = sum(good["price"] for good in quote.goods) + quote.left_over
    assert borne == pytest.approx(quote.price)
    throw = next(good for good in quote.goods if good["name"] == "throw")
    # 24 on the loom and 6 at finishing, for each of 8.
    assert throw["own"] == 8 * 30
    assert throw["price_per_piece"] == pytest.approx(throw["price"] / 8)


def test_both_ways_between_margin_and_price(nine):
    quote = nine.quote(margin="30 %", price=415)
    assert quote.price_for_margin == pytest.approx(290.5 / 0.7)
    assert quote.margin_of_price == pytest.approx(0.3)
    assert "For a margin of 30 % charge 415.00." in words(quote.__repr__())
    with pytest.raises(hw.RangeError, match="margin"):
        nine.quote(margin="130 %")
    with pytest.raises(hw.RangeError, match="more than 0"):
        nine.quote(price=-5)
    with pytest.raises(hw.HankwiseError, match="price"):
        nine.quote(price="5 kg")


def test_it_shows_itself_and_goes_anywhere(nine):
    quote = nine.quote(margin=0.3)
    told = words(repr(quote))
    for said in (
        "260.00 GBP, the minimum charge; the stages come to",
        "The lot costs the mill 290.50: 30.50 more than the price.",
        "Lots like this one pay from 22.59 kg",
        "taxes on sales are not included",
        "no [tariff.dust]",
    ):
        assert said in told
    assert all(len(line) <= 80 for line in repr(quote).splitlines())
    assert "<table>" in quote._repr_html_()
    frame = quote.to_frame()
    assert list(frame["stage"]) == [line["stage"] for line in quote.lines]
    assert frame["amount"].sum() == pytest.approx(quote.sum)
    data = json.loads(quote.to_json())
    assert (data["price"]["planned"], data["asked"]["margin"]) == (260, 0.3)
    assert data["pays_from"] == quote.pays_from
    again = pickle.loads(pickle.dumps(quote))
    assert again.to_json() == quote.to_json()


def test_a_pickle_keeps_values_that_were_changed(nine):
    plan = hw.plan.load(LOT).with_values({"tariff.minimum_charge": 100})
    quote = plan.run(lots=50).quote()
    assert not quote.minimum_applies
    assert quote.price == pytest.approx(nine.quote().sum)
    assert pickle.loads(pickle.dumps(quote)).price == quote.price


def test_no_prices_no_quotation():
    with pytest.raises(hw.PlanError, match=r"write a table \[tariff\]"):
        hw.plan.load("tests/lot/whole-lot.toml").run(lots=0).quote()


@pytest.fixture
def run(capsys):
    def command(*options: str) -> tuple[int, str, str]:
        try:
            code = main(["plan", LOT, "--lots", "100", *options])
        except SystemExit as stop:
            code = stop.code
        out = capsys.readouterr()
        return code, out.out, out.err

    return command


def test_the_command_line(run, nine):
    code, out, err = run("--quote", "--margin", "30 %", "--price", "415")
    assert (code, err) == (0, "")
    assert "For a margin of 30 % charge 415.00." in words(out)
    assert "A price of 415.00 leaves a margin of 30 %." in words(out)
    code, out, err = run("--quote", "--json")
    assert (code, err) == (0, "")
    assert json.loads(out)["sum"] == nine.quote().sum


@pytest.mark.parametrize(
    ("options", "says"),
    [
        (("--margin", "30 %"), "--margin asks about the price of the lot; write --quote too"),
        (("--quote", "--working", "card.time"), "--quote prints the quotation alone"),
        (("--quote", "--needed"), "--quote prints the quotation alone"),
        (("--quote", "--all"), "write it without --quote"),
        (("--quote", "--margin", "120 %"), "margin"),
        (("--quote", "--price", "dear"), "--price"),
    ],
)
def test_what_does_not_go_together_is_said(run, options, says):
    code, out, err = run(*options)
    assert code != 0
    assert out == ""
    assert says in words(err)
