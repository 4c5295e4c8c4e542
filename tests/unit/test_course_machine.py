"""Any way through a programme, played by a state machine: mornings, answers, corrections, a coach, days away."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from hypothesis import settings as hypothesis_settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from plans.checkin import CheckIn, Completion, Flag, FlagState, Kind, Morning, Place, Why
from plans.course import Decision, Overruling, Position, Word, decide, let_go, soften_today
from plans.ledger import Entry, Question, RowKind
from plans.pace import Pace, pace_of
from plans.past import Past
from plans.replay import replayed
from plans.rules import Settings, Tell, Verdict
from tests.properties import check_step_of_a_group
from tests.unit.test_sample_programmes import SAMPLES

START = date(2026, 3, 2)

pains = st.none() | st.integers(0, 10)
flags = st.sampled_from([(None, None), *[(Flag.SAME_DAY, state) for state in FlagState]])
said = st.builds(
    lambda completion, pain, kind, place, why, half, sore, tight, flag: CheckIn(
        completion=completion,
        pain=pain,
        kind=kind,
        place=place,
        why=why,
        half=half,
        sore=sore,
        odd=kind is not None,
        tightness=tight,
        flag=flag[0],
        flag_state=flag[1],
    ),
    st.none() | st.sampled_from(Completion),
    pains,
    st.none() | st.sampled_from(Kind),
    st.none() | st.sampled_from(Place),
    st.none() | st.sampled_from([Why.TIME, Why.TOO_HARD, Why.PAIN, Why.OTHER]),
    st.none() | st.booleans(),
    st.booleans(),
    pains,
    flags,
)
easy = st.just(CheckIn(completion=Completion.DONE, pain=0))


class AnyCourse(RuleBasedStateMachine):
    """One client's course. The ledger is the only memory, as in the database."""

    @initialize(
        name=st.sampled_from(sorted(SAMPLES)),
        usual=st.integers(0, 4),
        settings=st.builds(Settings, st.integers(0, 2), st.integers(3, 5), st.integers(6, 8)),
    )
    def begins(self, name: str, usual: int, settings: Settings) -> None:
        self.programme = SAMPLES[name]
        self.usual, self.settings = usual, settings
        self.pace: Pace = pace_of(self.programme, START)
        self.position = Position()
        self.rows: list[Entry] = []
        self.today = START
        self.waiting = self.finished = False
        self.overruling: Overruling | None = None
        self.last: Decision | None = None
        self.told = False

    @precondition(lambda self: not self.finished)
    @rule()
    def morning_comes(self) -> None:
        """The next date's row is made, as the tick does."""
        if self.rows:
            self.today += timedelta(days=1)
        if self.waiting:
            self.rows.append(Entry(self.today, RowKind.WAITING))
            self.last = None
            return
        self.last = self._decide()
        self._make(self.last)

    def _decide(self) -> Decision:
        """What the date brings; beside it, what it would bring if the coach had only let go on, or said nothing."""
        said = self.overruling
        self.plain = self._decided(Overruling(Word.GO_ON, said.newer) if said is not None and said.goes_on else None)
        return self._decided(said)

    def _decided(self, overruling: Overruling | None) -> Decision:
        return decide(
            self.programme,
            self.position,
            self.rows,
            self.today,
            settings=self.settings,
            usual=self.usual,
            pace=self.pace,
            overruling=overruling,
        )

    def _check_word(self, decision: Decision) -> None:
        """What a coach says never hands out what the rules hold back for good, and never climbs two levels."""
        said = self.overruling
        if said is None:
            assert decision.heeded is None
            return
        plain = self.plain
        if plain.kind in (RowKind.WAITING, RowKind.ASKING, RowKind.OFF):
            assert decision._replace(heeded=None) == plain._replace(heeded=None)
        if said.word is Word.CLIMB:
            assert decision.position.level >= max(0, min(self.position.level, plain.position.level) - 1)
        if said.word is Word.REST:
            assert decision.position == plain.position
            assert decision.kind in (RowKind.REST, RowKind.WAITING, RowKind.ASKING, RowKind.OFF, None)
        if said.newer and plain.verdict is not None and plain.verdict > Verdict.REPEAT:
            assert decision.position.level >= plain.position.level or plain.kind is None
            assert decision.kind != RowKind.SESSION or plain.kind == RowKind.SESSION

    def _make(self, decision: Decision) -> None:
        past = Past.of(self.rows, self.settings, self.usual)
        check_step_of_a_group(self.position, past, decision, self.today)
        if self.overruling is None or (self.overruling.word is Word.GO_ON and self.overruling.newer):
            self._check_date_off(past, decision)
        again = replayed(decision.as_json())
        assert again is None or {vote.rule for vote in again[1]} <= {vote.rule for vote in decision.votes}
        self.told = self.told or any(vote.tell for vote in decision.votes)
        if decision.kind is None:
            self.finished = True
            return
        self._check_word(decision)
        if decision.kind not in (RowKind.ASKING, RowKind.OFF):
            self.overruling = None
        self.position = decision.position
        self.waiting = decision.kind is RowKind.WAITING
        voted = frozenset(vote.rule for vote in decision.votes)
        row = Entry(self.today, decision.kind, decision.day, self.position.level, decision.prescribed, voted=voted)
        self.rows = [*self.rows, row]

    @precondition(lambda self: self.rows and self.rows[-1].kind is RowKind.SESSION)
    @rule()
    def is_lost(self) -> None:
        """The message of the newest session never arrived."""
        if self.rows[-1].checkin == CheckIn():
            self.rows[-1] = self.rows[-1]._replace(delivered=False)

    @precondition(lambda self: self.rows and self.rows[-1].kind is not RowKind.ASKING)
    @rule(answer=said | easy)
    def answers(self, answer: CheckIn) -> None:
        """Something is said of the newest row, or said anew."""
        row = self.rows[-1]
        if answer.completion is None and row.kind is RowKind.SESSION:
            softer = soften_today(answer, self.position, self.settings, self.usual)
            assert softer is None or softer.position.level >= self.position.level, "a made row only gets more cautious"
        recorded = row.kind is RowKind.MEASURE and answer.completion is Completion.DONE
        self.rows[-1] = row._replace(checkin=answer, recorded=recorded, delivered=True)

    @precondition(lambda self: self.rows and self.rows[-1].kind is RowKind.ASKING and not self.finished)
    @rule(answer=st.sampled_from(Morning), pain=st.integers(0, 10), sure=st.booleans())
    def answers_the_question(self, answer: Morning, pain: int, sure: bool) -> None:
        """The open question gets its answer, and the answer hands out the day."""
        assert self.last is not None
        asked = self.last.question
        found = Past.of(self.rows, self.settings, self.usual).source
        source = next(n for n, row in enumerate(self.rows) if row is found)
        if asked is Question.MORNING:
            self.rows[-1] = self.rows[-1]._replace(morning=answer)
        elif asked is Question.PAIN:
            known = self.rows[source].checkin
            self.rows[source] = self.rows[source]._replace(
                checkin=replace(known, pain=pain, kind=known.kind or (Kind.OTHER if known.odd else None))
            )
        else:
            state = FlagState.CONFIRMED if sure else FlagState.DENIED
            known = replace(self.rows[source].checkin, flag_state=state)
            self.rows[source] = self.rows[source]._replace(checkin=known)
        self.last = self._decide()
        if asked is Question.MORNING and answer is Morning.WORSE:
            self._check_worse()
        before, self.rows = self.rows, self.rows[:-1]
        self._make(self.last)
        if self.last.kind is RowKind.ASKING:
            self.rows = before
        elif len(self.rows) == len(before):
            self.rows[-1] = self.rows[-1]._replace(morning=before[-1].morning)

    def _check_date_off(self, past: Past, decision: Decision) -> None:
        """Between a pain of 6 and more where the programme works and the next training lies a date off."""
        source = past.source
        if source is None or decision.kind not in (RowKind.SESSION, RowKind.MEASURE):
            return
        said = source.checkin
        if (said.pain or 0) >= 6 and said.place is not Place.ELSEWHERE:
            since = [row for row in self.rows if row.on >= source.on]
            assert any(row.kind in (RowKind.REST, RowKind.WAITING) and row.prescribed for row in since)

    def _check_worse(self) -> None:
        """Nothing is trained on a worse morning, whatever the row before was, and the coach is told at once."""
        word = self.overruling
        if word is not None and word.goes_on and not (word.newer and word.word is Word.GO_ON):
            return
        found = self.last if word is not None and word.goes_on else self.plain
        assert found is not None
        assert found.kind not in (RowKind.SESSION, RowKind.MEASURE)
        assert any(vote.rule == "morning-after" and vote.tell is Tell.NOW for vote in found.votes)

    @precondition(lambda self: self.rows and not self.waiting and not self.finished)
    @rule(days=st.integers(1, 40))
    def is_away(self, days: int) -> None:
        """A pause: dates on which nothing is sent."""
        for _ in range(days):
            self.today += timedelta(days=1)
            self.rows.append(Entry(self.today, RowKind.AWAY))
        self.last = None

    @precondition(lambda self: self.rows and not self.waiting)
    @rule(word=st.sampled_from([word for word in Word if word is not Word.GO_ON]), newer=st.booleans(), data=st.data())
    def a_coach_decides(self, word: Word, newer: bool, data: st.DataObject) -> None:
        """A coach's word for the next row, perhaps on top of letting go."""
        day = data.draw(st.integers(1, len(self.programme.days))) if word is Word.MOVE else None
        let_go_before = self.overruling is not None and self.overruling.goes_on
        self.overruling = Overruling(word, newer, day, let_go_before)

    @precondition(lambda self: self.waiting)
    @rule(newer=st.booleans())
    def a_coach_lets_go(self, newer: bool) -> None:
        """Only this lifts waiting; perhaps something was said that the coach has not seen."""
        self.waiting = False
        self.position = let_go(self.position)
        self.overruling = Overruling(Word.GO_ON, newer)

    @invariant()
    def the_ledger_is_whole(self) -> None:
        """One row a date, days of the programme only, nothing handed out while waiting, a referral always told."""
        rows = getattr(self, "rows", [])
        assert len({row.on for row in rows}) == len(rows)
        for row in rows:
            assert row.day is None or 1 <= row.day <= len(self.programme.days)
            assert row.kind is not RowKind.WAITING or row.day is None
        if rows and self.waiting:
            assert rows[-1].kind is RowKind.WAITING
        if rows and self.last is not None and self.last.verdict is Verdict.REFER:
            assert self.last.votes
            assert any(vote.tell for vote in self.last.votes), "who waits for a coach has a coach who knows"
        if rows and not self.finished:
            assert self.pace.together or 1 <= self.position.day <= len(self.programme.days) + 1
            assert self.position.level in (0, 1, 2)


AnyCourse.TestCase.settings = hypothesis_settings(max_examples=150, stateful_step_count=50, deadline=None)
TestAnyCourse = AnyCourse.TestCase
