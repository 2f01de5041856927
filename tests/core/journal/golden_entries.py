# SPDX-License-Identifier: GPL-3.0-or-later
"""Works out the entries of version 1 that test_entrybytes expects, apart from the code under test.

Run with the header that holds them, it fails where they differ; run alone, it prints the header.

CBOR is written down here after RFC 8949, section 4.2.1; BLAKE2b comes from Python's hashlib. The salt counts 0, 1, 2 … on from
one entry to the next.
"""
import hashlib
import re
import sys
import textwrap


def head(major, count):
    for size, code in ((0, count), (1, 24), (2, 25), (4, 26), (8, 27)):
        if size == 0 and count < 24:
            return bytes([major << 5 | count])
        if size and count < 256 ** size:
            return bytes([major << 5 | code]) + count.to_bytes(size, "big")
    raise ValueError(count)


def cbor(value):
    if value is None or isinstance(value, bool):
        return {False: b"\xf4", True: b"\xf5", None: b"\xf6"}[value]
    if isinstance(value, int):
        return head(0, value) if value >= 0 else head(1, -1 - value)
    if isinstance(value, bytes):
        return head(2, len(value)) + value
    if isinstance(value, str):
        return head(3, len(value.encode())) + value.encode()
    if isinstance(value, list):
        return head(4, len(value)) + b"".join(map(cbor, value))
    return head(5, len(value)) + b"".join(cbor(key) + cbor(value[key]) for key in sorted(value))


def blake(data):
    return hashlib.blake2b(data, digest_size=32).digest()


ORIGIN = blake(bytes(range(32)))[:16]
ATHLETE, KIT = b"\xa1" * 16, b"\xc1" * 16
BODIES = [
    # The name of an athlete, on a device whose clock fits.
    {0: 1, 1: 1, 2: 1795600000000, 6: 1, 7: ATHLETE, 8: ATHLETE, 9: 20782, 10: "Europe/Berlin", 12: 1, 14: "Ida Marrow"},
    # A bar mark of that athlete, replacing two heads, on a device whose clock is 30 years behind what it has seen.
    {0: 1, 1: 1, 2: 1795600000000, 3: 7, 4: True, 5: 848915200000, 6: 1, 7: ATHLETE, 8: ATHLETE, 9: -1,
     11: [b"\x01" * 32, b"\x02" * 32], 12: 70000, 13: "squat", 14: [482600, "19", 14]},
    # A thing of the kit, removed.
    {0: 1, 1: 4, 2: -1, 6: 3, 7: KIT, 9: 0, 14: True},
    # A measurement: a map in a map.
    {0: 1, 1: 2, 2: 0, 3: 4294967295, 6: 5, 7: KIT, 9: 20782, 14: {1: [102058283, "225", 3], 24: {0: None, 256: -25}}},
    # Two hours and a day taken off the entries 3 to 5 of the device's second life.
    {0: 1, 1: 7, 2: 1795600000000, 6: 9, 7: ORIGIN, 9: 20782, 14: {1: 2, 2: 3, 3: 5, 4: -7200000, 5: -1}},
]


def entries():
    previous, salt = bytes(32), bytes(range(16))
    for sequence, body in enumerate(BODIES, 1):
        payload = salt + cbor(body)
        header = b"\1\0\0\0" + (2).to_bytes(4, "big") + sequence.to_bytes(8, "big") + ORIGIN + previous + blake(payload)
        previous = blake(header)
        salt = bytes(byte + 16 for byte in salt)
        yield header + payload, previous


def header():
    yield """// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace journaling {

/// A chain of entries of version 1 as golden_entries.py works it out, and the id of the last; these have to be readable for ever."""
    last = b""
    yield "inline constexpr const char* entriesOfVersion1[] = {"
    for entry, last in entries():
        yield "\n".join(f'    "{line}"' for line in textwrap.wrap(entry.hex(), 110)) + ","
    yield f"}};\ninline constexpr auto lastIdOfVersion1 =\n    \"{last.hex()}\";\n\n}}"


if __name__ == "__main__":
    # RFC 7693, appendix A, gives BLAKE2b-512 of "abc"; RFC 8949, appendix A, these items.
    assert hashlib.blake2b(b"abc").hexdigest().startswith("ba80a53f981c4d0d6a2797b69f12f6e9")
    assert cbor([1, [2, 3], {4: -1000}]).hex() == "8301820203a1043903e7"
    text = "\n".join(header()) + "\n"
    if len(sys.argv) > 1:
        with open(sys.argv[1], encoding="utf-8") as held:
            sys.exit(0 if held.read() == text else "the header holds other bytes")
    sys.stdout.write(text)
