"""A WebKit with the app in it, or the reason why there is none."""

import os
import shutil
import subprocess
from collections.abc import Iterator
from typing import Any

import pytest

from ..helpers import without

DRIVER = "WebKitWebDriver"
WIDTH, HEIGHT = 430, 932  # as narrow as the driver's browser can be


def _need(program: str, package: str) -> str:
    path = shutil.which(program)
    if path is None:
        without(f"there is no {program}: install Debian's {package}")
    return path


@pytest.fixture(scope="session")
def screen() -> Iterator[str]:
    """The name of a display that nobody sees: this WebKit has no way to run without one."""
    program = _need("Xvfb", "xvfb")
    with subprocess.Popen(
        [program, "-displayfd", "1", "-screen", "0", "1280x1024x24"], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True
    ) as shown:
        assert shown.stdout is not None
        yield f":{shown.stdout.readline().strip()}"
        shown.terminate()


@pytest.fixture(scope="session")
def webkit(screen: str) -> Iterator[Any]:
    """One WebKit for all tests."""
    path = _need(DRIVER, "webkit2gtk-driver")
    try:
        from selenium import webdriver
        from selenium.webdriver.webkitgtk.service import Service
    except ImportError:
        without("selenium is not installed: pip install -e '.[test]'")
    options = webdriver.WebKitGTKOptions()
    options.add_argument("--automation")
    browser = webdriver.WebKitGTK(options=options, service=Service(path, env={**os.environ, "DISPLAY": screen}))
    browser.set_window_size(WIDTH, HEIGHT)
    browser.set_script_timeout(30)
    yield browser
    browser.quit()
