#!/usr/bin/python3
# SPDX-License-Identifier: Apache-2.0
"""A bundle checked from what its schema says about it, by other means than the program's.

bundle_check.py <bundle>: prints the SHA-256 of its content and the number of its entries, or what is wrong.
"""
import base64
import hashlib
import json
import sys


def line(name, value):
    if isinstance(value, dict):
        kind, raw = b"b", base64.b64decode(value["base64"], validate=True)
    elif isinstance(value, int):
        kind, raw = b"i", str(value).encode()
    else:
        kind, raw = b"t", value.encode()
    return name.encode() + b"=" + kind + str(len(raw)).encode() + b":" + raw + b"\n"


def check(path):
    with open(path, "rb") as file:
        lines = file.read().splitlines(keepends=True)
    bundle = json.loads(b"".join(lines))
    told = hashlib.sha256(b"".join(lines[1:-1])).hexdigest()
    if told != bundle["sha256"]:
        sys.exit(f"sha256 {told}, not {bundle['sha256']}")
    last = None
    for entry in bundle["content"]["entries"]:
        follows = last and (last["device"], last["number"] + 1) == (entry["device"], entry["number"])
        first = bytes(32).hex() if entry["number"] == 1 else None
        before = entry.get("before", last["hash"] if follows else first)
        content = bytes.fromhex(before)
        content += line("device", entry["device"]) + line("seq", entry["number"])
        content += line("unix_ms", entry["unix_ms"]) + line("utc_offset_min", entry["utc_offset_min"])
        content += line("table", entry["table"])
        for name in sorted(entry["fields"], key=str.encode):
            content += line(name, entry["fields"][name])
        if hashlib.sha256(content).hexdigest() != entry["hash"]:
            sys.exit(f"entry {entry['number']} of {entry['device']} is not what was written")
        last = entry
    print(told, len(bundle["content"]["entries"]))


if __name__ == "__main__":
    check(sys.argv[1])
