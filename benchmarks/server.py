"""A card on the server beside a bare Flask view that renders the same template: run it, read the ratio.

usage: python benchmarks/server.py [slug] [--rounds 300]

Both go through Flask's test client, in turns within one run, since times drift and ratios less. The bare view
renders the card's own templates over a view that was decided beforehand: what is left is the work of the card.
"""

import argparse
import statistics
import time

from flask import Flask
from flask.testing import FlaskClient

from shopcalc import exact
from shopcalc.render import render
from shopcalc.web import create_app


def bare_app(slug: str) -> Flask:
    """A Flask app with one view that renders a page decided beforehand."""
    found = exact.answer(f"/{slug}", {})
    app = Flask("bare")
    app.add_url_rule(f"/{slug}", view_func=lambda: render(found["template"], found["view"]))
    return app


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
    app, bare = create_app().test_client(), bare_app(args.slug).test_client()
    address = f"/{args.slug}"
    times = [(milliseconds(app, address), milliseconds(bare, address)) for _ in range(args.rounds)]
    card, floor = (statistics.median(column) for column in zip(*times, strict=True))
    print(f"{address}: card {card:.2f} ms, bare view {floor:.2f} ms, ratio {card / floor:.2f}")


if __name__ == "__main__":
    main()
