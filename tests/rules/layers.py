# SPDX-License-Identifier: GPL-3.0-or-later
"""Which folder may see which: the arrows of the house, and the libraries each folder keeps to itself."""
import re

from register import rule
from tree import Finding, line_of

C_FILES = (".cpp", ".h")
INCLUDE = re.compile(r'(?m)^[ \t]*#[ \t]*include[ \t]*([<"])([^>"]+)[>"]')

# A core folder and the folders it may name; work may name them all, and sample is made by work.
SEES = {
    "measure": set(),
    "resistance": {"measure"},
    "implements": {"measure"},
    "strength": {"measure"},
    "legcheck": {"measure"},
    "hanging": {"measure", "resistance", "implements", "strength", "legcheck"},
    "booking": {"measure", "resistance", "implements", "strength", "legcheck"},
    "season": {"measure", "resistance", "implements"},
    "seal": set(),
    "journal": {"measure", "resistance", "implements", "season", "seal"},
    "vault": {"measure", "resistance", "implements", "season", "seal", "journal"},
    "exchange": {"measure", "resistance", "implements", "season", "seal", "journal"},
}
SEES["work"] = set(SEES)
SEES["sample"] = set(SEES)
BELOW = {"core": {"core"}, "mobile": {"core", "assets", "mobile"}, "qml": {"core", "assets", "mobile", "qml"},
         "assets": {"assets"}}


def includes(tree, *folders):
    for path in tree.under(*folders, ends=C_FILES):
        text = tree.uncommented(path)
        for hit in INCLUDE.finditer(text):
            yield path, line_of(text, hit.start()), hit.group(1), hit.group(2)


@rule("core-without-qt")
def core_without_qt(tree):
    """core knows no Qt: no header, class, macro or link."""
    qt = re.compile(r"\bQ[A-Z][a-z]{2}\w*|\bQ_[A-Z]+|\bQT_|\bQt[56]?::|\bqt_|find_package\(Qt")
    yield from tree.search(qt, tree.under("core", ends=C_FILES + ("CMakeLists.txt",)))
    for path, line, _, header in includes(tree, "core"):
        if re.match(r"Q[A-Z][a-z]|q[a-z]+\.h", header.split("/")[-1]) or header.startswith("Qt"):
            yield Finding(path, line, f"#include {header}")


@rule("arrows")
def arrows(tree):
    """Includes and links between folders run down only, along the arrows of the house."""
    for path, line, _, header in includes(tree, *BELOW):
        folder, target = path.split("/")[0], header.split("/")
        if target[0] not in BELOW or len(target) < 2:
            continue
        if target[0] not in BELOW[folder] or (folder == target[0] == "core" and not may_see(path, target[1])):
            yield Finding(path, line, f"#include {header}")
    for path in tree.under("core", ends=("CMakeLists.txt",)):
        text = tree.uncommented(path)
        for call in re.finditer(r"steelyard_core_library\(\s*(\w+)([^)]*)\)", text):
            listed = re.split(r"\bDEPENDS\b", call.group(2))
            for name in listed[1].split() if len(listed) > 1 else ():
                if "::" not in name and name not in SEES.get(call.group(1), ()):
                    yield Finding(path, line_of(text, call.start()), f"{call.group(1)} depends on {name}")
        for link in re.finditer(r"steelyard_(interface|mobile|theme|controls|drawings|charts|pages\w*|ui|assets)\b", text):
            yield Finding(path, line_of(text, link.start()), link.group(0))


def may_see(path, folder):
    own = path.split("/")[1]
    return folder == own or folder in SEES.get(own, ())


@rule("includes-from-root")
def includes_from_root(tree):
    """A quoted include names its file from the root of the repository (generated .moc files apart)."""
    for path, line, quote, header in includes(tree, "core", "mobile", "qml", "tests"):
        if quote == '"' and not header.endswith(".moc") and header.split("/")[0] not in (*BELOW, "tests"):
            yield Finding(path, line, f"#include {header}")


