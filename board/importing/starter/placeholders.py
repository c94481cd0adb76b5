"""Placeholder courses for a new plan, our own: plain vegetable dishes that fit the kitchen. Pure.

Amounts and durations are common practice, no source. `n`: how many eat; handwork grows with them.
"""

from dataclasses import dataclass

from board.facts.serving import table_minutes

# `eaten in` by what a course is in a meal, the soup's for other starters.
EATEN = {
    "nibbles": "20 to 25 to 30 min", "starter": "15 to 20 to 25 min", "salad": "15 to 20 min",
    "main": "25 to 30 to 40 min", "cheese": "15 to 20 to 25 min", "sweet": "20 to 25 min", "drink": "15 to 20 min",
}  # fmt: skip
TABLE_SIZE = 10  # eaters that the durations below are for
SHORTEST_EATEN = 10


def usually_eaten(kind: str | None) -> int:
    """The likely minutes of `eaten in`."""
    figures = [int(each) for each in _usual(kind).split() if each.isdigit()]
    return figures[len(figures) // 2]


def _usual(kind: str | None) -> str:
    return EATEN.get(kind or "", EATEN["starter"])


def eaten_in(kind: str | None, gap: int | None, eaters: int) -> str:
    """`eaten in` of a course: as usual, or what is left of the minutes to the next course where those are fewer."""
    likely = usually_eaten(kind)
    room = likely if gap is None else gap - table_minutes("clear", eaters) - table_minutes("serve", eaters)
    if likely <= room:
        return _usual(kind)
    likely = max(SHORTEST_EATEN, room)
    return f"{likely - 5} to {likely} to {likely + 5} min"


@dataclass(frozen=True)
class Setting:
    """How many eat, and the cooking equipment."""

    n: int
    ovens: int
    rings: int

    def handwork(self, low: int, likely: int, high: int) -> str:
        """`takes` for work that grows with the number of eaters; minutes."""
        figures = (max(1, round(minutes * max(1.0, self.n / TABLE_SIZE))) for minutes in (low, likely, high))
        return " to ".join(str(figure) for figure in figures) + " min"

    def grams(self, each: int) -> str:
        grams = each * self.n
        return f"{grams} g" if grams < 1000 else f"{grams / 1000:g} kg"

    def pieces(self, every: int) -> int:
        """One per `every` eaters, rounded up."""
        return max(1, -(-self.n // every))


@dataclass(frozen=True)
class Course:
    """A course to write: its name, `eaten in`, other keys, and its dishes as YAML lines.

    `spoils`: its leftovers need chilling, so a job does that. `at`: when, if it is not the usual time.
    """

    name: str
    eaten: str
    dishes: str
    keys: str = ""
    spoils: bool = True
    at: str = ""


def courses(count: int, place: Setting) -> list[Course]:
    """One to seven courses, in serving order."""
    chosen = [
        ["Main"],
        ["Main", "Sweet"],
        ["Soup", "Main", "Sweet"],
        ["Nibbles", "Soup", "Main", "Sweet"],
        ["Nibbles", "Soup", "Salad", "Main", "Sweet"],
        ["Nibbles", "Soup", "Salad", "Main", "Cheese", "Sweet"],
        ["Nibbles", "Soup", "Salad", "Main", "Cheese", "Sweet", "Coffee"],
    ][count - 1]
    make = {
        "Nibbles": _nibbles, "Soup": _soup, "Salad": _salad, "Main": _main, "Cheese": _cheese, "Sweet": _sweet,
        "Coffee": _coffee,
    }  # fmt: skip
    return [make[name](place) for name in chosen]


def _nibbles(at: Setting) -> Course:
    """Nothing in it needs chilling: it stands out for as long as guests do."""
    return Course("Nibbles", EATEN["nibbles"], f"""\
- dish: Radishes and olives
  for: {at.n}
  ingredients:
    - {at.pieces(4)} bunches radishes (veg)
    - {at.grams(25)} olives (store cupboard)
    - {at.pieces(12)} tbsp olive oil (store cupboard)
    - to taste salt
  steps:
    - {{step: drain and oil the olives, takes: {at.handwork(3, 4, 5)}, keeps: 8 h in the room}}
    - {{step: wash and trim the radishes, takes: {at.handwork(8, 10, 14)}, keeps: 8 h in the fridge}}
    - {{step: set out the radishes and the olives, takes: {at.handwork(3, 4, 5)}, keeps: 1 h in the room}}
""", keys="standing: yes\n", spoils=False)  # fmt: skip


def _soup(at: Setting) -> Course:
    if at.rings < 2:
        return Course("Soup", EATEN["starter"], f"""\
- dish: Cold beetroot soup
  for: {at.n}
  ingredients:
    - {at.grams(120)} cooked beetroot (veg)
    - {at.pieces(8)} l buttermilk (dairy)
    - {at.pieces(8)} bunches dill (veg)
    - to taste salt
  steps:
    - {{step: grate the beetroot into the buttermilk, takes: {at.handwork(12, 15, 20)}, keeps: 1 day in the fridge}}
    - {{step: ladle out the soup, takes: {at.handwork(3, 4, 6)}, best within: 10 min, keeps: 20 min in the room}}
""")  # fmt: skip
    return Course("Soup", EATEN["starter"], f"""\
- dish: Carrot soup
  for: {at.n}
  ingredients:
    - {at.grams(150)} carrots (veg)
    - {at.pieces(4)} onions (veg)
    - {at.pieces(5)} l vegetable stock (store cupboard)
    - {at.pieces(3)} tbsp olive oil (store cupboard)
    - to taste salt
  steps:
    - step: peel and cut the carrots and onions
      takes: {at.handwork(14, 18, 22)}
      keeps: 1 day in the fridge
    - step: simmer the soup
      where: stovetop, 1 ring
      takes: 30 to 35 to 40 min
      attended: 5 min at the start, 1 min every 10 min, 2 min at the end
      look for: a spoon crushes a carrot
      best within: 20 min
      keeps: 45 min on the stovetop, 1 ring
      call: Soup on
""")  # fmt: skip


def _salad(at: Setting) -> Course:
    return Course("Salad", EATEN["salad"], f"""\
- dish: Leaves and apple
  for: {at.n}
  ingredients:
    - {at.pieces(3)} heads lettuce (veg)
    - {at.pieces(4)} apples (veg)
    - {at.pieces(3)} tbsp cider vinegar (store cupboard)
    - {at.pieces(2)} tbsp olive oil (store cupboard)
  steps:
    - {{step: wash the leaves, takes: {at.handwork(8, 10, 14)}, keeps: 8 h in the fridge}}
    - step: slice the apples and dress the leaves
      takes: {at.handwork(4, 5, 6)}
      best within: 10 min
      keeps: 20 min in the room
""")  # fmt: skip


def _main(at: Setting) -> Course:
    with_oven = _roast(at) + (_beans(at) if at.rings else "")
    without = _stew(at) if at.rings else _cold_plate(at)
    return Course("Main", EATEN["main"], with_oven if at.ovens else without)


def _roast(at: Setting) -> str:
    shelves = "1 shelf" if at.n <= TABLE_SIZE else "2 shelves"
    return f"""\
- dish: Roast roots and chickpeas
  for: {at.n}
  ingredients:
    - {at.grams(250)} carrots and parsnips (veg)
    - {at.pieces(3)} tins chickpeas (store cupboard)
    - {at.pieces(2)} tbsp olive oil (store cupboard)
    - to taste salt
  steps:
    - step: peel and cut the roots
      takes: {at.handwork(18, 22, 28)}
      keeps: 1 day in the fridge
    - step: roast the roots and chickpeas
      where: oven at 200 C (190 to 210 C), {shelves}
      takes: 45 to 50 to 60 min                # low, likely, high
      attended: 3 min at the start, 2 min every 20 min, 2 min at the end
      look for: dark at the edges, soft to a knife
      best within: 12 min
      keeps: 30 min hot
      call: Roots in
"""


def _beans(at: Setting) -> str:
    return f"""\
- dish: Green beans
  for: {at.n}
  ingredients:
    - {at.grams(100)} green beans (veg)
    - to taste salt
  steps:
    - {{step: trim the beans, takes: {at.handwork(8, 10, 14)}, keeps: 1 day in the fridge}}
    - step: boil the beans
      where: stovetop, 1 ring
      takes: 12 to 14 to 16 min
      attended: 2 min at the start, 2 min at the end
      look for: tender, still bright
      best within: 10 min
      keeps: 20 min hot
"""


def _stew(at: Setting) -> str:
    return f"""\
- dish: Lentils with roots
  for: {at.n}
  ingredients:
    - {at.grams(80)} lentils (store cupboard)
    - {at.grams(150)} carrots (veg)
    - {at.pieces(4)} onions (veg)
    - {at.pieces(3)} tbsp olive oil (store cupboard)
    - to taste salt
  steps:
    - step: peel and cut the roots
      takes: {at.handwork(14, 18, 22)}
      keeps: 1 day in the fridge
    - step: simmer the lentils with the roots
      where: stovetop, 1 ring
      takes: 40 to 45 to 50 min                # low, likely, high
      attended: 6 min at the start, 1 min every 12 min, 2 min at the end
      look for: soft, not falling apart
      best within: 20 min
      keeps: 45 min on the stovetop, 1 ring
      call: Lentils on
"""


def _cold_plate(at: Setting) -> str:
    return f"""\
- dish: White beans with tomatoes and bread
  for: {at.n}
  ingredients:
    - {at.pieces(2)} tins white beans (store cupboard)
    - {at.grams(120)} tomatoes (veg)
    - {at.pieces(6)} loaves bread (bakery)
    - {at.pieces(2)} tbsp olive oil (store cupboard)
    - to taste salt
  steps:
    - {{step: dress the beans and tomatoes, takes: {at.handwork(12, 15, 20)}, keeps: 6 h in the fridge}}
    - {{step: slice the bread, takes: {at.handwork(4, 5, 6)}, best within: 20 min, keeps: 1 h in the room}}
"""


def _cheese(at: Setting) -> Course:
    return Course("Cheese", EATEN["cheese"], f"""\
- dish: Three cheeses, rye bread
  for: {at.n}
  ingredients:
    - {at.grams(60)} cheese, three kinds (dairy)
    - {at.pieces(8)} loaves rye bread (bakery)
  steps:
    - {{step: unwrap the cheeses and cut the bread, takes: {at.handwork(6, 8, 10)}, keeps: 1 h 30 in the room}}
""")  # fmt: skip


def _sweet(at: Setting) -> Course:
    return Course("Sweet", EATEN["sweet"], f"""\
- dish: Oranges with dates
  for: {at.n}
  ingredients:
    - {at.n} oranges (veg)
    - {at.pieces(6)} packs dates (store cupboard)
  steps:
    - step: slice the oranges and lay the dates between
      takes: {at.handwork(12, 15, 20)}
      keeps: 1 day in the fridge
""")  # fmt: skip


def _coffee(at: Setting) -> Course:
    where = "where: 'stovetop, 1 ring', " if at.rings else ""
    return Course("Coffee", EATEN["drink"], f"""\
- dish: Coffee and candied peel
  for: {at.n}
  ingredients:
    - {at.grams(9)} coffee (store cupboard)
    - {at.pieces(8)} packs candied peel (baking)
  steps:
    - {{step: brew the coffee, {where}takes: 8 to 10 to 12 min, best within: 10 min, keeps: 20 min hot}}
""", spoils=False)  # fmt: skip
