"""The adaptation rules: evidence in, votes out. Each rule gives at most one vote; the most cautious wins.

The limits follow the pain-monitoring model (Thomee 1997; Silbernagel 2007): pain up to 5 of 10 is allowed in the
work when it has settled by the next morning. Where published wordings disagree on the cut-offs they are settings,
and the hard bounds here hold whatever a programme says.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from enum import IntEnum, StrEnum
from operator import attrgetter

from plans.checkin import CheckIn, Completion, FlagState, Kind, Morning, Place, Why

DONE, PART = Completion.DONE, Completion.PART
DULL, SHARP, NERVE, POP = (Kind.DULL_BOTH, Kind.DULL_ONE), Kind.SHARP, Kind.NERVE, Kind.POP
ELSEWHERE = Place.ELSEWHERE
TIME, TOO_HARD = Why.TIME, Why.TOO_HARD
UNSURE, CONFIRMED, DENIED = FlagState.UNSURE, FlagState.CONFIRMED, FlagState.DENIED
SETTLED, SAME, WORSE = Morning.SETTLED, Morning.SAME, Morning.WORSE
"""Bound once: before Python 3.12, reading a member off its class takes longer than the rest of a rule."""

RULE_SET = "2"
"""Version of the rule set, kept with every decision."""


class Verdict(IntEnum):
    """What follows for the next date; a greater one is more cautious."""

    ADVANCE = 0
    REPEAT = 1
    EASE = 2
    REST = 3
    REFER = 4

    @property
    def word(self) -> str:
        """The verdict's name in lower case, as it is stored and shown."""
        return self.name.lower()


class Tell(StrEnum):
    """When the coach hears of a vote."""

    NOW = "now"
    LIST = "list"


@dataclass(frozen=True, slots=True)
class Settings:
    """Cut-offs on the 0-10 pain scale. A programme may only make them stricter."""

    clean: int = 2
    """Up to here a session counts as clean."""
    acceptable: int = 5
    """Up to here pain repeats the day; above it the client rests."""
    severe: int = 8
    """From here the client waits for the coach."""

    def __post_init__(self) -> None:
        for name, low, high in (
            ("clean", 0, 2),
            ("acceptable", self.clean, 5),
            ("severe", self.acceptable + 1, 8),
        ):
            found = getattr(self, name)
            if not low <= found <= high:
                raise ValueError(
                    f"{name} is {found}; it must be from {low} to {high}, settings only make rules stricter"
                )


class Lingering(StrEnum):
    """Whether a pain or soreness is there too long, and what has not been said of it yet."""

    NO = "no"
    NOTED = "noted"
    REST = "rest"


MOST_USUAL = 4
"""A usual pain above it is no usual pain: the client is referred at joining."""


@dataclass(frozen=True, slots=True)
class Evidence:
    """All that the rules look at when one session's answer is judged; equal evidence gives equal votes.

    `morning` is this date's answer to "how is it now?", `morning_before` the one before it since the session.
    `judged_before`: the answer was judged for an earlier date, only the morning's word is new. `on_rest`: this date
    follows a rest or measure day, on which there was no session to do. `usual` is what the area always feels like
    (0-4). `lingering`, `weeks` (mean pain of last week and this week), `over_tightness` (points above the usual
    tightness), `tries` (how often the day was done before, not passed), `light_tries` (the lightest version done
    and not clean) and `nerve_before` come from the rows before.
    """

    checkin: CheckIn
    next_is_heavier: bool = False
    morning: Morning | None = None
    morning_before: Morning | None = None
    judged_before: bool = False
    on_rest: bool = False
    usual: int = 0
    lingering: Lingering = Lingering.NO
    weeks: tuple[float, float] | None = None
    over_tightness: float = 0
    tries: int = 0
    light_tries: int = 0
    nerve_before: bool = False
    settings: Settings = field(default_factory=Settings)


@dataclass(frozen=True, slots=True)
class Vote:
    """One rule's opinion. A verdict of None only reaches the coach. `facts` are the numbers behind the words."""

    rule: str
    verdict: Verdict | None
    tell: Tell | None = None
    facts: Mapping[str, int | float | str | bool] = field(default_factory=dict)


Rule = Callable[[Evidence], Vote | None]


def is_usual(said: CheckIn, usual: int) -> bool:
    """Whether a pain is no more than a point above what the area always feels like."""
    return bool(usual) and said.pain is not None and said.pain <= usual + 1 and said.place is not ELSEWHERE


def counted_pain(said: CheckIn, usual: int) -> int:
    """The pain as the rows marked with * read it: the usual pain counts as at most 2. Raises ValueError without one."""
    if said.pain is None:
        raise ValueError("no pain number was given")
    return min(said.pain, 2) if is_usual(said, usual) else said.pain


def is_sore(said: CheckIn, usual: int = 0) -> bool:
    """Soreness: dull and spread with pain up to 2, or soreness words without a pain number above that."""
    if is_usual(said, usual):
        return False
    return (said.sore or said.kind in DULL) and (said.pain or 0) <= 2


