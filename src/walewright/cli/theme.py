"""`--theme`: a style sheet, or a folder with one and what belongs to it, read and looked through."""

from __future__ import annotations

import os
from dataclasses import field
from typing import TYPE_CHECKING

from walewright import world
from walewright.cli.command_line import CommandLine
from walewright.record import record
from walewright.report.columns import named
from walewright.report.model import Diagnostic, Span, diagnosed, has_errors

if TYPE_CHECKING:
    from walewright.sheet.model import PlacedPicture
    from walewright.sheet.theme_lines import Description, FontLine, LogoLine
    from walewright.sheet.themed import FontFace, Theme

SUFFIX = ".css"
SHEET, DESCRIPTION = "theme.css", "theme.toml"
"""What is looked for in a folder; one of the two may be missing."""
LARGEST_LOGO = 5 * 1024 * 1024
LARGEST_FONT = 4 * 1024 * 1024
"""Bytes."""


@record
class ThemeAsked:
    """What `--theme` named: the theme unless there are errors among the faults, and the texts that the faults point into."""

    theme: Theme | None
    faults: tuple[Diagnostic, ...] = ()
    texts: dict[str, str] = field(default_factory=dict)
    files: tuple[str, ...] = ()
    """All that it was read of, by their paths; also those that were looked for and are not there."""


def asked(line: CommandLine, name: str) -> ThemeAsked:
    """The theme that the option names."""
    return theme_at(name, line.span(name, "--theme"), "option-value/theme-file")


def theme_at(name: str, place: Span, no_theme: str) -> ThemeAsked:
    """The theme of that name: a folder, or a file that ends in .css. It is named at that place; `no_theme` is what there is to
    report of a name that is neither."""
    if world.is_folder(name):
        return _of_folder(name, place)
    if not name.endswith(SUFFIX):
        helps, facts = ("name-a-theme",), {"file": named(name), "suffix": SUFFIX}
        return ThemeAsked(None, (diagnosed(no_theme, (place, ""), helps=helps, facts=facts),))
    css, fault = world.read_source(name)
    return _looked_through(name, css, None, () if fault is None else (fault,))


def _of_folder(folder: str, place: Span) -> ThemeAsked:
    """The theme in a folder. Nothing is read that does not lie within it, wherever links lead."""
    texts: dict[str, str | None] = {}
    faults: list[Diagnostic] = []
    for name in (SHEET, DESCRIPTION):
        text, why, fault = world.text_within(folder, name)
        texts[name] = text
        if fault is not None:
            faults.append(fault)
        elif why is not None and why != "missing":
            faults.append(_unusable(place, why, name))
    if not faults and all(text is None for text in texts.values()):
        kind, file = "theme-file-unusable/empty-folder", named(folder)
        return ThemeAsked(
            None, (diagnosed(kind, (place, "lacks"), helps=("put-one",), file=file, sheet=SHEET, description=DESCRIPTION),)
        )
    description = os.path.join(folder, DESCRIPTION)
    return _looked_through(os.path.join(folder, SHEET), texts[SHEET], (description, texts[DESCRIPTION] or ""), tuple(faults))


def _looked_through(file: str, css: str | None, described: tuple[str, str] | None, faults: tuple[Diagnostic, ...]) -> ThemeAsked:
    """A theme of the text of a style sheet, and of the path and the text of a description."""
    from walewright.sheet.render import house_css
    from walewright.sheet.theme import colours, places, unfit
    from walewright.sheet.theme_contrast import hard_to_read
    from walewright.sheet.theme_lines import Description
    from walewright.sheet.theme_lines import described as read
    from walewright.sheet.themed import Theme, colour_rule

    own = css or ""
    texts = {file: own, **({described[0]: described[1]} if described else {})}
    said, wrong = read(*described, tuple(colours(house_css()))) if described else (Description(), ())
    faults = (*faults, *unfit(file, own), *wrong)
    if said is None or has_errors(faults):
        return ThemeAsked(None, faults, texts)
    folder = os.path.dirname(file)
    logo, unfit_logo = _logo(folder, said.logo) if said.logo else (None, ())
    faces, unfit_fonts = _fonts(folder, said)
    whole = colour_rule(said.colours.items()) + own
    faults = (*faults, *unfit_logo, *unfit_fonts, *hard_to_read(house_css(), whole, {**said.places, **places(file, own)}))
    if has_errors(faults):
        return ThemeAsked(None, faults, texts)
    brought = (*((said.logo.file,) if said.logo else ()), *(font.file for font in said.fonts))
    files = (file, *((described[0],) if described else ()), *(os.path.join(folder, name) for name in brought))
    return ThemeAsked(Theme(whole, said.imprint, logo, faces), faults, texts, files)


def _logo(folder: str, line: LogoLine) -> tuple[PlacedPicture | None, tuple[Diagnostic, ...]]:
    """The logo, made ready as the photograph is."""
    from walewright.sheet.model import PlacedPicture
    from walewright.sheet.photograph import LARGEST_LOGO_SIDE, SMALLEST_LOGO_SIDE, ready

    data, why = world.bytes_within(folder, line.file, LARGEST_LOGO)
    if why is not None:
        return None, (_unusable(line.span, why, line.file),)
    picture, unfit = ready(data, SMALLEST_LOGO_SIDE, LARGEST_LOGO_SIDE)
    if picture is None:
        return None, (_unusable(line.span, f"logo-{unfit}", line.file),)
    return PlacedPicture(picture.uri, line.alternative, picture.width, picture.height), ()


def _fonts(folder: str, said: Description) -> tuple[tuple[FontFace, ...], tuple[Diagnostic, ...]]:
    faces: list[FontFace] = []
    faults: list[Diagnostic] = []
    for line in said.fonts:
        face, fault = _font(folder, line)
        faces += (face,) if face else ()
        faults += (fault,) if fault else ()
    return tuple(faces), tuple(faults)


def _font(folder: str, line: FontLine) -> tuple[FontFace | None, Diagnostic | None]:
    from walewright.sheet.theme_fonts import font_kind
    from walewright.sheet.themed import FontFace

    data, why = world.bytes_within(folder, line.file, LARGEST_FONT)
    kind, unfit = font_kind(data) if why is None else (None, why)
    if kind is None:
        return None, _unusable(line.span, str(unfit), line.file)
    return FontFace(line.family, line.weight, line.style, kind, data), None


def _unusable(place: Span, case: str, file: str) -> Diagnostic:
    return diagnosed(f"theme-file-unusable/{case}", (place, "named"), helps=("which",), file=named(file))
