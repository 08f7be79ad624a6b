"""The order of work: runs that share a setting, and readings that flow."""

import json
import random
from copy import deepcopy
from typing import Any

import pytest

from shopcalc import exact, files
from shopcalc.portable.jobs.job import read_job
from shopcalc.portable.jobs.jobdata import job_data
from shopcalc.portable.jobs.jobview import job_view
from shopcalc.portable.jobs.order import work_job

BOATHOUSE = json.loads(files.static_text("boathouse.json"))


def job_of(**changed: Any) -> dict[str, Any]:
    """The boathouse with some fields changed, taken."""
    found = read_job({**deepcopy(BOATHOUSE), "readings": {}, "ticks": {}, **changed}, exact.world())
    assert found["ok"], found
    return dict(found["job"])


def runs_of(job: dict[str, Any]) -> list[dict[str, Any]]:
    """The runs of a job."""
    return list(work_job(job, exact.world())["runs"])


def frames(**inputs: str) -> list[dict[str, Any]]:
    """Two frames, the second with these inputs."""
    first = {"id": 1, "setup": "frame", "label": "Door", "quantity": 1, "inputs": {"stock": "1 3/8"}}
    return [first, {**first, "id": 2, "label": "Sash", "quantity": 2, "inputs": {"stock": "1 3/8", **inputs}}]


def run_of(job: dict[str, Any], key: str, item: int) -> dict[str, Any]:
    """The run of one operation of one item."""
    [found] = [run for run in runs_of(job) if any(stint["item"]["id"] == item and stint["operation"]["key"] == key for stint in run["stints"])]
    return found


def stint_name(job: dict[str, Any], key: str, item: int) -> str:
    """The name of one operation of one item."""
    [name] = [stint["name"] for stint in run_of(job, key, item)["stints"] if stint["item"]["id"] == item]
    return str(name)


def test_the_same_setting_is_one_run() -> None:
    """Two frames of one stock and one groove are grooved with one fence setting."""
    run = run_of(job_of(items=frames()), "groove/groove", 1)

    assert [stint["item"]["label"] for stint in run["stints"]] == ["Door", "Sash"]


def test_another_setting_is_another_run() -> None:
    """A frame of another groove has the fence moved for it."""
    job = job_of(items=frames(groove_width="1/4"))

    assert run_of(job, "groove/groove", 1) is not run_of(job, "groove/groove", 2)
    assert len(run_of(job, "groove/groove", 2)["stints"]) == 1


def test_pieces_are_counted_over_all_of_an_item() -> None:
    """Two sash have four stiles to groove."""
    view = job_view(job_of(items=frames()), exact.world())
    [run] = [run for stage in view["stages"] for run in stage["runs"] if "1/groove/groove" in run["names"]]

    assert {"4 Stile (Sash)", "2 Stile (Door)"} <= {piece["text"] for piece in run["pieces"]}


def test_every_operation_is_in_exactly_one_run() -> None:
    """No operation is lost and none stands twice."""
    job = job_of()
    work = work_job(job, exact.world())
    stints = [stint["name"] for run in work["runs"] for stint in run["stints"]]
    wanted = [f"{each['item']['id']}/{operation['of']}/{operation['name']}" for each in work["worked"] for operation in each["found"]["operations"]]
    wanted += [f"{part['id']}/part/{word}" for part in work["own"]["parts"] for word in ("mill", "rip", "crosscut")]

    assert sorted(stints) == sorted(wanted)
    assert len(set(stints)) == len(stints)


@pytest.mark.parametrize("seed", range(10))
def test_the_order_does_not_depend_on_what_was_added_first(seed: int) -> None:
    """The items in any order give the same work."""
    items = deepcopy(BOATHOUSE["items"])
    random.Random(seed).shuffle(items)

    assert job_data(job_of(items=items), exact.world()) == job_data(job_of(), exact.world())


def test_the_stages_come_in_the_trades_order() -> None:
    """Mill, rip, crosscut, groove, shoulders, cheeks, and so on to the fit: the order never turns back."""
    stages = [run["operation"]["stage"] for run in runs_of(job_of())]

    assert stages == sorted(stages)
    assert len(set(stages)) >= 8


def test_a_reading_flows_into_every_item_of_its_run() -> None:
    """One scrap serves both frames: their tenons follow the groove as it is."""
    job = job_of(items=frames())
    before = [run_of(job, "tenon/cheeks", item)["stints"][0]["done_at"] for item in (1, 2)]
    job["readings"] = {stint_name(job, "groove/groove", 2): "21/64"}
    after = [run_of(job, "tenon/cheeks", item)["stints"][0]["done_at"] for item in (1, 2)]

    assert after[0] == after[1]
    assert after[0] != before[0]


def test_a_reading_leaves_other_runs_alone() -> None:
    """A frame of another groove keeps its settings."""
    job = job_of(items=frames(groove_width="1/4"))
    before = run_of(job, "tenon/cheeks", 2)["stints"][0]["done_at"]
    job["readings"] = {stint_name(job, "groove/groove", 1): "25/64"}

    assert run_of(job, "tenon/cheeks", 2)["stints"][0]["done_at"] == before


