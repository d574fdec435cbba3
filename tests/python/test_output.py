"""What a command prints, on a terminal of any encoding and with any names; and how it stops."""

import json
import os
import signal
import subprocess
import sys
import xml.etree.ElementTree as ET
from pathlib import Path

import hankwise as hw
import pytest
from hankwise._cli_output import in_ascii
from hankwise.cli import main

ROOT = Path(__file__).parents[2]
LOT = str(ROOT / "examples" / "first-lot.toml")
FEW = ["--lots", "20"]


def outside(*words, **env):
    command = [sys.executable, "-m", "hankwise", *words]
    return subprocess.run(
        command, cwd=ROOT, env=os.environ | env, capture_output=True, timeout=60, check=False
    )


# --- encodings --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("22½ YSW", "22 1/2 YSW"),
        ("9 tpi/√YSW", "9 tpi/sqrt(YSW)"),
        ("38.99 turns/cm √tex", "38.99 turns/cm sqrt(tex)"),
        ("−22.1 m²", "-22.1 m^2"),
        ("T₀ = T_s × 2", "T0 = T_s x 2"),
        ("θ, Δ, °C", "theta, Delta,  deg C"),
        ("√(T₁ × √T₂)", "sqrt(T1 x sqrt(T2))"),
        ("Zoë’s “café”", 'Zoe\'s "cafe"'),
        ("羊", "?"),
    ],
)
def test_in_ascii(text, said):
    assert in_ascii(text) == said
    assert text.encode("ascii", "hankwise").decode() == said


def test_what_the_encoding_has_stays():
    assert "22½ × −1 √tex".encode("cp1252", "hankwise").decode("cp1252") == "22½ × -1 sqrt(tex)"


@pytest.mark.parametrize("encoding", ["ascii", "cp1252", "latin-1", "utf-16"])
def test_json_is_utf_8(encoding):
    words = ["calc", "twist_factor", "twist=9 tpi", "count=16 YSW", "--json"]
    done = outside(*words, PYTHONIOENCODING=encoding)
    assert done.returncode == 0, done.stderr
    said = json.loads(done.stdout.decode("utf-8"))
    assert said["unit"] == "turns/cm √tex"


@pytest.mark.parametrize("encoding", ["ascii", "cp1252"])
def test_nothing_is_lost_on_a_plain_terminal(encoding):
    done = outside("plan", LOT, "--all", *FEW, PYTHONIOENCODING=encoding)
    assert done.returncode == 0, done.stderr
    there = outside("plan", LOT, "--all", *FEW, PYTHONIOENCODING="utf-8")
    said, whole = done.stdout.decode(encoding), there.stdout.decode("utf-8")
    assert said.count("?") == whole.count("?")
    assert len(said.splitlines()) == len(whole.splitlines())


# --- names ------------------------------------------------------------------------------------


@pytest.fixture
def forged(tmp_path):
    """Give a lot with names that a terminal would obey and a picture would calculate."""
    text = (ROOT / "tests/lot/whole-lot.toml").read_text(encoding="utf-8")
    old = text[text.index("[lot]") :].split('name = "', 1)[1].split('"', 1)[0]
    name = r"\u001b[2J$$x$$\nENOUGH. All is well.\u202e"
    text = text.replace(f'name = "{old}"', f'name = "{name}"', 1)
    text = text.replace("[goods.hank]", r'[goods."h\u001b[1m$a^b$\u0007"]')
    path = tmp_path / "lot.toml"
    path.write_text(text, encoding="utf-8")
    return path


def test_names_are_on_one_line(forged, capsys, tmp_path):
    page = tmp_path / "lot-mill.html"
    assert main(["papers", str(forged), *FEW]) == 0
    capsys.readouterr()
    assert main(["plan", str(forged), *FEW]) == 0
    told = capsys.readouterr().out
    first = told.splitlines()[0]
    assert first.startswith(r"\u{1b}[2J$$x$$\nENOUGH. All is well.\u{202e}: ")
    for text in (told, page.read_text(encoding="utf-8"), repr(hw.plan.load(forged))):
        assert not [c for c in text if c != "\n" and not c.isprintable() and c != "\xa0"]
        assert r"h\u{1b}[1m$a^b$\u{7}" in text


