"""What a WebKit must be seen to do: lay out the cards, answer with no signal, take the pad's keys, keep a job, and reckon as the server does."""

import random
import time
from typing import Any

import pytest

from shopcalc import exact
from shopcalc.catalogue import setups
from shopcalc.phone import brain

from ..browser.newer import NEWER, newer_worker
from ..serving import Serving
from ..test_agreement import TEXTS, answered, differences, in_pairs
from ..typed import queries

pytestmark = pytest.mark.browser

PAGES = ["/", "/shop", "/job", *(f"/{slug}" for slug in setups())]
SOME = 40
CONTROL = "\ue009"  # the key, as WebDriver names it

# Fields beside one another that do not begin on one level, and fields whose label is not over their box.
ASTRAY = """return [...document.querySelectorAll('.fields')].flatMap(group => {
    const at = each => each.getBoundingClientRect();
    const fields = [...group.querySelectorAll('.field')].filter(each => at(each).height > 0);
    const meet = (a, b) => at(a).top < at(b).bottom && at(b).top < at(a).bottom;
    const isAstray = field => fields.some(each => meet(field, each) && Math.abs(at(field).top - at(each).top) > 2)
        || at(field.querySelector('label')).bottom > at(field.querySelector('input, select')).top + 1;
    return fields.filter(isAstray).map(each => each.textContent);
})"""
# The event that tells the pad of a finger: this driver has none.
TOUCH = """const field = document.querySelector(`[name="${arguments[0]}"]`);
    field.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true, pointerType: 'touch' }));
    field.focus(); field.click();"""
TYPE = """const field = document.querySelector(`[name="${arguments[0]}"]`);
    field.value = arguments[1]; field.dispatchEvent(new Event('input', { bubbles: true }));"""
CLICK = "[...document.querySelectorAll(arguments[0])].find(each => each.textContent.trim() === arguments[1]).click()"


def until(browser: Any, truth: str) -> None:
    """Wait until an expression is true on the page."""
    for _ in range(200):
        if browser.execute_script(f"return Boolean({truth})"):
            return
        time.sleep(0.05)
    raise AssertionError(f"not true on {browser.current_url} within 10 s: {truth}")


def visit(browser: Any, serving: Serving, path: str) -> None:
    """Open a page, and wait until the whole of it is there."""
    browser.get(serving.address + path)
    until(browser, "document.readyState === 'complete' && document.querySelector('#rest') === null")


def with_copy(browser: Any, serving: Serving, path: str) -> None:
    """Open a page, and wait until its worker could do without a signal."""
    visit(browser, serving, path)
    until(browser, "navigator.serviceWorker.controller?.state === 'activated'")


def with_boathouse(browser: Any, serving: Serving) -> None:
    """The page of the jobs with the boathouse on it."""
    with_copy(browser, serving, "/job")
    until(browser, "document.querySelector('#job-choice.ready')")
    browser.execute_script(CLICK, "button", "Show the boathouse")
    until(browser, "document.querySelector('#work .items li')")


def press(browser: Any, key: str) -> None:
    """Press one key of the pad."""
    browser.execute_script(
        "[...document.querySelectorAll('#pad button')].find(each => [each.ariaLabel, each.textContent].includes(arguments[0])).click()", key
    )


def find_newer(browser: Any) -> None:
    """Come back to the page until the newer version is offered: a look that falls together with the browser's own finds what that one finds."""
    for _ in range(20):
        browser.execute_script("document.dispatchEvent(new Event('visibilitychange'))")
        time.sleep(0.5)
        if browser.execute_script("return !document.querySelector('.newer').hidden"):
            return
    raise AssertionError("no newer version is offered")


@pytest.fixture(scope="module")
def held(webkit: Any, app: Any) -> Any:
    """A WebKit that holds a copy, and the server that it came from, for the tests that only look at pages."""
    served = Serving(app)
    with_copy(webkit, served, "/")
    yield webkit, served
    served.stop()


@pytest.mark.parametrize("path", PAGES)
def test_a_page_is_no_wider_than_the_screen_and_its_fields_stand_in_rows(held, path):
    """A fieldset that is itself a grid gives its legend a cell here, and every field stood in the row of another."""
    browser, serving = held
    visit(browser, serving, path)

    assert browser.execute_script("return document.scrollingElement.scrollWidth - document.scrollingElement.clientWidth") == 0
    assert browser.execute_script(ASTRAY) == []


def test_a_changed_entry_is_answered_with_no_signal(webkit, serving):
    """Its worker answers a link that was never opened, and a key that is pressed there."""
    with_copy(webkit, serving, "/")
    serving.stop()
    visit(webkit, serving, "/tenon?stock=1+3/8&groove_width=5/16&fit=0")
    first = webkit.execute_script("return document.querySelector('#answer .big').textContent")
    webkit.execute_script(TYPE, "stock", "abc")
    until(webkit, "document.querySelector('#answer').textContent.includes('I do not know')")

    assert "seventeen thirty-seconds" in first
    assert webkit.execute_script("return document.querySelector('[name=stock]').value") == "abc"


