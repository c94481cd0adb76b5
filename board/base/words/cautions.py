"""The usual cautions as printed: each once, where it applies."""

CAUTIONS_TITLE = "Mind"
CAUTIONS = {
    "alcohol": "Alcohol: something without it for everybody; nobody who drank drives. Cooked in, some of it stays.",
    "flame": "Flames: well away from cloth, hair, leaves and draughts; never alone in a room; out before you leave it.",
    "charcoal": "Charcoal and gas grills: outdoors only, away from walls and tents; they give off carbon monoxide.",
    "blades": "Blades: no hurry, a dry board that does not slide; pull the plug before you touch what turns.",
    "hot-fat": "Hot fat and sugar: dry food, a lid at hand, stay with it. If it burns: heat off, lid on, never water.",
    "flowers": "Flowers and leaves: off the plates and away from food, unless known to be edible and unsprayed.",
    "raw-egg": "Raw or barely cooked egg: pasteurised eggs, or another dish, for the pregnant, old, very young or ill.",
    "raw-food": "Raw meat, fish and eggs: a board and knife of their own, washed hot with soap; then your hands.",
    "raw-sprouts": "Raw seed sprouts: cooked through, or another dish, for the pregnant, old, very young or ill.",
    "heat-alone": "Heat that runs by itself: somebody at home and awake, a clear hob, an alarm that works.",
}
MOST_NAMED = 4


def caution(topic: str, about: tuple[str, ...]) -> str:
    """The caution, and what it is about."""
    named = ", ".join(about[:MOST_NAMED]) + (f" and {len(about) - MOST_NAMED} more" if len(about) > MOST_NAMED else "")
    return f"{CAUTIONS[topic]} ({named})"
