"""A job is kept: over cold starts, in two tabs, through a storage that fails, and through what was taken out by mistake."""

import json

import pytest

from .jobs import BOATHOUSE, job_page, kept, settled, take, turn_to, wait_until_kept, with_boathouse
from .newer import take_newer
from .phone import Phone, ready, until, wait_for_card

pytestmark = pytest.mark.browser


def test_the_card_of_an_item_that_was_taken_out_brings_nothing_back(shop: Phone) -> None:
    """Taken out in another tab, it stays out while its card is typed on, and the card says so."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.get_by_role("link", name="Its card").first.click()
    wait_for_card(page)
    page.locator("html[data-hand]").wait_for(state="attached")
    take_out(shop, "Side door", 6)
    for stile in ("4", "5"):
        page.locator("#in-stile").fill(stile)
    page.get_by_text("taken out of its job").wait_for()

    assert [len(job["items"]) for job in kept(page)] == [6]


def take_out(phone, label, left):
    """An item taken out in another tab, where so many are left."""
    other = job_page(phone)
    turn_to(other, "Items")
    other.get_by_role("button", name=f"Take out {label}").click()
    until(other, f"document.querySelectorAll('.items li').length === {left}")


def the_doors_card(phone):
    """The card of the boathouse's side door, as its item."""
    page = with_boathouse(phone)
    turn_to(page, "Items")
    page.get_by_role("link", name="Its card").first.click()
    wait_for_card(page)
    return page


def test_a_card_whose_item_was_taken_out_leaves_the_next_of_its_number_alone(shop: Phone) -> None:
    """The last item goes, another takes its number, and the tab with the card of the first says that it is gone."""
    page = shop.visit("/tenon")
    wait_for_card(page)
    page.get_by_role("button", name="Add to the job").click()
    page.get_by_role("link", name="See the job").click()
    turn_to(page, "Items")
    page.get_by_role("link", name="Its card").click()
    wait_for_card(page)
    page.locator("html[data-hand]").wait_for(state="attached")
    take_out(shop, "Stub tenon", 0)
    other = shop.visit("/groove")
    wait_for_card(other)
    other.get_by_role("button", name="Add to the job").click()
    other.get_by_role("link", name="See the job").wait_for()
    page.locator("#in-fit").fill("0.010")
    page.get_by_text("taken out of its job").wait_for()

    [job] = kept(page)
    assert [("groove", 1)] == [(item["setup"], item["id"]) for item in job["items"]]
    assert "fit" not in job["items"][0]["inputs"]


def test_a_card_stays_its_items_card_after_a_jump_and_when_its_item_is_put_back(shop: Phone) -> None:
    """What stands behind the # of its address may change; what was taken out by mistake is there again."""
    page = the_doors_card(shop)
    page.locator("html[data-hand]").wait_for(state="attached")
    page.evaluate("location.hash = '#care'")
    other = job_page(shop)
    turn_to(other, "Items")
    other.get_by_role("button", name="Take out Side door").click()
    other.get_by_role("button", name="Put it back").click()
    until(other, "document.querySelectorAll('.items li').length === 7")
    page.locator("#in-stile").fill("4 3/4")
    page.get_by_text("Saved to").wait_for()

    assert door(page)["stile"] == "4 3/4"


def test_a_card_says_that_a_run_keeps_its_own_reading(shop: Phone) -> None:
    """What was read at the saw is not changed from a card beside it, and the card does not say that it was."""
    page = the_doors_card(shop)
    page.locator("html[data-hand]").wait_for(state="attached")
    page.locator("#in-measured_groove").fill("0.390")

    page.get_by_text("The readings of its runs stay").wait_for()


def test_a_tab_whose_focus_is_on_a_tick_hears_of_other_tabs(shop: Phone) -> None:
    """What was taken out elsewhere is gone here too, and cannot be ticked."""
    one = with_boathouse(shop)
    tick = one.locator("#work input[type=checkbox]").first
    tick.click()
    settled(one)
    runs = one.locator("#work .job-run").count()
    take_out(shop, "Side door", 6)

    until(one, f"document.querySelectorAll('#work .job-run').length < {runs}")


