"""Files given to `hankwise chart`: no value is read as another, and the message says why."""

import pytest
from hankwise import cli


def run(tmp_path, capsys, content, *more):
    path = tmp_path / "readings.csv"
    path.write_bytes(content if isinstance(content, bytes) else content.encode())
    code = cli.main(["chart", str(path), *more])
    out, err = capsys.readouterr()
    return code, out, err


@pytest.mark.parametrize(
    ("content", "words"),
    [
        ("tex\n1,500\n1,510\n1,490\n", "row 2: it has more columns than the head"),
        ("tex;n\n150,5;1\n151,2;2\n", "'150,5' is not a number; write the decimal mark as a point"),
        ('tex\n"150,5"\n"151,2"\n', "write the decimal mark as a point"),
        ("tex\n150 tex\n151 tex\n", "--unit tex"),
        ("tex\n150\n\n\nlots\n", "row 5, tex: 'lots'"),
        ("tex\n150\nnan\n151\n", "row 3, tex: 'nan' is not a number; omit the row"),
        ("tex\n150\n1_000\n151\n", "row 3"),
        ("n,n\n1,2\n3,4\n", "several columns 'n'"),
        ("grüße\n150\n".encode("latin-1"), "save it as UTF-8, from a spreadsheet as CSV UTF-8"),
        (b"\xff\xfet\x00\n\x00", "save it as UTF-8, from a spreadsheet as CSV UTF-8"),
        ("tex\n", "a header row and readings below it"),
        ("", "a header row and readings below it"),
        ("150\n151\n149\n", "is where the header should be"),
    ],
)
def test_what_is_refused(tmp_path, capsys, content, words):
    more = ("--column", "tex") if ";" in str(content) else ()
    more = ("--column", "n") if str(content).startswith("n,n") else more
    code, out, err = run(tmp_path, capsys, content, *more)
    assert (code, out) == (1, "")
    assert words in err
    assert "readings.csv" in err
    assert "codec" not in err


@pytest.mark.parametrize(
    ("content", "more"),
    [
        ("\ufefftex\n150\n151\n149\n", ()),
        ("tex\r\n150\r\n151\r\n149\r\n", ()),
        ("tex,\n150,\n151,\n149,\n", ()),
        ("tex;n\n150;1\n151;2\n149;3\n", ("--column", "tex")),
        ("n\ttex\n1\t150\n2\t151\n3\t149\n", ("--column", "tex")),
    ],
)
def test_what_spreadsheets_write_is_read(tmp_path, capsys, content, more):
    code, out, _ = run(tmp_path, capsys, content, *more)
    assert code == 0
    assert "centre" in out
    assert " 150\n" in out


def test_a_file_that_is_not_there(tmp_path, capsys):
    assert cli.main(["chart", str(tmp_path / "none.csv")]) == 1
    assert "none.csv: no such file" in capsys.readouterr().err
    assert cli.main(["chart", str(tmp_path)]) == 1
    assert "cannot be read: it is a folder" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("unit", "says"), [("Nm", ["--unit tex", "omit --unit"]), ("°C", ["omit --unit"])]
)
def test_a_unit_that_has_no_mean_is_answered_with_what_to_type(tmp_path, capsys, unit, says):
    code, _, err = run(tmp_path, capsys, "n\n16\n17\n16\n", "--unit", unit)
    assert code == 1
    assert all(words in err for words in says)
    assert "hankwise.q" not in err
    assert "[" not in err
