"""Every result of every card: the source outside the formulas that it was checked against, and the test that does so.

How far a source was followed is said in words: read in the publication, read in a page that quotes it, recomputed, or from
memory. A construction is recomputed by nature: wood cut on paper, and measured.
"""

from typing import NamedTuple


class Checked(NamedTuple):
    """Where a result was checked."""

    source: str
    test: str  # module::function, in this folder


_ICS = "ICS, Building Trades Pocketbook, decimal equivalents of 64ths, read in the publication; all 64ths recomputed"
_TICKS = "whole ticks of the tape in exact fractions, recomputed"
_SQUARE = "framing square, row of common rafters per foot run, read in a page that transcribes it, four of them in publications"
_ICS_LOCK = "ICS, Building Trades Pocketbook, lock bevel of 1/8 in 2 1/4, read in the publication; 1/8 in 2 from memory"
_NUMPY = "numpy's tangent and arctangent, recomputed"
_SAW = "a saw that is off by a known amount, and the scrap it cuts, recomputed"
_PASSES = "both passes taken out of the piece in exact fractions, recomputed"
_GRAIN = "both passes taken out of the end grain on a grid, recomputed"
_SHOULDERS = "both shoulders taken out of the rail in exact fractions, recomputed"
_CUTS = "all four cuts taken out of the rail on a grid, the waste fallen off, recomputed"
_SLABS = "two slabs cut from half-planes and measured with numpy, recomputed"

CHECKED = {
    "angle": {
        "degrees": Checked(_SQUARE, "test_angle::test_a_rise_in_12_gives_the_length_on_the_framing_square"),
        "rise_in_12": Checked(_SQUARE, "test_angle::test_a_rise_in_12_comes_back_as_it_was_typed"),
        "saw_tilt": Checked(_ICS_LOCK, "test_angle::test_the_bevel_of_a_door_edge_in_degrees"),
        "complement": Checked(_NUMPY, "test_angle::test_the_saw_is_set_to_whichever_angle_is_within_its_reach"),
        "gauge_rise": Checked(_NUMPY, "test_angle::test_degrees_become_the_slopes_numpy_gives"),
        "ratio": Checked(_NUMPY, "test_angle::test_degrees_become_the_slopes_numpy_gives"),
        "percent": Checked(_NUMPY, "test_angle::test_degrees_become_the_slopes_numpy_gives"),
        "tilt_move": Checked(_SAW, "test_angle::test_a_saw_that_is_off_is_put_right_by_the_correction"),
        "angle_as_cut": Checked(_SAW, "test_angle::test_a_saw_that_is_off_is_put_right_by_the_correction"),
    },
    "fractions": {
        "length": Checked(_ICS, "test_fraction_table::test_the_nearest_64th_is_the_one_ics_works_out"),
        "below": Checked(_TICKS, "test_fraction_table::test_the_marks_below_and_above_hold_the_entry_between_them"),
        "above": Checked(_TICKS, "test_fraction_table::test_the_marks_below_and_above_hold_the_entry_between_them"),
    },
    "groove": {
        "fence": Checked(_PASSES, "test_groove::test_the_fence_setting_cuts_the_groove_wanted_in_the_middle"),
        "cheek": Checked(_PASSES, "test_groove::test_the_fence_setting_cuts_the_groove_wanted_in_the_middle"),
        "rib": Checked(_PASSES, "test_groove::test_the_fence_setting_cuts_the_groove_wanted_in_the_middle"),
        "passes": Checked(_PASSES, "test_groove::test_one_pass_is_enough_exactly_when_turning_the_piece_cuts_nothing_more"),
        "rib_fence": Checked(_PASSES, "test_groove::test_one_more_fence_position_clears_the_rib_and_leaves_the_cheeks_alone"),
        "blade_height": Checked(_GRAIN, "test_groove::test_the_cutter_height_gives_the_depth_wanted"),
        "fence_move": Checked(_SAW, "test_groove::test_a_fence_that_is_off_is_put_right_by_the_correction"),
        "cheek_as_cut": Checked(_SAW, "test_groove::test_a_fence_that_is_off_is_put_right_by_the_correction"),
    },
    "ridge-cap": {
        "inside_angle": Checked(_SLABS, "test_ridge_cap::test_the_bevel_is_the_slant_of_the_cut_at_the_peak"),
        "edge_bevel": Checked(_SLABS, "test_ridge_cap::test_the_bevel_is_the_slant_of_the_cut_at_the_peak"),
        "wide_outside": Checked(_SLABS, "test_ridge_cap::test_the_faces_are_those_of_the_boards_built"),
        "wide_inside": Checked(_SLABS, "test_ridge_cap::test_the_faces_are_those_of_the_boards_built"),
        "narrow_outside": Checked(_SLABS, "test_ridge_cap::test_the_faces_are_those_of_the_boards_built"),
        "narrow_inside": Checked(_SLABS, "test_ridge_cap::test_the_faces_are_those_of_the_boards_built"),
        "wide_rip": Checked(_SLABS, "test_ridge_cap::test_each_rip_is_just_wide_enough_for_its_board"),
        "narrow_rip": Checked(_SLABS, "test_ridge_cap::test_each_rip_is_just_wide_enough_for_its_board"),
        "difference": Checked(_SLABS, "test_ridge_cap::test_each_rip_is_just_wide_enough_for_its_board"),
        "board_needed": Checked(_SLABS, "test_ridge_cap::test_each_rip_is_just_wide_enough_for_its_board"),
        "edge_tilt": Checked(_SLABS, "test_ridge_cap::test_a_board_on_edge_is_tilted_by_the_rest_of_the_right_angle"),
        "tilt_move": Checked(_SAW, "test_ridge_cap::test_a_tilt_that_is_off_is_put_right_by_the_correction"),
    },
    "tenon": {
        "tenon_thickness": Checked(_SHOULDERS, "test_tenon::test_the_shoulder_height_leaves_a_tenon_with_the_play_wanted"),
        "shoulder_height": Checked(_SHOULDERS, "test_tenon::test_the_shoulder_height_leaves_a_tenon_with_the_play_wanted"),
        "jig_to_blade": Checked(_SHOULDERS, "test_tenon::test_the_jig_setting_leaves_the_same_tenon"),
        "tenon_length": Checked(_CUTS, "test_tenon::test_the_four_cuts_free_a_tenon_of_the_thickness_and_length_wanted"),
        "fence_to_blade": Checked(_CUTS, "test_tenon::test_the_four_cuts_free_a_tenon_of_the_thickness_and_length_wanted"),
        "cheek_height": Checked(_CUTS, "test_tenon::test_the_four_cuts_free_a_tenon_of_the_thickness_and_length_wanted"),
        "blade_move": Checked(_SAW, "test_tenon::test_a_blade_that_is_off_is_put_right_by_the_correction"),
        "jig_move": Checked(_SAW, "test_tenon::test_a_jig_that_is_off_is_put_right_by_the_correction"),
        "shoulder_as_cut": Checked(_SAW, "test_tenon::test_a_blade_that_is_off_is_put_right_by_the_correction"),
        "play_as_cut": Checked(_SAW, "test_tenon::test_the_play_as_cut_is_what_the_groove_has_left_over"),
    },
}
