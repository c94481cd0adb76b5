"""What the board announces at one tick, each line once, and whether it is serious. Pure."""

from collections.abc import Iterator

from board.base import words as shared
from board.view.present import Present
from board.view.standing import Standings


def said_at(present: Present, standings: Standings) -> Iterator[tuple[str, bool]]:
    """Results close to the end of their shelf life, first warnings about clocks, and anything else the host hears."""
    for each in present.warned:
        yield standings.soon_over(each, present.now), False
    if present.clock_warned:
        told = [standings.clock_warning(each, present) for each in present.clock_warned]
        yield shared.said_together(told), any(each.what == "over" for each in present.clock_warned)
    if present.told:
        yield shared.said_together(present.told), False
