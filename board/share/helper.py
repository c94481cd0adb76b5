"""What a helper's page shows of this moment, as data. Pure: (a present, whose) → frozen words, each a safe line."""

from collections.abc import Mapping, Sequence

import msgspec

from board.base.plain import one_line
from board.evening.calls import Call
from board.evening.decide import decide
from board.evening.events import Part
from board.evening.wishes import HelperDone, Refusal
from board.share import words
from board.sheet.run_sheet import Slot
from board.sheet.shown import amounts_of
from board.view.board import Viewer, answer_word, how_it_stands
from board.view.countdown import length
from board.view.present import Present

MOST_CALLS = 3  # ours


class CallCard(msgspec.Struct, frozen=True, gc=False):
    """One call. `told`: where, at what heat, how long; the method; what to look for; what past evenings noted.
    `amounts`: what goes in as it begins; where the plan does not say, all that goes into its dish or job, at the first
    call on the page that begins something of it. `answer`: the word that
    answers it, empty where it cannot be answered now; then `why` says why, if it is due."""

    slot: str
    part: Part
    number: int
    at: str
    when: str
    what: str
    told: tuple[str, ...]
    amounts: tuple[str, ...]
    is_due: bool
    answer: str
    why: str


class HelperPage(msgspec.Struct, frozen=True, gc=False):
    """`hands`: all who can be chosen. `who` empty: nobody is yet. `rung`: how often the board called them; 0 if not, or
    once they said that they come. `quiet`: what to do while no call is due."""

    event: str
    hands: tuple[str, ...]
    who: str
    clock: str
    course: str
    standing: str
    is_late: bool
    rung: int
    quiet: tuple[str, str]
    calls: tuple[CallCard, ...]


def helper_page(viewer: Viewer, at: Present, who: str, rung: int, made_of: Mapping[str, Sequence[str]]) -> HelperPage:
    """Of the viewer's sheet, for its `who`. `made_of`: dish or job → what goes into it."""
    view = viewer.view(at)
    mine = [call for call in (*at.due, *at.coming) if who and not call.silent and viewer.is_for(call)][:MOST_CALLS]
    abouts = [_about(viewer.slots[call.slot]) if call.part == "start" else "" for call in mine]
    return HelperPage(
        event=view.title,
        hands=tuple(one_line(hand) for hand in viewer.sheet.hands),
        who=one_line(who),
        clock=view.clock,
        course=view.course.told if view.course else "",
        standing=how_it_stands(at.forecast, at.due),
        is_late=view.course is not None and view.course.is_late,
        rung=rung,
        quiet=(view.headline, view.detail) if who else ("", ""),
        calls=tuple(
            _card(viewer, at, call, who, made_of.get(about, ()) if about not in abouts[:n] else ())
            for n, (call, about) in enumerate(zip(mine, abouts, strict=True))
        ),
    )


def _about(slot: Slot) -> str:
    """What it is a step of, in the plan's words: a dish; itself, if it is a job."""
    return slot.dish or slot.name


def _card(viewer: Viewer, at: Present, call: Call, who: str, amounts: Sequence[str]) -> CallCard:
    is_due = call in at.due
    shown, slot = viewer.call(call, at, is_due=is_due), viewer.slots[call.slot]
    decided = decide(at.state, HelperDone(*call.key, who), at.now)
    refused, answer = isinstance(decided, Refusal), answer_word(slot, call, at.state)
    return CallCard(
        *call.key,
        at=shown.clock,
        when=_when(call, at, is_due=is_due),
        what=shown.headline,
        told=tuple(each for each in (shown.detail, shown.how, shown.look_for) if each),
        amounts=amounts_of(slot, viewer.sheet.units)
        if slot.goes_in and call.part == "start"
        else tuple(one_line(each, 200) for each in amounts),
        is_due=is_due,
        answer="" if refused else answer if is_due else words.early(answer),
        why=one_line(decided.words) if isinstance(decided, Refusal) and is_due else "",
    )


def _when(call: Call, at: Present, *, is_due: bool) -> str:
    seconds = abs((call.due - at.now).total_seconds())
    if is_due:
        return words.waits(length(seconds)) if seconds >= 60 else words.NOW
    return words.ahead(length(seconds))
