"""What a job says to a script and to a spreadsheet."""

import csv
import io
import json

import pytest

from shopcalc import exact
from shopcalc.portable.jobdata import csv_field

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

    assert rows[0] == ["Section", "Count", "Part", "Item", "Finished", "Rough", "Finished inches"]
    assert len(rows) - 1 == len(asked("/job.json")["data"]["cuts"])
    assert ["1 3/8 in x 4 1/2 in", "2", "Stile", "Side door", "78 1/2 in", "79 1/2 in", "78.5"] in rows


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
