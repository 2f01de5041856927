# SPDX-License-Identifier: GPL-3.0-or-later
"""Works out the key file of version 1 that test_keyfile expects, apart from the code under test.

Run with the header that holds it, it fails where they differ; run alone, it prints the bytes.

BLAKE2b comes from Python's hashlib; HChaCha20, ChaCha20 and Poly1305 are written down after RFC 8439 and
draft-irtf-cfrg-xchacha-03. The random source gives 0, 1, 2 … 250, 0, 1 … one byte after another.
"""
import hashlib
import re
import struct
import sys

CONSTANTS = struct.unpack("<4I", b"expand 32-byte k")


def quarter(s, a, b, c, d):
    for x, y, z, turn in ((a, b, d, 16), (c, d, b, 12), (a, b, d, 8), (c, d, b, 7)):
        s[x] = (s[x] + s[y]) & 0xFFFFFFFF
        mixed = s[z] ^ s[x]
        s[z] = (mixed << turn | mixed >> (32 - turn)) & 0xFFFFFFFF


def rounds(state):
    s = list(state)
    for _ in range(10):
        for column in range(4):
            quarter(s, column, column + 4, column + 8, column + 12)
        for start in range(4):
            quarter(s, start, 4 + (start + 1) % 4, 8 + (start + 2) % 4, 12 + (start + 3) % 4)
    return s


def block(key, counter, nonce):
    state = [*CONSTANTS, *struct.unpack("<8I", key), counter, *struct.unpack("<3I", nonce)]
    return struct.pack("<16I", *((a + b) & 0xFFFFFFFF for a, b in zip(state, rounds(state))))


def hchacha(key, nonce):
    s = rounds([*CONSTANTS, *struct.unpack("<8I", key), *struct.unpack("<4I", nonce)])
    return struct.pack("<8I", *s[:4], *s[12:])


def poly1305(key, message):
    r = int.from_bytes(key[:16], "little") & 0x0FFFFFFC0FFFFFFC0FFFFFFC0FFFFFFF
    total = 0
    for at in range(0, len(message), 16):
        total = (total + int.from_bytes(message[at:at + 16] + b"\1", "little")) * r % (2**130 - 5)
    return ((total + int.from_bytes(key[16:], "little")) % 2**128).to_bytes(16, "little")


def xchacha_wrap(key, nonce, associated, secret):
    subkey, short = hchacha(key, nonce[:16]), bytes(4) + nonce[16:]
    stream = b"".join(block(subkey, n + 1, short) for n in range(-(-len(secret) // 64)))
    text = bytes(a ^ b for a, b in zip(secret, stream))
    padded = b"".join(part + bytes(-len(part) % 16) for part in (associated, text))
    return text + poly1305(block(subkey, 0, short)[:32], padded + struct.pack("<QQ", len(associated), len(text)))


def subkey(vault_key, number):
    return hashlib.blake2b(key=vault_key, digest_size=32, salt=struct.pack("<QQ", number, 0), person=b"SteelVlt" + bytes(8)).digest()


class Counter:
    def __init__(self):
        self.at = 0

    def take(self, size):
        taken = bytes((self.at + i) % 251 for i in range(size))
        self.at += size
        return taken


def key_file():
    random = Counter()
    vault_key, identity, vault_id = random.take(32), random.take(96), random.take(16)
    start = bytes.fromhex("8F5359564B0D0A1A") + struct.pack("<H", 1) + vault_id
    slots = b""
    for kind, kek, salt in ((1, b"\xA1" * 32, b"\x11" * 16), (2, b"\xA2" * 32, b"\x12" * 16)):
        stretch = struct.pack("<B3xII", kind, 65536, 3) + salt
        nonce = random.take(24)
        slots += stretch + nonce + xchacha_wrap(kek, nonce, start + stretch, vault_key)
    data_key, salt, nonce = random.take(32), random.take(16), random.take(24)
    data = nonce + xchacha_wrap(subkey(vault_key, 1), nonce, start + struct.pack("<BI", 40, 1) + salt, data_key)
    nonce = random.take(24)
    device = nonce + xchacha_wrap(subkey(vault_key, 2), nonce, start + struct.pack("<BI", 41, 1), identity)
    size = 64 + len(slots) + len(data) + len(device) + 64
    file = start[:8] + struct.pack("<HHI", 1, 2, size) + vault_id + struct.pack("<QII", 1, 1, 1) + salt + slots + data + device
    file += hashlib.blake2b(file, key=subkey(vault_key, 3), digest_size=32).digest()
    return file + hashlib.blake2b(file, digest_size=32).digest()


if __name__ == "__main__":
    # draft-irtf-cfrg-xchacha-03, appendix A.3.1: the tag.
    sample = xchacha_wrap(bytes(range(0x80, 0xA0)), bytes(range(0x40, 0x58)), bytes.fromhex("50515253C0C1C2C3C4C5C6C7"),
                          b"Ladies and Gentlemen of the class of '99: If I could offer you only one tip for the future, "
                          b"sunscreen would be it.")
    if sample[-16:].hex() != "c0875924c1c7987947deafd8780acf49":
        sys.exit("the cipher written down here is wrong")
    text = key_file().hex()
    if len(sys.argv) > 1:
        with open(sys.argv[1], encoding="utf-8") as header:
            held = "".join(re.findall(r'(?m)^    "([0-9a-f]+)"', header.read()))
        sys.exit(0 if held == text else "the header holds other bytes")
    print("\n".join(text[at:at + 96] for at in range(0, len(text), 96)))
