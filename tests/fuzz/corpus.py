# SPDX-License-Identifier: GPL-3.0-or-later
"""Between a corpus kept as text, an input in hexadecimal digits a line, and a folder of files as libFuzzer has it.

corpus.py unpack FILE FOLDER    one file a line into the folder
corpus.py pack FOLDER FILE      the folder's files as lines, the shortest first
"""
import sys
from pathlib import Path


def unpack(file, folder):
    folder.mkdir(parents=True, exist_ok=True)
    for number, line in enumerate(file.read_text().splitlines()):
        (folder / f"{number:05}").write_bytes(bytes.fromhex(line))


def pack(folder, file):
    inputs = {path.read_bytes() for path in folder.iterdir()}
    file.write_text("".join(f"{one.hex()}\n" for one in sorted(inputs, key=lambda one: (len(one), one))))


if __name__ == "__main__":
    {"unpack": unpack, "pack": pack}[sys.argv[1]](Path(sys.argv[2]), Path(sys.argv[3]))
