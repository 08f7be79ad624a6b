"""A field and its dimensions in the drawings show each other."""

import pytest

from .phone import borrowed, until, wait_for_card

pytestmark = pytest.mark.browser


@pytest.fixture
def page(held):
    """The hinge layout's card, by an address with an entry: a bare one would have those of the last time filled in meanwhile."""
    with borrowed(held):
        page = held.visit("/hinge-layout?door_height=77+1%2F2")
        wait_for_card(page)
        page.locator("html[data-hand]").wait_for(state="attached")
        yield page


LIT = "[...new Set([...document.querySelectorAll('#sheet .picture .lit')].map(each => each.dataset.of))]"


def word(page, of):
    """A dimension's number in a drawing of the card's own."""
    return page.locator(f"#sheet > .picture text[data-of={of}]").first


def test_a_tapped_field_lights_its_dimensions(page):
    """Every dimension of that measurement, line and number, and no other."""
    page.locator("#in-door_height").tap()

    until(page, f"{LIT}.join() === 'door_height'")
    assert page.evaluate("[...document.querySelectorAll('#sheet .lit')].map(each => each.tagName).includes('path')")


def test_a_field_reached_by_keyboard_lights_its_dimensions(page):
    """The same by Tab, and the light moves on with the focus."""
    page.locator("#in-door_height").focus()
    assert page.evaluate(LIT) == ["door_height"]
    page.locator("#in-top_offset").focus()
    assert page.evaluate(LIT) == ["top_offset"]


def test_the_light_goes_with_the_focus(page):
    """With no field being filled in nothing is lit."""
    page.locator("#in-door_height").focus()
    page.locator("#in-door_height").blur()

    assert page.evaluate(LIT) == []


def test_a_light_stays_through_a_new_sheet(page):
    """What is typed draws the pictures anew, with the same dimension lit."""
    page.locator("#in-door_height").fill("79")
    word(page, "door_height").filter(has_text="79").wait_for()

    until(page, f"{LIT}.join() === 'door_height'")


def test_a_tapped_dimension_leads_to_its_field(page):
    """The number on the drawing, or near enough to it for a finger: its field has the focus and the pad."""
    word(page, "top_offset").scroll_into_view_if_needed()
    box = word(page, "top_offset").bounding_box()
    page.touchscreen.tap(box["x"] + box["width"] / 2, box["y"] - 15)

    until(page, "document.activeElement.id === 'in-top_offset'")
    page.get_by_role("group", name="Keys for").wait_for()


def test_a_result_on_a_drawing_leads_to_its_row(page):
    """What follows has no field: its row in the sheet comes into sight and is marked."""
    word(page, "spacing").scroll_into_view_if_needed()
    word(page, "spacing").tap()

    page.locator("li.lit[data-of=spacing], div.lit[data-of=spacing]").first.wait_for()
    assert page.evaluate("document.activeElement.closest('.pad, #inputs')") is None
