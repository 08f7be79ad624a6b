"""A phone in the hand of a woodworker: a Chromium of 390 by 844 with a touch screen."""

from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

from ..serving import Serving

if TYPE_CHECKING:
    from playwright.sync_api import BrowserContext, ConsoleMessage, Locator, Page, Response

# An address of the app that lays nothing out: what a phone keeps can be reached from it.
SMALLEST = "/static/icons/icon.svg"

SCREEN = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "is_mobile": True, "device_scale_factor": 2}

# What Chromium itself says when it asks for a newer worker and there is no signal; the page goes on with the one it has.
NO_SIGNAL = ("An unknown error occurred when fetching the script.", "net::ERR_INTERNET_DISCONNECTED", "net::ERR_CONNECTION_REFUSED")

# What htmx says when the page itself calls off a sheet because more was typed. A request that fails has a line of its own.
CALLED_OFF = ("htmx:sendAbort", "htmx:afterRequest")


class Phone:
    """One browser profile and the server it knows."""

    def __init__(self, context: "BrowserContext", serving: Serving) -> None:
        self.context = context
        self.serving = serving
        self.context.set_default_timeout(10_000)
        self.complaints: list[str] = []
        self._excused = list(CALLED_OFF)
        self._signal = True
        self._desk: Page | None = None
        self.context.on("console", self._heard)
        self.context.on("weberror", lambda fault: self.complaints.append(f"error: {fault.error}"))

    def _heard(self, message: "ConsoleMessage") -> None:
        lost = not self._signal and "/worker.js" in f"{message.text} {message.location}" and any(each in message.text for each in NO_SIGNAL)
        # where an address that is no page names no icon, the browser looks for one
        lost = lost or "/favicon.ico" in str(message.location)
        if message.type in ("error", "warning") and not lost and not any(each in message.text for each in self._excused):
            self.complaints.append(f"{message.type}: {message.text} at {message.location}")

    def excuse(self, words: str) -> None:
        """Let the console say this: the browser reports every status of 400 or more, also one that the page expects."""
        self._excused.append(words)

    def open(self, path: str) -> "tuple[Page, Response]":
        """Open an address in a new page, wait until its form is there, and say what answered it."""
        page = self.context.new_page()
        answered = page.goto(path)
        assert answered is not None
        page.locator("#rest").wait_for(state="detached")
        return page, answered

    def visit(self, path: str) -> "Page":
        """Open an address in a new page."""
        return self.open(path)[0]

    def wait_for_copy(self, page: "Page") -> None:
        """Wait until the worker is active and the page is in its hands."""
        until(page, "navigator.serviceWorker.controller?.state === 'activated'")
        page.get_by_text("Works with no signal").wait_for()

    def install(self) -> None:
        """Visit the app once, until the phone holds its own copy."""
        page = self.visit("/")
        self.wait_for_copy(page)
        page.close()

    def lose_signal(self) -> None:
        """Take the network and the server away."""
        self._signal = False
        self.context.set_offline(True)
        self.serving.stop()

    def put_away(self) -> None:
        """Close every page, and forget what was complained of and excused."""
        for page in self.context.pages:
            if page is not self._desk:
                page.close()
        self.complaints.clear()
        self._excused = list(CALLED_OFF)

    def forget(self) -> None:
        """Remember nothing any more. The pages go first: a sheet that is still on its way to one would be remembered after all."""
        self.put_away()
        self.desk().evaluate("localStorage.clear()")

    def desk(self) -> "Page":
        """A page that stays open between tests, from which is reached what the phone keeps."""
        if self._desk is None:
            self._desk = self.context.new_page()
            self._desk.goto(SMALLEST)
        return self._desk

    def close(self) -> None:
        """Close every page and the profile."""
        self.context.close()


@contextmanager
def borrowed(phone: Phone) -> Iterator[Phone]:
    """Lend a phone to one test, which must leave its console without a complaint; its pages are closed, its excuses forgotten."""
    yield phone
    complaints = list(phone.complaints)
    phone.put_away()
    assert not complaints, complaints


def until(page: "Page", truth: str) -> None:
    """Wait until an expression is true on the page.

    Playwright's own wait_for_function needs the eval that the page's policy forbids.
    """
    for _ in range(200):
        if page.evaluate(truth):
            return
        page.wait_for_timeout(50)
    raise AssertionError(f"not true on {page.url} within 10 s: {truth}")


def readout(page: "Page") -> "Locator":
    """What is read at the machine: the first setting, or why there is none."""
    return page.locator("#answer .readout")


def wait_for_card(page: "Page") -> None:
    """Wait until the whole card stands there and its form is listened to."""
    page.locator("#sheet .cautions").wait_for()
    until(page, "window.htmx !== undefined && document.querySelector('.htmx-request') === null")


def ready(page: "Page") -> None:
    """Wait until the card is whole and the hand's script listens too."""
    wait_for_card(page)
    page.locator("html[data-hand]").wait_for(state="attached")
