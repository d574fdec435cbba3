"""Ratios of the Python face against peers measured in the same run; nothing passes or fails."""

from __future__ import annotations

import compileall
import statistics
import subprocess
import sys
import time
import timeit
from pathlib import Path

import by_regex
import geometry
import hankwise as hw
import numpy as np
import weaves
from hankwise import _hankwise

LOT = Path(__file__).parent.parent / "examples" / "first-lot.toml"


def starts(*codes: str, runs: int = 60) -> list[float]:
    """Best wall times of fresh interpreters, taken in turn so that a busy moment meets them all."""
    best = [float("inf")] * len(codes)
    for _ in range(runs):
        for place, code in enumerate(codes):
            begin = time.perf_counter()
            subprocess.run([sys.executable, "-c", code], check=True)
            best[place] = min(best[place], time.perf_counter() - begin)
    return best


def call(statement: str, number: int = 500_000) -> float:
    """Best time of a call, in nanoseconds."""
    known = {
        "hw": hw,
        "empty": _hankwise._empty,
        "empty_text": _hankwise._empty_text,
        "parse": hw.yarn.parse,
        "by_regex": by_regex,
    }
    times = timeit.repeat(statement, globals=known, number=number, repeat=7)
    return min(times) / number * 1e9


def columns(figures: int = 10_000_000, repeats: int = 41) -> None:
    """Medians over many values, all in turn: against NumPy's own product and copy."""
    x = np.random.default_rng(1).uniform(1.0, 90.0, figures)
    out, own, k = np.zeros(figures), x.copy(), 1.25
    ways = {
        "k*x": lambda: k * x,
        "k/x": lambda: k / x,
        "copy": lambda: np.copyto(out, x),
        "fresh, direct": lambda: hw.convert(x, "den", "tex"),
        "fresh, to indirect": lambda: hw.convert(x, "tex", "Nm"),
        "out=, direct": lambda: hw.convert(x, "den", "tex", out=out),
        "out=, to indirect": lambda: hw.convert(x, "tex", "Nm", out=out),
        # There and back, so that the values stay in their range.
        "out= in place, to indirect": lambda: hw.convert(own, "tex", "Nm", out=own),
    }
    times: dict[str, list[float]] = {name: [] for name in ways}
    for _ in range(repeats):
        for name, way in ways.items():
            begin = time.perf_counter()
            way()
            times[name].append(time.perf_counter() - begin)
    median = {name: statistics.median(all_of) for name, all_of in times.items()}
    for name in ways:
        peer, aim = ("copy", 0.75) if name.startswith("out") else ("k*x", 1.05)
        if name.startswith(("fresh", "out")):
            ratio = median[name] / median[peer]
            print(f"convert of 1e7, {name} / NumPy's {peer}: {ratio:.2f} × (aim: {aim})")


def weave(threads: int = 1000) -> None:
    """All values of a weave of random squares, from the array on, against NumPy, in turn."""
    squares = np.random.default_rng(1).integers(0, 2, (threads, threads)).astype(bool)

    def ours() -> dict[str, object]:
        woven = hw.cloth.weave(squares)
        each, float_, longest = woven.interlacings, woven.average_float, woven.longest_float
        return {
            "warp_up": woven.warp_up,
            "crossing_firmness": woven.crossing_firmness,
            "floating_factor": woven.floating_factor,
        } | {system: (each[system], float_[system], longest[system]) for system in each}

    found, peer = ours(), weaves.figures(squares)
    for system in ("warp", "weft"):
        each, float_, longest = peer[system]
        assert found[system] == (each.tolist(), float_, longest)
    times: tuple[list[float], list[float]] = ([], [])
    for _ in range(61):
        for way, all_of in zip((ours, lambda: weaves.figures(squares)), times, strict=True):
            begin = time.perf_counter()
            way()
            all_of.append(time.perf_counter() - begin)
    mine, numpy = map(statistics.median, times)
    print(
        f"a weave of {threads} × {threads} by NumPy / ours: {1e3 * numpy:.2f} ms / "
        f"{1e3 * mine:.2f} ms: {numpy / mine:.1f} × (aim: 10)"
    )


def main() -> None:
    """Measure and print."""
    best = float("inf")
    for _ in range(7):
        begin = time.perf_counter()
        hw.plan.load(LOT).run(lots=100_000, seed=1)
        best = min(best, time.perf_counter() - begin)
    print(f"plan of the demo lot, 100,000 simulated lots: {best:.3f} s (aim: under 0.1 s)")

    # As installed: with the byte code that pip writes.
    compileall.compile_dir(str(Path(hw.__file__).parent), quiet=2)
    nothing, ours = starts("pass", "import hankwise")
    loads = subprocess.run(
        [sys.executable, "-c", "import sys, hankwise; print('numpy' in sys.modules)"],
        check=True, capture_output=True, text=True,
    ).stdout.strip()  # fmt: skip
    print(f"import hankwise / python -c pass: {ours / nothing:.2f} × (aim: 1.25); NumPy: {loads}")

    empty = call("empty()")
    convert = call("hw.convert(16.0, 'Nm', 'YSW')")
    print(f"convert / empty call: {convert:.0f} ns / {empty:.0f} ns: {convert / empty:.2f} × (2.3)")
    columns()
    geometry.compare()
    weave()
    given = "R 257 tex S 120/2 Z 210; 125 tex"
    assert by_regex.parse(given).build.ends == hw.yarn.parse(given).singles
    nothing = call(f"empty_text({given!r})")
    ours, theirs = call(f"parse({given!r})"), call(f"by_regex.parse({given!r})", 100_000)
    print(f"a yarn read / empty call with a text: {ours:.0f} ns: {ours / nothing:.1f} × (aim: 6)")
    print(f"a yarn by a regular expression in Python / ours: {theirs / ours:.1f} × (aim: 15)")
    formula = call("hw.yarn.twist_factor('9 tpi', '16 YSW')", 100_000)
    print(f"a formula from texts / empty call: {formula:.0f} ns: {formula / empty:.1f} ×")


if __name__ == "__main__":
    main()
