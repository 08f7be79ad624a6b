"""Keys for a tape's fractions, under the field that is being filled in."""

import pytest

from shopcalc.portable.cards.tape import INCH_WIDE

from .jobs import turn_to, with_boathouse
from .phone import borrowed, readout, ready, until

pytestmark = pytest.mark.browser

HELD = {  # a phone upright, a small one, the same lying down
    "upright": {"width": 390, "height": 844},
    "small": {"width": 360, "height": 640},
    "lying down": {"width": 844, "height": 390},
    "small, lying down": {"width": 667, "height": 375},
}


@pytest.fixture
def phone(held):
    """That phone, for one test; an entry that cannot be read may be told to its console."""
    held.forget()
    with borrowed(held):
        held.excuse("the server responded with a status of 422")
        yield held


@pytest.fixture
def page(phone):
    """The tenon's card, with no play, on it."""
    page = phone.visit("/tenon?groove_width=5/16&fit=0")
    ready(page)
    return page


@pytest.fixture(scope="module")
def open_pad(copyless):
    """The tenon's card with the pad open under its stock, for all tests that only build a text there."""
    with borrowed(copyless):
        copyless.excuse("the server responded with a status of 422")
        page = copyless.visit("/tenon")
        ready(page)
        page.locator("#in-stock").tap()
        pad(page).wait_for()
        yield page


def pad(page):
    """The pad."""
    return page.get_by_role("group", name="Keys for")


def tap(page, *names):
    """Tap keys of the pad by their names, as a screen reader says them."""
    for name in names:
        pad(page).get_by_role("button", name=name, exact=True).tap()


def text(page, name="stock"):
    """What stands in a field."""
    return page.locator(f"#in-{name}").input_value()


def build(page, start, *names):
    """What stands in the field after keys of the open pad are tapped behind a text."""
    page.locator("#in-stock").fill(start)
    tap(page, *names)
    return text(page)


def test_a_touched_length_opens_the_pad_and_not_the_phones_keyboard(page):
    """The pad names its field, and the field asks for no other keyboard while it keeps the focus."""
    page.locator("#in-stock").tap()

    page.get_by_role("group", name="Keys for Stock thickness").wait_for()
    assert page.locator("#in-stock").get_attribute("inputmode") == "none"
    assert page.evaluate("document.activeElement.id") == "in-stock"


def test_a_measurement_is_built_and_the_answer_follows(page):
    """One, one eighth: the field, the pad and the answer at the machine; the field keeps the focus."""
    page.locator("#in-stock").tap()
    tap(page, "1", "one eighth")

    assert text(page) == "1 1/8"  # what stood there was selected, and is replaced
    readout(page).locator(".big", has_text="thirteen thirty-seconds").wait_for()  # (1 1/8 - 5/16) / 2
    assert "Stock thickness 1 1/8" in pad(page).inner_text()
    pad(page).get_by_text("1.125 in").first.wait_for()
    assert page.evaluate("document.activeElement.id") == "in-stock"


@pytest.mark.parametrize(
    ("start", "keys", "built"),
    [
        ("31", ["one quarter"], "31 1/4"),
        ("31 1/4", ["five eighths"], "31 5/8"),
        ("", ["five sixteenths"], "5/16"),
        ("", ["1", "9", "slash", "3", "2"], "19/32"),
        ("2", ["space", "5", "slash", "3", "2"], "2 5/32"),
        ("6", ["feet", "6", "one half", "inches"], "6'6 1/2\""),
        ("35", ["mm, millimetres"], "35 mm"),
        ("0", ["point", "7", "5"], "0.75"),
        ("31 1/4", ["Delete"], "31"),
        ("35 mm", ["Delete"], "35"),
        ("31", ["Delete"], "3"),
        ("31 1/4", ["Clear"], ""),
    ],
)
def test_keys_write_what_a_person_would_write(open_pad, start, keys, built):
    """A fraction takes a space behind a whole number and the place of another fraction; delete takes it back whole."""
    assert build(open_pad, start, *keys) == built


