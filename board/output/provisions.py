"""The list of provisions as text, as Markdown and for other programs."""

from collections.abc import Iterator

from rich.console import Console

from board.base import words as shared
from board.base.plain import one_line
from board.output import words
from board.output.schemas.provisions import ItemForm, ProvisionsForm
from board.output.tables import cell, paragraph, table
from board.plan.resolve.amounts import Amount
from board.shopping.errands import Provisions
from board.shopping.items import Item
from board.shopping.rows import Row, errand_title, grown_rows, proposed_days, row_in_house, row_to_buy


def print_provisions(found: Provisions, out: Console) -> None:
    """By day and section of the shop, with boxes."""
    out.print(cell(shared.provisions_title(found.event, found.guests), "bold"))
    for remark in remarks(found):
        out.print(paragraph(remark, indent=2))
    for errand in found.errands:
        out.print()
        out.print(cell(errand_title(errand, found.zone), "bold"))
        for section in errand.sections:
            out.print(cell(section.name or shared.PROVISIONS_NO_SECTION, "dim", indent=2))
            rows = table(("", "left"), ("", "right"), ("", "left"), ("", "right"))
            rows.show_header = False
            for bought in section.bought:
                row = row_to_buy(bought, found.units)
                rows.add_row(f"  {shared.SIGN['box']}", cell(row.amount), cell(_what(row)), cell(row.cost))
            out.print(rows)
    _rest(found, out)


def _rest(found: Provisions, out: Console) -> None:
    if found.in_house:
        out.print()
        out.print(cell(words.PROVISIONS_IN_HOUSE, "bold"))
        for item in found.in_house:
            row = row_in_house(item, found.units)
            out.print(paragraph(f"{row.amount} {row.food}", indent=2))
    if found.left:
        out.print()
        out.print(cell(shared.LEFT_TO_USE, "bold"))
        for line in found.left:
            out.print(paragraph(line, indent=2))
    first = True
    for title, lines in grown_rows(found):
        out.print()
        if first:
            out.print(cell(words.PROVISIONS_GROWN, "bold"))
            first = False
        out.print(paragraph(title, indent=2))
        for line in lines:
            out.print(paragraph(line, indent=4))
    if told := drinks_told(found):
        out.print()
        out.print(cell(words.DRINKS_TITLE, "bold"))
        for line in told:
            out.print(paragraph(line, indent=2))
    out.print()
    for cost in costs(found):
        out.print(cell(cost, "bold"))
    out.print(paragraph(shared.PROVISIONS_CAUTION, "dim"))


def remarks(found: Provisions) -> Iterator[str]:
    """What to say before the list."""
    if not found.to_buy:
        yield shared.PROVISIONS_NOTHING
    elif proposed_days(found):
        yield words.PROVISIONS_NO_TRIPS


def costs(found: Provisions) -> list[str]:
    """The total, and the cost a guest, in each currency; empty without prices."""
    return [
        words.total_cost(shared.money(sum_, sign), shared.money(round(sum_ / found.guests), sign), found.unpriced)
        for sign, sum_ in found.costs.items()
    ]


def drinks_told(found: Provisions) -> list[str]:
    """Who the drinks are for, and how strong they are; empty if the plan says nothing of drinks."""
    told = []
    if found.drinks is not None:
        table = found.drinks
        told.append(words.drinks_table(table.drinkers, table.guests - table.drinkers, table.hours))
    if found.poured:
        told.append(words.poured(found.poured))
    told += [words.strength(s.drink, s.bottles, s.percent, s.drinks) for s in found.strengths]
    return [*told, words.DRINKS_CAUTION] if told else []


def _what(row: Row) -> str:
    notes = f" ({'; '.join(row.notes)})" if row.notes else ""
    return f"{row.food}{notes} · {', '.join(row.dishes)}"


