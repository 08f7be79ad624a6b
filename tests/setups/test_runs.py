"""Which runs a card asks a job for, in which stage, and where a trial is read."""

from typing import Any

import pytest

from shopcalc.catalogue import setups
from shopcalc.portable.jobs.operations import worked_operations

from ..helpers import bench_of


def runs(slug: str, **typed: str) -> dict[str, dict[str, Any]]:
    """The operations of a card, by name."""
    return {each["name"]: each for each in worked_operations(bench_of(slug, **typed))}


# card, entries, what is run, what is not
RUN: list[tuple[str, dict[str, str], set[str], set[str]]] = [
    ("rabbet", {}, {"rabbet"}, {"first_pass", "last_pass"}),
    ("dado-stack", {}, {"dado"}, {"first_pass", "last_pass"}),
    ("rabbet", {"width": "1 1/2", "head": "3/4"}, {"height", "first_pass", "last_pass"}, {"rabbet"}),
    ("ridge-cap", {}, {"tilt"}, {"on_edge"}),
    ("ridge-cap", {"pitch_left": "45", "pitch_right": "45"}, set(), {"tilt"}),
    ("sill", {}, {"drip"}, set()),
    ("sill", {"overhang": "3/4"}, set(), {"drip"}),
    ("frame", {"horn": "1/2"}, {"glue_up", "horns"}, {"glue_up_shed", "horns_shed"}),
    ("frame", {"foot": "shed", "horn": "1/2"}, {"glue_up_shed", "horns_shed"}, {"glue_up", "horns"}),
]


@pytest.mark.parametrize(("slug", "typed", "run", "not_run"), RUN, ids=[f"{slug} {typed}" for slug, typed, _, _ in RUN])
def test_a_run_is_asked_for_when_there_is_something_to_cut(slug: str, typed: dict[str, str], run: set[str], not_run: set[str]) -> None:
    """And not when it is cut another way."""
    found = set(runs(slug, **typed))

    assert (set(), set()) == (run - found, not_run & found)


# card, entries, run, what is read at it
READ: list[tuple[str, dict[str, str], str, str]] = [
    ("dado-stack", {}, "dado", "measured_dado"),
    ("dado-stack", {"target": "3"}, "last_pass", "measured_dado"),
    ("hinge-mortise", {"gap": "1/2"}, "shim", "measured_gap"),
    ("rabbet", {}, "rabbet", "measured_width"),
    ("rabbet", {"method": "two cuts"}, "first", "measured_width"),
    ("rabbet", {"method": "two cuts"}, "second", "measured_depth"),
    ("ridge-cap", {}, "tilt", "measured_bevel"),
]


@pytest.mark.parametrize(("slug", "typed", "run", "reading"), READ, ids=[f"{slug} {run}" for slug, _, run, _ in READ])
def test_a_trial_is_read_at_the_run_that_it_tries(slug: str, typed: dict[str, str], run: str, reading: str) -> None:
    """Of every way in which the card can be cut."""
    assert reading == runs(slug, **typed)[run]["reading"]


# By the trade's order: wood is milled before it is ripped and ripped before it is crosscut; joints are cut in single pieces,
# shoulders before cheeks; what is hung is hung after it is glued up, and its edge bevelled after that. Common practice, no
# published source.
STAGES = {
    "mill": {
        "frame/mill_stock", "groove/mill_stock", "rabbet/mill_stock", "ridge-cap/mill_thickness", "sill/mill_thickness",
        "slats/mill_slat_thickness",
    },
    "rip": {
        "bevel/bevel", "frame/rip_stile", "frame/rip_top_rail", "frame/rip_mid_rail", "frame/rip_bottom_rail", "ridge-cap/rip_wide_rip",
        "ridge-cap/rip_narrow_rip", "ridge-cap/tilt", "ridge-cap/wide_inside_up", "ridge-cap/wide_outside_up", "ridge-cap/narrow_inside_up",
        "ridge-cap/narrow_outside_up", "ridge-cap/both_outside_up",
        "ridge-cap/on_edge_inside", "ridge-cap/on_edge_outside", "slats/rip_slat",
        "sill/front", "slats/spacer_spacer", "wood-movement/spacer_gap_at_fitting",
    },
    "crosscut": {
        "compound/tilt", "compound/mitre", "compound/upright", "compound/flat", "frame/crosscut_stile_length", "frame/crosscut_rail_length",
        "rafter/plumb", "rafter/birdsmouth", "rafter/notch", "ridge-cap/crosscut_cap_length", "sill/crosscut_sill_length",
        "slats/crosscut_slat_length",
    },
    "groove and rabbet": {
        "dado-stack/dado", "dado-stack/first_pass", "dado-stack/last_pass", "gauge-stack/height", "groove/groove", "groove/rib",
        "rabbet/height", "rabbet/rabbet", "rabbet/first_pass", "rabbet/last_pass", "rabbet/first", "rabbet/second", "sill/drip",
    },
    "shoulders": {
        "tenon/shoulders",
    },
    "cheeks": {
        "frame/shed_rail", "tenon/cheeks",
    },
    "dry fit": {
        "frame/marks", "frame/dry_fit", "frame/weep", "frame/weep_above",
    },
    "panes": {
        "frame/pane_width_panel_width", "frame/pane_height_panel_height", "frame/pane_height_shed_panel_height", "frame/notch",
        "glazing/pane_width_cut_width", "glazing/pane_height_cut_height",
    },
    "glue-up": {
        "frame/glue_up", "frame/glue_up_shed", "frame/horns", "frame/horns_shed",
    },
    "hinges": {
        "hinge-layout/door", "hinge-layout/frame", "hinge-mortise/template", "hinge-mortise/rout", "hinge-mortise/shim",
    },
    "edge bevel": {
        "door-edge/edge", "sill/back",
    },
    "fit": {
        "hinge-layout/hang", "ridge-cap/fit_lapped", "ridge-cap/fit_mitred", "screw/pilot", "screw/clearance", "screw/countersink",
        "slats/marks",
    },
}  # fmt: skip


def test_every_run_is_in_its_stage() -> None:
    """A run that comes too early is made on wood that is not ready, one that comes too late on wood that is in the way."""
    found: dict[str, set[str]] = {}
    for slug, setup in setups().items():
        for operation in setup.operations.values():
            found.setdefault(operation.stage, set()).add(f"{slug}/{operation.name}")

    assert STAGES == found
