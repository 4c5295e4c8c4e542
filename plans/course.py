"""A client's way through a programme: what one local date brings, from all that came before it.

Everything here is a function of plain values. The ledger rows of a course, oldest first, are its history; a row that
is made stays made, and a decision is only what the next row would be.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from typing import Any, NamedTuple

from plans.checkin import CheckIn, Morning
from plans.heavier import heaviness
from plans.ledger import Entry, Question, RowKind
from plans.pace import Pace
from plans.past import Past, was_done
from plans.programme import Programme
from plans.questions import question_of
from plans.replay import evidence_json
from plans.rules import (
    RULE_SET,
    WEEK_FROM,
    Evidence,
    Settings,
    Tell,
    Verdict,
    Vote,
    deciding,
    most_cautious,
    votes,
)

LIGHTEST = 2


class Position(NamedTuple):
    """Where a course stands: the day in hand (from 1), its ease level, and following rest days already taken."""

    day: int = 1
    level: int = 0
    rests_taken: int = 0


@dataclass(frozen=True, slots=True)
class Overruling:
    """A coach's word for the next row. `newer`: the client has answered since the coach looked."""

    verdict: Verdict | None
    """None lets a waiting course go on."""
    newer: bool = False


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

    @property
    def facts(self) -> Mapping[str, int | float | str | bool]:
        """The numbers behind the deciding vote."""
        vote = next((vote for vote in self.votes if vote.rule == self.reason), None)
        return vote.facts if vote else {}

    def told(self, when: Tell) -> tuple[Vote, ...]:
        """The votes that a coach hears of, now or on the list."""
        return tuple(vote for vote in self.votes if vote.tell is when)

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


# --- one step -------------------------------------------------------------------------------------------------------


def _lighter(position: Position) -> Position:
    return position._replace(level=min(position.level + 1, LIGHTEST))


def let_go(position: Position) -> Position:
    """Where a course goes on after waiting for the coach: the same day, one level lighter."""
    return _lighter(position)


def _passed(position: Position) -> Position:
    return Position(position.day + 1 + position.rests_taken, position.level)


class _Lapse(NamedTuple):
    """Dates missed, eight and more, and the first day held in the one or two weeks before."""

    missed: int
    first_held: int | None


def _lapse(past: Past, today: date) -> _Lapse | None:
    missed = past.gap(today)
    return None if missed < 8 else _Lapse(missed, past.first_held(7 if missed < 14 else 14))


