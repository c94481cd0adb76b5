"""What stands by itself, and where, from the words of a step: it chills, proves, soaks, is left overnight. Pure.

Common practice, no source. A verb counts where it begins what is said, or what comes after `and`, `then` or a comma;
where some of that is work for hands (`mix the dough and let it rise`), nobody knows how much of it stands.
"""

import re
from dataclasses import dataclass
from typing import Literal

from board.facts import deeds
from board.facts.faults import MARINADE_MINUTES
from board.facts.phrases import folded
from board.facts.workings import CUTS

StandsIn = Literal["fridge", "freezer", "room"]
ALSO_DONE_BY_HAND_MINUTES = 20  # from there on, what is put away, taken out or drained stands meanwhile; ours
DRIED_BY_HAND_MINUTES = 45  # from there on, what is dried does; many leaves are dried for as long as half an hour

_PARTS = re.compile(r"\s*(?:[,;:()/&]|\b(?:and|then)\b)\s*")
_HOW = re.compile(
    r"^(?:(?:now|finally|first|again|well|loosely|gently|slowly|lightly|quickly|briefly|tightly|completely)(?:[\s-]+|$)|"
    r"(?:dry|wet|pre|re)-)"
)
_STANDS = re.compile(
    r"(?:chill|refrigerate|prove|proof|rise|rest|relax|soak|marinate|marinade|cure|brine|cool|freeze|refreeze|thaw|"
    r"defrost|infuse|steep|macerate|ferment|hydrate|ripen|mature|hang|salt-cure|"
    r"stand(?! (?:by|over|at|watch)\b)|set(?! (?:out|up|off|alight|fire|the table|tables?|places?|candles)\b)|"
    r"(?:leave|let|allow)(?! (?:the )?(?:guests?|everybody|everyone|people|children|kids|dog|cat)\b))\b"
)
_STANDS_FOR_LONG = re.compile(
    r"(?:hold|keep(?! \w+ing\b))\b|(?:take|get|lift|bring)\b.*\b(?:out|room temperature)\b|"
    r"(?:put|place|store|return|transfer|pop|slide|lay|pour|tip|move)\b.*\b(?:in|into|to) (?:the |a )?"
    r"(?:deep )?(?:fridge|refrigerator|freezer|cold larder)\b"
)
_DRIES = re.compile(r"(?:drain|strain|dry|press)\b")
_NAMED = re.compile(
    r"(?:first|second|third|final|last|bulk|long|slow|cold|short|overnight)[\s-]+"
    r"(?:prove|proof|proving|rise|rising|rest|resting|soak|soaking|fermentation|ferment|chill|cure|brine|marinade)\b"
)
_OVERNIGHT = re.compile(r"(?:through the|all|over) ?night\b")
_MINDED = re.compile(
    r"\b(?:stirring|whisking|turning|basting|beating|watching|folding|stretching|shaking|churning|skimming)\b"
)
_BY_HAND = re.compile(
    r"(?:knead|whisk|whip|beat|cream|roll|shape|form|thread|knock|punch|baste|rub|line|ice|pipe|decorate|plate|serve|"
    r"pick|shell|shuck|open|pod|string|top|scrub|clean|sieve|sift|pass|grind|pound|layer|spread|stretch|dip|coat|bread|"
    r"crumb|truss|tie|bone|fillet|gut|pluck|clear|tidy|wipe|make|find|fetch|look|unmould|turn|arrange|garnish|write|"
    r"draw|press|squeeze|juice|zest|stone|pit|hull|wrap|butter|grease|assemble|measure|weigh|prepare|prep|sort|pack|"
    r"(?:(?:pan|deep|stir|shallow)[\s-])?fry|saute|grill|toast|torch|blowtorch|flip|stir|caramelise|caramelize|"
    r"cook (?:the |all the )?(?:\w+ )?(?:eggs?|omelettes?|pancakes?|crepes?|blinis?|waffles?|steaks?|burgers?|"
    r"fritters?))\b"
)
_LIGHT = re.compile(r"(?:cover|wrap|salt|season|oil|wash|rinse|pat|put|lay|lift|brush)\b")
_LIES_COLD = re.compile(r"\b(?:over ?night|all night|through the night|cure|cures|salt|salted|rub)\b")
IN_THE_ROOM = re.compile(r"\b(?:worktop|counter|bench|table|sink|room|kitchen|out|outside|sun)\b")
_FREEZES = re.compile(r"(?:re)?freeze\b")
_CHILLS = re.compile(r"(?:chill|refrigerate)\b|cold[\s-]+(?:prove|proof|ferment)|set(?! aside)\b")
_INTO = r"\b(?:in|into|to|inside) (?:the |a |your )?(?:very )?(?:cold |big |little |deep )?"
_IN_FREEZER = re.compile(_INTO + r"(?:freezer|freeze)\b")
_IN_FRIDGE = re.compile(_INTO + r"(?:fridge|refrigerator|cold larder)\b")


