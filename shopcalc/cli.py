"""The command line: `shopcalc serve`, `list`, `card`, `job` and `export`."""

import json
import re
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Any, TextIO

import click

from shopcalc import __version__, exact

CONTROLS = re.compile("[\x00-\x09\x0b-\x1f\x7f-\x9f]")


@click.group(context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(__version__, prog_name="shopcalc")
def main() -> None:
    """Machine settings for joinery, in the fraction on your tape."""


@main.command()
@click.option("--host", default="127.0.0.1", show_default=True, help="The address to listen on; 0.0.0.0 lets a phone in the same network reach it.")
@click.option("--port", default=8000, show_default=True, type=click.IntRange(0, 65535), help="The port to listen on.")
def serve(host: str, port: int) -> None:
    """Serve the app in a browser."""
    from waitress import create_server

    from shopcalc.web import LARGEST_JOB, THREADS, create_app

    app = create_app()
    try:
        # what is too large is refused before it is taken in
        server = create_server(app, host=host, port=port, threads=THREADS, max_request_body_size=LARGEST_JOB)
    except (OSError, ValueError) as problem:
        # waitress has a ValueError for a host that it cannot look up
        reason = problem.strerror or problem if isinstance(problem, OSError) else "no such address"
        raise click.ClickException(f"cannot listen on {host}:{port}: {reason}") from problem
    # a name with several addresses, as localhost often is, gives a server that listens on each and has no one port
    listens = server.effective_port if hasattr(server, "effective_port") else server.effective_listen[0][1]
    # in an address the numbers of a newer network stand in brackets
    named = {"127.0.0.1": "localhost"}.get(host, f"[{host}]" if ":" in host else host)
    _say(f"shopcalc is at http://{named}:{listens}/  (Ctrl+C ends it)")
    server.run()


@main.command("list")
def list_setups() -> None:
    """List the setups and the names of their inputs."""
    for slug, setup in exact.world()["setups"].items():
        about = setup["about"]
        _say(f"{slug:14} {about['title']} ({about['stand']})")
        _say(f"{'':14} {' '.join(each['name'] for each in about['inputs'])}")


@main.command()
@click.argument("slug")
@click.argument("entries", nargs=-1, metavar="[NAME=VALUE]...")
@click.option("--json", "as_json", is_flag=True, help="Print the card as JSON.")
def card(slug: str, entries: Sequence[str], as_json: bool) -> None:
    """Work one card out.

    For example: shopcalc card tenon stock="1 3/8" groove_width=5/16

    Wrong input prints the reason and ends with status 2. `tape=64` and `units=mm` set the shop.
    """
    if slug not in exact.world()["setups"]:
        _fail({"setup": f"There is no setup called {slug}. `shopcalc list` names them all."}, as_json)
    query = []
    for entry in entries:
        name, equals, text = entry.partition("=")
        if not name or not equals:
            _fail({entry: "Write name=value."}, as_json)
        query.append((name, text))
    found = exact.answer(f"/{slug}.json", query)
    if found["status"] != 200:
        _fail(found["data"]["errors"], as_json)
    if as_json:
        _print_json(found["data"])
    else:
        view = exact.answer(f"/{slug}", query)["view"]
        _print_card(found["data"], {**view["sheets"][0], **view["answers"][0]})


@main.command("job")
@click.argument("file", type=click.File("r", encoding="utf-8-sig"))
@click.option("--json", "as_json", is_flag=True, help="Print the job as JSON.")
def work_job(file: TextIO, as_json: bool) -> None:
    """Print the order of work, the cut list and the boards of a job FILE.

    A file that is refused, or a job with entries that cannot be read, prints the reason and ends with status 2.
    """
    try:
        text = file.read()
    except UnicodeDecodeError:
        text = ""
    found = exact.answer_document("/job.json", text)
    if found["status"] != 200:
        _fail(found["data"]["errors"], as_json)
    data = found["data"]
    if as_json:
        _print_json(data)
    else:
        _print_job(exact.answer_document("/job", text)["view"])
    if data["errors"]:
        if not as_json:
            _complain(data["errors"])
        sys.exit(2)


@main.command()
@click.argument("folder", type=click.Path(file_okay=False, path_type=Path))
def export(folder: Path) -> None:
    """Write the app as plain files that any static host can serve."""
    from shopcalc.export import write_files

    try:
        count = write_files(folder)
    except OSError as fault:
        raise click.ClickException(f"{folder} cannot be written: {fault.strerror or fault}") from fault
    _say(f"{count} files written to {folder}")


def _say(text: str, err: bool = False) -> None:
    """Print a text. A page's numbers hold together by spaces that do not break; a terminal's lines are whole, and are searched.

    What is typed in a job may hold what a terminal would obey, and a file or a pipe may not take every letter.
    """
    plain = CONTROLS.sub("", text.replace("\u00a0", " "))
    encoding = (sys.stderr if err else sys.stdout).encoding or "utf-8"
    if not _fits(plain, encoding):
        plain = plain.replace("\u2212", "-").encode(encoding, "replace").decode(encoding)
    click.echo(plain, err=err)


def _fits(text: str, encoding: str) -> bool:
    """Whether every letter of a text can be written so."""
    try:
        text.encode(encoding)
    except UnicodeEncodeError:
        return False
    return True


def _print_json(data: Any) -> None:
    """Print data as JSON, with letters escaped where they could not be written."""
    text = CONTROLS.sub(lambda found: f"\\u{ord(found[0]):04x}", json.dumps(data, indent=2, ensure_ascii=False))
    click.echo(text if _fits(text, sys.stdout.encoding or "utf-8") else json.dumps(data, indent=2))


def _fail(errors: dict[str, str], as_json: bool) -> None:
    """Print the errors and end with status 2."""
    if as_json:
        _print_json({"errors": errors})
    else:
        _complain(errors)
    sys.exit(2)


def _complain(errors: dict[str, str]) -> None:
    """The errors as text, each at its place."""
    for name, message in errors.items():
        _say(f"{name}: {message}" if name else message, err=True)


def _print_job(view: dict[str, Any]) -> None:
    """A job as text: order of work, cut list, boards."""
    _say(view["title"])
    if view["notes"]:
        _say(f"  {view['notes']}")
    for item in view["items"]:
        _say(f"  {item['quantity']} x {item['label']} ({item['card']})")
        for wrong in item["wrong"]:
            _say(f"    {wrong['label'].upper()}: {wrong['note']}")
    for trouble in view["troubles"]:
        _say(f"  ! {trouble['label']}{trouble['text']}")
    for doubt in view["doubts"]:
        _say(f"  ? {doubt['text']}. Are both meant?")
    _say(f"\nOrder of work ({view['progress']})")
    for stage in view["stages"]:
        _say(f"  {stage['stage'].upper()}")
        for run in stage["runs"]:
            _print_run(run)
    _say("\nCut list")
    for section in view["sections"]:
        _say(f"  {section['section']}")
        for row in section["rows"]:
            rough = f"   rough {row['rough']}" if row["rough"] else ""
            _say(f"    {row['count'] + ' ' + row['label']:30} {row['finished']:14}{rough}   {row['of']}")
    if view["has_partless"]:
        _say(f"  These cards give no parts: {view['partless']}.")
    _say(f"\nBoards. {view['bill']}")
    for row in view["buy"]:
        _say(f"  Buy {row['text']}")
    for row in view["rips"]:
        _say(f"  Rip {row['text']}")
    for laid in view["laid"]:
        _print_laid(laid)


def _print_run(run: dict[str, Any]) -> None:
    """One run of the order of work."""
    settings = ", ".join(
        f"{setting['label']} {setting['text']}" + (f" by {setting['amount']}" if setting["leans"] else "") for setting in run["settings"]
    )
    _say(f"    [{'x' if run['done'] else ' '}] {run['label']} ({run['machine']})" + (f": {settings}" if settings else ""))
    _say("        " + ", ".join(piece["text"] for piece in run["pieces"]))
    for text in (
        *(each["text"] for each in run["faces"]),
        f"Still to pass: {run['left']}." if run["partly"] else "",
        *(each["text"] for each in (*run["changed"], *run["spread"], *run["warnings"])),
        *(each["text"] for each in run["corrections"]),
        run["near"],
    ):
        if text:
            _say(f"        {text}")
    if run["reading"]:
        _say(f"        {run['reading_label']}: {run['reading']}" + (f"  {run['reading_note']}" if run["reading_wrong"] else ""))


def _print_laid(laid: dict[str, Any]) -> None:
    """One section on its boards."""
    _say(f"  {laid['section']}")
    if laid["none"]:
        _say("    No board has this thickness and is wide enough.")
        return
    for each in laid["too_long"]:
        _say(f"    No board is left for: {each['text']}")
    if laid["is_unlaid"]:
        _say(f"    More pieces than are laid at once: {laid['unlaid']} are not on the boards.")
    for board in laid["boards"]:
        _say(f"    {board['caption']}")
    if laid["is_bought"]:
        _say("    Buy " + ", ".join(row["text"] for row in laid["bought"]) + ("; fewest possible" if laid["proven"] else ""))


def _print_value(row: dict[str, Any], indent: str) -> None:
    """A value of a card with what a page writes under it; of a row of marks each on a line of its own."""
    width = 36 - len(indent)
    if not row["marks"]:
        lean = f" by {row['amount']}" if row["leans"] else ""
        _say(f"{indent}{row['label']:{width}} {row['text']}{lean}" + (f"   {row['small']}" if row["has_small"] else ""))
    for place, mark in enumerate(row["marks"]):
        lean = f" {mark['lean']} by {mark['amount']}" if mark["leans"] else ""
        _say(f"{indent}{'' if place else row['label']:{width}} {mark['text']}{lean}   {mark['small']}")


def _check(check: dict[str, Any]) -> str:
    """A check as a line: how grave it is, what it says, and which input to change."""
    change = f" {check['change_label']}." if check["has_change"] else ""
    return f"{check['level'].upper()}: {check['text']}{change}"


def _print_card(data: dict[str, Any], view: dict[str, Any]) -> None:
    """The card as text, in the order it is read at the machine."""
    _say(data["title"])
    for check in [*view["stopped"], *view["checks"]]:
        _say("  " + _check(check))
    for role in ("settings", "after", "sizes"):
        for row in view[role]:
            _print_value(row, "  ")
    for row in view["boards"]:
        _say(f"  {row['caption']}")
    for row in view["parts"]:
        _say(f"  {row['count'] + ' ' + row['label']:34} {row['length']} x {row['width']} x {'at most ' if row['pane'] else ''}{row['thickness']}")
    for row in view["corrections"]:
        _say(f"  {row['text']}")
    for place, step in enumerate(data["steps"], 1):
        _say(f"  {place}. {step}")
    if view["has_trial"]:
        _say(f"  Trial: {view['trial']}")
    for inner in view["inner"]:
        for sheet in inner["sheets"]:
            _say(f"  {sheet['title']}")
            for row in [*sheet["settings"], *sheet["after"], *sheet["sizes"]]:
                _print_value(row, "    ")
            for row in sheet["corrections"]:
                _say(f"    {row['text']}")
            for check in inner["checks"]:
                _say("    " + _check(check))
    for caution in view["cautions"]:
        _say(f"  ! {caution}")
