"""Parts of plans that the manual shows, put into a plan."""

import re
from collections.abc import Iterator
from io import StringIO

from ruamel.yaml import YAML

from board.plan.load import PlanFile, read_plan
from board.plan.snag import Snag

BASE = """
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
hands:
  host:
    hours:
      2 days before: 9:00 - 23:30
      day before: 9:00 - 23:30
      on the day: 9:00 - 23:30
courses:
  - course: Nuts
    at: 18:45
    dishes:
      - {dish: Salted nuts, ingredients: [200 g almonds (baking)], steps: [{step: put the nuts out, takes: 5 min}]}
"""


def fences(text: str, kind: str = "yaml") -> list[str]:
    """What stands in a page's code blocks of this kind."""
    return re.findall(rf"^```{kind}\n(.*?)^```$", text, re.DOTALL | re.MULTILINE)


def plan_with(part: str) -> PlanFile | list[Snag]:
    """The base plan with a part in it: steps of a dish, dishes of a course, or keys of the plan in place of its own."""
    yaml = YAML(typ="rt")
    yaml.width = 1000
    base, given = yaml.load(BASE), yaml.load(part)
    if isinstance(given, list):
        dishes = [{"dish": "The dish", "ingredients": "nothing", "steps": given}] if "step" in given[0] else given
        given = {"courses": [{"course": "Main", "at": "20:00", "dishes": dishes}]}
    base.update(given)
    out = StringIO()
    yaml.dump(base, out)
    return read_plan(out.getvalue(), "supper.yaml")


def told(found: PlanFile | list[Snag]) -> Iterator[str]:
    """What is wrong with the file itself, as it is shown."""
    if not isinstance(found, PlanFile):
        yield from (snag.render() for snag in found)
