"""What the checker says: findings by their gravity, gathered into one report."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from enum import StrEnum


class Grade(StrEnum):
    """How grave a finding is: errors stop publishing, warnings are doubts, notes are facts."""

    ERROR = "error"
    WARNING = "warning"
    NOTE = "note"


@dataclass(frozen=True, slots=True)
class Finding:
    """One line of the report: which days (from 1; none: the whole programme), what, and why with its source."""

    grade: Grade
    code: str
    days: tuple[int, ...]
    what: str
    why: str

    def __str__(self) -> str:
        where = f"{in_runs(self.days)}: " if self.days else ""
        return f"{self.grade} {self.code}: {where}{self.what}. {self.why}"

    def as_json(self) -> dict[str, object]:
        """The finding as documented JSON."""
        return {
            "grade": self.grade,
            "code": self.code,
            "days": list(self.days),
            "what": self.what,
            "why": self.why,
        }


@dataclass(frozen=True, slots=True)
class Report:
    """All findings of one programme."""

    title: str
    findings: tuple[Finding, ...]

    @property
    def errors(self) -> tuple[Finding, ...]:
        """What stops publishing."""
        return self._of(Grade.ERROR)

    @property
    def warnings(self) -> tuple[Finding, ...]:
        """What a coach should look at again."""
        return self._of(Grade.WARNING)

    @property
    def notes(self) -> tuple[Finding, ...]:
        """What is worth knowing."""
        return self._of(Grade.NOTE)

    @property
    def ok(self) -> bool:
        """Whether the programme may be published."""
        return not self.errors

    @property
    def counts(self) -> str:
        """How many findings of each grade, in words."""
        found = ((self.errors, "error"), (self.warnings, "warning"), (self.notes, "note"))
        return ", ".join(f"{len(those)} {word}{'' if len(those) == 1 else 's'}" for those, word in found)

    def _of(self, grade: Grade) -> tuple[Finding, ...]:
        return tuple(finding for finding in self.findings if finding.grade is grade)

    def as_json(self) -> dict[str, object]:
        """The report as documented JSON."""
        return {"title": self.title, "ok": self.ok, "findings": [f.as_json() for f in self.findings]}

    def as_text(self) -> str:
        """The report as lines of text, the gravest first."""
        return "\n".join([f"{self.title}: {self.counts}", *(str(finding) for finding in self.findings)])


def gathered(found: Iterable[Finding]) -> Iterator[Finding]:
    """One finding for the same words on several days."""
    days: dict[tuple[Grade, str, str, str], set[int]] = {}
    for finding in found:
        days.setdefault((finding.grade, finding.code, finding.what, finding.why), set()).update(finding.days)
    for (grade, code, what, why), where in days.items():
        yield Finding(grade, code, tuple(sorted(where)), what, why)


def in_runs(days: Sequence[int]) -> str:
    """Days as a coach writes them.

    >>> in_runs([1, 2, 3, 5])
    'days 1-3, 5'
    """
    runs: list[list[int]] = []
    for day in days:
        if runs and day == runs[-1][1] + 1:
            runs[-1][1] = day
        else:
            runs.append([day, day])
    text = ", ".join(str(a) if a == b else f"{a}-{b}" for a, b in runs)
    return f"day {text}" if len(days) == 1 else f"days {text}"
