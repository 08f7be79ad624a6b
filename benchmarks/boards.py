"""Sixty parts laid on boards in V8: run it, read the milliseconds against the budget of 150.

usage: python benchmarks/boards.py [--jobs 20]

Half the jobs have sixty different lengths, which is the hardest; half have prices.
"""

import argparse
import json
import random
import statistics
import time

from py_mini_racer import MiniRacer

from shopcalc import phone
from shopcalc.catalogue import setups

BUDGET = 150


def job_of(rng: random.Random, alike: bool, priced: bool) -> list[object]:
    """Sixty parts, of a few lengths or all different, and three lengths to buy."""
    menu = [rng.randint(96, 960) / 16 for _ in range(8 if alike else 60)]
    stock = [{"length": length, "price": price if priced else None} for length, price in ((96, 8), (120, 10.5), (144, 13))]
    return [[rng.choice(menu) if alike else length for length in (menu * 8)[:60]], [], stock, 0.125, 0.5]


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--jobs", type=int, default=20)
    rng = random.Random(1)  # noqa: S311
    with MiniRacer() as engine:
        engine.eval(phone.brain(setups()))
        times = []
        for place in range(parser.parse_args().jobs):
            job = json.dumps(job_of(rng, place // 2 % 2 == 0, place % 2 == 0))
            began = time.perf_counter()
            engine.eval(f"lay_parts(...{job}).bought")
            times.append((time.perf_counter() - began) * 1000)
    print(f"60 parts: median {statistics.median(times):.0f} ms, worst {max(times):.0f} ms, budget {BUDGET} ms")


if __name__ == "__main__":
    main()