MORE, LESS = "1/32 in more", "1/32 in less"


@pytest.mark.parametrize(
    ("start", "keys", "built"),
    [
        ("31 1/4", [MORE], "31 9/32"),
        ("31 1/4", [LESS], "31 7/32"),
        ("31 31/32", [MORE], "32"),
        ("3", [LESS], "2 31/32"),
        ("1/3", [MORE], "35/96"),
        ("", [MORE], "1/32"),
        ("0", [LESS], "0"),
        ('1 3/8"', [MORE], '1 13/32"'),
        ("6' 6 1/2", [MORE], "6' 6 17/32"),
        ("6' 11 31/32", [MORE], "6' 11 31/32 + 1/32 in"),
        ("11 31/32", [MORE], "12"),
        ("0.75", [MORE], "0.75 + 1/32 in"),
        ("0.75", [MORE, MORE], "0.75 + 1/16 in"),
        ("0.75", [MORE, LESS], "0.75"),
        ("0.75", [LESS, LESS], "0.75 - 1/16 in"),
        ("0.006", [LESS], "0.006"),
        ("0.02 in", [LESS], "0.02 in"),
        ("35 mm", [MORE], "35 mm + 1/32 in"),
    ],
)
def test_one_tick_more_or_less(open_pad, start, keys, built):
    """The last number moves by a tick of the shop's tape and stays a number of the tape; what cannot becomes a sum."""
    assert build(open_pad, start, *keys) == built


@pytest.mark.parametrize(
    ("start", "built"), [("35", "36"), ("34.9", "35.9"), ("6' 6", "6' 6 + 1 mm"), ("6 ft 6", "6 ft 6 + 1 mm"), ("1 3/8 in", "1 3/8 in + 1 mm")]
)
def test_a_metric_tape_has_ticks_of_a_millimetre(phone, start, built):
    """In a metric shop a tick is a millimetre."""
    page = phone.visit("/tenon?units=mm")
    ready(page)

    page.locator("#in-stock").tap()
    pad(page).wait_for()

    assert build(page, start, "1 mm more") == built


@pytest.mark.parametrize("division", INCH_WIDE)
def test_the_ticks_and_fractions_are_those_of_the_tape(phone, division):
    """A tape of eighths has no sixteenths on its pad, and its tick is an eighth."""
    page = phone.visit(f"/tenon?tape={division}")
    ready(page)
    page.locator("#in-stock").tap()

    assert pad(page).get_by_role("button", name=f"1/{division} in more", exact=True).is_visible()
    assert pad(page).get_by_role("button", name="five eighths").is_visible()
    assert pad(page).get_by_role("button", name="five sixteenths").is_visible() == (division != "8")


def test_a_row_of_lengths_has_a_comma(phone):
    """Where several lengths are typed, a comma stands where the space does elsewhere."""
    page = phone.visit("/dado-stack")
    ready(page)
    page.locator("#in-chippers").tap()
    tap(page, "Clear", "one eighth", "comma", "one quarter")

    assert text(page, "chippers") == "1/8, 1/4"


def test_a_metric_pad_has_sums_where_the_fractions_stand(phone):
    """Three eighths would be read as three eighths of a millimetre."""
    page = phone.visit("/tenon?units=mm")
    ready(page)
    page.locator("#in-groove_width").tap()

    assert not pad(page).get_by_role("button", name="three eighths").is_visible()
    tap(page, "Clear", "open bracket", "3", "0", "minus", "1", "point", "5", "close bracket", "divided by", "3")
    assert text(page, "groove_width") == "(30 - 1.5) / 3"
    until(page, "document.getElementById('note-groove_width').textContent.includes('9.5\u00a0mm')")


def test_a_row_in_a_metric_shop_has_its_comma(phone):
    """It stands under the sums."""
    page = phone.visit("/dado-stack?units=mm")
    ready(page)
    page.locator("#in-chippers").tap()
    tap(page, "Clear", "3", "comma", "2")

    assert text(page, "chippers") == "3, 2"


