"""What the keys of long forms mean: phrases written out key by key, which the short forms make needless. Only editors
show them; all other keys stand in `keys`."""

from board.plan.model.keys import Key

_LOW, _HIGH = Key("The least.", "190"), Key("The most.", "210")
_UNIT = Key("Its unit.", "g")
_MINUTES = "minutes"
_NAME = Key("Whose name; left out, unnamed guests.", "Ines")
_COUNT = Key("How many of them.", "2")
_FOOD: dict[str, Key] = {
    "food": Key("The food.", "carrots"),
    "low": _LOW,
    "high": _HIGH,
    "unit": _UNIT,
    "size": Key("The size of a piece.", "large"),
    "section": Key("The section of the shop.", "fish"),
}

LONG_FORMS: dict[str, dict[str, Key]] = {
    "AfterCourse": {
        "minutes": Key("So long after it.", "45", _MINUTES),
        "course": Key("The course it goes out after; left out, after guests arrive.", "Soup"),
        "course_before": Key("Whether it is after the course before.", "true"),
    },
    "Attention": {
        "whole": Key("Whether it needs hands all the time.", "true"),
        "start": Key("Hands at its start.", "5", _MINUTES),
        "end": Key("Hands at its end.", "5", _MINUTES),
        "every": Key("Between two looks.", "15", _MINUTES),
        "look": Key("How long a look takes.", "1", _MINUTES),
    },
    "Away": {
        "day": Key("Which day.", "on the day"),
        "start": Key("When it begins, by the clock.", "17:30"),
        "end": Key("When it ends, by the clock.", "18:00"),
        "length": Key("How long.", "20", _MINUTES),
        "from": Key("What it begins with.", "guests arrive"),
        "before": Key("What it is over before.", "guests arrive"),
    },
    "Cooling": {
        "depth_cm": Key("How deep the food stands.", "5", "cm"),
        "vessel": Key("What it stands in.", "metal"),
        "bath": Key("What cools it.", "ice bath"),
    },
    "Core": {
        "celsius": Key("The temperature in the middle.", "74", "°C"),
        "minutes": Key("How long to hold it.", "12", _MINUTES),
    },
    "CourseTime": {
        "clock": Key("When it goes out, by the clock.", "19:30"),
        "after": Key("What it comes after.", "45 min after Soup"),
    },
    "Day": {
        "days_before": Key("Days before the event.", "1", "days"),
        "weekday": Key("The last such day before it.", "fri"),
        "date": Key("The calendar day.", "2026-11-27"),
    },
    "Guest": {
        "name": _NAME,
        "count": _COUNT,
        "avoids": Key("Foods they must not eat.", "[nuts]"),
        "diets": Key("How they eat.", "[vegan]"),
        "severe": Key("Which of these can be anaphylaxis.", "[nuts]"),
    },
    "Happening": {
        "event": Key("What happens.", "guests arrive"),
        "minutes": Key("So long before or after it.", "10", _MINUTES),
    },
    "Heat": {"want": Key("The setting.", "200", "°C"), "low": _LOW, "high": _HIGH},
    "HeatRate": {
        "minutes": Key("How long it takes.", "15", _MINUTES),
        "start": Key("From which heat.", "20", "°C"),
        "end": Key("To which heat.", "180", "°C"),
    },
    "HowMuch": {
        "usual": Key("Whether it is the program's own figure.", "true"),
        "amount": Key("How much.", "0.5"),
        "unit": Key("In which unit.", "l"),
        "each": Key("Once, each course or each hour.", "once"),
        "first_hour": Key("How much in the first hour.", "2"),
    },
    "InTheHouse": {**_FOOD, "file": Key("A file that lists such foods.", "pantry.yaml")},
    "Ingredient": {
        **_FOOD,
        "choices": Key("Foods of which any will do.", "[thyme, sage]"),
        "contains": Key("What its label says is in it.", "[milk]"),
        "may contain": Key("What its label says may be in it.", "[nuts]"),
        "free from": Key("What its label says is not in it.", "[gluten]"),
    },
    "Keep": {
        "minutes": Key("How long.", "120", _MINUTES),
        "where": Key("Where it stands.", "fridge"),
    },
    "Moment": {"day": Key("Which day.", "day before"), "clock": Key("The time of day.", "19:30")},
    "Pack": {"amount": Key("How much is in it.", "500"), "unit": _UNIT},
    "Pairing": {
        "drink": Key("What is poured.", "white wine"),
        "bottles": Key("How many bottles.", "2", "bottles"),
        "bottle_millilitres": Key("What a bottle holds.", "750", "ml"),
        "chilled": Key("How long it is chilled.", "120", _MINUTES),
        "opened": Key("How long before the course it is opened.", "60", _MINUTES),
        "percent": Key("Its alcohol by volume.", "12.5", "%"),
    },
    "Pieces": {"piece": Key("The piece of the table.", "dinner plate"), "count": _COUNT},
    "Portion": {"low": _LOW, "high": _HIGH, "unit": _UNIT},
    "Price": {
        "hundredths": Key("The price in hundredths of the currency.", "750", "hundredths"),
        "sign": Key("The currency's sign.", "€"),
        "amount": Key("For how much.", "500"),
        "per": Key("For a pack, a piece or an amount.", "pack"),
    },
    "Seat": {"name": _NAME, "count": _COUNT},
    "Span": {
        "start": Key("When it begins, by the clock.", "17:30"),
        "end": Key("When it ends, by the clock.", "22:00"),
    },
    "Spread": {
        "low": Key("The shortest.", "10", _MINUTES),
        "likely": Key("The likeliest.", "15", _MINUTES),
        "high": Key("The longest.", "20", _MINUTES),
    },
    "Station": {
        "place": Key("Which place.", "stovetop"),
        "oven": Key("Which oven.", "big oven"),
        "heat": Key("Its setting.", "200 C (190 to 210 C)"),
        "shelves": Key("How many shelves.", "1", "shelves"),
        "rings": Key("How many rings.", "1", "rings"),
        "litres": Key("The room it takes.", "4", "litres"),
        "tools": Key("Pots, pans, boards and machines, each with how many.", "{big pot: 1}", "pieces"),
        "off": Key("Whether the oven is off.", "true"),
        "ajar": Key("Whether the door is ajar.", "true"),
    },
    "Thaw": {"kilos": Key("How much.", "1.5", "kg"), "where": Key("Where it thaws.", "fridge")},
}