class _Way(NamedTuple):
    """How a decision that has its reasons and its position gets its row: the programme, and what sort of date it is."""

    programme: Programme
    together: bool
    trains: bool
    beside_a_day_off: bool

    def after_lapse(self, position: Position, lapse: _Lapse | None) -> tuple[Position, Vote | None]:
        """The position after a lapse, and the lapse as a vote. Never forward; in a group only lighter.

        Bands are this program's own choice, from studies of time off: little is lost in a week, much in a month.
        """
        if lapse is None:
            return position, None
        missed = lapse.missed
        back = 1 if missed > 28 else min(lapse.first_held or 1, position.day)
        level = 0 if missed > 28 else position.level if missed < 14 else LIGHTEST
        if self.together:
            back, level = position.day, LIGHTEST if missed >= 14 else min(position.level + 1, LIGHTEST)
        tell = None if missed < 14 else Tell.LIST
        stays = (back, level) == (position.day, position.level) and missed <= 28
        moved = position if stays else Position(back, level)
        return moved, Vote("lapse", Verdict.REPEAT, tell, {"gap": missed, "back": back, "level": level})

    def hand_out(self, why: Decision) -> Decision:
        """The row for the day in hand; past the last day there is none, the course is finished."""
        number = why.position.day
        if number > len(self.programme.days):
            return why
        if not self.trains:
            return why._replace(kind=RowKind.OFF)
        if self._is_taken(number):
            return self.hand_out(why._replace(position=Position(number + 1, why.position.level)))
        return why._replace(kind=RowKind(self.programme.day(number).kind), day=number)

    def _is_taken(self, number: int) -> bool:
        """A rest day beside a date without training is taken already; a group keeps its dates."""
        is_rest = self.programme.day(number).kind == "rest"
        return is_rest and not self.together and self.beside_a_day_off

    def _rest_day_coming(self, position: Position) -> int | None:
        """The number of the rest day that follows the day in hand and is not taken yet."""
        number = position.day + 1 + position.rests_taken
        if number <= len(self.programme.days) and self.programme.day(number).kind == "rest":
            return number
        return None

    def _stay(self, why: Decision, *, done: bool, date_off: bool = False) -> Decision:
        """The same day again: after the rest day that comes next when the session was done, or after a date off."""
        rest = self._rest_day_coming(why.position) if done else None
        if rest is not None:
            taken = why._replace(position=why.position._replace(rests_taken=why.position.rests_taken + 1))
            if not self._is_taken(rest):
                return taken._replace(kind=RowKind.REST, day=rest, prescribed=True)
            why = taken
        if date_off:
            return why._replace(kind=RowKind.REST, prescribed=True)
        return self.hand_out(why)

    def apply(self, why: Decision, *, done: bool) -> Decision:
        """Gives a verdict its row. `done`: the session was done, at least in part."""
        if why.verdict is Verdict.REFER:
            return why._replace(kind=RowKind.WAITING)
        if self.together:
            return self._with_the_group(why)
        if why.verdict is Verdict.REST:
            return self._stay(why._replace(position=_lighter(why.position)), done=done, date_off=True)
        if why.verdict is Verdict.EASE:
            return self._stay(why._replace(position=_lighter(why.position)), done=done)
        if why.verdict is Verdict.REPEAT:
            return self._stay(why, done=done)
        return self._advance(why, done=done)

    def _advance(self, why: Decision, *, done: bool) -> Decision:
        """The next day; an eased course climbs one level with it, or first where the next session day is heavier."""
        if why.position.level == 0:
            return self.hand_out(why._replace(position=_passed(why.position)))
        climbed = why.position._replace(level=why.position.level - 1)
        if why.heavier:
            return self._stay(why._replace(position=climbed, reason="climb"), done=done)
        return self.hand_out(why._replace(position=_passed(climbed)))

    def _with_the_group(self, why: Decision) -> Decision:
        """The group's day at this client's level: lighter where it would be a step too far."""
        level = why.position.level
        if why.verdict is Verdict.REST:
            return why._replace(kind=RowKind.REST, position=_lighter(why.position), prescribed=True)
        if why.verdict is Verdict.EASE or (why.verdict is Verdict.REPEAT and why.heavier):
            level = min(level + 1, LIGHTEST)
        elif why.verdict is Verdict.ADVANCE and not why.heavier:
            level = max(level - 1, 0)
        return self.hand_out(why._replace(position=why.position._replace(level=level)))


def _overruled(verdict: Verdict, overruling: Overruling | None) -> tuple[Verdict, bool]:
    """The verdict after a coach's word, and whether it was the coach's. Newer, more cautious evidence wins."""
    if overruling is None or overruling.verdict is None or verdict is Verdict.REFER:
        return verdict, False
    if overruling.newer and verdict > overruling.verdict:
        return verdict, False
    return overruling.verdict, True


def decide(
    programme: Programme,
    position: Position,
    history: Sequence[Entry],
    today: date,
    *,
    settings: Settings,
    usual: int = 0,
    pace: Pace | None = None,
    overruling: Overruling | None = None,
    ask: bool = True,
) -> Decision:
    """What the row of `today` is. `history` may end with today's own question, answered or not.

    With `ask=False` the open question is left out, to show beforehand what follows as things stand.
    """
    past = Past.of(history, settings, usual)
    return step(
        programme, position, past, today, settings=settings, usual=usual, pace=pace, overruling=overruling, ask=ask
    )


