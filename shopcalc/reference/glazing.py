"""How much panes move with heat: published coefficients of linear thermal expansion.

Kept in millionths of the length for a degree Fahrenheit, so that a formula shows 40 and not 0.00004; a figure published
for a kelvin is turned exactly, by 5/9. Where a maker's sheet says otherwise, the sheet is right.
"""

from dataclasses import dataclass

import sympy

from shopcalc.terms import number


@dataclass(frozen=True)
class Pane:
    """A material that panes are made of: what it says on the form, its expansion, and where that was read."""

    label: str
    expansion: sympy.Rational  # millionths of the length, for a degree Fahrenheit
    source: str


def per_kelvin(millionths: str) -> sympy.Rational:
    """Millionths for a degree Fahrenheit from millionths for a kelvin."""
    return number(millionths) * number("5/9")


_SHEET_MAKER = "a sheet maker's glazing note, read in a page that quotes it"

PANES = {
    "acrylic": Pane("acrylic sheet", number(40), f"40e-6 /°F: {_SHEET_MAKER}"),
    "acrylic that moves more": Pane("acrylic sheet, grades that move more", number(44), f"some grades 44e-6 /°F: {_SHEET_MAKER}"),
    "polycarbonate": Pane("polycarbonate sheet", number(38), f"38e-6 /°F: {_SHEET_MAKER}"),
    "multiwall": Pane("polycarbonate, multiwall", per_kelvin("65"), "0.065 mm/(m·°C), ASTM D696: a maker's catalogue, read in a page that quotes it"),
    "glass": Pane("glass", per_kelvin("9"), "9e-6 /K, EN 572: a glass maker's data, read in a page that quotes it"),
}
