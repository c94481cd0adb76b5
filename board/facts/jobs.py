"""Common jobs, how long they usually take, and when they belong. Common practice, no source; a plan's own figure or
time goes before any of it, and nothing here says that food is safe. `job_words` finds a job by how a host puts it."""

import math
from dataclasses import dataclass, replace
from typing import Literal, get_args

Event = Literal["guests", "table", "first", "main", "cheese", "last", "over", "used"]


@dataclass(frozen=True, slots=True)
class Window:
    """`least` to `most` minutes between the end of a job and an event, or the other way round.

    `guests`: they arrive; `table`: they come to the table; `first`, `main`, `cheese`, `last`: that course is served;
    `over`: the last course is cleared; `used`: the food it names is cooked or, if it is cooked already, served.
    """

    event: Event
    least: int = 0
    most: int | None = None
    after: bool = False


@dataclass(frozen=True, slots=True)
class UsualJob:
    """Minutes of a one-line job, more per guest if there are many, and when it is done; no window: any time before the
    guests come.

    `fridge_minutes`: time in the fridge, with hands only at the start. `ahead_of`: jobs that come after it, no sooner
    than it has run on by itself. `food`: it moves food, for which the rules of food safety go first. `verbs`,
    `things`: how it may be put, as alternatives of a pattern; a verb may want a particle, `put out`. `saying`: a
    pattern of whole phrases that verb and thing do not cover. `unless`: words that make another job of it. `bare`: the
    thing alone says it.
    """

    minutes: int
    verbs: str = ""
    things: str = ""
    window: Window | None = None
    ahead_of: tuple[str, ...] = ()
    runs_on: int = 0
    saying: str = ""
    unless: str = ""
    bare: bool = False
    fridge_minutes: int = 0
    minutes_a_guest: float = 0.0
    place: Literal["front-of-house", "worktop"] = "front-of-house"
    food: bool = False

    def minutes_for(self, guests: int) -> int:
        """Minutes of handwork for this many guests."""
        return max(self.minutes, math.ceil(guests * self.minutes_a_guest))

    def together(self, other: "UsualJob") -> "UsualJob | None":
        """Two jobs on one line, in a window that suits both; None where one comes before its event, the other after."""
        windows = [each for each in (self.window, other.window) if each is not None]
        if len({each.after for each in windows}) > 1:
            return None
        window = min(windows, key=lambda each: _IN_ORDER.index(each.event)) if windows else None
        if window is not None:
            most = [each.most for each in windows if each.most is not None]
            window = replace(window, most=min(most, default=None))
        return replace(
            self,
            minutes=self.minutes + other.minutes,
            window=window,
            fridge_minutes=max(self.fridge_minutes, other.fridge_minutes),
            minutes_a_guest=self.minutes_a_guest + other.minutes_a_guest,
            food=self.food or other.food,
        )


_IN_ORDER: tuple[Event, ...] = get_args(Event)


def _before(event: Event, most: int, least: int = 0) -> Window:
    return Window(event, least, most)


def _after(event: Event, most: int, least: int = 0) -> Window:
    return Window(event, least, most, after=True)


_DAYTIME = _before("guests", 9 * 60)  # that day, by daylight
_DAY_BEFORE = _before("guests", 36 * 60)  # the day before, or that day
_THAT_DAY = _before("guests", 10 * 60)
_WITH_COFFEE = _after("last", 30, 5)
AFTER_DINNER = _after("over", 60)

