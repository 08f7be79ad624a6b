"""Declaring what cannot be fails at once, naming it."""

from collections.abc import Callable
from typing import Any

import pytest
import sympy
from py_mini_racer import MiniRacer

from shopcalc import phone
from shopcalc.declare import DeclarationError, Setup
from shopcalc.drawing import box, dimension
from shopcalc.exact import make_world
from shopcalc.portable.answer import respond
from shopcalc.reference.species import SPECIES
from shopcalc.terms import cosd, degrees, inches, pick, row_of

from .helpers import phone_respond, unlike


def small() -> Setup:
    """A setup with one length and one angle."""
    setup = Setup(slug="small", title="Small", stand="at the saw", job="A small job.", machines=("table saw",))
    setup.length("stock", "Stock", "1", "Calipers across it.")
    setup.angle("tilt", "Tilt", "10", "From square.")
    return setup


stock, tilt, nothing = (sympy.Symbol(name, real=True) for name in ("stock", "tilt", "nothing"))

IMPOSSIBLE: dict[str, tuple[Callable[[Setup], Any], str]] = {
    "a machine used while an unknown name holds": (
        lambda s: s.machine("dado head", when=nothing > inches(1)), "small: the machine dado head (when) uses 'nothing'"),
    "a trial while an unknown name holds": (
        lambda s: s.trial("Cut.", when=nothing > inches(1)), "small: trial 1 (when) uses 'nothing'"),
    "a caution that doubts what is no reading": (
        lambda s: s.caution("no", stock > inches(1), "No.", doubts=stock), "small: the caution no is read by 'stock', which is no reading"),
    "an unknown name": (lambda s: s.setting("fence", "Fence", stock - nothing), "small: fence uses 'nothing', which is declared nowhere above it"),
    "a result used before it is there": (lambda s: s.setting("a", "A", sympy.Symbol("b", real=True)),
    "small: a uses 'b', which is declared nowhere above it"),
    "a length and an angle added": (lambda s: s.setting("fence", "Fence", stock + tilt), "small: fence: "),
    "a length and a bare number added": (lambda s: s.setting("fence", "Fence", stock + 1), "small: fence: "),
    "a length compared with an angle": (lambda s: s.stop("no", stock > tilt, "No.", change=stock), "small: no: "),
    "an angle compared with a bare number": (lambda s: s.caution("no", tilt > 45, "No.", change=tilt), "small: no: "),
    "the cosine of a length": (lambda s: s.setting("fence", "Fence", stock * cosd(stock)), "small: fence: "),
    "cases of different kinds": (lambda s: s.setting("fence", "Fence", pick((stock, stock > inches(1)), otherwise=tilt)), "small: fence: "),
    "an area as a length": (lambda s: s.setting("area", "Area", stock * stock), "small: area: "),
    "an angle as a length": (lambda s: s.setting("fence", "Fence", tilt), "small: fence should be a length and comes out as a angle"),
    "a length as an angle": (lambda s: s.setting("bevel", "Bevel", stock, kind="angle"), "small: bevel should be a angle and comes out as a length"),
    "a length as a check": (lambda s: s.stop("no", stock, "No.", change=stock), "small: no should be a truth and comes out as a length"),
    "a float": (lambda s: s.setting("fence", "Fence", stock * 0.5), "small: fence uses 0.5"),
    "a function the phone lacks": (lambda s: s.setting("fence", "Fence", inches(1) * sympy.log(stock / inches(1))), "small: fence uses log"),
    "a cube root": (lambda s: s.setting("fence", "Fence", stock ** sympy.Rational(1, 3)), "small: fence uses stock**(1/3)"),
    "pi": (lambda s: s.setting("fence", "Fence", stock * sympy.pi), "small: fence uses "),
    "a kind nobody knows": (lambda s: s.size("fence", "Fence", stock, kind="lenght"), "small: fence cannot be of the kind 'lenght'"),
    "a ranking as a size": (lambda s: s.size("fence", "Fence", stock, kind="ranking"), "small: fence cannot be of the kind 'ranking'"),
    "a row as a correction": (lambda s: s.correction("move", "Move", row_of(stock), "M.", "L.", far=None, kind="lengths"),
    "small: the correction move cannot be of the kind 'lengths'"),
    "a correction of nothing read": (lambda s: s.correction("move", "Move", stock, "M.", "L.", far=inches(1)),
    "small: the correction move follows from 0 readings instead of one"),
    "a correction far off by a percent": (lambda s: s.correction("move", "Move", stock / stock, "M.", "L.", far=sympy.Integer(3), kind="percent"),
    "small: move cannot be far off by 3: that is no angle, and no whole number of 128ths of an inch"),
    "a correction far off by no 128th": (lambda s: s.correction("move", "Move", stock, "M.", "L.", far=inches("1/20")),
    "small: move cannot be far off"),
    "a correction far off by a sum": (lambda s: s.correction("move", "Move", stock, "M.", "L.", far=2 * inches("1/16")),
    "small: move cannot be far off by 2*inch_constant(1/16): "),
    "a row as a reading": (lambda s: s.reading("rows", "Rows", "R.", kind="lengths"), "small: the reading rows cannot be of the kind 'lengths'"),
    "an angle as it is": (lambda s: s.size("bevel", "Bevel", tilt, kind="angle", rounding="none"), "small: bevel cannot be rounded 'none'"),
    "twice a row": (lambda s: s.size("rows", "Rows", 2 * row_of(stock), kind="lengths"), "small: rows: 2*row_of(stock): a row is no quantity"),
    "a row and a row": (lambda s: s.size("rows", "Rows", row_of(stock) + row_of(2 * stock), kind="lengths"), "small: rows: "),
    "a row as a check": (lambda s: s.note("rows", row_of(stock) > 0, "R."), "small: rows: "),
    "a table of nothing": (lambda s: s.table("wood", "Wood", "W.", {}), "small: the table of wood has no rows"),
    "a choice of nothing": (lambda s: s.choice("joint", "Joint", "J."), "small: joint has no options to choose from"),
    "a start that cannot be read": (lambda s: s.length("depth", "Depth", "1/0", "D."),
    "small: depth cannot start with '1/0': A fraction cannot be over zero."),
    "a start of nothing": (lambda s: s.length("depth", "Depth", "0", "D."), "small: depth cannot start with '0': This cannot be zero."),
    "a start beyond the most": (lambda s: s.length("depth", "Depth", "7", "D.", most=inches(6)),
    "small: depth cannot start with '7': The most this can be is 6 in."),
    "a start that is no division": (lambda s: s.division("nearest", "Nearest", "7", "N."), "small: nearest cannot start with '7': Choose one of: "),
    "a start without a unit among parts": (lambda s: s.pieces("parts_list", "Parts", "rail 22", "P.", most=9),
    "small: parts_list starts with 'rail 22', which is something else in a metric shop"),
    "a limit that is a sum": (lambda s: s.length("depth", "Depth", "1", "D.", most=2 * inches(6)), "small: depth: 2*inch_constant(6) is no constant"),
    "a size as found by no reading": (lambda s: s.as_found("found", "Found", stock, inches(1)),
    "small: found is read by 'stock', which is no reading"),
    "a size as found by nothing": (lambda s: s.as_found("found", "Found", nothing, inches(1)),
    "small: found is read by 'nothing', which is no reading"),
    "near to nothing": (lambda s: s.near(nothing), "small: 'nothing' is no correction and no size as found"),
    "near to a setting": (lambda s: s.near(s.setting("fence", "Fence", stock)), "small: 'fence' is no correction and no size as found"),
    "a part as long as an angle": (lambda s: s.part("Part", 1, tilt, stock, stock), "small: the part Part should be a length"),
    "a name of the cut list's": (lambda s: s.size("parts", "Parts", stock), "small: 'parts' cannot be a name"),
    "a name twice": (lambda s: s.length("stock", "Stock", "1", "Again."), "small: 'stock' is declared twice"),
    "a result named as an input": (lambda s: s.setting("stock", "Stock", stock), "small: 'stock' is declared twice"),
    "a check named as an input": (lambda s: s.stop("stock", stock > inches(1), "No.", change=stock), "small: 'stock' is declared twice"),
    "a name of the shop's": (lambda s: s.length("tape", "Tape", "1", "The tape."), "small: 'tape' cannot be a name"),
    "a name that every object has": (lambda s: s.length("constructor", "C", "1", "C."), "small: 'constructor' cannot be a name"),
    "an input that a form's fields have": (lambda s: s.length("length", "Length", "1", "L."), "small: 'length' cannot be the name of an input"),
    "a table without such a column": (lambda s: s.table("wood", "Wood", "W.", SPECIES, radial="angle"),
    "small: the table of wood has no angle 'radial'"),
    "a word of Python": (lambda s: s.length("lambda", "L", "1", "L."), "small: 'lambda' cannot be a name"),
    "a name with a capital": (lambda s: s.length("Stock", "Stock", "1", "S."), "small: 'Stock' cannot be a name"),
    "a name with a dash": (lambda s: s.length("a-b", "A", "1", "A."), "small: 'a-b' cannot be a name"),
    "an input without help": (lambda s: s.length("depth", "Depth", "1", ""), "small: depth has no help: say where to put the calipers"),
    "a limit of another kind": (lambda s: s.length("depth", "Depth", "1", "D.", most=degrees(10)),
    "small: depth should be a length and comes out as a angle"),
    "a rounding nobody knows": (lambda s: s.setting("fence", "Fence", stock, rounding="sideways"), "small: fence cannot be rounded 'sideways'"),
    "a division that is no input": (lambda s: s.setting("fence", "Fence", stock, division="nearest"),
    "small: fence is to be rounded to 'nearest', which is no input"),
    "a condition with an unknown name": (lambda s: s.setting("fence", "Fence", stock, when=nothing > inches(1)),
    "small: fence (when) uses 'nothing'"),
    "a step with an unknown condition": (lambda s: s.step("Cut.", when=nothing > inches(1)), "small: step 1 (when) uses 'nothing'"),
    "a check that changes no input": (lambda s: s.stop("no", stock > inches(1), "No.", change=nothing),
    "small: no tells the reader to change 'nothing', which is no input"),
    "a picture with a point that is an angle": (lambda s: s.picture("P.", box("wood", 0, 0, stock, tilt)), "small: picture 1, shape 1 (box)"),
    "a picture of an unknown name": (lambda s: s.picture("P.", box("wood", 0, 0, stock, nothing)), "small: picture 1, shape 1 (box) uses 'nothing'"),
    "a dimension of an unknown name": (
        lambda s: s.picture("P.", dimension(nothing, (0, 0), (stock, 0), "below")), "small: picture 1, shape 1 (dimension) shows 'nothing'",
    ),
    "a way on that carries no input": (lambda s: s.onward("groove", "Groove", stock=nothing),
    "small: the way on to groove carries 'nothing', which is neither an input nor a length"),
    "a way on that carries a number of things": (
        lambda s: s.onward("groove", "Groove", stock=s.size("many", "Many", stock / inches(1), kind="count")),
        "small: the way on to groove carries 'many', which is neither an input nor a length",
    ),
    "another name for data that no input has": (lambda s: s.size("wide", "Wide", stock, known_as="width"),
    "small: wide is known as 'width', which is no input's name"),
}  # fmt: skip


