"""Plans that want one change a host would think of, several for each kind of change. Figures of the trade in them:
common practice, no source."""

from tests.schedule.conflicts.clash_cases import HEAD


def supper(hands: str, courses: str, jobs: str = "", kitchen: str = "") -> str:
    """A plan out of its parts, each written from the left edge."""
    return f"{HEAD}{kitchen}hands:\n{hands}courses:\n{courses}{jobs}"


WHOLE = "then nothing is given up"
ALL_DAY = "  host:\n    hours: {on the day: '14:00 - 23:30'}\n"

# --- who does it ----------------------------------------------------------------------------------------------------

# Two things of 15 min that are good for 5, both Nora's.
SAUCE_AND_SALAD = supper(
    ALL_DAY + "  Nora:\n    hours: {on the day: '18:00 - 22:00'}\n",
    """
  - course: Main
    at: 19:30
    dishes:
      - dish: Poached pears with sauce
        steps:
          - {step: whisk the sauce, takes: 15 min, who: Nora, keeps: 5 min in the room}
      - dish: Green salad
        steps:
          - {step: dress the salad, takes: 15 min, who: Nora, keeps: 5 min in the room}
""",
)
# Nora comes when her peas should be on the table.
LATE_NORA = supper(
    ALL_DAY + "  Nora:\n    hours: {on the day: '19:00 - 22:00'}\n",
    """
  - course: Soup
    at: 19:10
    dishes:
      - dish: Pea soup
        steps:
          - {step: shell the peas, takes: 30 min, who: Nora, keeps: 2 h in the fridge}
          - {step: simmer the peas, where: stovetop, takes: 15 min, attended: 2 min at the start, keeps: 20 min hot}
""",
)
# The host kneads and whips at once, and Nora stands by.
IDLE_NORA = supper(
    "  host:\n    hours: {on the day: '17:55 - 23:30'}\n  Nora:\n    hours: {on the day: '17:55 - 22:00'}\n",
    """
  - course: Main
    at: 19:00
    dishes:
      - dish: Griddle bread
        steps:
          - {step: knead the dough, takes: 25 min, who: host, keeps: 1 h in the room}
          - {step: roll the dough thin, takes: 15 min, who: host, keeps: 20 min in the room}
          - {step: griddle the breads, where: stovetop, takes: 15 min, who: host, keeps: 10 min hot}
      - dish: Whipped bean paste
        steps:
          - {step: whip the beans, takes: 20 min, who: host, keeps: 2 h in the fridge}
""",
)
# Once the soup is cleared, Nora has 12 min twice, and the main goes out 20 min after.
AFTER_THE_SOUP = supper(
    ALL_DAY + "  Nora:\n    hours: {on the day: '18:00 - 22:00'}\n",
    """
  - course: Soup
    at: '19:00'
    eaten in: 20 min
    dishes:
      - dish: Cold soup
        steps: [{step: ladle the soup, takes: 5 min, keeps: 20 min in the room}]
  - course: Main
    at: 19:45
    dishes:
      - dish: Poached pears with sauce
        steps:
          - {step: whisk the sauce, takes: 12 min, who: Nora, after: clear Soup, keeps: 15 min in the room}
      - dish: Green salad
        steps:
          - {step: dress the salad, takes: 12 min, who: Nora, after: clear Soup, keeps: 15 min in the room}
""",
)
WHO = {
    "a helper's two things at once": (SAUCE_AND_SALAD, "host does '", WHOLE),
    "a helper who comes too late": (LATE_NORA, "host does 'shell the peas' instead of Nora", "Soup"),
    "a helper after the soup": (AFTER_THE_SOUP, "host does '", "Main 19:54 → 19:45"),
    "a host with two things at once": (IDLE_NORA, "Nora does '", "Main"),
}

# --- an evening, or a day, before -----------------------------------------------------------------------------------

