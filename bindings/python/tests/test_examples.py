"""The examples do what they say, run as a user runs them."""

from __future__ import annotations

import csv
import io
import os
import re
import struct
import subprocess
import sys
from pathlib import Path

import pytest

import pourwright as pw

from .conftest import DEMO, EXAMPLES, ROOT


def run(*arguments: str | Path) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-X", "utf8", *map(str, arguments)]
    return subprocess.run(command, capture_output=True, encoding="utf-8", check=False)


def test_day() -> None:
    done = run(EXAMPLES / "day.py", DEMO / "book.json", DEMO / "orders.json")
    assert (done.returncode, done.stderr) == (0, "")
    assert "ORDER OF WORK" in done.stdout
    pots = run(EXAMPLES / "day.py", "--pots", DEMO / "book.json", DEMO / "orders.json")
    lines = [line.split("\t") for line in pots.stdout.splitlines()]
    assert {line[0] for line in lines} >= {"A", "B"}
    assert all(len(line) == 4 for line in lines)


def test_day_says_what_is_wrong() -> None:
    done = run(EXAMPLES / "day.py", DEMO / "orders.json", DEMO / "orders.json")
    assert done.returncode == 1
    assert "orders.json/lines: " in done.stderr and "[unknown-field]" in done.stderr


def test_grams() -> None:
    done = run(EXAMPLES / "grams.py", DEMO / "book.json", EXAMPLES / "formulas.csv", "3 1/2 cup")
    assert (done.returncode, done.stderr) == (0, "")
    rows = {(row["formula"], row["material"]): row["grams"] for row in csv.DictReader(io.StringIO(done.stdout))}
    cup = 236.5882365
    # 32 drops of 0.044 g, 1/2 tsp of flake at 0.55 g/mL, 1/4 cup of salt at 1.22 g/mL, each for 3 1/2 cups.
    assert float(rows["dusk", "plum"]) == pytest.approx(3.5 * 32 * 0.044, abs=0.005)
    assert float(rows["dusk", "teal-flake"]) == pytest.approx(3.5 * cup / 96 * 0.55, abs=0.005)
    assert float(rows["salty", "fine-salt"]) == pytest.approx(3.5 * cup / 4 * 1.22, abs=0.005)
    assert float(rows["reed", "clear-base"]) == pytest.approx(3.5 * cup * 1.03, abs=0.005)


def test_grams_says_what_is_wrong(tmp_path: Path) -> None:
    """All faults at once, with their lines; a duplicate dose is not lost."""
    wrong = tmp_path / "wrong.csv"
    rows = [
        "formula,material,amount",
        "dusk,plum,6 oz",
        "dusk,plumm,3 drops",
        "dusk,moss,1 drop",
        ",,",
        "dusk,moss,10 drops",
        "reed,plum,1,25 tsp",
        "reed,moss",
        "rust,moss,101 % of finished",
    ]
    wrong.write_text("\n".join(rows), "utf-8")
    done = run(EXAMPLES / "grams.py", DEMO / "book.json", wrong, "1 cup")
    assert (done.returncode, done.stdout) == (1, "")
    found = [line.removeprefix(str(wrong)) for line in done.stderr.splitlines()]
    expected = [
        ":2: `6 oz`",
        ':3: There is no material "plumm"',
        ":6: dusk has moss already, in line 4",
        ":7: A row has",
        ":8: A row has",
        ":9: The shares",
    ]
    assert [one[: len(two)] for one, two in zip(found, expected, strict=True)] == expected
    done = run(EXAMPLES / "grams.py", DEMO / "book.json", wrong, "1 cuup")
    assert done.stderr.startswith("/base_amount: `cuup`") and ":2: `6 oz`" in done.stderr
    # What is wrong with all doses of a formula together has the line of the first.
    wrong.write_text(f"{rows[0]}\nx,softener,60 % of finished\nx,plum,50 % of finished\n", "utf-8")
    done = run(EXAMPLES / "grams.py", DEMO / "book.json", wrong, "1 cup")
    assert done.stderr.startswith(f"{wrong}:2: The shares") and done.stderr.count("\n") == 1
    for written in (b"", b"material;amount\n", b"formula,material,amount\nx,pl\xfcm,1 g\n"):
        wrong.write_bytes(written)
        done = run(EXAMPLES / "grams.py", DEMO / "book.json", wrong, "1 cup")
        assert done.returncode == 1 and done.stderr.startswith(f"{wrong}: ")
    done = run(EXAMPLES / "grams.py", DEMO / "orders.json", wrong, "1 cup")
    assert done.returncode == 1 and f"{DEMO / 'orders.json'}/lines: " in done.stderr


@pytest.mark.parametrize(
    "written",
    [
        b"\xef\xbb\xbfformula,material,amount\r\ndusk,plum,32 drops\r\n",
        b"formula;material;amount\r\n\r\ndusk;plum;32 drops\r\n;;\r\n",
        b'"Amount"\t"Formula"\t"Notes"\t"Material"\n32 drops\t dusk \tshake\tplum\t\n',
    ],
)
def test_grams_reads_what_spreadsheets_write(written: bytes, tmp_path: Path) -> None:
    path = tmp_path / "formulas.csv"
    path.write_bytes(written)
    done = run(EXAMPLES / "grams.py", DEMO / "book.json", path, "1 cup")
    assert (done.returncode, done.stderr) == (0, "")
    assert done.stdout == "formula,material,grams\ndusk,clear-base,243.69\ndusk,plum,1.41\n"


def test_one_day() -> None:
    """The log is what the script prints; `UPDATE=1` writes it. The JavaScript package prints the same."""
    folder = DEMO / "one-day"
    done = run(EXAMPLES / "one_day.py", folder)
    assert (done.returncode, done.stderr) == (0, "")
    log = folder / "log.md"
    if os.environ.get("UPDATE") == "1":
        log.write_text(done.stdout, "utf-8")
    assert done.stdout.splitlines() == log.read_text("utf-8").splitlines()


def test_one_day_says_what_is_wrong(tmp_path: Path) -> None:
    (tmp_path / "book.json").write_bytes((DEMO / "book.json").read_bytes())
    folder = tmp_path / "day"
    folder.mkdir()
    for path in (DEMO / "one-day").glob("*.json"):
        (folder / path.name).write_text(path.read_text("utf-8").replace('"1/4 tsp"', '"1/4 tspp"'), "utf-8")
    done = run(EXAMPLES / "one_day.py", folder)
    assert done.returncode == 1 and "/trial/log/1/teal-flake: " in done.stderr


def test_the_readme_of_the_project() -> None:
    readme = (ROOT / "README.md").read_text("utf-8")
    (block,) = re.findall(r"```python\n(.*?)```", readme, re.DOTALL)
    done = run("-c", block)
    assert (done.stdout, done.stderr) == (re.findall(r"# (.*)", block)[0] + "\n", "")


def test_the_version_is_that_of_the_package() -> None:
    from importlib.metadata import version

    assert pw.__version__ == version("pourwright")


def test_pictures(tmp_path: Path) -> None:
    done = run(EXAMPLES / "pictures.py", tmp_path)
    assert (done.returncode, done.stderr) == (0, "")
    (drawn,) = tmp_path.iterdir()
    shown = EXAMPLES / drawn.name
    size = struct.unpack(">II", drawn.read_bytes()[16:24])
    assert shown.read_bytes()[:8] == b"\x89PNG\r\n\x1a\n" and struct.unpack(">II", shown.read_bytes()[16:24]) == size
    assert shown.stat().st_size < 80_000
