"""A job in the hand: put together, ticked, measured, carried off, and kept through what goes wrong."""

import io
import json
from pathlib import Path

import pytest

from shopcalc import files

from .phone import Phone, borrowed, ready, until, wait_for_card
from .test_new_version import look_for_newer, newer_worker

pytestmark = pytest.mark.browser

BOATHOUSE = files.static_text("boathouse.json")


@pytest.fixture
def shop(carried: Phone):
    """That phone with no job on it, for one test, at whose end no page says that there is no answer."""
    with borrowed(carried):
        carried.desk().evaluate(
            "new Promise(done => { const gone = indexedDB.deleteDatabase('shopcalc'); gone.onsuccess = gone.onblocked = () => done(null); })"
        )
        carried.forget()
        yield carried
        for page in carried.context.pages:
            assert not page.locator("[data-signal=failed]").is_visible()


def job_page(phone: Phone, path: str = "/job"):
    """The page of the jobs, when its script listens."""
    page = phone.visit(path)
    until(page, "document.querySelector('#job-choice.ready') !== null")
    return page


def with_boathouse(phone: Phone):
    """The page of the jobs with the boathouse on it."""
    page = job_page(phone)
    page.get_by_role("button", name="Show the boathouse").click()
    page.locator("#work .items li").first.wait_for()
    turn_to(page, "Order")
    return page


def turn_to(page, view):
    """One view of the job."""
    page.locator("#work .views").get_by_role("button", name=view).click()


def kept(page):
    """The document as the device keeps it."""
    return page.evaluate(
        """async () => { const { createStore, entries } = await import('/static/vendor/idb-keyval-6.2.2.js');
        return (await entries(createStore('shopcalc', 'jobs'))).map(each => each[1]); }"""
    )


def wait_until_kept(page, told):
    """Wait until the one job that the device keeps is as told."""
    for _ in range(100):
        if [told(job) for job in kept(page)] == [True]:
            return
        page.wait_for_timeout(50)
    raise AssertionError(kept(page))


def take(page, name, text):
    """Give the page a file."""
    page.locator("#job-file").set_input_files({"name": name, "mimeType": "application/json", "buffer": text.encode()})
    page.locator("#job-says").wait_for()
    return page.locator("#job-says")


def test_the_boathouse_shows_order_cuts_and_boards(shop: Phone) -> None:
    """One tap loads the demo, and every view of it stands there with no signal."""
    page = with_boathouse(shop)

    assert page.locator(".items li").count() == 7
    assert page.locator(".stage h3").first.inner_text().lower() == "mill"
    assert page.locator("#work .parts").count() >= 3
    turn_to(page, "Boards")
    assert page.locator(".laid svg").count() >= 2


def test_a_second_tap_says_that_it_is_there_twice(shop: Phone) -> None:
    """Two sash may be wanted, and a tap that was doubled is seen; other entries are another item."""
    page = shop.visit("/tenon?stock=1+1/2")
    wait_for_card(page)
    add = page.get_by_role("button", name="Add to the job")
    add.click()
    page.get_by_text("Added to \u201cMy job\u201d").wait_for()
    add.click()
    page.get_by_text("Added once more, with the same entries, to \u201cMy job\u201d").wait_for()
    page.locator("#in-stock").fill("1 3/4")
    add.click()
    page.get_by_text("Added to \u201cMy job\u201d").wait_for()


def test_a_card_is_added_and_edited_from_the_job(shop: Phone) -> None:
    """The card's button puts it into a job; its link goes back to the card with what was typed, and what is changed there is kept."""
    page = shop.visit("/tenon?stock=1+1/2")
    wait_for_card(page)
    page.get_by_role("button", name="Add to the job").click()
    page.get_by_role("link", name="See the job").click()
    page.locator("#work .items li").first.wait_for()
    assert page.locator("#label-1").input_value() == "Stub tenon"

    page.get_by_role("link", name="Its card").click()
    wait_for_card(page)
    assert page.locator("#in-stock").input_value() == "1 1/2"
    page.locator("#in-stock").fill("1 3/4")
    page.get_by_text("Saved to “My job”").wait_for()
    assert page.get_by_role("button", name="Add to the job").count() == 0

    [job] = kept(page)
    assert [(item["id"], item["inputs"]["stock"]) for item in job["items"]] == [(1, "1 3/4")]


