"""Small words that say how much was done only in their place: "no", "did not", "did … only", "did day 8"."""

from __future__ import annotations

from plans.checkin import Completion
from plans.scopes import Said
from plans.wording import words


def _leaves_the_rest(reply: Said, index: int) -> bool:
    """ "Did the calf ones, not the others": a "not the …" after something that was done, and no pain in it."""
    if reply.units[index].text != "not" or reply.units[min(index + 1, len(reply.units) - 1)].text not in ("the", "all"):
        return False
    sentence = [i for i in range(len(reply.units)) if reply.sentence[i] == reply.sentence[index]]
    did = any(
        reply.units[i].text.split(" ")[0] in ("did", "managed", "done", "made", "finished", "completed")
        for i in sentence
        if i < index
    )
    after = [reply.concept(i) for i in range(index, min(index + 5, len(reply.units)))]
    place = {word for unit in reply.units[index : index + 5] for word in unit.text.split(" ")} & _PLACES
    return did and not place and not {"pain", "sore", "dull", "tight", "stretch-feeling", "number"} & set(after)


_PLACES = words("place spot area zone region point")


def _is_whole(reply: Said, index: int) -> bool:
    return index < len(reply.units) and reply.units[index].text in ("session", "stretching", "exercises", "programme")


def vote_of_word(reply: Said, index: int) -> tuple[Completion, int] | None:
    """Small words that say it only in their place: "no", "did not", "did … only", "did day 8"."""
    text = reply.units[index].text
    if text == "no":
        return _vote_of_no(reply, index)
    if text.split(" ")[-1] in WORK | {"stretching"} and is_praised(reply, index):
        return Completion.DONE, 1
    if text == "not" and (read := _vote_of_not(reply, index)) is not None:
        return read
    if text in _MADE and _is_of_the_work(reply, index):
        return (Completion.NONE if reply.units[index - 1].text == "not" else Completion.DONE), 3
    if text == "only" and _only_some(reply, index):
        return Completion.PART, 3
    if text.startswith("could not manage"):
        return Completion.PART, 1
    if text == "did" and _did_the_work(reply, index):
        return Completion.DONE, 3
    return (Completion.DONE, 1) if text == "did" and _did_something(reply, index) else None


def is_praised(reply: Said, index: int) -> bool:
    """ "The session was easy for me today", "stretching felt really fab"."""
    if reply.concept(index + 1) != "was" and (
        index + 1 >= len(reply.units) or reply.units[index + 1].text not in _FELT
    ):
        return False
    after = range(index + 2, min(index + 5, len(reply.units)))
    first = next((i for i in after if reply.units[i].text not in _VERY), None)
    praised = first is not None and (reply.concept(first) in ("fine", "pleasant") or reply.units[first].text in _PRAISE)
    led = reply.units[index - 1].text.split(" ")[-1] if index else ""
    return praised and first is not None and not reply.negated[first] and led not in _OF_OTHER_DAYS


_FELT = words("felt went was is were")
_VERY = words("really very so quite pretty super rather absolutely actually surprisingly nice and")
_PRAISE = words(
    "fab fabulous smooth brilliant easy great good nice lovely fine okay ok alright super wonderful perfect"
)
_OF_OTHER_DAYS = words("last yesterday next first second third previous yesterdays")


def _vote_of_no(reply: Said, index: int) -> tuple[Completion, int] | None:
    """ "No, sorry", "… so no", "done? no", "no session", "number 3 no"."""
    before, after = reply.concept(index - 1), reply.concept(index + 1)
    if stands_alone(reply, index):
        return Completion.NONE, 2
    if after in ("", "end") and (before in ("so", "but", "actually") or reply.units[index - 1].text == "honestly"):
        return Completion.NONE, 4
    if before == "number" and reply.units[index - 2].text == "number":
        return Completion.PART, 3
    if after in ("", "end", "comma", "because") and reply.units[index - 1].text in (
        "third",
        "second",
        "fourth",
        "fifth",
        "last",
    ):
        return Completion.PART, 3
    if before == "question" and _asked(reply, index) & {"done", "finish", "do"}:
        return Completion.NONE, 4
    return (Completion.NONE, 3) if _refuses(reply, index) else None


def _vote_of_not(reply: Said, index: int) -> tuple[Completion, int] | None:
    """ "I did not", "did the calf ones, not the others", "did not the session"."""
    helper = reply.units[index - 1].text
    if reply.concept(index + 1) in ("", "end", "comma", "because", "but", "so") and helper in _HELPERS:
        return _answered(reply, index), 2 if helper == "am" else 3
    if _leaves_the_rest(reply, index):
        return (Completion.NONE if _is_whole(reply, index + 2) else Completion.PART), 3
    return None


