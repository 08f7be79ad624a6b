"""Edits of a job's document, as the page makes them."""

import copy
import json
import random
from collections.abc import Iterator
from typing import Any

import pytest
from py_mini_racer import MiniRacer

from shopcalc import exact, phone
from shopcalc.portable.jobs.editing import (
    CARD_IS_GONE,
    add_item,
    count_refused,
    count_typed,
    enter,
    fill_in,
    free_number,
    keep_item,
    may_be_line,
    put_back,
    take_out,
)
from shopcalc.portable.jobs.job import read_job
from shopcalc.portable.jobs.jobform import JOB_IS_FULL, MOST_ITEMS, OWN_FROM, empty_job

from ... import jobs
from ...helpers import run

GROOVE = {"stock": "1 3/8"}


def a_job(*setups: str, **more: Any) -> dict[str, Any]:
    """A job with these cards."""
    job: dict[str, Any] = {**empty_job(), **more}
    for setup in setups:
        add_item(job, setup, setup.title(), {})
    return job


def typed(text: str, **where: str) -> dict[str, Any]:
    """An entry of the page with this text."""
    return {"value": text, "checked": False, **where}


def part(place: int, key: str, text: str) -> dict[str, Any]:
    """An entry in a line of parts."""
    return typed(text, set="parts", place=str(place), key=key)


def tick(names: str, counts: str, checked: bool = True) -> dict[str, Any]:
    """A tap on the tick of a run."""
    sizes = " ".join(["9.5x2"] * len(counts.split()))
    return {"set": "ticks", "names": names, "setting": "0.5 in", "counts": counts, "sizes": sizes, "value": "on", "checked": checked}


def after(job: dict[str, Any], *entries: dict[str, Any]) -> dict[str, Any]:
    """A job with these entries made in it."""
    for entry in entries:
        enter(job, entry)
    return job


class TestEntries:
    """What is typed and ticked on the page of a job."""

    def test_a_document_may_leave_out_what_is_usual(self) -> None:
        """It is filled in, and what it says stays."""
        job: dict[str, Any] = {"format": "shopcalc job", "version": 1, "title": "Sauna", "shop": {"units": "mm"}}
        fill_in(job)

        assert empty_job() | {"title": "Sauna", "shop": {"units": "mm"}} == job

    def test_a_field_of_the_job_is_written_under_its_name(self) -> None:
        """Its title, its kerf, and what its shop is."""
        job = after(a_job(), typed("Bench", set="title"), typed("3/32", set="kerf"), typed("mm", set="shop", key="units"))

        assert ("Bench", "3/32", {"units": "mm"}) == (job["title"], job["kerf"], job["shop"])

    def test_an_item_is_named_and_counted(self) -> None:
        """The one of the number that the field has; a count that is none leaves what was."""
        job = after(a_job("groove", "tenon"), typed("Door", set="items", id="2", key="label"), typed(" 12 ", set="items", id="2", key="quantity"))
        after(job, typed("x", set="items", id="2", key="quantity"), typed("Vent", set="items", id="9", key="label"))

        assert [(None, 1), ("Door", 12)] == [(item.get("label"), item["quantity"]) for item in job["items"]]

    def test_lines_are_there_as_far_down_as_one_is_typed_in(self) -> None:
        """Those before it are empty."""
        job = after(a_job(), part(1, "length", "20"))

        assert [["", 1, ""], ["", 1, "20"]] == [[line["label"], line["count"], line["length"]] for line in job["parts"]]

    def test_past_the_last_line_nothing_is_kept(self) -> None:
        """A job with one line more would be refused whole."""
        job = after(a_job(), part(MOST_ITEMS - 1, "label", "Leg"), part(MOST_ITEMS, "label", "Rail"))

        assert (MOST_ITEMS, "Leg") == (len(job["parts"]), job["parts"][-1]["label"])
        assert (True, False) == (may_be_line(MOST_ITEMS - 1), may_be_line(MOST_ITEMS))

    def test_emptied_lines_at_the_end_make_room(self) -> None:
        """One before others stays, since its place is its name."""
        job = after(a_job(), *(part(place, "length", "20") for place in range(3)), part(0, "length", ""), part(2, "length", ""))

        assert ["", "20"] == [line["length"] for line in job["parts"]]

    def test_an_emptied_part_leaves_no_ticks_and_no_count(self) -> None:
        """The next part in its place begins with none done, and once; the other lines keep theirs."""
        names = [f"{OWN_FROM + place}/part/rip" for place in range(2)]
        job = after(a_job(), *(part(place, "length", "20") for place in range(2)), part(0, "count", "6"), tick(" ".join(names), "6 1"))
        after(job, part(0, "length", ""))

        assert ([1, 1], [names[1]]) == ([line["count"] for line in job["parts"]], list(job["ticks"]))

    def test_a_count_may_be_typed_before_its_part(self) -> None:
        """It waits for it."""
        job = after(a_job(), part(0, "count", "3"))

        assert [(3, "")] == [(line["count"], line["length"]) for line in job["parts"]]

    def test_a_line_of_lumber_has_no_count(self) -> None:
        """And is put away when it is empty."""
        job = after(a_job(), typed("96 @ 12", set="lumber", place="0", key="to_buy"))
        assert [{"thickness": "", "width": "", "on_hand": "", "to_buy": "96 @ 12"}] == job["lumber"]

        assert [] == after(job, typed("", set="lumber", place="0", key="to_buy"))["lumber"]

    def test_a_tick_remembers_the_setting_and_what_passed(self) -> None:
        """Of each stint of the run how many, and how large."""
        job = after(a_job("groove", "tenon"), tick("1/groove/groove 2/tenon/cheeks", "4 2"))

        assert {"1/groove/groove": "0.5 in | 4 | 9.5x2", "2/tenon/cheeks": "0.5 in | 2 | 9.5x2"} == job["ticks"]

    def test_a_tick_is_taken_away_by_its_whole_name(self) -> None:
        """One whose name only begins so stays."""
        job = after(a_job("groove"), tick("1/groove/groove 1/groove/groove_two", "4 4"), tick("1/groove/groove", "4", checked=False))

        assert ["1/groove/groove_two"] == list(job["ticks"])

    def test_nothing_is_ticked_or_read_of_what_is_gone(self) -> None:
        """Another tab may have taken the item, or the line, out."""
        gone = ["1/groove/groove", f"{OWN_FROM}/part/rip"]
        job = after(a_job(), tick(" ".join(gone), "4 4"), *(typed("1/2", set="readings", names=name) for name in gone))

        assert ({}, {}) == (job["ticks"], job["readings"])

    def test_a_reading_is_written_for_all_stints_of_its_run(self) -> None:
        """An empty one too: then nothing is read."""
        job = after(a_job("groove", "groove"), typed("0.26", set="readings", names="1/groove/groove 2/groove/groove"))
        assert {"1/groove/groove": "0.26", "2/groove/groove": "0.26"} == job["readings"]


