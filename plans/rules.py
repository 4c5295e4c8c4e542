"""The adaptation rules: evidence in, votes out. Each rule gives at most one vote; the most cautious wins.

The limits follow the pain-monitoring model (Thomee 1997; Silbernagel 2007): pain up to 5 of 10 is allowed in the
work when it has settled by the next morning. Where published wordings disagree on the cut-offs they are settings,
and the hard bounds here hold whatever a programme says.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from enum import IntEnum, StrEnum

from plans.checkin import CheckIn, Completion, FlagState, Kind, Morning, Place, Why

RULE_SET = "1"
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


@dataclass(frozen=True, slots=True)
class Evidence:
    """All that the rules look at when one session's answer is judged.

    `morning` is this date's answer to "how is it now?", `morning_before` the one before it since the session.
    `judged_before`: the answer was judged for an earlier date, only the morning's word is new. `on_rest`: this date
    follows a rest day, on which there was no session to do.
    """

    checkin: CheckIn
    next_is_heavier: bool = False
    morning: Morning | None = None
    morning_before: Morning | None = None
    judged_before: bool = False
    on_rest: bool = False
    settings: Settings = field(default_factory=Settings)


@dataclass(frozen=True, slots=True)
class Vote:
    """One rule's opinion. A verdict of None only reaches the coach. `facts` are the numbers behind the words."""

    rule: str
    verdict: Verdict | None
    tell: Tell | None = None
    facts: Mapping[str, int | str | bool] = field(default_factory=dict)


Rule = Callable[[Evidence], Vote | None]


def is_sore(said: CheckIn) -> bool:
    """Soreness: dull and spread with pain up to 2, or soreness words without a pain number above that."""
    dull = said.kind in (Kind.DULL_BOTH, Kind.DULL_ONE)
    return (said.sore or dull) and (said.pain or 0) <= 2


def hurts_on(said: CheckIn) -> bool:
    """Whether the next morning first asks "how is it now?": after pain of 3 and more here, or soreness."""
    if said.place is Place.ELSEWHERE:
        return (said.pain or 0) >= 6
    return (said.pain or 0) >= 3 or is_sore(said)


def counts_as_done(said: CheckIn) -> bool:
    """Done, or half and more of it when only time cut it short."""
    half_for_time = said.completion is Completion.PART and said.why is Why.TIME and said.half is True
    return said.completion is Completion.DONE or half_for_time


def _votes_on_pain(said: CheckIn) -> bool:
    """Pain elsewhere below 6 without a flag votes nothing."""
    return not (said.place is Place.ELSEWHERE and (said.pain or 0) < 6)


def red_flag(seen: Evidence) -> Vote | None:
    """A confirmed red flag, at any pain."""
    said = seen.checkin
    confirmed = said.flag is not None and said.flag_state is FlagState.CONFIRMED
    if not confirmed and said.kind is not Kind.NERVE:
        return None
    return Vote("red-flag", Verdict.REFER, Tell.NOW, {"flag": str(said.flag or "clinician")})


def unsure_flag(seen: Evidence) -> Vote | None:
    """Words that may be a red flag: nothing is handed out until the client has said yes or no."""
    if seen.checkin.flag is None or seen.checkin.flag_state is not FlagState.UNSURE:
        return None
    return Vote("unsure-flag", Verdict.REFER, Tell.NOW, {"flag": str(seen.checkin.flag)})


def strain_like(seen: Evidence) -> Vote | None:
    """Sharp or sudden pain of 3 and more; a pop, bruise, swelling or no weight on it at any pain."""
    said = seen.checkin
    sharp = said.kind is Kind.SHARP and (said.pain or 0) >= 3
    if not sharp and said.kind is not Kind.POP:
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
    if seen.morning is Morning.WORSE and seen.morning_before is Morning.WORSE:
        return Vote("morning-after", Verdict.REFER, Tell.NOW, {"morning": "worse-twice"})
    if seen.morning is Morning.WORSE:
        return Vote("morning-after", Verdict.REST, Tell.NOW, {"morning": "worse"})
    if seen.morning is Morning.SAME and not seen.judged_before:
        return Vote("morning-after", Verdict.EASE, None, {"morning": "same"})
    return None


