"""Which numbers of a reply are pains. A number is one only beside a pain, a completion, or in the form of a rating."""

from __future__ import annotations

from functools import lru_cache

from plans.numbers_written import BODY, PAINFUL, Figure, Form
from plans.scopes import Said
from plans.wording import words

NOT_PAIN = words("stretch-feeling")
_COMPLETION = words("done finish yes part half most")
_FILLING = words(
    """
    pass about left right both colon dash comma now was so and yesterday to from here elsewhere night wake
    lasts gone settled mark was hedge one-side between correction actually
    """
)
_TURNS = words("now was but correction actually arrow or to then yesterday neg and hedge")
_BARE_END = (
    words(
        """
    comma end question but because and fine yes thanks hedge mark face left right both slash now tight
    pain sore dull correction actually asks stretch-feeling so colon dash neg no-pain later or here elsewhere
    about pleasant same settled worse hurts-more bit-better harmless yesterday
    """
    )
    | BODY
)


@lru_cache(maxsize=1)
def pain_figures(reply: Said) -> tuple[Figure, ...]:
    """The numbers that are pains, in order; one beside a completion only where no pain is named as such."""
    found = _found(reply)
    named = [figure for n, figure in enumerate(found) if not _is_beside_completion(reply, figure, found[:n])]
    return tuple(named if named or zeros_of(reply) else found)


def overruled_figures(reply: Said) -> list[Figure]:
    """The numbers beside a completion that a "no pain" makes no pains: "done 8, no pain"."""
    return [figure for figure in _found(reply) if figure not in pain_figures(reply)]


def _found(reply: Said) -> list[Figure]:
    found: list[Figure] = []
    for figure in reply.figures:
        if figure.form is not Form.OTHER and _is_pain(reply, figure, found):
            found.append(figure)
    return found


def _is_pain(reply: Said, figure: Figure, earlier: list[Figure]) -> bool:
    if any(unit.theirs for unit in reply.units[max(0, figure.first - 3) : figure.first]):
        return False
    if _ruled_out(reply, figure) and not (earlier and restated(reply, figure)):
        return False
    if figure.form is Form.FRACTION and reply.concept(figure.last + 1) in ("unit", "counted"):
        return False
    if _is_of_a_side(reply, figure):
        return True
    owner = owner_of(reply, figure)
    if owner in ("tight", *NOT_PAIN) or (_has_own_word(reply, figure) and (earlier or zeros_of(reply))):
        return False
    if not 0 <= figure.value <= 10 and not _is_in_pains_clause(reply, figure) and owner in PAINFUL:
        return False
    if owner == "scale" and _is_a_share(reply, figure):
        return False
    if owner in PAINFUL or _goes_on(reply, figure, earlier) or _is_a_rating(reply, figure):
        return True
    if owner in BODY - {"heart"}:
        return figure.form is not Form.FRACTION and 0 <= figure.value <= 10
    if owner in _COMPLETION:
        return _is_beside_completion(reply, figure, earlier)
    return figure.form is Form.SCALE and owner is None and not _praise(reply, figure)


def _is_a_share(reply: Said, figure: Figure) -> bool:
    """ "3 games out of 7": the whole of what was counted."""
    scaled = figure.first > 1 and reply.units[figure.first - 1].text == "out of"
    return scaled and reply.concept(figure.first - 2) not in ("number", "number-word")


def _is_of_a_side(reply: Said, figure: Figure) -> bool:
    """ "Left side 2 and right side 5": each side with its number."""
    sides = [other for other in reply.figures if _side_before(reply, other)]
    both = {reply.concept(other.first - 1) for other in sides} >= {"left", "right"}
    return figure in sides and both and figure.form is Form.PLAIN and 0 <= figure.value <= 10


def _side_before(reply: Said, figure: Figure) -> bool:
    return reply.concept(figure.first - 1) in ("left", "right") and _ends_bare(reply, figure)


def _is_in_pains_clause(reply: Said, figure: Figure) -> bool:
    """Whether the number stands with the pain and not behind an "and" of its own: "… and outside is -6"."""
    clause = _clause_of(reply, figure)
    begin = max((i for i in clause if i < figure.first and reply.concept(i) == "and"), default=clause.start)
    return any(reply.concept(i) in PAINFUL for i in range(begin, clause.stop))