def test_the_card_of_an_item_that_was_taken_out_brings_nothing_back(shop: Phone) -> None:
    """Taken out in another tab, it stays out while its card is typed on, and the card says so."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.get_by_role("link", name="Its card").first.click()
    wait_for_card(page)
    page.locator("html[data-hand]").wait_for(state="attached")
    other = job_page(shop)
    turn_to(other, "Items")
    other.get_by_role("button", name="Take Side door out").click()
    until(other, "document.querySelectorAll('.items li').length === 6")
    for stile in ("4", "5"):
        page.locator("#in-stile").fill(stile)
    page.get_by_text("taken out of its job").wait_for()

    assert [len(job["items"]) for job in kept(page)] == [6]


def test_a_tap_that_is_answered_leaves_no_word_of_a_failure(shop: Phone) -> None:
    """Whatever had the focus, a button or nothing at all, the page is drawn to its end."""
    page = job_page(shop)
    page.get_by_role("button", name="Show the boathouse").tap()
    page.get_by_text("is kept here as").wait_for()
    settled(page)
    assert not page.locator("[data-signal=failed]").is_visible()
    page.evaluate("document.activeElement.blur()")
    turn_to(page, "Order")
    page.locator(".tick").first.click()
    page.locator(".job-run.done").first.wait_for(state="attached")
    settled(page)
    assert not page.locator("[data-signal=failed]").is_visible()


def settled(page):
    """Wait until the job is drawn."""
    until(page, "document.getElementById('work').ariaBusy === 'false'")


def the_doors_card(phone):
    """The card of the boathouse's side door, as its item."""
    page = with_boathouse(phone)
    turn_to(page, "Items")
    page.get_by_role("link", name="Its card").first.click()
    wait_for_card(page)
    return page


def door(page):
    """What the job keeps of the side door."""
    [job] = kept(page)
    return job["items"][0]["inputs"]


def test_the_card_of_an_item_stays_its_card_when_it_is_loaded_again(shop: Phone) -> None:
    """Its address goes on saying whose card it is, so that what is typed after a reload is kept too."""
    page = the_doors_card(shop)
    page.locator("#in-stile").fill("4")
    until(page, "new URL(location).searchParams.get('stile') === '4'")
    page.reload()
    wait_for_card(page)
    assert not page.get_by_role("button", name="Add to the job").is_visible()
    page.locator("#in-stile").fill("5")

    wait_until_kept(page, lambda job: job["items"][0]["inputs"]["stile"] == "5")


def test_what_is_typed_on_an_items_card_before_its_script_listens_is_kept(shop: Phone) -> None:
    """On a slow phone the keys are quicker than the script that keeps them."""
    page = the_doors_card(shop)
    assert door(page)["stile"] != "5"
    page.add_init_script(
        "const reads = IDBFactory.prototype.open; IDBFactory.prototype.open = function (...all) {"
        "const asked = reads.apply(this, all); const on = asked.addEventListener.bind(asked);"
        "Object.defineProperty(asked, 'onsuccess', { set: act => on('success', event => setTimeout(act, 1500, event)) });"
        "return asked; };"
    )
    page.reload()
    wait_for_card(page)
    page.locator("#in-stile").fill("5")

    wait_until_kept(page, lambda job: job["items"][0]["inputs"]["stile"] == "5")


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


