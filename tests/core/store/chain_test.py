#!/usr/bin/python3
# SPDX-License-Identifier: Apache-2.0
"""The chain of hashes of a record file, worked out anew from what core/store/chain.h says about it.

chain_test.py <record file>: prints the number of entries and the last hash of each device, or what is wrong.
"""
import hashlib
import sqlite3
import sys

TABLES = ("revision", "mark", "mark_change", "removal", "sheet", "picture")


def line(name, value):
    if isinstance(value, bytes):
        kind, raw = b"b", value
    elif isinstance(value, int):
        kind, raw = b"i", str(value).encode()
    else:
        kind, raw = b"t", value.encode()
    return name.encode() + b"=" + kind + str(len(raw)).encode() + b":" + raw + b"\n"


def contents_of(db, entry):
    for table in TABLES:
        row = db.execute(f"SELECT * FROM {table} WHERE entry = ?", (entry,)).fetchone()
        if row is not None:
            columns = {name: row[name] for name in row.keys() if name != "entry"}
            yield table, columns


def check(path):
    db = sqlite3.connect(f"file:{path}?mode=ro", uri=True)
    db.row_factory = sqlite3.Row
    for device in db.execute("SELECT device, id FROM device ORDER BY device").fetchall():
        previous = bytes(32)
        count = 0
        for entry in db.execute("SELECT * FROM entry WHERE device = ? ORDER BY seq", (device["device"],)).fetchall():
            (table, columns), = contents_of(db, entry["entry"])
            # Of another device's entries some may not be here.
            previous = previous if entry["before"] is None else entry["before"]
            content = previous
            content += line("device", device["id"]) + line("seq", entry["seq"])
            content += line("unix_ms", entry["unix_ms"]) + line("utc_offset_min", entry["utc_offset_min"])
            content += line("table", table)
            for name in sorted(columns, key=str.encode):
                if columns[name] is not None:
                    content += line(name, columns[name])
            previous = hashlib.sha256(content).digest()
            if previous != entry["hash"]:
                sys.exit(f"entry {entry['seq']} of {device['id']} ({table}): {previous.hex()}, not {entry['hash'].hex()}")
            count += 1
        print(count, previous.hex())


if __name__ == "__main__":
    check(sys.argv[1])
