"""What a probe's reading means, in words: against what is needed, how long it must hold, how cooling will go on. Pure;
safe for a terminal."""

from dataclasses import replace
from datetime import datetime

from board.evening.cooling import CoolingOutlook, StageOutlook, outlook
from board.evening.forecast import Forecast
from board.evening.gone_cold import hot_limit, hot_wanted, rules_of
from board.evening.readings import asked_again, lacks
from board.evening.state import Reading, State
from board.evening.wishes import TakeReading
from board.facts.limits import Degrees
from board.sheet.run_sheet import Slot
from board.view import words
from board.view.board import Viewer
from board.view.present import Present


def reading_words(viewer: Viewer, slot: str, celsius: float, hot: Degrees | None = None) -> str:
    """A reading in °C next to what is needed there; `hot`: what food must show that is kept hot, or heated again."""
    found = viewer.slots.get(slot)
    fahrenheit = viewer.sheet.fahrenheit
    if hot is not None:
        reads, limit = words.core_reads(celsius, fahrenheit), words.both_degrees(*hot_figures(hot), fahrenheit)
        return (words.reading_hot if hot.at_least(celsius) else words.reading_not_yet)(reads, limit)
    if found is None or found.core_celsius is None:
        return words.core_reads(celsius, fahrenheit)
    return words.reading(celsius, found.core_celsius, lacks(found, celsius), fahrenheit)


def hot_figures(limit: Degrees) -> tuple[float, float]:
    """Its °C and its °F, as its rule writes them."""
    return limit.celsius, limit.fahrenheit


def reading_said(viewer: Viewer, at: Present, wish: TakeReading) -> str:
    """What a reading means as it is taken: reached, held or still to hold, or how much is missing and when to read
    again; of food kept hot, whether it is hot enough; for food that cools, when it will be cold."""
    found, step, now = viewer.slots[wish.slot], at.state.steps[wish.slot], at.now
    hot = hot_wanted(at.state, found)
    text = reading_words(viewer, wish.slot, wish.celsius, hot)
    if hot is not None and not hot.at_least(wish.celsius):
        reheated, fahrenheit = rules_of(viewer.sheet).reheat.degrees, viewer.sheet.fahrenheit
        degrees = (hot_limit(viewer.sheet, found), reheated)
        limit, wanted = (words.both_degrees(*hot_figures(each), fahrenheit) for each in degrees)
        text = words.reading_cold(words.core_reads(wish.celsius, fahrenheit), limit, wanted)
    elif again := asked_again(at.state, found, wish.celsius, now):
        if again.holds:
            text = words.reading_holds(text, again.minutes, found.hold_minutes)
        else:
            text = words.reading_again(text, again.minutes)
    elif wish.part == "end" and step.status == "under-way" and not lacks(found, wish.celsius):
        text = words.ended_with_reading(text)
    reading = Reading(at.state.last_n + 1, now, wish.slot, wish.celsius)
    then = replace(at.state, readings=(*at.state.readings, reading))
    cooling = cooling_words(viewer, then, at.forecast, found, now)
    return words.with_cooling(text, cooling) if cooling else text


def cooling_words(viewer: Viewer, state: State, forecast: Forecast, slot: Slot, now: datetime) -> str:
    """When food that cools will be cold, and whether in time; empty if no reading tells."""
    found = outlook(state, forecast, slot) if slot.cooling is not None else None
    return _outlook(viewer, found, now) if found is not None else ""


def _outlook(viewer: Viewer, found: CoolingOutlook, now: datetime) -> str:
    stages = [_stage(viewer, each, now) for each in found.stages]
    return words.cooling_outlook(stages, found.readings, in_time=found.in_time)


def _stage(viewer: Viewer, each: StageOutlook, now: datetime) -> str:
    stage = each.stage
    cold = words.both_degrees(stage.celsius, stage.fahrenheit, viewer.sheet.fahrenheit)
    if each.at is None:
        return words.cooling_never(cold)
    return words.cooling_stage(cold, viewer.clock(each.at, now), each.late_minutes)