def test_tape_arithmetic_is_built_by_thumb(phone):
    """Signs and brackets stand on a row of their own, delete takes a sign back whole, and the field is as wide as the screen."""
    page = phone.visit("/fractions")
    ready(page)
    page.locator("#in-entry").tap()
    tap(page, "Clear", "open bracket", "3", "1", "one quarter", "minus", "three eighths", "plus", "Delete", "close bracket", "times", "2")

    assert text(page, "entry") == "(31 1/4 - 3/8) \u00d7 2"
    page.locator("#note-entry", has_text="5 ft").wait_for()
    assert page.locator("#in-entry").bounding_box()["width"] > 340


def test_a_size_has_no_row_of_signs(page):
    """It would stand in the way of the field."""
    page.locator("#in-stock").tap()

    assert not pad(page).get_by_role("button", name="plus", exact=True).is_visible()


def test_where_to_measure_is_told_in_the_pads_head(page):
    """And not over the next field; a slip takes its place there."""
    page.locator("#in-stock").tap()
    pad(page).get_by_text("Calipers across the rail").wait_for()

    assert not page.locator("#help-stock").is_visible()
    tap(page, "slash")
    pad(page).locator(".note.wrong").wait_for()
    assert pad(page).locator(".where").count() == 0


def test_done_closes_on_the_way_to_the_answer(page):
    """The pad goes, the answer is in sight and has the focus, and the field has its own keyboard again."""
    page.locator("#in-stock").tap()
    tap(page, "Done")

    assert not pad(page).is_visible()
    assert page.evaluate("document.activeElement.matches('#answer .grow')")
    assert page.locator("#in-stock").get_attribute("inputmode") is None


def test_a_field_that_is_left_takes_its_pad_along(page):
    """A choice, or the paper beside the form, closes the pad."""
    page.locator("#in-stock").tap()
    pad(page).wait_for()
    page.locator("h1").tap()

    pad(page).wait_for(state="hidden")


def test_another_field_takes_the_pad_over(page):
    """The pad goes from field to field without a tap between."""
    page.locator("#in-stock").tap()
    page.locator("#in-groove_width").tap()

    page.get_by_role("group", name="Keys for Groove width").wait_for()
    tap(page, "three eighths")
    assert text(page, "groove_width") == "3/8"


def test_the_phones_own_keyboard_is_a_key_away_and_back(page):
    """For words and brackets; a bar stays to come back by."""
    page.locator("#in-stock").tap()
    tap(page, "abc: the phone\u2019s own keyboard")

    assert page.locator("#in-stock").get_attribute("inputmode") == "text"
    assert page.evaluate("document.activeElement.id") == "in-stock"
    assert not pad(page).get_by_role("button", name="five eighths").is_visible()
    tap(page, "Keys for fractions")
    assert page.locator("#in-stock").get_attribute("inputmode") == "none"
    assert pad(page).get_by_role("button", name="five eighths").is_visible()


PASTE = """(field, text) => {
    const carried = new DataTransfer();
    carried.setData('text', text);
    return field.dispatchEvent(new ClipboardEvent('paste', { clipboardData: carried, bubbles: true, cancelable: true }));
}"""


def test_a_pasted_list_has_its_lines_between_commas(shop):
    """A field of one line would run them together, and 36 and 24 1/2 would be one measure. What is one line is the browser's to paste."""
    page = shop.visit("/boards")
    parts = page.get_by_label("Parts")
    parts.evaluate("field => field.select()")
    parts.evaluate(PASTE, "rail 36 x4\r\n24 1/2 x6,\n\nstile 20\n")
    assert "rail 36 x4, 24 1/2 x6, stile 20" == parts.input_value()
    page.locator("#note-parts", has_text="stile 20").wait_for()

    assert parts.evaluate(PASTE, "12 x2, 13")


