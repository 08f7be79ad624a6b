"""Everything the phone is sent: the portable code and the formulas as JavaScript, the cards as data, the templates.

Made when the app starts or is exported, never kept in the repository.
"""

import ast
import base64
import hashlib
import json
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import Any

from shopcalc import __version__, files
from shopcalc.catalogue import setups
from shopcalc.declare import Setup
from shopcalc.describe import describe_runs
from shopcalc.packing import KEYS, USUAL, setups_script, text_literal
from shopcalc.portable.answer import WHAT_IT_IS
from shopcalc.records import STAGES, STANDS
from shopcalc.reference.cautions import CAUTIONS
from shopcalc.reference.lumber import dressed_sizes
from shopcalc.render import ESCAPES
from shopcalc.script import compiled, joined
from shopcalc.units import length_factors

MUSTACHE = "vendor/mustache-4.2.0.min.js"

# A page edits a job itself, inside a transaction of the device's storage, which would not wait for the worker.
EDITS = ("jobform", "editing")
ONLY_OF_PAGES = ("editing",)

# What a page asks for by address; the worker keeps all of it. A test follows every link in the templates and scripts.
KEPT = (
    "/static/app.js",
    "/static/answers.js",
    "/static/copy.js",
    "/static/elements.js",
    "/static/head.js",
    "/static/redraw.js",
    "/static/large.js",
    "/static/light.js",
    "/static/pad.js",
    "/static/taps.js",
    "/static/units.js",
    "/static/memory.js",
    "/static/vendor/htmx-2.0.11.min.js",
    "/editing.js",
    "/static/job.js",
    "/static/item.js",
    "/static/jobs.js",
    "/static/sending.js",
    "/static/vendor/idb-keyval-6.2.2.js",
    "/static/boathouse.json",
    "/static/icons/icon.svg",
    "/manifest.webmanifest",
)
KEPT_LATER = ("/static/vendor/uqr-0.1.2.mjs",)  # once it has been asked for: the drawer of codes

POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; manifest-src 'self'; "
    "worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
)


MANIFEST: dict[str, Any] = {
    "name": "shopcalc",
    "short_name": "shopcalc",
    "description": WHAT_IT_IS,
    "id": "/",
    "start_url": "/",
    "scope": "/",
    "display": "standalone",
    "background_color": "#f6f4ee",
    "theme_color": "#f6f4ee",
    "version": __version__,
    "icons": [
        {"src": "/static/icons/icon.svg", "sizes": "any", "type": "image/svg+xml", "purpose": "any"},
        {"src": "/static/icons/icon-192.png", "sizes": "192x192", "type": "image/png", "purpose": "any"},
        {"src": "/static/icons/icon-512.png", "sizes": "512x512", "type": "image/png", "purpose": "any"},
        {"src": "/static/icons/maskable-512.png", "sizes": "512x512", "type": "image/png", "purpose": "maskable"},
    ],
}


@cache
def portable_modules() -> dict[str, Path]:
    """The files of the portable modules of all rooms, by the names of the modules, in their order: no two have one name."""
    found = [path for path in (files.PACKAGE / "portable").rglob("*.py") if path.stem != "__init__"]
    return {path.stem: path for path in sorted(found, key=lambda path: path.stem)}


def portable_source(name: str) -> ast.Module:
    """A portable module without imports, docstrings and annotations: in the bundle all names are of one scope."""
    tree = ast.parse(portable_modules()[name].read_text("utf-8"))
    tree.body = [each for each in tree.body if not isinstance(each, (ast.Import, ast.ImportFrom)) and not _is_text(each)]
    for node in ast.walk(tree):
        if isinstance(node, ast.FunctionDef) and _is_text(node.body[0]):
            node.body = node.body[1:]
    return tree


def _is_text(node: ast.stmt) -> bool:
    return isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant) and isinstance(node.value.value, str)


@cache
def portable_script() -> str:
    """All portable modules as JavaScript, but for those that pages alone run."""
    return joined([compiled(portable_source(name)) for name in portable_modules() if name not in ONLY_OF_PAGES])


