"""Guesses from a recipe's words: where work is done and how much needs hands. The host confirms them. Pure."""

import re
from dataclasses import dataclass

from board.importing.recipe import words
from board.importing.recipe.heat import setting_in
from board.importing.recipe.times import Length

# Settings if a recipe gives none: common practice, no source.
DEFAULT_SETTING = "180 C"
GRILL_SETTING = "240 C"
RUNS_BY_ITSELF_FROM = 12  # minutes; a shorter simmer is watched throughout; ours
_OVEN = re.compile(
    r"\b(?:bakes?|roasts?|slow-roast|par-?bake|(?:in|into|to) (?:the |a |your )?(?:\w+ )?oven)\b",
    re.IGNORECASE,
)
_GRILL = re.compile(r"\b(?:broil|under (?:the|a) (?:\w+ )?(?:grill|broiler)|grill)\b", re.IGNORECASE)
_FREEZER = re.compile(r"\b(?:freeze|freezer)\b", re.IGNORECASE)
_FRIDGE = re.compile(r"\b(?:chill|refrigerate|fridge|refrigerator|marinate)\b", re.IGNORECASE)
_LOW_FLAME = re.compile(r"\b(?:simmer|boil|poach|steam|braise|stew|reduce|parboil|bubble|blanch)\b", re.IGNORECASE)
_STOVE = re.compile(
    r"\b(?:fry|stir-fry|saut[eé]|sear|sweat|deglaze|caramelise|caramelize|melt|flamb[eé]|brown the|toast the|"
    r"(?:over|on) (?:a )?(?:very )?(?:low|medium|moderate|high|gentle)(?:-(?:low|high))?(?: heat)?|"
    r"heat (?:the |some )?(?:oil|butter|milk|cream|stock|fat)|(?:sauce|frying )pan|skillet|wok|hob)\b",
    re.IGNORECASE,
)
_WAIT = re.compile(
    r"\b(?:rest(?! of)|cool|prove|proof|rise|soak|stand|set aside|leave|steep|infuse|cure|salt overnight)\b",
    re.IGNORECASE,
)
_OUT_OF_IT = re.compile(r"\b(?:from|out of|off) the (?:oven|fridge|refrigerator|freezer|pan|hob|heat)\b", re.IGNORECASE)
_HEAT_THE_OVEN = re.compile(
    r"\b(?:pre-?heat|heat|turn on|switch on|set)\b[^.;]{0,40}\b(?:oven|grill|broiler)\b", re.IGNORECASE
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

    @property
    def in_oven(self) -> bool:
        return self.where.startswith("oven")

    def why(self) -> str:
        said = words.recipe_from(*self.said)
        return f"{said}; {words.RECIPE_NO_SETTING}" if self.bare else said

    def attended(self, minutes: int) -> str:
        """The part that needs hands, for so many minutes of work; "" if not worth a guess."""
        if self.waits:
            return WAIT_HANDS
        return LOW_FLAME_HANDS if self.low_flame and minutes >= RUNS_BY_ITSELF_FROM else ""


def place_of(text: str, length: Length | None, oven: tuple[str, str] | None) -> Guess | None:
    """Where this is done; None: at the worktop, by hand. `oven`: the last setting named."""
    bare = _OUT_OF_IT.sub(" ", text)
    own = setting_in(text)
    if match := _OVEN.search(bare):
        found = own or oven
        said = (match[0], found[1]) if found else (match[0],)
        return Guess(f"oven at {found[0] if found else DEFAULT_SETTING}, 1 shelf", said, cooks=True, bare=not found)
    if match := _GRILL.search(bare):
        setting = own[0] if own else GRILL_SETTING
        return Guess(f"oven at {setting}, 1 shelf", (match[0],), cooks=True, bare=not own)
    for pattern, place in ((_FREEZER, "freezer"), (_FRIDGE, "fridge")):
        if match := pattern.search(bare):
            return Guess(place, (match[0],))
    flame, stove = _LOW_FLAME.search(bare), _STOVE.search(bare)
    if match := flame or stove:
        return Guess("stovetop, 1 ring", (match[0],), cooks=True, low_flame=flame is not None)
    if length is not None and (match := _WAIT.search(bare)):
        return Guess("worktop", (match[0],), waits=True)
    return None


def heats_the_oven(text: str) -> tuple[tuple[str, str] | None, str] | None:
    """`heat the oven to 180 C, then line a tin` → the setting, and the rest of the work. None for other words."""
    match = _HEAT_THE_OVEN.search(text)
    if match is None or _OVEN.search(text[: match.start()]):
        return None
    rest = text[match.end() :]
    cut = re.search(r"(?:,|;|\band\b)\s*(?:then\s+)?(?=[A-Za-z]{3})(?!gas\b|fan\b)", rest)
    after = rest[cut.end() :] if cut else ""
    return setting_in(text), " ".join((text[: match.start()] + after).split()).strip(" ,;")
