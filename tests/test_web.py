"""The Flask app."""

import gzip
import json
import mimetypes

import pytest
from flask.testing import FlaskClient

from shopcalc import files, web
from shopcalc.catalogue import setups
from shopcalc.render import escape


@pytest.mark.parametrize(
    ("address", "status", "kind"),
    [
        ("/", 200, "text/html"), ("/tenon", 200, "text/html"), ("/tenon?stock=2", 200, "text/html"), ("/tenon?stock=x", 422, "text/html"),
        ("/nothing", 404, "text/html"), ("/tenon/nothing", 404, "text/html"), ("/tenon.json", 200, "application/json"),
        ("/tenon.json?stock=x", 422, "application/json"),
        ("/nothing.json", 404, "application/json"), ("/worker.js", 200, "text/javascript"),
        ("/manifest.webmanifest", 200, "application/manifest+json"),
        ("/static/style.css", 200, "text/css"), ("/static/nothing.css", 404, "text/html"),
        (f"/static/{300 * 'a'}.css", 404, "text/html"), ("/static/../pyproject.toml", 404, "text/html"),
        ("/static/%2e%2e/pyproject.toml", 404, "text/html"),
    ],
)  # fmt: skip
def test_addresses(address: str, status: int, kind: str, client: FlaskClient) -> None:
    """Every address has its status and its kind."""
    response = client.get(address)

    assert (status, kind) == (response.status_code, response.mimetype)


@pytest.mark.parametrize("slug", setups())
def test_every_card_is_served(slug: str, client: FlaskClient) -> None:
    """Every setup has its page, with its title."""
    assert f"<h1>{escape(setups()[slug].title)}</h1>" in client.get(f"/{slug}").text


def test_a_card_as_json(client: FlaskClient) -> None:
    """A card as data has the names and values of its setup."""
    data = client.get("/groove.json?groove_width=5/16").get_json()

    assert ("groove", "Centred groove") == (data["setup"], data["title"])
    assert {"value": 0.3125, "text": "5/16"} == data["inputs"]["groove_width"]
    assert {"value": 0.53125, "text": "17/32", "kind": "length", "decimal": 0.531, "mm": 13.5} == data["results"]["fence"]
    assert {
        "level": "caution",
        "name": "narrow_groove",
        "text": "The groove is narrower than a quarter of stock 1 3/8 in thick: its tenon is weak.",
    } == data["checks"][0]
    assert "Set the cutter 1/2 in above the table." in data["steps"]


def test_errors_as_json(client: FlaskClient) -> None:
    """Wrong input is told by name."""
    assert {"errors": {"stock": "A fraction cannot be over zero.", "colour": "groove has no input of this name."}} == client.get(
        "/groove.json?stock=1/0&colour=red"
    ).get_json()


def test_json_has_no_number_that_json_lacks(client: FlaskClient) -> None:
    """No NaN or Infinity is ever sent."""

    def refuse(name: str) -> None:
        raise AssertionError(name)

    for address in ("/angle.json?angle=0", "/angle.json?angle=90", "/ridge-cap.json?pitch_left=90&pitch_right=90"):
        assert "results" in json.loads(client.get(address).text, parse_constant=refuse)


@pytest.mark.parametrize(
    ("target", "begins"), [("answer", '<div class="readout"'), ("sheet", "<"), ("", "<!doctype html>"), ("other", "<!doctype html>")]
)
def test_parts_by_target(target: str, begins: str, client: FlaskClient) -> None:
    """A part is asked for by the element it will fill; anything else gets the page."""
    text = client.get("/tenon", headers={"HX-Target": target}).text.strip()

    assert text.startswith(begins)
    assert ("<html" in text) == (target not in ("answer", "sheet"))


def test_the_sheet_renews_notes_of_the_form(client: FlaskClient) -> None:
    """With the sheet come the notes beside the entries, each for its place."""
    text = client.get("/groove?stock=2", headers={"HX-Target": "sheet"}).text

    assert 'id="note-stock" hx-swap-oob="true">2.000\u00a0in' in text


