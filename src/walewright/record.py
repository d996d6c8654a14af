"""Frozen dataclasses whose methods are made at their first use.

A dataclass makes its methods as text and compiles them, anew at every start: for the seven hundred of the stages that is a tenth of
a whole build, most of it for methods that the run never calls. A record has the fields, slots and manners of
`dataclass(frozen=True, slots=True)`, its comparing is written once for all, and its `__init__` is compiled when the first is made.
It fills the slots by their own descriptors, which takes half as long as `object.__setattr__`; so does `replace`.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from dataclasses import MISSING, Field, FrozenInstanceError, dataclass, field, fields
from operator import attrgetter
from typing import TYPE_CHECKING, Any, dataclass_transform


@dataclass_transform(frozen_default=True, field_specifiers=(field,))
def record(made: Any = None, /, *, kw_only: bool = False) -> Any:
    """A class of frozen values, with slots; used as `dataclass` is."""
    return _recorded(made, False) if made is not None else lambda later: _recorded(later, kw_only)


def _recorded(written: Any, kw_only: bool) -> Any:
    made: Any = dataclass(init=False, repr=False, eq=False, slots=True, kw_only=kw_only)(written)
    made.__init__ = _first_init(made)
    for name, shared in _SHARED.items():
        # What a class says of itself stands.
        if name not in written.__dict__:
            setattr(made, name, shared)
    return made


def _first_init(made: Any) -> Callable[..., None]:
    """Makes the `__init__` that takes its place, unless another has taken it."""
    compiled: list[Callable[..., None]] = []

    def __init__(self: Any, *given: Any, **named: Any) -> None:
        if not compiled:
            compiled.append(_init(made))
        if made.__init__ is __init__:
            made.__init__ = compiled[0]
        compiled[0](self, *given, **named)

    return __init__


def _init(made: Any) -> Any:
    """Takes the fields in their order, those by keyword alone last, as that of `dataclass` does."""
    of = fields(made)
    by_place, by_name = ([_taken(one) for one in of if one.kw_only is alone] for alone in (False, True))
    taken = ", ".join(["self", *by_place, *(["*", *by_name] if by_name else [])])
    sets = "\n  ".join(f"__put_{one.name}__(self, {_given(one)})" for one in of) or "pass"
    # Names that no field has: one may be called "missing".
    known: dict[str, Any] = {"__missing__": MISSING, **_puts(made)}
    known |= {f"__default_{one.name}__": one.default for one in of if one.default is not MISSING}
    known |= {f"__make_{one.name}__": one.default_factory for one in of if one.default_factory is not MISSING}
    exec(f"def __init__({taken}):\n  {sets}", known)
    known["__init__"].__qualname__ = f"{made.__qualname__}.__init__"
    return known["__init__"]


def _puts(made: Any) -> dict[str, Any]:
    """What fills the slot of each field."""
    return {f"__put_{one.name}__": getattr(made, one.name).__set__ for one in fields(made)}


def _taken(one: Field[Any]) -> str:
    if one.default_factory is not MISSING:
        return f"{one.name}=__missing__"
    return one.name if one.default is MISSING else f"{one.name}=__default_{one.name}__"


def _given(one: Field[Any]) -> str:
    name = one.name
    return name if one.default_factory is MISSING else f"__make_{name}__() if {name} is __missing__ else {name}"


if TYPE_CHECKING:
    from dataclasses import replace as replace
else:

    def replace(of, /, **changes):
        """The record, or another dataclass, with some of its fields changed, as `dataclasses.replace` does it."""
        try:
            copied = _COPIED[type(of)]
        except KeyError:
            copied = _COPIED[type(of)] = _copying(type(of))
        return copied(of, **changes)


def _copying(made: Any) -> Callable[..., Any]:
    """Makes another of the class, which takes what is not given from the first."""
    if made.__setattr__ is not _not_set:
        return dataclasses.replace
    of = [one.name for one in fields(made)]
    taken = "".join(f", {name}=__kept__" for name in of)
    sets = "".join(f"  __put_{name}__(__made__, __of__.{name} if {name} is __kept__ else {name})\n" for name in of)
    known: dict[str, Any] = {"__kept__": MISSING, "__new__": object.__new__, "__kind__": made, **_puts(made)}
    exec(f"def copied(__of__, /{', *' if of else ''}{taken}):\n  __made__ = __new__(__kind__)\n{sets}  return __made__", known)
    copied: Callable[..., Any] = known["copied"]
    return copied


_COPIED: dict[type, Callable[..., Any]] = {}
"""By class, as they are made when the first of them is copied."""


def field_names(of: Any) -> tuple[str, ...]:
    """The names of a record's fields, in their order: for what looks at those of thousands."""
    try:
        return _NAMES[type(of)]
    except KeyError:
        names = _NAMES[type(of)] = tuple(one.name for one in fields(of))
        return names


_NAMES: dict[type, tuple[str, ...]] = {}
"""By class, as they are first asked for."""


def _values(of: Any) -> Any:
    """What is compared of a record: the values of its fields, but those that are not to be."""
    kind = type(of)
    try:
        return _COMPARED[kind](of)
    except KeyError:
        names = [one.name for one in fields(kind) if one.compare]
        _COMPARED[kind] = attrgetter(*names) if names else _nothing
        return _COMPARED[kind](of)


def _nothing(_: Any) -> tuple[()]:
    return ()


_COMPARED: dict[type, Callable[[Any], Any]] = {}
"""By class: it is the same for all that ever are made of it."""


def _equal(self: Any, other: Any) -> Any:
    if self is other:
        return True
    return _values(self) == _values(other) if other.__class__ is self.__class__ else NotImplemented


def _hashed(self: Any) -> int:
    return hash(_values(self))


def _shown(self: Any) -> str:
    said = (f"{one.name}={getattr(self, one.name)!r}" for one in fields(self) if one.repr)
    return f"{type(self).__qualname__}({', '.join(said)})"


def _not_set(_: Any, name: str, value: Any) -> None:
    raise FrozenInstanceError(f"cannot assign to field {name!r}")


def _not_taken(_: Any, name: str) -> None:
    raise FrozenInstanceError(f"cannot delete field {name!r}")


def _packed(self: Any) -> list[Any]:
    return [getattr(self, one.name) for one in fields(self)]


def _unpacked(self: Any, values: list[Any]) -> None:
    for one, value in zip(fields(self), values, strict=True):
        object.__setattr__(self, one.name, value)


_SHARED: dict[str, Callable[..., Any]] = {
    "__eq__": _equal,
    "__hash__": _hashed,
    "__repr__": _shown,
    "__setattr__": _not_set,
    "__delattr__": _not_taken,
    "__getstate__": _packed,
    "__setstate__": _unpacked,
}
