"""What the phone is sent."""

import base64
import hashlib
import re
import shutil
from pathlib import Path
from typing import Any

import pytest
from flask.testing import FlaskClient
from py_mini_racer import MiniRacer

from shopcalc import __version__, exact, files, phone
from shopcalc.catalogue import setups
from shopcalc.packing import setups_script

from .helpers import fold, phone_answer, phone_respond, run

LINK = re.compile(r'(?:href|src)="(/[^"{]*)"')
OWN = sorted(path.name for path in files.folder("static").glob("*.js"))


def addresses() -> set[str]:
    """The addresses that the templates load, without those a person follows."""
    tags = [tag for text in files.templates().values() for tag in re.findall(r"<(?:link|script|img)[^>]*>", text)]
    return {address for tag in tags for address in LINK.findall(tag)}


def test_every_file_a_page_loads_is_kept() -> None:
    """Whatever the templates and the page's script load, the worker keeps, but for the icon that is asked for when the app is installed.

    The style sheet stands in its pages.
    """
    assert set(phone.KEPT) == (addresses() | loaded()) - {"/static/icons/icon-192.png", "/worker.js", "/static/style.css"}


def loaded() -> set[str]:
    """The addresses that the page's scripts load."""
    texts = "".join(files.static_text(name).replace("'./", "'/static/") for name in OWN if name not in ("worker.js", "brain.js", "numbers.js"))
    # the drawer of codes is fetched when a code is asked for, on a desk
    return set(re.findall(r"'(/[\w./-]+)'", texts)) - {"/job", "/shop", *phone.KEPT_LATER}


@pytest.mark.parametrize("address", phone.KEPT)
def test_every_kept_file_is_served(address: str, client: FlaskClient) -> None:
    """Whatever the worker keeps, the server serves: one file missing and nothing would be kept."""
    response = client.get(address)

    assert (200, True) == (response.status_code, len(response.data) > 0)


def test_what_is_kept_is_what_is_served(client: FlaskClient) -> None:
    """The worker's sum is over the files as they come from the server: of another version none is kept."""
    assert {path: phone.kept_bytes(path) for path in phone.KEPT} == {path: client.get(path).data for path in phone.KEPT}
    assert phone.kept_sum() == hashlib.sha256(b"".join(client.get(path).data for path in phone.KEPT)).hexdigest()[:32]


def test_scripts_that_scripts_load_are_kept() -> None:
    """Addresses inside the page's script are kept or answered by the worker too."""
    assert set() == loaded() - {*phone.KEPT, "/worker.js"}


@pytest.mark.parametrize("name", OWN)
def test_no_script_of_ours_makes_code_from_text(name: str) -> None:
    """Nothing of our own needs the policy to allow eval."""
    assert [] == re.findall(r"\beval\(|new Function|setTimeout\(['\"`]", files.static_text(name))


def test_nothing_printed_makes_code_from_text() -> None:
    """Neither the compiled code nor the formulas use eval."""
    printed = phone.portable_script() + setups_script(setups())

    assert [] == re.findall(r"\beval\(|new Function", printed)


def test_the_worker_is_the_brain_with_its_wiring() -> None:
    """The worker's script has its build and what it keeps, and every card's words."""
    script = phone.worker()

    assert script.startswith(files.static_text(phone.MUSTACHE))
    assert [] == [each for each in (phone.build(), *phone.KEPT, *(setup.job for setup in setups().values())) if each not in script]


WORKER = """
    const heard = {}, kept = {}, caches = {
        open: async name => ({ addAll: async all => { kept[name] = all; } }), keys: async () => Object.keys(kept),
        delete: async name => delete kept[name], match: async path => 'kept ' + path,
    };
    class Request { constructor(path) { this.url = path; } }
    class Response { constructor(body, more) { Object.assign(this, { body, ...more }); } }
    class URL {
        constructor(text) {
            const [before, after = ''] = text.split('?');
            this.origin = before.split('/').slice(0, 3).join('/');
            this.pathname = before.slice(this.origin.length);
            this.searchParams = after ? after.split('&').map(part => part.split('=').map(decodeURIComponent)) : [];
        }
    }
    const fetch = async request => 'fetched ' + request.url;
    const self = { location: { origin: 'https://shop' }, addEventListener: (name, run) => { heard[name] = run; }, skipWaiting() {},
    clients: { claim() {} } };
    function ask(url, method = 'GET', target) {
        let found = 'left alone';
        heard.fetch({ request: { url, method, headers: { get: () => target || null } }, respondWith: answer => { found = answer; } });
        return found;
    }
"""


@pytest.fixture(scope="module")
def worker() -> Any:
    """The whole worker, in a make-believe browser."""
    with MiniRacer() as engine:
        engine.eval(WORKER + phone.worker())
        yield engine


