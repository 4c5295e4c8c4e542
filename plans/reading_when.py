"""Whether a time of day puts the session off or only says when something was: "tonight", "after work", "later"."""

from __future__ import annotations

from plans.glossing import UNKNOWN
from plans.neighbours import NUMBERS, SIGNS
from plans.scopes import Said
from plans.wording import words


def puts_off(reply: Said, index: int) -> bool:
    """Whether the word speaks of a session to come."""
    return not (_tells_when(reply, index) or _is_of_something_else(reply, index))


def tells_when_it_was(reply: Said, index: int) -> bool:
    """ "Done after work", "did my session this evening"; not "all of it tonight"."""
    when, how = reply.units[index + 1].text, reply.units[index].text.split(" ")[0]
    did_it_later = when == "later" and how in ("did", "got", "managed", "finished")
    return when.startswith("after ") or did_it_later or (when in PARTS_OF_DAY and how in _PAST)


_PAST = words("did felt got went managed completed finished made nailed smashed done stretched through")


def _tells_when(reply: Said, index: int) -> bool:
    """ "Did it after school", "still numb this evening": a time of something else than a session to come."""
    clause = reply.clauses[reply.clause[index]]
    start = max((i + 1 for i in clause if i < index and _begins_anew(reply, i)), default=clause.start)
    before = [i for i in clause if start <= i < index]
    if before and reply.units[index - 1].text == "since":
        return True
    if reply.units[index].text in PARTS_OF_DAY:
        was = any({"felt", "was", "went", "were"} & set(reply.units[i].text.split(" ")) for i in before)
        if was or any(reply.units[i].text in _HAS for i in clause if i > index):
            return True
    told = any(
        reply.concept(i) in SIGNS | {"done", "finish", "do-all", "hurts-more"} and not reply.negated[i] for i in before
    )
    past = [reply.units[i].text for i in before if reply.concept(i) == "word" and reply.units[i].text.endswith("ed")]
    return told or any(verb not in _PUT_OFF for verb in past)


def _begins_anew(reply: Said, index: int) -> bool:
    """A dash, or "and I": what follows is a thought of its own."""
    if reply.concept(index) == "and":
        return reply.units[min(index + 1, len(reply.units) - 1)].text.split(" ")[0] in ("i", "will")
    return reply.concept(index) == "dash" and reply.concept(index + 1) not in NUMBERS


def _is_of_something_else(reply: Said, index: int) -> bool:
    """ "Looks like snow again tomorrow", "we had fish and chips tonight": nobody means to stretch."""
    text = reply.units[index].text
    visited = text == "later" and reply.concept(reply.clauses[reply.clause[index]].start) == "someone"
    if not visited and text not in (*PARTS_OF_DAY, "tomorrow") and not text.startswith("after "):
        return False
    clause = reply.clauses[reply.clause[index]]
    told = {word for i in clause for word in reply.units[i].text.split(" ")}
    other = any(
        reply.concept(i) == "other-why" or (reply.concept(i) == "word" and reply.units[i].text not in _MEANT)
        for i in clause
    )
    meant = told & _MEANS - ({"later"} if visited else {"it"} if told & _WEATHER else set())
    return other and not meant


_WEATHER = words("rain rainy raining snow snowing sunny sunshine frost frosty windy storm stormy foggy fog")
_MEANT = words("please coach maybe promise instead definitely morning evening afternoon noon") | {UNKNOWN}
_MEANS = words("will do try going shall stretch stretching session it sorry no not later skip move moved make")
PARTS_OF_DAY = ("tonight", "tonite", "this evening", "this afternoon", "in the evening")
_HAS = ("it is", "it was", "i have", "my", "there is", "hurts", "feels", "felt")
_PUT_OFF = words("moved shifted pushed delayed changed swapped switched saved planned rescheduled scheduled need")