def step(
    programme: Programme,
    position: Position,
    past: Past,
    today: date,
    *,
    settings: Settings,
    usual: int = 0,
    pace: Pace | None = None,
    overruling: Overruling | None = None,
    ask: bool = True,
) -> Decision:
    """The same from a past that was summed up row by row. Without a pace every date trains, and days follow the client.

    On a date without training nothing is handed out; a question is still asked, and what refers still acts.
    """
    pace = pace or Pace(today)
    way = _Way(programme, pace.together, pace.trains_on(today), pace.is_beside_a_day_off(today))
    if pace.together:
        position = Position(pace.group_day(today), position.level)
    here = Decision(None, position)
    last = past.last
    if last is None:
        return way.hand_out(here._replace(reason="start"))
    if overruling is not None and overruling.verdict is None:
        return _go_on(way, here, past, today)
    question = question_of(past, asked_on=today) if ask else None
    if question is not None:
        return here._replace(kind=RowKind.ASKING, question=question, reason=f"ask-{question}")
    if last.kind in (RowKind.WAITING, RowKind.AWAY):
        return _go_on(way, here, past, today)
    if last.kind is RowKind.MEASURE and way.trains:
        return _after_measure(way, here, last)
    if last.kind is RowKind.SESSION and not last.delivered and last.checkin == _NOTHING:
        return way.hand_out(here._replace(reason="undelivered"))
    looked = _looked_at(programme, position.day - pace.together, past, today, settings, usual)
    done, rest = was_done(last), last.kind is RowKind.REST
    return _decided(way, position, looked, done, rest and last.prescribed, _lapse(past, today), overruling)


@lru_cache(maxsize=20_000)
def _decided(
    way: _Way,
    position: Position,
    looked: tuple[Any, ...],
    done: bool,
    prescribed: bool,
    lapse: _Lapse | None,
    overruling: Overruling | None,
) -> Decision:
    """What follows from a session or a rest day. Equal evidence gives equal decisions, so each is worked out once."""
    seen = Evidence(*looked)
    why = Decision(None, position, votes=votes(seen), heavier=seen.next_is_heavier, seen=seen)
    if not way.trains:
        return _on_a_day_off(way, why)
    if seen.on_rest:
        return _after_rest(way, why, prescribed, overruling)
    return _after_session(way, why, lapse, done, overruling)


def _on_a_day_off(way: _Way, why: Decision) -> Decision:
    """Nothing is handed out, and the answer is judged on the next training date; what refers does so at once."""
    if most_cautious(why.votes) is Verdict.REFER:
        reason = deciding(why.votes)
        return why._replace(kind=RowKind.WAITING, verdict=Verdict.REFER, reason=reason.rule if reason else "")
    told = tuple(vote for vote in why.votes if vote.rule == "morning-after")
    return why._replace(kind=RowKind.OFF, votes=told, reason="off", seen=None)


def _go_on(way: _Way, here: Decision, past: Past, today: date) -> Decision:
    moved, lapse = way.after_lapse(here.position, _lapse(past, today))
    if way.together and past.last is not None and past.last.kind is RowKind.WAITING:
        moved = moved._replace(level=LIGHTEST)
    reason = "well-again" if past.last is not None and past.last.kind is RowKind.AWAY else "went-on"
    if lapse is not None:
        reason = "lapse"
    return way.hand_out(here._replace(position=moved, reason=reason, votes=(lapse,) if lapse else ()))


def _after_measure(way: _Way, here: Decision, last: Entry) -> Decision:
    if last.recorded:
        onward = here.position if way.together else _passed(here.position)
        return way.hand_out(here._replace(position=onward, verdict=Verdict.ADVANCE, reason="measured"))
    reason = "group" if way.together else "not-measured"
    return way.hand_out(here._replace(verdict=Verdict.REPEAT, reason=reason))