def test_a_pasted_list_is_worked_out_and_no_longer_than_its_field(shop):
    """In a job: pasted, and left by Tab, it is asked about as if it were typed; a field takes what it may hold."""
    page = with_boathouse(shop)
    turn_to(page, "Boards")
    field = page.locator("#lumber-on-hand-0")
    field.evaluate("field => { field.focus(); field.select(); }")
    field.evaluate(PASTE, "81\n82\n")
    page.keyboard.press("Tab")
    page.locator(".laid", has_text="of 82\u00a0in on hand").first.wait_for()

    field.evaluate("field => { field.focus(); field.select(); }")
    field.evaluate(PASTE, "\n".join(["12 1/16 in"] * 100))
    assert 400 == len(field.input_value())


def test_a_hardware_keyboard_and_paste_go_on_working(page):
    """With the pad open a keyboard types, a text is pasted or dictated, and the pad shows it; Enter is done."""
    page.locator("#in-stock").tap()
    page.keyboard.type("2 1/2")
    page.keyboard.insert_text(" in")

    assert text(page) == "2 1/2 in"
    assert "2 1/2 in" in pad(page).inner_text()
    page.keyboard.press("Enter")
    pad(page).wait_for(state="hidden")


def test_a_field_reached_by_keyboard_has_no_pad_in_its_way(page):
    """Whoever tabs has a keyboard; the key that opens the pad is told to a screen reader."""
    page.locator("#in-stock").focus()
    page.keyboard.press("Tab")

    assert page.locator("#in-groove_width").get_attribute("aria-keyshortcuts") == "Alt+ArrowDown"
    assert not page.locator(".pad").is_visible()


def test_the_pad_by_keyboard_only(page):
    """Opened by its key, walked by Tab, pressed by Enter, left by Escape to the field it came from."""
    page.locator("#in-stock").focus()
    page.keyboard.press("End")
    page.keyboard.press("Alt+ArrowDown")
    pad(page).wait_for()
    page.locator("#in-stock").fill("1")
    page.keyboard.press("Alt+ArrowDown")
    for _ in range(12):
        page.keyboard.press("Tab")
    page.keyboard.press("Enter")

    assert text(page) == "1 1/16"
    page.keyboard.press("Escape")
    assert not pad(page).is_visible()
    assert page.evaluate("document.activeElement.id") == "in-stock"


def test_what_is_built_is_said_when_the_fingers_rest(page):
    """A screen reader hears the whole once, not every key."""
    page.locator("#in-stock").tap()
    at_once = page.evaluate(
        """() => {
            for (const key of ['.digits button', '.part[aria-label="one eighth"]']) document.querySelector('.pad ' + key).click();
            return document.querySelector('.pad [role=status]').textContent;
        }"""
    )

    assert "1 1/8" not in at_once
    until(page, "document.querySelector('.pad [role=status]').textContent === '1 1/8. 1.125\u00a0in \u00b7 28.6\u00a0mm'")


def test_a_slip_is_told_in_the_pad(page):
    """What stands at the field as wrong stands in the pad too."""
    page.locator("#in-stock").tap()
    tap(page, "1", "slash")

    pad(page).locator(".note.wrong").wait_for()


TOP = "document.querySelector('#in-fit').getBoundingClientRect().top"


def test_the_field_stays_under_the_finger_while_answers_and_cautions_come_and_go(page):
    """What is said of a press fit stands above the form; it goes with the answer while the entry is a slip, and comes back with it."""
    page.emulate_media(reduced_motion="reduce")  # or the page would still glide there
    page.locator("#in-fit").tap()
    pad(page).wait_for()
    page.wait_for_timeout(300)
    before = page.evaluate(TOP)
    tap(page, "slash")
    page.locator("#answer .stop").wait_for()
    at_a_slip = page.evaluate(TOP)
    tap(page, "Clear", "0")
    page.locator("#answer .check").first.wait_for()

    assert abs(before - at_a_slip) < 2  # a browser scrolls by whole pixels
    assert abs(before - page.evaluate(TOP)) < 2


