"""In the shop: no network and no server, only what the phone has kept."""

import json

import pytest

from shopcalc.catalogue import setups

from .phone import SCREEN, Phone, borrowed, readout, until, wait_for_card

pytestmark = pytest.mark.browser


@pytest.fixture
def shop(carried):
    """That phone, for one test, remembering nothing."""
    carried.forget()
    with borrowed(carried):
        yield carried


def test_the_list_of_cards_opens_cold(shop):
    """A new page at the first address lists every card and the shop, each with a link to it."""
    page, answered = shop.open("/")

    assert answered.from_service_worker
    assert {link.get_attribute("href") for link in page.locator("main li a").all()} == {"/shop", *(f"/{slug}" for slug in setups())}


@pytest.fixture
def away(carried):
    """That phone, for tests that only look."""
    with borrowed(carried):
        yield carried


@pytest.mark.parametrize("slug", setups())
def test_a_card_opens_cold_with_its_answer_and_its_sheet(away, slug):
    """A new page at a card's address shows the setting, then all the rest, in the app's own style, and under its own policy."""
    page, answered = away.open(f"/{slug}")
    wait_for_card(page)

    assert answered.status == 200
    assert answered.from_service_worker
    assert "default-src 'none'" in answered.headers["content-security-policy"]
    assert page.get_by_role("heading", level=1).inner_text() == setups()[slug].title
    assert readout(page).locator(".big").is_visible()
    assert page.locator("#sheet figure.picture svg").first.is_visible()
    assert page.evaluate("document.styleSheets.length > 0 && document.styleSheets[0].cssRules.length > 0")


def test_a_link_to_a_card_opens_with_the_entries_it_carries(shop):
    """An address with a query is a card with those entries, fractions and all."""
    page = shop.visit("/tenon?stock=1+1/8&groove_width=5%2F16&fit=0")

    assert page.locator("#in-stock").input_value() == "1 1/8"
    assert page.locator("#in-groove_width").input_value() == "5/16"
    assert "thirteen thirty-seconds" in readout(page).inner_text()  # (1 1/8 - 5/16) / 2


def test_an_address_that_ends_in_json_is_answered_with_data(shop):
    """The phone gives the same data as the server would."""
    shop.excuse("the server responded with a status of 404")  # the browser looks for an icon where a page names none
    page, answered = shop.open("/tenon.json?stock=1+3/8&groove_width=5/16&fit=0")

    assert answered.header_value("content-type") == "application/json"
    assert json.loads(page.locator("body").inner_text())["results"]["shoulder_height"]["value"] == 17 / 32


def test_an_address_without_a_card_says_so(shop):
    """What is not there is a page of the app that leads back to the list, and no error of the browser's."""
    shop.excuse("the server responded with a status of 404")
    page, answered = shop.open("/mantelpiece")

    assert answered.status == 404
    assert page.get_by_role("heading", level=1).inner_text() == "No such card"
    page.get_by_role("link", name="All cards").click()
    page.get_by_role("heading", name="What are you setting up?").wait_for()


def test_a_changed_entry_changes_the_answer(shop):
    """A thicker rail: the readout, the note at the field, the sheet and the address all follow."""
    page = shop.visit("/tenon?groove_width=5/16&fit=0")
    wait_for_card(page)
    assert "seventeen thirty-seconds" in readout(page).inner_text()  # (1 3/8 - 5/16) / 2

    page.locator("#in-stock").fill("1 1/8")

    readout(page).get_by_text("thirteen thirty-seconds").first.wait_for()  # (1 1/8 - 5/16) / 2
    page.locator("#note-stock", has_text="1.125 in").wait_for()
    page.locator("#sheet .steps", has_text="Set the blade 13/32 in high").wait_for()
    until(page, "new URL(location).searchParams.get('stock') === '1 1/8'")


ASKED = "() => performance.getEntriesByType('resource').filter(({ name }) => name.includes('/tenon?stock=1.5')).length"


def test_the_worker_is_told_of_a_key_and_not_requested(shop):
    """A request takes a phone as long again as the answer and its drawing; the sheet, which comes when the fingers rest, is one."""
    page = shop.visit("/tenon")
    wait_for_card(page)
    page.evaluate(
        """() => { window.told = [];
        const seen = new MutationObserver(() => told.push(performance.now()));
        seen.observe(document.querySelector('#answer'), { subtree: true, characterData: true }); }"""
    )
    page.locator("#in-stock").fill("1.5")
    readout(page).locator(".big .unseen", has_text="nine sixteenths").wait_for()

    until(page, "performance.getEntriesByType('resource').some(({ name }) => name.includes('/tenon?stock=1.5'))")
    assert (1, True) == (page.evaluate(ASKED), page.evaluate("told[0] < performance.getEntriesByType('resource').at(-1).responseEnd"))


