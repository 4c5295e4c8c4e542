"""What it feels like and where."""

from __future__ import annotations

import re

from plans import words_en
from plans.checkin import Area, Kind, Place, Side
from plans.numbers_written import BODY
from plans.reading_figures import pain_figures
from plans.reading_numbers import sharp_beside
from plans.scopes import Said
from plans.wording import words

_POP = ("pop", "bruise", "swell", "no-weight")
_NERVE = ("tingle", "numb", "electric", "shoot")
_COMPLAINTS = frozenset(
    (
        "pain",
        "sore",
        "dull",
        "sharp",
        "severe",
        "weak",
        "no-power",
        "burn",
        "throb",
        "gives-way",
        "tight",
        "press",
        "droop",
        "vision",
        *_POP,
        *_NERVE,
    )
)


def kind_in(reply: Said) -> Kind | None:
    """The gravest kind of feeling that was named."""
    if reply.at(*_POP):
        return Kind.POP
    unfelt = any(_PAPER & set(reply.units[i].text.split()) for i in reply.at("cant-pee"))
    if (
        reply.at("tingle", "numb", "electric")
        or unfelt
        or any(
            _with_pain(reply, concept) for concept in ("shoot", "burn", "no-feel") if not _is_pressure(reply, concept)
        )
    ):
        return Kind.NERVE
    if is_sharp(reply):
        return Kind.SHARP
    side = side_in(reply)
    if not reply.at("dull") or (side is None and not reply.at("one-side")):
        return None
    return Kind.DULL_BOTH if side is Side.BOTH else Kind.DULL_ONE


def _is_pressure(reply: Said, concept: str) -> bool:
    """ "A pressure in my chest that goes down my arm": what runs down is no nerve's."""
    spreads = all(reply.units[i].text.startswith(_SPREADS) for i in reply.at("shoot"))
    return concept == "shoot" and spreads and bool(reply.at("press", "squeeze")) and bool(reply.at("chest"))


_SPREADS = ("go", "went", "run", "spread", "move", "travel", "into", "down")


_PAPER = words("paper roll tissue wipe wiping")
"""What is felt when nothing is numb; "cannot feel when I pee" is another sign."""


def is_sharp(reply: Said) -> bool:
    """Sharp counts beside a pain or a part of the body, sudden only beside a pain."""
    found = reply.at("sharp")
    numbered = any(0 < figure.first - i <= 3 for figure in pain_figures(reply) for i in found[:20])
    return numbered or sharp_beside(reply) or _with_pain(reply, "sudden")


def _with_pain(reply: Said, concept: str) -> bool:
    limbs = ("limb", "leg", "arm", "calf", "thigh", "trunk", "saddle", "face") if concept != "sudden" else ()
    pains = reply.at("pain", "severe", *limbs)
    return any(
        abs(i - j) <= 5 and reply.sentence[i] == reply.sentence[j] for i in reply.at(concept) for j in pains[:50]
    )


def sore_in(reply: Said) -> bool:
    """Whether soreness words were said."""
    over = {reply.clause[i] for i in reply.at("gone", "settled")}
    was = {reply.clause[i] for i in reply.at("was")}
    earlier = was | {reply.clause[i] for i in reply.at("yesterday") if not reply.units[i].text.endswith("s")}
    over |= {number - 1 for number in over if number - 1 in earlier}
    if reply.at("now"):
        over |= {reply.clause[i] for i in reply.at("yesterday") if reply.clause[i] in was}
    if any(
        reply.negated[i] or reply.units[i].text in ("nothing", "not", "not now", "not today")
        for i in range(len(reply.units))
    ):
        over |= {reply.clause[i] for i in reply.at("yesterday") if reply.clause[i] in was}
    told = [i for i in reply.at("sore", "dull") if not _is_of_a_pain(reply, i)]
    return any(reply.clause[i] not in over or (i > 0 and reply.units[i - 1].text == "too") for i in told)


def _is_of_a_pain(reply: Said, index: int) -> bool:
    """ "A dull pain", "the pain is dull": what kind of pain it is, and no soreness; "dull ache" is."""
    alone = reply.units[index].text in ("dull", "dully")
    return alone and any(reply.concept(i) == "pain" for i in reply.clauses[reply.clause[index]])


