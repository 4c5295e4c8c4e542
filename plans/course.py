"""A client's way through a programme: what one local date brings, from all that came before it.

Everything here is a function of plain values. The ledger rows of a course, oldest first, are its history; a row that
is made stays made, and a decision is only what the next row would be.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date

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


@dataclass(frozen=True, slots=True)
class Position:
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


@dataclass(frozen=True, slots=True)
class Decision:
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
    return replace(position, level=min(position.level + 1, LIGHTEST))


def let_go(position: Position) -> Position:
    """Where a course goes on after waiting for the coach: the same day, one level lighter."""
    return _lighter(position)


def _passed(position: Position) -> Position:
    return Position(position.day + 1 + position.rests_taken, position.level)


@dataclass(frozen=True, slots=True)
class _Way:
    """How a decision that has its reasons and its position gets its row, on one date of one programme."""

    programme: Programme
    pace: Pace
    today: date

    @property
    def trains(self) -> bool:
        return self.pace.trains_on(self.today)

    def begun(self, position: Position) -> Position:
        """Where the course stands this morning: in a group, on the group's day."""
        return Position(self.pace.group_day(self.today), position.level) if self.pace.together else position

    def after_lapse(self, position: Position, past: Past) -> tuple[Position, Vote | None]:
        """The position after a lapse, and the lapse as a vote. Never forward; in a group only lighter.

        Bands are this program's own choice, from studies of time off: little is lost in a week, much in a month.
        """
        missed = past.gap(self.today)
        if missed < 8:
            return position, None
        back = 1 if missed > 28 else min(past.first_held(7 if missed < 14 else 14) or 1, position.day)
        level = 0 if missed > 28 else position.level if missed < 14 else LIGHTEST
        if self.pace.together:
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
            return replace(why, kind=RowKind.OFF)
        if self._is_taken(number):
            return self.hand_out(replace(why, position=Position(number + 1, why.position.level)))
        return replace(why, kind=RowKind(self.programme.day(number).kind), day=number)

    def _is_taken(self, number: int) -> bool:
        """A rest day beside a date without training is taken already; a group keeps its dates."""
        is_rest = self.programme.day(number).kind == "rest"
        return is_rest and not self.pace.together and self.pace.is_beside_a_day_off(self.today)

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
            taken = replace(why, position=replace(why.position, rests_taken=why.position.rests_taken + 1))
            if not self._is_taken(rest):
                return replace(taken, kind=RowKind.REST, day=rest, prescribed=True)
            why = taken
        if date_off:
            return replace(why, kind=RowKind.REST, prescribed=True)
        return self.hand_out(why)

    def apply(self, why: Decision, *, done: bool) -> Decision:
        """Gives a verdict its row. `done`: the session was done, at least in part."""
        if why.verdict is Verdict.REFER:
            return replace(why, kind=RowKind.WAITING)
        if self.pace.together:
            return self._with_the_group(why)
        if why.verdict is Verdict.REST:
            return self._stay(replace(why, position=_lighter(why.position)), done=done, date_off=True)
        if why.verdict is Verdict.EASE:
            return self._stay(replace(why, position=_lighter(why.position)), done=done)
        if why.verdict is Verdict.REPEAT:
            return self._stay(why, done=done)
        return self._advance(why, done=done)

    def _advance(self, why: Decision, *, done: bool) -> Decision:
        """The next day; an eased course climbs one level with it, or first where the next session day is heavier."""
        if why.position.level == 0:
            return self.hand_out(replace(why, position=_passed(why.position)))
        climbed = replace(why.position, level=why.position.level - 1)
        if why.heavier:
            return self._stay(replace(why, position=climbed, reason="climb"), done=done)
        return self.hand_out(replace(why, position=_passed(climbed)))

    def _with_the_group(self, why: Decision) -> Decision:
        """The group's day at this client's level: lighter where it would be a step too far."""
        level = why.position.level
        if why.verdict is Verdict.REST:
            return replace(why, kind=RowKind.REST, position=_lighter(why.position), prescribed=True)
        if why.verdict is Verdict.EASE or (why.verdict is Verdict.REPEAT and why.heavier):
            level = min(level + 1, LIGHTEST)
        elif why.verdict is Verdict.ADVANCE and not why.heavier:
            level = max(level - 1, 0)
        return self.hand_out(replace(why, position=replace(why.position, level=level)))


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
    way = _Way(programme, pace or Pace(today), today)
    here = Decision(None, way.begun(position))
    last = past.last
    if last is None:
        return way.hand_out(replace(here, reason="start"))
    if overruling is not None and overruling.verdict is None:
        return _go_on(way, here, past)
    question = question_of(past, asked_on=today, usual=usual) if ask else None
    if question is not None:
        return replace(here, kind=RowKind.ASKING, question=question, reason=f"ask-{question}")
    if last.kind in (RowKind.WAITING, RowKind.AWAY):
        return _go_on(way, here, past)
    if last.kind is RowKind.MEASURE and way.trains:
        return _after_measure(way, here, last)
    if last.kind is RowKind.SESSION and not last.delivered and last.checkin == CheckIn():
        return way.hand_out(replace(here, reason="undelivered"))
    seen = evidence(programme, position, past, today, settings=settings, usual=usual)
    why = replace(here, votes=votes(seen), heavier=seen.next_is_heavier, seen=seen)
    if not way.trains:
        return _on_a_day_off(way, why)
    if last.kind is RowKind.REST:
        return _after_rest(way, why, last, overruling)
    return _after_session(way, why, past, last, overruling)


