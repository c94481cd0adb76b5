"""Whether what a plan says about buying is about anything, and says enough."""

import re
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from board.base.words import clock, day_and_clock
from board.facts.called import EGG_PARTS, same_food
from board.facts.drinks import SOLD_AS, USUAL
from board.plan.load import PlanFile
from board.plan.model.model import Plan
from board.plan.phrases.phrase import near
from board.plan.phrases.when import stretch
from board.plan.resolve.absences import absences
from board.plan.resolve.bought import waiting_for_trips
from board.plan.resolve.given_time import given_time
from board.plan.resolve.going_in import foods_of
from board.plan.resolve.hours import Interval, day_of
from board.plan.resolve.links import is_written
from board.plan.resolve.trips import shopper, trips
from board.plan.snag import Snag, Weight

# No cook weighs to a thousandth of a gram; some weigh a kilo to its gram, but not where the plan writes decimal commas.
_POINT = re.compile(r"[\"']?([1-9]\d{0,2}\.\d{3})\s*(g|grams?|gr|ml|milli\w+)?\b(?!\.)", re.IGNORECASE)
_COMMA = re.compile(r"[\"']?\d+,\d{1,2}(?!\d)")


def points_have_one_meaning(file: PlanFile) -> list[Snag]:
    """buying 9: an amount like `1.000 g`: one gram, or a thousand where points part thousands."""
    written = []
    for c, course in enumerate(file.plan.courses):
        for d, dish in enumerate(course.dishes):
            for i, line in enumerate(dish.ingredients):
                place = file.places.of(("courses", c, "dishes", d, "ingredients", i))
                written.append((line, place, place.text[place.column - 1 :]))
    commas = any(_COMMA.match(text) for _, _, text in written)
    found = []
    for line, place, text in written:
        match = _POINT.match(text)
        if match is not None and line.high is not None and (commas or match[2]):
            whole = match[1].replace(".", "")
            message = f"{match[1]} {line.unit} of {line.food} is read as {line.high:g}, and may be meant as {whole}"
            mend = f"Write {whole} or {line.high:g}."
            found.append(Snag("buying 9", Weight.ASK, message.replace("  ", " "), mend, place))
    return found


def _foods(plan: Plan) -> dict[str, str]:
    """Every food that may be bought: its joining key → its spelling in the plan."""
    written = [line.food for course in plan.courses for dish in course.dishes for _, line in foods_of(dish)]
    written += [pairing.drink for course in plan.courses for pairing in course.drink]
    written += [line.food for job in plan.jobs for _, line in foods_of(job)]
    written += [SOLD_AS.get(drink, drink) for drink in USUAL] if plan.drinks else []
    written += ["egg" for food in written if same_food(food) in EGG_PARTS]
    return {same_food(food): food for food in written}


def packs_and_prices_are_of_what_is_needed(file: PlanFile) -> list[Snag]:
    """buying 1: a pack or a price of a food that nothing in the plan needs."""
    plan, found = file.plan, []
    foods = _foods(plan)
    for key, given in (("packs", list(plan.packs)), ("prices", list(plan.prices))):
        for food in given:
            if same_food(food) not in foods:
                message = f"nothing in the plan needs {food!r}.{near(food, foods.values())}"
                mend = "Write it as the dishes do, or take the line out."
                found.append(Snag("buying 1", Weight.NOTE, message, mend, file.places.of((key, food), key=True)))
    return found


def prices_by_the_pack_have_a_pack(file: PlanFile) -> list[Snag]:
    """buying 2: a price by the pack, with no pack size in the plan; no cost can be worked out from it."""
    plan, found = file.plan, []
    packs = {same_food(food) for food in plan.packs}
    for food, price in plan.prices.items():
        if price.per == "pack" and same_food(food) not in packs:
            message = f"{food} has a price by the pack, and how much a pack holds is not given"
            mend = f"Add it under `packs`, for example `{food}: 250 g`, or give the price by weight or by the piece."
            found.append(Snag("buying 2", Weight.MIND, message, mend, file.places.of(("prices", food))))
    return found


