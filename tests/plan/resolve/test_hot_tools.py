"""What cooks in a tool that heats is not out in the room: by its core, by its maker's heat, else it is asked.

Limits: USDA FSIS, hot food at 140 °F or above; slow cookers at 170 to 280 °F (Slow Cookers and Food Safety), which read
in a copy; the warm setting cooks nothing (Iowa State Extension, after USDA).
"""

import pytest

from board.facts.rule_sets import rule_set
from board.plan.load import PlanFile
from board.plan.resolve.food_safety import is_exposed
from tests.checks.plan.kept_safe import plan, weights


def out(file: PlanFile) -> list[bool]:
    """For each step of the dish, whether it counts as out in the room."""
    tasks = [task for task in file.filled.tasks.values() if task.node.kind == "step"]
    return [is_exposed(t.care, t.ways[0].where, t.work, rule_set(file.plan.rules), t.node.name) for t in tasks]


PORK, RIBS, LEEKS = "2 kg pork shoulder", "1.5 kg beef short ribs", "1 kg leeks"


@pytest.mark.parametrize(
    ("food", "step", "keys", "exposed", "asks"),
    [
        (PORK, "cook the pork in the slow cooker", "worktop, slow cooker', takes: 8 h, until: 95 C", False, []),
        (PORK, "leave the pork on low", "worktop, slow cooker', takes: 8 h, cooks: whole cut", False, []),
        (PORK, "cook the pork in the slow cooker", "worktop', takes: 8 h, cooks: whole cut", False, []),
        (RIBS, "cook the ribs sous vide", "worktop, water bath', takes: 24 h, until: 65 C", False, []),
        (RIBS, "cook the ribs sous vide", "worktop, water bath', takes: 24 h, until: 60 C", False, []),
        (RIBS, "cook the ribs sous vide", "worktop, water bath', takes: 24 h, until: 59 C", True, []),
        (RIBS, "cook the ribs in the bath", "worktop, water bath', takes: 6 h, until: 52 C", True, []),
        (LEEKS, "cook the leeks in cream", "worktop, water bath', takes: 3 h, perishable: yes", False, ["ASK"]),
        (LEEKS, "cook the leeks on low", "worktop, slow cooker', takes: 3 h, perishable: yes", False, []),
        (LEEKS, "cook the leeks on warm", "worktop, slow cooker', takes: 3 h, perishable: yes", False, ["ASK"]),
        (LEEKS, "cook the leeks on the warm setting", "worktop, slow cooker', takes: 3 h, perishable: yes", False,
         ["ASK"]),
        (LEEKS, "keep the leeks warm", "worktop, slow cooker', takes: 3 h, perishable: yes", False, ["ASK"]),
        (PORK, "shred the pork", "worktop, slow cooker', takes: 3 h", True, None),
        (PORK, "lift the pork out of the slow cooker", "worktop', takes: 3 h", True, None),
        (PORK, "season the pork", "worktop', takes: 3 h", True, None),
    ],
)  # fmt: skip
def test_what_a_hot_tool_cooks(food: str, step: str, keys: str, exposed: bool, asks: list[str] | None) -> None:
    file = plan(f"- {{step: {step}, where: '{keys}}}", ingredient=food, tools="slow cooker: 1, water bath: 1")

    assert out(file) == [exposed]
    if asks is not None:
        assert weights(file, "food 2") == asks
