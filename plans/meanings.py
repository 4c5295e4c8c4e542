"""Words that mean something else beside their neighbours: "at 7 sharp", "the tingling stopped", "my dad fell"."""

from __future__ import annotations

from dataclasses import replace

from plans import harmless, lookalikes, words_en
from plans.neighbours import CLAUSE_ENDS, NUMBERS, SIGNS, Rule, next_to, phrase
from plans.numbers_written import BODY
from plans.whose import OTHERS, mark_theirs, names_another
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
        if names_another(found, index):
            mark_theirs(found, index)
    return found


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


def _limb_asleep(found: list[Unit], index: int) -> str | None:
    """ "It fell asleep while I held it": a limb named before."""
    limb = index > 0 and found[index - 1].text in ("it", "they", "both")
    return "numb" if limb and found[index].text.startswith("fell asleep") else None


def _left_after_a_limb(found: list[Unit], index: int) -> str | None:
    """ "In the calf left the pain is 3": a side, as second-language speakers put it."""
    return "left" if index and found[index - 1].concept in BODY and next_to(found, index).concept in SIGNS else None


def _no_more(found: list[Unit], index: int) -> str | None:
    return "neg" if next_to(found, index).concept in SIGNS else None


def _a_zero(found: list[Unit], index: int) -> str | None:
    if next_to(found, index).concept in ("scale", "slash"):
        return "number"
    led = index > 0 and found[index - 1].text.split(" ")[-1] in ("a", "at")
    closing = (
        index > 0 and found[index - 1].concept in ("done", "finish") and next_to(found, index).concept in ("", "end")
    )
    if closing and not found[index - 1].text.startswith(("did", "make", "made")):
        return "number"
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


def _number_of_a_pain(found: list[Unit], index: int) -> str | None:
    """ "A pain of number 2", "for the pain I give number 4"; "pain in number 4" names an exercise."""
    if next_to(found, index).concept not in NUMBERS or not index or found[index - 1].text in _PLACING:
        return None
    return "pass" if any(unit.concept == "pain" for unit in found[max(0, index - 3) : index]) else None


def _means_to(found: list[Unit], index: int) -> str | None:
    """ "I'll do mine when the kettle has boiled", "shall stretch before bed": a session to come."""
    end = next((i for i in range(index, len(found)) if found[i].concept in CLAUSE_ENDS), len(found))
    verbs = {unit.text.split(" ")[0] for unit in found[index + 1 : min(index + 3, end)]} & _TO_DO
    return "later" if verbs and any(unit.text in _UNTIL_THEN for unit in found[index + 2 : end]) else None


_TO_DO = words("do stretch fit get catch make")
_UNTIL_THEN = words("before after when once until till")
_PLACING = words("in at on during with after before from by exercise")


def _kinda(found: list[Unit], index: int) -> str | None:
    """ "Kinda easy" is no doubt about what was done."""
    near = {unit.concept for unit in found[index + 1 : index + 3]} | {found[index - 1].concept if index else ""}
    return None if near & {"done", "finish", "do", "part", "half", "most", "do-all", "yes"} else "pass"


def _is_there(found: list[Unit], index: int) -> str | None:
    """ "Little pain is there": no question."""
    return "pass" if index and found[index - 1].concept in SIGNS else None


