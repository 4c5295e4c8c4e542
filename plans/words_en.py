"""English words and what they are about. Tables only: the rules stand in `wording`, `scopes`, `redflags`, `reading_*`.

In a phrase `a|b` is either word and `c?` may be missing. A longer phrase wins over a shorter one, so an idiom takes its
alarming word away ("popped in") and a movement's name takes its body word ("chest opener").
"""

from __future__ import annotations

SIGNS = {
    "👍": "yes", "✅": "yes", "✔": "yes", "☑": "yes", "👌": "yes", "🆗": "yes", "✓": "yes", "🙌": "yes",
    "💪": "yes", "💯": "yes", "🙅": "no-answer",
    "👎": "no-answer", "❌": "no-answer", "✖": "no-answer",
    "🤒": "ill", "🤢": "ill", "🤮": "ill", "🤧": "ill",
    "🤕": "mark", "😢": "mark", "😭": "mark", "😣": "mark", "😖": "mark",
}  # fmt: skip
"""Single characters. A face alone says nothing that can be acted upon."""

CONTRACTIONS = {
    "chestpain": "chest pain", "painwise": "pain wise", "backpain": "back pain", "kneepain": "knee pain",
    "legpain": "leg pain",
    "nopain": "no pain", "painfree": "pain free", "neckpain": "neck pain", "hippain": "hip pain",
    "alldone": "all done", "dont": "do not", "didnt": "did not", "doesnt": "does not", "cant": "can not",
    "cannot": "can not", "can't": "can not", "couldnt": "could not", "wont": "will not", "won't": "will not",
    "wasnt": "was not", "isnt": "is not", "hasnt": "has not", "havent": "have not", "hadnt": "had not",
    "wouldnt": "would not", "arent": "are not", "werent": "were not", "shouldnt": "should not", "aint": "is not",
    "ain't": "is not", "im": "i am", "i'm": "i am", "ive": "i have", "i've": "i have", "i'll": "i will",
    "i'd": "i would", "it's": "it is", "its": "it is", "that's": "that is", "thats": "that is",
    "there's": "there is", "theres": "there is", "gonna": "going to", "wanna": "want to", "gotta": "got to",
    "didn": "did not", "couldn": "could not", "what's": "what is", "whats": "what is", "i'd've": "i would have",
    "o'clock": "oclock", "you're": "you are", "we're": "we are", "they're": "they are", "he's": "he is",
    "she's": "she is", "you've": "you have", "we've": "we have", "y'all": "you", "w": "with", "bc": "because",
    "cuz": "because", "cos": "because", "coz": "because", "u": "you", "tmr": "tomorrow", "outta": "out of",
    "outa": "out of", "ur": "your", "dint": "did not", "didint": "did not",
    "em": "them", "thru": "through", "tho": "though", "soz": "sorry", "abt": "about", "b4": "before", "nt": "not",
    "wrk": "work", "nothin": "nothing",
    "feelin": "feeling", "hurtin": "hurting", "tinglin": "tingling", "achin": "aching",
}  # fmt: skip

MISSPELT = {
    "complety": "completely", "dn": "done", "whent": "went", "mtg": "meeting", "dnow": "now", "latter": "later",
    "il": "ill", "ir": "it",
    "pleas": "please", "paus": "pause",
    "sone": "done", "nwo": "now", "mst": "most", "moist": "most", "wel": "well", "sik": "sick", "ahcy": "achy",
    "matt": "mat",
    "coudnt": "could not", "couldt": "could not",
    "rly": "really", "tysm": "thanks", "2day": "today", "dd": "did", "wnet": "went", "wetn": "went", "popp": "pop",
    "ment": "meant", "haff": "half", "meating": "meeting", "overslpet": "overslept", "xcept": "except",
    "oen": "one", "excpet": "except", "yuo": "you", "plese": "please", "thnaks": "thanks", "ony": "only", "fo": "of",
    "ot": "to", "strait": "straight", "onw": "now", "pane": "pain", "byt": "but", "btu": "but", "upto": "up to",
    "bout": "about", "rn": "right now",
    "forgetted": "forgot",
    "forgott": "forgot", "chnage": "change", "chang": "change", "cancle": "cancel", "reschedul": "reschedule",
    "tomoro": "tomorrow", "tomorow": "tomorrow", "tommorow": "tomorrow", "tommorrow": "tomorrow", "tmrrw": "tomorrow",
    "2morrow": "tomorrow", "sry": "sorry", "srry": "sorry", "rnds": "rounds", "rnd": "round", "rds": "rounds",
    "til": "until", "untill": "until", "untl": "until", "exercizing": "exercising", "strtch": "stretch",
    "shouldr": "shoulder", "wks": "weeks", "ystrday": "yesterday", "yday": "yesterday", "nthing": "nothing",
    "stil": "still", "al": "all", "tmie": "time", "nkee": "knee", "rols": "rolls", "piain": "pain", "cramping": "cramp",
    "dizzi": "dizzy", "bakc": "back", "hte": "the", "jsut": "just", "wiht": "with", "wich": "which", "abit": "bit",
    "alot": "lot", "noting": "nothing", "nothng": "nothing", "evrything": "everything", "evry": "every",
    "bcoz": "because", "bcz": "because", "bcs": "because", "becase": "because", "cuse": "because", "todya": "today",
    "toady": "today", "tody": "today", "sesion": "session", "sesh": "session", "sess": "session", "exer": "exercise",
    "ex": "exercise", "exs": "exercises", "excersise": "exercise", "excersises": "exercises", "exercize": "exercise",
    "exercizes": "exercises", "strecth": "stretch", "strecthes": "stretches", "strecthing": "stretching",
    "sholder": "shoulder", "shoulde": "shoulder", "shouder": "shoulder", "elbo": "elbow", "wirst": "wrist",
    "anckle": "ankle", "ancle": "ankle", "handstring": "hamstring", "hamstirng": "hamstring", "gluts": "glutes",
    "hlep": "help", "tierd": "tired", "tird": "tired", "tyred": "tired", "buzy": "busy", "bizy": "busy",
    "meetin": "meeting", "mornin": "morning", "evenin": "evening", "workin": "working", "gettin": "getting",
    "doin": "doing", "goin": "going", "stretchin": "stretching", "havin": "having", "tryna": "try", "rlly": "really",
    "relly": "really", "realy": "really", "litle": "little", "litte": "little", "smal": "small", "beter": "better",
    "bettr": "better", "wors": "worse", "firts": "first", "frist": "first", "secnd": "second",
    "thrid": "third", "lasst": "last", "exept": "except", "exsept": "except", "exepct": "except", "ecxept": "except",
    "apartfrom": "except", "rememberd": "remember", "cudnt": "could not", "shudnt": "should not", "wudnt": "would not",
    "cud": "could", "wud": "would", "shud": "should", "coud": "could", "wil": "will", "wll": "will", "hav": "have",
    "havnt": "have not", "havent": "have not", "didn": "did not", "dnt": "do not", "cnt": "can not", "wasn": "was not",
    "forgor": "forgot", "tiem": "time", "tme": "time", "bussy": "busy", "hrad": "hard", "dobe": "done",
    "puase": "pause", "yh": "yes", "liek": "like", "tday": "today", "didt": "did not",
    "didnot": "did not",
    "doen": "done", "dne": "done", "dnoe": "done", "donr": "done", "doone": "done", "doned": "done",
    "donw": "done", "dome": "done", "don": "done", "ddone": "done", "dine": "done", "pian": "pain", "pani": "pain",
    "paim": "pain", "pai": "pain", "paun": "pain", "payn": "pain", "paine": "pain", "apin": "pain", "pein": "pain",
    "siht": "shit", "hrut": "hurt", "hurst": "hurts", "huts": "hurts", "hurtz": "hurts", "hert": "hurt",
    "herts": "hurts", "soar": "sore", "sor": "sore", "soer": "sore", "sroe": "sore", "sorre": "sore",
    "soree": "sore", "acky": "achy", "lft": "left", "letf": "left", "lefft": "left", "rigth": "right",
    "rihgt": "right", "rite": "right", "rght": "right", "nubm": "numb", "num": "numb", "nummb": "numb",
    "nub": "numb", "numbb": "numb", "mumb": "numb", "nunb": "numb", "popd": "popped", "poped": "popped",
    "poping": "popping", "claf": "calf", "calfs": "calf", "callf": "calf",
    "cafl": "calf", "kne": "knee", "nee": "knee", "knne": "knee", "kneee": "knee", "hafl": "half", "hlaf": "half",
    "halff": "half", "haf": "half", "mots": "most", "moost": "most", "skiped": "skipped", "yse": "yes",
    "yess": "yes", "yea": "yes", "ye": "yes", "ya": "yes", "yas": "yes", "yeh": "yes", "laetr": "later",
    "latr": "later", "noo": "no", "nooo": "no", "tmrw": "tomorrow", "tmw": "tomorrow", "tomoz": "tomorrow",
    "2moro": "tomorrow", "tite": "tight", "tihgt": "tight", "thight": "thigh", "thig": "thigh", "thihg": "thigh",
    "chets": "chest", "chesst": "chest", "cest": "chest", "faintd": "fainted", "feinted": "fainted",
    "feint": "faint", "stich": "stitch", "wieght": "weight", "shap": "sharp", "sharpe": "sharp", "shrap": "sharp",
    "sharb": "sharp", "zaps": "zap", "wek": "weak", "waek": "weak", "jow": "jaw", "nek": "neck",
    "bak": "back", "ligth": "light", "ankel": "ankle", "harstring": "hamstring", "hammy": "hamstring",
    "hammie": "hamstring", "hammies": "hamstrings", "pls": "please", "thx": "thanks", "ty": "thanks",
    "tx": "thanks", "dizy": "dizzy", "dizzie": "dizzy", "dizi": "dizzy", "feaver": "fever", "sessoin": "session",
    "nothign": "nothing", "seting": "setting", "breth": "breath", "breate": "breathe", "tinglig": "tingling",
    "tinlging": "tingling", "bruse": "bruise", "bruize": "bruise", "foots": "feet", "foor": "foot",
    "swolen": "swollen", "swoln": "swollen", "preg": "pregnant", "hlp": "help", "hepl": "help",
    "wihtout": "without", "whitout": "without", "witout": "without", "excercise": "exercise",
    "excercises": "exercises", "teh": "the", "tem": "them", "strech": "stretch",
    "streches": "stretches", "streching": "stretching", "wether": "weather", "exersise": "exercise",
    "exersises": "exercises", "exercices": "exercises", "stretchs": "stretches", "finnished": "finished",
    "finishd": "finished", "complited": "completed", "becouse": "because", "becuase": "because",
}  # fmt: skip
"""Short words typed wrong, one by one: guessing at short words would turn ordinary words into alarming ones."""

TYPED_WRONG = """
difficult meeting meetings appointment travelling forgot motivation prickling strength power temperature
continuing turning spinning paralysed palpitation everything tingling tingly tingle tingles numbness swelling
swollen bruise bruised bruising shooting electric burning dizzy dizziness fainted fainting faint weakness
breathless breathing breathe pressure chest squeezing crushing bladder bowel urinate slurred slurring drooping
blurred blurry vision speech suddenly sudden stabbing sharp popped snapped throbbing hamstring hamstrings
shoulder shoulders quads calves ankle ankles elbow wrist thigh thighs groin finished finish completed complete
partly partially stopped skipped tomorrow tonight yesterday later tightness soreness aching stiffness painful
painless hurting hurts nothing without because exhausted needles between palpitations heartbeat irregular
collapsed lightheaded headache fever temperature walking weight standing session stretches exercise exercises
holiday pregnant pregnancy operation surgery programme lighter shorter thanks unbearable excruciating agony
severe elsewhere muscle
"""
"""Words of five letters and more that are recognised with a letter or two wrong."""

LOOKALIKES = """
melting greeting greetings meaning hopping hoping powder powers powered tower lower shower pickling trickling
sparkling containing turnips earning tuning strengthen spanning spinning strengths smoothing notching unreadable
spellings programmed programmers snapper weaknesses operations operative complexes standin grown grain latex
liter litre sweating sweated shifting shutting crossing crashing clashing breaking stalling stripped swapped
operator operating furnished compelled compacted princess pointless needless expertise exercised finnish wright
sever snipped slurped toggling triangle programs programmer headaches holidays pressures temperatures browsing
noticing noting spelling dirtiness sorter shifted sweater swelter sweaty swears spilling shelling swapping
smelled smiled scaling seating setting shortness stopper steeped strapped swooping shooed whether weather
weighing wading dazzling fainter waiter skipper finale chess crest cheat cheats chests cheese shouting shopping
shorting hooting shooing share shark shape shaped shared shard turning learning bowl bowls vowel blow bread
breast breasts beast pleasure treasure measure measured fewer never lever paint saint feint flint fiat faith
strike stroke stoke later latter water layer laser lately letter wrist wrists wrest thing things think thinking
tinkling mingling hinting cruise bruises swimming smelling selling dwelling stealing swallowed stolen swore
sworn tightens fighter shower showers slower slowing shoulders speed spend special spinach spent heard hurry
hurdle heating beating breathtaking stepped steps shipped slipped stepping stopping topping mapped snapping
dropping dropped drooling driving draping morning evening burn stretch stretching stretched painting paining
panting planting training finally final finishing feature featured favour flavour severed several season seasons
session sessions seasoned position possession mission lesson listen lighten tighter fighting lightest shorten
shortest nothings anything something everything sometimes version visions decision provision adding walked
waking talking working wakening standing sanding sending spending waiting weighted freight height weigh weights
weird wired tired faster easter sister wellness witness laziness business readiness happiness weekends weekend
weekness numbers number numbered lumber thumb thumbs stomach stiff stuff staff sure sore soon same some sock
socks shock shot shots shut shame electrics electrical electronic election muscles muscular hunting hurtful
bowed towel trouble tremble tumble crumble humble fumble rumble crushed crush brushing rushing blurb blurt slurp
slurry squeezed squeeze freezing sneezing fading drooped dropouts agonising ago angle angles uncle angel
partially party partner parts parted posted popping pooped popped dozy dizzily crazy fuzzy busy glad bladed
blade ladder ladders popcorn thought though through throughout tough touch thanks thank thinks tanks elbows
finch finisher compete competed competing competes complex complain completely shorts sharper sharply helped
helper
"""
"""Ordinary words that look like the words above and must stay what they are."""

AREAS = {
    "neck": "neck throat",
    "shoulder": "shoulder shoulders collarbone clavicle trap traps rotator",
    "arm": "arm arms forearm forearms elbow elbows wrist wrists hand hands finger fingers thumb biceps triceps",
    "upper-back": "chest ribcage rib ribs sternum breastbone scapula blade",
    "lower-back": "back lumbar spine sacrum tailbone coccyx flank waist",
    "hip": "hip hips groin glute glutes buttock buttocks pelvis piriformis psoas",
    "thigh": "thigh thighs hamstring hamstrings quad quads adductor adductors",
    "knee": "knee knees kneecap",
    "calf-or-foot": "calf calves shin shins ankle ankles foot feet heel heels toe toes achilles sole soles arch",
}
"""The words of each area of the body."""

THINGS = {
    "pop": (
        "balloon balloons bubble bubbles bubblewrap cork corks champagne prosecco toaster toast button buttons tyre "
        "tyres tire bulb lightbulb fuse lid popcorn kettle firework fireworks cracker crackers corn band bands strap "
        "straps string strings chain lace laces shoelace elastic cable rope zip bra necklace rein oar twig branch "
        "board chair mat tent trousers leggings shorts jeans tights shirt pants knickers seam towel paper bag guitar "
        "heater radiator pipe pipes door gate window thunder pan car tin ball balls photo photos picture pictures pic "
        "pics selfie shot shots umbrella stick tail"
    ),
    "swell": "phone battery ego egos inbox workload pride budget river rivers stream streams creek creeks brook",
    "numb": "brain brains mind phone battery line laptop",
    "gives-way": "chair stool shelf fence bed sofa couch ladder boiler engine wifi battery phone tent",
    "weak": (
        "wifi wi signal connection internet coffee tea excuse battery reception network link joke light sun tv "
        "player team "
        "defence broadband hotspot lamp bulb torch cuppa brew argument plot ending bridge rope string"
    ),
    "electric": (
        "playlist atmosphere vibe vibes crowd game match concert show music party mood energy performance gig night "
        "race "
        "tune song bike car scooter blanket kettle fence heater guitar drill train trains bus company bill meter "
        "lights "
        "piano shaver whisk oven hob stove window gates door mower van"
    ),
    "throb": "music bass beat beats techno party drums speakers disco engine engines club traffic",
    "faint": (
        "street phone laptop tablet battery screen tv telly trestle trestles shelf shelves tent marquee roof "
        "scaffolding scaffold stand tower table chair bed fence wall"
    ),
    "bruise": "pride ego egos feelings banana bananas apple apples peach peaches pear pears",
}
"""Things that pop, swell, give way or go out without harm to anybody, by the sign that their verb would be."""

MOVEMENTS = """
pigeon pose poses plank planks bridge bridges cobra lunge lunges twist twists lizard cat cow camel child childs warrior
triangle butterfly figure frog hinge squat squats deadbug dog sphinx couch windmill clamshell clamshells balance crunch
crunches situps pushups press curl curls raise raises hang hangs spinal rotation rotations circles circle swings doorway
wall band strap roll rolls rolldown bend bends fold folds forward sidebend opener openers thread kneeling standing
seated
sitting lying floor upper lower middle half final second third fourth fifth sixth last first section sit sits hold
holds piece parts
part bit bits round rounds set sets side sides half warmup cooldown warm cool stretch stretches exercise exercises
movement
movements move moves one ones number work stuff breathing breaths cooldown down hated
"""
"""Words that exercises are named by: they tell no reason."""

HARMLESS_CAUSES = """
chill frost winter
excitement joy boredom happiness pride laughter laughing anticipation relief delight love emotion nerves shock fear
fright
terror horror indecision doubt choice choices guilt envy jealousy embarrassment awe gratitude admiration nostalgia
paperwork emails email numbers work deadlines deadline meetings news ideas info information facts spreadsheets
spreadsheet
forms names faces homework revision maths taxes tax decisions options questions admin budget budgets invoices
bureaucracy plans politics gossip choices thoughts details instructions
"""
"""What makes people tingle, go numb or spin without harm, when it is named as the cause."""

NEEDLEWORK = """
sew sewed sewing sewn knit knits knitting knitted crochet crocheting curtain curtains hem hems hemming quilt quilts
quilting dress dresses dressmaking fabric tailor haystack haberdashery embroidery cushion
"""
"""Words of a reply in which pins and needles are tools."""

CIRCUMSTANCES = """
heat heatwave blackout rain storm
kid child children daughter son
broken bus grandma grandmas grandad grandpa
mat mats strap straps elastic glasses spectacles wifi internet video videos app signal battery electricity heating
flood doorbell parcel delivery postman plumber electrician builder builders carpet neighbour neighbours neighbor
neighbors visitor visitors visit guest guests company relatives grandchildren grandkids inlaws in-laws family baby
babies toddler twin twins teething dog cat puppy hamster hospital vet funeral wedding party birthday celebration
celebrations christmas easter eid diwali holiday holidays hotel hostel flying airplane aeroplane plane airport train
trains tyre tow breakdown travel travelled travels trip journey drove driving rain raining rained snow snowing storm
heatwave degrees overslept asleep sofa wall screen phone rang car garage nurse lad lads boys girls band bands alarm
nap woke bed hangover drunk netflix film movie match game cup telly temptation lazy bored motivation mood forgot
forgotten forgetting noise concert festival hoovering icecream
"""
"""Words of something that kept a client from a session and is neither time, hardness, pain nor illness."""

