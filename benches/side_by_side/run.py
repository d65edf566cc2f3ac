"""Side milling over columns, side by side in one process: the kernel, numpy, polars, C, a copy.

All sides read the same arrays. Each is run once before it is timed, then all take turns, so that
what else the machine does hits them alike. A measurement runs in a process of its own that is
bound to its cores before numpy and polars are loaded.
"""

import argparse
import json
import os
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

ARGUMENTS = 8
RESULTS = 9
SEED = 20240229
SLOWEST_SPEED, FASTEST_SPEED, EFFICIENCY = 1.0, 300.0, 0.8


def options():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--kernel", type=Path, required=True)
    parser.add_argument("--loops", type=Path, required=True)
    parser.add_argument("--rows", type=int, default=1_000_000)
    parser.add_argument("--rounds", type=int, default=41)
    parser.add_argument("--no-growth", action="store_true")
    parser.add_argument("--largest", type=float, default=1e8, help="rows where the growth ends")
    parser.add_argument("--growth-alone", action="store_true")
    parser.add_argument("--measure", choices=["sides", "growth", "full-growth"], help=argparse.SUPPRESS)
    parser.add_argument("--cores", type=int, help=argparse.SUPPRESS)
    return parser.parse_args()


def draw(rows):
    """The eight columns of arguments, SI values."""
    import numpy as np

    random = np.random.default_rng(SEED)
    diameter = random.uniform(0.002, 0.05, rows)
    return [
        diameter,
        np.floor(random.uniform(1, 9, rows)),
        random.uniform(0.3, 8, rows),
        random.uniform(2e-5, 2e-4, rows),
        random.uniform(1e-4, 0.02, rows),
        diameter * random.uniform(0.02, 1, rows),
        random.uniform(4e8, 3e9, rows),
        random.uniform(0.15, 0.35, rows),
    ]


def draw_cuts(rows):
    """Axial depth, radial depth and length of cuts that suit the job of the full study."""
    import numpy as np

    random = np.random.default_rng(SEED)
    return [
        0.0254 * random.uniform(0.05, 0.6, rows),
        0.0127 * random.uniform(0.02, 0.2, rows),
        random.uniform(0.02, 0.3, rows),
    ]


def with_numpy(arguments):
    import numpy as np

    D, z, vc, h, ap, ae, kc11, mc = arguments
    n = np.clip(vc / (np.pi * D), SLOWEST_SPEED, FASTEST_SPEED)
    x = ae / D
    s = np.where(x < 0.5, 2 * np.sqrt(x * (1 - x)), 1.0)
    fz = h / s
    hm = 2 * fz * x / np.arccos(1 - 2 * x)
    vf = fz * z * n
    q = ap * ae * vf
    kc = kc11 * (hm / 1e-3) ** -mc
    p = kc * q / EFFICIENCY
    return [n, np.pi * D * n, fz, hm, vf, q, kc, p, p / (2 * np.pi * n)]


def exact(arguments):
    """The same in extended precision, the arc by its half angle, near the slot by the rest of it."""
    import numpy as np

    D, z, vc, h, ap, ae, kc11, mc = (column.astype(np.longdouble) for column in arguments)
    pi = 4 * np.arctan(np.longdouble(1))
    n = np.clip(vc / (pi * D), SLOWEST_SPEED, FASTEST_SPEED)
    x = ae / D
    s = np.where(x < 0.5, 2 * np.sqrt(x * (1 - x)), 1)
    fz = h / s
    rest = (D - ae) / D
    arc = np.where(x < 0.5, 2 * np.arcsin(np.sqrt(x)), pi - 2 * np.arcsin(np.sqrt(rest)))
    hm = 2 * fz * x / arc
    vf = fz * z * n
    q = ap * ae * vf
    kc = kc11 * (hm * 1000) ** -mc
    p = kc * q / np.longdouble(EFFICIENCY)
    return [n, pi * D * n, fz, hm, vf, q, kc, p, p / (2 * pi * n)]


