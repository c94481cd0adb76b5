"""Which usual jobs a host's words mean, by what is done and to what: `light the tea lights`, `take the dishwasher out`.
Pure. What is not plainly one of them is none."""

import functools
import re
from collections.abc import Collection, Iterator
from dataclasses import dataclass
from typing import Literal

from board.facts.jobs import USUAL_JOBS, UsualJob
from board.facts.phrases import words_of

When = Literal["after dinner", "before the guests", "another time"]

_FILLERS = frozenset(words_of(
    "please then finally also first now quickly go just remember to must and"
))  # fmt: skip
_AT_THE_END = frozenset(words_of(
    "please now first last again too well low nicely ready everywhere together alight burning lit"
))  # fmt: skip
_PARTICLES = frozenset(words_of("out up down away off back round over together through going"))
_ANOTHER_DEED = frozenset({"away", "off", "back"})  # `put the candles away`
_PREPOSITIONS = frozenset(words_of(
    "in on for at with from to by before after until till if when so into onto under around near outside "
    "inside upstairs downstairs as while during behind beside between via that which who next because ready"
))  # fmt: skip
_CONTAINERS = re.compile(
    r"(?:^| )(?:bottles?|magnums?|jugs?|pitchers?|carafes?|pots?|buckets?|bowls?|bags?|box|boxes|packs?|glass|glasses|"
    r"couple|few|pair|lots|some|all|rest|kilos?|pounds?|bunch|bunches|vases?|loaf|loaves)$"
)
_PUT = frozenset(words_of("put pop place stick get stand"))
_INTO_THE_COLD = re.compile(r"in(?:to)? the (?:fridge|refrigerator|icebox)\b")
_SAME_DEEDS = (
    (re.compile(r"^(?:set|put) (?:fire|light|flame) to\b|"
                r"^(?:put|touch|set|hold) (?:a )?(?:match|flame|lighter|light) to\b|"
                r"^ignite\b|^kindle\b|^light up\b|^(?:get|set)(?= .* (?:alight|burning|lit)$)"), "light"),
    (re.compile(r"^(?:stick|pop|bung|whack|shove)(?= .*\b(?:on|out|away|in)\b)"), "put"),
)  # fmt: skip
_CLAUSES = re.compile(r"\s*(?:[,;&+/]|\band\b|\bthen\b)\s*", re.IGNORECASE)
_BESIDE = re.compile(r"\s*\([^()]*\)")

_AFTER_DINNER = re.compile(
    r"\b(?:after|following) (?:the )?(?:dinner|supper|lunch|brunch|meal|pudding|dessert|sweet|afters|everyone|guests|"
    r"they)\b|\bafterwards?\b|\bat the end\b"
)
_BEFORE_GUESTS = re.compile(
    r"\b(?:before|until|till|as|when) (?:the |our )?(?:guests?|company|visitors|dinner|supper|lunch|everyone|everybody|"
    r"people|they|anyone)\b|\bjust before$|\b(?:at )?(?:the )?last (?:minute|thing)\b"
)
_ANOTHER_TIME = re.compile(
    r"\b(?:mon|tues|wednes|thurs|fri|satur|sun)days?\b|\b(?:tomorrow|tonight|yesterday|noon|midday|overnight|before|"
    r"after|during|early)\b|\b(?:in|on|that|the|this) (?:day|morning|afternoon|evening|night|week)\b|"
    r"\bat \d|\b\d+ ?(?:am|pm|mins?|minutes?|h|hours?|days?)\b"
)


@dataclass(frozen=True, slots=True)
class _Clause:
    """`deed`: what is done, the verb first, then its particles; `thing`: to what."""

    words: str
    deed: tuple[str, ...]
    thing: str

    @property
    def deeds(self) -> frozenset[str]:
        """The verb, by itself and with each particle; `put away` is no `put`."""
        verb, *particles = self.deed
        alone = set() if _ANOTHER_DEED & set(particles) else {verb}
        return frozenset({*alone, *(f"{verb} {particle}" for particle in particles)})


@functools.lru_cache(maxsize=1024)
def usual_jobs(name: str) -> tuple[str, ...]:
    """The usual jobs a name means, as `USUAL_JOBS` calls them; none, if any part of it is not known."""
    found: list[str] = []
    deed: tuple[str, ...] = ()  # of the part before: `light the candles and the lanterns`
    for words in _clauses(name):
        clause = _clause(words)
        known = _known(clause)
        if known is not None:
            deed = clause.deed
        elif deed:
            known = _known(_clause((*deed, *words)))
        if known is None and len(words) > 1:
            return ()
        found += [known] if known is not None else []
    return tuple(dict.fromkeys(found))


