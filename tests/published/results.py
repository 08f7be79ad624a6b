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
_CORNER = "one or two cuts taken out of the end grain on a grid, the waste fallen off, recomputed"
_RIP = "a board ripped on a saw of half-planes and measured with numpy, recomputed"
_RING = "a ring of leaning sides built from its corners with numpy, recomputed; its crown moulding settings from memory"
_STANDING = "a sill built from half-planes where it stands and measured with numpy, recomputed"
_PLATES = (
    "the hinge stacked on the seats in exact fractions, recomputed; "
    "half in door and half in jamb: ICS, Building Trades Pocketbook, read in the publication"
)
_BUSHING = "a disc run round its template in exact fractions and with numpy, recomputed"
_SWING = "a door cut from half-planes and turned about its pin in small steps with numpy, recomputed"
_NAVY = (
    "framing square, row of common rafters per foot run, read in a page that transcribes it; "
    "U.S. Navy 14044, U.S. Army EN0069 and Griffith, Carpentry, read in the publication"
)
_MILLER = "half of the ridge off each rafter: Miller, Carpenters' Guide, read in the publication, the direction from memory"
_STICK = "a rafter cut from half-planes and measured with numpy, recomputed"
_FLUSH = "a cap built from half-planes with its outside in the rafter's upper edge, recomputed"
_SETS = "every set of pieces tried in exact fractions, and scipy's integer programs on larger rows, recomputed"
_TROUGH = "every pass taken out of the board in exact fractions, recomputed"
_LAID = "the frame laid out part by part in exact fractions and measured, recomputed"

