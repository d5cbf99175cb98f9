#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Fits leak and settling to traces with scipy: what tests/core/tightness/trace_scipy_test.cpp is held against.

    HEARTH_TRACES_INTO=FOLDER test_core_tightness --gtest_filter='TraceScipy*'
    /usr/bin/python3 tests/data/scipy/fit_traces.py FOLDER > tests/data/scipy/leaks.csv

A trace is FOLDER/SEED.csv: a line "litres,step", then a line "seconds,mbar" for each reading. Nothing here is taken
from the fit in core/tightness; the formulas are a closed pipe's (ideal gas, laminar leak, exponential settling).
"""

import pathlib
import sys

import numpy
from scipy.optimize import least_squares

AT_MBAR = 20.0
REFERENCE_MBAR = 1013.25


def curve(place, t):
    start, size, log_time, decay = place
    time = numpy.exp(log_time)
    apart = 1.0 - decay * time
    return start * numpy.exp(-decay * t) + size * (numpy.exp(-t / time) - numpy.exp(-decay * t)) / apart


def fit(t, p, step):
    """The decay (1/s) and its standard error: Huber's loss, from several settling times, the best of them."""
    best = None
    scale = max(1.5 * step, 0.005)
    for time in (5.0, 15.0, 40.0, 100.0):
        for size in (-1.0, 1.0):
            begin = [p[0], size, numpy.log(time), 1e-4]
            found = least_squares(
                lambda place: curve(place, t) - p, begin, loss="huber", f_scale=scale, method="trf",
                x_scale=[1.0, 1.0, 1.0, 1e-4], bounds=([-100, -60, numpy.log(2.0), -0.2], [100, 60, numpy.log(400.0), 0.2]),
            )
            if best is None or found.cost < best.cost:
                best = found
    spread = numpy.linalg.pinv(best.jac.T @ best.jac) * 2.0 * best.cost / (len(t) - 4)
    return best.x[3], numpy.sqrt(spread[3, 3])


def main():
    print("seed,litres_an_hour,standard_error")
    for path in sorted(pathlib.Path(sys.argv[1]).glob("*.csv"), key=lambda one: int(one.stem)):
        lines = path.read_text().split()
        litres, step = (float(part) for part in lines[0].split(","))
        t, p = numpy.array([[float(part) for part in line.split(",")] for line in lines[1:]]).T
        decay, error = fit(t, p, step)
        to_leak = litres * 3600.0 * AT_MBAR / REFERENCE_MBAR
        print(f"{path.stem},{decay * to_leak:.6f},{error * to_leak:.6f}")


if __name__ == "__main__":
    main()