def test_a_tick_is_kept_over_a_cold_start(shop: Phone) -> None:
    """What was done stays done when the page is closed and opened again."""
    page = with_boathouse(shop)
    page.locator(".tick").first.click()
    page.locator(".job-run.done", has_text="Mill to thickness").wait_for()
    page.close()

    again = job_page(shop)

    again.locator(".job-run.done", has_text="Mill to thickness").wait_for()
    assert again.locator(".tick input").first.is_checked()


def test_a_reading_moves_what_follows_from_it_and_flags_what_is_cut(shop: Phone) -> None:
    """A groove that came out wide changes the cheeks of every frame; what was ticked before says how it was cut."""
    page = with_boathouse(shop)
    cheeks = page.locator(".job-run", has_text="Tenon cheeks")
    before = cheeks.locator(".set").inner_text()
    cheeks.locator(".tick").click()
    page.locator(".job-run.done", has_text="Tenon cheeks").wait_for()

    groove = page.get_by_label("Groove as it measures")
    groove.fill("11/32")
    groove.press("Tab")
    cheeks.locator(".check.stop").first.wait_for()

    assert page.locator(".job-run", has_text="Tenon cheeks").locator(".set").inner_text() != before
    assert "cut at 0." in cheeks.locator(".check.stop").first.inner_text()


def test_a_tab_closed_in_mid_typing_loses_nothing(shop: Phone) -> None:
    """Every key is kept, not only a field that was left."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.locator("#job-notes").fill("Cedar for the cap")
    wait_until_kept(page, lambda job: job["notes"] == "Cedar for the cap")
    page.close()

    assert job_page(shop).locator("#job-notes").input_value() == "Cedar for the cap"


def test_two_tabs_with_one_job_lose_nothing(shop: Phone) -> None:
    """Each tab changes what is stored now and not what it once read, and shows what the other did."""
    one = with_boathouse(shop)
    turn_to(one, "Items")
    other = job_page(shop)
    other.locator("#work .items li").first.wait_for()
    one.locator("#job-notes").fill("From the first tab")
    other.locator("#job-title").fill("From the second tab")
    other.locator("#job-title").press("Tab")
    one.locator("#job-notes").press("Tab")

    wait_until_kept(one, lambda job: (job["notes"], job["title"]) == ("From the first tab", "From the second tab"))


def test_a_full_storage_says_so_and_keeps_the_page(shop: Phone) -> None:
    """With no room left the page says how to save the job, and goes on with what was typed."""
    page = with_boathouse(shop)
    page.evaluate("void (IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); })")
    turn_to(page, "Items")

    page.locator("#job-notes").fill("One more thing")
    page.locator("#job-notes").press("Tab")
    page.locator("#job-says").wait_for()

    assert "storage of this device is full" in page.locator("#job-says").inner_text()
    assert page.locator("#job-notes").input_value() == "One more thing"


PASSING = """() => {
    const opens = IDBDatabase.prototype.transaction;
    window.heal = () => { IDBDatabase.prototype.transaction = opens; };
    IDBDatabase.prototype.transaction = () => { throw new DOMException('closing', 'InvalidStateError'); };
}"""


def test_a_storage_that_fails_for_a_while_loses_nothing(shop: Phone) -> None:
    """What is typed meanwhile is shown over the job as it was last seen, and is put into what is stored when that answers again."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    before = kept(page)[0]
    page.evaluate(PASSING)
    page.locator("#job-notes").fill("Typed meanwhile")
    page.locator("#job-notes").press("Tab")
    page.get_by_text("Not saved:").wait_for()
    assert page.locator("#work .items li").count() == len(before["items"])

    page.evaluate("heal()")
    page.locator("#job-title").fill("Mended")
    page.locator("#job-title").press("Tab")
    wait_until_kept(page, lambda job: job["title"] == "Mended")

    assert kept(page) == [{**before, "notes": "Typed meanwhile", "title": "Mended"}]
    assert not page.get_by_text("Not saved:").is_visible()


