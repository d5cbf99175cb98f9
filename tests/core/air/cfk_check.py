# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes cfk_check.tsv beside itself: the Coburn-Forster-Kane equation integrated as a differential equation
by the library scipy (Debian: python3-scipy; run it with Debian's own python3), with nothing of it solved by
hand. The constants are those of core/air/cohb.h."""
import pathlib

from scipy.integrate import solve_ivp

FOLDER = pathlib.Path(__file__).parent
CAPACITY = 0.2  # ml/ml
BLOOD = 5500.0  # ml
PRODUCTION = 0.007  # ml/min
AFFINITY = 218.0
OXYGEN = 100.0  # mmHg
DRY_AIR = 760.0 - 47.0  # mmHg
START = 0.8  # %
BREATHING = {"rest": (4000.0, 40.0), "light": (10000.0, 40.0)}  # ml/min, ml/(min mmHg)

# Minutes and ppm, straight lines between.
SERIES = [
    [(0, 30), (60, 30)],
    [(0, 30), (480, 30)],
    [(0, 50), (90, 50)],
    [(0, 87), (15, 87)],
    [(0, 100), (40, 100)],
    [(0, 200), (60, 200)],
    [(0, 300), (15, 300)],
    [(0, 2000), (30, 2000)],
    [(0, 0), (480, 0)],
    [(0, 0), (10, 400), (40, 60), (55, 60), (60, 900), (90, 0), (240, 0)],
]


def integrate(series, ventilation, diffusion):
    resistance = 1 / diffusion + DRY_AIR / ventilation
    bound = START / 100 * CAPACITY
    for (t0, x0), (t1, x1) in zip(series, series[1:]):

        def change(t, c):
            inhaled = (x0 + (x1 - x0) * (t - t0) / (t1 - t0)) * 1e-6 * DRY_AIR
            back = c[0] * OXYGEN / (AFFINITY * (CAPACITY - c[0]))
            return [(PRODUCTION + (inhaled - back) / resistance) / BLOOD]

        bound = solve_ivp(change, (t0, t1), [bound], method="DOP853", rtol=1e-11, atol=1e-15).y[0, -1]
    return 100 * bound / CAPACITY


with open(FOLDER / "cfk_check.tsv", "w", encoding="utf-8") as table:
    print("# minutes:ppm ...\tbreathing\tCOHb %", file=table)
    for series in SERIES:
        text = " ".join(f"{t}:{x}" for t, x in series)
        for name, breathing in BREATHING.items():
            print(f"{text}\t{name}\t{integrate(series, *breathing):.6f}", file=table)
