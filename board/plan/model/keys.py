"""What each key of a plan means, in a host's words, with a value as it may be written and its unit. The models say
what a value must be; every key of every part stands here."""

from typing import NamedTuple

from pydantic import BaseModel

from board.plan.model.courses import Course, Dish
from board.plan.model.drinking import Drinks
from board.plan.model.hands import Hand
from board.plan.model.kitchen import Kitchen, Oven
from board.plan.model.model import Air, Plan
from board.plan.model.table import Table
from board.plan.model.work import Job, Ref, Step, Way


class Key(NamedTuple):
    """`says`: its meaning, a sentence or two. `example`: a value in YAML; several lines begin with a line break.
    `unit`: what a figure counts, if it does."""

    says: str
    example: str
    unit: str = ""


_MINUTES = "minutes, hours or days: `25 min`, `1 h 30`, `2 days`"
_CELSIUS = "°C or °F: `74 C`, `165 F`"
_A_GUEST = "glasses, bottles, cups, l or kg a guest; a course or an hour, if it says so"
_LITRES = "litres"

_LAID = Key("What each guest has before them.", "[soup bowl, soup spoon]", "pieces a guest")
_SERVED = Key("What stands on the table for all to share.", "2 serving dishes", "pieces")
_DISHES = "[{dish: Nuts, steps: [{step: put them out, takes: 5 min}]}]"
_COURSES = f"""
  - course: Nuts
    at: 19:15
    dishes: {_DISHES}"""
_WAY: dict[str, Key] = {
    "where": Key(
        "The place, then what is used there: rings, shelves, litres, tools. An oven wants its setting, and takes a "
        "range in brackets.",
        "oven at 190 C (180 to 200 C), 1 shelf, baking sheet",
        "°C or °F, and counts",
    ),
    "takes": Key("How long it takes: one figure, or low, likely and high.", "30 to 35 to 45 min", _MINUTES),
    "attended": Key(
        "The minutes of it that need hands: `all`, `none`, or pieces. Unsaid, its place and words tell: `chill`, `let "
        "it rise` and the like want them at the start only.",
        "5 min at the start, 1 min every 10 min",
        _MINUTES,
    ),
    "keeps": Key(
        "How long the result keeps, and where, from its end until what follows begins. The food rules go first.",
        "3 days in the fridge, 4 litres",
        _MINUTES,
    ),
}
_WORK: dict[str, Key] = {
    "or": Key("Another way to do it, taken where it serves better.", "[{keeps: 30 min in the room}]"),
    "after": Key(
        "What must be over first: another piece of work, or `nothing`. It may add `at least`, `at most`, `at once`, "
        "or `order only` where nothing of it is taken up.",
        "boil the beetroot, at least 20 min",
    ),
    "before": Key("What it must be over before.", "[serve Soup]"),
    "best within": Key("How soon the result is best. Later is still safe.", "10 min", _MINUTES),
    "day": Key("The day it is done.", "day before"),
    "not before": Key("The soonest it may begin.", "sat 14:00"),
    "not after": Key("The latest it may end.", "fri 21:00"),
    "who": Key("The hands that may do it; else anybody's.", "host"),
    "hands": Key(
        "How many people it takes together, as to lift or turn a joint. All are free, and at home, whenever it needs "
        "hands.",
        "2",
        "people",
    ),
    "look for": Key("The sign that it is done, told with the call.", "edges brown"),
    "how": Key("The method, in a sentence or three, shown under the call.", "Sweat them slowly, under a lid."),
    "uses": Key(
        "What goes in as it begins, out of the dish's ingredients (a job's supplies).", "[3 eggs, 60 g butter]"
    ),
    "decide": Key("A question at its start: yes begins it, no leaves it out.", "thin it?"),
    "until": Key(
        "The temperature to reach in the middle, by a probe; and how long to hold it there.",
        "60 C for 12 min",
        _CELSIUS,
    ),
    "cooks": Key(
        "The class of food it cooks: poultry, ground meat, whole cut, roast, fish, eggs, stuffed, casserole and more.",
        "poultry",
    ),
    "reheats": Key("Whether it heats food that was cooked before, where its words do not tell.", "yes"),
    "cools": Key("How hot food is cooled: how deep, in what, in what bath.", "4 cm deep, metal, ice bath", "cm"),
    "thaws": Key("How much is thawed, and where; its time follows from the weight.", "2.4 kg in the fridge", "kg"),
    "perishable": Key("Whether the result spoils unchilled; your own word, which goes first.", "no"),
    "washes": Key("Tools that are clean after it.", "[board, knife]"),
    "puts away": Key("The courses whose leftovers it puts in the cold.", "Main"),
    "with guests": Key("Whether guests may stand by while it is done.", "yes"),
    "noted": Key("What you noted on evenings before, told when it begins.", "[low flame (2026-11-28)]"),
    "call": Key("The words of the call when it begins.", "Soup on"),
    "call at end": Key("The words of the call when it ends.", "Soup off"),
}

