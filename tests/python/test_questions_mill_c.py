"""A question of the trade on quality, with its right answer and the usual wrong one."""

import hankwise as hw
import pytest


def test_q07():
    """Blog 'Check your weight!' (2008): balls labelled 100 g weigh 119 and 91 g; does each pass?"""
    first, second, pair = hw.quality.deviations(["119 g", "91 g"], "100 g", "10 %")
    assert first["deviation"] == pytest.approx(0.19)
    assert second["deviation"] == pytest.approx(-0.09)
    assert [first["passes"], second["passes"]] == [False, True]
    # "10 percent ahead" is the sum of the two: the pair is 5 % over.
    assert pair["deviation"] == pytest.approx(0.05)
    assert pair["passes"]