class TestCounts:
    """How many, as typed."""

    def test_a_count_is_a_whole_number_to_999(self) -> None:
        """With spaces about it or none."""
        assert [1, 999, 12, 3] == [count_typed(text) for text in ("1", "999", "  12 ", "3\u00a0")]

    def test_what_is_no_count_is_told(self) -> None:
        """Words, parts, signs, nothing at all, and too many; an empty field is only empty."""
        wrong = ["0", "1000", "1.5", "-2", "two", "1 2", "1e3", "9" * 400]

        assert [0] * len(wrong) == [count_typed(text) for text in wrong]
        assert "“1.5” is no count from 1 to 999: it stays as it was." == count_refused("1.5")
        assert ("", "") == (count_refused(""), count_refused("7"))


class TestItems:
    """Cards that come into a job and go."""

    def test_the_second_of_a_card_is_told_apart(self) -> None:
        """By a number behind its title; the first goes by the title alone."""
        job = a_job("groove", "tenon", "groove")

        assert [None, None, "Groove 2"] == [item.get("label") for item in job["items"]]

    def test_no_two_items_get_one_label(self) -> None:
        """The order of work tells items by their labels: one that was third stays so when the second is taken out."""
        job = a_job()
        for _ in range(3):
            add_item(job, "tenon", "Stub tenon", {})
        take_out(job, 2)
        add_item(job, "tenon", "Stub tenon", {})

        assert [None, "Stub tenon 3", "Stub tenon 4"] == [item.get("label") for item in job["items"]]

    def test_the_same_entries_once_more_are_told(self) -> None:
        """They may be wanted twice, or be a second tap."""
        job = a_job()
        told = [add_item(job, "groove", "Groove", inputs)["said"] for inputs in (GROOVE, {"stock": "1"}, {}, dict(GROOVE))]

        assert ["Added to"] * 3 + ["Added once more, with the same entries, to"] == told

    def test_a_job_holds_so_many_items(self) -> None:
        """One more is refused, from a card and from what was taken out."""
        job = a_job(*["groove"] * MOST_ITEMS)
        assert {"refused": JOB_IS_FULL} == add_item(job, "groove", "Groove", {})

        taken = take_out(job, 7)
        add_item(job, "groove", "Groove", {})
        assert ({"refused": JOB_IS_FULL}, MOST_ITEMS) == (put_back(job, taken), len(job["items"]))

    def test_a_new_item_has_the_number_after_the_largest(self) -> None:
        """Not the first that is free: a tab may have a card open of the item that had it. At the end of all numbers the first free."""
        numbers = [[], [1, 2], [1, 7], [999999], [1, 2, 999999]]

        assert [1, 3, 8, 1, 3] == [free_number({"items": [{"id": number} for number in each]}) for each in numbers]

    def test_a_card_keeps_its_entries_with_its_item(self) -> None:
        """And tells whether something was read at its runs."""
        job = a_job("groove", "tenon")
        assert {"said": "Saved to", "read": False} == keep_item(job, 1, "groove", GROOVE)
        after(job, typed("0.26", set="readings", names="1/groove/groove"))

        assert ({"said": "Saved to", "read": True}, [GROOVE, {}]) == (
            keep_item(job, 1, "groove", GROOVE), [item["inputs"] for item in job["items"]],
        )  # fmt: skip

    def test_a_card_keeps_what_was_typed_on_it_and_no_more(self) -> None:
        """The other entries are as another tab may have left them; a document may leave all of them out."""
        job = a_job("groove")
        keep_item(job, 1, "groove", {"stock": "2"})
        keep_item(job, 1, "groove", {"cutter": "1/8"})
        assert {"stock": "2", "cutter": "1/8"} == job["items"][0]["inputs"]

        job["items"][0].pop("inputs")
        keep_item(job, 1, "groove", {"cutter": "1/8"})
        assert {"cutter": "1/8"} == job["items"][0]["inputs"]

    def test_a_card_whose_item_is_gone_keeps_nothing(self) -> None:
        """Also where another card has its number by now."""
        job = a_job("groove")
        take_out(job, 1)
        assert {"refused": CARD_IS_GONE} == keep_item(job, 1, "groove", GROOVE)

        add_item(job, "tenon", "Tenon", {})
        assert ({"refused": CARD_IS_GONE}, {}) == (keep_item(job, 1, "groove", GROOVE), job["items"][0]["inputs"])

    def test_an_item_goes_with_its_ticks_and_readings(self) -> None:
        """And with no others: 1/ is not the beginning of 12/."""
        job = a_job(*["groove"] * 12)
        after(job, *(entry for number in (1, 12) for entry in (tick(f"{number}/groove/groove", "4"), reading(number))))
        take_out(job, 1)

        assert (["12/groove/groove"], ["12/groove/groove"]) == (list(job["ticks"]), list(job["readings"]))

    def test_an_item_comes_back_where_it_was(self) -> None:
        """With all that was its own; the job is what it was."""
        job = after(a_job("groove", "groove", "tenon"), tick("2/groove/groove", "4"), reading(2))
        was = copy.deepcopy(job)

        assert ({"number": 2}, was) == (put_back(job, take_out(job, 2)), job)

    def test_an_item_of_a_job_in_another_order_comes_back_where_it_was(self) -> None:
        """A file may have its items in any order."""
        job = {**a_job("groove", "groove", "tenon")}
        job["items"] = [job["items"][place] for place in (2, 0, 1)]
        was = copy.deepcopy(job)

        for number in (1, 2, 3):
            put_back(job, take_out(job, number))
            assert was == job

    def test_an_item_whose_number_is_taken_comes_back_under_another(self) -> None:
        """Its ticks and readings have the new number too."""
        job = after(a_job("groove"), tick("1/groove/groove", "4"), reading(1))
        taken = take_out(job, 1)
        add_item(job, "tenon", "Tenon", {})

        assert {"number": 2} == put_back(job, taken)
        assert ([(2, "groove"), (1, "tenon")], ["2/groove/groove"], ["2/groove/groove"]) == (
            [(item["id"], item["setup"]) for item in job["items"]], list(job["ticks"]), list(job["readings"]),
        )  # fmt: skip

    def test_nothing_is_taken_out_that_is_not_there(self) -> None:
        """Another tab was first."""
        assert take_out(a_job("groove"), 2) is None


