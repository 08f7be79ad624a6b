"""Where the focus goes, what is in sight of it, and what is said to who does not look."""

import pytest

from .jobs import settled, turn_to, with_boathouse
from .phone import Phone, until

pytestmark = pytest.mark.browser

BELOW = """() => {
    const line = document.querySelector('#answer .readout').getBoundingClientRect().bottom;
    return document.querySelector(location.hash).getBoundingClientRect().top - line;
}"""
SHOWN = """field => {
    const { top, bottom } = field.getBoundingClientRect();
    return top >= document.querySelector('#answer .readout').getBoundingClientRect().bottom && bottom <= innerHeight;
}"""
ACTIVE = "document.activeElement.id || document.activeElement.textContent"


def in_hand(phone: Phone, path: str):
    """A page whose scripts for the hand listen."""
    page = phone.visit(path)
    # what scrolls smoothly is not there at once
    page.emulate_media(reduced_motion="reduce")
    until(page, "'hand' in document.documentElement.dataset")
    return page


@pytest.mark.parametrize("path", ["/", "/shop", "/job"])
def test_the_hand_is_served_where_there_is_no_answer(copyless: Phone, path: str) -> None:
    """The scripts for the hand listen on the list, in the shop and on the page of the jobs too."""
    in_hand(copyless, path)


@pytest.mark.parametrize("slug", ["tenon", "frame", "groove"])
def test_what_is_jumped_to_stands_below_the_answer(copyless: Phone, slug: str) -> None:
    """The answer sticks to the top of the screen, and covers no heading that a link goes to."""
    page = in_hand(copyless, f"/{slug}")
    until(page, "parseFloat(document.documentElement.style.scrollPaddingTop) > 100")
    page.locator(".jump a").first.click()
    until(page, "location.hash.startsWith('#order')")

    assert page.evaluate(BELOW) >= 0


def test_the_answer_covers_no_field_that_has_the_focus(copyless: Phone) -> None:
    """Backward through the form each field comes into sight below the answer."""
    page = in_hand(copyless, "/frame")
    until(page, "parseFloat(document.documentElement.style.scrollPaddingTop) > 100")
    page.locator("#inputs input:not([type=hidden])").last.focus()
    hidden = []
    for _ in range(12):
        page.keyboard.press("Shift+Tab")
        if not page.evaluate_handle("document.activeElement").as_element().evaluate(SHOWN):
            hidden.append(page.evaluate("document.activeElement.id"))

    assert [] == hidden


def test_a_caution_that_comes_is_said(copyless: Phone) -> None:
    """A new answer's cautions are said, and not its notes, which are many; one that stands is said no second time."""
    page = in_hand(copyless, "/tenon?stock=1+3/8&groove_width=3/8&gauge_block=1")
    page.locator("#in-gauge_block").fill("1/8")
    until(page, "document.getElementById('warn').textContent.includes('Caution. A gauge block')")
    page.evaluate("document.getElementById('warn').firstChild.standing = true")
    page.locator("#in-stock").fill("1 1/2")
    until(page, "document.getElementById('say').textContent.includes('nine sixteenths')")

    assert page.evaluate("document.getElementById('warn').firstChild.standing")


def test_the_large_answer_says_its_number_with_the_next(copyless: Phone) -> None:
    """The button that has the focus is described by the setting and its number."""
    page = in_hand(copyless, "/tenon?stock=1+3/8&groove_width=5/16&fit=0")
    page.locator("#answer .grow").click()
    said = page.evaluate(
        "document.activeElement.getAttribute('aria-describedby').split(' ').map(id => document.getElementById(id).textContent).join(': ')"
    )

    assert "Blade height for the shoulder" in said
    assert "seventeen thirty-seconds" in said


def test_the_large_answer_keeps_its_room_in_large_letters(copyless: Phone) -> None:
    """With letters twice as large the ways on stand one below the other, and nothing has to be scrolled."""
    page = in_hand(copyless, "/tenon")
    page.evaluate("document.documentElement.style.fontSize = '200%'")
    page.locator("#answer .grow").click()
    sheet = page.locator("dialog.sheet")

    assert sheet.evaluate("each => each.scrollHeight <= each.clientHeight")
    assert sheet.locator(".huge").evaluate("each => parseFloat(each.style.fontSize)") > 80


