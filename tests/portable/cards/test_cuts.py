"""The parts for the cut list, and the vocabulary of rows, tables and temperatures, on a card of its own."""

from collections.abc import Iterator
from types import SimpleNamespace
from typing import Any

import pytest
import sympy
from py_mini_racer import MiniRacer

from shopcalc import phone
from shopcalc.declare import DeclarationError, Setup
from shopcalc.exact import make_world
from shopcalc.portable.answer import respond
from shopcalc.portable.cards.bench import read_and_set
from shopcalc.portable.cards.cuts import shown_parts, worked_parts
from shopcalc.portable.cards.work import read_shop
from shopcalc.render import render
from shopcalc.terms import choose_blocks, chosen_mains, count_in, even_marks, fahrenheit, number, total_of

from ...helpers import bench_of, fold, phone_answer, phone_respond, unlike

WOODS = {"oak": SimpleNamespace(label="Oak", moves=number("0.004")), "fir": SimpleNamespace(label="Fir", moves=number("0.002"))}


def rack() -> Setup:
    """A rack with pegs: a card that uses every word for rows, tables and temperatures."""
    setup = Setup(slug="rack", title="Peg rack", stand="at the bench", job="A board with pegs.", machines=("table saw",))
    long = setup.length("long", "Length", "24", "Tape along it.")
    pegs = setup.count("pegs", "Pegs", "3", "How many.", zero=True, most=12)
    wood = setup.table("wood", "Wood", "What it is made of.", WOODS, moves="number")
    blocks = setup.lengths("blocks", "Blocks", "1, 1/2", "Calipers across each.", most=5, none=True)
    cold = setup.temperature("cold", "Cold", "20", "The coldest night.")
    damp = setup.percent("damp", "Damp", "8", "A meter.")
    pitch = setup.setting("pitch", "Pitch", long / (pegs + 1))
    setup.setting("marks", "Marks", even_marks(pitch, pitch, pegs), kind="lengths")
    ranked = setup.ranking("ranked", choose_blocks(pitch, blocks, 5))
    setup.size("stack", "Stack", chosen_mains(ranked, 0), kind="lengths")
    setup.size("high", "Height", total_of(blocks), when=count_in(blocks) > 0)
    setup.size("moves", "Moves", long * wood.columns["moves"] * damp)
    setup.size("shrinks", "Shrinks", long * (fahrenheit(70) - cold) / fahrenheit(1) / 1000000)
    setup.part("Board", 1, long, long / 4, long / 24)
    setup.part("Peg", pegs, long / 6, long / 48, long / 48)
    setup.part("Spare", 1, long, long, long, when=pegs > 9)
    setup.step("Of {wood}: hook the tape once and tick {marks}.")
    setup.source("Geometry.")
    return setup.finish()


@pytest.fixture(scope="module")
def world() -> dict[str, Any]:
    """The server with the rack alone."""
    return make_world({"rack": rack()})


@pytest.fixture(scope="module")
def engine() -> Iterator[MiniRacer]:
    """The phone with the rack alone."""
    with MiniRacer() as made:
        made.eval(phone.brain({"rack": rack()}))
        yield made


def data(world: dict[str, Any], **typed: str) -> dict[str, Any]:
    """The rack as data."""
    return dict(respond(world, "/rack.json", typed, "")["data"])


def test_parts_are_listed_for_the_cut_list(world: dict[str, Any]) -> None:
    """A part has a label, a count and three sizes; one of which there are none, or whose condition fails, is left out."""
    bench = read_and_set(world, "rack", {"pegs": "0"}, read_shop({}))["benches"][0]

    assert ["Board"] == [part["label"] for part in worked_parts(bench)]
    assert [{"label": "Board", "pane": False, "count": "1", "length": "24 in", "width": "6 in", "thickness": "1 in"}] == shown_parts(bench)
    assert ["Board", "Peg"] == [part["label"] for part in data(world)["results"]["parts"]["value"]]
    assert "1 Board 24 in, 3 Peg 4 in" == data(world)["results"]["parts"]["text"]


def test_rows_are_lists_in_data(world: dict[str, Any]) -> None:
    """A row of marks is a list of inches, and so is a row that was typed."""
    found = data(world, blocks="1, 1/4, 25.4 mm")

    assert ([6, 12, 18], "6, 12, 18", "lengths") == tuple(found["results"]["marks"][key] for key in ("value", "text", "kind"))
    assert {"value": [1, 0.25, 1], "text": "1, 1/4, 25.4 mm"} == found["inputs"]["blocks"]
    assert "ranked" not in found["results"]


def test_an_empty_row_is_a_row(world: dict[str, Any]) -> None:
    """Where none is allowed nothing is a fault, and what needs a piece is left out."""
    assert "high" not in data(world, blocks="")["results"]
    assert [] == data(world, blocks=" ")["inputs"]["blocks"]["value"]


