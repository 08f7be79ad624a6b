"""What a phone downloads, compressed one file at a time (gzip -9), and what of the worker is code, cards and templates.

usage: python benchmarks/download.py
"""

import gzip
import json

from shopcalc import files, packing, phone
from shopcalc.catalogue import setups
from shopcalc.web import create_app


def kilobytes(text: str | bytes) -> float:
    """The size of a text on the way."""
    return len(gzip.compress(text.encode() if isinstance(text, str) else text, 9)) / 1000


def light(script: str) -> str:
    """A script as it is sent: in one scope, where every name can be short."""
    return files.lighter("(() => {" + script + "})()", "text/javascript")


def main() -> None:
    """Print the sizes, the largest first."""
    client = create_app().test_client()
    sizes = {path: kilobytes(client.get(path).data) for path in ("/worker.js", *phone.KEPT)}
    for path, size in sorted(sizes.items(), key=lambda each: -each[1]):
        print(f"{size:7.1f} KB  {path}")
    print(f"{sum(sizes.values()):7.1f} KB  all of it\n")
    cards = packing.setups_script(setups())
    for label, text in {
        "portable code": light(phone.portable_script()),
        "cards": light(cards),
        "of these, formulas": light("\n".join(line for line in cards.split("\n") if not line.startswith("addPart("))),
        "templates": json.dumps(files.templates(), ensure_ascii=False),
    }.items():
        print(f"{kilobytes(text):7.1f} KB  {label}, by itself")


if __name__ == "__main__":
    main()
