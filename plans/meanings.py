"""Words that mean something else beside their neighbours: "at 7 sharp", "the tingling stopped", "my dad fell"."""

from __future__ import annotations

from dataclasses import replace

from plans import lookalikes
from plans.neighbours import NUMBERS, SIGNS, Rule, next_to, phrase
from plans.numbers_written import BODY
from plans.wording import Unit, words

SPEAKER = words("my i it the he she this that we there is was am because but can did")
_FEELINGS = words("pain sore dull tingle numb electric shoot burn dizzy throb swell")


def in_context(found: list[Unit]) -> list[Unit]:
    """The same units, each under the concept that it has beside its neighbours."""
    for index, unit in enumerate(found):
        for rule in (*_BY_TEXT.get(unit.text, ()), *_BY_CONCEPT.get(unit.concept, ())):
            concept = rule(found, index)
            if concept is not None:
                found[index] = replace(unit, concept=concept, value=0.0 if concept == "number" else unit.value)
                break
        if unit.concept == "someone" or unit.text in _OTHERS:
            _is_theirs(found, index)
    return found


_OTHERS = words("her his their")
_REPORTS = words("says say said thinks think noticed notices noticing reckons told tells saw asked")
_THEIR_CLAUSE_ENDS = frozenset(("end", "question", "comma", "but", "because", "so"))


def _is_theirs(found: list[Unit], index: int) -> None:
    """What somebody else has is no sign of the client's: "my dad collapsed with chest pain"; "my wife says I …" is."""
    for here in range(index + 1, min(index + 12, len(found))):
        unit = found[here]
        first = unit.text.split(" ")[0]
        if unit.concept in _THEIR_CLAUSE_ENDS or first in ("i", "my", "me", "mine"):
            return
        if first in _REPORTS and next_to(found, here).text not in ("he", "she", "they"):
            return
        if unit.concept in SIGNS:
            found[here] = replace(unit, theirs=True)


def _clock_word(found: list[Unit], index: int) -> str | None:
    """Sharp after a number, with no pain and no part of the body beside it."""
    if not index or found[index - 1].concept not in (*NUMBERS, "clock"):
        return None
    near = {other.concept for other in (*found[max(0, index - 6) : index], *found[index + 1 : index + 2])}
    return None if near & (BODY | {"pain", "sore"}) else "clock"


def _named_right(found: list[Unit], index: int) -> str | None:
    """ "On the right when I hung": a side, though "right when" is no side elsewhere."""
    named = index > 0 and found[index - 1].text.split(" ")[-1] in ("the", "my")
    return "right" if named and found[index].text.startswith("right ") else None


def _no_more(found: list[Unit], index: int) -> str | None:
    return "neg" if next_to(found, index).concept in SIGNS else None


def _a_zero(found: list[Unit], index: int) -> str | None:
    led = index > 0 and found[index - 1].text.split(" ")[-1] in ("a", "at")
    alone = index > 1 and found[index - 1].concept in ("comma", "dash", "end") and next_to(found, index).concept == ""
    return "number" if led or (alone and found[index - 2].concept in ("done", "finish")) else None


def _since(found: list[Unit], index: int) -> str | None:
    """ "Since it hurts" gives a reason; "since I woke up" a time."""
    spoken = next_to(found, index).text in SPEAKER - {"have"}
    told = next_to(found, index).text == "i" and next_to(found, index, 2).text.split(" ")[0] in _BEGINNINGS
    return "because" if spoken and not told else None


_BEGINNINGS = words("woke stood started finished bent came got sat stretched")


def _became(found: list[Unit], index: int) -> str | None:
    """ "Gone all puffy", "has gone dead": it became so, and is not over."""
    near = found[index + 1 : index + 3]
    return "pass" if any(unit.concept in SIGNS or unit.text == "dead" for unit in near) else None


def _probably(found: list[Unit], index: int) -> str | None:
    return "hedge" if next_to(found, index).concept in ("done", "finish", "do", "part", "half", "most") else None


def _quit(found: list[Unit], index: int) -> str | None:
    """ "I quit after the third": the session was cut short, not the programme."""
    return "part" if next_to(found, index).text in _BREAKS_OFF else None


_BREAKS_OFF = words("after at on halfway early when because before with in")


def _i_think(found: list[Unit], index: int) -> str | None:
    """ "Did it, I think": a doubt when it closes what was said of the session."""
    closes = next_to(found, index).concept in ("", "end", "question", "comma", "but")
    told = index and found[index - 1].concept in ("done", "finish", "part", "half", "most", "do-all", "question")
    return "hedge" if closes and told else None


def _all_but(found: list[Unit], index: int) -> str | None:
    """ "Done all but there is a swelling": the "but" turns, and leaves nothing out."""
    return "but" if next_to(found, index).text in words("there my i it now still with is a had got") else None