def hurts_on(said: CheckIn, usual: int = 0) -> bool:
    """Whether the next morning first asks "how is it now?": after pain of 3 and more here, soreness, or nerve signs."""
    if said.kind is NERVE:
        return True
    if said.place is ELSEWHERE:
        return (said.pain or 0) >= 6
    if is_usual(said, usual):
        return False
    return (said.pain or 0) >= 3 or is_sore(said)


def counts_as_done(said: CheckIn) -> bool:
    """Done, or half and more of it when only time cut it short."""
    half_for_time = said.completion is PART and said.why is TIME and said.half is True
    return said.completion is DONE or half_for_time


def _votes_on_pain(said: CheckIn) -> bool:
    """Pain elsewhere below 6 without a flag votes nothing."""
    return not (said.place is ELSEWHERE and (said.pain or 0) < 6)


def red_flag(seen: Evidence) -> Vote | None:
    """A confirmed red flag, at any pain."""
    said = seen.checkin
    if said.flag is None or said.flag_state is not CONFIRMED:
        return None
    return Vote("red-flag", Verdict.REFER, Tell.NOW, {"flag": str(said.flag)})


def unsure_flag(seen: Evidence) -> Vote | None:
    """Words that may be a red flag: nothing is handed out until the client has said yes or no."""
    if seen.checkin.flag is None or seen.checkin.flag_state is not UNSURE:
        return None
    return Vote("unsure-flag", Verdict.REFER, Tell.NOW, {"flag": str(seen.checkin.flag)})


def nerve_signs(seen: Evidence) -> Vote | None:
    """Tingling, numb, shooting: gone on coming out of it, for the first time and mild, eases; all else refers."""
    said = seen.checkin
    asked_back = said.flag is not None and said.flag_state is UNSURE
    if said.kind is not NERVE or asked_back:
        return None
    gone = said.flag_state is DENIED and not seen.nerve_before and said.pain is not None and said.pain <= 2
    if gone:
        return Vote("nerve-signs", Verdict.EASE, Tell.LIST, {"gone": True})
    return Vote("nerve-signs", Verdict.REFER, Tell.NOW, {"gone": said.flag_state is DENIED})


def strain_like(seen: Evidence) -> Vote | None:
    """Sharp or sudden pain of 3 and more; a pop, bruise, swelling or no weight on it at any pain."""
    said = seen.checkin
    sharp = said.kind is SHARP and (said.pain or 0) >= 3
    if not sharp and said.kind is not POP:
        return None
    return Vote("strain-like", Verdict.REFER, Tell.NOW, {"kind": str(said.kind), "pain": said.pain or 0})


def severe(seen: Evidence) -> Vote | None:
    """Pain of 8 and more."""
    pain = seen.checkin.pain
    if pain is None or pain < seen.settings.severe:
        return None
    return Vote("severe", Verdict.REFER, Tell.NOW, {"pain": pain})


def excessive(seen: Evidence) -> Vote | None:
    """Pain of 6 or 7."""
    pain = seen.checkin.pain
    if pain is None or not seen.settings.acceptable < pain < seen.settings.severe or not _votes_on_pain(seen.checkin):
        return None
    return Vote("excessive", Verdict.REST, Tell.NOW, {"pain": pain})


def morning_after(seen: Evidence) -> Vote | None:
    """How it is the next morning: worse, the same, or settled."""
    if seen.morning is WORSE and seen.morning_before is WORSE:
        return Vote("morning-after", Verdict.REFER, Tell.NOW, {"morning": "worse-twice"})
    if seen.morning is WORSE:
        return Vote("morning-after", Verdict.REST, Tell.NOW, {"morning": "worse"})
    if seen.morning is SAME and not seen.judged_before and not is_usual(seen.checkin, seen.usual):
        return Vote("morning-after", Verdict.EASE, None, {"morning": "same"})
    return None


def _lifted(seen: Evidence) -> bool:
    return seen.morning is SETTLED and not seen.next_is_heavier


def acceptable(seen: Evidence) -> Vote | None:
    """Pain of 3 to 5 of any kind not above: the day again, unless it has settled and the next day is not heavier."""
    said = seen.checkin
    if said.pain is None or not _votes_on_pain(said):
        return None
    if not seen.settings.clean < counted_pain(said, seen.usual) <= seen.settings.acceptable:
        return None
    facts: dict[str, int | str | bool] = {"pain": said.pain, "heavier": seen.next_is_heavier}
    if said.completion is PART and said.why is TOO_HARD:
        return Vote("acceptable", Verdict.EASE, None, facts)
    return None if _lifted(seen) else Vote("acceptable", Verdict.REPEAT, None, facts)


def sore(seen: Evidence) -> Vote | None:
    """Soreness before a heavier day, or a sharp pain of 1 or 2."""
    said = seen.checkin
    if not _votes_on_pain(said):
        return None
    if said.kind is SHARP and said.pain in (1, 2):
        return Vote("sore", Verdict.REPEAT, None, {"pain": said.pain, "kind": "sharp"})
    if is_sore(said, seen.usual) and seen.next_is_heavier and seen.morning is not SETTLED:
        return Vote("sore", Verdict.REPEAT, None, {"kind": "dull", "heavier": True})
    return None


