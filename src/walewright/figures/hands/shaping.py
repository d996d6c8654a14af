"""How-tos of shaping: at the edges, by holding, and by hanging back."""

from __future__ import annotations

from walewright.figures.hands.scene import HOOK, OUT, Scene
from walewright.figures.hands.starts import wrap
from walewright.figures.hands.technique import Technique


def _decrease(s: Scene) -> None:
    s.needles(back=(5,)).loops(0, 1, 2, 3)
    s.doubled(4)
    s.transfer_tool(4, 1)
    s.arrow((s.x(5) - 0.6, HOOK + 5.5), (s.x(4) + 1.6, HOOK + 5.5))


def _decrease_in(s: Scene) -> None:
    s.needles(back=(5,)).loops(0, 1, 2, 4)
    s.doubled(3)
    s.transfer_tool(3, 2)
    s.arrow((s.x(5) - 0.6, HOOK + 5.5), (s.x(4) + 1.6, HOOK + 5.5))


def _decrease_two_in(s: Scene) -> None:
    s.needles(back=(4, 5)).loops(0, 1)
    s.doubled(2).doubled(3)
    s.transfer_tool(2, 2)
    s.arrow((s.x(5) - 0.6, HOOK + 5.5), (s.x(3) + 1.6, HOOK + 5.5))


def _increase(s: Scene) -> None:
    s.needles().loops(0, 1, 2, 4, 5)
    s.transfer_tool(4, 2)
    s.yarn([(s.x(2) + 1.4, 16.4), (s.x(3) - 0.8, 12.5), (s.x(3), HOOK - 1.4), (s.x(3) + 0.9, 12.5), (s.x(2) + 2.4, 17)])
    s.arrow((s.x(2) + 2.8, 19), (s.x(3) + 0.3, 13.6), -1.2)


def _decrease_inside(s: Scene) -> None:
    s.needles(back=(5,)).loops(0, 2, 3, 4)
    s.doubled(1)
    s.transfer_tool(1, 3)
    s.arrow((s.x(5) - 0.6, HOOK + 5.5), (s.x(4) + 1.6, HOOK + 5.5))


def _increase_inside(s: Scene) -> None:
    s.needles().loops(0, 1, 3, 4, 5)
    s.transfer_tool(3, 3)
    s.yarn([(s.x(1) + 1.4, 16.4), (s.x(2) - 0.8, 12.5), (s.x(2), HOOK - 1.4), (s.x(2) + 0.9, 12.5), (s.x(1) + 2.4, 17)])
    s.arrow((s.x(1) + 2.8, 19), (s.x(2) + 0.3, 13.6), -1.2)


def _out_of_work(s: Scene) -> None:
    s.needles(back=(2,)).loops(0, 1, 4, 5)
    s.doubled(3)
    s.transfer_tool(3, 1)
    s.arrow((s.x(2), HOOK + 5.5), (s.x(3) - 1.6, HOOK + 5.5))


def _left_out(s: Scene) -> None:
    s.needles(back=(2,))
    s.loops(0, 1, 3, 4, 5)
    s.yarn([(s.x(0), HOOK - 1.5), (s.x(1), HOOK - 0.6), (s.x(3), HOOK - 0.6), (s.width - 0.5, HOOK - 1.5)])
    s.arrow((s.x(2) + 2.4, 7.2), (s.x(2) + 2.4, 3.4))


def _back_to_work(s: Scene) -> None:
    s.needles().loops(0, 1, 3, 4, 5)
    s.yarn([(s.x(0), HOOK - 1.5), (s.x(1), HOOK - 0.6), (s.x(2), HOOK - 0.4), (s.x(3), HOOK - 0.6), (s.width - 0.5, HOOK - 1.5)])
    s.arrow((s.x(2) + 2.4, 3.4), (s.x(2) + 2.4, 7.2))


def _at_carriage(s: Scene) -> None:
    s.needles().loops(0, 1, 2, 3, 4)
    s.yarn([(s.x(4) + 1.8, 16), (s.x(5) - 1.4, 11), (s.x(5), HOOK - 0.4), (s.width - 0.5, 7.2)])
    s.arrow((s.x(5) + 2.4, 3.4), (s.x(5) + 2.4, 7.2))


