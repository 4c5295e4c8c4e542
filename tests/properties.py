"""What must hold for every decision of a rehearsal, whatever the history: checked step by step."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from plans.checkin import CheckIn, Completion, Kind, Morning, Why
from plans.course import Decision, Position
from plans.ledger import RowKind
from plans.past import Past
from plans.rules import RULES, Evidence, Verdict, most_cautious, votes

KINDS = (Kind.DULL_BOTH, Kind.DULL_ONE, Kind.OTHER, Kind.SHARP, Kind.POP)
COMPLETIONS = (Completion.DONE, Completion.PART, Completion.NONE)
MORNINGS = (Morning.SETTLED, Morning.SAME, Morning.WORSE)


def check_step(position: Position, past: Past, decision: Decision, today: date) -> None:
    """Raises AssertionError with the evidence when a property is broken, where days follow the client."""
    moved = decision.position
    assert moved.day <= position.day + 2 + position.rests_taken, f"from {position} to {moved}"
    check_step_of_a_group(position, past, decision, today)


def check_step_of_a_group(position: Position, past: Past, decision: Decision, today: date) -> None:
    """The same where dates follow the group, whose day goes on while somebody waits."""
    moved = decision.position
    assert moved.level in (0, 1, 2), f"level {moved.level}"
    if decision.verdict is Verdict.REFER:
        assert decision.kind is RowKind.WAITING, f"handed out {decision.kind} while waiting"
    if decision.kind in (RowKind.WAITING, RowKind.ASKING, RowKind.OFF):
        assert decision.day is None, f"a {decision.kind} row with day {decision.day}"
    if decision.seen is not None:
        check_evidence(decision.seen)


def check_evidence(seen: Evidence) -> None:
    """The properties within one decision, all other evidence and its reasons equal."""
    given = votes(seen)
    verdict = most_cautious(given)
    assert votes(seen) == given, "the same evidence, other votes"
    reversed_ = {vote.rule for rule in reversed(RULES) if (vote := rule(seen)) is not None}
    assert seen.judged_before or reversed_ == {vote.rule for vote in given} - {"clean", "stuck"}, "order matters"
    said = seen.checkin
    if said.pain is not None and said.pain < 10:
        assert verdict <= _verdict(seen, replace(said, pain=said.pain + 1)), f"more pain is bolder: {seen}"
    _rises(seen, [replace(said, kind=kind) for kind in KINDS] if (said.pain or 0) >= 3 else [], "a worse kind")
    _rises(seen, [replace(said, completion=how, why=Why.TIME) for how in COMPLETIONS], "a worse completion")
    mornings = [most_cautious(votes(replace(seen, morning=morning))) for morning in MORNINGS]
    assert mornings == sorted(mornings), f"a worse morning is bolder: {seen}"


def _verdict(seen: Evidence, said: CheckIn) -> Verdict:
    return most_cautious(votes(replace(seen, checkin=said)))


def _rises(seen: Evidence, worse: list[CheckIn], name: str) -> None:
    found = [_verdict(seen, said) for said in worse]
    assert found == sorted(found), f"{name} is bolder: {seen}"
