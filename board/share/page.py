"""The page: one HTML document that holds its style, its script and its words, and fetches only from where it came."""

import base64
import hashlib
import json
from dataclasses import dataclass
from importlib import resources

from board.share import words


@dataclass(frozen=True, slots=True)
class Document:
    """UTF-8, and the Content-Security-Policy (W3C CSP Level 3) that lets it run itself and nothing else."""

    body: bytes
    policy: str


def document() -> Document:
    """The same for everybody: it holds nothing of a plan."""
    html, style, script = (_part(name) for name in ("page.html", "page.css", "page.js"))
    told = json.dumps(words.ON_PAGE, ensure_ascii=False).replace("<", "\\u003c")
    for mark, text in (("STYLE", style), ("WORDS", told), ("SCRIPT", script)):
        html = html.replace(f">{mark}<", f">{text}<")
    policy = (
        f"default-src 'none'; style-src {_hash(style)}; script-src {_hash(script)}; connect-src 'self'; img-src data:; "
        "base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
    )
    return Document(html.encode(), policy)


def _part(name: str) -> str:
    return resources.files("board.share").joinpath(name).read_text(encoding="utf-8")


def _hash(text: str) -> str:
    return f"'sha256-{base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()}'"
