"""How these chapters ask a card: entries in, plain numbers out."""

from fractions import Fraction
from typing import Any

from shopcalc.exact import answer


def ask(slug: str, **entries: object) -> dict[str, Any]:
    """Ask for the card's data; a fraction is typed as one. Fails when the card refuses an entry."""
    found = answer(f"/{slug}.json", {name: typed(entry) for name, entry in entries.items()})
    assert found["status"] == 200, found["data"]
    return dict(found["data"])


def typed(entry: object) -> str:
    """Write an entry as a woodworker would type it."""
    if isinstance(entry, Fraction) and entry.denominator > 1:
        return f"{entry.numerator}/{entry.denominator}"
    return str(entry)


def results_of(slug: str, **entries: object) -> dict[str, Any]:
    """Ask for the value of every result that the card gives."""
    return {name: result["value"] for name, result in ask(slug, **entries)["results"].items()}


def texts_of(slug: str, **entries: object) -> dict[str, str]:
    """Ask for the text of every result that the card gives: the fraction on the tape, with full or scant."""
    return {name: result["text"] for name, result in ask(slug, **entries)["results"].items()}
