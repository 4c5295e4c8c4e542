"""Names for exported things that stay the same from one export to the next and name nobody."""

from __future__ import annotations

from uuid import UUID, uuid5

from db.schema import Person

_OURS = UUID("9c0f4f5e-5a0b-5d0c-9b57-3a1c2a6f7d11")
"""The namespace of our names (RFC 9562, version 5); a number of our own choice."""


def name_of(person: Person, *what: object) -> str:
    """The UUID of a person's thing, the same at any time; a number that is given again makes another one."""
    return str(uuid5(_OURS, "/".join(str(part) for part in (person.id, person.created_at.isoformat(), *what))))
