"""A card on paper: half a sheet, letter or A4, to hang at the machine."""

from io import BytesIO
from unicodedata import normalize

import pytest
from pypdf import PdfReader

from shopcalc.catalogue import setups

from .phone import borrowed, until, wait_for_card

pytestmark = pytest.mark.browser

PAPERS = {"Letter": (792, 612), "A4": (842, 595)}
# every card on the smaller half, and the longest ones on the other paper too
SHEETS = [*((slug, "Letter") for slug in setups()), *((slug, "A4") for slug in ("frame", "hinge-mortise", "slats"))]
MOST_SHEETS = 3


@pytest.fixture
def phone(copyless):
    """A phone that prints what the server sends."""
    with borrowed(copyless) as held:
        yield held


def printed(phone, path, paper):
    """The sheets of a card, printed once for all tests."""
    if (path, paper) not in PRINTED:
        page = phone.visit(path)
        PRINTED[path, paper] = page.pdf(format=paper, prefer_css_page_size=True)
    return PdfReader(BytesIO(PRINTED[path, paper])).pages


PRINTED: dict[tuple[str, str], bytes] = {}


def halves(sheet):
    """What stands on the left half of a sheet and on the right one, each as one text without spaces."""
    texts = {True: "", False: ""}

    def visit(text, current, matrix, font, size):
        # the place of a run of text is its own matrix within the one in force
        x = matrix[4] * current[0] + current[4]
        texts[x < sheet.mediabox.width / 2] += text

    sheet.extract_text(visitor_text=visit)
    return [squeezed(texts[side]) for side in (True, False)]


def squeezed(text):
    """A text without spaces, and without the ligatures that some fonts have for ff and fi."""
    return normalize("NFKC", "".join(text.split()))


@pytest.mark.parametrize("paper", PAPERS)
def test_a_sheet_lies_on_its_side(phone, paper):
    """Its halves stand upright, whichever paper there is."""
    box = printed(phone, "/groove", paper)[0].mediabox

    assert [int(box.width), int(box.height)] == pytest.approx(list(PAPERS[paper]), abs=2)


@pytest.mark.parametrize(("slug", "paper"), SHEETS)
def test_the_first_half_has_what_is_set_and_room_for_the_reading(phone, slug, paper):
    """Title, the settings and a line for each reading stand on the first half of the first sheet."""
    setup = setups()[slug]
    first, _ = halves(printed(phone, f"/{slug}", paper)[0])
    wanted = [setup.title, *(each.label for each in setup.inputs.values() if each.reading)]

    assert [] == [each for each in wanted if squeezed(each) not in first]
    assert "Setthemachine" in first or "Readitoff" in first


@pytest.mark.parametrize("paper", PAPERS)
def test_a_groove_is_whole_on_one_half_but_for_what_is_read_before(phone, paper):
    """Settings, drawing, steps and trial cut of a short card fill one half; cautions and sizes take the other."""
    sheets = printed(phone, "/groove", paper)
    first, second = halves(sheets[0])

    assert len(sheets) == 1
    assert [True, True, True] == [each in first for each in ("Inthisorder", "Turneachpieceendforend", "Trialcut")]
    assert "Beforethemotorstarts" in second


@pytest.mark.parametrize(("slug", "paper"), SHEETS)
def test_no_card_takes_more_than_three_sheets(phone, slug, paper):
    """The longest has two cards inside it; most are done on one or two."""
    assert len(printed(phone, f"/{slug}", paper)) <= (MOST_SHEETS if slug == "frame" else 2)


def test_what_is_for_the_screen_stays_off_the_paper(phone):
    """No links onward, no way back, no shop, no working."""
    text = "".join(part for sheet in printed(phone, "/tenon", "Letter") for part in halves(sheet))

    assert [] == [each for each in ("Backtothe", "Theshop", "Howitisworkedout", "Needsasignal") if each in text]


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("slug", ["tenon", "hinge-layout", "gauge-stack", "groove"])
def test_a_card_of_usual_length_takes_one_sheet(phone, slug, paper):
    """Its cautions stand small, and its pictures are no larger than they need to be."""
    assert len(printed(phone, f"/{slug}", paper)) == 1


def test_a_card_that_was_scrolled_is_printed_like_one_that_was_not(phone):
    """What the answer leaves behind on the screen, where it has made way, leaves no band on paper."""
    page = phone.visit("/tenon")
    page.set_viewport_size({"width": 390, "height": 844})
    until(page, "'hand' in document.documentElement.dataset")
    page.evaluate("scrollTo({ top: 900, behavior: 'instant' })")
    until(page, "document.documentElement.classList.contains('past')")
    page.emulate_media(media="print")

    assert page.evaluate("getComputedStyle(document.querySelector('.readout')).marginBottom") == "0px"
    assert len(PdfReader(BytesIO(page.pdf(format="Letter", prefer_css_page_size=True))).pages) == 1
    page.emulate_media(media="screen")


def test_what_is_set_is_printed_larger_than_what_is_done(phone):
    """It is read at the machine, from where one stands."""
    page = phone.visit("/tenon")
    page.emulate_media(media="print")
    sizes = "(each => parseFloat(getComputedStyle(document.querySelector(each)).fontSize))"

    assert page.evaluate(f"{sizes}('.settings .fraction')") > 1.4 * page.evaluate(f"{sizes}('.steps li')")
    assert page.evaluate(f"{sizes}('.cautions li')") < page.evaluate(f"{sizes}('.steps li')")


def test_a_tall_frame_can_be_read_on_paper(phone):
    """The numbers of its elevation are as large as the print of a newspaper: six points at least."""
    page = phone.visit("/frame?opening_width=23+7/16&opening_height=71+13/16&mid_rails=2")
    wait_for_card(page)
    page.emulate_media(media="print")
    page.set_viewport_size({"width": 1000, "height": 700})
    scale = "(svg => svg.getBoundingClientRect().height / svg.viewBox.baseVal.height)(document.querySelector('#sheet > .picture svg'))"

    assert page.evaluate(f"{scale} * parseFloat(getComputedStyle(document.querySelector('.picture text')).fontSize)") >= 6 / 72 * 96


def test_what_is_done_is_ticked_on_paper_too(phone):
    """The sheet that goes along says what has passed already."""
    page = phone.visit("/job")
    page.get_by_role("button", name="Show the boathouse").click()
    page.locator("#job-choice.ready").wait_for()
    page.locator("#work .tick input").first.wait_for(state="attached")
    page.evaluate("document.querySelectorAll('.tick input').forEach((box, nth) => { box.checked = !nth; })")
    page.emulate_media(media="print")

    marks = page.evaluate("[...document.querySelectorAll('.tick input')].slice(0, 2).map(box => getComputedStyle(box, '::before').content)")
    assert marks == ['"\u2713"', "none"]