def stands_in(text: str, minutes: int) -> StandsIn | None:
    """Where it stands by itself for its minutes, after a moment's work; None where its words do not say that it does.
    `room` where they name no cold place."""
    said = folded(text)
    parts = _parts(said)
    if _MINDED.search(said) or any(_works(part) for part in parts):
        return None
    dries = len(parts) == 1 and _dries(parts[0], minutes)
    if not (dries or any(_stands(part, minutes) for part in parts) or _OVERNIGHT.search(said)):
        return None
    return _where(said, parts)


@dataclass(frozen=True, slots=True)
class WorkAndStand:
    """Work for hands and standing in one: where it stands, and whether there is work before that, and after."""

    place: StandsIn
    before: bool
    after: bool


def works_and_stands(text: str, minutes: int) -> WorkAndStand | None:
    """`mix the dough and let it rise`, long enough for some of it to go by itself; None for all else, for what is only
    put away after the work, and where there is heat in it: nobody knows how long that takes."""
    said = folded(text)
    parts = _parts(said)
    stand = [n for n, part in enumerate(parts) if _stands(part, 0) or _OVERNIGHT.search(part)]
    work = [n for n, part in enumerate(parts) if n not in stand and _is_handled(part)]
    heated = any(deeds.heats_by_word(part) for part in parts)
    if minutes < ALSO_DONE_BY_HAND_MINUTES or not (stand and work) or heated or _MINDED.search(said):
        return None
    return WorkAndStand(_where(said, parts), work[0] < stand[-1], work[-1] > stand[-1])


def _where(said: str, parts: list[str]) -> StandsIn:
    if _IN_FREEZER.search(said) or any(map(_FREEZES.match, parts)):
        return "freezer"
    if _IN_FRIDGE.search(said) or any(map(_CHILLS.match, parts)):
        return "fridge"
    return "room"


def lies_cold(text: str, minutes: int) -> bool:
    """Whether raw food that is left so long, by words that name no place, lies in the fridge with who knows the trade:
    in a marinade, in salt, overnight. USDA FSIS, marinating: in the fridge, never on the counter; from memory."""
    said = folded(text)
    long = minutes > MARINADE_MINUTES
    return long and not IN_THE_ROOM.search(said) and (deeds.marinates(said) or _LIES_COLD.search(said) is not None)


def is_by_hand(text: str) -> bool:
    """Whether its words are of work that hands do throughout."""
    said = folded(text)
    return deeds.only_colours(said) or any(_LIGHT.match(part) or _is_handled(part) for part in _parts(said))


def _parts(said: str) -> list[str]:
    return [part for each in _PARTS.split(said) if (part := _HOW.sub("", each))]


def _stands(part: str, minutes: int) -> bool:
    if _STANDS.match(part) or _NAMED.search(part):
        return True
    return minutes >= ALSO_DONE_BY_HAND_MINUTES and _STANDS_FOR_LONG.match(part) is not None


def _dries(part: str, minutes: int) -> bool:
    dried = _DRIES.match(part)
    by_hand = ALSO_DONE_BY_HAND_MINUTES if dried and dried[0] in ("drain", "strain") else DRIED_BY_HAND_MINUTES
    return dried is not None and minutes >= by_hand


def _works(part: str) -> bool:
    """Whether it wants hands, or heat."""
    if _LIGHT.match(part) or _DRIES.match(part) or _stands(part, ALSO_DONE_BY_HAND_MINUTES):
        return False
    return _is_handled(part) or deeds.heats_by_word(part)


def _is_handled(part: str) -> bool:
    return bool(_BY_HAND.match(part) or CUTS.match(part)) or deeds.cuts(part) or deeds.handles(part)
