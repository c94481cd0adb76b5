"""Who may eat what, in the terminal, as Markdown for paper, and for other programs."""

from collections.abc import Iterator

from rich.console import Console

from board.base import words as shared
from board.base.plain import one_line
from board.checks.allergens.dietary_needs import told_needs
from board.checks.allergens.guests_eat import Answer, Matrix
from board.checks.allergens.verdict import Reason, Verdict
from board.output import words
from board.output.markdown import safe
from board.output.schemas.guests import GuestsForm, ReasonForm, VerdictWord
from board.output.tables import cell, paragraph, table

SIGNS = {
    Verdict.SAFE: words.GUESTS_SAFE,
    Verdict.ASK: words.GUESTS_ASK,
    Verdict.NOT_SAFE: words.GUESTS_NOT_SAFE,
}
STYLES = {Verdict.SAFE: "green", Verdict.ASK: "yellow", Verdict.NOT_SAFE: "bold red"}
NAME_COLUMNS, DISH_COLUMNS = 26, 4  # the least room for a guest; the room of a dish's number


def print_guests(event: str, found: Matrix, out: Console) -> None:
    """The table, a block for as many dishes as fit; then the dishes by number, and the reasons guest by guest."""
    out.print(cell(words.guests_title(event), "bold"))
    out.print(cell(words.GUESTS_LEGEND, "dim"))
    each = max(1, (out.width - NAME_COLUMNS) // DISH_COLUMNS)
    for first in range(0, len(found.dishes), each):
        numbers = range(first, min(first + each, len(found.dishes)))
        rows = table((words.GUESTS_GUEST, "left"), *((str(d + 1), "right") for d in numbers))
        for name, answers in guest_rows(found):
            shown = cell(one_line(name, limit=out.width - len(numbers) * DISH_COLUMNS - 2))
            rows.add_row(shown, *(cell(sign_of(answers[d]), _style(answers[d])) for d in numbers))
        out.print()
        out.print(rows)
    out.print()
    out.print(cell(words.GUESTS_DISHES, "bold"))
    for number, dish in enumerate(found.dishes, start=1):
        out.print(paragraph(words.guests_dish(number, dish.course, dish.dish), indent=2))
    for heading, lines in reasons_by_guest(found):
        out.print()
        out.print(cell(heading, "bold"))
        for line in lines:
            out.print(paragraph(line, indent=2))
    out.print()
    out.print(paragraph(in_short(found)))
    out.print(paragraph(shared.GUESTS_CAUTION, "dim"))


def guests_markdown(event: str, found: Matrix) -> str:
    """The same for paper; foreign text cannot become markup."""
    numbers = range(len(found.dishes))
    lines = [f"# {_safe(words.guests_title(event))}", "", words.GUESTS_LEGEND, ""]
    lines += [_line([words.GUESTS_GUEST, *(str(d + 1) for d in numbers)]), _line(["---", *(":-:" for _ in numbers)])]
    lines += [_line([_safe(name), *(sign_of(answers[d]) for d in numbers)]) for name, answers in guest_rows(found)]
    lines += ["", f"## {words.GUESTS_DISHES}", ""]
    lines += [f"{d + 1}. {_safe(f'{dish.course}: {dish.dish}')}" for d, dish in enumerate(found.dishes)]
    lines += ["", f"## {words.GUESTS_REASONS}"]
    for heading, reasons in reasons_by_guest(found):
        lines += ["", f"**{_safe(heading)}**", "", *(f"- {_safe(line)}" for line in reasons)]
    return "\n".join([*lines, "", in_short(found), "", shared.GUESTS_CAUTION])


def guests_form(event: str, found: Matrix) -> GuestsForm:
    """The same for other programs. `verdict`: nothing found, which is not the same as safe, ask or not safe;
    guests and dishes by their place from 0."""
    return {
        "plan": event,
        "guests": [
            {
                "name": guest.name,
                "count": guest.count,
                "avoids": [*guest.avoids],
                "diets": [*guest.diets],
                "severe": [*guest.severe],
                "not_understood": [*guest.unread],
            }
            for guest in found.guests
        ],
        "dishes": [
            {"course": dish.course, "dish": dish.dish, "ingredients_listed": dish.listed} for dish in found.dishes
        ],
        "answers": [
            {
                "guest": g,
                "dish": d,
                "verdict": _verdict_word(answer.verdict),
                "served": answer.served,
                "reasons": [_reason_form(reason) for reason in answer.reasons],
            }
            for (g, d), answer in sorted(found.answers.items())
        ],
    }


def _verdict_word(verdict: Verdict) -> VerdictWord:
    words_of: dict[Verdict, VerdictWord] = {
        Verdict.SAFE: "nothing found",
        Verdict.ASK: "ask",
        Verdict.NOT_SAFE: "not safe",
    }
    return words_of[verdict]


def _reason_form(reason: Reason) -> ReasonForm:
    return {
        "verdict": _verdict_word(reason.verdict),
        "need": reason.need.words,
        "ingredient": reason.ingredient or None,
        "why": reason.why,
        "source": reason.source,
        "mend": reason.mend or None,
    }


def guest_rows(found: Matrix) -> Iterator[tuple[str, list[Answer]]]:
    """Guests with something to avoid, the most harmed first, each with their answers; then all others as one."""
    folded: list[int] = []
    for g in found.most_harmed_first():
        guest = found.guests[g]
        if not found.needs[g]:
            folded.append(g)
            continue
        name = words.guests_needs(guest.name, guest.count, told_needs(found.needs[g]))
        yield name, [found.answers[g, d] for d in range(len(found.dishes))]
    if folded:
        answers = [
            Answer(Verdict.SAFE, (), any(found.answers[g, d].served for g in folded)) for d in range(len(found.dishes))
        ]
        yield words.guests_folded(sum(found.guests[g].count for g in folded)), answers


def sign_of(answer: Answer) -> str:
    return SIGNS[answer.verdict] if answer.served else words.GUESTS_NOT_SERVED


def _style(answer: Answer) -> str:
    return STYLES[answer.verdict] if answer.served else "dim"


def reasons_by_guest(found: Matrix) -> Iterator[tuple[str, list[str]]]:
    """For each guest the reasons of the dishes they are served, with the number of the dish; each once."""
    for g in found.most_harmed_first():
        guest = found.guests[g]
        lines = [
            words.guests_reason(
                SIGNS[reason.verdict], d + 1, reason.ingredient or words.GUESTS_OF_THE_DISH, reason.why, reason.source
            )
            for d in range(len(found.dishes))
            if found.answers[g, d].served
            for reason in found.answers[g, d].reasons
        ]
        if lines:
            yield words.guests_needs(guest.name, guest.count, told_needs(found.needs[g])), list(dict.fromkeys(lines))


def in_short(found: Matrix) -> str:
    if not found.dishes:
        return words.GUESTS_NO_DISHES
    if not any(found.needs):
        return words.GUESTS_ALL_EAT
    met = any(answer.served and answer.verdict is not Verdict.SAFE for answer in found.answers.values())
    return "" if met else words.GUESTS_NO_REASONS


def _safe(text: str) -> str:
    return safe(one_line(text))


def _line(cells: list[str]) -> str:
    return f"| {' | '.join(cells)} |"