def provisions_markdown(found: Provisions) -> str:
    """For paper; foreign text cannot become markup."""
    lines = [f"# {_text(shared.provisions_title(found.event, found.guests))}", ""]
    for remark in remarks(found):
        lines += [_text(remark), ""]
    for errand in found.errands:
        lines += [f"## {_text(errand_title(errand, found.zone))}", ""]
        for section in errand.sections:
            lines += [f"### {_text(section.name or shared.PROVISIONS_NO_SECTION)}", ""]
            for bought in section.bought:
                row = row_to_buy(bought, found.units)
                what = " · ".join([_what(row), row.cost] if row.cost else [_what(row)])
                lines.append(f"- [ ] **{_text(row.amount)}** {_text(what)}")
            lines.append("")
    if found.in_house:
        lines += [f"## {words.PROVISIONS_IN_HOUSE}", ""]
        rows = (row_in_house(item, found.units) for item in found.in_house)
        lines += [*(f"- {_text(f'{row.amount} {row.food}')}" for row in rows), ""]
    if found.left:
        lines += [f"## {shared.LEFT_TO_USE}", "", *(f"- {_text(line)}" for line in found.left), ""]
    grown = list(grown_rows(found))
    if grown:
        lines += [f"## {words.PROVISIONS_GROWN}", ""]
    for title, amounts in grown:
        lines += [f"{_text(title)}", "", *(f"- {_text(line)}" for line in amounts), ""]
    if told := drinks_told(found):
        lines += [f"## {words.DRINKS_TITLE}", "", *(f"- {_text(line)}" for line in told), ""]
    lines += [*(f"**{_text(cost)}**\n" for cost in costs(found)), shared.PROVISIONS_CAUTION]
    return "\n".join(lines)


_MARKUP = str.maketrans({sign: f"\\{sign}" for sign in "\\`*_[]<>#|~&!"})


def _text(text: str) -> str:
    return one_line(text).translate(_MARKUP)


def provisions_form(found: Provisions) -> ProvisionsForm:
    """The form `provisions --json` prints. Amounts in grams, millilitres or pieces; money in hundredths."""
    return {
        "plan": found.event,
        "guests": found.guests,
        "errands": [
            {
                "day": errand.day.isoformat() if errand.day else None,
                "trip": errand.trip.name if errand.trip else None,
                "sections": [
                    {
                        "section": section.name or None,
                        "items": [
                            {
                                **_item(bought.item, row_to_buy(bought, found.units)),
                                "keeps_days": bought.keep.days,
                                "keeps_source": bought.keep.source,
                                "doubt": bought.doubt,
                            }
                            for bought in section.bought
                        ],
                    }
                    for section in errand.sections
                ],
            }
            for errand in found.errands
        ],
        "in_house": [_item(item, row_in_house(item, found.units)) for item in found.in_house],
        "scaled": [{"dish": dish.dish, "written_for": dish.written_for, "factor": dish.factor} for dish in found.grown],
        "left": list(found.left),
        "costs": [{"sign": sign or None, "hundredths": sum_} for sign, sum_ in found.costs.items()],
        "unpriced": found.unpriced,
        "strengths": [{"drink": s.drink, "us_standard_drinks": round(s.drinks, 2)} for s in found.strengths],
    }


def _item(item: Item, row: Row) -> ItemForm:
    return {
        "food": item.food,
        "shown": row.amount,
        "for": list(row.dishes),
        "parts": [
            {
                "kind": part.need.kind,
                "need": _range(part.need),
                "in_house": _range(part.have) if part.have else None,
                "short": part.short,
                "buy": part.bought,
                "packs": part.packs.count if part.packs else None,
                "left_over": part.packs.left_over if part.packs else None,
                "cost": part.cost,
            }
            for part in item.parts
        ],
        "notes": list(row.notes),
    }


def _range(amount: Amount) -> list[float] | None:
    return [amount.low, amount.high] if amount.low is not None and amount.high is not None else None
