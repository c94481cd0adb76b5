"""Makes text from files safe for a terminal. All foreign text passes through here. Pure.

A plan, a log or a file name may hold escape sequences, control characters or marks that turn the reading direction; a
terminal would obey them. Each becomes a visible replacement sign: nothing is obeyed, nothing is silently lost.
"""

import json
import re
import unicodedata

REPLACEMENT = "\ufffd"

# C0 (except tab and newline), DEL, C1, zero-width, bidirectional controls, line/paragraph separators, byte-order mark,
# tag characters, interlinear marks, unpaired surrogates.
_UNSAFE = re.compile(
    "[\x00-\x08\x0b-\x1f\x7f-\x9f\u00ad\u061c\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f"
    "\ufeff\ufff9-\ufffb\U000e0000-\U000e007f\ud800-\udfff]"
)


def plain(text: object) -> str:
    """The text with every control or direction mark shown as U+FFFD. Idempotent; raises nothing."""
    return _UNSAFE.sub(REPLACEMENT, str(text))


def one_line(text: object, limit: int | None = None) -> str:
    """Like `plain`, with white space folded to single spaces; over `limit` characters it ends in an ellipsis."""
    folded = " ".join(plain(text).split())
    if limit is not None and len(folded) > limit:
        return folded[: max(0, limit - 1)] + "…"
    return folded


def as_json(form: object) -> str:
    """As JSON for other programs, the same to them, in which a terminal finds no mark that it would obey."""
    text = json.dumps(form, ensure_ascii=False, indent=2)
    return _UNSAFE.sub(lambda found: json.dumps(found[0])[1:-1], text)


def to_ascii_letters(text: str) -> str | None:
    """The text in ASCII without accents; None if a character has no ASCII base."""
    stripped = "".join(c for c in unicodedata.normalize("NFKD", text) if not unicodedata.combining(c))
    stripped = stripped.translate({0x2019: "'", 0x2013: "-", 0x2014: "-", 0x00D7: "x", 0x00B0: "", 0x2026: "..."})
    return stripped if stripped.isascii() else None
