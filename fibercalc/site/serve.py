"""Serves a built site on this machine: `python -m fibercalc.site.serve`. For the maker's desk and
the tests, not the internet.

Differs from the standard library's server where a browser is strict: types for `.mjs`, `.wasm`
and `.webmanifest`, no stored HTML, compressed answers, and on request a policy header and a path
under which the whole site stands.
"""

import argparse
import errno
import gzip
import socket
import sys
import threading
from contextlib import suppress
from functools import lru_cache
from http import HTTPStatus
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

TYPES = {
    ".html": "text/html; charset=utf-8",
    ".css": "text/css; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".mjs": "text/javascript; charset=utf-8",
    ".json": "application/json",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
    ".svg": "image/svg+xml",
    ".png": "image/png",
    ".xml": "application/xml",
    ".woff2": "font/woff2",
    ".zip": "application/zip",
    ".toml": "application/toml; charset=utf-8",
    ".txt": "text/plain; charset=utf-8",
}
FIRST_THING = (
    "Try first: open yarn/skein-length/ there, change the turns on the reel to what you wound"
    " last,\nand read the length that you would print on the label.\n"
)
VERSIONED = (
    "/assets/py/",
    "/assets/app-",
)  # what stands below these is named after a hash of what it holds
KEPT = "public, max-age=31536000, immutable"
COMPRESSIBLE = {
    ".html",
    ".css",
    ".js",
    ".mjs",
    ".json",
    ".wasm",
    ".webmanifest",
    ".svg",
    ".xml",
    ".toml",
    ".txt",
}


@lru_cache(maxsize=256)
def _compressed(path: str, _changed: int) -> bytes:
    return gzip.compress(Path(path).read_bytes(), compresslevel=6, mtime=0)


class SiteHandler(SimpleHTTPRequestHandler):
    """Answers from the server's folder, below the server's sub-path."""

    protocol_version = "HTTP/1.1"
    # Headers and body leave together: apart, the body of a small file waits 40 ms for the browser
    # to confirm the headers
    wbufsize = -1
    disable_nagle_algorithm = True
    server: "SiteServer"

    def do_GET(self) -> None:
        self._answer(with_body=True)

    def do_HEAD(self) -> None:
        self._answer(with_body=False)

    def _answer(self, with_body: bool) -> None:
        self.server.asked.append(self.path)
        asked = urlsplit(self.path)
        below = self.server.sub_path
        if not asked.path.startswith(below):
            self._send(HTTPStatus.NOT_FOUND, ".txt", b"Not here.", with_body)
            return
        self.directory = str(self.server.folder)
        path = Path(self.translate_path(asked.path[len(below) - 1 :]))
        if path.is_dir():
            if not asked.path.endswith("/"):
                self.send_response(HTTPStatus.MOVED_PERMANENTLY)
                self.send_header(
                    "Location", asked.path + "/" + (f"?{asked.query}" if asked.query else "")
                )
                self.send_header("Content-Length", "0")
                self.end_headers()
                return
            path /= "index.html"
        if not path.is_file():
            lost = self.server.folder / "404.html"
            found = lost.read_bytes() if lost.is_file() else b"Not found."
            self._send(HTTPStatus.NOT_FOUND, ".html", found, with_body)
            return
        self._send_file(path, with_body)

    def _send_file(self, path: Path, with_body: bool) -> None:
        changed = path.stat().st_mtime_ns
        tag = f'"{changed:x}"'
        stored = path.suffix != ".html"
        if stored and self.headers.get("If-None-Match") == tag:
            self.send_response(HTTPStatus.NOT_MODIFIED)
            self.send_header("ETag", tag)
            self.end_headers()
            return
        packed = (
            self.server.compress
            and path.suffix in COMPRESSIBLE
            and "gzip" in self.headers.get("Accept-Encoding", "")
        )
        body = _compressed(str(path), changed) if packed else path.read_bytes()
        self._send(HTTPStatus.OK, path.suffix, body, with_body, packed, tag if stored else "")

    def _send(
        self,
        status: HTTPStatus,
        suffix: str,
        body: bytes,
        with_body: bool,
        packed: bool = False,
        tag: str = "",
    ) -> None:
        self.send_response(status)
        self.send_header("Content-Type", TYPES.get(suffix, "application/octet-stream"))
        self.send_header("Content-Length", str(len(body)))
        self.send_header("X-Content-Type-Options", "nosniff")
        self.send_header(
            "Cache-Control",
            (
                "no-store"
                if not tag
                else KEPT
                if any(each in self.path for each in VERSIONED)
                else "no-cache"
            ),
        )
        if tag:
            self.send_header("ETag", tag)
        if packed:
            self.send_header("Content-Encoding", "gzip")
            self.send_header("Vary", "Accept-Encoding")
        if self.server.policy:
            self.send_header("Content-Security-Policy", self.server.policy)
        self.end_headers()
        if with_body:
            self.wfile.write(body)

    def log_message(self, format: str, *args: Any) -> None:
        """Quiet: the browser's own tools show requests better."""


