"""How much of the session was done."""

from __future__ import annotations

from itertools import pairwise

from plans.checkin import Completion
from plans.neighbours import SIGNS
from plans.numbers_written import BODY
from plans.reading_part_words import PARTIAL, part_vote
from plans.reading_parts import Vote, votes_of_parts
from plans.reading_small_words import WORK, vote_of_word
from plans.reading_when import PARTS_OF_DAY, puts_off, tells_when_it_was
from plans.scopes import Said
from plans.wording import words


def completion_in(reply: Said) -> tuple[Completion | None, bool]:
    """The completion, and whether the words leave it clear.

    >>> from plans.scopes import said
    >>> completion_in(said("did about half, no time"))
    (<Completion.PART: 'part'>, True)
    """
    votes = _corrected(reply, _heaviest(votes_in(reply)))
    asks_for = bool(reply.at("stop", "pause", "change-time", "quit-programme"))
    kinds = {vote.completion for vote in votes if vote.weight > 1 or not asks_for}
    if not kinds and reply.at("hedge") and any(unit.text == "everything" for unit in reply.units):
        return Completion.DONE, False
    if not kinds:
        return None if asks_for else _implied(reply), True
    spoken = {reply.sentence[vote.place] for vote in votes}
    clear = not any(_hedges(reply, index) for index in reply.at("hedge") if _is_about(reply, index, spoken))
    clear = clear and not (kinds == {Completion.NONE} and _answers_a_sign(reply, votes))
    if Completion.PART in kinds and len(kinds) == 2:
        return Completion.PART, clear
    if len(kinds) == 1:
        return kinds.pop(), clear
    return (Completion.PART if Completion.PART in kinds else None), False


def _answers_a_sign(reply: Said, votes: list[Vote]) -> bool:
    """ "No, no tingling, and the pain is a 2": the "no" that opens it may be about the sign."""
    opens = all(vote.place == 0 and vote.weight == 2 for vote in votes)
    return opens and any(reply.negated[i] and reply.concept(i) in SIGNS for i in range(1, min(7, len(reply.units))))


def _is_about(reply: Said, index: int, sentences: set[int]) -> bool:
    """Whether a hedge stands in one of the sentences, or alone right after it: "did most?? I think??"."""
    alone = reply.concept(index + 1) in ("", "end", "question") and reply.concept(index - 1) in ("end", "question")
    return reply.sentence[index] in sentences or (alone and any(n < reply.sentence[index] for n in sentences))


def _hedges(reply: Said, index: int) -> bool:
    """Whether a "maybe" is about more than the number beside it."""
    return not {reply.concept(i) for i in range(index - 2, index + 3)} & {"number", "number-word"}


def _heaviest(votes: list[Vote]) -> list[Vote]:
    """A plain statement outweighs a yes or no, which outweighs a "later"."""
    most = max((vote.weight for vote in votes), default=0)
    return [vote for vote in votes if vote.weight == most]


MUCH = 12
"""Words of a reply that says a reason and nothing else; in a longer one the reason may be of anything."""


def _implied(reply: Said) -> Completion | None:
    """A reason alone says that nothing was done: "too busy today", "ill"; praise alone that it was: "felt great"."""
    if _is_praised(reply):
        return Completion.DONE
    if any(i and reply.units[i - 1].text == "too" for i in reply.at("sore", "pain", "dull")):
        return Completion.NONE
    if sum(unit.concept != "pass" for unit in reply.units) > MUCH:
        return None
    others = ((SIGNS - BODY - {"fever", "ill", "sudden"}) | {"tight", "question"}) & reply.concepts
    if reply.at("too-hard") and all(unit.concept in ("too-hard", "end", "mark", "face") for unit in reply.units):
        return Completion.NONE
    reasons = [i for i in reply.at("time", "ill", "other-why", "fever") if not _is_of_another(reply, i)]
    return Completion.NONE if reasons and not others and not reply.at("asks") else None


