"""What people write beside a guest's name ↔ what they must not or do not eat: `GF`, `nut allergy`, `over 70`,
`EpiPen for nuts`. Pure; what is read another way than it is written says so in `read`."""

import difflib
import functools
import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Literal, NamedTuple, get_args

from board.facts.food import facts
from board.facts.held import table
from board.facts.named import known_words, named
from board.facts.phrases import stems

Diet = Literal[
    "vegetarian",
    "vegan",
    "pescatarian",
    "halal",
    "kosher",
    "coeliac",
    "lactose-free",
    "alcohol-free",
    "pregnant",
    "elderly",
    "infant",
    "toddler",
    "under five",
    "child",
    "immunocompromised",
]
DIETS: tuple[str, ...] = get_args(Diet)


class HowRead(NamedTuple):
    """Words beside a name that were not read to the letter, and what they were taken to mean, if anything."""

    how: Literal["read-as", "part-of-name", "not-weighed", "red-meat"]
    words: str
    meant: str = ""


@dataclass(frozen=True, slots=True)
class Said:
    """What some words beside a name mean. `severe`: it can be anaphylaxis. `read`: how they were read, where that is
    not their letter. `unread`: what is to be asked about, word for word. All empty: they say that nothing is to be
    avoided, or (severe) that what stands beside is."""

    avoids: tuple[str, ...] = ()
    diets: tuple[str, ...] = ()
    severe: bool = False
    read: tuple[HowRead, ...] = ()
    unread: tuple[str, ...] = ()

    @property
    def words(self) -> str:
        """`no nuts, vegan`, as it could have been written."""
        kind = "severe allergy to" if self.severe else "no"
        return ", ".join([*(f"{kind} {food}" for food in self.avoids), *self.diets])


# Shorthand, and other words for a diet. Spaces and hyphens are alike.
_DIETS: dict[str, str] = {
    "vegetarian": "v veg veggie veggies vego vege vegie vegetarians veggy",
    "vegan": "vg ve vgn vegans plant-based",
    "pescatarian": "pescetarian pescatarians pescetarians pesco pesc pesco-vegetarian",
    "halal": "hallal",
    "kosher": "",
    "coeliac": "celiac coeliacs celiacs coeliac-disease celiac-disease",
    "lactose-free": "lf lactose-intolerant lactose-intolerance lactose lactose-intolerants",
    "alcohol-free": "af teetotal teetotaller teetotallers sober non-drinker non-alcoholic doesn't-drink does-not-drink "
    "not-drinking no-drink no-drinks alcohol",
    "pregnant": "expecting expectant with-child expecting-a-baby having-a-baby pregnancy",
    "elderly": "old older older-adult aged senior seniors senior-citizen frail pensioner pensioners very-old",
    "infant": "baby babies infants newborn under-one under-1 under-12-months under-one-year weaning",
    "toddler": "toddlers",
    "under five": "under-5 under-fives under-5s under-five-years under-5-years child-under-five child-under-5 "
    "children-under-five children-under-5 preschooler pre-schooler preschoolers preschool small-child young-child "
    "small-children young-children",
    "child": "kid kids children teenager teenagers teen teens schoolchild",
    "immunocompromised": "immune-compromised immunosuppressed immunodeficient immune-suppressed weak-immune-system "
    "weakened-immune-system low-immunity weak-immunity ill sick unwell chemotherapy chemo on-chemotherapy on-chemo "
    "cancer-treatment in-chemotherapy having-chemo having-chemotherapy transplant organ-transplant "
    "transplant-patient seriously-ill immunosuppressants on-immunosuppressants convalescent",
}
_SHORT_DIET = {word.replace("-", " "): diet for diet, words in _DIETS.items() for word in (*words.split(), diet)}
_SHORT_AVOIDS = {"gf": "gluten", "df": "dairy", "nf": "nuts", "ef": "eggs", "wf": "wheat"}
# These are names, trades or moods as well, so that within a name they count for nothing.
_ALSO_NAMES = ("old", "child", "kid", "ill", "sober", "ve", "veg", "lactose", "alcohol", "aged")
_NOTHING = frozenset(("everything", "anything", "nothing", "none", "omnivore", "nothing to avoid", *(
    f"eats {what}" for what in ("everything", "anything", "all")), *(
    f"no {what}" for what in ("allergies", "allergy", "known allergies", "needs", "special needs", "restrictions",
    "requirements", "dietaries", "diet", "issues", "intolerances", "dietary requirements", "dietary needs",
    "dietary restrictions"))))  # fmt: skip
