"""Provisions as a page: every food once with its box, text of the plan's stays text, a browser prints it."""

import re
import shutil
import subprocess
from collections.abc import Callable
from html.parser import HTMLParser
from pathlib import Path

import pytest

from board.base import words as shared
from board.cli import main
from board.output import words
from board.output.frame import is_page
from board.output.provisions_page import MOST_KEPT_TOGETHER, provisions_page
from board.shopping.errands import Provisions
from tests.conftest import HEAD, PLANS
from tests.shopping.conftest import Listed, listed

__all__ = ["listed"]  # a fixture

PLAN = (
    HEAD.lstrip()
    + """\
shopping: {fri: '16:00 - 17:30', sat: '9:00 - 9:45'}
pantry: [salt, 50 g butter]
packs: {butter: 250 g}
prices: {butter: 2.40 a pack, leeks: 3 a kg}
drinks: {water: usual}
courses:
  - course: Broth
    at: 19:15
    dishes:
      - dish: Leek broth
        for: 4
        ingredients: [1 kg leeks (veg), 200 g butter (dairy), 5 g salt, FOODS]
        steps: [{step: simmer, where: stovetop, takes: 30 min}]
"""
)


class Page(HTMLParser):
    """Tags, text, and the cells of each row."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.rows: list[list[str]] = []
        self.text = ""
        self._in_cell = False
        self.feed(html)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        if tag == "tr":
            self.rows.append([])
        elif tag == "td":
            self.rows[-1].append("")
            self._in_cell = True

    def handle_endtag(self, tag: str) -> None:
        self._in_cell = self._in_cell and tag != "td"

    def handle_data(self, data: str) -> None:
        self.text += data
        if self._in_cell:
            self.rows[-1][-1] += data


Made = Callable[..., Provisions]


@pytest.fixture
def made(listed: Listed) -> Made:
    """The list of the plan with more foods in it; all its work is at three on the day."""

    def make(foods: str = "2 lemons") -> Provisions:
        return listed(PLAN.replace("FOODS", foods))

    return make


def test_every_food_has_a_row_with_amount_notes_dishes_and_cost(made: Made) -> None:
    """Written for 4 and made for 8: leeks 2 kg at 3 a kg; butter 400 g less 50 g is two packs at 2.40."""
    found = made()
    page = Page(provisions_page(found, "a4"))

    assert len(page.rows) == len(found.to_buy) == 4
    assert ["", "2 kg", "leeks", "Leek broth", "6.00"] in page.rows
    butter = next(row for row in page.rows if row[2].startswith("butter"))
    assert butter[1] == "2 packs of 250 g"
    assert [note in butter[2] for note in ("400 g needed", "50 g in the house", "150 g left over")] == [True] * 3
    assert butter[3:] == ["Leek broth", "4.80"]
    for told in ("Friday 27 November, 16:00–17:30", words.PROVISIONS_GROWN, words.DRINKS_TITLE,
                 "Together 10.80, 1.35 a guest; 2 without a price", shared.PROVISIONS_CAUTION):  # fmt: skip
        assert told in page.text
    assert "salt" in page.text.split(words.PROVISIONS_IN_HOUSE)[1]


def test_foreign_text_stays_text(made: Made) -> None:
    html = provisions_page(made(foods="'2 <script>alert(1)</script> <img src=x>', \"3 o\\e[31md & ''things''\""), "a4")
    page = Page(html)

    assert not {"script", "img", "a", "link"} & set(page.tags)
    assert "<script>alert(1)</script> <img src=x>" in page.text
    assert "\x1b" not in html
    assert not re.search(r"<[^>]*\b(?:src|href|on\w+)=", html)


def test_a_page_forbids_the_browser_to_fetch(made: Made) -> None:
    assert "content=\"default-src 'none'; style-src 'unsafe-inline'\"" in provisions_page(made(), "letter")


def test_a_short_day_is_kept_together_and_a_long_one_is_not(made: Made) -> None:
    few = ", ".join(f"{n} g herb{n:02} (veg)" for n in range(1, MOST_KEPT_TOGETHER - 3))
    many = ", ".join(f"{n} g herb{n:02} (veg)" for n in range(1, MOST_KEPT_TOGETHER + 9))

    assert '<div class="whole">\n<h2>' in provisions_page(made(foods=few), "a4")
    assert '<div class="whole">\n<h2>' not in provisions_page(made(foods=many), "a4")


@pytest.mark.parametrize(("size", "points"), [("a4", r"59[45][\d.]* x 84[12]"), ("letter", "612 x 792")])
def test_a_page_prints_in_a_browser(made: Made, tmp_path: Path, size: str, points: str) -> None:
    """Chromium prints it to PDF, every food on it, of the size asked for."""
    tools = [shutil.which(tool) for tool in ("chromium", "pdfinfo", "pdftotext")]
    if None in tools:
        pytest.skip("no chromium, pdfinfo and pdftotext on this machine")
    browser, info, text = tools
    html, pdf = tmp_path / "page.html", tmp_path / "page.pdf"
    foods = ", ".join(f"{n} g herb{n:02} (veg)" for n in range(1, 61))
    html.write_text(provisions_page(made(foods=foods), size), encoding="utf-8")  # type: ignore[arg-type]  # one of two
    subprocess.run([browser, "--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer",
                    f"--user-data-dir={tmp_path / 'profile'}", f"--print-to-pdf={pdf}", html.as_uri()],
                   check=True, capture_output=True, timeout=120)  # fmt: skip
    told = subprocess.run([info, str(pdf)], check=True, capture_output=True, text=True).stdout
    printed = subprocess.run([text, "-layout", str(pdf), "-"], check=True, capture_output=True, text=True).stdout
    pages = int(re.search(r"Pages:\s+(\d+)", told)[1])  # type: ignore[index]

    assert re.search(points, told)
    assert 2 <= pages <= 5
    assert {f"herb{n:02}" for n in range(1, 61)} <= set(
        re.findall(r"herb\d\d", printed.split(words.PROVISIONS_GROWN)[0])
    )
    assert printed.count("□") == 63  # sixty herbs, leeks, butter and water; salt is in the house


def test_the_command_writes_the_page_and_leaves_other_files_alone(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    page, own = tmp_path / "list.html", tmp_path / "own.html"
    own.write_text("<!doctype html><title>mine</title>")
    plan = str(PLANS / "two-ring-flat.yaml")

    assert main(["provisions", plan, "--html", str(page), "--paper", "letter"]) == 0
    first = page.read_bytes()
    assert main(["provisions", plan, "--html", str(page), "--paper", "letter"]) == 0
    assert main(["provisions", plan, "--html", str(own)]) != 0
    assert "no page made here" in capsys.readouterr().err

    assert is_page(first)
    assert page.read_bytes() == first
    assert b"size: letter" in first
    assert own.read_text() == "<!doctype html><title>mine</title>"
