"""Every text of every look stands out from every ground it is drawn on, by the ratio WCAG 2.1 asks for.

Relative luminance and contrast ratio as W3C, Web Content Accessibility Guidelines 2.1, define them (section 6,
https://www.w3.org/TR/WCAG21/#dfn-relative-luminance, #dfn-contrast-ratio); 4.5:1 is criterion 1.4.3 (level AA), 7:1 is
1.4.6 (level AAA), both for text of usual size.
"""

import pytest
from rich.color import ColorSystem
from rich.style import Style

from board.base.words import THEMES
from board.screens.palette import CONTRAST, DARK, LIGHT, LOOKS, PLAIN_ROLES, PLAIN_THEME, Paints
from board.view import ribbon

WANTED = [("dark", DARK, 4.5), ("light", LIGHT, 4.5), ("contrast", CONTRAST, 7.0)]


def luminance(colour: str) -> float:
    red, green, blue = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    linear = [c / 12.92 if c <= 0.03928 else ((c + 0.055) / 1.055) ** 2.4 for c in (red, green, blue)]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def ratio(one: str, other: str) -> float:
    lighter, darker = sorted((luminance(one), luminance(other)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def pairs(paints: Paints, name: str) -> list[tuple[str, str, str]]:
    """(where, text, ground): roles with a ground of their own, all else on every ground text is put on."""
    found = []
    grounds = {"background": paints.background, "surface": paints.surface, "panel": paints.panel}
    for role, words in LOOKS[name].roles.items():
        style = Style.parse(words)
        if style.color is None:
            continue
        own = {"its own": style.bgcolor.name} if style.bgcolor is not None else grounds
        found += [(f"{role} on {ground}", style.color.name, colour) for ground, colour in own.items()]
    theme = LOOKS[name].theme
    named = {
        "foreground": theme.foreground, "accent": theme.accent, "secondary": theme.secondary, "primary": theme.primary,
        "success": theme.success, "warning": theme.warning, "error": theme.error, "soft": theme.variables["soft"],
    }  # fmt: skip
    found += [(f"${what} on {g}", str(text), ground) for what, text in named.items() for g, ground in grounds.items()]
    return found


def test_the_formula_gives_the_published_extremes() -> None:
    """WCAG 2.1: contrast ratios range from 1 to 21. #767676 is the well-known lightest grey that passes AA on white
    (4.54:1, WebAIM's contrast checker)."""
    assert ratio("#000000", "#ffffff") == pytest.approx(21)
    assert ratio("#777777", "#777777") == pytest.approx(1)
    assert ratio("#767676", "#ffffff") == pytest.approx(4.54, abs=0.005)
    assert ratio("#777777", "#ffffff") < 4.5


@pytest.mark.parametrize(("name", "paints", "least"), WANTED)
def test_every_text_stands_out_from_its_ground(name: str, paints: Paints, least: float) -> None:
    faint = {where: round(ratio(text, ground), 2) for where, text, ground in pairs(paints, name)}

    assert len(faint) > 30
    assert {where: found for where, found in faint.items() if found < least} == {}


def test_every_look_draws_the_same_roles_and_every_tone_of_the_ribbons() -> None:
    assert tuple(LOOKS) == THEMES
    for look in LOOKS.values():
        assert set(look.roles) == set(PLAIN_ROLES)
        assert set(ribbon.Tone.__args__) <= set(look.roles)
        assert look.theme.name in THEMES


@pytest.mark.parametrize(("name", "paints", "_least"), WANTED)
def test_no_look_has_a_colour_for_what_goes_well(name: str, paints: Paints, _least: float) -> None:
    assert LOOKS[name].theme.success == paints.text


def test_plain_names_no_colour_at_all() -> None:
    colours = [getattr(PLAIN_THEME, n) for n in ("primary", "foreground", "background", "surface", "panel", "error")]

    assert {*colours, *PLAIN_THEME.variables.values()} == {"ansi_default"}
    for words in PLAIN_ROLES.values():
        assert Style.parse(words).color is None
        assert Style.parse(words).bgcolor is None


@pytest.mark.parametrize(("name", "paints", "_least"), WANTED)
def test_a_look_asked_for_on_sixteen_colours_never_draws_text_in_its_own_ground(
    name: str, paints: Paints, _least: float
) -> None:
    """Rich takes the nearest of the sixteen; two colours must not fall together."""
    for words in LOOKS[name].roles.values():
        style = Style.parse(words)
        if style.color is None:
            continue
        ground = style.bgcolor or Style.parse(f"on {paints.background}").bgcolor
        assert ground is not None
        fallen = [c.downgrade(ColorSystem.STANDARD).number for c in (style.color, ground)]
        assert fallen[0] != fallen[1], words