_pattern = functools.partial(re.compile, flags=re.IGNORECASE)


def _any(*ways: str) -> str:
    return f"(?:{'|'.join(ways)})"


_LIGHT = _pattern(r"(?:not|isn't|never)\s+(?:(?:very|so|too)\s+)?(?:severe|serious)\b|\b(?:mild|slight)(?:ly)?\b")
_HAS = r"(?:(?:carr(?:ies|y|ying)|has|have|needs|uses|with)\s+(?:(?:an?|her|his|their)\s+)?)?"
_PEN = _any(r"epi[- ]?pens?", r"adrenalin\w*\s+(?:pen|auto-?injector)", r"auto-?injectors?")
_GRAVE = _any("severe(?:ly)?", r"anaphyla\w+", "life[- ]threatening", "dea(?:th|d)ly", "(?:very )?serious(?:ly)?",
              "fatal", "airborne", "dangerously", "highly")  # fmt: skip
_SEVERE = _pattern(rf"{_HAS}\b(?:{_PEN}|{_GRAVE})\b(?:\s+(?:reactions?|shock|risk))?")
_LEAD = _pattern(
    "(?:" + _any("and", "but", "also", "who", "that", "is", "are", "am", "i'm", "he's", "she's", "they're", "was",
                 "being", "has", "have", "had", "suffers? from", "got", "an?", "the", "strict(?:ly)?", "fully",
                 "mostly", "currently", "rather", "probably", "possibly", "maybe", "a bit", "known", "food", "very",
                 "both", "just", "only", "total") + r"\s+)+"
)  # fmt: skip
_TAIL = _pattern(r"\s+(?:please|only|diet|food|at all|whatsoever|either|too|as well|ever|eater|person|guest)$|[.!]+$")
_OF = _pattern(r"^(?:for|to|from|against|of|with|by)\s+")
_MUST_NOT = _any("can't", "can ?not", "cant", "couldn't", "must(?:n't| not)", "may not", "should(?:n't| not)",
                 "(?:isn't|not) allowed", "(?:not|un)able to")  # fmt: skip
_DOES_NOT = _any("does(?:n't|nt| not)", "do(?:n't|nt| not)", "wo(?:n't|nt)", "will not")
_EAT = _any("have", "eat", "take", "touch", "tolerate", "digest", "be near", "do", "stand", "drink", "like", "want")
_AVOIDS = _pattern(
    _any("no", "not a fan of", "not", "without", "avoid(?:s|ing)?", r"never(?:\s+(?:eats?|has|have|touches))?",
         "free (?:from|of)", rf"{_MUST_NOT}(?:\s+(?:to\s+)?{_EAT})?", rf"{_DOES_NOT}\s+{_EAT}",
         r"al+erg(?:y|ic|ies)(?:\s+(?:to|against|of|for|with))?", r"intoleran(?:t|ce|ces)\s+(?:to|of|for)",
         r"sensitiv(?:e|ity)\s+(?:to|of)", r"reacts?\s+(?:badly\s+)?to", "hates?", "dislikes?", "refuses", "loathes",
         "detests", "minus", "leave out", "skips?", "hold the") + r"\s*:?\s+(.+)"
)  # fmt: skip
_SUFFIX = _pattern(
    r"(.+?)[\s-]*" + _any(r"(?<=[\s-])free", r"al+erg(?:y|ies|ic)(?:\s+sufferer)?", "intoleran(?:t|ces?)",
                          "sensitiv(?:e|ity|ities)", "averse")
)  # fmt: skip
_ALLERGIC = _pattern(r"al+erg|anaphyla|epi[- ]?pen")
_AND = _pattern(r"\s+(?=(?:no|not|without)\s+\w)|\s*(?:,|/|\+|&|;|\b(?:and|or|nor|plus|but|as well as)\b)\s*")
_BARE = _pattern(
    r"^(?:(?:no|not|any|all|the|some|every|to|kinds? of|sorts? of|also|other|for|both|eating|even|whole)\s+)+"
)
_ASKED = _pattern(r"ask\s+about\s+(.+)")
# what they cannot do, which is no food: `cannot chew`
_CANNOT_DO = _pattern(rf"{_any(_MUST_NOT, _DOES_NOT)}\s+(?!(?:to\s+)?{_EAT}\b)(.+)")
# Words after a name that are of what somebody eats or of their health, so that they are never part of a name.
_OF_HEALTH = _pattern(
    r"\b" + _any("foods?", r"diet\w*", r"diabet\w*", "only", "nothing", r"chew\w*", r"swallow\w*", "soft", "raw",
                 "pur[eé]ed?", r"medic\w*", "tablets?", "pills?", "warfarin", "statins?", "thinners?",
                 r"breast[- ]?feed\w*", "nursing", r"keto\w*", r"paleo\w*", "fodmaps?", r"low[- ]\w+", "carbs?",
                 "sugar", "salt", "cholesterol", "gout", "kidneys?", "blood", "reflux", "ibs", r"crohn'?s",
                 r"al+erg\w*", r"intoleran\w*", "eats?", "avoids?", "cannot", "can'?t", "takes") + r"\b"
)  # fmt: skip
_NO_NEED = _pattern(
    r"(?:is\s+)?" + _any("from", "of", "at", "next", "upstairs", "downstairs", "brings?", "comes?",
                         "arrives?", "leaves?", "helps?", "drives?", "sits?", "stays?", "lives?", "our", "my", "his",
                         "her", "their", "late", "the host", "plus", "n[eé]e", "family",
                         r"neighbou?rs?", "(?:a )?friends?", "colleagues?", "boss", "m[uo]m", "dad", "mother", "father",
                         "sister", "brother", "wife", "husband", "partner", "son", "daughter", "kids?", "children",
                         "cousins?", "aunt", "uncle", "(?:flat|house)mate", "(?:boy|girl)friend", r"fianc\w+", "maybe",
                         "tbc") + r"\b.*"
)  # fmt: skip
VERBS = frozenset((
    "is", "are", "was", "were", "has", "have", "had", "takes", "take", "eats", "eat", "keeps", "keep", "needs", "need",
    "avoids", "avoid", "drinks", "drink", "does", "do", "cannot", "can't", "must", "who", "both", "each",
    "likes", "loves",
))  # fmt: skip


