"""What a card says to do fits what it is asked: a step of another way of working is not among the steps."""

import pytest

from ..helpers import worked

# card, entries, what some step says, what none says
SAID = [
    ("angle", {}, (), ("Blade square",)),
    ("angle", {"angle": "0"}, ("Blade square",), ()),
    ("bevel", {}, (), ("Blade square", "second offcut")),
    ("bevel", {"tilt": "0"}, ("Blade square",), ()),
    ("boards", {}, ("Buy 4", "Square one end"), ()),
    ("boards", {"parts": "20 x2", "on_hand": "60", "lengths": "96"}, (), ("Buy",)),
    ("boards", {"trim": "0"}, (), ("Square one end",)),
    ("compound", {}, ("Swing the mitre gauge 9.85",), ("Mitre gauge square", "Blade square")),
    ("dado-stack", {}, (), ("Correct the fence",)),
    ("door-edge", {"bevel": "0.5"}, (), ("tilt the blade", "Gauge a line")),
    ("frame", {}, ("a horn of",), ("stands in its opening",)),
    ("frame", {"horn": "0"}, (), ("a horn of",)),
    ("glazing", {}, (), ("Cut the pane smaller than", "no thicker than the room you left", "Glass stands")),
    ("glazing", {"temp_cut": "115"}, (), ("Keep the pane in the middle", "soft foam", "or a little under")),
    ("glazing", {"material": "glass"}, ("Glass stands on two firm blocks",), ()),
    ("groove", {}, ("turn it end for end, and cut again",), ("Run every piece, reference",)),
    ("groove", {"cutter": "3/8"}, (), ("turn it end for end, and cut again",)),
    ("groove", {"cutter": "1/8"}, ("once more to clear",), ("go on by less than",)),
    ("groove", {"cutter": "1/16"}, ("go on by less than",), ("once more to clear",)),
    ("rabbet", {"width": "3/4", "head": "3/4"}, ("draw the fence back so that 3/4 in of the cutter",), ("First pass",)),
    ("screw", {}, (), ("No countersink",)),
    ("screw", {"head": "round"}, (), ("82",)),
    ("slats", {}, ("Rip a block",), ("too thin", "First slat: its near edge")),
    ("slats", {"count": "7"}, ("too thin for a block",), ("Rip a block",)),
    ("wood-movement", {}, (), ("as wide now as it will be",)),
    ("wood-movement", {"moisture_now": "14"}, ("as wide now",), ("A panel in a frame", "Slats or boards")),
]  # fmt: skip

# card, entries, how a step begins of which there are two for two ways of working
ONCE = [
    ("dado-stack", {"target": "3"}, "Move the fence"),
    ("rabbet", {"width": "1 1/2", "head": "3/4"}, "Move the fence"),
    ("rafter", {}, "Notch for the cap"),
    ("ridge-cap", {"pitch_left": "60", "pitch_right": "60", "joint": "mitred"}, "Stand each board on edge"),
    ("ridge-cap", {"pitch_left": "20", "pitch_right": "20"}, "Stand each board on edge"),
]


@pytest.mark.parametrize(("slug", "typed", "said", "unsaid"), SAID, ids=[f"{slug} {typed}" for slug, typed, _, _ in SAID])
def test_a_step_is_there_when_it_is_wanted(slug: str, typed: dict[str, str], said: tuple[str, ...], unsaid: tuple[str, ...]) -> None:
    """And no step of another way of working is."""
    steps = " ".join(worked(slug, **typed)["steps"])

    assert ([], []) == ([each for each in said if each not in steps], [each for each in unsaid if each in steps])


@pytest.mark.parametrize(("slug", "typed", "begin"), ONCE, ids=[f"{slug} {typed}" for slug, typed, _ in ONCE])
def test_of_two_ways_of_working_one_is_told(slug: str, typed: dict[str, str], begin: str) -> None:
    """Two steps that begin alike would send the hand both ways."""
    assert 1 == len([step for step in worked(slug, **typed)["steps"] if begin in step])


def test_the_trial_of_a_wide_dado_is_that_of_its_passes() -> None:
    """One pass is corrected by the stack, several by the last of them."""
    wide, narrow = (worked("dado-stack", **typed)["trial"]["text"] for typed in ({"target": "3"}, {}))

    assert ("in as many passes as the work" in wide, "next stack allows" in wide) == (True, False)
    assert ("in as many passes as the work" in narrow, "next stack allows" in narrow) == (False, True)
