"""A phone with the app on it, or the reason why there is none."""

import os
import shutil
from collections.abc import Callable, Iterator
from typing import Any, NoReturn

import pytest

from shopcalc.web import create_app

from .phone import SCREEN, Phone
from .serving import App, Serving

BROWSERS = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable")
FLAGS = [
    "--no-sandbox",  # Chromium refuses to run as root with one
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]


def without(reason: str) -> NoReturn:
    """Skip on a reader's machine; fail in CI, where a browser that is missing would go unnoticed."""
    if os.environ.get("CI") == "true":
        pytest.fail(f"{reason}, and CI=true")
    pytest.skip(reason)


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


@pytest.fixture(scope="session")
def app() -> App:
    """The Flask app."""
    return create_app()


@pytest.fixture
def serving(app: App) -> Iterator[Serving]:
    """The app at an address that no other test has used, so that no worker of another test answers there."""
    served = Serving(app)
    yield served
    served.stop()


@pytest.fixture
def phone_with(chromium: Any, serving: Serving) -> Iterator[Callable[..., Phone]]:
    """Makes a phone that has never seen the app, with settings of its own. Whatever its console complains of fails the test."""
    made: list[Phone] = []

    def make(**settings: Any) -> Phone:
        made.append(Phone(chromium.new_context(base_url=serving.address, **{**SCREEN, **settings}), serving))
        return made[-1]

    yield make
    complaints = [each for phone in made for each in phone.complaints]
    for phone in made:
        phone.close()
    assert complaints == []


@pytest.fixture
def phone(phone_with: Callable[..., Phone]) -> Phone:
    """A phone that has never seen the app."""
    return phone_with()


@pytest.fixture
def installed(phone: Phone) -> Phone:
    """A phone that has visited the app once, holds its own copy."""
    page = phone.visit("/")
    phone.wait_for_copy(page)
    page.close()
    return phone