@pytest.mark.parametrize("what", IMPOSSIBLE)
def test_the_impossible_is_refused_where_it_stands(what: str) -> None:
    """One line that cannot be is refused by name as it is declared."""
    declare, message = IMPOSSIBLE[what]
    with pytest.raises(DeclarationError) as refusal:
        declare(small())

    assert str(refusal.value).startswith(message)


def test_words_of_javascript_may_be_names() -> None:
    """Inputs and results that are called as the phone's language speaks are worked out there as here."""
    setup = Setup(slug="words", title="Words", stand="at the saw", job="A small job.")
    words = [setup.length(name, name, "1", "Calipers.") for name in ("case", "function", "void", "known", "numbers")]
    setup.setting("new", "New", sum(words), when=words[0] > inches("1/2"))
    setup.source("Geometry.")
    pages = {"words": setup.finish()}
    with MiniRacer() as engine:
        engine.eval(phone.brain(pages))
        there = phone_respond(engine, "/words.json", {"case": "3"})

    assert 7 == there["data"]["results"]["new"]["value"]
    assert [] == unlike(respond(make_world(pages), "/words.json", {"case": "3"}, ""), there)


@pytest.mark.parametrize("slug", ["Foo Bar/x", "", "job", "a--b", "-a", "a_b"])
def test_an_address_is_small_letters_and_hyphens(slug: str) -> None:
    """A card's address needs no encoding, and is that of no other page."""
    with pytest.raises(DeclarationError, match="the address is"):
        Setup(slug=slug, title="Small", stand="at the saw", job="A job.")


