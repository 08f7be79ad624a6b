"""Rendering on the server as on the phone."""

import pytest
from py_mini_racer import MiniRacer

from shopcalc import exact, files
from shopcalc.render import ESCAPES, escape, render

from .helpers import phone_answer, run

HOSTILE = [
    "<script>alert(1)</script>",
    "\"><img src=x onerror='alert(1)'>",
    "&lt;b&gt;",
    "' onfocus='alert(1)",
    "{{title}}",
    "{{{title}}}",
    "{{>page}}",
    "</textarea>\u2028",
]
EVERYTHING = "".join(chr(code) for code in range(0x20, 0x250)) + "\u2028\U0001f4cf`=/"


def test_five_characters_are_escaped_alike(phone_brain: MiniRacer) -> None:
    """The phone escapes the same five characters in the same way, and no other."""
    assert escape(EVERYTHING) == run(phone_brain, "Mustache.escape(given[0])", EVERYTHING)
    assert {"&", "<", ">", '"', "'"} == set(ESCAPES) == {one for one in EVERYTHING if escape(one) != one}


@pytest.mark.parametrize("text", HOSTILE)
@pytest.mark.parametrize("name", ["entry", "nearest", "<i>"])
def test_what_was_typed_comes_back_escaped(text: str, name: str, phone_brain: MiniRacer) -> None:
    """A hostile entry, choice or name is text on the page, on the server and on the phone."""
    query = {name: text, text: "1"}
    found = exact.answer("/fractions", query)
    for html in (render(found["template"], found["view"]), phone_answer(phone_brain, "/fractions", query)["body"]):
        assert escape(text) in html
        assert html.replace(escape(text), "").count("<script") == render("page", exact.answer("/fractions", {})["view"]).count("<script")
        assert "<img" not in html and "onfocus='" not in html


def test_every_template_is_used() -> None:
    """No template lies about: each is a page, a part or inside one."""
    texts = files.templates()
    inside = {name for name in texts if any("{{>" + name + "}}" in text for text in texts.values())}

    assert set(texts) == inside | {"page", "list", "shop", "missing", "answer", "sheet", "job", "work", "refused"}


def test_nothing_is_put_in_unescaped() -> None:
    """No template puts a value in without escaping it."""
    assert [] == [name for name, text in files.templates().items() if "{{{" in text or "{{&" in text]


def test_a_name_that_a_view_lacks_is_an_error() -> None:
    """A template that asks for what the view does not have fails, rather than leave a hole."""
    with pytest.raises(Exception, match="title"):
        render("missing", {"home": "/"})


def test_an_unknown_template_is_an_error() -> None:
    """A template that is not there is named."""
    with pytest.raises(KeyError, match="nothing"):
        render("nothing", {})
