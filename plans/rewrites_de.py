"""What is put right in a German text before its words are looked up: compounds are split, what stands apart is joined.

A verb far from its "nicht", "tut … weh", "knickt … weg": German parts what a table of phrases needs side by side.
"""

from __future__ import annotations

_NUMBER = r"(\d+(?:[.,]5)?|null|eins?|eine[mnr]?|zwei|drei|vier|funf|sechs|sieben|acht|neun|zehn)"
_BODY = (
    r"knie|schulter|rucken|nacken|brust|herz|hufte|huften|huft|schultern|"
    r"oberschenkel|unterschenkel|schenkel|wade|waden|fuss|fusse|knochel|"
    r"kniekehle|kniescheibe|zeh|sprunggelenk|ellbogen|ellenbogen|hand|handgelenk|arm|unterarm|oberarm|finger|daumen|"
    r"zehe|zehen|leiste|gesass|po|"
    r"kiefer|gesicht|wirbelsaule|steissbein|rippe|rippen|becken|achillessehne|schienbein|bein|beine|muskel|gelenk|"
    r"glieder|kreuz|lenden|lende|fersen|ferse|sehne|sehnen|beinbeuger|huftbeuger|schulterblatt|kopf"
)
_FELT = (
    r"schmerz(?:en|es)?|weh|stechen|probleme|beschwerden|schwellung|kribbeln|taubheit|schwache|zerrung|prellung|krampf|"
    r"krampfe|pochen|brennen|druck|ziehen|steifheit|lahmung|verletzung|"
    r"muskeln?|muskulatur|bereich|region|gegend|partie|blockade|entzundung|riss|bruch"
)
_THING = (
    r"internet|wlan|akku|netz|empfang|kaffee|tee|signal|handy|verbindung|fluss|bach|see|himmel|stuhl|regal|vase|glas|"
    r"flasche|fahrrad|rad|baum|server|laptop|pc|rechner|fernseher|bildschirm|video|bild|foto|app|seil|faden|hose|kette|"
    r"gummi|gummiband|theraband|schnur|schnursenkel|tute|matte|ballon|luftballon|reifen|korken|tur|tisch|leiter|"
    r"lampe|gluhbirne|motor|auto|bus|drucker|heizung|strom|ofen|holz|dach|zaun|zelt|schirm|wasche|sonne|"
    r"zimmer|wetter|dusche|wasser|essen|suppe|projekt|kontakt|chat"
)
_SMALL = (
    r"(?: (?:ist|war|sind|waren|hat|wurde|zu|total|ganz|leider|schon|mir|wieder|heute|einfach|nur|so|plotzlich|laut))"
)
_LIMB = (
    r"fuss|fussen?|fusse|bein|beinen?|zehen?|fingern?|hand|handen?|arm|"
    r"armen?|wade|waden|oberschenkel|gesicht|daumen|ferse|seite|haut"
)
_OWN = r"(?:mein\w*|den|die|das|der|im|am)"
_SIDE = r"(?:link\w*|recht\w*|beid\w*|ganz\w*|klein\w*|gross\w*)"

