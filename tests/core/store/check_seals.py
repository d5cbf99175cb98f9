# SPDX-License-Identifier: GPL-3.0-or-later
"""Verifies the seals over a store's change log with nothing but Python's standard library, by the form that
core/store/sealing.h tells.

usage: check_seals.py STORE    prints "whole: N lines", or "broken: P" with the position of the first line under the
first seal that does not hold.
"""
import hashlib
import sqlite3
import sys
import uuid


def digest(*parts):
    whole = b""
    for part in parts:
        if part is None:
            whole += b"-,"
        else:
            data = str(part).encode()
            whole += str(len(data)).encode() + b":" + data + b","
    return hashlib.sha256(whole).hexdigest()


def key(data):
    return None if data is None else str(uuid.UUID(bytes=data))


def line_digest(row):
    position, row_id, group, store, visit, premises, table, row_key, field, by, at, salt, before, after, texts = row
    if texts is None:
        texts = digest(None if salt is None else salt.hex(), before, after)
    return digest(position, key(row_id), key(group), key(store), key(visit), key(premises), table, row_key, field, by,
                  at, texts)


def check(store):
    lines = store.execute(
        "SELECT position, id, group_id, store, visit, premises, table_name, row_id, field, by, at, salt, before, after,"
        " texts FROM changes ORDER BY position").fetchall()
    previous, done = "", 0
    for position, names, sealed in store.execute(
            "SELECT position, previous, digest FROM change_seals ORDER BY position").fetchall():
        under = [row for row in lines if done < row[0] <= position]
        if names != previous or sealed != digest(previous, position, *[line_digest(row) for row in under]):
            return "broken: %d" % (under[0][0] if under else position)
        previous, done = sealed, position
    return "whole: %d lines" % len(lines) if not lines or lines[-1][0] == done else "broken: %d" % (done + 1)


if __name__ == "__main__":
    print(check(sqlite3.connect("file:" + sys.argv[1] + "?mode=ro", uri=True)))
