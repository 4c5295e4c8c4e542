"""German words, each under what the English tables know it as. Tables only: the rules are the English ones.

Letters are without accents, as replies are read. In a phrase `a|b` is either word, `a_b` two words and `c?` may be
missing. A longer phrase wins over a shorter one, so an idiom takes its alarming word away.
"""

from __future__ import annotations

REWRITES: tuple[tuple[str, str], ...] = ((r"\btut (.{1,40}?)(?: nicht mehr)? weh\b", r"\1 schmerzt"),)
"""Done first, on the small letters without accents: what stands apart is put together."""

MISSPELT: dict[str, str] = {}
"""Short words typed wrong, one by one."""

TYPED_WRONG = """
kribbeln schmerzen fertig
"""
"""Words of five letters and more that are recognised with a letter or two wrong."""

LOOKALIKES = ""
"""Ordinary words that look like the words above and must stay what they are."""

PHRASES: dict[str, str] = {
    "done": "fertig|erledigt|geschafft|gemacht",
    "hurts": "schmerzt|weh",
    "the": "der|die|das|den|dem",
    "knee": "knie|knien",
    "no pain": "keine|ohne_schmerzen|schmerz, schmerzfrei",
    "pain": "schmerz|schmerzen",
    "tingling": "kribbeln|kribbelt|ameisenlaufen",
    "no": "nein|kein|keine|nicht",
    "without": "ohne",
}