def _cast_off(s: Scene) -> None:
    s.needles(back=(4, 5)).loops(0, 1, 2)
    s.loop(3)
    s.loop(3, 15, top=HOOK - 3.6)
    s.yarn([(s.x(3) + 0.3, HOOK + 0.2), (s.x(4), 13.4), (s.width - 0.6, 13.8)])
    s.latch_tool(s.x(3) - 0.4, HOOK + 1.6, -18, 11)
    s.arrow((s.x(4) + 1, 18.6), (s.x(3) + 1.6, 15.4), 1.0)


def _cast_on(s: Scene) -> None:
    s.needles(out=(3, 4, 5)).loops(0, 1, 2)
    wrap(s, range(3, 6), 10.5)
    s.arrow((s.x(3), 18.5), (s.x(5) + 1, 18.5))


def _held(s: Scene) -> None:
    s.needles(out=(3, 4, 5)).loops(0, 1, 2)
    s.loops(3, 4, 5, low=18.5, out=OUT)
    s.yarn([(0.8, 8.4), (s.x(2), HOOK - 0.6), (s.x(3) - 1.5, 7.2), (s.width - 0.8, 6.4)])
    s.word(s.x(4), 21.9, "held")


def _wrapped(s: Scene) -> None:
    s.needles(out=(3, 4, 5)).loops(0, 1, 2)
    s.loops(3, 4, 5, low=18.5, out=OUT)
    s.yarn(
        [
            (0.8, 8.4),
            (s.x(2), HOOK - 0.6),
            (s.x(3) - 1.6, 9.4),
            (s.x(3) + 1.5, 8.4),
            (s.x(3) + 0.4, 6.2),
            (s.x(3) - 1.6, 7.4),
            (s.x(2), 5),
            (0.8, 4.6),
        ],
    )
    s.arrow((s.x(3) - 5, 19.5), (s.x(3) - 0.8, 10.2), -1.4)


def _returned(s: Scene) -> None:
    s.needles(out=(4, 5)).loops(0, 1, 2, 3)
    s.loops(4, 5, low=18.5, out=OUT)
    s.arrow((s.x(3) + 2.6, 14.5), (s.x(3) + 2.6, 9.0))


def _hung_back(s: Scene) -> None:
    s.needles().loops(0, 1, 3, 4)
    s.loop(1, 15.5, top=HOOK - 3.6)
    s.loop(4, 15.5, top=HOOK - 3.6)
    s.transfer_tool(5, 1)
    s.word(s.x(1), 21.6, "two-on-one")
    s.word(s.x(3) + 3.6, 21.6, "or-one-left-empty")


TECHNIQUES = (
    Technique("a-decrease-at-the-edge", ("Decrease 1", "Decrease 2"), _decrease),
    Technique("a-decrease-some-stitches-in", ("Decrease 1 in",), _decrease_in),
    Technique("two-decreased-at-once-some-stitches-in", ("Decrease 2 in",), _decrease_two_in),
    Technique("an-increase-some-stitches-in", ("IncreaseFashioned",), _increase),
    Technique("a-decrease-on-a-line-inside", ("DecreaseOn", "DecreaseOuter"), _decrease_inside),
    Technique("an-increase-beside-a-line-inside", ("IncreaseBeside", "IncreaseOuter"), _increase_inside),
    Technique("a-needle-out-of-work", ("NeedleOut", "NeedlesOutEvery"), _out_of_work),
    Technique("a-needle-left-out", ("LeaveOut", "LeaveOutEvery"), _left_out),
    Technique("a-needle-back-to-work", ("NeedleBack", "NeedlesBackEvery"), _back_to_work),
    Technique("an-increase-at-the-carriage", ("IncreaseAtCarriage",), _at_carriage),
    Technique("casting-off", ("CastOffAtCarriage", "CastOffAll"), _cast_off),
    Technique("casting-on-beside-the-work", ("CastOnAtCarriage",), _cast_on),
    Technique("holding", ("HoldAtEnd", "HoldPart", "ReturnHeld", "ReturnPart", "ReturnSome"), _held),
    Technique("wrapping", ("WrapHeld",), _wrapped),
    Technique("returning-needles-in-steps", ("ReturnSome",), _returned),
    Technique("hanging-stitches-back-evenly", ("SpreadEvenly",), _hung_back),
)