TERRINE = supper(
    "  host:\n    hours: {on the day: '16:00 - 23:30'}\n",
    """
  - course: Starter
    at: 19:15
    dishes:
      - dish: Lentil terrine
        perishable: no
        steps:
          - {step: press the lentils into the mould, takes: 25 min, keeps: 1 h in the room}
          - {step: set the terrine, where: fridge, takes: 5 h, attended: none, keeps: 2 days in the fridge}
""",
)
MANY_JOBS = supper(
    "  host:\n    hours: {on the day: '17:30 - 23:30'}\n",
    """
  - course: Main
    at: 19:30
    dishes:
      - dish: Barley pot
        steps:
          - {step: soak the barley, takes: 20 min, keeps: 2 days in the fridge}
          - {step: boil the barley, where: stovetop, takes: 30 min, attended: 2 min at the start, keeps: 30 min hot}
""",
    "jobs: [lay the table, tidy the room, iron the cloth]\n",
)
# The crackers were to be baked on the day, when the oven is full; on Friday evening it is free.
CRACKERS = supper(
    "  host:\n    hours: {day before: '18:00 - 21:00', on the day: '17:00 - 23:30'}\n",
    """
  - course: Main
    at: 19:00
    dishes:
      - dish: Slow beans
        steps:
          - step: bake the beans
            where: oven at 150 C (145 to 155 C)
            takes: 95 min
            keeps: 5 min hot
            best within: 5 min
      - dish: Seed crackers
        perishable: no
        steps:
          - step: bake the crackers
            where: oven at 200 C (195 to 210 C)
            takes: 20 min
            day: on the day
            keeps: 5 days in the room
""",
)
AHEAD = {
    "an evening for what has to set": (TERRINE, "host works the evening before too", "Starter"),
    "an evening for too many jobs": (MANY_JOBS, "host works the evening before too", WHOLE),
    "the day before instead of on the day": (
        CRACKERS,
        "let 'bake the crackers' be done whenever it suits",
        WHOLE,
    ),
}

# --- a little longer ------------------------------------------------------------------------------------------------

# 40 min before the guests, and two jobs of 25 that only suit then.
TEN_BEFORE = supper(
    "  host:\n    hours: {on the day: '17:50 - 18:30, 18:50 - 23:00'}\n",
    """
  - course: Main
    at: 19:30
    dishes:
      - dish: Dumplings
        steps:
          - {step: fold the dumplings, takes: 25 min, keeps: 2 h}
          - {step: steam the dumplings, where: 'stovetop, 1 ring', takes: 12 min, attended: 1 min at the start}
""",
    "jobs: [lay the table]\n",
)
# The host's hours end at 21:05, and the sweet is cleared by 21:15.
TEN_AFTER = supper(
    "  host:\n    hours: {on the day: '15:00 - 21:05'}\n",
    """
  - course: Sweet
    at: 20:45
    dishes:
      - dish: Pancakes
        steps:
          - {step: fry the pancakes, where: stovetop, takes: 15 min, keeps: 5 min hot}
""",
)
# The dough takes until ten past eight on Friday, and Friday ends at eight.
TEN_ON_FRIDAY = supper(
    "  host:\n    hours: {day before: '18:40 - 20:00', on the day: '17:00 - 23:30'}\n",
    """
  - course: Main
    at: 19:00
    dishes:
      - dish: Cold-proved rolls
        perishable: no
        steps:
          - {step: knead the dough, takes: 30 min, day: day before, keeps: 5 min in the room}
          - {step: fold and shape the dough, takes: 60 min, day: day before, keeps: 1 day in the fridge}
          - {step: bake the rolls, where: oven at 220 C, takes: 20 min, keeps: 1 h in the room}
""",
)
LONGER = {
    "ten minutes before": (TEN_BEFORE, "host begins 10 min earlier on the day, at 17:40", WHOLE),
    "ten minutes after": (TEN_AFTER, "host works 10 min longer on the day, until 21:15", WHOLE),
    "ten minutes of another day": (
        TEN_ON_FRIDAY,
        "host begins 10 min earlier the day before, at 18:30",
        WHOLE,
    ),
}

# --- away at another time -------------------------------------------------------------------------------------------