def _goes_on(reply: Said, figure: Figure, earlier: list[Figure]) -> bool:
    """Whether a number carries an earlier pain on: a change, a correction, "3 by the end"."""
    if not earlier:
        return _follows_no_pain(reply, figure)
    now = beside(reply, figure, ("now",)) and _ends_softly(reply, figure)
    so = figure.first > 0 and reply.units[figure.first - 1].text == "so" and bool(reply.at("gone", "now", "settled"))
    between = range(earlier[-1].last + 1, figure.first)
    later = any(is_later(reply, i) for i in between) and _ends_softly(reply, figure)
    later = later or (
        figure.last + 1 < len(reply.units) and is_later(reply, figure.last + 1) and _before(reply, between)
    )
    return (
        now
        or (later and len(between) <= 8)
        or (so and _ends_bare(reply, figure))
        or _turned(reply, earlier[-1], figure)
    )


def _before(reply: Said, where: range) -> bool:
    """ "2 before the session, 4 after it"."""
    return any(reply.units[i].text == "before" for i in where)


def _follows_no_pain(reply: Said, figure: Figure) -> bool:
    """ "No pain before, after the session 4"."""
    before = [index for index in zeros_of(reply) if index < figure.first]
    later = before and any(is_later(reply, i) for i in range(before[-1] + 1, figure.first))
    return bool(later) and figure.first - before[-1] <= 8 and _ends_softly(reply, figure)


def _is_beside_completion(reply: Said, figure: Figure, earlier: list[Figure]) -> bool:
    """Whether a bare number is a pain only because it stands right after a completion: "done, 3"."""
    owner = owner_of(reply, figure)
    if owner not in _COMPLETION or figure.form is Form.FRACTION or _goes_on(reply, figure, earlier):
        return False
    if _is_a_rating(reply, figure) or (figure.first > 0 and _counts_the_work(reply, figure, owner)):
        return False
    return _ends_bare(reply, figure) or _owner_after(reply, figure) is not None


def _counts_the_work(reply: Said, figure: Figure, owner: str) -> bool:
    """ "Done in 20", "did all 6", "managed the first three": a number that belongs to the work."""
    before = reply.units[figure.first - 1]
    return (
        before.text == "in"
        or before.text.endswith((" all", " the"))
        or (owner in ("part", "half", "most") and before.concept not in _PARTING and not _closes_a_share(reply, figure))
    )


_PARTING = ("comma", "end", "dash", "colon", "and", "but")


def _closes_a_share(reply: Said, figure: Figure) -> bool:
    """ "Half 3", "most of it 2": a whole share of the session, and the number closes the reply."""
    before = figure.first - 1
    before -= reply.concept(before) in ("mark", "face")
    ends = all(reply.concept(i) in ("end", "mark", "face") for i in range(figure.last + 1, len(reply.units)))
    return ends and before >= 0 and reply.units[before].text in _SHARES and 0 <= figure.value < STRONG_SHARE


STRONG_SHARE = 8
"""From here on a number beside a share would be a red flag: it needs a word of pain."""
_SHARES = (
    "half",
    "half of it",
    "did half",
    "most",
    "most of it",
    "did most",
    "did most of it",
    "part of it",
    "did half of it",
)


def _has_own_word(reply: Said, figure: Figure) -> bool:
    """ "Grumpiness 9", "ten out of ten weather": a number that belongs to a word of its own."""
    after, before = reply.concept(figure.last + 1), reply.units[figure.first - 1] if figure.first else None
    owned = before is not None and before.concept == "word" and before.text.endswith(("ness", "ion", "ity", "ment"))
    return owned or (figure.form is Form.SCALE and after == "word")


