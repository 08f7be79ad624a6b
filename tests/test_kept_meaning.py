"""What an entry means when bare numbers change their unit: the page's script puts the unit where the grammar needs it."""

import json
import random
from collections.abc import Iterator
from typing import Any

import pytest
from py_mini_racer import MiniRacer

from shopcalc import files
from shopcalc.portable.cards.work import BARE_UNITS
from shopcalc.portable.measures.listed import read_lengths, read_pieces, read_stock
from shopcalc.portable.measures.parsing import read_length, read_temperature
from shopcalc.portable.measures.writing import TAPES, USUAL_TAPE
from shopcalc.web import LARGEST_JOB

from .helpers import INCH_SHOP, MM_SHOP, NUMBERS, UNITS
from .typed import GRAINS, entry

MOST = 200
READERS = {
    "length": lambda text, shop: read_length(text, shop, UNITS, NUMBERS),
    "lengths": lambda text, shop: read_lengths(text, MOST, shop, UNITS, NUMBERS),
    "pieces": lambda text, shop: read_pieces(text, MOST, shop, UNITS, NUMBERS),
    "stock": lambda text, shop: read_stock(text, MOST, shop, UNITS, NUMBERS),
    "temperature": lambda text, shop: read_temperature(text, shop, UNITS, NUMBERS),
}
SIGNS = [" + ", " - ", "+", "\u2212", " \u2212 "]


@pytest.fixture(scope="module")
def script() -> Iterator[MiniRacer]:
    """The script that puts units, without what listens in a page."""
    text = files.static_text("units.js").replace("export ", "").split("// Before the answer")[0]
    with MiniRacer() as engine:
        engine.eval(text)
        yield engine


def meant(script: MiniRacer, unit: str, kind: str, texts: list[str]) -> list[str]:
    """The entries as the page writes them when bare numbers were in this unit, and are no longer."""
    return list(
        json.loads(str(script.eval(f"JSON.stringify({json.dumps(texts)}.map(text => meantIn({json.dumps(unit)}, {json.dumps(kind)}, text)))")))
    )


def typed(kind: str, metric: bool, count: int) -> list[str]:
    """What people type, and sums of it."""
    rng = random.Random(f"{kind} {metric}")
    declared = {"name": "x", "kind": kind, "reading": False, "options": [], "items": 12, "most": [], "zero": True, "start": "1"}
    found = []
    for _ in range(count):
        one, other = (entry(declared, rng, "sensible", rng.choice(GRAINS), [], metric) for _ in range(2))
        found.append(
            rng.choice([one, one + rng.choice(SIGNS) + other, f"({one}{rng.choice(SIGNS)}{other}) / 2", f"2 x {one}"]) if kind == "length" else one
        )
    return found


def values(kind: str, texts: list[str], shop: dict[str, Any]) -> list[Any]:
    """What is read, or None where nothing can be."""
    return [got["value"] if got["ok"] else None for got in (READERS[kind](text, shop) for text in texts)]


@pytest.mark.parametrize("metric", [False, True], ids=["from inches", "from millimetres"])
@pytest.mark.parametrize("kind", READERS)
def test_an_entry_means_what_it_meant(kind: str, metric: bool, script: MiniRacer) -> None:
    """Whatever could be read where bare numbers were of one unit is read as the same where they are of the other."""
    texts = typed(kind, metric, 400)
    before, after = (MM_SHOP, INCH_SHOP) if metric else (INCH_SHOP, MM_SHOP)
    was = values(kind, texts, before)
    written = meant(script, "mm" if metric else "in", kind, texts)
    now = values(kind, written, after)

    assert sum(value is not None for value in was) > 150
    assert [] == [(text, put) for text, put, one, other in zip(texts, written, was, now, strict=True) if one is not None and one != other]