def test_a_machine_without_cautions_is_refused() -> None:
    """A machine for which nobody has written cautions cannot be named."""
    with pytest.raises(DeclarationError, match="small: nobody has written cautions for 'bandsaw': use one of table saw, "):
        Setup(slug="small", title="Small", stand="at the bench", job="A job.", machines=("table saw", "bandsaw"))


def test_a_machine_used_sometimes_needs_cautions_too() -> None:
    """The same for one that is used only while a relation holds."""
    with pytest.raises(DeclarationError, match="small: nobody has written cautions for 'bandsaw': use one of table saw, "):
        small().machine("bandsaw", when=stock > inches(1))


def test_what_has_no_limit_is_always_near() -> None:
    """A size as found that follows its reading however far it is has no condition to share."""
    setup = small()
    read = setup.reading("read", "Read", "On the scrap.")

    assert setup.near(setup.as_found("found", "Found", read, stock)) is sympy.true


def test_nobody_stands_elsewhere() -> None:
    """A setup's stand is one of those the list knows."""
    with pytest.raises(DeclarationError, match="nobody stands 'in the attic'"):
        Setup(slug="small", title="Small", stand="in the attic", job="A job.")


def test_an_unknown_option_is_refused() -> None:
    """A choice is compared with its own options only."""
    with pytest.raises(DeclarationError, match="joint has no option 'glued'"):
        small().choice("joint", "Joint", "The joint.", lapped="lapped").is_("glued")


