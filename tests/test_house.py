"""The order of the house: what imports what, and that everything has its test."""

import ast
import re
from pathlib import Path
from typing import Any

import pytest

from shopcalc import files

MODULES = sorted(path.relative_to(files.PACKAGE) for path in files.PACKAGE.rglob("*.py") if not path.name.startswith("__"))
TESTS = Path(__file__).parent

# Which modules of the house a module may import: from the wood to the screen, and never back.
FLOORS = [
    {"portable"},
    {"files", "numbers", "script", "terms", "reference.cautions"},
    {"formulas", "units", "drawing", "reference"},
    {"records", "working"},
    {"proving", "whole"},
    {"declare"},
    {"setups"},
    {"catalogue", "describe"},
    {"render", "exact"},
    {"packing"},
    {"phone"},
    {"web"},
    {"export"},
    {"cli"},
]


def imported(path: Path) -> set[str]:
    """The modules of the house that a module imports, by their names inside it."""
    found = set()
    for node in ast.walk(ast.parse((files.PACKAGE / path).read_text("utf-8"))):
        # a relative one would go past this
        assert not (isinstance(node, ast.ImportFrom) and node.level), f"{path}: name the module from shopcalc on"
        if isinstance(node, ast.ImportFrom) and node.module == "shopcalc":
            found |= {name.name for name in node.names if not name.name.startswith("__")}
        elif isinstance(node, ast.ImportFrom) and str(node.module).startswith("shopcalc."):
            found.add(str(node.module).removeprefix("shopcalc."))
        elif isinstance(node, ast.Import):
            found |= {name.name.removeprefix("shopcalc.") for name in node.names if name.name.startswith("shopcalc.")}
    return found


def floor(name: str) -> int:
    """The floor on which a module stands."""
    return next(place for place, names in enumerate(FLOORS) if name in names or name.split(".")[0] in names)


@pytest.mark.parametrize("path", MODULES, ids=str)
def test_imports_run_one_way(path: Path) -> None:
    """A module imports only from floors below its own; portable modules import one another."""
    name = str(path.with_suffix("")).replace("/", ".")
    own = floor(name)
    typed_only = {"declare"} if name in ("records", "whole") else set()

    # a setup may import another to include its card
    beside = {each for each in imported(path) if name.startswith("setups.") and each.startswith("setups.")}

    assert set() == {each for each in imported(path) - typed_only - beside if floor(each) > own or (floor(each) == own and own > 0)}


@pytest.mark.parametrize("path", [path for path in MODULES if path.parts[0] == "portable"], ids=str)
def test_portable_code_imports_nothing_else(path: Path) -> None:
    """Portable modules import portable modules and nothing from Python's library either."""
    nodes = [node for node in ast.walk(ast.parse((files.PACKAGE / path).read_text("utf-8"))) if isinstance(node, (ast.Import, ast.ImportFrom))]

    assert [] == [
        ast.unparse(node) for node in nodes if not isinstance(node, ast.ImportFrom) or not str(node.module).startswith("shopcalc.portable.")
    ]


@pytest.mark.parametrize("path", [path for path in MODULES if path.parts[0] == "setups"], ids=str)
def test_setups_know_only_the_vocabulary(path: Path) -> None:
    """A setup is written with declarations, terms, pictures, tables and setups that it includes, and with nothing of the web."""
    rooms = ("reference.", "setups.")

    assert set() == {each for each in imported(path) if each not in ("declare", "terms", "drawing", "records") and not each.startswith(rooms)}


@pytest.mark.parametrize("path", [path for path in MODULES if path.name not in ("web.py", "cli.py")], ids=str)
def test_only_the_web_knows_flask(path: Path) -> None:
    """Flask, click and waitress are the business of the outermost modules alone."""
    text = (files.PACKAGE / path).read_text("utf-8")

    assert [] == [word for word in ("import flask", "from flask", "import click", "import waitress", "from waitress") if word in text]


def test_there_is_one_unit_registry() -> None:
    """The registry of units is made in one place."""
    assert ["units.py"] == [str(path) for path in MODULES if ".UnitRegistry(" in (files.PACKAGE / path).read_text("utf-8")]


def test_code_is_made_from_text_in_one_place() -> None:
    """Only the printer of formulas compiles text, and its text is its own."""
    calls = {
        str(path)
        for path in MODULES
        for node in ast.walk(ast.parse((files.PACKAGE / path).read_text("utf-8")))
        if isinstance(node, ast.Call) and ast.unparse(node.func) in ("eval", "exec", "compile", "sympy.parse_expr", "parse_expr")
    }

    assert {"formulas.py"} == calls


@pytest.mark.parametrize("path", MODULES, ids=str)
def test_every_module_has_its_tests(path: Path) -> None:
    """Beside every module stands a test file of its name."""
    assert (TESTS / path.parent / f"test_{path.stem}.py").is_file()


@pytest.mark.parametrize("path", sorted(path.relative_to(TESTS) for path in TESTS.rglob("test_*.py")), ids=str)
def test_every_test_says_what_it_shows(path: Path) -> None:
    """Each test has a docstring that ends as a sentence does."""
    tests = [
        node for node in ast.walk(ast.parse((TESTS / path).read_text("utf-8"))) if isinstance(node, ast.FunctionDef) and node.name.startswith("test_")
    ]

    assert [] != tests
    assert [] == [node.name for node in tests if not (ast.get_docstring(node) or "").endswith(".")]


def developers() -> str:
    """What the project tells its developers."""
    return (files.PACKAGE.parent / "DEVELOPERS.md").read_text("utf-8")


# The rooms of portable code, from numbers to pages.
ROOMS = ["arithmetic", "measures", "wood", "cards", "jobs", "answer"]


@pytest.mark.parametrize("path", [path for path in MODULES if path.parts[0] == "portable"], ids=str)
def test_a_room_imports_only_from_rooms_before_it(path: Path) -> None:
    """Whoever reads a card need not know of jobs, nor of cards whoever lays boards."""
    own = ROOMS.index(path.with_suffix("").parts[1])

    assert [] == [each for each in imported(path) if ROOMS.index(each.split(".")[1]) > own]


def test_every_portable_module_has_its_place_in_the_map() -> None:
    """The table of rooms names each once, in its room."""
    table = developers().split("### The rooms of `portable/`")[1].split("###")[0]
    rows = dict(re.findall(r"^\| `?([\w ]+?)/?`? \| (.+) \|$", table, re.MULTILINE))
    rows["answer"] = rows.pop("over them all")
    del rows["room"]

    assert list(rows) == ROOMS
    for room, named in rows.items():
        files_of_room = [path.stem for path in MODULES if path.parts[:2] in (("portable", room), ("portable", f"{room}.py"))]
        assert sorted(re.findall(r"`(\w+)`", named)) == sorted(files_of_room)


def test_every_script_of_ours_has_its_place_in_the_table() -> None:
    """So has each of those that a browser runs."""
    scripts = developers().split("## In the browser")[1].split("##")[0]

    assert {path.name for path in files.folder("static").glob("*.js")} == set(re.findall(r"`(\w+\.js)`", scripts))


def test_the_setup_that_developers_are_shown_is_whole() -> None:
    """The page in the guide is declared as it stands there, and nothing is missing from it."""
    shown = developers().split("```python\n")[1].split("```")[0]
    names: dict[str, Any] = {}
    exec(compile(shown, "DEVELOPERS.md", "exec"), names)

    assert "score-cut" == names["setup"].finish().slug
