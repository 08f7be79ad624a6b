"""Fixtures that many tests share."""

from collections.abc import Iterator
from typing import Any

import pytest
from flask.testing import FlaskClient
from py_mini_racer import MiniRacer

from shopcalc import phone
from shopcalc.catalogue import setups
from shopcalc.web import create_app

from .serving import App, Serving


@pytest.fixture(scope="session")
def phone_brain() -> Iterator[MiniRacer]:
    """A JavaScript engine that has read everything the phone is sent to answer with."""
    with MiniRacer() as engine:
        engine.eval(phone.brain(setups()))
        yield engine


class ClosingClient(FlaskClient):
    """A client that reads every answer to its end, so that no file stays open."""

    def open(self, *args: Any, **more: Any) -> Any:
        """Send a request."""
        return super().open(*args, buffered=True, **more)


@pytest.fixture(scope="session")
def app() -> App:
    """The Flask app."""
    return create_app()


@pytest.fixture
def serving(app: App) -> Iterator[Serving]:
    """The app at an address that no other test has used, so that no worker of another test answers there."""
    served = Serving(app)
    yield served
    served.stop()


@pytest.fixture(scope="session")
def client() -> FlaskClient:
    """A client of the app."""
    app = create_app()
    app.test_client_class = ClosingClient
    return app.test_client()
