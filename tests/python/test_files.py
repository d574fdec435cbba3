"""What a command writes: whole or not at all, and never over what it should not."""

import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import hankwise as hw
import pytest
from hankwise.cli import main

LOT = str(Path(__file__).parents[2] / "examples" / "first-lot.toml")
FEW = ["--lots", "20"]
BEGINS = {"xlsx": b"PK\x03\x04", "html": b"<!doctype html>", "svg": b"<?xml", "png": b"\x89PNG"}


@pytest.fixture
def lot(tmp_path):
    path = tmp_path / "lot.toml"
    path.write_bytes(Path(LOT).read_bytes())
    return path


def test_never_over_what_is_read(lot, capsys):
    before = lot.read_bytes()
    for option in ("--workbook", "--picture"):
        for force in ([], ["--force"]):
            assert main(["plan", str(lot), *FEW, option, str(lot), *force]) == 1
            assert "is read; write to another file" in capsys.readouterr().err
            link = lot.with_name("link.html")
            link.symlink_to(lot)
            assert main(["plan", str(lot), *FEW, option, str(link), *force]) == 1
            link.unlink()
    assert lot.read_bytes() == before


def test_readings_and_own_counts_are_read_too(tmp_path, capsys):
    readings = tmp_path / "readings.svg"
    readings.write_text("count\n" + "\n".join(str(150 + k % 3) for k in range(20)))
    assert main(["chart", str(readings), "--picture", str(readings), "--force"]) == 1
    assert "is read; write to another file" in capsys.readouterr().err
    counts = tmp_path / "counts.xlsx"
    counts.write_text('[file-cut]\nlength = "310 yd"\nmass = "26 oz"\n')
    words = ["twist_factor", "twist=9 tpi", "count=16 YSW", "--counts", str(counts)]
    assert main(["calc", *words, "--workbook", str(counts), "--force"]) == 1
    assert counts.read_text().startswith("[file-cut]")


@pytest.mark.parametrize(
    ("option", "end"),
    [("--workbook", "xlsx"), ("--picture", "svg"), ("--picture", "png")],
)
def test_another_kind_only_by_force(tmp_path, capsys, option, end):
    path = tmp_path / f"mine.{end}"
    path.write_text("what I wrote down")
    words = ["plan", LOT, *FEW, option, str(path)]
    assert main(words) == 1
    assert "add --force" in capsys.readouterr().err
    assert path.read_text() == "what I wrote down"
    assert main([*words, "--force"]) == 0
    assert path.read_bytes().startswith(BEGINS[end])
    assert main(words) == 0
    wrong = tmp_path / "plan.txt"
    assert main(["plan", LOT, *FEW, option, str(wrong), "--force"]) == 1
    assert "must end in" in capsys.readouterr().err
    assert os.listdir(tmp_path) == [f"mine.{end}"]


def test_one_name_for_two_files(tmp_path, capsys):
    path = str(tmp_path / "a.svg")
    assert main(["plan", LOT, *FEW, "--picture", path, "--picture", path]) == 1
    assert "written twice" in capsys.readouterr().err
    assert os.listdir(tmp_path) == []


def test_force_in_python(tmp_path):
    weave = hw.cloth.weave("2/2 twill").picture()
    working = hw.yarn.twist_factor.working(twist="9 tpi", count="16 YSW")
    result = hw.plan.load(LOT).run(lots=0)
    chart = hw.quality.chart([150.0 + k % 3 for k in range(20)])
    for write, end in [
        (weave.save, "svg"),
        (working.to_workbook, "xlsx"),
        (result.to_workbook, "xlsx"),
        (chart.save, "png"),
    ]:
        path = tmp_path / f"a.{end}"
        path.write_text("mine")
        with pytest.raises(hw.PlanError, match="force=True"):
            write(path)
        write(path, force=True)
        write(path)
        path.unlink()


@pytest.mark.skipif(os.name == "nt", reason="modes are those of POSIX")
def test_the_mode_of_a_picture_stays(tmp_path):
    path = tmp_path / "a.png"
    path.touch(mode=0o600)
    assert main(["plan", LOT, *FEW, "--picture", str(path)]) == 0
    assert path.stat().st_mode & 0o777 == 0o600
    path.chmod(0o400)
    assert main(["plan", LOT, *FEW, "--picture", str(path)]) == 1


LONG = """
import sys
import hankwise as hw
result = hw.plan.load(sys.argv[1]).run(lots=0)
while True:
    result.to_papers(sys.argv[2], ["mill"])
    result.to_workbook(sys.argv[3])
    print("written", flush=True)
"""


@pytest.mark.skipif(os.name == "nt", reason="signals are those of POSIX")
def test_killed_while_writing(tmp_path):
    paths = [tmp_path / "first-lot-mill.html", tmp_path / "a.xlsx"]
    for turn in range(10):
        words = [sys.executable, "-c", LONG, LOT, str(tmp_path), str(paths[1])]
        with subprocess.Popen(words, stdout=subprocess.PIPE) as process:
            process.stdout.readline()
            time.sleep(0.02 + 0.013 * turn)
            process.send_signal(signal.SIGKILL)
        page, book = paths
        assert page.read_text(encoding="utf-8").endswith("</html>\n")
        # The last entry of a zip file closes it.
        assert book.read_bytes()[-22:].startswith(b"PK\x05\x06")
