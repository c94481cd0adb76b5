"""How far dishes drafted from more than a hundred pages of our own are true; the bounds, in percent, are ours."""

import pytest

from tests.examples import first
from tests.importing.recipe.figures import score
from tests.importing.recipe.pages_made import SHAPES, pages


def test_there_are_more_than_a_hundred_pages_in_every_shape() -> None:
    made = list(pages())

    assert len(made) > 100
    assert {page.shape for page in made} == {shape.__name__ for shape in SHAPES}


@pytest.mark.parametrize("held_out", first(1, [False, True]))
def test_what_is_read_is_true(held_out: bool) -> None:
    found = score(page for page in pages() if page.held_out == held_out)

    for what, least in (("eaters", 97), ("amounts", 98), ("places", 92), ("heat", 90), ("times", 95), ("no step", 95)):
        assert found.of[what] > 20, what
        assert found.share(what) >= least, "\n".join(each for each in found.told if each.startswith(what))
