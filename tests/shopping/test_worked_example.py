"""A supper for eight and its list, reckoned by hand."""

from datetime import timedelta

import pytest

from board.plan.resolve.amounts import Amount
from board.shopping.errands import Provisions
from board.shopping.items import Item
from board.shopping.rows import errand_title, grown_rows, row_in_house, row_to_buy
from tests.conftest import HEAD
from tests.shopping.conftest import SATURDAY, Listed

SUPPER = (
    HEAD
    + """
shopping: {thu: '17:00 - 18:00', sat: '8:00 - 9:00'}
pantry: [100 g butter, salt, 1 bunch parsley]
packs: {butter: 250 g, eggs: 6}
prices: {butter: 2.40 a pack, chicken thighs: 9.90 a kg, eggs: 0.30 each}
courses:
  - course: Tart
    at: 19:15
    dishes:
      - dish: Onion tart
        for: 4
        ingredients:
          - 150 g butter (dairy)
          - 3 eggs (dairy)
          - 1 cup granulated sugar (baking)
          - 8 g salt
          - 2 to 3 tbsp cream (dairy)
          - 5 onions (veg)
          - a handful of parsley (veg)
        steps: [{step: bake the tart, takes: 30 min}]
  - course: Main
    at: 20:15
    dishes:
      - dish: Roast chicken
        for: 8
        ingredients:
          - 1.5 kg chicken thighs (butcher)
          - 100 g butter (dairy)
          - 100 g Granulated Sugar (baking)
          - 2 to 3 tbsp olive oil
          - 1 l water
          - 2 Fresh Onions (veg)
        steps: [{step: roast it, takes: 30 min}]
jobs:
  - {job: light the lanterns, supplies: 20 candles (household)}
"""
)


@pytest.fixture
def supper(listed: Listed) -> Provisions:
    return listed(SUPPER, {"light the lanterns": SATURDAY + timedelta(hours=17)})


def item(found: Provisions, key: str) -> Item:
    return next(i for i in [*(b.item for b in found.to_buy), *found.in_house] if i.key == key)


def test_butter_of_two_dishes_less_what_is_there_in_whole_packs(supper: Provisions) -> None:
    """2 × 150 g + 100 g = 400 g; 100 g are there; 300 g short; two packs of 250 g, 200 g left over; 2 × 2.40."""
    butter = item(supper, "butter")
    (part,) = butter.parts

    assert part.need == Amount("g", 400, 400)
    assert part.short == 300
    assert part.packs is not None
    assert (part.packs.count, part.packs.left_over) == (2, 200)
    assert butter.cost == 480


def test_eggs_are_counted(supper: Provisions) -> None:
    """2 × 3 = 6: one pack of six, 6 × 0.30."""
    (part,) = item(supper, "egg").parts

    assert part.need == Amount("each", 6, 6)
    assert part.packs is not None
    assert (part.packs.count, part.packs.left_over, part.cost) == (1, 0, 180)


def test_a_cup_and_grams_of_sugar_become_grams(supper: Provisions) -> None:
    """2 × 1 cup of 200 g (USDA SR) + 100 g = 500 g."""
    (part,) = item(supper, "granulated sugar").parts

    assert part.need == Amount("g", pytest.approx(500), pytest.approx(500))


def test_onions_fresh_or_not_are_one_line(supper: Provisions) -> None:
    onions = item(supper, "onion")

    assert [part.need.high for part in onions.parts] == [12]
    assert [need.for_what for need in onions.needs] == ["Onion tart", "Roast chicken"]


def test_what_is_bought_when_and_where(supper: Provisions) -> None:
    """Chicken keeps a day raw (USDA FSIS, the lower figure), so not from Thursday to Saturday; all else does."""
    shown = {
        errand_title(errand, supper.zone): {s.name: [b.item.key for b in s.bought] for s in errand.sections}
        for errand in supper.errands
    }

    assert shown == {
        "Thursday 26 November, 17:00–18:00": {
            "dairy": ["butter", "egg", "cream"], "baking": ["granulated sugar"], "veg": ["onion"],
            "store cupboard": ["olive oil"], "household": ["candle"],
        },
        "Saturday 28 November, 8:00–9:00".replace(" 8", " 08").replace("–9", "–09"): {"butcher": ["chicken thigh"]},
    }  # fmt: skip


def test_what_is_in_the_house_or_comes_from_the_tap(supper: Provisions) -> None:
    """Salt is there without an amount: enough; parsley asked for without one is there."""
    assert {i.key for i in supper.in_house} == {"salt", "parsley", "water"}
    assert row_in_house(item(supper, "water"), None).amount == "1 l"


def test_what_it_costs(supper: Provisions) -> None:
    """4.80 + 1.80 + 1.5 kg × 9.90 = 14.85 → 21.45; sugar, cream, onions, candles and oil have no price."""
    assert supper.costs == {"": 2145}
    assert supper.unpriced == 5


def test_the_rows_as_they_are_read(supper: Provisions) -> None:
    rows = {row.key: row for row in (row_to_buy(bought, None) for bought in supper.to_buy)}

    assert rows["butter"].amount == "2 packs of 250 g"
    assert rows["butter"].notes == ("400 g needed", "100 g in the house", "200 g left over")
    assert rows["olive oil"].amount == "3 tbsp"
    assert rows["olive oil"].notes == ("2–3 tbsp needed",)
    assert (rows["onion"].amount, rows["onion"].food) == ("12", "Fresh Onions")
    assert rows["candle"].dishes == ("light the lanterns",)


def test_the_tart_as_it_is_made_now(supper: Provisions) -> None:
    """× 2; salt × 1.75 (common practice, no source): 14 g."""
    (grown,) = grown_rows(supper)
    title, lines = grown

    assert title == "Onion tart: written for 4, made for 8 (× 2)"
    assert "300 g butter" in lines
    assert "6 eggs" in lines
    assert "4–6 tbsp cream" in lines
    assert "14 g salt; × 1.75 only, as for salt: common practice, no source; taste" in lines
    assert "handful parsley" in lines
    assert any("times" in line for line in lines)
