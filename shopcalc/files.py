"""Where the templates and static files are (beside the package in a checkout, inside it in a wheel), and how they are sent."""

from functools import cache
from pathlib import Path

try:
    import minify
except ImportError:  # there is no wheel for every machine: then the phone is sent what was written
    minify = None

PACKAGE = Path(__file__).parent


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


def lighter(text: str, media_type: str) -> str:
    """A script or style sheet without what only its readers need."""
    return text if minify is None else str(minify.string(media_type, text))


@cache
def light_script(name: str) -> str:
    """One of our own static files, as it is sent. Raises KeyError for a kind that is sent as it is written."""
    return lighter(static_text(name), {".js": "text/javascript", ".css": "text/css"}[Path(name).suffix])


def is_light(name: str) -> bool:
    """Whether a static file is made lighter on the way: ours are, what is vendored stays as it came."""
    return Path(name).suffix in (".js", ".css") and any(name == each.name for each in folder("static").iterdir())
