"""A version newer than the one at hand: looking for it, and taking it."""

from shopcalc import __version__
from shopcalc import phone as sent

NEWER = "99.9.9"


def newer_worker() -> str:
    """The worker of a version that differs in its number, and so in its content's name."""
    return sent.worker().replace(sent.build(), f"{NEWER}-newer").replace(f'="{__version__}"', f'="{NEWER}"')


def look_for_newer(page):
    """Come back to the page, as a person does who had put the phone away, until the newer version is offered.

    A look that falls together with the browser's own, begun before there was anything newer, finds what that one finds.
    """
    for _ in range(10):
        page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
        for _ in range(20):
            if page.get_by_role("button", name="Use it now").is_visible():
                return
            page.wait_for_timeout(100)
    raise AssertionError("no newer version is offered")


def use_it(page):
    """Tap on what is offered: the page is loaded again."""
    with page.expect_navigation():
        page.get_by_role("button", name="Use it now").click()


def take_newer(phone, page):
    """A newer version comes out, is found by the page, and taken."""
    phone.serving.replace("/worker.js", newer_worker())
    look_for_newer(page)
    use_it(page)
