"""A bench: one card being worked, with everything known of it."""

from shopcalc import exact
from shopcalc.portable.cards.bench import FINEST, division_of, read_and_set

from ...helpers import INCH_SHOP, bench_of


def test_no_bench_is_set_while_an_entry_is_wrong() -> None:
    """With an entry that cannot be read there is no bench, but all entries."""
    found = read_and_set(exact.world(), "groove", {"stock": "x"}, INCH_SHOP)

    assert ([], ["stock"]) == (found["benches"], list(found["entries"]["errors"]))


def test_every_known_value_is_written() -> None:
    """What is known is written, and nothing else is."""
    bench = bench_of("tenon", measured_tenon="3/8")

    assert set(bench["known"]) == set(bench["written"]) == set(bench["kinds"])


def test_results_are_rounded_their_own_way() -> None:
    """A tenon's length is rounded down to the tape, since it must not touch the bottom."""
    bench = bench_of("tenon", end_play="1/64", tape="16")

    assert ("7/16 full", "31/64") == (bench["written"]["tenon_length"]["text"], str(bench["known"]["tenon_length"]))


def test_what_was_measured_is_quoted_as_it_is() -> None:
    """A measured decimal is never rounded to a tick, and a measured fraction stays one."""
    written = bench_of("groove", stock="1.4", groove_width="25/64", tape="8")["written"]

    assert ("1.400", "25/64") == (written["stock"]["text"], written["groove_width"]["text"])


def test_what_was_measured_in_mm_is_quoted_in_thousandths_of_an_inch() -> None:
    """Ten-thousandths that were typed are kept, and none are made up."""
    written = bench_of("slats", run="1219 mm", slat="2.4375", slat_length="16.3333", slat_thickness="2/3")["written"]

    assert ["47.992", "2 7/16", "16.3333", "0.667"] == [written[name]["text"] for name in ("run", "slat", "slat_length", "slat_thickness")]


def test_a_small_play_is_never_quoted_as_none() -> None:
    """A hundredth of a millimetre is four ten-thousandths of an inch."""
    assert ["0.0004", "0.0005"] == [bench_of("tenon", fit=fit)["written"]["fit"]["text"] for fit in ("0.01 mm", "0.00045")]


def test_what_was_measured_in_mm_is_quoted_as_it_is() -> None:
    """Hundredths that were typed are kept, and of a small play what there is; inches are told to the tenth."""
    written = bench_of("tenon", stock="35", groove_width="8.25", fit="0.002 in", kerf="3/32 in", units="mm")["written"]

    assert ("35.0 mm", "8.25 mm", "0.05 mm", "2.4 mm") == tuple(written[name]["text"] for name in ("stock", "groove_width", "fit", "kerf"))


def test_corrections_are_read_off_a_fine_rule() -> None:
    """A correction has the finest division whatever the tape, and a card that asks for one has its own."""
    groove, fractions = bench_of("groove", tape="8"), bench_of("fractions", nearest="16")

    assert FINEST == division_of(groove["about"]["results"]["fence_move"], groove)
    assert (8, 16) == (division_of(groove["about"]["results"]["fence"], groove), division_of(fractions["about"]["results"]["length"], fractions))


def test_pieces_keep_their_own_size() -> None:
    """A shim is no mark of a tape: a fraction is what is exactly one, and in mm nothing thin is lost."""
    written = bench_of("dado-stack", shims="0.008, 1/64, 0.002")["written"]
    metric = bench_of("dado-stack", shims="0.05, 2.54", units="mm")["written"]

    assert ("0.008, 1/64, 0.002", "1/8, 1/8, 1/8, 3/32, 1/16") == (written["shims"]["text"], written["chippers"]["text"])
    assert "1/4, 1/8, 1/8, 1/8, 3/32, 0.002" == written["stack"]["text"]
    assert "0.05 mm, 2.54 mm" == metric["shims"]["text"]


def test_a_drill_is_in_64ths_whatever_the_tape() -> None:
    """A result may keep to a division of its own."""
    screw = bench_of("screw", tape="8")

    assert 64 == division_of(screw["about"]["results"]["pilot_hole"], screw)
    assert "5/64" == screw["written"]["pilot_hole"]["text"]