def _is_of_another(reply: Said, index: int) -> bool:
    """ "My husband fainted at work", "it's my birthday tomorrow": no reason for today, unless a "so" says so."""
    clause = reply.clauses[reply.clause[index]]
    theirs = any(reply.units[i].theirs and reply.concept(i) in SIGNS for i in clause)
    told = {word for i in clause for word in reply.units[i].text.split(" ")}
    ahead = bool(told & _OTHER_DAYS) and not told & {"until", "til", "till"}
    return (theirs or ahead) and not reply.at("so", "because")


_OTHER_DAYS = words("tomorrow monday tuesday wednesday thursday friday saturday sunday")


def _is_praised(reply: Said) -> bool:
    """ "Felt great today", "the stretches were easy", and nothing else; not "I felt good", "great"."""
    said = {word for unit in reply.units for word in unit.text.split(" ")}
    plain = all(
        unit.concept in _PRAISING
        or (unit.concept == "pain" and reply.negated[index])
        or unit.text in WORK
        or unit.text in PARTS_OF_DAY
        or unit.text.endswith(("ly", "smooth"))
        for index, unit in enumerate(reply.units)
    )
    praised = bool(reply.at("fine", "pleasant")) or bool(said & _SMOOTHLY)
    return plain and praised and bool(said & _WENT) and not said & {"i", "am", "feeling", "not", "never"}


_PRAISING = words("fine pleasant pass was now end mark face unit comma about yes thanks one no-pain and but neg")
_SMOOTHLY = words("smoothly smooth lovely brilliantly")
_WENT = words("felt went was were easy")


def votes_in(reply: Said) -> list[Vote]:
    """What every word, share and exception says of completion, in no order."""
    found: list[Vote] = []
    for index in range(len(reply.units)):
        read = _vote(reply, index)
        if read is not None and not _is_only_asked(reply, index, done=read[0] is Completion.DONE):
            found.append(Vote(index, *read))
    return [*found, *votes_of_parts(reply)]