def test_what_is_added_while_the_storage_fails_is_added_as_it_stood(shop: Phone) -> None:
    """Two cuts of one card put into the job one after the other are two cuts, also where the first had to wait."""
    with_boathouse(shop)
    page = shop.visit("/tenon")
    ready(page)
    before = len(kept(page)[0]["items"])
    page.evaluate(PASSING)
    for stock in ("1 1/8", "1 1/4"):
        page.locator("#in-stock").fill(stock)
        page.get_by_role("button", name="Add to the job").click()
        page.get_by_text("Not saved:").wait_for()
        page.wait_for_timeout(300)
    page.evaluate("heal()")
    page.locator("#in-stock").fill("1 1/2")
    page.get_by_role("button", name="Add to the job").click()

    wait_until_kept(page, lambda job: [each["inputs"]["stock"] for each in job["items"][before:]] == ["1 1/8", "1 1/4", "1 1/2"])


def test_what_another_tab_saved_meanwhile_is_kept(shop: Phone) -> None:
    """An edit that was refused is made again on what is stored then, and not the whole job that this tab had."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.evaluate(PASSING)
    page.locator("#job-notes").fill("From the first tab")
    page.locator("#job-notes").press("Tab")
    page.get_by_text("Not saved:").wait_for()
    other = job_page(shop)
    turn_to(other, "Items")
    other.locator("#job-title").fill("From the second tab")
    other.locator("#job-title").press("Tab")
    wait_until_kept(other, lambda job: job["title"] == "From the second tab")

    page.evaluate("heal()")
    turn_to(page, "Boards")
    page.locator("#job-kerf").fill("3/32")
    page.locator("#job-kerf").press("Tab")

    wait_until_kept(page, lambda job: (job["title"], job["notes"], job["kerf"]) == ("From the second tab", "From the first tab", "3/32"))


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


def test_a_link_carries_the_whole_job(shop: Phone) -> None:
    """The link that is copied opens as the same job on another page, checked like a file."""
    page = with_boathouse(shop)
    page.evaluate("void (navigator.clipboard.writeText = text => { window.copied = text; return Promise.resolve(); })")
    page.get_by_role("button", name="Copy a link").click()
    until(page, "window.copied !== undefined")
    link = page.evaluate("window.copied")

    other = job_page(shop, link.replace(shop.serving.address, ""))
    until(other, "document.getElementById('job-says').textContent.includes('is kept here')")

    jobs = kept(other)
    assert len(jobs) == 2
    assert jobs[0]["items"] == jobs[1]["items"]


def test_an_item_taken_out_can_be_put_back(shop: Phone) -> None:
    """A slip of the thumb costs nothing."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.get_by_role("button", name="Take Side door out").click()
    page.get_by_role("button", name="Put it back").wait_for()
    assert page.locator(".items li").count() == 6

    page.get_by_role("button", name="Put it back").click()
    until(page, "document.querySelectorAll('.items li').length === 7")


