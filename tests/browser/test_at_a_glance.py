"""What the eye finds first on a phone: the number, the tape, what cannot be."""

import pytest

from .phone import borrowed, readout, until, wait_for_card

pytestmark = pytest.mark.browser

SMALL = {"width": 360, "height": 640}


@pytest.fixture
def phone(copyless):
    """One phone for all of it; a wrong entry may be told to its console."""
    with borrowed(copyless) as held:
        held.excuse("the server responded with a status of 422")
        yield held


def card(phone, path, size=None):
    """A card with its scripts."""
    page = phone.visit(path)
    page.set_viewport_size(size or {"width": 390, "height": 844})
    wait_for_card(page)
    until(page, "'hand' in document.documentElement.dataset")
    return page


LETTERS = """() => {
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT), found = [];
    while (walk.nextNode()) {
        const at = walk.currentNode.parentElement, box = at.getBoundingClientRect();
        if (walk.currentNode.data.trim() && box.width && box.top < innerHeight && !at.closest('.unseen, script, svg'))
            found.push([parseFloat(getComputedStyle(at).fontSize), Boolean(at.closest('.big .number'))]);
    }
    return found;
}"""


@pytest.mark.parametrize("slug", ["tenon", "frame", "gauge-stack"])
@pytest.mark.parametrize("padded", [False, True], ids=["", "with the keys"])
def test_the_number_is_the_largest_thing_on_a_small_phone(phone, slug, padded):
    """Also where it is a fraction alone; five sizes of letters are all that the first screen has."""
    page = card(phone, f"/{slug}", SMALL)
    if padded:
        page.locator("#inputs [data-kind=length]").first.tap()
        page.locator(".pad").wait_for()
    letters = page.evaluate(LETTERS)
    number, rest = ([size for size, is_number in letters if is_number is wanted] for wanted in (True, False))

    assert min(number) > max(rest)
    assert padded or len({size for size, _ in letters}) <= 5


@pytest.mark.parametrize("slug", ["fractions", "tenon"])
def test_the_answer_stays_in_sight_on_a_small_phone_with_the_keys(phone, slug):
    """What the pad says of where to measure makes room for it."""
    page = card(phone, f"/{slug}", SMALL)
    page.locator("#inputs [data-kind=length]").first.tap()
    page.locator(".pad").wait_for()
    page.wait_for_timeout(500)

    assert readout(page).bounding_box()["y"] > -3
    assert readout(page).bounding_box()["height"] < 150


def test_what_a_card_is_for_is_told_under_its_answer(phone):
    """It costs the answer no room."""
    page = card(phone, "/tenon")

    assert page.locator(".what").bounding_box()["y"] > readout(page).bounding_box()["y"]
    assert readout(page).bounding_box()["y"] < 100


def test_the_other_settings_make_room_for_the_keys(phone):
    """They stand under the number, but not while the pad is open on a phone; at a desk there is room for both."""
    page = card(phone, "/frame")
    others = page.locator("#answer .others li")

    assert others.last.is_visible()
    page.locator("#in-stile").tap()
    page.locator(".pad").wait_for()
    assert not others.first.is_visible()
    page.set_viewport_size({"width": 1200, "height": 900})
    page.keyboard.press("Escape")
    assert others.last.is_visible()


PLACES = "() => ['in-stock', 'in-cutter'].map(id => Math.round(document.getElementById(id).getBoundingClientRect().top + scrollY))"


def test_past_its_place_the_answer_keeps_its_number_and_what_is_said_of_it(phone):
    """The other settings make way for what is measured, and nothing moves under the finger; at the top all stands there again."""
    page = card(phone, "/frame")
    others, stood = page.locator("#answer .others"), page.evaluate(PLACES)
    page.evaluate("scrollTo({ top: 900, behavior: 'instant' })")
    until(page, "!document.querySelector('#answer .others').offsetHeight")
    height = readout(page).bounding_box()["height"]

    assert (height < 160, readout(page).bounding_box()["y"]) == (True, 0)
    assert max(abs(now - was) for now, was in zip(page.evaluate(PLACES), stood, strict=True)) <= 2
    page.locator("#in-measured_groove").fill("0.4")
    readout(page).get_by_text("Centred groove: Too wide: move the fence 0.013 in").wait_for()
    assert readout(page).bounding_box()["y"] == 0
    page.locator("#in-cutter").fill("3/4")
    readout(page).locator(".halt").get_by_text("The cutter, 3/4 in, is wider than the groove").wait_for()
    assert readout(page).bounding_box()["y"] == 0
    page.locator("#in-cutter").fill("1/4")
    page.locator("#in-measured_groove").fill("")
    page.evaluate("scrollTo({ top: 0, behavior: 'instant' })")
    until(page, "document.querySelector('#answer .others').offsetHeight > 0")
    assert others.locator("li").last.is_visible()


@pytest.mark.parametrize("slug", ["frame", "rafter", "tenon"])
def test_a_slow_finger_moves_the_page_with_it(phone, slug):
    """While the other settings make way the page goes on under the finger, and never back."""
    page = card(phone, f"/{slug}")
    finger = page.context.new_cdp_session(page)
    places = []
    finger.send("Input.dispatchTouchEvent", {"type": "touchStart", "touchPoints": [{"x": 200, "y": 700}]})
    for step in range(25):
        finger.send("Input.dispatchTouchEvent", {"type": "touchMove", "touchPoints": [{"x": 200, "y": 690 - 10 * step}]})
        page.wait_for_timeout(12)
        places.append(page.evaluate("scrollY"))
    finger.send("Input.dispatchTouchEvent", {"type": "touchEnd", "touchPoints": []})

    assert places == sorted(places)
    assert places[-1] > 180
    assert page.evaluate("document.documentElement.classList.contains('past')")


