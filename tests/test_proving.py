"""What one line of a setup must be to be taken; `test_declare.py` sees it refused where it stands."""

import pytest
import sympy

from shopcalc.proving import (
    fault_of_card,
    fault_of_formula,
    fault_of_input,
    fault_of_machine,
    fault_of_name,
    fault_of_result,
    fault_of_start,
)
from shopcalc.records import Input, Result
from shopcalc.terms import inches

stock = sympy.Symbol("stock", real=True)


def test_what_is_as_it_should_be_has_no_fault() -> None:
    """The answer is an empty text."""
    declared = Input("stock", "length", "Stock", "1 3/8", "Calipers across it.", most=inches(6))

    assert {""} == {
        fault_of_card("tenon", "at the saw", "M2 2h4"),
        fault_of_machine("table saw"),
        fault_of_name("stock"),
        fault_of_input(declared),
        fault_of_start(declared),
        fault_of_result(Result("half", "Half", stock / 2, "length", "size"), ["stock"]),
        fault_of_formula("half", stock / 2, "length", {"stock": "length"}),
    }


@pytest.mark.parametrize(
    ("start", "most", "fault"),
    [
        ("7", inches(6), "stock cannot start with '7': "),
        ("banana", None, "stock cannot start with 'banana': "),
        ("0", None, "stock cannot start with '0': "),
        ("1", inches(1) + inches(2), "stock: "),
    ],
)
def test_a_start_is_read_as_an_entry_is(start: str, most: sympy.Expr | None, fault: str) -> None:
    """A start that nobody could type, or that is past the input's own limit, is at fault; so is a limit that is no constant."""
    assert fault_of_start(Input("stock", "length", "Stock", start, "Calipers.", most=most)).startswith(fault)


@pytest.mark.parametrize("kind", ["length", "temperature"])
def test_a_start_means_one_thing_in_both_shops(kind: str) -> None:
    """Written for the shop that opens the card, it is the same in both."""
    assert "" == fault_of_start(Input("it", kind, "It", "70", "Read it.", zero=True))
