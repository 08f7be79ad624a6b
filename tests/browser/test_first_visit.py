"""The first visit, with a signal: the page works at once, and says when it no longer needs one."""

import pytest

from shopcalc.phone import KEPT

from .phone import readout, wait_for_card

pytestmark = pytest.mark.browser

(HTMX,) = [path for path in KEPT if "htmx" in path]


def test_the_first_visit_says_that_a_copy_is_being_kept(phone):
    """Until the worker has everything, the page says that it is still at it, and does not promise more."""
    worker = phone.serving.hold("/worker.js")
    page = phone.visit("/")

    page.get_by_text("Keeping a copy for no signal").wait_for()
    assert not page.get_by_text("Works with no signal").is_visible()
    worker.set()


def test_the_first_visit_says_when_no_signal_is_needed_any_more(phone):
    """Once the copy is complete the page says so, and no longer that it is being made."""
    page = phone.visit("/")

    page.get_by_text("Works with no signal").wait_for()
    assert not page.get_by_text("Keeping a copy for no signal").is_visible()


def test_the_worker_takes_charge_of_the_page_that_installed_it(phone):
    """The page need not be loaded again: the worker becomes active and answers from then on."""
    page = phone.visit("/tenon")
    phone.wait_for_copy(page)

    assert page.evaluate("navigator.serviceWorker.controller.scriptURL") == f"{phone.serving.address}/worker.js"


def test_the_first_visit_is_answered_by_the_server_and_the_next_by_the_phone(phone):
    """The worker answers a second visit even where there is a signal."""
    page, first = phone.open("/groove")
    phone.wait_for_copy(page)
    _, second = phone.open("/groove")

    assert not first.from_service_worker
    assert second.from_service_worker


def test_chromium_finds_the_manifest_whole(phone):
    """The browser's own reading of the manifest reports no fault in it."""
    page = phone.visit("/")
    phone.wait_for_copy(page)
    read = phone.context.new_cdp_session(page).send("Page.getAppManifest")

    assert read["errors"] == []
    assert read["url"] == f"{phone.serving.address}/manifest.webmanifest"
    assert read["data"]


def test_chromium_would_install_the_app(phone):
    """The browser has no objection to installing it, but that a profile of a test is a private one."""
    page = phone.visit("/")
    phone.wait_for_copy(page)
    found = phone.context.new_cdp_session(page).send("Page.getInstallabilityErrors")["installabilityErrors"]

    assert [each["errorId"] for each in found if each["errorId"] != "in-incognito"] == []


# An icon is drawn at the size it says it has; how many of its pixels are not quite opaque is counted.
DRAW = """async icon => {
    const image = new Image();
    image.src = icon.src;
    await image.decode();
    const [wide, high] = icon.sizes === 'any' ? [image.naturalWidth, image.naturalHeight] : icon.sizes.split('x').map(Number);
    const paper = new OffscreenCanvas(wide, high).getContext('2d');
    paper.drawImage(image, 0, 0);
    const pixels = paper.getImageData(0, 0, wide, high).data.filter((_, place) => place % 4 === 3);
    return { asSaid: image.naturalWidth === wide && image.naturalHeight === high, seeThrough: pixels.filter(each => each < 255).length };
}"""


def test_every_icon_of_the_manifest_loads_at_the_size_it_says(phone):
    """Each icon decodes and is as large as the manifest says."""
    page = phone.visit("/")
    icons = page.evaluate("fetch('/manifest.webmanifest').then(found => found.json()).then(manifest => manifest.icons)")

    assert [icon["src"] for icon in icons if not page.evaluate(DRAW, icon)["asSaid"]] == []
    assert {"192x192", "512x512"} <= {icon["sizes"] for icon in icons}


def test_the_maskable_icon_fills_its_square(phone):
    """A phone cuts a maskable icon to a shape of its own, so the icon has no hole and no clear corner."""
    page = phone.visit("/")
    icons = page.evaluate("fetch('/manifest.webmanifest').then(found => found.json()).then(manifest => manifest.icons)")
    (maskable,) = [icon for icon in icons if icon["purpose"] == "maskable"]

    assert page.evaluate(DRAW, maskable)["seeThrough"] == 0


def test_a_card_is_answered_before_the_copy_is_made(phone):
    """A first visit to a card finds its number on the page, while the worker is still being fetched."""
    worker = phone.serving.hold("/worker.js")
    page = phone.visit("/tenon")

    assert readout(page).locator(".big").is_visible()
    assert page.locator("#sheet .cautions").is_visible()
    worker.set()


def test_what_is_typed_before_the_page_listens_is_answered_when_it_does(phone):
    """On a slow network a person types before the scripts have come; the answer follows once they have."""
    script = phone.serving.hold(HTMX)
    page = phone.visit("/tenon?groove_width=5/16&fit=0")
    page.locator("#in-stock").fill("1 1/8")
    script.set()

    readout(page).locator(".big", has_text="thirteen thirty-seconds").wait_for()  # (1 1/8 - 5/16) / 2


def test_a_browser_that_keeps_no_copy_says_that_it_needs_a_signal(phone):
    """Without service workers nothing is promised, and the server answers what is typed."""
    phone.context.add_init_script("delete Navigator.prototype.serviceWorker")
    page = phone.visit("/tenon?groove_width=5/16&fit=0")
    wait_for_card(page)
    page.locator("#in-stock").fill("1 1/8")

    readout(page).locator(".big", has_text="thirteen thirty-seconds").wait_for()
    assert page.get_by_text("Needs a signal in this browser").is_visible()
    assert not page.get_by_text("Works with no signal").is_visible()


def card_without_copy(phone, path, *excused):
    """A card in a browser that keeps no copy, with every script; what is excused may be told to its console."""
    phone.context.add_init_script("delete Navigator.prototype.serviceWorker")
    for told in excused:
        phone.excuse(told)
    page = phone.visit(path)
    wait_for_card(page)
    page.locator("html[data-hand]").wait_for(state="attached")
    return page


def test_a_browser_that_keeps_no_copy_shows_no_old_answer_when_the_signal_goes(phone):
    """Where nothing can answer what is typed, the page says so and takes the answer to the older entry away."""
    page = card_without_copy(phone, "/tenon", "net::ERR_INTERNET_DISCONNECTED", "htmx:sendError")
    # every script is there before the signal goes
    page.locator("#add-to-job").wait_for()
    phone.lose_signal()
    page.locator("#in-stock").fill("1 1/8")

    page.get_by_role("alert").get_by_text("No answer").wait_for()
    assert readout(page).count() == 0
    assert page.locator("#in-stock").input_value() == "1 1/8"


def test_a_busy_server_is_told_and_asked_again(phone):
    """No old answer stands under what is typed meanwhile; when the server is free its answer comes by itself."""
    page = card_without_copy(phone, "/boards", "the server responded with a status of 503", "htmx:responseError")
    page.route("**/boards?*", lambda route: route.fulfill(status=503, body="busy"))
    page.locator("#in-parts").fill("36 x40")
    page.get_by_text("laying other boards").wait_for()
    assert readout(page).count() == 0

    page.unroute("**/boards?*")
    page.locator("#answer .readout").wait_for()
    page.locator("[data-signal=busy]").wait_for(state="hidden")
    assert page.locator("#in-parts").input_value() == "36 x40"