@pytest.mark.parametrize(
    "address", ["/", "/tenon", "/tenon.json", "/nothing", "/worker.js", "/static/style.css", "/static/nothing", "/manifest.webmanifest"]
)
def test_the_policy_is_on_every_answer(address: str, client: FlaskClient) -> None:
    """Every answer forbids inline scripts and code from text, and is not to be guessed at."""
    headers = client.get(address).headers
    policy = headers["Content-Security-Policy"]

    assert ("default-src 'none'", False) == (policy.split(";")[0], "unsafe" in policy)
    assert ("nosniff", "no-referrer") == (headers["X-Content-Type-Options"], headers["Referrer-Policy"])


def test_parts_are_not_confused_in_a_cache(client: FlaskClient) -> None:
    """An answer says that it depends on the target, and asks to be checked before it is used again."""
    headers = client.get("/tenon").headers

    assert ("HX-Target, Accept-Encoding", "no-cache") == (headers["Vary"], headers["Cache-Control"])


@pytest.mark.parametrize(
    "address", ["/", "/tenon", "/tenon?stock=x", "/tenon.json", "/worker.js", "/static/style.css", "/static/vendor/htmx-2.0.11.min.js"]
)
def test_an_answer_is_packed_for_whoever_can_unpack_it(address: str, client: FlaskClient) -> None:
    """It is the same answer, and smaller; who does not ask gets it as it is."""
    plain, packed = client.get(address), client.get(address, headers={"Accept-Encoding": "br, gzip"})

    assert (None, "gzip") == (plain.headers.get("Content-Encoding"), packed.headers["Content-Encoding"])
    assert plain.data == gzip.decompress(packed.data)
    assert len(packed.data) == packed.content_length < len(plain.data)


def test_a_refusal_to_unpack_is_heard(client: FlaskClient) -> None:
    """Whoever names gzip as what it cannot read is not sent it."""
    assert "Content-Encoding" not in client.get("/tenon", headers={"Accept-Encoding": "gzip;q=0"}).headers


@pytest.mark.parametrize("slug", ["", "shop", *setups()])
def test_pages_keep_to_the_policy(slug: str, client: FlaskClient) -> None:
    """No page has a style or a handler in its markup, which the policy would forbid."""
    text = client.get(f"/{slug}").text

    assert [] == [word for word in (" style=", " onclick=", " onload=", " oninput=", "<style", "javascript:", "hx-on", "hx-vals") if word in text]
    assert text.count("<script") == text.count("<script src=")


def test_nothing_is_remembered(client: FlaskClient) -> None:
    """No cookie is set, and the page is the same for the next visitor."""
    first = client.get("/tenon?stock=2")
    client.get("/tenon?stock=3")

    assert (None, first.text) == (first.headers.get("Set-Cookie"), client.get("/tenon?stock=2").text)


def test_only_reading_is_offered(client: FlaskClient) -> None:
    """Only a job is posted, which leaves nothing behind; all else is read."""
    rules = {(rule.rule, method) for rule in client.application.url_map.iter_rules() for method in rule.methods or ()}

    assert {"GET", "HEAD", "OPTIONS", "POST"} == {method for _, method in rules}
    assert {"/job", "/job<any('.json', '.csv'):kind>"} == {rule for rule, method in rules if method == "POST"}
    assert [405, 405, 200] == [client.post("/tenon").status_code, client.delete("/tenon").status_code, client.head("/tenon").status_code]


def test_icons_of_the_manifest_are_served(client: FlaskClient) -> None:
    """Every icon that the manifest names is there."""
    icons = client.get("/manifest.webmanifest").get_json(force=True)["icons"]

    assert [200] * len(icons) == [client.get(icon["src"]).status_code for icon in icons]


def test_long_and_odd_queries_are_answered(client: FlaskClient) -> None:
    """A query of thousands of characters or of broken bytes is answered as any other."""
    assert [422, 422, 422] == [client.get(f"/tenon?stock={text}").status_code for text in ("1" * 4000, "%ff%fe", "%00")]


@pytest.mark.parametrize(("target", "part"), [("answer", "answer"), ("sheet", "sheet"), ("", "page")])
def test_an_answer_says_which_part_it_is(target: str, part: str, client: FlaskClient) -> None:
    """The page can tell a part that was asked for from another."""
    assert part == client.get("/tenon", headers={"HX-Target": target}).headers["X-Part"]


