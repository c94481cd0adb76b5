"""What a probe's readings say of how something cools, reckoned by hand by Newton's law, T = Ta + (T0 − Ta)·e^(−kt).

The stages are the retail code's, 57 → 21 °C within 2 h and 57 → 5 °C within 6 h in all: FDA Food Code 3-501.14(A). An
ambient of 4 °C and constants whose halving times are whole minutes make the sums short: 57 °C is 53 above it, 21.11 °C
(70 °F) 17.11, 5 °C one.
"""

import math
from typing import Any

import msgspec
import pytest

from board.evening.cooling import CoolingOutlook, outlook
from board.evening.wishes import Done, Refusal, TakeBack, TakeReading
from board.facts.rule_sets import RULE_SET_NAMES, rule_set
from board.plan.load import PlanFile
from board.schedule.safety_facts import cooling_of
from board.sheet.run_sheet import Attended, Cooling, Keeping, RunSheet, Slot, Stage
from board.view.board import Viewer
from board.view.look import about
from board.view.reading import reading_said
from tests.conftest import Host, at, follows, slot

CODE = "FDA Food Code 3-501.14(A)"
STAGES = (Stage(57.0, 21.0, 70.0, 120, CODE), Stage(57.0, 5.0, 41.0, 360, CODE))
FRIDGE = 4.0
SEVENTY = (70 - 32) * 5 / 9


def halving(minutes: float, ambient: float = FRIDGE) -> Cooling:
    return Cooling(math.log(2) / minutes, ambient, (), STAGES)


def cooling_sheet(*coolings: Cooling, lane: str = "worktop") -> RunSheet:
    """Broth cooked till 17:00, then cooled in one slot of an hour after the other; served at 23:00."""
    of: dict[str, Any] = {"dish": "broth", "course": "Broth"}
    ids = [f"cool {n}" for n in range(1, len(coolings) + 1)]
    slots: list[Slot] = [slot("cook", "16:30", "17:00", lane="stovetop", then=(ids[0],), **of)]
    for n, cooling in enumerate(coolings):
        start, middle, end = f"{17 + n}:00", f"{17 + n}:30", f"{18 + n}:00"
        hands = (Attended(at(start), at(f"{17 + n}:02"), "host", "start"),
                 Attended(at(middle), at(f"{17 + n}:32"), "host", "look-in"),
                 Attended(at(f"{17 + n}:58"), at(end), "host", "end"))  # fmt: skip
        taker = ids[n + 1] if n + 1 < len(ids) else "serve"
        slots.append(slot(ids[n], start, end, lane=lane, attended=hands, cooling=cooling, then=(taker,),
                          waits=follows(slots[-1].id), keeping=Keeping(600, "fridge"), **of))  # fmt: skip
    slots.append(slot("serve", "23:00", "23:10", kind="serve", lane="front-of-house", course="Broth"))
    return RunSheet("Broth", "UTC", "0" * 64, "2026-11-28", at("16:30"), (), tuple(slots), hands=("host",))


def cooling(*coolings: Cooling) -> Host:
    """Under way in its first slot since 17:00."""
    host = Host(cooling_sheet(*coolings), at("16:30"))
    host.at("17:00")
    for id_, part in (("cook", "start"), ("cook", "end"), ("cool 1", "start")):
        host.wish(Done(id_, part))  # type: ignore[arg-type]
    return host


def read(host: Host, clock: str, celsius: float, id_: str = "cool 1") -> None:
    host.at(clock)
    assert host.wish(TakeReading(id_, celsius)) is None


def look(host: Host, id_: str = "cool 1") -> CoolingOutlook:
    found = outlook(host.evening.state, host.evening.look(), host.evening.sheet.by_id()[id_])
    assert found is not None
    return found


def minutes_of(host: Host) -> list[float]:
    """From 17:00 to each stage's end."""
    return [(each.at - at("17:00")).total_seconds() / 60 for each in look(host).stages if each.at is not None]


