"""A card on the server beside a bare Flask view that renders the same template: run it, read the ratios.

usage: python benchmarks/server.py [slug] [--rounds 300]

All go through Flask's test client, in turns within one run, since times drift and ratios less. The bare views
render the card's own templates over a view that was decided beforehand: one by pystache as it comes, one as the app
renders (`shopcalc/render.py` puts partials in their places first). Beside the second, what is left is the work of the card.
"""

import argparse
import statistics
import time
from collections.abc import Callable
from typing import Any

import pystache
from flask import Flask
from flask.testing import FlaskClient

from shopcalc import exact, files
from shopcalc.render import escape, render
from shopcalc.web import create_app


def bare_app(slug: str, fill: Callable[[str, dict[str, Any]], str]) -> Flask:
    """A Flask app with one view that renders a page decided beforehand."""
    found = exact.answer(f"/{slug}", {})
    app = Flask("bare")
    app.add_url_rule(f"/{slug}", view_func=lambda: fill(found["template"], found["view"]))
    return app


def as_it_comes() -> Callable[[str, dict[str, Any]], str]:
    """Rendering by pystache as its users do it: a parsed template, and partials by name."""
    texts = files.templates()
    parsed = {name: pystache.parse(text) for name, text in texts.items()}
    renderer = pystache.Renderer(partials=texts, escape=escape, missing_tags="strict")
    return lambda template, view: str(renderer.render(parsed[template], view))


def milliseconds(client: FlaskClient, address: str) -> float:
    """The time of one request."""
    began = time.perf_counter()
    client.get(address)
    return (time.perf_counter() - began) * 1000


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("slug", nargs="?", default="tenon")
    parser.add_argument("--rounds", type=int, default=300)
    args = parser.parse_args()
    clients = [app.test_client() for app in (create_app(), bare_app(args.slug, as_it_comes()), bare_app(args.slug, render))]
    address = f"/{args.slug}"
    times = [[milliseconds(client, address) for client in clients] for _ in range(args.rounds)]
    card, plain, whole = (statistics.median(column) for column in zip(*times, strict=True))
    print(f"{address}: card {card:.2f} ms, bare view {plain:.2f} ms, ratio {card / plain:.2f}; as the app renders {whole:.2f} ms, {card / whole:.2f}")


if __name__ == "__main__":
    main()
