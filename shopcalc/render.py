"""Renders the templates on the server. The phone does the same with mustache.js (`shopcalc/phone.py`)."""

import re
from functools import cache
from typing import Any

import pystache

from shopcalc import files

# The same five characters on both sides; mustache.js by default escapes three more.
ESCAPES = {"&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;"}
_TABLE = str.maketrans(ESCAPES)


def escape(text: str) -> str:
    """`text` as it may stand in HTML, in content and in quoted attributes."""
    return text.translate(_TABLE)


@cache
def _renderer() -> Any:
    return pystache.Renderer(escape=escape, missing_tags="strict")


@cache
def _whole(template: str) -> str:
    """The template with those inside it in their places: pystache would parse each anew wherever it stands, at every answer.

    As the specification of Mustache has it, a tag alone on its line takes the end of that line with it.
    """
    tag = re.compile(r"^\{\{>(\w+)\}\}\n|\{\{>(\w+)\}\}", re.MULTILINE)
    return tag.sub(lambda inside: _whole(inside[1] or inside[2]), files.templates()[template])


@cache
def _parsed(template: str) -> Any:
    return pystache.parse(_whole(template))


def render(template: str, view: dict[str, Any]) -> str:
    """The template by that name, filled with `view`. Raises KeyError for an unknown template."""
    return str(_renderer().render(_parsed(template), view))
