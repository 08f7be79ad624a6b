"""Results as a card shows them."""

from shopcalc.portable.cards.results import show_value

from ...helpers import bench_of


def test_a_setting_is_a_stacked_fraction() -> None:
    """A length is shown as whole, top and under, with decimals and millimetres beside it."""
    shown = show_value("jig_to_blade", "Jig", bench_of("tenon", stock="2 1/2", fit="0"))

    assert ("1", "7", "16", True, True) == tuple(shown[name] for name in ("whole", "top", "under", "has_whole", "has_fraction"))
    assert ("1.438 in \u00b7 36.5 mm", "", False) == (shown["small"], shown["plain"], shown["leans"])


def test_what_rounding_did_is_said() -> None:
    """A number beside its mark is full or scant by an amount."""
    shown = show_value("fence", "Fence", bench_of("groove", stock="1.4", groove_width="3/8"))

    assert ("full", True, "0.013", "1/2 in full") == (shown["lean"], shown["leans"], shown["amount"], shown["text"])


def test_an_angle_is_not_stacked() -> None:
    """An angle stands as it is, with nothing small beside it."""
    shown = show_value("edge_bevel", "Bevel", bench_of("ridge-cap"))

    assert (False, "30\u00b0", "", False) == (shown["stacked"], shown["plain"], shown["small"], shown["has_small"])


def test_a_metric_shop_sees_millimetres_first() -> None:
    """In a metric shop the number is in millimetres and the inches are small."""
    shown = show_value("fence", "Fence", bench_of("groove", units="mm", stock="36", groove_width="9", groove_depth="12", cutter="6"))

    assert (False, "13.5 mm", "0.531 in") == (shown["stacked"], shown["plain"], shown["small"])


def test_a_metric_shop_sees_the_hundredths_that_a_tenth_leaves_out() -> None:
    """Half of a play of a tenth is a setting of hundredths: they stand under the number, as full and scant do beside a fraction."""
    shown = show_value("shoulder_height", "Shoulder", bench_of("tenon", units="mm", stock="35", groove_width="8", fit="0.1"))

    assert ("13.6 mm", "13.55 mm \u00b7 0.533 in") == (shown["plain"], shown["small"])


def test_pieces_stand_in_one_line() -> None:
    """What is picked up is named piece by piece in one line that may break; marks are a list to be read from the top down."""
    pieces = show_value("stack", "Stack", bench_of("dado-stack"))
    marks = show_value("mid_rail_marks", "Marks", bench_of("frame", mid_rails="2"))

    assert (True, False, [], "1/4, 1/8, 1/8, 1/8, 3/32, 0.004") == tuple(pieces[name] for name in ("pieces", "is_row", "marks", "plain"))
    assert (False, True) == (marks["pieces"], marks["is_row"])
