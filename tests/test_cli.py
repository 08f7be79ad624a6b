"""The command line."""

import json
import os
import shutil

import pytest
from click.testing import CliRunner, Result

from shopcalc import __version__, files
from shopcalc.catalogue import setups
from shopcalc.cli import main


def call(*words: str) -> Result:
    """Run the command with these words."""
    return CliRunner().invoke(main, words)


def test_list_names_every_setup_and_its_inputs() -> None:
    """The list has each setup with its title and its inputs."""
    lines = call("list").output.splitlines()

    assert list(setups()) == [line.split()[0] for line in lines[::2]]
    assert "stock groove_width groove_depth cutter measured_groove" in "\n".join(lines)


def test_a_card_is_printed_in_the_order_it_is_read() -> None:
    """A card has its title, settings, sizes, steps, trial and cautions."""
    output = call("card", "groove", "stock=1 3/8", "groove_width=5/16").output

    assert output.startswith("Centred groove\n")
    places = [
        output.index(text) for text in ("17/32 in   0.531 in \u00b7 13.5 mm", "  1. Mill all pieces", "  Trial: ", "  ! Guard and riving knife")
    ]
    assert places == sorted(places)


def test_checks_come_first() -> None:
    """What is wrong with a cut stands before its numbers, and which entry to change."""
    lines = call("card", "groove", "cutter=1/2").output.splitlines()

    assert lines[1] == "  STOP: The cutter, 1/2 in, is wider than the groove, 3/8 in. Change: Cutter width."


def test_a_reading_prints_its_correction() -> None:
    """A reading from the scrap gives the move."""
    assert "Too wide: move the fence 0.008 in (1/128) away from the cutter." in call("card", "groove", "measured_groove=0.391").output


@pytest.mark.parametrize("slug", setups())
def test_every_card_is_printed(slug: str) -> None:
    """Every setup can be printed as it starts, as text and as JSON."""
    assert (0, 0) == (call("card", slug).exit_code, call("card", slug, "--json").exit_code)


def test_json_is_what_the_address_gives() -> None:
    """The JSON of the command line is the card's data."""
    data = json.loads(call("card", "groove", "groove_width=5/16", "--json").output)

    assert ("groove", 0.53125) == (data["setup"], data["results"]["fence"]["value"])


def test_the_shop_can_be_set() -> None:
    """Tape and units are set like inputs."""
    assert "13.5 mm" in call("card", "groove", "units=mm", "stock=36", "groove_width=9", "groove_depth=12", "cutter=6").output
    assert "17/32 in" in call("card", "groove", "groove_width=5/16", "tape=64").output


WRONG = {
    "an entry that cannot be read": (["card", "groove", "stock=1/0"], "stock: A fraction cannot be over zero."),
    "an unknown name": (["card", "groove", "colour=red"], "colour: groove has no input of this name."),
    "a word that is no entry": (["card", "groove", "stock"], "stock: Write name=value."),
    "a name with a capital": (["card", "tenon", "Stock=1"], "Stock: tenon has no input of this name."),
    "an entry with no name": (["card", "tenon", "=3"], "=3: Write name=value."),
    "an unknown entry given twice": (["card", "groove", "Stock=1", "Stock=2"], "Stock: This is given twice."),
    "an entry given twice": (["card", "groove", "stock=1", "stock=2"], "stock: This is given twice."),
    "an unknown setup": (["card", "dovetail"], "setup: There is no setup called dovetail. `shopcalc list` names them all."),
}


@pytest.mark.parametrize("what", WRONG)
def test_wrong_input_ends_with_status_2(what: str) -> None:
    """Wrong input prints its reason where errors go, and nothing else."""
    words, message = WRONG[what]
    result = call(*words)

    assert (2, "", message + "\n") == (result.exit_code, result.stdout, result.stderr)


@pytest.mark.parametrize("what", WRONG)
def test_wrong_input_is_json_if_json_was_asked_for(what: str) -> None:
    """With --json the reasons are JSON."""
    words, message = WRONG[what]
    name, _, text = message.partition(": ")
    result = call(*words, "--json")

    assert (2, {"errors": {name: text}}) == (result.exit_code, json.loads(result.stdout))


def test_an_equals_sign_may_stand_in_a_value() -> None:
    """Only the first equals sign parts name and value."""
    assert "stock: I cannot read \u201c=\u201d in a measurement." in call("card", "groove", "stock=1=2").stderr


def test_a_job_is_printed_with_its_order_cuts_and_boards() -> None:
    """The demo from its items to what is bought, in one plain text: numbers are found by searching for them."""
    done = call("job", str(files.folder("static") / "boathouse.json"))

    assert (0, []) == (done.exit_code, [line for line in done.output.splitlines() if "\u00a0" in line])
    places = [
        done.output.index(text)
        for text in (
            "Boathouse\n",
            "  2 x Transom sash (Grooved frame)",
            "Order of work (",
            "  GROOVE AND RABBET",
            "21/64",
            "Cut list",
            "Boards. In all",
            "  Buy ",
        )
    ]
    assert places == sorted(places)
    assert 0 < done.output.count("1 3/8 in x 4 1/2 in")


def test_a_job_as_data_has_what_its_page_has() -> None:
    """Order, cuts, boards, bill; nothing in it that could not be read."""
    data = json.loads(call("job", str(files.folder("static") / "boathouse.json"), "--json").output)

    assert {"order", "cuts", "boards", "bill", "errors"} <= set(data)
    assert {} == data["errors"]


