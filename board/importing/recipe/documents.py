"""Bytes of a web page or JSON file → the values in it, of whatever markup. Pure; fetches nothing and runs nothing."""

import codecs
import json
import re
from dataclasses import dataclass
from typing import Any

from board.importing.recipe import words
from board.importing.recipe.markup import TooMuch, page_of

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


@dataclass(frozen=True)
class Documents:
    """`readings`: the file's values, a list for each kind of markup, the fullest first. `site`, `address`: of the
    page, as its head names them."""

    readings: tuple[list[Any], ...]
    site: str = ""
    address: str = ""


def documents(text: str) -> Documents:
    """Every value in the file, in order. Raises NotARecipe if none can be read."""
    if text.lstrip()[:1] in ("{", "["):
        return Documents(([_json(text, words.RECIPE_NOT_JSON)],))
    try:
        page = page_of(text)
    except TooMuch:
        raise NotARecipe(words.RECIPE_TOO_LARGE) from None
    found, wrong = [], None
    for script in page.scripts:
        try:
            found.append(_json(_unwrapped(script), words.RECIPE_MARKUP_NOT_JSON))
        except NotARecipe as this:  # a page often has several; only one holds the recipe
            wrong = wrong or this
    readings = tuple(each for each in (found, list(page.microdata), list(page.rdfa)) if each)
    if not readings:
        raise wrong or NotARecipe(words.NO_RECIPE)
    return Documents(readings, page.site, page.address)


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