def test_the_table_speaks_for_the_option_chosen(world: dict[str, Any]) -> None:
    """The number in the formula is that of the option, and the sentence says its name."""
    assert (0.768, 0.384) == tuple(data(world, wood=each)["results"]["moves"]["value"] for each in ("oak", "fir"))
    assert "Of Fir: hook the tape once and tick 6, 12, 18 in." == data(world, wood="fir")["steps"][0]


@pytest.mark.parametrize(("typed", "fahrenheit"), [("20", 20), ("-5", -5), ("\u22125\u00b0F", -5), ("0 C", 32), ("20\u00b0 c", 68), ("-40C", -40)])
def test_temperatures(typed: str, fahrenheit: float, world: dict[str, Any]) -> None:
    """Fahrenheit unless it says Celsius."""
    assert fahrenheit == data(world, cold=typed)["inputs"]["cold"]["value"]


def test_a_metric_shop_reads_celsius(world: dict[str, Any]) -> None:
    """A bare temperature is Celsius in a metric shop, and so is what stands there at the start."""
    assert (50, 19.4) == (data(world, cold="10", units="mm")["inputs"]["cold"]["value"], data(world, units="mm")["inputs"]["cold"]["value"])


WRONG = {
    ("blocks", "1, -2"): "Number 2 in the row: A length cannot be negative.",
    ("blocks", "1,,2"): "Number 2 in the row: Type a length, such as 3 5/8 in or 92 mm.",
    ("blocks", "1, 0"): "Number 2 in the row: This cannot be zero.",
    ("blocks", "1,1,1,1,1,1"): "That is too many: at most 5 can be weighed.",
    ("blocks", "1" + " " * 4000): "That is too long: a row has at most 4000 characters.",
    ("cold", "cold"): "",
    ("cold", "300"): "No shop is as cold or as hot as that.",
    ("damp", "12 % x"): "",
    ("damp", "101"): "The most this can be is 100%.",
    ("wood", "elm"): "Choose one of: oak, fir.",
}


@pytest.mark.parametrize(("name", "text"), WRONG)
def test_what_cannot_be_read_says_why(name: str, text: str, world: dict[str, Any], engine: MiniRacer) -> None:
    """Each fault is told at its input, in the same words on both sides."""
    errors = data(world, **{name: text})["errors"]

    assert [name] == list(errors)
    assert WRONG[name, text] in errors[name] and len(errors[name]) > 0
    assert errors == phone_respond(engine, "/rack.json", {name: text})["data"]["errors"]


@pytest.mark.parametrize("part", ["", "answer", "sheet"])
@pytest.mark.parametrize("typed", [{}, {"pegs": "12"}, {"blocks": ""}, {"units": "mm", "cold": "-3"}, {"blocks": "3, 2, 1"}, {"wood": "fir"}])
def test_both_sides_show_the_same(part: str, typed: dict[str, str], engine: MiniRacer, world: dict[str, Any]) -> None:
    """Rows, parts and tables look alike on the server and on the phone."""
    server = respond(world, "/rack", typed, part)

    assert [] == unlike(server, phone_respond(engine, "/rack", typed, part))
    assert fold(render(server["template"], server["view"])) == fold(phone_answer(engine, "/rack", typed, part)["body"])


def test_a_row_is_no_length() -> None:
    """Rows keep out of sums, and a method takes what it says it takes."""
    setup = Setup(slug="wrong", title="Wrong", stand="at the bench", job="A job.")
    blocks = setup.lengths("blocks", "Blocks", "1", "Calipers.", most=5)
    long = setup.length("long", "Length", "24", "Tape.")
    with pytest.raises(DeclarationError, match="wrong: both: "):
        setup.size("both", "Both", long + blocks)
    with pytest.raises(DeclarationError, match="total_of takes a lengths, and long is a length"):
        setup.size("sum", "Sum", total_of(long))
    with pytest.raises(DeclarationError, match="'long' is declared twice"):
        setup.table("long", "Length", "What.", WOODS, moves="number")
    assert isinstance(total_of(blocks), sympy.Basic)


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ({"groove_width": "5/16", "measured_groove": "21/64"}, "5/16 in full"),
        ({"groove_width": "5/16", "measured_groove": "0.36"}, "11/32 in full"),
        ({"groove_width": "3/8"}, "3/8 in"),
        ({"stock": "35", "groove_width": "8", "cutter": "6", "measured_groove": "7.97", "units": "mm"}, "7.9 mm"),
    ],
)
def test_a_pane_is_never_called_thicker_than_its_groove(typed: dict[str, str], said: str) -> None:
    """It is bought by this: rounded up it would not go in."""
    [pane] = [part for part in shown_parts(bench_of("frame", **typed)) if part["pane"]]

    assert said == pane["thickness"]
