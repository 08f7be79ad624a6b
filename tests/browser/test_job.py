"""A job in the hand: put together, ticked, measured, and read by whoever works from it."""

import json

import pytest

from .jobs import job_page, kept, settled, turn_to, wait_until_kept, with_boathouse
from .phone import Phone, ready, until, wait_for_card

pytestmark = pytest.mark.browser


def test_the_boathouse_shows_order_cuts_and_boards(shop: Phone) -> None:
    """One tap loads the demo, and every view of it stands there with no signal."""
    page = with_boathouse(shop)

    assert page.locator(".items li").count() == 7
    assert page.locator(".stage h3").first.inner_text().lower() == "mill"
    assert page.locator("#work .parts").count() >= 3
    turn_to(page, "Boards")
    assert page.locator(".laid svg").count() >= 2


def test_a_second_tap_says_that_it_is_there_twice(shop: Phone) -> None:
    """Two sash may be wanted, and a tap that was doubled is seen; other entries are another item."""
    page = shop.visit("/tenon?stock=1+1/2")
    wait_for_card(page)
    add = page.get_by_role("button", name="Add to the job")
    add.click()
    page.get_by_text("Added to \u201cMy job\u201d").wait_for()
    add.click()
    page.get_by_text("Added once more, with the same entries, to \u201cMy job\u201d").wait_for()
    page.locator("#in-stock").fill("1 3/4")
    add.click()
    page.get_by_text("Added to \u201cMy job\u201d").wait_for()


def test_a_card_is_added_and_edited_from_the_job(shop: Phone) -> None:
    """The card's button puts it into a job; its link goes back to the card with what was typed, and what is changed there is kept."""
    page = shop.visit("/tenon?stock=1+1/2")
    wait_for_card(page)
    page.get_by_role("button", name="Add to the job").click()
    page.get_by_role("link", name="See the job").click()
    page.locator("#work .items li").first.wait_for()
    assert page.locator("#label-1").input_value() == "Stub tenon"

    page.get_by_role("link", name="Its card").click()
    wait_for_card(page)
    assert page.locator("#in-stock").input_value() == "1 1/2"
    page.locator("#in-stock").fill("1 3/4")
    page.get_by_text("Saved to “My job”").wait_for()
    assert page.get_by_role("button", name="Add to the job").count() == 0

    [job] = kept(page)
    assert [(item["id"], item["inputs"]["stock"]) for item in job["items"]] == [(1, "1 3/4")]


def test_a_tap_beside_the_open_pad_is_no_tap_in_vain(phone: Phone) -> None:
    """What the pad covered comes back when the tap is over, and not under the finger; what was typed is in the item."""
    page = phone.visit("/ridge-cap")
    ready(page)
    page.locator("#in-cover").tap()
    page.locator(".pad").get_by_role("button", name="5", exact=True).tap()
    page.get_by_role("button", name="Add to the job").tap()
    page.locator("#job-added", has_text="Added to").wait_for()

    assert ["5"] == [item["inputs"]["cover"] for item in kept(page)[0]["items"]]
    page.locator(".pad").wait_for(state="hidden")


def test_what_was_added_is_not_what_is_typed_after_it(phone: Phone) -> None:
    """The word that it is in the job goes with the next key."""
    page = phone.visit("/ridge-cap")
    ready(page)
    page.get_by_role("button", name="Add to the job").tap()
    page.locator("#job-added", has_text="Added to").wait_for()
    page.locator("#in-cover").fill("6")

    page.locator("#job-added").wait_for(state="hidden")