DRESSING = supper(
    """  host:
    hours: {on the day: '17:00 - 23:30'}
    away: {get dressed: 17:45 - 18:15}
""",
    """
  - course: Main
    at: 18:45
    dishes:
      - dish: Risotto
        steps:
          - {step: stir the risotto, where: stovetop, takes: 40 min, attended: all, keeps: 10 min hot}
""",
)
CALLING = supper(
    """  host:
    hours: {on the day: '16:00 - 23:30'}
    away: {call the cousins: 'sat 17:00 - 17:30', greet the guests: '18:30 - 18:35'}
""",
    """
  - course: Nibbles
    at: 18:45
    dishes:
      - dish: Choux buns
        steps:
          - {step: beat the dough, takes: 60 min, not before: '16:30', keeps: 10 min in the room}
          - {step: bake the buns, where: oven at 190 C, takes: 30 min, keeps: 2 h in the room}
""",
)
NORAS_BUS = supper(
    """  host:
    hours: {on the day: '18:20 - 23:30'}
  Nora:
    hours: {on the day: '16:00 - 23:00'}
    away: {ring the bus line: 17:50 - 18:10}
""",
    """
  - course: Nibbles
    at: 18:40
    dishes:
      - dish: Stuffed leaves
        steps:
          - {step: roll the leaves, takes: 45 min, who: Nora, not before: '17:20', keeps: 1 h in the room}
""",
)
AWAY = {
    "dressing earlier": (DRESSING, "host's 'get dressed' 30 min earlier, 17:15–17:45", WHOLE),
    "a call at another time": (CALLING, "host's 'call the cousins' 30 min earlier, 16:30–17:00", "Nibbles"),
    "a helper's own errand": (NORAS_BUS, "Nora's 'ring the bus line'", "Nibbles"),
}

# --- heated through beside another ----------------------------------------------------------------------------------

GRATIN = """
  - course: Main
    at: 19:30
    dishes:
      - dish: Potato gratin
        ingredients: [1.5 kg potatoes (veg), 500 ml cream (dairy)]
        steps:
          - step: bake the gratin
            where: oven at 170 C
            takes: 60 min
            {pinned}keeps: 1 h in the oven at 90 C (80 to 100 C)
          - step: cool the gratin
            cools: 3 cm deep, earthenware, cold water
            takes: 40 min
            attended: 2 min at the start
            keeps: 2 days in the fridge
          - step: {verb} the gratin
            where: oven at {heat}, 1 shelf
            takes: 25 min
            {until}keeps: 5 min in the room
            best within: 5 min
      - dish: Roast roots
        steps:
          - step: roast the roots
            where: oven at 210 C (200 to 220 C), 1 shelf
            takes: 40 min
            keeps: 5 min in the room
            best within: 5 min
"""


def gratin(heat: str, *, pinned: str = "", verb: str = "reheat", until: str = "until: 74 C\n            ") -> str:
    return supper(ALL_DAY, GRATIN.format(pinned=pinned, verb=verb, until=until, heat=heat))


BESIDE = {
    "beside a hotter roast": (
        gratin("150 C (140 to 160 C)"),
        "heat 'reheat the gratin' through beside 'roast the roots'",
        WHOLE,
    ),
    "beside it by other words": (
        gratin("160 C (155 to 165 C)", verb="warm through"),
        "heat 'warm through the gratin' through beside 'roast the roots'",
        WHOLE,
    ),
    "beside it where the setting has no range": (
        gratin("150 C"),
        "heat 'reheat the gratin' through beside 'roast the roots'",
        WHOLE,
    ),
}
BAKED_ON_THE_DAY = gratin("150 C (140 to 160 C)", pinned="not before: '18:00'\n            ")
BAKED_AFRESH = gratin("150 C (140 to 160 C)", verb="crisp", until="reheats: no\n            ")
NO_PROBE = gratin("150 C (140 to 160 C)", until="")

# --- a course sooner ------------------------------------------------------------------------------------------------