def side_in(reply: Said) -> Side | None:
    """The side of what is complained of; None without a complaint or a side."""
    none = {reply.clause[figure.first] for figure in pain_figures(reply) if figure.value == 0}
    complaining = {reply.clause[i] for i in reply.at(*_COMPLAINTS)} - none
    numbered = {reply.clause[figure.first] for figure in pain_figures(reply) if figure.value > 0}
    sides = [(i, Side(reply.concept(i))) for i in reply.at("left", "right", "both") if _is_side(reply, i)]
    sides = _after_correction(reply, sides)
    sides += [(i, side) for i in reply.at("one-side") for side in Side if side in reply.units[i].text.split()]
    if not sides or not (complaining or numbered):
        return None
    there = [side for i, side in sides if reply.clause[i] in complaining | numbered]
    done = {reply.clause[i] for i, unit in enumerate(reply.units) if unit.text in ("did", "only did", "managed", "do")}
    done |= {reply.clause[i] for i in reply.at("finish", "done", "do-all")}
    chosen = set(there or [side for i, side in sides if reply.clause[i] not in done])
    if not chosen:
        return None
    return chosen.pop() if len(chosen) == 1 else Side.BOTH


def _after_correction(reply: Said, sides: list[tuple[int, Side]]) -> list[tuple[int, Side]]:
    """ "Left. No, right.": the sides behind the word that takes one back."""
    marks = [i for i in reply.at("correction", "actually") if i not in dict(sides)]
    marks += [
        i for i, unit in enumerate(reply.units) if unit.text in ("no", "not") and _leads_to_a_side(reply, i, sides)
    ]
    later = [(i, side) for i, side in sides if marks and i > max(marks)]
    return later if later and len(later) < len(sides) else sides


def _leads_to_a_side(reply: Said, index: int, sides: list[tuple[int, Side]]) -> bool:
    """Whether a "no" stands right before a side and behind another one."""
    after = (
        index
        + 1
        + (reply.concept(index + 1) == "comma")
        + (reply.units[min(index + 1, len(reply.units) - 1)].text == "the")
    )
    earlier = any(index - 5 <= i < index for i, _ in sides)
    return earlier and reply.units[index].text == "no" and any(after <= i <= after + 2 for i, _ in sides)


def _is_side(reply: Said, index: int) -> bool:
    """Left and right beside a part of the body, after "my", or with "side"; not "left early"."""
    unit = reply.units[index]
    subject = reply.units[max(0, index - 1)].text.split(" ")[0]
    hurting = reply.concept(index - 2) in BODY and reply.concept(index + 1) in _COMPLAINTS
    if unit.text == "both" and subject in ("were", "are", "we", "they", "you") and not hurting:
        return False
    if unit.concept == "both" or " " in unit.text:
        counted = reply.concept(index - 1) == "unit" or reply.concept(index + 1) in ("unit", "counted")
        return not counted or any(reply.concept(i) in BODY for i in range(index + 2, index + 4))
    before = reply.units[index - 1] if index else None
    if before is not None and before.text in ("they", "he", "she", "i", "we", "who", "guests"):
        return False
    near = {reply.concept(index - 1), reply.concept(index + 1)}
    near |= {reply.concept(index + 2)} if reply.concept(index + 1) not in ("end", "question") else set()
    if reply.concept(index + 1) == "one" or reply.units[min(index + 1, len(reply.units) - 1)].text in ("half", "part"):
        return True
    if index == 0 and reply.concept(1) == "comma":
        return False
    if unit.concept == "left" and index and reply.negated[index - 1] and reply.concept(index + 1) in _ALONE:
        return False
    if {reply.concept(index - 1), reply.concept(index + 1)} <= _ALONE:
        return True
    if {reply.concept(index - 1), reply.concept(index + 1)} & {"number"} and reply.at("pain", "sore"):
        return True
    of_it = index > 0 and before is not None and before.text == "of" and reply.concept(index - 2) in BODY
    return (
        of_it
        or bool(near & (BODY | {"numb"}))
        or (before is not None and before.text in ("my", "the", "on", "in", "only", "and"))
        or "both" in near
    )


_ALONE = frozenset(("", "comma", "end", "and"))


