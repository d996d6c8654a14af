"""A source written anew where it was, with everything kept that is no part of its text."""

from __future__ import annotations

import os
import stat

from walewright.report.model import Diagnostic
from walewright.world.locks import alone_in
from walewright.world.reading import Held, unchanged
from walewright.world.refusals import refusal, unwritable
from walewright.world.sets import clear, settle, stage, to_disk


def rewrite(held: Held, data: bytes) -> Diagnostic | None:
    """Put `data` in place of the file `held`, in one move, so that at any moment it is the old one or the new one.

    A symbolic link stays one: what it leads to is rewritten. Permissions, owner, group and further attributes are kept as far
    as the system lets; without its group, the file opens to no more people than before. A file of several names (hard links)
    is refused, for the new one would have one of them only; so is one that is read-only, and one that was changed since."""
    path = held.path
    try:
        real = os.path.realpath(path, strict=True)
        facts = os.stat(real)
    except OSError as failed:
        return unwritable(path, failed, "still-there")
    fault = _unfit(held, real, facts)
    if fault is not None:
        return fault
    folder, name = os.path.split(real)
    fault = settle(folder)
    if fault is not None:
        return fault
    try:
        with alone_in(folder):
            try:
                aside = stage(folder, name, data)
                _keep(facts, real, aside)
                if not unchanged(held.facts, os.stat(real)):
                    return _changed(path)
                os.replace(aside, real)
                to_disk(folder)
            finally:
                clear(folder)
    except OSError as failed:
        return unwritable(path, failed, "free-its-folder")
    return None


def _unfit(held: Held, real: str, facts: os.stat_result) -> Diagnostic | None:
    path = held.path
    if not unchanged(held.facts, facts):
        return _changed(path)
    if facts.st_nlink > 1:
        return refusal(path, "source-linked", "copy-it", names=facts.st_nlink)
    # Whoever may do everything (root) is told as well: somebody took care that this file is not changed.
    if not facts.st_mode & (stat.S_IWUSR | stat.S_IWGRP | stat.S_IWOTH) or not os.access(real, os.W_OK):
        return refusal(path, "source-read-only", "free-permissions")
    return None


def _changed(path: str) -> Diagnostic:
    return refusal(path, "source-unreadable/changed-after-read", "run-again")


def _keep(facts: os.stat_result, real: str, aside: str) -> None:
    """Give the file `aside` what the file `real` has. Raises OSError only where the new file could be read by more people."""
    mode = stat.S_IMODE(facts.st_mode)
    if not _owned(aside, facts.st_uid, facts.st_gid) and not _owned(aside, -1, facts.st_gid):
        # Another group gets what everybody gets.
        mode = (mode & ~stat.S_IRWXG) | ((mode & stat.S_IRWXO) << 3 & mode)
    os.chmod(aside, mode)
    for attribute in _attributes(real):
        try:
            os.setxattr(aside, attribute, os.getxattr(real, attribute))
        except OSError:
            continue


def _owned(path: str, user: int, group: int) -> bool:
    now = os.stat(path)
    if user in (-1, now.st_uid) and group == now.st_gid:
        return True
    try:
        os.chown(path, user, group)
    except OSError:
        return False
    return True


def _attributes(path: str) -> list[str]:
    """Names of extended attributes (access lists among them), where the system has such."""
    try:
        return os.listxattr(path) if hasattr(os, "listxattr") else []
    except OSError:
        return []
