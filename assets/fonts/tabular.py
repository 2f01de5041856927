#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes "Steelyard Text" from Inter: the ten digits are the tabular ones by default, and of one width to the unit.

Qt 6.4 cannot switch OpenType features on from QML, so the switch is made once, in the font's character map.
Usage: tabular.py FOLDER_WITH_INTER OUT_FOLDER
"""
import struct
import sys
from pathlib import Path

FAMILY = "Steelyard Text"
STYLES = ("Regular", "Medium", "SemiBold", "Bold")
DIGITS = range(ord("0"), ord("9") + 1)


def u16(d, o):
    return struct.unpack_from(">H", d, o)[0]


def u32(d, o):
    return struct.unpack_from(">I", d, o)[0]


def tables(d):
    return {d[o:o + 4].decode(): d[u32(d, o + 8):u32(d, o + 8) + u32(d, o + 12)]
            for o in range(12, 12 + 16 * u16(d, 4), 16)}


def read_cmap(t):
    """Code point to glyph, out of the table's 32-bit subtables."""
    best = {}
    for i in range(u16(t, 2)):
        off = u32(t, 4 + 8 * i + 4)
        if u16(t, off) == 12:
            for g in range(u32(t, off + 12)):
                s, e, gid = struct.unpack_from(">III", t, off + 16 + 12 * g)
                best.update({c: gid + c - s for c in range(s, e + 1)})
    return best


def coverage(t, o):
    if u16(t, o) == 1:
        return [u16(t, o + 4 + 2 * i) for i in range(u16(t, o + 2))]
    out = []
    for i in range(u16(t, o + 2)):
        s, e = u16(t, o + 4 + 6 * i), u16(t, o + 6 + 6 * i)
        out += range(s, e + 1)
    return out


def single(t, o):
    """One single-substitution subtable as a map of glyphs."""
    cov = coverage(t, o + u16(t, o + 2))
    if u16(t, o) == 1:
        return {g: (g + u16(t, o + 4)) & 0xFFFF for g in cov}
    return {g: u16(t, o + 6 + 2 * i) for i, g in enumerate(cov)}


def feature(t, tag):
    """All single substitutions of a feature, extension lookups followed."""
    fl, ll = u16(t, 6), u16(t, 8)
    found = {}
    for i in range(u16(t, fl)):
        rec = fl + 2 + 6 * i
        if t[rec:rec + 4] != tag:
            continue
        f = fl + u16(t, rec + 4)
        for j in range(u16(t, f + 2)):
            lk = ll + u16(t, ll + 2 + 2 * u16(t, f + 4 + 2 * j))
            for k in range(u16(t, lk + 4)):
                sub, kind = lk + u16(t, lk + 6 + 2 * k), u16(t, lk)
                if kind == 7:
                    kind, sub = u16(t, sub + 2), sub + u32(t, sub + 4)
                if kind == 1:
                    found.update(single(t, sub))
    return found


def write_cmap(m):
    groups = []
    for c in sorted(m):
        if groups and groups[-1][1] == c - 1 and groups[-1][2] + c - groups[-1][0] == m[c]:
            groups[-1][1] = c
        else:
            groups.append([c, c, m[c]])
    body = b"".join(struct.pack(">III", *g) for g in groups)
    sub = struct.pack(">HHIII", 12, 0, 16 + len(body), 0, len(groups)) + body
    return struct.pack(">HHHHIHHI", 0, 2, 0, 4, 20, 3, 10, 20) + sub


def read_names(t):
    base = u16(t, 4)
    rows = [struct.unpack_from(">6H", t, 6 + 12 * i) for i in range(u16(t, 2))]
    return {r[3]: t[base + r[5]:base + r[5] + r[4]].decode("utf-16-be") for r in rows if r[0] == 3}


def write_names(old):
    """The family renamed, as its licence asks; the copyright line stays."""
    style = old.get(17, old.get(2))
    full = f"{FAMILY} {style}"
    plain = style in ("Regular", "Bold")
    names = {0: old[0], 1: FAMILY if plain else full, 2: style if plain else "Regular", 3: "tabular;" + full, 4: full,
             5: "Version 4.000", 6: full.replace(" ", ""), 13: "SIL Open Font License 1.1", 16: FAMILY, 17: style}
    records, store = [], b""
    for number, text in names.items():
        raw = text.encode("utf-16-be")
        records.append(struct.pack(">6H", 3, 1, 0x409, number, len(raw), len(store)))
        store += raw
    return struct.pack(">HHH", 0, len(records), 6 + 12 * len(records)) + b"".join(records) + store


def advances(tabs, glyphs):
    last = u16(tabs["hhea"], 34) - 1
    return [u16(tabs["hmtx"], 4 * min(g, last)) for g in glyphs]


def even_out(tabs, glyphs):
    """Inter's tabular digits differ by up to five units of 2816; the widest advance serves all, so that no rounding can part them."""
    widest, raw = max(advances(tabs, glyphs)), bytearray(tabs["hmtx"])
    for g in glyphs:
        if g >= u16(tabs["hhea"], 34):
            raise ValueError("a digit shares its advance with other glyphs")
        struct.pack_into(">H", raw, 4 * g, widest)
    tabs["hmtx"] = bytes(raw)


def checksum(d):
    pad = d + b"\0" * (-len(d) % 4)
    return sum(struct.unpack(f">{len(pad) // 4}I", pad)) & 0xFFFFFFFF


def assemble(flavour, tabs):
    n = len(tabs)
    tabs = dict(tabs, head=tabs["head"][:8] + b"\0\0\0\0" + tabs["head"][12:])
    p = 1 << (n.bit_length() - 1)
    out = flavour + struct.pack(">4H", n, p * 16, p.bit_length() - 1, n * 16 - p * 16)
    at, body, head = 12 + 16 * n, b"", 0
    for tag in sorted(tabs):
        d = tabs[tag]
        head = at + len(body) if tag == "head" else head
        out += tag.encode() + struct.pack(">III", checksum(d), at + len(body), len(d))
        body += d + b"\0" * (-len(d) % 4)
    made = bytearray(out + body)
    struct.pack_into(">I", made, head + 8, (0xB1B0AFBA - checksum(bytes(made))) & 0xFFFFFFFF)
    return bytes(made)


def convert(data):
    """The font file `data` with tabular digits, renamed; the same input gives the same bytes."""
    tabs = tables(data)
    cmap, tabular = read_cmap(tabs["cmap"]), feature(tabs["GSUB"], b"tnum")
    for c in DIGITS:
        cmap[c] = tabular.get(cmap[c], cmap[c])
    even_out(tabs, [cmap[c] for c in DIGITS])
    tabs["cmap"], tabs["name"] = write_cmap(cmap), write_names(read_names(tabs["name"]))
    tabs.pop("DSIG", None)
    return assemble(data[:4], tabs)


def main(source, out):
    for style in STYLES:
        made = convert((Path(source) / f"Inter-{style}.otf").read_bytes())
        (Path(out) / f"SteelyardText-{style}.otf").write_bytes(made)


if __name__ == "__main__":
    main(*sys.argv[1:3])
