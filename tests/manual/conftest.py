"""A folder as a host has it: a menu, a plan, a saved recipe and the run log of an evening."""

from pathlib import Path

import pytest

from board.manual import pages
from tests.manual.parts import fences
from tests.whole.conftest import Run, cold_home, home, run

__all__ = ["cold_home", "home", "run"]

RECIPE = """<script type="application/ld+json">{"@context": "https://schema.org", "@type": "Recipe",
"name": "Plum tart", "recipeYield": "8 servings", "recipeIngredient": ["1 kg plums"],
"recipeInstructions": ["Simmer the plums for 25–30 minutes."]}</script>"""


@pytest.fixture
def place(home: Path, run: Run, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The folder, which is the working one."""
    monkeypatch.chdir(home)
    Path("menu.txt").write_text(fences(pages.page("menu"), "text")[0], encoding="utf-8")
    Path("supper.yaml").write_text(fences(pages.page("plan"))[0], encoding="utf-8")
    Path("plum-tart.html").write_text(RECIPE, encoding="utf-8")
    run("rehearse", "supper.yaml", "--plain", "--log", "evening.jsonl")
    return home
