"""English as it is spoken, where the words around decide: patterns by a word that must be there.

From memory, not from a dictionary. `<BODY>` is a part of the body, `<MINE>` somebody or something that is one's own.
"""

from __future__ import annotations

_BODY = (
    r"(?:left |right |lower |upper |whole |other |bad |good |poor |aul |auld |old )?(?:back|knees?|legs?|hips?|neck"
    r"|shoulders?|arms?|foot|feet|ankles?|calf|calves|thighs?|hamstrings?|hammies|quads?|chest|heart|head|hands?|wrists?"
    r"|elbows?|bum|arse|heels?|toes?|fingers?|ribs?|groin|stomach|body|jaw|face|eyes?|muscles|side|glutes|shins?)"
)
_MINE = r"(?:mat|wife|missus|husband|boss|mate|kids|mother|mum|dad|father|nan|granny|daughter|son|bed|phone|own)"

_WRITTEN = (
    ("me", r"(?<!\bgave )(?<!\bgive )(?<!\bgives )(?<!\bgiving )\bme (<BODY>|<MINE>)\b", r"my \1"),
    (
        "me",
        (r"\b(did|done|do|doing|finished|managed|skipped|missed) me (stretches|exercises|session|bits" r"|routine)\b"),
        r"\1 my \2",
    ),
    (
        "2",
        r"\b2 (tired|late|busy|much|hard|sore|long|early|hot|cold|ill|sick|stiff|tight|knackered|painful|heavy)\b",
        r"too \1",
    ),
    (
        "2",
        (
            r"\b(had|have|has|got|need|needed|want|wanted|went|going|gone|try|tried|trying|forgot|able|time|ready"
            r"|supposed|meant|used|off|back|up|hope|hoping|due|managed) 2 (stop|go|bed|do|work|rest|sleep|leave|run|get"
            r"|be|finish|skip|see|stretch|sit|move|take|miss|school|walk|stand|make|catch|train|it|the|my)\b"
        ),
        r"\1 to \2",
    ),
    (
        "only",
        r"\b(pain|hurts?|pain is|pain was|now|is at|was at) (?:is |was )?only (?:an? )?"
        r"(\d|one|two|three|four|five|six|seven)\b"
        r"(?! of| min| exercise| set| round)",
        r"\1 \2",
    ),
    ("up", r"\bpain (was |is |went |shot )?up (?:at|to) (?=\d)", r"pain \1"),
    ("weak", r"\b(for|in|of|within) (a|one|the|next|this|another) weak\b(?! <BODY>)", r"\1 \2 week"),
    ("weak", r"\b(a|one) weak, i mean a week", r"\1 week"),
    ("excuse", r"\bexcuse me,? (?=(?:in|on|the|my|right|left|it|a|\d)\b)", "i mean "),
    ("ill", r"^ill (?=(?:do|try|get|finish|be|have|make|start|let)\b)", "i will "),
    ("hole", r"\bhole (session|thing|programme|program|routine|workout|lot|set)\b", r"whole \1"),
    ("mo", r"\bmo (pain|soreness|time)\b", r"no \1"),
    ("heart", r"\bheart (?:a|my \w+) (pop|snap|crack|click|tear|crunch)\b", r"heard a \1"),
    ("let", r"\b(my|the) let (<BODY>)\b", r"\1 left \2"),
    ("were", r"\b(its|it's|it is|is) were (we|i|you)\b", r"\1 where \2"),
    ("were", r"\bnot were (we|i|the|you)\b", r"not where \1"),
    (
        "more",
        r"\b(can not|cannot|can't|cant|could not|couldn't|do not|don't) (?:no )?more (hold|feel|walk|stand|move|put)\b",
        r"\1 \2",
    ),
    ("force", r"\bno (?:more )?force (?:left |more )?in (?:the|my) (<BODY>)", r"weakness in my \1"),
    ("strength", r"\bno (?:more )?strength (?:left |more )?in (?:the|my) (<BODY>)", r"weakness in my \1"),
    ("finish", r"\bfinish (?:a|one|my|the) (?:sentence|word|thought)\b", "speak"),
    ("ma", r"\bma (<BODY>|<MINE>)\b", r"my \1"),
    ("ma", r"\bma wean", "my child"),
    ("mi", r"\bmi (<BODY>|<MINE>)\b", r"my \1"),
    ("mi", r"\b(hurt|tingle|pain|burn|bite|bother) mi\b", r"\1 me"),
    (
        "mi",
        (r"\bmi (?=do|did|finish|have|can|could|never|no|not|not|go|will|wi|feel|stop|start|try|miss|skip" r"|forget)"),
        "i ",
    ),
    ("di", r"\bdi ko (?:nagawa|natapos|pa)\b", "i did not do it"),
    ("di", r"\bdi (?=whole|session|stretch|exercise|day|back|work)", "the "),
    ("nagawa", r"\bhindi (?:ko )?nagawa\b", "i did not do it"),
    ("nagawa", r"\bnagawa ko(?: na)?\b", "i did it"),
    ("tapos", r"\b(?:tapos|natapos) (?:na|ko na)\b(?: po\b)?", "done"),
    ("mamaya", r"\bmamaya(?: na)?\b(?: po\b)?", "later"),
    ("masakit", r"\bmasakit\b", "painful"),
    ("po", r"\bpo\b", ""),
    ("lang", r"\blang\b", "only"),
    ("sa", r"\bsa (?=work|office|house|school)", "at "),
    ("na", r"\b(late|done|finish|finished|later) na\b", r"\1"),
    ("nah", r"\b(?:nothing|nutten|nuttin) nah hurt (?:mi|me)\b", "nothing hurts"),
    ("nah", r"\bnah (hurt|pain|do|finish|stop|go)\b", r"not \1"),
    ("ah", r"\ball ah it\b", "all of it"),
    ("soon", r"\bsoon come\b", "later"),
    ("haf", r"\bhaf (done|finish|finished|did|no|to|made|not|been|pain|a|do)\b", r"have \1"),
    ("tap", r"\b(?:do|did|done) a tap\b", "do anything"),
    ("deh", r"\bdeh deh\b", "is there"),
    ("deh", r"\bdeh\b", "is"),
    ("ye", r"\b(can|could|will|would|did|do|have|are|if|when|to|for|thank|see|tell|send) ye\b", r"\1 you"),
    ("ye", r"\bye (can|could|will|would|know|said|sent|are|have|need)\b", r"you \1"),
    ("ya", r"\b(can|could|will|would|did|do|have|are|if|to|for|thank|see|tell|send|love) ya\b", r"\1 you"),
    (
        "the",
        (
            r"(?<!\bin )(?<!\bof )(?<!\bon )(?<!\bfor )(?<!\ball )(?<!\bduring )(?<!\bthrough )(?<!\bseize )(?<!start"
            r" )(?<!\bend )(?<!\binto )\bthe day(?=$|[.,!?;)]| and | but | so | an )"
        ),
        "today",
    ),
    ("the", r"\bthe morra\b|\bthe morn\b(?! ?(?:ing|after))", "tomorrow"),
    (
        "the",
        (
            r"(?<!\bin )(?<!\bof )(?<!\bthrough )(?<!\bat )(?<!\bduring )(?<!\ball )(?<!\bfor )(?<!\bhalf )(?<!most"
            r" )(?<!\bwhole )\bthe night(?=$|[.,!?;)])"
        ),
        "tonight",
    ),
    (
        "no",
        (
            r"\b(that is|that's|i'm|i am|it's|it is|is|was|am|were|are) no (like|feeling|feelin|able|well"
            r"|sure|there|gone|going|sore|bad|right|great|too|very|really|done|doing|bothered|fit|wanting"
            r"|up)\b"
        ),
        r"\1 not \2",
    ),
    (
        "no",
        (
            r"\b(could|can|would|will|should|did|had|have|has) no (be (?:able|arsed|bothered)|do|manage"
            r"|finish|stand|feel|walk|put|get|move)\b"
        ),
        r"\1 not \2",
    ),
    ("no", r"\bi no (?:be )?(?:fit|able)(?: to)?\b", "i can not"),
    ("no", r"\bno (?:fit|able)(?: to)?\b", "can not"),
    ("no", r"\bi no (do|finish|feel|sleep|start|hear|want|understand|know|like)\b", r"i did not \1"),
    ("no", r"\b(?:i )?no (?:get|got) (time|light|energy|mat|space|power|strength)\b", r"i have no \1"),
    ("no", r"\b(?:e|it) no (dey )?(pain|hurt|swell|stop|go)\b", r"it does not \2"),
    ("no", r"\bno be (?:small|here)\b", "big"),
    ("no", r"\bno (?:wahala|yawa|shaking|stress|dramas?|bother|sweat|cap)\b", "no problem"),
    ("not", r"\bnot a bother\b", "no problem"),
    ("don", r"\bdon (?:swell|swollen)(?: up)?\b", "is swollen"),
    ("don", r"\bdon (?:tire|taya)\b", "am tired"),
    ("don", r"\b(?:i )?don (?:do|finish|complete)(?: am| it)?\b", "i have done it"),
    ("don", r"\bdon (numb|weak|bend|burst|pop|snap|die|sick)\b", r"is \1"),
    ("am", r"\b(do|finish|complete|did|finished|stand on|put|feel|carry|start|skip|manage) am\b", r"\1 it"),
    ("e", r"\be remain small\b", "nearly finished"),
    ("e", r"\be (dey|be|don|no|still|pain|hurt|swell|remain)\b", r"it \1"),
    ("dey", r"\b(pain|ache|hurt|burn|pepper|bite) dey (?:catch|worry|hold) me\b", r"i have \1"),
    ("dey", r"\bdey\b", "is"),
    ("take", r"\b(?:nepa|phcn|dem|they|eskom|wapda|kplc)? ?(?:don )?take light\b", "power cut"),
    ("nepa", r"\bnepa\b", "power cut"),
    ("light", r"\b(?:no light|light don go|light go|light no dey|light gone)\b", "power cut"),
    (
        "never",
        (
            r"\bi? ?never (do|done|finish|finished|start|started)(?: am| it)?(?= |$|[.,!?;])(?! that| this"
            r"| the| my| any| wrong)"
        ),
        r"i have not \1 it",
    ),
    ("well", r"\bwell well\b", "very much"),
    ("small", r"\bsmall small\b|\bsmall small\b|\bme small\b", "a little"),
    ("after", r"\b(?:i'm|i am|im|am) (?:just |only )?after (?:doing|finishing|completing)\b", "i did"),
    ("made", r"\bmade it through (?=(?:\d+|one|two|three|four|five|six|seven|eight|nine) (?:out )?of )", "did "),
    (
        "did",
        r"^(?:i )?did[.,;:!]+ (?=(?:\d+(?:\.\d+)?|zero|two|three|four|five|six|seven|eight|nine|ten)[.! ]*$)",
        "done, ",
    ),
    (
        "pain",
        r"\bpain not (stop|stops|stopping|go|going|ease|easing|leave|leaving|finish|settle)\b",
        r"pain does not \1",
    ),
    ("pain", r"\bpains?:? nothing(?=$| ?[.,;!])", "pain none"),
    *(
        (
            verb,
            (
                rf"\b{verb} (\d|one|two|three|four|five|six|seven|eight) (?:on|over|upon|from) "
                r"(\d|two|three|four|five|six|seven|eight|nine)\b(?! ?(?:min|sec|day|set|rep|hour|am|pm|week))"
            ),
            rf"{verb} \1 of \2",
        )
        for verb in ("did", "made", "make", "managed", "finished")
    ),
    (
        "after",
        (
            r"\b(meetings?|calls?|zooms?|class|lectures?|lessons?|patients?|clients?|customers?|appointments?|shifts?"
            r"|exams?|emails?|tickets?|teams|errands?|jobs?|orders?|deadlines?)(?: after \1)+\b"
        ),
        "back to back meetings",
    ),
    (
        "after",
        (
            r"\bone (?:meeting|call|zoom|class|lecture|patient|client|customer|appointment) after "
            r"(?:the other|another|the next)\b"
        ),
        "back to back meetings",
    ),
    (
        "worked",
        r"\bworked (?:\d+|ten|eleven|twelve|thirteen|fourteen|sixteen) ?(?:hours?|hrs?|h)\b",
        "worked long hours",
    ),
    (
        "home",
        (
            r"\b(?:(?:did not|didn't|didnt|not) )?(?:(?:got|get|came|come|was|back|arrived|arrive|only) )?home "
            r"(?:not )?(?:(?:until|till|til|at|after|past|around|by|only at) )+"
            r"(?:midnight|(?:8|9|10|11|eight|nine|ten|eleven)(?: ?pm| at night)?)\b|\bhome midnight\b"
        ),
        "home late",
    ),
    ("too", r"\b(?:the )?(?:snow|mud|water|flood|ice) (?:was|is) too (?:deep|high|much|thick)\b", "snowed in"),
    (
        "in",
        (
            r"\b(?:one|two|three|four|1|2|3|4) (?:stretch|stretches|exercises?|moves?|poses?|rounds?|sets?) in\b"
            r"(?=[,.;]| and| then| when| my| the| but)"
        ),
        "part way",
    ),
    (
        "down",
        r"\b(?:one|two|three|1|2|3) (?:rounds?|sets?|exercises?|stretch|stretches) down,? then\b",
        "part way, then",
    ),
    ("like", r"\blike the (?=first|last)\b", "the "),
    (
        "after",
        (
            r"\bafter (?:doing|finishing|completing|stretching|managing) (it|them|the lot|the whole|all"
            r"|everything|that|the session|my)\b(?= there| now| just|[.,!?]|$| and| grand| sure)"
        ),
        r"after it, did \1",
    ),
    ("did", r"\bdone did\b", "did"),
    ("did", r"\bhalf did\b", "did half"),
    ("done", r"\bdone (gone|got|give|gave|went|finished|stretched|skipped|forgot|missed|had)\b", r"\1"),
    ("done", r"\bdone half\b", "did half"),
    ("done", r"\bcomplete done\b", "done"),
    (
        "none",
        r"\b((?:not|n't|never|no) (?:\w+ )?(?:hurt|hurting|hurtin|sore|bother|bothering|ache)) none\b",
        r"\1 at all",
    ),
    (
        "them",
        r"\b(did|do|done|finished|all|skipped|missed|of) them (stretches|exercises|moves|ones|two|three)\b",
        r"\1 the \2",
    ),
    ("fixin", r"\bfixin to\b", "going to"),
    ("fixing", r"\bfixing to\b", "going to"),
    ("crook", r"\bcrook (<BODY>)\b", r"painful \1"),
    ("crook", r"\b(<BODY>) (is|feels|was) (?:a bit )?crook\b", r"\1 \2 painful"),
    ("crook", r"(?<!\ba )(?<!\bthe )\bcrook\b", "ill"),
    ("on", r"\b(?:on|got|took|take|have|gave me|given) (?:a |an )?mc\b", "on sick leave"),
    ("mc", r"\b(?:on|got|took|take|have|had) (?:a |an )?mc\b", "on sick leave"),
    ("tahan", r"\b(?:can not|cannot|can't|cant|could not|couldn't) tahan\b", "can not bear it"),
    ("shag", r"\b(?:damn|so|very|too|super|quite|dam) shag\b", "so tired"),
    (
        "prepone",
        r"\bprepone(?: it| the time| this| my session| the session| session)?(?: to| by| at| for)?\b",
        "change the time to",
    ),
    ("gaya", r"\bho gaya\b", "done"),
    ("liya", r"\bkar liya\b", "done"),
    ("kiya", r"\b(?:nahi|not|nahin) (?:kiya|hua|kar paya)\b", "did not do it"),
    ("kiya", r"\bkiya\b", "did"),
    ("mila", r"\btime (?:nahi|not|nahin) (?:mila|tha|hai)\b", "no time"),
    ("sour", r"\b(<BODY>) ((?:is |are |all |very |so |feels? |a little |little |a bit |too )*)sour\b", r"\1 \2sore"),
    ("gyp", r"\b(?:giving|gave|gives|give) (me|us) gyp\b", r"hurting \1"),
    ("jip", r"\b(?:giving|gave|gives|give) (me|us) jip\b", r"hurting \1"),
    (
        "grief",
        (
            r"\b(<BODY>) (?:is |was |has been |been |keeps )?(?:giving|gave|gives) me (?:some |a bit of "
            r"|real )?grief\b"
        ),
        r"\1 hurting me",
    ),
    ("hell", r"\b(<BODY>) (?:is |was |has been |been )?(?:giving|gave|gives) me hell\b", r"\1 hurting me"),
    ("easy", r"\btoo easy(?: mate| as)?\b", "easy"),
    (
        "grand",
        (
            r"\bgrand(?: altogether| so| out)?\b(?! ?(?:mother|father|son|daughter|child|kids|ma|pa|total"
            r"|piano|prix))"
        ),
        "fine",
    ),
    ("yoke", r"\byoke\b", "thing"),
    ("mal", r"\bmal (at|in|to)\b", r"pain \1"),
    (
        "stuffed",
        (r"\b(?:i'm|i am|im|am|absolutely|completely|totally|too) (?:absolutely |completely " r"|totally )?stuffed\b"),
        "i am tired",
    ),
    (
        "buggered",
        r"\b(?:i'm|i am|im|am|absolutely|completely|totally|too) (?:absolutely |completely )?buggered\b",
        "i am tired",
    ),
    ("wee", r"\ba wee (bit|sore|pain|niggle|ache|twinge|tingle|while|minute|rest|hurt)\b", r"a little \1"),
    ("wee", r"\bwee (bit|sore|pain|niggle|ache|twinge|one)\b", r"little \1"),
)

REWRITES: dict[str, tuple[tuple[str, str], ...]] = {
    word: tuple(
        (was.replace("<BODY>", _BODY).replace("<MINE>", _MINE), by) for other, was, by in _WRITTEN if other == word
    )
    for word in dict.fromkeys(word for word, _was, _by in _WRITTEN)
}
"""By a word that must stand in the text: patterns, each with what it is in written English, in order."""