CHECKED = {
    "frame": {
        "frame_width": Checked(_LAID, "test_frame::test_the_frame_leaves_the_gaps_wanted"),
        "frame_height": Checked(_LAID, "test_frame::test_the_frame_leaves_the_gaps_wanted"),
        "stile_length": Checked(_LAID, "test_frame::test_stiles_run_through_with_a_horn_at_each_end"),
        "rail_shoulder": Checked(_LAID, "test_frame::test_rails_fill_the_room_between_the_stiles"),
        "rail_length": Checked(_LAID, "test_frame::test_rails_fill_the_room_between_the_stiles"),
        "bay_height": Checked(_LAID, "test_frame::test_all_bays_are_equal_with_the_rails_on_their_marks"),
        "mid_rail_marks": Checked(_LAID, "test_frame::test_all_bays_are_equal_with_the_rails_on_their_marks"),
        "panel_width": Checked(_LAID, "test_frame::test_panes_stand_short_of_the_groove_all_round"),
        "panel_height": Checked(_LAID, "test_frame::test_panes_stand_short_of_the_groove_all_round"),
        "shed_panel_height": Checked(_LAID, "test_frame::test_a_shed_pane_hangs_over_the_bottom_rail"),
        "shed_rail_thickness": Checked(_LAID, "test_frame::test_a_shed_pane_hangs_over_the_bottom_rail"),
        "groove_found": Checked(_LAID, "test_frame::test_a_shed_pane_hangs_over_the_bottom_rail"),
        "parts": Checked(_LAID, "test_frame::test_the_parts_make_the_frame_and_nothing_else"),
    },
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
    "bevel": {
        "offset": Checked(_RIP, "test_bevel::test_the_fence_leaves_both_faces_as_the_card_says"),
        "fence": Checked(_RIP, "test_bevel::test_the_fence_leaves_both_faces_as_the_card_says"),
        "narrow_face": Checked(_RIP, "test_bevel::test_the_fence_leaves_both_faces_as_the_card_says"),
        "blade_travel": Checked(_RIP, "test_bevel::test_the_blade_travel_is_the_length_of_the_cut"),
        "gauge_rise": Checked(_NUMPY, "test_bevel::test_the_gauge_holds_the_bevel"),
        "tilt_move": Checked(_SAW, "test_bevel::test_a_saw_that_is_off_is_put_right_by_the_correction"),
        "tilt_as_cut": Checked(_SAW, "test_bevel::test_a_saw_that_is_off_is_put_right_by_the_correction"),
        "fence_as_cut": Checked(_SAW, "test_bevel::test_a_saw_that_is_off_is_put_right_by_the_correction"),
    },
    "compound": {
        "mitre_gauge": Checked(_RING, "test_compound::test_the_settings_are_measured_on_the_ring"),
        "blade_tilt": Checked(_RING, "test_compound::test_the_settings_are_measured_on_the_ring"),
        "face_angle": Checked(_RING, "test_compound::test_the_angles_to_check_are_measured_on_the_ring"),
        "edge_angle": Checked(_RING, "test_compound::test_the_angles_to_check_are_measured_on_the_ring"),
        "corner": Checked(_RING, "test_compound::test_the_angles_to_check_are_measured_on_the_ring"),
        "mitre_move": Checked(_SAW, "test_compound::test_a_saw_that_is_off_is_put_right_by_the_corrections"),
        "tilt_move": Checked(_SAW, "test_compound::test_a_saw_that_is_off_is_put_right_by_the_corrections"),
    },
    "rabbet": {
        "exposed": Checked(_CORNER, "test_rabbet::test_one_pass_of_a_dado_head_leaves_the_rabbet_wanted"),
        "blade_height": Checked(_CORNER, "test_rabbet::test_one_pass_of_a_dado_head_leaves_the_rabbet_wanted"),
        "lip": Checked(_CORNER, "test_rabbet::test_one_pass_of_a_dado_head_leaves_the_rabbet_wanted"),
        "first_fence": Checked(_CORNER, "test_rabbet::test_two_cuts_free_the_waste_and_leave_the_rabbet_wanted"),
        "first_height": Checked(_CORNER, "test_rabbet::test_two_cuts_free_the_waste_and_leave_the_rabbet_wanted"),
        "second_fence": Checked(_CORNER, "test_rabbet::test_two_cuts_free_the_waste_and_leave_the_rabbet_wanted"),
        "second_height": Checked(_CORNER, "test_rabbet::test_two_cuts_free_the_waste_and_leave_the_rabbet_wanted"),
        "exposed_move": Checked(_SAW, "test_rabbet::test_a_dado_head_that_is_off_is_put_right_by_the_corrections"),
        "height_move": Checked(_SAW, "test_rabbet::test_a_dado_head_that_is_off_is_put_right_by_the_corrections"),
        "lip_as_cut": Checked(_SAW, "test_rabbet::test_a_dado_head_that_is_off_is_put_right_by_the_corrections"),
        "first_move": Checked(_SAW, "test_rabbet::test_fences_that_are_off_are_put_right_by_the_corrections"),
        "second_move": Checked(_SAW, "test_rabbet::test_fences_that_are_off_are_put_right_by_the_corrections"),
    },
    "sill": {
        "top_face": Checked(_STANDING, "test_sill::test_the_faces_and_the_fall_are_those_of_the_sill_built"),
        "bottom_face": Checked(_STANDING, "test_sill::test_the_faces_and_the_fall_are_those_of_the_sill_built"),
        "fall": Checked(_STANDING, "test_sill::test_the_faces_and_the_fall_are_those_of_the_sill_built"),
        "back_bevel": Checked(_STANDING, "test_sill::test_the_back_bevel_is_how_far_a_plumb_back_is_from_square"),
        "drip_clear": Checked(_STANDING, "test_sill::test_the_drip_clears_the_wall_by_what_the_card_says"),
        "drip_depth": Checked(_STANDING, "test_sill::test_the_drip_leaves_two_thirds_of_the_thickness"),
        "tilt_move": Checked(_SAW, "test_sill::test_a_saw_that_is_off_is_put_right_by_the_correction"),
        "back_as_cut": Checked(_SAW, "test_sill::test_a_saw_that_is_off_is_put_right_by_the_correction"),
        "bottom_as_cut": Checked(_SAW, "test_sill::test_a_saw_that_is_off_is_put_right_by_the_correction"),
        "drip_move": Checked(_SAW, "test_sill::test_a_drip_that_is_off_is_put_right_by_the_correction"),
    },
    "door-edge": {
        "pin_to_edge": Checked(_SWING, "test_door_edge::test_the_gauge_line_is_where_the_bevel_comes_out"),
        "pin_to_jamb": Checked(_SWING, "test_door_edge::test_the_clearance_is_what_the_sweep_leaves"),
        "near_corner": Checked(_SWING, "test_door_edge::test_the_clearance_is_what_the_sweep_leaves"),
        "far_corner": Checked(_SWING, "test_door_edge::test_the_clearance_is_what_the_sweep_leaves"),
        "clearance": Checked(_SWING, "test_door_edge::test_the_clearance_is_what_the_sweep_leaves"),
        "foul": Checked(_SWING, "test_door_edge::test_the_clearance_is_what_the_sweep_leaves"),
        "taper": Checked(_ICS_LOCK, "test_door_edge::test_a_bevel_named_by_its_taper_comes_out_as_that_taper"),
        "back_width": Checked(_SWING, "test_door_edge::test_the_gauge_line_is_where_the_bevel_comes_out"),
        "least_bevel": Checked(_SWING, "test_door_edge::test_the_least_bevel_just_swings_clear"),
        "tilt_move": Checked(_SAW, "test_door_edge::test_a_tilt_that_is_off_is_put_right_by_the_correction"),
        "bevel_as_cut": Checked(_SAW, "test_door_edge::test_a_tilt_that_is_off_is_put_right_by_the_correction"),
        "clearance_as_cut": Checked(_SWING, "test_door_edge::test_a_tilt_that_is_off_is_put_right_by_the_correction"),
    },
    "hinge-mortise": {
        "depth_moving": Checked(_PLATES, "test_hinge_mortise::test_the_hinge_let_in_leaves_the_gap_wanted"),
        "depth_fixed": Checked(_PLATES, "test_hinge_mortise::test_the_hinge_let_in_leaves_the_gap_wanted"),
        "rout_moving": Checked(_PLATES, "test_hinge_mortise::test_the_hinge_let_in_leaves_the_gap_wanted"),
        "rout_fixed": Checked(_PLATES, "test_hinge_mortise::test_the_hinge_let_in_leaves_the_gap_wanted"),
        "shim_moving": Checked(_PLATES, "test_hinge_mortise::test_the_hinge_let_in_leaves_the_gap_wanted"),
        "shim_fixed": Checked(_PLATES, "test_hinge_mortise::test_the_hinge_let_in_leaves_the_gap_wanted"),
        "template_offset": Checked(_BUSHING, "test_hinge_mortise::test_the_bushing_run_round_the_template_cuts_the_leaf"),
        "template_length": Checked(_BUSHING, "test_hinge_mortise::test_the_bushing_run_round_the_template_cuts_the_leaf"),
        "template_width": Checked(_BUSHING, "test_hinge_mortise::test_the_bushing_run_round_the_template_cuts_the_leaf"),
        "corner_radius": Checked(_BUSHING, "test_hinge_mortise::test_the_bit_leaves_its_radius_in_the_corner"),
        "depth_move": Checked(_PLATES, "test_hinge_mortise::test_a_router_that_is_off_is_put_right_by_the_correction"),
        "depth_again": Checked(_PLATES, "test_hinge_mortise::test_a_router_that_is_off_is_put_right_by_the_correction"),
        "length_move": Checked(_BUSHING, "test_hinge_mortise::test_a_template_that_is_off_is_put_right_by_the_correction"),
        "template_again": Checked(_BUSHING, "test_hinge_mortise::test_a_template_that_is_off_is_put_right_by_the_correction"),
    },
    "rafter": {
        "run": Checked(_MILLER, "test_rafter::test_each_rafter_loses_half_of_the_ridge_square_to_its_plumb_cut"),
        "rise": Checked(_NAVY, "test_rafter::test_griffiths_rafter_of_a_quarter_pitch"),
        "line_length": Checked(_NAVY, "test_rafter::test_a_run_of_a_foot_gives_the_length_on_the_framing_square"),
        "plumb_angle": Checked(_STICK, "test_rafter::test_the_cuts_are_those_of_the_rafter_cut"),
        "seat_angle": Checked(_STICK, "test_rafter::test_the_cuts_are_those_of_the_rafter_cut"),
        "birdsmouth": Checked(_STICK, "test_rafter::test_the_birdsmouth_stands_on_the_plate"),
        "tail": Checked(_STICK, "test_rafter::test_the_lengths_are_those_of_the_rafter_cut"),
        "peak_notch": Checked(_FLUSH, "test_rafter::test_the_notch_is_what_a_flush_cap_takes_out_of_the_rafter"),
        "notch_length": Checked(_FLUSH, "test_rafter::test_the_notch_is_what_a_flush_cap_takes_out_of_the_rafter"),
        "notch_on_rafter": Checked(_FLUSH, "test_rafter::test_the_notch_is_what_a_flush_cap_takes_out_of_the_rafter"),
        "plumb_length": Checked(_STICK, "test_rafter::test_the_cuts_are_those_of_the_rafter_cut"),
        "above_plate": Checked(_STICK, "test_rafter::test_the_birdsmouth_stands_on_the_plate"),
        "left_at_seat": Checked(_STICK, "test_rafter::test_the_birdsmouth_stands_on_the_plate"),
        "board_needed": Checked(_STICK, "test_rafter::test_the_lengths_are_those_of_the_rafter_cut"),
        "saw_move": Checked(_SAW, "test_rafter::test_a_saw_that_is_off_is_put_right_by_the_correction"),
        "open_joint": Checked(_SAW, "test_rafter::test_a_saw_that_is_off_is_put_right_by_the_correction"),
    },
    "dado-stack": {
        "wanted": Checked(_TROUGH, "test_dado_stack::test_the_dado_is_the_piece_and_its_clearance"),
        "widest": Checked(_TROUGH, "test_dado_stack::test_the_passes_cut_the_dado_and_nothing_more"),
        "width": Checked(_SETS, "test_dado_stack::test_an_integer_program_finds_nothing_nearer"),
        "stack": Checked(_SETS, "test_dado_stack::test_no_other_stack_comes_nearer"),
        "second_pass": Checked(_TROUGH, "test_dado_stack::test_the_passes_cut_the_dado_and_nothing_more"),
        "error": Checked(_SETS, "test_dado_stack::test_no_other_stack_comes_nearer"),
        "passes": Checked(_TROUGH, "test_dado_stack::test_the_passes_cut_the_dado_and_nothing_more"),
        "chippers_used": Checked(_SETS, "test_dado_stack::test_no_other_stack_comes_nearer"),
        "shims_used": Checked(_SETS, "test_dado_stack::test_no_other_stack_comes_nearer"),
        "second": Checked(_SETS, "test_dado_stack::test_no_other_stack_comes_nearer"),
        "second_width": Checked(_SETS, "test_dado_stack::test_no_other_stack_comes_nearer"),
        "third": Checked(_SETS, "test_dado_stack::test_no_other_stack_comes_nearer"),
        "third_width": Checked(_SETS, "test_dado_stack::test_no_other_stack_comes_nearer"),
        "fourth": Checked(_SETS, "test_dado_stack::test_no_other_stack_comes_nearer"),
        "fourth_width": Checked(_SETS, "test_dado_stack::test_no_other_stack_comes_nearer"),
        "shim_move": Checked(_SAW, "test_dado_stack::test_a_stack_that_cuts_wider_than_its_sum_is_put_right"),
        "stack_again": Checked(_SAW, "test_dado_stack::test_a_stack_that_cuts_wider_than_its_sum_is_put_right"),
        "width_again": Checked(_SAW, "test_dado_stack::test_a_stack_that_cuts_wider_than_its_sum_is_put_right"),
        "fence_move": Checked(_SAW, "test_dado_stack::test_a_fence_moved_too_far_is_put_right"),
        "second_pass_again": Checked(_SAW, "test_dado_stack::test_a_fence_moved_too_far_is_put_right"),
    },
    "gauge-stack": {
        "reach": Checked(_SETS, "test_gauge_stack::test_no_other_stack_comes_nearer"),
        "stack": Checked(_SETS, "test_gauge_stack::test_no_other_stack_comes_nearer"),
        "error": Checked(_SETS, "test_gauge_stack::test_no_other_stack_comes_nearer"),
        "over": Checked(_SETS, "test_gauge_stack::test_no_other_stack_comes_nearer"),
        "short": Checked(_SETS, "test_gauge_stack::test_no_other_stack_comes_nearer"),
        "second": Checked(_SETS, "test_gauge_stack::test_no_other_stack_comes_nearer"),
        "second_reach": Checked(_SETS, "test_gauge_stack::test_no_other_stack_comes_nearer"),
        "third": Checked(_SETS, "test_gauge_stack::test_no_other_stack_comes_nearer"),
        "third_reach": Checked(_SETS, "test_gauge_stack::test_no_other_stack_comes_nearer"),
        "fourth": Checked(_SETS, "test_gauge_stack::test_no_other_stack_comes_nearer"),
        "fourth_reach": Checked(_SETS, "test_gauge_stack::test_no_other_stack_comes_nearer"),
        "more_reach": Checked(_SETS, "test_gauge_stack::test_an_integer_program_finds_nothing_nearer"),
        "height_move": Checked(_SAW, "test_gauge_stack::test_a_height_felt_wrong_is_put_right"),
        "height_again": Checked(_SAW, "test_gauge_stack::test_a_height_felt_wrong_is_put_right"),
    },
}
