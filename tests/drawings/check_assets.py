#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The committed typeface and tiles are what their scripts make, and the typeface does what it is for.

Usage: check_assets.py ASSETS_FOLDER [INTER_FOLDER]
"""
import hashlib
import importlib.util
import sys
import unittest
from pathlib import Path

ASSETS = Path(sys.argv[1])
INTER = Path(sys.argv[2] if len(sys.argv) > 2 else "/usr/share/fonts/opentype/inter")


def script(path):
    spec = importlib.util.spec_from_file_location(path.stem, path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


tabular = script(ASSETS / "fonts/tabular.py")
tiles = script(ASSETS / "tiles/tiles.py")


class Typeface(unittest.TestCase):
    def fonts(self):
        for style in tabular.STYLES:
            yield style, (ASSETS / f"fonts/SteelyardText-{style}.otf").read_bytes()

    def test_digits_have_one_width(self):
        for style, data in self.fonts():
            tabs = tabular.tables(data)
            glyphs = [tabular.read_cmap(tabs["cmap"])[c] for c in tabular.DIGITS]
            self.assertEqual(len(set(glyphs)), 10, style)
            self.assertEqual(len(set(tabular.advances(tabs, glyphs))), 1, style)

    def test_the_family_is_renamed_and_keeps_its_licence(self):
        for style, data in self.fonts():
            names = tabular.read_names(tabular.tables(data)["name"])
            self.assertEqual(names[16], "Steelyard Text")
            self.assertEqual(names[17].replace(" ", ""), style)
            self.assertFalse([name for number, name in names.items() if number and "Inter" in name])
            self.assertIn("Open Font License", names[13])
            self.assertIn(names[0], (ASSETS / "fonts/OFL.txt").read_text(encoding="utf-8"))

    def test_checksums_hold(self):
        for style, data in self.fonts():
            # OpenType: the sum of the whole file is this magic number
            self.assertEqual(tabular.checksum(data), 0xB1B0AFBA, style)

    def test_the_same_inter_gives_the_same_bytes(self):
        known = dict(reversed(line.split()) for line in (ASSETS / "fonts/inter.sha256").read_text(encoding="utf-8").splitlines())
        self.assertEqual(len(known), len(tabular.STYLES))
        for style, data in self.fonts():
            source = INTER / f"Inter-{style}.otf"
            if source.exists() and hashlib.sha256(source.read_bytes()).hexdigest() == known[source.name]:
                self.assertEqual(tabular.convert(source.read_bytes()), data, style)


class Tiles(unittest.TestCase):
    def test_committed_tiles_are_what_the_script_draws(self):
        made = dict(tiles.tiles())
        self.assertEqual(sorted(made), sorted(path.name for path in (ASSETS / "tiles").glob("*.png")))
        for name, data in made.items():
            self.assertEqual((ASSETS / "tiles" / name).read_bytes(), data, name)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
