"""A job is carried off: as a file, a link, a code, a cut list and on paper, and comes from one."""

import io
import json
from pathlib import Path

import pytest

from .jobs import BOATHOUSE, job_page, kept, take, turn_to, wait_until_kept, with_boathouse
from .newer import take_newer
from .phone import Phone, until

pytestmark = pytest.mark.browser


def test_what_is_printed_has_its_answer(shop: Phone) -> None:
    """A tap on Print also ends an entry: the sheet waits for the bill that goes with it."""
    page = with_boathouse(shop)
    turn_to(page, "Boards")
    page.evaluate("() => { window.print = () => { window.printed = document.getElementById('work').innerText; }; }")
    before = page.locator("#work").inner_text()
    page.locator("#job-kerf").fill("1")
    page.get_by_role("button", name="Print").click()
    until(page, "window.printed !== undefined")

    assert page.evaluate("window.printed") == page.locator("#work").inner_text() != before


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (BOATHOUSE[:400], "cut short"),
        ("x" * 1_100_000, "larger than a job can be"),
        (json.dumps({"format": "shopcalc job", "version": 9}), "newer shopcalc"),
        (
            json.dumps({"format": "shopcalc job", "version": 1, "title": "<img src=x onerror=alert(1)>", "items": [{"id": 1, "setup": "<script>"}]}),
            "no card called",
        ),
        (json.dumps([]), "This is no job"),
    ],
    ids=["truncated", "huge", "newer", "hostile", "list"],
)
def test_a_bad_file_is_refused_whole_and_changes_nothing(shop: Phone, text: str, says: str) -> None:
    """The reason is said, and the job that was there is as it was."""
    page = with_boathouse(shop)
    shop.excuse("422")
    before = kept(page)

    said = take(page, "job.json", text)
    until(page, f"document.getElementById('job-says').textContent.includes({json.dumps(says)})")

    assert says in said.inner_text()
    assert kept(page) == before


def test_a_hostile_title_is_only_text(shop: Phone) -> None:
    """What is typed never becomes part of the page's markup."""
    page = job_page(shop)
    take(page, "job.json", json.dumps({"format": "shopcalc job", "version": 1, "title": "<b>x</b>", "notes": "</textarea><script>1</script>"}))
    until(page, "document.getElementById('job-title') !== null")

    assert page.locator("#job-title").input_value() == "<b>x</b>"
    assert page.locator("#job b, #work script").count() == 0


def work_on(page) -> None:
    """The job is no more what was sent: what comes back is another."""
    turn_to(page, "Items")
    page.locator("#job-notes").fill("Changed since")
    wait_until_kept(page, lambda job: job["notes"] == "Changed since")


def test_a_link_carries_the_whole_job(shop: Phone) -> None:
    """The link that is copied opens as the same job on another page, checked like a file."""
    page = with_boathouse(shop)
    page.evaluate("void (navigator.clipboard.write = async ([item]) => { window.copied = await (await item.getType('text/plain')).text(); })")
    page.get_by_role("button", name="Copy a link").click()
    page.get_by_text("The link is copied").wait_for()
    link = page.evaluate("window.copied")
    work_on(page)

    other = job_page(shop, link.replace(shop.serving.address, ""))
    until(other, "document.getElementById('job-says').textContent.includes('is kept here')")

    jobs = kept(other)
    assert len(jobs) == 2
    assert jobs[0]["items"] == jobs[1]["items"]


def test_a_job_that_is_here_already_is_opened_and_not_kept_twice(shop: Phone) -> None:
    """The same file, opened again: ticks would go to one of two, and the work be done by the other."""
    page = with_boathouse(shop)
    [job] = kept(page)
    page.get_by_role("button", name="New", exact=True).click()
    until(page, "document.getElementById('job-title')?.value === 'New job'")

    take(page, "job.json", json.dumps(job))
    until(page, "document.getElementById('job-says').textContent.includes('is here already')")

    assert page.locator("#job-title").input_value() == job["title"]
    assert len(kept(page)) == 2


def test_a_link_that_no_page_may_copy_stands_in_a_field(shop: Phone) -> None:
    """There it is marked, and said to be copied from."""
    page = with_boathouse(shop)
    page.evaluate("void (navigator.clipboard.write = navigator.clipboard.writeText = () => Promise.reject(new Error('refused')))")
    page.get_by_role("button", name="Copy a link").click()
    page.get_by_text("copy the link from its field").wait_for()

    assert page.get_by_label("Link to the job").input_value().startswith(f"{shop.serving.address}/job#job=")


def test_the_drawer_of_codes_is_kept_when_it_was_used_once(phone: Phone) -> None:
    """It needs a signal the first time, and no other."""
    page = with_boathouse(phone)
    phone.wait_for_copy(page)
    page.get_by_role("button", name="Show as a code").click()
    page.locator("#job-code svg").wait_for()
    phone.context.set_offline(True)
    try:
        page.reload()
        page.locator("#job-choice.ready").wait_for()
        page.get_by_role("button", name="Show as a code").click()
        page.locator("#job-code svg").wait_for()
    finally:
        phone.context.set_offline(False)