def kept_to(tree, home, header, link):
    for path, line, _, name in includes(tree, "core", "mobile", "qml", "assets", "tests"):
        if header.search(name) and not path.startswith((home + "/", "tests/" + home + "/")):
            yield Finding(path, line, f"#include {name}")
    for path in tree.under("", ends=("CMakeLists.txt", ".cmake")):
        if not path.startswith((home + "/", "tests/" + home + "/")):
            yield from tree.search(link, [path], view="uncommented")


@rule("sqlcipher-in-vault")
def sqlcipher_in_vault(tree):
    """Only core/vault sees SQLCipher; nothing else opens a database."""
    header = re.compile(r"^(sqlcipher/|sqlite3|QSql|QtSql)")
    yield from kept_to(tree, "core/vault", header, re.compile(r"(?i)sqlcipher|sqlite|Qt6?::Sql\b"))
    yield from tree.search(re.compile(r"import\s+QtQuick\.LocalStorage"), tree.under("qml", ends=(".qml",)))


@rule("vault-from-afar")
def vault_from_afar(tree):
    """Outside core/vault the vault is asked through its asynchronous door alone, so that no page ever waits for the disk."""
    door = {"core/vault/access.h", "core/vault/snapshot.h", "core/vault/refusal.h"}
    for path, line, _, header in includes(tree, "core", "mobile", "qml"):
        if header.startswith("core/vault/") and header not in door and not path.startswith("core/vault/"):
            yield Finding(path, line, f"#include {header}")


@rule("sodium-in-seal")
def sodium_in_seal(tree):
    """Only core/seal sees libsodium, and no other folder brings its own cryptography."""
    header = re.compile(r"^(sodium(\.h|/)|openssl/|gcrypt|QCryptographicHash)")
    yield from kept_to(tree, "core/seal", header, re.compile(r"(?i)\b(lib)?sodium\b|OpenSSL::"))


@rule("charts-in-charts")
def charts_in_charts(tree):
    """Only qml/charts imports Qt Charts, and only its C++ includes it, so that it can be replaced."""
    outside = [path for path in tree.under("qml", ends=(".qml",)) if not path.startswith("qml/charts/")]
    yield from tree.search(re.compile(r"import\s+QtCharts\b"), outside)
    charts = re.compile(r"^QtCharts\b|^Q(Chart|LegendMarker|\w+Series|ValueAxis|AbstractAxis)\w*$")
    for path, line, _, header in includes(tree, "core", "mobile", "qml", "assets"):
        if charts.search(header) and not path.startswith("qml/charts/"):
            yield Finding(path, line, f"#include {header}")


@rule("no-network")
def no_network(tree):
    """Nothing reaches for a network: no socket, no client, no address to load from."""
    code = re.compile(r"\bQ(Network|Tcp|Udp|Ssl|WebSocket|HostAddress|HostInfo|LocalS)\w*|\bQt6?::(Network|WebSockets|WebEngine)\b"
                      r"|\bQtNetwork\b|XMLHttpRequest|QtWebSockets|QtWebEngine|\bfetch\s*\(|openUrlExternally")
    folders = ("core", "mobile", "qml", "assets", "tests")
    yield from tree.search(code, tree.under(*folders, ends=C_FILES + (".qml", ".js", "CMakeLists.txt")))
    yield from tree.search(code, [path for path in tree.paths if path == "CMakeLists.txt"])
    address = re.compile(r"""["'`](https?|ftp|wss?)://""")
    yield from tree.search(address, tree.under(*folders, ends=C_FILES + (".qml", ".js")), view="uncommented")
    for path, line, _, header in includes(tree, *folders):
        if re.match(r"(sys/socket|netinet/|arpa/|netdb|curl/|boost/asio)", header) or header.startswith("QtNetwork"):
            yield Finding(path, line, f"#include {header}")