def reading(number: int) -> dict[str, Any]:
    """A reading at the run of a groove."""
    return typed("0.26", set="readings", names=f"{number}/groove/groove")


@pytest.fixture(scope="module")
def engine() -> Iterator[MiniRacer]:
    """V8 with the edits as pages load them."""
    with MiniRacer() as made:
        made.eval(phone.editing_script().replace("export ", ""))
        yield made


STEPS = """(() => {
    const [job, steps] = given, told = [], out = [];
    fill_in(job);
    for (const [name, ...rest] of steps) {
        if (name === 'enter') enter(job, ...rest);
        if (name === 'add') told.push(add_item(job, ...rest));
        if (name === 'keep') told.push(keep_item(job, ...rest));
        if (name === 'out') { const taken = take_out(job, ...rest); if (taken) out.push(taken); }
        if (name === 'back' && out.length) told.push(put_back(job, out.pop()));
    }
    return { job, told };
})()"""


def made_here(job: dict[str, Any], steps: list[list[Any]]) -> dict[str, Any]:
    """The same steps in Python."""
    told, out = [], []
    fill_in(job)
    for name, *rest in steps:
        if name == "enter":
            enter(job, *rest)
        if name == "add":
            told.append(add_item(job, *rest))
        if name == "keep":
            told.append(keep_item(job, *rest))
        if name == "out" and (taken := take_out(job, *rest)) is not None:
            out.append(taken)
        if name == "back" and out:
            told.append(put_back(job, out.pop()))
    return {"job": job, "told": told}