def test_a_count_that_is_none_is_told_at_its_field(shop: Phone) -> None:
    """It stays as it was, and says so where it was typed."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    field = page.locator("#quantity-1")
    was = field.input_value()
    field.fill("abc")
    field.press("Tab")
    page.locator(".items li").first.get_by_text("“abc” is no count from 1 to 999").wait_for()

    assert was == field.input_value()


@pytest.mark.parametrize("typed", ["2.5", "9999"])
def test_a_count_that_is_none_leaves_what_was_there_however_it_is_typed(shop: Phone, typed: str) -> None:
    """Its first figures are a count, which nobody meant."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    field = page.locator("#quantity-2")
    field.focus()
    page.keyboard.type(typed)
    page.keyboard.press("Tab")
    page.locator(".items li").nth(1).get_by_text(f"“{typed}” is no count from 1 to 999").wait_for()

    assert "2" == page.locator("#quantity-2").input_value()
    assert 2 == kept(page)[0]["items"][1]["quantity"]


def test_half_a_count_in_a_line_just_begun_is_one(shop: Phone) -> None:
    """There is nothing that it was, and its first figure was not meant."""
    page = job_page(shop)
    page.get_by_role("button", name="New", exact=True).click()
    turn_to(page, "Cut list")
    page.locator("#parts-label-0").fill("Leg")
    page.locator("#parts-count-0").focus()
    page.keyboard.type("2.5")
    page.keyboard.press("Tab")
    page.get_by_text("“2.5” is no count").wait_for()

    wait_until_kept(page, lambda job: (job["parts"][0]["label"], job["parts"][0]["count"]) == ("Leg", 1))


def test_lines_are_typed_one_after_another_without_looking_up(shop: Phone) -> None:
    """By keys alone, and faster than the page is drawn: the next line is there before it is asked for."""
    page = job_page(shop)
    page.get_by_role("button", name="New", exact=True).click()
    turn_to(page, "Boards")
    page.locator("#lumber-thickness-0").focus()
    for nth in range(3):
        for text in ("3/4", f"{nth + 3} 1/2", "96 x2", "120 @ 14"):
            page.keyboard.type(text)
            page.keyboard.press("Tab")

    lines = [{"thickness": "3/4", "width": f"{nth + 3} 1/2", "on_hand": "96 x2", "to_buy": "120 @ 14"} for nth in range(3)]
    wait_until_kept(page, lambda job: job["lumber"] == lines)
    until(page, "document.activeElement.id === 'lumber-thickness-3'")


def test_of_two_jobs_of_one_title_the_one_that_is_deleted_is_named(shop: Phone) -> None:
    """By its number, as it was asked: or the other would be mourned."""
    page = with_boathouse(shop)
    page.on("dialog", lambda asked: asked.accept())
    turn_to(page, "Items")
    page.locator("#job-notes").fill("Changed since")
    wait_until_kept(page, lambda job: job["notes"] == "Changed since")
    page.get_by_role("button", name="Show the boathouse").click()
    until(page, "document.querySelector('#job-choice').selectedOptions[0].textContent === 'Boathouse (2)'")
    page.get_by_role("button", name="Delete this job").click()
    page.get_by_text("“Boathouse (2)” is deleted.").wait_for()


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


def test_an_item_that_says_nothing_is_not_given_what_was_used_last(shop: Phone) -> None:
    """Its card, opened from the job to be looked at, has the starting values, whatever was typed on that card before."""
    page = shop.visit("/tenon")
    ready(page)
    page.locator("#in-stock").fill("2")
    until(page, "(localStorage['shopcalc.last.1'] ?? '').includes('stock=2')")
    jobs = job_page(shop)
    sent = {"format": "shopcalc job", "version": 1, "items": [{"id": 1, "setup": "tenon"}]}
    take(jobs, "job.json", json.dumps(sent))
    turn_to(jobs, "Items")
    jobs.get_by_role("link", name="Its card").click()
    ready(jobs)
    jobs.locator("html[data-memory]").wait_for(state="attached")

    assert jobs.locator("#in-stock").input_value() == "1 3/8"
    jobs.wait_for_timeout(300)
    assert "inputs" not in kept(jobs)[0]["items"][0]


def test_two_taps_begin_one_job(shop: Phone) -> None:
    """The second adds once more to the job that the first began."""
    page = shop.visit("/tenon")
    ready(page)
    for _ in range(2):
        page.get_by_role("button", name="Add to the job").click()
    page.get_by_text("Added once more").wait_for()

    wait_until_kept(page, lambda job: len(job["items"]) == 2)