REWRITES: tuple[tuple[str, str], ...] = (
    (r"'", " "),
    (r"(?<![aeoqz])ue(?!ll|nz|rst)", "u"),
    (r"(?<!a)ae(?!ro|rz)", "a"),
    (r"oe(?!b|s?ie)", "o"),
    (r"^(?:ne|na)\b(?=[,.! ]|$)", "nein"),
    (r"(?<=[a-z0-9] )ja(?= [a-z])", ""),
    (rf"\b({_BODY})(?:s|n|en)?({_FELT})\b", r"\1 \2"),
    (r"^no(?=[,.! ]*$|[,.!])", "nein"),
    (r"\b(?P<at>auf|in|an|mit|von|bei|vor|aus|hinter|unter) da (?=[a-z])", r"\g<at> der "),
    (r"\bka (?=luft|kraft|zeit|lust|schmerz|gfuhl|gefuhl)", "keine "),
    (r"\bwia\b", "wie"),
    (r"\breingeschossen\b(?! (?:gekommen|zur tur))", "plotzlicher stechender schmerz"),
    (
        r"\bohne (?:es )?(?:zu wollen|diat|grund|absicht|zutun|ersichtlichen grund)\b(?=.*\b(?:gewicht|kilo|kg|"
        r"abgenommen))|"
        r"(?<=abgenommen )(?:ohne (?:diat|grund|absicht|zutun)|einfach so|von allein)\b",
        "ungewollt",
    ),
    (r"\bbei(?: meh)?(?=[.,!?]|$)", "bein"),
    (r"\b(?P<what>keine? \w+) meh\b", r"\g<what> mehr"),
    (r"\b(?:mis|s) harz\b", "herz"),
    (r"\boana seitn\b|\boana seite\b|\beiner? siite\b", "einer seite"),
    (r"\b(?P<whose>mir|mia) (?P<how>(?:\w+ )?)(?:sturm|trulli)\b|\b(?:isch|ist|is) (?:mir|mia) sturm\b", "schwindelig"),
    (r"\bmunter (?=(?:\w+ ){0,2}(?:vor|wegen|von)(?: \w+){0,2} schmerz)", "wach "),
    (r"\b(?P<whose>mir|mi) schlaft (?:da|de|der|die|das|s) (?P<limb>" + _LIMB + r") ei\b", r"\g<limb> eingeschlafen"),
    (r"\bkein (?P<what>luft|kraft|schmerzen|zeit|lust)\b", r"keine \g<what>"),
    (r"\b(?:kriege?|krieg|bekomme?|hab|habe|kriegte|bekam|bekomm)(?: \w+){0,2}? keine luft\b", "keine luft"),
    (r"\bd (?=[a-z]{4})", "die "),
    (r"\b(?P<which>letzten|ersten|anderen|beiden) beiden\b", r"\g<which> zwei"),
    (r"(?P<cut>^|, |\. )komplett(?=[.,! ]*$)", r"\g<cut>alles gemacht"),
    (r"\bstell\w* (?:bitte )?(?:die )?(?:uhrzeit|zeit)(?: bitte)? (?=auf|um)", "uhrzeit andern "),
    (
        r"\b(?P<what>videos?|ubung(?:en)?|bilder|bild|bildschirm|link|einheit|plan|training|app|anleitung|"
        r"nachricht)(?: \w+){0,2}? nicht(?: mehr)? "
        r"(?:sehen|gesehen|anschauen|offnen|abspielen)\b",
        r"\g<what> verpasst",
    ),
    (
        r"\b(?:die|diese|eine) ubung(?: habe?)?(?: ich)? (?:weggelassen|ausgelassen|ubersprungen)\b",
        "eine ubung ausgelassen",
    ),
    (
        r"\b(?:eingepennt|eingeschlafen|eingenickt|weggenickt|eingedost)(?= (?:\w+ ){0,2}(?:sofa|couch|bett|sessel|"
        r"fernseher|tv|kind|zug|bahn))|"
        r"(?<=sofa )(?:eingepennt|eingeschlafen|eingenickt)|(?<=couch )(?:eingepennt|eingeschlafen|eingenickt)",
        "verschlafen",
    ),
    (
        r"\b(?:herz|herzchen) (?:hupft|springt|lacht|schlagt hoher|tanzt)(?: \w+)? vor (?:freude|gluck|"
        r"begeisterung)\b",
        "froh",
    ),
    (r"\bwar kurz weg (?=einkaufen|arbeiten|zum|beim|im|mit|bei|auf)", "war unterwegs "),
    (
        r"\b(?P<who>kleine[rn]?|kind|baby|sohn|tochter|hund|katze|enkel\w*|oma|"
        r"opa)(?P<how>(?: \w+){0,3}?) in die (?:hose|wohnung) "
        r"(?:gemacht|gepinkelt)\b",
        r"\g<who>\g<how> egal",
    ),
    (r"\bnichts mehr (?P<seen>sehen|gesehen)\b(?! von)", r"nichts \g<seen>"),
    (
        r"\b(?:hingefallen|hingefalln|gesturzt|umgefallen|gefallen|umgehauen)(?: \w+){0,3} (?:nicht da|weg|"
        r"nicht mehr da|nicht ganz da)\b|"
        r"\b(?:kurz|sekundenlang|paar sekunden|einen moment) (?:nicht ganz da|nicht bei mir|nicht bei bewusstsein|"
        r"nicht anwesend)\b",
        "ohnmachtig",
    ),
    (
        r"\bauf (?:dem |meinem |einem )?(?P<side>link\w* |recht\w* )?(?P<what>bein|fuss|"
        r"knie)(?: \w+){0,3}? nicht(?: mehr)? (?:halten|stehen|abstutzen)\b",
        r"\g<side>\g<what> nicht belasten",
    ),
    (r"\b(?:mords|irrsinns|sau|affen|monster|bomben|hammer|wahnsinns|tier)schmerz\w*", "starke schmerzen"),
    (r"\bgibt(?: \w+)? keine ruhe\b|\blasst(?: \w+)? (?:keine|nicht in) ruhe\b", "hort nicht auf"),
    (r"\bsteh\w*(?: \w+){0,4}? auf(?: \w+)? (?:vor|wegen|von)(?: \w+){0,2} schmerz\w*", "schmerz weckt mich"),
    (
        r"\bzieh\w*(?: \w+){0,2} (?P<what>bein|fuss)(?: \w+){0,3}? nach\b(?! (?:oben|vorn\w*|hinten|links|rechts|"
        r"aussen|innen))",
        r"\g<what> schwach",
    ),
    (r"\bstich\w*(?: \w+)? wie (?:von |mit )?(?:nadeln?|stecknadeln?)\b", "nadelstiche"),
    (r"\b(?:elektrizitat|elektro|stromfluss)\b(?= (?:im|in|durch|am))", "strom"),
    (r"\b(?P<who>kinder|kind|hund|baby|kleine) (?:lassen|lasst|liess\w*) mich nicht\b", r"\g<who> unruhig"),
    (r"\bka (?=nicht|kaum)", "kann "),
    (r"\bnume (?=(?:\w+ )?(?:pinkeln|stehen|gehen|laufen|reden|schlafen))", "nicht mehr "),
    (r"\b(?P<at>in|an|auf|um) d (?=[a-z])", r"\g<at> die "),
    (
        r"\bzwischen (?:de|den|die|meinen?|mein) (?:fuss\w*|haxn|haxen|schenkeln?|oberschenkeln?|bein)\b",
        "zwischen den beinen",
    ),
    (
        r"\b(?P<heart>herz|puls)(?P<how>(?: (?!frequenz|war bei)\w+){0,6}?) (?:hopser|hupfer|kreuz und quer|"
        r"gar nicht|durcheinander|"
        r"schnell(?: \w+)? langsam|wie es will|wie verruckt|wie wild|doppelschlage|pausen|extra)\b(?! vor (?:freude|"
        r"gluck|aufregung))",
        r"\g<heart>\g<how> herzstolpern",
    ),
    (
        r"\bschnur\w*(?= (?:\w+ ){0,4}(?:brust|brustkorb))|(?<=brust )(?:\w+ )?(?:zugeschnurt|zuschnurt|"
        r"zusammengeschnurt)\b",
        "druckgefuhl",
    ),
    (
        r"\bkomme?\w*(?: \w+){0,3}? (?:nicht|kaum|nimmer)(?: mehr)? (?:zu|zur) (?:luft|atem|schnaufen)\b|"
        r"\b(?:kaum|nicht|nicht mehr) (?:schnaufen|verschnaufen|japsen|schnauf|schnaufa)\b",
        "keine luft",
    ),
    (r"\b(?:nicht|kaum|schlecht|schwer|nicht mehr) (?:am |zum )?schnauf\w*", "keine luft"),
    (r"\bluft(?: \w+){0,3}? (?:ausgeblieben|weggeblieben|abgestellt|abgedruckt|gefehlt)\b", "keine luft"),
    (
        r"\b(?:kurz|kurzzeitig|komplett|momentlang|ganz|plotzlich|einfach|paar sekunden|sekunden) weg (?:gewesen|"
        r"gsi|gwesn|gwesen)\b|"
        r"\blag (?:ich )?(?:dann |plotzlich |auf einmal |da )+(?:am|auf dem|aufm) boden(?=[.,!;]|$)|"
        r"\baus den (?:latschen|"
        r"socken|schuhen) gekippt\b",
        "ohnmachtig",
    ),
    (
        r"\b(?:red|sprech|gered|gesproch|klang|kling|sprach|hor)\w*(?: \w+){0,3}? (?:wie|als war ich|"
        r"als ware ich)(?: \w+)? "
        r"(?:besoffen\w*|betrunken\w*|lallend\w*|bsoffen\w*)\b",
        "lalle",
    ),
    (
        r"\bhalbe[sn]? (?:bild|sichtfeld|gesichtsfeld|blickfeld|sicht)(?: \w+){0,2}? (?:weg|schwarz|fehlt)\b|"
        r"\bhalbe[sn]? (?:bild|sichtfeld|gesichtsfeld) weg\b",
        "gesichtsfeldausfall",
    ),
    (r"\bplotzlich war das halbe bild weg\b", "gesichtsfeldausfall"),
    (
        r"\b(?P<what>arm|hand|bein)(?P<how>(?: \w+){0,2}?) hangt(?P<so>(?: \w+){0,3}?) (?:runter|herunter|schlaff|"
        r"schlapp|herab|weg)\b",
        r"\g<what>\g<how>\g<so> gelahmt",
    ),
    (
        r"\b(?:kein gefuhl|taub\w*|ohne gefuhl|nichts gespurt)(?: \w+){0,3}? (?:klogang|klo|toilette|stuhlgang|"
        r"abputzen|wischen|wasserlassen|pinkeln)\b|"
        r"\b(?:klogang|klo|toilette|stuhlgang)(?: \w+){0,3}? (?:kein gefuhl|taub|spure nichts|gefuhllos)\b",
        "intimbereich taub",
    ),
    (
        r"\bmach\w*(?: \w+){0,2}? unter (?:mich|mi)\b|\b(?:in|an) (?:die|der|d|meine) hose\b(?= (?:gemacht|gegangen|"
        r"gelaufen))",
        "urin verloren",
    ),
    (r"\b(?:kanns|kann es) nicht(?: mehr)? halten\b", "urin verloren"),
    (
        r"\b(?:in|gegen|auf)(?: \w+)? (?P<where>wade|ferse|unterschenkel|kniekehle|oberschenkel) (?:geschlagen|"
        r"getreten|geschossen|getroffen|gschossen)\b",
        r"plopp \g<where>",
    ),
    (rf"\b(?P<where>(?:{_BODY})(?: \w+){{0,3}}?) prall\b", r"\g<where> geschwollen"),
    (
        r"\bkomme?\w*(?: \w+){0,2}? (?P<what>fuss|bein)(?: \w+){0,2}? nicht(?: mehr)? auf\b(?! die| den| das)",
        r"\g<what> nicht auftreten",
    ),
    (
        r"\bnicht(?: mehr)? (?:drauf ?stehe?n?|drauf ?stehn|drauf ?treten|drauf ?gehen|drauf ?steigen)\b",
        "nicht belasten",
    ),
    (
        r"\b(?P<what>knie|bein|fuss|beine|knochel)(?P<how>(?: \w+){0,2}?) (?:halt|haltet|tragt|tragen|hebt|"
        r"halten)(?: \w+){0,2}? "
        r"(?:nicht(?: mehr)?|nimmer|kaum(?: noch)?)\b(?! still| ruhig)",
        r"\g<what>\g<how> nicht belasten",
    ),
    (
        r"\b(?P<what>faust|hand|finger|griff)(?P<how>(?: \w+){0,3}?) (?:nicht|kaum|schlecht)(?: mehr| richtig| ganz|"
        r" noch)* "
        r"(?:zumachen|schliessen|ballen|offnen|aufmachen|spreizen|zubekommen|zu)\b",
        r"hand\g<how> schwach",
    ),
    (
        rf"\b(?:nicht|kaum)(?: \w+)? (?:schlafen|geschlafen|einschlafen)(?: \w+){{0,3}}? (?:wegen|vor|von|"
        rf"durch)(?: \w+){{0,2}}? (?P<what>{_BODY})\b",
        r"schmerz weckt mich \g<what>",
    ),
    (
        rf"\b(?:wegen|vor|von)(?: \w+){{0,2}}? (?P<what>{_BODY})(?: \w+){{0,3}}? (?:nicht|"
        rf"kaum)(?: \w+)? (?:schlafen|geschlafen|einschlafen)\b",
        r"schmerz weckt mich \g<what>",
    ),
    (r"\b(?P<arm>brust|brustkorb|brustbein)(?P<how>(?: \w+){0,4}?) schwer\b(?! zu| gefallen)", r"\g<arm>\g<how> druck"),
    (r"\bschwer(?:es|er|e)?(?= (?:\w+ )?(?:auf|uff|in|im|am) (?:\w+ )?brust)", "druck"),
    (r"\bdruckts?\b|\bdrucken\b(?=.{0,30}\bbrust)", "druckgefuhl"),
    (r"\bwie wenn (?:oana|einer|wer|jemand|ana|eina)\b(?=.{0,10} (?:drauf|sitzt|steht|hockt))", "wie ein elefant"),
    (
        r"\bherz\b(?P<how>(?:(?! geht das| fur| aus gold) \w+){0,4}?) (?:hupft|hupf|hopst|hopp\w*|springt|zuckt|"
        r"tanzt|umanand|"
        r"gumpet|aussetzer|aussetzern|setzt immer wieder aus|setzt aus|bleibt stehen|verrutscht|zappelt|"
        r"holprig|rumpelt\w*|ruckelt|spinnt)\b(?! vor (?:freude|gluck))",
        r"herz\g<how> herzstolpern",
    ),
    (r"\bherz(?P<how>(?: \w+){0,3}?) setzt(?: \w+){0,3}? aus\b", r"herz\g<how> herzstolpern"),
    (r"\bbin(?P<how>(?: \w+){0,3}?) (?:weggesackt|weggekippt|weggebrochen|weggeklappt)\b", r"bin\g<how> umgekippt"),
    (
        r"\b(?P<what>arm|bein|hand|fuss|arme|beine|seite|hande)(?P<how>(?: (?!aber|und)\w+){0,3}?) (?:geht|gehen|"
        r"funktioniert|"
        r"tut|will|wollen|macht)(?P<so>(?: (?:auf einmal|plotzlich|jetzt|heute|gerade|grad|gar|"
        r"einfach))*) nicht mehr(?! mit)"
        r"(?=[.,!;]|$| und| seit)",
        r"\g<what>\g<how>\g<so> gelahmt",
    ),
    (
        r"\bsehe?\w*(?P<how>(?: \w+){0,4} (?:auge|links|rechts|seite))(?: \w+){0,2}? (?:nichts|nicht|kaum|"
        r"nur schwarz|nur grau)\b",
        r"sehe nichts\g<how>",
    ),
    (r"\bsehe?\b(?P<how>(?: (?!mich|dich|uns)\w+){0,4}?) doppelt\b(?! so)", r"sehe doppelt\g<how>"),
    (r"\bauf einmal alles doppelt\b|\balles (?:ist |war |wird )?doppelt(?=[.,!]|$)", "sehe doppelt"),
    (
        r"\b(?:unten(?: rum)?|untenrum|untenrumm|dortn?|unterleib|zwischen den beinen|hintern|gesass|intimbereich|"
        r"scheide|penis)"
        r"(?P<how>(?: \w+){0,2}?) (?:spur\w*|fuhl\w*|merk\w*)(?: ich)?(?: \w+){0,2}? (?:nichts|nicht|kaum)(?: mehr)?\b",
        r"intimbereich\g<how> taub",
    ),
    (
        r"\b(?:spur\w*|fuhl\w*|merk\w*)(?: \w+){0,3}? (?:unten(?: rum)?|untenrum|zwischen den beinen|hintern)"
        r"(?: \w+){0,3}? (?:nichts|nicht|kaum)(?: mehr)?\b",
        "intimbereich taub",
    ),
    (
        r"\b(?:abwischen|abputzen|auswischen)(?: \w+){0,3}? (?:nichts|nicht|kaum)\b|"
        r"\b(?:nichts|nicht|kaum)(?: \w+){0,2}? (?:beim|nach dem) (?:abwischen|abputzen)\b",
        "intimbereich taub",
    ),
    (
        r"\b(?:mach\w*|gemacht|geht|ging|lauft|lief|pinkel\w*|gepinkelt|nass)(?: \w+){0,3}? (?:in|an) (?:die|der|"
        r"meine) "
        r"(?:hose|unterhose|hosen)\b(?! vor| lachen)",
        "urin verloren",
    ),
    (
        r"\b(?:in|an) die (?:hose|hosen|unterhose) (?:gemacht|gepinkelt|gegangen|gemocht|gebrunzt|gschissn|"
        r"geschissen)\b(?! vor)",
        "urin verloren",
    ),
    (
        r"\bverlier\w*(?: \w+){0,3}? (?:stuhl|urin|kot|wasser|pipi|harn)\b|"
        r"\b(?:stuhl|urin|kot|harn|pipi)(?: (?!sport)\w+){0,4}? (?:verlier\w*|verloren|nicht halten|"
        r"nicht mehr halten)\b",
        "urin verloren",
    ),
    (r"\b(?:merk\w*|spur\w*|fuhl\w*)(?: \w+){0,3}? nicht(?: mehr)?(?: \w+){0,3}? blase\b", "nicht pinkeln"),
    (r"\bblase(?: \w+){0,4}? (?:merk\w*|spur\w*|fuhl\w*)(?: \w+){0,2}? nicht\b", "nicht pinkeln"),
    (
        r"\b(?:kann|konnte|kon)(?: \w+){0,4}? nicht(?: mehr)? (?P<verb>pinkeln|urinieren|wasser lassen)\b",
        r"nicht \g<verb>",
    ),
    (
        rf"\b(?:laut|heftig|richtig|arg|gescheit|ordentlich|furchtbar)(?: \w+)? geknackt(?P<where>(?: (?:im|in|am|"
        rf"der|den|mein\w*|"
        rf"link\w*|recht\w*)){{1,3}} (?:{_BODY}))",
        r"plopp\g<where>",
    ),
    (r"\b(?:peitschenschlag|peitschenhieb|steinschlag|pistolenschuss)\b", "plopp"),
    (rf"\bgeknallt(?= (?:im|in|am)(?: \w+){{0,2}} (?:{_BODY}))", "plopp"),
    (
        rf"\b(?:krieg\w*|bring\w*|bekomm\w*|kann|"
        rf"setz\w*)(?P<what>(?: \w+){{0,3}} (?:{_BODY}))(?: \w+){{0,2}}? nicht(?: mehr)? "
        r"(?:auf den boden|aufsetzen|abstellen|hinstellen|aufstellen)\b",
        r"\g<what> nicht belasten",
    ),
    (
        rf"\bnicht(?: mehr)? (?:auf den|auf dem|auf das|auf s|auf die)(?P<what>(?: \w+)? (?:{_BODY})) stehen\b",
        r"\g<what> nicht belasten",
    ),
    (
        r"\b\d+(?:[.,]\d)? (?:kilo|kg|kilos|pfund)(?P<how>(?: \w+){0,6}?) (?:abgenommen|weniger|leichter|runter|"
        r"verloren|gefallen)\b|"
        r"\b(?:abgenommen|verloren) \d+ (?:kilo|kg|pfund)\b",
        r"gewicht verloren\g<how>",
    ),
    (
        r"\bohne (?:dass|das) (?:ich|i)(?: (?:was|etwas|irgendwas|viel|dafur|da|es|wollte|will|nichts)){1,3} (?:tue|tu|"
        r"tua|mache|mach|gemacht|"
        r"getan|andere|wollte)(?: habe?)?\b",
        "ungewollt",
    ),
    (
        r"\b(?:tut|tun|tat|taten|tuts|tats|tuat|tuet|duat|tue)\b(?P<what>(?: (?!weh\b)[\w%/]+){0,9}?) wehe?\b",
        r"\g<what> schmerzt",
    ),
    (
        rf"\b(?:spur\w*|fuhl\w*|merk\w*|gspur\w*) (?:ich |i )?(?P<limb>{_OWN} (?:{_SIDE} )?(?:{_LIMB}))"
        r"(?: \w+){0,2}? (?:gar nicht|nicht|nich|net|ned|nimmer|kaum)(?: mehr| noch| richtig)*\b",
        r"\g<limb> taub",
    ),
    (
        rf"\b(?:kann|konnte|kau) (?:ich |i )?(?P<limb>{_OWN} (?:{_SIDE} )?(?:{_LIMB}))"
        r"(?: \w+){0,2}? (?:nicht|nich|net|ned|kaum|nimmer)(?: mehr| noch| richtig)* (?:spuren|fuhlen|gspuren)\b",
        r"\g<limb> taub",
    ),
    (
        rf"\b(?P<limb>(?:{_LIMB})) (?:nicht|nich|net|kaum)(?: mehr|"
        rf" noch| richtig)* (?:spure|fuhle|gespurt|gefuhlt|spurte)\b",
        r"\g<limb> taub",
    ),
    (r"\bkein(?:e|en)? gefuhl(?: mehr)? (?P<limb>(?:in|im) )", r"taub \g<limb>"),
    (r"\bgefuhl (?P<limb>(?:in|im)(?: [a-z]+){1,3}) (?:verloren|weg|verschwunden|ist weg)\b", r"taub \g<limb>"),
    (
        r"\b(?P<verb>schmerzt|schmerzen|kribbelt|sticht|brennt|"
        r"zwickt|pocht|knackt)(?P<rest>(?: (?!nicht|aber)\w+){0,3}?)"
        r" (?P<no>nicht mehr|nicht|net|ned|nimmer|nie|kein bisschen)\b(?=[.,!?;]|$| und\b| oder\b| heute\b| beim\b)",
        r"\g<no> \g<verb>\g<rest>",
    ),
    (
        r"\b(?:kann|konnte|konnen)(?: \w+){0,3}? (?:nicht|nimmer|net|"
        r"ned)(?: mehr)? (?:auf|aufs|zur)(?: die)? (?:toilette|klo|wc)\b",
        "nicht pinkeln",
    ),
    (r"\b(?:kann|konnte)(?: ich)? (?:nicht|net|ned|nimmer)(?: mehr)?(?=[.,!?;]|$)", "erschopft"),
    (
        rf"\b(?P<thing>{_THING})(?P<how>{_SMALL}{{0,4}}) (?:schwach|"
        rf"gerissen|riss|geplatzt|platzte|geknackt|knackt|knarzt|geknallt|"
        r"knallte|gekracht|krachte|umgefallen|umgekippt|zusammengebrochen|"
        r"eingeschlafen|schwarz|unscharf|verschwommen|geschwollen|"
        r"angeschwollen|hangt|hing|tot|gebrochen|lahm|blockiert|instabil|"
        r"heiss|warm|kalt|blau|rot|lila|dick|brennt|brannte|taub)\b",
        r"\g<thing>\g<how> egal",
    ),
    (
        r"\b(ratsch|plopp|plop|pop|knack|knacks|schnapp|peng|klack|"
        r"zack|bumm|rums|knall|schnalz)(?: \w+)? (?:gemacht|gmacht)\b",
        "plopp",
    ),
    (
        r"\bmacht\w* (?:es )?(?:ratsch|plopp|plop|pop|knack|knacks|schnapp|peng|klack|zack|bumm|rums|knall|schnalz)\b",
        "plopp",
    ),
    (
        r"\b(?:uhrzeit|zeit)(?: bitte)?(?P<what>[^,;.]{0,25}?) (?:andern|"
        r"verschieben|umstellen|wechseln|verlegen|stellen)\b",
        r"uhrzeit andern\g<what>",
    ),
    (
        r"\b(?P<no>nicht|kaum|nimmer|net|ned)(?: mehr| richtig| gut| wirklich|"
        r" gescheit| ordentlich| normal| tief| so| recht| klar| deutlich| voll| ganz|"
        r" selbst)+ (?P<verb>atmen|durchatmen|einatmen|sprechen|reden|sehen|pinkeln|schlafen|"
        r"heben|anheben|greifen|festhalten|bewegen|spuren|fuhlen|halten|kontrollieren)\b",
        r"\g<no> \g<verb>",
    ),
    (
        r"\b(?P<no>nicht|nimmer|net|ned)(?: mehr| selbst)+ (?P<verb>laufen|gehen|auftreten|stehen|belasten)\b",
        r"\g<no> \g<verb>",
    ),
    (rf"\b(?P<limb>(?:{_LIMB})(?: \w+){{0,3}}?) (?:nicht|kaum|nimmer|net|ned) bewegen\b", r"\g<limb> gelahmt"),
    (
        rf"\b(?:spur\w*|fuhl\w*|merk\w*)(?: ich| i)?(?P<where>(?: \w+){{0,3}} (?:{_LIMB}|schritt|"
        rf"po|gesass|intimbereich))(?: \w+){{0,2}}? (?:nichts|nix|gar nichts|kaum was)(?: mehr)?\b",
        r"\g<where> taub",
    ),
    (r"\bschritt(?=(?: \w+){0,4} (?:taub|betaubt|gefuhllos|kribbel|pelzig))", "intimbereich"),
    (
        r"\b(?P<what>klo|toilette|pinkeln|wasser lassen|wasserlassen|pieseln|bieseln)\b[^.!?]{0,25}? (?:kommt|"
        r"geht|kam|ging|lauft)(?: \w+){0,2}? (?:nichts|nix|nicht|net|ned)(?: mehr)?\b",
        "nicht pinkeln",
    ),
    (r"\b(?:ziehen|zieht)\b(?=[^.!?]{0,40}\bbrust\b[^!?]{0,40}(?:schweiss|luft|atem|arm|kiefer|ubel))", "schmerz"),
    (
        r"\bherz(?P<how>(?: \w+){0,4}?) (?:ausgesetzt|sprunge|hupfer|"
        r"purzelbaume|extraschlage|holpert|holperte|poltert)\b",
        r"herz\g<how> stolpert",
    ),
    (r"\bluft(?: (?:wird|wurde|war|ist|geht))(?: \w+){0,2}? (?:knapp|eng|dunn|weg|aus)\b", "keine luft"),
    (r"\b(?:bleibt|blieb)(?: \w+){0,4}? luft(?: \w+)? weg\b", "keine luft"),
    (
        r"\b(?P<side>linke|rechte)n? (?:korper)?seite(?=[^.!?,]{0,25} (?:gelahmt|taub|schwach|kraftlos|lahm)\b)",
        r"\g<side> korperhalfte",
    ),
    (
        r"\b(?P<weak>schwach\w*|taub\w*|gelahmt|lahmung\w*|"
        r"kraftlos)(?P<how>(?: \w+){0,3}?) (?P<side>linken?|rechten?) seite\b(?! vom| des| am| im)",
        r"\g<weak>\g<how> \g<side> korperhalfte",
    ),
    (r"\bfind\w*(?: \w+){0,3}? (?:worte|worter|wort)(?: \w+){0,2}? nicht\b", "lalle"),
    (r"\b(?:worte|worter)(?: \w+){0,3}? nicht (?:ein|mehr|raus|heraus)\b", "lalle"),
    (
        r"\b(?:teil|stuck|halfte)(?: \w+){0,3}? (?:bild|bildes|sicht|gesichtsfeld|"
        r"gesichtsfelds|blickfeld|bildschirm)(?: \w+){0,3}? (?:fehlt|weg|schwarz)\b",
        "gesichtsfeldausfall",
    ),
    (
        rf"\b(?P<where>(?:{_BODY}|haut|stelle)(?: (?:ist|sind|wird|wurde|ganz|total|jetzt|"
        rf"schon|voll|richtig|seit|gestern|und|dick|alles)){{0,4}}) (?:blau|lila|violett)\b",
        r"\g<where> bluterguss",
    ),
    (rf"\b(?:blau|lila|violett)(?= (?:am|an|im|auf|unter|unterm|uber|um)(?: \w+){{0,2}}? (?:{_BODY})\b)", "bluterguss"),
    (
        r"\bvoll(?:er)? wasser\b|\bwasser (?:im|in den|in der) (?:knie|gelenk|bein|beinen|fuss|fussen|wade|knochel)\b",
        "geschwollen",
    ),
    (
        r"\b(?:heul|wein|schrei|krumm|stohn|geheul|gewein|geschri)\w*(?: mich)? vor schmerz\w*|"
        r"\bvor schmerz\w*(?: \w+){0,2} (?:geheult|geweint|geschrien|heulen|weinen|schreien)\b",
        "unertragliche schmerzen",
    ),
    (
        r"\b(?P<sign>taubheit|taubheitsgefuhl|kribbeln|schwindel|schwellung|fieber|stechen|schmerzen|"
        r"schmerz|brustschmerzen|atemnot|bluterguss) (?:nein|keine?[snr]?|nix|nicht|null)(?=[.,!;]|$| und\b)",
        r"kein \g<sign>",
    ),
    (
        r"\bvor (?:lachen|freude|wut|langeweile|begeisterung|gluck)(?: \w+){0,3}? (?:umgefallen|"
        r"umgekippt|ohnmachtig|gestorben|zusammengebrochen|geplatzt|schwindelig|schwindlig)\b",
        "froh",
    ),
    (
        r"\b(?:umgefallen|umgekippt|ohnmachtig|gestorben|zusammengebrochen|geplatzt|"
        r"schwindelig|schwindlig) vor (?:lachen|freude|wut|langeweile|begeisterung|gluck)\b",
        "froh",
    ),
    (r"\bhabs(?=[,.!]|$)", "hab alles gemacht"),
    (
        r"\b(?:merk\w*|spur\w*|fuhl\w*)(?: \w+){0,3}? nicht(?: mehr)? (?:wenn|"
        r"wann|dass|ob)(?: \w+){0,3}? (?:muss|pinkel\w*|pinkle|klo|toilette)\b",
        "nicht pinkeln",
    ),
    (r"\btaub(?: \w+)? auf (?:den|beiden|dem|einem|einen)(?: \w+)? ohr\w*", "egal"),
    (
        rf"\b(?P<side>link|recht)s (?:im|in der|am|an der|unten|oben|hinten|"
        rf"vorne?|aussen|innen)(?: (?:im|in der|am|an der))? (?=(?:{_BODY})\b)",
        r"\g<side>en ",
    ),
    (
        r"\bnur (?P<which>die|den|das|eine?n?) (?P<what>[^,.;!?\d]{1,40}?) (?:gemacht|geschafft|gedehnt)\b",
        r"nur gemacht \g<which> \g<what>",
    ),
    (r"^nachher\b|\bnachher(?=[.! ]*$)", "spater"),
    (
        r"\b(?:kannst|konnt\w*|konnen)(?: \w+){0,4}? (?:spater|fruher|"
        r"um \d+(?: uhr)?)(?: \w+)? (?:schreiben|schicken|melden|senden)\b",
        "andere uhrzeit",
    ),
    (r"\bmach\w* (?=(?:\w+ ){0,3}(?:urlaub|pause|ferien|feierabend)\b)", ""),
    (
        r"\b(?:training|einheit|session|dehnen) (?:heute |ist )?(?:war|lief|ging) (?:heute )?(?:ganz |sehr |"
        r"echt |richtig |wirklich )?(?:gut|super|klasse|toll|schon|prima|ok|okay|top|angenehm|locker|entspannt)\b",
        "tolle einheit",
    ),
    (r"^(?:ja )?habe? ich(?=[.,! ]*$)", "ja"),
    (
        r"\b(?P<limb>fuss|fusse|hand|hande|arm|arme|bein|beine|finger|"
        r"zehen?) (?:ist |sind )?(?:schlaft|schlafen|schlief|schlafend)\b",
        r"\g<limb> eingeschlafen",
    ),
    (
        r"\b(?:geht|lauft|kommt|ging)(?: \w+){0,3}? (?:urin|pipi|stuhl|kot)(?: \w+){0,2}? (?:ab|raus|weg)\b",
        "urin verloren",
    ),
    (
        r"\b(?:urin|pipi|stuhl|stuhlgang|kot)(?: \w+){0,3}? (?:geht|lauft|kommt|ging)(?: \w+){0,3}? (?:ab|raus|weg)\b",
        "urin verloren",
    ),
    (r"\b(?:halt|halten|hielt|hielten) mich(?: \w+){0,3}? wach\b", "weckt mich"),
    (
        r"\b(?P<heart>herz\w*|puls|schlag\w*|pumpe)(?P<how>(?: \w+){0,5}?) (?:unregelmassig\w*|"
        r"stolper\w*|flatter\w*|aussetzer|aus dem takt|aus dem rhythmus|bis zum hals|durcheinander)\b",
        r"\g<heart>\g<how> herzstolpern",
    ),
    (r"\bunregelmassig\w* (?P<heart>herz\w*|puls)", r"\g<heart> herzstolpern"),
    (r"\bmir(?P<how>(?: \w+){0,3}?) schwarz\b(?! auf)", r"\g<how> ohnmachtig"),
    (
        rf"\b(?P<where>{_BODY})(?P<how>(?: \w+){{0,4}}?) (?:blockiert\w*|"
        rf"versag\w*|verhakt|gibt nach|gab nach|macht\w* schlapp|halt nicht)\b",
        r"\g<where>\g<how> knickt weg",
    ),
    (
        r"\b(?:vor|von|wegen|durch|mit)(?: \w+){0,2}? (?:\w*schmerz\w*|stechen|"
        r"pochen)(?: \w+){0,4}? (?:aufgewacht|wach|aufwache|geweckt|aufwachen)\b",
        "schmerz weckt mich",
    ),
    (
        r"\b(?:aufgewacht|wach|wache|wachte|aufwachen|geweckt)(?: \w+){0,5}? (?:vor|"
        r"von|wegen|durch|mit)(?: \w+){0,2}? (?:\w*schmerz\w*|stechen)\b",
        "schmerz weckt mich",
    ),
    (
        r"\b(?P<when>nachts|jede nacht|in der nacht|mehrmals|heute nacht|"
        r"nacht)(?P<how>(?: \w+){0,5}?) (?:aufgewacht|wach|aufwache)\b",
        r"\g<when>\g<how> weckt mich",
    ),
    (
        rf"\b(?:stark|heftig|massiv|extrem|schwer|gewaltig|schrecklich|"
        rf"furchtbar)e?[nrs]? (?P<where>{_BODY}) schmerz\w*",
        r"\g<where> starke schmerzen",
    ),
    (
        r"\bschmerz\w*(?P<how>(?: \w+){0,3}?) (?:stark|heftig|extrem|massiv)\b(?! besser| weniger)",
        r"starke schmerzen\g<how>",
    ),
    (
        r"\b(?P<who>oma|opa|vater|mutter|hund|katze|kater|nachbarin?|"
        r"schwiegermutter|omi)(?: \w+){0,2}? taub\b(?! am| im| in| an)",
        r"\g<who> alt",
    ),
    (rf"\b(?P<limb>(?:{_LIMB})(?: \w+){{0,4}}?) lahm\b", r"\g<limb> gelahmt"),
    (
        r"\bschlag (?:getan |gegeben )?(?:in|gegen)(?: \w+)? (?P<where>wade|ferse|bein|oberschenkel)\b",
        r"plopp \g<where>",
    ),
    (rf"^(?!.*\b(?:{_LIMB}|{_BODY})\b)(?P<before>.*)\bkeine kraft mehr\b", r"\g<before>kraft ausgegangen"),
    (
        r"\bschmerz\w*(?: heute| jetzt| hatte ich| habe? ich| gab es|"
        r" gabs| waren| war| da)+ (?:keine?r?|nicht|nix)(?=[.,!;]|$)",
        "keine schmerzen",
    ),
    (r"\b(?:nur noch |nur )?(?P<now>\d) statt (?:vorher )?(?P<was>\d)(?=[.,!]|$)", r"vonab \g<was> biszu \g<now>"),
    (r"(?<=[a-z,;] )kann ich\b(?![^.!]*\?)", "ich"),
    (
        rf"\bkeine?n? schmerz\w*,? (?:ausser|bis auf|nur|lediglich) (?:in der|"
        rf"im|am|an der|in den|die|das|den) (?P<where>{_BODY})\b",
        r"\g<where> schmerz",
    ),
    (r"\bweder\b(?P<first>[^.!?]{1,60}?)(?<!immer )\bnoch\b(?! immer)", r"weder\g<first>weder"),
    (r"\bweder\b(?P<first>[^.!?,]{1,60}?\bweder\b[^.!?,]{1,40}?)(?<!immer )\bnoch\b(?! immer)", r"weder\g<first>weder"),
    (
        r"\b(?:ein|einen|das|lautes|lauter|lauten|heftiges) (?:knacken|"
        r"knack|knacks|knacksen)(?: \w+){0,4}? (?:gehort|gespurt|gemerkt)\b",
        "plopp",
    ),
    (
        rf"\bhat(?: (?!nicht|nix|nichts|nie|schon|angenehm|net|ned)\w+){{0,3}}? geknackt(?P<where>(?: (?:im|"
        rf"in|am|der|den|mein\w*|link\w*|recht\w*)){{1,3}} (?:{_BODY}))\b",
        r"vielleicht plopp\g<where>",
    ),
    (
        rf"\bvon (?:einer |ner |ne |a )?{_NUMBER} (?:auf|zu|nach|"
        rf"runter auf|hoch auf|bis|uber)(?: eine?r?| ne| a)? (?={_NUMBER})",
        r"vonab \1 biszu ",
    ),
    (
        rf"(?<!bis )\b(?:auf|bei)(?= (?:etwa |ca |so |ungefahr )?{_NUMBER}(?!\w|"
        rf" von| uhr| minuten| runden| ubungen| satze))",
        "aufzahl",
    ),
    (
        r"\bheute(?: leider| mal)* (nicht|net|ned|nich) (?=gemacht|geschafft|"
        r"trainiert|gedehnt|geubt|dazu|gschafft|gmacht|fertig|alle|ganz)",
        r"\1 ",
    ),
    (
        r"\b(?:nachher|danach|hinterher|anschliessend)(?= (?:nur |noch |"
        r"eine |ne |so |bei |auf )*(?:\d|eins|zwei|drei|vier|funf)\b)",
        "jetzt",
    ),
    (rf"\bdie ersten {_NUMBER} (ubungen|dehnungen|runden|sachen)(?: gemacht| geschafft)?", r"nur die ersten \1 \2"),
    (
        rf"\b(nur (?:die )?{_NUMBER} (?:minuten|min|ubungen|runden|dehnungen)) (?:gemacht|geschafft|trainiert|gedehnt)",
        r"\1",
    ),
    (
        r"\b(kind|baby|kleine|kleiner)( ist| war| wurde| wieder| dann)* (?:aufgewacht|wach geworden|wach)\b",
        r"\1 wurde munter",
    ),
    (rf"\b{_NUMBER} (?:der|von den|aus) (?={_NUMBER}\b)", r"\1 von "),
    (rf"\b{_NUMBER} bis (?={_NUMBER}\b)", r"\1 biszu "),
    (r"(?<=:) ?(?:nein|nee|no)\b", " kein"),
    (r"\b(\d+|zwei|drei|vier|funf|sechs|zehn) mal\b", r"\1 male"),
    (r"\b(\d+)(?:\.|te[nrs]?)(?= (?:ubung|runde|satz|durchgang|dehnung|teil))", r"nummer \1"),
    (r"\b(\d+)er\b", r"\1"),
    (r"(?<=\d)h\b", " uhr"),
    (
        r"\b(?:kann|konnte|koa|kau) (?P<no>nicht|net|ned|kaum)(?: mehr|"
        r" richtig)*(?P<how>(?: (?:auf|mit|den|das|die|mein)\w*)(?: \w+){1,3}?)"
        r" (?P<verb>stehen|auftreten|gehen|laufen|belasten|heben|bewegen)\b",
        r"\g<how> \g<no> \g<verb>",
    ),
    (r"\b(?:fallen|fallt|rutscht|rutschen)((?: \w+){0,5}?) aus (?:der|den|da) hand(?:en)?\b", r"\1 fallt aus der hand"),
    (
        r"\bum (\d+(?:[:.]\d\d)?|[a-z]+)((?: uhr)?)((?: \w+){0,2}?) (?:schicken|senden|kommen|haben)\b",
        r"schick um \1\2\3",
    ),
    (r"\bschwillt((?: \w+){0,4}?) an\b", r"\1 geschwollen"),
    (r"\bschlaft((?: \w+){0,5}?) ein\b", r"\1 eingeschlafen"),
    (r"\bschlafen((?: \w+){0,5}?) ein\b", r"\1 eingeschlafen"),
    (
        r"\b(?:knickt|knickte|sackt|sackte|klappt|klappte|bricht|rutscht)((?: \w+){0,5}?) (?:weg|ein)\b",
        r"\1 knickt weg",
    ),
    (
        rf"\b(?P<where>{_BODY})(?P<how>(?: \w+){{0,5}}?) (?:gibt|gab)(?: \w+){{0,5}}? nach\b",
        r"\g<where>\g<how> knickt weg",
    ),
    (rf"\b(?:gibt|gab)(?: \w+){{0,3}}? (?P<where>{_BODY})(?: \w+){{0,3}}? nach\b", r"\g<where> knickt weg"),
    (r"\bstrahlt((?: \w+){0,8}?) (?:aus|ab)\b", r"\1 strahlt aus"),
    (r"\bwach(?:e|te)?((?: \w+){0,6}?) auf\b", r"\1 aufgewacht"),
    (r"\b(?:setzt|setzte)((?: \w+){0,4}?) aus\b(?=.{0,20}\b(?:herz|schlag))", r"\1 aussetzer"),
    (r"\bherz((?: \w+){0,3}?) (?:setzt|setzte)((?: \w+){0,3}?) aus\b", r"herz\1\2 aussetzer"),
    (r"\bkipp(?:t|te)((?: \w+){0,4}?) um\b", r"\1 umgekippt"),
    (
        r"\b(?:zieht|zog|fahrt|schiesst|lauft|wandert)((?: \w+){0,5}?) (?:bis in|"
        r"bis ins|bis zum|bis zur|runter|hinunter|abwarts)\b",
        r"\1 zieht bis in",
    ),
    (r"\bhort((?: \w+){0,4}?) nicht auf\b", r"\1 hort nicht auf"),
    (r"\bgeht((?: \w+){0,4}?) nicht(?: mehr)? weg\b", r"\1 geht nicht weg"),
    (
        r"\b(?P<who>kind|kinder|baby|sohn|tochter|kleine|kleiner|hund|katze|mann|frau|enkel|oma|opa)"
        r"(?P<how>(?: (?:ist|sind|war|waren|schon|dabei|endlich|gleich|sofort|auf|dem|sofa|arm)){1,5}) eingeschlafen\b",
        r"\g<who>\g<how> schlief",
    ),
    (
        r"\b(?P<who>bin|ist (?:das|mein|meine|die|der) (?:kind|baby|sohn|tochter|kleine))"
        rf"(?P<how>(?: (?!{_LIMB})\w+){{0,6}}?) eingeschlafen\b",
        r"\g<who>\g<how> verschlafen",
    ),
)
"""Pattern and what stands for it, in this order, on the small letters without accents."""