def is_of_health(words: str) -> bool:
    """Whether words that are not understood are of what somebody eats or of their health."""
    return _OF_HEALTH.search(words) is not None


def is_unread_need(words: str) -> bool:
    """Whether words after a name may say what somebody needs: no other name, and nothing of where they come from."""
    bare = words.strip("()[] ")
    lower = bare[:1].islower() and not _NO_NEED.fullmatch(bare)
    return is_of_health(bare) or lower


_EXCEPT = _pattern(r"\s+(?:except|apart from|other than|unless|save for|besides)\b.*")
_ROUGH = _pattern(r"\s+(?:products?|proteins?|derivatives|of any (?:kind|sort)|things|stuff|based|dishes|foods?)$")
_FIGURES = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"]
_AGE = _pattern(
    rf"(?:(?:is|now|only|nearly|just|(?P<aged>aged?))\s+)*(?P<n>\d{{1,3}}|{'|'.join(_FIGURES)})(?:\s*½|\s+and a half)?"
    r"[\s-]*(?P<unit>years?|yrs?|yo|y/o|y\.o\.?|months?|mths?|mo|weeks?|wks?|days?)?(?:[\s-]*(?:old|of age))?"
)
_OVER = _pattern(
    r"(?:(?:is|aged?|well)\s+)?(?:over|above|past)\s+(?:the age of\s+)?(\d{2,3})s?"
    r"|(\d{2,3})\s*(?:\+|plus|or over|and over)"
)
_DECADES = _pattern(r"in (?:her|his|their) (?:(?:late|early|mid)[ -])?(?:seventies|eighties|nineties|[789]0s)")
_WEEKS = _pattern(r"(?:\d+\s+)?(?:weeks?|months?)\s+(?:pregnant|along|gone)")
_CHILD = _any("baby", "infant", "child", "toddler", "boy", "girl", "kid", "son", "daughter")
_WHO = _pattern(rf"^(?:an?\s+)?{_CHILD}(?:\s+of)?\s+|(?<=[a-z])[\s-]+{_CHILD}$")
_SINCE = _pattern(r"(?P<what>.+?)\s+(?:(?:due )?in|after|since|until)\s+(?P<since>.+)")  # expecting in May
OLD_YEARS = 65  # older adults: US FDA, CDC, from memory
OVER_YEARS = 60  # `over 60` is said of the old
CHILD_YEARS = 18
_DANGLING = _pattern(r"^(?:and|with|reactions?|case)\s+|\s+(?:and|with|is|are|has|have|an?)$")
_AS_KNOWN = {stems(word): word for word in known_words()}  # `nut` → nuts


