"""A page's HTML → its JSON-LD, microdata and RDFa, as the values that JSON-LD holds. Pure; fetches and runs nothing.

JSON-LD 1.1 (W3C), section 7.1; HTML Living Standard, section 5.2 (microdata); RDFa Lite 1.1 (W3C). Names lose the
address of their vocabulary. lxml reads the HTML, and gives up what is nested deeper than 256.
"""

import itertools
import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from lxml import etree

Node = dict[str, Any]
_ADDRESS_OF = {"a": "href", "link": "href", "area": "href", "img": "src", "source": "src", "video": "src",
               "audio": "src", "iframe": "src", "object": "data"}  # fmt: skip
_BLOCKS = {"p", "br", "li", "ol", "ul", "div", "tr", "section", "article", "dd", "dt"}
_UNSAID = {"script", "style", "template", "noscript", "h1", "h2", "h3", "h4", "h5", "h6"}
_VOCABULARY = re.compile(r".*[/#:]")


MOST_READ = 500_000  # elements, each counted once for every property that it stands in


class TooMuch(Exception):
    """The page's markup says the same over and over; no recipe is so long."""


@dataclass(frozen=True)
class Page:
    """`scripts`: the text of each JSON-LD script. `microdata`, `rdfa`: outermost items. `site`, `address`: as the
    page's head names them."""

    scripts: tuple[str, ...] = ()
    microdata: tuple[Node, ...] = ()
    rdfa: tuple[Node, ...] = ()
    site: str = ""
    address: str = ""


def page_of(text: str) -> Page:
    """What is marked up in a page; of a text that is no page, nothing. Raises TooMuch."""
    parser = etree.HTMLParser(encoding="utf-8", no_network=True, remove_comments=True, remove_pis=True)
    try:
        root = etree.fromstring(text.encode(errors="replace"), parser)
    except etree.LxmlError:
        return Page()
    if root is None:
        return Page()
    scripts = [each.text or "" for each in root.iter("script") if _is_json_ld(each.get("type") or "")]
    head = {(each.get("property") or each.get("name") or ""): each.get("content") or "" for each in root.iter("meta")}
    links = {(each.get("rel") or "").lower(): each.get("href") or "" for each in root.iter("link")}
    return Page(
        tuple(scripts),
        tuple(_items(root, "itemscope", "itemtype", "itemprop", "itemid")),
        tuple(_items(root, "typeof", "typeof", "property", "resource")),
        head.get("og:site_name", ""),
        links.get("canonical") or head.get("og:url", ""),
    )


def _is_json_ld(kind: str) -> bool:
    return kind.partition(";")[0].strip().lower() == "application/ld+json"


def _items(root: Any, scope: str, kind: str, named: str, own: str) -> list[Node]:
    """The outermost items of one kind of markup, by the names of its attributes."""
    top: list[Node] = []
    left = itertools.repeat(None, MOST_READ)
    # Each element with the item that it stands in; no recursion, whatever the depth.
    waiting: list[tuple[Any, Node | None]] = [(root, None)]
    while waiting:
        element, inside = waiting.pop()
        names = [_VOCABULARY.sub("", name) for name in (element.get(named) or "").split()] if inside is not None else []
        around = inside
        if scope in element.attrib:
            around = {"@type": [_VOCABULARY.sub("", each) for each in (element.get(kind) or "").split()]}
            if address := element.get(own):
                around["@id"] = address
            if not names:
                top.append(around)
        if inside is not None and names:
            value = around if around is not inside else _value(element, left)
            for name in names:
                inside.setdefault(name, []).append(value)
        waiting += [(child, around) for child in reversed(element)]
    return top


def _value(element: Any, left: Iterator[None]) -> str:
    """A property's value: what an attribute gives, else the words inside, a line each block."""
    if (content := element.get("content")) is not None:
        return str(content)
    if element.tag in _ADDRESS_OF and (address := element.get(_ADDRESS_OF[element.tag])) is not None:
        return str(address)
    if element.tag == "time" and (moment := element.get("datetime")) is not None:
        return str(moment)
    if element.tag in ("data", "meter") and (value := element.get("value")) is not None:
        return str(value)
    pieces: list[str] = []
    hidden = 0
    for event, each in etree.iterwalk(element, events=("start", "end")):
        if next(left, left) is left:  # properties within properties, each with the words of all inside it
            raise TooMuch
        mark = "\n" if each.tag in _BLOCKS and (event, each.tag) != ("end", "br") else ""
        unsaid = each.tag in _UNSAID and each is not element
        if event == "start":
            hidden += unsaid
            pieces += [mark, _folded(each.text)] if not hidden else []
        else:
            hidden -= unsaid
            pieces += [mark, _folded(each.tail) if each is not element else ""] if not hidden else []
    return "".join(pieces).strip()


def _folded(text: str | None) -> str:
    return re.sub(r"\s+", " ", text or "")
