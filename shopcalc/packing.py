"""Packs the setups for the phone as small as they go; `static/brain.js` unpacks them.

What follows from something else is not sent: the keys of formulas and the names of values follow from a card's data
(`portable/cards/naming.py`), what most lines say from `USUAL`, which word stands where from `KEYS`.
"""

import json
from collections.abc import Mapping
from typing import Any

from shopcalc.declare import Setup
from shopcalc.describe import describe
from shopcalc.formulas import print_phone
from shopcalc.portable.cards.naming import short_name, value_names

# What most lines of a card say of themselves; the phone is sent the rest.
USUAL: dict[str, dict[str, Any]] = {
    "inputs": {
        "zero": False, "most": [], "options": [], "reading": False, "signed": False, "items": 0, "columns": [], "kind": "length",
        "group": "What you measure", "shop": False, "when": False, "drawn": [],
    },
    "results": {
        "role": "size", "kind": "length", "rounding": "nearest", "division": "", "when": False, "reading": "", "more": "", "less": "", "source": "",
        "known_as": "",
    },
    "checks": {"level": "caution", "change": "", "spoils": [], "source": ""},
    "lines": {"when": False},
    "operations": {"machine": "table saw", "settings": [], "face": "", "parts": [], "reading": "", "when": False, "run": ""},
    "shapes": {"kind": "box", "style": "", "of": "", "text": "", "side": "", "row": 1, "when": False, "rows": []},
}  # fmt: skip
# All that a line of each sort says; on the way to the phone the place of a word here stands for the word.
KEYS: dict[str, tuple[str, ...]] = {
    "inputs": ("name", "label", "start", "help", *USUAL["inputs"]),
    "results": ("label", "working", *USUAL["results"]),
    "checks": ("text", *USUAL["checks"]),
    "lines": ("text", *USUAL["lines"]),
    "operations": ("name", "stage", "label", *USUAL["operations"]),
    "shapes": tuple(USUAL["shapes"]),
}


def setups_script(found: Mapping[str, Setup]) -> str:
    """The setups as calls that add them: their data as JSON text, read when first asked for, and their formulas.

    Like stands beside like (the inputs of all setups, then the steps of all), since a phone's download is packed
    by what its neighbours have in common.
    """
    described = {slug: describe(setup) for slug, setup in found.items()}
    packed = {slug: _packed(about) for slug, about in described.items()}
    calls = []
    for slug, setup in found.items():
        names = {name: short_name(place) for place, name in enumerate(value_names(described[slug]))}  # type: ignore[no-untyped-call]
        calls.append(f"addFormulas({text_literal(slug)},()=>{print_phone(setup.formulas(), names)});")
    for part in next(iter(packed.values()), {}):
        for slug, about in packed.items():
            text = json.dumps(about[part], separators=(",", ":"), ensure_ascii=False)
            calls.append(f"addPart({text_literal(slug)},{text_literal(part)},{text_literal(text)});")
    return "\n".join(calls)


def _packed(about: dict[str, Any]) -> dict[str, Any]:
    """A card's data with short keys and without what is usual; `static/brain.js` unpacks it."""
    program = about["program"]
    return {
        **about,
        # after how many results each check stands: with the order of both, that is the program
        "program": [sum(name in about["results"] for name in program[: program.index(check)]) for check in about["checks"]],
        "inputs": [_packed_line(each, "inputs") for each in about["inputs"]],
        "lines": {word: [_packed_line(each, "lines") for each in lines] for word, lines in about["lines"].items()},
        "operations": [_packed_line(each, "operations") for each in about["operations"]],
        "results": {name: _packed_line(each, "results") for name, each in about["results"].items()},
        "checks": {name: _packed_line(_of_all(each, about), "checks") for name, each in about["checks"].items()},
        "pictures": [{**picture, "shapes": [_packed_line(each, "shapes") for each in picture["shapes"]]} for picture in about["pictures"]],
    }


def _of_all(check: dict[str, Any], about: dict[str, Any]) -> dict[str, Any]:
    """A check, with a star for the names of all results where it spoils them all."""
    return {**check, "spoils": "*"} if set(check["spoils"]) == set(about["results"]) else check


def _packed_line(line: dict[str, Any], sort: str) -> dict[str, Any]:
    usual = USUAL[sort]
    said = [(place, line[key]) for place, key in enumerate(KEYS[sort]) if key not in usual or line[key] != usual[key]]
    return {short_name(place): value for place, value in said}  # type: ignore[no-untyped-call]


def text_literal(value: str) -> str:
    """A text as a JavaScript string literal."""
    return json.dumps(value, ensure_ascii=False).replace("\u2028", "\\u2028").replace("\u2029", "\\u2029")