PHRASES = {
    # --- small words -----------------------------------------------------------------------------------------------
    "neg": (
        "no, not, never, without, nor, neither, zero, nothing, no sign|signs of, no "
        "problem|problems|issue|issues|trouble with, free of|from, w o, no one, denied, denies, deny, none of, "
        "nowhere, no kind of, not because of, not due to"
    ),
    "none-word": "none, nil, nada, nope none",
    "but": (
        "but, except, although, though, however, apart from, other than, besides, just, only that, other wise, "
        "otherwise, instead, then, save for, excluding, with the exception of, until on, till on, up to the last"
    ),
    "and": "and, plus, n",
    "or": "or, nor any, or any",
    "because": (
        "because, because of, due to, as i, since i, owing to, thanks to, caused by, cause, so i had to, that is why, "
        "as my, as it, as the"
    ),
    "so": "so",
    "pass": (
        "during it, during, anywhere, in the slightest, a, an, any, the, of, kind, sort, feel, feels, felt, feeling, "
        "feelings, have, has, had, get, gets, got, getting, hear, heard, hearing, notice, noticed, experience, "
        "experienced, be, been, is, are, were, at all, my, in, with, bad, big, real, really, major, significant, such, "
        "even, other, issue, issues, sensation, sensations, on, there, this, especially, particularly, single, actual, "
        "proper, obvious, visible, very, too, so far, does, i, it, that, you, loud, audible, new, near, inside, feel "
        "any, hint, trace, symptoms, symptom, out, going, went, go, goes, gone through, become, became, became, these, "
        "those, than yesterday|before|last_time|last_week|usual|normal, your, suffered, suffer, do not know "
        "from|how|why|where|what, no idea how|why|where, idk why|how, no clue how|why|where, coach, mate, dear, "
        "darling, bro, buddy, love, lol, haha, um, uh, ok so, hello, hi, morning coach, no idea from, no clue from, no "
        "idea from what, idk from what, i do not know what from, anyway, already, yay, phew, a few "
        "seconds|minutes|days|hours|times|weeks|months|years|moments, fam, bruv, dude, mun, man, boss man, maam, "
        "madam, boyo, chief, pal, folks, guys, chaps, jefe, coachie, for a few secs|seconds|mins|minutes|moments, a "
        "few secs, some secs|seconds, right on the spot, right on that spot, right in that spot|area|place, said no, "
        "says no, right in the spot|area|place|bit|part|zone|muscle|centre|center|stretch|region, would like to "
        "tell|say|inform|report|mention|let, would like to tell you, i would like to tell you, for "
        "most|some|part|all|half of it|them"
    ),
    "hedge": (
        "maybe, perhaps, possibly, not sure, not certain, not really sure, dunno, do not know, idk, no idea, might "
        "be, could be, hard to say|tell, i guess, unsure, i believe, can not swear|remember, could not "
        "swear|remember, i think i|so, i suppose i|so, pretty sure i, lost count, lost track, i suppose, not sure "
        "tbh, might of, might have, i might have, could have been, more or less, kinda, kind of did, sort of did, yes "
        "and no, kind of yes, sort of yes"
    ),
    "almost-none": (
        "hardly any, barely any, almost no, nearly no, not much, no big, no major, no real, no serious, no bad, not a "
        "lot of, not too much, little or no, hardly, barely, little to no, no significant, no severe, no great, not "
        "very, not too, not really, not that, not so, not super, no extra, no unusual"
    ),
    "someone": (
        "my bf, my gf, bf, gf, my bestie, bestie, a patient, my patient, one of my patients, a customer, a client, my "
        "training|gym|running|stretching|climbing|dance partner, my|our whole? "
        "crew|team|squad|choir|orchestra|section, my|our "
        "dad|mum|mom|father|mother|husband|wife|partner|son|daughter|brother|sister|uncle|granny|nan|coach, my|our "
        "friend|colleague|neighbour|neighbor|boss|kid|child|baby|dog|cat|grandma|grandad|flatmate|teammate|mate, my "
        "boyfriend|girlfriend|aunt, hubby, somebody else, wifes, husbands, mums, dads, my|our "
        "cousin|cousins|nephew|niece|grandson|granddaughter|grandchild|grandchildren|neighbours|colleagues, someone "
        "else, my|our little_one|toddler|eldest|youngest|twins|girl|boy|kids|children|parents, my|our "
        "grandmas|grandads|grandpa|grandpas|nans|parents|in-laws|inlaws|mother-in-law, aunty, auntie, aunt, mammy, "
        "mummy, mommy, daddy, mam, uncle, granny, gran, nana, grandad, granddad, grandpa, grandma, granda, gramps, "
        "missus, the missus, the wife, the husband, the twins, the baby, the dog, the cat, the puppy, the boss, the "
        "kid, the little_one, the toddler, the lad, the lads, the neighbour|neighbor, "
        "mother|father|sister|brother|daughter|son in law, my|our mother|father|sister|brother|daughter|son in law, a "
        "friend|mate|colleague|neighbour|guy|bloke|woman|man|lady|passenger|runner|kid, daughter, son, sister, "
        "brother, mother, father, grandson, granddaughter, nephew, niece, cousin, colleague, neighbour, neighbor, "
        "flatmate, housemate, roommate, boyfriend, girlfriend, fiance, fiancee, teammate, team mate, kiddo, bub, "
        "toddler, sis, bro in law, old man next_door, our cat|dog|puppy, dogs, one of the kids|twins|boys|girls|lads, "
        "my old man|lady, babysitter, childminder, the childminder, the babysitter, wife, husband, mum, mom, dad, nan, "
        "kid, child, newborn, the gaffer, gaffer, the manager, my manager|supervisor|foreman, the foreman, the "
        "supervisor, young lad, the young lad, my "
        "bf|gf|fiance|fiancee|roommate|housemate|buddy|pal|best_friend|ex|lad|lads|lass, my "
        "teen|teenager|student|students|pupil|client|patient|teacher|trainer, my|our "
        "horse|pet|puppy|kitten|rabbit|grandson|mum"
    ),
    "past": (
        "last year|month|summer|winter|season|spring|autumn, years|months|weeks ago, a year|month ago, a few|couple "
        "years|months|weeks ago, ago, used to, back then, in the past, previously, as a child|kid|teenager, history "
        "of, years back, when i was, once had, before i joined|started, had once, in my twenties|thirties|youth, a "
        "couple of years|months ago, back in, as a young man|woman|girl|boy|lad|teen, when i was young|little, at "
        "school i, in my teens, decades ago, when i was a kid|student|child, ages ago|back, many|few "
        "winters|summers|moons ago, winters|summers|moons|decades|seasons ago, years|months past|before|earlier, year "
        "before, year ago, in the nineties|eighties|seventies|sixties|fifties|noughties, in the 90s|80s|70s|60s, in "
        "college|uni|university|high_school|primary_school|the_army, in my youth|day|childhood, back in the day, long "
        "ago, a long time ago, ages back, in a former life, as a "
        "student|young_player|youngster|junior|apprentice|soldier|dancer|gymnast, when i "
        "played|lived|studied|worked|danced|ran, at university|college|uni, a while back, in those days, before covid, "
        "during covid, in my forties|fifties|sixties|youth, some years|time ago, many years, when i was younger, once "
        "in india|spain|college"
    ),
    "hypothetical": (
        "if, what if, in case, should i, would, might, worried about|that, afraid of|that, scared of|that, to avoid, "
        "prevent, avoid, could it, is it normal, will it, can it, does it mean, hope it is not, hoping, imagine, do "
        "not want to, so that i do not, wonder, wondering, looks like it may|might, what if i get, should it, if it "
        "ever, if somebody, if someone, does a, count as, would you call"
    ),
    "gone": (
        "gone, went away, goes away, go away, disappeared, disappears, passed quickly, resolved, no longer, no more, "
        "any more, anymore, vanished, went off, has passed, it passed, wore off, cleared, for a moment|second|minute, "
        "briefly, eased off, came back to normal, back to normal, is down, went down, gone down, going down, has "
        "stopped"
    ),
    "lasts": (
        "keeps returning, been there for, it is always there now, comes|come always back, always there now, is always "
        "there, always comes|come back, still, will not go|stop, keeps|keep coming back|again, not "
        "stop|ease|end|leave, for a day|week|month|fortnight now, again and again, no position is "
        "helping|helps|help|better, comes|come back every|each|all, does not go|stop|ease, did not go|stop, not going, "
        "not gone, not go, constant, constantly, all day, persists, persistent, persisting, permanent, since "
        "yesterday|then|monday|tuesday|wednesday|thursday|friday|saturday|sunday, ever since, has not gone|stopped, "
        "will not ease, keeps on, non stop, nonstop, does not stop, would not go|stop, never goes|stops|went, for "
        "hours|days|weeks, hours later|after, lasting, lasted, lasts, stays, has stayed, remains, hours now, is "
        "staying, not settled, every time i, not go away, not going away, not gone away, not come back, has not come "
        "back, still going, still is, still does, still do, still can not, never came back, will not settle, no "
        "position helps, whatever way i lay|lie, whichever way i lay|lie, whatever i do, could not get it to settle, "
        "not settle, not shifting, will not shift, can not shake it, could not shake it, all week, all the time, all "
        "the while, for two|three|four|five days, two|three|four|five days now, is lasting, it is lasting, still there "
        "today, still there now, since then, still there, the whole day, would not ease|settle|stop|go|go_away, goes "
        "not away, get better whatever, not get better, has not let up, not let up, does not leave, weeks now, months "
        "now, days now, not stopping, will not wake up, does not wake up, not wake up, not waking up, continuing, "
        "continues, until now, till now, stays so, stays like that|this, stays this|that way, has not woken up, not "
        "come back yet, does not come back, will not come back, not wearing off, will not wear off, still now, all the "
        "day, now also, also now, is like that still, still like that"
    ),
    "yesterday": (
        "yesterday, last night, last time, last week, the day before, on "
        "monday|tuesday|wednesday|thursday|friday|saturday|sunday, two days ago, the other day, days ago, yesterday "
        "night|evening|morning|itself, yesterday night itself, last evening"
    ),
    "now": (
        "at end, at the very end, now, today, an|one|half_an|two|three hour|hours ago, minutes|mins|hours ago, a "
        "minute|moment ago, this morning, at the end, in the end, by the end, afterwards, currently, at the moment, "
        "after that, when i finished, once done, by the end of it, ended at|on|with|up_at|up_on|up_with|as, ending "
        "at|on|with, finished on|with a, at finish, at the finish, by the finish, these days, nowadays"
    ),
    "was": (
        "in the begin, at the begin, was, started at|with|as|by, began at, at first, at the start|beginning, "
        "initially, earlier"
    ),
    "correction": (
        "nvm, never mind, sorry i meant|mean, i mean, i meant, meant, correction, make that, i mean to say, rather, no "
        "wait, wait no, wait, oops, typo, scratch that, should be, should have said, sorry it is|was, or actually, "
        "meant to say|type|write, wrong button, i misread, my mistake, mistake, wanted to say|write, i wanted to "
        "say|write, wanted to type, no make that|it, no it is, no i mean, no more like, i mean more, i said wrong, "
        "wrong number, wrote wrong, i typed wrong, typed wrong, pressed wrong, jk, just kidding, kidding, joking, only "
        "joking, jokes"
    ),
    "actually": "actually, sorry, in fact, to be honest, truth be told, to be fair",
    "pleasant": "pleasant, pleasantly, satisfying, nice, nicely, lovely, enjoyable, relieving",
    # --- completion ------------------------------------------------------------------------------------------------
    "done": (
        "it_was an easy|good|great|nice session, got through every exercise|stretch|one|move, which i did in full, did "
        "in full, did it in full, made whole|the_whole program|programme, made the stretching|stretches|exercises, "
        "made my stretching|stretches|exercises, did it right after|before|away, did mine right after|before|away, i "
        "did stretch, did my stretch, stretched when i got home, went really well|fine|good|ok|smoothly, went "
        "smoothly, did do the|my|your? session|stretches|stretching|exercises|workout|lot, did do it all, went very "
        "well, done, managed|did|finished|completed the lot, done it, did it|everything, did all, did it all, did the "
        "whole thing|session|lot|programme|routine, did the|my|all|todays|today "
        "session|stretches|stretching|stretch|exercises|exercise|workout|routine|set|programme|programm|lot, did all "
        "of it|them, did all the|my stretches|exercises|movements|sets|rounds|reps, did today, did full session, did "
        "every bit|set|stretch|exercise|rep|one, session is? done|complete|completed|finished, nailed it, smashed it, "
        "crushed it, killed it, killing it, aced it, ticked off, tick, managed it|everything, managed it all, got it "
        "done, got through it all, did get through the_lot|it|everything|all|them, made it through?, popped in a "
        "session, popped a session in, squeezed it|one in, squeezed in a|the|my session, squeezed a|the session in, "
        "sorted, job done, all of it, the whole thing, every set|rep|round, full session, whole session, worked "
        "through it|everything|all, ive done, went through it|everything|the, i stretched, stretched today, checked, "
        "accomplished, already did, completado, fertig, did them all?, fini, fit it in, fitted it in, knocked it out, "
        "powered through, through with it, wrapped up, did session, made the session, made my exercises|stretches, "
        "made|make|do all exercise|exercises, made all, made everything, have make all, did 100, in the bag, finito, "
        "mission accomplished, did u? whole session, did good, went well, went fine, went great, went ok, session "
        "went, all went, boxed off, stretched, popped it in, popped in a quick session, made it all, did every single "
        "one, every single one of them, whole routine, did the full, have do all the? session|exercises|exercise, did "
        "do it, did do all, dun, dunn, did the thing, did the whole routine, did them, did both, got it in, did ti, "
        "all boxes ticked, boxes ticked, nailed the, entire session, the entire session, performed every stretch, "
        "performed all, have performed, is made, session is made, session was finished, i got through it, through it "
        "before, shot through it, done the needful, did the all, did all nine|eight|seven|six|five|four "
        "moves|stretches|exercises|of_them, all nine|eight|seven|six|five|four moves|stretches|exercises, completed "
        "it, fully done, did the lot, exercises made, all exercises made, got my|the stretches|session|exercises "
        "in|done, did complete everything|it|all, did my stretch|stretching, did the stretch|stretching, managed the "
        "whole session, still managed the whole session, managed the full session, did todays, did todays one, got it "
        "all done, got all done, did my session, did our session, hecho, fait, c est fait, fatto, gemacht, erledigt, "
        "listo, zrobione, sone and dusted, alll done, all donee, all exercises ok, all the movements, did all "
        "seven|six|five|four|eight stretches, lovely session, great session, good session, that is a wrap, in the "
        "books, crossed it off, whole shebang, the whole shebang, yeppers, full distance, the full distance, nothing "
        "left out, saw it through, donezo, ticked all the boxes, ticked all boxes, entire thing, the entire thing, all "
        "the way through, all the way to the end, put in the full, carried out, duly carried out, executed in full, "
        "you bet, did not miss any, did fully|completely, i did fully, done and dusted, burned through the whole, went "
        "through the whole, did the gentle version, did the easy version, all five in order, all six in order, all of "
        "them, "
        "breezed|sailed|flew|cruised|raced|blasted|whizzed|zipped|rattled|battled|burned|burnt|powered|slogged|plodded "
        "through the? session|workout|routine|lot|stretches|exercises|whole_thing|programme|it|them|everything|all, "
        "did yours|mine, all made|maid|make|finish|finnish|finished|complete|completed, "
        "session|stretching|exercise|exercises|workout|programme is|are through, is through, am through with it, i "
        "already do, termine, terminado, terminada, yh, every exercise|stretch|movement|one done|completed, "
        "managed|did|completed|finished every exercise|stretch|movement|move|one, left out nothing, left nothing out, "
        "nothing i did not do, skipped nothing, missed nothing, did not skip, did not skip it|any|anything|one, did "
        "not miss anything|one|it, nothing skipped|missed, got all my|the stretches|exercises in|done, have "
        "finnish|finish all|everything, got them all in|done, saw it through to the end, all the way to the very? "
        "last, did my bit, today all perfect, wrapped it up, got through the "
        "session|lot|whole|routine|workout|stretches|exercises|set|programme|full|entire, got through "
        "it|everything|all, let out nothing, let nothing out, been through all|everything|the_whole|the_session, did "
        "manage, finnish with, i left out nothing, everything made|maked|finish|finished|complete|completed, i "
        "make|maked all|everything, i have make|maked all|everything, nothing of it left to do, popped in my|the|your "
        "session|stretches|workout|exercises, did my|the|all_my bits, did all the bits, every last|single "
        "rep|one|bit|exercise|stretch|move|set|round|second|step, got on with it, got it over with, got it out of the "
        "way, got it over and done with, got that done, got this done, did what was "
        "asked|planned|written|prescribed|needed, did as "
        "told|instructed|asked|planned|prescribed|i_was_told|you_said|always|usual, followed the "
        "plan|programme|instructions|video, followed along, followed everything|all, kept my|the streak, streak "
        "kept|continues|alive|intact, box ticked, ticked the box, in the can, conquered it, survived "
        "it|the_session|the_workout|all_of_it, made it to the end, got to the end, reached the end, to the very end, "
        "from start|beginning to finish|end, start to finish, beginning to end, went all the way, full house, clean "
        "sweep, wrapped it, polished it off, blitzed it, got my session|stretching|stretches|workout|exercises in, "
        "session in, got the session|stretching|stretches|workout|exercises in, got a full session in, worked my way "
        "through it|all|everything|the_lot|them, went through all|them|the_lot|the_session, performed the|my|today "
        "exercises|session|stretches|routine, as instructed|prescribed, exercise over, exercises over, workout over, "
        "session over, session is over, workout is over, exercises are over, have did, have did all|it|everything, has "
        "been done, has been completed, have been done|completed, exercise done, exercises done, exercises completed, "
        "stretches done|completed, stretching done|completed, workout done|completed, session ok, exercises ok, alles "
        "gemacht|erledigt, geschafft, todo hecho|listo, ya esta, hice todo, tutto fatto, feito, tudo feito, ho finito, "
        "tout fait, ai fini|tout_fait, all is done|made|finished|completed|complete, everything is "
        "done|made|finished|completed|complete, all exercises|movements|stretches|steps|moves|rounds|sets "
        "done|made|completed|complete|finished|absolved, no problems doing it, did the necessary, did my "
        "duty|homework|share|part|thing|due|daily|morning, homework done, mission completed, completed today|todays "
        "one?, finished today|todays one?, finished off, saw to it, got it sorted, all sorted, worked through the|all, "
        "did them anyway, did it anyway, did it all anyway, made it all the way, did all that|of_that, all the "
        "exercises, all the stretches, did each one, each one done, each and every one, the lot done, got all of "
        "it|them done|in, the full monty, went the distance, went the whole hog, whole hog, sweet and done, did all "
        "your, did your session|stretches|exercises|routine|programme|workout|set, did ur session|stretches|exercises, "
        "i did mine, completed mine, finished mine, did ours, completed my|the|your, finished my|the|your, finished "
        "with it|them|everything|all, now done, is done, are done, already done|finish|finished|complete|completed, "
        "have finished|finish|completed|complete, i finish|complete, the whole lot, every "
        "hold|side|set|move|posture|position, nailed every|each|them|all, nailed every one, went to plan, everything "
        "went to plan, job is a good un, see it through, seen it through, polished off the|all|my, want to but i did, "
        "did all six|seven|five|eight|four|nine, not a single one missed, did not miss a single, not one missed, none "
        "missed, none skipped, not missed any|one, through with the exercises|session|stretches|programme, with the "
        "exercises|session|stretches|programme through, with the exercises|session|stretches done|finished|ready, i "
        "did full, did full, did fully all, did complete, did it full|fully|complete|completely|entirely, within "
        "five|ten|fifteen|twenty|thirty|5|10|12|15|20|25|30 minutes only, all present and correct, present and "
        "correct, hammered it out, hammered through, did what was on the list|plan|card|menu, did what you "
        "sent|asked|wrote, list completed|done|complete, plan completed|done|complete, i am through, we are through, "
        "no shortcuts, all movements, caught up on it, all there, ran through all|it|everything|the_lot|the_whole, "
        "circuit complete|completed|done, made up for it, there is nothing left, got there, got there in the end, i "
        "got there, we got there, did the works, got it in the bag, had a crack at it, gave it my all, gave it "
        "everything|100, gave it a good go, put in the work, did the work, did the deed, deed done, deed is done, duty "
        "done, did every last, got every one|single|exercise|stretch done|in, managed every|each, completed "
        "every|each, finished every|each, took care of it, all taken care of, terminated, terminated all|the, in its "
        "entirety, in full, did the entire, made the entire, complete session, completed session, finished session, "
        "full workout, full set, full routine, the full routine|set|workout, entire routine|workout, whole "
        "set|workout, the full works, no exercise missed|skipped, did not cut corners, cut no corners, no corners cut, "
        "all steps, all the steps|moves|poses|rounds|sets, all moves|poses, knocked out the "
        "session|workout|lot|exercises|stretches|set|whole_thing, "
        "killed|smashed|crushed|nailed|aced|owned|bossed|hammered|demolished|slayed|ate that|the|this|my|todays? "
        "session|one|workout|routine|exercises|stretches|set, killed that, smashed that, crushed that, aced that, "
        "bossed that, bossed it, slayed it, owned it, full completion, ticked it off, ticked it, ticked them off, all "
        "exercises ticked, all ticked, exercises ticked, rolled the mat up, mat rolled up, did|done|doing the needful, "
        "do already, did already, do finish, did finish, one session down, session down, 1 session down, did that, i "
        "did that, ok did that, done that, all eight|seven|six|five|nine|ten of them, did all eight|nine|ten, got it "
        "all in, got all in, got the whole thing in, fitted it all in, managed to fit it in, managed to get it done, "
        "managed to do it, managed to finish, got to finish, ok done, consider it done, its done, that is done, that "
        "is it done, that is me done, that is my session done, that is todays done, that is that done, put it down as "
        "done, mark it done, mark as done, mark it as done, tick me off, you can tick me off, chalk it up, chalk up, "
        "log it as done, over the finish line, crossed the finish line, home and dry, home and hosed, no stone "
        "unturned, bashed it out, banged it out, cranked it out, churned it out, rattled it off, rattled through it, "
        "whipped through it|them, raced through it|them, breezed it, sailed through it|them, flew through it|them, "
        "cruised it, got right through it, gone through it all, been and done it, been there done that, did every "
        "exercise, did every stretch, did every movement, did every pose, did every last exercise, did every thing, "
        "every thing done, everything ticked, all boxes checked, checked off, checked it off, crossed off, all crossed "
        "off, ended the session, ended it all, end the session, finalized it, made it whole, made the whole, make the "
        "whole, make whole, did the whole practice, practice finish|finished|done|complete, practice is finished|done, "
        "finished my practice, task completed|done|complete|finished, task is completed|done, work done, homework "
        "finished|completed, job completed, mission success, success, succeeded, succeeded in all, achieved, goal "
        "achieved, achieved it all, got er done, got her done, got'er done, in the bank, banked it, session banked, "
        "another one down, another one done, another day done, another session done|down, one more done|down, day "
        "done, day complete, day ticked off, whole kit and caboodle, the whole nine yards, whole nine yards, lock "
        "stock, soup to nuts, from a to z, a to z, top to bottom, top to toe, every box ticked, the whole caboodle, "
        "all the bits, did all the things, the full whack, full whack, full shebang, gave it full, went full, all "
        "exercises finish, all exercise finish, all is finish, all finish, exercise finish, session finish, i finish "
        "all, finish it all, already complete|finish|finished all, did every last one|bit|stretch|exercise|thing, did "
        "the totality, the totality, did it in full, mi do it, i haf done all, ticked, effectuated everything|all|it, "
        "realised everything|all, realized everything|all, executed|performed|accomplished|completed "
        "completely|fully|entirely|successfully, executed everything|it|all|as_planned, task|job|mission "
        "closed|completed|done|accomplished|complete|executed, carried it out, carried them out, carried out "
        "completely|fully|everything|all, carried everything|all out, exercise i do|did|made|have_done, exercises i "
        "do|did|made|have_done|completed|finished, stretching i made|did|do|have_done|completed|finished, stretches i "
        "made|did|do|have_done|completed|finished, session i made|did|have_done|completed|finished, programme i "
        "made|did|have_done|completed|finished, workout i made|did|have_done|completed|finished, crossed it off my|the "
        "list, did it twice, twice actually, did the whole easy|gentle|light|lighter|short|shorter version|one|thing, "
        "did the easy|lighter|light|gentler|short version, through and done, sorted it out, session whole, whole thing "
        "done, got them all done, brought it to the end, brought to the end, have it behind me, got it behind me, it "
        "is behind me, all behind me, everything absolved, session absolved, all absolved, realised "
        "everything|completely|fully, effectuated, effected completely, all wrapped up, signed sealed delivered, "
        "checked off my list, checked all the boxes, struck it off the list"
    ),
    "finish": (
        "finished, finish, completed, complete, completing, finishing, fully completed, finalised, absolved, absolve, "
        "accomplish, finalized, finalise, finalize, concluded, fulfilled, finised, finsh"
    ),
    "do": (
        "do, did it not, make it, manage, managed, make, doing, do it, do any, do anything, do the session, do "
        "todays, do today, done anything, get to it|the|round|around|any, got to it, get round to it, get it done, "
        "start, started it"
    ),
    "do-all": (
        "full round, do all, do everything, do it all, do all of it|them, finish "
        "all|everything|it|the, complete all|everything|it|the, do the last|whole|full|second|third|final|other|rest, "
        "do every, do one|two|three|some, get through it|all|everything, do the entire|complete"
    ),
    "yes": (
        "yes, yep, yeah, yup, aye, yes sir, yeah done, affirmative, of course, sure did, yes please, si, oui, ja, da, "
        "absolutely, roger, yess, indeed, jep, jup, yessir, yup yup, yes coach"
    ),
    "no-answer": (
        "nope, nah, naw, negative, no way, no thanks, no chance, non, nein, nay, not today, not this time, no not "
        "today, not tonight, no session, not happening, not now, none today, nothing today, no can do today, no "
        "chance today, zilch, no make, bruh no, nah not today, no unfortunately not?, unfortunately no|not, sadly "
        "no|not, leider nein|nicht, afraid not, im afraid not"
    ),
    "none": (
        "i left the session|stretching|workout|exercises|lot out, left the session|stretching|exercises today, today "
        "no, could not face it, left the session|stretching|workout|exercises|lot out, left the session|exercises for, "
        "left the? whole? session|workout|programme out, skipped, skipped it|today|this|todays, skip, skip it|today, "
        "skipping, skipping today, missed, missed it|today|todays|this, day off today, took the day off, did not "
        "happen, no session today, not done, not yet, not done yet, no stretching today, no training today, not doing, "
        "did not bother, gave it a miss, taking|having a? rest day, rest day, taking a|the day off, rest today, "
        "resting today, pass today, passed on, passed today, passing today, not possible, did not even start, not "
        "started, no exercise today, giving it a miss, sitting this one out, sitting it out, no session for me, did "
        "zero, have not started, did not start, took a rest day, did not make it, did not manage, no can do, bailed, "
        "blew it off, could not today, couldnt today, no stretching, did none of them|it, none of it, did none, had to "
        "skip, not managed, was not able to, could not find the mat, did not even roll, not even roll, today not, no "
        "make today, no way am i doing it, instead of stretching, i left it, so i left it, not been able to today, not "
        "had a minute, have not had a minute, had not a minute, did not get to it, skipped the whole|lot|session, "
        "skipped the whole thing, no exercises today|tonight, no exercises, did nothing, i did nothing, not one "
        "stretch, not a chance, to do list, on my to do list, undone, stayed undone, no stretch, do nothing, no me, "
        "did nothing of it, nothing of it done, could not do nothing|it|any, never started, never did it, never got to "
        "it, never got round to it, missed|skipped|skip the "
        "session|stretching|workout|exercise|programme|lot|whole_lot, not did, no did, i not make|made, none of it was "
        "done, no exercise|session|stretching|workout|training today|tonight|so_far, none of it done, wish i had, wish "
        "i could have, if only i had|could, did not want to risk it|anything, not risk it, did not dare, did not risk "
        "it|anything, left it today, left it for today, leave it today, leave it for today, "
        "take|taking|took|need|prefer|must rest, taking a rest, i rest today, have to rest, complete rest, i prefer "
        "rest|to_rest, did not get the|a chance, never got the|a chance, no luck today, no joy with it, no dice, could "
        "not fit it in, did not fit it in, gave it the swerve, swerved it, ducked out, sacked it off, sacked it, "
        "binned it, put it off, putting it off, not so far, no so far, nothing done, have done nothing, i have done "
        "nothing, made nothing, i made nothing, not finish anything, not did it, did not did, not could do, could not "
        "do the session|it_today|today|anything, can not do it|today|the_session, can not make it today, could not "
        "make it, could not make the|any session|exercise|exercises, not able to do "
        "it|today|any|anything|the_session|session|exercise|exercises|my|todays, unable to do "
        "it|today|any|anything|the|todays|my, unable to, did not happen today, not going to happen, will not happen, "
        "none done, did not get round to it, did not get around to it, not get round|around to it, not got "
        "round|around to it, did not do any, not exercised, not trained, did not train|exercise|stretch, no training, "
        "not stretched, have not stretched|trained|exercised, i let it be, let it be today, let it slide|slip, letting "
        "it slide, it slipped, cancelled it, cancelled todays, did not open it, did not look at it, no activity today, "
        "nothing happened today, holiday in, make again next week|tomorrow|monday, do again next week|tomorrow|monday, "
        "just lay there, zero sessions, not touch the mat, did not touch it, make pause today, i make pause, make no "
        "sport|exercise|training, makes me no fun, i not made nothing, not made nothing, made no exercise, not trained "
        "today, opened it and then closed, zip nada, be lying if i said, not as of now, still to do, has not happened, "
        "has not happened yet, not happened yet, yet to do, yet to start, still need to do, still have to do, have yet "
        "to, hoping to do, not free today, was not free, on rest, i am on rest, no exercise for me, no stretching for "
        "me, no stretches today|for_me, no stretch today, nothing stretched, nothing to show, nothing to report on the "
        "stretching, so i left yours, left yours, not a thing, not one exercise|move|minute, did "
        "zilch|nada|zip|sod_all|bugger_all|naff_all, sod all, bugger all, naff all, diddly squat, no can, call it a "
        "miss, another miss, a miss today, big fat no, it is a no, it is a no from me, a no from me, that is a no, not "
        "feeling the session, will resume|restart, resume|restart monday|tomorrow, did not get out of bed, could not "
        "get out of bed, in bed all day, slept all day, sleeping all day, lay in bed, laid in bed, on the sofa all "
        "day, session abandoned before, did not even try|attempt|begin|open|get_up|look, not a single "
        "one|stretch|exercise|thing|rep|minute|movement|pose, zero|0 "
        "reps|stretches|exercises|sets|rounds|minutes|movement, no "
        "stretching|session|exercise|exercises|stretches|workout done|happened|was_done|got_done|took_place, instead "
        "of the? stretches|session|exercises|workout|programme, so none, so i did none, wasnt able, was not able, were "
        "not able, not been able, i was not able, not one single one|stretch, not even one, not even started, no go "
        "today, a no go, no joy, i have not done it, have not done it|any|anything|them, have not done it it, no joy "
        "today, can not today|tonight, i not do, i not do it, not do today, sat it out, sat this one out, sitting out, "
        "noped out, i did not any, did not any, did not get next nor near, next nor near, not rn, not right now, no "
        "energy to do it, did not do a tap, mi no do it, did no exercise, left it out today, so i left it out, would "
        "have done it but, would have but, i would have but, would have done it if, would have if, mat never left the "
        "cupboard|bag|wardrobe|shelf|corner|closet|car|boot|drawer, mat stayed in|rolled, the mat stayed in|rolled, "
        "nothing became of it, nothing came of it, came to nothing, regrettably no|not, alas no|not, today impossible, "
        "impossible today, today was|is impossible, today it was|is impossible, was impossible today, gave up before i "
        "started|began|unrolled|opened|even, gave up before starting|even, gave up before i had|ever started|begun, "
        "never unrolled, never even opened, never opened it, did not unroll, wanted so much to do it, wanted to do it "
        "but, would love to have, gave it a pass, passed it up, took a pass, took a rain check, rain check, taking a "
        "rain check, no video no stretching"
    ),
    "later": (
        "saving the stretches|session|stretching for, saving it for, will do at|after|before|in|around, will do the|my "
        "session|stretching|stretches|exercises, later, tomorrow, tonight, will do it, will do it "
        "later|tonight|tomorrow, this evening, after work|lunch|dinner|school, in the evening, going to do it, "
        "planning to, next time, this afternoon, do it later, postponed, in an hour, in a bit, about to start, "
        "starting soon, haven yet, soon, will try, will make it, yet, l8r, laters, ltr, tonite, do it in "
        "evening|the_evening|the_afternoon|afternoon|the_night, do it at night|lunch|noon, do later, do it after, soon "
        "come, make up for it at|on|this|tomorrow|later, catch up tomorrow|later|at_the_weekend, about to do it, about "
        "to do, about to begin"
    ),
    "part": (
        "i have left out, have left out, had to leave out the, left out the second, left out the first, left out the "
        "last, stopped the session, part done, part of session done, part, part of it, partly, partial, partially, "
        "some of it|them, did some, minutes|mins|min of it, only some, not all, not all of it, not everything, not "
        "quite all, all but, half done, did half, half way, halfway, incomplete, stopped, had to stop, stopped "
        "early|halfway, cut it? short, gave up, quit halfway|early, nothing else, nothing more, a portion, not the "
        "whole thing|session, not quite, not quite done, not completely, not fully, not finished, almost done, nearly "
        "done, almost finished, nearly finished, not entirely, started, bailed out|halfway, skipped "
        "the|one|two|three|some|a, missed the|one|two|three|a|some, dropped the, left out, without the last, minus the "
        "last, bailed early|out, except the last|for, but not the|all, leaving out, could not finish, only the, only "
        "did, only some, only part, only two|three|four, just two, stopping early, left the last, most of it without, "
        "gave up on, quit after, one short, cut short, instead of two|three|four|five|2|3|4|5|6|10|the_full|all, "
        "shortened, shortened it, short version, did the rest, the rest yes, rest is done, did the others, all bar, "
        "everything bar, did the first, did the left|right side|one, never did the, rest done, did the "
        "floor|standing|easy ones, first two then, first three then, first one then, only finish, skipped one|1, left "
        "out the, whole thing minus, minus the, all minus, short bit, not the full, not the rest, after set two|three, "
        "4 down, started it got, called it, so called it, quit after the, round one only, only the half, only half, "
        "got six|five|four|three|two|ten mins|minutes in, moved on after, just the warmup, bit of it, managed the "
        "seated|standing|easy|first ones, most of them not, only first round, first round only, upper half, lower "
        "half, rounds from 3, skipped round, skipped set, skipped number, skipped exercise, all of it minus, "
        "everything minus, got through the easy, past the third, tapped out, broke off, left it after|at, bailed "
        "after|at, stop|stopping after|at|halfway|in_the_middle, never went back, never got back, never finished, quit "
        "at|on, gave up at|after, packed it in, threw in the towel, got as far as, as far as, let out the, have let "
        "out, left out the|one|two|some|a, that is where it ended, where it ended, finish there, finished there, ended "
        "there, made until|till, do until|till, did until|till, did up to, got through the, i left out "
        "the|one|two|some|a|that|this, left that|this|one out, left that one out, rest completed|finished|made, rest "
        "did not, the rest did not, a bit of neck|legs, let out two|three|one|some|a, nearly through, almost through, "
        "half through, only|just|some|few bits, did bits, bits and pieces, in bits, had to interrupt, interrupted "
        "it|after|by, was interrupted, got interrupted, interrupted, broke it off, had to break off, break off, "
        "aborted, abandoned, abandon, had to abandon, called it a day, called it quits, packed up, pulled the plug, "
        "omitted, left aside, left away, let away, have let be, let be, skipped over, jumped over, jump over, not able "
        "to complete|finish, was not able to complete|finish, unable to complete|finish, could not complete, can not "
        "complete|finish, did not complete|finish, not complete, until halfway, till half, till the half, to the half, "
        "until the half, at the half, in the half, in the middle i stopped, stopped in the middle|between, only "
        "beginning, just the beginning|start, beginning only, incompletely, some done, some of them done, did some of, "
        "a part of it, one part, only one part, the first part, first part only|done|made, only first part, to some "
        "extent, fell short, fell short of, most but not all, not the entire, not the whole, left one|two|three out, "
        "skipped last|the_last|a_couple, missed last|the_last|a_couple|out, missing the last, missing one|two, "
        "lacked|lacking the last, except last, without last, minus last, did up to|until, made up to, got up to, "
        "reached only, only reached, only got to, made it to number|round|exercise|the_third|the_second|half, halved "
        "it, cut it in half, cut it down, cut down to, trimmed it, two rounds only, one round only, only one|two|three "
        "rounds|round|exercises|set|sets, just one|two|three rounds|round|exercises|set|sets, did a few, a few of "
        "them, did several, managed a few|some|one|two, managed only|just, only managed, could only manage|do, could "
        "only, can only do, only could do, could do only, did not get to|through the last|all|end|rest, did not make "
        "it to the end, not to the end, not till the end, stop before end|the_end, stopped before the end, finished "
        "early because, cut it to, cut it to one|two|half, cut to one|two|half, reduced it|to one|two|half, down to "
        "one round, finished the upper|lower|first|top|bottom, gave the first, ran out of road, got up to the, pulled "
        "out, ended it there, limited myself, did what i could, dipped after, so i stopped, sat down for good, sat "
        "down after, just short of, stopped one short, short of the full, the short version, bits of it, did the "
        "easy|seated|standing|floor|upper|lower|arm|leg|neck|hip bits|part|parts|ones|half|section, all less one, less "
        "one, less the last, the rest tomorrow|later|tonight, rest tomorrow|later|tonight, and left it there, left it "
        "there, call it there, only half created, half created, half made, half finished, half completed, half "
        "complete, knocked it on the head, threw in the, bowed out, tapped out after, jacked it in, chucked it in, "
        "gave in after, folded after, quit with, bailed with, petered out, ran aground, came unstuck, tailed off, "
        "faded after, got two thirds, two thirds in, did most|some|half then, session abandoned, session cut short, "
        "session interrupted, only got partway, partway, part way, part way through, midway, mid way, stopped midway, "
        "i stay in the|at the, stayed at the, stopped me at, too sore|tired|hard|much|tired_out|weak for more, for any "
        "more, the two first, the three first, the first two yes, left the rest, so left the rest, did the warm up "
        "then|only, did the warmup then|only, warm up then, warmup then, only began, only the beginning, "
        "one|two|three|four left to do, one|two|three|four to go, almost there, nearly there, the remainder "
        "tonight|later|tomorrow, remainder tonight|later|tomorrow, remaining tonight|later|tomorrow, the remaining "
        "tonight|later|tomorrow, a good|big|decent|fair|small|little chunk|piece|portion|slice of it, a "
        "chunk|piece|slice|fraction of it, good chunk of it, little|small|tiny piece|bit of it, managed a "
        "bit|little|part|fraction|portion|chunk|piece|handful, managed some of it, bits and bobs, bits and bobs of it, "
        "halfsies, half of the half, sat out the, sat the last|second|third|rest out, did a little, did a little then, "
        "did a little bit, did a little of it, made only|just the|a|half|one|two|three|some, stopped short, stopped "
        "short of, almost|nearly whole, fizzled out, fizzled out after|at|around, did as much of it as, as much of it "
        "as, as much as i could|had, only the "
        "easy|seated|standing|gentle|simple|upper|lower|floor|arm|leg|neck|first|sitting|lying "
        "ones|bits|half|part|stuff, just the "
        "easy|seated|standing|gentle|simple|upper|lower|floor|arm|leg|neck|sitting|lying ones|bits|half|part|stuff, "
        "not floor|standing|seated|kneeling|lying|balance|leg|arm ones|bits|part|parts|stuff, not the "
        "floor|standing|seated|kneeling|lying|balance|leg|arm|hard ones|bits|part|parts|stuff, all the others i "
        "did|made|done|managed, did all the others, all others done|did|i_did, the others i did|made|managed, the "
        "others all done|did|fine, did all the other ones, all the other ones i did|done, had just reached the, only "
        "reached the, just reached the, put the rest away|aside|off, the warm up and one|two|a|half|some, warm up and "
        "one|two|half|some, warmup and one|two|half|some, the warmup and one|two|half|some, cut it off in|at|after, "
        "had to cut it off, cut off in the middle, cut off halfway, so only the start|beginning, only the "
        "start|beginning, just the start|beginning, only started, could only the, i could only the, only could the, "
        "left it unfinished, left unfinished, unfinished, so not finished, dropped out after|at|halfway, dropped out "
        "of the last, jumped ship|off after|at, skipped the floor|standing|kneeling ones|bits, half and half, a bit of "
        "everything, only a little|small|tiny piece|part|bit of it, made half, got half done, got half way, got "
        "halfway, a portion of it, made it through two|three|one|four|half|2|3|4, did as much as i|my|the|time"
    ),
    "half": "half, half of it|them, about half, roughly half, 50",
    "most": (
        "most, most of it|them, mostly done|finished, almost all, nearly all, more than half, over half, all but "
        "one|two, nearly everything, almost everything, the majority, bulk of it, majority, three quarters, almost "
        "the whole, nearly the whole, two thirds, all except, all but the last, good half, the lions share, lions "
        "share, the better part, the best part of it, every exercise|stretch|movement|move|pose|one|thing but "
        "one|two, everything but one|two, nearly the lot, almost the lot, the bulk, the vast majority, most parts, "
        "the most, the most of it, most all"
    ),
    "few": (
        "less than half, a bit of it, a little of it, a little bit of it, only a few, a few, just a bit, a quarter, a "
        "third, one third, the first one, just started, barely started, just the warm up, only warm up, only the warm "
        "up, just the first, only the first, only one, just one, a couple, did a bit, a bit then, just a little, only "
        "a little, only a bit, a little only, a little part, a small part, only "
        "five|ten|three|four|two|six|seven|eight|fifteen minutes|mins|min, just "
        "five|ten|three|four|two|six|seven|eight|fifteen minutes|mins|min"
    ),
    "all": "everything, entire, whole, full, fully, totally",
    # --- why --------------------------------------------------------------------------------------------------------
    "time-part": (
        "had to run|go|leave|stop after the first|second|third|fourth, only had|got time for?, ran|run out of "
        "time, time ran out, ran short of time"
    ),
    "time": (
        "all day in|at work, in work all day, was in work, no time left for "
        "stretching|it|the_session|my_stretches|the_stretches, was|is not time for it, no time for "
        "it|the_session|stretching|the_stretches|the_exercises|exercises, no time to stretch|do_it|exercise|train, "
        "found no time for it|the_session|stretching, no have time, have no time, have not time, no time, not enough "
        "time, out of time, short of|on time, lack of time, had no time, do not have time, did not have time, too "
        "busy, busy, running late, was late, meeting, meetings, too late, not have|find|had time, not any time, "
        "rushed, in a rush|hurry, hectic, time got away, for time, pressed for time, busy day|week, work ran late, "
        "worked late, deadline, deadlines, at work, stuck at work, work was crazy|mad|busy, hurry, can|could not find "
        "the? time, had to leave|go|run, time issue|issues|pressure, work got in the way, no free time, much work, lot "
        "of work, too much work, have work, work today, a call, phone call, work call, zoom call, appointment, "
        "appointments, school run, working late|all, on shift, working today, worked all day, work work, work meeting, "
        "long day at work, because of work, timing, had to work, got called away, got home late, late home, not the "
        "time, not a free minute, no free minute, time was finish|finished|over, bus was late, kept me in a meeting, "
        "boss kept me, to myself all day, double shift, lecture, lectures, rehearsal, choir rehearsal, called into, "
        "got called, boss has called|called, on call, bleep went, inspection, exam, exams, a mock, got a mock, wrk "
        "mad, work mad, work is mad|mental, handover, ward phone, had to dash, must go to work, electricity man, so "
        "ran out of time, out of time so, deadline day, shift ran over, overtime, revision, work was "
        "mental|hectic|mad|busy|insane, rush to work, rushed to work, boss wanted, boss called|calling, my boss "
        "called, boss was calling, catch the bus, had to catch, must work, too many work, day was full, full day, "
        "meeting moved, work until, packed day, swamped, flat out, rushed off, manic, no minute, had a class, class "
        "ran, homework, coursework, gig, concert, matinee, sound check, dress rehearsal, performance, conference, "
        "training at work, client meeting, client called, dentist, doctors appointment, vet, school pick up, commute, "
        "traffic, train was late|delayed, late train, delayed, held up, early shift, long shift, shift, run off my "
        "feet, back to back calls|meetings, calls since, ran long, schedule packed, packed solid, work ate, ate up my "
        "time, break was over, lunch break was over, clock ran out, ran out of hours|break, minute free, get back to "
        "work, work was too much, office work was too much, too much on my plate, shift started, work is eating, on "
        "the go since, overload, overloaded, lot to do, much to do, lots to do, deadline moved, running out the door, "
        "have to run, rush off, rushing off, in a hurry, short on, ran over|long, not enough minutes, few minutes "
        "only, only have|had five|ten|5|10 minutes|mins|min, break was only, lunch was short, time is|was|not enough, "
        "time over, was the time over, many meetings|calls|appointments, have not had the time, not had the time, not "
        "have|find|had the time, not let me a minute, no more time, no time after, was|is back to back, too much "
        "stress in|at the? work|office|firm|job|company, stress at work, detained, kept back, kept late, colleague "
        "needed, customer, customers, project, presentation, interview, audit, full schedule, the day was too full, "
        "day was too full|short, day is too short, pick|picked|picking up my|the daughter|son|kid|kids|child|children, "
        "school pickup, only had five|ten|few|a_few minutes|mins|min, lunch break, coffee break, ran late, running "
        "behind, behind schedule, miss time, missing time, missed the time, time was missing, time is missing, lack "
        "the? time, lacked the? time, have not the time, had not the time, not have had time, did not have the time, "
        "not get the time, could not get time, time did not allow, time does not allow, time not allow, no time left, "
        "little time, less time, time was less|short|limited|little|tight, time is less|short|limited|little|tight, "
        "limited time, tight schedule, many work, too many things, so many things to do, a lot of things to do, things "
        "to do, work pressure was, had work, got work, have shift, got shift, was working|at_work, went to work, work "
        "called, called in to work, called to work, called in, was in meetings, in meetings, busy with, was busy, very "
        "busy, so busy, super busy, stressful day, meetings all day, tied up, caught up with|in|at, no window, no gap, "
        "no slot, no opportunity, squeezed for time, time poor, need to go to work, go to work, off to work, work "
        "trip, business trip, night duty, day duty, on duty, duty, extra shift, late shift, ran out of day, day ran "
        "out, day got away, day ran away, the day flew, time flew, timing was, timing issue, hours at work, no much "
        "time, not much time, short time, no spare time, study, studying, had to study, assignment, thesis, exam prep, "
        "tests tomorrow, test tomorrow, uni, lab report, classes, tuition, errands, chores, paperwork, tax return, "
        "taxes, court, hearings, had to be at, must be at, be at work, expected at, needed at work|the_office, had to "
        "get to, late for work|school|class|the_bus|the_train, rushed out, rushing around, running around all day, all "
        "over the place today, mad day, crazy day, insane day, long day, full on day, day from hell, day got crazy, "
        "day went crazy, got held up, got stuck at|in, overran, over ran, went over time, went on too long, dragged "
        "on, the clock beat me, quarter end, month end, year end, no lunch, board paper|papers|meeting, back to backs, "
        "ran for my|the train|bus|tram, workload, heavy workload, work load, exam at, kept at work|school|the_office, "
        "practice ran over, missed of time, for lack of time, reunion in|at the? work, reunion at, office call, call "
        "with, client call, team call, conference call, window of|was, appointment at, rendez vous, rendezvous, at my "
        "desk, at the desk, desk all day, snowed under, drowning in work|emails|it, up to my eyes|neck|eyeballs, "
        "rammed, slammed, chocka, hectic day, no let up, no time for anything, sales meeting, staff meeting, team "
        "meeting, zoom meeting, training course, course all day, workshop all day, on a course, at a conference, on "
        "site, on call all, late finish, early start, had an early start, deadline tomorrow|today|tonight|at|is, due "
        "tomorrow|today|tonight, essay, dissertation, coursework due, homework due, interview today|at|this_morning, "
        "hospital shift, school meeting, pta meeting, no minutes, not a minute, never got a minute, never got a minute "
        "to myself, got a minute to myself, time was up, pulled a double, doing a double, get time for, got time for, "
        "not get|got time, did not get time, time for the session, ran out of hours, run ragged, ragged all day, zero "
        "time, had not time, i had not time, not had time, overslept for work, late for the bus, out the door to work, "
        "telephone from work, phone from work, call from work, work rang|phoned|called, called me in, more time no, "
        "bus does not wait, bus did not wait, bus came early, missed my bus|train|connection|lift|flight, school bus, "
        "after school club, time run out, time ran, more and no time, get a minute, not get a minute, did not get a "
        "minute, got revision, got exams|homework|coursework, revision today, too much to work|do, much to work, lot "
        "to work, no time more, traffic jam, in the traffic, work won, work took over, work got in, work had other "
        "plans, release night, office until|till|til, to the office, in the office until|till|til|all, double "
        "watch|duty|turn|run, extra run|trip|load|round|turn, worked long hours, long hours at work, deposition, brief "
        "due, tee time, book club, choir practice, never sat down, not sat down, never stopped all, never a free "
        "minute|moment|second, never a minute|moment, no free moment|second|hour, not have a minute|moment|second, is "
        "not have a minute|moment|second, not a free moment|second, never had a minute|moment|second, "
        "class|lesson|lecture|meeting|call|shift|exam|seminar|training|practice|service started|starts|began|begins, "
        "the bell rang, bell rang, bell went, had class|lecture|lesson|practice|training|school, before my "
        "train|bus|taxi|shift|class, bus at, train at, film study, run to class|work|practice|school|film, go run to, "
        "rush|rushed|dash|dashed|hurry|hurried to the office, quick|fast to the office, must quick|fast, go work "
        "early, go to work early, went to work early, chef called, "
        "shop|bar|restaurant|cafe|clinic|ward|surgery|salon|store|kitchen was|is|got "
        "packed|full|heaving|rammed|slammed|mobbed|crazy|mad, too many|much "
        "clients|customers|patients|tickets|orders|calls|emails|meetings|jobs|errands|things|visits|appointments, work "
        "swallowed|devoured|stole|consumed|filled|owned|ate my|the|all|up|it, swallowed my day, swallowed the day, tax "
        "day, boss rang|rings|came|wants|needed|needs, video call, pouring the slab|concrete|foundation, from dawn to "
        "dark|dusk, stocktake, inventory day, harvest, harvesting, lunch break let, duty called, had to stop and work, "
        "had to get back to work, home late, one meeting after the other|another, meetings without end, endless "
        "meetings|calls, viva, defence of my thesis, thesis defence, quarter close, month close, year close, on the "
        "phone all day|morning, phone all day, deadline at|for, work had me, work kept me, kept at it at work, client "
        "kept|needed|wanted|called, customer kept|needed|wanted|called, in the office all, no time for, open evening, "
        "school concert, moving patients, full clinic, surgery ran, clinic ran, had a shift, have a shift, back shift, "
        "split shift, on shift until|till, ran until|till, ran on until|till, went on until|till, lasted until|till, "
        "dragged until|till, running errands, errands all, paper due, report due, project due, homework to do, exam "
        "tomorrow|today, test today, train|bus|taxi|cab|lift|uber|tram|ferry was leaving|early|waiting|due|coming, "
        "train|bus|taxi|cab|lift|uber|tram|ferry is leaving|early|waiting|here|due|coming, parents evening at|was|ran, "
        "due at|by midnight|noon|nine|ten|9|10|12, due by tomorrow|tonight|friday|monday, at the office until|till|til"
    ),
    "too-hard": (
        "too hard, too difficult, too tough, too much, too heavy, too intense, too long, too advanced, too strenuous, "
        "too challenging, beyond me, could not hold it|them|the, was hard, very hard, so hard, hard for me, "
        "exhausting, exhausted, could not keep up, not strong enough, could not manage the|it|all, too demanding, "
        "wiped out, could not get into, difficult, not flexible enough, ran out of steam, out of steam, no strength "
        "left, legs gave up, impossible, too complicated, wiped me out, could not cope, too big, too steep, could not "
        "get back up, could not balance, could not get back up off, could not hold on, too hard for an old, hard "
        "today, beyond my, above my level, too advanced for me, beat me, bit off more than, balance is not good "
        "enough, will not fold, to heavy|hard|difficult|much|tough for, for me to|too heavy|hard|difficult|tough, very "
        "tough, so tough, tough for me, was tough, is tough, too tiring, tiring for me, too fast, too exhausting, too "
        "deep, too low, too technical, too tricky, way over my head, above my head, beyond my "
        "ability|abilities|strength|reach|capabilities, out of puff, ran out of puff|energy|power|strength|juice|gas, "
        "no more force|strength|power|energy, no force left, had no more force|strength|power, my force is finished, "
        "could not follow, can not follow, could not hold the|it|on|any, can not hold the, too hard for, more than i "
        "can, more than i could, could not get up off|from the, can not get up off|from the, could not get down, can "
        "not get down, could not kneel, can not kneel, can not reach, could not reach, not bendy enough, not strong "
        "enough for, not fit enough, too unfit, unfit, out of shape, too weak for, struggled with, struggling with, "
        "struggle with, defeated me, defeated by, did me in, finished me off, broke me, killed me off, gave up on it "
        "because, can not balance, too wobbly, not for beginners, not my level, higher level, not possible for me, "
        "impossible for me, very difficult, so difficult, really difficult, really hard, quite hard, quite difficult, "
        "super hard, pretty hard, extra hard, hard one, much too hard|difficult|heavy, too much hard|difficult, very "
        "heavy, so heavy for me, overdid it, pushed too hard, overwhelmed, overwhelming, not cope, can not cope, could "
        "not sustain, could not continue, could not go on, can not go on, no stamina, stamina gone, no condition, not "
        "manage the hard, a bridge too far, bridge too far, kept toppling, toppling over, toppled, kept falling over, "
        "fell over, finished me, it got too much, got too much, could not manage the one, could not do it properly, "
        "could not work out how, no understand, not understand, did not understand, do not understand, leg shake, legs "
        "shake, legs shaking, legs were shaking, was shaking, shaking like, the floor is a long way, long way down, "
        "arms gave up, legs were jelly, i was dead, was dead, tired much, too much for me, more than my body, past my "
        "limit, over my limit, at my limit, my limit, out of my league, not ready for, above my pay grade, pitched too "
        "high, level is too high, a killer, killer exercise|stretch|move, evil, brutal, savage, horrible, hard work, "
        "at my age, over my strength|strengths, too difficult at my age, too hard at my age, over my possibilities, "
        "beyond my possibilities, above my possibilities, much too difficult|hard|heavy|tough|demanding, way too "
        "difficult|hard|heavy|tough|demanding|advanced, for acrobats, for gymnasts, for contortionists, for athletes, "
        "for young people only, any longer too heavy, over my ability|abilities|level|capacity|capabilities"
    ),
    "ill": (
        "ill, sick, flu, unwell, covid, a cold, have cold, got cold, migraine, stomach bug, food poisoning, throwing "
        "up, vomiting, vomit, nausea, nauseous, sore throat, not well, not feeling well|good|great, under the weather, "
        "feel poorly, poorly, cold and cough, coughing, cough, virus, infection, tummy bug, feel rough, bug, sickness, "
        "diarrhoea, diarrhea, feeling rough, in bed with, runny nose, hungover, upset stomach, stomach is upset, "
        "stomach upset, the flu, got flu, have flu, ate something bad, fever and cough, streaming cold, this cold, "
        "lost my voice, tummy upset, got a cold, bad cold, heavy cold, head cold, grippe, migrain, headache all day, "
        "stomach cramps, stomach ache, throat infection, chest infection, tonsillitis, sinus, sinusitis, food poison, "
        "puking, the runs, bronchitis, ear infection, caught something, coming down with, threw up, nasty cold, "
        "stinking cold, poorly today, norovirus, the flue, a flue, flue, "
        "strong|bad|heavy|nasty|terrible|horrible|awful|big|huge cold, man flu, sneezing, vomited, stomach "
        "pain|pains|ache|bug, shingles, food poisoned, loose|loss motion|motions, sick with, fell sick|ill, fall "
        "sick|ill, fallen sick|ill, got sick|ill, feel sick|ill, feeling sick|ill, feeling very sick, am sick|ill, "
        "being sick, off sick, sick leave, sick today, catarrh, influenza, corona, covid positive, tested positive, "
        "testing positive, gastro, gastroenteritis, indigestion, acidity, heartburn, constipation, constipated, "
        "stomach is bad, stomach is not good, bad stomach, bad tummy, tummy trouble, dodgy tummy|stomach, the trots, "
        "the squits, delhi belly, gripe, grippy, cold since, catch cold, caught a cold, caught cold, catching a cold, "
        "catched a cold, got the cold, have the cold, have a bad cold, have strong cold, chesty cough, throat is sore, "
        "throat is bad, laryngitis, asthma, asthma attack, hay fever is bad, allergy, allergies, allergic, blocked "
        "nose, nose is blocked|running, stuffy nose, stuffed up, bunged up, full of cold, streaming with cold, "
        "pneumonia, measles, chicken pox, chickenpox, malaria, dengue, typhoid, jaundice, uti, kidney infection, urine "
        "infection, gum infection, abscess, tooth infection, tonsils, glandular fever, mono, sunstroke, heatstroke, "
        "heat stroke, dehydrated, sugar is low, blood sugar, not feel good|well, feel bad today, feeling bad, feel "
        "awful|terrible|horrible|dreadful|lousy|crap|like_death, feeling "
        "awful|terrible|horrible|dreadful|lousy|crap|like_death, felt awful|terrible|horrible|dreadful|lousy|unwell, "
        "off colour, out of sorts, peaky, queasy, bilious, ropey, ropy, lurgy, lurgi, dreaded lurgy, germs, in my "
        "sickbed, laid up with, bedridden, on antibiotics, taking antibiotics, vaccine knocked me, jab knocked me, "
        "after my vaccine, wiped out by a cold, tummy is in knots, in knots, bathroom trips, in the bathroom all, on "
        "the toilet all, toilet many time|times, viral, viral fever, coughing halfway, chesty, stomach bad, stomach is "
        "off, stomach off, in a&e myself, spewing, barfing, chundering, hurling, being sick all, upchucked, heaving, "
        "retching, runny tummy, upset tummy, temperature and cough, kidney stone, kidney stones, gallstones, gall "
        "bladder, sinus infection, eye infection, conjunctivitis, pink eye, strep, strep throat, mumps, rubella, "
        "scarlet fever, hand foot and mouth, lyme, anaemia, low iron, belly|stomach|tummy is|was|feels|felt "
        "upset|off|bad|sick|dodgy|not_good, upset belly, belly is upset, sick stomach, has me flattened, flu has me, "
        "in bits with, gas problem, gas trouble, acidity problem, stomach turned, stomach turned on|over me?, stomach "
        "turned against me, shivering with flu|fever|cold, migraine came|hit|struck|started|began, the migraine "
        "came|hit|struck|started|began, a migraine, stuffed nose, stuffed up nose, nose stuffed, gastro bug, tummy "
        "turned, stomach revolted, felled by a, down with flu|a_cold|covid|a_bug|the_flu, flat out with "
        "flu|a_cold|covid|a_bug, floored by flu|a_cold|covid|a_bug|the_flu"
    ),
    "other-why": (
        "lost interest, lost the mood|interest|motivation, my heart just was not in it, my heart was not in it, heart "
        "was not in it, missed the|my ferry|plane|tram|turn|exit|match|game|film|sunset|start, too hot, "
        "child|kid|kids|son|daughter|baby|husband|wife|mother|father is|was|are sick|ill|unwell, forgot, forgot about "
        "it, forgot it, travelling, traveling, no mat, no space, no equipment, no band, lost motivation, no "
        "motivation, not motivated, could not be bothered, did not feel like it, not feel like it, not in the mood, "
        "not feeling it|up_to_it, no energy, too tired, tired, knackered, shattered, lazy, no room, power cut, guests, "
        "visitors, wedding, party, lost the link, fell asleep on the sofa|couch, dog tired, so tired, sleepy, on the "
        "road, not bothered, cba, heart was not in it, no heart for it, bored of it, got bored, slept in, slept "
        "through, overslept, power was off, funeral, buried, battery died|went, phone died|was_dead, too cosy, forgot "
        "about, zero motivation, forget, i forget, slept thru|through, no signal, camping, gaming, staff do, "
        "electricity was gone, room was dark, floor was being, temptation, snapped after, no mat here, without a mat, "
        "power went, at the airport, airport, in the train, on the train, whole day travel, at a wedding, flight, "
        "flights, jetlag, jet lag, moving house, no light, power outage, broken boiler, plumber, builders, decorators, "
        "visiting, family over, birthday, party last night, hangover, motivation zero, could not be arsed, lazy day, "
        "felt lazy, on a|the plane|bus|road|coach|ferry, on a train, motivation took|had|dropped|was|gone|left, drop "
        "in motivation, dead tired, dead on my feet, sleep|slept too long, slept like, slept till|until, slipped my "
        "mind, on holiday with, no internet|wifi, internet was|is down|not|off, video froze|frozen, not feeling like "
        "it, car would not|did_not start, car broke down, train broke down, sharp|big drop|dip|dive in motivation, i "
        "was lazy, was lazy today, being lazy, out of station|town, not at home, away from home, away on business, at "
        "my mums|dads|nans|parents|sisters|brothers, i was away, was away, no sleep, hardly any sleep, slept badly, "
        "slept bad, slept til, slept in again, no courage, not the courage, had not the courage, no desire, no wish, "
        "no lust, no mood, no drive, no interest, no will, no willpower, lack of motivation|energy|sleep, low "
        "energy|mood|motivation, feeling low|down|flat|lazy|tired|sleepy|exhausted_after, felt "
        "tired|sleepy|low|down|flat, too sleepy, too lazy, too cold, too dark, too noisy, very tired, really tired, so "
        "so tired, tired after, tired from, am tired, was tired, body too tired, dead beat, worn out, drained, too "
        "drained, burnt out today, not in the right headspace, headspace not, distracted, got distracted, "
        "procrastinated, watching telly|tv|netflix|football|the_match|the_game, watched "
        "telly|tv|netflix|football|the_match|the_game|a_film instead, "
        "telly|tv|netflix|film|game|bed|sofa|couch|pub|cake instead, went to the pub|cinema|beach|park|party|gym "
        "instead, the telly won, the sofa won, sofa won, telly won, bed won, left my kit|mat|band|strap|phone, "
        "forgotten, i forget it, i forgot it, forgot all about it, forgot again, totally forgot, completely forgot, "
        "clean forgot, forget again, forgetting, just forgot, had forgotten, lost track of time, no water, no power at "
        "home, power went off, power cut here, light went off, boiler packed in, boiler broke, boiler man, gas man, "
        "plumber came, locked out of, wifi down, wifi was down, phone broke|broken|dead|died, phone was flat, no "
        "battery, app crashed, app would not, app did not, link did not, link would not, video did "
        "not|would_not|not_open, did not get the message, no message came, message did not come, internet not working, "
        "flood at home, argument, row with, fight with, broke up, breakup, split up, sad today, feeling sad, too sad, "
        "upset, crying, grieving, mourning, passed away, died today|yesterday|last_night, house guests, guests "
        "came|come|coming|had_come|were, visit came, came visit, came visitors, visitors came, people over, friends "
        "over, friends came, in laws, inlaws, family visit, relatives came, had people round, house full, full house "
        "of guests, babysitting, minding the, looking after the grandchildren|grandkids, had the "
        "grandkids|grandchildren, grandkids here, grandkids were, grandchildren here, puppy, new puppy, rain stopped, "
        "storm, snowed in, ice on the road, barbecue, bbq, festival, celebration, temple, puja, diwali, church, bank "
        "holiday, fasting, ramadan, wedding in, wedding today, engagement party, anniversary, hen do, stag do, on the "
        "train all, in the car all, driving all day, drove all, long drive, road trip, train all day, in travel, i am "
        "in travel, on travel, i travel, on trip, on a trip, on tour, on vacation so, in holidays, staying at a hotel, "
        "in the hotel, hotel room, at a hotel, jet lagged, jetlagged, time zone, moving flat|house|home|in, house "
        "move, packing, spring cleaning, furniture delivery, delivery came, waiting for the, waiting in for, waiting "
        "on the, we have holiday|holidays, have holiday|holidays, holiday today, stayed in bed, stay in bed, phone "
        "rang, telephone rang|rung|sounded, phone sounded|went, telephone has rung, movers came, movers, my ride, ride "
        "showed up, flat tyre, tow truck, walked home, still drunk, drunk, to the vet, in a&e with, in hospital with, "
        "weather got the better, bored, boring, was boring, so boring, detention, wet floor, floor is wet, floor was "
        "wet, cut of light, light cut, power was out, power out, function at home, family function, marriage in, in "
        "marriage, network problem|issue, video not loading, app not loading, not loading, not opening, guard my, "
        "chair has wheels, nap turned into, long nap, overslept again, snoozed, hit snooze, snooze button, turned off "
        "the alarm, alarm did not, alarm failed, alarm never, no alarm, went out of my head, clean out of my head, out "
        "of my mind completely, skipped my mind, holiday mode, mojito, beach day, pool day, mates were|came|over, "
        "friends were over, dinner date, on a date, date tonight, makes no fun, no fun, was no fun, fed up, could not "
        "care less, can not be bothered, cannot be bothered, can not be arsed, no oomph, no zest, mentally not, mental "
        "health, mental day, mentally exhausted|drained|tired, anxious today, anxiety, depressed, depression, feeling "
        "blue, heartbroken, rain all day, heat wave, heatwave, weather was, too humid, boiling in here, freezing in "
        "here, no heating, heating broke|broken|off, bins, traffic accident, car accident in, crash on the, strike, "
        "bus strike, train strike, rail strike, flight delayed|cancelled, cancelled flight, stuck at the "
        "airport|border|station|home_without, hotel had no, no gym, locked myself out, lost my keys, keys lost, fire "
        "alarm, burst pipe, flooded, roof leak, boiler leak, gas leak, decorator, electrician here|came|coming, man "
        "came, came to visit, dropped in unannounced, turned up unannounced, showed up unannounced, unannounced, "
        "surprise visit|guests|visitors, slept over, sleepover, kids party, school play, sports day, nativity, "
        "recital, parade, carnival, fireworks, bonfire, polling, voting, church today|service, bible, mass, mosque, "
        "prayers, prayer, eid prayers, fasting today, diwali cleaning, wedding shopping, shopping all day, shopping "
        "with, haircut, hairdresser, salon, mechanic, mot, car trouble, car problems, bike broke, lost my way, away "
        "for work, was out all, i was out, forgot to do it, forgot to, dozing off, dozed off, nodded off, nodding off, "
        "baby|kid|kids|newborn up all night, up all night with the? baby|kids|kid|newborn|toddler|teething|dog|puppy, "
        "kettle boiled over, out of action, off the grid, electric is|was|went|has_gone|got|been|being "
        "out|off|down|cut|gone, electricity is|went|has_gone|got|been out|off, electricity is down|cut, load shedding, "
        "loadshedding, brownout, brown out, it was pitch dark, so pitch dark, run down the battery, no electricity, no "
        "current at home, fan not working, guests came, the dog got out, cousins came, family lime, heart is? not in "
        "it, no current, gas problem with the cylinder, life got in the way, life happened, life intervened, life took "
        "over, the bed won, could not get myself off|up|out, it slipped my mind, slipped from my mind, slipped out of "
        "my mind, it slipped my mind completely|entirely|totally, completely slipped my mind, totally slipped my mind, "
        "dog ate my, ate my strap|mat|band|homework, race tomorrow|today|on, coach wants me, off my feet, coming for "
        "lunch|dinner|tea|supper|breakfast|coffee|the_weekend|a_visit, came for "
        "lunch|dinner|tea|supper|breakfast|coffee|a_visit, coming round|over for, came round|over for, the baby "
        "woke|cried|wakes|screamed|is_up, baby woke|cried|wakes|screamed|was_up, arrived with|unannounced|early, too "
        "windy, too wet, too stormy, too icy, began|started to rain, begun to rain, it rained, was raining, is "
        "raining, rained off, rained out, snooze, video stuck|buffering|stopped|crashed|froze, video would|did not "
        "play|load|open|start, no connection, slow internet|wifi, shooting|filming a? film|movie in, impossible to "
        "concentrate|focus, could|can not concentrate|focus, no place in|to|for, no room to|for|in, no space "
        "to|for|in, too exhausted, exhausted today|tonight, so exhausted today|tonight, just so exhausted, just "
        "exhausted, exhausted from|after, fatigued, too fatigued, so fatigued, i am wrecked, am wrecked, was wrecked, "
        "totally|completely|absolutely wrecked, no motivation left, motivation left, noise from the|next, neighbours "
        "drilling, drilling next door, hotel room too|is|was small, all guests, guests all, power cut all, bad "
        "wifi|signal|internet|connection"
    ),
    # --- feeling ----------------------------------------------------------------------------------------------------
    "pain": (
        "pain, pains, painful, hurt, hurts, hurting, hurted, paining, sting, stings, stinging, ouch, ow, owie, "
        "discomfort, uncomfortable, pinch, pinching, pinches, niggle, niggles, niggly, nagging, killing, in pain, "
        "pain level|score|rating|number, painfull, hurty, jab, agony, a pulling pain, headache, backache, is killing "
        "me, are killing me, pulled a muscle, pulled a|my|something, tweaked, strained, strain, tweak, sprain, "
        "sprained, twisted, tore? a muscle, injured, injury, hurt myself, hurt my, hurts my, pain in the neck, "
        "playing up, acting up, cramp, cramped, cramps, spasm, grumbling, grumpy, aggravated, flared up, flare up, "
        "irritated, a stitch"
    ),
    "no-pain": (
        "pain no have, no have pain, no part of me hurts, pain free, painless, painlessly, free of|from pain, no hurt, "
        "nothing hurts|hurt|hurting, 0 pain, zero pain, no pain whatsoever, pain not, sin dolor, without pain, no any "
        "pain, nothing hurts at all, not hurt, not hurting, not painful, never hurt, no more pain, pain "
        "none|nil|zero|nope, pain is not there, there is no pain, pain not there, pain is none|zero|nil, pain free "
        "today, nil|null pain, pain is null, no pain to speak of, nothing hurts me, no pain at all to report, nothing "
        "to complain, not a twinge, not a niggle, without any pain, without pains, zero pains, pains nil, "
        "nada|nil|zilch|zip|nix|nought|null|zip|nae pain, pain nada|zilch|nix|null"
    ),
    "severe": (
        "unbearable, excruciating, agonising, agonizing, worst pain ever|of|imaginable, worst ever, severe, severely, "
        "intense pain, extreme pain, crippling, horrendous, terrible pain, in agony, insane pain, awful pain, "
        "blinding, extremely painful, extremely, massive pain, so much pain, intolerable, hurts like hell, can not "
        "move, could not move, so bad i, in tears, intense, impossible to move, can not be moved, pain is killing, "
        "horrible pain, tremendous pain, strong pain, strong pains, very strong pain, very bad pain, terrific pain, "
        "insupportable, not bearable, can not bear, could not bear, can not stand the pain, could not stand the pain, "
        "can|could hardly|barely|scarcely move, hardly|barely|scarcely can|could|able_to move, hardly|barely|scarcely "
        "moving, hardly|barely move, unable to move, not able to move, moving is impossible, can not get out of bed "
        "for pain, through the roof, off the charts|scale, pain of my life, can not tolerate, could not tolerate, can "
        "not bear it, brought me to tears with pain, crying with|from pain, sick with pain, worst i have ever, "
        "screamed when|with|from, made me scream, screaming in pain, crying in pain"
    ),
    "sore": (
        "sore, soreness, sore muscles, doms, tender, tenderness, sores, muscle soreness, muscle pain, muscular pain"
    ),
    "dull": "dull, dull ache, ache, aches, achy, aching, ached, achey, achiness, dully, muscle ache|aches",
    "tight": "tight, tightness, stiff, stiffness, stiffer, tighter, tense, tension, stiffy, feel tight, tightish",
    "stretch-feeling": (
        "strong|good|nice|deep|big|intense|great|lovely stretch, stretch feeling, stretchy feeling, burning stretch, "
        "stretch sensation, good burn, feel the burn, felt the burn, burning stretch feeling, the burn, nice burn, "
        "pulling, stretch intensity, effort, intensity, difficulty, energy, mood, sleep, stress, motivation, fatigue, "
        "tiredness, rpe, exertion, good pain, nice pull, good hurt, enjoyment, rating, rate, fun, flexibility, "
        "stretch felt, hardness"
    ),
    "fine": (
        "fine, good, great, ok, okay, okey, alright, all right, perfect, happy, easy, lovely stuff, well, all good, "
        "no problem, no problems, no issues, no worries, no complaints, feeling good|great|fine|ok, normal, "
        "perfectly, nice one, no trouble, excellent, super, superb, cool, brilliant, awesome, amazing, loose, "
        "relaxed, feels good|great, felt good|great|fine|ok|nice, comfortable, loved it, enjoyed it, fantastic"
    ),
    "settled": (
        "settled, settled down, all gone, all fine now|again, fine now, ok now, okay now, good now, much better, a lot "
        "better, lots better, way better, completely gone, better, better now, recovered, eased, nothing left, calmed "
        "down, good again, fine again, feeling better, feels better, cleared up, gone now, healed, pain gone, has "
        "gone, subsided"
    ),
    "bit-better": (
        "a bit better, bit better, a little better, slightly better, little better, somewhat better, improving, "
        "getting better, a touch better, not better, no better, better but"
    ),
    "same": (
        "the same, same, no change, unchanged, same as before|yesterday, as before, not changed, about the same, no "
        "different, same again, still the same, has not changed, same same"
    ),
    "worse": (
        "worse, worsened, getting worse, got worse, it increased, increased, much worse, even worse, a bit worse, "
        "badder, worsening, not better but worse, worst"
    ),
    # --- kinds and red-flag words -----------------------------------------------------------------------------------
    "sharp": (
        "sharp, stabbing, stab, stabbed, stabs, stabby, piercing, like a knife, like knife, knife like, knife, "
        "knifing, twinge, twinges, twinged, twingy, razor, jolt of pain, a sharp one, searing, lightning, like a "
        "needle, ice pick, like a dagger, dagger, like a nail, like a skewer, skewer, like a hot needle, like a stab"
    ),
    "sudden": (
        "sudden, suddenly, all of a sudden, out of nowhere, from nowhere, all at once, abrupt, abruptly, at once, came "
        "on in a minute|second, in a minute, out of the blue, just like that, on a sudden, sudden like that, from one "
        "second|minute|moment to the next, in one second, in a second, in a split second, in an instant"
    ),
    "tingle": (
        "tingle, tingles, tingled, tingling, tingly, tinglings, pins and? needles, pin and needles, pins n needles, "
        "pins needles, pins, prickling, prickly, prickle, prickles, needles, fizzing, fizzy feeling, buzzing in, ants "
        "in|on|crawling, crawling feeling|sensation, sciatica, sciatic, trapped nerve, pinched nerve, nerve pain, "
        "nerve, nervy, paresthesia, paraesthesia, static feeling, hormigueo, static, like static, buzzing like, "
        "buzzes, buzzing, vibrating, vibrates, fizzes, fizzle, ants running, prickles all, pricking, ants walking, pin "
        "prickles, ants under, like ants, ants feeling, of ants, feeling of ants, formication, fourmis, kribbeln, "
        "jhunjhuni, jhanjhanahat, jhunjhunahat, pinning and needling, pin prick, pin pricks, pins in, like needles, "
        "needle feeling, sensation of needles, sparkling feeling, tickling down, bees in my, like soda, like sparkling "
        "water, like champagne, ants are|were marching|crawling|running|walking|dancing, ants "
        "marching|crawling|running|walking|dancing, army of ants, fizzy fingers|toes|feeling, fizzy like, fizzing "
        "like, all fizzy, like lemonade|cola|coke|fizzy_water|soda_water|sherbet, popping candy, tv static, like "
        "stinging nettles, nettles, nettle rash feeling, bugs crawling, spiders crawling, worms under, like tiny "
        "needles, tiny needles, thousand needles, million needles, buzzy, buzzy feeling, tingle tangle"
    ),
    "numb": (
        "numb, numbness, numbed, numbing, no feeling in, can not feel my "
        "foot|feet|leg|legs|toes|toe|hand|hands|fingers|finger|arm|arms|thigh|calf|face|left|right|lower|big|little, "
        "could not feel my foot|feet|leg|legs|toes|hand|hands|fingers|arm|arms|thigh|calf|face|left|right|lower, lost "
        "feeling|sensation, lost all? feeling in, loss of feeling|sensation, lost the feeling|sensation, fell asleep, "
        "falls asleep, falling asleep, fall asleep, went dead, goes dead, gone dead, felt dead, asleep, can not feel "
        "left|right, no sensation, no sensation in, feels dead, dead leg, sleeping foot|leg|hand, does not feel "
        "anything in, no feeling, leg|legs|foot|feet|arm|hand|hands|toes|fingers|thigh|calf fell|falls|went|goes|gone "
        "asleep|dead, leg|foot|arm|hand|thigh|calf is|was asleep|dead, legs|feet|hands|toes|fingers are|were asleep, "
        "can not feel toes|feet|hands|fingers|foot, like after an? injection, like after the? dentist, cotton wool, "
        "like a block of wood, block of wood, like wood, felt nowt, not feel the carpet|floor|ground|pedal|pedals, "
        "foot|feet|leg|hand|arm sleeps, sleeps since, not awaking, just not there, dead as a, has|have|had gone dead, "
        "like someone|somebody else, like another persons?, like a strangers, as if in gloves|socks|mittens, "
        "like|as_if in|wearing|through gloves|mittens|socks, like|as_if i am? wear|wearing|wore gloves|socks|mittens, "
        "like dead, no feel in, no sense in, lost the sense in, like gloves|socks|mittens on, like i have "
        "gloves|socks|mittens on, sleeps me, sleeps to me, without feeling, has no feeling, no sensitivity, lost "
        "sensitivity|the_sensitivity|my_sensitivity, insensitive, without sensation|sensitivity, is sleeping since, "
        "fell to sleep, furry feeling, feels furry, feels woolly, like made of wood, like rubber, like foam, no touch "
        "feeling, can not feel touch, feels like nothing, like anaesthetised, anaesthetised, anesthetised, "
        "anesthetized, belong|belongs to someone|somebody|another else?, belong|belongs to another person|body, "
        "belongs to a stranger, not my own, not part of me, does|do not feel like mine|mine, "
        "walking|stepping|standing|walk on "
        "wool|cotton|cotton_wool|sponge|sponges|cushions|foam|bubble_wrap|pads|marshmallows|pillows|felt, "
        "hand|foot|leg|arm|fingers|toes|thumb|calf|hands|feet|legs|arms went|gone|goes|going|go to sleep, has|have "
        "gone to sleep, feels|feel like wood|plastic|rubber|leather|cardboard|wax|sausages|a_sausage, like a dead "
        "fish, like dead meat, could|can not feel the floor|ground|pedal|pedals|carpet|mat, feel|feels "
        "cottony|wooden|waxy|leathery, like novocaine, like the dentist, dentist numb, novocaine, arm|leg|foot|hand is "
        "sleeping, feeling in my fingers|toes|foot|hand is away|gone|missing"
    ),
    "no-feel": (
        "can|could not feel anything|a_thing|much|it, feel|felt nothing, not feel anything, can|could not feel myself"
    ),
    "shoot": (
        "shooting, shoots, shot down, shot up, radiating, radiates, radiate, radiated, travels down|up, travelling "
        "down|up, runs down|up, running down|up my|the|both|left|right, ran down|up, zap, zapped, zapping, zinger, "
        "zing, shot through, spreads down, spreading down, goes down|up my|the|to, going down|up my|the, went down|up "
        "my|the, shots down|in, shooted, shot of pain, shoot down|up|into|through, live wire, bare wire, hot wire, "
        "electric wire, electric fence, plugged into the? mains|socket|wall, shots of pain, jumps down|into my|the, "
        "bolts down|through, bolt down|through, fires down|up|into, fired down|up|into, travels along|into|from, "
        "radiating into"
    ),
    "electric": (
        "electric, electricity, electrical, electric shock, electric shocks, like electricity, shock like, shocks, a "
        "shock, current going, electrocuted, electro, electroshock, like a shock, electrical shock, like shock, "
        "current, current coming, current in|through|down, electric current, with electricity, like current, jolts of "
        "electricity, lightning from|down|through|into|in my"
    ),
    "burn": "burning, burn, burns, burned, burnt, on fire",
    "pop": (
        "was a crack, there was a snap|pop|crack|crunch, pop, popped, pops, popping, snap, snapped, snapping, "
        "tore, torn, ripped, rip, something gave, something went, twang, twanged, ping, pinged, tearing, ruptured, "
        "rupture, heard a? crack, felt a? crack, a crack, crack in my|the|left|right, tear, something tore, "
        "dislocated, out of its? socket, crunch, plop, felt something go, something moved, crack pop, bang in it, "
        "heard a bang, felt a bang, a bang in, kicked me in the? heel|calf|leg|back_of_the_leg, felt like someone "
        "kicked, torn something, tore something, something ripped|snapped|cracked|broke|burst|popped, heard something "
        "go|tear|snap|rip, felt something tear|snap|rip|pop|break, felt it go, heard it go, loud "
        "bang|snap|noise|sound|click in my|the, snap noise|sound, pop noise|sound, popping noise|sound, snapping "
        "noise|sound, cracking noise|sound and, crack noise|sound, like a rubber band snapping, like a whip, whip "
        "crack, loud knack, a knack in, like a dry twig, dry twig, like a twig, like a branch, like a stick "
        "breaking|snapping, crack like, there was a crack, loud crunch|clunk|thunk|thud in, like a? celery, something "
        "pinged|twanged|gave_way, felt it tear|rip|snap|pop, felt it ping, like an elastic snapped|snapping, made a "
        "crack, made a pop, big crack, sudden crack, nasty crack, horrible crack, a krack, krack in, noise like a, "
        "went crack, made a noise like, sound like a whip, cracked loudly, loud crack|snap|pop|bang|noise, loud crack"
    ),
    "bruise": (
        "bruise, bruised, bruises, bruising, black and blue, haematoma, hematoma, gone purple, went purple, purple, "
        "black mark, turned blue, blue mark, black n blue, black and blue patch, blue patch, colour of a plum, color "
        "of a plum, purple patch, black patch, hematome, blue and green, green and blue, blue spot|spots|stain|stains, "
        "blue black, black blue, purple spot|spots|stain|mark, dark spot|stain on my, bruized, brused, all colours, "
        "all the colours, every colour, colours of the rainbow, rainbow coloured, multicoloured, blue and purple, "
        "purple and blue, purple and yellow, green and yellow, yellow and blue, is all blue, "
        "toe|knee|ankle|shin|foot|thigh is|went|turned|goes|gone blue, toe|knee|ankle|shin|foot|thigh|calf|elbow|wrist "
        "is|went|turned|goes|gone|has_gone all? black"
    ),
    "swell": (
        "blew up, blow up, swelling, swollen, swelled, swells, swell, swole, puffy, puffed up, ballooned, blown up, "
        "swelled up, swollen up, inflated, thick knee|ankle, size of a, like a "
        "balloon|melon|sausage|football|grapefruit|tennis_ball, bigger than the other, twice the size, double the "
        "size, thick like, full of water, fat as a, blown up like, way bigger than, thicker|fatter than the? "
        "other|left|right, twice|double as big|thick|fat, double as thick|big, inflamed, inflammation, "
        "bigger|thicker|larger|fatter than|as|like|then the? other, bigger|thicker|larger|fatter than|as|then the? "
        "left|right, got|become|became|gone very? big, is getting big, has water in, water in the? knee|ankle|joint, "
        "fluid in the? knee|ankle|joint, fluid on the? knee|ankle|joint, like a ball|pumpkin|tree_trunk|watermelon, "
        "swelt, swoll, swoled, sweling, sweled, like a? "
        "sausage|sausages|plum|egg|tennis_ball|football|melon|orange|apple, up like, come up like, came up like, come "
        "up like, came up big, egg sized, bloated ankle|knee|foot|calf|leg, swells up, fat "
        "shin|ankle|calf|knee|foot|leg|shins|ankles, twice its size|normal, double its size, lump the size, thickened, "
        "water on the? knee, filled up with fluid, filled with fluid, fluid in, big as a, as big as a, size of an, the "
        "size of my other, double|twice so big|thick|fat|large, doubled in size, tripled in size, grown to twice"
    ),
    "no-weight": (
        "can not put wait on, can not put any wait on, can|could not load, can|could not put|bear|take|place|load "
        "any|my? full? weight, no weight on it?, can|could not step on, can|could not stand on|up, unable to "
        "walk|stand, can|could not walk, can not weight bear, could not weight bear, not able to walk|stand|put, not "
        "weight bear, impossible to walk|stand, not hold my weight, not take my weight, not carry my weight, not bear "
        "my weight, not take weight, not bear weight, not hold me, not put weight, not put any weight, not putting "
        "weight, not support me, not support my weight, weight bearing is impossible, will not hold me, will not take, "
        "does not hold me, can not to walk|stand, no can walk, can not put my? foot down, could not put foot down, not "
        "stand on, no longer walk, can no longer walk|stand, not walk on, walk impossible, walk on it is not possible, "
        "stand on it is not possible, walk on it not possible, not possible to walk|stand, can not to put weight, "
        "cannot to put weight, not able to step, unable to step|put|bear|load, can|could not step onto|with|down, "
        "can|could not put it down, can|could not put my|the foot down|to_the_floor, can|could not lean on, not carry "
        "me, impossible to step, not possible to step, hopping on one leg|foot, can|could not support, can|could not "
        "tread on, can|could not rest on, not put it down, not put my foot|weight, can not put foot, can not stand "
        "with, no way to put weight, impossible to put, can|could not put|bear|take|place|load the|much|full|all "
        "weight, can|could not put all my weight, can|could not put the full weight, can not bear my, not bear the "
        "weight, not take the weight, can|could not get weight on, no weight bearing, unable to weight bear, not able "
        "to bear weight, can|could not put pressure on, refuses to take my weight, refuses my weight, weight on it is "
        "impossible, can|could not put no weight, can|could not put no weight on it"
    ),
    "barely-walk": (
        "hurts|painful to stand on?, too much to stand on?, hard|difficult|impossible|tricky to put weight, can|could "
        "barely|hardly walk|stand, barely walk|stand|walking|able, hardly walk|stand, limping, limp, limped, hobbling, "
        "hobble, hurts|painful to put weight, hurts to walk, struggling to walk, can not walk "
        "properly|normally|straight, could not walk properly|normally, trouble walking, difficult to walk, hard to "
        "walk, can not stand, could not stand, painful to walk, on crutches, crutches, can|could not step on it"
    ),
    "gives-way": (
        "knee|ankle|hip|leg just gives, knee|ankle|hip|leg gave|gives in, gives way, gave way, give way, giving way, "
        "given way, gives out, gave out, giving out, give out, buckled, buckles, buckling, buckle, gave up under me, "
        "collapses under me, collapsed under me, goes from under me, went from under me, folded under me, unstable, "
        "gives in, gave under me, not stable, gived way, locked up|solid, slipped out, popped out, out of joint, "
        "folding under me, folds under me, went out on me, goes out on me, keeps giving, let me down on the stairs, "
        "keeps folding, gives under me, go away under me, goes away under me, gave way two|three times, gives from "
        "under, gave from under, bends away under, knee|leg|ankle collapses|collapsed, leg|knee|ankle folds|folded, "
        "leg|knee|ankle keeps folding, knee|leg|ankle|hip fails, knee|leg|ankle|hip failed, knee|leg|ankle is|was "
        "failing, fails me, failed me on the stairs, knee|leg|ankle breaks|broke away|down, gives after, gave after, "
        "gived after, sags away, knee|leg|ankle goes|went soft|to_jelly, knee|leg|ankle bends in, does not carry me, "
        "did not carry me, drops me, "
        "slides|slide|slid|slips|slip|goes|went|drops|dropped|shoots|falls|fell|disappears|vanishes out? from under "
        "me, slips|slipped|slides|slid|moved|moves out of place|joint|position, drops away, dropped away, drop away, "
        "gives up on me, gave up on me, bends the wrong way, bent the wrong way, wobbles sideways, kneecap "
        "wobbles|slides|moves|slipped|jumped|jumps, kneecap slides, gave from underneath, goes from underneath, went "
        "from underneath, gives from underneath, folds like, folded like, will not hold my weight and folds"
    ),
    "weak": (
        "lost it_is strength, lost all it_is? strength, loses it_is? strength, "
        "went|gone|goes limp, weak, weakness, weaker, no strength in, can not lift my, could not "
        "lift my, can not raise my, could not raise my, can not move my, could not move my, can not grip, could not "
        "grip, foot drop, drop foot, dropping things, paralysed, paralyzed, paralysis, limp arm|leg, strength gone, "
        "dragging my foot|leg, foot drags, can not lift my? foot|arm|leg, lost control of my arm|leg|hand|foot, can "
        "not control my|the arm|leg|hand|foot, will not lift, would not lift, not lift, fell out of my hand, falls out "
        "of my hand, fall out of my hand, like it is not mine, not mine, no grip, keep|kept dropping "
        "mugs|cups|things|stuff, foot slaps, slapping foot, can not lift the toes|foot|arm, can not lift my toes|foot, "
        "can not hold a cup|mug|pen, will not do what i want, not obey, floppy, went floppy, all floppy, lose "
        "grip|my_grip|the_grip, losing my grip, lost grip|my_grip|the_grip, loose|loosing grip, can not make a fist, "
        "could not make a fist, losing|loses strength|grip, lost strength, loss of strength, lost all strength, "
        "keep|keeps|kept dropping my, can not hold my|the cup|mug|phone|pen|fork|spoon|glass, toes drag, leg drags, no "
        "strength, foot drops|hangs, toes hang, trip|tripping|tripped|stumble|stumbling|stumbled over my "
        "toes|feet|foot, useless, went useless, is useless, dragging it, dragging behind, grip is|was "
        "going|gone|failing|weak|rubbish|bad|poor, grip going, grip gone, i drop cups|things|everything|stuff|mugs, "
        "dropping cups|mugs|plates|stuff|everything, foot flops|slaps|flopping, can not push off with, strength has "
        "left, strength left, legs will not listen, leg will not listen, no push in, heavy as lead and will not, "
        "drop|drops|dropped cups|mugs|plates|things|stuff, keep|keeps|kept dropping everything"
    ),
    "droop": (
        "hanging, hangs, drooping, droop, drooped, droops, droopy, lopsided, face dropped, dropped on one side, "
        "hanging down, sagging, saggy, crooked, face fell, face is hanging, fallen on one side, dropped, slid, slid "
        "down, slides down, slipped down, melted, melting down, will not move when i smile, does not move when i smile"
    ),
    "speech": (
        "slurred, slurring, slur, slurs, can not speak|talk, could not speak|talk, not speak|talk properly, words come "
        "out wrong, can|could not find|get words|the_words|my_words|the_right_words, mumbling, trouble "
        "speaking|talking, talking funny|nonsense, words would not come, not get words|the_words|my_words, difficulty "
        "speaking|talking, jumbled words, words were jumbled, unable to speak|talk, hard to speak|talk, "
        "problem|problems speaking|talking|to_speak, cant speak, words coming|come|came out all? "
        "scrambled|funny|wrong|jumbled|backwards, could not say my, talking like, mouth full of marbles, words will "
        "not come, mixing up my? words, speech is coming|came out, speech coming out wrong, can not get my words out, "
        "could not get my words out, say the wrong words, could not find my words, can not find my words, lost my "
        "words, could not find words, just could not talk, could not talk, "
        "speak|talk|talking|speaking|sound|sounded|sounding|sounds like|as a? drunk, words are wrong|jumbled|muddled, "
        "muddled words, mixing words, mixed up my words, can|could not form words|a_word|a_sentence, can|could not get "
        "a word out, can|could not say words|a_word|the_words|my_name, words do|did not come, words come wrong, tongue "
        "is|was|feels|felt? heavy|thick, talking gibberish, speaking gibberish, lost my speech, speech|words "
        "is|was|were|are|went|goes|go|gone|got|came|come|coming|sounds|sounded all? "
        "slurry|mushy|garbled|thick|slurred|gibberish|nonsense|mumbly|drunk, talking|speaking all? "
        "slurry|mushy|garbled, slurry speech|words|talking, garbled speech|words, mushy speech|words, "
        "speak|speaks|talk|talks slurry|garbled, tongue will not work|move, tongue does not work|move, could not speak "
        "straight, can not speak straight, mouth does not work, mouth will not work, could not make words, can not "
        "make words, could not make a sentence, can not make a sentence, words get stuck, lost the words, "
        "lose|losing|lost|losed the|my? words, able to find the? words, not able to find the? words, unable to find "
        "the? words, not able to find words, words escape|escaped|vanish|vanished|disappear|disappeared, makes wrong "
        "ones|words, wrong words, say|said|saying the? wrong words|word|thing|things, wrong words come|came, words "
        "come out all, could|can not string a sentence, could|can not string words, could|can not finish my sentence, "
        "forgot how to speak|talk, lost his|her speech, my speech went|goes|is|was, tongue tied and, talking rubbish "
        "suddenly, talk rubbish suddenly, speak like my mouth, mouth full of cotton, words were mush, words are mush, "
        "speech is mush"
    ),
    "vision": (
        "vision, eyesight, sight, blurred, blurry, double vision, seeing double, saw double, see double, can not see, "
        "could not see, lost vision|sight, went blind, blind in, blind, eye went, tunnel vision, spots in front, "
        "vision loss, black spots, vision went, sees double, see stars, seeing stars, saw stars, can not see well, "
        "trouble seeing, see blurry, seeing two of, see two of, saw two of, black curtain, grey curtain, like a? "
        "curtain, curtain over|came, see on one eye|side, half my vision|sight, see only half, half of what i see, "
        "grey veil, went grey, can|could not see anything|nothing? on one|my|the left|right? side|eye|half, can|could "
        "not see from|with one|the|my left|right? eye, can|could not see the left|right side|half, no sight in, sight "
        "went, sight is gone, vision is gone, double images, see flashes, flashes of light, zigzag lines, "
        "everything|all|it went|goes|is|was|turned double, see two|twice of everything, seeing two, saw two, view "
        "is|was|went blurry|double|foggy|cloudy, eyes went blurry|foggy|cloudy|funny, foggy vision, cloudy vision, "
        "vision foggy|cloudy, sight blurry|foggy, lose|loosing|losing|lost the view|sight|vision"
    ),
    "on-chest": (
        "sat|sits|sitting|stood|stands|standing|kneeling|kneels|knelt|lying|lies|pressing|leaning|jumping down? on "
        "my|the chest|breastbone|ribs, "
        "parked|dropped|left|put|placed|plonked|planted|pinned|piled|rolled|resting|weighing on my|the "
        "chest|breastbone|ribs|sternum, on my breastbone|sternum, squashing|crushing my chest, chest in a vice|vise, "
        "chest is caving, chest caving in"
    ),
    "half-seen": (
        "half of? the|my? screen|page|picture|text|telly|tv|view|room|words is|was|are|were? missing|gone|black|dark"
    ),
    "look": "look at, looking at, looked at, i look, when i look",
    "no-power": (
        "no power, no power in, no power left, no power left in, lost power, lost all power, loss of power, "
        "losing|loses power, without|less|little power, power|strength|force is gone|missing|less|away, lost force, "
        "no force in, lost my|the strength|power|force, no|without|less|little force, without|less|little strength, "
        "without any power|strength|force"
    ),
    "grip": "can|could not open the|a|my? jar|jars|lid|lids|bottle|bottles",
    "by-itself": (
        "by itself, by themselves, on its own, without i want|notice|know|feel|wanting, without me "
        "wanting|knowing|noticing|feeling, without noticing, without control, without warning"
    ),
    "hurts-more": "more painful, more sore, sorer, hurts more, more pain",
    "odd": (
        "weird, odd, strange, lost, loss, trouble, problem, problems, funny, double, changed, doubled, not normal, "
        "wrong with, is wrong, dribble, dribbles, dribbling, trickle, not like before, not as usual"
    ),
    "stroke": (
        "had a stroke, having a stroke, a stroke, mini stroke, a tia, like a stroke, got a stroke, have stroke, have "
        "a stroke"
    ),
    "heart-attack": "heart attack, angina, cardiac, cardiac arrest",
    "press": (
        "pressure, pressing, pressed, squeeze, squeezing, squeezed, crushing, crushed, crush, heavy, heaviness, "
        "heavyness, tight band, constricted, constriction, a weight on, band around, vice, clamped, clenching, "
        "elephant, squashed, pressings, gripping, pushing, oppression, oppressing, compressed, compression, truck, "
        "truck on, sitting on me, sits on me, brick on, bricks on, parked on, weight on my, somebody|someone was|is? "
        "sitting, sitting on it, standing on it, big stone, heavy stone, stone on, like a stone on, sat|sitting down? "
        "on me, a belt around, tight belt, like a belt, iron band, in a vice, presses, presses me, pushes on"
    ),
    "breathless": (
        "can not get enough air, not enough air, not getting enough air, can not get any? air, can hardly get any? "
        "air, hardly get any? air, hardly any air, badly out of breath, out of breath even, out of breath at rest, "
        "short of breath at rest, so short of breath, very short of breath, gasping for air, struggle|struggling for "
        "air|breath, almost|nearly|practically no air|breath, get|getting|got hardly|barely|little|too_little air, no "
        "air when|if i, breathless, breathlessness, can|could hardly|barely breathe|breath, short of breath, shortness "
        "of breath, can not breathe|breath, could not breathe|breath, can not catch my breath, could not catch my "
        "breath, struggle|struggling|struggled to breathe|breath, gasping, hard to breathe|breath, difficulty "
        "breathing, trouble breathing, not breathe|breath, wheezing, difficult|difficulties to breathe|breath, unable "
        "to breathe, not get enough? air|breath, no air, not breathing well|properly, fighting for breath, catch my "
        "breath, breathing difficulty|difficulties|problems|trouble, breath problem|problems, can not get my breath, "
        "could not get my breath, suffocating, problem|problems to? breathe|breath|breathing, breathing is "
        "hard|difficult|heavy, short breath, lack of air|breath, not able to breathe, no breath, missing air, "
        "can|could not finish|get a sentence, can|could not get a whole sentence, huffing like, huffing sitting, can "
        "not finish sentences|a_sentence, terribly short of breath, no puff left, can|could not get any? air in?, not "
        "get my breath back, not get any? air in, no breath left, air hunger, get no air, got no air, getting no air, "
        "out of air, no oxygen, can not take a? breath|air, breath does not come, breathing short, short breathing, "
        "breath is short|gone|not_coming, need air, no wind, air does not come, the air misses me, lacks me the air, "
        "missing the air, lungs will|do|did not fill|open|work|expand, can|could not fill my lungs, can|could not get "
        "a full|deep|proper breath, can|could not take a full|deep|proper breath, no full breath, half a breath only, "
        "breath stops halfway, can|could not draw breath, can|could not get air, starved of air, bad air, get bad air, "
        "no good air, badly air"
    ),
    "puffed": "out of breath, puffed, puffing, winded, panting",
    "faint": (
        "switched|turned off the light|lights and i lay|fell|dropped|woke, faint, fainted, fainting, passed out, pass "
        "out, passing out, blacked out, black out, blackout, collapsed, collapse, lost consciousness, unconscious, "
        "keeled over, fell unconscious, syncope, fainty, nearly fainted, almost fainted, about to faint, everything "
        "went black, went black, fall unconscious, lost conscience, lose consciousness, losing consciousness, came to "
        "on the floor, woke up on the floor, faints, fell down without, lights out, went lights out, everything went "
        "dark, went dark, all went dark, hit the floor|deck, came round on, woke up on the carpet|mat|ground, greyed "
        "out, next thing i am|was on, out cold, out for a few secs|seconds, lost conciousness, lost conscious, lost my "
        "consciousness, unconcious, found myself on the floor, everything turned black|dark, blackd out, blacked, woke "
        "on the floor|ground|carpet, see|saw|seeing black, black before|in_front_of my|the eyes, eyes "
        "went|became|got|go black|dark, went black before, lost knowledge, lost the consciousness, lost the "
        "conscience, lost my conscience, swooned, swoon, faded out, fell in faint, fall in faint, fell faint, i fell "
        "down unconscious, without consciousness, came|coming|come round on the floor|ground|carpet|mat, coming round "
        "on, lying on the floor|ground and|suddenly|again, then i was lying|on, i was lying on the floor|ground, "
        "woke|wake up lying, like somebody|someone switched|turned off the? light|lights, switched off the "
        "light|lights for, passed clean out, passed right out, lost a few seconds|minutes, lost some "
        "seconds|minutes|time and, out like a light when i, next thing i knew i, next thing i know i, next thing i "
        "remember, keel over, keeling over, found me on the floor|ground, sparked out, conked out on the floor, went "
        "down like a, dropped like a stone, legs went and i was down, hit my head when i went down, went over like a, "
        "woke|wake|waking up on the? bathroom|kitchen? tiles|lawn|grass|stairs|pavement|step|steps, no idea how i got "
        "there, no memory of falling, ceiling and my wife|husband shouting, all|everything was black|dark, "
        "all|everything became black|dark, away for a_few|some|several seconds|moments|secs, gone for "
        "a_few|some|several seconds|moments|secs, i was away for a_few|some|several seconds|moments|secs|minutes, was "
        "away for a_few|some|several seconds|moments|secs, i was gone for a_few|some|several seconds|moments|secs"
    ),
    "palpitations": (
        "heart did a? backflip|somersault|flip|cartwheel|loop|tumble, heart stopped for|and_started, heart paused, "
        "heart stood still, heart rhythm, rhythm is off|irregular|odd|weird|wrong, palpitations, palpitation, "
        "irregular heartbeat|beat|pulse|heart, heart skipped|skips|skipping|missed, skipped beats|beat|a_beat, "
        "skipping beats|a_beat, skip beats|a_beat, fluttering, flutter, arrhythmia, irregular, missed beats, heart "
        "jumping, irregularly, extra beats, heart flip, beats strange|weird, heart beat weird|odd|strange, out of "
        "rhythm, not regular, unregular, atrial fibrillation, afib, missing beats|a_beat, misses beats|a_beat, heart "
        "stumbles|stumbling, heart is? doing somersaults, heart is? all over the place, ticker is? all over the place, "
        "skips then, heart is? out of sync, heart somersaults, beats are missing, heart trips|tripping, off rhythm, "
        "beating all over the? place, beating irregularly|irregular|wrong, beats off, out of beat, heart jumps a beat, "
        "stumbling heart, uneven heartbeat|beat|pulse, pulse is irregular|uneven|jumping, heart is fluttering, heart "
        "flutters|fluttered, heart is? out of step|time|tune|whack, out of step, all out of step, heart "
        "goes|going|went haywire|berserk|bonkers|wonky|doolally, heart is? beating wrong|oddly|wonky|unevenly, heart "
        "keeps missing|skipping|stopping|jumping|stumbling|fluttering, heart stutters|stuttering|stuttered, heart "
        "quivers|quivering, heart flip flops, heart flip flopping, heart flops, heart flopping, heart turning over, "
        "heart jumps around, heart pauses|pausing, thumps then stops|nothing|pauses, heart bumps, heart "
        "misses|missing|missed, pulse|heart is? all over the shop, pulse is? all over the place"
    ),
    "talk": "speech, talking, speaking",
    "sweat": "sweating, sweat, cold sweat, clammy",
    "racing": (
        "jumps, jumps and skips, skips around, racing, pounding, thumping, hammering, beating "
        "fast|hard|weird|strange|funny|oddly|like, jumping, going crazy|mad|weird|funny, stops, stopped beating, "
        "flipping, galloping, boom, thudding, banging, quivering, wobbling, drumming, going "
        "nuts|bananas|bonkers|haywire, going like the clappers, racing away, beating out of, jumping out of, beating "
        "very? fast, beating like, a hundred miles, beats too much|sometimes|irregular|strong|fast"
    ),
    "dizzy": (
        "faint headed, faintheaded, dizzy, dizziness, lightheaded, light headed, lightheadedness, light headedness, "
        "head spinning, head is spinning, room spinning, room was spinning, room spun, spinning room, vertigo, woozy, "
        "giddy, dizzyness, head spins, world spinning, everything spinning, everything spun, everything was spinning, "
        "head rush, unsteady, head was spinning, head started spinning, head turns, head swimming, room went round, "
        "went round and round, swimmy headed, swimmy, spinny, head went round, head goes round, head did the, light in "
        "the head, swimming head, head was swimming, wobbly head, head|room|world|everything|floor|ceiling|walls "
        "is|was|were|started|starts|keeps? turning|spinning|swimming|moving|rotating  round|around?, "
        "head|room|world|everything turned|turns|spins|spun round|around, everything went round, carousel in my head, "
        "giddiness, giddyness, giddy feeling, feeling giddy, felt giddy, swimming feeling, head is going round, head "
        "going round, dissy, dizzines, vertiginous, vertigos, see stars when, lose my balance when i turn, a "
        "funny|bad|queer turn, had a wee|little turn, head turn, head is turn, head turned, head all over the place "
        "and swaying, swaying, see the room move, room tilted|tilts|tilting|moving|moved|swayed, floor "
        "tilted|tilts|tilting|moving|moved|swayed, everything tilted|swayed|swaying, walls moving, drunk feeling, feel "
        "drunk, felt drunk, like i was drunk, like on a ship, seasick, lighthead, lightheadded, whoozy, off balance, "
        "like on a boat|ship"
    ),
    "fever": (
        "fever, high temperature, a temperature, temperature, chills, night sweats, high fever, running a "
        "temperature, shivering, feverish, a temp, temp of, got a temp, got temp, temperature of, feber, fieber, "
        "fiebre, febrile, fevr"
    ),
    "weight-loss": (
        "lose|losing weight without any? reason|cause|trying, weight loss, losing weight, lost weight, losing a lot of "
        "weight, dropped weight, lost a lot of weight, lost so much weight, weight is dropping, weight dropping, "
        "loosing weight, losing kilos, lost kilos, lost loads|lots|tons|plenty of weight, trousers are falling off, "
        "clothes are falling off, weight is falling off, dropping weight, getting thinner, lost a stone, lost "
        "two|three stone, without trying, without diet, without dieting, weight goes|going|went down, getting thin, "
        "got thin|thinner, clothes are loose, trousers are loose, belt is two|three|four holes, holes tighter, "
        "trousers too big, clothes too big, clothes hang off me, clothes hanging off me, weight just "
        "falls|fell|drops|dropped|comes|came off, weight keeps falling|dropping|coming off"
    ),
    "wake": (
        "woke up at 1|2|3|4 because|with|from, woke me, wakes me, woke me up, wakes me up, waking me, woken by, keeps "
        "me awake|up, kept me awake|up, could not sleep, can not sleep, woke up with|from|by|because, waking up with, "
        "wake up with|from|by|because, no sleep because, awake all night, awake with, hardly slept, not sleep, wakes "
        "up me, wake me up, woken up by, waking up from|by|because, up all night, drags me out of sleep, pulls me out "
        "of sleep, kept waking me, keeps waking me, wakes me from sleep, woke me three|four|two times, waking up "
        "because, does not let me sleep, will not let me sleep, keeps me from sleeping, wakes me each|every, wake up "
        "every night, wake every night, wakes up every night, up at 1|2|3|4 every night, up at one|two|three|four "
        "every night, up pacing, pacing the floor|house|room, walking the house|floor at, walking round the house, up "
        "half the night with, up most of the night with, awake half|most of the night, wake every hour|few, woken "
        "every, can not lie on, no way of lying, no position to sleep, wakes me every night|time|hour, jolts me awake, "
        "jolted me awake, pulled me out of sleep, robs me of sleep, robbed me of sleep, steals my sleep, up with it "
        "all night, keep|keeps|kept waking up|with|me, keep|keeps|kept waking, waking every|with, wake me, awake me, "
        "awakes me"
    ),
    "nightlong": (
        "all night, half the night, the whole night, all night long, the night through, whole night long, every single "
        "night, night after night, through the whole night, all through the night, till morning, until morning"
    ),
    "night": (
        "at night, in the night, nights, every night, during the night, nightly, by night, middle of the night, "
        "through the night, night, each night"
    ),
    "throb": (
        "throbbing, throb, throbs, throbbed, pulsing, pulsating, pounding like, beating like a? drum, pulses, pulse in "
        "my calf|leg|thigh, beats like, like a toothache, like a heartbeat in"
    ),
    "warm": "warm, hot, red, reddish, redness, warmth, heat, feels hot, warmer, hotter",
    "control": (
        "no control over|of|in, control, leak, leaking, leaked, leaks, can not hold, could not hold, accident, "
        "change, changes, different, not working, not empty, lost control, losing control, loss of control, not "
        "control"
    ),
    "cant-pee": (
        "can|could not feel when i, can not pee|urinate|wee|poo|piss, could not pee|urinate|wee|piss, unable to "
        "pee|urinate|wee, trouble|difficulty|problems|problem peeing|urinating|weeing, wet myself, soiled myself, peed "
        "myself, pissed myself, wetting myself, incontinent, incontinence, not hold my? pee|urine|wee|poo, not control "
        "my? pee|urine|wee|bladder|bowel|bowels, leaking urine|pee, lost control of my? bladder|bowel|bowels, pooed "
        "myself, peeing myself, hard to pee|urinate, not able to pee|urinate, difficult to pee|urinate, "
        "problem|problems to pee|urinate|go_toilet, not feel when i pee|wee|go, accident in my pants, peed a "
        "little|bit, leaked urine|pee, leak urine|pee, wet my pants, urinary retention, not notice|know|feel when i "
        "need to go, can not hold my? water|wee, could not hold my? water|wee, no poo|pee|bladder|bowel control, no "
        "control of|over my? bladder|bowel|bowels|pee|poo, accident in bed|my_bed|the_bed|my_trousers|my_pants, wet "
        "the bed, not feel the paper, not feel it when i wipe, not feel when i wipe, leaking pee|wee, leak a bit of "
        "pee, bladder does|do not work, bladder not work, not been able to pee|wee|go, been able to pee, unable to "
        "pee, pooing myself, pooing without knowing, pooed without knowing, weeing without knowing, no control when i "
        "go, it just comes, no control on the toilet, no feeling when i go, poop|poo|pee|wee accident, "
        "poop|poo|pee|wee accidents, nothing comes, not when the? bladder is full, bladder is full, can|could? not "
        "feel the? toilet_paper|paper|loo_roll|toilet_roll|loo_paper|tissue|wiping, can|could not feel myself "
        "wipe|wiping, can|could not feel me|it wipe, can|could? not hold my|the urine|stool|poop, can|could not start "
        "peeing|weeing|to_pee, pee|wee will not come, no urge to pee|go|wee, can not tell when i need|have, wetting "
        "the bed, have to push to pee|wee, dribbling pee|urine|wee, not get|make|make_it to the toilet in time, not "
        "feel|notice|know when i have|need|must, can|could not pass water|urine|wee, unable to pass water|urine, not "
        "pass water|urine, pooped|pooed|crapped|shat|shit|messed myself, pooped|pooed|crapped|shat|shit|messed my "
        "pants|trousers|bed, pooping myself, did not make it to the loo|toilet|bathroom, dribbles since, just "
        "dribbles, only dribbles, keeps dribbling, wee just dribbles, trickles out, leaks out, comes out without, wet "
        "the chair|car|sofa|carpet|floor, wet through my trousers, no warning when i need, can|could not tell if i am "
        "going|weeing|peeing, lost control down there, lose|losing a? little|bit|few_drops|some of? "
        "urine|pee|wee|water, lose|losing|lost urine|pee|wee, drops of urine|pee, leak when i cough|sneeze|laugh|jump, "
        "can|could not hold my|the water, not hold my|the water"
    ),
    "saddle": (
        "between my? the? legs, between my|the thighs, groin, saddle, saddle area, genitals, genital, crotch, private "
        "parts, privates, perineum, down there, down below, undercarriage, bum, bottom, buttock, buttocks, backside, "
        "butt, anus, vagina, penis, testicles, balls, nether regions, seat area, when i wipe, between legs, bits "
        "down, private area, intimate area, my seat, intimate parts, tailbone and, where i sit, sitting area, where i "
        "wipe, my behind"
    ),
    "bladder": (
        "bladder, bowel, bowels, urine, pee, peeing, wee, toilet, stool, poo, urinate, urinating, urination, "
        "sphincter, poop, shits"
    ),
    "one-side": (
        "all down my left|right side, one side, one sided, left side of my body, right side of my body, left side of "
        "body, right side of body, whole left side, whole right side, half of my body, half my body, half of my face, "
        "half my face, one half, left side of my face, right side of my face, entire left side, entire right side, "
        "all down one side, side of my face, corner of my mouth, left side of me, right side of me, all my left|right "
        "side, all left|right side"
    ),
    # --- places of the body ----------------------------------------------------------------------------------------
    "chest": ("chest, breastbone, sternum, chests, ribcage, breast, thorax, heart area|region, breast bone, rib cage"),
    "neck": "neck, throat",
    "jaw": "jaw",
    "arm": "arm, forearm, upper arm",
    "face": "face, mouth, lip, cheek, smile, eyelid, lips, tongue",
    "calf": "one of my calves, calf",
    "thigh": "thigh",
    "leg": "leg, lower leg, upper leg",
    "heart": "heart, heartbeat, pulse, heart beat, my beat, ticker",
    "limb": (
        "arms, hamstring, hamstrings, hams, quad, quads, quadriceps, calves, thighs, legs, foot, feet, toe, toes, "
        "shin, shins, heel, heels, arch, achilles, ankle, ankles, knee, knees, kneecap, hand, hands, finger, fingers, "
        "thumb, wrist, wrists, elbow, elbows, adductors, adductor, inner thigh, inner thighs, big toe, sole, soles, "
        "forearms, biceps, triceps, bicep, tricep, pinky, pinkie, back of my? the? thigh|leg|knee, hamstrung, "
        "fingertips, itb, it band, tendon, tendons, ligament, ligaments, meniscus, cartilage, foot|feet bottom, bottom "
        "of my|the foot|feet|heel|toes, ball of my|the foot, balls of my feet, ball of foot, side of my "
        "foot|ankle|knee"
    ),
    "trunk": (
        "back, lower back, upper back, low back, lumbar, hip, hips, glute, glutes, hip flexor, hip flexors, shoulder, "
        "shoulders, shoulder blade, spine, rib, ribs, core, abs, stomach, belly, head, pec, pecs, lat, lats, trap, "
        "traps, piriformis, psoas, pelvis, si joint, joint, joints, muscle, muscles, neck and shoulders, sacrum, "
        "tailbone, coccyx, hip joint, obliques, rotator cuff, body, side, ear, eye, eyes, ears, skin, tooth, teeth, "
        "nose, scapula, collarbone, clavicle, flank, waist, trunk"
    ),
    # --- sides and places ------------------------------------------------------------------------------------------
    "left": "left, leftie, left hand side, left side, lhs, lefthand",
    "right": "right, right hand side, right side, rhs, righthand, rt",
    "both": (
        "both, both sides, each side, either side, left and right, right and left, bilateral, bilaterally, both of "
        "them, l and r, both left and right, two sides, the two sides"
    ),
    "elsewhere": (
        "not somewhere the programme, nothing to do with the area, nothing to do with the place, nothing to do with "
        "where, elsewhere, somewhere else, not in|at|on the place|spot|area|part|zone|region, not the "
        "place|spot|area|part|zone|region, another place, different place|spot|area|part, another spot|area|part, not "
        "where we stretch|stretched|worked, not where i stretch|stretched, other place|part|area, unrelated, in other "
        "place, not the stretched, from something else, not from the session|stretching|stretches, is not a spot we "
        "work|stretch, not a spot we work|stretch, not a place we stretch|work, not one we stretch|work, nothing to do "
        "with the stretches|session|stretching, not from the stretches, not an area we stretch|work, not the area we "
        "stretch|work, not where the stretch is, not the bit we stretch, elsewhere from the "
        "stretches|session|stretching, somewhere other, not a bit you|we|i, in a different place|spot, different place "
        "entirely"
    ),
    "here": (
        "where the programme makes the? stretching|stretch, right in the spot|place|area the|your|this "
        "programme|session|course|stretch, in the place|spot|area what|that|which|where the "
        "programme|session|stretch|course|exercise, the spot|place|area that|the programme|session is for|about, where "
        "we make|do|did|are_doing|are_making the stretch|stretching|stretches|exercise|exercises, in the "
        "spot|place|area|part|muscle the|this|your programme|session|course is, where we stretch|stretched|worked, "
        "where i stretch|stretched, in the stretched, same place|spot, the same place|spot, the place we stretch, the "
        "stretched muscle|muscles, right where|there, where the stretch is, in the muscle we stretch, exactly there, "
        "in the area we are stretching, the area we stretch, the area we are stretching, exactly in the area, exactly "
        "here, right here, exactly where, in the bit we stretch, the bit we stretch, right in the bit we stretch, "
        "where we have been stretching, where the stretch works|goes|hits|is, right where the stretch, in the place of "
        "the stretch, exactly where the stretch works, in the very spot, very spot, exact spot"
    ),
    # --- requests --------------------------------------------------------------------------------------------------
    "stop": (
        "stop, unsubscribe, stop messaging|texting|sending, stop it|this, stop messages, leave me alone, stop please, "
        "please stop, stop writing, do not message|text|write me|us, no more messages, opt out, stop sending, stop the "
        "messages, please stop the messages, stop messaging me, stop texting me, do not want it any more|anymore, do "
        "not want this any more|anymore, do not want these any more|anymore, stop all messages, no more texts, stop "
        "the messages for now, stop the messages please, stop these|your|those messages, stop with these|the messages, "
        "do not want these|the|any|your|more messages, do not want these|the|any|your messages any_more|anymore, do "
        "not send me? messages|anything|these|any_more|anymore, no more messages|notifications|reminders, no messages "
        "please, stop all this, please stop messaging, refrain from sending|messaging|contacting|texting, cease "
        "sending|messaging|contacting, do not contact me, do not send further, no further messages, stop contacting "
        "me, quit messaging|texting|sending, stop sending me these|this|them|messages|stuff|things|texts, stop sending "
        "these|this|them|messages|texts, discontinue, discontinue the|this|my service|messages|programme, stop with "
        "the exercises|sessions|stretches|training|exercise|stretching, want to stop with the "
        "exercises|sessions|stretches|training"
    ),
    "pause": (
        "pause, pause please, take a break, need a break, on holiday, on vacation, going on holiday|vacation, going "
        "away, away next week, away for, i am away, need a pause, have a break, freeze my, put it on hold, on hold, "
        "away until, away this week, weeks break, week break, days break, week off please, weeks off please, no more "
        "messages until|till, no messages until|till, take a week|fortnight off, time off please, hold off until, "
        "pause it|me|until|for, break please, pausing, a break until|till|for, take a break until, break until|till, "
        "stop for a month|week|fortnight|while, stop for two|three weeks, want to stop for, stop for a "
        "while|bit|few_days|few_weeks, please stop for a while|bit, puase, no more sessions until|till|from, no "
        "sessions until|till, pause me till|until, break from this, holding off for|until|till, hold off for, hold on "
        "for|until|till, pause for|from, put on hold, take a pause, make a pause|break, making a pause|break, want a "
        "pause|break, need some time off, need a week|fortnight|month off, having a break|pause, a pause of, break for "
        "a|two|three, skip the next|this week, suspend, suspend it|my|the, freeze it|the, stop until|till, away from "
        "monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow, will be away, be away, shall be away, i "
        "will be travelling until|till|for, hold off until|till|for, hold fire until|till, press pause, hit pause, put "
        "me on pause|hold, put everything on hold|pause, can|could we pause, give me a week|fortnight|month off, i "
        "need a week|fortnight|month|few_days off, time out until|till, back in two|three weeks so, stop the "
        "exercise|exercises|sessions|stretches|training|stretching for"
    ),
    "change-time": (
        "change the|my time, other time, different time, another time please, change time, send it|this|them|me "
        "later|earlier|at, send me the? message|messages|session at|earlier|later, message me at|earlier|later, move "
        "the time, earlier messages, later messages, send messages at|earlier|later, change when, change the hour, "
        "change hour, messages earlier|later, message earlier|later, text me at|earlier|later, reschedule the "
        "messages, too early for me, too late for me, have it in the evening|morning|afternoon, make it|them "
        "earlier|later, move it|them to, shift it|them to, get it later|earlier, send mine, send it "
        "after|before|in_the, to send at, send at, can you make it, move to the? evening|morning|evenings|mornings, "
        "change it to, move my, later in the day, earlier in the day, in the evening instead, evenings instead, "
        "mornings instead, message come in the, come in the evening|morning|afternoon, come at, send session "
        "after|at|before, send the session after|at|before, kindly send, messages in the evening|morning, after ten "
        "please, later time, earlier time, other hour, different hour, put the reminder, reminder at|to, no message on "
        "sunday|saturday|sundays|saturdays|weekends, no messages on, half an hour earlier|later, an hour "
        "earlier|later, switch my slot, my slot to, switch it to, change|chnage my|the? timing|timings|slot|hour, from "
        "now on, one hour later|earlier, evening|morning|afternoon slot, can|could i get|have|receive "
        "it|them|this|the_session|the_message|the_messages at|in|around, change|switch|move to the? "
        "evening|evenings|morning|mornings|afternoon|afternoons, receive the? session|message|messages|it "
        "at|in|after|before, send the message|reminder|messages|stretches|exercises|workout at|after|before|in, would "
        "prefer it at|in|after, prefer the evening|morning|evenings|mornings|afternoon|afternoons, want it "
        "at|in_the|after|before, want the session|message at|in_the, need it at|earlier|later, get the "
        "session|message|messages at|in|after|before|earlier|later, session earlier|later please, alert at|time, "
        "notify me at, ping me at|later|earlier, set it to|for, set the time, time change, new time, in place of "
        "6|7|8|9|morning|evening, half past instead, another hour, shift|change|move|push|set my? "
        "timing|timings|slot|alarm|reminder to, shift my timing|time|slot|session, prefer another time|hour, another "
        "time would, better by, is too early, at 20h, do it in the evening|morning|afternoon instead, do it at "
        "night|lunch instead"
    ),
    "health-changed": (
        "health situation is not the same, health is not the same, pregnant, pregnancy, expecting a baby, had an "
        "operation, had surgery, having surgery, an operation, surgery, operation, operated, diagnosed, diagnosis, "
        "broke my, broken, fractured, fracture, new medication, started medication, doctor told|said|says, physio "
        "told|said|says, been told i have, osteoporosis, arthritis, blood clot, thrombosis, pacemaker, changed with my "
        "health, my health has changed, my health changed, health has changed, new medicine, started a new medicine, "
        "new tablets, started new tablets, new pills, have been put on, new diagnosis, gave me a? new? diagnosis, "
        "consultant gave me, advised against, doctor advised|advises, cardiologist, going into hospital, "
        "knee|hip|back|shoulder|hernia|heart op|operation, having an op, had an op, blood thinners, thinners, chemo, "
        "chemotherapy, cancer, tumour, tumor, diabetes, diabetic, heart condition, stent, bypass, slipped disc, "
        "herniated disc, new hip|knee fitted, replacement surgery, doctor has put me, doctor put me, put me on blood, "
        "am expecting, weeks pregnant, baby on the way, had a miscarriage, gave birth, c section, caesarean"
    ),
    "help": "help, help me, help please, sos, need help, please help",
    "lighter": (
        "lighter, lighter version, easier, easier version, lighter please, something easier|lighter, make it "
        "easier|lighter, easier one, gentler, gentler version, a lighter, an easier, easy "
        "exercise|exercises|session|ones|version please?, lighter session|sessions|one|ones, easier "
        "session|sessions|exercises|exercise, less hard, less difficult, less intense, less heavy, softer, softer "
        "version, too hard please, a bit lighter|easier|gentler, make easier, easy one please, make it less, go "
        "easier, simpler, simpler version|exercises, go easy on me"
    ),
    "shorter": (
        "shorter, shorter version, something shorter, make it shorter, quicker version, quick version, a shorter, "
        "shorter one, shorter session|sessions|ones|workout|workouts|exercises, less long, too long for me, is too "
        "long, less time please, reduce the time|length, make it quick"
    ),
    "today": (
        "todays session, today session, show todays, show today, show me today, show me todays, what is today, what "
        "is todays, what is on today, send todays, send me todays, send me the session, show session, resend, send "
        "again, send it again, what do i do today, what do i have today, todays stretches please"
    ),
    "thanks": (
        "thanks, thank you, cheers, thank you so? very? much, many thanks, thanks a lot, much appreciated, ta, thanks "
        "so much"
    ),
    "quit-programme": (
        "stop this|your programme|program|course|plan, stop the course|plan|whole_course|whole_programme|whole_thing, "
        "take me off the|this|your programme|program|course, take me off, quit this|the|your course|plan, leave "
        "the|this course|plan, quit, quit the programme|program, leave the programme|program, end the|my "
        "programme|program, cancel, cancel my|the, i want out, do not want to continue, want to quit, want to stop the "
        "programme|program, stop the programme|program, end my, drop out, dropping out, give up the programme|program, "
        "i quit, no longer want to, not want to continue, done with this? "
        "programme|program|plan|bot|course|whole_thing, done with it all, done with you|this, done with you for good, "
        "finished with this? programme|program, finished with this|you, i am out, take me off the? list, remove me, "
        "take me off this, sign me off, not for me, it is not for me, want out, sign me out, i am leaving the "
        "programme, delete my account, done with these, done with your, finished with your, finished with these, i am "
        "done with these, no longer wish, do not wish to, not wish to take part, take part no, cancel "
        "everything|it_all|all, finished for good, done for good, no more sessions, wish to stop, "
        "done|finished|through with all this|that|of_this|of_these, done|finished|through with this|the|these "
        "whole|entire|daily, through with this, i am through with this|the|these|it_all|all_this, done with "
        "stretching, done with all of it and|for_good, had enough of this|these|it_all, had it with this, over this "
        "programme, want to finish|end|leave|exit the|this|my programme|program|plan|course, take me off "
        "your|this|that list"
    ),
    "asks": (
        "how, what, why, when, where, which, who, can i, can you, could you, could i, may i, is it, is this, is "
        "there, am i, do i, does it, are these, are there, what about, how about, shall i, is that, will i, do you, "
        "will you, would you"
    ),
    # --- numbers that are no pain ----------------------------------------------------------------------------------
    "unit": (
        "sets, rep, reps, repetitions, repetition, rounds, time, times, min, mins, minute, minutes, sec, secs, "
        "second, seconds, s, h, hr, hrs, hour, hours, km, kilometres, kilometers, miles, mile, kg, kgs, kilo, kilos, "
        "lb, lbs, pounds, stone, inch, inches, cm, cms, centimetres, centimeters, mm, m, deg, degs, degree, degrees, "
        "c, f, days, weeks, months, month, years, year, yrs, old, am, pm, oclock, exercises, movements, stretches, "
        "blocks, steps, breaths, people, coffees, more, others, sessions, legs only, laps, st, nd, rd, th, of us, "
        "bpm, in total, left to, to go, extra, squats, lunges, planks, in a row, messages, drills, moves, poses, "
        "parts, percent, each, per, tries, attempts, batches, chunks, stages, chapters, cycles, circuits, "
        "items, things, of the, of them, sides, ones, missing, last ones, pm tomorrow, bucks, pounds, quid, euros, "
        "euro, k, g, ml, litres, drops"
    ),
    "counted": (
        "day, week, set, round, block, exercise, item, movement, session, x, cat cow|cows|camel, downward|down|bird "
        "dog|dogs, happy baby, puppy pose, dog pose, childs|child pose, cat pose|stretch"
    ),
    "before-number": (
        "at, page, version, number, nr, since, until, till, by, after, before, half past, at half, past, quarter "
        "to|past, room, bus, train, step, stage, phase, day number, only, all, another, last, first, did, for, over, "
        "age, aged, born in, stretch, week number, programme, level number, chapter, part number, option, variation, "
        "the first, the last, every, of those, than, til"
    ),
    "scale": "on a scale of, on a scale from, scale of, scale from, on the scale of, out of, on scale, from scale",
    "about": (
        "is a full|solid|proper|clear|strong|definite, was a full|solid|proper|clear|strong|definite, slightly, "
        "mildly, just? a? bit of a, less|more|no_more than, under, below, about, around, roughly, approximately, "
        "approx, maybe a, like a, say, probably, level, score, nearly, almost, circa, max, maximum, at most, up to, "
        "peak, peaked at, at worst, worst was, at about, at around, at a, i would say, i'd say, just a, only a, about "
        "a, around a, like, i think, it was, it is, was a, is a, give it a, call it, rate it, rated, equals, reached, "
        "hit, as a, perhaps a, at level, in level, at least, mild, slight, small, tiny, little, light, low, moderate, "
        "minor, bit, a bit, lies|sits|stays|stayed|stood|stands|remains|remained|hovers|hovered|staying|hovering "
        "at|by|on|around|about, i|would|should|i_would|i_should call|rate|put|give it at?, i would|should say, it is "
        "more like, is more like, more like, more like a, i give it|a, i would give it? a?, so about, let us say, lets "
        "say, let me say, would be about|a, should be a|about, between a, somewhere around|about, something like, "
        "some, i would put at?, i would put it at, would put at a?, put it at a?, putting it at, comes in at a?, "
        "clocks in at a?, is at about|around, i rate it, rating it, marks it, scored, comes to a?, hovering "
        "round|around|about|at"
    ),
    "from": "from, dropped from, fell from, went from, down from, up from",
    "to": (
        "to, down to, is down to, went down to, gone down to, up to a, into, dropped to, went to, fell to, rose to, "
        "went up to"
    ),
    "between": "between",
    "number-word": (
        "two, three, four, five, six, seven, eight, nine, ten, eleven, twelve, fifteen, twenty, thirty, fifty, "
        "hundred, thirteen, fourteen, sixteen, seventeen, eighteen, nineteen, forty, sixty, seventy, eighty, ninety, "
        "thousand, million, nought, naught"
    ),
    "one": "one",
    # --- harmless --------------------------------------------------------------------------------------------------
    "harmless": (
        "next weak, for a weak, submitted the tender, the tender "
        "at|for|with|is|was, missed the last step coming, missed a step, missed the call|goal|penalty, during|in the "
        "second|first half of the? game|match|concert|show|film, during the second|first half, at half time, half "
        "time, band|bands is|was too? weak, popped out of bed, popped my feet|phone, tore|ripped|tear|tearing through, "
        "snapped it, saw stars outside, went blind into, fainted|fainting from laughing|laughter, went numb watching, "
        "tingling|swelling|numb|bursting with excitement|pride|joy|anticipation|happiness, pins and needles waiting, "
        "on pins and needles to, no pain no gain, stab|stabbed|stabs at, breathless with, weak willed, electric "
        "music|car|bike|blanket|scooter|guitar|toothbrush|heater|kettle|shower|bill|fan, pine|knitting needles, "
        "needles on the, atmosphere was electric, popped over|round|up|on|to|by|back|down|into, popped in "
        "to|for|and|at|after|before|between|quickly|a|early|late, popped out to|for, pop over|round|up|by|to, pop in "
        "to|for|and|at|later|a, pops up, popping in to|for, pop music|song|songs|quiz|star|concert|tarts|culture, "
        "popping over|up|to, popped my headphones|earphones|airpods|trainers|shoes|lenses, popcorn "
        "popped|pops|popping, sharp as ever|a_tack|always, popped the|a "
        "kettle|pill|paracetamol|ibuprofen|question|cork|balloon|bubble, ears popped, oh snap, snap chat, cold snap, "
        "snapped a picture|photo|pic|selfie|few, snapped at, snapped out of, snap out of, snap of|up, ping me|you|us, "
        "ping pong, rip off, let it rip, killed me, killing me lol|haha, "
        "programme|program|session|workout|exercise|plank|planks|boss|work|one is killing me, this is killing me, you "
        "are killing me, killing time, killer session, burning question|calories|desire|rubber|out|fat, burn "
        "out|calories|fat, burnt out, burned out|calories, calories burned, kitchen on fire, on fire today, i am on "
        "fire, was on fire, house on fire, sun burn, sunburn, burnt dinner|toast|my_dinner, burned "
        "dinner|toast|my_dinner|the_toast, burnt the, slow burn, muscle burn, muscles burning, "
        "quads|thighs|glutes|legs|hamstrings|calves|muscles|abs are|were|felt|feel? burning|burned|burn|on_fire, "
        "quads|thighs|glutes|legs|hamstrings|calves on_fire, burning quads|thighs|muscles|legs|glutes, burning in a "
        "good way, numb to it, mind numbing, mind numbingly, bored numb, comfortably numb, number one, shooting for, "
        "shooting hoops|stars|pool|a_film, photo shooting, shoot me|you|for, shooting range|party, troubleshooting, "
        "will shoot, drop dead, dead bug|bugs|hang|hangs, phone went dead, battery went dead, line went dead, sharp "
        "at, am|pm sharp, oclock sharp, look sharp, stay sharp, looking sharp, sharp "
        "dresser|dressed|suit|eye|eyes|mind|wit|cookie|turn|bend|minded, mind is sharp,  feels sharp mentally, pretty "
        "sharp today, sharp focus|start, sharp end, blood sweat and? tears, in tears laughing, tears of joy|laughter, "
        "burst into tears, head exploded, mind exploded, mind blown, blown away, blew my mind, chest "
        "opener|openers|opening|stretch|stretches|expansion|press|presses|fly|flies|day, chest "
        "of_drawers|freezer|expander|lift|lifts|opened|hair, open chest, opening my|the chest, chest "
        "open|up|down|high|out|forward, lift|lifting my|the chest, chest and shoulders stretch, off my chest, treasure "
        "chest, medicine chest, knee|knees|chin|thigh|thighs|leg|legs|arms to my? the? chest, hug|hugging my? knees to "
        "my? chest, chest to my? the? floor|wall|knee|knees|thigh|thighs|ground|mat, to my chest as, press|pressing "
        "my|the chest, pull|pulling my? knee|knees to my? chest, neck "
        "roll|rolls|stretch|stretches|circles|tilt|tilts|of_the_woods, neck "
        "release|retraction|line|mobility|flexion|rotation|rotations, jaw "
        "release|releases|stretch|stretches|exercise|dropping|dropped|drop, jaw on the floor, arm|arms "
        "circles|swings|stretch|stretches|circle|swing|press|raises|raise, cross arm|body stretch, leg|legs "
        "raises|raise|swings|swing|curl|curls|press|day|lifts|lift|stretch|stretches, face pull|pulls|down, face "
        "the|to the|up, calf|calves raise|raises|stretch|stretches|drops|drop, calf and ankle day, face time, heel "
        "drop|drops|raise|raises, hip drop|drops, back drop, face to face, in the face of, save face, two faced, poker "
        "face, smile on my face, back stretch, thigh stretch, foot note, faint of heart, faint hearted, faint "
        "stretch|tightness|feeling|sensation|ache|smell, faint "
        "memory|hope|idea|sound|signal|line|lines|tug|pull|light|soreness|discomfort, faint sense of, fainting goats, "
        "feint, passed out on|in sofa|couch|bed|leaflets|flyers, passed out asleep|leaflets|flyers, black out "
        "blinds|curtains, blackout blinds|curtains, power blackout, power black out, collapse into, heart set on, "
        "learnt by heart, learned by heart, by heart, heart to heart, half hearted, half heartedly, heart "
        "of|goes|is_in|warming, broke my heart, heavy heart, heart rate, heart rate zone, gave me a heart attack, "
        "nearly had a heart attack, almost had a heart attack, have a heart attack when|if, heart "
        "opener|openers|opening, with all my heart, heart melted, my heart sank, a? stroke of "
        "luck|genius|midnight|pace, breast stroke, back stroke, butterfly stroke, stroke "
        "rate|side|seat|length|play|power|work|one|oar|practice|technique, rowing stroke, per stroke, the stroke, each "
        "stroke, every stroke, on stroke side, stroke the cat|dog, stroked the, speechless, gave|giving|give a speech, "
        "give my speech, the|a|my speech today|tomorrow|at, wedding speech, best man speech, sight for sore eyes, "
        "sight seeing, in sight, out of sight, lost sight of, at first sight, long sighted, end in sight, blurry "
        "picture|photo|video|image|screen|pictures|images|videos, picture|photo|video|image|screen is|was|looks "
        "blurry|blurred, can not see the|any|a|it|todays|my|your|that|this|what|why|how|him|her|where, could not see "
        "the|any|a|it|todays|my|your|that|what|why|how, can not see "
        "picture|video|photo|image|message|button|buttons|myself|anything_on|results|progress|difference, blind "
        "spot|spots, window blind|blinds, the blinds, blind date|faith, colour blind, color blind, see the session, "
        "television, supervision, blindfolded, out of breath laughing, take|took|takes my breath away, "
        "hold|holding|held my|your|the breath, deep breath|breaths|breathing, forgot to breathe, remember to breathe, "
        "catch my breath between, breathing exercise|exercises|drill|drills|space|work|room, breath hold|holds|work, "
        "each breath, every breath, waste my breath, under my breath, breath of fresh air, breath away, swell "
        "session|time|day|job|stretch|programme|guy|idea, feel|feeling|felt swell, just swell, swell thanks, "
        "everything is swell, that is swell, pretty swell, all swell, swell of pride, swell with pride, ground swell, "
        "sea swell, the swell, big swell, bruised ego|pride|egos|banana|apple|peach, ego is|a|was bruised, ego bruise, "
        "only my ego|pride hurt|hurts|bruised, bruising schedule|week|day|work, blood pressure, no pressure, work "
        "pressure, peer pressure, under pressure, pressure is on, pressure at work, pressure cooker, tyre pressure, "
        "tire pressure, air pressure, water pressure, pressure washing|washer, pressure from work|my|the|boss, squeeze "
        "it in, squeeze my|the|your? glutes|shoulder|ball, squeeze the, main squeeze, glute squeeze, orange squeeze, "
        "heavy day|bag|shopping|traffic|session|week|rain, heavy "
        "sleep|meal|lunch|dinner|lifting|squat|squats|deadlifts|box|boxes|load|gym|training|work, crushing it, crush "
        "on, pushing through|myself|hard, pushing it, pressing on, pressing matters|engagement|issue|meeting, bench "
        "press|pressing, press ups, push ups, compression socks|tights|shorts|sleeve|leggings, weak "
        "excuse|spot|point|signal|tea|coffee|side|sides|wifi|connection|link|hour|joke|core|willpower|will, my weaker "
        "side, weaker side|leg|arm, weakness for, weak moment, weak for chocolate|cake, my weakness is, weak knees "
        "from, weak at the knees, weekness, can not stand the|this|that|these|those|him|her|it|planks|burpees|my, "
        "could not stand the|this|that|it, can not walk the|my|to|home|today, knee buckle, belt buckle, buckle up, "
        "buckle down, buckled up|down, gave out flyers|leaflets, give way sign, phone gave out, battery gave out, "
        "chair gave way, locked out|in|down, unstable wifi|internet|connection|signal, give away, gave it away, gave "
        "away my|the|our, wobble board, wet myself laughing, peed myself laughing, pissed myself laughing, laughed so "
        "hard i, pee break, wee break|bit|one, toilet break, toilet roll|paper, a wee, need a pee|wee|poo, go for a "
        "pee|wee, went for a pee|wee, went to the toilet, off to the toilet, had to pee, needed to pee|the, in the "
        "toilet, on the toilet, to the toilet, taking the piss, took the piss, bottom line|step|stair|half|of, at the "
        "bottom, from the bottom, rock bottom, bottoms up, the bottom position|part|one, tennis balls, massage "
        "balls|ball, stretch bum, lazy bum, saddle up|height|bag|sore, back in the saddle, groin stretch|stretches, "
        "bum day, butt kicks, glute bridge, sit bones, bike saddle, dizzy with|from happiness|joy|success|excitement, "
        "dizzy heights, dizzying, giddy with|up, spinning class|bike|plates, spin class, cabin fever, hay fever, "
        "football fever, spring fever, fever pitch, room temperature, temperature outside|in, water temperature, "
        "outside temperature, the temperature, cup fever, fever tree, saturday night fever, weight loss "
        "programme|plan|goal|diet|club, good nights sleep, slept at night, good night, late night, could not sleep|not "
        "sleep because of the? noise|baby|heat|neighbours|party|dog|storm, last nights, night shift|shifts|out, at "
        "night i do, did it at night, warm up, warmup, warm ups, warmed up, warming up, warm down, hot "
        "bath|shower|day|weather|water|tea|today|outside|water_bottle|room|yoga|in_here, warm "
        "bath|shower|water|room|day|weather|and_loose|and_nice|feeling|fuzzy|clothes, nice and warm, red "
        "wine|light|band|flag|bull|carpet, red resistance band, so hot, it is hot, hot flush, dropped "
        "the_kids|my_phone|kids|by|off|in|one|out|it|two, dropped my, kids off, dropped down, crooked picture, "
        "hurt|hurts my feelings|pride|ego|brain|wallet, would not hurt to, does not hurt to, not hurt to try|ask, no "
        "harm done?, hurt to look|think, hurts to think, painting, growing pains, pain in the arse|ass|butt|backside, "
        "pain to get|set|find|log, pains me to, painful to watch, painfully slow|aware|early, such a pain to, was a "
        "pain to, is a pain to, spain, took pains, pain au chocolat, painkiller, painkillers, pain killer, pain "
        "killers, pain relief, pain cave, a pain getting|finding|setting, headache of a day, sore loser|point|subject, "
        "sore arm from vaccine|jab, soar, sight for sore, sting in the tail, right "
        "now|away|after|before|on|then|when|time|thing|order|way|move|up, all right then, that is right, is that "
        "right, right to, do it right, did it right, get it right, got it right, not right, quite right, feels right, "
        "felt right, right in the middle, form right, right track, left early|home|work|it|in|over|the|my|town|on, "
        "nothing left to, time left, minutes left, days left, left with, i left, energy left, two left, one left, "
        "three left, left before|after|for|at|behind, leftovers, weeks left, set left, have left, knock on wood, hip "
        "hop, hip pub, old hat, back to back, back at it, back "
        "home|again|on_track|soon|later|at_it|to_work|pocket|yard|end|up|garden, come back, came back, coming back, "
        "got back, get back, be back, was back, am back, going back, went back, right back, fight back, way back, set "
        "back, feedback, on the other hand, hand in, first hand, hands down, second hand, hands on, on hand, hand out, "
        "by hand, put my foot down, on foot, set foot, foot of the bed, foam roller, heel of, head "
        "out|off|start|home|to, off the top of my head, heads up, heading, in my head, clear head, head space, "
        "headspace, ahead, over my head, face value, at arms length, arm chair, an arm and a leg, cost an arm and, "
        "elbow room, elbow grease, shoulder the, shoulder to shoulder, cold shoulder, got your back, on the back "
        "burner, on my side, by my side, side by side, on the side, side project, tongue in cheek, cheeky, by the "
        "skin, thumbs up, thumb up, rule of thumb, break a leg, pulling my leg, pull my leg, last legs, leg it, legged "
        "it, find my feet, stand on my own two feet, cold feet, get back on my feet, toe the line, touched my toes, "
        "touch my toes, reach my toes, reached my toes, toes touched, on my toes, core blimey, stomach for, "
        "butterflies in my stomach, no stomach, eye on, keep an eye, in my eyes, all ears, play it by ear, no problem "
        "at all, no big deal, no doubt, no wonder, no kidding, no need, no excuse, no excuses, no biggie, no matter, "
        "no joke, no other, not bad, not too bad, not so bad, not bad at all, not only, not long, why not, if not, or "
        "not, believe it or not, not to mention, not to worry, not gonna lie, not going to lie, can not complain, can "
        "not wait, could not be better|happier, can not believe, could not believe, can not be bothered to type, no "
        "rush, nothing else|more|much|new to tell|say|report|add, halfway|half_way "
        "home|to_work|up_the|down_the|round_the|along_the|across, see|talk|speak you? "
        "tomorrow|later|soon|then|monday|next_week|next_time, see ya, till|until next time, no air "
        "con|conditioning|conditioner, no lie, no comment, no news, no difference, cracked, crack, cracking, "
        "crackling, creaking, creaked, creaky, clicks, clicking, clicked, click, joints popped|popping|pop, knuckles "
        "popped|cracked, snap crackle and pop, like a? pop, not half bad, half term, half marathon, part time, half "
        "hour, half an hour, half an, better half, one and a half, half asleep, half awake, half "
        "eight|seven|six|nine|ten|five|four|three|two, asleep by|at|on|straight|in|early|again|right, fell asleep "
        "on|in|early|at|before|after|straight|during|again|while|by|with, kids asleep, baby asleep, fast asleep, kids "
        "fell asleep, children asleep, i fell asleep, swollen with pride|joy, swelled with pride, brain is? "
        "numb|fried, brain is numb from, snap decision, head is spinning with, spinning with deadlines|work|ideas, "
        "screen is|was? too? blurry, sharp drop, electric atmosphere, spine tingling, was going to skip, going to skip "
        "it|today, nearly skipped, almost skipped, wanted to skip, tempted to skip, nearly forgot, almost forgot, both "
        "ends, a pain to, pain in the neck kept|again|with|today, is a pain in the neck|backside|arse|butt, such a "
        "pain, killer leg day, killer day, not wake me up? at? night, does not wake me, burning the candle, shooting "
        "hoops, kid has 39 fever, weak wifi|coffee|tea|signal, my phone has trouble, coffee was weak, weak today was "
        "my coffee, thing weak today, breathless reviews, collapsed laughing, pop quiz, stab in the dark, midnight "
        "oil, burning the midnight oil, chest of drawers, dead bug one, brain totally numb, pinch me, killing me "
        "after, phone passed out, bike chain snapped, chain snapped, river is swollen, half built, both times, left "
        "me, that is the right, was the right, missed the bus|train|step|call|alarm|boat|message, popped the|my "
        "mat|kettle|shoes|dinner|lunch, sharp dive, night night, the night before, tuesday night, monday night, friday "
        "night, saturday night, sunday night, thursday night, wednesday night, night bus, quiz night, movie night, "
        "girls night, date night, night off, nerve floss|flossing|glide|glides, some nerve, got some nerve, lost my "
        "nerve, electric blue|green|pink, killing me not, took the sting, sting out of, get on my nerves, on my "
        "nerves, not quite remember|sure|right|awake, can not quite remember, stop nagging, nerves before, nerve "
        "wracking|racking, swollen ego, electricity was cut, ego is bruised, board snapped, house was asleep, moment "
        "of weakness, brain went numb, boss killed me, burned the sauce, chest day at the gym, fainted when the "
        "bill|gas_bill, nearly fainted when the gas bill, nearly|almost fainted when i_saw|i_heard, collapsed in "
        "giggles|laughter, gave way to temptation|cake, faint from boredom|laughing, patience|temper snapped|broke, in "
        "a snap, was a snap, is a snap, not wake me up? at|in|during the? night, can|could not speak|talk "
        "english|german|highly_enough, acupuncture needles, broke my neck to|getting|rushing, popped|pop|pops|popping "
        "my head in|round|over|through|out, dead lift|lifts|line|heat|battery, take part, taking part, takes part, "
        "took part, skipped|skip|skipping|missed|miss "
        "breakfast|lunch|dinner|coffee|work|school|class|tea|church|gym|football, does|did not wake me up? "
        "at|in|during the? night, no breath problem|problems, about to faint from boredom|laughing|laughter, "
        "gave|give|gives way too|more, sick of, tingle|tingles|tingling of joy|excitement, almost|nearly did "
        "not|quit|stopped|gave_up|skip, felt like quitting|stopping|skipping|giving_up, thought about "
        "skipping|quitting|stopping, thought i would skip|miss, do one thing, pick up where, popped my|the "
        "earphones|headphones|earbuds|airpods|music|kettle|radio|tv|telly|slippers|leggings|kit, shot out of? the? "
        "door|house|bed, butterflies in, knocked over, knocked off, as easy as, piece of cake, walk in the park, half "
        "a mind, would kill me, only thing i skipped|missed was, do something else, over and done with, popped a pill, "
        "popped a tablet, popped a vitamin, popped a paracetamol, popped a ibuprofen, popped a pill of, popped a "
        "tablet of, popped a vitamin of, popped a paracetamol of, popped a ibuprofen of, popped some "
        "vitamins|pills|tablets|paracetamol|ibuprofen|music, fainted at price, fainted at the price, fainted at "
        "prices, fainted at the prices, fainted at bill, fainted at the bill, fainted at cost, fainted at the cost, "
        "faint at price, faint at the price, faint at prices, faint at the prices, faint at bill, faint at the bill, "
        "faint at cost, faint at the cost, fainted when the price, passed out from laughing|laughter|joy|boredom, pass "
        "out from laughing|laughter|joy|boredom, die from laughing, black and blue "
        "jersey|shirt|shirts|flag|stripes|team|kit|scarf, bruised apples|bananas|fruit|pears|peaches|tomatoes, hit the "
        "floor|ground|deck running, spinning from the? tax|work|emails|numbers|forms|meetings|paperwork|news, lost my "
        "sight of the? goal|goals|target, gave|give|gives|giving way to a|an|the? "
        "ambulance|bus|car|lorry|tractor|cyclist|traffic|police|fire_engine|temptation|cake|tears, dead leg of lamb, "
        "leg of lamb, toaster gave me a shock, the nerve to|of, bundle|bag of nerves, blind as, what a nerve, a nerve "
        "to, throbbing music|bass, popping out to|for|and, pop out to|for, shooting star, a stab in the back, stabbed "
        "in the back, stabbed me in the back, knife in the back, nearly|almost finished|killed me off?, electric "
        "out_of, shooting a wedding|film|video|documentary|portrait|wedding|brief, numb with|from boredom|shock, "
        "tore|tear|tearing myself away, got cold feet, get cold feet, getting cold feet, dizzy blonde, faint "
        "chance|chances|possibility|prospect|praise|breeze|hum|glow|smile, happy|merry|blessed "
        "diwali|christmas|easter|eid|birthday|new_year|weekend|holi, happy "
        "monday|friday|sunday|hanukkah|thanksgiving|ramadan, burning|burned|burnt|burn up the "
        "track|court|pitch|road|ice|dance_floor|miles|roads, "
        "concert|quiz|movie|film|date|match|game|bingo|curry|poker|opening|parents|prom|stag|hen night, i popped off "
        "at|today|on|tonight|last_night, only my ego|pride hurt|hurts"
    ),
}
