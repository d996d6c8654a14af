"""What the renderer works out of a style anew for each box and each piece of text that has it, remembered with the style.

How high a line is at least, the description of its font, its colours, the sides of a box and where a line of given words ends
depend on the style and on little else, and most boxes share theirs with a hundred others. The functions are no documented part of
the renderer. Where one is gone, it is asked for in vain, and printing takes longer, no more (`tests/sheet/test_remembered.py`).
"""

from __future__ import annotations

from collections.abc import Callable
from copy import copy
from importlib import import_module
from typing import Any

RendererFunction = Callable[..., Any]
"""A function of the renderer's, or what takes its place."""

SIDES = ("top", "right", "bottom", "left")
BORDERS = tuple(f"border_{side}_width" for side in SIDES)
ASKED = (
    *(f"{around}_{side}" for around in ("margin", "padding") for side in SIDES),
    *(f"{bound}{way}" for bound in ("", "min_", "max_") for way in ("width", "height")),
)
"""What a style may say as parts of the room that a box is in."""

OF_A_BOX = (*ASKED, *BORDERS)
CORNERS = tuple(f"border_{one}_radius" for one in ("top_left", "top_right", "bottom_right", "bottom_left"))


def remember() -> None:
    """From now on, in this process."""
    for module, name, sparing in REMEMBERED:
        owner, called = place(module, name)
        worked_out = getattr(owner, called, None)
        if worked_out is not None and not hasattr(worked_out, "__wrapped__"):
            instead = sparing(worked_out)
            instead.__wrapped__ = worked_out  # type: ignore[attr-defined]
            setattr(owner, called, instead)


def place(module: str, name: str) -> tuple[Any, str]:
    """What has the function, a module or a class in it, and its name there."""
    owner, _, called = name.rpartition(".")
    within = import_module(module)
    return (getattr(within, owner, None) if owner else within), called


def _once(worked_out: RendererFunction) -> RendererFunction:
    """A function of a style alone."""
    kept = f"_{worked_out.__name__}_remembered"

    def remembered(style: Any) -> Any:
        known = vars(style)
        if kept not in known:
            known[kept] = worked_out(style)
        return known[kept]

    return remembered


def _once_a_property(worked_out: RendererFunction) -> RendererFunction:
    """A function of a style and of the name of one of its properties."""
    kept = f"_{worked_out.__name__}_remembered"

    def remembered(style: Any, key: str) -> Any:
        known = vars(style).setdefault(kept, {})
        if key not in known:
            known[key] = worked_out(style, key)
        return known[key]

    return remembered


def _once_for_all_rooms(worked_out: RendererFunction) -> RendererFunction:
    """The sides of a box. They depend on the room that it is in only where its style has a part of that among them. Where borders
    of a table are one with their neighbours', they are the box's own."""
    from weasyprint.formatting_structure.boxes import Box

    def remembered(box: Any, containing_block: Any) -> None:
        style = box.style
        known = vars(style)
        if "_sides_remembered" not in known:
            known["_sides_remembered"] = {} if all(_is_absolute(style[name]) for name in ASKED) else None
        sides = known["_sides_remembered"]
        if sides is None:
            worked_out(box, containing_block)
            return
        own = style["border_collapse"] == "collapse" and tuple(getattr(box, border, None) for border in BORDERS)
        if own not in sides:
            worked_out(box, containing_block)
            sides[own] = {name: getattr(box, name) for name in OF_A_BOX}
        elif isinstance(box, Box):
            vars(box).update(sides[own])
        else:
            # A box that stands for another one hands on what it is given.
            for name, value in sides[own].items():
                setattr(box, name, value)

    return remembered


def _is_absolute(value: Any) -> bool:
    return value is None or value == "auto" or getattr(value, "unit", "%") != "%"


def _square(worked_out: RendererFunction) -> RendererFunction:
    """The corners of a box. Nearly all are square, which is seen once a style."""

    def remembered(box: Any) -> None:
        known = vars(box.style)
        if "_is_square" not in known:
            known["_is_square"] = all((0, "px") in box.style[corner] for corner in CORNERS)
        if not known["_is_square"]:
            worked_out(box)
            return
        for corner in CORNERS:
            setattr(box, corner, (0, 0))

    return remembered


def _once_a_line(split: RendererFunction) -> RendererFunction:
    """The first line of a text in a width: the same few words, figures and boxes to tick stand in most columns, and what is
    measured beforehand is set once more."""

    def remembered(text: str, style: Any, context: Any, max_width: Any, *more: Any, **named: Any) -> Any:
        known = vars(style).setdefault("_lines_remembered", {})
        asked = (text, max_width, more, *named.items())
        if asked not in known:
            known[asked] = split(text, style, context, max_width, *more, **named)
        layout, *line = known[asked]
        # Whoever draws it may put other words in.
        return copy(layout), *line

    return remembered


def _taken(set_up: RendererFunction) -> RendererFunction:
    """Where a piece of text is set: the renderer makes a place for each, and a second one to draw it. Here a place that is free
    again serves the next piece of text in its style."""

    def taken(layout: Any, style: Any) -> None:
        free = vars(style).setdefault("_free_places", [])
        if not free:
            set_up(layout, style)
            return
        vars(layout).update(free.pop())
        layout.style = style

    return taken


