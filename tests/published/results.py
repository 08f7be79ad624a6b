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
_PACKED = "scipy's integer program over every pattern of cuts, and published instances with their optima, recomputed"
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
_FRAMED = "the frame laid out part by part in exact fractions and measured, recomputed"
_SPECIES = (
    "Wood Handbook, Table 13-5, read in the publication; conifers recomputed from Table 4-3, read in the publication, some shrinkages from memory"
)
_FIR = (
    "Wood Handbook, equation (13-2) and the result of its example, read in the publication, its inputs from memory; "
    "boards dried from green by Table 4-3, recomputed"
)
_AT_REST = "Wood Handbook, Table 4-2, from memory; FPL-RN-0268, constants for degrees Celsius, read in a page that quotes them"
_MEETING = "slats fixed in their middles, laid out in exact fractions, recomputed"
_HEAT = "a pane heated and cooled with numpy and Pint, recomputed; its expansion read in a page that quotes makers and EN 572"
_SHEET = "a maker's rule for 48 in of acrylic, read in a page that gives it; length × difference × expansion recomputed with Pint"
_NUMBERED = "Machinery's Handbook, p. 1777, read in the publication; that wood screws have the same from memory"
_ROOT = "Wood Handbook, chapter 8, read in the publication; NDS, Appendix L, from memory, has a larger one"
_PILOTS = "the NDS rule before 1962 read in its commentary, the drills recomputed; two shop charts, read in a page that gives each"
_DRILLS = "a shop chart, read in a page that gives it"
_HEADS = "sellers' tables of flat heads, read in a page that gives each"
_CONE = "a line turned round its axis with numpy, recomputed; heights of heads read in a page that gives them"
_LAID = "slats laid one by one along the run in exact fractions, and numpy's even spacing, recomputed"
_HUNG = "hinges laid one by one down the edge in exact fractions, and numpy's even spacing, recomputed"
_CUSTOM = (
    _HUNG + "; 5 in and 10 in on the frame, 7 in and 10 or 11 in: read in a page that quotes it; "
    "ICS, Building Trades Pocketbook, read in the publication"
)