def with_polars(frame):
    import math

    import polars as pl

    c = pl.col
    return (
        frame.lazy()
        .with_columns(
            n=(c.vc / (math.pi * c.D)).clip(SLOWEST_SPEED, FASTEST_SPEED),
            x=c.ae / c.D,
        )
        .with_columns(
            v=math.pi * c.D * c.n,
            fz=c.h / pl.when(c.x < 0.5).then(2 * (c.x * (1 - c.x)).sqrt()).otherwise(1.0),
        )
        .with_columns(hm=2 * c.fz * c.x / (1 - 2 * c.x).arccos(), vf=c.fz * c.z * c.n)
        .with_columns(q=c.ap * c.ae * c.vf, kc=c.kc11 * (c.hm / 1e-3).pow(-c.mc))
        .with_columns(p=c.kc * c.q / EFFICIENCY)
        .with_columns(m=c.p / (2 * math.pi * c.n))
        .select("n", "v", "fz", "hm", "vf", "q", "kc", "p", "m")
        .collect()
    )


class Kernel:
    """The kernel on given arrays; the pointers are made beforehand, for no side pays for them."""

    def __init__(self, path):
        import ctypes

        self.ctypes = ctypes
        self.library = ctypes.CDLL(str(path))
        pointer, size = ctypes.c_void_p, ctypes.c_size_t
        self.library.side_by_side.argtypes = [size, pointer, pointer, pointer, size, size]
        self.library.full_study.argtypes = [size, pointer, size, size]
        self.library.full_study.restype = ctypes.c_int64
        self.library.instruction_set.restype = ctypes.c_char_p
        self.library.instruction_set.argtypes = [size]
        self.sets = []
        while name := self.library.instruction_set(len(self.sets)):
            self.sets.append(name.decode())

    def columns(self, arrays):
        pointer = self.ctypes.c_void_p
        return (pointer * len(arrays))(*[array.ctypes.data for array in arrays])

    def call(self, arguments, results, status, threads, instruction_set):
        rows = len(status)
        given, out = self.columns(arguments), self.columns(results)
        where = status.ctypes.data

        def run():
            failed = self.library.side_by_side(
                rows, given, out, where, threads, instruction_set
            )
            if failed:
                raise RuntimeError(f"the kernel gave {failed}")

        return run


    def full_study(self, cuts, threads, instruction_set):
        rows, given = len(cuts[0]), self.columns(cuts)

        def run():
            good = self.library.full_study(rows, given, threads, instruction_set)
            if good < 0.9 * rows:
                raise RuntimeError(f"the full study found {good} cuts in {rows} rows")

        return run