def test_the_worker_answers_a_card(worker: MiniRacer) -> None:
    """A card is answered in the worker."""
    found = run(worker, "ask('https://shop/groove?stock=2&groove_width=1%2F2')")

    assert (200, True) == (found["status"], "three quarters" in found["body"])


def test_a_page_of_the_worker_holds_its_style_sheet_and_may_have_no_other(worker: MiniRacer) -> None:
    """The policy names the sheet in the page by its hash; all else is as the server's policy has it."""
    found = run(worker, "ask('https://shop/groove')")
    [style] = re.findall(r"<style>(.*?)</style>", found["body"], re.DOTALL)
    digest = base64.b64encode(hashlib.sha256(style.encode()).digest()).decode()

    assert phone.POLICY.replace("style-src 'self'", f"style-src 'sha256-{digest}'") == found["headers"]["Content-Security-Policy"]
    assert "style.css" not in found["body"]


def test_the_worker_answers_a_part(worker: MiniRacer) -> None:
    """The target in the request says which part of the card is wanted."""
    assert "<!doctype html>" not in run(worker, "ask('https://shop/groove', 'GET', 'answer')")["body"]
    assert "<!doctype html>" in run(worker, "ask('https://shop/groove')")["body"]


@pytest.mark.parametrize("name", ["constructor", "toString", "__proto__", "hasOwnProperty"])
def test_the_worker_answers_whatever_names_a_link_has(name: str, worker: MiniRacer) -> None:
    """A name that every JavaScript object has is only a name the card does not know."""
    found = run(worker, "ask('https://shop/groove?' + given[0] + '=1')", name)

    assert (200, True) == (found["status"], f"\u201c{name}\u201d" in found["body"])


@pytest.mark.parametrize(("url", "method"), [("https://elsewhere/groove", "GET"), ("https://shop/groove", "POST")])
def test_the_worker_leaves_the_rest_alone(url: str, method: str, worker: MiniRacer) -> None:
    """Other sites and other methods are none of its business."""
    assert "left alone" == run(worker, "ask(...given)", url, method)


def test_the_first_of_two_texts_counts(worker: MiniRacer, client: FlaskClient) -> None:
    """Of a name given twice both sides take the first."""
    found = run(worker, "ask('https://shop/groove?stock=2&stock=3', 'GET', 'rest')")["body"]

    assert 'value="2"' in found
    assert fold(client.get("/groove?stock=2&stock=3", headers={"HX-Target": "rest"}).text) == fold(found)


@pytest.mark.parametrize("path", ["/", "/groove", "/tenon/", "/nothing", "/groove.json", "/nothing.json"])
def test_an_address_means_the_same_on_the_phone(path: str, phone_brain: MiniRacer, client: FlaskClient) -> None:
    """Status and kind of every address are the server's."""
    response = client.get(path)
    found = phone_answer(phone_brain, path, {})

    assert (response.status_code, response.mimetype) == (found["status"], found["type"].split(";")[0])


def test_an_answer_needs_no_browser(phone_brain: MiniRacer) -> None:
    """The phone's respond is the server's, field for field."""
    assert exact.answer("/", {}) == phone_respond(phone_brain, "/", {})


@pytest.fixture
def copied(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The static files and templates, copied to where they may be changed."""
    for name in ("static", "templates"):
        shutil.copytree(files.folder(name), tmp_path / name)
    monkeypatch.setattr(files, "folder", lambda name: tmp_path / name)
    return tmp_path


@pytest.mark.parametrize("name", ["style.css", "app.js", "pad.js", "worker.js", "brain.js", "icons/icon.svg", "vendor/htmx-2.0.11.min.js"])
def test_the_build_changes_with_every_file(name: str, copied: Path) -> None:
    """A changed file is a new build."""
    before = phone.build()
    (copied / "static" / name).write_bytes((copied / "static" / name).read_bytes() + b" ")

    assert before != phone.build.__wrapped__()


def test_the_build_of_the_same_files_is_the_same(copied: Path) -> None:
    """Wherever the files lie, and however often it is made."""
    assert phone.build() == phone.build.__wrapped__()


@pytest.mark.parametrize("name", ["page", "answer", "tape"])
def test_the_build_changes_with_every_template(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """A changed template is a new build."""
    changed = {**files.templates(), name: files.templates()[name] + " "}
    before = phone.build()
    monkeypatch.setattr(files, "templates", lambda: changed)

    assert before != phone.build.__wrapped__()


def test_the_build_changes_with_the_manifest(monkeypatch: pytest.MonkeyPatch) -> None:
    """The phone keeps the manifest too, so a changed one is a new build."""
    before = phone.build()
    monkeypatch.setitem(phone.MANIFEST, "short_name", "another")

    assert before != phone.build.__wrapped__()


def test_the_build_names_its_version() -> None:
    """A build is the version and a mark of its content."""
    assert re.fullmatch(re.escape(__version__) + "-[0-9a-f]{12}", phone.build())