CHECKED = {
    "frame": {
        "frame_width": Checked(_FRAMED, "test_frame::test_the_frame_leaves_the_gaps_wanted"),
        "frame_height": Checked(_FRAMED, "test_frame::test_the_frame_leaves_the_gaps_wanted"),
        "stile_length": Checked(_FRAMED, "test_frame::test_stiles_run_through_with_a_horn_at_each_end"),
        "rail_shoulder": Checked(_FRAMED, "test_frame::test_rails_fill_the_room_between_the_stiles"),
        "rail_length": Checked(_FRAMED, "test_frame::test_rails_fill_the_room_between_the_stiles"),
        "bay_height": Checked(_FRAMED, "test_frame::test_all_bays_are_equal_with_the_rails_on_their_marks"),
        "mid_rail_marks": Checked(_FRAMED, "test_frame::test_all_bays_are_equal_with_the_rails_on_their_marks"),
        "panel_width": Checked(_FRAMED, "test_frame::test_panes_stand_short_of_the_groove_all_round"),
        "panel_height": Checked(_FRAMED, "test_frame::test_panes_stand_short_of_the_groove_all_round"),
        "shed_panel_height": Checked(_FRAMED, "test_frame::test_a_shed_pane_hangs_over_the_bottom_rail"),
        "shed_rail_thickness": Checked(_FRAMED, "test_frame::test_a_shed_pane_hangs_over_the_bottom_rail"),
        "notch_width": Checked(_FRAMED, "test_frame::test_a_notched_pane_clears_the_ends_of_a_shed_rail"),
        "notch_height": Checked(_FRAMED, "test_frame::test_a_notched_pane_clears_the_ends_of_a_shed_rail"),
        "groove_found": Checked(_FRAMED, "test_frame::test_a_shed_pane_hangs_over_the_bottom_rail"),
        "parts": Checked(_FRAMED, "test_frame::test_the_parts_make_the_frame_and_nothing_else"),
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
        "parts": Checked(_SLABS, "test_ridge_cap::test_the_parts_are_blanks_for_the_boards_built"),
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
        "wide_as_cut": Checked(_SLABS, "test_ridge_cap::test_a_bevel_that_came_out_otherwise_moves_the_fence"),
        "narrow_as_cut": Checked(_SLABS, "test_ridge_cap::test_a_bevel_that_came_out_otherwise_moves_the_fence"),
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
        "cheek_play_as_cut": Checked(_SAW, "test_tenon::test_the_play_at_the_cheeks_is_what_the_groove_has_left_over"),
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
        "edge_tilt": Checked(_RING, "test_compound::test_edges_that_stand_flat_are_cut_on_edge_at_the_angle_between_face_and_level"),
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
        "pocket_move": Checked(_SAW, "test_rabbet::test_a_dado_head_that_is_off_is_put_right_by_the_corrections"),
        "height_move": Checked(_SAW, "test_rabbet::test_a_dado_head_that_is_off_is_put_right_by_the_corrections"),
        "lip_as_cut": Checked(_SAW, "test_rabbet::test_a_dado_head_that_is_off_is_put_right_by_the_corrections"),
        "first_move": Checked(_SAW, "test_rabbet::test_fences_that_are_off_are_put_right_by_the_corrections"),
        "second_move": Checked(_SAW, "test_rabbet::test_fences_that_are_off_are_put_right_by_the_corrections"),
        "second_pass": Checked(_CORNER, "test_rabbet::test_the_passes_of_a_narrow_head_leave_the_rabbet_wanted"),
        "passes": Checked(_CORNER, "test_rabbet::test_the_passes_of_a_narrow_head_leave_the_rabbet_wanted"),
        "fence_move": Checked(_SAW, "test_rabbet::test_a_last_pass_that_is_off_is_put_right_by_the_correction"),
        "second_pass_again": Checked(_SAW, "test_rabbet::test_a_last_pass_that_is_off_is_put_right_by_the_correction"),
    },
    "sill": {
        "parts": Checked(_STANDING, "test_sill::test_the_part_is_a_blank_that_holds_the_sill_built"),
        "board": Checked(_STANDING, "test_sill::test_the_part_is_a_blank_that_holds_the_sill_built"),
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
        "shim_move": Checked(_PLATES, "test_hinge_mortise::test_a_shim_that_is_off_is_put_right_by_the_correction"),
        "shim_again": Checked(_PLATES, "test_hinge_mortise::test_a_shim_that_is_off_is_put_right_by_the_correction"),
        "length_move": Checked(_BUSHING, "test_hinge_mortise::test_a_template_that_is_off_is_put_right_by_the_correction"),
        "template_again": Checked(_BUSHING, "test_hinge_mortise::test_a_template_that_is_off_is_put_right_by_the_correction"),
    },
    "rafter": {
        "parts": Checked(_STICK, "test_rafter::test_the_part_is_a_board_that_holds_the_rafter_cut"),
        "run": Checked(_MILLER, "test_rafter::test_each_rafter_loses_half_of_the_ridge_square_to_its_plumb_cut"),
        "rise": Checked(_NAVY, "test_rafter::test_griffiths_rafter_of_a_quarter_pitch"),
        "line_length": Checked(_NAVY, "test_rafter::test_a_run_of_a_foot_gives_the_length_on_the_framing_square"),
        "plumb_angle": Checked(_STICK, "test_rafter::test_the_cuts_are_those_of_the_rafter_cut"),
        "seat_angle": Checked(_STICK, "test_rafter::test_the_cuts_are_those_of_the_rafter_cut"),
        "birdsmouth": Checked(_STICK, "test_rafter::test_the_birdsmouth_stands_on_the_plate"),
        "tail": Checked(_STICK, "test_rafter::test_the_lengths_are_those_of_the_rafter_cut"),
        "peak_notch": Checked(_FLUSH, "test_rafter::test_the_notch_is_what_a_flush_cap_takes_out_of_the_rafter"),
        "notch_length": Checked(_FLUSH, "test_rafter::test_the_notch_is_what_a_flush_cap_takes_out_of_the_rafter"),
        "notch_on_edge": Checked(_FLUSH, "test_rafter::test_the_notch_is_what_a_flush_cap_takes_out_of_the_rafter"),
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
        "narrower": Checked(_SETS, "test_dado_stack::test_of_the_narrower_stacks_the_widest_is_told_with_what_it_lacks"),
        "narrower_width": Checked(_SETS, "test_dado_stack::test_of_the_narrower_stacks_the_widest_is_told_with_what_it_lacks"),
        "narrower_pass": Checked(_SETS, "test_dado_stack::test_of_the_narrower_stacks_the_widest_is_told_with_what_it_lacks"),
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
    "wood-movement": {
        "coefficient": Checked(_SPECIES, "test_wood_movement::test_the_worked_example_of_the_wood_handbook"),
        "emc_now": Checked(_AT_REST, "test_wood_movement::test_air_brings_wood_to_the_moisture_of_the_table"),
        "emc_dry": Checked(_AT_REST, "test_wood_movement::test_air_brings_wood_to_the_moisture_of_the_table"),
        "emc_wet": Checked(_AT_REST, "test_wood_movement::test_air_brings_wood_to_the_moisture_of_the_table"),
        "swell": Checked(_FIR, "test_wood_movement::test_the_worked_example_of_the_wood_handbook"),
        "shrink": Checked(_FIR, "test_wood_movement::test_a_board_dried_from_green_moves_as_much"),
        "movement": Checked(_FIR, "test_wood_movement::test_a_board_dried_from_green_moves_as_much"),
        "width_wet": Checked(_FIR, "test_wood_movement::test_the_worked_example_of_the_wood_handbook"),
        "width_dry": Checked(_FIR, "test_wood_movement::test_a_board_dried_from_green_moves_as_much"),
        "gap_at_fitting": Checked(_MEETING, "test_wood_movement::test_slats_fixed_in_their_middles_just_meet_at_the_wettest"),
        "gap_at_driest": Checked(_MEETING, "test_wood_movement::test_slats_fixed_in_their_middles_just_meet_at_the_wettest"),
    },
    "glazing": {
        "grow_width": Checked(_SHEET, "test_glazing::test_the_pane_moves_as_pint_says"),
        "grow_height": Checked(_SHEET, "test_glazing::test_the_pane_moves_as_pint_says"),
        "shrink_width": Checked(_SHEET, "test_glazing::test_the_pane_moves_as_pint_says"),
        "shrink_height": Checked(_SHEET, "test_glazing::test_the_pane_moves_as_pint_says"),
        "movement": Checked(_SHEET, "test_glazing::test_the_pane_moves_as_pint_says"),
        "edge_clearance": Checked(_HEAT, "test_glazing::test_the_pane_has_room_on_every_day_of_the_year"),
        "cut_width": Checked(_HEAT, "test_glazing::test_the_pane_has_room_on_every_day_of_the_year"),
        "cut_height": Checked(_HEAT, "test_glazing::test_the_pane_has_room_on_every_day_of_the_year"),
        "bite_cold": Checked(_HEAT, "test_glazing::test_the_pane_is_held_on_the_coldest_night"),
        "bite_slid": Checked(_HEAT, "test_glazing::test_the_pane_is_held_on_the_coldest_night"),
        "groove_needed": Checked(_HEAT, "test_glazing::test_the_groove_needed_is_found_by_trying_depths"),
        "width_move": Checked(_HEAT, "test_glazing::test_a_pane_that_is_off_is_put_right_or_told"),
        "height_move": Checked(_HEAT, "test_glazing::test_a_pane_that_is_off_is_put_right_or_told"),
        "width_bite": Checked(_HEAT, "test_glazing::test_a_pane_that_is_off_is_put_right_or_told"),
        "height_bite": Checked(_HEAT, "test_glazing::test_a_pane_that_is_off_is_put_right_or_told"),
    },
    "screw": {
        "body": Checked(_NUMBERED, "test_screw::test_the_body_is_the_one_in_machinerys_handbook"),
        "root": Checked(_ROOT, "test_screw::test_the_root_is_two_thirds_of_the_body_published"),
        "pilot_hole": Checked(_PILOTS, "test_screw::test_the_pilot_is_near_that_of_two_shop_charts"),
        "clearance_hole": Checked(_DRILLS, "test_screw::test_the_clearance_drill_is_that_of_a_shop_chart"),
        "countersink": Checked(_HEADS, "test_screw::test_the_countersink_takes_the_largest_head"),
        "countersink_depth": Checked(_CONE, "test_screw::test_the_countersink_is_as_deep_as_the_heads_sold"),
        "gauge_by_shank": Checked(_NUMBERED, "test_screw::test_the_shank_tells_the_gauge"),
        "depth_move": Checked(_CONE, "test_screw::test_a_stop_that_is_off_is_put_right_by_the_correction"),
    },
    "slats": {
        "parts": Checked(_LAID, "test_slats::test_the_parts_and_the_gaps_fill_the_run"),
        "slats": Checked(_LAID, "test_slats::test_the_slats_laid_with_the_gap_come_out_at_the_end"),
        "gaps": Checked(_LAID, "test_slats::test_the_slats_laid_with_the_gap_come_out_at_the_end"),
        "even_gap": Checked(_LAID, "test_slats::test_the_slats_laid_with_the_gap_come_out_at_the_end"),
        "pitch": Checked(_LAID, "test_slats::test_the_slats_laid_with_the_gap_come_out_at_the_end"),
        "spacer": Checked(_LAID, "test_slats::test_the_slats_laid_with_the_gap_come_out_at_the_end"),
        "to_cut": Checked(_LAID, "test_slats::test_the_count_is_the_one_whose_even_gap_comes_nearest"),
        "left_over": Checked(_LAID, "test_slats::test_as_many_as_fit_are_laid_with_the_spacer"),
        "end_share": Checked(_LAID, "test_slats::test_as_many_as_fit_are_laid_with_the_spacer"),
        "end_gap": Checked(_LAID, "test_slats::test_as_many_as_fit_are_laid_with_the_spacer"),
        "evened_gap": Checked(_LAID, "test_slats::test_as_many_as_fit_are_laid_with_the_spacer"),
        "marks": Checked(_LAID, "test_slats::test_every_mark_is_where_the_slat_is_laid"),
        "centres": Checked(_LAID, "test_slats::test_every_mark_is_where_the_slat_is_laid"),
        "gap_one_fewer": Checked(_LAID, "test_slats::test_a_slat_more_or_fewer_is_shared_out_anew"),
        "gap_one_more": Checked(_LAID, "test_slats::test_a_slat_more_or_fewer_is_shared_out_anew"),
        "drift": Checked(_LAID, "test_slats::test_a_block_that_is_out_runs_away_when_it_is_stepped"),
        "creep": Checked(_LAID, "test_slats::test_a_block_that_is_out_runs_away_when_it_is_stepped"),
        "spacer_move": Checked(_LAID, "test_slats::test_a_block_that_is_out_runs_away_when_it_is_stepped"),
    },
    "hinge-layout": {
        "spacing": Checked(_HUNG, "test_hinge_layout::test_the_hinges_are_where_a_walk_down_the_edge_meets_them"),
        "between": Checked(_HUNG, "test_hinge_layout::test_the_hinges_are_where_a_walk_down_the_edge_meets_them"),
        "door_marks": Checked(_CUSTOM, "test_hinge_layout::test_seven_from_the_top_and_ten_or_eleven_from_the_foot"),
        "door_ends": Checked(_CUSTOM, "test_hinge_layout::test_the_lower_butt_stands_level_with_the_bottom_rail"),
        "frame_marks": Checked(_CUSTOM, "test_hinge_layout::test_five_ten_and_equal_on_the_frame"),
        "frame_ends": Checked(_CUSTOM, "test_hinge_layout::test_five_ten_and_equal_on_the_frame"),
        "head_move": Checked(_HUNG, "test_hinge_layout::test_a_top_hinge_that_is_off_is_mended_or_followed"),
        "frame_as_hung": Checked(_HUNG, "test_hinge_layout::test_a_top_hinge_that_is_off_is_mended_or_followed"),
    },
    "boards": {
        "layout": Checked(_PACKED, "test_boards::test_the_card_says_what_the_integer_program_says"),
        "count": Checked(_PACKED, "test_boards::test_the_card_says_what_the_integer_program_says"),
        "cost": Checked(_PACKED, "test_boards::test_the_card_says_what_the_integer_program_says"),
        "waste": Checked(_PACKED, "test_boards::test_the_card_says_what_the_integer_program_says"),
        "waste_percent": Checked(_PACKED, "test_boards::test_the_card_says_what_the_integer_program_says"),
        "fewest": Checked(_PACKED, "test_boards::test_the_card_says_what_the_integer_program_says"),
        "proven": Checked(_PACKED, "test_boards::test_the_card_says_what_the_integer_program_says"),
        "cheapest": Checked(_PACKED, "test_boards::test_the_card_says_what_the_integer_program_says"),
        "left_over": Checked(_PACKED, "test_boards::test_a_part_that_no_board_takes_is_named"),
    },
}
