"""Plans through Python: running, asking backward, interrupting, keeping, refusing."""

import json
import os
import pickle
import re
import signal
import subprocess
import sys
import time

import hankwise as hw
import numpy as np
import pytest
from conftest import EXAMPLES, cases, with_figure
from hypothesis import given, settings
from hypothesis import strategies as st


@pytest.fixture(scope="module")
def plan(root):
    return hw.plan.load(root / "examples/first-lot.toml")


@pytest.fixture(scope="module")
def result(plan):
    return plan.run(lots=20_000, seed=1)


# --- running ----------------------------------------------------------------------------------


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_same_bytes_for_any_number_of_threads(path):
    plan = hw.plan.load(path)
    one = plan.run(10_000, 7, threads=1)
    two = plan.run(10_000, 7, threads=2)
    five = plan.run(10_000, 7, threads=5)
    assert one.to_json() == two.to_json() == five.to_json()
    for name, draws in one.samples.items():
        assert draws.tobytes() == two.samples[name].tobytes() == five.samples[name].tobytes()
    assert plan.run(10_000, 8).to_json() != one.to_json()


def test_needed_is_the_same_for_any_number_of_threads(plan):
    one = plan.needed({"hank": 200}, lots=5_000, threads=1)
    assert one.to_json() == plan.needed({"hank": 200}, lots=5_000, threads=2).to_json()


def test_more_draws_begin_with_the_same_draws(plan):
    few, many = plan.run(3_000).samples, plan.run(5_000).samples
    for name, draws in few.items():
        assert draws.tobytes() == many[name][:3_000].tobytes()


def test_the_result_adds_up(plan, result):
    assert result.simulated == 20_000
    assert result.seed == 1
    assert result.name == plan.name == "First lot"
    assert plan.promise == {"throw": 12, "hank": 240}
    margin = result.samples["spare"]
    assert result.chance == np.mean(margin >= 0)
    assert result.goods[1]["chance"] == result.chance
    hanks = result.samples["hank"]
    assert result.goods[1]["chance"] == np.mean(hanks >= 240)
    low, likely, high = np.quantile(hanks, [0.05, 0.5, 0.95])
    assert abs(result.goods[1]["low"] - low) <= 1
    assert abs(result.goods[1]["middle"] - likely) <= 1
    assert abs(result.goods[1]["high"] - high) <= 1
    added = sum(row["fibre_mass"] for row in result.account)
    assert added == pytest.approx(result.intake[1], rel=1e-12)
    assert result.stages[-1]["name"] == "hank-scour"
    assert [row["name"] for row in result.stages[:2]] == ["sort", "scour"]
    assert all(row["low"] < row["middle"] < row["high"] for row in result.stages)
    shares = [row["share_of_doubt"] for row in result.measure_first]
    assert shares == sorted(shares, reverse=True)
    assert result.measure_first[0]["name"] == "lot.clean"


def test_every_value_has_a_working(result):
    assert "twister.twist" in result.workings
    for row in result.settings:
        assert result.working(row["name"]).value == row["value"], row["name"]
    assert "4320" in str(result.working("twister.twist"))
    with pytest.raises(hw.HankwiseError, match=r"did you mean 'twister\.twist'"):
        result.working("twister.twst")


def test_without_draws_only_the_likely_values(plan):
    result = plan.run(lots=0)
    assert result.chance is None
    assert result.goods[0]["low"] is None
    assert len(result.measure_first) == 0
    assert result.stages[0]["planned"] == plan.run(100).stages[0]["planned"]
    assert "planned" in result.text()


def test_it_shows_itself(plan, result):
    assert result.text() == repr(result)
    assert len(result.text(all=True)) > len(result.text())
    assert "<table" in result._repr_html_()
    assert "<table" in result.html()
    assert "<table" in result.stages._repr_html_()
    assert "sort" in repr(result.stages)
    assert "First lot" in repr(plan)
    assert result.answer in " ".join(result.text().split())


def test_backward_is_forward(plan, first_lot):
    needed = plan.needed({"throw": 12, "hank": 200}, lots=1_000)
    assert needed.planned.number("kg") == pytest.approx(69.90, abs=0.005)
    assert needed.greasy_mass.number("kg") > needed.planned.number("kg")
    assert needed.working.value == pytest.approx(needed.planned.number("kg"), rel=1e-12)
    kilos = needed.planned.number("kg")
    for share, enough in ((1 + 1e-9, True), (1 - 1e-9, False)):
        text = with_figure(first_lot, "lot.greasy", f'"{kilos * share!r} kg"')
        goods = hw.plan.loads(text).run(lots=0).goods
        assert (goods[1]["planned"] >= 200) is enough
    assert json.loads(needed.to_json())["planned"] == kilos
    assert "12 throws and 200 hanks" in repr(needed)


