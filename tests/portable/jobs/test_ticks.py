"""What was done, and what has moved or grown since."""

from typing import Any

import pytest

from shopcalc import exact
from shopcalc.portable.jobs.jobview import job_view

from .test_order import frames, job_of, run_of, runs_of, stint_name


def test_what_was_cut_before_a_reading_is_flagged_and_not_changed() -> None:
    """The tick stays with the setting it was cut at, and the page says both."""
    job = job_of(items=frames())
    cheeks = run_of(job, "tenon/cheeks", 1)
    cut_at = cheeks["stints"][0]["done_at"]
    job["ticks"] = {stint["name"]: cut_at for stint in cheeks["stints"]}
    job["readings"] = {stint_name(job, "groove/groove", 1): "21/64"}
    view = job_view(job, exact.world())
    [run] = [run for stage in view["stages"] for run in stage["runs"] if "1/tenon/cheeks" in run["names"]]

    assert not run["done"]
    assert run["changed"][0]["text"].startswith("Door, Jig face to near side of blade: cut at 0.87")
    assert ", now 0.8" in run["changed"][0]["text"]


@pytest.mark.parametrize(("passed", "done"), [("| 1", False), ("| 9", False), ("| 99", True), ("", True), ("| some", True)])
def test_a_run_is_open_again_when_there_is_more_to_pass(passed: str, done: bool) -> None:
    """A tick remembers how many had passed; one that does not say is good for all."""
    job = job_of(parts=[{"label": "Leg", "count": 20, "length": "10", "width": "2", "thickness": "1"}], items=[])
    job["ticks"] = {"1000000/part/rip": f"2.000 in {passed}".strip()}
    [run] = [run for stage in job_view(job, exact.world())["stages"] for run in stage["runs"] if run["names"] == "1000000/part/rip"]

    assert run["done"] == done
    if not done:
        assert run["changed"][0]["text"] == f"Leg, Rip to width: {passed[2:]} had passed, now there are 20."


def test_a_run_is_done_when_all_of_it_is() -> None:
    """A frame added later opens the run again, and says what is still to pass."""
    job = job_of(items=frames())
    run = run_of(job, "groove/groove", 1)
    job["ticks"] = {run["stints"][0]["name"]: run["stints"][0]["done_at"]}
    view = job_view(job, exact.world())
    [shown] = [each for stage in view["stages"] for each in stage["runs"] if "1/groove/groove" in each["names"]]

    assert (shown["done"], shown["partly"]) == (False, True)
    assert "Sash" in shown["left"]
    assert "Door" not in shown["left"]


def test_all_of_a_run_is_cut_at_one_setting() -> None:
    """An item that would ask for a little more within the tape's division is not flagged when its run is ticked."""
    job = job_of(items=frames(groove_depth="0.505"))
    run = run_of(job, "groove/groove", 2)
    first = run["stints"][0]
    job["ticks"] = {stint["name"]: first["done_at"] for stint in run["stints"]}
    view = job_view(job, exact.world())
    [shown] = [each for stage in view["stages"] for each in stage["runs"] if "2/groove/groove" in each["names"]]

    assert (len(run["stints"]), shown["done"], shown["changed"]) == (2, True, [])


def test_an_item_that_would_want_more_within_the_tapes_division_says_so() -> None:
    """Two depths that are one mark of the tape are one run; the second says what it would want by itself."""
    view = job_view(job_of(items=frames(groove_depth="0.51")), exact.world())
    [shown] = [each for stage in view["stages"] for each in stage["runs"] if "2/groove/groove" in each["names"]]

    assert [each["text"] for each in shown["spread"]] == ["Sash by itself, Cutter height: 0.510 in."]


def test_a_tick_of_a_long_row_stays_short() -> None:
    """Two hundred marks are remembered by how many, the first and the last, so that the job may still be read."""
    slats = {"id": 1, "setup": "slats", "quantity": 1, "inputs": {"run": "1000", "slat": "1", "by": "count", "count": "200"}}
    marks = max(len(stint["done_at"]) for run in runs_of(job_of(items=[slats])) for stint in run["stints"])

    assert marks < 60


@pytest.mark.parametrize(
    "shop", [{"tape": "16"}, {"tape": "128"}, {"tape": "32", "units": "mm"}], ids=["a coarser tape", "a finer tape", "millimetres"]
)
def test_a_row_of_marks_stays_done_on_another_tape(shop: dict[str, str]) -> None:
    """The marks on the wood are where they were, whatever they are read on."""
    typed = {"door_height": "77 1/2 in", "hinge_length": "4 in", "top_offset": "5 1/16 in", "bottom_offset": "10 in", "gap_head": "1/16 in"}
    job = job_of(items=[{"id": 1, "setup": "hinge-layout", "inputs": typed}])
    run = run_of(job, "hinge-layout/door", 1)
    job["ticks"] = {stint["name"]: stint["done_at"] for stint in run["stints"]}
    job["shop"] = shop
    again = run_of(job, "hinge-layout/door", 1)

    assert run["stints"][0]["operation"]["settings"][0]["kind"] == "lengths"
    assert [True] == [stint["done"] for stint in again["stints"]]