def _refuses(reply: Said, index: int) -> bool:
    """ "So no exercise", "no session": the whole clause, and nothing is said of that exercise."""
    what = reply.units[index + 1].text if index + 1 < len(reply.units) else ""
    ends = reply.concept(index + 2) in ("", "end", "comma", "now", "mark", "face", "because")
    return what in ("exercise", "session", "workout", "stretching", "stretch", "training") and ends


def _asked(reply: Said, index: int) -> set[str]:
    """The concepts of the question before the clause of a word."""
    number = reply.clause[index] - 1
    clause = reply.clauses[number] if number >= 0 else range(0)
    return {reply.concept(i) for i in clause} if clause and reply.concept(clause[-1]) == "question" else set()


def _answered(reply: Said, index: int) -> Completion:
    """ "I did not" is none; after "did I skip it?" and "almost skipped it" it is done."""
    number = reply.clause[index] - 1
    before = reply.clauses[number] if number >= 0 else range(0)
    wished = any(reply.units[i].text.startswith(_WISHED) for i in before)
    skipped = any("skip" in reply.units[i].text for i in before) and reply.concept(before[-1]) in ("question", "end")
    skipped = skipped or (wished and reply.units[index].text == "not" and reply.units[index - 1].text == "did")
    last = {unit.text for unit in reply.units[max(0, index - 8) : index]}
    rest = last & {"third", "fourth", "fifth", "rest", "others", "ones"}
    return Completion.DONE if skipped else Completion.PART if rest else Completion.NONE


_WISHED = (
    "felt like quitting",
    "felt like stopping",
    "felt like skipping",
    "thought about",
    "thought i would",
    "wanted to skip",
)


_HELPERS = words("did have could will do am can")


_MADE = words("made maked realised realized performed executed practised practiced did managed ok okay")


WORK = words("stretches stretch session exercises exercise routine moves movements programme program workout training")


def _is_of_the_work(reply: Said, index: int) -> bool:
    """ "The exercises are made", "session is realised", "made the programme anyway"."""
    near = range(max(0, index - 4), min(index + 4, len(reply.units)))
    told = any(
        reply.units[i].text.split(" ")[-1] in WORK and reply.clause[i] == reply.clause[index] and not reply.negated[i]
        for i in near
    )
    quiet = reply.units[index].text not in ("did", "managed") and not reply.at("half", "most", "few", "part")
    return told and quiet and not reply.negated[index]


def _did_the_work(reply: Said, index: int) -> bool:
    """ "Did your stretches anyway", "did them all": the whole of it, with no share of it named."""
    for here in range(index + 1, min(index + 5, len(reply.units))):
        last = reply.units[here].text.split(" ")[-1]
        if last in ("stretches", "session", "exercises", "routine", "moves", "them", "programme", "workout"):
            return reply.concept(here + 1) not in ("before-number",) and not reply.at("half", "most", "few")
        if reply.units[here].text not in ("the", "your", "my", "all", "of", "these", "those", "whole", "full", "every"):
            return False
    return False


def _did_something(reply: Said, index: int) -> bool:
    """ "Did day 8", "did the neck rolls"; not "did you" or "did not"."""
    if reply.concept(index + 1) in ("", "end", "but", "comma") and reply.concept(index - 1) != "question":
        return True
    for here in range(index + 1, min(index + 4, len(reply.units))):
        if (
            reply.concept(here) in ("counted", "number", "harmless", "number-word", "one")
            or reply.units[here].text == "level"
        ):
            return reply.units[index - 1].text not in ("it", "something") if index else True
        if reply.units[here].text not in ("the", "my", "all", "today", "some", "a"):
            return False
    return False


def _only_some(reply: Said, index: int) -> bool:
    """ "Did the easy ones only": a part, unless the clause speaks of pain."""
    clause = reply.clauses[reply.clause[index]]
    told = any(reply.units[i].text in _WORKED for i in clause)
    if reply.units[index - 1].text in ("it was", "it is", "was", "is"):
        return False
    return told and not any(reply.concept(i) in ("pain", "sore") for i in clause)


_WORKED = words("did managed do got could finished made stretched")


def stands_alone(reply: Said, index: int) -> bool:
    """A "no" that answers: it opens the reply before a new thought, or it is a sentence of its own."""
    after = reply.concept(index + 1)
    if index == 0:
        speaker = len(reply.units) > 1 and reply.units[1].text.split(" ")[0] in _NEW_THOUGHT
        return speaker or after in _AFTER_NO
    return after in ("", "end") and reply.concept(index - 1) in (
        "end",
        "mark",
        "face",
        "because",
        "but",
        "yes",
        "comma",
    )


_NEW_THOUGHT = words("i my it sorry not because was too")


_AFTER_NO = words("comma end mark face because dash later time none colon question and") | {""}
