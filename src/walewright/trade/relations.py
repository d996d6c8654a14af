"""What is asked of two figures."""

from __future__ import annotations

from typing import Literal

Relation = Literal["<=", ">=", "=", "<", ">"]

RELATIONS: tuple[Relation, ...] = ("<=", ">=", "=", "<", ">")
