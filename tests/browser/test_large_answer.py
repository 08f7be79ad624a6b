"""The one number that the machine needs, as large as the screen, and a screen that stays awake for it."""

import pytest

from .phone import borrowed, readout, ready, until, wait_for_card

pytestmark = pytest.mark.browser

# A phone's wake lock, told apart from the browser's, which grants none to a test.
LOCK = """
    window.locks = [];
    Object.defineProperty(Navigator.prototype, 'wakeLock', { configurable: true, value: { request: async kind => {
        const lock = { kind, released: false, release: async () => { lock.released = true; } };
        window.locks.push(lock);
        return lock;
    } } });
"""
REFUSED = """Object.defineProperty(Navigator.prototype, 'wakeLock', { value: {
    request: async () => { throw new DOMException('no', 'NotAllowedError'); },
} });"""
NONE = "delete Navigator.prototype.wakeLock;"


@pytest.fixture
def phone(held):
    """One phone for all of it, whose pages go with each test."""
    with borrowed(held) as lent:
        yield lent


@pytest.fixture
def page(phone):
    """The tenon's card with no play, on a phone whose screen can be kept awake."""
    return card(phone, LOCK)


def card(phone, script):
    """The tenon's card with no play, after a script that says what the phone can do."""
    page = phone.context.new_page()
    page.add_init_script(script)
    page.goto("/tenon?groove_width=5/16&fit=0")
    page.locator("#rest").wait_for(state="detached")
    ready(page)
    return page


def large(page):
    """The number as large as the screen."""
    return page.get_by_role("dialog", name="Blade height for the shoulder")


def enlarge(page):
    """Tap the number."""
    readout(page).locator(".big .number").tap(force=True)
    large(page).wait_for()


def test_a_tap_on_the_number_fills_the_screen_with_it(page):
    """The number with its label, what rounding did, decimal and mm, and its tape; larger than on the card."""
    small = readout(page).locator(".number").bounding_box()["width"]
    enlarge(page)
    box = large(page).bounding_box()

    assert (box["width"], box["height"]) == (390, 844)
    assert large(page).locator(".number").bounding_box()["width"] > 3 * small
    assert "17/32" == large(page).locator(".number").inner_text().replace("\n", "/").strip()
    assert "0.531\u00a0in \u00b7 13.5\u00a0mm" in large(page).inner_text()
    assert large(page).locator(".tape svg").is_visible()


@pytest.mark.parametrize("size", [(390, 844), (360, 640), (844, 390), (667, 375)])
@pytest.mark.parametrize("typed", ["1 3/8", "1000 1/64"])
def test_the_whole_of_it_is_on_the_screen(page, size, typed):
    """However the phone is held and however long the number is, nothing of it is cut off."""
    page.set_viewport_size({"width": size[0], "height": size[1]})
    page.goto(f"/fractions?entry={typed}")
    ready(page)
    readout(page).locator(".big .number").tap(force=True)
    boxes = [page.get_by_role("dialog").locator(part).bounding_box() for part in ("#sheet-label", ".number", ".small", "button")]

    assert [] == [box for box in boxes if box["x"] < 0 or box["y"] < 0 or box["x"] + box["width"] > size[0] or box["y"] + box["height"] > size[1]]


def test_the_screen_is_kept_awake_while_it_is_looked_at(page):
    """One lock while the number is there, and none after."""
    enlarge(page)
    until(page, "locks.length === 1 && !locks[0].released")
    page.keyboard.press("Escape")
    until(page, "locks.length === 1 && locks[0].released")


def test_a_screen_that_was_looked_away_from_is_kept_awake_again(page):
    """The system takes the lock when another app comes to the front; the page asks anew when it is back."""
    enlarge(page)
    until(page, "locks.length === 1")
    page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    until(page, "locks.length === 2")
    page.keyboard.press("Escape")
    until(page, "locks.every(each => each.released)")


@pytest.mark.parametrize("script", [REFUSED, NONE], ids=["refused", "unknown"])
def test_a_phone_that_cannot_stay_awake_shows_it_all_the_same(phone, script):
    """Neither a refusal nor a browser without the lock is an error."""
    page = card(phone, script)
    enlarge(page)
    page.keyboard.press("Escape")
    large(page).wait_for(state="hidden")


@pytest.mark.parametrize("leave", ["tap", "button", "escape", "back"])
def test_it_is_left_the_way_one_expects(page, leave):
    """A tap anywhere, the button, Escape or the way back: the card is there as it was, and the number has the focus."""
    address = page.url
    enlarge(page)
    if leave == "tap":
        large(page).tap(position={"x": 20, "y": 20})
    elif leave == "button":
        large(page).get_by_role("button", name="Close").tap()
    elif leave == "escape":
        page.keyboard.press("Escape")
    else:
        page.go_back()
    large(page).wait_for(state="hidden")

    until(page, "history.state !== 'large' && document.activeElement.matches('.grow')")
    assert page.url == address