@cache
def editing_script() -> str:
    """The edits of a job as a module that the pages load."""
    names = [node.name for node in portable_source("editing").body if isinstance(node, ast.FunctionDef)]
    shared = f"{{ {', '.join(names)} }}"
    # in a scope of their own every name in between can be short
    own = [f"export const {shared} = (() => {{", joined([compiled(portable_source(name)) for name in EDITS]), f"return {shared};\n}})();"]
    return files.lighter("\n".join(own), "text/javascript")


def brain(found: Mapping[str, Setup]) -> str:
    """The script that answers requests, for the setups given: it needs no browser, only JavaScript.

    It defines `answer(path, pairs, part)`, which returns status, type and body, and `respond` before rendering.
    """
    return files.static_text(MUSTACHE) + "\n" + files.lighter(_own_parts(found), "text/javascript")


def constants() -> dict[str, str]:
    """What the phone is told once for all cards, by name, as JavaScript."""
    told = {
        "UNITS": length_factors(), "STANDS": STANDS, "STAGES": STAGES, "RUNS": describe_runs(), "USUAL": USUAL, "KEYS": KEYS,
        "LUMBER": dressed_sizes(), "CAUTIONS": CAUTIONS, "TEMPLATES": files.templates(), "ESCAPES": ESCAPES,
    }  # fmt: skip
    return {"VERSION": text_literal(__version__), **{name: json.dumps(value, ensure_ascii=False) for name, value in told.items()}}


def _own_parts(found: Mapping[str, Setup]) -> str:
    return "\n".join(
        [
            files.static_text("numbers.js"),
            portable_script(),
            *(f"const {name}={value};" for name, value in constants().items()),
            files.static_text("brain.js"),
            setups_script(found),
        ]
    )


@cache
def build() -> str:
    """A name for exactly this content: it changes when anything that the phone keeps changes."""
    digest = hashlib.sha256(brain(setups()).encode())
    digest.update(json.dumps([MANIFEST, POLICY, KEPT, editing_script()]).encode())
    for name in sorted(str(path) for path in files.folder("static").rglob("*") if path.is_file()):
        digest.update(Path(name).name.encode() + Path(name).read_bytes())
    return f"{__version__}-{digest.hexdigest()[:12]}"


def kept_bytes(path: str) -> bytes:
    """One of the files that the worker keeps, as it is served."""
    if path == "/manifest.webmanifest":
        return json.dumps(MANIFEST).encode()
    if path == "/editing.js":
        return editing_script().encode()
    name = path.removeprefix("/static/")
    return files.light_script(name).encode() if files.is_light(name) else (files.folder("static") / name).read_bytes()


def kept_sum() -> str:
    """What all kept files come to, so that a worker never keeps those of another version: the first half of a SHA-256."""
    return hashlib.sha256(b"".join(kept_bytes(path) for path in KEPT)).hexdigest()[:32]


def _policy_for(style: str) -> str:
    """The policy of a page that holds its style sheet: that one and no other, named by its hash."""
    digest = base64.b64encode(hashlib.sha256(style.encode()).digest()).decode()
    return POLICY.replace("style-src 'self'", f"style-src 'sha256-{digest}'")


@cache
def worker() -> str:
    """The service worker's script: the brain and its wiring in one scope of their own, where every name can be short."""
    style = files.light_script("style.css")
    kept = {"BUILD": build(), "KEPT": KEPT, "KEPT_LATER": KEPT_LATER, "SUM": kept_sum()}
    constants: dict[str, Any] = {**kept, "STYLE": style, "POLICY": _policy_for(style)}
    lines = [f"const {name}={json.dumps(value)};" for name, value in constants.items()]
    own = "\n".join(["(() => {", _own_parts(setups()), *lines, files.static_text("worker.js"), "})();"])
    return files.static_text(MUSTACHE) + "\n" + files.lighter(own, "text/javascript")