def test_items_taken_out_one_after_another_come_back_so(shop: Phone) -> None:
    """Two slips of the thumb cost nothing either."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    before = kept(page)
    for name in ("Side door", "Door hinges"):
        page.get_by_role("button", name=f"Take {name} out").click()
        page.locator(f"#work input[value='{name}']").wait_for(state="detached")
    for left in (6, 7):
        page.get_by_role("button", name="Put it back").click()
        # it has the focus when it is back, and nothing moves any more
        until(page, f"document.querySelectorAll('.items li').length === {left} && document.activeElement.id.startsWith('label-')")

    assert kept(page) == before
    assert not page.locator("#job-says").is_visible()


def test_what_is_said_of_a_job_goes_when_something_else_is_done(shop: Phone) -> None:
    """It would cover what is read next."""
    page = with_boathouse(shop)
    turn_to(page, "Boards")

    assert not page.locator("#job-says").is_visible()


def test_a_count_that_is_typed_first_is_kept_for_its_part(shop: Phone) -> None:
    """Whoever counts before measuring gets as many as were counted."""
    page = job_page(shop)
    page.get_by_role("button", name="New").click()
    turn_to(page, "Cut list")
    for name, text in {"count": "3", "length": "10", "width": "2", "thickness": "1"}.items():
        page.locator(f"#parts-{name}-0").fill(text)
        page.locator(f"#parts-{name}-0").press("Tab")
        wait_until_kept(page, lambda job, key=name, said=text: [str(part[key]) for part in job["parts"]] == [said])
        settled(page)
    wait_until_kept(page, lambda job: [(part["count"], part["thickness"]) for part in job["parts"]] == [(3, "1")])


def test_what_is_measured_is_worked_out_when_the_fingers_rest(shop: Phone) -> None:
    """The bill follows while the field still has the focus, and the field keeps it."""
    page = with_boathouse(shop)
    turn_to(page, "Boards")
    before = page.locator("#work .laid").first.inner_text()
    page.locator("#job-kerf").focus()
    page.locator("#job-kerf").fill("2")
    until(page, f"document.querySelector('#work .laid').innerText !== {json.dumps(before)}")

    assert page.evaluate("[document.activeElement.id, document.activeElement.value]") == ["job-kerf", "2"]


def test_a_line_that_is_emptied_at_the_end_makes_room(shop: Phone) -> None:
    """It leaves nothing in the job, and no tick for what is typed there next."""
    page = job_page(shop)
    page.get_by_role("button", name="New").click()
    turn_to(page, "Cut list")
    sizes = {"label": "Leg", "length": "10", "width": "2", "thickness": "1"}
    for name, text in sizes.items():
        page.locator(f"#parts-{name}-0").fill(text)
    page.locator("#parts-thickness-0").press("Tab")
    turn_to(page, "Order")
    page.locator(".tick").first.click()
    page.locator(".job-run.done").wait_for()
    turn_to(page, "Cut list")
    for name in sizes:
        page.locator(f"#parts-{name}-0").fill("")
    page.locator("#parts-thickness-0").press("Tab")
    until(page, "document.querySelectorAll('.job-run').length === 0")

    [job] = kept(page)
    assert (job["parts"], job["ticks"]) == ([], {})


def test_the_order_of_work_goes_by_keyboard_alone(shop: Phone) -> None:
    """A view is chosen, a run ticked and a reading typed without a pointer, and the place is kept."""
    page = with_boathouse(shop)
    page.locator("#work [data-view=order]").focus()
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.id") == "tick-0"
    page.keyboard.press("Space")
    page.locator(".job-run.done", has_text="Mill to thickness").wait_for()

    assert page.evaluate("document.activeElement.id") == "tick-0"


def test_the_pad_serves_the_fields_of_a_job(shop: Phone) -> None:
    """A reading is built of digits and a fraction by thumb, and flows when the pad is closed."""
    page = with_boathouse(shop)
    until(page, "'hand' in document.documentElement.dataset")
    field = page.locator("[data-set=readings]").first
    field.tap()
    page.locator("#pad").wait_for()
    page.locator("#pad").get_by_role("button", name="three eighths").tap()
    page.locator("#pad").get_by_role("button", name="Done").tap()
    until(page, "Array.from(document.querySelectorAll('[data-set=readings]')).some(each => each.value === '3/8')")

    [job] = kept(page)
    assert "3/8" in job["readings"].values()


def test_the_drawer_of_codes_is_kept_when_it_was_used_once(phone: Phone) -> None:
    """It needs a signal the first time, and no other."""
    page = with_boathouse(phone)
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


SLOWLY = """() => {
    const own = window.fetch;
    const later = () => new Promise(done => setTimeout(done, 600));
    window.fetch = async (...asked) => { if (String(asked[0]).startsWith('/job')) await later(); return own(...asked); };
}"""


def test_a_key_that_is_taken_back_leaves_no_old_order(phone: Phone) -> None:
    """An answer that was cut short by typing is asked for again, also when what was typed is no change in the end."""
    page = with_boathouse(phone)
    page.locator("[data-view=items]").click()
    page.evaluate(SLOWLY)
    page.locator(".items input[data-key=quantity]").first.fill("7")
    label = page.locator(".items input[data-key=label]").first
    label.focus()
    page.keyboard.press("End")
    page.keyboard.press("x")
    page.keyboard.press("Backspace")
    label.blur()

    until(page, "document.getElementById('order').textContent.includes('14 Stile') && document.getElementById('work').ariaBusy === 'false'")


def test_a_code_on_the_desk_is_the_link_for_the_phone(phone: Phone) -> None:
    """What a camera reads from the screen carries the whole job: ZXing, a general reader of codes, reads it."""
    zxing = pytest.importorskip("zxingcpp", reason="zxing-cpp is not installed: pip install -e '.[test]'")
    image = pytest.importorskip("PIL.Image", reason="Pillow is not installed: pip install -e '.[test]'")
    page = with_boathouse(phone)
    page.get_by_role("button", name="Show as a code").click()
    page.locator("#job-code svg").wait_for()

    [code] = zxing.read_barcodes(image.open(io.BytesIO(page.locator("#job-code svg").screenshot())))
    other = job_page(phone, code.text.replace(phone.serving.address, ""))
    until(other, "document.getElementById('job-says').textContent.includes('is kept here')")

    jobs = kept(other)
    assert [job["title"] for job in jobs] == ["Boathouse", "Boathouse"]
    assert jobs[0]["items"] == jobs[1]["items"]


def test_an_update_loses_nothing_of_an_open_job(phone: Phone) -> None:
    """The newer version takes over while a note is being typed, and the note is there."""
    page = with_boathouse(phone)
    phone.wait_for_copy(page)
    turn_to(page, "Items")
    page.locator("#job-notes").fill("Half a sen")
    phone.serving.replace("/worker.js", newer_worker())
    look_for_newer(page)
    with page.expect_navigation():
        page.get_by_role("button", name="Use it now").click()
    until(page, "document.querySelector('#job-choice.ready') !== null && document.getElementById('job-notes') !== null")

    assert page.locator("#job-notes").input_value() == "Half a sen"


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
    assert "Stile,Side door" in text.replace('"', "")


def test_a_cut_list_that_gets_no_answer_says_so(shop: Phone) -> None:
    """A server that stays busy, or one that is gone: a tap that brings no file is told."""
    page = with_boathouse(shop)
    page.evaluate("void (window.fetch = () => Promise.reject(new TypeError('no answer')))")
    page.get_by_role("button", name="Cut list as CSV").click()

    page.get_by_text("There is no answer now, so no file was made. The job is still kept; try again.").wait_for()


def test_a_button_that_is_tapped_early_is_not_tapped_in_vain(copyless: Phone) -> None:
    """Until the script listens to them, the buttons say that they do nothing yet."""
    page = copyless.context.new_page()
    page.route("**/static/job.js", lambda route: None)
    page.goto("/job")
    assert page.get_by_role("button", name="Show the boathouse").is_disabled()

    page.unroute("**/static/job.js")
    page.reload()
    page.get_by_role("button", name="Show the boathouse").click()
    page.locator("#work .items li").first.wait_for()
    page.close()


def test_a_job_saved_as_a_file_comes_back_the_same(shop: Phone) -> None:
    """Out and in again: nothing is added, nothing lost."""
    page = with_boathouse(shop)
    with page.expect_download() as saving:
        page.get_by_role("button", name="Save as a file").click()
    take(page, "job.json", Path(saving.value.path()).read_text("utf-8"))
    until(page, "document.querySelectorAll('#job-choice option').length === 2")

    first, second = kept(page)
    assert first == second
    assert page.locator("#job-choice option").all_inner_texts() == ["Boathouse", "Boathouse (2)"]


def test_a_job_that_is_being_worked_out_says_so(shop: Phone) -> None:
    """What takes long has a word while it lasts, and none behind it."""
    page = with_boathouse(shop)
    page.evaluate(
        """() => { const work = document.getElementById('work'); window.busy = [];
        new MutationObserver(() => busy.push(work.ariaBusy)).observe(work, {attributeFilter: ['aria-busy']}); }"""
    )
    turn_to(page, "Boards")
    page.get_by_label("Kerf").fill("3/32")
    page.get_by_label("Kerf").press("Tab")
    until(page, "window.busy.length === 2")

    assert page.evaluate("window.busy") == ["true", "false"]


def test_a_field_that_is_too_long_can_be_mended(shop: Phone) -> None:
    """Where a job is refused for what was typed, its page stays, says why, and is taken again when it is mended."""
    page = with_boathouse(shop)
    shop.excuse("422")
    turn_to(page, "Items")
    page.evaluate("document.getElementById('job-title').removeAttribute('maxlength')")
    page.locator("#job-title").fill("x" * 130)
    page.locator("#job-title").press("Tab")
    until(page, "document.getElementById('job-says').textContent.includes('longer than 120')")

    page.locator("#job-title").fill("Mended")
    page.locator("#job-title").press("Tab")
    until(page, "document.querySelector('#job-choice').selectedOptions[0].textContent === 'Mended'")
    [job] = kept(page)
    assert job["title"] == "Mended"


def test_an_item_takes_its_ticks_and_readings_with_it(shop: Phone) -> None:
    """The next item of the same number finds none, and putting it back brings them back."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.get_by_role("button", name="Take Side door out").click()
    page.get_by_role("button", name="Put it back").wait_for()
    [job] = kept(page)
    assert [name for name in [*job["ticks"], *job["readings"]] if name.startswith("1/")] == []

    page.get_by_role("button", name="Put it back").click()
    until(page, "document.querySelectorAll('.items li').length === 7")
    [job] = kept(page)
    assert job["readings"] == json.loads(BOATHOUSE)["readings"]
    assert job["ticks"] == json.loads(BOATHOUSE)["ticks"]


