"""What the next row of a course is: the value that every way of deciding gives."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from plans.ledger import Question, RowKind
from plans.replay import evidence_json
from plans.rules import RULE_SET, Evidence, Verdict, Vote
from plans.track import Position


class Decision(NamedTuple):
    """What the next row is, where the course stands then, and why. No `kind` means that the course is finished."""

    kind: RowKind | None
    position: Position
    day: int | None = None
    prescribed: bool = False
    question: Question | None = None
    verdict: Verdict | None = None
    votes: tuple[Vote, ...] = ()
    reason: str = ""
    """The rule that decided, or start, rest-over, went-on, undelivered, measure, climb, coach …"""
    heavier: bool = False
    """Whether the next session day is a heavier one."""
    seen: Evidence | None = None
    """What the rules looked at; None where they had no say."""
    heeded: bool | None = None
    """Whether a coach's word counted; None where there was none, or where it waits for a date with training."""

    @property
    def facts(self) -> Mapping[str, int | float | str | bool]:
        """The numbers behind the deciding vote."""
        vote = next((vote for vote in self.votes if vote.rule == self.reason), None)
        return vote.facts if vote else {}

    def as_json(self) -> dict[str, object]:
        """The decision as it is stored with its row."""
        return {
            "rules": RULE_SET,
            "verdict": self.verdict.word if self.verdict is not None else None,
            "reason": self.reason,
            "heavier": self.heavier,
            "seen": evidence_json(self.seen) if self.seen is not None else None,
            "votes": [
                {
                    "rule": vote.rule,
                    "verdict": vote.verdict.word if vote.verdict is not None else None,
                    "tell": vote.tell,
                    "facts": dict(vote.facts),
                }
                for vote in self.votes
            ],
        }
