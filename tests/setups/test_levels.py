"""How hard each check speaks: a stop for what cannot be made or would go wrong at the machine, a note for what is good to know.

All others are cautions. Which is which is judged by what happens if nobody listens; common practice, no published source.
"""

from shopcalc.catalogue import setups

from ..helpers import worked

STOPS = {
    "angle": {"upright"},
    "bevel": {"no_narrow_face", "past_the_saw"},
    "boards": {"too_long", "used_up"},
    "compound": {"too_few_sides"},
    "dado-stack": {"arbor_too_short", "narrower_than_pair", "too_many_chippers", "too_many_shims"},
    "door-edge": {"fouls", "nothing_left", "too_thick"},
    "frame": {
        "mid_rail_through", "no_cheeks", "no_frame", "no_height", "no_pane_width", "no_shed", "no_tongue", "pane_falls_out",
        "rails_too_tall", "through_groove",
    },
    "gauge-stack": {"too_many_sums"},
    "glazing": {"no_bite", "temperatures_swapped"},
    "groove": {"cutter_too_wide", "no_cheeks"},
    "hinge-layout": {"do_not_fit", "too_few", "too_many"},
    "hinge-mortise": {"bit_in_collar", "bit_too_wide"},
    "rabbet": {"blade_in_fence", "no_lip"},
    "rafter": {"cap_on_the_ridge", "cap_too_long", "cap_too_thick", "cut_through", "no_run", "seat_past_ridge"},
    "ridge-cap": {"cover_too_small", "no_run"},
    "screw": {"gauge_large", "gauge_small"},
    "sill": {"drip_on_wall", "no_bearing", "no_bottom", "past_the_saw"},
    "slats": {"none_fits", "slat_too_wide", "too_many", "too_many_marks"},
    "tenon": {"fence_in_blade", "no_length", "no_saw_for_length", "no_saw_for_stock", "no_shoulder", "no_tenon"},
    "wood-movement": {"swapped_moisture_dry", "swapped_rh_dry"},
}  # fmt: skip
NOTES = {
    "angle": {"complement_set", "level", "which_side"},
    "bevel": {"square_rip", "which_side"},
    "boards": {"as_cheap_as_can_be", "as_few_as_can_be"},
    "compound": {"edge_by_hand", "face_by_hand", "flat", "upright", "which_face", "which_side"},
    "dado-stack": {"more_than_two", "none_again", "wider_than_widest"},
    "door-edge": {"square_will_do"},
    "fractions": {"on_the_mark"},
    "frame": {"no_drip", "reading_followed", "short_tenons"},
    "gauge-stack": {"a_little_over", "a_little_short", "more_pieces"},
    "glazing": {"cut_in_the_cold", "hair_of_room", "large_pane", "slides"},
    "hinge-layout": {"past_three", "unusual_foot", "unusual_top", "wants_three"},
    "hinge-mortise": {"on_the_surface", "shimmed", "sunk_both", "sunk_fixed", "sunk_moving"},
    "rabbet": {"loose_strip", "wide_for_dado"},
    "ridge-cap": {"alike", "square_peak", "which_side"},
    "sill": {"steep"},
    "slats": {"not_even", "one_more_is_nearer", "one_slat"},
    "tenon": {"cheeks_will_not_enter", "kerf_takes_it", "no_room_for_glue", "press_fit", "will_not_enter"},
    "wood-movement": {
        "cold_dry", "cold_now", "cold_wet", "dries_late", "from_memory", "only_shrinks", "only_swells", "recomputed", "saturated", "tight",
    },
}  # fmt: skip


def levels(level: str) -> dict[str, set[str]]:
    """The checks of this level, by card."""
    found = {slug: {check.name for check in setup.checks.values() if check.level == level} for slug, setup in setups().items()}
    return {slug: names for slug, names in found.items() if names}


def test_what_cannot_be_made_is_stopped() -> None:
    """A stop takes its results off the card; a caution would leave a setting on show that sends the blade into the fence."""
    assert STOPS == levels("stop")


def test_what_is_only_good_to_know_is_a_note() -> None:
    """A caution that becomes a note is read over."""
    assert NOTES == levels("note")


def test_a_fence_in_the_blade_leaves_no_setting() -> None:
    """A block of 1/16 in with a groove 3/32 in deep puts the fence 1/16 in from where a blade of 1/8 in begins."""
    data = worked("tenon", gauge_block="1/16", groove_depth="3/32")

    assert {} == data["results"]
    assert ("fence_in_blade", "stop") in {(check["name"], check["level"]) for check in data["checks"]}


def test_a_pane_that_falls_out_has_no_size() -> None:
    """With half an inch of room in a groove of half an inch nothing holds it."""
    data = worked("frame", panel_clearance="1/2", groove_depth="1/2")

    assert "panel_width" not in data["results"]
    assert ("pane_falls_out", "stop") in {(check["name"], check["level"]) for check in data["checks"]}
