"""What each guest must not have or does not eat, as sets of what is in food: `no tree nuts`, `vegetarian`."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from board.facts.allergens import Allergen
from board.facts.diets import DIETS, THE_WORD, Diet, named_by_law
from board.facts.food import facts
from board.facts.held import Facts
from board.facts.named import named
from board.facts.origins import Origin, Trait
from board.facts.phrases import stems
from board.facts.susceptible import SUSCEPTIBLE
from board.plan.phrases.guests import Guest, as_said, shown

# A guest who must not have one food is asked about every food that shares what can hurt in it: `no prawns` and crab,
# `no egg white` and eggs, `no cheese` and other milk foods. Common practice, no source.
_KIN: frozenset[Trait] = frozenset(Allergen) | frozenset(
    {Origin.FISH, Origin.CRUSTACEAN, Origin.MOLLUSC, Origin.PORK, Origin.BEEF, Origin.POULTRY, Origin.ALCOHOL}
)
# Words wider than the foods the table lists for them: nobody knows which are meant, so everything is asked about.
_TOO_WIDE = frozenset(
    stems(word) for word in ("fruit", "berries", "vegetables", "roots", "leaves", "herbs", "spices", "seeds", "pulses")
)


@dataclass(frozen=True)
class Need:
    """One thing a guest said of themselves, in their words.

    `never`, `asks`: what makes a dish not safe, or one to ask about. `food`: a single food, found by its name.
    `safety`: it can hurt them; `severe`: it can be anaphylaxis. `known`: False if the program knows no such food, so
    that everything is asked about; `unread`: it is not understood, and may be no food at all.
    """

    words: str
    never: frozenset[Trait]
    asks: frozenset[Trait]
    source: str
    safety: bool
    food: Facts | None = None
    known: bool = True
    diet: Diet | None = None
    severe: bool = False
    unread: bool = False

    @property
    def told(self) -> str:
        """As it is shown: severity first."""
        if self.unread:
            return as_said(self.words)
        how, what = ("", self.words) if self.diet is not None else ("no", self.words.removeprefix("no "))
        return shown(how, what, severe=self.severe)

    def source_of(self, trait: Trait) -> str:
        """The list, table or advice by which this trait counts."""
        if self.diet is None:
            return named_by_law(trait) or "on neither list of allergens; your guest's own word"
        if trait in self.diet.sources:
            return self.diet.sources[trait]
        return self.diet.asks_source if trait in self.asks and trait not in self.never else self.source


def needs_of(guest: Guest) -> tuple[Need, ...]:
    """All that one line of guests said, what can be anaphylaxis first; empty for those with nothing to avoid. Who is
    more easily harmed has two: what can make them ill, and what is only advised against."""
    found = [*map(_avoiding, guest.avoids), *(need for words in guest.diets for need in _keeping(words))]
    marked = [replace(need, severe=need.safety and need.words.removeprefix("no ") in guest.severe) for need in found]
    marked += map(_unread, guest.unread)
    return tuple(sorted(marked, key=lambda need: not need.severe))


def told_needs(needs: Iterable[Need]) -> list[str]:
    """What a guest said, as it is shown, each once."""
    return list(dict.fromkeys(need.told for need in needs))


def is_severe(needs: Iterable[Need]) -> bool:
    return any(need.severe for need in needs)


def _avoiding(words: str) -> Need:
    said, by = f"no {words}", "your guest's own word"
    if (group := named(words)) is not None:
        return Need(said, group.holds, group.asks, by, safety=True)
    food = facts(words)
    if food is None or stems(words) in _TOO_WIDE:
        return Need(said, frozenset(), frozenset(), by, safety=True, known=False)
    return Need(said, frozenset(), food.traits & _KIN, by, safety=True, food=food)


def _unread(words: str) -> Need:
    by = "your guest's own word"
    return Need(words, frozenset(), frozenset(), by, safety=True, known=False, unread=True)


def _keeping(words: str) -> Iterator[Need]:
    for diet in (SUSCEPTIBLE.get(words), DIETS.get(words)):
        if diet is not None:
            yield Need(words, diet.never, diet.asks, diet.source or THE_WORD, diet.safety, diet=diet)