def test_a_job_deleted_in_another_tab_is_not_brought_back(shop: Phone) -> None:
    """The tab that still shows it says so, and keeps nothing."""
    one = with_boathouse(shop)
    turn_to(one, "Items")
    one.locator("#job-notes").focus()
    other = job_page(shop)
    other.on("dialog", lambda dialog: dialog.accept())
    other.get_by_role("button", name="Delete this job").click()
    until(other, "document.querySelector('#job-choice').options.length === 0")

    one.locator("#job-notes").fill("Too late")
    until(one, "document.getElementById('job-says').textContent.includes('deleted in another tab')")
    assert kept(one) == []


def test_a_line_of_lumber_that_is_emptied_moves_no_other(shop: Phone) -> None:
    """What is typed next goes where it was typed."""
    page = with_boathouse(shop)
    turn_to(page, "Boards")
    for name in ("thickness", "width", "to-buy"):
        page.locator(f"#lumber-{name}-1").fill("")
        page.locator(f"#lumber-{name}-1").press("Tab")
        page.wait_for_timeout(400)  # a person types no faster than the page is drawn again
    page.locator("#lumber-on-hand-2").fill("101, 96")
    page.locator("#lumber-on-hand-2").press("Tab")
    until(page, "document.getElementById('lumber-width-1') === null")

    [job] = kept(page)
    assert [line["on_hand"] for line in job["lumber"]] == ["80 x2", "", "101, 96"]


