"""The app as plain files on a host that only hands out files: it cannot read a query, the worker can."""

from functools import partial
from http import HTTPStatus
from mimetypes import guess_type

import pytest

from shopcalc.export import write_files

from ..serving import Serving
from .jobs import BOATHOUSE
from .phone import SCREEN, Phone, borrowed, readout, wait_for_card

pytestmark = pytest.mark.browser

LINK = """async job => {
    const squeezed = new Blob([job]).stream().pipeThrough(new CompressionStream('deflate-raw'));
    const bytes = new Uint8Array(await new Response(squeezed).arrayBuffer());
    return '/job#job=' + btoa(String.fromCharCode(...bytes)).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}"""


def hand_out(folder, environ, start):
    """Answer with the file of a path, the index of a folder, or the page for what is missing."""
    path = folder / environ["PATH_INFO"].lstrip("/")
    path = path / "index.html" if path.is_dir() else path
    status = HTTPStatus.OK if path.is_file() else HTTPStatus.NOT_FOUND
    path = path if path.is_file() else folder / "404.html"
    start(
        f"{status.value} {status.phrase}", [("Content-Type", "application/manifest+json" if path.suffix == ".webmanifest" else guess_type(path)[0])]
    )
    return [path.read_bytes()]


@pytest.fixture
def phone(chromium, tmp_path):
    """A phone that has never seen the app, and a host with nothing but the files that were written."""
    write_files(tmp_path)
    serving = Serving(partial(hand_out, tmp_path))
    held = Phone(chromium.new_context(base_url=serving.address, **SCREEN), serving)
    with borrowed(held):
        yield held
    held.close()
    serving.stop()


def test_a_static_host_is_enough_to_install_from(phone):
    """One visit to a static host, and the app works with no signal."""
    page = phone.visit("/")
    phone.wait_for_copy(page)
    phone.lose_signal()
    page, answered = phone.open("/tenon?groove_width=5/16&fit=0")

    assert answered.from_service_worker
    readout(page).locator(".big", has_text="seventeen thirty-seconds").wait_for()


def test_a_link_opened_first_on_a_static_host_shows_its_own_entries(phone):
    """The starting values that the host's file holds are never shown for a link that says otherwise."""
    worker = phone.serving.hold("/worker.js")
    page = phone.visit("/tenon?stock=1+1/8&groove_width=5/16&fit=0")
    assert not readout(page).is_visible()
    with page.expect_navigation():
        worker.set()
    wait_for_card(page)

    assert page.locator("#in-stock").input_value() == "1 1/8"
    readout(page).locator(".big", has_text="thirteen thirty-seconds").wait_for()


def test_a_link_is_not_left_blank_where_no_copy_can_be_made(phone):
    """While a host is renewed its files are of two versions: no worker comes, and the page says that there is no answer."""
    phone.excuse("/static/pad.js")
    phone.serving.replace("/static/pad.js", "// of another version")
    page = phone.visit("/tenon?stock=1+1/8&groove_width=5/16&fit=0")
    page.locator("[data-signal=failed]").wait_for()

    assert not readout(page).locator(".big").is_visible()


def test_a_link_whose_scripts_do_not_come_says_so(phone):
    """It is neither blank nor answered with what the host's file holds, and the console is told why."""
    phone.excuse("status of 404")
    phone.serving.replace("/static/answers.js", "", "404 Not Found")
    page = phone.context.new_page()
    page.goto("/tenon?stock=1+1/8&groove_width=5/16&fit=0")
    page.get_by_text("The scripts of this page did not come. Open it again.").wait_for()

    assert page.locator(".big").count() == 0
    assert [True] == ["Failed to fetch dynamically imported module" in each for each in phone.complaints]
    phone.complaints.clear()


def test_a_card_without_a_query_is_shown_at_once_by_a_static_host(phone):
    """The starting values are what such an address asks for, and need no worker."""
    worker = phone.serving.hold("/worker.js")
    page = phone.visit("/groove")

    assert readout(page).locator(".big").is_visible()
    worker.set()


def test_the_link_of_a_job_opened_first_on_a_static_host_is_taken_in(phone):
    """Nobody answers it but the worker, which is waited for; no word of a missing signal is said meanwhile."""
    with_job = phone.visit("/job")
    phone.wait_for_copy(with_job)
    link = with_job.evaluate(LINK, BOATHOUSE)
    fresh = Phone(phone.context.browser.new_context(base_url=phone.serving.address, **SCREEN), phone.serving)
    with borrowed(fresh):
        page = fresh.visit(link)
        page.locator("#work .items li").first.wait_for(state="attached")

        assert "is kept here as" in page.locator("#job-says").inner_text()
        assert not page.locator("[data-signal=failed]").is_visible()
    fresh.close()


def test_without_scripts_a_static_card_says_whose_values_it_shows(phone):
    """Nobody reads the address then, and the starting values must not pass for those of the link."""
    context = phone.context.browser.new_context(base_url=phone.serving.address, java_script_enabled=False)
    page = context.new_page()
    page.goto("/tenon/?stock=2")

    assert "everything starts with" in page.locator("noscript .unknown").first.inner_text()
    context.close()


def test_another_page_of_the_host_is_still_its_own(phone, tmp_path):
    """The worker answers for cards; what is none is asked of the host, and only without a signal there is no such card."""
    phone.excuse("the server responded with a status of 404")
    (tmp_path / "photos").mkdir()
    (tmp_path / "photos" / "index.html").write_text("<!doctype html><title>Photos</title><h1>My photos</h1>")
    phone.wait_for_copy(phone.visit("/tenon/"))
    page = phone.context.new_page()
    page.goto("/photos/")

    assert page.locator("h1").inner_text() == "My photos"
    phone.lose_signal()
    page.goto("/photos/")
    assert "My photos" not in page.content()