def test_an_answer_that_goes_takes_the_large_number_with_it(page):
    """An old number never stands over a new measurement: what cannot be answered closes the screen, and the card says so."""
    enlarge(page)
    page.evaluate("() => { ServiceWorker.prototype.postMessage = () => {}; window.fetch = () => Promise.reject(new TypeError('no answer')); }")
    page.evaluate("Object.assign(document.getElementById('in-stock'), { value: '1 1/8' }).dispatchEvent(new Event('input', { bubbles: true }))")

    large(page).wait_for(state="hidden")
    page.locator("[data-signal=failed]").wait_for()


def test_the_next_setting_is_one_tap_away(page):
    """The settings follow each other in the order of the cuts, and after the last comes the first; the way back leads to where it began."""
    enlarge(page)
    seen = []
    for _ in range(5):
        seen.append(page.get_by_role("dialog").locator(":is(#sheet-label, .unseen)").all_inner_texts())
        page.get_by_role("dialog").get_by_role("button", name="Next: ").tap()

    assert seen[0] == seen[4] == ["Blade height for the shoulder", "seventeen thirty-seconds"]
    assert [label for label, _ in seen[1:4]] == ["Fence to near side of blade", "Blade height for the cheek", "Jig face to near side of blade"]
    page.keyboard.press("Escape")
    until(page, "document.activeElement.matches('#answer .grow')")


def test_every_setting_of_the_sheet_fills_the_screen(page):
    """Tapped where it stands, with its own tape."""
    cheek = page.locator("#sheet .settings li[data-of=cheek_height]")
    cheek.get_by_role("button", name="Show Blade height for the cheek large").tap()
    shown = page.get_by_role("dialog", name="Blade height for the cheek")

    assert shown.locator(".number").inner_text() == cheek.locator(".number").inner_text()
    assert shown.locator("figcaption").inner_text() == cheek.locator("figcaption").inner_text()
    page.keyboard.press("Escape")
    until(page, "document.activeElement.closest('li')?.dataset.of === 'cheek_height'")


def test_a_setting_stays_large_when_another_comes_before_it(phone):
    """It is the setting that was tapped which fills the screen, not the place where it stood."""
    page = phone.visit("/rabbet?method=two+cuts&depth=3/8&width=1/2")
    wait_for_card(page)
    ready(page)
    page.locator("#sheet .settings li").last.locator(".grow").tap()
    label = page.locator("#sheet-label").inner_text()
    page.evaluate("document.querySelector('#sheet .settings li:nth-child(2)').remove()")
    page.set_viewport_size({"width": 844, "height": 390})

    assert page.locator("#sheet-label").inner_text() == label


def test_a_row_of_marks_is_read_on_its_own_tape(phone):
    """It is swiped along, and not enlarged; the numbers beside it are."""
    page = phone.visit("/hinge-layout?door_height=79")
    wait_for_card(page)

    assert page.locator("#sheet .settings li:has(.marks) .grow").count() == 0


def test_by_keyboard_only(page):
    """The number is a button of its own, with a name, and opens and closes by keys."""
    page.locator("#answer").get_by_role("button", name="Show Blade height for the shoulder large").focus()
    page.keyboard.press("Enter")
    large(page).wait_for()
    page.keyboard.press("Enter")
    large(page).wait_for(state="hidden")


def test_a_screen_reader_hears_the_number_in_words(page):
    """Beside the stacked figures, which it is not told of, it hears words; on the card and at full size."""
    assert readout(page).locator(".big .unseen").inner_text() == "seventeen thirty-seconds"
    enlarge(page)
    assert large(page).locator(".unseen").inner_text() == "seventeen thirty-seconds"


def test_an_answer_that_changes_changes_there_too(page):
    """Whatever comes to the card while it is large is shown."""
    enlarge(page)
    page.evaluate("Object.assign(document.getElementById('in-stock'), { value: '1 1/8' }).dispatchEvent(new Event('input', { bubbles: true }))")

    large(page).locator(".unseen", has_text="thirteen thirty-seconds").wait_for(state="attached")


def test_the_address_follows_after_a_page_was_loaded_again(page):
    """With the number large a phone may throw its tab away and load it again: nothing is large then, and the link is what is typed."""
    enlarge(page)
    page.reload()
    ready(page)
    page.locator("#in-stock").fill("1 3/4")

    until(page, "new URL(location).searchParams.get('stock') === '1 3/4'")


def test_a_setting_beside_a_stop_is_not_shown_without_it(phone):
    """A door that fouls with the bevel wanted still has its gauge line: as large as the screen it stands under the stop."""
    page = phone.context.new_page()
    page.goto("/door-edge?door_width=6&thickness=2+1/4&gap_latch=1/32")
    page.locator("#rest").wait_for(state="detached")
    ready(page)
    readout(page).locator(".big .number").tap(force=True)
    dialog = page.get_by_role("dialog")
    dialog.wait_for()

    assert "meets the jamb" in dialog.locator(".halt").inner_text()
    assert dialog.locator(".halt a").count() == 0
    assert dialog.locator(".huge").evaluate("each => parseFloat(each.style.fontSize)") > 80