NAMES = """() => [...document.querySelectorAll('.tick input')].map(
    each => each.getAttribute('aria-labelledby').split(' ').map(id => document.getElementById(id).innerText).join(' '))"""


def test_a_screen_reader_can_tell_the_ticks_apart(shop: Phone) -> None:
    """Each tick is named by its operation, machine and setting, so that two of one operation are not called the same."""
    names = with_boathouse(shop).evaluate(NAMES)

    assert len(names) > 10
    assert len(names) == len(set(names))


def test_each_view_is_found_again_where_it_was_left(shop: Phone) -> None:
    """A view that is opened for the first time begins at its beginning."""
    page = with_boathouse(shop)
    # a thumb scrolls nothing on its way to a tab, as the test's own click would
    tap = "view => { scrollTo({ top: 900, behavior: 'instant' }); document.querySelector(`[data-view=${view}]`).click(); }"
    page.evaluate(tap, "cuts")
    assert 0 < page.locator("#head-cuts").bounding_box()["y"] < 200
    page.evaluate(tap, "order")

    assert page.evaluate("scrollY") == 900


def test_a_run_that_is_done_is_folded_to_its_first_line(shop: Phone) -> None:
    """With what it was set to; one tick opens it again."""
    page = with_boathouse(shop)
    run = page.locator(".job-run", has_text="Mill to thickness").first
    assert run.locator(".pass").is_visible()
    run.locator(".tick").click()
    page.locator(".job-run.done", has_text="Mill to thickness").wait_for()

    assert not run.locator(".pass").is_visible()
    assert run.locator(".set").bounding_box()["height"] < 50
    run.locator(".tick").click()
    run.locator(".pass").wait_for()


