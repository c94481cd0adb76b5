"""What `check` says: snags, what is assumed, whether the timetable holds, and the usual caution."""

from rich.console import Console

from board.base import words
from board.base.plain import one_line, plain
from board.base.wrap import wrapped
from board.checks.sheet.assessed import Assessed
from board.output.tables import console
from board.plan.snag import Weight
from board.sheet import said

HEADINGS = (
    (Weight.STOP, False, words.STOP),
    (Weight.STOP, True, words.STOP_SAFETY),
    (Weight.MIND, None, words.MIND),
    (Weight.NOTE, None, words.NOTE),
)


def print_check(plan: Assessed, out: Console | None = None) -> None:
    """To stdout, unless told where; foreign text safe."""
    file, sheet = plan.file, plan.sheet
    out = out or console()

    def say(text: str = "", style: str = "") -> None:
        shown = wrapped(plain(text), out.width) if out.is_terminal else plain(text)
        out.print(shown, style=style or None, soft_wrap=True)

    say(words.check_title(file.plan.event, file.plan.guest_count, len(file.filled.tasks)), "bold")
    for weight, safety, heading in HEADINGS:
        found = [snag for snag in plan.snags if snag.weight is weight and safety in (snag.safety, None)]
        if found:
            say()
            say(heading, "bold")
            for snag in found:
                say(snag.render())
    say()
    if sheet is None:
        say(words.CHECK_STOPPED, "bold")
        say(words.MORE_MAY_SHOW)
    else:
        say(words.CHECK_HOLDS if not sheet.given_up else words.CHECK_GIVES_UP, "bold")
        for each in sheet.given_up:
            say(f"  {said.given_up(sheet, each)}")
        if not sheet.proved:
            say(f"  {words.sheet_state(sheet.proved, sheet.gap)}")
    if file.filled.assumed:
        say()
        say(words.CHECK_ASSUMED, "bold")
        for line in file.filled.assumed:
            say(f"  {line}")
    if plan.cautions:
        say()
        say(words.CAUTIONS_TITLE, "bold")
        for danger in plan.cautions:
            say(f"  {words.caution(danger.topic, tuple(one_line(about, 60) for about in danger.about))}")
    say()
    say(words.CAUTION)
