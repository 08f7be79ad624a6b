"""A newer version: kept beside the old one, used when the person says so, and never at the cost of what was typed."""

import pytest

from shopcalc import __version__

from .newer import NEWER, look_for_newer, newer_worker, take_newer, use_it
from .phone import readout, until, wait_for_card

pytestmark = pytest.mark.browser


def look_and_wait(page):
    """Look for a newer version, and wait until the browser has settled what to make of what it found."""
    page.evaluate(
        """() => {
            window.settled = false;
            navigator.serviceWorker.getRegistration().then(kept => kept.update()).then(kept => {
                const look = () => { window.settled = !kept.installing || kept.installing.state !== 'installing'; };
                kept.installing?.addEventListener('statechange', look);
                look();
            });
        }"""
    )
    until(page, "window.settled")


@pytest.fixture
def page(installed):
    """A card in the hands of the version at hand, with an entry typed."""
    opened = installed.visit("/tenon?groove_width=5/16&fit=0")
    wait_for_card(opened)
    installed.wait_for_copy(opened)
    opened.locator("#in-stock").fill("1 1/8")
    readout(opened).locator(".big", has_text="thirteen thirty-seconds").wait_for()
    until(opened, "new URL(location).searchParams.get('stock') === '1 1/8'")
    return opened


def test_nothing_is_offered_while_there_is_nothing_newer(page):
    """A look that finds the same version offers none."""
    look_and_wait(page)

    assert not page.get_by_role("button", name="Use it now").is_visible()


def test_a_newer_version_is_offered_and_not_forced(installed, page):
    """The newer worker waits: the page offers it, and the old one goes on answering."""
    installed.serving.replace("/worker.js", newer_worker())
    look_for_newer(page)

    assert f"shopcalc {__version__}" in installed.visit("/").locator("footer").inner_text()


def test_what_was_typed_is_still_there_in_the_newer_version(installed, page):
    """Taking the newer version loads the page again with the same entries and the same answer."""
    take_newer(installed, page)
    wait_for_card(page)

    assert page.locator("#in-stock").input_value() == "1 1/8"
    assert page.locator("#in-groove_width").input_value() == "5/16"
    readout(page).locator(".big", has_text="thirteen thirty-seconds").wait_for()
    assert not page.get_by_role("button", name="Use it now").is_visible()


def test_the_newer_version_answers_from_then_on_also_with_no_signal(installed, page):
    """After the change the pages are the newer version's, and the copy of the older one is thrown away."""
    take_newer(installed, page)
    installed.wait_for_copy(page)
    installed.lose_signal()

    other = installed.visit("/")
    assert f"shopcalc {NEWER}" in other.locator("footer").inner_text()
    assert other.evaluate("caches.keys()") == [f"shopcalc-{NEWER}-newer"]


def test_another_tab_keeps_what_it_shows_and_offers_the_reload(installed, page):
    """A tab that did not ask is not loaded again under the hands of whoever types in it."""
    other = installed.visit("/groove")
    wait_for_card(other)
    installed.excuse("the server responded with a status of 422")
    other.locator("#in-stock").fill("3/4 +")
    until(other, "new URL(location).searchParams.get('stock') === '3/4 +'")
    take_newer(installed, page)
    installed.wait_for_copy(page)

    other.get_by_role("button", name="Use it now").wait_for()
    assert other.locator("#in-stock").input_value() == "3/4 +"
    use_it(other)
    assert other.locator("#in-stock").input_value() == "3/4 +"


def test_a_tab_of_the_first_visit_is_told_too(phone):
    """The page that fetched the first worker offers the reload when another tab has taken a newer one."""
    first = phone.visit("/groove")
    phone.wait_for_copy(first)
    other = phone.visit("/tenon")
    wait_for_card(other)
    take_newer(phone, other)
    phone.wait_for_copy(other)

    use_it(first)


def test_a_newer_version_that_cannot_be_fetched_whole_is_left_alone(installed, page):
    """With one of its files missing the newer version is not kept, and the one at hand goes on with all of its own."""
    installed.excuse("the server responded with a status of 503")
    installed.serving.replace("/static/pad.js", "", "503 Service Unavailable")
    installed.serving.replace("/worker.js", newer_worker())
    look_and_wait(page)
    installed.lose_signal()

    assert not page.get_by_role("button", name="Use it now").is_visible()
    other = installed.visit("/")
    assert f"shopcalc {__version__}" in other.locator("footer").inner_text()
    assert other.evaluate("document.styleSheets[0].cssRules.length > 0")
