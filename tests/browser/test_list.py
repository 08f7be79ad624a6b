"""The list of setups: the last used first, each with its small drawing, each opening as it was left."""

from urllib.parse import parse_qs, urlsplit

import pytest

from shopcalc.catalogue import setups

from .phone import borrowed, readout, until, wait_for_card

pytestmark = pytest.mark.browser

LEAST_TARGET = 44


@pytest.fixture(scope="module")
def phones(lasting):
    """A phone that holds a copy."""
    made = lasting()
    made.install()
    return made


@pytest.fixture
def phone(phones):
    """The phone, which remembers nothing yet."""
    phones.forget()
    with borrowed(phones) as held:
        yield held


def remembering(phone, last=(), shop=(), path="/"):
    """The list on a phone that remembers this."""
    page = phone.visit("/")
    page.evaluate("([last, shop]) => { localStorage.setItem('shopcalc.last.1', last); localStorage.setItem('shopcalc.shop.1', shop); }", [
        as_text(last), as_text(shop)])  # fmt: skip
    page.goto(path)
    page.locator("html[data-memory]").wait_for(state="attached")
    return page


def as_text(pairs):
    """Pairs of texts as they are kept."""
    return "[" + ",".join(f'["{name}","{text}"]' for name, text in pairs) + "]"


def asked(link):
    """The query of a link."""
    return {name: texts[0] for name, texts in parse_qs(urlsplit(link.get_attribute("href")).query).items()}


def row(page, slug):
    """The row of a setup under where one stands."""
    return page.locator(f".stand-list:not(#last) a[href*='/{slug}']")


def test_on_a_first_visit_nothing_was_used(phone):
    """There is no empty heading."""
    page = remembering(phone)

    assert not page.locator("#last").is_visible()


def test_the_last_used_stand_first(phone):
    """Up to four, the latest first; in their stands they remain."""
    slugs = ["slats", "tenon", "groove", "rafter", "sill"]
    page = remembering(phone, [(slug, "") for slug in slugs])
    titles = [setups()[slug].title for slug in slugs]

    assert titles[:4] == page.locator("#last b").all_inner_texts()
    assert page.locator("#last").bounding_box()["y"] < row(page, "bevel").bounding_box()["y"]
    assert len(setups()) == page.locator(".stand-list:not(#last) [data-own]").count()


def test_a_setup_opens_as_it_was_left(phone):
    """Its link carries the last entries, with the shop as it is now."""
    page = remembering(phone, [("tenon", "stock=1+1%2F8&groove_width=5%2F16&fit=0&kerf=1%2F8&tape=32&units=in")], [("kerf", "0.098"), ("tape", "64")])
    row(page, "tenon").click()
    wait_for_card(page)

    readout(page).locator(".big", has_text="thirteen thirty-seconds").wait_for()
    assert ["1 1/8", "0.098", "64"] == [page.locator(f"#inputs [name={name}]").input_value() for name in ("stock", "kerf", "tape")]


def test_a_setup_never_used_opens_with_the_shop(phone):
    """Its link carries those of the shop's things that the card has."""
    page = remembering(phone, [], [("kerf", "0.098"), ("collar", "5/8"), ("units", "mm")])

    assert {"kerf": "0.098", "units": "mm"} == asked(row(page, "rabbet"))
    assert {"units": "mm"} == asked(row(page, "groove"))


def test_a_setup_left_in_other_units_fills_itself(phone):
    """Only the card knows what is a length, so the link says nothing and the card keeps the meaning."""
    page = remembering(phone, [("tenon", "stock=2&units=in")], [("units", "mm")])
    assert {} == asked(row(page, "tenon"))
    row(page, "tenon").click()
    wait_for_card(page)

    until(page, "document.getElementById('in-stock').value === '2 in'")
    assert "mm" == page.locator("#shop-units").input_value()


def test_opening_a_setup_is_using_it(phone):
    """A tap puts it first, with what it was asked last."""
    page = remembering(phone, [("slats", "run=20"), ("tenon", "stock=2")])
    row(page, "tenon").click()
    wait_for_card(page)
    page.locator("#home").click()
    until(page, "document.getElementById('last')?.hidden === false")

    assert ["Stub tenon", "Slats in a run"] == page.locator("#last b").all_inner_texts()
    assert "2" == asked(row(page, "tenon"))["stock"]


def test_a_setup_that_is_no_more_is_passed_over(phone):
    """What was remembered by another version does no harm."""
    page = remembering(phone, [("lathe", "turns=3"), ("tenon", "")])

    assert ["Stub tenon"] == page.locator("#last b").all_inner_texts()


def test_every_target_is_large_enough_for_a_thumb(phone):
    """Each row is at least 44 px high."""
    page = remembering(phone, [("tenon", "")])
    boxes = [link.bounding_box() for link in page.locator("main a").all()]

    assert [] == [box for box in boxes if box["height"] < LEAST_TARGET]


def test_every_setup_has_its_drawing(phone):
    """Each drawing is one line within its box."""
    page = remembering(phone)
    boxes = page.locator(".stand-list:not(#last) path").evaluate_all(
        "all => all.map(each => each.getBBox()).map(box => [box.x, box.y, box.x + box.width, box.y + box.height])"
    )

    assert len(setups()) + 1 == len(boxes)
    assert [] == [box for box in boxes if min(box) < 1 or max(box) > 23.1 or box[2] - box[0] + box[3] - box[1] < 20]


def test_the_shop_is_at_the_foot(phone):
    """The last row leads to what belongs to the shop."""
    page = remembering(phone)
    page.locator("main a").last.click()

    assert "The shop" == page.locator("h1").inner_text()
