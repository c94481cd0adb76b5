"""What the manual says to what somebody asks: `answer(words)`. Pure, but for the pages it reads."""

import re
from collections.abc import Callable, Iterator

from board.base import near as names
from board.manual import board_keys, findings, pages, plan_keys, words
from board.plan.findings import FINDINGS, ROOMS

_MOST_NEAR = 6


def answer(asked: str, commands: dict[str, tuple[str, str]]) -> str | None:
    """All that is called so, as Markdown: a topic, a finding, a key, a part of a topic, a command (`commands`: by
    name, what it does and an example). Nothing asked: the index. None where nothing is called so."""
    name = _folded(asked)
    if not name:
        return words.index([(topic, _about(topic)) for topic in pages.TOPICS], list(ROOMS))
    found = [text for each in _ways(commands) if (text := each(name))]
    return "\n\n".join(found) or None


def not_known(asked: str, commands: dict[str, tuple[str, str]]) -> str:
    """That nothing is called so, and what is nearest; `asked` as it is shown."""
    return words.not_known(asked, nearest(asked, commands))


def nearest(asked: str, commands: dict[str, tuple[str, str]]) -> list[str]:
    """The names most like one that is not known; then topics that speak of it."""
    name = _folded(asked)
    near = names.nearest(name, _names(commands), most=_MOST_NEAR)
    speaking = [topic for topic in pages.TOPICS if len(name) > 2 and name in pages.page(topic).casefold()]
    return list(dict.fromkeys((*near, *speaking)))[:_MOST_NEAR]


def _folded(asked: str) -> str:
    """Small letters, one space between words, `food10` and `food-10` as `food 10`; a single key stays as it is."""
    text = " ".join(asked.split()).strip("`'\"").casefold() if len(asked) > 1 else asked.casefold()
    return re.sub(rf"^({'|'.join(ROOMS)})[ -]?(\d+)$", r"\1 \2", text)


def _ways(commands: dict[str, tuple[str, str]]) -> Iterator[Callable[[str], str]]:
    yield lambda name: pages.page(name) if name in pages.TOPICS else ""
    yield _lists
    yield lambda name: findings.told(name) if name in FINDINGS else ""
    yield lambda name: plan_keys.told(name) if name in plan_keys.names() else ""
    yield lambda name: board_keys.told(name) if name in board_keys.names() else ""
    yield _part
    yield lambda name: findings.room(name) if name in ROOMS else ""
    yield lambda name: words.the_command(name, *commands[name]) if name in commands else ""


def _lists(name: str) -> str:
    if name in ("keys", "?"):
        return board_keys.all_of_them()
    if name in ("signs", "sign"):
        return board_keys.signs()
    if name in ("plan keys", "keys of a plan"):
        rows = [f"- **{part}**: {', '.join(keys)}" for part, keys in plan_keys.by_part()]
        return "\n".join([f"# {words.ALL_PLAN_KEYS}", "", *rows])
    if name in ("findings", "finding"):
        return "\n\n".join(
            [f"# {words.ALL_FINDINGS}", *(findings.room(room).replace("# ", "## ", 1) for room in ROOMS)]
        )
    return ""


def _part(name: str) -> str:
    """A part of a topic, by its heading or by a word of it that no other thing is called by."""
    exact = [(topic, head, text) for topic, head, text in _parts() if head.casefold() == name]
    known = name in (*pages.TOPICS, *FINDINGS, *plan_keys.names(), *board_keys.names(), *ROOMS)
    found = exact or ([] if known else [each for each in _parts() if _speaks_of(each[1], name)])
    return "\n\n".join(f"# {head}\n\n{text}\n\n{words.part_of(topic)}" for topic, head, text in found)


def _speaks_of(head: str, name: str) -> bool:
    """Whether a heading has each word, in the singular or the plural."""
    has = {each.rstrip("s") for each in re.findall(r"[\w’'-]+", head.casefold())}
    return {each.rstrip("s") for each in name.split()} <= has


def _parts() -> Iterator[tuple[str, str, str]]:
    for topic in pages.TOPICS:
        for head, text in pages.sections(pages.page(topic)).items():
            yield topic, head, text


def _names(commands: dict[str, tuple[str, str]]) -> Iterator[str]:
    yield from pages.TOPICS
    yield from plan_keys.names()
    yield from ("keys", "signs", "findings", "plan keys", *ROOMS, *FINDINGS)
    yield from (head.casefold() for _, head, _ in _parts())
    yield from commands


def _about(topic: str) -> str:
    """A topic's title: what it is about."""
    said = pages.title(pages.page(topic))
    said = said.partition(": ")[2] or said
    return said[:1].lower() + said[1:]
