"""A client's way through a programme: what one local date brings, from all that came before it.

Everything here is a function of plain values. The ledger rows of a course, oldest first, are its history; a row that
is made stays made, and a decision is only what the next row would be.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from functools import lru_cache
from typing import Any

from plans.checkin import CheckIn, Morning
from plans.decision import Decision as Decision
from plans.heard import Heard
from plans.ledger import Entry, RowKind
from plans.overruling import Ground, overruled
from plans.overruling import Overruling as Overruling
from plans.overruling import Word as Word
from plans.pace import Pace
from plans.past import Past
from plans.programme import Programme
from plans.questions import question_of
from plans.rules import WEEK_FROM, Evidence, Settings, Verdict, Vote, deciding, most_cautious, votes
from plans.track import LIGHTEST, REST, SESSION, Lapse, Row, Track, Way, lapse_of, lighter, passed, track_of
from plans.track import Position as Position

# --- one step -------------------------------------------------------------------------------------------------------


def let_go(position: Position) -> Position:
    """Where a course goes on after waiting for the coach: the same day, one level lighter."""
    return lighter(position)


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
    track = track_of(programme, pace or Pace(today))
    return step(track, position, Past.of(history, settings, usual), today, overruling=overruling, ask=ask)


def step(
    track: Track,
    position: Position,
    past: Past,
    today: date,
    *,
    overruling: Overruling | None = None,
    ask: bool = True,
) -> Decision:
    """The same from a track prepared before, and a past that was summed up row by row.

    On a date without training nothing is handed out; a question is still asked, and what refers still acts.
    """
    way = track.week[today.weekday()]
    if way.together:
        position = Position(track.pace.group_day(today), position.level)
    if overruling is None:
        return _ground(way, position, past, today, ask=ask).decision
    if overruling.goes_on and past.last is not None:
        since = _reported_since(way, position, past, today, ask=ask) if overruling.newer else None
        ground = since or _go_on(way, position, past, today, let_go=True)
    else:
        ground = _ground(way, position, past, today, ask=ask)
    return overruled(way, ground, overruling)


def _ground(way: Way, position: Position, past: Past, today: date, *, ask: bool) -> Ground:
    """What the rules alone make of a date, and what a coach's word would start from."""
    last = past.last
    if last is None:
        return Ground(Decision(*way.hand_out(position), reason="start"), position)
    asking = _asking(position, past, today) if ask else None
    if asking is not None:
        return asking
    kind = last.kind
    if kind in _GOES_ON:
        return _held_back(way, position, past, today) or _go_on(way, position, past, today)
    if kind is SESSION and not last.delivered and last.checkin == _NOTHING and past.source is last:
        return _go_on(way, position, past, today)
    looked = _looked_at(way, position, past, today)
    if kind is MEASURE and way.trains:
        return _after_measure(way, position, looked, recorded=last.recorded)
    done = kind is SESSION and past.last_heard.done
    return _decided(way, position, looked, done, kind is REST and last.prescribed, lapse_of(past, today))


def _asking(position: Position, past: Past, today: date) -> Ground | None:
    question = question_of(past, asked_on=today) if past.heard.opens else None
    if question is None:
        return None
    return Ground(Decision(RowKind.ASKING, position, question=question, reason=f"ask-{question}"), position)


MEASURE, AWAY, SETTLED = RowKind.MEASURE, RowKind.AWAY, Morning.SETTLED
_WITHOUT_SESSION = frozenset({REST, MEASURE})
_GOES_ON = frozenset({RowKind.WAITING, AWAY})
_NOTHING = CheckIn()


@lru_cache(maxsize=20_000)
def _decided(
    way: Way,
    position: Position,
    looked: tuple[Any, ...],
    done: bool,
    prescribed: bool,
    lapse: Lapse | None,
) -> Ground:
    """What follows from a session or a rest day. Equal evidence gives equal decisions, so each is worked out once."""
    seen, given = _judged(*looked)
    if not way.trains:
        return Ground(_on_a_day_off(position, seen, given), position)
    if seen.on_rest:
        return _after_rest(way, position, seen, given, prescribed)
    return _after_session(way, position, seen, given, lapse, done)


@lru_cache(maxsize=10_000, typed=True)
def _judged(heard: Heard, *others: Any) -> tuple[Evidence, tuple[Vote, ...]]:
    named = dict(zip(_OTHERS, others, strict=True))
    seen = Evidence(heard.said, usual=heard.usual, settings=heard.settings, **named)
    return seen, votes(seen)


def _on_a_day_off(position: Position, seen: Evidence, given: tuple[Vote, ...]) -> Decision:
    """Nothing is handed out, and the answer is judged on the next training date; what refers does so at once."""
    heavier, chosen = seen.next_is_heavier, deciding(given)
    if chosen is not None and chosen.verdict is Verdict.REFER:
        row = Row(RowKind.WAITING, position)
        return Decision(*row, verdict=Verdict.REFER, votes=given, reason=chosen.rule, heavier=heavier, seen=seen)
    told = tuple(vote for vote in given if vote.rule == "morning-after")
    return Decision(RowKind.OFF, position, votes=told, reason="off", heavier=heavier)


def _go_on(way: Way, position: Position, past: Past, today: date, *, let_go: bool = False) -> Ground:
    if past.tested == position.day and not way.together:
        position = passed(position)
    moved, lapse = way.after_lapse(position, lapse_of(past, today))
    kind = past.last.kind if past.last is not None else None
    waited = kind is RowKind.WAITING
    if way.together and waited:
        moved = moved._replace(level=LIGHTEST)
    reason = "well-again" if kind is AWAY else "undelivered" if kind is SESSION and not let_go else "went-on"
    if lapse is not None:
        reason = "lapse"
    decision = Decision(*way.hand_out(moved), reason=reason, votes=(lapse,) if lapse else ())
    return Ground(decision, moved, after_lapse=lapse is not None, after_waiting=waited or let_go)


