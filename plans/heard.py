"""What an answer comes to beside a client's settings and usual pain: worked out once for all answers that are equal."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache, partial

from plans.checkin import CheckIn, Completion, FlagState, Kind, Place
from plans.rules import Evidence, Settings, Verdict, counted_pain, counts_as_done, hurts_on, is_sore, votes

AT_LEAST_PART = (Completion.DONE, Completion.PART)


@dataclass(frozen=True, slots=True, eq=False)
class Heard:
    """One answer and what follows from it alone. It is equal to itself only, which makes it a fast key."""

    said: CheckIn
    settings: Settings
    usual: int
    done: bool
    """Done at least in part."""
    clean: bool
    """Done with no more pain than counts as clean."""
    hurts: bool
    """The next morning asks "how is it now?"."""
    sore: bool
    opens: bool
    """Something of it may have to be asked back; when not, no question comes of it."""
    reports: bool
    """It is judged though there was no session."""
    felt: int | None
    """Points of pain or soreness where the programme works; soreness without a number is 1. None: nothing was said."""
    well: bool
    """That is no more than usual."""
    counted: int | None
    """Points of pain there, as a week counts them."""
    nerves_denied: bool
    """Nerve signs that went away."""
    weight: Verdict
    """The most cautious verdict that it calls for by itself, apart from a session that was not done."""


def _heard(said: CheckIn, settings: Settings, usual: int) -> Heard:
    done, hurts, here = said.completion in AT_LEAST_PART, hurts_on(said, usual), said.place is not Place.ELSEWHERE
    unfinished = (done and said.pain is None) or (said.odd and (said.pain is None or said.kind is None))
    felt = said.pain if said.pain is not None else 1 if said.sore else None
    counted = counted_pain(said, usual) if said.pain is not None else None
    given = votes(Evidence(said, usual=usual, settings=settings, on_rest=True))
    return Heard(
        said,
        settings,
        usual,
        done=done,
        clean=counts_as_done(said) and counted is not None and counted <= settings.clean,
        hurts=hurts,
        sore=is_sore(said, usual),
        opens=hurts or unfinished or said.flag_state is FlagState.UNSURE,
        reports=hurts or said.odd or said.flag is not None,
        felt=felt if here else None,
        well=felt is not None and felt <= usual and not said.sore,
        counted=counted if here else None,
        nerves_denied=said.kind is Kind.NERVE and said.flag_state is FlagState.DENIED,
        weight=max((vote.verdict for vote in given if vote.verdict is not None), default=Verdict.ADVANCE),
    )


@lru_cache(maxsize=64)
def hearing(settings: Settings, usual: int) -> Callable[[CheckIn], Heard]:
    """How one client's answers are heard; equal answers are the same object."""
    return lru_cache(maxsize=10_000)(partial(_heard, settings=settings, usual=usual))
