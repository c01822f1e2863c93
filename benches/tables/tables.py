"""Masses of pieces from a table of invented pieces, and plans of invented days, in each engine.

A row: the mass of a piece from its cavity, two densities, voids and feed. The work: read Parquet files of a million
rows each, calculate, add up. ``pourwright`` checks every number of a row; the engine's own expression is the bare
formula; their sums have to agree. ``texts`` is a mass from a volume as a text and a density. Each figure is a process
of its own, bound to its number of cores, that has done the work on one file before. Rows per second of wall-clock time,
and in brackets per second of processor time of all threads and child processes, which other programs on the machine
disturb less.
"""

from __future__ import annotations

import argparse
import importlib.metadata
import json
import os
import platform
import shutil
import subprocess
import sys
import time
from collections.abc import Callable, Iterable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

A_FILE = 1_000_000
COLUMNS = ("cavity", "cold", "hot", "voids", "feed")
ENGINES = ("numpy", "arrow", "polars", "duckdb", "dask", "spark")
DEMO = Path(__file__).resolve().parents[2] / "core" / "examples" / "demo"


def files(work: Path, rows: int) -> list[str]:
    """Files with this number of rows together: the first is written, the others are links to it."""
    import numpy as np
    import pyarrow as pa
    import pyarrow.parquet as pq

    folder = work / "pieces"
    folder.mkdir(parents=True, exist_ok=True)
    first = folder / "pieces-0000.parquet"
    if not first.exists():
        random = np.random.default_rng(20270302)
        numbers = {
            "cavity": random.uniform(1, 20, A_FILE),
            "cold": random.uniform(1.0, 1.2, A_FILE),
            "voids": random.uniform(0, 0.05, A_FILE),
            "feed": random.uniform(0, 1, A_FILE),
        }
        numbers["hot"] = 0.92 * numbers["cold"]
        # Cavities as a shop writes them: a few hundred different texts.
        texts = np.array([f"{tenths / 10} mL" for tenths in range(10, 200)] + ["1/4 tsp", "1 1/2 tsp", "0.5 fl oz"])
        table = pa.table({**numbers, "amount": texts[random.integers(0, len(texts), A_FILE)]})
        pq.write_table(table, first, compression="none", row_group_size=1 << 18)
    chosen = []
    for place in range(max(1, rows // A_FILE)):
        path = folder / f"pieces-{place:04}.parquet"
        if not path.exists():
            os.link(first, path)
        chosen.append(str(path))
    return chosen


def formula(cavity: Any, cold: Any, hot: Any, voids: Any, feed: Any) -> Any:
    """The mass of a piece, in any language of expressions with operators."""
    return cavity * (1 - voids) * (hot + feed * (cold - hot))


def of_numpy(paths: list[str], cores: int, kind: str) -> float:
    import pyarrow.parquet as pq

    from pourwright import columns

    def one(path: str) -> float:
        table = pq.read_table(path, columns=list(COLUMNS) if kind != "texts" else ["amount", "cold"], use_threads=False)
        if kind == "texts":
            return float(columns.mass_of_volume(table["amount"].to_numpy(), table["cold"].to_numpy()).sum())
        given = [table[name].to_numpy() for name in COLUMNS]
        if kind == "own":
            return float(formula(*given).sum())
        cavity, cold, hot, voids, feed = given
        found = columns.piece_mass(cavity, cold, hot_density_g_per_ml=hot, voids=voids, feed=feed)
        return float(found.piece_mass_g.sum())

    return spread(one, paths, cores)


def of_arrow(paths: list[str], cores: int, kind: str) -> float:
    import pyarrow.compute as pc
    import pyarrow.parquet as pq

    from pourwright import arrow

    def one(path: str) -> float:
        table = pq.read_table(path, columns=list(COLUMNS) if kind != "texts" else ["amount", "cold"], use_threads=False)
        if kind == "texts":
            return float(pc.sum(arrow.mass_of_volume(table["amount"], table["cold"])).as_py())
        cavity, cold, hot, voids, feed = (table[name] for name in COLUMNS)
        if kind == "own":
            density = pc.add(hot, pc.multiply(feed, pc.subtract(cold, hot)))
            return float(pc.sum(pc.multiply(pc.multiply(cavity, pc.subtract(1.0, voids)), density)).as_py())
        found = arrow.piece_mass(cavity, cold, hot_density_g_per_ml=hot, voids=voids, feed=feed)
        return float(sum(pc.sum(chunk.field(0)).as_py() for chunk in found.chunks))

    return spread(one, paths, cores)


def spread(one: Callable[[str], float], paths: list[str], cores: int) -> float:
    """The work on each file, by as many threads as there are cores."""
    import pyarrow as pa

    pa.set_cpu_count(1)
    pa.set_io_thread_count(1)
    if cores == 1:
        return sum(map(one, paths))
    with ThreadPoolExecutor(cores) as pool:
        return sum(pool.map(one, paths))


def of_polars(paths: list[str], cores: int, kind: str) -> float:
    import polars as pl

    import pourwright.polars  # noqa: F401

    cavity, cold, hot, voids, feed = map(pl.col, COLUMNS)
    if kind == "texts":
        made = pl.col("amount").pour.mass_of_volume(cold)  # type: ignore[attr-defined]
    elif kind == "own":
        made = formula(cavity, cold, hot, voids, feed)
    else:
        made = cavity.pour.piece_mass(cold, hot_density_g_per_ml=hot, voids=voids, feed=feed)
        made = made.struct.field("piece_mass_g")
    return float(pl.scan_parquet(paths).select(made.sum()).collect(engine="streaming").item())


def of_duckdb(paths: list[str], cores: int, kind: str) -> float:
    import duckdb

    from pourwright.duckdb import register

    shop = register(duckdb.connect(config={"threads": cores}))
    made = {
        "own": "cavity * (1 - voids) * (hot + feed * (cold - hot))",
        "ours": "pour_piece_mass(cavity, cold, hot, voids, feed).piece_mass_g",
        "texts": "pour_mass_of_volume(amount, cold)",
    }[kind]
    return float(shop.execute(f"SELECT sum({made}) FROM read_parquet(?)", [paths]).fetchall()[0][0])


def of_dask(paths: list[str], cores: int, kind: str) -> float:
    import dask
    import dask.dataframe as dd

    from pourwright import columns

    def masses(part: Any) -> Any:
        if kind == "texts":
            found = columns.mass_of_volume(part["amount"].to_numpy(object), part["cold"].to_numpy())
        else:
            cavity, cold, hot, voids, feed = (part[name].to_numpy() for name in COLUMNS)
            whole = columns.piece_mass(cavity, cold, hot_density_g_per_ml=hot, voids=voids, feed=feed)
            found = whole.piece_mass_g
        return part.assign(mass=found)["mass"]

    dask.config.set(scheduler="threads", num_workers=cores)
    frame = dd.read_parquet(paths, columns=["amount", "cold"] if kind == "texts" else list(COLUMNS))
    if kind == "own":
        return float(formula(*(frame[name] for name in COLUMNS)).sum().compute())
    return float(frame.map_partitions(masses, meta=("mass", "f8")).sum().compute())


def of_spark(paths: list[str], cores: int, kind: str) -> float:
    from pyspark.sql import functions as f

    frame = spark_session(cores).read.parquet(*paths)
    if kind == "own":
        return float(frame.select(f.sum(formula(*(f.col(name) for name in COLUMNS)))).collect()[0][0])

    def masses(batches: Iterable[Any]) -> Iterable[Any]:
        import pyarrow as pa

        from pourwright import arrow

        for batch in batches:
            if kind == "texts":
                yield pa.RecordBatch.from_arrays([arrow.mass_of_volume(batch["amount"], batch["cold"])], ["mass"])
                continue
            cavity, cold, hot, voids, feed = (batch[name] for name in COLUMNS)
            found = arrow.piece_mass(cavity, cold, hot_density_g_per_ml=hot, voids=voids, feed=feed)
            yield pa.RecordBatch.from_arrays([found.field(0)], ["mass"])

    chosen = ["amount", "cold"] if kind == "texts" else list(COLUMNS)
    return float(frame.select(*chosen).mapInArrow(masses, "mass double").agg(f.sum("mass")).collect()[0][0])


def spark_session(cores: int) -> Any:
    from pyspark.sql import SparkSession

    os.environ["PYSPARK_PYTHON"] = sys.executable
    builder = SparkSession.builder.master(f"local[{cores}]").config("spark.ui.enabled", "false")
    builder = builder.config("spark.driver.bindAddress", "127.0.0.1").config("spark.driver.host", "127.0.0.1")
    builder = builder.config("spark.sql.execution.arrow.maxRecordsPerBatch", "100000")
    builder = builder.config("spark.driver.memory", "3g").config("spark.log.level", "ERROR")
    return builder.getOrCreate()


ROWS: dict[str, Callable[[list[str], int, str], float]] = {
    "numpy": of_numpy,
    "arrow": of_arrow,
    "polars": of_polars,
    "duckdb": of_duckdb,
    "dask": of_dask,
    "spark": of_spark,
}


def orders(day: int) -> str:
    """The orders of an invented day, one to three lines for the demo's shop, as a request for its plan."""
    what = [("finger-5", ["dusk", "plain"]), ("paddle-4", ["reed", "plain"]), ("grub-2", ["ember", "plain"])]
    lines = [
        {"order": str(place + 1), "mold": mold, "formulas": formulas, "pieces": 6 + (day * 7 + place * 5) % 40}
        for place, (mold, formulas) in enumerate(what[: 1 + day % 3])
    ]
    return json.dumps({"calculate": "plan", "orders": {"format": "pourwright/1.0", "lines": lines}})


def days_file(work: Path, days: int) -> Path:
    path = work / f"days-{days}.jsonl"
    if not path.exists():
        path.write_text("".join(orders(day) + "\n" for day in range(days)), "utf-8")
    return path


def pots(answers: str) -> int:
    """The number of pots in the answers to lines; every line must have a plan."""
    lines = answers.splitlines()
    if not all(line.startswith('{"result"') for line in lines):
        raise SystemExit(next(line for line in lines if not line.startswith('{"result"')))
    return sum(len(json.loads(line)["result"]["pots"]) for line in lines)


def days_of_lines(path: Path, work: Path, cores: int) -> int:
    """By the command line; the answers are only counted."""
    program = Path(os.environ.get("CARGO_TARGET_DIR", work.parent)) / "release" / "pourwright"
    command = [str(program), "lines", str(path), "--book", str(DEMO / "book.json"), "--jobs", str(cores), "--quiet"]
    with subprocess.Popen(command, stdout=subprocess.PIPE) as process:
        assert process.stdout is not None
        lines = sum(part.count(b"\n") for part in iter(lambda: process.stdout.read(1 << 20), b""))
    if process.returncode:
        raise SystemExit(f"{command} ended with {process.returncode}.")
    return lines


def chunks(path: Path, size: int = 200) -> Iterable[str]:
    lines = path.read_text("utf-8").splitlines(keepends=True)
    return ("".join(lines[start : start + size]) for start in range(0, len(lines), size))


def days_of_threads(path: Path, work: Path, cores: int) -> int:
    """By Python's threads on one book."""
    import pourwright

    book = pourwright.Book.load(DEMO / "book.json")

    def answered(lines: str) -> int:
        return book.answer_lines(lines).count("\n")

    with ThreadPoolExecutor(cores) as pool:
        return sum(pool.map(answered, chunks(path)))


def days_of_dask(path: Path, work: Path, cores: int) -> int:
    import dask
    import dask.bag

    import pourwright

    def answered(parts: Iterable[str]) -> list[int]:
        book = pourwright.Book.load(DEMO / "book.json")
        return [book.answer_lines(part).count("\n") for part in parts]

    dask.config.set(scheduler="threads", num_workers=cores)
    every = list(chunks(path))
    return sum(dask.bag.from_sequence(every, npartitions=4 * cores).map_partitions(answered).compute())


def days_of_spark(path: Path, work: Path, cores: int) -> int:
    def answered(lines: Iterable[str]) -> Iterable[int]:
        import pourwright

        book = pourwright.Book.load(DEMO / "book.json")
        every = list(lines)
        for start in range(0, len(every), 200):
            yield book.answer_lines("\n".join(every[start : start + 200])).count("\n")

    context = spark_session(cores).sparkContext
    return int(context.textFile(str(path), 4 * cores).mapPartitions(answered).sum())


DAYS: dict[str, Callable[[Path, Path, int], int]] = {
    "lines": days_of_lines,
    "threads": days_of_threads,
    "dask": days_of_dask,
    "spark": days_of_spark,
}


def processor_time() -> float:
    """Of this process and its children, those that run too: Spark's are never waited for."""
    seconds = 0.0
    tick = os.sysconf("SC_CLK_TCK")
    mine = {os.getpid()}
    stats = {}
    for entry in Path("/proc").iterdir():
        if entry.name.isdigit():
            try:
                fields = (entry / "stat").read_text().rpartition(")")[2].split()
            except OSError:
                continue
            stats[int(entry.name)] = (int(fields[1]), sum(map(int, fields[11:15])) / tick)
    grown = True
    while grown:
        more = {one for one, (parent, _) in stats.items() if parent in mine} - mine
        grown = bool(more)
        mine |= more
    for one in mine:
        seconds += stats.get(one, (0, 0.0))[1]
    return seconds


def child(arguments: argparse.Namespace) -> None:
    """One figure: prints wall-clock time, processor time and the result."""
    engine, cores, kind, size, work = arguments.child
    cores, size, folder = int(cores), int(float(size)), Path(work)
    os.sched_setaffinity(0, sorted(os.sched_getaffinity(0))[:cores])
    if kind == "days":
        path, warm = days_file(folder, size), days_file(folder, 100)
        work_done: Callable[[], float] = lambda: DAYS[engine](path, folder, cores)  # noqa: E731
        DAYS[engine](warm, folder, cores)
    else:
        paths = files(folder, size)
        work_done = lambda: ROWS[engine](paths, cores, kind)  # noqa: E731
        ROWS[engine](paths[:1], cores, kind)
    wall, used = time.perf_counter(), processor_time()
    result = work_done()
    print(json.dumps([time.perf_counter() - wall, processor_time() - used, result]), flush=True)
    os._exit(0)  # Spark takes its time to stop.


def figure(engine: str, cores: int, kind: str, size: int, work: Path) -> tuple[float, float, float]:
    command = [sys.executable, __file__, "--work", str(work), "--child", engine, str(cores), kind, str(size), str(work)]
    environment = {**os.environ, "POLARS_MAX_THREADS": str(cores), "OMP_NUM_THREADS": str(cores)}
    done = subprocess.run(command, capture_output=True, text=True, env=environment, check=False)
    if done.returncode:
        raise SystemExit(f"{' '.join(command)}\n{done.stderr[-2000:]}")
    wall, used, result = json.loads(done.stdout.splitlines()[-1])
    return wall, used, result


def millions(rows: float) -> str:
    return f"{rows / 1e6:.3g} M"


FIGURES = (("ours", 1), ("ours", 2), ("own", 1), ("own", 2), ("texts", 1))


def shown(found: tuple[float, float, float] | None, count: int) -> str:
    """Of wall-clock time, and of processor time."""
    return "" if found is None else f"{millions(count / found[0])} ({millions(count / found[1])})"


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("rows", nargs="?", default="1e6,1e7", help="numbers of rows, with commas")
    parser.add_argument("days", nargs="?", default="1e4", help="number of days; 0 for none")
    parser.add_argument("--engines", default=",".join(ENGINES))
    parser.add_argument("--kinds", default="ours,own,texts")
    parser.add_argument("--work", type=Path, required=True, help="folder for data")
    parser.add_argument("--child", nargs=5, help=argparse.SUPPRESS)
    arguments = parser.parse_args()
    if arguments.child:
        child(arguments)
        return
    kinds = arguments.kinds.split(",")
    engines = [engine for engine in arguments.engines.split(",") if engine]
    if "spark" in engines and not shutil.which("java"):
        print("No Java: Spark is left out.")
        engines.remove("spark")
    names = ["numpy", "pyarrow", "polars", "duckdb", "pandas", "dask", "pyspark"]
    versions = ", ".join(f"{name} {importlib.metadata.version(name)}" for name in names)
    print(
        f"Python {platform.python_version()}, {versions}, {len(os.sched_getaffinity(0))} cores; "
        f"load {os.getloadavg()[0]:.1f} before.\n"
    )
    for rows in [int(float(rows)) for rows in arguments.rows.split(",") if float(rows)]:
        head = "pourwright, 1 core | 2 cores | efficiency | own expression, 1 core | 2 cores | texts, 1 core"
        print(f"| {millions(rows)} rows | {head} |")
        print("| --- | ---: | ---: | ---: | ---: | ---: | ---: |")
        for engine in engines:
            found = {}
            for kind, cores in FIGURES:
                if kind in kinds:
                    found[kind, cores] = figure(engine, cores, kind, rows, arguments.work)
            results = [one[2] for (kind, _), one in found.items() if kind != "texts"]
            if max(results) - min(results) > 1e-9 * max(results):
                raise SystemExit(f"{engine}: the results differ: {results}.")
            cells = [shown(found.get(one), rows) for one in FIGURES]
            both = found.get(("ours", 1)), found.get(("ours", 2))
            efficiency = f"{both[0][0] / both[1][0] / 2:.0%}" if both[0] and both[1] else ""
            print(f"| {engine} | {' | '.join([*cells[:2], efficiency, *cells[2:]])} |", flush=True)
        print()
    days = int(float(arguments.days))
    if days:
        print(f"| {days} days | 1 core | 2 cores | efficiency |")
        print("| --- | ---: | ---: | ---: |")
        for engine in [
            one for one in DAYS if one == "lines" or one in engines or (one == "threads" and "numpy" in engines)
        ]:
            one, two = (figure(engine, cores, "days", days, arguments.work) for cores in (1, 2))
            if one[2] != days or two[2] != days:
                raise SystemExit(f"{engine}: {one[2]} and {two[2]} answers to {days} days.")
            cells = [f"{days / found[0]:.0f} ({days / found[1]:.0f})" for found in (one, two)]
            print(f"| {engine} | {' | '.join(cells)} | {one[0] / two[0] / 2:.0%} |", flush=True)
    print(f"\nLoad {os.getloadavg()[0]:.1f} after.")


if __name__ == "__main__":
    main()