def test_the_order_of_work_opens_where_the_work_goes_on(shop: Phone) -> None:
    """What is done is above."""
    page = with_boathouse(shop)
    for _ in range(8):
        before = page.locator(".job-run.done").count()
        page.locator(".job-run:not(.done) .tick").first.click()
        until(page, f"document.querySelectorAll('.job-run.done').length > {before}")
    page.close()
    again = job_page(shop)
    next_run = again.locator(".job-run:not(.done)").first

    until(again, "scrollY > 0")
    assert 0 < next_run.bounding_box()["y"] < 300


def test_what_is_put_back_has_the_focus(shop: Phone) -> None:
    """Whoever goes by keyboard goes on from there."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.get_by_role("button", name="Take Side door out").click()
    page.get_by_role("button", name="Put it back").click()

    until(page, "document.activeElement.value === 'Side door'")


def test_the_boathouse_is_shown_once(shop: Phone) -> None:
    """A second tap opens the one that is there, unless it was changed."""
    page = with_boathouse(shop)
    page.get_by_role("button", name="New").click()
    until(page, "document.querySelectorAll('#job-choice option').length === 2")
    page.get_by_role("button", name="Show the boathouse").click()
    until(page, "document.querySelector('#job-choice').selectedOptions[0].textContent === 'Boathouse'")
    assert len(kept(page)) == 2

    turn_to(page, "Items")
    page.locator("#job-notes").fill("Mine")
    page.locator("#job-notes").press("Tab")
    page.get_by_role("button", name="Show the boathouse").click()
    until(page, "document.querySelectorAll('#job-choice option').length === 3")


def test_a_job_needs_no_introduction(shop: Phone) -> None:
    """What a job is for is told until there is one; what to buy stands above what is to be typed."""
    page = job_page(shop)
    intro = page.get_by_text("Parts that share wood")
    assert intro.is_visible()
    page.get_by_role("button", name="Show the boathouse").click()
    intro.wait_for(state="hidden")

    turn_to(page, "Boards")
    assert page.get_by_text("to buy,").first.bounding_box()["y"] < page.locator("#job-kerf").bounding_box()["y"]


def test_a_file_is_opened_by_a_button_like_the_others(shop: Phone) -> None:
    """The browser's own field lies unseen over it, and whoever tabs sees where one is."""
    page = job_page(shop)
    page.locator("#job-file").focus()

    box, field = page.locator(".file").bounding_box(), page.locator("#job-file").bounding_box()
    assert (min(box["width"], box["height"]) >= 44, field["width"] >= box["width"] - 5) == (True, True)
    assert page.evaluate("getComputedStyle(document.querySelector('.file')).outlineStyle") == "solid"
