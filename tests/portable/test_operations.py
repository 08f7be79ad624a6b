"""What one item asks to be run, worked out from its card."""

from typing import Any

from shopcalc.portable.operations import worked_operations

from ..helpers import bench_of


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
    pane = "1 Pane, at most as thick"

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
        ("pane width", ["29 3/8"], pane),
        ("pane height", ["16 5/16"], pane),
        ("glue-up", [], ""),
        ("frame/horns", ["1/2"], "2 Stile"),
    ] == [(each["key"], marks(each), passing(each)) for each in in_trade_order("frame")]
