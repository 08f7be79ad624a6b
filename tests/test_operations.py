"""The word `operation`: what is run at one machine with one setting."""

from typing import Any

import pytest
import sympy

from shopcalc.catalogue import setups
from shopcalc.declare import DeclarationError, Setup
from shopcalc.describe import describe
from shopcalc.records import RUNS, STAGES
from shopcalc.terms import inches

# Readings that no run of their card takes.
UNREAD = {
    "angle.measured_rise": "the angle is cut at another card's machine",
    "screw.measured_body": "calipers on the screw itself, before a hole is drilled",
}
# Cards at the desk run nothing.
NOTHING_RUN = {"angle", "boards", "fractions"}


def joint() -> Setup:
    """A setup with an input, a reading, a setting and a part."""
    setup = Setup(slug="joint", title="Joint", stand="at the saw", job="A joint.", machines=("table saw",))
    stock = setup.length("stock", "Stock", "1", "Calipers.")
    half = setup.setting("half", "Half of it", stock / 2)
    found = setup.reading("found", "As found", "Calipers on the scrap.")
    setup.correction("move", "Fence", found - half, more="Move it {size} out.", less="Move it {size} in.", far=inches("1/8"))
    setup.choice("way", "Way", "Which.", up="up", down="down")
    setup.part("Rail", 2, stock, stock, stock)
    setup.trial("Cut a scrap.")
    setup.source("Geometry.")
    return setup


def value(name: str) -> sympy.Symbol:
    """A value by its name, declared or not."""
    return sympy.Symbol(name, real=True)


def test_an_operation_is_described() -> None:
    """Its stage by place, settings with their labels, parts by place, and all that is left unsaid as nothing."""
    setup = joint()
    setup.operation(
        "cut", "rip", "Cut it", value("half"), ("Stop", value("stock")), face="Face down, {half}.", parts=["Rail"], reading=value("found")
    )
    (found,) = describe(setup)["operations"]

    assert {
        "name": "cut", "stage": 1, "label": "Cut it", "machine": "table saw", "settings": [["half", ""], ["stock", "Stop"]],
        "face": "Face down, {half}.", "parts": [0], "reading": "found", "when": False, "run": "",
    } == found  # fmt: skip


def test_a_run_that_setups_share_says_its_own_words() -> None:
    """Rips of all setups have one stage, machine, label and word, so that they merge."""
    setup = joint()
    setup.run("rip", value("stock"), parts=["Rail"])
    setup.run("rip", value("half"), face="The other edge.", when=value("half") > value("stock") / 4)
    first, second = describe(setup)["operations"]

    assert ("rip_stock", [["stock", "Fence to blade"]], "Jointed edge to the fence.") == (first["name"], first["settings"], first["face"])
    assert ("rip_half", [["half", "Fence to blade"]], "The other edge.", True) == (second["name"], second["settings"], second["face"], second["when"])
    assert [("rip", 1, "table saw", "Rip to width")] * 2 == [(each["run"], each["stage"], each["machine"], each["label"]) for each in (first, second)]
    assert "run 1" in setup.formulas()


@pytest.mark.parametrize(
    ("given", "more", "message"),
    [
        (("Cut", "rip", "Cut it"), {}, "'Cut' cannot be the name of an operation"),
        (("cut", "saw", "Cut it"), {}, "the operation cut belongs to 'saw', which is no stage: use one of mill, rip, crosscut"),
        (("cut", "rip", "Cut it"), {"machine": "axe"}, "the operation cut is run at 'axe': use one of table saw"),
        (("cut", "rip", "Cut it", value("third")), {}, "the operation cut is set to 'third', which is no value declared above it"),
        (("cut", "rip", "Cut it", value("way")), {}, "the operation cut is set to 'way', which is no value declared above it"),
        (("cut", "rip", "Cut it"), {"parts": ["Stile"]}, "the operation cut passes 'Stile', which is no part"),
        (("cut", "rip", "Cut it"), {"reading": value("stock")}, "the operation cut is read by 'stock', which is no reading"),
        (("cut", "rip", "Cut it"), {"reading": value("depth")}, "the operation cut is read by 'depth', which is no reading"),
        (("cut", "rip", "Cut it"), {"when": value("depth") > 0}, "the operation cut (when) uses 'depth', which is declared nowhere above it"),
    ],
)
def test_impossible_operations_are_refused(given: tuple[Any, ...], more: dict[str, Any], message: str) -> None:
    """The message names the operation and what it wants that is not there."""
    with pytest.raises(DeclarationError) as refusal:
        joint().operation(*given, **more)

    assert str(refusal.value).startswith(f"joint: {message}")


