"""What `check` found, as data; its schema is `schemas/check.json`. Pure."""

from typing import Any

import msgspec

from board.base import words as shared
from board.checks.sheet.assessed import Assessed
from board.plan.snag import Snag, Weight
from board.sheet import said


def check_form(plan: Assessed) -> dict[str, Any]:
    """Every finding, the worst first, the verdict, what is assumed, what stands on the host's word, the cautions.
    Words are the plan's own, unsafe for a terminal as they are."""
    sheet = plan.sheet
    return {
        "plan": plan.file.plan.event,
        "guests": plan.file.plan.guest_count,
        "pieces": len(plan.file.filled.tasks),
        "counts": {each.name.lower(): sum(snag.weight is each for snag in plan.snags) for each in reversed(Weight)},
        "timetable": None
        if sheet is None
        else {"proved": sheet.proved, "holds": not sheet.given_up, "given_up": [*said.all_given_up(sheet)]},
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


def _finding(snag: Snag) -> dict[str, Any]:
    place = snag.place
    return {
        "code": snag.code,
        "weight": snag.weight.name.lower(),
        "safety": snag.safety,
        "severe": snag.severe,
        "message": snag.message,
        "mend": snag.mend,
        "source": snag.source,
        "place": None if place is None else {"file": place.file, "line": place.line, "column": place.column},
        "about": msgspec.to_builtins(snag.about),
    }
