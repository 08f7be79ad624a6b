"""What the phone says of a job is what the server says: hundreds of jobs through both, and the demo."""

import json
from typing import Any

import pytest
from py_mini_racer import MiniRacer

from shopcalc import exact, files
from shopcalc.render import render

from . import jobs
from .helpers import fold, run, unlike

COUNT = 200
BATCH = 10

ASKED = """given[0].map(text => {
    const found = decideDocument('/job', text);
    const html = Mustache.render(TEMPLATES[found.template], found.view, TEMPLATES);
    return { ...found, html, data: decideDocument('/job.json', text), csv: decideDocument('/job.csv', text) };
})"""


def answered(text: str) -> dict[str, Any]:
    """The server's answers about a job."""
    found = exact.answer_document("/job", text)
    data = json.loads(json.dumps(exact.answer_document("/job.json", text)))
    return {**found, "html": render(found["template"], found["view"]), "data": data, "csv": exact.answer_document("/job.csv", text)}


def differences(texts: list[str], brain: MiniRacer) -> list[Any]:
    """How the phone's answers about jobs differ from the server's."""
    found = []
    for text, phone in zip(texts, run(brain, ASKED, texts), strict=True):
        server = answered(text)
        found += unlike({**server, "html": fold(server["html"])}, {**phone, "html": fold(phone["html"])})
    return found


def test_the_demo_is_the_same_on_the_phone(phone_brain: MiniRacer) -> None:
    """Every view of the boathouse: page, data and cut list."""
    assert differences([files.static_text("boathouse.json")], phone_brain) == []


def test_what_is_left_over_is_the_same_on_the_phone(phone_brain: MiniRacer) -> None:
    """Ten jobs in which rests and offcuts serve other sections: every board, bar and bill."""
    assert differences([json.dumps(jobs.wood_job(seed)) for seed in range(BATCH)], phone_brain) == []


@pytest.mark.sweep
def test_much_left_over_is_the_same_on_the_phone(phone_brain: MiniRacer) -> None:
    """The same of a hundred."""
    found = []
    for start in range(BATCH, 100, BATCH):
        found += differences([json.dumps(jobs.wood_job(seed)) for seed in range(start, start + BATCH)], phone_brain)

    assert found[:10] == []


@pytest.mark.sweep
def test_generated_jobs_are_the_same_on_the_phone(phone_brain: MiniRacer) -> None:
    """Two hundred jobs, some with slips, readings and ticks in them."""
    found = []
    for start in range(0, COUNT, BATCH):
        texts = [json.dumps(jobs.job(seed)) for seed in range(start, start + BATCH)]
        found += differences(texts, phone_brain)

    assert found[:10] == []
