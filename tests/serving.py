"""The app behind an address of its own, which can be taken away as a signal is."""

import threading
from collections.abc import Callable, Iterable
from socketserver import ThreadingMixIn
from typing import Any
from wsgiref.simple_server import WSGIRequestHandler, WSGIServer, make_server

App = Callable[[dict[str, Any], Callable[..., Any]], Iterable[bytes]]


class _Server(ThreadingMixIn, WSGIServer):
    """Several requests at once, none of which keeps the process alive."""

    daemon_threads = True


class _Quiet(WSGIRequestHandler):
    """No line for every request."""

    def log_message(self, *given: Any) -> None:
        """Say nothing."""


class Serving:
    """The app, served until it is stopped; a path can be held back, and another text be served in its place."""

    def __init__(self, app: App) -> None:
        self._app = app
        self._held: dict[str, threading.Event] = {}
        self._replaced: dict[str, tuple[str, str, bytes]] = {}
        self._server = make_server("127.0.0.1", 0, self._answer, server_class=_Server, handler_class=_Quiet)
        self._thread = threading.Thread(target=self._server.serve_forever, kwargs={"poll_interval": 0.02}, daemon=True)
        self._thread.start()
        self._running = True
        # browsers trust localhost with service workers as they do https
        self.address = f"http://localhost:{self._server.server_port}"

    def _answer(self, environ: dict[str, Any], start: Callable[..., Any]) -> Iterable[bytes]:
        path = environ["PATH_INFO"]
        if path in self._held:
            self._held[path].wait(timeout=10)
        if path in self._replaced:
            status, kind, body = self._replaced[path]
            start(status, [("Content-Type", kind), ("Cache-Control", "no-cache")])
            return [body]
        return self._app(environ, start)

    def hold(self, path: str) -> threading.Event:
        """Keep everyone who asks for `path` waiting until the event returned is set."""
        return self._held.setdefault(path, threading.Event())

    def replace(self, path: str, text: str, status: str = "200 OK", kind: str = "text/javascript") -> None:
        """Serve this text at `path` from now on."""
        self._replaced[path] = (status, kind, text.encode())

    def restore(self, path: str) -> None:
        """Serve the app's own at `path` again."""
        del self._replaced[path]

    def stop(self) -> None:
        """Take the server away: nothing answers at its address any more."""
        if self._running:
            self._running = False
            self._server.shutdown()
            self._thread.join()
            self._server.server_close()
