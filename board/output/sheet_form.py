"""The run sheet as `sheet --json` prints it, for other programs: times, and what it tells in words."""

from collections.abc import Callable
from datetime import datetime
from zoneinfo import ZoneInfo

from board.checks.sheet.clocks import DishClock, dish_clocks
from board.output.cold import cold_form
from board.output.schemas.sheet import ClockForm, SheetForm
from board.sheet import company, said
from board.sheet.guesses import guesses
from board.sheet.quiet import as_planned
from board.sheet.run_sheet import RunSheet


def outside_form(sheet: RunSheet, *, valid: bool) -> SheetForm:
    """Tools outside rely on its keys. Times in the plan's zone, ISO 8601."""
    zone, guessed = ZoneInfo(sheet.zone), guesses(sheet)

    def iso(at: datetime) -> str:
        return at.astimezone(zone).isoformat()

    sat = {each.course.name: each.until for each in as_planned(sheet)}
    return {
        "plan": sheet.plan,
        "zone": sheet.zone,
        "proved": sheet.proved,
        "open": [{"aim": each.aim, "by": each.by} for each in sheet.still_open],
        "solve_seconds": sheet.solve_seconds,
        "valid": valid,
        "away_minutes": company.as_planned(sheet),
        "courses": [
            {
                "name": c.name,
                "wanted": iso(c.wanted),
                "served": iso(c.served),
                "late_minutes": c.late_minutes,
                "sit_till": iso(sat[c.name]) if c.name in sat else None,
            }
            for c in sheet.courses
        ],
        "steps": [
            {
                "id": s.id,
                "dish": s.dish,
                "course": s.course,
                "lane": s.lane,
                "start": iso(s.start),
                "end": iso(s.end),
                "attended": [{"start": iso(a.start), "end": iso(a.end), "who": a.who} for a in s.attended],
                "uses": [
                    {"what": u.what, "amount": u.amount, "start": iso(u.start), "end": iso(u.end), "celsius": u.celsius}
                    for u in s.uses
                ],
                "decide": s.decide or None,
                "how": s.how or None,
                "goes_in": [
                    {"food": each.food, "low": each.low, "high": each.high, "unit": each.measure} for each in s.goes_in
                ],
                "leaves": [
                    {
                        "food": left.what.food,
                        "low": left.what.low,
                        "high": left.what.high,
                        "unit": left.what.measure,
                        "use_by": iso(left.use_by(s.end)),
                        "needed_by": [need.dish for need in left.needed_by],
                    }
                    for left in sheet.left
                    if left.slot == s.id
                ],
                "give_minutes": s.give_minutes,
                "noted": list(s.noted),
                "assumed": said.guessed(guessed.get(s.id, ())),
            }
            for s in sheet.slots
        ],
        "given_up": [
            {"what": said.what(sheet, given.what), "why": said.why(sheet, given.why), "minutes": given.minutes}
            for given in sheet.given_up
        ],
        "assumed": [said.assumed(each) for each in sheet.assumed],
        "rules": sheet.rules,
        "stops": [said.stop(each) for each in sheet.stops],
        "cautions": [said.caution(each) for each in sheet.cautions],
        "noted": list(sheet.noted),
        "cold": cold_form(sheet),
        "sources": sheet.sources,
        "clocks": [_clock(each, iso) for each in dish_clocks(sheet)],
    }


def _clock(each: DishClock, iso: Callable[[datetime], str]) -> ClockForm:
    return {
        "dish": each.clock.dish,
        "course": each.clock.course,
        "minutes_out": each.out_minutes,
        "limit_minutes": each.clock.limit_minutes,
        "runs_out": iso(each.runs_out) if each.runs_out is not None else None,
        "source": each.clock.source,
    }
