"""The vocabulary in which a setup is written.

A setup file reads from top to bottom like a page of a shop manual: what is measured, what to set, what can
go wrong, the steps, the trial cut, the drawing, the sources. Everything else (form, card, drawing, phone,
command line, JSON) follows from that page.

Each method that declares a value returns its SymPy symbol, for use in the formulas below it. What cannot be
true is refused with a DeclarationError that names it: at once where one line shows it, else by `finish`.
"""

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any, NoReturn, Protocol

import sympy

from shopcalc.drawing import Picture, Shape
from shopcalc.formulas import Formula
from shopcalc.portable.measures.writing import TAPES
from shopcalc.proving import (
    fault_of_card,
    fault_of_formula,
    fault_of_input,
    fault_of_machine,
    fault_of_name,
    fault_of_result,
    fault_of_start,
)
from shopcalc.records import (
    MACHINES,
    NO_SOURCE,
    RUNS,
    STAGES,
    Check,
    Choice,
    Column,
    DeclarationError,
    Included,
    Input,
    Line,
    Onward,
    Operation,
    Part,
    Result,
    limit_text,
    symbols_of,
)
from shopcalc.terms import degrees, is_row
from shopcalc.units import is_shown
from shopcalc.whole import faults_of, formulas_of, passing_faults


class Row(Protocol):
    """A row of a published table: what it says on the form, besides its columns."""

    @property
    def label(self) -> str:
        """What the option says."""