def test_a_tick_is_kept_over_a_cold_start(shop: Phone) -> None:
    """What was done stays done when the page is closed and opened again."""
    page = with_boathouse(shop)
    page.locator(".job-run:not(.done) .tick").first.click()
    page.locator(".job-run.done", has_text="Thickness 3/4 in").wait_for()
    page.close()

    again = job_page(shop)

    again.locator(".job-run.done", has_text="Thickness 3/4 in").wait_for()
    assert again.locator(".job-run", has_text="Thickness 3/4 in").locator(".tick input").is_checked()


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


SILENT = """() => {
    const reads = IDBObjectStore.prototype.get;
    window.heal = () => { IDBObjectStore.prototype.get = reads; };
    IDBObjectStore.prototype.get = () => ({});
}"""


def type_while(page, fault):
    """Let the storage fail, and type what it does not take."""
    page.evaluate(fault)
    page.locator("#job-notes").fill("Typed meanwhile")
    page.locator("#job-notes").press("Tab")
    page.get_by_text("Not saved:").wait_for()


def heal_and_type(page):
    """Let the storage answer again, and type what it takes."""
    page.evaluate("heal()")
    page.locator("#job-title").fill("Mended")
    page.locator("#job-title").press("Tab")


@pytest.mark.parametrize("is_kept", [True, False])
def test_a_browser_that_may_clear_what_it_keeps_says_so(shop: Phone, is_kept: bool) -> None:
    """Where the device promises nothing, the way to keep a job for good stands at the jobs' files; elsewhere nothing is said."""
    page = job_page(shop)
    page.evaluate(f"navigator.storage.persisted = async () => {str(is_kept).lower()}")
    page.get_by_role("button", name="New").click()
    page.locator("#job-keep").wait_for()
    settled(page)

    assert page.get_by_text("This browser may clear what it keeps").is_visible() is not is_kept


def test_a_storage_that_fails_for_a_while_loses_nothing(shop: Phone) -> None:
    """What is typed meanwhile is shown over the job as it was last seen, and is put into what is stored when that answers again."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    before = kept(page)[0]
    type_while(page, PASSING)
    assert page.locator("#work .items li").count() == len(before["items"])

    heal_and_type(page)
    wait_until_kept(page, lambda job: job["title"] == "Mended")

    assert kept(page) == [{**before, "notes": "Typed meanwhile", "title": "Mended"}]
    assert not page.get_by_text("Not saved:").is_visible()


def test_jobs_that_cannot_be_read_are_not_told_as_none(shop: Phone) -> None:
    """A storage that does not open says so, where a page without jobs would look as if they were gone."""
    with_boathouse(shop)
    page = shop.context.new_page()
    page.add_init_script("IDBFactory.prototype.open = () => { throw new DOMException('closed', 'UnknownError'); };")
    page.goto("/job")

    page.get_by_text("cannot be read now").wait_for()


def test_a_deleted_job_can_be_put_back(shop: Phone) -> None:
    """It is asked about first, and comes back whole, as the job that is open."""
    page = with_boathouse(shop)
    page.on("dialog", lambda asked: asked.accept())
    was = kept(page)
    page.get_by_role("button", name="Delete this job").click()
    page.get_by_text("is deleted.").wait_for()
    assert [] == kept(page)

    page.get_by_role("button", name="Put it back").click()
    page.locator("#work .items li").first.wait_for(state="attached")
    assert (was, was[0]["title"]) == (kept(page), page.locator("#job-choice option:checked").inner_text())


def test_what_was_taken_out_of_a_deleted_job_comes_back_after_it(shop: Phone) -> None:
    """The job is the one it was: a card that is open still belongs to it, and what was taken out before goes in again."""
    page = with_boathouse(shop)
    page.on("dialog", lambda asked: asked.accept())
    turn_to(page, "Items")
    card = shop.context.new_page()
    card.goto(page.get_by_role("link", name="Its card").first.get_attribute("href"))
    card.locator(".stand", has_text="Side door").wait_for()
    page.get_by_role("button", name="Take out Ridge cap 30/45").click()
    page.get_by_role("button", name="Put it back").wait_for()
    page.get_by_role("button", name="Delete this job").click()
    page.get_by_text("is deleted.").wait_for()
    page.get_by_role("button", name="Put it back").click()
    page.get_by_text("The one taken out before it:").wait_for()
    page.get_by_role("button", name="Put it back").click()
    until(page, "document.activeElement.value === 'Ridge cap 30/45'")

    card.locator("#in-opening_width").fill("31 1/2")
    wait_until_kept(page, lambda job: (len(job["items"]), job["items"][0]["inputs"]["opening_width"]) == (7, "31 1/2"))


def test_a_job_that_cannot_be_deleted_stays_with_what_waits_for_it(shop: Phone) -> None:
    """It is told so, and what was typed while nothing could be stored is not thrown away."""
    page = with_boathouse(shop)
    page.on("dialog", lambda asked: asked.accept())
    turn_to(page, "Items")
    type_while(page, PASSING)
    page.get_by_role("button", name="Delete this job").click()
    page.get_by_text("Not deleted:").wait_for()
    heal_and_type(page)

    wait_until_kept(page, lambda job: (job["title"], job["notes"]) == ("Mended", "Typed meanwhile"))


def test_a_job_too_large_for_a_server_is_told_so(copyless: Phone) -> None:
    """It is not said that there is no signal, and the job stays."""
    page = job_page(copyless)
    copyless.excuse("the server responded with a status of 413")
    page.evaluate(
        """async () => { const { createStore, set } = await import('/static/vendor/idb-keyval-6.2.2.js');
        const readings = Object.fromEntries(Array.from({ length: 3000 }, (_, nth) => [`a${nth}`, 'x'.repeat(400)]));
        await set('big', { format: 'shopcalc job', version: 1, title: 'Big', readings }, createStore('shopcalc', 'jobs')); }"""
    )
    page.goto("/job#big")
    page.reload()

    page.get_by_text("larger than a server takes").wait_for()
    assert not page.locator("[data-signal=failed]").is_visible()


def test_a_storage_that_says_nothing_holds_up_no_button(shop: Phone) -> None:
    """A read that neither succeeds nor fails counts as failed after a while, and its edit is made when the storage answers again."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    before = kept(page)[0]
    type_while(page, SILENT)
    heal_and_type(page)

    wait_until_kept(page, lambda job: job == {**before, "notes": "Typed meanwhile", "title": "Mended"})


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