def test_a_name_is_given_once() -> None:
    """Two operations of one name are refused."""
    setup = joint()
    setup.operation("cut", "rip", "Cut it")
    with pytest.raises(DeclarationError, match="joint: the operation cut is declared twice"):
        setup.operation("cut", "fit", "Fit it")


def test_a_face_quotes_what_is_declared() -> None:
    """A sentence about faces may quote a value, and only one that is there."""
    setup = joint()
    setup.operation("cut", "rip", "Cut it", face="Face down, {depth} up.")
    with pytest.raises(DeclarationError, match="joint: the operation cut quotes 'depth', which is declared nowhere"):
        setup.finish()


@pytest.mark.parametrize("given", [("plane",), ("rip",), ("dry fit", value("stock"))])
def test_a_shared_run_is_one_of_a_few(given: tuple[Any, ...]) -> None:
    """A word that is not shared, or another number of settings than it has, is refused."""
    with pytest.raises(DeclarationError, match=f"joint: '{given[0]}' set to {len(given) - 1} is no run that setups share"):
        joint().run(*given)


def outside(passes: dict[str, Any]) -> Setup:
    """A setup with a joint inside it, and a part of its own."""
    inside = joint()
    inside.operation("cut", "rip", "Cut it", value("half"))
    setup = Setup(slug="outside", title="Outside", stand="at the saw", job="A joint in it.")
    stock = setup.length("wood", "Wood", "1", "Calipers.")
    setup.include(inside, passes, stock=stock)
    setup.part("Stile", 2, stock, stock, stock)
    setup.source("Geometry.")
    return setup.finish()


def test_parts_pass_through_the_operations_of_an_included_setup() -> None:
    """They are named by the labels of the setup around it, which may be declared further down."""
    assert {"cut": [0]} == describe(outside({"cut": ["Stile"]}))["includes"][0]["passes"]


@pytest.mark.parametrize(
    ("passes", "message"),
    [({"rip": ["Stile"]}, "joint has no operation 'rip'"), ({"cut": ["Rail"]}, "joint's operation cut passes 'Rail', which is no part")],
)
def test_what_cannot_pass_is_refused(passes: dict[str, Any], message: str) -> None:
    """An operation that is not there, or a part that is not."""
    with pytest.raises(DeclarationError, match=f"outside: {message}"):
        outside(passes)


def test_a_reading_is_never_given() -> None:
    """An included setup's reading is lifted, so that its run has one box."""
    setup = Setup(slug="outside", title="Outside", stand="at the saw", job="A joint in it.")
    wood = setup.length("wood", "Wood", "1", "Calipers.")
    with pytest.raises(DeclarationError, match=r"outside: joint\.found is a reading, which is taken and not given"):
        setup.include(joint(), stock=wood, found=wood)


def test_shared_runs_are_well_said() -> None:
    """Every shared run belongs to a stage, and says which face goes where."""
    assert [] == [word for word, run in RUNS.items() if run.stage not in STAGES or not run.face.endswith(".")]


@pytest.mark.parametrize("slug", setups())
def test_every_card_but_a_desks_has_something_to_run(slug: str) -> None:
    """Each operation of every card says which face goes where, in a short sentence."""
    operations = setups()[slug].operations.values()

    assert (slug in NOTHING_RUN) == (not operations)
    assert [] == [each.name for each in operations if not each.face.endswith(".") or len(each.face) > 130]


@pytest.mark.parametrize("slug", setups())
def test_every_reading_belongs_to_a_run(slug: str) -> None:
    """Each reading of a card's own is taken at one of its operations, unless it is listed with a reason."""
    setup = setups()[slug]
    lifted = {name for include in setup.includes for name in include.setup.inputs}
    readings = {each.name for each in setup.inputs.values() if each.reading} - lifted
    taken = {each.reading for each in setup.operations.values()}

    assert {name for name in readings if f"{slug}.{name}" not in UNREAD} == taken - {""}


@pytest.mark.parametrize("slug", setups())
def test_no_input_alone_keeps_an_operation(slug: str) -> None:
    """Where a stop takes a setting away, an input beside it does not keep the run: such a run has parts or a condition."""
    setup = setups()[slug]
    mixed = [each for each in setup.operations.values() if {name in setup.inputs for name, _ in each.settings} == {True, False}]
    partial = [check for check in setup.checks.values() if check.level == "stop" and check.spoils is not None]

    assert [] == [each.name for each in mixed if partial and each.when is None and not each.parts]