def test_options_may_have_spaces() -> None:
    """An option of two words is declared with an underscore."""
    setup = small()
    setup.choice("method", "Method", "The method.", two_cuts="two cuts", dado="dado head")

    assert (("two cuts", "two cuts"), ("dado", "dado head")) == setup.inputs["method"].options


def test_an_input_may_be_used_with_one_option_only() -> None:
    """The relation that says so is a formula of the page, after the others."""
    setup = small()
    by = setup.choice("by", "By", "How.", gap="gap", count="count")
    setup.length("gap", "Gap", "1/2", "The gap.", when=by.is_("gap"))

    assert "used gap" == list(setup.formulas())[-1]


def test_whether_an_input_is_used_follows_from_inputs_above_it() -> None:
    """It cannot hang on what is worked out, nor on what is declared below."""
    with pytest.raises(DeclarationError, match="whether gap is used cannot be told from its inputs alone"):
        setup = small()
        fence = setup.setting("fence", "Fence", stock)
        setup.length("gap", "Gap", "1/2", "The gap.", when=fence > inches(1))
    with pytest.raises(DeclarationError, match="declared nowhere above it"):
        small().length("gap", "Gap", "1/2", "The gap.", when=nothing > inches(1))


def test_an_included_card_brings_its_conditions_where_they_can_be_told() -> None:
    """A condition over a choice that the outer card gives falls away; one over a choice that comes along stays."""
    inner = small()
    by = inner.choice("by", "By", "How.", gap="gap", count="count")
    inner.length("gap", "Gap", "1/2", "The gap.", when=by.is_("gap"))
    given, along = (Setup(name, "O", "at the saw", "job") for name in ("given", "along"))
    given.include(inner, by=0, stock=inches(1))
    along.include(inner, stock=inches(1))

    assert (None, True) == (given.inputs["gap"].when, along.inputs["gap"].when is not None)
