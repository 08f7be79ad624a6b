"""What a job says to a script and to a spreadsheet."""

import csv
import io
import json

import pytest

from shopcalc import exact
from shopcalc.portable.jobs.jobdata import csv_field

from .test_jobview import asked


def test_the_data_has_the_parts_that_are_promised() -> None:
    """Order, cuts, boards, bill and errors."""
    data = asked("/job.json")["data"]

    assert list(data) == ["order", "cuts", "boards", "bill", "errors"]
    assert data["errors"] == {}
    assert {"stage", "machine", "operation", "settings", "parts", "reading", "done"} <= set(data["order"][0])


def test_the_csv_is_one_that_a_spreadsheet_reads() -> None:
    """The standard library's reader gives back a line for each part."""
    rows = list(csv.reader(io.StringIO(asked("/job.csv")["text"])))

    assert rows[0] == ["Section", "Count", "Part", "Item", "Finished", "Rough", "Finished inches", "Width inches", "Thickness inches"]
    assert len(rows) - 1 == len(asked("/job.json")["data"]["cuts"])
    assert ["1 3/8 in x 4 1/2 in", "2", "Stile", "Side door", "78 1/2 in", "79 1/2 in", "78.5", "4.5", "1.375"] in rows


def test_the_csv_of_a_metric_job_adds_up_in_millimetres() -> None:
    """The columns of plain numbers are in the unit of the job."""
    parts = [{"label": "Rail", "count": 1, "length": "914", "width": "60", "thickness": "18"}]
    document = {"format": "shopcalc job", "version": 1, "shop": {"units": "mm"}, "parts": parts}
    rows = list(csv.reader(io.StringIO(exact.answer_document("/job.csv", json.dumps(document))["text"])))

    assert [rows[0][-3:], rows[1][-3:]] == [["Finished mm", "Width mm", "Thickness mm"], ["914", "60", "18"]]


@pytest.mark.parametrize("text", ["=1+1", "+1", "-1", "@sum", "\t=1", "\r=1", 'a "b", c'])
def test_a_csv_field_is_a_text_whatever_it_holds(text: str) -> None:
    """No field is taken for a formula, and quotes and commas stay inside."""
    [[read]] = list(csv.reader(io.StringIO(csv_field(text))))

    assert read == (text if text[0] not in "=+-@\t\r" else "'" + text)


def test_the_csv_says_what_is_not_in_it() -> None:
    """An item with a slip in it has no parts: the list that goes to the yard says so."""
    items = [{"id": 1, "setup": "frame", "label": "Side door", "inputs": {"stock": "x"}}]
    text = exact.answer_document("/job.csv", json.dumps({"format": "shopcalc job", "version": 1, "items": items}))["text"]

    assert "Side door is left out. Stock thickness: \u201cx\u201d cannot stand there." == list(csv.reader(io.StringIO(text)))[-1][2]


def test_parts_are_cut_an_inch_longer_and_panes_are_not() -> None:
    """A script saws what it is told: of the side door the stile of 78 1/2 in is cut at 79 1/2, the pane of 30 1/2 as it is."""
    door = {cut["label"]: cut for cut in asked("/job.json")["data"]["cuts"] if cut["item"] == "Side door"}

    assert ((78.5, 79.5), (30.5, 30.5)) == tuple((float(door[label]["length"]), float(door[label]["rough"])) for label in ("Stile", "Pane"))


def test_a_bar_says_what_it_is_taken_from() -> None:
    """The widest section comes out of whole boards; what is narrower out of what they leave."""
    bars = [bar for section in asked("/job.json")["data"]["boards"] for bar in section["layout"]]

    assert "board" == bars[0]["from"]
    assert {"board", "offcut"} <= {bar["from"] for bar in bars} <= {"board", "rest", "offcut"}


def test_of_a_job_with_something_left_out_nothing_is_proven() -> None:
    """More wood may be wanted than the boards that are counted."""
    part = {"label": "Leg", "count": 2, "length": "30", "width": "2", "thickness": "1"}
    boards = {"thickness": "1", "width": "2", "on_hand": "", "to_buy": "96"}
    slip = {"id": 1, "setup": "frame", "label": "Door", "inputs": {"stock": "x"}}
    found = [asked("/job.json", items=items, parts=[part], lumber=[boards], ticks={}, readings={})["data"]["boards"] for items in ([], [slip])]

    assert [[True], [False]] == [[section["proven"] for section in sections] for sections in found]


def test_a_setting_of_the_order_has_its_value() -> None:
    """A script that sets a fence by itself needs no fraction: the value, what rounding did to the text, of marks each."""
    settings = [setting for run in asked("/job.json")["data"]["order"] for setting in run["settings"]]
    slat = next(each for each in settings if each["name"] == "slat")
    marks = next(each for each in settings if each["name"] == "marks")

    assert ("2 9/32 in scant", "0.016", 2.265625) == (slat["text"], slat["amount"], float(slat["value"]))
    assert [0, 60 - 2.265625] == [float(marks["value"][0]), float(marks["value"][-1])]


def test_a_run_of_the_order_says_what_its_scrap_says() -> None:
    """The correction, what the cards say of the reading, and what an item would want by itself."""
    items = [{"id": 1, "setup": "groove", "label": "A", "inputs": {}}, {"id": 2, "setup": "groove", "label": "B", "inputs": {"stock": "1.38"}}]
    document = {"format": "shopcalc job", "version": 1, "items": items, "readings": {"1/groove/groove": "0.40", "2/groove/groove": "0.40"}}
    order = exact.answer_document("/job.json", json.dumps(document))["data"]["order"]
    run = next(each for each in order if each["operation"] == "Groove")

    assert ["Too wide: move the fence 0.013 in (1/64 scant) away from the cutter."] == run["corrections"]
    assert ["B by itself, Fence to near side of cutter: 0.503 in."] == run["spread"]
    assert [] == run["warnings"]
