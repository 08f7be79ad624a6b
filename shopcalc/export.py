"""Writes the app as files for a static host: the first visit is answered by these, every later one by the worker."""

from pathlib import Path

from shopcalc import exact, files, phone
from shopcalc.catalogue import setups
from shopcalc.render import render

NO_SCRIPTS = (
    '<noscript><p class="unknown">Scripts are off, and this is a copy without a server: whatever is typed or stands in the address, '
    "these are the values that everything starts with.</p></noscript>"
)


def write_files(folder: Path) -> int:
    """Write everything into `folder`, which is made if needed, and return how many files that is.

    Each card is a folder with an index.html, so that `/tenon` works on any host.
    """
    pages = {"index.html": "/", "404.html": "/missing", "shop/index.html": "/shop", "job/index.html": "/job"}
    pages |= {f"{slug}/index.html": f"/{slug}" for slug in setups()}
    written = {name: _page(address) for name, address in pages.items()}
    written["worker.js"] = phone.worker()
    written["editing.js"] = phone.editing_script()
    written["manifest.webmanifest"] = phone.kept_bytes("/manifest.webmanifest").decode()
    for name, text in written.items():
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(text.encode())
    static = files.folder("static")
    copied = [path.relative_to(static) for path in static.rglob("*") if path.is_file()]
    for each in copied:
        path = folder / "static" / each
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(files.light_script(str(each)).encode() if files.is_light(str(each)) else (static / each).read_bytes())
    return len(written) + len(copied)


def _page(address: str) -> str:
    """The page of an address, with the policy in the page itself: a static host may send no headers."""
    found = exact.answer(address, {})
    # a policy in a meta element may not name frame-ancestors
    policy = "; ".join(part for part in phone.POLICY.split("; ") if not part.startswith("frame-ancestors"))
    # a static page cannot see its query: the page's script waits for the worker, which can
    meta = f'<meta name="shopcalc-static" content="yes">\n<meta http-equiv="Content-Security-Policy" content="{policy}">'
    page = render(found["template"], found["view"]).replace('<meta charset="utf-8">', f'<meta charset="utf-8">\n{meta}', 1)
    return page.replace("</header>", f"</header>\n{NO_SCRIPTS}", 1) if 'id="inputs"' in page else page
