"""Generates jobs as they are put together: several cards with sensible entries, readings, ticks, lumber, now and then a slip."""

import random
from typing import Any

from shopcalc import exact
from shopcalc.portable.jobs.job import read_job
from shopcalc.portable.jobs.order import work_job

from .typed import query

SHORT = ["1/4", "5/16", "21/64", "3/8", "1/2", "3/4", "0.33", "12 mm", "x"]
LENGTHS = ["12", "24 1/2", "60", "96", "1200 mm", "120"]
SECTIONS = [("3/4", "3 1/2"), ("1 3/8", "5 1/2"), ("1 3/8", "2 1/4"), ("3/4", "2 1/4")]


def job(seed: int) -> dict[str, Any]:
    """A job that a seed stands for."""
    rng = random.Random(seed)
    found: dict[str, Any] = {"format": "shopcalc job", "version": 1, "title": f"Job {seed}", "shop": shop(rng)}
    found["items"] = [item(rng, place + 1) for place in range(rng.randint(0, 5))]
    found["parts"] = [loose(rng) for _ in range(rng.randint(0, 4))]
    found["lumber"] = [lumber(rng) for _ in range(rng.randint(0, 3))]
    for name in ("kerf", "trim", "rough"):
        if rng.random() < 0.3:
            found[name] = rng.choice(["0", "1/8", "3/32", "1", "3 mm", "-1", "much"])
    add_work(found, rng)
    return found


def wood_job(seed: int) -> dict[str, Any]:
    """A job of parts alone, in few thicknesses and many widths, on wide boards: what is left of one serves another."""
    rng = random.Random(seed)
    found: dict[str, Any] = {"format": "shopcalc job", "version": 1, "title": f"Wood {seed}"}
    found["kerf"], found["trim"], found["rough"] = rng.choice(["1/8", "3/32", "0"]), rng.choice(["1/2", "0"]), rng.choice(["1", "0", "1/4"])
    found["parts"] = [narrow_or_wide(rng) for _ in range(rng.randint(2, 8))]
    priced = rng.choice([True, True, False])
    widths = rng.sample(["2 1/4", "3 1/2", "5 1/2", "7 1/4", "9 1/4"], rng.randint(1, 3))
    found["lumber"] = [wide_boards(rng, width, priced) for width in ["9 1/4", *widths]]
    return found


def narrow_or_wide(rng: random.Random) -> dict[str, Any]:
    """A part in one of many widths."""
    length = rng.choice([f"{rng.randint(8, 60)}", f"{rng.randint(8, 40)} {rng.randint(1, 15)}/16"])
    width = rng.choice(["1 1/2", "2 1/4", "3", "4 1/2", "7"])
    return {"label": "Part", "count": rng.randint(1, 6), "length": length, "width": width, "thickness": rng.choice(["3/4", "3/4", "1"])}


def wide_boards(rng: random.Random, width: str, priced: bool) -> dict[str, str]:
    """A line of boards, now and then some on hand."""
    lengths = rng.sample(["72", "96", "120", "144"], rng.randint(1, 2))
    to_buy = ", ".join(length + (f" @ {rng.randint(8, 40)}" if priced else "") for length in lengths)
    on_hand = ", ".join(rng.sample(["48", "80", "66 1/2"], rng.choice([0, 0, 1, 2])))
    return {"thickness": rng.choice(["3/4", "3/4", "1"]), "width": width, "on_hand": on_hand, "to_buy": to_buy}


def shop(rng: random.Random) -> dict[str, str]:
    """A shop, often the usual one."""
    return {"tape": rng.choice(["32", "32", "16", "64", "128"]), "units": rng.choice(["in", "in", "in", "mm"])}


def item(rng: random.Random, place: int) -> dict[str, Any]:
    """A card with its entries; frames and their kin are the most usual."""
    slug = rng.choice(["frame", "frame", "frame", "groove", "tenon", *exact.world()["setups"]])
    inputs = {}
    about = exact.world()["setups"][slug]["about"]
    readings = [one["name"] for one in about["inputs"] if one["reading"]]
    if rng.random() < 0.2:
        # a card as it starts, and on it what a scrap measured, or a slip in that alone
        inputs = {name: rng.choice(["3/", "0,39", "3/8", "1"]) for name in readings}
    elif rng.random() < 0.6:
        typed = query(about["inputs"], rng)
        known = {one["name"] for one in about["inputs"]}
        inputs = {name: text[:400] for name, text in typed.items() if name in known}
    return {"id": place, "setup": slug, "label": rng.choice(["Door", "Sash", "Vent", ""]), "quantity": rng.randint(1, 4), "inputs": inputs}


def loose(rng: random.Random) -> dict[str, Any]:
    """A part that belongs to no card."""
    thickness, width = rng.choice(SECTIONS)
    length = rng.choice([*LENGTHS, "", "long"])
    return {"label": rng.choice(["Slat", "Leg"]), "count": rng.randint(1, 9), "length": length, "width": width, "thickness": thickness}


def lumber(rng: random.Random) -> dict[str, str]:
    """A line of boards."""
    thickness, width = rng.choice(SECTIONS)
    on_hand = ", ".join(rng.choice(LENGTHS) + rng.choice(["", " x2"]) for _ in range(rng.randint(0, 3)))
    to_buy = ", ".join(rng.choice(LENGTHS) + rng.choice(["", " @ 12.50", " @ 20"]) for _ in range(rng.randint(0, 3)))
    return {"thickness": thickness, "width": width, "on_hand": on_hand, "to_buy": rng.choice([to_buy, to_buy, to_buy, "many"])}


def add_work(found: dict[str, Any], rng: random.Random) -> None:
    """Readings and ticks for some of the operations that the job has."""
    taken = read_job(found, exact.world())
    stints = [stint for run in work_job(taken["job"], exact.world())["runs"] for stint in run["stints"]] if taken["ok"] else []
    found["readings"] = {stint["name"]: rng.choice(SHORT) for stint in stints if stint["operation"]["reading"] and rng.random() < 0.3}
    found["ticks"] = {stint["name"]: rng.choice(ticked(stint)) for stint in stints if rng.random() < 0.3}


def ticked(stint: dict[str, Any]) -> list[str]:
    """What a tick of a stint may say: as it is now, with fewer or larger pieces, with another setting, of an older job."""
    now = f"{stint['done_at']} | {stint['many']} | "
    larger = ",".join(f"{piece['length'] + 2}x{piece['width']}" for piece in stint["operation"]["pieces"])
    return [
        now + stint["operation"]["sizes"],
        now + larger,
        f"{stint['done_at']} | 1 | {stint['operation']['sizes']}",
        stint["done_at"],
        "1/2; 3/4",
        "0.500 in",
    ]