@settings(max_examples=cases(20))
@given(st.integers(1, 20), st.integers(1, 400), st.floats(0.5, 0.99))
def test_more_is_never_needed_for_less(throws, hanks, confidence):
    plan = hw.plan.load(EXAMPLES[0].with_name("first-lot.toml"))
    ask = {"lots": 500, "confidence": confidence}
    less = plan.needed({"throw": throws, "hank": hanks}, **ask).greasy_mass
    more = plan.needed({"throw": throws, "hank": hanks + 1}, **ask).greasy_mass
    assert less < more


# --- long runs --------------------------------------------------------------------------------


def test_progress_is_told_to_the_end(plan):
    told = []
    plan.run(50_000, progress=lambda done, total: told.append((done, total)))
    assert len(told) > 1
    assert [done for done, _ in told] == sorted(done for done, _ in told)
    assert {total for _, total in told} == {50_000}
    assert told[-1] == (50_000, 50_000)
    told.clear()
    plan.needed({"hank": 200}, lots=10_000, progress=lambda *done: told.append(done))
    assert told[-1] == (10_000, 10_000)


def test_an_error_in_progress_stops_the_run(plan):
    def stop(done, total):
        raise LookupError("enough")

    with pytest.raises(LookupError, match="enough"):
        plan.run(100_000, progress=stop)


INTERRUPTED = """
import sys, time
import hankwise as hw
plan = hw.plan.load("examples/first-lot.toml")
began = []
def tell(done, total):
    if not began:
        began.append(1)
        print("began", flush=True)
try:
    plan.run(10_000_000, progress=tell)
except KeyboardInterrupt:
    print("stopped", plan.run(10).simulated)
    sys.exit(7)
"""


def interrupt(command: list[str], cwd, wait_for: bytes | None) -> tuple[int, bytes, bytes, float]:
    """Run something long, send it what Ctrl-C sends, and say how long it took to end."""
    with subprocess.Popen(
        command, cwd=cwd, stdout=subprocess.PIPE, stderr=subprocess.PIPE, env=os.environ
    ) as process:
        try:
            if wait_for:
                assert process.stdout.readline().strip() == wait_for
            else:
                time.sleep(0.7)
                assert process.poll() is None, "it ended before it could be stopped"
            start = time.monotonic()
            process.send_signal(signal.SIGINT)
            out, err = process.communicate(timeout=20)
        finally:
            process.kill()
    return process.returncode, out, err, time.monotonic() - start


def test_ctrl_c_stops_a_long_run(root):
    code, out, err, seconds = interrupt([sys.executable, "-c", INTERRUPTED], root, b"began")
    assert (code, out.strip(), err) == (7, b"stopped 10", b"")
    assert seconds < 5


def test_ctrl_c_stops_the_command(root):
    command = [sys.executable, "-m", "hankwise", "plan", "examples/first-lot.toml"]
    code, out, err, seconds = interrupt([*command, "--lots", "10000000"], root, None)
    assert (code, out) == (130, b"")
    assert err.strip() == b"hankwise: stopped"
    assert seconds < 5


# --- keeping ----------------------------------------------------------------------------------


def test_plans_and_results_can_be_kept(plan, result):
    again = pickle.loads(pickle.dumps(plan))
    assert repr(again) == repr(plan)
    assert again.file == plan.file
    kept = pickle.loads(pickle.dumps(result))
    assert kept.to_json() == result.to_json()
    assert kept.samples["spare"].tobytes() == result.samples["spare"].tobytes()


def test_plans_and_results_do_not_change(plan, result):
    for thing, name in ((plan, "name"), (result, "simulated"), (result, "other")):
        with pytest.raises(AttributeError):
            setattr(thing, name, 1)
    result.stages[0]["name"] = "changed"
    assert result.stages[0]["name"] == "sort"
    result.samples["hank"][:] = 0
    assert result.samples["hank"].any()


