"""The Flask app: the same answers as the phone's worker, for a first visit and for browsers without one.

It keeps nothing. Every page is a pure function of its address.
"""

import gzip
import json
from collections.abc import Callable
from functools import cache, partial
from threading import BoundedSemaphore
from typing import Any
from urllib.parse import parse_qsl

from flask import Flask, Response, request, send_from_directory

from shopcalc import exact, files, phone
from shopcalc.render import render

LARGEST_JOB = 1_000_000  # bytes; the page refuses a larger one too
# a job made to be slow takes seconds, at worst most of a minute: the other threads go on answering cards
THREADS = 8  # that answer requests
LAYING_AT_ONCE = BoundedSemaphore(2)
AT_THE_BENCH = BoundedSemaphore(THREADS // 2)  # with those who wait: the other half of the threads is left for the other cards
PATIENCE = 0.5  # seconds until one who comes then is told to ask again; who waited longer would hold a thread


def create_app() -> Flask:
    """The app, with every setup worked out once so that the first visitor does not wait for it."""
    app = Flask("shopcalc", static_folder=None)
    exact.world()
    phone.worker()
    app.config["MAX_CONTENT_LENGTH"] = LARGEST_JOB
    app.add_url_rule("/job", "job", job, methods=["POST"])
    app.add_url_rule("/job<any('.json', '.csv'):kind>", "job_as", job, methods=["POST"])
    app.add_url_rule("/worker.js", view_func=worker)
    app.add_url_rule("/editing.js", view_func=editing)
    app.add_url_rule("/manifest.webmanifest", view_func=manifest)
    app.add_url_rule("/static/<path:name>", view_func=static)
    app.add_url_rule("/", view_func=card, defaults={"path": ""})
    app.add_url_rule("/<path:path>", view_func=card)
    app.after_request(protect)
    return app


def card(path: str) -> Response:
    """A page, a part of a card (for htmx) or a card as JSON."""
    # as a browser reads it: what is no UTF-8 is a mark of its own
    query = parse_qsl(request.query_string.decode("utf-8", "replace"), keep_blank_values=True, errors="replace")
    answer = partial(exact.answer, "/" + path, query, request.headers.get("HX-Target", ""))
    return in_turn(answer) if exact.lays_boards("/" + path) else respond(answer())


def job(kind: str = "") -> Response:
    """What is said of the job that is sent along: its page, its data or its cut list. 503 while too many are being worked."""
    text = request.get_data(as_text=True).removeprefix("\ufeff")
    return in_turn(partial(exact.answer_document, f"/job{kind}", text))


def in_turn(answer: Callable[[], dict[str, Any]]) -> Response:
    """The answer to what may take long; 503 while too many such are being worked, and the page asks again."""
    if not AT_THE_BENCH.acquire(blocking=False):
        return busy()
    try:
        if not LAYING_AT_ONCE.acquire(timeout=PATIENCE):
            return busy()
        try:
            return respond(answer())
        finally:
            LAYING_AT_ONCE.release()
    finally:
        AT_THE_BENCH.release()


def busy() -> Response:
    """The answer to whoever had better ask again."""
    return Response("Other boards are being laid. Try again in a moment.", 503, {"Retry-After": "3"}, mimetype="text/plain")


def respond(found: dict[str, Any]) -> Response:
    """What was found as JSON, as CSV or as the page or part of one that shows it."""
    if "data" in found:
        return Response(json.dumps(found["data"], ensure_ascii=False), found["status"], mimetype="application/json")
    if "text" in found:
        return Response(found["text"], found["status"], mimetype="text/csv")
    response = Response(render(found["template"], found["view"]), found["status"], mimetype="text/html")
    response.headers["X-Part"] = found["template"]
    return response


def worker() -> Response:
    """The service worker."""
    return tagged(Response(phone.worker(), mimetype="text/javascript"))


def editing() -> Response:
    """The edits of a job, which the pages make themselves."""
    return tagged(Response(phone.editing_script(), mimetype="text/javascript"))


def manifest() -> Response:
    """What a phone needs to know to install the app."""
    return tagged(Response(phone.kept_bytes("/manifest.webmanifest"), mimetype="application/manifest+json"))


def static(name: str) -> Response:
    """A static file; our own scripts and style sheet without what only a reader needs."""
    if files.is_light(name):
        return tagged(Response(files.light_script(name), mimetype=files.media_type(name)))
    response = send_from_directory(files.folder("static"), name, mimetype=files.media_type(name))
    response.set_etag(str(response.get_etag()[0]), weak=True)  # a server in front that packs it keeps a weak one
    return response


def tagged(response: Response) -> Response:
    """A file that a browser need not be sent again while it is the same: phones look for a newer worker again and again."""
    response.add_etag(weak=True)  # packed or not, it is the same
    response.make_conditional(request)
    return response


def protect(response: Response) -> Response:
    """Headers that every answer carries."""
    response.headers["Content-Security-Policy"] = phone.POLICY
    response.headers["X-Content-Type-Options"] = "nosniff"
    response.headers["Referrer-Policy"] = "no-referrer"
    response.headers["Cache-Control"] = "no-cache"
    response.vary.add("HX-Target")
    return squeeze(response)


def squeeze(response: Response) -> Response:
    """The same answer packed, for whoever can unpack it: a third of the bytes on the way to a phone."""
    response.vary.add("Accept-Encoding")
    packs = str(response.mimetype).startswith("text/") or str(response.mimetype).endswith("json")
    if packs and response.status_code in (200, 422) and request.accept_encodings.quality("gzip") > 0:
        response.direct_passthrough = False
        body = response.get_data()
        response.set_data(packed(body) if response.get_etag()[0] else gzip.compress(body, 6, mtime=0))
        response.headers["Content-Encoding"] = "gzip"
    return response


@cache
def packed(body: bytes) -> bytes:
    """A file packed once, as well as it goes."""
    return gzip.compress(body, 9, mtime=0)