def test_settings_that_nearly_agree_are_pointed_out() -> None:
    """Within a sixty-fourth one setting could serve both; beyond it nothing is said."""
    near = job_view(job_of(items=frames(groove_depth="33/64")), exact.world())
    far = job_view(job_of(items=frames(groove_depth="5/8")), exact.world())

    assert [True, True] == [run["is_near"] for stage in near["stages"] for run in stage["runs"] if "groove/groove" in run["names"]]
    assert [False, False] == [run["is_near"] for stage in far["stages"] for run in stage["runs"] if "groove/groove" in run["names"]]


def test_an_item_that_cannot_be_read_says_so_and_stops_nothing_else() -> None:
    """The other items keep their work."""
    job = job_of(items=frames(stock="rough"), parts=[])
    data = job_data(job, exact.world())

    assert list(data["errors"]) == ["item 2, stock"]
    assert {part["item"] for run in data["order"] for part in run["parts"]} == {"Door"}


def test_the_boathouse_shows_every_feature() -> None:
    """The demo has a reading that flows, runs that are done, one that was cut before, and settings that nearly agree."""
    view = job_view(dict(read_job(deepcopy(BOATHOUSE), exact.world())["job"]), exact.world())
    runs = [run for stage in view["stages"] for run in stage["runs"]]

    assert [True] * 4 == [any(run[name] for run in runs) for name in ("reading", "done", "changed", "is_near")]
    assert any(laid["is_bought"] for laid in view["laid"])
    assert any(board["caption"].find("on hand") > 0 for laid in view["laid"] for board in laid["boards"])


def test_one_reading_of_the_boathouse_moves_exactly_what_depends_on_it() -> None:
    """The groove as it is moves the tenons and the shed rail of the frames that are run with it, and nothing else in the job."""

    def settings(reading: str) -> dict[str, str]:
        job = job_of(readings={"1/groove/groove": reading})
        return {
            stint["name"]: f"{[setting['value'] for setting in stint['operation']['settings']]}" for run in runs_of(job) for stint in run["stints"]
        }

    before, after = settings("21/64"), settings("11/32")

    assert before.keys() == after.keys()
    assert {name for name in before if before[name] != after[name]} == {
        *(f"{item}/tenon/{name}" for item in (1, 2) for name in ("shoulders", "cheeks")),
        "2/frame/shed_rail",
    }


@pytest.mark.parametrize("stock", ["1 3/", "5/16"])
def test_an_item_that_cannot_be_made_has_no_runs_and_no_parts(stock: str) -> None:
    """Whether its stock cannot be read or is thinner than its groove: nothing of it is begun, and every list says so first."""
    job = job_of(
        items=[{"id": 1, "setup": "frame", "label": "Side door", "inputs": {"stock": stock}}, {"id": 2, "setup": "slats", "label": "Slats in a run"}],
        parts=[],
    )
    view, data = job_view(job, exact.world()), job_data(job, exact.world())

    assert ["Slats in a run"] == sorted({part["item"] for run in data["order"] for part in run["parts"]} | {cut["item"] for cut in data["cuts"]})
    [trouble] = view["troubles"]
    assert ("Side door", " is left out. ") == (trouble["label"], trouble["text"][:14])


def test_an_item_whose_groove_cannot_be_cut_is_not_begun() -> None:
    """A stop of a card inside stops all of it: no rail is milled, and no board bought, for a frame that has no groove."""
    items = [{"id": 1, "setup": "frame", "label": "Sash", "inputs": {"groove_width": "0.248"}}]
    data = exact.answer_document("/job.json", json.dumps({"format": "shopcalc job", "version": 1, "items": items}))["data"]

    assert ([], []) == (data["order"], data["cuts"])
    assert {"item 1": "Stop: The cutter, 1/4 in, is wider than the groove, 0.248 in."} == data["errors"]


def test_a_reading_that_cannot_be_keeps_its_run_where_it_is_mended() -> None:
    """A groove that is read wider than the stock is a stop, said over the lists; the box it was typed into stays."""
    job = job_of(items=[{"id": 1, "setup": "frame", "label": "Side door", "inputs": {"stock": "7/16", "groove_width": "3/8"}}], parts=[])
    job["readings"] = {stint_name(job, "groove/groove", 1): "15/32"}

    assert "15/32" == run_of(job, "groove/groove", 1)["reading"]
    assert [": Stop: "] == [trouble["text"][:8] for trouble in job_view(job, exact.world())["troubles"]]


def test_a_reading_of_the_card_does_not_refuse_its_item() -> None:
    """A trial typed on the card before it came into the job is mended at its run, as any other."""
    inputs = {"stock": "7/16", "groove_width": "3/8", "measured_groove": "15/32"}
    job = job_of(items=[{"id": 1, "setup": "frame", "label": "Side door", "inputs": inputs}], parts=[])

    assert "15/32" == run_of(job, "groove/groove", 1)["reading"]
    assert "3/8" == run_of({**job, "readings": {"1/groove/groove": "3/8"}}, "groove/groove", 1)["reading"]


