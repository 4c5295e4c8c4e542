"""How much of the session was done, and why not all of it."""

from __future__ import annotations

from plans.checkin import Completion, Why
from plans.reading_numbers import Form, Pain, figures
from plans.scopes import Said

_GRAVITY = (Completion.DONE, Completion.PART, Completion.NONE)


def completion_in(reply: Said) -> tuple[Completion | None, bool]:
    """The completion, and whether the words leave it clear.

    >>> from plans.scopes import said
    >>> completion_in(said("did about half, no time"))
    (<Completion.PART: 'part'>, True)
    """
    votes = _votes(reply)
    strong = [vote for vote in votes if vote[2] >= 2]
    chosen = strong or [vote for vote in votes if vote[2] == 1]
    if strong and not [vote for vote in votes if vote[2] > 2]:
        chosen = strong
    elif strong:
        chosen = [vote for vote in votes if vote[2] > 2]
    chosen = _corrected(reply, chosen)
    kinds = {vote[1] for vote in chosen}
    clear = not reply.at("hedge") or not kinds
    if not kinds:
        return _implied(reply), True
    if Completion.PART in kinds and Completion.NONE not in kinds:
        return Completion.PART, clear
    if len(kinds) == 1:
        return kinds.pop(), clear
    if Completion.PART in kinds:
        return Completion.PART, False
    return None, False


def _implied(reply: Said) -> Completion | None:
    """A reason alone says that nothing was done: "too busy today", "ill"."""
    others = {"pain", "sore", "dull", "tight"} & reply.concepts
    return Completion.NONE if reply.at("time", "ill", "other-why") and not others and not reply.at("asks") else None


def _votes(reply: Said) -> list[tuple[int, Completion, int]]:
    """(index, completion, weight): 1 a word that only counts alone, 2 yes or no, 3 a plain statement."""
    found: list[tuple[int, Completion, int]] = []
    for index, unit in enumerate(reply.units):
        vote = _vote(reply, index, unit.concept)
        if vote is not None:
            found.append((index, *vote))
    fraction = _fraction(reply)
    return [*found, *([fraction] if fraction else [])]


def _vote(reply: Said, index: int, concept: str) -> tuple[Completion, int] | None:
    denied = reply.negated[index]
    if concept == "done":
        return _done_vote(reply, index, denied)
    if concept == "finish":
        return (Completion.PART if denied else Completion.DONE), 3
    if concept == "do":
        return (Completion.NONE, 3) if denied else None
    if concept == "do-all":
        return (Completion.PART if denied else Completion.DONE), 3
    if concept in ("part", "half", "most", "few"):
        return _part_vote(reply, index, concept, denied)
    if concept == "none":
        return (Completion.DONE if denied else Completion.NONE), 3
    if concept in ("yes", "no-answer"):
        return (Completion.DONE if concept == "yes" else Completion.NONE), 2
    if concept == "neg" and reply.units[index].text == "no" and _stands_alone(reply, index):
        return Completion.NONE, 2
    return (Completion.NONE, 1) if concept == "later" else None


def _done_vote(reply: Said, index: int, denied: bool) -> tuple[Completion, int] | None:
    if reply.concept(index + 1) == "later" or (reply.concept(index + 1) == "yesterday"):
        return Completion.NONE if reply.concept(index + 1) == "later" else Completion.DONE, 1
    return (Completion.NONE if denied else Completion.DONE), 3


def _part_vote(reply: Said, index: int, concept: str, denied: bool) -> tuple[Completion, int] | None:
    if denied and concept != "most":
        return None
    telling = concept == "part" or index == 0 or reply.at("done", "finish", "do", "yes") or reply.concept(index - 1) in _LEADS
    return (Completion.PART, 3) if telling else None


_LEADS = frozenset(("before-number", "about", "pass", "do", "hedge", "comma", "but", "no-answer", "stop", "dash"))


def _stands_alone(reply: Said, index: int) -> bool:
    """A "no" that answers: at the beginning of its clause and followed by its end or by a new thought."""
    if reply.concept(index - 1) not in ("", "comma", "stop", "question", "mark", "face", "because", "but"):
        return False
    after = reply.concept(index + 1)
    speaker = index + 1 < len(reply.units) and reply.units[index + 1].text.split(" ")[0] in ("i", "my", "it", "sorry", "not", "because", "was", "too")
    return index == 0 and (speaker or after in ("", "comma", "stop", "mark", "face", "because", "dash", "later", "time", "none", "colon", "question")) or (
        after in ("", "stop") and reply.concept(index - 1) != "question" and index != 0 and reply.concept(index - 1) != "comma"
    )


def _corrected(reply: Said, votes: list[tuple[int, Completion, int]]) -> list[tuple[int, Completion, int]]:
    marks = reply.at("correction", "actually")
    later = [vote for vote in votes if marks and vote[0] > marks[-1]]
    return later or [vote for vote in votes if not _of_yesterday(reply, vote[0])] or votes


def _of_yesterday(reply: Said, index: int) -> bool:
    return any(reply.concept(i) == "yesterday" and reply.clause[i] == reply.clause[index] for i in range(max(0, index - 6), min(len(reply.units), index + 6)))


def _fraction(reply: Said) -> tuple[int, Completion, int] | None:
    """ "2/3", "4 of 6 exercises": a part; "6/6": done."""
    for figure in figures(reply):
        whole = reply.units[figure.last].value
        if figure.form is Form.FRACTION and whole and 0 < figure.value <= whole and not reply.at("pain"):
            return figure.first, (Completion.DONE if figure.value == whole else Completion.PART), 3
    return None


def half_in(reply: Said) -> bool | None:
    """Of a part: True for half or more, False for less, None when not said."""
    if reply.at("few"):
        return False
    if reply.at("half", "most"):
        return True
    for figure in figures(reply):
        whole = reply.units[figure.last].value
        if figure.form is Form.FRACTION and whole:
            return figure.value >= whole / 2
        if reply.concept(figure.last + 1) == "percent":
            return figure.value >= 50
    return None


def why_in(reply: Said, completion: Completion | None, pain: Pain) -> Why | None:
    """Why it was cut short or left out; None for a session that was done."""
    if completion not in (Completion.PART, Completion.NONE):
        return None
    feels = bool(reply.at("pain", "sharp", "severe", "sore", "dull")) and (pain.value is None or pain.value >= 3)
    for why, said_so in (
        (Why.PAIN, feels),
        (Why.ILL, bool(reply.at("ill", "fever"))),
        (Why.TOO_HARD, bool(reply.at("too-hard"))),
        (Why.TIME, bool(reply.at("time"))),
        (Why.OTHER, bool(reply.at("other-why"))),
    ):
        if said_so:
            return why
    return None
