"""Which movement a typed name means."""

from __future__ import annotations

from rapidfuzz import fuzz, process

from plans.movements import Library, Movement

MOST = 8
"""Movements offered as buttons."""
NEAR = 78
"""How like a typed name a movement's must be, of 100. Our own choice."""


def named(wanted: str, known: Library) -> list[Movement]:
    """The movements that a typed name may mean, the likeliest first; one alone when it is plain."""
    plain = " ".join(wanted.lower().split())
    names = {key: name.lower() for key, name in known.names().items()}
    exact = [key for key, name in names.items() if plain in (name, key, key.replace("-", " "))]
    if exact:
        return [known[exact[0]]]
    within = [key for key, name in names.items() if all(word in name for word in plain.split())]
    like = process.extract(plain, names, scorer=fuzz.WRatio, limit=MOST, score_cutoff=NEAR)
    return [known[key] for key in within[:MOST] or [key for _name, _score, key in like]]
