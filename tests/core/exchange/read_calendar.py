# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads an iCalendar file with python3-icalendar and says what is in it, one line an entry: uid, sequence, start,
end, status, minutes of its alarms, summary, description, location."""
import sys
from datetime import timedelta

from icalendar import Calendar

with open(sys.argv[1], "rb") as file:
    raw = file.read()
for line in raw.split(b"\r\n"):
    assert len(line) <= 75, "a line of more than 75 octets"
assert raw.replace(b"\r\n", b"").count(b"\n") == 0, "a line that does not end in CRLF"
whole = Calendar.from_ical(raw)
assert str(whole["VERSION"]) == "2.0" and whole["PRODID"]
for event in whole.walk("VEVENT"):
    assert event["DTSTAMP"].dt.utcoffset() == timedelta(0)
    alarms = [str(int(-alarm["TRIGGER"].dt / timedelta(minutes=1))) for alarm in event.walk("VALARM")]
    fields = [
        str(event["UID"]),
        str(event["SEQUENCE"]),
        event["DTSTART"].dt.isoformat(),
        event["DTEND"].dt.isoformat(),
        str(event["STATUS"]),
        ",".join(alarms),
        str(event["SUMMARY"]),
        str(event.get("DESCRIPTION", "")).replace("\n", "|"),
        str(event.get("LOCATION", "")),
    ]
    print("\t".join(fields))