SUMS = {
    "3-5/8": "3-5/8 in",
    "3\u215d": "3\u215d in",
    "10 - 3/8": "(10 - 3/8) in",
    "10 / 4": "(10 / 4) in",
    "3 5 / 8": "(3 5 / 8) in",
    "6 + 1/2 mm": "6 in + 1/2 mm",
    "6 ft - 2": "6 ft - 2 in",
    "6' 6": "6' 6",
    "(31 1/4 mm - 3/8)/2": "(31 1/4 mm - 3/8 in)/2",
    "2 x (4 mm + 1)": "2 x (4 mm + 1 in)",
    "(6 + 1/2) mm": "(6 + 1/2) mm",
    "6' 6-\u00bd": "6' 6-\u00bd",
    "5 mm+3-\u00bd": "5 mm + 3-\u00bd in",
}
ROWS = {
    "36 - 1/8 x4": "(36 - 1/8) in x4",
    "box 12 x4": "box 12 in x4",
    "T/B rail 12": "T/B rail 12 in",
    "front & back 12 x2": "front & back 12 in x2",
    "stile no. 36 x2": "stile no. 36 in x2",
    "36*4": "36 in*4",
    "leg: 12": "leg: 12 in",
    "12 x2 (spare)": "12 in x2 (spare)",
    "rail 22 15/16 mm x2": "rail 22 15/16 mm x2",
    ".5 x3, 1/8*3": ".5 in x3, 1/8 in*3",
    "mid-rail 22 x2": "mid-rail 22 in x2",
    "rail-22-1/2 x2, T-bar 24": "rail-22-1/2 in x2, T-bar 24 in",
    "36 x4 mid-rail": "36 in x4 mid-rail",
    "96 - 1/2 @ 12.50, 120": "(96 - 1/2) in @ 12.50, 120 in",
}


def test_sums_keep_their_meaning(script: MiniRacer) -> None:
    """A dash between spaces takes away, so the whole sum gets the unit; beside a part that says one, the others get theirs."""
    assert dict(zip(SUMS, meant(script, "in", "length", list(SUMS)), strict=True)) == SUMS


def test_lines_of_a_row_keep_their_meaning(script: MiniRacer) -> None:
    """The unit goes to the length, whatever it is called and however many there are."""
    assert dict(zip(ROWS, meant(script, "in", "pieces", list(ROWS)), strict=True)) == ROWS


COMMAS = {
    "3,2, 1,6": "3.2 mm, 1.6 mm",
    "rail 412,5 x4": "rail 412.5 mm x4",
    "2400 @ 12,50": "2400 mm @ 12.50",
    "1,2,3": "1 mm, 2 mm, 3 mm",
    "36,240": "36 mm, 240 mm",
}


def test_a_comma_for_a_point_makes_no_second_length(script: MiniRacer) -> None:
    """A metric row with one is refused; in inches its sides would be read as two lengths of the other kind."""
    assert dict(zip(COMMAS, meant(script, "mm", "pieces", list(COMMAS)), strict=True)) == COMMAS


def test_a_new_job_takes_over_every_tape_and_unit_that_there_is() -> None:
    """What the script keeps of a remembered shop is what the portable code knows, no more and no less."""
    script = files.static_text("jobs.js")

    assert f"tape: {TAPES}, units: {BARE_UNITS} }};".replace('"', "'") in script


def test_the_scripts_leave_unsaid_the_tape_that_is_usual() -> None:
    """An address without a tape means the same to the pages and to what answers it."""
    assert f"USUAL_TAPE = '{USUAL_TAPE}'" in files.static_text("elements.js")
    assert not [
        name
        for name in ("memory.js", "jobs.js", "item.js", "job.js")
        if f"'{USUAL_TAPE}'" in files.static_text(name).replace(str(TAPES).replace('"', "'"), "")
    ]


def test_the_page_takes_in_as_large_a_job_as_the_server() -> None:
    """A larger one is refused where it is opened, and not after it has been sent."""
    assert f"LARGEST = {LARGEST_JOB}," in files.static_text("sending.js")
