# SPDX-License-Identifier: GPL-3.0-or-later
"""Adds months to dates with dateutil: reads lines "YYYY-MM-DD MONTHS", prints "YYYY-MM-DD" for each."""
import sys
from datetime import date

from dateutil.relativedelta import relativedelta

for line in sys.stdin:
    day, months = line.split()
    print((date.fromisoformat(day) + relativedelta(months=int(months))).isoformat())