def _kinda(found: list[Unit], index: int) -> str | None:
    """ "Kinda easy" is no doubt about what was done."""
    near = {unit.concept for unit in found[index + 1 : index + 3]} | {found[index - 1].concept if index else ""}
    return None if near & {"done", "finish", "do", "part", "half", "most", "do-all", "yes"} else "pass"


def _is_there(found: list[Unit], index: int) -> str | None:
    """ "Little pain is there": no question."""
    return "pass" if index and found[index - 1].concept in SIGNS else None


def _only_a_bit(found: list[Unit], index: int) -> str | None:
    """ "Just a bit sore" is no part of the session."""
    return "about" if next_to(found, index).concept in SIGNS | {"tight"} else None


def _finnish(found: list[Unit], index: int) -> str | None:
    """ "I have finnish" is a verb, "I am Finnish" is not."""
    return "finish" if index and found[index - 1].text in ("have", "has", "all", "just", "i") else None


def _broken(found: list[Unit], index: int) -> str | None:
    """ "My wrist is broken" changes one's health, a broken fridge does not."""
    return None if any(found[i].concept in BODY for i in phrase(found, index)) else "word"


def _would_have(found: list[Unit], index: int) -> str | None:
    """ "I should have done it" was not done."""
    ahead = {unit.text.split(" ")[0] for unit in found[max(0, index - 2) : index]}
    return "pass" if ahead & {"could", "should"} else None


def _begins(found: list[Unit], index: int) -> str | None:
    """ "Started to hurt", "started at 7": the verb says nothing of how much was done."""
    if index and found[index - 1].text in ("we", "it", "pain", "which", "that"):
        return "pass"
    after = next_to(found, index)
    small = ("to", "at", "feeling", "getting", "on", "when", "since", "as", "after", "while", "during", "around")
    told = after.text.split(" ")[0] in small or after.concept in _FEELINGS | {"yesterday", "now", "lasts", "word"}
    return "pass" if told else None


def _letter_of_a_side(found: list[Unit], index: int) -> str | None:
    if next_to(found, index).concept not in BODY:
        return None
    return "left" if found[index].text == "l" else "right"


def _stopped(found: list[Unit], index: int) -> str | None:
    """ "The tingling stopped": the concept before the verb, past small words and parts of the body, is a feeling."""
    for unit in reversed(found[max(0, index - 6) : index]):
        if unit.concept not in BODY | {"pass", "was", "but", "left", "right", "gone", "now"}:
            return "gone" if unit.concept in _FEELINGS else None
    return None


def _too_much(found: list[Unit], index: int) -> str | None:
    """ "Too much snow" is no hardness of the session."""
    after = next_to(found, index)
    return "word" if after.concept == "word" and after.text not in _STILL_TOO_MUCH else None


_STILL_TOO_MUCH = words("for so today again hard difficult tough intense me")


def _two_of_a_pair(found: list[Unit], index: int) -> str | None:
    """ "In the two knees" is both of them."""
    after = next_to(found, index)
    pair = (after.concept in BODY and after.text.endswith("s")) or after.text in ("feet", "calves")
    return "both" if pair and index and found[index - 1].text in ("the", "my", "in", "these") else None


def _other_time(found: list[Unit], index: int) -> str | None:
    """ "Send it 6:30 instead", "can you send the sessions at 7pm": messages are wished at another time."""
    near = [found[i] for i in range(index + 1, phrase(found, index).stop)]
    timed = any(unit.concept == "clock" or unit.text in _DAYTIMES for unit in near)
    return "change-time" if timed and not any(unit.concept in ("done", "finish", "pain") for unit in near) else None


_DAYTIMES = frozenset(
    ("am", "pm", "oclock", "evening", "in the evening", "morning", "afternoon", "noon", "earlier", "later")
)


_BY_TEXT: dict[str, tuple[Rule, ...]] = lookalikes.BY_TEXT | {
    "no more": (_no_more,),
    "zero": (_a_zero,),
    "nil": (_a_zero,),
    "since": (_since,),
    "gone": (_became,),
    "has gone": (_became,),
    "probably": (_probably,),
    "started": (_begins,),
    "l": (_letter_of_a_side,),
    "r": (_letter_of_a_side,),
    "stopped": (_stopped,),
    "i quit": (_quit,),
    "quit": (_quit,),
    "i think": (_i_think,),
    "kinda": (_kinda,),
    "is there": (_is_there,),
    "finnish": (_finnish,),
    "broken": (_broken,),
    "all but": (_all_but,),
    "too much": (_too_much,),
    "two": (_two_of_a_pair,),
    "send": (_other_time,),
    "message": (_other_time,),
    "text": (_other_time,),
}
_OWN: dict[str, tuple[Rule, ...]] = {
    "harmless": (_named_right,),
    "done": (_would_have,),
    "few": (_only_a_bit,),
    "sharp": (_clock_word,),
}
_BY_CONCEPT = {
    concept: _OWN.get(concept, ()) + lookalikes.BY_CONCEPT.get(concept, ()) for concept in _OWN | lookalikes.BY_CONCEPT
}