def test_names_are_literal_in_a_picture(forged, tmp_path):
    path = tmp_path / "a.svg"
    assert main(["plan", str(forged), *FEW, "--picture", str(path)]) == 0
    texts = ["".join(e.itertext()) for e in ET.parse(path).iter() if e.tag.endswith("text")]
    assert any(text.startswith(r"\u{1b}[2J$$x$$\nENOUGH") for text in texts), texts


def test_names_of_a_week_are_literal(tmp_path):
    pytest.importorskip("matplotlib")
    from hankwise._plot import literal

    assert literal("$a$\x1b\n") == r"\$a\$\x1b\n"
    assert literal("grey ½ – fine") == "grey ½ – fine"


def test_a_bad_line_is_shown_in_short(tmp_path, capsys):
    path = tmp_path / "lot.toml"
    path.write_text("\x1b[2J" + "x" * 5_000_000)
    assert main(["plan", str(path)]) == 1
    said = capsys.readouterr().err
    assert len(said) < 700
    assert "\x1b" not in said


def test_large_files_are_refused(tmp_path, capsys):
    path = tmp_path / "large.toml"
    with path.open("wb") as file:
        file.truncate(20_000_000_000)
    assert main(["plan", str(path)]) == 1
    assert "more than 10 MB" in capsys.readouterr().err
    assert main(["chart", str(path)]) == 1
    assert "more than 10 MB" in capsys.readouterr().err
    with pytest.raises(hw.PlanError, match="more than 10 MB"):
        hw.plan.loads("\n" * 10_000_001)


def test_names_that_are_no_names(capsys):
    with pytest.raises(hw.PlanError, match="NUL"):
        hw.plan.load("a\0b.toml")
    with pytest.raises(hw.PlanError, match="NUL"):
        hw.cloth.weave("plain").picture().save("a\0b.svg")
    assert main(["plan", LOT, *FEW, "--picture", "a\0b.svg"]) == 1
    assert main(["convert", "16\udcff", "Nm", "tex"]) == 1
    assert "codec" not in capsys.readouterr().err


# --- being stopped ----------------------------------------------------------------------------

FINDER = """
import os, signal, sys

class Finder:
    def find_spec(self, name, *_more):
        if name == os.environ["STOP_AT"]:
            os.kill(os.getpid(), signal.SIGINT)

sys.meta_path.insert(0, Finder())
"""


@pytest.mark.skipif(os.name == "nt", reason="signals are those of POSIX")
@pytest.mark.parametrize(
    "module", ["hankwise._hankwise", "hankwise._catalogue", "hankwise.cli", "hankwise._options"]
)
def test_stopped_while_importing(tmp_path, module):
    (tmp_path / "sitecustomize.py").write_text(FINDER)
    done = outside("find", "twist", PYTHONPATH=str(tmp_path), STOP_AT=module)
    assert (done.returncode, done.stderr) == (130, b"\nhankwise: stopped\n")


@pytest.mark.skipif(os.name == "nt", reason="signals are those of POSIX")
@pytest.mark.parametrize(("number", "code"), [(signal.SIGINT, 130), (signal.SIGTERM, 143)])
def test_stopped_while_simulating(tmp_path, number, code):
    begin = "import hankwise._stop, runpy, sys; "
    run = (
        f"{begin}hankwise._stop.install(); sys.argv = ['hankwise', 'plan', {LOT!r}, "
        "'--lots', '9000000', '--seed', '3']; print('ready', flush=True); "
        "runpy.run_module('hankwise', run_name='__main__')"
    )
    with subprocess.Popen(
        [sys.executable, "-c", run], stdout=subprocess.PIPE, stderr=subprocess.PIPE, cwd=tmp_path
    ) as process:
        process.stdout.readline()
        process.send_signal(number)
        said = process.communicate(timeout=60)[1]
    assert process.returncode == code
    assert b"Traceback" not in said
    assert os.listdir(tmp_path) == []
