# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes, beside itself, two tables with the library iapws (Debian: python3-iapws); run it with Debian's own
python3. saturation_by_iapws.tsv: water's saturation pressure by the industrial formulation's saturation
equation and by the scientific formulation IAPWS-95, which is another equation altogether (it has no liquid
below 0.01 degrees C). dew_point_by_iapws.tsv: dew points of flue gas, its moles counted here."""
import pathlib
import warnings

warnings.simplefilter("ignore")
from iapws import IAPWS95  # noqa: E402
from iapws.iapws97 import _PSat_T, _TSat_P  # noqa: E402

FOLDER = pathlib.Path(__file__).parent
ATMOSPHERE = 101325.0  # Pa
OXYGEN_IN_AIR = 0.2095


def saturation():
    yield "# degrees C\tIAPWS-IF97, Pa\tIAPWS-95, Pa"
    for celsius in [*range(1, 100), 99.974, 59.20, 54.9, 54.1]:
        kelvin = celsius + 273.15
        yield f"{celsius}\t{_PSat_T(kelvin) * 1e6:.6f}\t{IAPWS95(T=kelvin, x=0).P * 1e6:.6f}"


def dew_point(carbon, hydrogen, oxygen_dry, celsius, humidity):
    """Burns one mole of a hydrocarbon with ever more air until the dry flue gas holds that much oxygen."""
    needed = carbon + hydrogen / 4
    least, most = needed, 100 * needed
    for _ in range(200):
        given = (least + most) / 2
        nitrogen = given * (1 - OXYGEN_IN_AIR) / OXYGEN_IN_AIR
        spare = given - needed
        if spare / (carbon + nitrogen + spare) < oxygen_dry:
            least = given
        else:
            most = given
    dry = carbon + nitrogen + spare
    vapour = humidity * _PSat_T(celsius + 273.15) * 1e6
    water = hydrogen / 2 + given / OXYGEN_IN_AIR * vapour / (ATMOSPHERE - vapour)
    return _TSat_P(ATMOSPHERE * water / (dry + water) / 1e6) - 273.15


def dew_points():
    yield "# gas\tO2 dry, %\tair, degrees C\trelative humidity, %\tdew point, degrees C"
    for gas, carbon, hydrogen in (("g20", 1, 4), ("propane", 3, 8), ("butane", 4, 10)):
        for oxygen in (0, 3, 4, 5, 6, 8, 12):
            for celsius, humidity in ((20, 0), (20, 50), (5, 90), (35, 80)):
                found = dew_point(carbon, hydrogen, oxygen / 100, celsius, humidity / 100)
                yield f"{gas}\t{oxygen}\t{celsius}\t{humidity}\t{found:.6f}"


for name, rows in (("saturation_by_iapws.tsv", saturation()), ("dew_point_by_iapws.tsv", dew_points())):
    (FOLDER / name).write_text("\n".join(rows) + "\n", encoding="utf-8")
