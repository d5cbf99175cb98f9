# SPDX-License-Identifier: GPL-3.0-or-later
"""Prints "YYYY-MM-DD" of Easter Sunday for each year that is given, by dateutil."""
import sys

from dateutil.easter import easter

for year in sys.argv[1:]:
    print(easter(int(year)).isoformat())