def trips_have_a_place(file: PlanFile) -> list[Snag]:
    """buying 3: a shopping trip outside the written hours of who goes, or while they are away. It is planned all the
    same, and nobody else is sent."""
    plan = file.plan
    who, zone = shopper(plan), ZoneInfo(plan.zone)
    hand = plan.hands[who]
    hours = [stretch(day_of(plan, word), span, zone) for word, spans in hand.hours.items() for span in spans]
    found = []
    for trip in trips(plan):
        gone = [each.what for each in absences(plan, who) if each.start < trip.end and trip.start < each.end]
        if _within(hours, trip.start, trip.end) and not gone:
            continue
        when = f"{clock(trip.start.astimezone(zone))} to {clock(trip.end.astimezone(zone))}"
        why = f"while {who} is to {gone[0]}" if gone else f"outside {who}'s hours"
        message = f"{trip.name}, {when}, lies {why}"
        mend = f"Move the trip, or give {who} hours then; helpers do not go shopping here."
        found.append(Snag("buying 3", Weight.MIND, message, mend, file.places.of(trip.loc)))
    return found


def food_is_bought_before_it_is_used(file: PlanFile) -> list[Snag]:
    """buying 6: work on a food that no trip can bring, or none before the work must be over or its course is wanted."""
    plan, tasks, zone = file.plan, file.filled.tasks, ZoneInfo(file.plan.zone)
    nodes = {id_: task.node for id_, task in tasks.items()}
    found = []
    for each in waiting_for_trips(plan, nodes, file.filled.taken_up):
        why = "its shop is shut on every trip"
        if each.trip is not None:
            trip = next(trip for trip in trips(plan) if trip.name == nodes[each.trip].name)
            late = _too_late(file, each.work, trip.end)
            if late is None:
                continue
            ends = day_and_clock(trip.end.astimezone(zone))
            after = "" if late == each.work else f", and {nodes[late].name} comes after it"
            why = f"the first trip that can bring it ends at {ends}: too late{after}"
        message = f"{nodes[each.work].name} takes up {each.food}, and {why}"
        mend = "Go shopping earlier, do the work later, or list the food under `pantry:` if it is in the house."
        found.append(Snag("buying 6", Weight.STOP, message, mend, file.places.of(nodes[each.work].loc)))
    return found


def _too_late(file: PlanFile, work: str, begins: datetime) -> str | None:
    """The id of the first thing that cannot be in its time, if some work begins no earlier than that; None if all can.

    In its time: within what it is given, served when wanted, done before the guests are there.
    """
    tasks, due = file.filled.tasks, {course.serve: course.wanted for course in file.filled.courses}
    due["guests-arrive"] = file.filled.arrive
    starts, queue = {work: begins}, [work]
    while queue:
        id_ = queue.pop(0)
        task = tasks[id_]
        first, last = given_time(file.plan, task.work)
        end = max(starts[id_], first) + timedelta(minutes=min(way.takes.likely for way in task.ways))
        if end > min(last, due.get(id_, last)):
            return id_
        for link in file.filled.links:
            then = end + timedelta(minutes=0 if link.usual else link.least)
            if link.first == id_ and then > starts.get(link.second, begins):
                starts[link.second] = then
                queue.append(link.second)
    return None


def _within(hours: list[Interval], start: datetime, end: datetime) -> bool:
    """Whether a trip lies in hours that touch or overlap."""
    for first, last in sorted(hours):
        if first <= start < last:
            start = last
    return start >= end


_DRINK = r"\b(wines?|sparkling|bubbly|beers?|ciders?)\b"
_POURS = re.compile(rf"(?:chill|open|uncork)\b.*?{_DRINK}(?!\s+(?:glass|vinegar))", re.IGNORECASE)


def what_is_poured_is_bought(file: PlanFile) -> list[Snag]:
    """buying 4: a step or job chills or opens wine, sparkling, beer or cider, and nothing in the plan buys any or has
    it."""
    plan = file.plan
    if plan.drinks is not None or any(course.drink for course in plan.courses) or any(e.file for e in plan.pantry):
        return []
    foods = [*_foods(plan).values(), *(entry.food for entry in plan.pantry)]
    if any(re.search(_DRINK, food, re.IGNORECASE) and "vinegar" not in food.casefold() for food in foods):
        return []
    for task in file.filled.tasks.values():
        if is_written(task.node) and _POURS.match(task.node.name):
            message = f"{task.node.name}: nothing in the plan buys it, so it is on no list"
            mend = "Add `drinks: usual`, or `drink: white wine, 4 bottles` to a course."
            return [Snag("buying 4", Weight.NOTE, message, mend, file.places.of(task.node.loc))]
    return []