class SiteServer(ThreadingHTTPServer):
    """A site on 127.0.0.1.

    folder    the built site
    port      0 takes any free one
    sub_path  begins and ends with "/": where the site stands on this host
    policy    a Content-Security-Policy header for every answer, or ""
    compress  gzip what shrinks
    asked     the path of every request so far
    """

    daemon_threads = True
    request_queue_size = 64

    def __init__(
        self,
        folder: Path,
        port: int = 0,
        sub_path: str = "/",
        policy: str = "",
        compress: bool = True,
    ):
        super().__init__(("127.0.0.1", port), SiteHandler)
        self.folder, self.sub_path, self.policy, self.compress = (
            Path(folder),
            sub_path,
            policy,
            compress,
        )
        self.asked: list[str] = []
        self._open: set[socket.socket] = set()

    @property
    def port(self) -> int:
        return self.server_address[1]

    @property
    def address(self) -> str:
        """Where the site's front page is, with a "/" at the end."""
        return f"http://127.0.0.1:{self.port}{self.sub_path}"

    def process_request(self, request: Any, client_address: Any) -> None:
        self._open.add(request)
        super().process_request(request, client_address)

    def shutdown_request(self, request: Any) -> None:
        self._open.discard(request)
        super().shutdown_request(request)

    def handle_error(self, request: Any, client_address: Any) -> None:
        """A browser that hangs up in the middle of an answer is not an error of ours."""

    def start(self) -> "SiteServer":
        """Serve from a thread of its own until stop()."""
        threading.Thread(
            target=self.serve_forever, kwargs={"poll_interval": 0.05}, daemon=True
        ).start()
        return self

    def stop(self) -> None:
        """Be gone for everyone: connections that a browser keeps open would be answered by their
        threads for ever.
        """
        self.shutdown()
        self.server_close()
        for connection in list(self._open):
            with suppress(OSError):  # closed by the browser in the meantime
                connection.shutdown(socket.SHUT_RDWR)


def main() -> None:
    options = argparse.ArgumentParser(
        prog="python -m fibercalc.site.serve",
        description="Serve the built bench book on this machine.",
    )
    options.add_argument("--folder", type=Path, default=Path(".build/site"))
    options.add_argument(
        "--port",
        type=int,
        default=8000,
        help="the next free one is taken when it is busy; 0 takes any",
    )
    options.add_argument("--sub-path", default="/")
    given = options.parse_args()
    for port in (given.port and range(given.port, given.port + 50)) or (0,):
        try:
            server = SiteServer(given.folder, port, given.sub_path)
            break
        except OSError as problem:
            if problem.errno != errno.EADDRINUSE:
                raise
    else:
        raise SystemExit(f"No free port from {given.port} to {given.port + 49}.")
    sys.stdout.write(
        f"The bench book is open at {server.address}\n" + FIRST_THING + "Stop with Ctrl+C.\n"
    )
    sys.stdout.flush()
    try:
        server.serve_forever()
    except KeyboardInterrupt:
        server.server_close()


if __name__ == "__main__":
    main()