def test_an_item_taken_out_can_be_put_back(shop: Phone) -> None:
    """A slip of the thumb costs nothing."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.get_by_role("button", name="Take out Side door").click()
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
        page.get_by_role("button", name=f"Take out {name}").click()
        page.locator(f"#work input[value='{name}']").wait_for(state="detached")
    for left in (6, 7):
        page.get_by_role("button", name="Put it back").click()
        # it has the focus when it is back, and nothing moves any more
        until(page, f"document.querySelectorAll('.items li').length === {left} && document.activeElement.id.startsWith('label-')")

    assert kept(page) == before
    assert not page.locator("#job-says").is_visible()


def test_an_update_loses_nothing_of_an_open_job(phone: Phone) -> None:
    """The newer version takes over while a note is being typed, and the note is there."""
    page = with_boathouse(phone)
    phone.wait_for_copy(page)
    turn_to(page, "Items")
    page.locator("#job-notes").fill("Half a sen")
    take_newer(phone, page)
    until(page, "document.querySelector('#job-choice.ready') !== null && document.getElementById('job-notes') !== null")

    assert page.locator("#job-notes").input_value() == "Half a sen"


def test_an_item_takes_its_ticks_and_readings_with_it(shop: Phone) -> None:
    """The next item of the same number finds none, and putting it back brings them back."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.get_by_role("button", name="Take out Side door").click()
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


def test_what_is_put_back_has_the_focus(shop: Phone) -> None:
    """Whoever goes by keyboard goes on from there."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    page.get_by_role("button", name="Take out Side door").click()
    page.get_by_role("button", name="Put it back").click()

    until(page, "document.activeElement.value === 'Side door'")


def test_what_is_remembered_and_is_nothing_here_is_left_aside(shop: Phone) -> None:
    """A view of another version, and a tape that is none, leave a page that works and a new job that can be worked."""
    page = job_page(shop)
    page.evaluate("localStorage['shopcalc.view'] = 'elsewhere'")
    page.evaluate("kept => { localStorage['shopcalc.shop.1'] = kept; }", '[["tape","banana"],["kerf",5],["units","mm"]]')
    page.reload()
    page.locator("#job-choice.ready").wait_for(state="attached")
    page.get_by_role("button", name="New", exact=True).click()
    page.locator("#items").wait_for()

    wait_until_kept(page, lambda job: job["shop"] == {"units": "mm"})


def test_a_way_about_the_card_leaves_its_item_in_the_address(shop: Phone) -> None:
    """What is typed after a jump and a reload is the item's still."""
    page = the_doors_card(shop)
    page.locator("html[data-hand]").wait_for(state="attached")
    page.locator(".stand", has_text="Side door").wait_for()
    page.get_by_role("link", name="Cautions").first.click()
    until(page, "location.hash.startsWith('#item=')")
    page.locator("#in-stile").fill("4")
    until(page, "new URL(location).searchParams.get('stile') === '4'")
    page.reload()
    wait_for_card(page)
    page.locator("#in-stile").fill("5")

    wait_until_kept(page, lambda job: job["items"][0]["inputs"]["stile"] == "5")


