"""Guesses from a recipe's words: where work is done and how much needs hands. The host confirms them. Pure."""

import re
from dataclasses import dataclass, replace

from board.importing.recipe import words
from board.importing.recipe.heat import setting_in, without_unit
from board.importing.recipe.times import Length

# Settings if a recipe gives none: common practice, no source.
DEFAULT_SETTING = "180 C"
GRILL_SETTING = "240 C"
LONG_COOKING = 30  # minutes; so long, `cook` is meant for the oven that was heated; ours
RUNS_BY_ITSELF_FROM = 12  # minutes; a shorter simmer is watched throughout; ours
_OVEN = re.compile(
    r"\b(?:bakes?|baking for|roasts?|slow-roast|par-?bake|oven(?!proof)|"
    r"(?:top|middle|bottom|lower|upper|cent(?:re|er)) (?:shelf|rack))\b(?! (?:tin|tray|dish|pan))",
    re.IGNORECASE,
)
_GRILL = re.compile(r"\b(?:broil|under (?:the|a) (?:\w+ )?(?:grill|broiler)|grill)\b", re.IGNORECASE)
_COALS = re.compile(
    r"\b(?:barbecue|bbq|charcoal|coals|(?:on|onto) the (?:\w+ )?grill|(?:gas|outdoor) grill)\b", re.IGNORECASE
)
_FREEZER = re.compile(r"\b(?:freeze|freezer)\b", re.IGNORECASE)
_FRIDGE = re.compile(r"\b(?:chill|refrigerate|fridge|refrigerator|marinate)\b", re.IGNORECASE)
_LOW_FLAME = re.compile(
    r"\b(?:simmer|boil|poach|steam|braise|stew|reduce(?! (?:to|the (?:heat|oven|temperature)))|parboil|bubble|"
    r"blanch)\b",
    re.IGNORECASE,
)
_STOVE = re.compile(
    r"\b(?:(?:stir-?|deep-?|pan-?|shallow-)?fry|saut[eé]|sear|sweat|soften|deglaze|caramelise|caramelize|melt|flamb[eé]|"
    r"wilt|cook|colou?r (?:the|it|them|all)|bubbling|comes? to (?:a|the) (?:boil|simmer)|(?:really|smoking|very) hot|"
    r"(?:brown|toast|warm|heat)(?= (?:the|it|them|in|on|off|up|some|half|all|through|gently|until|\d))|"
    r"heat (?:a|an|\w+ oil|oil|butter|milk|cream|stock|fat)|gently heat|"
    r"(?:over|on|to) (?:an? |the )?(?:very )?(?:low|lowest|medium|moderate|high|highest|gentle)(?:[- ](?:to[- ])?\w+)? "
    r"(?:heat|flame)|over an? (?:\w+ )?(?:heat|flame)|(?:over|on) (?:a )?(?:low|medium|high)|hob|stove(?:top)?)\b",
    re.IGNORECASE,
)
_PAN = re.compile(
    r"(?<!roasting )(?<!baking )(?<!cake )(?<!loaf )(?<!sheet )(?<!tart )(?<!muffin )\b(?:(?:sauce|frying )?pan|"
    r"skillet|griddle|wok|stock ?pot)\b",
    re.IGNORECASE,
)
_WAIT = re.compile(
    r"\b(?:rest(?! of)|cool|prove|proof|rise|soak|stand|set aside|leave|steep|infuse|cure|settle|sit|macerate|"
    r"hang out|let (?:it|them) be|salt overnight)\b",
    re.IGNORECASE,
)
_UNTIL_COLD = re.compile(r"\buntil (?:\w+ )?(?:cold|cool|cooled|doubled|risen|set)\b", re.IGNORECASE)
_IN_COLD = re.compile(r"\bin (?:\w+ )?(?:cold|iced?|tepid|lukewarm|warm) (?:water|milk)\b", re.IGNORECASE)
_BY_HAND = re.compile(
    r"\b(?:knead|beat|rub|roll|mash|whip|shape|cream (?:the|together)|slice|chop|peel|grate|electric beaters|mixer)\b",
    re.IGNORECASE,
)
_LAST_MINUTES = re.compile(r"\bthe (?:last|final) (?:\d|few|half)", re.IGNORECASE)
# Appliances that stand on the worktop; the last two cook.
_APPLIANCES = (
    (re.compile(r"\bmicrowave\b", re.IGNORECASE), "microwave"),
    (re.compile(r"\bair[- ]?fry(?:er|ing)?\b", re.IGNORECASE), "air fryer"),
    (re.compile(r"\b(?:slow[- ]cooker|slow[- ]cook|crock[- ]?pot)\b", re.IGNORECASE), "slow cooker"),
    (re.compile(r"\b(?:blender|liquidi[sz]er|blend until smooth|liquidi[sz]e)\b", re.IGNORECASE), "blender"),
    (re.compile(r"\b(?:food processor|pulse|blitz|whizz)\b", re.IGNORECASE), "food processor"),
)
_COOK_IN_IT = ("microwave", "air fryer", "slow cooker", "barbecue")
_OUT_OF_IT = re.compile(
    r"\b(?:from|out of|off|leaving) (?:the|a|your) (?:\w+ )?(?:oven|fridge|refrigerator|freezer|pan|hob|heat|grill|"
    r"microwave|blender|processor|barbecue|cooker)\b|\b(?:oven|heat|hob) off\b|\bpulse(?:s|d)\b",
    re.IGNORECASE,
)
_HEAT_THE_OVEN = re.compile(
    r"\b(?:(?:pre-?heat|heat|turn on|switch on|light|fire up)\b[^.;,]{0,40}|"
    r"(?:set|get) (?:the|your|an?) |(?=oven (?:on|to)\b))"
    r"\b(?:oven(?!proof)|grill|broiler|air[- ]?fryer|barbecue|bbq|coals)\b",
    re.IGNORECASE,
)
# What is done to what stands on the heat, or with it: it stays there.
_STAYS = re.compile(
    r"(?:(?:then|now|next|finally|gradually|slowly|gently|carefully)\s+)*(?:add|stir|tip in|pour in|toss in|return|"
    r"cook|flip|"
    r"turn|season|whisk in|cover|throw in|drop in|scrape|bring|give|uncover|baste|crumble in|sprinkle in|let it|"
    r"in goe?s?|keep|lower|crisp|brown|go on|continue|simmer|taste)\b",
    re.IGNORECASE,
)
_LEAVES = re.compile(
    r"\b(?:drain|(?:lift|pull|take|turn|scoop|spoon) (?:\w+ ){0,4}out|pull off|serve|ladle|"
    r"set aside|transfer|remove|strain|bowl|jug|plate|platter|board|glasses|jars|"
    r"blender|off the heat|mash)\b|\bstir (?:together|before)\b",
    re.IGNORECASE,
)
_NO_WORK = re.compile(
    r"\s*(?:\W*(?:(?:cook|chef|baker|recipe|kitchen)(?:['’]?s)?\s+)?"
    r"(?:notes?|tips?|hints?|variations?|nutrition|make[- ]ahead|"
    r"to (?:store|freeze|reheat|make ahead)|storage|storing|leftovers?)\s*(?::|–|—|-\s)|"
    r"to (?:microwave|freeze|store|reheat|make (?:it |this )?ahead|keep)\b|(?:store|keep) (?:it |them |any |the )?"
    r"(?:in|leftovers?|leftover|covered|cooled|refrigerated|cold|airtight)\b(?!.*\buntil (?:needed|ready|serving))|"
    r"enjoy\b|bon app)",
    re.IGNORECASE,
)
_STORED = re.compile(
    r"\b(?:keeps|(?:will|can|may|should) (?:also )?"
    r"(?:keep|be (?:kept|stored|frozen|refrigerated|made|prepared|cooked|chilled))"
    r"|will freeze|better (?:the )?(?:next|following|reheated|made)"
    r"|(?:for )?up to (?:a|one|two|three|\d+) (?:weeks?|months?)"
    r"|leftovers|freezes well|freeze(?:s|d)? for up to|(?:stored?|frozen|refrigerated) for up to)\b",
    re.IGNORECASE,
)
# Hands for work that runs by itself: common practice, no source.
LOW_FLAME_HANDS = "3 min at the start, 1 min every 10 min, 1 min at the end"
WAIT_HANDS = "1 min at the start"