def some_steps(rng: random.Random, count: int) -> list[list[Any]]:
    """What a person does on the page and on cards, in any order; also to what is not there."""
    return [rng.choice([some_entry, some_entry, some_entry, some_item])(rng) for _ in range(count)]


def some_entry(rng: random.Random) -> list[Any]:
    """An entry of the page, in a field that is there or not."""
    number = rng.choice([1, 2, 3, 12, OWN_FROM, OWN_FROM + 1])
    place, text = str(rng.randint(0, 4)), rng.choice(["", "", "20", "3", "x", "1 2", " 7", "½"])
    named: dict[str, Any] = {"names": f"{number}/groove/groove {number}/tenon/cheeks", "setting": "0.5 in", "counts": "4 2", "sizes": "9.5x2 "}
    named["checked"] = rng.random() < 0.6
    where = rng.choice([
        {"set": "parts", "place": place, "key": rng.choice(["label", "count", "length"])},
        {"set": "lumber", "place": place, "key": rng.choice(["width", "to_buy"])},
        {"set": "items", "id": str(number), "key": rng.choice(["label", "quantity"])},
        {"set": "ticks", **named}, {"set": "readings", **named}, {"set": "title"}, {"set": "shop", "key": "tape"},
    ])  # fmt: skip
    if where["set"] == "shop":
        text = rng.choice(["16", "64"])
    return ["enter", typed(text) | where]


def some_item(rng: random.Random) -> list[Any]:
    """An item that comes, is changed, goes, or comes back."""
    number, setup, inputs = rng.randint(1, 6), rng.choice(["groove", "tenon"]), rng.choice([{}, GROOVE])
    return rng.choice([["add", setup, "Card", inputs], ["keep", number, setup, inputs], ["out", number], ["back"]])


@pytest.mark.parametrize("seed", range(40))
def test_both_runtimes_make_the_same_of_all_steps(seed: int, engine: MiniRacer) -> None:
    """Sixty steps in a generated job: the documents are equal, and so is what is told."""
    rng = random.Random(seed)
    job, steps = jobs.job(seed), some_steps(rng, 60)
    phone_made = run(engine, STEPS, job, steps)

    assert made_here(json.loads(json.dumps(job)), steps) == phone_made


@pytest.mark.parametrize("seed", range(40))
def test_no_steps_spoil_a_job(seed: int) -> None:
    """A job that is taken is taken after any of them, and no tick or reading is left of what is gone."""
    rng = random.Random(1000 + seed)
    job = a_job("groove", "tenon")
    made_here(job, some_steps(rng, 80))
    found = read_job(job, exact.world())

    assert found["ok"], found
    there = {str(item["id"]) for item in job["items"]} | {str(OWN_FROM + place) for place, _ in enumerate(job["parts"])}
    assert set() == {name.split("/")[0] for part in ("ticks", "readings") for name in job[part]} - there