def shared_out(pool, threads, rows, one):
    """Runs `one(first, last)` on equal shares of the rows, one to a thread."""
    cuts = [rows * share // threads for share in range(threads + 1)]
    return lambda: list(pool.map(one, cuts[:-1], cuts[1:]))


def compiled_loop(path, arguments, results, pool, threads):
    import ctypes

    loop = ctypes.CDLL(str(path)).side_milling
    loop.argtypes = [ctypes.c_size_t] + [ctypes.c_void_p] * (ARGUMENTS + RESULTS)
    loop.restype = None
    addresses = [column.ctypes.data for column in arguments + results]

    def one(first, last):
        loop(last - first, *[address + 8 * first for address in addresses])

    return shared_out(pool, threads, len(arguments[0]), one)


def copy(arguments, results, pool, threads):
    """Reads nine columns and writes nine: the traffic of the kernel and one column more."""
    import numpy as np

    def one(first, last):
        for index, result in enumerate(results):
            np.copyto(result[first:last], arguments[index % ARGUMENTS][first:last])

    return shared_out(pool, threads, len(arguments[0]), one)


def best_and_median(seconds, rows):
    ordered = sorted(seconds)
    return [ordered[0] / rows * 1e9, ordered[len(ordered) // 2] / rows * 1e9]


def deviation(results, reference):
    import numpy as np

    return max(
        float(np.max(np.abs((a - b) / b))) for a, b in zip(results, reference, strict=True)
    )


def measure_sides(given):
    import time

    import numpy as np
    import polars as pl

    rows, cores = given.rows, given.cores
    pool = ThreadPoolExecutor(cores)
    kernel = Kernel(given.kernel)
    arguments = draw(rows)
    frame = pl.DataFrame(dict(zip("D z vc h ap ae kc11 mc".split(), arguments)))
    status = np.zeros(rows, np.int32)
    places = {}

    def place(name):
        return places.setdefault(name, [np.zeros(rows) for _ in range(RESULTS)])

    def fresh():
        out = [np.empty(rows) for _ in range(RESULTS)]
        codes = np.empty(rows, np.int32)
        kernel.call(arguments, out, codes, cores, len(kernel.sets) - 1)()
        return out

    sides = {}
    for index, name in reversed(list(enumerate(kernel.sets))):
        label = f"Gullet, {name}"
        sides[label] = kernel.call(arguments, place(label), status, cores, index)
    sides["Gullet, into new arrays"] = fresh
    sides["numpy"] = lambda: with_numpy(arguments)
    sides["polars"] = lambda: with_polars(frame)
    for label, name in [
        ("C, -ffast-math and vector library", "libloop_fast.so"),
        ("C, without these", "libloop_plain.so"),
    ]:
        sides[label] = compiled_loop(
            given.loops / name, arguments, place(label), pool, cores
        )
    sides["copy"] = copy(arguments, place("copy"), pool, cores)
    cuts = draw_cuts(rows)
    for index, name in reversed(list(enumerate(kernel.sets))):
        sides[f"full study, {name}"] = kernel.full_study(cuts, cores, index)

    by_numpy, by_exact = with_numpy(arguments), exact(arguments)
    answers = {}
    for name, side in sides.items():
        answer = side()
        if name.startswith("full study"):
            continue
        if name == "polars":
            answer = [column.to_numpy() for column in answer.get_columns()]
        answers[name] = places.get(name) or answer
    if status.any():
        raise RuntimeError("the kernel refused rows")
    bits = {
        b"".join(column.tobytes() for column in answers[name])
        for name in sides
        if name.startswith("Gullet")
    }
    if len(bits) != 1:
        raise RuntimeError("the instruction sets differ")

    compared = answers.keys() - {"copy"}
    times = {name: [] for name in sides}
    order = list(sides)
    for turn in range(given.rounds):
        for name in order[turn % len(order) :] + order[: turn % len(order)]:
            start = time.perf_counter()
            sides[name]()
            times[name].append(time.perf_counter() - start)
    return {
        name: {
            "ns": best_and_median(times[name], rows),
            "from_numpy": deviation(answers[name], by_numpy) if name in compared else None,
            "from_exact": deviation(answers[name], by_exact) if name in compared else None,
        }
        for name in sides
    }


def memory(key):
    for line in Path("/proc/self/status").read_text().splitlines():
        if line.startswith(key):
            return int(line.split()[1])
    raise RuntimeError(key)


def available_kib():
    for line in Path("/proc/meminfo").read_text().splitlines():
        if line.startswith("MemAvailable"):
            return int(line.split()[1])
    raise RuntimeError("MemAvailable")


def measure_growth(given):
    """Time a row from a thousand rows to a hundred million, and memory beside the columns."""
    import time

    import numpy as np

    kernel = Kernel(given.kernel)
    drawn = draw_cuts(100_000) if given.measure == "full-growth" else draw(100_000)
    full = given.measure == "full-growth"
    best = len(kernel.sets) - 1
    columns = 3 if full else ARGUMENTS + RESULTS + 0.5
    table = []
    for power in range(3, 9):
        rows = 10**power
        if rows > given.largest:
            break
        if 1.3 * rows * 8 * columns / 1024 > available_kib():
            table.append({"rows": rows, "skipped": True})
            continue
        arguments = [np.resize(column, rows) for column in drawn]
        results, status = [], None
        if full:
            run = kernel.full_study(arguments, given.cores, best)
        else:
            results = [np.zeros(rows) for _ in range(RESULTS)]
            status = np.zeros(rows, np.int32)
            run = kernel.call(arguments, results, status, given.cores, best)
        run()
        # 5 resets the peak to what is resident now.
        Path("/proc/self/clear_refs").write_text("5")
        before = memory("VmRSS")
        run()
        beside = memory("VmHWM") - before
        seconds = []
        calls = max(1, 100_000 // rows)
        for _ in range(max(3, min(200, 20_000_000 // (rows * calls)))):
            start = time.perf_counter()
            for _ in range(calls):
                run()
            seconds.append((time.perf_counter() - start) / calls)
        table.append({"rows": rows, "ns": best_and_median(seconds, rows), "beside_kib": beside})
        del arguments, results, status, run
    return table


def in_own_process(given, what, cores):
    command = [sys.executable, __file__, "--measure", what, "--cores", str(cores)]
    command += ["--kernel", str(given.kernel), "--loops", str(given.loops)]
    command += ["--rows", str(given.rows), "--rounds", str(given.rounds)]
    command += ["--largest", str(given.largest)]
    done = subprocess.run(command, check=True, stdout=subprocess.PIPE, text=True)
    return json.loads(done.stdout)


def print_sides(measured, rows, cores):
    print(f"\n{rows} rows, {cores} {'core' if cores == 1 else 'cores'}")
    reference = next(iter(measured.values()))["ns"]
    print(
        f"| {'':33} | best, ns a row | median | best to Gullet's | median to Gullet's "
        "| off numpy | off extended precision |"
    )
    print("|---|---|---|---|---|---|---|")
    for name, side in measured.items():
        best, median = side["ns"]
        far = [
            "" if value is None else f"{value:.1e}"
            for value in (side["from_numpy"], side["from_exact"])
        ]
        print(
            f"| {name:33} | {best:.1f} | {median:.1f} | {best / reference[0]:.2f} "
            f"| {median / reference[1]:.2f} | {far[0]} | {far[1]} |"
        )


def print_growth(what, tables):
    print(f"\nGrowth of {what}, best; memory is the peak beside arguments and results")
    heads = " | ".join(f"{cores} threads, ns a row | memory, KiB" for cores in tables)
    print(f"| rows | {heads} |")
    print("|---|" + "---|---|" * len(tables))
    for lines in zip(*tables.values(), strict=True):
        cells = []
        for line in lines:
            skipped = line.get("skipped")
            cells.append("no memory for it" if skipped else f"{line['ns'][0]:.1f}")
            cells.append("" if skipped else str(line["beside_kib"]))
        print(f"| {lines[0]['rows']} | " + " | ".join(cells) + " |")


def main():
    given = options()
    if given.measure:
        usable = sorted(os.sched_getaffinity(0))
        os.sched_setaffinity(0, set(usable[-given.cores :]))
        measure = measure_sides if given.measure == "sides" else measure_growth
        json.dump(measure(given), sys.stdout)
        return
    cores = sorted({1, len(os.sched_getaffinity(0))})
    print(f"load of the machine before: {os.getloadavg()[0]:.1f}")
    for count in () if given.growth_alone else cores:
        print_sides(in_own_process(given, "sides", count), given.rows, count)
    if not given.no_growth:
        for measure, what in [
            ("growth", "Gullet"),
            ("full-growth", "the full study in batches of 32 Ki rows"),
        ]:
            tables = {count: in_own_process(given, measure, count) for count in cores}
            print_growth(what, tables)
    print(f"load of the machine after: {os.getloadavg()[0]:.1f}")


if __name__ == "__main__":
    main()
