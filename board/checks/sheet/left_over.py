"""What steps leave over, offered to the dishes of the plan that need it. Pure."""

from board.checks.sheet.timed import Timed
from board.facts.called import EGG_PARTS, same_food
from board.plan.snag import Snag, Weight
from board.sheet.left import left_over


def what_is_left_is_offered(timed: Timed) -> list[Snag]:
    """buying 8: what a step leaves over, and another dish needs that food; to be minded where it is an egg's yolk or
    white and too old by then, since the list takes both out of the same eggs."""
    found = []
    for left in timed.sheet.left:
        if not left.needed_by:
            continue
        split = same_food(left.what.food) in EGG_PARTS
        ends = timed.sheet.by_id()[left.slot].end
        late = [each for each in left.needed_by if each.start > left.use_by(ends)]
        mend = "It is bought all the same, unless you write it under `pantry:`."
        if split:
            mend = "The list takes yolks and whites out of the same eggs."
        if split and late:
            mend = f"{mend} Bring the two nearer, or write whole eggs for {late[0].dish}."
        place = timed.file.places.of((*timed.file.filled.tasks[left.slot].node.loc, "leaves"))
        weight = Weight.MIND if split and late else Weight.NOTE
        found.append(Snag("buying 8", weight, left_over(timed.sheet, left), mend, place, source=left.source))
    return found
