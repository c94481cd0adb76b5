"""How long a body works in a kitchen of its own before it sits down. Minutes.

Common practice, no source, and the figures are ours, but for the shortest pause: a quarter of an hour is the least that
counts as one by the German Working Hours Act (ArbZG, section 4; from memory).
"""

LONGEST_STRETCH = 120  # of work without a pause; ours
PAUSE = 15
SUPPER = 30  # a pause long enough to eat in; ours
SUPPER_BETWEEN = ("18:00", "21:00")  # on the days before, by the clock; ours

LAST_HOURS = 180  # before the guests come: what is done by then leaves them calm; ours
LIGHT_DAY, FULL_DAY, LONG_DAY = 120, 180, 240  # of work ahead in one day and one pair of hands; ours