@dataclass(frozen=True)
class Guess:
    """`where`: as a plan writes it. `said`: the words behind it. `cooks`: hot work, so the core matters."""

    where: str
    said: tuple[str, ...]
    cooks: bool = False
    low_flame: bool = False
    waits: bool = False
    bare: bool = False  # no setting of its own
    tool: str = ""  # an appliance

    @property
    def in_oven(self) -> bool:
        return self.where.startswith("oven")

    def again(self, said: str, setting: tuple[str, str] | None = None) -> "Guess":
        """The same place once more, by other words."""
        if self.tool:
            return _appliance(self.tool, said)
        if self.in_oven:
            return (
                replace(self, where=f"oven at {setting[0]}, 1 shelf", said=(said, setting[1]))
                if setting
                else replace(self, said=(said,), bare=False)
            )
        return replace(self, said=(said,), low_flame=False)

    def why(self) -> str:
        said = [words.recipe_from(*self.said), *([words.RECIPE_NO_SETTING] if self.bare else [])]
        said += [words.recipe_no_unit(*taken) for each in self.said if (taken := without_unit(each)) is not None]
        return "; ".join(said)

    def attended(self, minutes: int) -> str:
        """The part that needs hands, for so many minutes of work; "" if not worth a guess."""
        if self.waits:
            return WAIT_HANDS
        return LOW_FLAME_HANDS if self.low_flame and minutes >= RUNS_BY_ITSELF_FROM else ""


