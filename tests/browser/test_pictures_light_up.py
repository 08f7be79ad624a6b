"""A field and its dimensions in the drawings show each other."""

import pytest

from .phone import borrowed, ready, until

pytestmark = pytest.mark.browser


@pytest.fixture
def page(held):
    """The hinge layout's card, by an address with an entry: a bare one would have those of the last time filled in meanwhile."""
    with borrowed(held):
        page = held.visit("/hinge-layout?door_height=77+1%2F2")
        ready(page)
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


def test_a_field_that_is_not_drawn_lights_what_follows_from_it(page):
    """The head's gap is not drawn, nor is what follows from it: nothing lights. The hinges' length moves the next hinge."""
    page.locator("#in-gap_head").focus()
    assert page.evaluate(LIT) == []
    page.locator("#in-hinge_length").focus()
    assert page.evaluate(LIT) == ["spacing"]


def test_the_dimension_is_seen_over_the_keys(page):
    """The drawing is far below while its numbers are typed: the stretch of it where the dimension stands is shown above the pad's keys."""
    page.locator("#in-top_offset").tap()
    stretch = page.locator(".pad .stretch svg")
    stretch.wait_for()

    assert stretch.locator("text.lit").text_content() == "top 7"
    number, shown = stretch.locator("text.lit").bounding_box(), stretch.bounding_box()
    assert shown["y"] <= number["y"] < number["y"] + number["height"] <= shown["y"] + shown["height"]
    page.locator("#in-top_offset").fill("8")
    stretch.locator("text.lit", has_text="top 8").wait_for()


def test_a_choice_lights_what_follows_from_it(page):
    """How the slats are given changes their gap."""
    page.goto("/slats?run=16")
    ready(page)
    page.locator("#in-by").focus()

    until(page, f"{LIT}.includes('even_gap')")


def test_a_field_lights_its_dimensions_on_the_cards_inside(page):
    """The gauge block of a frame's tenons is drawn on the tenon's card alone; a tap there leads back to its field."""
    page.goto("/frame?stock=1+1/2")
    ready(page)
    page.locator("#in-gauge_block").focus()
    until(page, f"{LIT}.join() === 'gauge_block'")
    page.locator("#in-kerf").focus()
    until(page, f"!{LIT}.includes('gauge_block')")
    page.locator(".inner .picture text[data-of=gauge_block]").first.click()

    until(page, "document.activeElement.id === 'in-gauge_block'")


def test_the_field_keeps_its_place_when_the_drawing_comes_back(held, page):
    """While an entry is a slip there is no drawing; it comes back with the entry that can be read, and covers nothing."""
    held.excuse("the server responded with a status of 422")
    page.goto("/hinge-layout?top_offset=x")
    page.locator("html[data-hand]").wait_for(state="attached")
    field, pad = page.locator("#in-top_offset"), page.locator(".pad")
    field.tap()
    pad.wait_for()
    field.fill("8")
    pad.locator(".stretch text.lit", has_text="top 8").wait_for()

    until(
        page,
        "document.querySelector('#note-top_offset').getBoundingClientRect().bottom <= document.querySelector('.pad').getBoundingClientRect().top",
    )


def test_the_right_stretch_is_shown_after_the_phones_own_keyboard(page):
    """It has no place for the drawing; back at the keys the number is in sight again."""
    page.locator("#in-bottom_offset").tap()
    page.locator(".pad .turn").tap()
    page.locator("#in-bottom_offset").fill("12")
    page.locator("#sheet .picture text[data-of=bottom_offset]", has_text="12").first.wait_for(state="attached")
    page.locator(".pad .turn").tap()
    number = page.locator(".pad .stretch text.lit", has_text="12")
    number.wait_for()

    shown, box = page.locator(".pad .stretch svg").bounding_box(), number.bounding_box()
    assert shown["y"] <= box["y"] <= box["y"] + box["height"] <= shown["y"] + shown["height"]


def test_the_number_of_a_long_dimension_is_as_large_as_on_the_drawing(page):
    """Of the dimension of a whole door only the middle is shown over the keys, with the number."""
    page.locator("#in-door_height").tap()
    number = page.locator(".pad .stretch text.lit")
    number.wait_for()

    assert number.bounding_box()["height"] > 10


def test_a_dimension_over_the_keys_leads_to_its_field(page):
    """A tap on another number there goes on to its field, whose dimension is then lit."""
    page.goto("/hinge-mortise?leaf=3/32")
    ready(page)
    page.locator("#in-leaf").tap()
    page.locator(".pad .stretch text[data-of=other_leaf]").tap()

    until(page, "document.activeElement.id === 'in-other_leaf'")
    page.locator(".pad .stretch text.lit[data-of=other_leaf]").wait_for()


def test_on_a_small_phone_the_field_has_the_room(page):
    """Where answer, field and keys fill the screen there is no picture."""
    page.set_viewport_size({"width": 360, "height": 640})
    page.locator("#in-top_offset").tap()
    page.locator(".pad .digits").wait_for()

    assert not page.locator(".pad .stretch").is_visible()


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