def test_a_page_in_the_place_of_the_drawer_of_codes_is_not_kept(phone: Phone) -> None:
    """A network that wants somebody to sign in answers everything with its own page; when it is gone the code is drawn."""
    phone.excuse("Failed to load module script")
    phone.serving.replace("/static/vendor/uqr-0.1.2.mjs", "<html><h1>Sign in</h1></html>", kind="text/html")
    page = with_boathouse(phone)
    phone.wait_for_copy(page)
    page.get_by_role("button", name="Show as a code").click()
    page.get_by_text("needs a signal the first time").wait_for()
    phone.serving.restore("/static/vendor/uqr-0.1.2.mjs")
    page.reload()
    page.locator("#job-choice.ready").wait_for()
    page.get_by_role("button", name="Show as a code").click()

    page.get_by_role("img", name="Code of the link to this job").wait_for()


def test_the_drawer_of_codes_is_carried_into_a_newer_version(phone: Phone) -> None:
    """What was used once needs no signal in the next version either."""
    page = with_boathouse(phone)
    phone.wait_for_copy(page)
    page.get_by_role("button", name="Show as a code").click()
    page.locator("#job-code svg").wait_for()
    take_newer(phone, page)
    phone.wait_for_copy(page)
    phone.lose_signal()
    page.locator("#job-choice.ready").wait_for()
    page.get_by_role("button", name="Show as a code").click()

    page.locator("#job-code svg").wait_for()


def test_a_code_on_the_desk_is_the_link_for_the_phone(phone: Phone) -> None:
    """What a camera reads from the screen carries the whole job: ZXing, a general reader of codes, reads it."""
    zxing = pytest.importorskip("zxingcpp", reason="zxing-cpp is not installed: pip install -e '.[test]'")
    image = pytest.importorskip("PIL.Image", reason="Pillow is not installed: pip install -e '.[test]'")
    page = with_boathouse(phone)
    page.get_by_role("button", name="Show as a code").click()
    page.locator("#job-code svg").wait_for()

    [code] = zxing.read_barcodes(image.open(io.BytesIO(page.locator("#job-code svg").screenshot())))
    work_on(page)
    other = job_page(phone, code.text.replace(phone.serving.address, ""))
    until(other, "document.getElementById('job-says').textContent.includes('is kept here')")

    jobs = kept(other)
    assert [job["title"] for job in jobs] == ["Boathouse", "Boathouse"]
    assert jobs[0]["items"] == jobs[1]["items"]


def test_a_printed_job_has_its_order_its_cuts_and_its_boards(phone: Phone) -> None:
    """Upright sheets, black on white, the cut list and the boards on pages of their own."""
    pypdf = pytest.importorskip("pypdf", reason="pypdf is not installed: pip install -e '.[test]'")
    page = with_boathouse(phone)
    sheets = pypdf.PdfReader(io.BytesIO(page.pdf(prefer_css_page_size=True, format="Letter"))).pages
    texts = [sheet.extract_text() for sheet in sheets]

    assert all(sheet.mediabox.height > sheet.mediabox.width for sheet in sheets)
    assert "Mill to thickness" in texts[0]
    assert [text for text in texts if text.startswith("Cut list")]
    assert [text for text in texts if text.startswith("Boards")]
    assert "Save as a file" not in " ".join(texts)
    boards = " ".join(text for text in texts[[text.startswith("Boards") for text in texts].index(True) :])
    assert [] == [section for section in ("1 3/8 in x 9 in", "3/4 in x 4 3/16 in full", "3/4 in x 2 17/64 in") if section not in boards]


def test_the_cut_list_is_saved_as_csv(shop: Phone) -> None:
    """The file has the job's name and a line for each part."""
    page = with_boathouse(shop)
    with page.expect_download() as saving:
        page.get_by_role("button", name="Cut list as CSV").click()
    text = Path(saving.value.path()).read_text("utf-8")

    assert saving.value.suggested_filename == "boathouse.csv"
    assert text[0] == "\ufeff"  # by which a spreadsheet tells the alphabet
    assert "Stile,Side door" in text.replace('"', "")


def test_a_cut_list_that_gets_no_answer_says_so(shop: Phone) -> None:
    """A server that stays busy, or one that is gone: a tap that brings no file is told."""
    page = with_boathouse(shop)
    page.evaluate("void (window.fetch = () => Promise.reject(new TypeError('no answer')))")
    page.get_by_role("button", name="Cut list as CSV").click()

    page.get_by_text("There is no answer now, so no file was made. The job is still kept; try again.").wait_for()


def test_a_job_saved_as_a_file_comes_back_the_same(shop: Phone) -> None:
    """Out and in again: nothing is added, nothing lost."""
    page = with_boathouse(shop)
    with page.expect_download() as saving:
        page.get_by_role("button", name="Save as a file").click()
    [saved] = kept(page)
    work_on(page)
    take(page, "job.json", Path(saving.value.path()).read_text("utf-8"))
    until(page, "document.querySelectorAll('#job-choice option').length === 2")

    assert saved in kept(page)
    assert page.locator("#job-choice option").all_inner_texts() == ["Boathouse", "Boathouse (2)"]


def test_a_file_is_opened_by_a_button_like_the_others(shop: Phone) -> None:
    """The browser's own field lies unseen over it, and whoever tabs sees where one is."""
    page = job_page(shop)
    page.locator("#job-file").focus()

    box, field = page.locator(".file").bounding_box(), page.locator("#job-file").bounding_box()
    assert (min(box["width"], box["height"]) >= 44, field["width"] >= box["width"] - 5) == (True, True)
    assert page.evaluate("getComputedStyle(document.querySelector('.file')).outlineStyle") == "solid"
