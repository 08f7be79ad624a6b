"""What the device remembers: the shop's own things, and what each card was last asked."""

import json
from urllib.parse import parse_qs, urlsplit

import pytest

from .phone import borrowed, readout, until, wait_for_card

pytestmark = pytest.mark.browser

REMEMBERED = "JSON.parse(localStorage.getItem('shopcalc.{name}.1') ?? '[]')"


@pytest.fixture(scope="module")
def phones(lasting):
    """Phones that hold a copy, that keep none, that refuse to remember, and that run no scripts."""
    made = {"usual": lasting(), "keeping no copy": lasting(), "refusing": lasting(), "without scripts": lasting(java_script_enabled=False)}
    made["keeping no copy"].context.add_init_script("delete Navigator.prototype.serviceWorker")
    made["refusing"].context.add_init_script(
        "for (const name of ['getItem', 'setItem']) Storage.prototype[name] = () => { throw new DOMException('full', 'QuotaExceededError'); };"
    )
    made["usual"].install()
    return made


def lent(phones, kind):
    """One of the phones, which remembers nothing yet."""
    if kind in ("usual", "keeping no copy"):
        phones[kind].forget()
    with borrowed(phones[kind]) as held:
        held.excuse("the server responded with a status of 422")
        yield held


@pytest.fixture
def phone(phones):
    """A phone that holds a copy."""
    yield from lent(phones, "usual")


@pytest.fixture
def copyless(phones):
    """A phone that is answered by the server."""
    yield from lent(phones, "keeping no copy")


@pytest.fixture
def refusing(phones):
    """A phone whose browser remembers nothing."""
    yield from lent(phones, "refusing")


@pytest.fixture
def scriptless(phones):
    """A phone that runs no scripts."""
    yield from lent(phones, "without scripts")


def remembered(page, name):
    """What is remembered under a name, by key."""
    return dict(page.evaluate(REMEMBERED.format(name=name)))


def opened(phone, path):
    """A page at an address, with its memory at hand."""
    page = phone.visit(path)
    if path.startswith("/shop"):
        until(page, "window.htmx !== undefined")
    else:
        wait_for_card(page)
    page.locator("html[data-memory]").wait_for(state="attached")
    return page


def typed(page, **entries):
    """Type into fields, one after the other, and wait until each is remembered."""
    for name, text in entries.items():
        before = page.evaluate("JSON.stringify(localStorage)")
        field = page.locator(f"#inputs [name={name}]")
        if field.evaluate("each => each.tagName") == "SELECT":
            page.locator("details.shop").evaluate_all("all => all.forEach(each => { each.open = true; })")
            field.select_option(text)
        else:
            field.fill(text)
        until(page, f"JSON.stringify(localStorage) !== {json.dumps(before)}")


def entry(page, name):
    """What stands in a field."""
    return page.locator(f"#inputs [name={name}]").input_value()


def test_a_card_opened_bare_has_the_last_entries(phone):
    """What was typed is there the next time, and answered."""
    page = opened(phone, "/tenon")
    typed(page, stock="1 1/8", groove_width="5/16", fit="0")
    again = opened(phone, "/tenon")

    readout(again).locator(".big", has_text="thirteen thirty-seconds").wait_for()
    assert ["1 1/8", "5/16", "0"] == [entry(again, name) for name in ("stock", "groove_width", "fit")]
    until(again, "new URLSearchParams(location.search).get('stock') === '1 1/8'")


def test_a_card_from_the_server_has_the_last_entries_too(copyless):
    """A browser that keeps no copy fills the form as well, and the sheet under it."""
    page = opened(copyless, "/tenon")
    typed(page, stock="1 1/8")
    again = opened(copyless, "/tenon")

    again.locator("#note-stock", has_text="1.125 in").wait_for()
    assert "1 1/8" == entry(again, "stock")