def _lifted(seen: Evidence) -> bool:
    return seen.morning is Morning.SETTLED and not seen.next_is_heavier


def acceptable(seen: Evidence) -> Vote | None:
    """Pain of 3 to 5 of any kind not above: the day again, unless it has settled and the next day is not heavier."""
    said = seen.checkin
    if said.pain is None or not seen.settings.clean < said.pain <= seen.settings.acceptable or not _votes_on_pain(said):
        return None
    facts: dict[str, int | str | bool] = {"pain": said.pain, "heavier": seen.next_is_heavier}
    if said.completion is Completion.PART and said.why is Why.TOO_HARD:
        return Vote("acceptable", Verdict.EASE, None, facts)
    return None if _lifted(seen) else Vote("acceptable", Verdict.REPEAT, None, facts)


def sore(seen: Evidence) -> Vote | None:
    """Soreness before a heavier day, or a sharp pain of 1 or 2."""
    said = seen.checkin
    if not _votes_on_pain(said):
        return None
    if said.kind is Kind.SHARP and said.pain in (1, 2):
        return Vote("sore", Verdict.REPEAT, None, {"pain": said.pain, "kind": "sharp"})
    if is_sore(said) and seen.next_is_heavier and seen.morning is not Morning.SETTLED:
        return Vote("sore", Verdict.REPEAT, None, {"kind": "dull", "heavier": True})
    return None


def too_hard(seen: Evidence) -> Vote | None:
    """Only part was done because it was too hard."""
    if seen.checkin.completion is Completion.PART and seen.checkin.why is Why.TOO_HARD:
        return Vote("too-hard", Verdict.EASE)
    return None


def cut_short(seen: Evidence) -> Vote | None:
    """Less than half was done for want of time."""
    said = seen.checkin
    if said.completion is Completion.PART and said.why is Why.TIME and said.half is not True:
        return Vote("cut-short", Verdict.REPEAT)
    return None


def unanswered(seen: Evidence) -> Vote | None:
    """Done, but no pain number came, not even in the morning."""
    if seen.checkin.completion in (Completion.DONE, Completion.PART) and seen.checkin.pain is None:
        return Vote("unanswered", Verdict.REPEAT)
    return None


def not_done(seen: Evidence) -> Vote | None:
    """The session was left out, or nothing was heard of it."""
    if seen.on_rest or seen.checkin.completion in (Completion.DONE, Completion.PART):
        return None
    return Vote("not-done", Verdict.REPEAT, None, {"answered": seen.checkin.completion is not None})


RULES: tuple[Rule, ...] = (
    red_flag,
    unsure_flag,
    strain_like,
    severe,
    excessive,
    morning_after,
    acceptable,
    sore,
    too_hard,
    cut_short,
    unanswered,
    not_done,
)
"""All rules but *clean*, which looks at what the others said; their order decides nothing."""


def _is_clean(seen: Evidence) -> bool:
    said = seen.checkin
    if said.pain is None or not counts_as_done(said):
        return False
    easy = said.pain <= seen.settings.clean or not _votes_on_pain(said)
    return easy or (said.pain <= seen.settings.acceptable and _lifted(seen))


def votes(seen: Evidence) -> tuple[Vote, ...]:
    """Every vote that the evidence calls for; *clean* votes when no other verdict was given. May be empty."""
    rules: tuple[Rule, ...] = (morning_after,) if seen.judged_before else RULES
    given = tuple(vote for rule in rules if (vote := rule(seen)) is not None)
    if not seen.judged_before and _is_clean(seen) and all(vote.verdict is None for vote in given):
        given += (Vote("clean", Verdict.ADVANCE, None, {"pain": seen.checkin.pain or 0}),)
    return given


def most_cautious(given: tuple[Vote, ...]) -> Verdict:
    """The verdict that wins; no vote at all means repeat."""
    return max((vote.verdict for vote in given if vote.verdict is not None), default=Verdict.REPEAT)


def deciding(given: tuple[Vote, ...]) -> Vote | None:
    """The vote whose reason is shown: the first of the most cautious ones."""
    verdict = most_cautious(given)
    return next((vote for vote in given if vote.verdict is verdict), None)
