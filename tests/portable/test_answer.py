"""What an address means."""

import pytest

from shopcalc import exact
from shopcalc.render import render


@pytest.mark.parametrize(
    ("path", "part", "status", "template"),
    [
        ("/", "", 200, "list"),
        ("/shop", "", 200, "shop"),
        ("/shop", "opening", 200, "shop"),
        ("/shop", "rest", 200, "shop"),
        ("/shop", "answer", 200, "answer"),
        ("/shop", "sheet", 200, "sheet"),
        ("/tenon", "", 200, "page"),
        ("/tenon", "opening", 200, "page"),
        ("/tenon", "rest", 200, "rest"),
        ("/tenon", "answer", 200, "answer"),
        ("/tenon", "sheet", 200, "sheet"),
        ("/tenon", "anything", 200, "page"),
        ("/nothing", "", 404, "missing"),
        ("/tenon/", "", 200, "page"),
        ("/tenon/index.html", "", 200, "page"),
        ("/tenon//", "", 404, "missing"),
    ],
)
def test_addresses(path: str, part: str, status: int, template: str) -> None:
    """An address is a list, a card, a part of a card, or nothing."""
    found = exact.answer(path, {}, part)

    assert (status, template) == (found["status"], found["template"])


def test_the_list_is_by_where_one_stands() -> None:
    """Every setup is listed once, under where one stands to use it."""
    stands = exact.answer("/", {})["view"]["stands"]

    assert sorted(exact.world()["setups"]) == sorted(each["address"][1:] for stand in stands for each in stand["setups"])
    assert ["at the saw", "at the bench", "on the building", "at the desk"] == [stand["stand"] for stand in stands]


def test_a_wrong_entry_answers_422_with_its_reason() -> None:
    """With an entry that cannot be read there is no answer, but its reason."""
    found = exact.answer("/tenon", {"stock": "1/0"})

    assert (422, [], [("stock", "A fraction cannot be over zero.")]) == (
        found["status"],
        found["view"]["answers"],
        [(one["name"], one["note"]) for one in found["view"]["wrong"]],
    )


def test_data_of_no_card_is_an_error() -> None:
    """An address of data that is nowhere answers with data."""
    found = exact.answer("/nothing.json", {})

    assert (404, {"errors": {"setup": "There is no card called nothing."}}) == (found["status"], found["data"])


def test_a_page_sets_unknown_names_aside_and_data_refuses_them() -> None:
    """A link with a name too many still opens; a script with one is told."""
    page, data = exact.answer("/tenon", {"colour": "1"}), exact.answer("/tenon.json", {"colour": "1"})

    assert (200, [{"name": "colour", "shown": "colour"}]) == (page["status"], page["view"]["unknown"])
    assert (422, {"errors": {"colour": "tenon has no input of this name."}}) == (data["status"], data["data"])


def test_the_shop_is_no_unknown_name() -> None:
    """Tape and units belong to the shop."""
    assert [] == exact.answer("/tenon", {"tape": "64", "units": "mm"})["view"]["unknown"]


def test_the_shape_of_data() -> None:
    """A card as data has its title, inputs, results, checks, steps and trial."""
    data = exact.answer("/groove.json", {"groove_width": "5/16", "measured_groove": "0.32"})["data"]

    assert ["setup", "title", "inputs", "results", "checks", "steps", "includes", "trial"] == list(data)
    assert {"value": 0.3125, "text": "5/16"} == data["inputs"]["groove_width"]
    assert {"value": 0.53125, "text": "17/32", "kind": "length", "decimal": 0.531, "mm": 13.5} == {
        name: float(value) if name in ("decimal", "mm") else value for name, value in data["results"]["fence"].items()
    }
    assert ["level", "name", "text"] == list(data["checks"][0])
    assert ["Too wide: move the fence 0.004 in away from the cutter."] == data["trial"]["corrections"]


def test_data_tells_of_no_trial_where_nothing_can_be_cut() -> None:
    """On a stop the trial is left out of the data as it is of the page."""
    texts = [exact.answer("/groove.json", {"cutter": cutter})["data"]["trial"]["text"] for cutter in ("1/4", "1")]

    assert [True, False] == [len(text) > 0 for text in texts]


def test_only_lengths_have_decimals_and_millimetres() -> None:
    """An angle or a count has neither."""
    results = exact.answer("/ridge-cap.json", {})["data"]["results"]

    assert {"value": 30, "text": "30\u00b0", "kind": "angle", "decimal": None, "mm": None} == results["edge_bevel"]


def test_a_row_of_lengths_has_a_row_of_decimals_and_one_of_millimetres() -> None:
    """Marks, as any length, are there to be set on a scale of either kind."""
    marks = exact.answer("/slats.json", {})["data"]["results"]["marks"]

    assert [0, 2.8, 5.6, 8.4, 11.2, 14] == [float(each) for each in marks["decimal"]]
    assert [0, 71.1, 142.2, 213.4, 284.5, 355.6] == [float(each) for each in marks["mm"]]


def test_a_choice_is_data_by_its_word() -> None:
    """A choice's value is the option's name."""
    assert {"value": "mitred", "text": "mitred"} == exact.answer("/ridge-cap.json", {"joint": "mitred"})["data"]["inputs"]["joint"]


def test_a_blank_reading_is_no_input_of_data() -> None:
    """Data has no value for a reading not yet taken."""
    assert "measured_groove" not in exact.answer("/groove.json", {})["data"]["inputs"]


def test_a_page_that_opens_leaves_the_rest_for_later() -> None:
    """The opening page has its answer and asks for form and sheet once it is painted; a part has only its own."""
    views = {part: exact.answer("/tenon", {}, part)["view"] for part in ("", "opening", "rest", "answer", "sheet")}

    assert {"": 1, "opening": 0, "rest": 1, "answer": 0, "sheet": 1} == {part: len(view["sheets"]) for part, view in views.items()}
    assert ["opening"] == [part for part, view in views.items() if view["opening"]]
    assert ["sheet"] == [part for part, view in views.items() if view["renewed"]]


def test_an_opening_page_and_its_rest_are_the_whole_page() -> None:
    """Nothing is lost on the way: the rest in its place makes the page that a browser without scripts is sent."""
    whole, opening, rest = (exact.answer("/frame", {"stock": "1 1/2"}, part) for part in ("", "opening", "rest"))
    opened = render(opening["template"], {**opening["view"], "opening": False, "sheets": rest["view"]["sheets"]})

    assert render(rest["template"], rest["view"]) in render(whole["template"], whole["view"])
    assert render(whole["template"], whole["view"]) == opened


def test_asking_changes_nothing() -> None:
    """The same question has the same answer twice, whatever was asked between."""
    first = exact.answer("/tenon", {"stock": "2"})
    exact.answer("/tenon", {"stock": "3", "fit": "x"})

    assert first == exact.answer("/tenon", {"stock": "2"})


@pytest.mark.parametrize("name", ["Stock", "7", "constructor", "<i>", "~x"])
def test_an_unknown_name_is_told_as_it_was_typed(name: str) -> None:
    """Whatever name a link has, it is shown as it stands there."""
    view = exact.answer("/tenon", {name: "1"})["view"]

    assert [name] == [each["shown"] for each in view["unknown"]]