def mentions_job(name: str, jobs: Collection[str]) -> bool:
    """Whether any part of a name means one of these, as `USUAL_JOBS` calls them."""
    return any(_known(_clause(words)) in jobs for words in _clauses(name))


def usual_job(name: str) -> UsualJob | None:
    """What is usual of the jobs a name means, taken together; None if none is known, or they belong apart."""
    together: UsualJob | None = None
    for each in usual_jobs(name):
        together = USUAL_JOBS[each] if together is None else together.together(USUAL_JOBS[each])
        if together is None:
            break
    return together


_ANOTHER_DAY = re.compile(
    r"\b(?:mon|tues|wednes|thurs|fri|satur|sun)days?\b|\b(?:tomorrow|tonight|yesterday|overnight|morning|night|week|days?)\b"
)


def says_another_day(name: str) -> bool:
    """Whether its words may tell of a day that is not the guests'."""
    return _ANOTHER_DAY.search(" ".join(words_of(name))) is not None


def says_when(name: str) -> When | None:
    """The time that a job's own words tell; None if they tell none."""
    words = " ".join(words_of(name))
    if _AFTER_DINNER.search(words):
        return "after dinner"
    if _BEFORE_GUESTS.search(words):
        return "before the guests"
    return "another time" if _ANOTHER_TIME.search(words) else None


def _clauses(name: str) -> Iterator[tuple[str, ...]]:
    for part in _CLAUSES.split(_BESIDE.sub("", name)):
        words = list(words_of(part))
        while words and words[0] in _FILLERS:
            words.pop(0)
        if words:
            yield words_of(_plain_deed(" ".join(words)))


def _plain_deed(words: str) -> str:
    """With its verb as the table has it: `set fire to the wicks` lights them."""
    for phrase, verb in _SAME_DEEDS:
        words = phrase.sub(verb, words, count=1)
    return words


def _clause(words: tuple[str, ...]) -> _Clause:
    verb, rest = words[0], list(words[1:])
    while rest and rest[-1] in _AT_THE_END:
        rest.pop()
    particles: list[str] = []
    thing: list[str] = []
    for n, word in enumerate(rest):
        lone = n == 0 or n + 1 == len(rest) or rest[n + 1] in _PREPOSITIONS
        if word in _PARTICLES or (word in ("on", "in") and lone):
            particles.append(word)
        elif word == "of" and _CONTAINERS.search(" ".join(thing)):
            thing = []
        elif word == "of" or word in _PREPOSITIONS:
            verb = "chill" if verb in _PUT and _INTO_THE_COLD.match(" ".join(rest[n:])) else verb
            break
        else:
            thing.append(word)
    return _Clause(" ".join(words), (verb, *particles), " ".join(thing))


def _known(clause: _Clause) -> str | None:
    noun = _clause(("", *clause.words.split())).thing
    for name, job in USUAL_JOBS.items():
        how = _patterns(name)
        if not (
            (how.saying is not None and how.saying.search(clause.words))
            or (how.verbs & clause.deeds and how.thing is not None and how.thing.search(clause.thing))
            or (job.bare and how.thing is not None and how.alone.match(noun))
        ):
            continue
        if how.unless is None or not how.unless.search(clause.words):
            return name
    return None


class _Patterns:
    """Each compiled once it is asked for: most are for no plan at hand."""

    def __init__(self, job: UsualJob) -> None:
        self.verbs = frozenset(job.verbs.split("|"))
        self._job = job
        self._things = rf"(?:{job.things})(?:s|es)?$"

    @functools.cached_property
    def thing(self) -> re.Pattern[str] | None:
        return re.compile(rf"(?:^|.* ){self._things}") if self._job.things else None

    @functools.cached_property
    def alone(self) -> re.Pattern[str]:
        return re.compile(rf"(?:the |some )?{self._things}")

    @functools.cached_property
    def saying(self) -> re.Pattern[str] | None:
        return re.compile(self._job.saying) if self._job.saying else None

    @functools.cached_property
    def unless(self) -> re.Pattern[str] | None:
        return re.compile(rf"\b(?:{self._job.unless})") if self._job.unless else None


@functools.cache
def _patterns(name: str) -> _Patterns:
    return _Patterns(USUAL_JOBS[name])
