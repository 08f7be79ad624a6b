"""What holds on every page, with the worker or without one."""

import json

import pytest

from shopcalc.catalogue import setups

from .phone import borrowed, readout, until, wait_for_card

pytestmark = pytest.mark.browser

LISTS = ("/", "/shop")
PAGES = [*LISTS, *(f"/{slug}" for slug in setups())]

# Violations of the page's policy, kept from the first moment of every page.
WATCH = "addEventListener('securitypolicyviolation', fault => (window.forbidden ??= []).push(`${fault.violatedDirective} ${fault.blockedURI}`))"
OVERFLOW = "document.scrollingElement.scrollWidth - document.scrollingElement.clientWidth"


@pytest.fixture(scope="module")
def phones(lasting):
    """One phone of each kind, with the settings that make it so."""
    made = {
        "holding a copy": lasting(),
        "keeping no copy": lasting(),
        "narrow": lasting(viewport={"width": 360, "height": 740}),
        "without scripts": lasting(java_script_enabled=False),
    }
    made["keeping no copy"].context.add_init_script("delete Navigator.prototype.serviceWorker")
    for kind in ("holding a copy", "keeping no copy"):
        made[kind].context.add_init_script(WATCH)
    made["holding a copy"].install()
    return made


@pytest.fixture
def phone(phones, request):
    """The phone of the kind that the test names; an entry that cannot be read may be told to its console."""
    with borrowed(phones[request.param]) as held:
        held.excuse("the server responded with a status of 422")
        yield held


def on(kind):
    """Run a test on this kind of phone."""
    return pytest.mark.parametrize("phone", [kind], indirect=True)


@on("keeping no copy")
@pytest.mark.parametrize("path", PAGES)
def test_a_page_breaks_no_rule_of_its_policy_from_the_server(phone, path):
    """No style, script or address that the Content-Security-Policy forbids; the fixture fails on anything in the console."""
    page, answered = phone.open(path)
    page.get_by_text("Needs a signal in this browser").wait_for()
    if path not in LISTS:
        wait_for_card(page)

    assert not answered.from_service_worker
    assert "default-src 'none'" in answered.headers["content-security-policy"]
    assert page.evaluate("window.forbidden ?? []") == []


@on("holding a copy")
@pytest.mark.parametrize("path", [*LISTS, "/tenon"])
def test_a_page_breaks_no_rule_of_its_policy_from_the_worker(phone, path):
    """The same on a page that the worker made; of every card this is seen where it is opened with no signal."""
    page, answered = phone.open(path)
    phone.wait_for_copy(page)
    if path not in LISTS:
        wait_for_card(page)

    assert answered.from_service_worker
    assert "default-src 'none'" in answered.headers["content-security-policy"]
    assert page.evaluate("window.forbidden ?? []") == []


@on("holding a copy")
def test_a_script_in_an_entry_is_text(phone):
    """An entry with markup in it stands in its field as it was typed, and nothing of it runs."""
    typed = '"><img src=x onerror="document.title=\'run\'">'
    page = phone.visit("/tenon")
    wait_for_card(page)
    page.locator("#in-stock").fill(typed)
    page.locator("#note-stock.wrong").wait_for()
    until(page, "location.search.includes('onerror')")
    page.reload()
    page.locator("#note-stock.wrong").wait_for()

    assert page.locator("#in-stock").input_value() == typed
    assert page.locator("main img").count() == 0
    assert page.title() == setups()["tenon"].title
    assert page.evaluate("window.forbidden ?? []") == []


@on("narrow")
@pytest.mark.parametrize("slug", setups())
def test_a_card_with_long_entries_fits_a_phone_of_360_px(phone, slug):
    """Entries that nobody could read, as long as the fields take them, make messages and not a wider page."""
    page = phone.visit(f"/{slug}?" + "&".join(f"{name}={'9' * 200}" for name in setups()[slug].inputs))

    assert page.locator(".note.wrong").count() > 0
    assert page.evaluate("innerWidth") == 360
    assert page.evaluate(OVERFLOW) <= 0


@on("without scripts")
@pytest.mark.parametrize("slug", setups())
def test_a_card_is_whole_without_scripts(phone, slug):
    """A browser that runs no scripts is sent the answer, the sheet and a button."""
    page = phone.visit(f"/{slug}")

    assert readout(page).locator(".big").is_visible()
    assert page.locator("#sheet .cautions").is_visible()
    assert page.get_by_role("button", name="Work it out").is_visible()


@on("without scripts")
def test_the_form_works_without_scripts(phone):
    """The button sends the form as an address, and the page comes back with the answer and what was typed."""
    page = phone.visit("/tenon?groove_width=5/16&fit=0")
    page.locator("#in-stock").fill("1 1/8")
    page.get_by_role("button", name="Work it out").click()

    readout(page).locator(".big", has_text="thirteen thirty-seconds").wait_for()
    assert "stock=1+1%2F8" in page.url
    assert page.locator("#in-stock").input_value() == "1 1/8"


@on("without scripts")
def test_a_wrong_entry_is_marked_without_scripts(phone):
    """The message stands at its field, and there is no answer."""
    page = phone.visit("/tenon?stock=banana")

    assert page.locator("#in-stock").get_attribute("aria-invalid") == "true"
    assert "I do not know \u201cbanana\u201d" in page.locator("#note-stock").inner_text()
    assert readout(page).get_by_text("No answer yet").is_visible()


@on("without scripts")
@pytest.mark.parametrize("path", ["/tenon?stock=1", "/frame?stock=1"])
def test_a_digit_typed_lays_out_its_own_field_and_nothing_else(phone, chromium, path):
    """A cell of a grid is never laid out alone, however it is contained: the entry stands in a box of its own."""
    page, _ = phone.open(path)
    page.locator("#in-stock").focus()
    page.evaluate("document.body.offsetHeight")
    chromium.start_tracing(page=page, categories=["devtools.timeline"])
    page.keyboard.press("1")
    page.evaluate("document.body.offsetHeight")
    told = json.loads(chromium.stop_tracing())["traceEvents"]
    layouts = [each["args"]["beginData"] for each in told if each["name"] == "Layout" and "beginData" in each.get("args", {})]

    assert layouts
    assert all(each["partialLayout"] for each in layouts), layouts