_SAID = {
    "finish": (Completion.DONE, 3),
    "do-all": (Completion.DONE, 3),
    "time-part": (Completion.PART, 3),
    "none": (Completion.NONE, 3),
    "yes": (Completion.DONE, 2),
    "no-answer": (Completion.NONE, 2),
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
        return _denied_vote(reply, index)
    if concept == "none" and _is_of_some(reply, index):
        return Completion.PART, 3
    if concept == "none" and reply.units[index].text == "not possible" and reply.at("no-weight"):
        return None
    if concept == "other-why" and "forgot" in reply.units[index].text and _is_of_the_session(reply, index):
        return Completion.NONE, 3
    if concept == "yes" and reply.concept(index + 1) == "question" and reply.concept(index - 1) in ("comma", "later"):
        return None
    if concept == "yes" and reply.units[index].text == "of course" and reply.concept(index - 1) not in ("", "end"):
        return None
    if concept == "do-all" and reply.units[index].text in ("do one", "do two", "do three", "do some"):
        return Completion.PART, 2
    if concept == "none" and reply.units[index].text.startswith("not ") and _is_left_out(reply, index):
        return Completion.DONE, 3
    if concept == "yes" and reply.concept(index - 1) in SIGNS and reply.concept(index + 1) in ("", "end", "comma"):
        return None
    if concept == "time" and (reply.units[index].text.endswith(_NO_TIME_FOR_IT) or _is_no_time_for_it(reply, index)):
        return Completion.NONE, 3
    if concept == "finish" and reply.units[index].text == "finish" and reply.units[index + 1 : index + 2]:
        return None if reply.units[index + 1].text == "at" else _SAID[concept]
    if concept == "finish" and _is_of_a_thing(reply, index):
        return None
    if concept in _SAID:
        return _SAID[concept]
    if concept == "later":
        return (Completion.NONE, 1) if puts_off(reply, index) else None
    if concept == "done" and reply.concept(index - 1) == "later" and reply.units[index - 1].text in ("will", "shall"):
        return None
    if concept == "done":
        return _done_vote(reply, index, denied)
    if concept in PARTIAL and not reply.units[index].text.startswith("not quite r"):
        return part_vote(reply, index, denied=denied)
    return vote_of_word(reply, index)


def _is_of_a_thing(reply: Said, index: int) -> bool:
    """ "The costumes are finished at last": not the session."""
    if index < 2 or reply.units[index - 1].text not in ("is", "are", "was", "were"):
        return False
    return reply.concept(index - 2) == "word" and reply.units[index - 2].text not in WORK | {"rest", "stretching"}


_LEFT_FOR = ("left for stretching", "left for it", "left for the session", "left for the stretches")
_NO_TIME_FOR_IT = tuple(
    f"no time {what}" for what in ("for it", "for the session", "for stretching", "to stretch", "to do it", *_LEFT_FOR)
)


def _is_no_time_for_it(reply: Said, index: int) -> bool:
    """ "I had no time for the session at all", "zero time to stretch"."""
    if not set(reply.units[index].text.split(" ")) >= {"no", "time"}:
        return False
    after = [unit.text for unit in reply.units[index + 1 : index + 4]]
    return after[:1] in (["for"], ["to"]) and any(
        text.split(" ")[-1] in WORK | {"it", "stretching"} for text in after[1:]
    )


def _is_of_the_session(reply: Said, index: int) -> bool:
    """ "I forgot the session completely", "completely forgot about stretching"."""
    after = reply.units[index + 1 : index + 4]
    return any(unit.text.split(" ")[-1] in WORK | {"stretching"} for unit in after)


def _is_left_out(reply: Said, index: int) -> bool:
    """ "Not a single exercise was skipped"."""
    near = [i for i in range(index + 1, min(index + 4, len(reply.units))) if reply.concept(i) != "left"]
    after = {word for i in near for word in reply.units[i].text.split(" ")}
    return bool(after & {"skipped", "missed", "omitted", "left"})


def _is_of_some(reply: Said, index: int) -> bool:
    """ "The rest stayed undone", "skipped last 2", "the last pose was hard so I skipped it": some of it, not all."""
    clause = reply.clauses[reply.clause[index]]
    told = {word for i in clause if i < index for word in reply.units[i].text.split(" ")}
    left_out = any(word.startswith(("skip", "miss")) for word in reply.units[index].text.split(" "))
    if told & {"rest", "ones", "others"} or not left_out:
        return bool(told & {"rest", "ones", "others"})
    if reply.units[index].text.split(" ")[-1] in ("it", "this", "that"):
        return _is_about_a_piece(reply, index)
    after = range(index + 1, min(index + 4, clause.stop))
    named = {word for i in after for word in reply.units[i].text.split(" ")}
    limbs = any(reply.concept(i) in BODY for i in after[:2]) and reply.concept(index + 1) != "because"
    return bool(named & _PIECES) or limbs


def _is_about_a_piece(reply: Said, index: int) -> bool:
    """ "Couldn't hold the last pose so skipped it", "the third one is evil, skipped that": "it" is a piece."""
    before = range(max(0, index - 12), index)
    same = [i for i in before if reply.sentence[i] == reply.sentence[index]]
    words_of = [word for i in same for word in reply.units[i].text.split(" ")]
    return any(a in _PIECES - {"last"} or (a == "last" and b in _WORKS) for a, b in pairwise([*words_of, ""]))


_PIECES = words("last first second third fourth fifth final ones rest")
_WORKS = words("one ones pose stretch exercise move movement round set bit part two three hold")


def _denied_vote(reply: Said, index: int) -> tuple[Completion, int] | None:
    """ "Did not do it" is none, "could not do the floor ones" a part; "… or do anything" closes a list of signs.

    "Nothing I do eases it" is of a pain.
    """
    if reply.concept(index) == "do" and reply.concept(index - 1) == "or":
        return None
    ahead = [unit.text for unit in reply.units[max(0, index - 2) : index]]
    if reply.concept(index) == "do" and ahead == ["nothing", "i"]:
        return None
    after = [unit.text for unit in reply.units[index + 1 : index + 5]]
    some = (
        reply.concept(index) == "do" and after[:1] == ["the"] and {"one", "ones", "last", "rest", "third"} & set(after)
    )
    return (Completion.PART, 3) if some else _DENIED[reply.concept(index)]


def _is_only_asked(reply: Said, index: int, *, done: bool) -> bool:
    """Whether the word stands in a question; "done?" is an answer, and "most of it??" beside a doubt."""
    did = reply.concept(index) == "done" and reply.units[index].text.startswith("did ")
    if (did or reply.concept(index) in ("do", "do-all")) and _tells_when_it_hurts(reply, index):
        return True
    stretched = done and reply.units[index].text.endswith("stretched")
    led = {word for i in range(max(0, index - 3), index) for word in reply.units[i].text.split(" ")}
    if stretched and led & {"muscles", "area", "spot", "place", "part", "where"} and reply.at(*SIGNS):
        return True
    if stretched and reply.units[index - 1].text in ("when", "while", "whenever") and _told_of_a_sign(reply, index):
        return True
    if done:
        start = reply.clauses[reply.clause[index]].start
        supposed = {unit.text for unit in reply.units[max(start, index - 3) : index]} & {"if", "whether"}
        asked = reply.concept(start) == "asks" and reply.units[start].text not in ("when", "where")
        asked = asked or any(reply.concept(i) in ("pause", "change-time") for i in range(start, index))
        return asked or bool(supposed)
    doubted = reply.concept(index) in ("half", "most") and reply.at("hedge")
    return _in_question(reply, index) and not doubted


def _tells_when_it_hurts(reply: Said, index: int) -> bool:
    """ "It hurts when I do the second one": the doing is only the time of a pain."""
    start = reply.clauses[reply.clause[index]].start
    told = {word for i in range(max(start, index - 4), index) for word in reply.units[i].text.split(" ")}
    timed = told & {"when", "whenever", "while", "if"} and "finished" not in told
    done = reply.concept(index) == "done"
    return bool(timed) and (not done or ("when" in told and _told_of_a_sign(reply, index)))


def _told_of_a_sign(reply: Said, index: int) -> bool:
    """ "Something snapped when I stretched it": the sign comes first, the doing is only its time."""
    return any(reply.concept(i) in SIGNS and reply.sentence[i] == reply.sentence[index] for i in range(index - 1))


def _in_question(reply: Said, index: int) -> bool:
    """Whether the clause asks or supposes: "can I skip a day?", "if I miss one"."""
    clause = reply.clauses[reply.clause[index]]
    asking = any(reply.concept(i) == "question" for i in clause) and clause.start != index
    supposing = any(reply.units[i].text in ("if", "what if") for i in clause if i < index)
    return asking or supposing or reply.concept(clause.start) == "asks"


def _done_vote(reply: Said, index: int, denied: bool) -> tuple[Completion, int] | None:
    if reply.units[index].text in ("finished the", "finished my") and _is_other_work(reply, index + 1):
        return None
    if reply.concept(index + 1) == "yesterday":
        return Completion.DONE, 1
    if reply.concept(index + 1) == "later" and not tells_when_it_was(reply, index):
        return Completion.NONE, 1
    return (Completion.NONE if denied else Completion.DONE), 3


def _is_other_work(reply: Said, index: int) -> bool:
    """ "Finished the quilt": what was finished is a word that is no part of a session."""
    text = reply.units[index].text if reply.concept(index) == "word" else ""
    return bool(text) and text not in WORK | _WHOLE and reply.concept(index + 1) not in ("counted", "unit")


_WHOLE = words("lot rest whole entire full stretching thing list day plan set round rounds last final remaining other")


def _corrected(reply: Said, votes: list[Vote]) -> list[Vote]:
    marks = reply.at("correction", "actually")
    later = [vote for vote in votes if marks and vote.place > marks[-1]]
    return later or [vote for vote in votes if not _of_yesterday(reply, vote.place)] or votes


def _of_yesterday(reply: Said, index: int) -> bool:
    return any(
        reply.concept(i) == "yesterday" and reply.clause[i] == reply.clause[index]
        for i in range(max(0, index - 6), min(len(reply.units), index + 6))
    )
