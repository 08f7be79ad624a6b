"""Fields that the chosen option does not use."""

import pytest

from .phone import borrowed, readout, wait_for_card

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def phones(lasting):
    """A phone that holds a copy, and one without scripts."""
    made = {"usual": lasting(), "without scripts": lasting(java_script_enabled=False)}
    made["usual"].install()
    return made


@pytest.fixture
def phone(phones, request):
    """The phone of the kind that the test names."""
    with borrowed(phones[request.param]) as held:
        held.excuse("the server responded with a status of 422")
        yield held


@pytest.mark.parametrize("phone", ["usual"], indirect=True)
def test_the_form_follows_what_is_chosen(phone):
    """With the choice changes which field is not used; what stands in it stays, and does not block the answer."""
    page = phone.visit("/slats")
    wait_for_card(page)
    page.locator("#note-gap.idle", has_text="not used").wait_for()
    page.locator("#in-gap").fill("5/8")
    page.locator("#in-by").select_option("gap")
    page.locator("#note-count.idle").wait_for()
    page.locator("#in-count").fill("many")

    page.locator("#note-gap:not(.idle)", has_text="0.625 in").wait_for()
    assert readout(page).locator(".big").is_visible()
    assert "5/8" == page.locator("#in-gap").input_value()


@pytest.mark.parametrize("phone", ["usual"], indirect=True)
def test_a_field_that_is_not_used_looks_so(phone):
    """Its border is dotted and its words are soft."""
    page = phone.visit("/slats?by=count")
    styles = "each => [getComputedStyle(each).borderStyle, getComputedStyle(each).color]"
    used, unused = (page.locator(name).evaluate(styles) for name in ("#in-count", "#in-gap"))

    assert ("solid", "dotted") == (used[0], unused[0])
    assert used[1] != unused[1]


@pytest.mark.parametrize("phone", ["without scripts"], indirect=True)
def test_it_works_without_scripts(phone):
    """The page comes back with the other field unused."""
    page = phone.visit("/slats")
    page.locator("#in-by").select_option("gap")
    page.locator("#in-count").fill("many")
    page.get_by_role("button", name="Work it out").click()

    assert page.locator("#note-count.idle").is_visible()
    assert readout(page).locator(".big").is_visible()
