"""Every page for everybody: axe-core's rules for WCAG 2.2 AA, letters twice as large, other colours, less motion."""

import pytest

from shopcalc.catalogue import setups

from .phone import SCREEN, borrowed, until
from .test_every_page import OVERFLOW, PAGES

pytestmark = pytest.mark.browser

# of what is not wrong axe is asked for no account: it takes half the time
RULES = {"runOnly": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"], "resultTypes": ["violations"]}
COLOURS = {"runOnly": {"type": "rule", "values": ["color-contrast", "link-in-text-block"]}, "resultTypes": ["violations"]}
WRONG = {"/": "/nothing", **{f"/{slug}": f"/{slug}?" + "&".join(f"{name}=banana" for name in setup.inputs) for slug, setup in setups().items()}}


@pytest.fixture(scope="module")
def phones(lasting):
    """The app on phones that differ in what their owners asked them for."""
    made = {
        "light": lasting(bypass_csp=True),
        "dark": lasting(bypass_csp=True, color_scheme="dark"),
        "more contrast": lasting(bypass_csp=True, contrast="more"),
        "forced colours": lasting(forced_colors="active"),
        "less motion": lasting(reduced_motion="reduce"),
        "plain": lasting(),
        "looked at": lasting(bypass_csp=True),
    }
    for phone in made.values():
        phone.context.add_init_script("delete Navigator.prototype.serviceWorker")
    return made


@pytest.fixture
def phone(phones, request):
    """The phone that the test names; wrong entries and missing pages may be told to its console."""
    with borrowed(phones[request.param]) as held:
        for status in ("404", "422"):
            held.excuse(f"the server responded with a status of {status}")
        yield held


@pytest.fixture(scope="module")
def opened(phones, request):
    """The page that the test names, opened once for every test that looks at it."""
    with borrowed(phones["looked at"]) as held:
        yield visit(held, request.param)


@pytest.fixture
def page(opened):
    """That page, put back as it was whatever a test turns."""
    yield opened
    opened.emulate_media(color_scheme="light")
    opened.set_viewport_size(SCREEN["viewport"])
    opened.evaluate("document.documentElement.style.fontSize = ''")


every_page = pytest.mark.parametrize("opened", PAGES, indirect=True)


def on(*kinds):
    """Run a test on these phones."""
    return pytest.mark.parametrize("phone", kinds, indirect=True)


def visit(phone, path):
    """A page with its card and its scripts, every fold opened."""
    page = phone.visit(path)
    if page.locator("#inputs").count() > 0:
        until(page, "window.htmx !== undefined && 'hand' in document.documentElement.dataset")
    page.evaluate("document.querySelectorAll('details').forEach(each => { each.open = true; })")
    return page


def faults(page, rules=RULES):
    """What axe finds against the rules, each with the elements it is said of."""
    axe_playwright = pytest.importorskip("axe_playwright_python.sync_playwright", reason="axe-core is not installed: pip install -e '.[test]'")
    found = axe_playwright.Axe().run(page, options=rules).response["violations"]
    return [(each["id"], [node["html"][:140] for node in each["nodes"]][:3]) for each in found]


@every_page
def test_a_page_breaks_no_rule_of_access(page):
    """Names, roles, contrast, headings and targets."""
    assert faults(page) == []


@every_page
def test_a_page_breaks_no_rule_of_access_in_the_dark(page):
    """The colours are all that is other."""
    page.emulate_media(color_scheme="dark")

    assert faults(page, COLOURS) == []


@on("light")
@pytest.mark.parametrize("path", WRONG.values(), ids=WRONG)
def test_a_page_full_of_slips_breaks_no_rule_of_access(phone, path):
    """The same where nothing can be read, or nothing is there."""
    assert faults(visit(phone, path)) == []


@on("light", "dark", "more contrast")
def test_the_pad_breaks_no_rule_of_access(phone):
    """With the keys open under a field."""
    page = visit(phone, "/tenon")
    page.locator("#in-stock").tap()
    page.locator(".pad").wait_for()

    assert faults(page) == []


@on("light", "dark", "more contrast")
def test_the_large_answer_breaks_no_rule_of_access(phone):
    """With the number over the whole screen."""
    page = visit(phone, "/tenon")
    page.locator("#answer .grow").tap()
    page.get_by_role("dialog").wait_for()

    assert faults(page) == []


CUT = """[...document.querySelectorAll('main *, header *')].filter(each => {
    const box = each.getBoundingClientRect(), style = getComputedStyle(each);
    if (!box.width || each.closest('.unseen, [hidden], svg, .wide, .run') || each.classList.contains('help')) return false;
    const cuts = style.overflow !== 'visible' && !each.matches('input, select');
    return box.right > innerWidth + 1 || cuts && each.scrollWidth > each.clientWidth + 1;
}).map(each => each.outerHTML.slice(0, 120))"""


@every_page
def test_letters_twice_as_large_fit_a_phone(page):
    """Nothing is cut off or pushed off the side at twice the size of text."""
    page.evaluate("document.documentElement.style.fontSize = '200%'")

    assert page.evaluate(OVERFLOW) <= 0
    assert page.evaluate(CUT) == []


SMALL = """[...document.querySelectorAll('button, summary, select, input, .home, .onward a, .again a, .jump a, .stand-list a')].filter(each => {
    const box = each.getBoundingClientRect();
    return box.width > 0 && (box.width < 44 || box.height < 44);
}).map(each => each.outerHTML.slice(0, 90))"""


@every_page
def test_what_is_tapped_is_as_large_as_a_finger(page):
    """Buttons, fields, folds and the links that stand alone are at least 44 px either way."""
    assert page.evaluate(SMALL) == []


@every_page
def test_a_page_fits_a_phone_of_360_px(page):
    """Nothing makes the page wider than the screen, with every fold opened."""
    page.set_viewport_size({"width": 360, "height": 740})

    assert page.evaluate("innerWidth") == 360
    assert page.evaluate(OVERFLOW) <= 0


@on("forced colours")
def test_forced_colours_reach_the_drawings(phone):
    """Where the system sets the colours, lines are drawn in its text's and not in ours."""
    page = visit(phone, "/tenon")
    drawn = "getComputedStyle(document.querySelector('.picture path')).stroke"

    assert page.evaluate(drawn) == page.evaluate("getComputedStyle(document.body).color")


@on("less motion")
def test_who_wants_less_motion_gets_none(phone):
    """Nothing glides: the page jumps to what is asked for."""
    page = visit(phone, "/tenon")

    assert page.evaluate("getComputedStyle(document.documentElement).scrollBehavior") == "auto"


@on("plain")
@pytest.mark.parametrize("slug", ["fractions", "frame", "slats", "tenon"])
def test_the_sheet_begins_with_its_ways_down(phone, slug):
    """Every link at the top of the sheet leads to a heading on this page."""
    page = visit(phone, f"/{slug}")
    ways = page.locator(".jump a").evaluate_all("all => all.map(each => each.getAttribute('href'))")

    assert len(ways) > 1
    assert [] == [way for way in ways if page.locator(f"h2{way}").count() != 1]


@on("light", "dark")
def test_the_job_breaks_no_rule_of_access(phone):
    """The boathouse in each of its views, and a job with a slip in it."""
    page = phone.visit("/job")
    until(page, "document.querySelector('#job-choice.ready') !== null")
    assert faults(page) == []
    page.get_by_role("button", name="Show the boathouse").click()
    page.locator("#work .items li").first.wait_for()
    for view in ("Items", "Order", "Cut list", "Boards"):
        page.locator("#work .views").get_by_role("button", name=view).click()
        assert (view, faults(page)) == (view, [])
    page.locator("#job-kerf").fill("wide")
    page.locator("#job-kerf").press("Tab")
    page.locator("#note-job-kerf.wrong").wait_for()
    assert faults(page) == []


FILLED = """all => all.filter(each => each.offsetWidth).map(each => getComputedStyle(each)).filter(style =>
    style.forcedColorAdjust !== 'none' || style.color === style.backgroundColor).length"""


@on("forced colours")
def test_forced_colours_leave_the_words_on_what_is_filled(phone):
    """The system lays no plate of the paper's colour under the letters of a key, a tab or a fraction."""
    page = visit(phone, "/tenon")
    page.locator("#in-stock").tap()
    page.locator(".pad").wait_for()

    assert page.locator("button, .number").evaluate_all(FILLED) == 0
    page = phone.visit("/job")
    until(page, "document.querySelector('#job-choice.ready') !== null")
    page.get_by_role("button", name="Show the boathouse").click()
    page.locator("#work .items li").first.wait_for()
    assert page.locator("button").evaluate_all(FILLED) == 0
    assert page.locator(".items .quiet").evaluate_all("all => all.filter(each => parseFloat(getComputedStyle(each).borderTopWidth)).length") == 0
