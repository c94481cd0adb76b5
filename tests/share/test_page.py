"""The page's document: it needs nothing from elsewhere, runs itself only, and can be read in the sun."""

import base64
import hashlib
import re

import pytest

from board.share import words
from board.share.page import document
from tests.screens.test_palette import ratio

HTML = document().body.decode()
STYLE = HTML[HTML.index("<style>") + 7 : HTML.index("</style>")]
SCRIPT = HTML[HTML.index("<script>") + 8 : HTML.index("</script>", HTML.index("<script>"))]
PAINTS = dict(re.findall(r"--(\w+): (#[0-9a-f]{6});", STYLE))
RULES = re.findall(r"([^{}]+)\{([^{}]*)\}", STYLE)


def declared(body: str, name: str) -> str | None:
    found = re.search(rf"(?<![-\w]){name}: var\(--(\w+)\)", body)
    return PAINTS[found[1]] if found else None


def test_nothing_in_it_points_elsewhere() -> None:
    assert re.findall(r"https?:|//[a-z]|url\(|@import|src=", HTML.replace("// ", "")) == []
    assert re.findall(r'href="([^"]*)"', HTML) == ["data:,"]


def test_its_policy_lets_its_own_style_and_script_run_and_nothing_else() -> None:
    """W3C, Content Security Policy Level 3: a hash allows just that text."""
    rules = dict(rule.strip().split(" ", 1) for rule in document().policy.split(";"))

    def hashed(text: str) -> str:
        return f"'sha256-{base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()}'"

    assert rules == {
        "default-src": "'none'",
        "style-src": hashed(STYLE),
        "script-src": hashed(SCRIPT),
        "connect-src": "'self'",
        "img-src": "data:",
        "base-uri": "'none'",
        "form-action": "'none'",
        "frame-ancestors": "'none'",
    }
    assert re.findall(r"\sstyle=|\son\w+=", HTML[: HTML.index("<script>")]) == []


def test_its_script_puts_text_in_as_text_only() -> None:
    assert re.findall(r"innerHTML|outerHTML|insertAdjacent|document\.write|eval|Function\(", SCRIPT) == []


def test_every_word_it_uses_is_there_and_every_word_there_is_used() -> None:
    used = set(re.findall(r"said\.(\w+)", SCRIPT)) | set(re.findall(r'"(calls|wall|plates|list)"', SCRIPT))

    assert used == set(words.ON_PAGE)


@pytest.mark.parametrize(("selector", "body"), RULES, ids=lambda each: str(each).strip()[:30])
def test_text_stands_out_in_sunlight(selector: str, body: str) -> None:
    """WCAG 2.1, 1.4.6 (AAA): 7:1. A rule with a ground of its own has a colour of its own, too."""
    colour, ground = declared(body, "color"), declared(body, "background")

    assert (ground is None) or (colour is not None), selector
    if colour is not None:
        assert ratio(colour, ground or PAINTS["paper"]) >= 7


def test_the_yardstick_is_the_standards_own() -> None:
    """Black on white is 21:1 (WCAG 2.1, contrast ratio, note 1); 4.54:1 for #767676, from memory."""
    assert ratio("#000000", "#ffffff") == pytest.approx(21)
    assert ratio("#767676", "#ffffff") == pytest.approx(4.54, abs=0.005)
    assert len([body for _, body in RULES if declared(body, "color")]) >= 12


def test_lines_that_show_what_a_thing_is_stand_out_too() -> None:
    """WCAG 2.1, 1.4.11: 3:1 for what tells a control or its state."""
    for _, body in RULES:
        for name in re.findall(r"border[\w-]*: [^;]*var\(--(\w+)\)", body):
            assert ratio(PAINTS[name], PAINTS["paper"]) >= 3


def test_what_is_pressed_is_large_enough() -> None:
    """WCAG 2.1, 2.5.5 (AAA): 44 CSS pixels; 1rem is 16 of them."""
    for selector, body in RULES:
        if "button" in selector and (height := re.search(r"min-height: ([\d.]+)rem", body)):
            assert float(height[1]) * 16 >= 44
