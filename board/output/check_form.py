"""What `check` found, as data; its schema is `schemas/check.json`. Pure."""

from datetime import datetime

import msgspec

from board.base import words as shared
from board.checks.sheet.assessed import Assessed
from board.output.check import Past, past
from board.output.schemas.check import CheckForm, FindingForm, PastForm, WeightWord
from board.plan.snag import Snag, Weight
from board.sheet import said


def check_form(plan: Assessed, now: datetime) -> CheckForm:
    """Every finding, the worst first, the verdict, what is past `now` (aware), what is assumed, what stands on the
    host's word, the cautions. Words are the plan's own, unsafe for a terminal as they are."""
    sheet = plan.sheet

    def count(weight: Weight) -> int:
        return sum(snag.weight is weight for snag in plan.snags)

    return {
        "plan": plan.file.plan.event,
        "guests": plan.file.plan.guest_count,
        "pieces": len(plan.file.filled.tasks),
        "counts": {"stop": count(Weight.STOP), "ask": count(Weight.ASK), "mind": count(Weight.MIND),
                   "note": count(Weight.NOTE)},
        "timetable": None
        if sheet is None
        else {"proved": sheet.proved, "holds": not sheet.given_up, "given_up": [*said.all_given_up(sheet)]},
        "past": _past(past(plan, now)),
        "findings": [_finding(snag) for snag in plan.snags],
        "assumed": [
            {"kind": each.kind, "values": each.values, "about": list(each.about), "steps": list(each.tasks),
             "text": said.assumed(each)}
            for each in plan.file.filled.assumed
        ],
        "on_your_word": [{"word": each.word, "about": each.about, "settles": each.settles} for each in plan.trusted],
        "cautions": [
            {"topic": each.topic, "about": list(each.about), "text": shared.CAUTIONS[each.topic]}
            for each in plan.cautions
        ],
    }  # fmt: skip


def _past(late: Past | None) -> PastForm | None:
    if late is None:
        return None
    return {"what": late.what, "due": late.due.isoformat(), "now": late.now.isoformat(), "text": late.told()}


def _word(weight: Weight) -> WeightWord:
    words: dict[Weight, WeightWord] = {
        Weight.STOP: "stop", Weight.ASK: "ask", Weight.MIND: "mind", Weight.NOTE: "note"
    }  # fmt: skip
    return words[weight]


def _finding(snag: Snag) -> FindingForm:
    place = snag.place
    return {
        "code": snag.code,
        "weight": _word(snag.weight),
        "safety": snag.safety,
        "severe": snag.severe,
        "message": snag.message,
        "mend": snag.mend,
        "source": snag.source,
        "place": None if place is None else {"file": place.file, "line": place.line, "column": place.column},
        "about": msgspec.to_builtins(snag.about),
    }
