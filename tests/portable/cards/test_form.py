"""The form's fields."""

from typing import Any

import pytest

from shopcalc import exact
from shopcalc.portable.cards.form import change_label, input_fields
from shopcalc.portable.cards.work import read_entries, read_shop


def fields(slug: str, **typed: str) -> dict[str, dict[str, Any]]:
    """The fields of a card by name."""
    about, shop = exact.world()["setups"][slug]["about"], read_shop(typed)
    found = input_fields(about, read_entries(about, typed, shop, exact.world()), shop, exact.world())
    return {field["name"]: field for field in found}


@pytest.mark.parametrize(
    ("typed", "note"),
    {
        "3 5/8": "3.625\u00a0in \u00b7 92.1\u00a0mm",
        "6' 6\"": "6\u00a0ft\u00a06\u00a0in \u00b7 1981.2\u00a0mm",
        "78.003": "78.003\u00a0in \u00b7 1981.3\u00a0mm",
        "92.1 mm": "3.626\u00a0in \u00b7 92.1\u00a0mm",
    }.items(),
)
def test_a_length_is_echoed_as_it_was_read(typed: str, note: str) -> None:
    """Beside a length stands what it was read as, in inches, millimetres and feet."""
    assert note == fields("groove", stock=typed)["stock"]["note"]


def test_a_metric_shop_is_told_its_own_unit_first() -> None:
    """Millimetres before inches, and no feet."""
    assert "1981.2\u00a0mm \u00b7 78.000\u00a0in" == fields("groove", stock="78 in", units="mm")["stock"]["note"]


@pytest.mark.parametrize(("typed", "note"), {"5 in 12": "22.62\u00b0", "30": "30\u00b0", "30\u00b0": ""}.items())
def test_an_angle_is_echoed_unless_it_says_so_already(typed: str, note: str) -> None:
    """A slope is echoed in degrees; degrees need no echo."""
    assert note == fields("angle", angle=typed)["angle"]["note"]


def test_a_wrong_entry_keeps_what_was_typed() -> None:
    """An entry that cannot be read stays in its field, with the reason beside it."""
    field = fields("groove", stock="1,5")["stock"]

    assert ("1,5", True, "Write decimals with a point, not a comma.") == (field["text"], field["wrong"], field["note"])


def test_a_choice_shows_which_option_is_chosen() -> None:
    """Of a choice's options the one typed is marked."""
    field = fields("ridge-cap", joint="mitred")["joint"]

    assert [("lapped", False), ("mitred", True)] == [(option["value"], option["chosen"]) for option in field["options"]]


def test_a_blank_reading_is_not_wrong() -> None:
    """A reading is marked as one, and may be blank."""
    field = fields("groove")["measured_groove"]

    assert (True, False, "") == (field["is_reading"], field["wrong"], field["note"])


def test_what_a_check_asks_for() -> None:
    """A value is to be changed, a reading to be taken again, and an unknown name stands for itself."""
    about = exact.world()["setups"]["groove"]["about"]

    asked = [change_label(about, name) for name in ("stock", "measured_groove", "nothing")]

    assert ["Change: Stock thickness", "Read again: Groove as it measures", "nothing"] == asked


@pytest.mark.parametrize(("typed", "note"), {"0.008, .02": "0.008, 0.020", "1/64, 0.004": "", "7/64;0.5 mm": "7/64, 0.020"}.items())
def test_a_row_of_pieces_is_echoed_piece_by_piece(typed: str, note: str) -> None:
    """A piece is echoed as it is and never as a mark of the tape; what says so already needs no echo."""
    assert note == fields("dado-stack", shims=typed)["shims"]["note"]


def test_a_field_says_which_keys_it_wants() -> None:
    """Figures for a count or a part of a hundred, signs and brackets and the whole width for a sum."""
    wanted = [fields(slug)[name] for slug, name in (("fractions", "entry"), ("slats", "count"), ("groove", "stock"))]

    assert [(True, False, True), (False, True, False), (False, False, False)] == [(one["is_sum"], one["is_count"], one["is_wide"]) for one in wanted]
    assert any(one["is_percent"] for one in fields("wood-movement").values())