def test_data_name_an_error_as_it_was_typed(client: FlaskClient) -> None:
    """No mark of ours stands before the name."""
    assert {"errors": {"Stock": "tenon has no input of this name."}} == client.get("/tenon.json?Stock=1").get_json()


def test_a_name_given_twice_is_refused_as_data_and_not_on_a_page(client: FlaskClient) -> None:
    """A slip in a script must not pass; a page takes the first text and shows it."""
    refused = client.get("/tenon.json?stock=1&fit=0&stock=2")

    assert (422, {"errors": {"stock": "This is given twice."}}) == (refused.status_code, refused.get_json())
    assert client.get("/tenon?stock=1").text == client.get("/tenon?stock=1&stock=2").text


def test_a_job_may_begin_with_a_byte_order_mark(client: FlaskClient) -> None:
    """Some editors write one before everything else; a browser's worker never sees it."""
    job = files.static_text("boathouse.json")
    plain, marked = (client.post("/job.json", data=(mark + job).encode()) for mark in ("", "\ufeff"))

    assert (200, plain.get_json()) == (marked.status_code, marked.get_json())


@pytest.mark.parametrize(
    ("address", "kind"),
    [("/static/vendor/htmx-2.0.11.min.js", "text/javascript"), ("/static/vendor/uqr-0.1.2.mjs", "text/javascript"), ("/static/style.css", "text/css"),
    ("/static/icons/icon.svg", "image/svg+xml"), ("/static/icons/icon-192.png", "image/png"), ("/static/boathouse.json", "application/json")],
)  # fmt: skip
def test_a_file_is_called_what_it_is_whatever_the_machine_calls_it(
    address: str, kind: str, client: FlaskClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Some systems have it on record that scripts are plain text, and a browser takes none that is called so."""
    monkeypatch.setattr(mimetypes, "guess_type", lambda *_: ("text/plain", None))

    assert kind == client.get(address).mimetype


@pytest.mark.parametrize("address", ["/worker.js", "/static/app.js", "/static/vendor/htmx-2.0.11.min.js", "/manifest.webmanifest"])
def test_a_file_that_is_the_same_is_not_sent_again(address: str, client: FlaskClient) -> None:
    """A phone looks for a newer worker at every return to the tab: what it has is told by its tag."""
    tag = client.get(address).headers["ETag"]
    again = client.get(address, headers={"If-None-Match": tag})

    assert (True, 304, b"") == (tag.startswith("W/"), again.status_code, again.data)


def test_while_two_lay_boards_a_third_is_told_to_wait(client: FlaskClient, monkeypatch: pytest.MonkeyPatch) -> None:
    """Soon, so that it holds no thread, with a job as with the card of boards; other cards are answered meanwhile."""
    monkeypatch.setattr(web, "PATIENCE", 0.01)
    job = files.static_text("boathouse.json")
    for _ in range(2):
        assert web.LAYING_AT_ONCE.acquire()
    try:
        assert (503, "3") == ((told := client.post("/job", data=job)).status_code, told.headers["Retry-After"])
        assert [503, 503, 503, 200] == [client.get(path).status_code for path in ("/boards", "/boards/index.html", "/boards.json", "/tenon")]
    finally:
        web.LAYING_AT_ONCE.release(2)
    assert [200, 200] == [client.post("/job", data=job).status_code, client.get("/boards").status_code]


def test_where_enough_wait_the_next_is_told_at_once(client: FlaskClient, monkeypatch: pytest.MonkeyPatch) -> None:
    """Who waits holds a thread: there are always some left for the other cards."""
    monkeypatch.setattr(web, "PATIENCE", 600)
    for _ in range(4):
        assert web.AT_THE_BENCH.acquire()
    try:
        assert [503, 200] == [client.get(path).status_code for path in ("/boards", "/tenon")]
    finally:
        web.AT_THE_BENCH.release(4)
    assert 200 == client.get("/boards").status_code


def test_bytes_that_are_no_text_are_answered_as_on_a_phone(client: FlaskClient) -> None:
    """A browser's own reader of an address puts a mark in their place."""
    for query in ("stock=%ff", "stock=\xff"):
        answer = client.get("/tenon.json", environ_overrides={"QUERY_STRING": query})

        assert (422, "\ufffd" in answer.json["errors"]["stock"]) == (answer.status_code, True), query
