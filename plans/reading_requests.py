"""What a client asks for, and their answer to "how is it now?"."""

from __future__ import annotations

from plans.checkin import Morning
from plans.scopes import Said
from plans.wording import words

_ORDER = ("quit-programme", "health-changed", "change-time", "pause", "lighter", "shorter", "today")


def request_in(reply: Said) -> str | None:
    """The request of a reply, or None. "Stop" and "help" only count when they are the whole thought."""
    for concept in _ORDER:
        if reply.at(concept):
            return concept
    for concept in ("stop", "help"):
        plainly = any(
            len(reply.units[i].text.split()) > 2 or i == 0 or _SENDING & set(reply.units[i].text.split())
            for i in reply.at(concept)
        )
        if reply.at(concept) and (len(reply.units) <= 4 or (concept == "stop" and plainly)):
            return concept
    if _only_a_time(reply):
        return "change-time"
    if _asks(reply):
        return "question"
    return "thanks" if reply.at("thanks") else None


_SENDING = words("sending messaging texting messages texts messaging")


def _only_a_time(reply: Said) -> bool:
    """ "7am please", "earlier please, like 5:45", "can we do 6 am from monday on": a time that is asked for."""
    told = [
        word
        for unit in reply.units
        for word in unit.text.split(" ")
        if unit.concept not in ("end", "comma", "question")
    ]
    asked = bool({"please", "instead", "kindly"} & set(told)) or told[:2] in (["can", "we"], ["could", "we"])
    timed = any(
        unit.concept in ("clock", "number", "number-word") or unit.text in ("earlier", "later") for unit in reply.units
    )
    hour = any(
        unit.concept == "clock" or unit.text in ("am", "pm", "oclock", "earlier", "later") for unit in reply.units
    )
    return (
        asked and timed and hour and len(told) <= 12 and all(word in _OF_A_TIME or word[:1].isdigit() for word in told)
    )


_OF_A_TIME = words(
    "please instead kindly can could we do it have at around about like by am pm oclock earlier later from "
    "monday tuesday "
    "wednesday thursday friday saturday sunday tomorrow on in the morning evening afternoon half past quarter to "
    "make that "
    "a bit hour "
    "two three four five six seven eight nine ten eleven twelve now would be better you i want prefer"
)


def _asks(reply: Said) -> bool:
    return (
        any(not _is_answered(reply, i) for i in reply.at("question"))
        or (reply.concept(0) == "asks" and reply.units[0].text not in ("when", "where"))
        or (reply.units[:1] != () and reply.units[0].text == "should i")
    )


def _is_answered(reply: Said, index: int) -> bool:
    """ "Pain? I'd say nine": a question that the writer asks to answer it."""
    clause = reply.clauses[reply.clause[index]]
    return (
        len(clause) <= 3
        and index + 1 < len(reply.units)
        and reply.concept(clause.start) in ("pain", "sore", "done", "finish")
    )


def morning_in(reply: Said) -> Morning | None:
    """Settled, the same or worse; "a bit better" and "still" are the same."""
    if any(not reply.negated[i] for i in reply.at("worse", "hurts-more")):
        return Morning.WORSE
    if reply.at("same", "bit-better") or (reply.at("lasts") and reply.at("sore", "pain", "dull")):
        return Morning.SAME
    return Morning.SETTLED if reply.at("settled", "gone") and not reply.at("lasts") else None
