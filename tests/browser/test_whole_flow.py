"""From the list to the corrected setting: once with the keyboard alone, once with a thumb alone."""

import pytest

from .phone import Phone, readout, until, wait_for_card

pytestmark = pytest.mark.browser


def tab_to(page, test: str, most: int = 80) -> None:
    """Press Tab until what has the focus passes the test, as somebody does who has no pointer."""
    for _ in range(most):
        page.keyboard.press("Tab")
        if page.evaluate(f"(at => {test})(document.activeElement)"):
            return
    raise AssertionError(f"no way with the keyboard to {test}")


def test_the_whole_flow_with_only_the_keyboard(installed: Phone) -> None:
    """Choose the card, type the stock, see the number large, come back, type the trial tenon, read the way to move."""
    installed.excuse("422")  # half a number on the way to a whole one
    page = installed.visit("/")
    tab_to(page, "at.getAttribute('href')?.startsWith('/tenon') || at.pathname === '/tenon'")
    page.keyboard.press("Enter")
    page.wait_for_url("**/tenon**")
    wait_for_card(page)
    until(page, "'hand' in document.documentElement.dataset")

    tab_to(page, "at.classList.contains('grow')")
    page.keyboard.press("Enter")
    page.locator("dialog.sheet").wait_for()
    page.keyboard.press("Escape")
    page.locator("dialog.sheet").wait_for(state="hidden")

    tab_to(page, "at.id === 'in-stock'")
    page.keyboard.press("Control+A")
    page.keyboard.type("1 1/2")
    tab_to(page, "at.id === 'in-measured_tenon'")
    page.keyboard.type("0.390")
    readout(page).get_by_text("raise the blade").wait_for()

    tab_to(page, "at.id === 'add-to-job'")
    page.keyboard.press("Enter")
    page.get_by_text("Added to").wait_for()
    tab_to(page, "at.textContent === 'See the job'", 3)


def test_the_whole_flow_with_only_a_thumb(installed: Phone) -> None:
    """The same by touch, every figure from the pad."""
    installed.excuse("422")  # half a number on the way to a whole one
    page = installed.visit("/")
    page.locator("a[href*='/tenon']").first.tap()
    page.wait_for_url("**/tenon**")
    wait_for_card(page)
    until(page, "'hand' in document.documentElement.dataset")

    page.locator("#in-stock").tap()
    pad = page.locator("#pad")
    for key in ("Clear", "1", "one half"):
        pad.get_by_role("button", name=key, exact=True).tap()
    assert page.locator("#in-stock").input_value() == "1 1/2"
    pad.get_by_role("button", name="Done").tap()

    page.locator("#answer .grow").tap()
    page.locator("dialog.sheet").wait_for()
    page.get_by_role("dialog").get_by_role("button", name="Close").tap()
    page.locator("dialog.sheet").wait_for(state="hidden")

    page.locator("#in-measured_tenon").tap()
    for key in ("0", "point", "3", "9", "0"):
        pad.get_by_role("button", name=key, exact=True).tap()
    pad.get_by_role("button", name="Done").tap()
    readout(page).get_by_text("raise the blade").wait_for()
