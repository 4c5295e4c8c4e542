"""Whose a sign is: what somebody else has is none of the client's."""

from __future__ import annotations

from dataclasses import replace

from plans.neighbours import SIGNS, next_to
from plans.numbers_written import BODY
from plans.wording import Unit, words


def names_another(found: list[Unit], index: int) -> bool:
    """Whether a unit names somebody else: "my dad", "his", or a "she" who was named before."""
    unit = found[index]
    told = unit.concept == "someone" or unit.text in OTHERS
    return told or (unit.text in _NAMED_BEFORE and _is_named(found, index))


OTHERS = words("her his their")
"""Words that say that something is somebody else's."""
_NAMED_BEFORE = words("he she")


def _is_named(found: list[Unit], index: int) -> bool:
    """Whether "she" is somebody who was named; else it may be the knee of a writer whose language has a she for it."""
    return any(unit.concept == "someone" for unit in found[:index])


_REPORTS = words("says say said thinks think noticed notices noticing reckons told tells saw asked")
_OWN_AGAIN = words("it no now then so all done did pain")
_THEIR_CLAUSE_ENDS = frozenset(("end", "question", "comma", "but", "because", "so"))


def mark_theirs(found: list[Unit], index: int) -> None:
    """What somebody else has is no sign of the client's: "my dad collapsed with chest pain"; "my wife says I …" is."""
    for here in range(index + 1, min(index + 12, len(found))):
        unit = found[here]
        first = unit.text.split(" ")[0]
        if here == index + 1 and unit.text in ("however", "though", "just"):
            continue
        if here == index + 2 and first in ("me", "mine") and found[here - 1].text == "of":
            continue
        if unit.concept in _THEIR_CLAUSE_ENDS or first in ("i", "my", "me", "mine"):
            return
        again = next_to(found, here).text.split(" ")[0] if unit.concept == "and" else ""
        if again in _OWN_AGAIN and not (again == "it" and _is_their_limb(found, index, here)):
            return
        if first in _REPORTS and next_to(found, here).text not in ("he", "she", "they"):
            return
        if unit.concept in SIGNS or unit.concept == "health-changed":
            found[here] = replace(unit, theirs=True)


def _is_their_limb(found: list[Unit], start: int, stop: int) -> bool:
    """ "Twisted his ankle and it is swollen": "it" is a limb of theirs."""
    return any(found[i].text in OTHERS and found[i + 1].concept in BODY for i in range(start, stop - 1))