_LAY = ("lay the table", "lay the covers")
_ON_THE_TABLE = ("set out the place cards", "light the candles")
_FOR_A_DISH = "for (?!(?:the |our )?(?:guests|company|visitors|after|every|us\\b|all\\b|later|two\\b|\\d))"
_OUT = "set out|put out|lay out|get out|bring out|place|arrange"
_FETCH = "buy|get|fetch|collect|pick up"
_CLOTH = "cloth|tablecloth|linen|runner|napkin|serviette"
_CARDS = "(?:place|name|seating|menu) card|place name|name tag|seating plan|menu"
_RED = (
    "red|claret|burgundy|bordeaux|barolo|barbaresco|brunello|chianti|rioja|malbec|merlot|shiraz|syrah|zinfandel|"
    "pinot noir|cabernet|cabernet sauvignon|tempranillo|sangiovese|nebbiolo|red (?:wine|bottle)"
)
_WHITE = (
    "white|rose|chardonnay|sauvignon|sauvignon blanc|riesling|pinot grigio|pinot gris|chablis|muscadet|albarino|"
    "sancerre|viognier|gruner|gruner veltliner|(?:white|rose|pink|dessert|sweet) (?:wine|bottle)"
)
_SPARKLING = "champagne|prosecco|cava|cremant|fizz|bubbly|bubbles|sekt|sparkling|sparkling wine"
_SOFT = "water|soda|tonic|mixer|soft drink|juice|lemonade|cordial|squash|cola|ginger ale"
_CHEESE = (
    "cheese|cheese ?board|brie|camembert|stilton|cheddar|roquefort|gorgonzola|comte|gruyere|manchego|reblochon|"
    "taleggio|gouda|parmesan|pecorino|wensleydale|cheshire|goat's cheese|blue"
)
_ICE = "ice ?cream|sorbet|gelato|granita|parfait|semifreddo|frozen yogh?urt"
# Out of the cold, however it is put.
_TAKE = "take|get|bring|lift|remove|fetch|pull|have|move|leave|let|allow"
_FROM_COLD = (
    "(?:out of|from|off) (?:the |its )?"
    "(?:fridge|refrigerator|larder|icebox|cold|cooler|chiller|cool ?box|pantry|cellar)"
)
_PERISHABLE = (
    "(?:\\w+ )?(?:meat|beef|lamb|pork|veal|venison|steak|joint|roast|fillet|chop|sausage|bird|chicken|duck|goose|"
    "turkey|fish|salmon|cod|prawn|egg|cream|milk|yogh?urt|pate|terrine|ham|trifle|mousse|cheesecake|custard|tart|cake|"
    "pudding)"
)
_FROM_FREEZER = "(?:out of|from) (?:the |its )?freezer"
_TO_ROOM = "(?:room|serving|eating|drinking) temperature"
_LOSE_CHILL = f"(?:{_TO_ROOM}|come (?:up|round)|lose (?:its|their|the) chill|warm up|temper|take the chill off)"


def _out_of_the_cold(things: str, *ways: str) -> str:
    """A phrase that brings one of these out of the cold: `take the brie from the fridge`."""
    return rf"^(?:{_TAKE})\b.*\b(?:{things})(?:s|es)?\b.*\b(?:{'|'.join(ways)})\b"


_BREAD = "bread|loaf|loaves|baguette|sourdough|ciabatta|focaccia|roll|bun"

