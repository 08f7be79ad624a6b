"""Rows of lengths: marks along a tape, the sum of a row, where each piece of a row begins.

A row is a list of lengths. Each mark is worked out from the exact value, never from the mark before it, so an error
never adds up.
"""

MOST_MARKS = 400


def even_marks(first, pitch, count):
    """`count` marks, the first at `first` and each one `pitch` further; none above `MOST_MARKS`."""
    marks = []
    if count <= MOST_MARKS:
        for place in range(int(count)):
            marks.append(first + pitch * place)
    return marks


def total_of(row):
    """The sum of a row."""
    total = 0
    for each in row:
        total = total + each
    return total


def count_in(row):
    """How many lengths a row has."""
    return len(row)


def starts_of(first, row):
    """Where each piece begins when the row is laid end to end from `first`."""
    starts = []
    place = first
    for each in row:
        starts.append(place)
        place = place + each
    return starts


def shifted(row, by):
    """Every mark of a row moved on by one length."""
    return [each + by for each in row]


def joined(row, more):
    """Two rows as one."""
    return row + more


def row_of(length):
    """A row of one length."""
    return [length]
