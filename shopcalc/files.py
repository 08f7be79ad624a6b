"""Where the templates and static files are (beside the package in a checkout, inside it in a wheel), and how they are sent."""

from functools import cache
from pathlib import Path

try:
    import minify
except ImportError:  # there is no wheel for every machine: then the phone is sent what was written
    minify = None

PACKAGE = Path(__file__).parent

# Said by us: what a machine maps a name to may be anything, and pages take no script that is called something else.
MEDIA_TYPES = {
    ".css": "text/css",
    ".js": "text/javascript",
    ".json": "application/json",
    ".mjs": "text/javascript",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".md": "text/plain",
    ".txt": "text/plain",
}


def folder(name: str) -> Path:
    """The folder `static` or `templates`. Raises FileNotFoundError if the installation has lost it."""
    for place in (PACKAGE / name, PACKAGE.parent / name):
        if place.is_dir():
            return place
    raise FileNotFoundError(f"the folder {name!r} is neither in the package nor beside it")


@cache
def templates() -> dict[str, str]:
    """All templates by name."""
    return {path.stem: path.read_text("utf-8") for path in sorted(folder("templates").glob("*.mustache"))}


def static_text(name: str) -> str:
    """The text of one static file."""
    return (folder("static") / name).read_text("utf-8")


def lighter(text: str, kind: str) -> str:
    """A script or style sheet without what only its readers need."""
    return text if minify is None else str(minify.string(kind, text))


@cache
def light_script(name: str) -> str:
    """One of our own scripts or style sheets, as it is sent."""
    return lighter(static_text(name), media_type(name))


def media_type(name: str) -> str:
    """What a static file is sent as."""
    return MEDIA_TYPES.get(Path(name).suffix, "application/octet-stream")


def is_light(name: str) -> bool:
    """Whether a static file is made lighter on the way: ours are, what is vendored stays as it came."""
    return Path(name).suffix in (".js", ".css") and any(name == each.name for each in folder("static").iterdir())