def test_one_reading_goes_on_by_the_estimate_which_halves_in_forty_minutes() -> None:
    """57 °C at 17:00. 53·2^(−t/40): at 70 °F t = 40·log2(53/17.11) = 65.2; at 5 °C t = 40·log2(53) = 229.1."""
    host = cooling(halving(40))
    read(host, "17:00", 57.0)

    found = look(host)

    assert found.readings == 0
    assert minutes_of(host) == pytest.approx([40 * math.log2(53 / (SEVENTY - 4)), 40 * math.log2(53)], abs=0.01)
    assert minutes_of(host) == pytest.approx([65.2, 229.1], abs=0.1)
    assert found.in_time


def test_two_readings_that_fall_go_before_the_estimate() -> None:
    """68 °C at 17:00 and 36 at 18:00, 64 and 32 above the fridge: it halves in 60 min, whatever the estimate said.

    57 °C is passed after 60·log2(64/53) = 16.3 min, 70 °F met after 60·log2(64/17.11) = 114.2 (97.9 later, in time),
    5 °C after 60·6 = 360 (343.7 later, in time).
    """
    host = cooling(halving(20))
    read(host, "17:00", 68.0)
    read(host, "18:00", 36.0)

    found = look(host)

    assert found.readings == 2
    assert minutes_of(host) == pytest.approx([114.2, 360.0], abs=0.1)
    assert [each.late_minutes for each in found.stages] == pytest.approx([97.9 - 120, 343.7 - 360], abs=0.1)
    assert found.in_time


def test_too_slow_is_told_by_how_much() -> None:
    """57 °C at 17:00, halving in 80 min: 70 °F after 130.5, 10.5 late; 5 °C after 80·log2(53) = 458.2, 98.2 late."""
    host = cooling(halving(80))
    read(host, "17:00", 57.0)

    assert [each.late_minutes for each in look(host).stages] == pytest.approx([10.5, 98.2], abs=0.1)
    assert not look(host).in_time


def test_readings_that_do_not_fall_leave_the_estimate() -> None:
    host = cooling(halving(40))
    read(host, "17:10", 50.0)
    read(host, "17:20", 51.0)

    assert look(host).readings == 0


def test_a_warmer_place_first_and_the_fridge_after_are_gone_through_one_by_one() -> None:
    """57 °C at 17:00 in a room of 20 °C, halving in 60: at 18:00 37/2 + 20 = 38.5. Then in the fridge, 34.5 above it,
    halving in 30: 70 °F after 30·log2(34.5/17.11) = 30.3 more, 5 °C after 30·log2(34.5) = 153.3 more."""
    host = cooling(halving(60, 20.0), halving(30))
    read(host, "17:00", 57.0)

    assert minutes_of(host) == pytest.approx([90.3, 213.3], abs=0.1)


def test_readings_of_the_slot_before_tell_when_57_was_passed() -> None:
    """60 °C at 17:00 in the room (40 above 20, halving in 60): 57 °C after 60·log2(40/37) = 6.7 min. Read again in the
    fridge: 30 °C at 18:10, 26 above, halving in 30: 5 °C after 30·log2(26) = 141 more."""
    host = cooling(halving(60, 20.0), halving(30))
    read(host, "17:00", 60.0)
    host.at("18:00")
    host.wish(Done("cool 1", "end"))
    host.wish(Done("cool 2", "start"))
    read(host, "18:10", 30.0, "cool 2")

    cold = look(host, "cool 2").stages[1]

    assert cold.at is not None
    assert cold.late_minutes == pytest.approx(70 + 141.0 - 6.7 - 360, abs=0.1)


def test_in_a_room_it_is_never_cold() -> None:
    host = cooling(halving(20, 21.5))
    read(host, "17:00", 57.0)

    assert [each.at for each in look(host).stages] == [None, None]
    assert not look(host).in_time


@pytest.mark.parametrize(("celsius", "late"), [(21.0, False), (SEVENTY, False), (21.2, True)])
def test_70_fahrenheit_is_met_by_either_figure_of_its_rule(celsius: float, late: bool) -> None:
    """57 °C at 17:00, and at 19:00 on the dot 21 °C, 70 °F, or a little more. FDA Food Code 3-501.14(A)."""
    host = cooling(halving(600))
    read(host, "17:00", 57.0)
    read(host, "19:00", celsius)

    assert (look(host).stages[0].late_minutes > 1e-6) is late


