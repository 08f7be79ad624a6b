"""The form of a job's document."""

from shopcalc import exact
from shopcalc.portable.jobs.job import read_job
from shopcalc.portable.jobs.jobform import MOST_IDENTIFIER, OWN_FROM, empty_job, empty_line, is_empty_line, is_wordless


def test_an_empty_job_is_a_job() -> None:
    """It is taken as it is, and so are lines in which nothing is typed."""
    job = empty_job()
    job["parts"].append(empty_line("parts"))
    job["lumber"].append(empty_line("lumber"))

    assert read_job(job, exact.world())["ok"]


def test_no_two_jobs_share_what_they_begin_with() -> None:
    """What is put into one is not in the next."""
    empty_job()["items"].append("an item")

    assert [] == empty_job()["items"]


def test_a_count_that_waits_for_its_part_is_something() -> None:
    """A line with a count alone has no words, and is not empty."""
    line = empty_line("parts")
    assert (True, True) == (is_wordless(line), is_empty_line(line))

    line["count"] = 3
    assert (True, False) == (is_wordless(line), is_empty_line(line))

    line["length"] = "20"
    assert (False, False) == (is_wordless(line), is_empty_line(line))


def test_lines_of_parts_are_numbered_behind_all_items() -> None:
    """No item can have the number of a line."""
    assert OWN_FROM > MOST_IDENTIFIER
