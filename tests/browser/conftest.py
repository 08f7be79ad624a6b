"""A phone with the app on it, or the reason why there is none."""

import os
import shutil
from collections.abc import Callable, Iterator
from typing import Any

import pytest

from ..helpers import without
from ..serving import App, Serving
from .phone import SCREEN, Phone, borrowed

BROWSERS = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable")
# Chromium takes the last list of these alone, so what Playwright turns off for every page stands here too. The first two
# are drop-downs of an address bar that nobody sees: two pages of the browser's own, loaded anew for every page a test opens.
TURNED_OFF = (
    "WebUIOmniboxPopup",
    "WebUIOmniboxAimPopup",
    "AvoidUnnecessaryBeforeUnloadCheckSync",
    "DestroyProfileOnBrowserClose",
    "HttpsFirstBalancedModeAutoEnable",
    "HttpsUpgrades",
    "OptimizationHints",
    "PaintHolding",
    "PreconnectToSearch",
    "ThirdPartyStoragePartitioning",
)
FLAGS = [
    "--no-sandbox",  # Chromium refuses to run as root with one
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    f"--disable-features={','.join(TURNED_OFF)}",
]


@pytest.fixture(scope="session")
def launching() -> Iterator[tuple[Any, dict[str, Any]]]:
    """Playwright's way to Chromium, and what it is launched with."""
    try:
        from playwright.sync_api import sync_playwright
    except ImportError:
        without("playwright is not installed: pip install -e '.[test]'")
    path = os.environ.get("CHROMIUM") or next(filter(None, map(shutil.which, BROWSERS)), None)
    if path is None:
        without("there is no Chromium: install one, or name it in the environment variable CHROMIUM")
    with sync_playwright() as playwright:
        yield playwright.chromium, {"executable_path": path, "args": FLAGS}


@pytest.fixture(scope="session")
def chromium(launching: tuple[Any, dict[str, Any]]) -> Iterator[Any]:
    """One Chromium for all browser tests."""
    kind, settings = launching
    browser = kind.launch(**settings)
    yield browser
    browser.close()


@pytest.fixture
def phone(chromium: Any, serving: Serving) -> Iterator[Phone]:
    """A phone that has never seen the app."""
    held = Phone(chromium.new_context(base_url=serving.address, **SCREEN), serving)
    with borrowed(held):
        yield held
    held.close()


@pytest.fixture
def installed(phone: Phone) -> Phone:
    """A phone that has visited the app once and holds its own copy."""
    phone.install()
    return phone


@pytest.fixture(scope="module")
def lasting(chromium: Any, app: App) -> Iterator[Callable[..., Phone]]:
    """Makes a phone that the tests of one chapter share, each with pages of its own; `settings` are those of a browser context."""
    made: list[Phone] = []

    def make(**settings: Any) -> Phone:
        served = Serving(app)
        phone = Phone(chromium.new_context(base_url=served.address, **{**SCREEN, **settings}), served)
        made.append(phone)
        # while one page stays open the next ones are tabs beside it, where each would be a window of its own
        phone.desk()
        return phone

    yield make
    for phone in made:
        phone.close()
        phone.serving.stop()


@pytest.fixture(scope="module")
def copyless(lasting: Callable[..., Phone]) -> Phone:
    """A phone that keeps no copy and asks the server, which the tests of one chapter share."""
    phone = lasting()
    phone.context.add_init_script("delete Navigator.prototype.serviceWorker")
    return phone


@pytest.fixture(scope="module")
def held(lasting: Callable[..., Phone]) -> Phone:
    """A phone with the app on it, which the tests of one chapter share."""
    phone = lasting()
    phone.install()
    return phone


@pytest.fixture(scope="module")
def carried(held: Phone) -> Phone:
    """That phone, carried to where there is no signal."""
    held.lose_signal()
    return held


@pytest.fixture
def shop(carried: Phone) -> Iterator[Phone]:
    """That phone with no job on it, for one test, at whose end no page says that there is no answer."""
    with borrowed(carried):
        carried.desk().evaluate(
            "new Promise(done => { const gone = indexedDB.deleteDatabase('shopcalc'); gone.onsuccess = gone.onblocked = () => done(null); })"
        )
        carried.forget()
        yield carried
        for page in carried.context.pages:
            assert not page.locator("[data-signal=failed]").is_visible()
