"""What passes at a run."""

from typing import Any

from shopcalc.portable.jobs.passing import faces_of, how_many, passing_of, pieces_of, pieces_passing


def stint(number: int, label: str, parts: list[tuple[str, int]], quantity: int = 1, face: str = "Face down.") -> dict[str, Any]:
    """A stint of an item, with the parts that pass at it; none where all of the item does."""
    rows = [{"label": name, "count": count} for name, count in parts]
    return {"item": {"id": number, "label": label, "quantity": quantity}, "operation": {"parts": rows, "face": face}}


SASH = stint(1, "Sash", [("Stile", 2), ("Mid rail", 1)], quantity=3)
DOOR = stint(2, "Door", [("Stile", 2)])
CAP = stint(3, "Ridge cap", [], quantity=2, face="Wide face down.")


def test_each_part_passes_as_often_as_there_are_items() -> None:
    """Three sash have six stiles; an item that runs whole passes as often as there are of it."""
    assert [6, 3] == [piece["count"] for piece in pieces_passing(SASH)]
    assert [2] == [piece["count"] for piece in pieces_passing(CAP)]
    assert 9 == how_many(pieces_passing(SASH))


def test_a_part_says_which_item_it_is_of() -> None:
    """An item that runs whole is its own name."""
    assert ["6 Stile (Sash)", "3 Mid rail (Sash)", "2 Stile (Door)", "2 Ridge cap"] == [row["text"] for row in pieces_of([SASH, DOOR, CAP])]


def test_what_passes_stands_in_a_line_for_each_item() -> None:
    """Two stints of one item share its line."""
    assert [("Sash", "6 Stile, 3 Mid rail, 6 Stile, 3 Mid rail"), ("Door", "2 Stile")] == [
        (row["of"], row["text"]) for row in passing_of([SASH, SASH, DOOR])
    ]


def test_a_face_is_said_once() -> None:
    """Items may differ in it."""
    assert ["Face down.", "Wide face down."] == [row["text"] for row in faces_of([SASH, DOOR, CAP])]
