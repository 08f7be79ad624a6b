"""A job of many items in V8: order of work and boards. Run it, read the times.

usage: python benchmarks/job.py [--items 200] [--rounds 7]

The items are frames, groove and tenon cards of several stocks, with parts of their own beside them and boards to buy.
"""

import argparse
import json
import statistics

from py_mini_racer import MiniRacer

from shopcalc import phone
from shopcalc.catalogue import setups


def big_job(items: int) -> dict[str, object]:
    """A job of so many items, a quarter of them unlike any other."""
    made = []
    for place in range(items):
        stock = ["1 3/8", "1 1/8", "1 1/2", f"1 {place % 16}/64"][place % 4]
        slug = ["frame", "tenon", "groove", "tenon", "frame"][place % 5]
        made.append({"id": place + 1, "setup": slug, "label": f"Item {place + 1}", "quantity": 1 + place % 3, "inputs": {"stock": stock}})
    lumber = [{"thickness": stock, "width": "5 1/2", "to_buy": "96, 120, 144"} for stock in ("1 3/8", "1 1/8", "1 1/2")]
    return {"format": "shopcalc job", "version": 1, "items": made, "lumber": lumber}


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--items", type=int, default=200)
    parser.add_argument("--rounds", type=int, default=7)
    args = parser.parse_args()
    text = json.dumps(json.dumps(big_job(args.items)))
    with MiniRacer() as engine:
        engine.eval(phone.brain(setups()))
        times = engine.eval(
            f"(() => {{ const times = []; for (let k = 0; k < {args.rounds}; k += 1) {{ const began = Date.now();"
            f" decideDocument('/job', {text}); times.push(Date.now() - began); }} return JSON.stringify(times); }})()"
        )
    found = json.loads(str(times))
    print(f"{args.items} items: first {found[0]} ms, median of {args.rounds} {statistics.median(found)} ms, worst {max(found)} ms")


if __name__ == "__main__":
    main()