def test_the_answer_keeps_its_height_while_the_pad_is_open(page):
    """What is said of a slip is shorter than an answer; its room is kept until the pad is closed."""
    high = "document.querySelector('#answer .readout').offsetHeight"
    page.locator("#in-stock").tap()
    pad(page).wait_for()
    before = page.evaluate(high)
    tap(page, "slash")
    page.locator("#answer .stop").wait_for()

    assert before == page.evaluate(high)

    tap(page, "Done")
    until(page, f"{high} < {before}")


PLACES = """[...document.querySelectorAll('#inputs [data-kind^="length"]')].map(each => each.id)"""
BOXES = """id => {
    const box = each => each?.getBoundingClientRect(), entry = document.getElementById(id), answer = document.querySelector('#answer .readout');
    const sticks = getComputedStyle(answer).position === 'sticky';
    return { top: sticks ? box(answer).bottom : 0, high: box(entry).top, low: box(document.getElementById(id.replace('in-', 'note-'))).bottom,
        pad: box(document.querySelector('.pad')).top };
}"""


@pytest.mark.parametrize("way", HELD)
@pytest.mark.parametrize("larger", [False, True], ids=["as it is", "letters twice as large"])
def test_no_field_is_hidden_by_the_pad_or_the_answer(page, way, larger):
    """Field and note of every length stand between the answer and the pad, however the phone is held."""
    page.set_viewport_size(HELD[way])
    page.emulate_media(reduced_motion="reduce")  # or the page would glide there
    if larger:
        page.evaluate("document.documentElement.style.fontSize = '200%'")
    hidden = []
    for place in page.evaluate(PLACES):
        page.locator(f"#{place}").tap()
        until(page, f"document.activeElement.id === '{place}' && !document.querySelector('.pad').hidden")
        page.wait_for_timeout(100)
        boxes = page.evaluate(BOXES, place)
        if not boxes["top"] - 1 <= boxes["high"] or not boxes["low"] <= boxes["pad"] + 1:
            hidden.append((place, boxes))

    assert hidden == []


def test_a_number_that_comes_at_once_hides_no_field(page):
    """Pasted, dictated or typed on keys: the pad grows with what it says of it, and the field moves up."""
    page.set_viewport_size({"width": 390, "height": 844})
    page.emulate_media(reduced_motion="reduce")
    page.locator("#in-measured_tenon").tap()
    page.locator("#pad").wait_for()
    page.keyboard.insert_text("0.330")
    page.get_by_text("Too thick").first.wait_for()
    until(page, f"(({BOXES})('in-measured_tenon')).pad > 0 && (boxes => boxes.low <= boxes.pad + 1)(({BOXES})('in-measured_tenon'))")


SMALL = """[...document.querySelectorAll('.pad button')].filter(each => each.offsetWidth && Math.min(each.offsetWidth, each.offsetHeight) < 44)
    .map(each => each.textContent)"""
CUT = "[...document.querySelectorAll('.pad button')].filter(each => each.scrollWidth > each.clientWidth + 1).map(each => each.textContent)"


@pytest.mark.parametrize("way", HELD)
def test_every_key_is_as_large_as_a_finger(page, way):
    """Keys are at least 44 px either way, and their lettering is not cut, also at twice the size."""
    page.set_viewport_size(HELD[way])
    page.locator("#in-stock").tap()
    pad(page).wait_for()

    assert page.evaluate(SMALL) == []
    page.evaluate("document.documentElement.style.fontSize = '200%'")
    assert page.evaluate(CUT) == []


