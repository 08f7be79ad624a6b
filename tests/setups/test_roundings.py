"""What must fit inside is rounded down, what must clear is rounded up, what is picked up is named as it is.

The sizes are worked by hand, and lie where rounding to the nearest mark would say another.
"""

from typing import Any

import pytest

from ..helpers import worked
from .test_frame import DOOR

# card, entries, result, how it reads
READ = {
    "a notch is no lower than its 9.01 + 1/4 - 3/8 = 8.885": (
        "frame", {**DOOR, "foot": "shed", "bottom_rail": "9.01"}, "notch_height", "8 29/32 scant",
    ),
    "a rail is no longer than its 22 + 2 (1/2 - 0.02) = 22.96": ("frame", {**DOOR, "end_play": "0.02"}, "rail_length", "22 15/16 full"),
    # atan((18 1/16 - sqrt(18.1235^2 - 1.75^2)) / 1 1/2) = 0.9047 degrees, and 0.90 would foul
    "a bevel is no less than clears": ("door-edge", {"gap_latch": "0.061"}, "least_bevel", "0.91°"),
    "a groove is no shallower than its (0.26 + 29.5 x 0.0025) / 0.995 = 0.3354": ("glazing", {"least_bite": "0.26"}, "groove_needed", "11/32 scant"),
    "a bite is no more than its (30.27 - 29.5 - 30.5 x 0.003) / 2 = 0.3393": ("glazing", {"measured_height": "30.27"}, "height_bite", "21/64 full"),
    "a board is no shorter than its 65 + 12.01 x 13/12 + 6 x 5/12 = 80.511": (
        "rafter", {"span": "10 ft", "pitch": "5 in 12", "ridge": "0", "overhang": "12.01", "rafter_depth": "6"}, "board_needed", "80 17/32 scant",
    ),
    "a board is no narrower than its 2 x 4.005 + 1/8 = 8.135": ("ridge-cap", {"cover": "4.005"}, "board_needed", "8 5/32 scant"),
    "a mortise is no deeper than its 0.1 + 0.1 + 0.1 - 0.09 = 0.21": (
        "hinge-mortise", {"cut_in": "fixed part", "leaf": "0.1", "other_leaf": "0.1", "closed_gap": "0.1", "gap": "0.09"},
        "depth_fixed", "13/64 full",
    ),
    "a gap for movement is no less than it is on a coarse tape": ("wood-movement", {"tape": "16", "width": "6"}, "gap_at_fitting", "3/32"),
    "pieces on the arbor are named as they were typed": (
        "dado-stack", {"measured_dado": "0.730"}, "second", "1/4, 1/8, 1/8, 1/8, 1/16, 0.020, 0.012, 0.004",
    ),
    "so are those of the next stack": ("dado-stack", {"measured_dado": "0.730"}, "stack_again", "1/4, 1/8, 1/8, 1/8, 1/16, 0.020, 0.008"),
    "so are gauge blocks": ("gauge-stack", {"height": "17/32"}, "second", "1/4, 3/16, 7/64"),
}  # fmt: skip


@pytest.mark.parametrize("said", READ)
def test_a_size_is_rounded_the_way_that_does_no_harm(said: str) -> None:
    """To the mark on that side of it, with full or scant."""
    slug, typed, name, text = READ[said]

    assert text == worked(slug, **typed)["results"][name]["text"]


# card, a trial that cannot be one of this cut, what would follow from it
SLIPS: list[tuple[str, dict[str, str], set[str]]] = [
    ("bevel", {"measured_offset": "1"}, {"fence_as_cut"}),
    ("dado-stack", {"target": "1 1/2", "measured_dado": "1 3/4"}, {"second_pass_again"}),
    ("gauge-stack", {"measured_depth": "0.7"}, {"height_again"}),
    ("rabbet", {"width": "1", "measured_width": "1 1/4"}, {"second_pass_again"}),
    ("ridge-cap", {"measured_bevel": "40"}, {"narrow_as_cut"}),
    ("sill", {"measured_offset": "2"}, {"bottom_as_cut"}),
    ("tenon", {"measured_tenon": "0.2"}, {"shoulder_as_cut", "play_as_cut"}),
]


@pytest.mark.parametrize(("slug", "typed", "follows"), SLIPS, ids=[each[0] for each in SLIPS])
def test_nothing_follows_from_a_slip(slug: str, typed: dict[str, str], follows: set[str]) -> None:
    """A reading that is far off is told to be one, and moves no size."""
    results: dict[str, Any] = worked(slug, **typed)["results"]

    assert set() == follows & set(results)