def test_a_stop_about_a_detail_leaves_the_rest() -> None:
    """A sill whose drip has no room is ripped all the same; the stop stands over every list, and in the data."""
    job = job_of(items=[{"id": 1, "setup": "sill", "label": "Sill", "inputs": {"overhang": "1 1/2", "drip_setback": "1 1/2"}}], parts=[])
    view, data = job_view(job, exact.world()), job_data(job, exact.world())

    assert [": Stop: "] == [trouble["text"][:8] for trouble in view["troubles"]]
    assert [36] == [cut["length"] for cut in data["cuts"]]


def test_a_script_is_told_what_is_left_out() -> None:
    """A stop that leaves nothing of a card is an error of its item."""
    job = job_of(items=[{"id": 1, "setup": "frame", "label": "Side door", "inputs": {"stock": "5/16"}}], parts=[])

    assert job_data(job, exact.world())["errors"]["item 1"].startswith("Stop: A groove of 3/8 in leaves stock 5/16 in thick no cheeks.")


def test_a_reading_of_one_figure_flows() -> None:
    """A groove that was read as 1 is one of an inch: told to be a slip, as any that is far off."""
    job = job_of(items=frames())
    job["readings"] = {stint_name(job, "groove/groove", 1): "1"}

    told = [warning for stage in job_view(job, exact.world())["stages"] for run in stage["runs"] for warning in run["warnings"]]
    assert ("1", False) == (run_of(job, "groove/groove", 1)["reading"], told == [])


def test_a_reading_that_cannot_be_read_stops_no_work() -> None:
    """A card is kept at every key: half a reading leaves the item in all lists, worked without it, and is told at its run."""
    whole = job_of(items=frames())
    half = job_of(items=frames(measured_groove="3/"))
    data = job_data(half, exact.world())

    assert [run["key"] for run in runs_of(whole)] == [run["key"] for run in runs_of(half)]
    assert (["readings, 2/groove/groove"], "3/") == (list(data["errors"]), run_of(half, "groove/groove", 2)["reading"])
    assert job_data(whole, exact.world())["cuts"] == data["cuts"]


def test_a_reading_of_no_run_that_cannot_be_read_is_told_at_its_item() -> None:
    """Its card shows it as it was typed."""
    items = [{"id": 1, "setup": "screw", "label": "Screws", "quantity": 1, "inputs": {"measured_body": "0,16"}}]
    view = job_view(job_of(items=items), exact.world())

    assert ["item 1, measured_body"] == list(job_data(job_of(items=items), exact.world())["errors"])
    assert (True, True) == (view["items"][0]["is_wrong"], "measured_body=0%2C16" in view["items"][0]["address"])


def warnings_of_groove(*readings: str) -> list[str]:
    """What the run of two frames says that came with these readings of the groove."""
    items = frames()
    for item, reading in zip(items, readings, strict=True):
        item["inputs"] = {**item["inputs"], "measured_groove": reading}
    view = job_view(job_of(items=items), exact.world())
    [run] = [run for stage in view["stages"] for run in stage["runs"] if "1/groove/groove" in run["names"]]
    return [run["reading"], run["reading_note"], *(row["text"] for row in run["warnings"])]


def test_a_run_goes_by_the_first_reading_that_can_be_read() -> None:
    """What another card came with half typed is told among the errors, and moves nothing."""
    items = frames(measured_groove="0.380")
    items[0]["inputs"] = {**items[0]["inputs"], "measured_groove": "3/"}

    assert ["0.380", ""] == warnings_of_groove("3/", "0.380")[:2]
    assert ["readings, 1/groove/groove"] == list(job_data(job_of(items=items), exact.world())["errors"])


def test_items_that_came_with_two_readings_are_told_of() -> None:
    """One scrap serves the run; what the other card measured is not dropped without a word."""
    items = frames(measured_groove="0.370")
    items[0]["inputs"] = {**items[0]["inputs"], "measured_groove": "0.380"}
    view = job_view(job_of(items=items), exact.world())
    [run] = [run for stage in view["stages"] for run in stage["runs"] if "1/groove/groove" in run["names"]]

    assert [] == [row for row in warnings_of_groove("3/8", "0.375") if "came with" in row]
    said = "Sash came with 0.370. One scrap serves all of this run, and it goes by 0.380: type what the last scrap measured."
    assert said in [row["text"] for row in run["warnings"]]


def test_a_sill_is_bevelled_when_its_drip_is_cut() -> None:
    """Both are cut from its front edge, and the board is left wider until then, as its card says."""
    runs = runs_of(job_of(items=[{"id": 1, "setup": "sill"}]))

    assert ["Drip", "Bevel the back"] == [run["operation"]["label"] for run in runs if run["operation"]["of"] == "sill"][-2:]
