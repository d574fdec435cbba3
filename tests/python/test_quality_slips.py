"""What is typed wrong of samples and charts: refused with what to write, never answered wrongly."""

import hankwise as hw
import numpy as np
import pandas as pd
import pytest

Q = hw.quality
SKEINS = ["13.0 g", "13.2 g", "12.9 g"]


def skeins(masses, **more):
    return Q.skein_count(masses=masses, skein_length="100 m", **more)


@pytest.mark.parametrize(
    ("call", "error", "words"),
    [
        (lambda: Q.summary(["68 °F", "70 °F"]), hw.UnitError, "difference and no temperature"),
        (lambda: Q.chart(hw.q([20, 21, 22], "°C")), hw.UnitError, "numbers alone"),
        (lambda: Q.deviations(["20 °C"], "21 °C"), hw.UnitError, "numbers alone"),
        (lambda: Q.summary(["16 YSW", "17 YSW"]), hw.UnitError, r"\[16, 17\], 'YSW'\).to\('tex'\)"),
        (lambda: Q.summary(["150 tex", "152 tex", "x"]), hw.NotationError, "reading, 3: 'x'"),
        (lambda: Q.summary([1e200, 2.0]), hw.RangeError, "reading 1 is"),
        (lambda: Q.summary(np.ones((2, 2))), hw.NotationError, r"numpy.ravel\(table\)"),
        (lambda: Q.chart([[1, 2], [3, 4]]), hw.NotationError, r"numpy.ravel\(table\)"),
        (lambda: Q.deviations([], "100 g"), hw.NotationError, "no reading is given"),
        (lambda: Q.deviations([119, 91], "100 g"), hw.UnitError, "the readings have none"),
        (lambda: Q.deviations([119.0], -1), hw.RangeError, "−1 is given"),
        (lambda: Q.capability([1, 2, 3], "0 g", "9 g"), hw.UnitError, "the readings have none"),
        (lambda: Q.capability([1, 2, 3], 0, float("inf")), hw.RangeError, "both ends"),
        (lambda: Q.capability([1, 2, 3, 4], 0, 9, 3), hw.RangeError, "1 is over.*subgroup=2"),
        (lambda: Q.chart(range(8), 3), hw.RangeError, "2 are over; omit the last 2"),
        (lambda: Q.chart([1, 2, 3], kind="rnage"), hw.NotationError, "did you mean 'range'"),
        (lambda: Q.chart([1, 2, 1], centre=1, sigma=1, baseline=2), hw.RangeError, "both given"),
        (lambda: Q.chart([1, 2, 1, 2], 2, "range", sigma=1, baseline=2), hw.RangeError, "both"),
        (lambda: Q.chart_constants(1001), hw.RangeError, "too large; write a number"),
        (lambda: Q.readings_needed(cv="0 %", relative_error="2 %"), hw.RangeError, "not possible"),
        (lambda: skeins(SKEINS, option="oven-dyr"), hw.NotationError, "mean 'oven-dry'"),
    ],
)  # fmt: skip
def test_what_is_refused_and_what_to_write(call, error, words):
    with pytest.raises(error, match=words):
        call()


def test_what_is_proposed_works():
    as_tex = hw.q([16, 17], "YSW").to("tex")
    assert Q.summary(as_tex).n == 2
    assert Q.summary([68, 70]).sd.number("") == pytest.approx(2**0.5)
    assert Q.chart([1, 2, 3, 1, 2, 4, 1, 3], 2).subgroup == 2
    table = [[1, 2], [3, 5]]
    assert Q.chart(np.ravel(table), 2).points == pytest.approx([1.5, 4])


def test_a_kind_of_chart_in_capitals_is_read():
    assert Q.chart(np.arange(10.0) % 3, 5, "Range").kind == "range"


def test_a_series_of_texts_is_read_as_a_list_of_them():
    texts = ["150 tex", "152 tex", "149 tex"]
    of_list, of_series = Q.summary(texts), Q.summary(pd.Series(texts))
    assert repr(of_list) == repr(of_series)
    assert Q.summary(np.array(texts)).mean.number("tex") == pytest.approx(451 / 3)


def test_equal_readings_are_not_sure():
    said = " ".join(repr(Q.summary(["150 tex"] * 5, precision="2 %")).split())
    assert "do not differ" in said
    assert "95 %" not in said
    said = " ".join(repr(skeins(["13 g", "13 g"])).split())
    assert "130 tex. The readings do not differ" in said
    assert "between" not in said


def test_no_yarn_is_finer_than_none():
    uneven = ["13 g", "1.3 g", "13.1 g"]
    found = skeins(uneven)
    assert "finer_limit" not in found
    assert found["coarser_limit"].number("tex") > 91
    said = repr(found)
    assert "no coarser than" in said
    assert "−" not in said


def test_a_long_unsteady_series_is_told_in_short():
    out = np.tile([0.0, 1, 0, 1, 0, 1, 0, 40], 3000)
    chart = Q.chart(out)
    assert len(chart.findings) > 1000
    assert len(repr(chart).splitlines()) < 80
    assert "more of these" in repr(chart)