def _on_a_day_off(way: _Way, why: Decision) -> Decision:
    """Nothing is handed out, and the answer is judged on the next training date; what refers does so at once."""
    if most_cautious(why.votes) is Verdict.REFER:
        reason = deciding(why.votes)
        return replace(why, kind=RowKind.WAITING, verdict=Verdict.REFER, reason=reason.rule if reason else "")
    told = tuple(vote for vote in why.votes if vote.rule == "morning-after")
    return replace(why, kind=RowKind.OFF, votes=told, reason="off", seen=None)


def _go_on(way: _Way, here: Decision, past: Past) -> Decision:
    moved, lapse = way.after_lapse(here.position, past)
    if way.pace.together and past.last is not None and past.last.kind is RowKind.WAITING:
        moved = replace(moved, level=LIGHTEST)
    reason = "well-again" if past.last is not None and past.last.kind is RowKind.AWAY else "went-on"
    if lapse is not None:
        reason = "lapse"
    return way.hand_out(replace(here, position=moved, reason=reason, votes=(lapse,) if lapse else ()))


def _after_measure(way: _Way, here: Decision, last: Entry) -> Decision:
    if last.recorded:
        onward = here.position if way.pace.together else _passed(here.position)
        return way.hand_out(replace(here, position=onward, verdict=Verdict.ADVANCE, reason="measured"))
    reason = "group" if way.pace.together else "not-measured"
    return way.hand_out(replace(here, verdict=Verdict.REPEAT, reason=reason))


def _after_session(way: _Way, why: Decision, past: Past, last: Entry, overruling: Overruling | None) -> Decision:
    moved, lapse = way.after_lapse(why.position, past)
    given = why.votes if lapse is None else (lapse, *why.votes)
    verdict, by_coach = _overruled(most_cautious(given), overruling)
    chosen = deciding(given)
    reason = "coach" if by_coach else (chosen.rule if chosen else "no-vote")
    judged = replace(why, position=moved, votes=given, verdict=verdict, reason=reason)
    return way.apply(judged, done=was_done(last))


def _after_rest(way: _Way, why: Decision, last: Entry, overruling: Overruling | None) -> Decision:
    """After a rest day: a prescribed one leads back to the day in hand, a programme's own one passes with its date."""
    stays = last.prescribed or way.pace.together
    onward = replace(why, position=why.position if stays else _passed(why.position))
    voted = max((vote.verdict for vote in why.votes if vote.verdict is not None), default=Verdict.ADVANCE)
    verdict, by_coach = _overruled(voted, overruling)
    chosen = deciding(why.votes)
    if verdict in (Verdict.ADVANCE, Verdict.REPEAT):
        return way.hand_out(replace(onward, reason="coach" if by_coach else "rest-over"))
    reason = "coach" if by_coach or chosen is None else chosen.rule
    return way.apply(replace(onward, verdict=verdict, reason=reason), done=False)


def evidence(
    programme: Programme, position: Position, past: Past, today: date, *, settings: Settings, usual: int = 0
) -> Evidence:
    """Everything that the rules look at when the row of `today` is made."""
    source, last = past.source, past.last
    said = next((said for on, said in past.mornings if on == today), None)
    earlier = [said for on, said in past.mornings if on != today]
    if said is None and source is last and earlier and earlier[-1] is Morning.SETTLED:
        said = earlier.pop()  # it settled on a date without training
    clean = tuple(day for _on, day in past.clean)
    heavier = heaviness(programme).next_is_heavier(position.day, clean, frozenset(past.known))
    judged_before = source is not last or (last is not None and _softened(programme, last))
    return Evidence(
        checkin=source.checkin if source else CheckIn(),
        next_is_heavier=heavier,
        morning=said,
        morning_before=earlier[-1] if earlier else None,
        judged_before=judged_before,
        on_rest=last is not None and last.kind is RowKind.REST,
        usual=usual,
        lingering=past.lingering(),
        weeks=past.weeks(today),
        over_tightness=past.over_usual_tightness(),
        tries=past.earlier_tries,
        light_tries=past.light_tries,
        nerve_before=past.nerve_before,
        settings=settings,
    )


def _softened(programme: Programme, entry: Entry) -> bool:
    """A session that a report before it turned into a date off: the row keeps the session's day."""
    return entry.kind is RowKind.REST and entry.day is not None and programme.day(entry.day).kind == "session"


_NOT_BEFORE = ("not-done", "unsure-flag")
"""Rules without a say before the session: it may still be done, and an unsure flag is asked back first."""


def soften_today(checkin: CheckIn, position: Position, settings: Settings, usual: int = 0) -> Decision | None:
    """What a report before the session does to a session already handed out; None leaves it as it is.

    Pain of 3-5, or nerve signs that are gone, brings the lighter version, 6-7 a date off, and what refers waits for
    the coach. A made row may only become more cautious.
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
        return replace(found, kind=RowKind.REST, position=_lighter(position), prescribed=True)
    if reason not in ("acceptable", "nerve-signs"):
        return None
    return replace(found, kind=RowKind.SESSION, position=_lighter(position))
