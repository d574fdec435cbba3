"""The source archive: whole, and of this project alone."""

import json
import shutil
import subprocess
import tarfile

import pytest
from conftest import ROOT


@pytest.mark.skipif(not shutil.which("maturin"), reason="maturin is not on the path")
def test_the_archive_can_be_built_from(tmp_path):
    out = ["--out", str(tmp_path)]
    subprocess.run(["maturin", "sdist", *out], cwd=ROOT, check=True, capture_output=True)
    (archive,) = tmp_path.glob("hankwise-*.tar.gz")
    with tarfile.open(archive) as packed:
        names = [name.partition("/")[2] for name in packed.getnames()]
        packed.extractall(tmp_path, filter="data")
    assert not [name for name in names if name.startswith((".", "target", "build"))]
    # Every target that a manifest names is there: else nothing at all can be built.
    unpacked = tmp_path / archive.name.removesuffix(".tar.gz")
    told = subprocess.run(
        ["cargo", "metadata", "--no-deps", "--offline", "--format-version", "1"],
        cwd=unpacked,
        capture_output=True,
        text=True,
    )
    assert told.returncode == 0, told.stderr
    packages = {package["name"] for package in json.loads(told.stdout)["packages"]}
    assert packages == {"hankwise", "hankwise-macros", "hankwise-python"}
