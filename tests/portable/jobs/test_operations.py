"""What one item asks to be run, worked out from its card."""

from typing import Any

import pytest
from py_mini_racer import MiniRacer

from shopcalc import exact
from shopcalc.portable.jobs.operations import worked_operations

from ...helpers import bench_of, run, unlike


def in_trade_order(slug: str, **typed: str) -> list[dict[str, Any]]:
    """The operations of a card as the trade runs them."""
    return sorted(worked_operations(bench_of(slug, **typed)), key=lambda operation: operation["stage"])  # type: ignore[no-untyped-call]


def passing(operation: dict[str, Any]) -> str:
    """The parts of an operation in one line."""
    return ", ".join(f"{part['count']} {part['label']}" for part in operation["parts"])


def marks(operation: dict[str, Any]) -> list[str]:
    """What the machine is set to, as marks on the tape."""
    return [setting["mark"] for setting in operation["settings"]]


def test_a_frame_is_run_in_the_trades_order() -> None:
    """From the planer to the horns, each run with its marks and the parts that pass."""
    every = "2 Stile, 1 Top rail, 1 Bottom rail"
    rails = "1 Top rail, 1 Bottom rail"
    pane = "1 Pane"

    assert [
        ("mill", ["1 3/8"], every),
        ("rip", ["2 1/4"], "2 Stile"),
        ("rip", ["2 1/4"], "1 Top rail"),
        ("rip", ["3"], "1 Bottom rail"),
        ("crosscut", ["21 13/16"], "2 Stile"),
        ("crosscut", ["29 9/16"], rails),
        ("groove/groove", ["1/2", "1/2"], every),
        ("tenon/shoulders", ["1/2", "1 11/32"], rails),
        ("tenon/cheeks", ["15/32", "7/8"], rails),
        ("dry fit", [], ""),
        ("weep", [], "1 Bottom rail"),
        ("pane width", ["29 3/8"], pane),
        ("pane height", ["16 5/16"], pane),
        ("glue-up", [], ""),
        ("frame/horns", ["1/2"], "2 Stile"),
    ] == [(each["key"], marks(each), passing(each)) for each in in_trade_order("frame")]


def names(slug: str, **typed: str) -> list[str]:
    """The names of a card's operations now."""
    return [operation["name"] for operation in in_trade_order(slug, **typed)]


def named(name: str, slug: str, **typed: str) -> dict[str, Any]:
    """One operation of a card by its name."""
    return next(operation for operation in in_trade_order(slug, **typed) if operation["name"] == name)


def test_parts_that_are_none_are_not_run() -> None:
    """A frame without mid rails rips none; with two of them they pass wherever rails do."""
    assert "rip_mid_rail" not in names("frame")
    assert "2 Mid rail" == passing(named("rip_mid_rail", "frame", mid_rails="2"))
    assert "1 Top rail, 2 Mid rail, 1 Bottom rail" == passing(named("shoulders", "frame", mid_rails="2"))
    assert ["7 17/32, 13 9/32"] == marks(named("marks", "frame", mid_rails="2"))


def test_a_shed_foot_has_its_cheek_sawn_away_after_the_tenons() -> None:
    """The bottom rail passes once more when its cheeks are cut, and the lowest pane has a height of its own."""
    found = names("frame", foot="shed", mid_rails="1")

    assert ["cheeks", "shed_rail", "marks", "dry_fit", "weep_above"] == found[found.index("cheeks") : found.index("pane_width_panel_width")]
    assert "1 Bottom rail" == passing(named("shed_rail", "frame", foot="shed"))
    assert ["pane_height_panel_height", "pane_height_shed_panel_height"] == [name for name in found if name.startswith("pane_height")]
    assert ["pane_height_shed_panel_height"] == [name for name in names("frame", foot="shed") if name.startswith("pane_height")]


def test_a_condition_that_does_not_hold_leaves_a_run_out() -> None:
    """No horns, nothing to saw off."""
    assert "horns" not in names("frame", horn="0")


def test_settings_without_a_value_are_left_out() -> None:
    """A run with no setting left is no run: one pass leaves no rib, and a dado head cuts no rabbet in two."""
    assert "rib" not in names("groove")
    assert ["9/16", "1/2"] == marks(named("rib", "groove", stock="1 1/2", groove_width="3/4"))
    assert ["mill_stock", "height", "rabbet"] == names("rabbet")
    assert ["mill_stock", "first", "second"] == names("rabbet", method="two cuts")
    assert ["rout_fixed"] == [setting["name"] for setting in named("rout", "hinge-mortise", cut_in="fixed part")["settings"]]


