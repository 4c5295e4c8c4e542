"""What of the session was done or left out, counted or named: shares, exceptions, "first two only"."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from plans.checkin import Completion
from plans.counted import verdicts
from plans.neighbours import SIGNS
from plans.numbers_written import BODY, WORDS, Figure, Form
from plans.scopes import Said
from plans.wording import words


class Vote(NamedTuple):
    """What one word says of completion; weight 3 is a plain statement, 2 yes or no, 1 a word that counts alone."""

    place: int
    completion: Completion
    weight: int


def votes_of_parts(reply: Said) -> Iterator[Vote]:
    """What shares, counts and exceptions say of completion."""
    yield from _shares(reply)
    yield from _exceptions(reply)
    yield from _counted(reply)
    yield from _yes_and_no(reply)
    yield from _numbered(reply)


def _numbered(reply: Said) -> Iterator[Vote]:
    """ "Exercises 1 to 6 yes, 7 and 8 no": a part."""
    found = verdicts(reply.units)
    if {verdict.done for verdict in found} >= {True, False}:
        yield from (Vote(verdict.place, Completion.PART, 4) for verdict in found if verdict.done is False)


def _yes_and_no(reply: Said) -> Iterator[Vote]:
    """ "The arms yes, the legs no": a part; each answers what stands right before it."""
    for yes in reply.at("yes"):
        named = yes > 0 and reply.concept(yes - 1) in _NAMED
        for no in range(yes + 2, min(yes + 8, len(reply.units))):
            ends = reply.concept(no + 1) in ("", "end", "comma", "because", "but")
            if named and ends and reply.units[no].text in ("no", "not", "nope") and reply.concept(no - 1) in _NAMED:
                yield Vote(no, Completion.PART, 4)


_NAMED = BODY | {"counted", "unit", "one", "word", "harmless", "number-word"}


def _shares(reply: Said) -> Iterator[Vote]:
    """ "2/3", "4 of 6 exercises", "60 %": a part; "6/6", "100 %": done."""
    for figure, share in _parts_of_a_whole(reply):
        if 0 <= share <= 1 and not _is_of_pain(reply, figure):
            whole = Completion.DONE if share == 1 else Completion.NONE if share == 0 else Completion.PART
            yield Vote(figure.first, whole, 3)


def _parts_of_a_whole(reply: Said) -> Iterator[tuple[Figure, float]]:
    for figure in reply.figures:
        last = reply.units[figure.last]
        whole = last.value if last.value is not None else WORDS.get(last.text)
        if figure.form is Form.FRACTION and whole:
            yield figure, figure.value / whole
        elif _is_percent(reply, figure):
            yield figure, figure.value / 100


def _counted(reply: Said) -> Iterator[Vote]:
    """ "All 4 rounds", "the whole 10 minutes": done; "first two only", "the third was too hard": a part."""
    for figure in reply.figures:
        before = reply.units[figure.first - 1].text.split(" ")[-1] if figure.first else ""
        clause = reply.clauses[reply.clause[figure.first]]
        texts = {reply.units[i].text for i in clause}
        if (
            before in ("all", "whole", "full")
            and reply.concept(figure.last + 1) in ("unit", "counted")
            and (not _is_of_other_things(reply, figure))
        ):
            yield Vote(figure.first, Completion.DONE, 2)
        elif before == "first" and (texts & _LIMITS or (texts & {"managed", "did", "made"} and not _tells_rest(reply))):
            yield Vote(figure.first, Completion.PART, 3)
        elif before == "got" and reply.concept(figure.last + 1) == "done":
            yield Vote(figure.first, Completion.PART, 4)
        elif (
            _is_only(reply, figure.first - 1)
            and _text(reply, figure.last + 1) in _WORKS
            and reply.concept(figure.last + 2) not in SIGNS
        ):
            yield Vote(figure.first, Completion.PART, 3)
        elif (
            _is_only(reply, figure.first - 1) and _text(reply, figure.last + 1).startswith("min") and not texts & _TOOK
        ):
            yield Vote(figure.first, Completion.PART, 2)
    yield from _too_hard(reply)
    yield from _left_out(reply)


def _is_of_other_things(reply: Said, figure: Figure) -> bool:
    """ "Cleaned the windows, all 12 of them"."""
    text = _text(reply, figure.last + 1)
    sentence = [i for i in range(figure.first) if reply.sentence[i] == reply.sentence[figure.first]]
    return text == "of them" and any(reply.concept(i) == "word" and len(reply.units[i].text) > 3 for i in sentence)


def _is_only(reply: Said, index: int) -> bool:
    """ "Only 10 min", "just did 10 min"."""
    did = _text(reply, index) in ("did", "managed")
    return _text(reply, index - did).split(" ")[-1] in ("only", "just")


def _text(reply: Said, index: int) -> str:
    return reply.units[index].text if 0 <= index < len(reply.units) else ""


def _left_out(reply: Said) -> Iterator[Vote]:
    """ "Left the lunges out", "left the last two out", "just the upper body bits"."""
    for index, unit in enumerate(reply.units):
        if unit.text == "bits":
            told = {"only", "just", "some"} & {_text(reply, i) for i in range(index - 6, index)}
        elif (
            unit.text in ("left", "i left")
            and _text(reply, index + 1) in _THE_WHOLE
            and "out" in _ahead(reply, index + 1)
        ):
            yield Vote(index, Completion.NONE, 3)
            continue
        elif unit.text in ("left", "i left", "left the", "leave", "let"):
            named = unit.text == "left the" or _text(reply, index + 1) in ("the", "that", "this", "those", "one", "two")
            told = {"out"} & set(_ahead(reply, index)) if named else set()
        else:
            continue
        if told:
            yield Vote(index, Completion.PART, 3)


_THE_WHOLE = ("today session", "session", "stretching", "it all", "todays session")


def _ahead(reply: Said, index: int) -> Iterator[str]:
    """The next words of the clause, up to six and not past an "and"."""
    for here in range(index + 1, min(reply.clauses[reply.clause[index]].stop, index + 7)):
        if reply.concept(here) == "and":
            return
        yield reply.units[here].text


def _too_hard(reply: Said) -> Iterator[Vote]:
    """ "The third was too hard", "round 2 was beyond me", "did the arm ones, the leg ones are too hard"."""
    for index in reply.at("too-hard"):
        clause = reply.clauses[reply.clause[index]]
        words_of = {reply.units[i].text.split(" ")[-1] for i in clause if i < index}
        one = words_of & (_ORDINALS | {"round", "number"}) or (
            "ones" in words_of and any(unit.text == "did" for unit in reply.units)
        )
        if one and reply.units[index].text.startswith(("too ", "beyond", "impossible")):
            yield Vote(index, Completion.PART, 2)


def _tells_rest(reply: Said) -> bool:
    return any({"rest", "others", "last"} & set(unit.text.split(" ")) for unit in reply.units)


_WORKS = words("exercise exercises stretch stretches move moves pose poses movement movements rounds")
_TOOK = words("took takes lasted lasts")
_LIMITS = words("only just yes stuck")
_ORDINALS = words("second third fourth fifth sixth last rest")


def _is_percent(reply: Said, figure: Figure) -> bool:
    """ "80 %" of the session; not "the battery is at 2 percent"."""
    after = reply.units[figure.last + 1] if figure.last + 1 < len(reply.units) else None
    before = reply.units[figure.first - 1].text if figure.first else ""
    cheaper = reply.units[figure.last + 2].text if figure.last + 2 < len(reply.units) else ""
    if cheaper in ("off", "discount", "cheaper", "more", "less"):
        return False
    return after is not None and "percent" in (after.concept, after.text) and before not in ("at", "with", "by", "on")


def _is_of_pain(reply: Said, figure: Figure) -> bool:
    """Whether a share stands beside a pain and is no share of the session: "pain 3/5"."""
    if figure.first == 0 and reply.concept(figure.last + 1) in _PARTED and len(reply.figures) > 1:
        return False
    inner = {reply.concept(i) for i in range(figure.first, figure.last + 2)}
    after = reply.units[figure.last + 1].text if figure.last + 1 < len(reply.units) else ""
    counted = inner & {"counted", "unit"} and after != "percent"
    if counted or reply.concept(figure.first - 1) in ("before-number", "do"):
        return False
    clause = reply.clauses[reply.clause[figure.first]]
    near = range(max(clause.start, figure.first - 5), min(clause.stop, figure.last + 3))
    parted = max((i for i in near if i < figure.first and reply.concept(i) == "dash"), default=-1)
    return any(i > parted and reply.concept(i) in ("pain", "sore", "tight") for i in near)


_PARTED = ("comma", "end", "and", "mark", "face", "dash", "but")


def _exceptions(reply: Said) -> Iterator[Vote]:
    """ "All done except the lunges", "everything but the hip one"; not "done except that my hip hurts"."""
    for index, unit in enumerate(reply.units):
        saves = unit.text in _SAVE and _said_all(reply, index)
        turns = unit.text == "but" and index > 0 and reply.units[index - 1].text.endswith(("all", "everything"))
        if (saves or turns) and _names_a_part(reply, index, strictly=turns):
            yield Vote(index, Completion.PART, 3)


_SAVE = frozenset(
    ("except", "besides", "apart from", "other than", "bar", "minus", "save for", "excluding", "with the exception of")
)


def _said_all(reply: Said, index: int) -> bool:
    near = [i for i in range(max(0, index - 5), index) if reply.sentence[i] == reply.sentence[index]]
    return any(
        reply.concept(i) in ("done", "finish", "do-all", "all") or reply.units[i].text.endswith(("all", "everything"))
        for i in near
    )


def _names_a_part(reply: Said, index: int, *, strictly: bool) -> bool:
    """Whether what follows is left out: "the lunges", "the hip one"; not "my hip was hurting"."""
    clause = [i for i in reply.clauses[reply.clause[index + 1]] if i > index] if index + 1 < len(reply.units) else []
    comma = next((at for at, i in enumerate(clause) if reply.concept(i) == "comma"), len(clause))
    clause = clause[:comma]
    texts = [word for i in clause for word in reply.units[i].text.split(" ")]
    concepts = {reply.concept(i) for i in clause}
    opens = texts[:1] != [] and texts[0] in ("the", "those", "these", "one", "two", "that", "them")
    if {"one", "ones"} & set(texts) or (texts[-1:] and texts[-1] in _WORKS | {"stretching"}):
        return opens or not concepts & (SIGNS - BODY)
    named = concepts & BODY and not {"my", "is", "has", "still", "feels", "felt"} & set(texts)
    felt = concepts & {"pain", "sore", "dull", "tight", "was"} or (
        concepts & BODY and (strictly or not (opens or named))
    )
    return not felt and (opens or not strictly)


def half_in(reply: Said) -> bool | None:
    """Of a part: True for half or more, False for less, None when not said."""
    if reply.at("few"):
        return False
    if reply.at("half", "most"):
        return True
    return next((share >= 0.5 for _, share in _parts_of_a_whole(reply)), None)
