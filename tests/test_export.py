"""The app as files for a static host."""

import re
from pathlib import Path

import pytest
from flask.testing import FlaskClient

from shopcalc import phone
from shopcalc.catalogue import setups
from shopcalc.export import NO_SCRIPTS, write_files

from .helpers import fold


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The app, written out."""
    made = tmp_path_factory.mktemp("out") / "deep" / "folder"
    write_files(made)
    return made


def test_every_card_is_a_folder(folder: Path) -> None:
    """Each card, the shop and the job can be opened by their addresses on any static host."""
    assert {"", "job", "shop", *setups()} == {str(path.parent.relative_to(folder)).replace(".", "") for path in folder.glob("**/index.html")}


@pytest.mark.parametrize("address", phone.KEPT)
def test_every_kept_file_is_written(address: str, folder: Path, client: FlaskClient) -> None:
    """The worker finds every file that it keeps, the same as the server gives."""
    assert client.get(address).data == (folder / address.lstrip("/")).read_bytes()


def test_the_worker_is_written(folder: Path) -> None:
    """The worker is the one that the server gives."""
    assert phone.worker() == (folder / "worker.js").read_text("utf-8")


@pytest.mark.parametrize("slug", ["", "shop", *setups()])
def test_a_page_is_the_servers_with_the_policy_inside(slug: str, folder: Path, client: FlaskClient) -> None:
    """A static host may send no headers, so the policy stands in the page, without what may not stand there."""
    page = (folder / slug / "index.html").read_text("utf-8")
    policies = re.findall(r'<meta http-equiv="Content-Security-Policy" content="([^"]*)">', page)
    told = f"{NO_SCRIPTS}\n" if slug in ("shop", *setups()) else ""
    added = f'<meta name="shopcalc-static" content="yes">\n<meta http-equiv="Content-Security-Policy" content="{policies[0]}">\n'
    without = page.replace(added, "").replace(told, "")

    assert NO_SCRIPTS not in without
    assert (slug == "") == (told == "")
    assert [phone.POLICY.replace("; frame-ancestors 'none'", "")] == policies
    assert fold(client.get(f"/{slug}").text) == fold(without)


def test_a_missing_page_is_written(folder: Path) -> None:
    """A host that looks for 404.html finds one."""
    assert "There is no card at this address." in (folder / "404.html").read_text("utf-8")


def test_files_are_counted(folder: Path) -> None:
    """Writing again into the same folder gives as many files."""
    assert write_files(folder) == sum(path.is_file() for path in folder.rglob("*"))