@dataclass(frozen=True)
class Kitchen:
    """What the recipe has on so far: the oven's last setting with its words, and where the last work was done."""

    oven: tuple[str, str] | None = None
    last: "Guess | None" = None
    coals: bool = False


def is_no_work(text: str) -> bool:
    """Whether a sentence only says how it keeps, or is a note."""
    return bool(_NO_WORK.match(text) or (_STORED.search(text) and not re.search(r"\bat least\b", text, re.IGNORECASE)))


def begins_notes(text: str) -> bool:
    """Whether all that follows in the instruction is a note, too."""
    return bool(_NO_WORK.match(text))


def place_of(text: str, length: Length | None, kitchen: Kitchen) -> Guess | None:
    """Where this is done; None: at the worktop, by hand."""
    bare = _OUT_OF_IT.sub(" ", text)
    own = setting_in(text)
    last = kitchen.last
    for pattern, tool in _APPLIANCES:
        if match := pattern.search(bare):
            if tool == "slow cooker" and length is None:  # put into it, and not yet on
                return Guess("", (match[0],), tool=tool)
            return _appliance(tool, match[0])
    if match := _COALS.search(bare) or (_GRILL.search(bare) if kitchen.coals else None):
        return _appliance("barbecue", match[0])
    if match := _OVEN.search(bare):
        return _oven(match[0], own, kitchen.oven)
    if match := _GRILL.search(bare):
        setting = own[0] if own else GRILL_SETTING
        return Guess(f"oven at {setting}, 1 shelf", (match[0],), cooks=True, bare=not own)
    for pattern, place in ((_FREEZER, "freezer"), (_FRIDGE, "fridge")):
        if match := pattern.search(bare):
            return Guess(place, (match[0],))
    if length is not None and (match := _IN_COLD.search(bare)):
        return Guess("worktop", (match[0],), waits=True)
    wait = _WAIT.search(bare) if length is not None or _UNTIL_COLD.search(bare) else None
    flame, stove = _LOW_FLAME.search(bare), _STOVE.search(bare)
    first = flame or stove
    if first is not None and (wait is None or _is_on(first, wait, bare)):
        weak = flame is None and all(map(_is_weak, _STOVE.finditer(bare))) and not _PAN.search(bare)
        if weak and last is not None and (last.in_oven or last.tool in _COOK_IN_IT):
            return last.again(first[0], own)
        if weak and last is None and kitchen.oven is not None and length is not None and length.likely >= LONG_COOKING:
            return _oven(first[0], own, kitchen.oven)
        return Guess("stovetop, 1 ring", (first[0],), cooks=True, low_flame=flame is not None)
    if wait is not None:
        return Guess("worktop", (wait[0],), waits=True)
    if _LEAVES.search(bare) or _BY_HAND.search(bare):
        return None
    if match := _PAN.search(bare):
        return Guess("stovetop, 1 ring", (match[0],), cooks=True)
    return _going_on(bare, last, own, length)


