"""Bytes of a web page or JSON file → the JSON values in it. Pure; fetches nothing and runs nothing.

A page carries JSON in `<script type="application/ld+json">` (JSON-LD 1.1, W3C, section 7.1).
"""

import codecs
import json
import re
from html.parser import HTMLParser
from typing import Any

from board.importing.recipe import words

LARGEST_CHARACTERS = 4_000_000
_DECLARED = re.compile(rb"charset\s*=\s*[\"']?\s*([A-Za-z0-9_:.-]{1,40})", re.IGNORECASE)
# A page's declared encoding is used only if it is one of these text encodings.
_ENCODINGS = {
    "iso-8859-1": "cp1252", "latin-1": "cp1252", "latin1": "cp1252", "us-ascii": "cp1252", "windows-1252": "cp1252",
    "windows-1250": "cp1250", "windows-1251": "cp1251", "windows-1253": "cp1253", "windows-1254": "cp1254",
    "iso-8859-2": "iso8859-2", "iso-8859-15": "iso8859-15", "koi8-r": "koi8-r", "shift_jis": "cp932",
    "euc-jp": "euc_jp", "euc-kr": "cp949", "gbk": "gb18030", "gb2312": "gb18030", "gb18030": "gb18030",
    "big5": "big5hkscs",
}  # fmt: skip
_MARKS = {codecs.BOM_UTF8: "utf-8", codecs.BOM_UTF16_LE: "utf-16-le", codecs.BOM_UTF16_BE: "utf-16-be"}
_OPENING = ("<!--", "//<![CDATA[", "/*<![CDATA[*/", "<![CDATA[")
_CLOSING = ("//-->", "-->", "//]]>", "/*]]>*/", "]]>")


class NotARecipe(Exception):
    """The file holds no recipe; the text tells the host why. A fault of the file, never of the program."""


def text_of(data: bytes) -> str:
    """The text: by its byte-order mark, as UTF-8, or as it declares. Unreadable bytes become U+FFFD.

    Raises NotARecipe if it is far too large.
    """
    if len(data) > 4 * LARGEST_CHARACTERS:
        raise NotARecipe(words.RECIPE_TOO_LARGE)
    text = _decoded(data)
    if len(text) > LARGEST_CHARACTERS:
        raise NotARecipe(words.RECIPE_TOO_LARGE)
    return text


def _decoded(data: bytes) -> str:
    for mark, encoding in _MARKS.items():
        if data.startswith(mark):
            return data[len(mark) :].decode(encoding, errors="replace")
    if len(data) > 1 and 0 in data[:2]:
        return data.decode("utf-16-le" if data[1] == 0 else "utf-16-be", errors="replace")
    try:
        return data.decode()
    except UnicodeDecodeError:
        declared = _DECLARED.search(data[:4096])
        encoding = _ENCODINGS.get(declared[1].decode("ascii").lower(), "") if declared else "cp1252"
        return data.decode(encoding or "utf-8", errors="replace")


def documents(text: str) -> list[Any]:
    """Every JSON value in the file, in order. Raises NotARecipe if none can be read."""
    if text.lstrip()[:1] in ("{", "["):
        return [_json(text, words.RECIPE_NOT_JSON)]
    scripts = _scripts(text)
    found, wrong = [], None
    for script in scripts:
        try:
            found.append(_json(_unwrapped(script), words.RECIPE_MARKUP_NOT_JSON))
        except NotARecipe as this:  # a page often has several; only one holds the recipe
            wrong = wrong or this
    if not found:
        raise wrong or NotARecipe(words.NO_RECIPE)
    return found


def _unwrapped(script: str) -> str:
    """Without the comment that old pages wrap around a script."""
    text = script.strip()
    for opening in _OPENING:
        text = text.removeprefix(opening).lstrip()
    for closing in _CLOSING:
        text = text.removesuffix(closing).rstrip()
    return text


def _json(text: str, unreadable: str) -> Any:
    try:
        # Line breaks inside strings are invalid JSON but common in pages; NaN and the like are no numbers.
        return json.loads(text, strict=False, parse_constant=lambda _: None, parse_int=_whole)
    except RecursionError:
        raise NotARecipe(words.RECIPE_TOO_DEEP) from None
    except ValueError:
        raise NotARecipe(unreadable) from None


def _whole(text: str) -> int | None:
    return int(text) if len(text) < 20 else None


class _Scripts(HTMLParser):
    """Collects the text of JSON-LD scripts."""

    def __init__(self) -> None:
        self.found: list[str] = []
        super().__init__(convert_charrefs=False)

    def reset(self) -> None:
        super().reset()
        self.inside = False

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        kind = (dict(attrs).get("type") or "").partition(";")[0].strip().lower()
        self.inside = tag == "script" and kind == "application/ld+json"
        if self.inside:
            self.found.append("")

    def handle_endtag(self, tag: str) -> None:
        self.inside = False

    def handle_data(self, data: str) -> None:
        if self.inside:
            self.found[-1] += data


_COMMENT_OR_SCRIPT = re.compile(r"<!--|<script(?=[\s/>])", re.IGNORECASE)
_SCRIPT_ENDS = re.compile(r"</script[\s/>]", re.IGNORECASE)
_LONGEST_TAG = 1000


def _scripts(text: str) -> list[str]:
    """Parses only the scripts: on hostile input, such as a million `<`, the parser takes hours over a whole page."""
    parser = _Scripts()
    position = 0
    while (match := _COMMENT_OR_SCRIPT.search(text, position)) is not None:
        if match[0] == "<!--":
            ends = text.find("-->", match.end())
            if ends < 0:
                break
            position = ends + 3
            continue
        close = _SCRIPT_ENDS.search(text, match.end())
        ends = close.start() if close else len(text)
        if ">" in text[match.end() : min(ends, match.end() + _LONGEST_TAG)]:
            parser.feed(text[match.start() : ends] + "</script>")
            parser.close()
            parser.reset()
        position = close.end() if close else len(text)
    return parser.found