@pytest.mark.parametrize("count", ["12", "13"])
@pytest.mark.parametrize(("run", "done"), [("48.001", True), ("48.1", False)])
def test_a_row_moved_by_less_than_a_hand_can_repeat_stays_done(count: str, run: str, done: bool) -> None:
    """Whether all of its marks are remembered or, of a long one, the first and the last."""
    slats = {"id": 1, "setup": "slats", "inputs": {"run": "48", "slat": "1", "by": "count", "count": count}}
    job = job_of(items=[slats])
    job["ticks"] = {stint["name"]: stint["done_at"] for each in runs_of(job) for stint in each["stints"]}
    slats["inputs"]["run"] = run

    assert done == all(stint["done"] for each in runs_of(job_of(items=[slats], ticks=job["ticks"])) for stint in each["stints"])


def test_a_metric_shop_is_told_in_millimetres_what_moved() -> None:
    """What was cut before, what one item would want by itself, and how near another run is."""
    rail = {"label": "Rail", "count": 1, "length": "900", "width": "90", "thickness": "20"}
    wider = {**rail, "label": "Leg", "width": "90.2"}
    ticks = {"1000000/part/rip": "3.500 in | 1"}
    job = job_of(items=[], parts=[rail, wider], ticks=ticks, shop={"units": "mm", "tape": "128"})
    [rip] = [run for stage in job_view(job, exact.world())["stages"] for run in stage["runs"] if "1000000/part/rip" in run["names"]]

    assert rip["changed"][0]["text"].startswith("Rail, Fence to blade: cut at 88.90 mm, now 90.00 mm.")
    assert rip["near"].startswith("Within 0.4 mm of the run at 90.2 mm")


def test_a_row_of_marks_that_moved_is_flagged() -> None:
    """One mark elsewhere is another row."""
    job = job_of(items=[{"id": 1, "setup": "hinge-layout", "inputs": {}}])
    job["ticks"] = {stint["name"]: stint["done_at"] for stint in run_of(job, "hinge-layout/door", 1)["stints"]}
    job["items"][0]["inputs"] = {"door_height": "79"}

    assert [1] == [len(stint["moved"]) for stint in run_of(job, "hinge-layout/door", 1)["stints"]]


def frame_of(**opening: str) -> list[dict[str, Any]]:
    """A frame in this opening."""
    return [{"id": 1, "setup": "frame", "label": "Door", "inputs": {"opening_width": "33 3/4", "opening_height": "79 1/4", **opening}}]


def all_done(job: dict[str, Any], only: tuple[str, ...] = ()) -> dict[str, str]:
    """The ticks of a job whose runs are all done, or only those of these operations."""
    stints = [stint for run in runs_of(job) for stint in run["stints"] if not only or stint["operation"]["key"] in only]
    return {stint["name"]: f"{stint['done_at']} | {stint['many']} | {stint['operation']['sizes']}" for stint in stints}


def still_done(items: list[dict[str, Any]], ticks: dict[str, str]) -> set[str]:
    """The operations that are done by these ticks."""
    return {run["operation"]["key"] for run in runs_of(job_of(items=items, parts=[], ticks=ticks)) if run["done"]}


def test_pieces_that_are_cut_anew_have_not_passed_what_comes_after() -> None:
    """A wider opening makes the rails too short: new ones are to be milled and ripped, and have seen no groover, whatever was ticked."""
    ticks = all_done(job_of(items=frame_of(), parts=[]))
    wider = job_of(items=frame_of(opening_width="35 1/2"), parts=[], ticks=ticks)
    told = [row["text"] for stage in job_view(wider, exact.world())["stages"] for run in stage["runs"] for row in run["changed"]]

    assert still_done(frame_of(), ticks) == {run["operation"]["key"] for run in runs_of(job_of(items=frame_of(), parts=[]))}
    assert set() == still_done(frame_of(opening_width="35 1/2"), ticks) & {
        "mill",
        "groove/groove",
        "tenon/shoulders",
        "tenon/cheeks",
        "frame/dry_fit",
    }
    # 33 3/4 less 1/8 of gaps, two stiles of 2 1/4, and two tenons of 15/32 on: 30 1/16, and 1 3/4 more
    assert "Door, Stop to blade: cut at 30.063 in, now 31.813 in. What was cut is too small: cut it new." in told
    assert any(
        text.startswith("Door, Top rail, Bottom rail: the length was 30.063 in when this was done, now it is 31.813 in. What is cut new")
        for text in told
    )