def test_a_link_with_entries_is_shown_as_it_says(phone):
    """What is remembered does not touch it, nor is it remembered before something is changed in it."""
    page = opened(phone, "/tenon")
    typed(page, stock="1 1/8", kerf="0.098")
    before = remembered(page, "last")
    again = opened(phone, "/tenon?stock=2&kerf=1/8")

    assert ["2", "1/8", "3/8"] == [entry(again, name) for name in ("stock", "kerf", "groove_width")]
    assert before == remembered(again, "last")
    typed(again, stock="2 1/8")
    assert ["2 1/8"] == parse_qs(remembered(again, "last")["tenon"])["stock"]


def test_what_is_the_shops_is_in_every_card(phone):
    """A kerf measured at the tenon is the kerf of the rabbet; the tenon's stock is not the groove's."""
    typed(opened(phone, "/tenon"), kerf="0.098", stock="2")

    assert "0.098" == entry(opened(phone, "/rabbet"), "kerf")
    assert "1 3/8" == entry(opened(phone, "/groove"), "stock")


def test_the_shops_kerf_goes_before_an_older_one(phone):
    """A card used before the blade was changed opens with the blade that is on now."""
    typed(opened(phone, "/rabbet"), kerf="1/8", width="1/2")
    typed(opened(phone, "/tenon"), kerf="0.098")
    page = opened(phone, "/rabbet")

    assert ["0.098", "1/2"] == [entry(page, name) for name in ("kerf", "width")]


def test_what_cannot_be_read_is_not_the_shops(phone):
    """A slip of the finger stays on its card."""
    typed(opened(phone, "/tenon"), kerf="0.098")
    page = opened(phone, "/tenon")
    typed(page, kerf="thick")

    assert "0.098" == remembered(page, "shop")["kerf"]


def test_a_trial_is_not_remembered(phone):
    """It belongs to the cut that it was read from: the next time the card asks for another. The address of now keeps it."""
    page = opened(phone, "/groove")
    typed(page, stock="1 1/8")
    page.locator("#in-measured_groove").fill("0.380")
    until(page, "new URLSearchParams(location.search).get('measured_groove') === '0.380'")
    page.reload()
    wait_for_card(page)
    assert "0.380" == entry(page, "measured_groove")

    assert ["1 1/8", ""] == [entry(opened(phone, "/groove"), name) for name in ("stock", "measured_groove")]


def test_tape_and_units_are_remembered(phone):
    """They are those of every card that is opened; what was typed in inches stays what it was."""
    typed(opened(phone, "/tenon"), kerf="3/32", stock="1 1/8")
    page = opened(phone, "/groove")
    typed(page, tape="64", units="mm")
    again = opened(phone, "/tenon")

    assert ["64", "mm", "1 1/8 in", "3/32 in"] == [entry(again, name) for name in ("tape", "units", "stock", "kerf")]
    again.locator("#note-stock", has_text="1.125 in").wait_for()


def test_a_card_never_used_starts_in_a_metric_shops_own_millimetres(phone):
    """However it is opened: not with what the starting values of an inch shop come to."""
    starts = [entry(opened(phone, "/hinge-layout?units=mm"), name) for name in ("door_height", "hinge_length")]
    phone.forget()
    page = opened(phone, "/shop")
    typed(page, units="mm")
    page = phone.visit("/hinge-layout")
    page.wait_for_url("**/hinge-layout?*units=mm*")
    wait_for_card(page)

    assert starts == [entry(page, name) for name in ("door_height", "hinge_length")]


def test_a_thing_typed_in_other_units_keeps_its_meaning(phone):
    """2.4 in a card of millimetres is no kerf of 2.4 inches for a shop that reads in inches."""
    typed(opened(phone, "/tenon?units=mm"), kerf="2.4")

    assert "2.4 mm" == entry(opened(phone, "/rabbet"), "kerf")