def said(words: str, *, strict: bool = False) -> Said | None:
    """What the words mean; None if they say nothing known. `strict`: they stand in a name, so that they count only
    where they can be nothing else: no bare food, no single letter, no bare figure."""
    text = _tidy(words)
    if not text or (strict and (len(text) == 1 or text.isdecimal())):
        return None
    if asked := _ASKED.fullmatch(text):
        return Said(unread=(asked[1],))
    if (deed := _CANNOT_DO.fullmatch(text)) and not any(map(_is_listed, deed[1].split())):
        return Said(unread=(text,))
    found = _read(text, strict)
    if found is None or found.read or not found.words:
        return found
    literal = re.sub(r"^(?:is|are)\s+", "", text.casefold()) in DIETS or _AVOIDS.fullmatch(text) is not None
    return found if literal and not found.severe else replace(found, read=(HowRead("read-as", text, found.words),))


def _tidy(words: str) -> str:
    text = re.sub(r"(?<!\w)'|'(?!\w)", "", words.replace("\N{RIGHT SINGLE QUOTATION MARK}", "'"))
    return " ".join(text.split()).strip(" .!?*+&-–—:")


def _key(words: str) -> str:
    text = words.replace(".", "") if re.fullmatch(r"\w(?:\.\w)+\.?", words) else words  # G.F.
    return " ".join(text.casefold().replace("-", " ").split())


def _read(text: str, strict: bool) -> Said | None:
    light = " ".join(_LIGHT.sub(" ", text).split())
    if not light or _LEAD.fullmatch(f"{light} "):
        return None if strict else Said()
    if _SEVERE.search(light) is None:
        return _need(light, strict)
    rest = _tidy(re.sub(r"\s*[:()]\s*|\s[-–—]\s", " ", _SEVERE.sub(" ", light)))
    rest = _DANGLING.sub("", _OF.sub("", _DANGLING.sub("", rest)))
    if not rest or _key(rest) in ("allergy", "allergies", "allergic"):
        return Said(severe=True)
    found = _need(rest, strict)
    if found is None and (foods := list(_foods(rest))) and all(map(_is_listed, foods)):
        found = _avoided(rest, allergic=False)
    return None if found is None or not (found.avoids or "coeliac" in found.diets) else replace(found, severe=True)


def _need(text: str, strict: bool) -> Said | None:
    bare = text
    for _ in range(3):
        bare = _TAIL.sub("", _LEAD.sub("", bare, count=1) if _LEAD.match(bare) else bare)
    for each in dict.fromkeys((text, bare)):
        if _key(each) in _NOTHING:
            return Said()
        if found := _diet(each, strict):
            return found
        allergic = _ALLERGIC.search(each) is not None
        if match := _AVOIDS.fullmatch(each):
            return _avoided(match[1], allergic=allergic)
        if match := _SUFFIX.fullmatch(each):
            foods = _avoided(match[1], allergic=allergic)
            known = replace(foods, avoids=tuple(_AS_KNOWN.get(stems(food), food) for food in foods.avoids))
            return known if not strict or all(_is_listed(food) for food in foods.avoids) else None
    if not strict and (named_foods := list(_foods(bare))) and all(map(_is_food, named_foods)):
        return _avoided(bare, allergic=False)
    for pieces in (_AND.split(bare), bare.split()):
        if len(pieces) > 1 and all(pieces) and (found := _together(pieces, strict)):
            return found
    return None


def _together(pieces: list[str], strict: bool) -> Said | None:
    """`vegan and nut allergy`, `GF DF`: each read by itself."""
    known = [one for piece in pieces if (one := said(piece, strict=strict)) is not None and one.words]
    if len(known) < len(pieces):
        return None
    return Said(
        tuple(food for one in known for food in one.avoids),
        tuple(diet for one in known for diet in one.diets),
        any(one.severe for one in known),
        tuple(read for one in known for read in one.read),
    )


def _diet(text: str, strict: bool) -> Said | None:
    key = _key(text)
    if key in ("lacto ovo vegetarian", "ovo lacto vegetarian"):
        return Said(diets=("vegetarian",))
    if key in ("lacto vegetarian", "ovo vegetarian"):
        return Said(("eggs" if key[0] == "l" else "milk",), ("vegetarian",))
    if key in _SHORT_AVOIDS:
        return Said((_SHORT_AVOIDS[key],))
    if key in _SHORT_DIET and not (strict and key in _ALSO_NAMES):
        return Said(diets=(_SHORT_DIET[key],))
    if (match := _SINCE.fullmatch(text)) and suspicious(match["since"].split()) is None:
        return _diet(match["what"], strict)
    if _WEEKS.fullmatch(text):
        return Said(diets=("pregnant",))
    return _by_age(text)