def _is_a_rating(reply: Said, figure: Figure) -> bool:
    """ "It's a 6", "been like a 5 since": a rating in its form, of a pain that was named before."""
    told = reply.at(*_TOLD)
    alone = all(reply.concept(i) in _OF_A_RATING or reply.units[i].text == "usual" for i in _clause_of(reply, figure))
    plain = [other for other in reply.figures if other.form in (Form.PLAIN, Form.SCALE)]
    instead = any(unit.text == "instead" for unit in reply.units[max(0, figure.first - 3) : figure.first])
    refused = reply.at("none", "no-answer") and _is_a(reply, figure.first - 1)
    if figure.form is Form.FRACTION and plain:
        return False
    if alone and not instead and len(plain) == 1 and (told or refused or reply.at(*_COMPLETION)):
        return True
    named = any(index < figure.first for index in reply.at("pain", "severe", "sharp", "dull", "burn", "shoot", "wake"))
    named = named or (len(reply.figures) == 1 and _is_a(reply, figure.first - 1) and bool(reply.at(*BODY)))
    rated = reply.units[figure.first - 1].text.split(" ")[-1] in _RATED if figure.first else False
    rated = rated or alone
    ends = _ends_bare(reply, figure) or reply.units[figure.last + 1].text in ("since", "at", "when", "on", "in")
    return named and rated and ends


_OF_A_RATING = words("pass number number-word comma end about between and to now")
_TOLD = words(
    "pain severe sharp dull burn shoot wake pop swell bruise barely-walk no-weight gives-way throb tingle numb "
    "electric "
    "weak"
)
_RATED = words("a is was like say about around maybe probably roughly level number just only")


def _clause_of(reply: Said, figure: Figure) -> range:
    return reply.clauses[reply.clause[figure.first]]


def _ruled_out(reply: Said, figure: Figure) -> bool:
    return figure.first > 0 and reply.units[figure.first - 1].text in ("not", "no")


def restated(reply: Said, figure: Figure) -> bool:
    """ "2, no, 3" or "2 … no 3": the "no" takes the number before it back."""
    at = figure.first - 1 - (reply.concept(figure.first - 1) == "comma")
    return at >= 0 and reply.units[at].text == "no" and reply.concept(at - 1) in ("end", "comma", "dash")


def _ends_bare(reply: Said, figure: Figure) -> bool:
    return reply.concept(figure.last + 1) in _BARE_END | {""}


def _ends_softly(reply: Said, figure: Figure) -> bool:
    """Whether nothing that the number could count stands after it: also "3 after the session", "3 if I am honest"."""
    after = reply.units[figure.last + 1] if figure.last + 1 < len(reply.units) else None
    return (
        _ends_bare(reply, figure)
        or after is None
        or after.text in ("after", "since", "when", "while", "during", "overall", "throughout", "afterwards")
        or after.concept in ("hypothetical", "yes")
        or reply.concept(figure.last + 1) in ("number", "number-word")
    )


def _turned(reply: Said, earlier: Figure, figure: Figure) -> bool:
    """Whether a number goes on from an earlier pain: "was 5, now 2", "3, sorry, 4", "not 5 but 3"."""
    between = range(earlier.last + 1, figure.first)
    if takes_back(reply, earlier, figure) and _ends_softly(reply, figure):
        return True
    return len(between) <= 5 and any(reply.concept(i) in _TURNS for i in between) and _ends_softly(reply, figure)


def _praise(reply: Said, figure: Figure) -> bool:
    return reply.concept(figure.last + 1) in ("word", "fine", "pleasant", "hypothetical", "unit", "counted", "pass")


def owner_of(reply: Said, figure: Figure) -> str | None:
    """What a number speaks of: the nearest telling word before it, else right after it."""
    after = reply.concept(figure.last + 1)
    before = _owner_before(reply, figure)
    if after in ("pain", "sore", "tight") and before not in ("pain", "sore", "tight", *NOT_PAIN):
        return after
    return before if before is not None else _owner_after(reply, figure)


def _owner_before(reply: Said, figure: Figure) -> str | None:
    body, strangers, stops = None, 0, 0
    for index in range(figure.first - 1, max(-1, figure.first - 12), -1):
        concept = reply.concept(index)
        if concept in PAINFUL | NOT_PAIN or concept == "tight":
            return concept if stops <= 1 else body
        if concept in _COMPLETION:
            return body or (concept if not strangers else None)
        if concept in BODY:
            body = body or concept
        elif concept == "word":
            strangers += 1
        elif concept in ("end", "question"):
            stops += 1
        elif concept in ("number", "number-word", "clock"):
            continue
        elif not _fills(reply, index, figure):
            return body
        if strangers > 2:
            return body
    return body