@pytest.mark.parametrize("units", ["in", "mm"])
@pytest.mark.parametrize("size", [(320, 640), (195, 422)])
def test_no_key_is_beside_the_screen(page, size, units):
    """On a small phone, and on one whose page is twice its size: every key can be reached, and Done is in sight."""
    page.set_viewport_size({"width": size[0], "height": size[1]})
    page.goto(f"/tenon?units={units}")
    ready(page)
    page.locator("#in-stock").tap()
    pad(page).wait_for()
    boxes = "[...document.querySelectorAll('.pad button')].map(key => key.getBoundingClientRect())"

    assert page.evaluate(f"{boxes}.filter(({{ left, right }}) => left < 0 || right > innerWidth).length") == 0
    assert pad(page).get_by_role("button", name="Done").bounding_box()["y"] < size[1] - 46


def test_of_a_field_that_has_no_room_what_is_typed_is_seen(phone):
    """A phone that lies down, with a bar of the browser's besides, leaves room for the box, and for neither its name nor its note."""
    page = phone.visit("/rafter")
    page.set_viewport_size({"width": 844, "height": 262})
    ready(page)
    page.locator("#in-overhang").tap()
    pad(page).wait_for()
    page.wait_for_timeout(500)
    field, keys = page.locator("#in-overhang").bounding_box(), page.locator(".pad").bounding_box()

    assert 0 <= field["y"] <= keys["y"] - field["height"] <= 40


def test_lying_down_the_answer_stands_in_the_pads_head(page):
    """There is no other room for it."""
    page.set_viewport_size({"width": 844, "height": 390})
    page.locator("#in-stock").tap()
    page.locator("#in-stock").fill("1 1/2")

    pad(page).locator(".answered", has_text="9").wait_for()
    assert pad(page).locator(".answered .fraction").inner_text().split() == page.locator("#answer .fraction").inner_text().split()


def test_a_fraction_over_nothing_is_not_stepped(page):
    """One tick more of 3/0 is a sum that the card refuses, and no endless number."""
    page.locator("#in-stock").tap()
    page.locator("#in-stock").fill("3/0")
    tap(page, "1/32 in more")

    assert page.locator("#in-stock").input_value() == "3/0 + 1/32 in"


def test_help_that_lies_over_a_field_can_be_put_away(page):
    """By Escape, and it is there again the next time."""
    shown = page.locator("#help-stock")
    page.locator("#in-stock").focus()
    shown.wait_for()
    page.keyboard.press("Escape")
    shown.wait_for(state="hidden")
    page.locator("#in-fit").focus()
    page.locator("#in-stock").focus()
    shown.wait_for()


def test_going_back_puts_the_keys_away(page):
    """What an Android phone asks of a page when it is told to go back: the card stays, with what was typed."""
    page.evaluate(
        "void (window.CloseWatcher = class { constructor() { window.goBack = () => this.onclose(); } destroy() { window.goBack = null; } })"
    )
    page.locator("#in-stock").tap()
    pad(page).wait_for()
    page.evaluate("goBack()")

    pad(page).wait_for(state="hidden")
    assert page.evaluate("[location.pathname, window.goBack]") == ["/tenon", None]
    page.locator("#in-stock").tap()
    pad(page).wait_for()


def test_a_second_tap_on_done_falls_on_nothing(open_pad):
    """What the pad lay over is not meant: neither another field nor a tick."""
    box = open_pad.locator(".pad .done").bounding_box()
    at = (box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    open_pad.evaluate("addEventListener('click', ({ target }) => (window.fell ??= []).push(target.className))")
    open_pad.touchscreen.tap(*at)
    open_pad.touchscreen.tap(*at)
    open_pad.wait_for_timeout(300)

    assert open_pad.evaluate("window.fell") == ["done"]
    assert not pad(open_pad).is_visible()


def test_enter_in_the_only_field_loads_nothing_anew(phone):
    """A form of one field is sent by Enter: its answer is there already, and the focus goes on from it."""
    page = phone.visit("/fractions")
    ready(page)
    page.evaluate("window.stays = true")
    page.locator("#in-entry").fill("3/8 + 1/4")
    page.locator("#in-entry").press("Enter")
    page.wait_for_timeout(300)

    assert page.evaluate("window.stays === true")