def test_two_cards_of_one_item_keep_what_was_typed_last_on_either(shop: Phone) -> None:
    """Each shows what was typed on the other, and a tab that typed once does not type it again with every key after."""
    page = the_doors_card(shop)
    page.locator(".stand", has_text="Side door").wait_for()
    other = shop.visit(page.url)
    other.locator(".stand", has_text="Side door").wait_for()
    page.locator("#in-stile").fill("5")
    until(other, "document.getElementById('in-stile').value === '5'")
    other.locator("#in-stile").fill("6")
    until(page, "document.getElementById('in-stile').value === '6'")
    page.locator("#in-top_rail").fill("4")

    wait_until_kept(page, lambda job: [job["items"][0]["inputs"][name] for name in ("stile", "top_rail")] == ["6", "4"])


def test_two_cards_of_one_item_do_not_answer_each_other(shop: Phone) -> None:
    """Also where an entry of an imported job fits no field: what comes from the job is not typed, and not kept again."""
    page = job_page(shop)
    items = [{"id": 1, "setup": "dado-stack", "inputs": {"chippers": "1/8\n1/8\n3/32"}}]
    take(page, "odd.json", json.dumps({"format": "shopcalc job", "version": 1, "title": "Odd", "items": items}))
    turn_to(page, "Items")
    address = page.get_by_role("link", name="Its card").get_attribute("href")
    cards = [shop.visit(address) for _ in range(2)]
    for card, (name, text) in zip(cards, (("target", "0.7"), ("clearance", "0.004")), strict=True):
        card.locator(".stand", has_text="in “Odd”").wait_for()
        card.evaluate("window.heard = 0; new BroadcastChannel('shopcalc-jobs').onmessage = () => { window.heard += 1; }")
        card.locator(f"#in-{name}").fill(text)
    wait_until_kept(page, lambda job: job["items"][0]["inputs"].get("clearance") == "0.004")
    heard = [card.evaluate("window.heard") for card in cards]
    page.wait_for_timeout(500)

    assert [card.evaluate("window.heard") for card in cards] == heard
    assert cards[0].locator("#in-chippers").input_value() == "1/8, 1/8, 3/32"


def test_what_was_typed_while_an_item_was_out_is_kept_when_it_is_back(shop: Phone) -> None:
    """The card shows it, so the job has it."""
    page = the_doors_card(shop)
    page.locator(".stand", has_text="Side door").wait_for()
    other = job_page(shop)
    turn_to(other, "Items")
    other.get_by_role("button", name="Take out Side door").click()
    other.get_by_role("button", name="Put it back").wait_for()
    page.locator("#in-stile").fill("7")
    page.get_by_text("taken out of its job").wait_for()
    other.get_by_role("button", name="Put it back").click()

    wait_until_kept(page, lambda job: [item["inputs"].get("stile") for item in job["items"] if item["label"] == "Side door"] == ["7"])


def test_a_way_tapped_before_the_scripts_are_there_leaves_the_item_too(shop: Phone) -> None:
    """And a kerf typed by then is not the shop's."""
    page = the_doors_card(shop)
    address = page.url
    page = shop.context.new_page()
    page.route("**/static/jobs.js", lambda route: (page.wait_for_timeout(1500), route.continue_()))
    page.goto(address)
    wait_for_card(page)
    page.locator("html[data-memory]").wait_for(state="attached")
    page.get_by_role("link", name="Cautions").first.click()
    page.locator("#in-kerf").fill("3/32")
    page.locator(".stand", has_text="Side door").wait_for()

    wait_until_kept(page, lambda job: job["items"][0]["inputs"].get("kerf") == "3/32")
    assert page.evaluate("localStorage['shopcalc.shop.1'] ?? ''") == ""


