"""Whether those who eat can stay seated once a course is served, as the sheet times it. Pure."""

from board.checks.sheet.timed import Timed
from board.plan.resolve.links import serve_id
from board.plan.snag import Snag, Weight
from board.sheet import quiet, said


def those_who_eat_stay_seated(timed: Timed) -> list[Snag]:
    """table 6: somebody who sits gets up within a course's stretch, since no time before or after it would do."""
    found = []
    for each in quiet.as_planned(timed.sheet):
        if each.ups:
            name, asked = each.course.name, each.course.stretch
            message = f"{name} has {asked - each.missing} of {asked} min before somebody gets up: "
            mend = (
                "Give what gets you up more room, before or after, or hands that do not sit (`hired: yes`); or take "
                "work out of it, so that nobody need get up."
            )
            node = timed.file.filled.tasks[serve_id(name)].node
            place = timed.file.places.of(node.loc)
            found.append(Snag("table 6", Weight.MIND, message + said.ups(timed.sheet, each), mend, place))
    return found