# --- refusing ---------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("call", "error", "words"),
    [
        (lambda p: p.run(-1), hw.RangeError, "lots=-1.*0 or more"),
        (lambda p: p.run(10, -1), hw.RangeError, "seed=-1"),
        (lambda p: p.run(10, 2**64), hw.RangeError, "too large"),
        (lambda p: p.run(10**9), hw.RangeError, "lots=1000000000 is too large.*at most 10000000"),
        (lambda p: p.run(10**50), hw.RangeError, "lots=.* is too large"),
        (lambda p: p.run(-(10**50)), hw.RangeError, "0 or more"),
        (lambda p: p.run(10, threads=10**6), hw.RangeError, "threads=1000000 is too large"),
        (lambda p: p.run(10, threads=0), hw.RangeError, "threads=0.*1 or more"),
        (lambda p: p.run(1e5), TypeError, "integer"),
        (lambda p: p.needed({"hnk": 1}), hw.PlanError, "did you mean 'hank'|Did you mean 'hank'"),
        (lambda p: p.needed({"hank": -2}), hw.RangeError, "hank=-2"),
        (lambda p: p.needed({"hank": 0}), hw.PlanError, "at least one piece"),
        (lambda p: p.needed({"hank": 1}, 95), hw.RangeError, "0.95"),
    ],
)  # fmt: skip
def test_refusals_of_runs(plan, call, error, words):
    with pytest.raises(error, match=words):
        call(plan)


@pytest.mark.parametrize(
    ("change", "words"),
    [  # the line that is named is looked at below
        (lambda t: t.replace("[lot]", "[lot"), "not TOML"),
        (lambda t: t.replace('greasy = "80.00 kg"\n', ""), r"lot\.greasy.*missing.*kg"),
        (lambda t: with_figure(t, "lot.vegetble", '"1 %"'), r"lot\.vegetble.*vegetable"),
        (lambda t: t.replace("80.00 kg", "80.00 m"), r"lot\.greasy.*not of mass"),
        (lambda t: t.replace("80.00 kg", "-80 kg"), r"lot\.greasy"),
        (lambda t: t.replace('"80.00 kg"', "80"), r"lot\.greasy.*unit"),
        (lambda t: t.replace('regain = "14 %" ', "regain = 14 "), "14 %"),
        (lambda t: t.replace("330 m/100g", "330 Nek"), "worsted"),
        (lambda t: with_figure(t, "scour.loss", '"120 %"'), "scour.loss.*100 %"),
        (lambda t: t.replace('kind = "woven"', 'kind = "wovn"'), "woven"),
        (lambda t: t.replace('yarn = "two', 'yarn = "three', 1), "three-fold.*two-fold"),
        (lambda t: with_figure(t, "mule.twist_wheel", "63"), "63 is not owned.*60, 64, 68"),
        (lambda t: t.replace("[dust]", "[dsut]"), "dsut.*dust"),
    ],
)  # fmt: skip
def test_errors_of_a_lot_file_name_place_and_remedy(first_lot, change, words):
    text = change(first_lot)
    assert text != first_lot
    with pytest.raises(hw.PlanError, match=words) as caught:
        hw.plan.loads(text)
    message = str(caught.value)
    place = re.match(r"lot\.toml:(\d+)(?:: ([\w.-]+)):", message)
    assert "\n" not in message
    if not text or "missing" in message or "TOML" in message:
        assert message.startswith("lot.toml:")
    else:
        assert place, message
        assert place[2].rsplit(".", 1)[-1] in text.splitlines()[int(place[1]) - 1]


def test_files_that_cannot_be_read(tmp_path):
    (tmp_path / "bytes.toml").write_bytes(b"\xff\xfe")
    for path in (tmp_path / "none.toml", tmp_path, tmp_path / "bytes.toml"):
        with pytest.raises(hw.PlanError, match=r"cannot be read|no such file"):
            hw.plan.load(path)


def test_no_half_written_workbook(result, tmp_path):
    (tmp_path / "plan.xlsx").mkdir()
    for path in (tmp_path / "plan.xlsx", tmp_path / "none" / "plan.xlsx"):
        with pytest.raises(hw.HankwiseError, match="cannot be written"):
            result.to_workbook(path)
    assert [p.name for p in tmp_path.iterdir()] == ["plan.xlsx"]
    (tmp_path / "good.xlsx").write_bytes(b"PK\x03\x04old")
    result.to_workbook(tmp_path / "good.xlsx")
    assert (tmp_path / "good.xlsx").read_bytes()[:2] == b"PK"