def test_what_is_sawn_by_hand_is_no_run() -> None:
    """A tilt that no saw has is set on none."""
    assert ["tilt", "mitre"] == names("compound", sides="4")
    assert [] == names("compound", sides="3")


def test_a_stopped_card_runs_nothing() -> None:
    """Where a stop takes all results away, no piece is even milled."""
    assert [] == names("groove", groove_width="9")
    assert [] == names("frame", stile="40")


def test_a_stop_inside_leaves_the_rest() -> None:
    """A cutter too wide stops the grooves of a frame, and not its rips."""
    found = names("frame", cutter="2")

    assert ("groove" in found, "shoulders" in found, "rip_stile" in found) == (False, True, True)


def test_a_reading_flows_into_its_run() -> None:
    """The box of a run has the name it has on the card, what is typed, and the correction that follows from it alone."""
    blank = named("groove", "frame")
    read = named("groove", "frame", measured_groove="0.385", measured_tenon="0.38")
    shoulders = named("shoulders", "frame", measured_groove="0.385", measured_tenon="0.389")

    assert ("measured_groove", "Groove as it measures", []) == tuple(blank[key] for key in ("reading", "reading_label", "corrections"))
    assert ["Too wide: move the fence 0.005 in (1/128 scant) away from the cutter."] == read["corrections"]
    assert ["Too thick: raise the blade 0.005 in (1/128 scant)."] == shoulders["corrections"]
    assert ("", "", []) == tuple(named("dry_fit", "frame")[key] for key in ("reading", "reading_label", "corrections"))


def test_a_setting_is_written_twice() -> None:
    """By its mark on the tape, by which runs merge, and as the card says it; a row by all its marks."""
    (height, fence) = named("shoulders", "tenon")["settings"]
    (spacer,) = named("marks", "slats")["settings"][:1]

    assert ("1/2", "1/2 in full", "full", "0.003") == tuple(height[key] for key in ("mark", "text", "lean", "amount"))
    assert ("Fence to near side of blade", "length", "1 11/32") == tuple(fence[key] for key in ("label", "kind", "mark"))
    assert "0, 2 13/16, 5 19/32, 8 13/32, 11 3/16, 14" == spacer["mark"]
    assert ["15\u00b0"] == marks(named("bevel", "bevel"))[:1]
    assert ["57.2 mm"] == marks(named("rip_stile", "frame", units="mm", stile="57.15"))


def test_an_input_is_set_on_the_shops_tape() -> None:
    """A width that is typed finer than the tape is set on its nearest mark, full or scant."""
    (fence,) = named("rip_stile", "frame", stile="2.26", tape="16")["settings"]

    assert ("stile", "Fence to blade", "2 1/4", "2 1/4 in full") == tuple(fence[key] for key in ("name", "label", "mark", "text"))


def test_rips_merge_by_their_word() -> None:
    """A stile of a frame and a slat of one width ask for the same run, and for the same mark."""
    assert ("rip", ["2 1/4"]) == (named("rip_stile", "frame")["key"], marks(named("rip_stile", "frame")))
    assert ("rip", ["2 1/4"]) == (named("rip_slat", "slats")["key"], marks(named("rip_slat", "slats")))
    assert [("Slat", 6)] == [(part["label"], part["count"]) for part in named("rip_slat", "slats")["parts"]]


@pytest.mark.parametrize(
    ("slug", "typed"),
    [
        ("frame", {"foot": "shed", "mid_rails": "2", "measured_groove": "0.385", "tape": "16"}),
        ("frame", {"units": "mm", "stile": "57"}),
        ("dado-stack", {"target": "1 1/2", "measured_dado": "1.51"}),
        ("ridge-cap", {"pitch_left": "20", "pitch_right": "15", "measured_bevel": "50"}),
        ("slats", {"by": "spacer", "measured_spacer": "0.52"}),
        ("groove", {"groove_width": "9"}),
    ],
)
def test_the_phone_runs_the_same(slug: str, typed: dict[str, str], phone_brain: MiniRacer) -> None:
    """Every operation is the same on both sides, letter for letter."""
    asked = "read_and_set(world, given[0], given[1], read_shop(given[1])).benches.map(bench => worked_operations(bench))[0]"

    assert [] == unlike(worked_operations(bench_of(slug, **typed)), run(phone_brain, asked, slug, typed))  # type: ignore[no-untyped-call]


def test_both_sides_know_the_stages(phone_brain: MiniRacer) -> None:
    """The trade's order, from the planer to the fit."""
    stages = exact.world()["stages"]

    assert ("mill", "rip", "fit") == (stages[0], stages[1], stages[-1])
    assert stages == run(phone_brain, "world.stages")