# Cleared at 19:25 at the soonest, and then 20 min of work: 19:50 and not 19:40.
SOUP_FIRST = """
  - course: Soup
    at: '19:00'
    eaten in: 20 min
    dishes:
      - dish: Cold soup
        steps: [{{step: ladle the soup, takes: 5 min, keeps: 20 min in the room}}]
  - course: Main
    at: {main}
    dishes:
      - dish: Omelettes
        steps:
          - {{step: fry the omelettes, where: stovetop, takes: 20 min, after: clear Soup, keeps: 2 min hot}}
"""
SOONER = {
    "the course before, by the clock": (
        supper(ALL_DAY, SOUP_FIRST.format(main="'19:40'")), "serve Soup 10 min earlier, at 18:50", "Main 19:50 → 19:40",
    ),
    "the course before, the next so long after it": (
        supper(ALL_DAY, SOUP_FIRST.format(main="40 min after the course before")),
        "serve Soup 10 min earlier, at 18:50",
        "Main 19:50 → 19:40",
    ),
    "a shorter gap for what cannot stand": (
        supper(
            ALL_DAY,
            """
  - course: Soup
    at: '19:00'
    eaten in: 20 min
    dishes:
      - dish: Cold soup
        steps: [{step: ladle the soup, takes: 5 min, keeps: 20 min in the room}]
  - course: Ices
    at: 60 min after the course before
    dishes:
      - dish: Sorbet
        perishable: no
        steps:
          - {step: scoop the sorbet, takes: 5 min, not after: '19:35', keeps: 10 min in the room}
""",
        ),
        "serve Ices 10 min earlier, at 19:50", WHOLE,
    ),
}  # fmt: skip

# --- two at once ----------------------------------------------------------------------------------------------------

# Nora's two things at once make the main late; the host's 40 min before the guests are 10 short.
TWO_TROUBLES = supper(
    "  host:\n    hours: {on the day: '17:50 - 18:30, 18:50 - 23:00'}\n"
    "  Nora:\n    hours: {on the day: '18:50 - 22:00'}\n",
    """
  - course: Main
    at: 19:30
    dishes:
      - dish: Dumplings
        steps:
          - {step: fold the dumplings, takes: 25 min, who: host, keeps: 2 h}
          - {step: steam the dumplings, where: 'stovetop, 1 ring', takes: 12 min, attended: 1 min at the start}
      - dish: Sauce
        steps:
          - {step: whisk the sauce, takes: 15 min, who: Nora, keeps: 5 min in the room}
      - dish: Green salad
        steps:
          - {step: dress the salad, takes: 15 min, who: Nora, keeps: 5 min in the room}
""",
    "jobs: [{job: lay the table, takes: 25 min, who: host}]\n",
)
# Dressing stands in the middle of the hours, and what is left on either side of it is too short.
TWO_EDGES = supper(
    """  host:
    hours: {on the day: '17:00 - 21:05'}
    away: {get dressed: 17:45 - 18:15}
""",
    """
  - course: Main
    at: 18:45
    dishes:
      - dish: Risotto
        steps:
          - {step: stir the risotto, where: stovetop, takes: 40 min, attended: all, keeps: 10 min hot}
  - course: Sweet
    at: 20:45
    dishes:
      - dish: Pancakes
        steps:
          - {step: fry the pancakes, where: stovetop, takes: 15 min, keeps: 5 min hot}
""",
)
# The crackers were to be baked on the day, when the oven is full, and the host's Friday evening is too short for them.
OVEN_AND_FRIDAY = CRACKERS.replace("day before: '18:00 - 21:00'", "day before: '18:00 - 18:30'")
# The loaf takes ten minutes more before the guests, and the sweet ten more at the end.
BOTH_ENDS = supper(
    "  host:\n    hours: {on the day: '17:50 - 21:05'}\n",
    """
  - course: Main
    at: 18:50
    dishes:
      - dish: Plaited loaf
        steps:
          - {step: plait the dough, takes: 30 min, keeps: 20 min in the room}
          - {step: bake the loaf, where: stovetop, takes: 35 min, attended: 2 min at the start, keeps: 10 min hot}
  - course: Sweet
    at: 20:45
    dishes:
      - dish: Pancakes
        steps:
          - {step: fry the pancakes, where: stovetop, takes: 15 min, keeps: 5 min hot}
""",
)
TWO = {
    "the hours at both ends": (BOTH_ENDS, "host begins 10 min earlier on the day, at 17:40", "Main"),
    "a step and an hour": (TWO_TROUBLES, "host begins 10 min earlier on the day, at 17:40", WHOLE),
    "an absence and an hour": (
        TWO_EDGES,
        "host works 10 min longer on the day, until 21:15",
        WHOLE,
    ),
    "another day and its hours": (
        OVEN_AND_FRIDAY,
        "let 'bake the crackers' be done whenever it suits",
        WHOLE,
    ),
}