def _by_age(text: str) -> Said | None:
    if ((match := _OVER.fullmatch(text)) and int(match[1] or match[2]) >= OVER_YEARS) or _DECADES.fullmatch(text):
        return Said(diets=("elderly",))
    match = _AGE.fullmatch(_WHO.sub("", text))
    if match is None or not (match["unit"] or match["aged"]):
        return None
    number = int(match["n"]) if match["n"].isdecimal() else _FIGURES.index(match["n"].casefold())
    unit = match["unit"]
    years = number if not unit or unit[0] in "yY" else number / 12 if unit[0] in "mM" else 0
    if CHILD_YEARS <= years < OLD_YEARS:
        return Said()
    return Said(
        diets=("infant" if years < 1 else "toddler" if years < 5 else "child" if years < CHILD_YEARS else "elderly",)
    )


def _avoided(text: str, *, allergic: bool) -> Said:
    """Foods one by one, so that an allergy is never hidden in a pair of words."""
    read: list[HowRead] = []
    cut = _EXCEPT.sub("", text)
    if cut != text:
        read.append(HowRead("not-weighed", text[len(cut) :].strip(), cut))
    avoids: list[str] = []
    diets: list[str] = []
    for food in _foods(cut):
        group = named(food)
        if allergic and group is not None and group.word == "red meat":
            avoids.append("alpha-gal")
            read.append(HowRead("red-meat", food, "alpha-gal"))
        elif _key(food) in _SHORT_DIET and group is None and not _is_listed(food):
            diets.append(_SHORT_DIET[_key(food)])  # `no nuts and pregnant`
        else:
            avoids.append(food)
    return Said(tuple(avoids), tuple(diets), read=tuple(read))


def _foods(text: str) -> Iterator[str]:
    for piece in _AND.split(text):
        food = _tidy(_BARE.sub("", piece))
        for pattern in (_AVOIDS, _SUFFIX):
            if match := pattern.fullmatch(food):
                food = _tidy(match[1])
        food = _TAIL.sub("", food)
        while named(food) is None and (less := _ROUGH.sub("", food)) != food:
            food = less
        if food:
            yield food


def _is_food(words: str) -> bool:
    """Whether it names something to eat, and nothing else but a word about it: `raw onions`, not `brings the wine`."""
    if _is_listed(words):
        return True
    about, _, food = words.partition(" ")
    return bool(food) and not about.endswith("s") and _is_listed(food) and facts(words) is not None


_MARKS = _pattern(
    _any("no", "not", "non", "without", "avoid(?:s|ing)?", "free", "never", "can'?t", "cannot", "doesn'?t", "don'?t",
         "won'?t", "mustn'?t", r"al+erg\w+", r"intoleran\w+", r"anaphyla\w+", r"epi[- ]?pens?", r"severe\w*",
         r"keto\w*", r"paleo\w*", "fodmaps?", r"diabet\w+", r"diet\w*", r"sensitiv\w+", "hates?", "dislikes?")
)  # fmt: skip


_LONG = [word for word in (*DIETS, *known_words(), "allergic", "allergies") if len(word) >= 7 and word.isalpha()]


def suspicious(words: list[str]) -> str | None:
    """The first of some words of a name that may say what somebody must not eat: a word of diets, a mark such as `no`,
    the name of a food."""
    for n, word in enumerate(words):
        bare = _tidy(word.strip("()[],?!"))
        if len(word) == 2 and word[1] == ".":
            continue  # an initial
        if _MARKS.fullmatch(bare) or _key(bare) in _SHORT_DIET or _key(bare) in _SHORT_AVOIDS or bare.isdecimal():
            return word
        if difflib.get_close_matches(bare.casefold(), _LONG, n=1, cutoff=0.87):
            return word  # a slip of a letter
        for size in (3, 2, 1):
            run = " ".join(words[n : n + size]).strip("()[],?!")
            if len(run) > 2 and _is_listed(run):
                return run
    return None


def _is_listed(words: str) -> bool:
    return named(words) is not None or (len(words) > 2 and stems(words) in table())


def stands_alone(name: str) -> bool:
    """Whether what stands where a name is looked for is what somebody must not eat instead: `nut allergy`, `veggie`,
    `nuts`; but Olive and Ginger are names."""
    text = _tidy(name)
    if not text:
        return False
    found = said(name, strict=True) or (said(name) if named(name) is not None and name == name.lower() else None)
    return found is not None or _AVOIDS.fullmatch(text) is not None or _SEVERE.match(text) is not None