def _given_back(leave: RendererFunction) -> RendererFunction:
    """A place is free again as it was made; not one that has marks of its text, of its tabs, of lines under it or of how it breaks
    words."""
    from weasyprint.text.line_break import pango

    def given_back(layout: Any) -> None:
        style = layout.style
        known = vars(style)
        if "_is_unmarked" not in known:
            known["_is_unmarked"] = (
                not style["word_spacing"]
                and style["letter_spacing"] in ("normal", 0)
                and style["overflow_wrap"] == style["word_break"] == "normal"
                and style["text_decoration_line"] == "none"
                and style["white_space"] in ("normal", "nowrap", "pre-line")
            )
        if known["_is_unmarked"] and not layout.justification_spacing:
            pango.pango_layout_set_width(layout.layout, -1)
            pango.pango_layout_set_single_paragraph_mode(layout.layout, False)
            pango.pango_layout_set_ellipsize(layout.layout, pango.PANGO_ELLIPSIZE_NONE)
            free = {"layout": layout.layout, "language": layout.language, "first_line_direction": 0}
            known.setdefault("_free_places", []).append(free | dict.fromkeys(LINES_OF_TEXT))
        leave(layout)

    return given_back


LINES_OF_TEXT = ("ascent", "underline_position", "strikethrough_position")


def _straight(missing: RendererFunction) -> RendererFunction:
    """What a style has of a property that no rule names: what there is to begin with, or its parent's. The renderer looks at each
    in all the ways in which a rule may name it."""
    from weasyprint import css

    special = {"float", "position", "display", "page"}
    plain = {key for key in css.INITIAL_VALUES if key not in special and not key.startswith(("text_decoration_", "__"))}
    begun = {key: css.INITIAL_VALUES[key] for key in plain - set(css.INHERITED) - set(css.INITIAL_NOT_COMPUTED)}
    handed_on = plain & set(css.INHERITED)
    logical = {(key, way): of(block="ttb", inline=way) for key, of in css.PHYSICAL_FUNCTIONS.items() for way in ("ltr", "rtl")}

    def known(style: Any, key: str) -> Any:
        cascaded = style.cascaded
        if key in cascaded or (key in css.PHYSICAL_FUNCTIONS and logical[key, style["direction"]] in cascaded):
            return missing(style, key)
        if key in begun:
            style[key] = begun[key]
            return begun[key]
        if key in handed_on and style.parent_style is not None:
            value = style.parent_style[key]
            if not css.check_math(value):
                style[key] = value
                return value
        return missing(style, key)

    return known


def _once_for_all_alike(set_up: RendererFunction) -> RendererFunction:
    """The styles of marks of lists, of what stands before and after, of pages and their margins, where the same rules hold of them
    and they lie in the same style. Of elements the renderer does that by itself."""

    def shared(style_for: Any, element: Any, parent: Any, root: Any = None, pseudo_type: Any = None, **more: Any) -> None:
        if pseudo_type is None and hasattr(element, "attrib"):
            set_up(style_for, element, parent, root, pseudo_type, **more)
            return
        styles = style_for.get_computed_styles()
        cascaded = style_for.get_cascaded_styles().get((element, pseudo_type), {})
        rules = ((name, id(values), str(weight)) for name, (values, weight) in cascaded.items())
        alike = id(styles[parent, None]), pseudo_type, *rules
        known = vars(style_for).setdefault("_styles_remembered", {})
        if alike in known:
            styles[element, pseudo_type] = known[alike]
        else:
            set_up(style_for, element, parent, root, pseudo_type, **more)
            known[alike] = styles[element, pseudo_type]

    return shared


def _plain(read: RendererFunction) -> RendererFunction:
    """Lengths of drawings: a plain number without a look at its unit, which it has none of."""

    def length(text: Any, *of: Any, **named: Any) -> Any:
        try:
            return float(text)
        except (TypeError, ValueError):
            return read(text, *of, **named)

    return length


LAYING_OUT = ("absolute", "block", "float", "inline", "page", "table")

REMEMBERED: tuple[tuple[str, str, Callable[[RendererFunction], RendererFunction]], ...] = (
    ("weasyprint.text.line_break", "strut", _once),
    ("weasyprint.layout.inline", "strut", _once),
    ("weasyprint.text.line_break", "get_font_description", _once),
    ("weasyprint.draw.color", "get_color", _once_a_property),
    ("weasyprint.draw.border", "get_color", _once_a_property),
    ("weasyprint.draw.text", "get_color", _once_a_property),
    *((f"weasyprint.layout.{where}", "resolve_percentages", _once_for_all_rooms) for where in LAYING_OUT),
    ("weasyprint.layout.background", "resolve_radii_percentages", _square),
    ("weasyprint.layout.inline", "split_first_line", _once_a_line),
    ("weasyprint.layout.preferred", "split_first_line", _once_a_line),
    ("weasyprint.text.line_break", "Layout.setup", _taken),
    ("weasyprint.text.line_break", "Layout.deactivate", _given_back),
    ("weasyprint.css", "ComputedStyle.__missing__", _straight),
    ("weasyprint.css", "StyleFor.set_computed_styles", _once_for_all_alike),
    ("weasyprint.svg", "size", _plain),
)
"""Where a function is known, by its module and its name there, and what makes the one that takes its place."""