def test_what_has_passed_as_it_is_has_not_to_pass_again() -> None:
    """Of a frame whose rails alone are cut anew the stiles are milled and grooved; and a run through which all pass names none."""
    ticks = all_done(job_of(items=frame_of(), parts=[]))
    wider = job_of(items=frame_of(opening_width="35 1/2"), parts=[], ticks=ticks)
    shown = {run["names"]: run["left"] for stage in job_view(wider, exact.world())["stages"] for run in stage["runs"]}

    for name in ("1/frame/mill_stock", "1/groove/groove"):
        assert shown[name] == "1 Top rail (Door), 1 Bottom rail (Door)"
    assert shown["1/tenon/shoulders"] == ""


def test_the_new_cut_does_not_tick_what_comes_after() -> None:
    """With the new rails cut, the groove is open until they have passed it."""
    wider = frame_of(opening_width="35 1/2")
    ticks = all_done(job_of(items=frame_of(), parts=[])) | all_done(job_of(items=wider, parts=[]), ("crosscut",))

    assert "groove/groove" not in still_done(wider, ticks)
    assert "groove/groove" in still_done(wider, ticks | all_done(job_of(items=wider, parts=[]), ("groove/groove",)))


def test_shorter_pieces_need_no_new_wood() -> None:
    """What was milled and ripped stays so; the ends that were cut are cut again."""
    ticks = all_done(job_of(items=frame_of(), parts=[]))
    narrower = frame_of(opening_width="33 1/4")

    assert {"mill", "rip"} <= still_done(narrower, ticks)
    assert set() == still_done(narrower, ticks) & {"tenon/shoulders", "tenon/cheeks"}


def test_a_hair_is_no_other_piece() -> None:
    """Less than a 64th, as from another gap in the metric shop, opens nothing that comes after."""
    ticks = all_done(job_of(items=frame_of(), parts=[]))

    assert "groove/groove" in still_done(frame_of(opening_width="33.76"), ticks)


def test_a_tick_that_does_not_say_how_large_is_good_for_all() -> None:
    """So were those of older jobs."""
    ticks = {name: text.rsplit(" | ", 1)[0] for name, text in all_done(job_of(items=frame_of(), parts=[])).items()}

    assert "groove/groove" in still_done(frame_of(opening_width="35 1/2"), ticks)


def test_a_hair_is_tried_before_it_is_cut_new() -> None:
    """Less than a 64th longer may do: the cut and what comes after it say no two things."""
    ticks = all_done(job_of(items=frame_of(), parts=[]))
    job = job_of(items=frame_of(opening_width="33.76"), parts=[], ticks=ticks)
    told = [row["text"] for stage in job_view(job, exact.world())["stages"] for run in stage["runs"] for row in run["changed"]]

    assert "Door, Stop to blade: cut at 30.063 in, now 30.073 in. Try the pieces already cut before they are used." in told
    assert not any("cut it new" in text or "cut new" in text for text in told)


def test_other_kinds_of_pieces_have_not_passed_either() -> None:
    """A frame that loses its mid rail as its opening gets wider has two new rails, whatever was ticked for three."""
    ticks = all_done(job_of(items=frame_of(mid_rails="1"), parts=[]))
    wider = frame_of(mid_rails="0", opening_width="35 1/2")
    told = [
        row["text"]
        for stage in job_view(job_of(items=wider, parts=[], ticks=ticks), exact.world())["stages"]
        for run in stage["runs"]
        for row in run["changed"]
    ]

    assert set() == still_done(wider, ticks) & {"mill", "groove/groove", "tenon/shoulders", "tenon/cheeks", "frame/dry_fit"}
    assert "groove/groove" in still_done(frame_of(mid_rails="0"), ticks)
    assert any(
        text.startswith("Door, Top rail, Bottom rail: none so large had passed when this was done; now it is 31.813 in long.") for text in told
    )


@pytest.mark.parametrize("ticked", ["0.500 in", "0.500 in; 1.000 in; 2.000 in", "3 from 1.000 in to", "1.000, 2.000 in"])
def test_a_tick_with_other_settings_than_there_are_is_flagged(ticked: str) -> None:
    """Of a card that was another then: nobody can say what was cut."""
    job = job_of(items=frames(), parts=[])
    shoulders = stint_name(job, "tenon/shoulders", 1)
    job["ticks"] = {shoulders: ticked}

    assert [False] == [run["done"] for run in runs_of(job) if any(stint["name"] == shoulders for stint in run["stints"])]