def test_a_worker_that_says_nothing_is_asked_by_a_request(shop):
    """One that was ended in the middle of a message is started by it."""
    page = shop.visit("/tenon")
    wait_for_card(page)
    page.evaluate("ServiceWorker.prototype.postMessage = () => {}")
    page.locator("#in-stock").fill("1.5")

    readout(page).locator(".big .unseen", has_text="nine sixteenths").wait_for()
    assert 2 == page.evaluate(ASKED)


def test_a_worker_that_cannot_tell_says_so_at_once(shop):
    """The page goes on to a request: an old number must not stand for as long as a silence is waited for."""
    page = shop.visit("/tenon")
    wait_for_card(page)
    told = page.evaluate(
        """() => new Promise(done => { const { port1, port2 } = new MessageChannel(); port1.onmessage = ({ data }) => done(data);
        navigator.serviceWorker.controller.postMessage({ path: null, pairs: null }, [port2]); })"""
    )

    assert told is None


def test_an_answer_of_the_same_shape_keeps_its_elements(shop):
    """Mostly only numbers change: what a finger or a screen reader is on stays where it is; where a stop comes all is drawn anew."""
    page = shop.visit("/tenon?stock=1+3/8&groove_width=5/16")
    wait_for_card(page)
    page.evaluate("window.first = document.querySelector('#answer .big')")
    page.locator("#in-stock").fill("1 1/2")
    readout(page).locator(".big .unseen", has_text="nineteen thirty-seconds").wait_for()
    assert page.evaluate("window.first.isConnected")

    page.locator("#in-stock").fill("1/4")
    readout(page).locator(".halt").wait_for()
    assert not page.evaluate("window.first.isConnected")


def turn_metric(page):
    """The shop begins to think in millimetres."""
    page.locator(".shop summary").click()
    page.locator("#shop-units").select_option("mm")


def test_entries_keep_their_meaning_when_the_shop_turns_metric(shop):
    """Bare numbers get the unit they had: lengths, every piece of a row, and temperatures."""
    page = shop.visit("/dado-stack")
    wait_for_card(page)
    before = readout(page).inner_text()
    turn_metric(page)
    until(page, "document.querySelector('#answer').innerText.includes('18.4 mm')")

    assert "23/32 in" == page.locator("#in-target").input_value()
    assert page.locator("#in-chippers").input_value().startswith("1/8 in, 1/8 in, ")
    assert "0.723\u00a0in" in before


def test_rows_keep_their_counts_names_and_prices_beside_the_unit(shop):
    """The unit goes to the length of each line, before how many there are and what one costs."""
    page = shop.visit("/boards?parts=rail+22+15/16+x2,+30&on_hand=96+x3&lengths=120+@+12.50")
    wait_for_card(page)
    turn_metric(page)
    until(page, "new URL(location).searchParams.get('units') === 'mm'")

    typed = [page.locator(f"#in-{name}").input_value() for name in ("parts", "on_hand", "lengths")]
    assert typed == ["rail 22 15/16 in x2, 30 in", "96 in x3", "120 in @ 12.50"]


def test_temperatures_keep_their_meaning_too(shop):
    """Seventy degrees stay Fahrenheit when the shop begins to think in Celsius."""
    page = shop.visit("/wood-movement?by=climate")
    wait_for_card(page)
    turn_metric(page)
    until(page, "document.querySelector('#in-temperature_now').value.endsWith(' F')")


def test_the_way_back_leads_to_no_older_entries(shop):
    """A jump on the card and back again: the address says what the fields say, and a reload shows it."""
    page = shop.visit("/groove")
    wait_for_card(page)
    page.locator("html[data-hand]").wait_for(state="attached")
    page.locator("#in-stock").fill("1 1/2")
    until(page, "new URL(location).searchParams.get('stock') === '1 1/2'")
    page.get_by_role("link", name="Order", exact=True).click()
    page.locator("#in-stock").fill("1 3/4")
    until(page, "new URL(location).searchParams.get('stock') === '1 3/4'")
    page.go_back()
    until(page, "!location.hash && new URL(location).searchParams.get('stock') === '1 3/4'")


def test_the_address_bar_is_a_link_to_what_was_typed(shop):
    """The address that follows the form, opened in another page, is the same card."""
    page = shop.visit("/groove")
    wait_for_card(page)
    page.locator("#in-stock").fill("3/4")
    page.locator("#in-groove_width").fill("1/4")
    until(page, "new URL(location).searchParams.get('groove_width') === '1/4'")
    readout(page).locator(".unseen", has_text="one quarter").first.wait_for()

    other = shop.visit(page.url)

    assert other.locator("#in-stock").input_value() == "3/4"
    assert readout(other).inner_text() == readout(page).inner_text()