def _only_a_bit(found: list[Unit], index: int) -> str | None:
    """ "Just a bit sore", "only a little bit of pain", "only the muscles are sore" are no part of the session."""
    if found[index].concept == "part" and not found[index].text.startswith(("only", "just")):
        return None
    for unit in found[index + 1 : index + 5]:
        if unit.concept in SIGNS | {"tight"}:
            return "about"
        if unit.concept not in BODY | {"about", "pass"}:
            return None
    return None


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
    if index > 1 and found[index - 1].text == "i" and found[index - 2].text in ("when", "since", "before"):
        return "pass"
    if index and found[index - 1].text in ("we", "it", "pain", "which", "that", "he", "she", "they"):
        return "pass"
    after = next_to(found, index)
    if after.text in ("a", "my", "a new", "the") and set(next_to(found, index, 2).text.split(" ")) & {
        "job",
        "new",
        "course",
    }:
        return "pass"
    small = ("to", "at", "feeling", "getting", "on", "when", "since", "as", "after", "while", "during", "around")
    if after.concept == "health-changed":
        return "pass"
    told = after.text.split(" ")[0] in small or after.concept in _FEELINGS | {
        "yesterday",
        "now",
        "lasts",
        "word",
        "time",
    }
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
    if index and found[index - 1].text.split(" ")[-1] in ("ate", "eaten", "drank", "drunk", "spent", "talked"):
        return "word"
    return "word" if after.concept == "word" and after.text not in _STILL_TOO_MUCH else None


_STILL_TOO_MUCH = words("for so today again hard difficult tough intense me")


def _two_of_a_pair(found: list[Unit], index: int) -> str | None:
    """ "In the two knees" is both of them."""
    pair = next_to(found, index).text in _PAIRED
    return "both" if pair and index and found[index - 1].text in ("the", "my", "in", "these", "of my", "all") else None


_PAIRED = words(
    "feet foot calves calf knees knee hips hip shoulders shoulder legs leg arms arm ankles ankle thighs thigh "
    "hamstrings hamstring hands hand wrists wrist elbows elbow eyes ears quads heels heel "
    "glutes shins achilles biceps forearms"
)


def _other_time(found: list[Unit], index: int) -> str | None:
    """ "Send it 6:30 instead", "can you send the sessions at 7pm": messages are wished at another time."""
    near = [found[i] for i in range(index + 1, phrase(found, index).stop)]
    if found[index].text not in ("send", "message", "text") and not _is_asked(found, index):
        return None
    timed = any(unit.concept == "clock" or unit.text in _DAYTIMES for unit in near)
    timed = timed or (len(near) > 1 and near[-1].concept in NUMBERS and near[-2].text in ("to", "at", "by", "around"))
    return "change-time" if timed and not any(unit.concept in ("done", "finish", "pain") for unit in near) else None


def _a_year(found: list[Unit], index: int) -> str | None:
    """ "In 2011" is long ago."""
    value = found[index].value or 0
    led = index > 0 and found[index - 1].text.split(" ")[-1] in ("in", "since", "back", "summer", "year")
    return (
        "past" if led and 1930 <= value <= 2024 and next_to(found, index).concept not in ("unit", "counted") else None
    )


def _is_skipping(found: list[Unit], index: int) -> str | None:
    """ "My heart is skipping like mad": no session that was left out."""
    near = found[max(0, index - 8) : index]
    return "palpitations" if any(unit.concept in ("heart", "palpitations") for unit in near) else None


def _part_of_a_limb(found: list[Unit], index: int) -> str | None:
    """ "My left thigh, the outside part", "the lower part of my back": no part of the session."""
    before = found[index - 1].text.split(" ")[-1] if index else ""
    near = found[max(0, index - 5) : index] + found[index + 1 : index + 5]
    named = any(unit.concept in BODY for unit in near)
    return (
        "pass"
        if named and before in _ENDS_OF_A_LIMB and not {"did", "done", "do", "only"} & {u.text for u in near}
        else None
    )


_ENDS_OF_A_LIMB = words(
    "outside inside inner outer upper lower front back middle side left right top bottom fleshy soft same"
)


def _went(found: list[Unit], index: int) -> str | None:
    """ "My speech at the wedding went ok": something else than the session."""
    ahead = [found[i] for i in phrase(found, index) if i < index]
    other = any(unit.concept in ("word", "harmless", "other-why", "time", "talk", "someone") for unit in ahead)
    return "fine" if other and not any(unit.text.split(" ")[-1] in _OWN_WORK for unit in ahead) else None


_OWN_WORK = words(
    "session stretch stretches stretching exercise exercises workout routine it that all everything programme set"
)