KEYS: dict[type[BaseModel], tuple[str, dict[str, Key]]] = {
    Plan: (
        "the plan itself",
        {
            "event": Key("What the evening is called.", "Small supper"),
            "date": Key("The day of the event: year, month, day.", "2026-12-05"),
            "zone": Key("The time zone of the kitchen.", "Europe/Dublin"),
            "arrive": Key("When the guests come, by the clock.", "18:30"),
            "air": Key("How warm it is indoors and outdoors.", "{indoors: 21 C, outdoors: 33 C}", _CELSIUS),
            "rules": Key("The food-safety rules: `home`, or `retail` for those of a food business.", "home"),
            "units": Key("How amounts and temperatures are shown: `metric` or `us`.", "metric"),
            "guests": Key(
                "Who comes, with what they must not have after a comma; or how many.",
                "[Ines, 'Tomas, vegetarian', 2 others]",
                "guests",
            ),
            "seats": Key(
                "Who sits where: two long sides, or one list clockwise around the table.",
                "[[Ines, other], [Tomas, other]]",
            ),
            "table": Key(
                "Chairs, and the pieces to eat from that the house has.", "{chairs: 6, soup bowls: 8}", "pieces"
            ),
            "kitchen": Key("Ovens, rings, fridge, freezer and tools.", "{ovens: 1, rings: 4, fridge: 45 litres}"),
            "hands": Key(
                "Who can work, each by a name, with their hours.",
                "{host: {hours: {on the day: '10:00 - 23:30'}}}",
            ),
            "courses": Key(
                "What is eaten, in order: a list of courses with their dishes.",
                _COURSES,
            ),
            "jobs": Key("Work that belongs to no dish. A line of words is enough for usual ones.", "[lay the table]"),
            "foods": Key("What a food of your own holds, as its label says.", "{aunt's spice mix: mustard and celery}"),
            "drinks": Key(
                "Drinks worked out from guests, hours and courses; or `usual`.", "{wine: usual, coffee: usual}"
            ),
            "shopping": Key("Your trips to the shops, by day.", "{fri: '16:00 - 17:30'}"),
            "shops": Key("When each section of the shop is open.", "{butcher: {fri: '8:00 - 18:00'}}"),
            "pantry": Key("What is in the house: foods, or a file that lists them.", "[2 kg flour, salt]"),
            "packs": Key("How much of a food is sold at once.", "{butter: 250 g, eggs: 6}"),
            "prices": Key("What a food costs: by the pack, by an amount or each.", "{butter: 2.40 a pack}"),
            "noted": Key("Notes on whole evenings before.", "[lay more bread (2026-11-28)]"),
            "history": Key("What figures were learned from. `lessons` writes it.", "['2026-11-28: 3 evenings']"),
        },
    ),
    Air: (
        "air",
        {
            "indoors": Key("How warm the room is.", "21 C", _CELSIUS),
            "outdoors": Key(
                "How warm it is outdoors. Above 32 °C (90 °F) food may stand out one hour, not two.", "33 C", _CELSIUS
            ),
        },
    ),
    Hand: (
        "a pair of hands",
        {
            "hours": Key("When they can work, by day.", "{day before: '18:00 - 22:00', on the day: '10:00 - 23:30'}"),
            "hired": Key("Whether they come to work, and do not sit at the table.", "yes"),
            "away": Key(
                "When they are busy in the house: by the clock, by what happens, or only how long.",
                "{greet the guests: 10 min from guests arrive}",
                _MINUTES,
            ),
        },
    ),
    Kitchen: (
        "the kitchen",
        {
            "ovens": Key("How many ovens, or each by its name.", "{big oven: {shelves: 3}}", "ovens"),
            "rings": Key("How many rings can be on at once.", "4", "rings"),
            "fridge": Key("The room in the fridge that is free for the meal.", "45 litres", _LITRES),
            "freezer": Key("The room in the freezer that is free for the meal.", "20 litres", _LITRES),
            "to the table": Key("The walk between kitchen and table.", "1 min", _MINUTES),
            "tools": Key(
                "Pots, pans, boards and machines, each with how many there are.", "{big pot: 1, board: 2}", "pieces"
            ),
            "fridge at": Key("How cold the fridge is.", "3 C", _CELSIUS),
            "wash up": Key("Whether washing up that you do not write is on the timetable all the same.", "no"),
        },
    ),
    Oven: (
        "an oven",
        {
            "shelves": Key("How many shelves it has.", "2", "shelves"),
            "low": Key("The lowest setting it holds.", "50 C", _CELSIUS),
            "high": Key("The highest setting it reaches.", "250 C", _CELSIUS),
            "heats": Key("How long it takes to heat; or `as in the book`.", "14 min to 180 C", _MINUTES),
            "cools": Key(
                "How long it takes to cool, door shut; or `as in the book`.", "22 min from 190 to 110 C", _MINUTES
            ),
            "cools ajar": Key("How long it takes to cool with the door ajar.", "9 min from 190 to 110 C", _MINUTES),
        },
    ),
    Course: (
        "a course",
        {
            "course": Key("What the course is called.", "Soup"),
            "at": Key(
                "When it goes out: by the clock, or so long after something.",
                "50 min after the course before",
                _MINUTES,
            ),
            "eaten in": Key(
                "How long the guests eat it: one figure, or low, likely and high.", "20 to 30 min", _MINUTES
            ),
            "may slip": Key("How late it may go out without anybody minding.", "10 min", _MINUTES),
            "serve": Key("The minutes to plate and carry.", "5 min", _MINUTES),
            "clear": Key("The minutes to clear.", "5 min", _MINUTES),
            "sit": Key("How long nobody who eats gets up after it is served; 0 for none.", "15 min", _MINUTES),
            "standing": Key("Whether it is eaten standing.", "yes"),
            "outdoors": Key("Whether it is eaten outdoors.", "yes"),
            "laid with": _LAID,
            "served in": _SERVED,
            "drink": Key(
                "What is poured with it, how many bottles, how long chilled, how soon opened, how strong.",
                "dry cider, 6 bottles, chilled 2 h, opened 10 min before, 5 %",
                "bottles",
            ),
            "noted": Key("Notes on its serving and clearing.", "[warm the plates (2026-11-28)]"),
            "dishes": Key(
                "What is on the plates: a list of dishes.",
                _DISHES,
            ),
        },
    ),
    Dish: (
        "a dish",
        {
            "dish": Key("What the dish is called.", "Onion tart"),
            "for": Key("How many it feeds as written.", "4", "people"),
            "only for": Key("The guests it is served to, by name.", "Tomas and Maud"),
            "instead of": Key("The dish of this course that those guests then do not get.", "Beef shin"),
            "not for": Key("The guests it is not served to.", "Maud"),
            "scale": Key("Whether its amounts grow with the guests: `linear`, or stay `as written`.", "as written"),
            "ingredients": Key(
                "What goes into it: amount, food, the section of the shop in brackets, then what its label says.",
                "[600 g leeks (veg), '1 egg (dairy), free from gluten']",
                "g, kg, ml, l, spoons, cups, pieces",
            ),
            "perishable": Key("Whether it spoils unchilled; your own word, which goes first.", "no"),
            "by time alone": Key("Kept safe by time alone, where the rules allow it.", "yes"),
            "laid with": _LAID,
            "served in": _SERVED,
            "makes": Key("How much it comes to, as written.", "1.2 l", "l, ml, kg, g or pieces"),
            "a guest": Key("How much of that each who is served it gets.", "150 ml", "l, ml, kg, g or pieces"),
            "source": Key("Where the recipe is from. It stands on paper.", "Aunt Maud's blue notebook"),
            "steps": Key(
                "What is done for it, one step after another as written.", "[{step: simmer the soup, takes: 35 min}]"
            ),
        },
    ),
    Step: (
        "a step",
        {
            "step": Key("What is done, in your words: the verb first.", "simmer the soup"),
            **_WAY,
            **_WORK,
            "leaves": Key("What it leaves that can be used elsewhere.", "6 egg yolks", "as ingredients"),
            "guessed": Key("Keys that a program filled in. `platecall settle` goes through them.", "[where, takes]"),
        },
    ),
    Job: (
        "a job",
        {
            "job": Key("What is done, in your words.", "light the tea lights"),
            **_WAY,
            **_WORK,
            "supplies": Key("What must be bought or brought for it.", "[20 candles (household)]", "as ingredients"),
        },
    ),
    Way: ("another way", _WAY),
    Ref: (
        "after and before, in long form",
        {
            "step": Key("The piece of work that is pointed at.", "boil the beetroot"),
            "at least": Key("The least time between its end and the start of this.", "20 min", _MINUTES),
            "at most": Key("The most time between.", "2 h", _MINUTES),
            "at once": Key("With no time between.", "yes"),
            "order only": Key(
                "Whether it only comes later, and takes up nothing of what was made: so nothing has to keep till then, "
                "and no clock runs on.",
                "yes",
            ),
        },
    ),
    Table: (
        "the table",
        {
            "chairs": Key("How many chairs there are.", "6", "chairs"),
            "seats at the table": Key("How many the table has room for.", "6", "seats"),
            "laid with": Key("What each guest has for the whole meal.", "[water glass, napkin]", "pieces a guest"),
            "wash between": Key("Whether what runs short is washed between courses.", "yes"),
        },
    ),
    Drinks: (
        "drinks",
        {
            "wine": Key("How much wine.", "usual", _A_GUEST),
            "sparkling": Key("How much sparkling wine.", "1 glass a guest", _A_GUEST),
            "beer": Key("How much beer.", "1 bottle a guest", _A_GUEST),
            "soft drinks": Key("How much for who drinks no alcohol, and a glass for the rest.", "usual", _A_GUEST),
            "water": Key("How much water.", "0.5 l a guest", _A_GUEST),
            "ice": Key("How much ice.", "usual", _A_GUEST),
            "coffee": Key("How much coffee.", "1 cup a guest", _A_GUEST),
            "children": Key("How many guests get no alcohol and no coffee.", "2", "guests"),
        },
    ),
}