def _fills(reply: Said, index: int, figure: Figure) -> bool:
    """Whether a word may stand between a number and its pain: "pain is by 2", "it is a good 8", "no, sorry, 2"."""
    concept, text = reply.concept(index), reply.units[index].text
    taken_back = text == "no" and reply.concept(index + 1) in ("correction", "actually", "comma")
    praised = index == figure.first - 1 and concept in ("fine", "pleasant", "severe") and _is_a(reply, index - 1)
    is_by = text == "by" and (
        reply.concept(index - 1) in ("pass", "was", "now")
        or (reply.concept(index - 1) == "pain" and reply.concept(index + 1) == "now")
    )
    of_a_side = concept == "one" and reply.concept(index - 1) in ("left", "right")
    turned = text == "but" and index == figure.first - 1
    return (
        concept in _FILLING or text in ("at", "only", "number") or turned or is_by or taken_back or praised or of_a_side
    )


def _is_a(reply: Said, index: int) -> bool:
    return index >= 0 and reply.units[index].text.split(" ")[-1] in ("a", "an")


def _owner_after(reply: Said, figure: Figure) -> str | None:
    for index in range(figure.last + 1, figure.last + 6):
        concept = reply.concept(index)
        if concept in PAINFUL | NOT_PAIN | BODY or concept in ("tight", ""):
            return concept or None
        if concept not in ("pass", "about", "left", "right", "both") and reply.units[index].text != "for":
            return None
    return None


def takes_back(reply: Said, first: Figure, second: Figure) -> bool:
    """Whether the words between two pains take the first one back: "six sorry, zero", "a two, no, like a one"."""
    between = range(first.last + 1, second.first)
    return len(between) <= 14 and any(
        reply.concept(i) in ("actually", "correction") or reply.units[i].text in ("no", "wait", "sorry", "wrong")
        for i in between
        if not reply.negated[min(i + 1, len(reply.units) - 1)]
    )


def beside(reply: Said, figure: Figure, concepts: tuple[str, ...]) -> bool:
    """Whether one of the concepts stands right by the number, past small words and not past another number."""
    for step, edge in ((-1, figure.first), (1, figure.last)):
        passed = 0
        for index in range(edge + step, edge + 7 * step, step):
            concept = reply.concept(index)
            if concept in concepts:
                return True
            passed += concept not in ("pass", "about")
            if concept in ("number", "number-word", "comma", "end", "but", "") or passed > 2:
                break
    return False


def words_in(reply: Said, where: range) -> set[str]:
    return {word for i in where for word in reply.units[i].text.split(" ")}


def is_later(reply: Said, index: int) -> bool:
    """ "Afterwards", "by the end", "after the session"; not "after lunch"."""
    if reply.units[index].text != "after":
        return reply.concept(index) == "now" and reply.units[index].text not in ("today", "this morning")
    if reply.concept(index + 1) in ("", "end"):
        return True
    return bool(words_in(reply, range(index + 1, min(index + 4, len(reply.units)))) & _SESSION)


_SESSION = words("session stretching stretches stretch exercise exercises workout it that doing round rounds")


@lru_cache(maxsize=2)
def zeros_of(reply: Said) -> tuple[int, ...]:
    """Where "no pain" is said of pain as such, not of a sharp pain or of the chest."""
    return tuple(index for index, unit in enumerate(reply.units) if not unit.theirs and _is_zero(reply, index))


def _is_zero(reply: Said, index: int) -> bool:
    denied = reply.concept(index) == "pain" and reply.negated[index] and not _narrowed(reply, index)
    return denied or reply.concept(index) == "no-pain"


def _narrowed(reply: Said, index: int) -> bool:
    start = index
    while start and reply.negated[start - 1]:
        start -= 1
    reason = start > 0 and reply.units[start - 1].text.startswith(("not because", "not due"))
    return reason or any(
        reply.concept(i) in ("sharp", "sudden", "severe", "chest", "jaw", "arm", "night", "shoot", "burn")
        for i in range(start, index)
    )