def _going_on(text: str, last: Guess | None, own: tuple[str, str] | None, length: Length | None) -> Guess | None:
    """What goes on where the sentence before was hot: it says how long, or what is done to what stands there."""
    if last is None or not last.cooks:
        return None
    match = _STAYS.match(text)
    if length is not None or _LAST_MINUTES.search(text):
        return last.again(match[0] if match else words.RECIPE_BEFORE, own)
    return last.again(match[0], own) if match and last.where.startswith("stovetop") else None


def _is_weak(match: re.Match[str]) -> bool:
    """Words that are said of any heat."""
    return match[0].lower() in ("cook", "brown", "on low", "on high", "on medium", "heat", "warm")


def _is_on(first: re.Match[str], wait: re.Match[str], text: str) -> bool:
    """Whether the time belongs to the flame and not to the wait: `simmer 5 minutes` and not `soak 20 minutes, boil`."""
    figure = re.search(r"\d|\b(?:an|one|two|half)\s+(?:an?\s+)?hour|overnight", text)
    return wait.start() < first.start() if figure else first.start() < wait.start()


def _oven(said: str, own: tuple[str, str] | None, before: tuple[str, str] | None) -> Guess:
    found = own or before
    words_of = (said, found[1]) if found else (said,)
    return Guess(f"oven at {found[0] if found else DEFAULT_SETTING}, 1 shelf", words_of, cooks=True, bare=not found)


def _appliance(tool: str, said: str) -> Guess:
    return Guess(f"worktop, {tool}", (said,), cooks=tool in _COOK_IN_IT, low_flame=tool == "slow cooker", tool=tool)


def leaves_the_heat(text: str) -> bool:
    """Whether what stood on the heat is taken off it."""
    return bool(_LEAVES.search(text) or _OUT_OF_IT.search(text))


def is_about_coals(text: str) -> bool:
    return bool(re.search(r"\b(?:barbecue|bbq|charcoal|coals|(?:gas|outdoor) grill)\b", text, re.IGNORECASE))


def heats_the_oven(text: str) -> tuple[tuple[str, str] | None, str] | None:
    """`heat the oven to 180 C, then line a tin` → the setting, and the rest of the work. None for other words."""
    match = _HEAT_THE_OVEN.search(text)
    if match is None or _OVEN.search(text[: match.start()]):
        return None
    rest = text[match.end() :]
    cut = re.search(r"(?:,|;|\band\b)\s*(?:then\s+)?(?=[A-Za-z]{3})(?!gas\b|fan\b)", rest)
    after = rest[cut.end() :] if cut else ""
    return setting_in(text), " ".join((text[: match.start()] + after).split()).strip(" ,;")