def test_an_entry_that_cannot_be_read_is_answered_at_its_field(shop):
    """The message stands at the field, which is marked as wrong and keeps what was typed; there is no answer meanwhile."""
    shop.excuse("the server responded with a status of 422")
    page = shop.visit("/tenon")
    wait_for_card(page)

    page.locator("#in-stock").fill("1 3/8 banana")

    page.locator("#note-stock.wrong", has_text="I do not know \u201cbanana\u201d").wait_for()
    page.locator("#in-stock[aria-invalid='true']").wait_for()
    readout(page).get_by_text("No answer yet").wait_for()
    assert readout(page).locator(".big").count() == 0
    assert page.locator("#in-stock").input_value() == "1 3/8 banana"


def test_a_wrong_entry_that_is_mended_is_answered_again(shop):
    """With the slip taken out the field is no longer marked, and the answer is back."""
    shop.excuse("the server responded with a status of 422")
    page = shop.visit("/tenon?groove_width=5/16&fit=0")
    wait_for_card(page)
    page.locator("#in-stock").fill("1 3/")
    page.locator("#in-stock[aria-invalid='true']").wait_for()

    page.locator("#in-stock").fill("1 3/8")

    page.locator("#in-stock:not([aria-invalid])").wait_for()
    readout(page).locator(".big", has_text="seventeen thirty-seconds").wait_for()
    assert page.locator("#note-stock.wrong").count() == 0


def test_a_trial_tenon_that_is_too_thick_raises_the_blade(shop):
    """Stock 1 3/8, groove 5/16, a trial tenon of 0.330: the card says to raise the blade, and by how much."""
    page = shop.visit("/")
    page.get_by_role("link", name="Stub tenon").click()
    wait_for_card(page)
    page.locator("#in-stock").fill("1 3/8")
    page.locator("#in-groove_width").fill("5/16")
    page.locator("#in-measured_tenon").fill("0.330")

    # half of what 0.330 is over 5/16 less the play of 0.006: 0.01175
    readout(page).get_by_text("Too thick: raise the blade 0.012 in").wait_for()
    page.locator("#in-fit").fill("0")
    readout(page).get_by_text("Too thick: raise the blade 0.009 in").wait_for()
    page.locator("#sheet .correct", has_text="Too thick: raise the blade 0.009 in").wait_for()


def test_the_way_on_to_the_next_card_carries_the_entries(shop):
    """From the groove to its tenon without a signal, with the wood as it was measured."""
    page = shop.visit("/groove?stock=1+1/8&groove_width=5/16")
    wait_for_card(page)

    page.get_by_role("link", name="The tenon for this groove").click()

    page.get_by_role("heading", name="Stub tenon").wait_for()
    assert page.locator("#in-stock").input_value() == "1 1/8"
    assert page.locator("#in-groove_width").input_value() == "5/16"


def test_the_page_still_says_that_it_works_with_no_signal(shop):
    """A worker that cannot be fetched anew is no reason to ask for a signal."""
    page = shop.visit("/tenon")

    page.get_by_text("Works with no signal").wait_for()
    assert not page.get_by_text("Needs a signal in this browser").is_visible()


def test_the_app_starts_in_a_browser_that_was_closed_since_it_was_installed(launching, serving, tmp_path):
    """The phone was off: a browser started anew with the same profile, and no signal from the first moment, opens a card."""
    kind, settings = launching
    before = Phone(kind.launch_persistent_context(tmp_path, base_url=serving.address, **settings, **SCREEN), serving)
    before.wait_for_copy(before.visit("/"))
    before.close()
    after = Phone(kind.launch_persistent_context(tmp_path, base_url=serving.address, **settings, **SCREEN), serving)
    after.lose_signal()
    page, answered = after.open("/tenon?groove_width=5/16&fit=0")
    wait_for_card(page)
    answers = readout(page).locator(".big", has_text="seventeen thirty-seconds").is_visible()
    found = (answered.from_service_worker, answers, before.complaints + after.complaints)
    after.close()

    assert found == (True, True, [])


def test_a_card_opens_with_its_answer_and_the_form_follows(shop):
    """What is read at the machine does not wait for the form; once that is there it is the whole card, and listens."""
    page = shop.context.new_page()
    page.add_init_script(
        "const asks = window.fetch; window.fetch = async (...all) => { await new Promise(done => { window.goOn = done; }); return asks(...all); };"
    )
    page.goto("/tenon")

    assert (True, 0) == (readout(page).locator(".big").is_visible(), page.locator("#inputs").count())

    until(page, "window.goOn !== undefined")
    page.evaluate("goOn()")
    page.locator("#in-stock").fill("1 1/2")
    page.evaluate("goOn()")
    readout(page).get_by_text("0.566 in").first.wait_for()
    wait_for_card(page)


def test_a_card_whose_form_does_not_come_says_so(shop):
    """The answer stands, and it is told that the rest is missing."""
    page = shop.context.new_page()
    page.add_init_script("window.fetch = () => Promise.reject(new TypeError('no signal'));")
    page.goto("/tenon")

    page.get_by_role("link", name="Open it again").wait_for()
    assert readout(page).locator(".big").is_visible()