def test_every_key_can_be_reached_on_a_page_four_times_as_large(copyless: Phone) -> None:
    """Where the pad is as tall as the screen it scrolls, and Done stays at its top."""
    page = in_hand(copyless, "/tenon")
    page.set_viewport_size({"width": 320, "height": 256})
    page.locator("#in-stock").tap()
    done = page.locator("#pad .done")
    done.wait_for()

    assert done.evaluate("each => { const { top, bottom } = each.getBoundingClientRect(); return top >= 0 && bottom <= innerHeight; }")
    page.set_viewport_size({"width": 390, "height": 844})


def test_the_order_of_work_fits_the_narrowest_screen(shop: Phone) -> None:
    """Nothing of it is wider than 320 px."""
    page = with_boathouse(shop)
    page.set_viewport_size({"width": 320, "height": 568})

    assert page.evaluate("document.documentElement.scrollWidth") <= 320
    page.set_viewport_size({"width": 390, "height": 844})


def test_keys_go_on_from_where_they_were_in_a_job(shop: Phone) -> None:
    """A count is typed and left: the page is drawn anew, and what had the focus has it still."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.locator("[data-key=quantity]").first.fill("2")
    page.keyboard.press("Tab")
    settled(page)
    until(page, "document.querySelector('[data-key=quantity]').value === '2'")

    assert page.evaluate(ACTIVE).startswith("card-")


def test_what_takes_an_item_out_hands_the_focus_to_what_puts_it_back(shop: Phone) -> None:
    """Of an item, and of a whole job."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.get_by_role("button", name="Take out Side door").focus()
    page.keyboard.press("Enter")
    until(page, "document.activeElement.textContent === 'Put it back'")
    assert page.locator("#job-says").inner_text().startswith("Side door is taken out.")
    page.keyboard.press("Enter")
    until(page, "document.activeElement.id.startsWith('label-')")
    page.on("dialog", lambda dialog: dialog.accept())
    page.get_by_role("button", name="Delete this job").focus()
    page.keyboard.press("Enter")
    until(page, "document.activeElement.textContent === 'Put it back'")
    page.keyboard.press("Enter")

    until(page, "document.activeElement.id === 'job-choice'")


def test_what_a_reading_asks_for_is_said(shop: Phone) -> None:
    """A slip and a correction at a run are heard, and not only seen."""
    page = with_boathouse(shop)
    reading = page.locator("[data-set=readings]").first
    reading.fill("banana")
    reading.press("Enter")
    until(page, "document.getElementById('job-heard').textContent.length > 0")
    said = page.locator("#job-heard").text_content()

    assert said == page.locator(".read-here .note.wrong:not(:empty)").text_content()


def test_a_board_that_cannot_be_read_says_which_entry(shop: Phone) -> None:
    """The entry is marked, and its note belongs to it."""
    page = with_boathouse(shop)
    turn_to(page, "Boards")
    page.locator("#lumber-thickness-0").fill("banana")
    page.locator("#lumber-thickness-0").press("Tab")
    page.locator("#lumber-thickness-0[aria-invalid]").wait_for()
    note = page.locator("#lumber-thickness-0").get_attribute("aria-describedby")

    assert page.locator(f"#{note}").inner_text().startswith("Thickness: ")
    assert page.locator("#lumber-width-0[aria-invalid]").count() == 0


def test_done_on_a_run_goes_to_its_tick(shop: Phone) -> None:
    """With the reading typed by thumb, what comes next has the focus."""
    page = with_boathouse(shop)
    until(page, "'hand' in document.documentElement.dataset")
    page.locator("[data-set=readings]").first.tap()
    page.locator("#pad").wait_for()
    page.locator("#pad").get_by_role("button", name="Done").tap()

    until(page, "document.activeElement.matches('.tick input')")


def test_a_page_is_not_drawn_anew_under_a_finger(shop: Phone) -> None:
    """What is typed is worked out as the next thing is pressed: that is let go first, or it would be pressed in vain."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.locator("[data-key=quantity]").first.fill("2")
    box = page.locator("#view-boards").bounding_box()
    page.mouse.move(box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    page.mouse.down()
    page.wait_for_timeout(1500)
    page.mouse.up()

    page.locator("#boards").wait_for()
    settled(page)
