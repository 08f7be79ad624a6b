"""Where the templates and static files are."""

import pytest

from shopcalc import files


def test_both_folders_are_found() -> None:
    """Templates and static files are beside the package or inside it."""
    assert (True, True) == (files.folder("templates").is_dir(), (files.folder("static") / "worker.js").is_file())


def test_a_lost_folder_is_named() -> None:
    """An installation that has lost a folder says which."""
    with pytest.raises(FileNotFoundError, match="'nowhere' is neither in the package nor beside it"):
        files.folder("nowhere")


def test_templates_are_known_by_their_names() -> None:
    """Every template is read under the name of its file."""
    assert {"page", "answer", "sheet", "list", "missing"} <= set(files.templates())
    assert files.templates()["page"].startswith("{{>head}}")


def test_static_text() -> None:
    """A static file is read as text."""
    assert files.static_text("numbers.js").startswith("//")


def test_every_kind_of_static_file_has_its_name() -> None:
    """None is sent as bytes that nobody knows."""
    kinds = {path.suffix for path in files.folder("static").rglob("*") if path.is_file()}

    assert set() == kinds - set(files.MEDIA_TYPES)
