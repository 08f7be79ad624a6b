"""Where the templates and static files are: beside the package in a checkout, inside it in a wheel."""

from functools import cache
from pathlib import Path

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