def place_in(reply: Said) -> Place | None:
    """Whether the pain was said to be where the programme works, or elsewhere."""
    worked = _WORKED.search(reply.text)
    told = bool(reply.at("elsewhere")) or _APART.search(reply.text) is not None
    if told and (reply.at(*_COMPLAINTS, *BODY) or reply.figures):
        return Place.ELSEWHERE
    if worked is not None and reply.at(*_COMPLAINTS, "number", "number-word"):
        return Place.ELSEWHERE if worked[1] else Place.HERE
    return Place.HERE if reply.at("here") and (reply.at(*_COMPLAINTS) or pain_figures(reply)) else None


def area_in(reply: Said) -> Area | None:
    """The first part of the body that was named and not denied, as one of the areas."""
    for index in reply.at(*BODY):
        for word in reply.units[index].text.split():
            if word in _AREAS:
                return _AREAS[word]
    return None


_AREAS = {word: Area(area) for area, line in words_en.AREAS.items() for word in line.split()}


_WORKED = re.compile(
    r"(\b(?:not|isn't|isnt|wasn't|wasnt|is not|nowhere near|away from|far from|outside|other than)\b[\w' ]{0,24}?)?"
    r"\b(?:(?:where|spot|area|zone|region|place|part|bit|point|muscles?|ones?)(?: that| which| where)? "
    r"(?:we|i|you|these|they|it"
    r"|(?:the|this|that|todays?|your|my|our) (?:sessions?|course|program(?:me)?|stretch(?:es)?|exercises?"
    r"|workout|routine|moves))"
    r"(?: is| are| were|'re| (?:have|has|had) (?:me|us)| make me| made me| get me| keep| have been| has been| was"
    r"| really)? "
    r"(?:stretch|work|train|target|hit|focus|aim|cover|address|exercis|go(?:es)? for|reach|loosen"
    r"|(?:do|did|doing) (?:the |our |my |those |these |all |your )?(?:stretch|exercis|session|moves))"
    r"|\bwhere (?:you|they) have (?:us|me) (?:stretch|work|train)"
    r"|(?:part|spot|area|place|muscles?) (?:that )?(?:your|the|these) (?:stretch\w*|exercises|session) (?:is|are) for"
    r"|(?:spot|area|place) (?:from|of|in) (?:the|this|your|our) (?:programme|session|exercise|stretch)"
    r"|(?:stretched|worked|trained|target|targeted|trouble) (?:spot|area|zone|region|place|muscles?)\b"
    r"|(?:area|zone|region|place|muscles?) of the (?:stretch|session|exercise))"
)
"""The place where the programme works, or not that place."""


_WORK = r"(?:stretch\w*|programme|program|sessions?|exercis\w*|routine|workout)"
_SPOT = r"(?:where|anywhere|spots?|areas?|zones?|regions?|places?|parts?|bits?|muscles?|related|connected)"
_APART = re.compile(
    rf"(?<!did )(?<!could )(?<!can )(?<!would )(?<!does )(?<!do )"
    rf"\b(?:not|isn't|isnt|wasn't|wasnt|nowhere near|different from|rather than)\b"
    r"(?: (?!do\b|did|done|doing|finish|manag|mak|made|get|got|sure|know|lik|able|reach|through|last|all\b)[\w']+)"
    rf"{{0,4}}? {_SPOT}\b(?: [\w']+){{0,3}}? {_WORK}\b"
    rf"|\b(?:outside|unrelated to|unconnected with) (?:of )?(?:the|this|our|your|my) (?:area of the )?{_WORK}\b"
    rf"|\b{_SPOT} (?:that |which )?(?:we|you|i|(?:the|this|your|our) {_WORK}) "
    r"(?:do not|does not|don't|dont|doesn't|doesnt|never|did not|didn't|are not|aren't)"
    r" (?:even |really )?(?:stretch|touch|work|train|cover|use|target)"
    r"|\b(?:we|you) (?:do not|don't|dont|never) (?:even )?(?:stretch|work|train|touch) (?:that|it|there|this)\b"
)
"""The same as said of another place: "not part of what we stretch", "a place the programme doesn't touch"."""


def body_in(reply: Said) -> str | None:
    """The first part of the body that was named and not denied, in the client's word."""
    found = [i for i in reply.at(*BODY) if reply.units[i].text not in ("body", "side")]
    return reply.units[found[0]].text if found else None
