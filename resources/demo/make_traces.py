#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes the demonstration's traces into scenario.json: invented pipes, stepped by the ideal gas law (moles and
temperature), seen by a gauge that shows hundredths of a millibar. Nothing of the program is used."""
import pathlib
import random
import re

BAROMETER = 1013.25  # mbar
EVERY = 0.5          # s
VOLUME = 9.386       # litres: a G4 meter and 9 m of 15 mm copper


def held(pressure, seconds, leak=0.0, kelvin=0.0, settles=30.0):
    """Pressures while the valve is shut; leak in l/h at 20 mbar (below nought: gas comes in at that rate)."""
    kelvin_now, base = 288.15, 288.15
    moles = (pressure + BAROMETER) / (base + kelvin)
    temperature = base + kelvin
    shown = []
    steps = 50
    for i in range(int(seconds / EVERY)):
        shown.append(moles * temperature - BAROMETER)
        for _ in range(steps):
            dt = EVERY / steps
            gauge = moles * temperature - BAROMETER
            out = leak * (gauge / 20.0 if leak > 0 else 1.0)
            moles -= out / 3600.0 / VOLUME * BAROMETER / base * dt
            temperature += (kelvin_now - temperature) / settles * dt
    return shown


def rising(start, end, seconds):
    count = int(seconds / EVERY)
    return [start + (end - start) * i / count for i in range(count)]


def whole(let_by, test):
    trace = [0.0] * int(4 / EVERY) + rising(0.0, let_by[0], 2) + let_by
    return trace + rising(trace[-1], test[0], 4) + test


def shown(trace, seed):
    lot = random.Random(seed)
    return " ".join("%.2f" % (round((p + lot.gauss(0, 0.006)) * 100) / 100 + 0.0) for p in trace)


def beside_the_stuck():
    """What another gauge on the same pipe saw, to a tenth."""
    return " ".join("%.1f" % (p + 0.0) for p in whole(held(8.6, 70), held(20.6, 190, kelvin=0.05, settles=35)))


def stuck():
    return " ".join(["0.00"] * 8 + ["%.2f" % p for p in rising(0.0, 8.6, 2)] + ["8.60"] * 528)


TRACES = {
    "It cools": shown(whole(held(8.7, 70), held(20.7, 190, kelvin=0.28, settles=35)), 1),
    "A small leak under warming": shown(
        whole(held(8.6, 70, leak=0.14), held(20.5, 190, leak=0.14, kelvin=-0.3, settles=80)), 2),
    "Let-by": shown(whole(held(8.5, 70, leak=-0.45), held(20.6, 190, leak=-0.1)), 3),
    "A stuck gauge": stuck(),
}


def main():
    path = pathlib.Path(__file__).with_name("scenario.json")
    text = path.read_text()
    for label, readings in TRACES.items():
        text, count = re.subn(r'("label": "%s".*?"readings": ")[^"]*(")' % label, r"\g<1>%s\g<2>" % readings, text,
                              count=1, flags=re.DOTALL)
        assert count == 1, label
    text, count = re.subn(r'("source": "gauge 2".*?"readings": ")[^"]*(")', r"\g<1>%s\g<2>" % beside_the_stuck(), text,
                          count=1, flags=re.DOTALL)
    assert count == 1, "the second gauge"
    path.write_text(text)


if __name__ == "__main__":
    main()