def test_where_every_reading_is_below_57_the_fall_is_gone_back_but_not_before_its_cooling_began() -> None:
    """Halving in 40: 30.5 °C (26.5 above) is 40 min after 57 °C (53 above). Read at 17:50: passed at 17:10. Read at
    17:20: not before 17:00."""
    late, early = cooling(halving(40)), cooling(halving(40))
    read(late, "17:50", 30.5)
    read(early, "17:20", 30.5)

    # 5 °C is 229.1 after 57 °C (the first worked case), so 229.1 - 360 where 57 was passed at 17:10.
    assert look(late).stages[1].late_minutes == pytest.approx(229.1 - 360, abs=0.1)
    assert look(early).stages[1].late_minutes == pytest.approx(20 + 189.1 - 360, abs=0.1)


def test_what_cools_is_read_without_a_core_temperature_and_never_put_off_or_refused() -> None:
    host = cooling(halving(40))
    read(host, "17:30", 40.0)

    assert [r.celsius for r in host.evening.state.readings] == [40.0]
    assert not isinstance(host.wish(Done("cool 1", "end")), Refusal)
    assert not isinstance(host.wish(TakeReading("cool 1", 30.0)), Refusal)  # while it stands
    assert isinstance(host.wish(TakeReading("cook", 30.0)), Refusal)


def test_a_reading_at_a_look_in_answers_it_and_u_takes_both_back() -> None:
    host = cooling(halving(40))
    host.at("17:30")

    host.wish(TakeReading("cool 1", 40.0, "look-in", 0))
    assert host.evening.state.steps["cool 1"].looked_in == 1
    host.wish(TakeBack())

    assert host.evening.state.steps["cool 1"].looked_in == 0
    assert host.evening.state.readings == ()


def test_the_words_after_a_reading() -> None:
    """The two readings above, and the slow case."""
    host = cooling(halving(20))
    read(host, "17:00", 68.0)
    present = host.at("18:00")
    viewer = Viewer(host.evening.sheet)

    said = reading_said(viewer, present, TakeReading("cool 1", 36.0))
    host.wish(TakeReading("cool 1", 36.0))

    told = "an estimate by 2 readings: 21 °C (70 °F) at 18:54, in time; 5 °C (41 °F) at 23:00, in time"
    assert said == f"core 36 °C (96.8 °F); {told}"
    assert about(viewer, host.evening.peek(), "cool 1") == told
    slow = cooling(halving(80))
    said = reading_said(viewer, slow.at("17:00"), TakeReading("cool 1", 57.0))
    assert said.endswith("5 °C (41 °F) at Sun 00:38, 1 h 39 late: shallower, ice, stir")
    warm = cooling(halving(20, 21.5))
    said = reading_said(viewer, warm.at("17:00"), TakeReading("cool 1", 57.0))
    assert "5 °C (41 °F) never, where it stands: shallower, ice, stir" in said


def test_a_plan_in_fahrenheit_reads_them_in_its_own_unit_first() -> None:
    host = cooling(halving(40))
    viewer = Viewer(msgspec.structs.replace(host.evening.sheet, fahrenheit=True))

    said = reading_said(viewer, host.at("17:00"), TakeReading("cool 1", 57.0))

    assert "70 °F (21 °C) at 18:05, in time" in said


@pytest.mark.parametrize("name", RULE_SET_NAMES)
def test_a_sheet_carries_the_stages_of_its_rules(name: str, plan_from: Any) -> None:
    file: PlanFile = plan_from(BROTH.replace("RULES", name))
    task = next(t for t in file.filled.tasks.values() if t.work is not None and t.work.cools is not None)

    found = cooling_of(file.plan, task, task.ways[0])

    assert found is not None
    assert [(s.begins, s.celsius, s.within_minutes) for s in found.stages] == [
        (s.start.celsius, s.end.celsius, s.within_minutes) for s in rule_set(name).cooling
    ]
    assert [s.fahrenheit for s in found.stages] == [70, 41]


BROTH = """
event: Broth
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
rules: RULES
guests: [8 guests]
hands:
  host:
    hours:
      on the day: 9:00 - 23:30
courses:
  - course: Broth
    at: 19:00
    dishes:
      - dish: Broth
        steps:
          - {step: simmer it, where: stovetop, takes: 30 min}
          - {step: cool it, takes: 1 h, cools: '5 cm deep, metal'}
"""
