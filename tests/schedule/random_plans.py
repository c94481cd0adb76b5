"""Random plans, tight and odd on purpose, for tests and bench. The same seed makes the same plan."""

import io
import random
from typing import Any

from ruamel.yaml import YAML


def plan_text(seed: int, dishes: int | None = None) -> str:
    """A plan as YAML: one or two ovens, one or two people, 1 to 9 dishes unless told how many."""
    chance = random.Random(seed)
    plan = _Maker(chance).plan(dishes)
    _with_clocks(random.Random(seed + 10**6), plan)  # of its own, so that it leaves the rest as it was
    if dishes is None:
        _with_work_for_two(random.Random(seed + 2 * 10**6), plan)
    stream = io.StringIO()
    YAML().dump(plan, stream)
    return stream.getvalue()


class _Maker:
    def __init__(self, chance: random.Random) -> None:
        self.pick, self.odds = chance.choice, chance.random
        self.count = 0
        self.ovens: list[str] = []
        self.steps: list[str] = []

    def plan(self, dishes: int | None) -> dict[str, Any]:
        kitchen, hands = self.kitchen(), self.hands()
        sizes = self.split(dishes)
        courses = [self.course(n, size, list(hands)) for n, size in enumerate(sizes)]
        plan = {
            "event": "Random supper", "date": "2026-11-28", "zone": "Europe/Dublin", "arrive": "18:30",
            "guests": ["8 guests"], "kitchen": kitchen, "hands": hands, "courses": courses,
            "jobs": [self.job(n, courses[0]["course"]) for n in range(self.pick([0, 1, 2, 4]))],
        }  # fmt: skip
        if self.odds() < 0.5:
            plan["shopping"] = self.shopping(courses, plan["jobs"])
        return plan

    def shopping(self, courses: list[dict[str, Any]], jobs: list[dict[str, Any]]) -> dict[str, str]:
        """One or two trips, and food that some dishes and jobs take up."""
        for each in [dish for course in courses for dish in course["dishes"]]:
            if self.odds() < 0.4:
                each["ingredients"] = ["400 g leeks"]
        for job in jobs:
            if self.odds() < 0.3:
                job["supplies"] = ["20 flowers"]
        trip = self.pick(["10:00 - 11:30", "14:30 - 15:15", "16:30 - 17:10"])
        return {"on the day": trip} | ({"day before": "18:00 - 19:30"} if self.odds() < 0.3 else {})

    def split(self, dishes: int | None) -> list[int]:
        if dishes is None:
            return [self.pick([1, 2, 2, 3]) for _ in range(self.pick([1, 2, 2, 3]))]
        courses = min(4, max(1, dishes // 3))
        return [dishes // courses + (n < dishes % courses) for n in range(courses)]

    def hands(self) -> dict[str, Any]:
        day = self.pick(["12:00 - 23:30", "9:00 - 13:00, 14:00 - 23:30", "16:00 - 22:00", "17:00 - 20:30"])
        hands: dict[str, Any] = {"host": {"hours": {"on the day": day}}}
        if self.odds() < 0.4:
            hands["host"]["hours"]["day before"] = self.pick(["17:00 - 22:00", "20:00 - 1:00"])
        if self.odds() < 0.4:
            hands["host"]["away"] = {"greet the guests": "18:30 - 18:40"}
        if self.odds() < 0.5:
            hands["aide"] = {"hours": {"on the day": self.pick(["15:00 - 21:00", "18:00 - 19:30, 19:30 - 22:00"])}}
        return hands

    def kitchen(self) -> dict[str, Any]:
        self.ovens = self.pick([["oven"], ["oven"], ["left oven", "right oven"]])
        ovens: dict[str, Any] = {name: {} for name in self.ovens}
        for oven in ovens.values():
            if self.odds() < 0.5:
                oven["shelves"] = self.pick([2, 3])
            if self.odds() < 0.3:
                oven["heats"] = "20 min to 180 C"
            if self.odds() < 0.2:
                oven["cools ajar"] = self.pick(["10 min from 200 to 120 C", "40 min from 200 to 120 C"])
        kitchen: dict[str, Any] = {"ovens": ovens, "rings": self.pick([1, 2, 4]), "tools": {"pan": 1, "bowl": 1}}
        if self.odds() < 0.2:
            kitchen["to the table"] = f"{self.pick([1, 3])} min"
        if self.odds() < 0.5:
            kitchen["fridge"] = f"{self.pick([10, 20])} litres"
        return kitchen

    def station(self) -> str:
        kind = self.odds()
        if kind < 0.35:
            celsius = self.pick([80, 95, 120, 150, 180, 200, 220])
            accepts = self.pick(["", f" ({celsius - 15} to {celsius + 5} C)", f" ({celsius - 5} to {celsius + 25} C)"])
            return f"{self.pick(self.ovens) if self.odds() < 0.3 else 'oven'} at {celsius} C{accepts}"
        if kind < 0.65:
            return "stovetop" + self.pick(["", ", 1 ring", ", pan", ", bowl"])
        return self.pick(["fridge, 4 litres", "fridge", "worktop", "worktop, bowl", "front-of-house"])

    def keeps(self) -> str:
        minutes, kind = self.pick(["5 min", "15 min", "30 min", "2 h", "1 day"]), self.odds()
        if kind < 0.3:
            return minutes
        if kind < 0.6:
            return f"{minutes} {self.pick(['hot', 'in the fridge, 2 litres', 'in the fridge, 5 litres'])}"
        if kind < 0.8:
            return f"{minutes} on the stovetop" + self.pick([", 1 ring", ", 1 ring, pan"])
        return f"{minutes} in the oven at {self.pick([70, 90, 120])} C" + self.pick(["", " (65 to 125 C)"])

    def way(self) -> dict[str, Any]:
        way: dict[str, Any] = {"takes": f"{self.pick([0, 5, 10, 20, 30, 45, 60])} min"}
        if self.odds() < 0.85:
            way["where"] = self.station()
        if self.odds() < 0.5:
            way["attended"] = self.pick(
                ["all", "none", "3 min at the start", "2 min at the start, 1 min every 10 min, 2 min at the end"]
            )
        if self.odds() < 0.5:
            way["keeps"] = self.keeps()
        return way

    def step(self, before: list[str], hands: list[str]) -> dict[str, Any]:
        self.count += 1
        step: dict[str, Any] = {"step": f"step {self.count}x", **self.way()}
        if self.odds() < 0.2:
            step["or"] = [self.way()]
        if before and self.odds() < 0.35:
            step["after"] = self.pick(before) + self.pick(["", ", at least 10 min", ", at most 20 min", ", at once"])
        elif self.odds() < 0.15:
            step["after"] = "nothing"
        if self.odds() < 0.1:
            step["who"] = self.pick(hands)
        if self.odds() < 0.05:
            step["day"] = self.pick(["day before", "on the day"])
        if self.odds() < 0.05:
            step["not after"] = self.pick(["18:00", "12:00"])
        if self.odds() < 0.2:
            step["best within"] = "10 min"
        if self.odds() < 0.1:
            step["with guests"] = "yes"
        return step

    def rest(self) -> dict[str, Any]:
        """What was baked just before rests in the oven, switched off."""
        self.count += 1
        rest = {
            "step": f"step {self.count}x",
            "where": "oven off" + self.pick(["", ", door ajar", ", bowl"]),
            "takes": self.pick(["10 min", "30 to 45 min", "60 min"]),
        }
        return rest | ({"keeps": self.keeps()} if self.odds() < 0.5 else {})

    def course(self, number: int, size: int, hands: list[str]) -> dict[str, Any]:
        dishes = []
        for dish in range(size):
            steps: list[dict[str, Any]] = []
            for _ in range(self.pick([1, 2, 3, 4])):
                steps.append(self.step([s["step"] for s in steps], hands))
                bakes = str(steps[-1].get("where", "")).startswith("oven at") and steps[-1]["takes"] != "0 min"
                if bakes and self.odds() < 0.15:
                    steps.append(self.rest())
            self.steps += [s["step"] for s in steps]
            dishes.append({"dish": f"Dish {number}{dish}", "steps": steps})
        at = ["18:45", "19:30", "20:30", "21:15"][number]
        course = {"course": f"Course {number}", "at": at, "dishes": dishes}
        return course | ({"eaten in": "15 to 20 to 30 min"} if self.odds() < 0.2 else {})

    def job(self, number: int, course: str) -> dict[str, Any]:
        job: dict[str, Any] = {"job": f"job {number}q", "takes": f"{self.pick([5, 10, 20])} min"}
        if self.odds() < 0.3:
            job["before"] = self.pick(["guests arrive", "guests arrive, at most 30 min", self.pick(self.steps)])
        elif self.odds() < 0.3:
            job["after"] = self.pick(["guests arrive", f"clear {course}"]) + self.pick(["", ", at most 30 min"])
        return job


def _with_work_for_two(chance: random.Random, plan: dict[str, Any]) -> None:
    """Where somebody helps, some steps take both. And some only come after another."""
    for course in plan["courses"]:
        for step in (step for dish in course["dishes"] for step in dish["steps"]):
            if len(plan["hands"]) > 1 and chance.random() < 0.1:
                step.pop("who", None)
                step["hands"] = 2
            if "after" in step and chance.random() < 0.3:
                step["after"] += ", order only" if step["after"] != "nothing" else ""


def _with_clocks(chance: random.Random, plan: dict[str, Any]) -> None:
    """Some dishes spoil, some courses are eaten in the heat outdoors."""
    plan["air"] = {"outdoors": f"{chance.choice([24, 33])} C"}
    for course in plan["courses"]:
        if chance.random() < 0.2:
            course["outdoors"] = "yes"
        for dish in course["dishes"]:
            if chance.random() < 0.4:
                dish["perishable"] = "yes"
