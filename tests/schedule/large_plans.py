"""Large dinners of an ordinary kind over three days, with two people and two ovens. The same seed makes the same plan.

Their dishes, lengths and keeps are invented: any would do.
"""

import io
import random
from typing import Any

from ruamel.yaml import YAML

COURSES = {"Nibbles": "18:45", "Starter": "19:20", "Fish": "20:00", "Main": "20:45", "Sweet": "21:45"}
BRIEF = "2 min at the start, 1 min at the end"


def large_plan(pieces: int, seed: int = 1) -> str:
    """A plan of about so many pieces of work, as YAML."""
    chance = random.Random(seed)
    dishes: list[dict[str, Any]] = []
    makers = (_terrine, _roots, _leaves, _soup, _tart, _sauce)
    while sum(len(dish["steps"]) for dish in dishes) < pieces - 2 * len(COURSES) - 4:
        dishes.append(makers[len(dishes) % len(makers)](chance, len(dishes)))
    names = list(COURSES)
    courses = [
        {
            "course": name,
            "at": at,
            "eaten in": "15 to 20 to 30 min",
            "dishes": [dish for n, dish in enumerate(dishes) if names[(n * 7 + n // 6) % 5] == name],
        }
        for name, at in COURSES.items()
    ]
    plan = {
        "event": "A long evening",
        "date": "2026-11-28",
        "zone": "Europe/Dublin",
        "arrive": "18:30",
        "guests": ["16 guests"],
        "kitchen": {
            "ovens": {"upper oven": {"shelves": 2}, "lower oven": {"shelves": 2}},
            "rings": 5,
            "fridge": "200 litres",
            "tools": {"pan": 3, "bowl": 6, "mixer": 1},
        },
        "hands": {
            "host": {"hours": {day: "9:00 - 13:00, 14:00 - 22:00" for day in ("2 days before", "day before")}
                     | {"on the day": "9:00 - 13:00, 14:00 - 23:45"}},
            "aide": {"hours": {"day before": "9:00 - 13:00, 14:00 - 22:00", "on the day": "10:00 - 23:45"}},
        },
        "courses": [course for course in courses if course["dishes"]],
        "jobs": [{"job": "lay the long table", "takes": "25 min", "before": "guests arrive"}],
    }  # fmt: skip
    stream = io.StringIO()
    YAML().dump(plan, stream)
    return stream.getvalue()


def _step(name: str, where: str, minutes: int, **more: Any) -> dict[str, Any]:
    return {"step": name, "where": where, "takes": f"{minutes} min", **more}


def _terrine(chance: random.Random, n: int) -> dict[str, Any]:
    return {"dish": f"Terrine {n}", "steps": [
        _step(f"chop for terrine {n}", "worktop", chance.choice([10, 15]), keeps="1 day in the fridge, 2 litres"),
        _step(f"cook terrine {n}", "stovetop, pan", chance.choice([15, 25]), keeps="20 min",
              attended="3 min at the start, 1 min every 10 min, 2 min at the end"),
        _step(f"fill terrine {n}", "worktop, bowl", 10, keeps="2 days in the fridge, 2 litres"),
        _step(f"slice terrine {n}", "worktop", 5, keeps="1 h"),
    ]}  # fmt: skip


def _roots(chance: random.Random, n: int) -> dict[str, Any]:
    heat = chance.choice([160, 180, 200])
    return {"dish": f"Roots {n}", "steps": [
        _step(f"peel roots {n}", "worktop", chance.choice([10, 15, 20]), keeps="1 day in the fridge, 2 litres"),
        _step(f"roast roots {n}", f"oven at {heat} C ({heat - 20} to {heat + 10} C)", chance.choice([30, 40, 45]),
              attended=BRIEF, keeps="30 min hot"),
        _step(f"dish up roots {n}", "worktop", 2, keeps="10 min"),
    ]}  # fmt: skip


def _leaves(chance: random.Random, n: int) -> dict[str, Any]:
    return {"dish": f"Leaves {n}", "steps": [
        _step(f"wash leaves {n}", "worktop", chance.choice([5, 8]), keeps="1 day in the fridge, 3 litres"),
        _step(f"mix dressing {n}", "worktop", 5, keeps="2 days in the fridge, 1 litre", after="nothing"),
        _step(f"dress leaves {n}", "worktop, bowl", 3, keeps="15 min",
              after=[f"wash leaves {n}", f"mix dressing {n}"]),
    ]}  # fmt: skip


def _soup(chance: random.Random, n: int) -> dict[str, Any]:
    return {"dish": f"Soup {n}", "steps": [
        _step(f"chop for soup {n}", "worktop", 12, keeps="1 day in the fridge, 1 litre"),
        _step(f"simmer soup {n}", "stovetop", chance.choice([25, 35]), attended=BRIEF, keeps="30 min"),
        _step(f"blend soup {n}", "worktop, mixer", 8, keeps="2 days in the fridge, 3 litres"),
        _step(f"heat soup {n}", "stovetop", 12, attended=BRIEF, keeps="20 min hot"),
    ]}  # fmt: skip


def _tart(chance: random.Random, n: int) -> dict[str, Any]:
    heat = chance.choice([170, 180, 190])
    return {"dish": f"Tart {n}", "steps": [
        _step(f"make pastry {n}", "worktop", 15, keeps="2 days in the fridge, 1 litre"),
        _step(f"line tart {n}", "worktop", 10, keeps="1 day in the fridge, 2 litres"),
        _step(f"bake tart {n}", f"oven at {heat} C ({heat - 10} to {heat + 10} C)", chance.choice([25, 35]),
              attended=BRIEF, keeps="10 h"),
        _step(f"cut tart {n}", "worktop", 5, keeps="2 h"),
    ]}  # fmt: skip


def _sauce(chance: random.Random, n: int) -> dict[str, Any]:
    return {"dish": f"Sauce {n}", "steps": [
        _step(f"weigh for sauce {n}", "worktop", 5, keeps="1 day"),
        _step(f"make sauce {n}", "stovetop, pan", chance.choice([10, 15]), keeps="25 min hot"),
    ]}  # fmt: skip
