"""What was ticked: by food, with its amount then, so that a changed amount shows. Pure."""

from collections.abc import Iterator
from dataclasses import dataclass, field

from board.base import words as shared
from board.shopping import words
from board.shopping.errands import Provisions
from board.shopping.rows import errand_title, row_to_buy


@dataclass(frozen=True, slots=True)
class Tickable:
    """One food to tick: `key` identifies it, `amount` is what the tick covers. Foreign text, not yet safe to show."""

    key: str
    amount: str
    food: str
    notes: tuple[str, ...] = ()
    dishes: tuple[str, ...] = ()


@dataclass
class Ticks:
    """Food → the amount it was ticked at. Foods no longer on the list stay."""

    kept: dict[str, str] = field(default_factory=dict)

    def is_ticked(self, food: Tickable) -> bool:
        """Whether it is ticked at this very amount."""
        return self.kept.get(food.key) == food.amount

    def ticked_as(self, food: Tickable) -> str | None:
        """The amount it was ticked at, if that has changed since."""
        before = self.kept.get(food.key)
        return before if before is not None and before != food.amount else None

    def toggle(self, food: Tickable) -> None:
        if self.is_ticked(food):
            del self.kept[food.key]
        else:
            self.kept[food.key] = food.amount


def entries(found: Provisions) -> Iterator[str | Tickable]:
    """Headings as text, each followed by its foods."""
    for errand in found.errands:
        title = errand_title(errand, found.zone)
        for section in errand.sections:
            yield words.provisions_heading(title, section.name or shared.PROVISIONS_NO_SECTION)
            for bought in section.bought:
                row = row_to_buy(bought, found.units)
                yield Tickable(row.key, row.amount, row.food, row.notes, row.dishes)
