"""Whether documents keep to the schema of the plan.

A plan has tens of thousands of operations, each of one of many kinds. A validator that tries every kind on each of them takes
longer than all else that is asked of the plan, so here an operation is held to the kind that it says it is. No other can be kept
by it, for each kind has a name of its own.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from jsonschema import Draft202012Validator, ValidationError
from jsonschema.validators import extend

from walewright.plan import schema

_one_of = Draft202012Validator.VALIDATORS["oneOf"]


def _of_its_kind(validator: Any, kinds: list[dict[str, Any]], instance: Any, within: dict[str, Any]) -> Iterator[ValidationError]:
    """`oneOf`, where each kind is named by its `do`."""
    names = [kind.get("properties", {}).get("do", {}).get("const") for kind in kinds]
    if None in names or len(set(names)) < len(names) or not isinstance(instance, dict):
        yield from _one_of(validator, kinds, instance, within)
    elif instance.get("do") not in names:
        yield ValidationError(f"{instance!r} is of no kind that there is")
    else:
        at = names.index(instance["do"])
        yield from validator.descend(instance, kinds[at], schema_path=at)


_Validator = extend(Draft202012Validator, {"oneOf": _of_its_kind})


def faults(document: Any) -> list[str]:
    """Where the document does not keep to the schema."""
    return [f"{error.json_path}: {error.message}" for error in _Validator(schema()).iter_errors(document)]