def sore_too_long(seen: Evidence) -> Vote | None:
    """The same pain or soreness rising after its first 72 hours, or there on seven dates."""
    if seen.lingering is Lingering.NO:
        return None
    if seen.lingering is Lingering.NOTED:
        return Vote("sore-noted", None, Tell.LIST, {"pain": seen.checkin.pain or 0})
    return Vote("sore-too-long", Verdict.REST, Tell.NOW, {"pain": seen.checkin.pain or 0})


WEEK_FROM = 3
"""Mean pain of a week under which a rise says nothing (own choice)."""


def week_on_week(seen: Evidence) -> Vote | None:
    """Mean pain that rose from last week to this one, and is 3 or more."""
    if seen.weeks is None or seen.weeks[1] < WEEK_FROM:
        return None
    rise = seen.weeks[1] - seen.weeks[0]
    facts: dict[str, int | float | str | bool] = {"before": round(seen.weeks[0], 1), "now": round(seen.weeks[1], 1)}
    if rise >= 2:
        return Vote("week-on-week", Verdict.REST, Tell.NOW, facts)
    return Vote("week-on-week", Verdict.EASE, None, facts) if rise >= 1 else None


def tight(seen: Evidence) -> Vote | None:
    """Three or more points tighter than usual."""
    return Vote("tight", Verdict.REPEAT, None, {"over": seen.over_tightness}) if seen.over_tightness >= 3 else None


def too_hard(seen: Evidence) -> Vote | None:
    """Only part was done because it was too hard."""
    if seen.checkin.completion is PART and seen.checkin.why is TOO_HARD:
        return Vote("too-hard", Verdict.EASE)
    return None


def cut_short(seen: Evidence) -> Vote | None:
    """Less than half was done for want of time."""
    said = seen.checkin
    if said.completion is PART and said.why is TIME and said.half is not True:
        return Vote("cut-short", Verdict.REPEAT)
    return None


def unanswered(seen: Evidence) -> Vote | None:
    """Done, but no pain number came, not even in the morning."""
    if seen.checkin.completion in (DONE, PART) and seen.checkin.pain is None:
        return Vote("unanswered", Verdict.REPEAT)
    return None


def not_done(seen: Evidence) -> Vote | None:
    """The session was left out, or nothing was heard of it."""
    if seen.on_rest or seen.checkin.completion in (DONE, PART):
        return None
    return Vote("not-done", Verdict.REPEAT, None, {"answered": seen.checkin.completion is not None})


RULES: tuple[Rule, ...] = (
    red_flag,
    unsure_flag,
    nerve_signs,
    strain_like,
    severe,
    excessive,
    morning_after,
    acceptable,
    sore,
    sore_too_long,
    week_on_week,
    tight,
    too_hard,
    cut_short,
    unanswered,
    not_done,
)
"""All rules but *stuck* and *clean*, which look at what the others said; their order decides nothing."""

TRIES, LIGHT_TRIES = 2, 3
"""How often a day is done and not passed before it counts as stuck; how often its lightest version is not clean."""


def _is_clean(seen: Evidence) -> bool:
    said = seen.checkin
    if said.pain is None or not counts_as_done(said):
        return False
    pain = counted_pain(said, seen.usual)
    easy = pain <= seen.settings.clean or not _votes_on_pain(said)
    return easy or (pain <= seen.settings.acceptable and _lifted(seen))


def _stuck(seen: Evidence) -> Vote | None:
    """A day done twice and not passed, and again not passed; or the lightest version not clean three times."""
    if seen.on_rest or (seen.tries < TRIES and seen.light_tries < LIGHT_TRIES):
        return None
    return Vote("stuck", Verdict.EASE, Tell.LIST, {"tries": max(seen.tries + 1, seen.light_tries)})


def votes(seen: Evidence) -> tuple[Vote, ...]:
    """Every vote that the evidence calls for; *clean* votes when no other verdict was given. May be empty."""
    if seen.judged_before:
        vote = morning_after(seen)
        return (vote,) if vote is not None else ()
    given = [vote for rule in RULES if (vote := rule(seen)) is not None]
    if _is_clean(seen) and all(vote.verdict is None for vote in given):
        given.append(Vote("clean", Verdict.ADVANCE, None, {"pain": seen.checkin.pain or 0}))
    elif (stuck := _stuck(seen)) is not None:
        given.append(stuck)
    return tuple(given)


def most_cautious(given: tuple[Vote, ...]) -> Verdict:
    """The verdict that wins; no vote at all means repeat."""
    return max((vote.verdict for vote in given if vote.verdict is not None), default=Verdict.REPEAT)


def deciding(given: tuple[Vote, ...]) -> Vote | None:
    """The vote whose reason is shown: the first of the most cautious ones."""
    return max((vote for vote in given if vote.verdict is not None), key=attrgetter("verdict"), default=None)
