"""The board's four looks: lamplight on a dark counter, beetroot on white, bare black and white, the terminal's own.

Lines and contents name roles, never colours; a look says how each role is drawn. All text has a contrast of at least
4.5:1 with every ground it is drawn on, in `contrast` 7:1 (WCAG 2.1, 1.4.3 and 1.4.6). `plain` sends no colour at all.

Red is for what is late or past its limit, the accent for what is to be done now; all else is grey. An evening on time
or tight has the colour of any text, and a call has one colour, however long it waits.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from textual.app import App
from textual.theme import Theme

from board.base.words import THEMES


@dataclass(frozen=True)
class Look:
    """`theme`: colours for what the style sheets name; `roles`: how lines draw each role, in rich's style words."""

    theme: Theme
    roles: Mapping[str, str]


@dataclass(frozen=True, slots=True)
class Paints:
    """The colours of one look. Grounds: background, surface, panel, live (what is running), late."""

    text: str
    soft: str
    accent: str
    name: str
    wary: str
    bad: str
    stands: str
    background: str
    surface: str
    panel: str
    live: str
    on_live: str
    late: str
    on_late: str


DARK = Paints(
    text="#e9e6e1", soft="#a09c95", accent="#f2c879", name="#c9c5be", wary="#e9e6e1", bad="#ec8a6b",
    stands="#c9c5be", background="#161514", surface="#201f1d", panel="#2b2927", live="#55514c", on_live="#ffffff",
    late="#e5765b", on_late="#171310",
)  # fmt: skip
LIGHT = Paints(
    text="#1f211f", soft="#565955", accent="#7b1e4a", name="#3d403c", wary="#1f211f", bad="#a01b10",
    stands="#3d403c", background="#f3f3f1", surface="#e8e8e5", panel="#dadad6", live="#b4b4af", on_live="#111111",
    late="#a01b10", on_late="#ffffff",
)  # fmt: skip
CONTRAST = Paints(
    text="#ffffff", soft="#d6d6d6", accent="#ffd75f", name="#ffffff", wary="#ffffff", bad="#ffa899",
    stands="#ffffff", background="#000000", surface="#000000", panel="#141414", live="#ffffff", on_live="#000000",
    late="#ffa899", on_late="#000000",
)  # fmt: skip


def _theme(name: str, paints: Paints, *, dark: bool) -> Theme:
    return Theme(
        name=name,
        primary=paints.wary,
        secondary=paints.name,
        accent=paints.accent,
        foreground=paints.text,
        background=paints.background,
        surface=paints.surface,
        panel=paints.panel,
        success=paints.text,
        warning=paints.wary,
        error=paints.bad,
        dark=dark,
        variables={"soft": paints.soft, "late": paints.late, "on-late": paints.on_late},
    )


def _roles(paints: Paints) -> dict[str, str]:
    return {
        "text": paints.text,
        "soft": paints.soft,
        "accent": f"bold {paints.accent}",
        "stands": paints.stands,
        "presses": f"bold {paints.bad}",
        "wary": paints.wary,
        "chosen": f"bold {paints.background} on {paints.text}",
        "name": f"bold {paints.name}",
        "faint": paints.soft,
        "running": f"bold {paints.on_live} on {paints.live}",
        "coming": f"{paints.stands} on {paints.panel}",
        "over": f"bold {paints.on_late} on {paints.late}",
        "now": f"bold {paints.accent}",
        "done": paints.soft,
        "code": "#000000 on #ffffff",  # to be scanned: dark on light in every look
    }


OWN = "ansi_default"  # the terminal's own colours, whatever they are
PLAIN_THEME = Theme(
    name="plain", primary=OWN, secondary=OWN, accent=OWN, foreground=OWN, background=OWN, surface=OWN, panel=OWN,
    success=OWN, warning=OWN, error=OWN, boost=OWN, ansi=True,
    variables={
        "soft": OWN, "late": OWN, "on-late": OWN, "border": OWN, "border-blurred": OWN, "ansi-background": OWN,
        "ansi-foreground": OWN, "block-cursor-foreground": OWN, "block-cursor-background": OWN, "scrollbar": OWN,
        "link-color": OWN, "link-color-hover": OWN, "link-background-hover": OWN,
        "scrollbar-hover": OWN, "scrollbar-active": OWN, "scrollbar-background": OWN,
        "scrollbar-background-hover": OWN, "scrollbar-background-active": OWN, "scrollbar-corner-color": OWN,
        "input-cursor-background": OWN, "input-cursor-foreground": OWN, "input-selection-background": OWN,
        "input-selection-foreground": OWN, "screen-selection-background": OWN, "screen-selection-foreground": OWN,
    },
)  # fmt: skip
PLAIN_ROLES = {
    "text": "", "soft": "", "accent": "bold", "stands": "", "presses": "bold", "wary": "bold", "chosen": "bold reverse",
    "name": "bold", "faint": "", "running": "reverse", "coming": "underline", "over": "bold reverse", "now": "bold",
    "done": "", "code": "reverse",
}  # fmt: skip

LOOKS: Mapping[str, Look] = {
    "dark": Look(_theme("dark", DARK, dark=True), _roles(DARK)),
    "light": Look(_theme("light", LIGHT, dark=False), _roles(LIGHT)),
    "contrast": Look(_theme("contrast", CONTRAST, dark=True), _roles(CONTRAST)),
    "plain": Look(PLAIN_THEME, PLAIN_ROLES),
}
FEW_COLOURS = (None, "standard")  # a terminal's colours, as rich names them


def look_of(app: App[Any]) -> Look:
    """The look the app has; the dark one if it has none of ours."""
    return LOOKS.get(app.theme, LOOKS["dark"])


def has_few_colours(app: App[Any]) -> bool:
    """Whether it has sixteen colours or none: too few for a look's contrasts."""
    return app.console.color_system in FEW_COLOURS


def next_theme(name: str) -> str:
    return THEMES[(THEMES.index(name) + 1) % len(THEMES)] if name in THEMES else THEMES[0]