def test_an_older_address_of_an_items_card_brings_nothing_back(shop: Phone) -> None:
    """The way back leads to an address that says what the entries were: the card shows what they are."""
    page = the_doors_card(shop)
    older = page.url
    page.locator(".stand", has_text="Side door").wait_for()
    page.locator("#in-stile").fill("5")
    wait_until_kept(page, lambda job: job["items"][0]["inputs"]["stile"] == "5")
    page.goto("/")
    page.goto(older)
    until(page, "document.getElementById('in-stile')?.value === '5'")
    until(page, "new URL(location).searchParams.get('stile') === '5'")
    page.locator("#in-top_rail").fill("4")

    wait_until_kept(page, lambda job: [job["items"][0]["inputs"][name] for name in ("stile", "top_rail")] == ["5", "4"])


def test_a_kerf_typed_for_an_item_is_not_the_shops(shop: Phone) -> None:
    """The blade of somebody else's job is not mine."""
    page = the_doors_card(shop)
    page.locator("html[data-memory]").wait_for(state="attached")
    page.locator("#in-kerf").fill("3/32")
    until(page, "new URL(location).searchParams.get('kerf') === '3/32'")

    assert page.evaluate("localStorage['shopcalc.shop.1'] ?? ''") == ""


def test_the_page_of_the_jobs_loaded_again_has_the_job_that_was_chosen(shop: Phone) -> None:
    """Whichever its address named when it was opened; and an address of none says so."""
    page = with_boathouse(shop)
    page.get_by_role("button", name="New", exact=True).click()
    until(page, "document.getElementById('job-choice').options.length === 2")
    names = page.evaluate("Array.from(document.getElementById('job-choice').options, one => [one.value, one.textContent])")
    first, second = (value for value, _ in names)
    page = job_page(shop, f"/job#{first}")
    page.locator("#job-choice").select_option(second)
    until(page, f"location.hash === '#{second}'")
    page.reload()
    until(page, "document.querySelector('#job-choice.ready') !== null")
    assert page.locator("#job-choice").input_value() == second

    page = job_page(shop, "/job#nothing-of-mine")
    page.get_by_text("The job of this link is not on this device.").wait_for()
    assert page.locator("#job-choice").input_value() == second


def test_what_is_nowhere_else_is_not_left_without_a_word(shop: Phone) -> None:
    """A job that the storage does not take is asked about before its page goes, and one that is kept is not."""
    page = with_boathouse(shop)
    leaves = "dispatchEvent(new Event('beforeunload', { cancelable: true }))"
    assert page.evaluate(leaves)
    page.evaluate("void (IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); })")
    turn_to(page, "Items")
    page.locator("#job-notes").fill("Wet")
    page.get_by_text("Not saved").wait_for()

    assert not page.evaluate(leaves)
    page.once("dialog", lambda asked: asked.accept())
    page.get_by_role("button", name="Delete").click()
    page.get_by_text("is deleted").wait_for()
    assert page.evaluate(leaves)


def test_a_second_tap_takes_out_no_second_item(shop: Phone) -> None:
    """The next item has come to lie under the finger by then."""
    page = with_boathouse(shop)
    turn_to(page, "Items")
    button = page.get_by_role("button", name="Take out Side door")
    button.scroll_into_view_if_needed()
    box = button.bounding_box()
    at = (box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    page.touchscreen.tap(*at)
    until(page, "document.querySelectorAll('.items li').length === 6")
    page.touchscreen.tap(*at)
    page.wait_for_timeout(400)

    assert page.locator(".items li").count() == 6


def test_a_trembling_finger_adds_one(shop: Phone) -> None:
    """Two taps at once on one key are one."""
    page = shop.visit("/tenon")
    ready(page)
    page.get_by_role("button", name="Add to the job").dblclick()
    page.get_by_text("Added to").wait_for()

    assert [len(job["items"]) for job in kept(page)] == [1]


def test_a_card_of_another_unit_says_what_bare_numbers_are_in_the_job(shop: Phone) -> None:
    """The sizes it brings keep their meaning, and what is typed there is of the unit that the job began with."""
    page = shop.visit("/groove")
    ready(page)
    page.get_by_role("button", name="Add to the job").click()
    page.get_by_text("Added to “My job”. See the job").wait_for()
    page = shop.visit("/tenon?units=mm&stock=35")
    ready(page)
    page.get_by_role("button", name="Add to the job").click()
    page.get_by_text("Bare numbers there are inches.").wait_for()

    wait_until_kept(page, lambda job: [item["inputs"]["stock"] for item in job["items"]][1:] == ["35 mm"])
