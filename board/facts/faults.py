"""Faults of a kitchen that make people ill whatever the temperatures: their limits, each with its source. Pure.

FDA Food Code sections marked "read" were read in state adoptions (Washington, Minnesota, Delaware, Virginia); that the
2022 edition leaves them as they are is from memory.
"""

from board.facts.limits import Degrees

RAW_CONTACT = "FDA Food Code 3-302.11(A) and 4-602.11(A), from memory"
FROM_FROZEN = "USDA FSIS, safe defrosting: from frozen it takes about 1.5 times as long; from memory"
SLOW_FROM_FROZEN = "USDA FSIS, slow cookers: always thaw meat and poultry first; from memory"
PART_COOKED = (
    "FDA Food Code 3-401.14, read in state adoptions; USDA FSIS: never brown or part-cook meat to finish it later; from"
    " memory"
)
LEAST_OVEN = Degrees(fahrenheit=325, celsius=163)
DIAL_CELSIUS = 160.0  # the nearest mark of a dial in °C; our reading
LEAST_OVEN_SOURCE = "USDA FSIS, roasting: an oven of 325 °F or above for poultry; from memory"
STUFFED_AHEAD = "USDA FSIS, stuffing: stuff poultry just before it goes into the oven; from memory"
REHEATED_TWICE = "NHS and UK Food Standards Agency: reheat food only once; from memory"
FREEZE_DAYS = 7  # at -20 °C (-4 °F) or below; or 15 h at -35 °C (-31 °F)
FREEZE_AT = Degrees(fahrenheit=-4, celsius=-20)
PARASITES = "FDA Food Code 3-402.11, read in state adoptions"
MARINADE_MINUTES = 30  # raw and out of the fridge; common practice, within the two hours of the danger zone
MARINATED_OUT = "USDA FSIS, marinating: in the fridge, never on the counter; from memory"
MARINADE_AGAIN = "USDA FSIS, marinating: boil what has held raw meat before it is used as a sauce; from memory"
BOIL_MINUTES = 10  # at 100 °C
BEANS = "FDA Bad Bug Book, phytohaemagglutinin: 10 min at 100 °C destroys it, and 30 are advised; from memory"
OIL_DAYS = 4  # in the fridge
OIL_ROOM_MINUTES = 120
GARLIC_IN_OIL = "CDC, preventing botulism: garlic or herbs in oil in the fridge, 4 days at most; from memory"
THAWED_OUT = "USDA FSIS, safe defrosting: never on the counter; from memory"
RAW_FLOUR = "FDA, on handling flour: flour is raw, and nothing made of it is eaten unbaked; from memory"
WASHED_POULTRY = "USDA FSIS: raw poultry is not washed; from memory"
