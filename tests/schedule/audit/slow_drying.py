"""Plan texts with a rest in a switched-off oven, and how to find one's way in their sheets.

Slices dried 45 to 60 min at 225 °F that rest a full hour in the oven, switched off: common practice, no source.
"""

from msgspec.structs import replace

from board.sheet.run_sheet import RunSheet, Slot
from tests.schedule.audit.tampering import with_slot

DRY = "rice-pudding-with-dried-apple/dry-the-apple-slices"
REST = "rice-pudding-with-dried-apple/rest-the-apple-slices-in-the-closed-oven"
TOP = "rice-pudding-with-dried-apple/top-the-pudding"
TRAY = "tray-bake/bake-the-tray"
PLUMS = "plum-sauce/cook-the-plums"
FETCH = "flatbreads/fetch-the-flatbreads"
REST_NAME = "rest the apple slices in the closed oven"

APPLES = """
event: Apples and plums
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [8 guests]
kitchen:
  to the table: 2 min
  ovens:
    main oven: {shelves: 2, cools ajar: 10 min from 200 to 120 C}
    bread oven: {shelves: 3}
hands:
  host:
    hours:
      day before: 16:00 - 22:00
      on the day: 14:00 - 23:30
courses:
  - course: Pudding
    at: 19:30
    eaten in: 20 to 25 to 40 min
    dishes:
      - dish: Rice pudding with dried apple
        steps:
          - step: core and slice the apples
            takes: 25 min
          - step: dry the apple slices
            where: main oven at 225 F (215 to 235 F)
            takes: 45 to 50 to 60 min
            keeps: 2 min
            day: day before
          - step: rest the apple slices in the closed oven
            where: main oven off
            takes: 60 min
            keeps: 2 days in the room
            day: day before
          - step: top the pudding
            takes: 10 min
            keeps: 20 min
      - dish: Tray bake
        steps:
          - step: bake the tray
            where: main oven at 180 C
            takes: 40 min
            keeps: 2 days in the room
            day: day before
            after: rest the apple slices in the closed oven
      - dish: Plum sauce
        steps:
          - step: cook the plums
            where: stovetop
            takes: 15 min
            keeps: 3 days in the fridge
jobs:
  - job: light the candles
    takes: 10 min
    with guests: yes
"""

TRAY_ALONE = "      - dish: Tray bake\n        steps:\n          - step: bake the tray"
AFTER_THE_REST = "            after: rest the apple slices in the closed oven\n"
KEPT_WARM = """      - dish: Tray bake
        steps:
          - step: warm the syrup
            where: stovetop
            takes: 5 min
            keeps: 2 h in the main oven at 60 C (50 to 70 C)
          - step: bake the tray
            after: [rest the apple slices in the closed oven, warm the syrup]"""


def heating_of(sheet: RunSheet, id_: str) -> Slot:
    """The turning of the dial that ends as a step goes in."""
    start = sheet.by_id()[id_].start
    return next(slot for slot in sheet.slots if slot.kind == "heat" and slot.end == start)


def length(slot: Slot) -> int:
    return int((slot.end - slot.start).total_seconds() // 60)


def with_use(sheet: RunSheet, id_: str, **facts: object) -> RunSheet:
    """The sheet with other facts about what one slot uses."""
    slot = sheet.by_id()[id_]
    return with_slot(sheet, id_, uses=tuple(replace(use, **facts) for use in slot.uses))
