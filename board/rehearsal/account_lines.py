"""The account of a rehearsed night in words: a few short lines."""

from collections.abc import Iterator, Sequence
from datetime import datetime
from zoneinfo import ZoneInfo

from board.base import words as shared
from board.base.plain import one_line
from board.evening.events import CallPutOff, DishDropped, Event, NightDrawn, StepLeftOut, StepStretched
from board.rehearsal import words
from board.rehearsal.account import Account, Decision, Mattered, Mishap, NotPushed, Share, account, state_of
from board.rehearsal.live_night import Offered
from board.rehearsal.replay import Toll, total
from board.review.trace import Answer
from board.sheet.run_sheet import RunSheet

MOST_CAUSES = 3  # in a line, the dearest


def account_lines(told: Sequence[Event], offers: Sequence[Offered] = ()) -> Iterator[str]:
    """The account of an evening, from all its events; nothing where no night was drawn, a line where there is none to
    tell. Takes seconds: the night is played again up to a few dozen times."""
    if not any(isinstance(event, NightDrawn) for event in told):
        return
    found = account(told, offers)
    if found is None:
        yield words.NO_ACCOUNT
    else:
        yield from said(found, state_of(told).sheet)


def said(found: Account, sheet: RunSheet) -> Iterator[str]:
    """What the night cost, what the host cost and saved, their sum, what mattered. `sheet`: for names and the zone."""
    says = _Says(sheet)
    night, cost, saved = (total(share.toll for share in shares) for shares in (found.night, found.cost, found.saved))
    if not found.planned.is_nothing:
        yield words.account_planned(says.toll(found.planned))
    yield (
        words.account_night(says.toll(night), says.causes(found.night)) if found.night else words.NIGHT_CHANGED_NOTHING
    )
    if found.cost:
        yield words.account_cost(says.toll(cost), says.causes(found.cost))
    if found.saved:
        yield words.account_saved(says.toll(saved), says.causes(found.saved))
    if not found.yours:
        yield words.UNTOUCHED
    parts = [late for each in (found.planned, night, cost, -saved) if (late := each.minutes_late)]
    if len(parts) > 1:
        yield words.account_sum(parts, found.came.minutes_late)
    yield from map(says.mattered, found.mattered)


class _Says:
    def __init__(self, sheet: RunSheet) -> None:
        self.slots = sheet.by_id()
        self.zone = ZoneInfo(sheet.zone)
        self.date = sheet.date

    def at(self, moment: datetime) -> str:
        local = moment.astimezone(self.zone)
        return shared.clock(local) if local.date().isoformat() == self.date else shared.day_and_clock(local)

    def toll(self, toll: Toll) -> str:
        """Without courses."""
        food = list(self._food(toll))
        late = [words.toll_late(toll.minutes_late)] if toll.minutes_late or not food else []
        return words.SEPARATOR.join([*late, *food])

    def _food(self, toll: Toll) -> Iterator[str]:
        if toll.stood:
            yield words.toll_stood(toll.stood)
        if toll.unsafe:
            yield words.toll_unsafe(toll.unsafe)

    def causes(self, shares: Sequence[Share]) -> str:
        dearest = sorted(shares, key=lambda share: -abs(share.toll.minutes_late))[:MOST_CAUSES]
        return "; ".join(words.share(self._cause(share), self._of(share.toll)) for share in dearest)

    def _of(self, toll: Toll) -> str:
        courses = [words.of_course(one_line(name), minutes) for name, minutes in toll.late if minutes]
        return words.SEPARATOR.join([*courses, *self._food(toll)])

    def _cause(self, share: Share) -> str:
        cause = share.cause
        if cause is None:
            return words.A_LITTLE_LATE
        if isinstance(cause, Mishap):
            return words.MISHAPS[cause.what].format(about=one_line(cause.about), minutes=cause.minutes)
        if isinstance(cause, Answer):
            return words.answered_late(one_line(cause.slot.name), self.at(cause.called), self.at(cause.answered))
        return f"{self.at(cause.at)} {self._decision(cause)}"

    def _decision(self, event: Decision) -> str:
        about = ""
        if isinstance(event, DishDropped):
            about = event.dish
        elif isinstance(event, CallPutOff | StepLeftOut):
            about = self._name(event.slot)
        elif isinstance(event, StepStretched):
            about = self._name(event.slots[0]) if event.slots else ""
        else:
            about = getattr(event, "course", None) or ""
        minutes = getattr(event, "minutes", 0)
        return words.DECIDED[type(event).__name__].format(about=one_line(about), minutes=minutes)

    def _name(self, slot: str) -> str:
        return self.slots[slot].name if slot in self.slots else slot

    def mattered(self, found: Mattered) -> str:
        about, better, gain = found.about, found.better, self.toll(found.gain)
        if isinstance(about, Offered):
            return words.left_offer(self.at(about.at), gain)
        if isinstance(about, NotPushed):
            return words.not_pushed(self.at(about.at), one_line(about.course), about.minutes, gain)
        head = words.mattered(self.at(about.at), self._decision(about), self._did(found.added))
        if better is None:
            return head + words.AS_GOOD
        if isinstance(better, datetime):
            return head + words.sooner(self.at(better), gain)
        if better:
            return head + words.by_less(better, gain)
        return head + (words.BETTER_LEFT if found.gain == found.added else words.without_it(gain))

    def _did(self, added: Toll) -> str:
        if added.is_nothing:
            return words.DID_NOTHING
        gained = added.minutes_late < 0 or (not added.minutes_late and (added.unsafe, added.stood) < (0, 0))
        return words.did_save(self.toll(-added)) if gained else words.did_cost(self.toll(added))
