"""From what has to be made to jobs that can be worked anywhere: sources, what they use, photographs and themes are read here.

Whatever is read is looked at by `Inputs` first: where it changes in between, it is taken for changed by the next run."""

from __future__ import annotations

import os
import re
from collections.abc import Iterator
from dataclasses import field, fields, is_dataclass
from typing import TYPE_CHECKING, Any

from walewright import world
from walewright.catalogue.model import HOUSE, Catalogue, NamedTheme
from walewright.cli import sources
from walewright.cli.command_line import CommandLine
from walewright.cli.publishing.inputs import FOLDERS, Inputs
from walewright.cli.publishing.making import Job
from walewright.cli.publishing.stale import Stale
from walewright.record import record, replace
from walewright.report.model import has_errors

if TYPE_CHECKING:
    from walewright.sheet.themed import Theme

_MAY_SHOW = re.compile(r"^\s*photograph\b", re.MULTILINE)


@record
class ReadThemes:
    """Themes by their names, and the files of each by their paths from the catalogue's folder; `sound`: whether all can be used."""

    themes: dict[str, Theme] = field(default_factory=dict)
    files: dict[str, tuple[str, ...]] = field(default_factory=dict)
    sound: bool = True


@record
class Preparing:
    """What all jobs of a run share. `text`: of the catalogue."""

    line: CommandLine
    catalogue: Catalogue
    text: str
    inputs: Inputs

    @property
    def _folder(self) -> str:
        return os.path.dirname(self.catalogue.file)

    def look_at_shipped(self) -> None:
        """Before anything is worked, what is shipped is looked at as it is now."""
        for folder in FOLDERS:
            for name in world.shipped_names("patterns", folder):
                self.inputs.now(f"shipped:{folder}/{name}")

    def themes(self, wanted: list[Stale]) -> ReadThemes:
        """The themes of all that has to be made, with the catalogue's imprint. What is wrong with them is reported."""
        from walewright.sheet.themed import PLAIN

        found = ReadThemes({HOUSE: replace(PLAIN, imprint=self._imprint(PLAIN))}, {HOUSE: ()})
        sound = True
        for name in dict.fromkeys(p.theme for one in wanted for p, _ in one.products if p.theme not in ("", HOUSE)):
            theme, files = self._theme(self.catalogue.themes[name])
            if theme is None:
                sound = False
                continue
            found.themes[name] = replace(theme, imprint=self._imprint(theme))
            found.files[name] = files
        return replace(found, sound=sound)

    def _imprint(self, theme: Theme) -> tuple[str, ...]:
        """What a publisher prints of itself: the lines of the catalogue or of the theme, and the edition."""
        edition = (self.catalogue.edition,) if self.catalogue.edition else ()
        return (*(self.catalogue.imprint or theme.imprint), *edition)

    def _theme(self, of: NamedTheme) -> tuple[Theme | None, tuple[str, ...]]:
        from walewright.cli.theme import theme_at

        path = os.path.join(self._folder, of.file)
        files = tuple(os.path.relpath(file, self._folder or os.curdir) for file in theme_at(path, of.span, NO_THEME).files)
        self.inputs.all_now(f"file:{name}" for name in files)
        asked = theme_at(path, of.span, NO_THEME)
        self.line.report(asked.faults, {self.catalogue.file: self.text, **asked.texts})
        return (None if has_errors(asked.faults) else asked.theme), files

    def job(self, stale: Stale, themes: ReadThemes) -> tuple[Job | None, tuple[str, ...]]:
        """The job of what has to be made of a making, and the files beside its source that it depends on; None where the source
        cannot be read, which is reported."""
        making = replace(stale.making, products=tuple(product for product, _ in stale.products))
        file = os.path.join(self._folder, making.source)
        text, fault = world.read_source(file)
        if text is None:
            self.line.report((fault,) if fault is not None else ())
            return None, ()
        beside = os.path.dirname(making.source)
        names = [os.path.normpath(os.path.join(beside, key)) for key in sources.files_used(file, text)]
        self.inputs.all_now(f"file:{name}" for name in names)
        used = sources.files_used(file, text)
        shown = tuple(dict.fromkeys(_photographs(file, text)))
        pictured = [os.path.normpath(os.path.join(beside, name)) for name in shown if _plain(name)]
        self.inputs.all_now(f"file:{name}" for name in pictured)
        pictures = {name: world.read_picture(file, name) for name in shown}
        own = {name: themes.themes[name] for name in {p.theme for p in making.products} if name}
        job = Job(
            line=self.line,
            making=making,
            file=file,
            text=text,
            used=used,
            pictures=pictures,
            themes=own,
            date=self.catalogue.date.isoformat(),
            catalogue=(self.catalogue.file, self.text),
        )
        return job, (*names, *pictured)


NO_THEME = "catalogue-line/theme-file"


def _plain(name: str) -> bool:
    return "\0" not in name and not os.path.isabs(name)


def _photographs(file: str, text: str) -> Iterator[str]:
    """The photographs that a source names, in whatever alternative."""
    if not _MAY_SHOW.search(text):
        return
    from walewright import source
    from walewright.source.page_lines import PhotographLine

    waiting: list[Any] = [source.read(file, text)[0]]
    while waiting:
        node = waiting.pop()
        if isinstance(node, PhotographLine):
            yield node.file
        elif isinstance(node, tuple | list):
            waiting += node
        elif is_dataclass(node) and not isinstance(node, type):
            waiting += [getattr(node, part.name) for part in fields(node) if not part.name.startswith("_")]
