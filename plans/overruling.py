"""A coach's word for the next row: what it makes of what the rules would have done.

A word never lifts waiting and hands nothing out on a date without training. What the client has said since the coach
looked wins where it is more cautious.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import NamedTuple

from plans.decision import Decision
from plans.ledger import RowKind
from plans.rules import Verdict
from plans.track import LIGHTEST, Position, Row, Way, lighter


class Word(StrEnum):
    """What a coach may say for a client's next row."""

    REPEAT = "repeat"
    """The day in hand again, at its level."""
    EASE = "ease"
    """The day in hand one level lighter."""
    CLIMB = "climb"
    """The day that comes one level fuller than the course stands, never more than as written."""
    REST = "rest"
    """A date off first; then what would have come."""
    MOVE = "move"
    """Another day of the programme, at the course's level."""
    FINISH = "finish"
    """No day any more."""
    GO_ON = "go-on"
    """A waiting course goes on; it was made one level lighter before."""


@dataclass(frozen=True, slots=True)
class Overruling:
    """A coach's word. `newer`: the client has answered since the coach looked. `day` is where a move leads.

    `let_go`: the course was waiting and was let go on, which this word comes on top of.
    """

    word: Word
    newer: bool = False
    day: int | None = None
    let_go: bool = False

    @property
    def goes_on(self) -> bool:
        """Whether the evidence before the waiting has been dealt with."""
        return self.let_go or self.word is Word.GO_ON


class Ground(NamedTuple):
    """What the rules alone decide, and from where a coach's word starts.

    `standing` is the day in hand with its level, after a lapse. `verdict` is what the answer alone calls for, None
    where there was none to judge; `done`: the session was done, at least in part; `begun`: the day in hand was handed
    out.
    """

    decision: Decision
    standing: Position
    verdict: Verdict | None = None
    done: bool = False
    begun: bool = True
    after_lapse: bool = False
    after_waiting: bool = False


def overruled(way: Way, ground: Ground, overruling: Overruling) -> Decision:
    """The decision after a coach's word."""
    plain, word = ground.decision, overruling.word
    if word is Word.GO_ON or plain.kind in (RowKind.ASKING, RowKind.OFF):
        return plain
    if plain.kind is RowKind.WAITING:
        return plain._replace(heeded=False if overruling.newer else None)
    if word is Word.FINISH:
        return plain._replace(kind=None, day=None, prescribed=False, reason="coach", heeded=True)
    if word is Word.REST:
        return _rested(plain)
    if word is Word.MOVE:
        return _moved(way, ground, overruling)
    allowed = {Word.REPEAT: Verdict.REPEAT, Word.EASE: Verdict.EASE, Word.CLIMB: Verdict.ADVANCE}[word]
    if _is_beaten(ground, overruling, allowed):
        return plain._replace(heeded=False)
    return _climbed(way, ground) if word is Word.CLIMB else _stayed(way, ground, allowed)


def _is_beaten(ground: Ground, overruling: Overruling, allowed: Verdict) -> bool:
    """Whether newer evidence calls for more caution than the coach's word."""
    return overruling.newer and ground.verdict is not None and ground.verdict > allowed


def _by_coach(plain: Decision, row: Row, verdict: Verdict | None) -> Decision:
    return plain._replace(
        kind=row.kind,
        position=row.position,
        day=row.day,
        prescribed=row.prescribed,
        verdict=verdict,
        reason="coach",
        heeded=True,
    )


def _stayed(way: Way, ground: Ground, verdict: Verdict) -> Decision:
    """The day in hand again or lighter; where there was no answer to judge, what comes, so."""
    plain = ground.decision
    if ground.verdict is None and verdict is Verdict.EASE:
        return _by_coach(plain, way.hand_out(lighter(plain.position)), verdict)
    if ground.verdict is None or (verdict is Verdict.REPEAT and not ground.begun):
        return _by_coach(plain, way.hand_out(ground.standing), Verdict.REPEAT)
    return _by_coach(plain, way.row(ground.standing, verdict, heavier=plain.heavier, done=ground.done), verdict)


def _climbed(way: Way, ground: Ground) -> Decision:
    """One level up from where the course stands; an advance climbs by itself, and not twice."""
    plain = ground.decision
    if ground.after_waiting or (ground.verdict is Verdict.ADVANCE and ground.begun):
        return plain._replace(heeded=True)
    if ground.verdict in (None, Verdict.ADVANCE):
        return _by_coach(plain, way.hand_out(_fuller(plain.position)), None)
    standing = _fuller(ground.standing)
    if not ground.begun:
        return _by_coach(plain, way.hand_out(standing), Verdict.REPEAT)
    row = way.row(standing, Verdict.REPEAT, heavier=plain.heavier, done=ground.done)
    return _by_coach(plain, row, Verdict.REPEAT)


def _fuller(position: Position) -> Position:
    return position._replace(level=max(position.level - 1, 0))


def _rested(plain: Decision) -> Decision:
    """A date off before what would have come; a date off that comes anyway is one."""
    if plain.kind not in (RowKind.SESSION, RowKind.MEASURE):
        return plain._replace(heeded=True)
    return _by_coach(plain, Row(RowKind.REST, plain.position, prescribed=True), Verdict.REST)


def _moved(way: Way, ground: Ground, overruling: Overruling) -> Decision:
    """Another day at the course's level. Back, newer evidence acts on that day; forward it keeps the client here."""
    plain, standing = ground.decision, ground.standing
    number = min(max(overruling.day or standing.day, 1), len(way.kinds))
    if way.together:
        return plain._replace(heeded=False)
    if number > standing.day:
        if ground.after_waiting or _is_beaten(ground, overruling, Verdict.ADVANCE):
            return plain._replace(heeded=False)
        level = LIGHTEST if ground.after_lapse else standing.level
        return _by_coach(plain, way.hand_out(Position(number, level)), None)
    to = Position(number, standing.level)
    if _is_beaten(ground, overruling, Verdict.REPEAT) and ground.verdict is not None:
        row = way.row(to, ground.verdict, heavier=plain.heavier, done=False)
        return _by_coach(plain, row, ground.verdict)._replace(reason=plain.reason, heeded=False)
    return _by_coach(plain, way.hand_out(to), Verdict.REPEAT)