def _reported_since(way: Way, position: Position, past: Past, today: date, *, ask: bool) -> Ground | None:
    """What was reported while the course waited or since, and the coach has not seen. None when nothing holds back."""
    if past.last is None or past.last.kind not in _GOES_ON or past.source is None:
        return None
    asking = _asking(position, past, today) if ask else None
    return asking or _held_back(way, position, past, today)


def _held_back(way: Way, position: Position, past: Past, today: date) -> Ground | None:
    """What still holds back after time away, or while the course waited: a worse morning, or a pain. None: nothing."""
    seen, given = _judged(*_looked_at(way, position, past, today))
    if _worst(given) <= Verdict.REPEAT:
        return None
    if not way.trains:
        return Ground(_on_a_day_off(position, seen, given), position)
    moved, vote = way.after_lapse(position, lapse_of(past, today))
    return _after_rest(way, moved, seen, given if vote is None else (vote, *given), prescribed=True)


def _after_measure(way: Way, position: Position, looked: tuple[Any, ...], *, recorded: bool) -> Ground:
    """After a measure date: on when the tests were taken; what was reported on it counts as on a rest day."""
    seen, given = _judged(*looked)
    if _worst(given) > Verdict.REPEAT:
        return _after_rest(way, position, seen, given, prescribed=not recorded)
    if recorded:
        onward = position if way.together else passed(position)
        decision = Decision(*way.hand_out(onward), verdict=Verdict.ADVANCE, votes=given, reason="measured")
    else:
        reason = "group" if way.together else "not-measured"
        decision = Decision(*way.hand_out(position), verdict=Verdict.REPEAT, votes=given, reason=reason)
    return Ground(decision, position)


def _worst(given: tuple[Vote, ...]) -> Verdict:
    """The most cautious verdict; without one nothing stands in the way."""
    return max((vote.verdict for vote in given if vote.verdict is not None), default=Verdict.ADVANCE)


def _after_session(
    way: Way, position: Position, seen: Evidence, given: tuple[Vote, ...], lapse: Lapse | None, done: bool
) -> Ground:
    moved, vote = way.after_lapse(position, lapse)
    given, heavier = given if vote is None else (vote, *given), seen.next_is_heavier
    chosen = deciding(given)
    verdict = most_cautious(given)
    reason = chosen.rule if chosen else "no-vote"
    if way.climbs_first(moved, verdict, heavier=heavier):
        reason = "climb"
    row = way.row(moved, verdict, heavier=heavier, done=done)
    decision = Decision(*row, verdict=verdict, votes=given, reason=reason, heavier=heavier, seen=seen)
    return Ground(decision, moved, verdict, done=done, after_lapse=vote is not None)


def _after_rest(way: Way, position: Position, seen: Evidence, given: tuple[Vote, ...], prescribed: bool) -> Ground:
    """After a rest day: a prescribed one leads back to the day in hand, a programme's own one passes with its date."""
    onward, heavier = position if prescribed or way.together else passed(position), seen.next_is_heavier
    chosen = deciding(given)
    verdict = _worst(given)
    if verdict in (Verdict.ADVANCE, Verdict.REPEAT):
        decision = Decision(*way.hand_out(onward), votes=given, reason="rest-over", heavier=heavier, seen=seen)
        return Ground(decision, onward, verdict, begun=False)
    reason = "coach" if chosen is None else chosen.rule
    row = way.row(onward, verdict, heavier=heavier, done=False)
    decision = Decision(*row, verdict=verdict, votes=given, reason=reason, heavier=heavier, seen=seen)
    return Ground(decision, onward, verdict, begun=False)


_OTHERS = (
    "next_is_heavier",
    "morning",
    "morning_before",
    "judged_before",
    "on_rest",
    "lingering",
    "weeks",
    "over_tightness",
    "tries",
    "light_tries",
    "nerve_before",
)
"""What evidence has beside the answer, in the order in which it is looked at."""


def _looked_at(way: Way, position: Position, past: Past, today: date) -> tuple[Any, ...]:
    """Everything that the rules look at when the row of `today` is made: the answer and `_OTHERS`."""
    source, last, heard = past.source, past.last, past.heard
    said = before = None
    for on, answer in past.mornings:
        if on == today:
            said = answer
        else:
            before = answer
    if before is SETTLED and said is None and source is last:
        said, before = before, None  # it settled on a date without training
    on_rest = last is not None and last.kind in _WITHOUT_SESSION
    weeks = past.weeks(today)
    return (
        heard,
        way.heaviness.next_is_heavier(position.day - (way.together and way.trains), past.clean_days, past.known),
        said,
        before,
        past.judged or (source is not None and _softened(way, source)),
        on_rest,
        past.lingering(),
        weeks if weeks is not None and weeks[1] >= WEEK_FROM else None,
        past.over_tightness,
        past.earlier_tries,
        past.light_tries,
        past.nerve_before,
    )


def _softened(way: Way, entry: Entry) -> bool:
    """A session or test that a report before it turned into a date off: the row keeps its day."""
    return entry.prescribed and entry.kind is REST and entry.day is not None and way.kind_of(entry.day) is not REST


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
        return found._replace(kind=RowKind.REST, position=lighter(position), prescribed=True)
    if reason != "acceptable":
        return None
    return found._replace(kind=RowKind.SESSION, position=lighter(position))
