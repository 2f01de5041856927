#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Draws the two texture tiles (chain: staggered dots, band: slanted hatch) in ink and in chalk, at one and at two pixels a dp.

Usage: tiles.py OUT_FOLDER
"""
import struct
import sys
import zlib
from pathlib import Path

# grey of the strokes: ink on a light page, chalk on a dark one
GREYS = {"ink": 20, "chalk": 235}
FINE = 8  # samples a pixel, each way


def chunk(kind, data):
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))


def png(size, grey, alpha):
    """A tile as PNG; stored uncompressed inside, so that the bytes do not hang on a version of zlib."""
    raw = b"".join(b"\0" + b"".join(bytes((grey, grey, grey, alpha(x, y))) for x in range(size)) for y in range(size))
    return (b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", struct.pack(">IIBBBBB", size, size, 8, 6, 0, 0, 0))
            + chunk(b"IDAT", zlib.compress(raw, 0)) + chunk(b"IEND", b""))


def dots(x, y):
    """Two dots to a 12 dp tile, so that rows stand staggered."""
    return any((x - cx) ** 2 + (y - cy) ** 2 < 2.1 ** 2 for cx, cy in ((3.5, 3.5), (9.5, 9.5)))


def hatch(x, y):
    """One slanted stroke to an 8 dp tile, 2 dp wide across the page."""
    return (x + y) % 8 < 2


TILES = {"chain": (12, dots, 200), "band": (8, hatch, 190)}


def coverage(inside, scale):
    """How much of a pixel a shape covers, by fine sampling."""
    def share(px, py):
        hits = sum(inside((px + (i + 0.5) / FINE) / scale, (py + (j + 0.5) / FINE) / scale) for i in range(FINE) for j in range(FINE))
        return hits / FINE ** 2
    return share


def tiles():
    """Every tile as (file name, bytes)."""
    for kind, (size, inside, strength) in TILES.items():
        for ink, grey in GREYS.items():
            for scale in (1, 2):
                share = coverage(inside, scale)
                suffix = "" if scale == 1 else "@2x"
                yield f"{kind}-{ink}{suffix}.png", png(size * scale, grey, lambda x, y: round(strength * share(x, y)))


def main(out):
    for name, data in tiles():
        (Path(out) / name).write_bytes(data)


if __name__ == "__main__":
    main(*sys.argv[1:2])