SAID = "() => [...document.querySelectorAll('.pad .says')].filter(each => each.getBoundingClientRect().height > 0).map(each => each.textContent)"


@pytest.mark.parametrize("size", [{"width": 844, "height": 390}, SMALL], ids=["lying down", "small"])
def test_where_the_answer_has_no_room_the_pad_says_what_forbids_it(phone, size):
    """A stop that is out of sight, with a number over the keys that looks right, would cost a board; and a trial asks for its move."""
    page = card(phone, "/rafter", size)
    page.locator("#in-seat").tap()
    page.locator(".pad").wait_for()
    page.locator("#in-seat").fill("8")
    until(page, "[...document.querySelectorAll('.pad .says.stop')].some(each => each.textContent.startsWith('Stop.'))")
    assert len(page.evaluate(SAID)) == 1 and not page.locator(".pad .answered").is_visible()


def test_lying_down_the_pad_says_what_the_scrap_says(phone):
    """The frame's length, which a reading does not change, makes way for the move that was measured for."""
    page = card(phone, "/frame", {"width": 844, "height": 390})
    page.locator("#in-measured_groove").tap()
    page.locator(".pad").wait_for()
    page.locator("#in-measured_groove").fill("0.4")

    until(page, "[...document.querySelectorAll('.pad .says')].some(each => each.textContent.includes('move the fence 0.013 in'))")


def test_another_answer_past_its_place_moves_nothing_on_the_way_back(phone):
    """The rabbet by two cuts has two settings more to make way: their room is left behind as well."""
    page = card(phone, "/rabbet")
    stood = "() => Math.round(document.getElementById('in-stock').getBoundingClientRect().top + scrollY)"
    page.evaluate("scrollTo({ top: 500, behavior: 'instant' })")
    until(page, "document.documentElement.classList.contains('past')")
    page.locator("#in-method").select_option("two cuts")
    until(page, "document.querySelectorAll('#answer .others li').length === 3")
    page.wait_for_timeout(100)
    folded = page.evaluate(stood)
    page.evaluate("scrollTo({ top: 60, behavior: 'instant' })")
    until(page, "!document.documentElement.classList.contains('past')")

    assert abs(page.evaluate(stood) - folded) <= 2


def test_a_stop_stands_once_and_in_red(phone):
    """With what to change; a screen reader hears it once too."""
    page = card(phone, "/tenon?stock=1/4&groove_width=3/8")
    said = readout(page).locator(".halt")

    assert said.get_by_role("link", name="Change: Groove width").is_visible()
    assert not page.locator(".checks .check.stop").is_visible()
    assert readout(page).evaluate("each => getComputedStyle(each).borderTopColor === getComputedStyle(each.querySelector('.halt')).color")


NUMERALS = """() => [...document.querySelectorAll('#sheet .tape svg')].flatMap(tape => {
    const whole = tape.getBoundingClientRect(), mark = tape.querySelector('.mark').getBoundingClientRect(), at = (mark.left + mark.right) / 2;
    return [...tape.querySelectorAll('.numeral')].map(each => [each, each.getBoundingClientRect()])
        .filter(([, box]) => box.left < whole.left || box.right > whole.right || box.left < at && at < box.right).map(([each]) => each.textContent);
})"""


@pytest.mark.parametrize("path", ["/frame?opening_width=33+7/16", "/frame?opening_width=33+5/8", "/frame?opening_width=33+19/32", "/hinge-layout"])
def test_no_number_of_a_tape_is_cut_or_crossed_out(phone, path):
    """A 9 that was a 29, or a mark through a 30, would be a wrong measurement."""
    assert card(phone, path).evaluate(NUMERALS) == []


def test_a_mark_of_a_list_is_found_on_the_tape(phone):
    """A tap on it brings its pin into sight."""
    page = card(phone, "/hinge-layout")
    mark = page.locator(".settings .marks li").nth(2)
    mark.tap()
    pin = page.locator(".run").first.locator(".pin").nth(2)

    until(page, "document.querySelector('.run').scrollLeft > 1000")
    assert 0 < pin.bounding_box()["x"] < 390


@pytest.mark.parametrize(("path", "mode"), [("/slats", "numeric"), ("/wood-movement", "decimal")])
def test_a_number_brings_up_figures_and_is_typed_over(phone, path, mode):
    """Counts and parts of a hundred have no pad: the phone's keys for figures come up, and what stood there is selected."""
    page = card(phone, path)
    entry = page.locator(f"#inputs [inputmode={mode}]").first
    entry.tap()

    until(page, "document.activeElement.selectionEnd > 0 && document.activeElement.selectionStart === 0")
    assert not page.locator(".pad").is_visible()


def test_a_pair_stands_on_one_level_whatever_is_said_of_one(phone):
    """A note of two lines moves its neighbour's box nowhere."""
    page = phone.visit("/tenon?stock=banana")
    rows = [["stock", "groove_width"], ["fit", "groove_depth"]]
    tops = [[page.locator(f"#in-{name}").bounding_box()["y"] for name in row] for row in rows]

    assert [left for left, _ in tops] == [right for _, right in tops]