def test_a_job_with_an_entry_that_cannot_be_read_is_printed_and_ends_with_status_2(tmp_path) -> None:  # type: ignore[no-untyped-def]
    """What can be worked is, and what cannot is named."""
    job = json.loads(files.static_text("boathouse.json"))
    job["items"][0]["inputs"]["stock"] = "1 3/"
    file = tmp_path / "job.json"
    file.write_text(json.dumps(job), "utf-8")
    done = call("job", str(file))

    assert (2, True, True) == (done.exit_code, "Order of work (" in done.output, "item 1, stock: " in done.output)


def test_a_file_that_is_no_job_ends_with_status_2(tmp_path) -> None:  # type: ignore[no-untyped-def]
    """With the reason, and nothing printed as if it were one."""
    file = tmp_path / "job.json"
    file.write_bytes(b"\xff\xfe no text")
    done = call("job", str(file))

    assert (2, False) == (done.exit_code, "Order of work" in done.output)


def test_export_writes_files(tmp_path) -> None:  # type: ignore[no-untyped-def]
    """The app is written into a folder, and the files are counted."""
    result = call("export", str(tmp_path / "out"))
    count = sum(path.is_file() for path in (tmp_path / "out").rglob("*"))

    assert (0, f"{count} files written to {tmp_path / 'out'}\n") == (result.exit_code, result.output)


def test_a_folder_that_cannot_be_written_is_told(tmp_path) -> None:  # type: ignore[no-untyped-def]
    """In a sentence, and not in the words of the program's own fault."""
    (tmp_path / "file").write_text("x")
    result = call("export", str(tmp_path / "file" / "out"))

    assert (1, True) == (result.exit_code, "cannot be written" in result.stderr)


def test_version_and_help() -> None:
    """The command says its version, and how it is used."""
    assert f"shopcalc, version {__version__}\n" == call("--version").output
    assert all(word in call("-h").output for word in ("serve", "list", "card", "export"))


def test_a_port_in_use_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    """A port that cannot be had is an error in words, not a traceback."""

    def refuse(*args: object, **more: object) -> None:
        raise OSError(98, "Address already in use")

    monkeypatch.setattr("waitress.create_server", refuse)
    result = call("serve", "--port", "8000")

    assert (1, "Error: cannot listen on 127.0.0.1:8000: Address already in use\n") == (result.exit_code, result.output)


def test_a_host_that_is_none_is_told() -> None:
    """A name that cannot be looked up is an error in words, not a traceback."""
    result = call("serve", "--host", "nowhere.invalid", "--port", "0")

    assert (1, "Error: cannot listen on nowhere.invalid:0: no such address\n") == (result.exit_code, result.output)


def test_serve_on_a_name_with_two_addresses_says_the_first_port(monkeypatch: pytest.MonkeyPatch) -> None:
    """Where localhost has two addresses the server listens on both, and has no one port."""

    class Served:
        """A server of two addresses that ends at once."""

        effective_listen = [("127.0.0.1", "8123"), ("::1", "8124")]

        def run(self) -> None:
            """Serve nobody."""

    monkeypatch.setattr("waitress.create_server", lambda *args, **more: Served())

    assert "http://localhost:8123/" in call("serve", "--host", "localhost", "--port", "0").output


def test_serve_says_where_it_is(monkeypatch: pytest.MonkeyPatch) -> None:
    """Serving says the address to open."""

    class Served:
        """A server that ends at once."""

        effective_port = 8123

        def run(self) -> None:
            """Serve nobody."""

    monkeypatch.setattr("waitress.create_server", lambda *args, **more: Served())

    assert "http://localhost:8123/" in call("serve", "--port", "0").output


@pytest.mark.parametrize("encoding", ["cp1252", "cp437", "ascii", "utf-8"])
def test_a_card_is_whole_whatever_letters_a_pipe_takes(encoding: str) -> None:
    """A minus that cannot be written is a hyphen, and no line is left out."""
    card = CliRunner(charset=encoding).invoke(main, ["card", "dado-stack", "units=mm", "target=19"])
    printed = card.output_bytes.decode(encoding)
    whole = call("card", "dado-stack", "units=mm", "target=19").output

    assert "\u2212" in whole
    if encoding != "utf-8":
        whole = whole.replace("\u2212", "-").encode(encoding, "replace").decode(encoding)
    assert whole.splitlines() == printed.splitlines()


@pytest.mark.parametrize("more", [[], ["--json"]], ids=["printed", "as data"])
def test_a_job_cannot_steer_the_terminal(more: list[str], tmp_path) -> None:  # type: ignore[no-untyped-def]
    """What a terminal would obey is left out of what is printed of a job from outside, and is escaped in data."""
    path = tmp_path / "job.json"
    job = json.loads(files.static_text("boathouse.json"))
    job["items"][0]["label"] = "Shed\u001b]0;mine\u0007\u009b2J"
    path.write_text(json.dumps(job), "utf-8")
    printed = call("job", str(path), *more).output

    assert "Shed" in printed
    assert not set(printed) & {"\u001b", "\u0007", "\u009b"}


def test_a_read_only_installation_can_be_written_twice(tmp_path, monkeypatch: pytest.MonkeyPatch) -> None:  # type: ignore[no-untyped-def]
    """The files that are written are the writer's own, whatever may be done with those they are copied from."""
    static = tmp_path / "static"
    shutil.copytree(files.folder("static"), static)
    for each in static.rglob("*"):
        each.chmod(0o444 if each.is_file() else 0o555)
    static.chmod(0o555)
    whole = files.folder
    monkeypatch.setattr(files, "folder", lambda name: static if name == "static" else whole(name))
    for _ in range(2):
        assert "files written" in call("export", str(tmp_path / "out")).output
        assert all(os.stat(each).st_mode & 0o200 for each in (tmp_path / "out").rglob("*"))