def test_the_pad_types_a_fraction_and_never_hides_its_field(webkit, serving):
    """It opens under a finger, leaves its field in sight, and gives the room back."""
    with_copy(webkit, serving, "/frame")
    until(webkit, "document.documentElement.dataset.hand !== undefined")
    webkit.execute_script(TOUCH, "stock")
    until(webkit, "document.querySelector('#pad')?.hidden === false")
    until(
        webkit, "document.querySelector('[name=stock]').getBoundingClientRect().bottom <= document.querySelector('#pad').getBoundingClientRect().top"
    )
    for key in ("Clear", "1", "one half"):
        press(webkit, key)

    assert webkit.execute_script("return document.querySelector('[name=stock]').value") == "1 1/2"

    press(webkit, "Done")
    until(webkit, "document.querySelector('#pad').hidden")
    until(webkit, "document.querySelector('#sheet').textContent.includes('Mill all stock together to 1\u00a01/2\u00a0in')")


def test_a_job_and_its_ticks_are_there_when_the_page_is_opened_again(webkit, serving):
    """What is kept goes through transactions, which end here earlier than elsewhere."""
    with_boathouse(webkit, serving)
    webkit.execute_script(CLICK, "#work .views button", "Order")
    until(webkit, "document.querySelector('#tick-0')")
    done = "document.querySelectorAll('.job-run.done').length"
    before = webkit.execute_script(f"return {done}")
    webkit.execute_script("document.querySelector('.job-run:not(.done) input[type=checkbox]').click()")
    until(webkit, f"{done} === {before + 1}")
    serving.stop()
    visit(webkit, serving, "/job")

    until(webkit, f"{done} === {before + 1}")


def test_a_link_to_a_job_is_copied_at_the_tap(webkit, serving):
    """Nothing can be copied later here, and the link is made of what the device has to read first; that a file is safer is said too."""
    with_boathouse(webkit, serving)
    button = webkit.find_element("css selector", "[data-do=link]")
    webkit.execute_script("arguments[0].scrollIntoView({ block: 'center', behavior: 'instant' })", button)
    button.click()

    until(webkit, "document.querySelector('#job-says').textContent.startsWith('The link is copied')")
    notes = webkit.find_element("id", "job-notes")
    notes.send_keys(CONTROL, "v")

    assert f"{serving.address}/job#job=" in notes.get_property("value")
    assert webkit.find_element("css selector", "[data-signal=lent]").is_displayed()


def test_a_newer_version_waits_until_it_is_asked_for_and_keeps_what_is_typed(webkit, serving):
    """It is found when the page is come back to, and taken at a tap."""
    with_copy(webkit, serving, "/tenon")
    webkit.execute_script(TYPE, "stock", "1 1/2")
    until(webkit, "new URLSearchParams(location.search).get('stock') === '1 1/2'")
    serving.replace("/worker.js", newer_worker())
    find_newer(webkit)
    webkit.execute_script("document.body.dataset.older = 'here'; document.querySelector('[data-use-newer]').click()")
    until(webkit, "document.body?.dataset.older === undefined && document.querySelector('[name=stock]')?.value === '1 1/2'")
    kept = webkit.execute_async_script("caches.keys().then(arguments[0])")

    assert kept == [f"shopcalc-{NEWER}-newer"]


def paper(environ, start):
    """An empty page without a policy; any other address would go on under that of the page before."""
    start("200 OK", [("Content-Type", "text/html")])
    return [b"<!doctype html><title>Paper</title>"]


@pytest.fixture(scope="module")
def reckoner(webkit):
    """Gives the texts that the phone's code makes of requests, in this engine."""
    served = Serving(paper)
    webkit.get(served.address)
    script = f"{brain(setups())}; window.reckoned = given => {TEXTS};"
    webkit.execute_script("const made = document.createElement('script'); made.textContent = arguments[0]; document.head.append(made)", script)
    yield lambda requests: webkit.execute_script("return reckoned([arguments[0]])", in_pairs(requests))
    served.stop()


@pytest.mark.sweep
@pytest.mark.parametrize("slug", setups())
def test_its_arithmetic_is_the_servers(reckoner, slug):
    """What V8 is held to in thousands of requests, in the other engine's arithmetic and texts, for some."""
    rng = random.Random(f"webkit {slug}")
    requests = [("/" + slug, query, part) for query in queries(exact.world()["setups"][slug]["about"]["inputs"], SOME, rng) for part in ("", "sheet")]

    assert [differences(answered(*request), text) for request, text in zip(requests, reckoner(requests), strict=True)] == [[]] * len(requests)
