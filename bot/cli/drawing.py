"""Figures on the command line: one movement, or a contact sheet of all that have poses."""

from __future__ import annotations

from bot.words import words
from bot.words.cards import session_card
from plans import easing
from plans.figures import film
from plans.figures.card import card_svg
from plans.figures.library import drawn
from plans.figures.raster import png
from plans.figures.sheet import sheet
from plans.movements import library
from plans.programme import Programme


class NothingToDraw(LookupError):
    """A movement that is not in the library, or has no poses yet."""


def picture_of(movement: str, ending: str) -> bytes:
    """The picture of a movement, or of all with "all", as a file with this ending.

    Raises NothingToDraw, and ValueError for an ending that nothing is drawn as.
    """
    if ending not in (".png", ".svg", ".gif", ".mp4"):
        raise ValueError(f"a picture ends in .png, .svg, .gif or .mp4, found {ending or 'no ending'!r}")
    if movement != "all" and movement not in library():
        raise NothingToDraw(f"no movement {movement!r} in the library; easeward movements WORD searches it")
    poses = drawn() if movement == "all" else {movement: drawn()[movement]} if movement in drawn() else {}
    if not poses:
        raise NothingToDraw(f"{movement} has no poses yet")
    if ending in (".gif", ".mp4"):
        return _moving(movement, ending)
    text = sheet(poses, library(), columns=3 if len(poses) > 1 else 1)
    return text.encode() if ending == ".svg" else png(text)


def _moving(movement: str, ending: str) -> bytes:
    if movement == "all":
        raise NothingToDraw("a film shows one movement; all of them go on a .png or .svg")
    seen = film.film(movement, drawn()[movement], library()[movement])
    return film.gif(seen) if ending == ".gif" else film.mp4(seen)


def card_of(programme: Programme, number: int, *, level: int = 0) -> bytes:
    """A day's session as one picture (PNG). Raises LookupError for another day, NothingToDraw without a session."""
    day = easing.eased(
        programme.day(number), level, programme.catalogue(), hold_floor=easing.hold_floor(programme.ages)
    )
    if day.session is None:
        raise NothingToDraw(f"day {number} has no session")
    return png(card_svg(session_card(day, str(words("en").say("day.caution")))))
