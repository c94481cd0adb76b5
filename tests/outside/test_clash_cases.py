"""Clashes every cook knows, named as such. Common practice, no source: facts of the trade, not of a handbook."""

from datetime import timedelta

import pytest

from board.schedule.audit.validate import validate
from board.schedule.conflicts.clashes import OVENS
from board.sheet import said
from tests.schedule.conflicts.clash_cases import ONE_PAN, PEAR_SLICES, SQUASH_AND_POT, Worked


@pytest.fixture(scope="module")
def squash() -> Worked:
    return Worked(SQUASH_AND_POT)


def test_the_roast_and_the_pot_kept_warm_fight_over_the_one_oven(squash: Worked) -> None:
    assert squash.fought_over() == [{("cook the barley", OVENS), ("roast the squash", OVENS)}]
    why = said.why(squash.sheet, squash.sheet.given_up[0].why)
    assert "the oven cannot take" in why
    assert "200 to 220 °C" in why
    assert "80 to 100 °C" in why
    assert "no one setting does for all" in why


def test_a_ring_and_a_second_oven_are_ways_out_and_truly_help(squash: Worked) -> None:
    ways = squash.ways()

    assert any("on a ring" in way.what for way in ways)
    assert any("second oven" in way.what for way in ways)
    for way in ways:
        again = Worked(way.text)
        assert len(again.sheet.given_up) == way.remains < len(squash.sheet.given_up)
        assert validate(again.file, again.sheet) == []


def test_slices_rest_their_full_time_in_the_closed_oven_the_day_before_and_nothing_joins_them() -> None:
    worked = Worked(PEAR_SLICES.format(day="day before", hours="18:00 - 22:30"))

    slots = {slot.name: slot for slot in worked.sheet.slots}
    dry, rest, tray = (
        slots[name] for name in ("dry the pear slices", "rest the pear slices in the closed oven", "bake the tray")
    )
    assert worked.sheet.given_up == ()
    assert rest.start == dry.end
    assert rest.end - rest.start == timedelta(minutes=40)
    assert rest.start.date().isoformat() == "2026-11-27"
    assert tray.end <= dry.start or tray.start > rest.end
    heats = [slot for slot in worked.sheet.slots if slot.kind == "heat"]
    assert all(heat.end <= rest.start or heat.start >= rest.end for heat in heats)


def test_an_evening_too_short_for_slices_and_tray_names_both() -> None:
    """25 min slicing, the oven heating meanwhile; 55 + 40 + 13 to heat again + 40: 2 h 53; 2 h 45 are there."""
    worked = Worked(PEAR_SLICES.format(day="day before", hours="18:00 - 20:45"))

    named = set().union(*worked.fought_over())
    assert ("rest the pear slices in the closed oven", OVENS) in named or ("dry the pear slices", OVENS) in named
    assert ("bake the tray", OVENS) in named


def test_the_order_in_one_pan_holds_and_the_pan_is_never_shared() -> None:
    worked = Worked(ONE_PAN)

    slots = {slot.name: slot for slot in worked.sheet.slots}
    toast, turn, fry = (slots[n] for n in ("toast the seeds", "turn the barley in the seeds", "fry the flatbreads"))
    served = slots["serve Main"].start
    assert toast.end - toast.start == timedelta(minutes=3)
    assert turn.start == toast.end
    assert worked.sheet.given_up == ()
    assert fry.end <= toast.start or fry.start >= served  # the pan stands warm with its barley until then
    assert validate(worked.file, worked.sheet) == []


def test_two_pan_dishes_that_must_be_fresh_name_the_pan() -> None:
    fresh = ONE_PAN.replace("takes: 20 min", "takes: 5 min").replace("keeps: 60 min hot", "keeps: 1 min hot")
    worked = Worked(fresh)

    named = set().union(*worked.fought_over())
    pan = next(n for n, r in enumerate(worked.problem.resources) if r.name == "big pan")
    assert {name for name, what in named if what == pan} >= {"turn the barley in the seeds", "fry the flatbreads"}
    assert any("one more big pan" in way.what for way in worked.ways())
