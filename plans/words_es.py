"""Spanish words, each under what the English tables know it as. Tables only: the rules are the English ones.

Letters are without accents, as replies are read. In a phrase `a|b` is either word, `a_b` two words and `c?` may be
missing. A longer phrase wins over a shorter one, so an idiom takes its alarming word away.
"""

from __future__ import annotations

REWRITES: tuple[tuple[str, str], ...] = ()
"""Done first, on the small letters without accents: what stands apart is put together."""

MISSPELT: dict[str, str] = {}
"""Short words typed wrong, one by one."""

TYPED_WRONG = """
hormigueo rodilla terminado dolor
"""
"""Words of five letters and more that are recognised with a letter or two wrong."""

LOOKALIKES = ""
"""Ordinary words that look like the words above and must stay what they are."""

PHRASES: dict[str, str] = {
    "done": "hecho|hecha|listo|lista|terminado|terminada",
    "hurts": "me? duele|duelen",
    "the": "el|la|los|las",
    "knee": "rodilla|rodillas",
    "no pain": "sin_dolor|sin_dolores, no me? duele nada, nada de dolor",
    "pain": "dolor|dolores",
    "tingling": "hormigueo|hormigueos|cosquilleo",
    "no": "no",
    "without": "sin",
}
