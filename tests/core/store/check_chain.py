# SPDX-License-Identifier: GPL-3.0-or-later
"""Verifies the records of a store with nothing but Python's standard library: the chain is no secret of the program's.

usage: check_chain.py STORE    prints "whole: N records", or what is wrong. A record that was let go has an event that
says so, and neither contents nor pages: its header holds the chain together.
"""
import hashlib
import json
import sqlite3
import sys


def sha256(data):
    return hashlib.sha256(data).hexdigest()


def header_digest(header):
    texts = {key: str(value) for key, value in header.items()}
    return sha256(json.dumps(texts, sort_keys=True, separators=(",", ":"), ensure_ascii=False).encode())


def check(store):
    fields = ["series", "number", "record", "revision", "kind", "issued_at", "snapshot_digest", "pdf_digest", "previous"]
    count, gone = 0, 0
    for series, follows in store.execute("SELECT series, follows_head FROM series ORDER BY position").fetchall():
        previous, number = follows, 1
        rows = store.execute(
            "SELECT h." + ", h.".join(fields) + ", (SELECT count(*) FROM record_events AS e"
            " WHERE e.record = h.id AND e.event = 'payload erased'), s.json, p.pdf FROM record_headers AS h"
            " JOIN record_snapshots AS s ON s.record = h.id JOIN record_pdfs AS p ON p.record = h.id"
            " WHERE h.series = ? ORDER BY h.number", (series,)).fetchall()
        for row in rows:
            header = dict(zip(fields, row))
            if header["number"] != number or header["previous"] != previous:
                return "does not follow: " + header["record"]
            erased = row[-3] == 1 and row[-2] == b"" and row[-1] == b""
            gone += erased
            if not erased and (sha256(row[-2]) != header["snapshot_digest"] or sha256(row[-1]) != header["pdf_digest"]):
                return "altered: " + header["record"]
            previous, number, count = header_digest(header), number + 1, count + 1
    return "whole: %d records" % count + (", %d of them let go" % gone if gone else "")


if __name__ == "__main__":
    print(check(sqlite3.connect("file:" + sys.argv[1] + "?mode=ro", uri=True)))