USUAL_JOBS: dict[str, UsualJob] = {
    # the room
    "clean the bathroom": UsualJob(
        20, "clean|clean up|scrub|tidy|check", "bathroom|toilet|loo|cloakroom|washroom|restroom|powder room|wc",
        _before("guests", 30 * 60),
    ),
    "tidy the room": UsualJob(
        30, "tidy|tidy up|straighten|straighten up|pick up|declutter|clean|clean up",
        "room|house|flat|apartment|place|lounge|study|downstairs", _DAY_BEFORE,
    ),
    "sweep the floor": UsualJob(
        15, "sweep|hoover|vacuum|mop|dust|brush",
        "floor|room|house|flat|apartment|carpet|rug|stair|hall|hallway|lounge|terrace|patio|deck|path|step|shelf|shelves",
        _DAY_BEFORE, saying="^(?:hoover|vacuum|sweep|mop|dust)(?: up| through)?$",
    ),
    "put out towels": UsualJob(3, f"{_OUT}|hang|hang up|change", "towel|hand soap|soap", _THAT_DAY),
    "clear the hall": UsualJob(
        10, "clear|tidy", "hall|hallway|entrance|entryway|porch|drive|driveway", _DAY_BEFORE
    ),
    "make room for coats": UsualJob(
        5, "clear|empty|free up|put up|set up|set out|put out|get out",
        "coat (?:rail|rack|hook|stand|peg|closet|cupboard|hanger|tree)|closet|coat|hanger|clothes rail", _THAT_DAY,
        saying="^(?:make|find|clear|leave) (?:some )?(?:room|space)\\b.* for (?:the |our |their |guests )?"
        "(?:coats|jackets)",
        bare=True,
    ),
    "take the coats": UsualJob(
        5, "take|hang|hang up|put away", "coat|jacket|wrap", _after("guests", 15)
    ),
    "greet the guests": UsualJob(
        10, "greet|welcome|meet|let in|receive", "guest|everyone|everybody", _after("guests", 5),
        saying="^(?:answer|get) the (?:front )?(?:door|doorbell)$",
    ),
    "get dressed": UsualJob(
        25, window=_before("guests", 90, 10),
        saying="^(?:get (?:dressed|changed|washed)|change(?: clothes)?|dress(?: up)?(?! (?:the|a|our)\\b)|shower|"
        "(?:have|take) a "
        "(?:quick )?(?:shower|bath)|(?:wash|shower) and (?:change|dress)|do (?:my )?(?:hair|make ?up))\\b",
    ),
    "walk the dog": UsualJob(30, "walk|take out", "dog|puppy", _before("guests", 4 * 60)),
    "feed the cat": UsualJob(5, "feed", "cat|dog|puppy|kitten|pet|fish", _before("guests", 2 * 60)),
    "put the cat away": UsualJob(
        5, "put|put away|put out|shut|shut away|shut in|lock|lock up|lock away|move|settle|take|crate",
        "cat|dog|puppy|kitten|pet", _before("guests", 30),
    ),
    "put the children to bed": UsualJob(
        30, "put|get|settle|tuck up|tuck in", "child|children|kid|baby|toddler|little ones", _before("guests", 60)
    ),
    "air the room": UsualJob(
        10, "air|air out|ventilate|open|freshen|freshen up",
        "room|house|flat|apartment|lounge|place|window|dining room|living room", _before("guests", 90),
    ),
    "warm the room": UsualJob(
        5, "warm|warm up|heat|heat up|turn up|turn on|put on|switch on",
        "room|house|lounge|heat|heating|heater|radiator|thermostat|boiler|dining room|living room|patio heater",
        _before("guests", 120, 20),
    ),
    "turn down the heat": UsualJob(
        2, "turn down|turn off|switch off|lower|put down|turn low",
        "heat|heating|heater|radiator|thermostat|boiler|patio heater|dining room", _before("guests", 60),
    ),
    "draw the curtains": UsualJob(
        3, "draw|close|open|pull|shut|let down", "curtain|blind|shutter|drape", _before("guests", 120)
    ),
    "cool the room": UsualJob(
        5, "cool|cool down|turn on|put on|switch on", "room|house|lounge|fan|air con|aircon|air conditioning|ac",
        _before("guests", 120, 15),
    ),
    "light the candles": UsualJob(
        5, "light|hang and light", "candle|tea ?light|taper|lantern|night ?light|votive|candelabra|candlestick|wick|"
        "menorah",
        _before("guests", 15), bare=True, unless="blow|snuff|douse|extinguish|put away",
    ),
    "blow out the candles": UsualJob(
        3, "blow out|snuff|snuff out|extinguish|douse|put out all",
        "candle|tea ?light|taper|lantern|night ?light|votive|candelabra|wick|flame|fire", AFTER_DINNER,
    ),
    "set out the candles": UsualJob(
        5, f"{_OUT}|put|hang", "candle|tea ?light|taper|lantern|votive|candelabra|candlestick|candle holder",
        _DAY_BEFORE, ahead_of=("light the candles",),
    ),
    "dim the lights": UsualJob(
        2, "dim|lower|turn down|soften|set|adjust", "light|lighting|lamp", _before("guests", 20), bare=True
    ),
    "put on the lights": UsualJob(
        3, "light|turn on|switch on|put on|plug in", "light|lamp|lighting|fairy light|string light|lamplight",
        _before("guests", 45), unless="porch|outside|outdoor|garden|path|drive",
    ),
    "light the way": UsualJob(
        5, "light|turn on|switch on|put on",
        "way|path|porch|(?:porch|outside|outdoor|garden) light|torch|torches|lights? outside|walkway|drive",
        _before("guests", 30),
        saying="^(?:turn|switch|put) (?:on )?(?:the )?(?:porch|outside|outdoor|garden|path|drive)\\w* lights?",
    ),
    "light the fire": UsualJob(
        15, "light|start|build|get going|make up|fire up|stoke|stoke up",
        "fire|log fire|wood ?burner|log burner|stove|wood ?stove|wood burning stove|log|kindling|fireplace|fire ?pit|"
        "fire ?bowl|brazier|bonfire|hearth|chiminea",
        _before("guests", 90, 10), bare=True, unless="gas|camping|under",
    ),
    "lay the fire": UsualJob(
        10, "lay|set|prepare|get ready|bring in|fetch|fetch in|carry in|chop|stack",
        "fire|hearth|fireplace|log|kindling|firewood|basket of logs", _DAY_BEFORE, ("light the fire",),
    ),
    "light the barbecue": UsualJob(
        10, "light|fire up|start|start up|get going", "barbecue|barbeque|bbq|grill|charcoal|coal|smoker|pizza oven",
        _before("main", 90, 30), place="worktop", food=True,
    ),
    "choose the music": UsualJob(
        5, "choose|make|pick|pick out|plan|prepare|compile|sort|sort out|find", "music|playlist|record|song"
    ),
    "put on music": UsualJob(
        2, "put on|start|play|turn on|switch on|cue|cue up|queue up",
        "music|playlist|record|song|radio|jazz|tune|vinyl",
        _before("guests", 30), bare=True,
    ),
    "put up the decorations": UsualJob(
        20, "put up|hang|hang up|blow up|string|string up|decorate",
        "decoration|bunting|balloon|streamer|garland|banner|fairy light|paper chain|room|tree", _DAY_BEFORE,
    ),
    "borrow chairs": UsualJob(
        20, "borrow|fetch|collect|hire|rent|pick up", "chair|stool|bench|plate|glass|table", minutes_a_guest=1.5
    ),
    "set out the chairs": UsualJob(
        5, f"{_OUT}|put|set up|unfold|carry in|bring in", "chair|stool|bench|seat", _DAY_BEFORE, minutes_a_guest=0.5
    ),
    "put up the table": UsualJob(
        15, "put up|set up|extend|open out|pull out|unfold|move|assemble", "table|trestle|table leaf|table leaves",
        _DAY_BEFORE, ahead_of=_LAY,
    ),
    "unlock the door": UsualJob(2, "unlock|open|unbolt", "door|front door|gate", _before("guests", 15)),
    "check the smoke alarm": UsualJob(3, "check|test", "smoke alarm|smoke detector|alarm"),
    # out of doors
    "mow the lawn": UsualJob(45, "mow|cut|trim|strim", "lawn|grass", _DAYTIME, ("put out the cushions",)),
    "tidy the garden": UsualJob(
        30, "tidy|weed|rake|clip|trim|prune|sweep up", "garden|yard|bed|border|hedge|leaf|leaves|flower bed", _DAYTIME,
        ("put out the cushions",),
    ),
    "put out the cushions": UsualJob(
        10, _OUT + "|put up|set up|unfold|carry out|take out|uncover|open",
        "cushion|parasol|sunshade|awning|gazebo|marquee|pavilion|umbrella|deckchair|garden furniture|patio furniture|"
        "outdoor furniture|picnic (?:blanket|rug)|blanket|throw", _before("guests", 4 * 60),
    ),
    # the table
    "iron the cloth": UsualJob(
        20, "iron|press|steam", _CLOTH, ahead_of=(*_LAY, "fold the napkins"), minutes_a_guest=1
    ),
    "spread the cloth": UsualJob(3, "spread|put on|lay|throw over", "cloth|tablecloth|runner", _DAY_BEFORE, _LAY),
    "lay the table": UsualJob(
        25, "lay|set|dress|do|set up", "table", _DAY_BEFORE, _ON_THE_TABLE, minutes_a_guest=2
    ),
    "lay the covers": UsualJob(
        10, "lay|set", "cover|place|setting|place setting", _DAY_BEFORE, _ON_THE_TABLE, minutes_a_guest=3
    ),
    "fold the napkins": UsualJob(5, "fold|roll|do", "napkin|serviette", ahead_of=_LAY, minutes_a_guest=1),
    "polish the glasses": UsualJob(
        10, "polish|wipe|shine|buff|rinse|wash|dry|check",
        "glass|wine glass|glassware|flute|goblet|tumbler|coupe|decanter", _DAY_BEFORE, _LAY, minutes_a_guest=1.5,
    ),
    "polish the cutlery": UsualJob(
        10, "polish|shine|buff|count|count out|wipe", "cutlery|silver|silverware|flatware|fork|spoon",
        ahead_of=_LAY, minutes_a_guest=1.5,
    ),
    "write the place cards": UsualJob(
        10, "write|make|print|letter|do|write out|draw up", _CARDS, ahead_of=("set out the place cards",),
        minutes_a_guest=1.5,
    ),
    "set out the place cards": UsualJob(3, f"{_OUT}|put|stand", _CARDS, _DAY_BEFORE, bare=True, minutes_a_guest=0.5),
    "set out salt and pepper": UsualJob(
        3, f"{_OUT}|put|fill", "salt|pepper|salt cellar|pepper mill|condiment|mustard|salt and pepper", _THAT_DAY
    ),
    "buy the flowers": UsualJob(20, _FETCH, "flower|bouquet|bloom", _DAY_BEFORE, ("arrange the flowers",)),
    "arrange the flowers": UsualJob(
        20, "arrange|do|display|trim|put|set out|put out|place|cut|pick",
        "flower|bouquet|bloom|cent(?:re|er)piece|vase|posy|posies|greenery", _DAY_BEFORE, bare=True,
    ),
    "fill the water jugs": UsualJob(
        5, f"fill|fill up|refill|{_OUT}", "jug|water jug|pitcher|water pitcher|carafe|water",
        _before("table", 45), minutes_a_guest=0.5,
        saying="^put (?:the |some )?(?:water|jugs?|carafes?) on the tables?$",
    ),
    "fill the water glasses": UsualJob(
        3, "fill|fill up", "glass|water glass|tumbler|goblet|beaker|water", _before("table", 15),
        minutes_a_guest=0.5,
    ),
    "pour the water": UsualJob(3, "pour|pour out", "water", _before("table", 15), minutes_a_guest=0.5),
    # at the worktop
    "get out the serving dishes": UsualJob(
        10, "get out|take out|look out|dig out|find|label|set out",
        "serving dish|serving spoon|serving bowl|platter|serving plate", place="worktop",
    ),
    "get out the plates": UsualJob(
        5, f"{_OUT}|take out|look out|count out|stack", "plate|crockery|china|dishes|bowl|tableware",
        minutes_a_guest=0.75, place="worktop",
    ),
    "warm the plates": UsualJob(
        5, "warm|warm up|heat|heat up", "plate|bowl|dish|serving dish|dinner plate", _before("main", 45),
        minutes_a_guest=0.5, place="worktop", saying=r"^(?:put|place|set|stack|slide)\b.*\b(?:plates|bowls|dishes)\b.*"
        r"\b(?:warming drawer|plate warmer|hot cupboard|low oven|warm oven|to warm)\b",
    ),
    "slice the bread": UsualJob(
        5, "slice|cut|cut up", _BREAD, _before("first", 60), minutes_a_guest=0.5, place="worktop", food=True,
    ),
    "warm the bread": UsualJob(
        10, "warm|warm up|heat|heat up|crisp up|refresh", _BREAD, _before("first", 20), place="worktop", food=True
    ),
    "put out the bread": UsualJob(
        3, f"{_OUT}|put|fill", f"{_BREAD}|bread ?basket|bread board", _before("first", 30), food=True,
        unless="oven|freezer|fridge|bake",
    ),
    "take out the butter": UsualJob(
        3, "take out|get out|bring out|soften", "butter", _before("first", 120, 30), place="worktop", food=True,
        unless="for (?:the )?(?:cake|pastry|pie|sauce|biscuits?|cookies?|tart|crumble|icing|batter)",
        saying=_out_of_the_cold("butter", _FROM_COLD, _LOSE_CHILL, "soften"),
    ),
    "put out the butter": UsualJob(
        3, f"{_OUT}|put|slice|cut", "butter|butter dish", _before("first", 30), food=True, unless="fridge|freezer|away"
    ),
    "put out the nibbles": UsualJob(
        5, f"{_OUT}|fill", "nibble|nut|olive|crisp|chip|snack|pretzel|almond|cracker|breadstick", _before("guests", 30),
        food=True,
    ),
    "take out the cheese": UsualJob(
        10, "take out|get out|bring out|unwrap|arrange|set out|put out|lay out", _CHEESE, _before("cheese", 75, 45),
        place="worktop", food=True, saying=_out_of_the_cold(_CHEESE, _FROM_COLD, _LOSE_CHILL, "breathe", "ripen"),
    ),
    "take out the ice cream": UsualJob(
        2, "take out|get out|bring out|soften|temper", _ICE, _before("last", 20, 5), place="worktop", food=True,
        saying=_out_of_the_cold(_ICE, _FROM_COLD, _FROM_FREEZER, _LOSE_CHILL, "soften", "(?:in)?to the fridge"),
    ),
    "take it out of the fridge": UsualJob(
        5, window=_before("used", 45), place="worktop", food=True,
        saying=rf"{_out_of_the_cold('[a-z]+', _FROM_COLD, _TO_ROOM, 'lose (?:its|their) chill')}|"
        rf"^(?:take|get|bring) (?:out (?:the |a )?{_PERISHABLE}(?:e?s)?|(?:the |a )?{_PERISHABLE}(?:e?s)? out)$",
        unless="wine|bottle|beer|water|juice|champagne|prosecco",
    ),
    "dish up": UsualJob(
        5, window=_before("main", 15), minutes_a_guest=0.6, place="worktop", food=True,
        saying="^(?:dish|plate|serve) (?:it |everything |the food |the main |dinner |supper |lunch )?up\\b",
    ),
    "empty the dishwasher": UsualJob(
        10, "empty|unload|unstack|take out|clear", "dishwasher", _before("guests", 120), place="worktop"
    ),
    "run the dishwasher": UsualJob(
        5, "run|start|put on|turn on|switch on|set off|set going", "dishwasher", _before("guests", 5 * 60),
        ("empty the dishwasher",), runs_on=90, place="worktop",
    ),
    "load the dishwasher": UsualJob(
        10, "load|fill|stack|load up", "dishwasher", _before("guests", 5 * 60),
        ("run the dishwasher", "empty the dishwasher"), place="worktop",
    ),
    "empty the bin": UsualJob(
        5, "empty|take out|put out|change", "bin|trash|rubbish|garbage|recycling|bin bag|trash can|compost",
        _before("guests", 180), place="worktop",
    ),
    "clear down the kitchen": UsualJob(
        20, "clear down|clear|clear up|clean|clean up|tidy|tidy up|wipe|wipe down|scrub",
        "kitchen|worktop|work surface|surface|counter|countertop|counter top|sink|side|hob|stovetop",
        _before("guests", 60), place="worktop",
    ),
    "wash up": UsualJob(
        20, "wash up|wash|do|finish|clear", "washing up|dish|dishes|pan|pot", _before("guests", 60), place="worktop",
        saying="^(?:do |finish )?(?:the )?wash(?:ing)? up\\b",
    ),
    "put away the leftovers": UsualJob(
        10, "put away|pack|pack up|box up|wrap|wrap up|chill", "leftover|left over", _after("over", 30),
        place="worktop", food=True, saying="^put (?:the )?leftovers\\b|^put what is left\\b",
    ),
    # to drink
    "set out the drinks": UsualJob(
        10, f"{_OUT}|set up|stock|prepare",
        "drink|bar|drinks (?:table|tray|trolley|cart)|bar cart|glass|wine glass|aperitif", _THAT_DAY,
        minutes_a_guest=0.6,
    ),
    "buy the ice": UsualJob(
        25, _FETCH, "ice|bag of ice", _before("guests", 120), ("put out the ice", "fill the ice bucket")
    ),
    "make the ice": UsualJob(
        5, "make|freeze", "ice|ice cube", _before("guests", 7 * 24 * 60, 4 * 60),
        ("put out the ice", "fill the ice bucket"),
    ),
    "put out the ice": UsualJob(
        5, f"{_OUT}|tip out|crush|crack|put", "ice|ice cube|crushed ice", _before("guests", 20)
    ),
    "fill the ice bucket": UsualJob(
        5, f"fill|fill up|{_OUT}", "(?:ice|wine|champagne) (?:bucket|bowl|tub|cooler)|bucket|cooler|tub|cool ?box|ice",
        _before("guests", 20), place="worktop",
    ),
    "chill the sparkling wine": UsualJob(
        5, "chill|cool|refrigerate", _SPARKLING, _before("guests", 60), ("open the sparkling wine",), fridge_minutes=180
    ),
    "chill the wine": UsualJob(
        5, "chill|cool|refrigerate", f"wine|bottle|{_WHITE}", _before("guests", 90), ("open the white wine",),
        fridge_minutes=120,  # white wine: 2 h in a fridge
    ),
    "put it on ice": UsualJob(
        5, saying="^(?:put|stand|pop|set|get|stick)\\b.*\\bon ice\\b", window=_before("guests", 60, 20)
    ),
    "chill the beer": UsualJob(
        5, "chill|cool|refrigerate", "beer|lager|cider|ale|drink", _before("guests", 180), fridge_minutes=180
    ),
    "chill the water": UsualJob(5, "chill|cool|refrigerate", _SOFT, _before("guests", 240), fridge_minutes=120),
    "chill the glasses": UsualJob(
        5, "chill|cool|frost|refrigerate", "glass|flute|coupe|tumbler|wine glass|bowl", _before("guests", 60),
        fridge_minutes=45,
    ),
    "open the red wine": UsualJob(
        5, "open|uncork|decant|breathe", _RED, _before("main", 60, 30), minutes_a_guest=0.3,
        saying="^let (?:the )?(?:red|wine|red wine|claret) breathe$",
    ),
    "decant the wine": UsualJob(10, "decant", "wine|bottle|port", _before("main", 60, 30), place="worktop"),
    "open the white wine": UsualJob(3, "open|uncork", _WHITE, _before("first", 15), minutes_a_guest=0.3),
    "open the sparkling wine": UsualJob(3, "open|uncork|pop", f"{_SPARKLING}|cork", _before("guests", 10)),
    "open the wine": UsualJob(
        3, "open|uncork", "wine|bottle|sherry|port|madeira|marsala|vermouth|sake", _before("first", 60),
        minutes_a_guest=0.3,
    ),
    "pour the welcome drinks": UsualJob(
        5, "pour|pour out|serve|hand round|hand out|pass round|offer",
        f"drink|aperitif|welcome drink|cocktail|punch|sherry|{_SPARKLING}", _after("guests", 15), minutes_a_guest=0.5,
    ),
    "pour the wine": UsualJob(
        5, "pour|pour out|serve", f"wine|{_RED}|{_WHITE}", _before("first", 15), minutes_a_guest=0.4
    ),
    "grind the coffee": UsualJob(
        3, "grind", "coffee|bean|coffee bean", _THAT_DAY, ("make the coffee",), place="worktop"
    ),
    "set out the coffee cups": UsualJob(
        5, f"{_OUT}|set up|lay|prepare",
        "(?:coffee|tea|espresso) (?:cup|tray|thing|pot|machine|maker|service|set)|cup|saucer|tea ?pot|cafetiere",
        _THAT_DAY, ("make the coffee",), minutes_a_guest=0.4,
    ),
    "make the coffee": UsualJob(
        10, "make|brew|put on|prepare|serve|pour|start|do|get|hand round|pass round",
        "coffee|filter coffee|espresso|espressos|decaf|cafetiere|french press|moka pot|coffee pot|coffee machine",
        _WITH_COFFEE, minutes_a_guest=0.7, unless=f"iced|cold|ice|jelly|cake|icing|syrup|soak|{_FOR_A_DISH}",
        bare=True, place="worktop",
    ),
    "make the tea": UsualJob(
        10, "make|brew|serve|pour|prepare|do|get|boil|put on|fill",
        "tea|mint tea|herbal tea|green tea|peppermint tea|infusion|tisane|kettle", _WITH_COFFEE,
        minutes_a_guest=0.7, saying="^brew up$", unless=f"iced|cold|ice|cake|soak|smoke|{_FOR_A_DISH}",
        bare=True, place="worktop",
    ),
    "put out the chocolates": UsualJob(
        3, f"{_OUT}|serve|pass round|hand round|offer|pour",
        "chocolate|mint|after dinner mint|petits? fours?|truffle|liqueur|digestif|brandy|cognac|port|whisky|whiskey",
        _after("last", 45, 5), unless="sauce|cake|tart|mousse|pudding",
    ),
}  # fmt: skip
JOB_MINUTES = 10  # for a one-line job not listed above
ANY_JOB = _before("guests", 180)  # when such a job is taken to be done; ours
THAT_DAY = _THAT_DAY
