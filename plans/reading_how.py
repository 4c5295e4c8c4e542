"""How much of the session was done, and why not all of it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from plans.checkin import Completion, Why
from plans.numbers_written import BODY, WORDS, Figure, Form
from plans.reading_numbers import Pain
from plans.scopes import Said
from plans.wording import words


class _Vote(NamedTuple):
    """What one word says of completion; weight 3 is a plain statement, 2 yes or no, 1 a word that counts alone."""

    place: int
    completion: Completion
    weight: int


def completion_in(reply: Said) -> tuple[Completion | None, bool]:
    """The completion, and whether the words leave it clear.

    >>> from plans.scopes import said
    >>> completion_in(said("did about half, no time"))
    (<Completion.PART: 'part'>, True)
    """
    votes = _corrected(reply, _heaviest(_votes(reply)))
    asks_for = bool(reply.at("stop", "pause", "change-time", "quit-programme"))
    kinds = {vote.completion for vote in votes if vote.weight > 1 or not asks_for}
    if not kinds:
        return None if asks_for else _implied(reply), True
    spoken = {reply.sentence[vote.place] for vote in votes}
    clear = not any(_hedges(reply, index) for index in reply.at("hedge") if reply.sentence[index] in spoken)
    if Completion.PART in kinds and len(kinds) == 2:
        return Completion.PART, clear
    if len(kinds) == 1:
        return kinds.pop(), clear
    return (Completion.PART if Completion.PART in kinds else None), False


def _hedges(reply: Said, index: int) -> bool:
    """Whether a "maybe" is about more than the number beside it."""
    return not {reply.concept(i) for i in range(index - 2, index + 3)} & {"number", "number-word"}


def _heaviest(votes: list[_Vote]) -> list[_Vote]:
    """A plain statement outweighs a yes or no, which outweighs a "later"."""
    most = max((vote.weight for vote in votes), default=0)
    return [vote for vote in votes if vote.weight == most]


MUCH = 12
"""Words of a reply that says a reason and nothing else; in a longer one the reason may be of anything."""


def _implied(reply: Said) -> Completion | None:
    """A reason alone says that nothing was done: "too busy today", "ill"."""
    if any(i and reply.units[i - 1].text == "too" for i in reply.at("sore", "pain", "dull")):
        return Completion.NONE
    if sum(unit.concept != "pass" for unit in reply.units) > MUCH:
        return None
    others = {"pain", "sore", "dull", "tight", "swell", "pop", "bruise", "question"} & reply.concepts
    return (
        Completion.NONE
        if reply.at("time", "ill", "other-why", "fever") and not others and not reply.at("asks")
        else None
    )


def _votes(reply: Said) -> list[_Vote]:
    found: list[_Vote] = []
    for index in range(len(reply.units)):
        read = _vote(reply, index)
        asked = _in_question(reply, index) and not (reply.concept(index) in ("half", "most") and reply.at("hedge"))
        if read is not None and (read[0] is Completion.DONE or not asked):
            found.append(_Vote(index, *read))
    return [*found, *_shares(reply), *_exceptions(reply)]


_SAID = {
    "finish": (Completion.DONE, 3),
    "do-all": (Completion.DONE, 3),
    "time-part": (Completion.PART, 3),
    "none": (Completion.NONE, 3),
    "yes": (Completion.DONE, 2),
    "no-answer": (Completion.NONE, 2),
    "later": (Completion.NONE, 1),
}
"""What a concept says of completion, and its weight."""

_DENIED = {
    "finish": (Completion.PART, 3),
    "do-all": (Completion.PART, 3),
    "do": (Completion.NONE, 3),
    "none": (Completion.DONE, 3),
}
"""The same under a "no"."""


def _vote(reply: Said, index: int) -> tuple[Completion, int] | None:
    concept, denied = reply.concept(index), reply.negated[index]
    if denied and concept in _DENIED:
        return _DENIED[concept]
    if concept in _SAID:
        return _SAID[concept]
    if concept == "done":
        return _done_vote(reply, index, denied)
    if concept in ("part", "half", "most", "few") and not reply.units[index].text.startswith("not quite r"):
        return _part_vote(reply, index, concept, denied)
    return _vote_of_word(reply, index)


def _leaves_the_rest(reply: Said, index: int) -> bool:
    """ "Did the calf ones, not the others": a "not the …" after something that was done, and no pain in it."""
    if reply.units[index].text != "not" or reply.units[min(index + 1, len(reply.units) - 1)].text not in ("the", "all"):
        return False
    sentence = [i for i in range(len(reply.units)) if reply.sentence[i] == reply.sentence[index]]
    did = any(reply.units[i].text in ("did", "managed", "done", "made") for i in sentence if i < index)
    after = [reply.concept(i) for i in range(index, min(index + 5, len(reply.units)))]
    return did and not {"pain", "sore", "dull", "tight", "stretch-feeling", "number"} & set(after)


def _vote_of_word(reply: Said, index: int) -> tuple[Completion, int] | None:
    """Small words that say it only in their place: "no", "did not", "did … only", "did day 8"."""
    text = reply.units[index].text
    if text == "no" and _stands_alone(reply, index):
        return Completion.NONE, 2
    if (
        text == "no"
        and reply.concept(index + 1) in ("", "end")
        and reply.concept(index - 1) in ("so", "but", "actually")
    ):
        return Completion.NONE, 4
    if (
        text == "not"
        and reply.concept(index + 1) in ("", "end", "comma", "because", "but", "so")
        and reply.units[index - 1].text in _HELPERS
    ):
        return Completion.NONE, 3
    if _leaves_the_rest(reply, index):
        return Completion.PART, 3
    if text in _MADE and _is_of_the_work(reply, index):
        return Completion.DONE, 3
    if text == "only" and _only_some(reply, index):
        return Completion.PART, 3
    if text.startswith("could not manage"):
        return Completion.PART, 1
    if text == "did" and _did_the_work(reply, index):
        return Completion.DONE, 3
    return (Completion.DONE, 1) if text == "did" and _did_something(reply, index) else None


_HELPERS = words("did have could will do am can")


def _in_question(reply: Said, index: int) -> bool:
    """Whether the clause asks or supposes: "can I skip a day?", "if I miss one"."""
    clause = reply.clauses[reply.clause[index]]
    asking = any(reply.concept(i) == "question" for i in clause) and clause.start != index
    supposing = any(reply.units[i].text in ("if", "what if") for i in clause)
    return asking or supposing or reply.concept(clause.start) == "asks"


_MADE = words("made maked realised realized performed executed practised practiced did managed ok okay")
_WORK = words("stretches stretch session exercises exercise routine moves movements programme program workout training")


def _is_of_the_work(reply: Said, index: int) -> bool:
    """ "The exercises are made", "session is realised", "made the programme anyway"."""
    near = range(max(0, index - 4), min(index + 4, len(reply.units)))
    told = any(
        reply.units[i].text.split(" ")[-1] in _WORK and reply.clause[i] == reply.clause[index] and not reply.negated[i]
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
        if reply.concept(here) in ("counted", "number", "harmless", "number-word", "one"):
            return True
        if reply.units[here].text not in ("the", "my", "all", "today", "some", "a"):
            return False
    return False


def _only_some(reply: Said, index: int) -> bool:
    """ "Did the easy ones only": a part, unless the clause speaks of pain."""
    clause = reply.clauses[reply.clause[index]]
    told = any(reply.units[i].text in ("did", "managed", "do", "got", "could", "finished", "made") for i in clause)
    if reply.units[index - 1].text in ("it was", "it is", "was", "is"):
        return False
    return told and not any(reply.concept(i) in ("pain", "sore") for i in clause)


def _done_vote(reply: Said, index: int, denied: bool) -> tuple[Completion, int] | None:
    if reply.concept(index + 1) == "later" or (reply.concept(index + 1) == "yesterday"):
        return Completion.NONE if reply.concept(index + 1) == "later" else Completion.DONE, 1
    return (Completion.NONE if denied else Completion.DONE), 3


def _part_vote(reply: Said, index: int, concept: str, denied: bool) -> tuple[Completion, int] | None:
    if denied and concept != "most":
        return None
    telling = (
        concept == "part" or index == 0 or reply.at("done", "finish", "do", "yes") or reply.concept(index - 1) in _LEADS
    )
    return (Completion.PART, 2 if reply.units[index].text in _WEAK else 3) if telling else None


_WEAK = frozenset(
    (
        "half way",
        "halfway",
        "did the first",
        "first round only",
        "started",
        "stopped",
        "only the",
        "just two",
        "nothing else",
        "nothing more",
    )
)
"""Words that say "a part" only where nobody says plainly that all was done."""

_LEADS = words("before-number about pass do hedge comma but no-answer end dash")


def _stands_alone(reply: Said, index: int) -> bool:
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
_AFTER_NO = words("comma end mark face because dash later time none colon question") | {""}


def _corrected(reply: Said, votes: list[_Vote]) -> list[_Vote]:
    marks = reply.at("correction", "actually")
    later = [vote for vote in votes if marks and vote.place > marks[-1]]
    return later or [vote for vote in votes if not _of_yesterday(reply, vote.place)] or votes


def _of_yesterday(reply: Said, index: int) -> bool:
    return any(
        reply.concept(i) == "yesterday" and reply.clause[i] == reply.clause[index]
        for i in range(max(0, index - 6), min(len(reply.units), index + 6))
    )


def _shares(reply: Said) -> Iterator[_Vote]:
    """ "2/3", "4 of 6 exercises", "60 %": a part; "6/6", "100 %": done."""
    for figure, share in _parts_of_a_whole(reply):
        if 0 <= share <= 1 and not _is_of_pain(reply, figure):
            whole = Completion.DONE if share == 1 else Completion.NONE if share == 0 else Completion.PART
            yield _Vote(figure.first, whole, 3)


def _parts_of_a_whole(reply: Said) -> Iterator[tuple[Figure, float]]:
    for figure in reply.figures:
        last = reply.units[figure.last]
        whole = last.value if last.value is not None else WORDS.get(last.text)
        if figure.form is Form.FRACTION and whole:
            yield figure, figure.value / whole
        elif reply.concept(figure.last + 1) == "percent" or (
            reply.units[figure.last + 1 : figure.last + 2] and reply.units[figure.last + 1].text == "percent"
        ):
            yield figure, figure.value / 100


def _is_of_pain(reply: Said, figure: Figure) -> bool:
    """Whether a share stands beside a pain and is no share of the session: "pain 3/5"."""
    if reply.concept(figure.last + 1) in ("counted", "unit") or reply.concept(figure.first - 1) in (
        "before-number",
        "do",
    ):
        return False
    return any(reply.concept(i) in ("pain", "sore", "tight") for i in range(figure.first - 5, figure.last + 3))


def _exceptions(reply: Said) -> Iterator[_Vote]:
    """ "All done except the lunges"; not "no pain except in the knee"."""
    for index in reply.at("but"):
        if reply.units[index].text in ("except", "apart from", "other than"):
            before = {reply.concept(i) for i in range(index - 3, index)}
            if before & {"done", "finish", "do-all", "everything", "all"}:
                yield _Vote(index, Completion.PART, 3)
        elif _leaves_out(reply, index):
            yield _Vote(index, Completion.PART, 3)


def _leaves_out(reply: Said, index: int) -> bool:
    """ "Got through all but the lunges", "did everything but those"; not "did all but my hip was hurting"."""
    if reply.units[index].text != "but" or not index or not reply.units[index - 1].text.endswith(("all", "everything")):
        return False
    clause = reply.clauses[reply.clause[index + 1]] if index + 1 < len(reply.units) else range(0)
    after = reply.units[index + 1].text.split(" ")[0] if clause else ""
    told = any(reply.concept(i) in ("pain", "sore", "dull", "tight", "was") or reply.concept(i) in BODY for i in clause)
    return after in ("the", "those", "these", "one", "two", "that", "them") and not told


def half_in(reply: Said) -> bool | None:
    """Of a part: True for half or more, False for less, None when not said."""
    if reply.at("few"):
        return False
    if reply.at("half", "most"):
        return True
    return next((share >= 0.5 for _, share in _parts_of_a_whole(reply)), None)


def _hurts_too_much(reply: Said, completion: Completion, pain: Pain) -> bool:
    """A pain of 3 and more beside a session that was left out, or as what a "so" refers to."""
    told = completion is Completion.NONE or bool(reply.at("so", "because"))
    return pain.value is not None and pain.value >= 3 and told


def _tells_why(reply: Said) -> bool:
    """Whether a clause of its own, or what follows "because" or "so", tells of something else than the session."""
    if reply.at("hedge", "correction"):
        return False
    if any(_tells(reply, range(max(0, i - 8), i)) for i in reply.at("so")):
        return True
    if any(_tells(reply, range(i + 1, min(i + 8, len(reply.units)))) for i in reply.at("because")):
        return True
    voted = {reply.clause[vote.place] for vote in _votes(reply)}
    told = [_tells(reply, clause) for number, clause in enumerate(reply.clauses) if number not in voted]
    return max(told, default=0) >= 2 or bool(reply.at("someone"))


def _tells(reply: Said, where: range) -> int:
    """How many words there speak of something that the lexicon does not know, or of somebody."""
    return sum(reply.concept(i) in ("word", "someone", "harmless") and reply.units[i].text not in _EMPTY for i in where)


_EMPTY = words("today coach sorry please me him her us they we he she its again rest")


def why_in(reply: Said, completion: Completion | None, pain: Pain) -> Why | None:
    """Why it was cut short or left out; None for a session that was done."""
    if completion not in (Completion.PART, Completion.NONE):
        return None
    feels = bool(reply.at("pain", "sharp", "severe", "sore", "dull")) and (pain.value is None or pain.value >= 3)
    for why, said_so in (
        (Why.ILL, bool(reply.at("fever"))),
        (Why.PAIN, feels),
        (Why.ILL, bool(reply.at("ill"))),
        (Why.TOO_HARD, bool(reply.at("too-hard"))),
        (Why.TIME, bool(reply.at("time", "time-part"))),
        (Why.PAIN, _hurts_too_much(reply, completion, pain)),
        (Why.OTHER, bool(reply.at("other-why")) or _tells_why(reply)),
    ):
        if said_so:
            return why
    return None
