"""What is kept and printed: files, the printed cautions, provisions."""

from collections.abc import Sequence


def book_lies_at(path: str) -> str:
    return f"it lies at {path}"


def is_there_already(path: str) -> str:
    return f"{path}: this file is there already, and was left as it is. Name another file"


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
ASSUMED = "# assumed"  # behind what nobody said, in a plan of a menu


def caution(topic: str, about: tuple[str, ...]) -> str:
    """The caution, and what it is about."""
    return f"{CAUTIONS[topic]} ({first_named(about)})"


def first_named(about: Sequence[str]) -> str:
    """`mousse, tart, rolls, soup and 2 more`."""
    return ", ".join(about[:MOST_NAMED]) + (f" and {len(about) - MOST_NAMED} more" if len(about) > MOST_NAMED else "")


THEMES = ("dark", "light", "contrast", "plain")

MORE_MAY_SHOW = "More may show once this is mended."


def cannot_read(path: str, why: str) -> str:
    return f"{path}: cannot be read ({why})"


def not_a_file(path: str) -> str:
    return f"{path}: this is not a regular file"


LOOKING_ON = "looking on"


def nobody_called(name: str, hands: list[str]) -> str:
    known = ", ".join(hands) if hands else "nobody"
    return f"nobody is called {name!r} in this evening; hands are: {known}"


PROVISIONS_NO_SECTION = "anywhere"

PROVISIONS_NOTHING = "Nothing to buy: no dish lists ingredients, or all of it is in the house."


def provisions_title(event: str, guests: int) -> str:
    return f"{event}: provisions for {guests}"


def number(value: float) -> str:
    """Up to four digits, no zeros after the point."""
    return f"{value:.4g}"


def money(hundredths: int, sign: str) -> str:
    return f"{sign}{hundredths // 100}.{hundredths % 100:02d}"


PROVISIONS_CAUTION = (
    "Days are chosen by how long foods usually keep raw, and are no promise: the label, your eyes and nose, and your "
    "local food-safety code decide. Allergies: read the label of what you really buy."
)


GUESTS_CAUTION = (
    "Planning help only: names of foods are matched, labels are not read. Read every label and ask your guest; the "
    "label, local law and licensed practice decide. Keep pans, boards, knives, spoons and frying oil apart."
)


def was(amount: str) -> str:
    return f"ticked as {amount}"