@dataclass
class Setup:
    """One card: a job at a machine, declared.

    `slug` is its address; `stand` is where one stands to use it; `job` says in a sentence what it is for;
    `machines` names the cautions that apply (see `shopcalc/reference/cautions.py`); `icon` is the small drawing
    on the list, a path in a box of 24 by 24, drawn with one line.

    Every method raises DeclarationError, with a message that names it, for what cannot be: a name that is taken or unknown,
    units that do not add up, a start that cannot be read, a value that is quoted and not there.
    """

    slug: str
    title: str
    stand: str
    job: str
    machines: Sequence[str] = ()
    icon: str = ""
    inputs: dict[str, Input] = field(default_factory=dict)
    results: dict[str, Result] = field(default_factory=dict)
    checks: dict[str, Check] = field(default_factory=dict)
    steps: list[Line] = field(default_factory=list)
    pictures: list[Picture] = field(default_factory=list)
    sources: list[str] = field(default_factory=list)
    onwards: list[Onward] = field(default_factory=list)
    includes: list[Included] = field(default_factory=list)
    parts: list[Part] = field(default_factory=list)
    operations: dict[str, Operation] = field(default_factory=dict)
    trials: list[Line] = field(default_factory=list)
    sometimes: list[Line] = field(default_factory=list)
    program: list[str] = field(default_factory=list)
    heading: str = "What you measure"

    def __post_init__(self) -> None:
        self._check_for(fault_of_card(self.slug, self.stand, self.icon))
        for machine in self.machines:
            self._check_for(fault_of_machine(machine))

    def _refuse(self, what: str) -> NoReturn:
        raise DeclarationError(f"{self.slug}: {what}")

    def _check_for(self, fault: str) -> None:
        if fault:
            self._refuse(fault)

    # What is measured.

    def group(self, heading: str) -> None:
        """The heading on the form of the inputs that follow."""
        self.heading = heading

    def length(
        self, name: str, label: str, start: str, help: str, zero: bool = False, most: Any = None, shop: bool = False, when: Any = None
    ) -> sympy.Symbol:
        """A length in inches; `zero` says whether nothing is a sensible length, `most` a limit such as `inches(6)`.

        `shop` says that it belongs to the shop and not to the piece, as a blade's kerf does: it is remembered for every card.
        `when` is a relation over inputs above it: while it does not hold, the input is not used, as the form shows.
        """
        return self._input(Input(name, "length", label, start, help, zero=zero, most=most, shop=shop, when=when))

    def tape_sum(self, name: str, label: str, start: str, help: str) -> sympy.Symbol:
        """A length as tape arithmetic, which may pass below zero on the way."""
        return self._input(Input(name, "length", label, start, help, zero=True, signed=True))

    def angle(self, name: str, label: str, start: str, help: str, zero: bool = False, most: Any = None) -> sympy.Symbol:
        """An angle in degrees from what the machine calls zero, at most 90 unless `most` says less."""
        return self._input(Input(name, "angle", label, start, help, zero=zero, most=degrees(90) if most is None else most))

    def count(self, name: str, label: str, start: str, help: str, zero: bool = False, most: Any = None, when: Any = None) -> sympy.Symbol:
        """A whole number; `when` as for a length."""
        return self._input(Input(name, "count", label, start, help, zero=zero, most=most, when=when))

    def choice(self, name: str, label: str, help: str, **options: str) -> Choice:
        """A choice among `option="what it says"`, the first being where it starts; `_` in an option is a space."""
        if not options:
            self._refuse(f"{name} has no options to choose from")
        pairs = tuple((option.replace("_", " "), text) for option, text in options.items())
        symbol = self._input(Input(name, "choice", label, pairs[0][0], help, zero=True, options=pairs))
        return Choice(symbol, [option for option, _ in pairs])

    def table(self, name: str, label: str, help: str, rows: Mapping[str, Row], **columns: str) -> Choice:
        """A choice among the rows of a published table; `columns` are the attributes wanted of a row, each with its kind.

        What the table says of the option chosen is a value named after both: `species_radial`.
        """
        if not rows:
            self._refuse(f"the table of {name} has no rows")
        for column, kind in columns.items():
            if kind not in ("number", "length", "percent") or any(getattr(row, column, None) is None for row in rows.values()):
                self._refuse(f"the table of {name} has no {kind} {column!r} in every row")
        told = tuple(Column(f"{name}_{column}", kind, tuple(getattr(row, column) for row in rows.values())) for column, kind in columns.items())
        pairs = tuple((option, row.label) for option, row in rows.items())
        symbol = self._input(Input(name, "choice", label, pairs[0][0], help, zero=True, options=pairs, columns=told))
        symbols = {column: sympy.Symbol(f"{name}_{column}", real=True) for column in columns}
        return Choice(symbol, [option for option, _ in pairs], symbols)

    def lengths(self, name: str, label: str, start: str, help: str, most: int, none: bool = False, shop: bool = False) -> sympy.Symbol:
        """A row of lengths in inches with commas between, at most `most` of them; `none` says whether it may be empty, `shop` as for a length."""
        return self._input(Input(name, "lengths", label, start, help, zero=none, items=most, shop=shop))

    def pieces(self, name: str, label: str, start: str, help: str, most: int) -> sympy.Symbol:
        """Parts as `rail 22 15/16 x2` with commas between, at most `most` in all."""
        return self._input(Input(name, "pieces", label, start, help, items=most))

    def stock(self, name: str, label: str, start: str, help: str, most: int, none: bool = False) -> sympy.Symbol:
        """Lengths to buy as `96 @ 12.50, 120`, at most `most`; `none` says whether there may be none."""
        return self._input(Input(name, "stock", label, start, help, zero=none, items=most))

    def percent(self, name: str, label: str, start: str, help: str, when: Any = None) -> sympy.Symbol:
        """A part of a hundred; 12 % is the number 12; `when` as for a length."""
        return self._input(Input(name, "percent", label, start, help, most=100, when=when))

    def temperature(self, name: str, label: str, start: str, help: str, when: Any = None) -> sympy.Symbol:
        """A temperature in degrees Fahrenheit, typed in those or in Celsius; `when` as for a length."""
        return self._input(Input(name, "temperature", label, start, help, zero=True, when=when))

    def division(self, name: str, label: str, start: str, help: str) -> sympy.Symbol:
        """A tape's division, 8 to 128 to the inch."""
        pairs = tuple((each, f"1/{each} in") for each in TAPES)
        return self._input(Input(name, "division", label, start, help, options=pairs))

    def reading(self, name: str, label: str, help: str, kind: str = "length") -> sympy.Symbol:
        """What is measured on the scrap: blank until the trial cut is made."""
        return self._input(Input(name, kind, label, "", help, reading=True))

    def _input(self, declared: Input) -> sympy.Symbol:
        for name in (declared.name, *(column.name for column in declared.columns)):
            self._claim(name)
        self._check_for(fault_of_input(declared))
        if declared.most is not None:
            self._formula(declared.name, declared.most, declared.kind)
        if not declared.reading:
            self._check_for(fault_of_start(declared))
        if declared.when is not None:
            self._formula(f"{declared.name} (when)", declared.when, "truth")
            if {symbol.name for symbol in symbols_of(declared.when)} - set(self.inputs):
                self._refuse(f"whether {declared.name} is used cannot be told from its inputs alone")
        self.inputs[declared.name] = replace(declared, group=self.heading)
        return sympy.Symbol(declared.name, real=True)

    def _claim(self, name: str) -> None:
        self._check_for(fault_of_name(name))
        if name in self.kinds() or name in self.checks:
            self._refuse(f"{name!r} is declared twice")

    # What is worked out.

    def setting(self, name: str, label: str, formula: Any, kind: str = "length", **more: Any) -> sympy.Symbol:
        """A number to set on the machine. `more`: rounding, division (an input, or "64" whatever the tape), when, source."""
        return self._result(Result(name, label, sympy.sympify(formula), kind, "setting", **more))

    def size(self, name: str, label: str, formula: Any, kind: str = "length", **more: Any) -> sympy.Symbol:
        """A size that follows, not set on a machine. `more`: rounding, division, when, source, known_as (its name in data)."""
        return self._result(Result(name, label, sympy.sympify(formula), kind, "size", **more))

    def after(self, name: str, label: str, formula: Any, kind: str = "length", **more: Any) -> sympy.Symbol:
        """A size from the wood as it measures: it appears once the scrap has been read."""
        return self._result(Result(name, label, sympy.sympify(formula), kind, "after", **more))

    def correction(
        self,
        name: str,
        label: str,
        formula: Any,
        more: str,
        less: str,
        far: Any,
        kind: str = "length",
        when: Any = None,
        look: str = "If it reads the same, set up from the start.",
    ) -> sympy.Symbol:
        """How far to move after the trial, and which way: `more` when positive, `less` when negative.

        A trial that asks for more than `far`, such as `inches("1/16")`, is a slip of the calipers or a machine set wrong: it is
        told so, with what to `look` at, and nothing is corrected by it. `far` is None where no machine is set.

        Raises DeclarationError where the formula has not exactly one reading in it, or `far` cannot be said in its kind.
        """
        move = sympy.sympify(formula)
        given = [] if when is None else [when]
        near = when if far is None else sympy.And(*given, abs(move) <= far)
        found = self._result(Result(name, label, move, kind, "correction", more=more, less=less, when=near))
        if far is not None:
            text = f"{label}: off by more than {self._far_text(name, far, kind)}. Measure again. {look}"
            self._doubt(name, sympy.And(*given, abs(move) > far), text, self._reading_of(name, move))
        return found

    def _far_text(self, name: str, far: Any, kind: str) -> str:
        """`{1/16 in}` or `5\u00b0`; what cannot be said just so is refused."""
        try:
            return limit_text(far, kind)
        except ValueError as reason:
            raise DeclarationError(f"{self.slug}: {name} cannot be far off by {far}: {reason}") from reason

    def near(self, follower: sympy.Symbol) -> Any:
        """The condition under which a trial is followed, by a correction or a size as found: a slip of the calipers should move nothing else."""
        found = self.results.get(follower.name)
        if found is None or not (found.role == "correction" or found.reading):
            self._refuse(f"{follower.name!r} is no correction and no size as found, which a trial could be near to")
        return sympy.true if found.when is None else found.when

    def _must_be_read(self, where: str, reading: sympy.Symbol) -> None:
        if reading.name not in self.inputs or not self.inputs[reading.name].reading:
            self._refuse(f"{where} is read by {reading.name!r}, which is no reading")

    def _reading_of(self, name: str, formula: sympy.Basic) -> sympy.Symbol:
        readings = [each for each in symbols_of(formula) if each.name in self.inputs and self.inputs[each.name].reading]
        if len(readings) != 1:
            self._refuse(f"the correction {name} follows from {len(readings)} readings instead of one")
        return readings[0]

    def as_found(self, name: str, label: str, reading: sympy.Symbol, planned: Any, far: Any = None, when: Any = sympy.true) -> sympy.Symbol:
        """A size as planned until the scrap is read, then as it measures; a reading further off than `far` is told so and not followed.

        Nor is one followed where `when` does not hold, which a check has to say.
        """
        self._must_be_read(name, reading)
        kind = self.inputs[reading.name].kind
        miss = abs(reading - planned)
        followed = when if far is None else sympy.And(miss <= far, when)
        found = self._result(
            Result(name, label, sympy.sympify(planned), kind, "size", reading=reading.name, when=None if followed == sympy.true else followed)
        )
        if far is not None:
            text = f"{label}: the reading is off by more than {self._far_text(name, far, kind)}, and nothing follows it. Measure again."
            self._doubt(name, miss > far, text, reading)
        return found

    def _doubt(self, name: str, relation: Any, text: str, reading: sympy.Symbol) -> None:
        """The caution that a reading is a slip: while it holds, no way on carries the reading."""
        self.caution(f"{name}_far_off", relation, text, change=reading, source="", doubts=reading)

    def ranking(self, name: str, formula: Any) -> sympy.Symbol:
        """A ranking of choices, made by `choose_between` or its kin in `terms.py`, from which results are taken; it is not shown itself."""
        return self._result(Result(name, name, sympy.sympify(formula), "ranking", "inner"))

    def layout(self, name: str, label: str, formula: Any) -> sympy.Symbol:
        """Parts laid on boards by `lay_on_boards`, drawn as bars; results are taken from it by `boards_bought` and its kin."""
        return self._result(Result(name, label, sympy.sympify(formula), "layout", "inner"))

    def part(self, label: str, count: Any, length: Any, width: Any, thickness: Any, when: Any = None, pane: bool = False) -> None:
        """A part for the cut list: a number of them, and three sizes in inches. A `pane` is no wood, and is not laid on boards."""
        numbers = tuple(sympy.sympify(each) for each in (count, length, width, thickness))
        for each, kind in zip(numbers, ("number", "length", "length", "length"), strict=True):
            self._formula(f"the part {label}", each, kind)
        if when is not None:
            self._formula(f"the part {label} (when)", when, "truth")
        self.parts.append(Part(label, numbers, None if when is None else sympy.sympify(when), pane))

    def _result(self, declared: Result) -> sympy.Symbol:
        self._claim(declared.name)
        self._check_for(fault_of_result(declared, self.inputs))
        self._formula(declared.name, declared.formula, declared.kind)
        if declared.when is not None:
            self._formula(f"{declared.name} (when)", declared.when, "truth")
        self.results[declared.name] = declared
        self.program.append(declared.name)
        return sympy.Symbol(declared.name, real=True)

    def kinds(self) -> dict[str, str]:
        """The kind of every value declared so far, by name."""
        columns = [column for each in self.inputs.values() for column in each.columns]
        declared: list[Input | Column | Result] = [*self.inputs.values(), *columns, *self.results.values()]
        return {each.name: each.kind for each in declared}

    def _formula(self, name: str, formula: Any, kind: str) -> None:
        """Refuse a formula with unknown names, terms that only one side knows, or units that do not add up."""
        self._check_for(fault_of_formula(name, sympy.sympify(formula), kind, self.kinds()))

    # What can go wrong.

    def stop(self, name: str, relation: Any, text: str, change: Any = None, spoils: Sequence[Any] | None = None) -> None:
        """Impossible while the relation holds: the results it `spoils` (all of them, unless named) and what follows from them are not shown."""
        self._check(name, "stop", relation, text, change, spoils, "")

    def caution(self, name: str, relation: Any, text: str, change: Any = None, source: str = NO_SOURCE, doubts: Any = None) -> None:
        """Possible but weak or unsafe while the relation holds. Of the reading it `doubts` it says that it is a slip, which no way on carries."""
        if doubts is not None:
            self._must_be_read(f"the caution {name}", doubts)
        self._check(name, "caution", relation, text, change, (), source, "" if doubts is None else doubts.name)

    def note(self, name: str, relation: Any, text: str, change: Any = None, spoils: Sequence[Any] = (), source: str = "") -> None:
        """Worth knowing while the relation holds; what it `spoils` is not shown."""
        self._check(name, "note", relation, text, change, spoils, source)

    def _check(
        self, name: str, level: str, relation: Any, text: str, change: Any, spoils: Sequence[Any] | None, source: str, doubts: str = ""
    ) -> None:
        self._claim(name)
        self._formula(name, relation, "truth")
        if change is not None and change.name not in self.inputs:
            self._refuse(f"{name} tells the reader to change {change.name!r}, which is no input")
        spoiled = None if spoils is None else tuple(each.name for each in spoils)
        self.checks[name] = Check(name, level, sympy.sympify(relation), text, "" if change is None else change.name, spoiled, source, doubts)
        self.program.append(name)

    # How it is done.

    def step(self, text: str, when: Any = None) -> None:
        """A step in cutting order; `{name}` quotes a value, and a step whose value is absent is left out."""
        self.steps.append(self._line(f"step {len(self.steps) + 1}", text, when))

    def trial(self, text: str, when: Any = None) -> None:
        """What to cut on scrap and what to measure there; `{name}` and `when` as for a step. Several stand one behind the other."""
        self.trials.append(self._line(f"trial {len(self.trials) + 1}", text, when))

    def machine(self, name: str, when: Any) -> None:
        """A machine that is used while a relation holds: then the card shows its cautions behind those of `machines`."""
        self._check_for(fault_of_machine(name))
        self.sometimes.append(self._line(f"the machine {name}", name, when))

    def _line(self, where: str, text: str, when: Any) -> Line:
        if when is not None:
            self._formula(f"{where} (when)", when, "truth")
        return Line(text, None if when is None else sympy.sympify(when))

    def at_machines(self) -> list[Line]:
        """Every machine whose cautions the card can show, in their order."""
        return [*(Line(name) for name in self.machines), *self.sometimes]

    def operation(
        self,
        name: str,
        stage: str,
        label: str,
        *settings: sympy.Symbol | tuple[str, sympy.Symbol],
        machine: str = "table saw",
        face: str = "",
        parts: Sequence[str] = (),
        reading: sympy.Symbol | None = None,
        when: Any = None,
        run: str = "",
    ) -> None:
        """What is run at one machine with one setting, at a stage of the trade's order.

        `settings` are what the machine is set to, alone or with the label they have here; `face` says which face goes where;
        `parts` are the labels of the parts that pass, none for the whole piece; `reading` is taken on this run's scrap.
        `run` is a word that operations of other setups share, to be merged where their settings are the same.
        """
        where = f"the operation {name}"
        if not re.fullmatch(r"[a-z][a-z0-9_]*", name):
            self._refuse(f"{name!r} cannot be the name of an operation")
        if name in self.operations:
            self._refuse(f"{where} is declared twice")
        if stage not in STAGES:
            self._refuse(f"{where} belongs to {stage!r}, which is no stage: use one of {', '.join(STAGES)}")
        if machine not in MACHINES:
            self._refuse(f"{where} is run at {machine!r}: use one of {', '.join(MACHINES)}")
        pairs = tuple((each[1].name, each[0]) if isinstance(each, tuple) else (each.name, "") for each in settings)
        for value, _ in pairs:
            kind = self.kinds().get(value)
            if not is_shown(kind) or kind == "choice":
                self._refuse(f"{where} is set to {value!r}, which is no value declared above it")
        self._parts_known(where, parts)
        if reading is not None:
            self._must_be_read(where, reading)
        if when is not None:
            self._formula(f"{where} (when)", when, "truth")
        read = "" if reading is None else reading.name
        self.operations[name] = Operation(
            name, stage, machine, label, pairs, face, tuple(parts), read, None if when is None else sympy.sympify(when), run
        )

    def run(self, word: str, *settings: sympy.Symbol, face: str = "", **more: Any) -> None:
        """An operation that many setups run alike, such as `rip` or `crosscut`. `more`: parts, reading, when."""
        if word not in RUNS or len(settings) != len(RUNS[word].settings):
            self._refuse(f"{word!r} set to {len(settings)} is no run that setups share")
        alike = RUNS[word]
        name = "_".join([re.sub(r"[ -]", "_", word), *(each.name for each in settings)])
        pairs = zip(alike.settings, settings, strict=True)
        self.operation(name, alike.stage, alike.label, *pairs, machine=alike.machine, face=face or alike.face, run=word, **more)

    def _parts_known(self, where: str, labels: Sequence[str]) -> None:
        for fault in passing_faults(self, where, labels):
            self._refuse(fault)

    def picture(self, caption: str, *shapes: Shape) -> None:
        """A drawing to scale. Its points must be lengths and its directions plain numbers, of values declared above."""
        for place, shape in enumerate(shapes):
            where = f"picture {len(self.pictures) + 1}, shape {place + 1} ({shape.kind})"
            for value in (each for point in shape.points for each in point):
                self._formula(where, value, "lengths" if shape.kind == "box" and is_row(value, self.kinds()) else "length")
            for value in (each for direction in shape.directions for each in direction):
                self._formula(where, value, "number")
            if shape.when is not None:
                self._formula(f"{where} (when)", shape.when, "truth")
            if shape.of and not is_shown(self.kinds().get(shape.of)):
                self._refuse(f"{where} shows {shape.of!r}, which is declared nowhere above it")
        self.pictures.append(Picture(caption, shapes))

    def source(self, text: str) -> None:
        """Where a formula or a constant comes from."""
        self.sources.append(text)

    def onward(self, slug: str, label: str, **carry: sympy.Symbol | Choice | tuple[sympy.Symbol, ...]) -> None:
        """A link to another card with entries and lengths worked out carried along; of a tuple, the first that has a value.

        A reading that is told to be far off goes on to no card.
        """
        names = {}
        for target, source in carry.items():
            symbols = source if isinstance(source, tuple) else (source,)
            for symbol in symbols:
                if self.kinds().get(symbol.name) != "length" and symbol.name not in self.inputs:
                    self._refuse(f"the way on to {slug} carries {symbol.name!r}, which is neither an input nor a length")
            names[target] = tuple(symbol.name for symbol in symbols)
        self.onwards.append(Onward(slug, label, names))

    def include(self, setup: "Setup", passes: Mapping[str, Sequence[str]] | None = None, **given: Any) -> dict[str, sympy.Symbol]:
        """Put another setup's card inside this one, with `given` for some of its inputs.

        Its other inputs join this setup's own; they are returned by name, for use in formulas here. `passes` says by labels which
        parts of this setup go through its operations.
        """
        if any(each.setup.slug == setup.slug for each in self.includes):
            self._refuse(f"{setup.slug} is inside it already: its results and its operations are told apart by its name")
        passing = {name: tuple(labels) for name, labels in (passes or {}).items()}
        for name in passing:
            if name not in setup.operations:
                self._refuse(f"{setup.slug} has no operation {name!r}")
        lifted: dict[str, sympy.Symbol] = {}
        for name, declared in setup.inputs.items():
            if name in given:
                continue
            if name in self.inputs:
                self._refuse(f"{setup.slug} brings an input {name!r} that is here already: give it a value")
            # whether an input is used cannot be told here from one that is given: then it is always shown as used
            told = declared.when is None or {symbol.name for symbol in symbols_of(declared.when)} <= set(lifted)
            lifted[name] = self._input(declared if told else replace(declared, when=None))
        for name, formula in given.items():
            if name not in setup.inputs:
                self._refuse(f"{setup.slug} has no input {name!r}")
            if setup.inputs[name].reading:
                self._refuse(f"{setup.slug}.{name} is a reading, which is taken and not given")
            self._formula(f"{setup.slug}.{name}", formula, setup.inputs[name].kind)
        self.includes.append(Included(setup, {name: sympy.sympify(formula) for name, formula in given.items()}, passing))
        return lifted

    # What everything else reads.

    def finish(self) -> "Setup":
        """Refuse a page that is not whole: values quoted nowhere declared, inputs nothing uses, no source."""
        for fault in faults_of(self):
            self._refuse(fault)
        return self

    def formulas(self) -> dict[str, Formula]:
        """Every expression of the page, by key: `fence`, `when fence`, `check weak`, `step 2`, `shape 0 3`."""
        return formulas_of(self)


__all__ = ["NO_SOURCE", "DeclarationError", "Setup"]
