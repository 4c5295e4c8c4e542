"""Why a client's date is what it is: the stored votes of its row, and whether the rules still say the same."""

from __future__ import annotations

from datetime import date
from typing import Any

from sqlalchemy import select

from db import people
from db.engine import Database
from db.schema import LedgerRow
from plans.replay import replayed


async def explain(database: Database, person: str, on: date) -> dict[str, Any]:
    """The decision behind one date of one person, by chat number or label, as plain data.

    Raises LookupError when there is no such person, more than one, or no row on that date.
    """
    async with database.reading() as session:
        found = await people.named(session, person)
        query = select(LedgerRow).where(LedgerRow.person_id == found.id, LedgerRow.local_date == on)
        row = await session.scalar(query)
        if row is None:
            raise LookupError(f"{person} has no row on {on}")
        stored = row.decision or {}
        again = replayed(stored) if stored.get("seen") else None
        return {
            "person": found.chat,
            "date": on.isoformat(),
            "kind": row.kind,
            "day": row.day,
            "level": row.level,
            **{name: stored.get(name) for name in ("rules", "verdict", "reason", "heavier", "votes", "seen")},
            "replay": None if again is None else {"verdict": again[0].word, "votes": [vote.rule for vote in again[1]]},
        }


def in_words(found: dict[str, Any]) -> str:
    """The same as lines of text."""
    day = f", day {found['day']} at level {found['level']}" if found["day"] is not None else ""
    lines = [
        f"{found['date']}: {found['kind']}{day}",
        f"decided: {found['verdict'] or 'nothing to judge'}, {found['reason']}",
    ]
    for vote in found["votes"] or ():
        facts = ", ".join(f"{name} {value}" for name, value in vote["facts"].items())
        tell = f", coach told {vote['tell']}" if vote["tell"] else ""
        lines.append(f"  {vote['rule']}: {vote['verdict'] or 'no verdict'}{tell}{f' ({facts})' if facts else ''}")
    if found["seen"] is not None:
        said = ", ".join(f"{name} {value}" for name, value in found["seen"]["checkin"].items()) or "nothing"
        rest = {k: v for k, v in found["seen"].items() if k not in ("checkin", "settings")}
        lines.append(f"seen: {said}" + "".join(f"; {name.replace('_', ' ')} {value}" for name, value in rest.items()))
    if found["replay"] is not None:
        lines.append(f"the rules of today say: {found['replay']['verdict']}")
    return "\n".join(lines)