def _felt_well(found: list[Unit], index: int) -> str | None:
    """ "Session felt great, 0": done, and the number behind it is the pain."""
    led = found[index - 1].text.split(" ")[-1] if index else ""
    before = found[index - 2].text.split(" ")[-1] if index > 1 else ""
    felt = found[index].text.startswith("felt ") and led in _OWN_WORK - {"it", "that", "all", "everything", "set"}
    return "done" if felt and before not in ("last", "first", "next", "yesterday", "yesterdays") else None


def _half_of_something(found: list[Unit], index: int) -> str | None:
    """ "Half my hand is numb", "half the night": no half of the session."""
    for unit in found[index + 1 : index + 4]:
        if unit.concept in BODY or unit.concept in ("night", "nightlong", "wake") or unit.text in _HALVED:
            return "pass"
        if unit.concept != "pass":
            return None
    return None


_HALVED = words(
    "hour dozen bottle pizza marathon price page screen pill tablet glass pint office team class street town house "
    "country company village world staff choir family"
)


def _dropped(found: list[Unit], index: int) -> str | None:
    """ "Dropped the last one" leaves it out, "dropped the phone" does not."""
    near = {word for unit in found[index + 1 : index + 3] for word in unit.text.split()}
    return None if near & _MOVEMENTS else "word"


_MOVEMENTS = words(words_en.MOVEMENTS)


def _not_mine(found: list[Unit], index: int) -> str | None:
    """ "A sore back, his not mine": somebody else's; "the arm is like not mine" is a sign."""
    near = found[max(0, index - 6) : index]
    return "word" if any(unit.concept == "someone" or unit.text in OTHERS for unit in near) else None


def _is_asked(found: list[Unit], index: int) -> bool:
    """Whether the clause asks for something: it opens with the verb, "please" or "can we"."""
    clause = phrase(found, index)
    ahead = {word for i in clause if i < index for word in found[i].text.split(" ")}
    after = {word for i in clause if i > index for word in found[i].text.split(" ")}
    return index == clause.start or bool(ahead & words("please kindly can could would may we to")) or "please" in after


_DAYTIMES = frozenset(
    ("am", "pm", "oclock", "evening", "in the evening", "morning", "afternoon", "noon", "earlier", "later")
)


_TIMED = words("shift move change push bring reschedule switch put set make start write remind ping call")
_BY_TEXT: dict[str, tuple[Rule, ...]] = lookalikes.BY_TEXT | {
    "no more": (_no_more,),
    "left the": (_left_after_a_limb,),
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
    "will": (_means_to,),
    "shall": (_means_to,),
    "number": (_number_of_a_pain,),
    "finnish": (_finnish,),
    "broken": (_broken,),
    "all but": (_all_but,),
    "too much": (_too_much,),
    "two": (_two_of_a_pair,),
    "send": (_other_time,),
    "message": (_other_time,),
    "text": (_other_time,),
    "make it": (_other_time,),
    "skipping": (_is_skipping,),
    "part": (_part_of_a_limb,),
    "dropped the": (_dropped,),
    "not mine": (_not_mine,),
    "half": (_half_of_something,),
    **dict.fromkeys(("went ok", "went well", "went fine", "went great", "went good", "went really well"), (_went,)),
    **dict.fromkeys(_TIMED, (_other_time,)),
}
_OWN: dict[str, tuple[Rule, ...]] = {
    "fine": (_felt_well,),
    "harmless": (_named_right, _limb_asleep),
    "done": (_would_have,),
    "few": (_only_a_bit,),
    "part": (_only_a_bit,),
    "sharp": (_clock_word,),
    "number": (_a_year,),
}
_TABLES = (_OWN, lookalikes.BY_CONCEPT, harmless.BY_CONCEPT)
_BY_CONCEPT = {
    concept: tuple(
        rule for table in (_OWN, lookalikes.BY_CONCEPT, harmless.BY_CONCEPT) for rule in table.get(concept, ())
    )
    for concept in (*_OWN, *lookalikes.BY_CONCEPT, *harmless.BY_CONCEPT)
}