def test_one_tap_goes_back_to_the_starting_values(phone):
    """The card begins anew with the shop's own things, and stays so when it is opened again."""
    page = opened(phone, "/tenon")
    typed(page, stock="2", kerf="0.098")
    page.get_by_text("Back to the starting values").click()
    page.wait_for_url("**/tenon?kerf=0.098")
    wait_for_card(page)

    assert ["1 3/8", "0.098"] == [entry(page, name) for name in ("stock", "kerf")]
    assert "1 3/8" == entry(opened(phone, "/tenon"), "stock")


def test_the_page_of_the_shop_keeps_what_reads_well(phone):
    """What is typed there is in the cards; what cannot be read is told and not kept; the address stays plain."""
    page = opened(phone, "/shop")
    typed(page, collar="5/8", shims="0.005, 0.010")
    page.locator("#in-bit").fill("wide")
    page.locator("#note-bit.wrong").wait_for()

    assert {"collar": "5/8", "shims": "0.005, 0.010"} == remembered(page, "shop")
    assert "/shop" == urlsplit(page.url).path + urlsplit(page.url).query
    assert "5/8" == entry(opened(phone, "/hinge-mortise"), "collar")
    assert "0.005, 0.010" == entry(opened(phone, "/dado-stack"), "shims")


def test_the_page_of_the_shop_shows_what_is_kept(phone):
    """It opens with the shop as it is, and one tap empties it."""
    typed(opened(phone, "/tenon"), kerf="0.098")
    page = opened(phone, "/shop")
    assert "0.098" == entry(page, "kerf")
    with page.expect_navigation():
        page.get_by_text("Back to the starting values").click()
    until(page, "document.getElementById('in-kerf')?.value === '1/8'")

    assert {} == remembered(page, "shop")


def test_storage_that_is_refused_does_no_harm(refusing):
    """Everything works and nothing is remembered; the page of the shop says so."""
    page = opened(refusing, "/tenon?groove_width=5/16&fit=0")
    page.locator("#in-stock").fill("1 1/8")
    readout(page).locator(".big", has_text="thirteen thirty-seconds").wait_for()
    shop = opened(refusing, "/shop")
    shop.locator("#in-kerf").fill("0.098")
    shop.get_by_text("This browser keeps nothing").wait_for()

    assert "1 3/8" == entry(opened(refusing, "/tenon"), "stock")


@pytest.mark.parametrize("kept", ["[", "null", "7", '{"kerf": 1}', '[["kerf"]]', "[[1, 2]]", '["kerf", "2"]', '[["tenon", null], 3]'])
def test_what_is_kept_is_not_trusted(phone, kept):
    """Whatever stands in the storage, a card opens, and has its starting values."""
    page = phone.visit("/")
    page.evaluate(f"for (const name of ['shop', 'last']) localStorage.setItem(`shopcalc.${{name}}.1`, {json.dumps(kept)})")
    page = opened(phone, "/tenon")

    assert ["1 3/8", "1/8"] == [entry(page, name) for name in ("stock", "kerf")]


def test_kept_markup_is_text(phone):
    """A text with markup in it stands in its field and runs nowhere."""
    markup = '"><img src=x onerror="document.title=1">'
    page = phone.visit("/")
    page.evaluate(
        "text => localStorage.setItem('shopcalc.last.1', JSON.stringify([['tenon', String(new URLSearchParams({ stock: text }))]]))", markup
    )
    page = phone.visit("/tenon")
    page.locator("#note-stock.wrong").wait_for()

    assert markup == entry(page, "stock")
    assert 0 == page.locator("main img").count()


def test_the_page_of_the_shop_works_without_scripts(scriptless):
    """It submits to itself and says how each thing was understood."""
    page = scriptless.visit("/shop")
    page.locator("#in-kerf").fill("0.098")
    page.locator("#in-bit").fill("wide")
    page.get_by_role("button", name="Read them").click()

    assert "0.098\u00a0in" in page.locator("#note-kerf").inner_text()
    assert page.locator("#note-bit.wrong").is_visible()