def _after_session(
    way: _Way, why: Decision, lapse: _Lapse | None, done: bool, overruling: Overruling | None
) -> Decision:
    moved, vote = way.after_lapse(why.position, lapse)
    given = why.votes if vote is None else (vote, *why.votes)
    verdict, by_coach = _overruled(most_cautious(given), overruling)
    chosen = deciding(given)
    reason = "coach" if by_coach else (chosen.rule if chosen else "no-vote")
    judged = why._replace(position=moved, votes=given, verdict=verdict, reason=reason)
    return way.apply(judged, done=done)


def _after_rest(way: _Way, why: Decision, prescribed: bool, overruling: Overruling | None) -> Decision:
    """After a rest day: a prescribed one leads back to the day in hand, a programme's own one passes with its date."""
    stays = prescribed or way.together
    onward = why._replace(position=why.position if stays else _passed(why.position))
    voted = max((vote.verdict for vote in why.votes if vote.verdict is not None), default=Verdict.ADVANCE)
    verdict, by_coach = _overruled(voted, overruling)
    chosen = deciding(why.votes)
    if verdict in (Verdict.ADVANCE, Verdict.REPEAT):
        return way.hand_out(onward._replace(reason="coach" if by_coach else "rest-over"))
    reason = "coach" if by_coach or chosen is None else chosen.rule
    return way.apply(onward._replace(verdict=verdict, reason=reason), done=False)


def _looked_at(
    programme: Programme, day: int, past: Past, today: date, settings: Settings, usual: int
) -> tuple[Any, ...]:
    """Everything that the rules look at when the row of `today` is made, in the order of `Evidence`.

    `day` is the programme day before the one that may come next.
    """
    source, last = past.source, past.last
    said = before = None
    for on, answer in past.mornings:
        if on == today:
            said = answer
        else:
            before = answer
    if said is None and source is last and before is Morning.SETTLED:
        said, before = before, None  # it settled on a date without training
    on_rest = last is not None and last.kind is RowKind.REST
    weeks = past.weeks(today)
    return (
        source.checkin if source else _NOTHING,
        heaviness(programme).next_is_heavier(day, past.clean_days, past.known),
        said,
        before,
        source is not last or (on_rest and last is not None and _softened(programme, last)),
        on_rest,
        usual,
        past.lingering(),
        weeks if weeks is not None and weeks[1] >= WEEK_FROM else None,
        past.over_usual_tightness(),
        past.earlier_tries,
        past.light_tries,
        past.nerve_before,
        settings,
    )


_NOTHING = CheckIn()


def _softened(programme: Programme, entry: Entry) -> bool:
    """A session that a report before it turned into a date off: the row keeps the session's day."""
    return entry.kind is RowKind.REST and entry.day is not None and programme.day(entry.day).kind == "session"


_NOT_BEFORE = ("not-done", "unsure-flag")
"""Rules without a say before the session: it may still be done, and an unsure flag is asked back first."""


def soften_today(checkin: CheckIn, position: Position, settings: Settings, usual: int = 0) -> Decision | None:
    """What a report before the session does to a session already handed out; None leaves it as it is.

    Pain of 3-5 brings the lighter version, 6-7 a date off, and what refers waits for the coach. A made row may only
    become more cautious.
    """
    given = votes(Evidence(checkin=checkin, usual=usual, settings=settings))
    verdict = max((vote.verdict for vote in given if vote.verdict and vote.rule not in _NOT_BEFORE), default=None)
    if verdict is None:
        return None
    reason = next(vote.rule for vote in given if vote.verdict is verdict)
    found = Decision(RowKind.WAITING, position, day=position.day, verdict=verdict, votes=given, reason=reason)
    if verdict is Verdict.REFER:
        return found
    if verdict is Verdict.REST:
        return found._replace(kind=RowKind.REST, position=_lighter(position), prescribed=True)
    if reason != "acceptable":
        return None
    return found._replace(kind=RowKind.SESSION, position=_lighter(position))
