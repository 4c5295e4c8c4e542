"""What `doctor` finds: one thing that was looked at, what was found, what it means and what to do."""

from __future__ import annotations

from dataclasses import asdict, dataclass


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing that was looked at. `todo` says what it means and what to do; empty when there is nothing to do."""

    thing: str
    fine: bool
    found: str
    todo: str = ""

    def in_words(self) -> str:
        """The finding in a line, and in a second one what it means and what to do."""
        line = f"{'fine ' if self.fine else 'WRONG'}  {self.thing}: {self.found}"
        return f"{line}\n       {self.todo}" if self.todo else line

    def as_json(self) -> dict[str, object]:
        """The finding as documented JSON."""
        return asdict(self)
