"""The form of a job's document: what stands in it before anything is typed, how much it may hold, what parts a tick.

Its texts are the person's own. What is made here begins empty, and is made anew each time: nothing is shared.
"""

JOB_FORMAT = "shopcalc job"
JOB_VERSION = 1
DEEPEST = 20  # brackets within brackets that are still looked at: a job has four
MOST_ITEMS = 200
JOB_IS_FULL = "A job holds at most " + str(MOST_ITEMS) + " items."
MOST_QUANTITY = 999
MOST_IDENTIFIER = 999999
OWN_FROM = 1000000  # parts of no card are numbered from here, by their places: the numbers of items end before it
PASSED = " | "  # between what a tick remembers of the settings, of how many had passed, and of how large they were


def empty_job():
    """What a job says that says nothing. A shop that it does not name is the usual one; its own sizes follow from that."""
    return {
        "format": JOB_FORMAT,
        "version": JOB_VERSION,
        "title": "Job",
        "notes": "",
        "shop": {},
        "items": [],
        "parts": [],
        "readings": {},
        "ticks": {},
        "lumber": [],
    }


def empty_line(sort):
    """A line of `parts` or of `lumber` with nothing typed in it."""
    if sort == "parts":
        return {"label": "", "count": 1, "length": "", "width": "", "thickness": ""}
    return {"thickness": "", "width": "", "on_hand": "", "to_buy": ""}


def is_empty_line(line):
    """Whether nothing is typed in a line of parts or lumber: a count that waits for its part is something."""
    return is_wordless(line) and ("count" not in line or line["count"] == 1)


def is_wordless(line):
    """Whether a line has no text in it, and so is no part and no lumber."""
    for key in line:
        if key != "count" and len(line[key]) > 0:
            return False
    return True
