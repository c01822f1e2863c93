"""The examples do what they say, run as a user runs them."""

from __future__ import annotations

import csv
import io
import re
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
    wrong = tmp_path / "wrong.csv"
    wrong.write_text("formula,material,amount\ndusk,plum,6 oz\n", "utf-8")
    done = run(EXAMPLES / "grams.py", DEMO / "book.json", wrong, "1 cup")
    assert done.returncode == 1
    assert "6 fl oz" in done.stderr and done.stdout.count("\n") <= 1


def test_the_readme_of_the_project() -> None:
    readme = (ROOT / "README.md").read_text("utf-8")
    (block,) = re.findall(r"```python\n(.*?)```", readme, re.DOTALL)
    done = run("-c", block)
    assert (done.stdout, done.stderr) == (re.findall(r"# (.*)", block)[0] + "\n", "")


def test_the_version_is_that_of_the_package() -> None:
    from importlib.metadata import version

    assert pw.__version__ == version("pourwright")