# --- two causes -----------------------------------------------------------------------------------------------------

# Once the soup is cleared, the oven cannot be at 150 and at 220 °C, and Nora cannot make two things at once: either is
# enough to make the main late.
OVEN_AND_HANDS = supper(
    ALL_DAY + "  Nora:\n    hours: {on the day: '18:00 - 22:00'}\n",
    """
  - course: Soup
    at: '19:00'
    eaten in: 20 min
    dishes:
      - dish: Cold soup
        steps: [{step: ladle the soup, takes: 5 min, keeps: 20 min in the room}]
  - course: Main
    at: 19:45
    dishes:
      - dish: Baked pears
        steps:
          - step: bake the pears
            where: oven at 150 C (145 to 155 C)
            takes: 15 min
            after: clear Soup
            keeps: 20 min hot
      - dish: Flatbread
        steps:
          - step: bake the flatbread
            where: oven at 220 C (215 to 230 C)
            takes: 12 min
            after: clear Soup
            keeps: 20 min hot
      - dish: Sauce
        steps:
          - {step: whisk the sauce, takes: 12 min, who: Nora, after: clear Soup, keeps: 15 min in the room}
      - dish: Green salad
        steps:
          - {step: dress the salad, takes: 12 min, who: Nora, after: clear Soup, keeps: 15 min in the room}
""",
)
# From half past five the beans alone take until eight, whoever has time: 15 min late. On top of it, Nora is to dress
# the salad when they are soaked.
TIME_AND_HANDS = supper(
    "  host:\n    hours: {on the day: '17:30 - 23:30'}\n  Nora:\n    hours: {on the day: '17:30 - 22:00'}\n",
    """
  - course: Main
    at: 19:50
    dishes:
      - dish: Soaked beans
        steps:
          - {step: let the beans soak, takes: 130 min, attended: none, keeps: 30 min in the room}
          - {step: whisk the beans, takes: 20 min, who: Nora, keeps: 30 min in the room}
      - dish: Green salad
        steps:
          - {step: dress the salad, takes: 15 min, who: Nora, after: let the beans soak, keeps: 30 min in the room}
""",
)

# --- and where nothing mends it all ---------------------------------------------------------------------------------

# The host alone may make sauce and salad, both at the last minute, and neither can be done without; and the 40 min
# before the guests are 10 short.
IN_PART = supper(
    "  host:\n    hours: {on the day: '17:50 - 18:30, 18:50 - 23:00'}\n",
    """
  - course: Main
    at: 19:30
    dishes:
      - dish: Dumplings
        steps:
          - {step: fold the dumplings, takes: 25 min, keeps: 2 h}
          - {step: steam the dumplings, where: 'stovetop, 1 ring', takes: 12 min, attended: 1 min at the start}
      - dish: Sauce
        steps:
          - {step: whisk the sauce, takes: 15 min, who: host, keeps: 5 min in the room}
      - dish: Green salad
        steps:
          - {step: dress the salad, takes: 15 min, who: host, keeps: 5 min in the room}
""",
    """jobs:
  - {job: lay the table, takes: 25 min}
  - {job: ring for a taster, takes: 1 min, after: [whisk the sauce, dress the salad]}
""",
)

ALL = {**WHO, **AHEAD, **LONGER, **AWAY, **BESIDE, **SOONER, **TWO}