def test_the_card_of_an_item_says_whose_it_is(shop: Phone) -> None:
    """At its head; it has no way back to entries that would be another card's, and the card by itself does not take its entries."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.get_by_role("link", name="Its card").first.click()
    page.locator(".stand", has_text="in “Boathouse").wait_for()
    assert not page.get_by_text("Back to the starting values").is_visible()

    page.locator("#in-opening_width").fill("41")
    page.locator("#job-added", has_text="Saved to").wait_for()
    page.wait_for_load_state("networkidle")
    page.goto("/frame")
    ready(page)
    assert "41" != page.locator("#in-opening_width").input_value()


def test_the_card_of_an_item_says_when_its_unit_is_not_the_shops(phone: Phone) -> None:
    """In a metric shop a job may be in inches: 860 would be 71 feet."""
    page = with_boathouse(phone)
    page.evaluate("localStorage['shopcalc.shop.1'] = '[[\"units\",\"mm\"]]'")
    turn_to(page, "Items")
    page.get_by_role("link", name="Its card").first.click()

    page.locator(".stand", has_text="Side door, in “Boathouse”. Bare numbers here are inches.").wait_for()


def test_a_tap_that_is_answered_leaves_no_word_of_a_failure(shop: Phone) -> None:
    """Whatever had the focus, a button or nothing at all, the page is drawn to its end."""
    page = job_page(shop)
    page.get_by_role("button", name="Show the boathouse").tap()
    page.get_by_text("is kept here as").wait_for()
    settled(page)
    assert not page.locator("[data-signal=failed]").is_visible()
    page.evaluate("document.activeElement.blur()")
    turn_to(page, "Order")
    page.locator(".tick").first.click()
    page.locator(".job-run.done").first.wait_for(state="attached")
    settled(page)
    assert not page.locator("[data-signal=failed]").is_visible()


def test_a_reading_moves_what_follows_from_it_and_flags_what_is_cut(shop: Phone) -> None:
    """A groove that came out wide changes the cheeks of every frame; what was ticked before says how it was cut."""
    page = with_boathouse(shop)
    cheeks = page.locator(".job-run", has_text="Tenon cheeks")
    before = cheeks.locator(".set").inner_text()
    cheeks.locator(".tick").click()
    page.locator(".job-run.done", has_text="Tenon cheeks").wait_for()

    groove = page.get_by_label("Groove as it measures")
    groove.fill("11/32")
    groove.press("Tab")
    cheeks.locator(".check.stop").first.wait_for()

    assert page.locator(".job-run", has_text="Tenon cheeks").locator(".set").inner_text() != before
    assert "cut at 0." in cheeks.locator(".check.stop").first.inner_text()


def test_what_is_said_of_a_job_goes_when_something_else_is_done(shop: Phone) -> None:
    """It would cover what is read next."""
    page = with_boathouse(shop)
    turn_to(page, "Boards")

    assert not page.locator("#job-says").is_visible()


def test_a_count_that_is_typed_first_is_kept_for_its_part(shop: Phone) -> None:
    """Whoever counts before measuring gets as many as were counted."""
    page = job_page(shop)
    page.get_by_role("button", name="New").click()
    turn_to(page, "Cut list")
    for name, text in {"count": "3", "length": "10", "width": "2", "thickness": "1"}.items():
        page.locator(f"#parts-{name}-0").fill(text)
        page.locator(f"#parts-{name}-0").press("Tab")
        wait_until_kept(page, lambda job, key=name, said=text: [str(part[key]) for part in job["parts"]] == [said])
        settled(page)
    wait_until_kept(page, lambda job: [(part["count"], part["thickness"]) for part in job["parts"]] == [(3, "1")])


def test_what_is_measured_is_worked_out_when_the_fingers_rest(shop: Phone) -> None:
    """The bill follows while the field still has the focus, and the field keeps it."""
    page = with_boathouse(shop)
    turn_to(page, "Boards")
    before = page.locator("#work .laid").first.inner_text()
    page.locator("#job-kerf").focus()
    page.locator("#job-kerf").fill("2")
    until(page, f"document.querySelector('#work .laid').innerText !== {json.dumps(before)}")

    assert page.evaluate("[document.activeElement.id, document.activeElement.value]") == ["job-kerf", "2"]


def test_a_line_that_is_emptied_at_the_end_makes_room(shop: Phone) -> None:
    """It leaves nothing in the job, and no tick for what is typed there next."""
    page = job_page(shop)
    page.get_by_role("button", name="New").click()
    turn_to(page, "Cut list")
    sizes = {"label": "Leg", "length": "10", "width": "2", "thickness": "1"}
    for name, text in sizes.items():
        page.locator(f"#parts-{name}-0").fill(text)
    page.locator("#parts-thickness-0").press("Tab")
    turn_to(page, "Order")
    page.locator(".tick").first.click()
    page.locator(".job-run.done").wait_for()
    turn_to(page, "Cut list")
    for name in sizes:
        page.locator(f"#parts-{name}-0").fill("")
    page.locator("#parts-thickness-0").press("Tab")
    until(page, "document.querySelectorAll('.job-run').length === 0")

    [job] = kept(page)
    assert (job["parts"], job["ticks"]) == ([], {})


def test_a_part_in_the_place_of_one_that_was_emptied_is_not_done(shop: Phone) -> None:
    """A line that is emptied between others keeps its place, and not its ticks."""
    page = job_page(shop)
    page.get_by_role("button", name="New").click()
    turn_to(page, "Cut list")
    for place in range(2):
        for name, text in {"label": f"Leg {place}", "length": "10", "width": "2", "thickness": "1"}.items():
            page.locator(f"#parts-{name}-{place}").fill(text)
        page.locator(f"#parts-thickness-{place}").press("Tab")
        page.locator(f"#parts-label-{place + 1}").wait_for()
    settled(page)
    turn_to(page, "Order")
    page.locator(".tick").first.click()
    page.locator(".job-run.done").wait_for()
    wait_until_kept(page, lambda job: len(job["ticks"]) == 2)
    turn_to(page, "Cut list")
    for name in ("label", "length", "width", "thickness"):
        page.locator(f"#parts-{name}-0").fill("")
    # when the fingers rest the line is gone, and the focus with it
    page.keyboard.press("Tab")

    wait_until_kept(page, lambda job: (len(job["parts"]), [name.split("/")[0] for name in job["ticks"]]) == (2, ["1000001"]))


def test_the_count_of_a_new_part_is_what_is_typed(shop: Phone) -> None:
    """Its one comes while the finger is in the field already, and is typed over."""
    page = job_page(shop)
    page.get_by_role("button", name="New").click()
    turn_to(page, "Cut list")
    page.locator("#parts-label-0").fill("Cleat")
    page.locator("#parts-count-0").tap()
    until(page, "document.getElementById('parts-count-0').value === '1'")
    page.keyboard.type("3")

    wait_until_kept(page, lambda job: job["parts"][0]["count"] == 3)


def test_the_order_of_work_goes_by_keyboard_alone(shop: Phone) -> None:
    """A view is chosen, a tick taken back without a pointer, and the place is kept."""
    page = with_boathouse(shop)
    page.locator("#work [data-view=order]").focus()
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.id") == "tick-0"
    page.keyboard.press("Space")
    page.locator(".job-run:not(.done)", has_text="Thickness 1 3/8 in").wait_for()

    assert page.evaluate("document.activeElement.id") == "tick-0"


def test_the_pad_serves_the_fields_of_a_job(shop: Phone) -> None:
    """A reading is built of digits and a fraction by thumb, and flows when the pad is closed."""
    page = with_boathouse(shop)
    until(page, "'hand' in document.documentElement.dataset")
    field = page.locator("[data-set=readings]").first
    field.tap()
    page.locator("#pad").wait_for()
    page.locator("#pad").get_by_role("button", name="three eighths").tap()
    page.locator("#pad").get_by_role("button", name="Done").tap()
    until(page, "Array.from(document.querySelectorAll('[data-set=readings]')).some(each => each.value === '3/8')")

    [job] = kept(page)
    assert "3/8" in job["readings"].values()


SLOWLY = """() => {
    const own = window.fetch;
    const later = () => new Promise(done => setTimeout(done, 600));
    window.fetch = async (...asked) => { if (String(asked[0]).startsWith('/job')) await later(); return own(...asked); };
}"""


def test_a_key_that_is_taken_back_leaves_no_old_order(phone: Phone) -> None:
    """An answer that was cut short by typing is asked for again, also when what was typed is no change in the end."""
    page = with_boathouse(phone)
    page.locator("[data-view=items]").click()
    page.evaluate(SLOWLY)
    page.locator(".items input[data-key=quantity]").first.fill("7")
    label = page.locator(".items input[data-key=label]").first
    label.focus()
    page.keyboard.press("End")
    page.keyboard.press("x")
    page.keyboard.press("Backspace")
    label.blur()

    until(page, "document.getElementById('order').textContent.includes('14 Stile') && document.getElementById('work').ariaBusy === 'false'")


def test_a_button_that_is_tapped_early_is_not_tapped_in_vain(copyless: Phone) -> None:
    """Until the script listens to them, the buttons say that they do nothing yet."""
    page = copyless.context.new_page()
    page.route("**/static/job.js", lambda route: None)
    page.goto("/job")
    assert page.get_by_role("button", name="Show the boathouse").is_disabled()

    page.unroute("**/static/job.js")
    page.reload()
    page.get_by_role("button", name="Show the boathouse").click()
    page.locator("#work .items li").first.wait_for()
    page.close()


def test_a_job_that_is_being_worked_out_says_so(shop: Phone) -> None:
    """What takes long has a word while it lasts, and none behind it."""
    page = with_boathouse(shop)
    page.evaluate(
        """() => { const work = document.getElementById('work'); window.busy = [];
        new MutationObserver(() => busy.push(work.ariaBusy)).observe(work, {attributeFilter: ['aria-busy']}); }"""
    )
    turn_to(page, "Boards")
    page.get_by_label("Kerf").fill("3/32")
    page.get_by_label("Kerf").press("Tab")
    until(page, "window.busy.length === 2")

    assert page.evaluate("window.busy") == ["true", "false"]


def test_a_field_that_is_too_long_can_be_mended(shop: Phone) -> None:
    """Where a job is refused for what was typed, its page stays, says why, and is taken again when it is mended."""
    page = with_boathouse(shop)
    shop.excuse("422")
    turn_to(page, "Items")
    page.evaluate("document.getElementById('job-title').removeAttribute('maxlength')")
    page.locator("#job-title").fill("x" * 130)
    page.locator("#job-title").press("Tab")
    until(page, "document.getElementById('job-says').textContent.includes('longer than 120')")

    page.locator("#job-title").fill("Mended")
    page.locator("#job-title").press("Tab")
    until(page, "document.querySelector('#job-choice').selectedOptions[0].textContent === 'Mended'")
    [job] = kept(page)
    assert job["title"] == "Mended"


def test_a_line_of_lumber_that_is_emptied_moves_no_other(shop: Phone) -> None:
    """What is typed next goes where it was typed."""
    page = with_boathouse(shop)
    turn_to(page, "Boards")
    for name in ("thickness", "width", "to-buy"):
        page.locator(f"#lumber-{name}-1").fill("")
        page.locator(f"#lumber-{name}-1").press("Tab")
        page.wait_for_timeout(400)  # a person types no faster than the page is drawn again
    page.locator("#lumber-on-hand-2").fill("101, 96")
    page.locator("#lumber-on-hand-2").press("Tab")
    until(page, "document.getElementById('lumber-width-1') === null")

    [job] = kept(page)
    assert [line["on_hand"] for line in job["lumber"]] == ["80 x2", "", "101, 96"]


NAMES = """() => [...document.querySelectorAll('.tick input')].map(
    each => each.getAttribute('aria-labelledby').split(' ').map(id => document.getElementById(id).innerText).join(' '))"""


def test_a_screen_reader_can_tell_the_ticks_apart(shop: Phone) -> None:
    """Each tick is named by its operation, machine and setting, so that two of one operation are not called the same."""
    names = with_boathouse(shop).evaluate(NAMES)

    assert len(names) > 10
    assert len(names) == len(set(names))


def test_each_view_is_found_again_where_it_was_left(shop: Phone) -> None:
    """A view that is opened for the first time begins at its beginning."""
    page = with_boathouse(shop)
    # a thumb scrolls nothing on its way to a tab, as the test's own click would
    tap = "view => { scrollTo({ top: 900, behavior: 'instant' }); document.querySelector(`[data-view=${view}]`).click(); }"
    page.evaluate(tap, "cuts")
    assert 0 < page.locator("#head-cuts").bounding_box()["y"] < 200
    page.evaluate(tap, "order")

    assert page.evaluate("scrollY") == 900


def test_a_run_that_is_done_is_folded(shop: Phone) -> None:
    """To what it was set to and what has passed; one tick opens it again."""
    page = with_boathouse(shop)
    run = page.locator(".job-run", has_text="Thickness 3/4 in")
    high = run.bounding_box()["height"]
    assert run.locator(".face-says").first.is_visible()
    run.locator(".tick").click()
    page.locator(".job-run.done", has_text="Thickness 3/4 in").wait_for()

    assert (True, False) == (run.locator(".pass").is_visible(), run.locator(".face-says").first.is_visible())
    assert run.bounding_box()["height"] < high - 30
    run.locator(".tick").click()
    run.locator(".face-says").first.wait_for()


def test_a_reading_that_cannot_be_read_is_not_folded_away(shop: Phone) -> None:
    """It stays in its box with what is wrong, and is not shown as what was measured."""
    page = with_boathouse(shop)
    run = page.locator(".job-run", has_text="Groove as it measures")
    run.locator(".read-here input").fill("3/")
    run.locator("[aria-invalid]").wait_for()
    run.locator(".tick").click()
    page.locator(".job-run.done", has_text="Groove as it measures").wait_for()

    assert (True, "3/") == (run.locator(".read-here .wrong").is_visible(), run.locator(".read-here input").input_value())
    assert "3/" not in run.locator(".set").inner_text()


def test_the_order_of_work_opens_where_the_work_goes_on(shop: Phone) -> None:
    """What is done is above."""
    page = with_boathouse(shop)
    for _ in range(8):
        before = page.locator(".job-run.done").count()
        page.locator(".job-run:not(.done) .tick").first.click()
        until(page, f"document.querySelectorAll('.job-run.done').length > {before}")
    page.close()
    again = job_page(shop)
    next_run = again.locator(".job-run:not(.done)").first

    until(again, "scrollY > 0")
    assert 0 < next_run.bounding_box()["y"] < 300


def test_the_boathouse_is_shown_once(shop: Phone) -> None:
    """A second tap opens the one that is there, unless it was changed."""
    page = with_boathouse(shop)
    page.get_by_role("button", name="New").click()
    until(page, "document.querySelectorAll('#job-choice option').length === 2")
    page.get_by_role("button", name="Show the boathouse").click()
    until(page, "document.querySelector('#job-choice').selectedOptions[0].textContent === 'Boathouse'")
    assert len(kept(page)) == 2

    turn_to(page, "Items")
    page.locator("#job-notes").fill("Mine")
    page.locator("#job-notes").press("Tab")
    page.get_by_role("button", name="Show the boathouse").click()
    until(page, "document.querySelectorAll('#job-choice option').length === 3")


def test_a_job_needs_no_introduction(shop: Phone) -> None:
    """What a job is for is told until there is one; what to buy stands above what is to be typed."""
    page = job_page(shop)
    intro = page.get_by_text("Parts that share wood")
    assert intro.is_visible()
    page.get_by_role("button", name="Show the boathouse").click()
    intro.wait_for(state="hidden")

    turn_to(page, "Boards")
    assert page.get_by_text("to buy,").first.bounding_box()["y"] < page.locator("#job-kerf").bounding_box()["y"]


PAST_THE_EDGE = """() => [...document.querySelectorAll('#job *')].filter(each => !each.closest('svg, .run'))
    .flatMap(each => [...each.getClientRects()]).filter(box => box.right > innerWidth + 1).length"""


def test_letters_twice_as_large_keep_the_job_on_the_screen(phone: Phone) -> None:
    """Whoever sets them so reads every length: in the cut list each line says whether it is finished or rough."""
    page = with_boathouse(phone)
    page.evaluate("document.documentElement.style.fontSize = '200%'")

    for view in ("Items", "Order", "Cut list", "Boards"):
        turn_to(page, view)
        assert (0, True) == (page.evaluate(PAST_THE_EDGE), page.evaluate("document.documentElement.scrollWidth <= innerWidth"))
    turn_to(page, "Cut list")
    assert page.locator("#cuts tbody td").first.evaluate("each => getComputedStyle(each, '::before').content") == '"Finished "'
