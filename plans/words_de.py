"""German words, each under what the English tables know it as. Tables only: the rules are the English ones.

Letters are without accents and umlauts, as replies are read: "ue" is "u" like the "ü" itself. In a phrase `a|b` is
either word. A longer phrase wins over a shorter one, so an idiom takes its alarming word away.
"""

from __future__ import annotations

from plans import dialects_de, rewrites_de

REWRITES = rewrites_de.REWRITES

MISSPELT: dict[str, str] = dialects_de.SPELLED | {
    "kribln": "kribbeln", "kribeln": "kribbeln", "kriblen": "kribbeln", "kribelt": "kribbelt", "kriblt": "kribbelt",
    "schmerz3n": "schmerzen", "ferig": "fertig", "fetrig": "fertig", "fertg": "fertig",
    "nciht": "nicht", "kien": "kein", "keien": "keine", "keni": "kein", "ken": "kein",
    "jemacht": "gemacht",
    "jeschafft": "geschafft", "jut": "gut", "jedehnt": "gedehnt",
    "nicth": "nicht", "nihct": "nicht", "nich": "nicht", "niht": "nicht", "taup": "taub", "daub": "taub",
    "knei": "knie", "kni": "knie", "kine": "knie", "fus": "fuss", "wadde": "wade", "rucekn": "rucken",
    "ruckne": "rucken", "ales": "alles", "alels": "alles", "zeti": "zeit", "schemrz": "schmerz", "shcmerz": "schmerz",
    "schmerzn": "schmerzen", "scmerz": "schmerz", "schmertz": "schmerz", "schmertzen": "schmerzen", "brsut": "brust",
    "burst": "brust", "blau_r": "blau", "lnks": "links", "linsk": "links", "rehcts": "rechts", "recths": "rechts",
    "halfte": "halfte", "hlafte": "halfte", "hafte": "halfte", "helfte": "halfte", "gemach": "gemacht",
    "heut": "heute", "uff": "auf", "uf": "auf", "fiber": "fieber", "fiba": "fieber",
}  # fmt: skip
"""Short words typed wrong, one by one."""

TYPED_WRONG = """
kribbeln kribbelt schmerzen schmerzt schmerz schmerzfrei fertig erledigt geschafft gemacht ubungen schulter knochel
oberschenkel geschwollen schwellung schwindelig schwindel brennt brennen stechen stechend stechender bluterguss
ohnmachtig ohnmacht bewusstlos kraftlos gelahmt lahmung muskelkater taubheit taubheitsgefuhl gefuhllos pelzig
eingeschlafen abgebrochen ausgelassen vergessen verschlafen halfte keine nichts training einheit programm plotzlich
fieber gewicht atemnot luftnot herzrasen herzstolpern unregelmassig verschwommen sprechen druckgefuhl brustkorb
unertraglich elektrisch stromschlag ausstrahlend schiesst ameisen gestern heute schlechter besser schlimmer
zusammengebrochen umgekippt rucken nacken ellbogen handgelenk sprunggelenk beidseitig dumpfer pochend verspannt
schwanger operation schlaganfall herzinfarkt doppelbilder inkontinent nachgegeben weggeknickt auftreten belasten
krank erkaltet pausieren abmelden
"""
"""Words of five letters and more that are recognised with a letter or two wrong."""

LOOKALIKES = """
abgeladen abgelassen abgesprochen abgestochen abmalen achten angebrochen anmelden aufdrehen aufgebrochen aufgetreten
aufstehen auftragen auftraten auftreiben auftretende auftretens auftritten aufwerten aufzutreten ausgebrochen
ausgeladen ausgelassene ausgelastet ausgelaufen ausgelesen ausgelosten ausgerissen austreten auszulassen backen
befassten behalten beklagten belassen belastend belastende belastet belastete belasteten belastigen belastung beleget
belegt bestanden beste besten betasten beule bewusstes bieder bitte blicken brachen brand brannten brechen bremsen
brennan brenner brent bretter brunnen butter dampfer decken deine dicken drucken eingeschlafert eingeschlagen
eingeschlagene einheits einzel einzuschlafen elektronisch entlasten entledigt erhalten erhaltet erkalten erkannt
erledigen feder feine ferse fertigt festen fester fettig ficken fieder fieser fluge frank fresser frittig futter
gedacht gedicht gefahrlos gehalten geistern gelacht gelangt gelassen geleert gelehrt gelenkt gelernt gemocht gerahmt
gericht gerichte geschadet geschaffen geschaft geschafte geschafts gescharft geschatzt geschenkt geschickt geschmolzen
geschopft geschwommen geschworen gesteckt gestein gestellt gesten geweckt gewicht gewichte gewichten gewichtet
gewichts gicht glieder hacken halften hauen hauer haute hefte hegte heine herbst heule heuler hutte kasten keime kenne
kennen kerne keule krabbeln krach krane kranke kranz kreise lachen lecken leine lesser lieder lucken machen meine
messer mitte mucken mutter nachgelesen nachgesehen nachten nachts nachzugeben nackt nackte nackten nasser necken nicht
nichte nicken nieder nights operations packen passieren passierten pelz pelze programmen programmes rechen rechnen
rechts recken reine rennen rest retter richtig rocken ruckten sachen saule schaffen schalter scheisst schelling scherz
scherzen scherzt schicken schiebst schiess schiesse schimmer schimmern schimmert schlachten schlachtet schlagen
schlangen schlanker schlecker schleicher schlemmen schlemmer schlichte schlichten schlichter schlichtes schliesse
schliesst schlingel schluchten schlucken schlummern schlummert schluter schmecken schmeisst schmelz schmelzen
schmelzer schmieren schmutz schnuller schrank schuldner schule schuler schuller schulte schuster schwager schwanken
schwanz schwanzen schwatzer schweiger schwelgen schwelle schwimmen schwimmer schwinden schwindet schwingen seine seule
sitte spiegel spielchen sprachen sprechende sprechender sprecher sprecherin sprechern sprechers springen spruchen
stachen stecher stecken stehen stehend stehenden stehender stehendes steigen steigender steinchen steine stephen
stimmen streichen stunden trainings trank trennen trinken unregelmassige unregelmassigen verbessern verbissen
verfassen vergassen vergessene vergessenen vergeuden vergiessen vergossen verlassen verliessen vermessen vermissen
verpassen verpissen verreisen verschaffen verscharfen verschlagen verschwimmen verschworen verse verspatet versussen
verweisen vorschlagen wachen wechseln wecken weste wetter wicht wichtig wieder ziegel zucken
"""
"""Ordinary words that look like the words above and must stay what they are."""

PHRASES: dict[str, str] = {
    "i": "ich|i",
    "my": "mein|meine|meinem|meinen|meiner|meines|mei|mim|unser|unsere|unserem|unseren|mis|mine",
    "like": "wie, als ob, als wenn, als wurde, wie wenn, als ware, als hatte, als hatt, als war, ois wia",
    "you": "du|sie|ihr|dich|dir|ihnen|euch",
    "we": "wir",
    "he": "er",
    "one": "man|einser",
    "the": "der|die|das|den|dem|des|de|dat|dr",
    "a": "ein|eine|einem|einen|einer|eines|ne|n|nen|nem|ner|a|an|son|sone, so ein, so eine, so n, so ne",
    "it": "es|s|ihn|dies|dieses|diese|dieser|diesem|diesen",
    "": (
        "kurz|mir|mich|sich|uns|auch|mal|halt|eben|gell|gelle|na|naja|tja|ach|och|puh|uff|hm|hmm|ahm|ah|oh|ey|ei|eh|"
        "oida|ma|einfach|irgendwie|eigentlich|leider|endlich|sogar|doch|selbst|glaubs|nu|bitte|bittschon|bitteschon|"
        "konnte|konnten|kann|konnen|kau|chan|kannst, sehr geehrter, ehrlich gesagt, gott sei dank, zum gluck, nun ja"
    ),
    "hi": (
        "hallo|hi|hey|moin|moinmoin|servus|gruzi|hoi|lg|vg|mfg|trainer|coach|morgahn|gude|tach, moin moin, gruss "
        "gott, griass di, gruss dich, guten morgen, guten tag, guten abend, gutn morgen, schonen abend, schonen tag, "
        "schonen sonntag, liebe grusse, lieben gruss, viele grusse, beste grusse, frau trainerin"
    ),
    "coach": "lieber coach, liebe trainerin",
    "in": "in",
    "in the": "im|ins|inner|inra",
    "on the": "am|aufm|aufn, auf dem, auf der, auf den",
    "during the": "beim, wahrend dem, wahrend der, bei der, bei den",
    "from the": "vom, vo da",
    "to the": "zum|zur|zua",
    "x": "x",
    "number": "nummer|nr",
    "half an hour": "halbstunde, halbe stunde, eine halbe stunde, ne halbe stunde",
    "half eight": (
        "halb eins, halb zwei, halb drei, halb vier, halb funf, halb sechs, halb sieben, halb acht, halb neun, halb "
        "zehn, halb elf, halb zwolf, halb 1, halb 2, halb 3, halb 4, halb 5, halb 6, halb 7, halb 8, halb 9, halb "
        "10, halb 11, halb 12"
    ),
    "on": "auf|ans|aufs",
    "of": "von|aus|ausm|vo",
    "from": "vonab|ab",
    "to": "biszu|aufzahl|zu, bis zu, bis zur, bis zum",
    "with": "mit|bei|samt",
    "for": "fur|furs",
    "under": "unter|unterm|unterhalb",
    "over": "uber|ubers|uberm|oberhalb",
    "before": "vor|vorm|bevor|ehe|zuvor|davor|vorher",
    "home": "heim|daheim|zuhause, nach hause, zu hause",
    "after": "nach|nachdem, im anschluss",
    "during": "wahrend|warend",
    "when": "wenn|als|sobald, wann immer",
    "what": "was|wos|wat",
    "how": (
        "wie lange, wie oft, wie viel, wie viele, wie soll, wie geht, wie macht, wie mache, wie kann, wie muss, wie "
        "weit, wie hoch, wie tief, wie funktioniert, wie ist, wie sieht, wie stark, wie wird, wie werden, wie ware, "
        "wie lang"
    ),
    "why": "warum|wieso|weshalb|wozu",
    "where": "wo|woher",
    "when is": "wann",
    "which": "welche|welcher|welches|welchen|welchem",
    "who": "wer|wem|wen",
    "can i": (
        "kann ich, darf ich, konnte ich, durfte ich, soll ich, sollte ich, muss ich, kann man, darf man, soll man, "
        "sollte man, muss man"
    ),
    "can you": "kannst du, konnen sie, konnt ihr, konntest du, konnten sie",
    "is it": "ist es, ist das, ist dies",
    "have": "habe|hab|haben|hamma|han|hob|ham, habs auch",
    "has": "hat|hot, hats auch",
    "had": "hatte|hatten|gehabt|ghabt|gha|kriegte|bekam",
    "is": "ist|is|isch|sei",
    "are": "sind|san|seid",
    "am": "bin",
    "at first": "erst",
    "was": "war|waren|wars|woar|anfangs|zuerst|vorhin|ursprunglich, am anfang, zu beginn, vor dem training",
    "been": "gewesen|gwesen|gsi",
    "became": "wird|werden|wurde|wurden|geworden|gworden|worden|werde|wirds|wurd|wurds|gewordn",
    "get": "kriag|griag|bekomme|kriege|krieg|bekommen|gekriegt|kriegt|bekommt",
    "there": "da|dort|drin|drinnen|daran|dran|darin|dabei|drauf|darauf|dazu|dafur, da drin",
    "here is": "hier",
    "and": "und|u|un|sowie|sowohl|undzwar",
    "or": "oder|bzw|beziehungsweise|od",
    "but": "aber|jedoch|allerdings|sondern|trotzdem|obwohl|aba|awer|zwar|dennoch, dafur aber, nur dass",
    "did all except": (
        "alles ohne, alles ausser, alles bis auf, alle ausser, alle bis auf, alles gemacht bis auf, alles gemacht "
        "ausser, alle ubungen ausser, alle ubungen bis auf, alles gemacht ohne"
    ),
    "except": "ausser|ausgenommen, bis auf, mit ausnahme, abgesehen von, ausser der, bloss nicht die",
    "because": (
        "weil|wegen|aufgrund|denn|wegens|weils|dank, da ich, da mein, da meine, vor lauter, da das, da der, da die"
    ),
    "so": "deshalb|deswegen|daher|darum|also|somit|drum|sodass",
    "then": "dann|anschliessend, danach dann",
    "after that": "danach|hinterher|nachher, seitdem dann",
    "than": "denn je",
    "not": (
        "nicht|nich|net|nit|nd|ned|nod|nid|nut|itte|garnicht|keineswegs, ned so richtig, gar nicht, gar nich, gar "
        "net, gar ned, uberhaupt nicht, uberhaupt nich, uberhaupt net, uberhaupt ned, absolut nicht, nicht wirklich "
        "was"
    ),
    "no": (
        "kein|keine|keinen|keinem|keiner|keines|koa|koan|koane|keen|kei|keinerlei|ka, gar kein, gar keine, gar "
        "keinen, uberhaupt kein, uberhaupt keine, uberhaupt keinen, absolut kein, absolut keine, absolut keinen"
    ),
    "none": "keins, keinen mehr, keine da, gar keine da, null komma null",
    "neither": "weder",
    "nor": "noch auch",
    "never": "nie|niemals|nimmer, noch nie, kein einziges mal",
    "nothing": (
        "nuscht|nuschd|nichts|nix|garnichts|nuut|nischt, nichts mehr, gar nichts, uberhaupt nichts, nut da, nichts "
        "von, nichts dergleichen"
    ),
    "no one": "niemand, keiner von",
    "without": "ohne, ohne jede, ohne jeden, ohne jegliche, frei von",
    "no problems with": "keine probleme mit, kein problem mit",
    "no more": "nichtmehr|nimma, nicht mehr, nimmer mehr, nich mehr, net mehr, ned mehr, keine mehr",
    "any more": "mehr mit sowas",
    "more": "mehr|weitere|weiteren|zusatzliche",
    "only": "nur|bloss|lediglich, nur noch, bloss noch, grad mal, gerade mal",
    "really": (
        "richtig|wirklich|echt|total|voll|ziemlich|ganz|ur|arg|gscheit|mega|krass|recht|relativ|extremst|durchaus|"
        "extrem|extreme|extremer, sowas von"
    ),
    "very": "sehr|ausserst|ausgesprochen",
    "too": "allzu, zu arg",
    "such": "so|solche|solch|derart|dermassen",
    "all": "alle|allen|aller|samtliche|samtlichen",
    "everything": "alles|ois|allet|alls|alli",
    "whole": (
        "ganze|ganzen|ganzes|ganzer|komplette|kompletten|komplettes|gesamte|gesamten|komplett|vollstandig|volle|"
        "volles|vollen"
    ),
    "some": "einige|manche|einigen|paar|mehrere|etliche, ein paar, ein teil",
    "a bit": (
        "bisschen|bissi|bissl|bisserl|bissel|bissle|bitzeli|biz|bisschn|wenig|etwas|bissken|buschn|chli|bitz, ein "
        "bisschen, ein bissl, ein wenig, a bissl, a bisserl, a weng, n bisschen, n bissl, ein bisserl, einen tick, "
        "eine spur, es bitzli, es bitzeli"
    ),
    "big": "gross|grosse|grosser|grossen",
    "bad": "schlimm|schlimme|schlimmen|schlimmes|bose|ubel|ubler|ubles|blod",
    "little": "klein|kleine|kleiner|kleinen|kleines|minimal|minimale|minimaler|geringe|gering",
    "slight": "leicht|leichte|leichten|leichtes|leichtem|dezent|sanftes, schwach nur",
    "small": "mini, minimum an",
    "about": (
        "ungefahr|etwa|ca|circa|zirka|rund|grob|gefuhlt|hochstens|maximal|max|mindestens|sagma|eher, so um die, so "
        "um, um die, so circa, so ca, so etwa, unter eins, so bei, sagen wir, sag ich mal, sage ich mal, wurd sagen, "
        "wurde sagen, ich wurde sagen, ich wurd sagen, wurde ich sagen, wahrscheinlich so, vllt so, vielleicht so, "
        "so ungefahr, zwischen durch bei, eventuell so, liegt bei, liegt so bei, intensitat von"
    ),
    "level": "stufe|level|wert, note von, grad von",
    "out of 10": "von 10, von zehn, auf 10, auf zehn, auf der skala bis 10, aus 10",
    "on the scale": (
        "skala|schmerzskala, auf der skala, auf einer skala, auf der schmerzskala, auf der skala von 0 bis 10, auf "
        "einer skala von 0 bis 10, auf einer skala von 1 bis 10, auf der skala von 1 bis 10"
    ),
    "between": "zwischen",
    "until": "bis, bis um",
    "at": "um|gegen",
    "other": "andere|anderen|anderer|anderes|anderem|ubrigen|restlichen",
    "other time": "andere uhrzeit",
    "same": (
        "alles wie gestern, alles gleich wie gestern, alles unverandert, alles beim alten, "
        "gleich|gleiche|gleichen|selbe|derselbe|dasselbe|dieselbe|genauso|unverandert|gleichbleibend|glich, wie "
        "gestern, wie zuvor, wie vorher, wie gehabt, keine veranderung, keine anderung, gleich geblieben, nicht "
        "anders, nichts verandert, nix verandert, hat sich nichts geandert, hat sich nicht verandert, immer noch "
        "gleich, noch gleich, nicht verandert, gleich wie gestern, gleich wie vorher, gleich wie zuvor, gleich wie "
        "immer, wie immer, wie sonst"
    ),
    "me": "mir selbst, mich selbst",
    "again": "wieder|nochmal|nochmals|erneut|wiada|abermals, noch mal, noch einmal, schon wieder",
    "already": "schon|bereits|scho",
    "still": "noch|weiterhin|immernoch|no, immer noch, nach wie vor, noch immer, imma noch, allweil noch, immer no",
    "always": "immer|jedesmal, standig immer, jedes mal",
    "now": (
        "jetzt|nun|grad|gerade|momentan|aktuell|zurzeit|derzeit|jetz|jetzat|jetza|inzwischen|mittlerweile|zuletzt|"
        "jez|jtz|itz, im moment, zur zeit, am ende, zum schluss, am schluss"
    ),
    "today": "heute|heut|heit|hut|huut|heid",
    "this morning": (
        "heute morgen, heute fruh, heut fruh, heut morgen, heit in da fruh, diesen morgen, heute vormittag, heute in "
        "der fruh, heut in der fruh"
    ),
    "in the morning": "morgens|fruhmorgens, am morgen, in der fruh, fruh morgens",
    "early": "fruh|zeitig",
    "tomorrow": "morgen|ubermorgen|moang, moin fruh, morgen fruh",
    "tonight": "heute abend, heut abend, heute nacht noch, heut nacht noch",
    "in the evening": "abends, am abend",
    "evening": "abend",
    "at night": "nachts|nachtlich|nachtliche|nachtlicher|nachtlichen, bei nacht, des nachts, im schlaf",
    "in the night": (
        "in der nacht, heute nacht, letzte nacht, heut nacht, diese nacht, mitten in der nacht, in der letzten nacht"
    ),
    "every night": "jede nacht, nacht fur nacht",
    "night": "nacht",
    "all night": "nachtelang, die ganze nacht, ganze nacht, die halbe nacht, halbe nacht, die nacht uber, nacht uber",
    "yesterday": (
        "gestern|gestan|gester|letztens|neulich|geschtern|vorgestern, gestern abend, gestern fruh, letztes mal, "
        "letzte woche, am vortag"
    ),
    "since yesterday": "seit gestern, seit gestern abend, seit vorgestern",
    "since this morning": "seit heute morgen, seit heute fruh, seit heute",
    "since": "seit|seitdem|seither|sait",
    "ever since": (
        "seit der, seit dem, seit einer stunde, seit einer woche, seit einer weile, seit einem tag, seit stunden, "
        "seit tagen, seit wochen, seit monaten, seit langerem, seit langem, seit zwei, seit drei, seit ein paar, "
        "seit paar, seit letzter woche, seit vorhin, seit eben, seit ich, seit einigen, seit der letzten, seit "
        "dieser, seit diesem, seit da an, seit dem training, seit der einheit"
    ),
    "all day": "ganztagig, den ganzen tag, ganzen tag, den ganzen tag schon",
    "all the time": (
        "standig|dauernd|andauernd|permanent|pausenlos|ununterbrochen|durchgehend|unentwegt|dauerhaft|konstant|"
        "allweil, die ganze zeit, rund um die uhr"
    ),
    "does not stop": (
        "bleiben|bleibt|anhaltend|anhaltende|geblieben|besteht|bestehen, nicht weggeht, nicht mehr weggeht, nicht "
        "aufhort, nicht nachlasst, nicht abklingt, nicht verschwindet, nicht vergeht, vergeht nicht, nicht "
        "aufwachen, will nicht aufwachen, nicht weggehen, nicht mehr weggehen, nicht aufhoren, nicht mehr aufhoren, "
        "nicht nachlassen, nicht abklingen, hort nicht auf, geht nicht weg, geht nicht mehr weg, geht einfach nicht "
        "weg, verschwindet nicht, lasst nicht nach, will nicht weggehen, will nicht aufhoren, nicht weggegangen, "
        "nicht verschwunden, nicht aufgehort, nicht nachgelassen, bleiben so, bleibt so, halt an, dauert an, nicht "
        "weg, hort gar nicht auf, geht nimmer weg, lasst nicht mehr nach, besteht weiterhin, halt weiter an, in "
        "keiner position besser, egal wie ich liege, nicht wegzukriegen, wird nicht besser, egal wie ich mich drehe, "
        "wacht nicht auf, wacht nicht mehr auf, nicht aufgewacht"
    ),
    "stopped hurting": "aufgehort zu schmerzen",
    "a year ago": (
        "vor einem jahr, vor zwei jahren, vor jahren, vor drei jahren, vor funf jahren, vor vielen jahren, vor "
        "langer zeit, vor ewigkeiten, vor paar jahren, vor einigen jahren, vor ein paar jahren, vor zehn jahren, "
        "voriges jahr"
    ),
    "last year": (
        "letztes jahr, letzten sommer, letzten winter, letztes fruhjahr, letzten herbst, vergangenes jahr, im "
        "letzten jahr"
    ),
    "last month": (
        "letzten monat, vor einem monat, vor monaten, vor zwei monaten, vor drei monaten, vor einigen monaten, vor "
        "ein paar monaten"
    ),
    "weeks ago": "vor wochen, vor zwei wochen, vor drei wochen, vor ein paar wochen, vor einigen wochen",
    "used to": "fruher|damals|einst, fruher mal, fruher immer, mal fruher",
    "as a child": (
        "als kind, als jugendlicher, als jugendliche, in meiner jugend, als teenager, in der schulzeit, als bub"
    ),
    "if": "falls|ob",
    "what if": "was wenn, was ist wenn, was mache ich wenn, was mach ich wenn, was tun wenn, was soll ich tun wenn",
    "worried about": (
        "befurchte|furchte, angst vor, sorge vor, angst dass, sorgen wegen, habe angst, hab angst, sorge dass, "
        "bammel vor"
    ),
    "to avoid": (
        "vermeiden|vorbeugen|verhindern, um zu vermeiden, damit ich nicht, damit ich kein, damit ich keine, damit "
        "kein, damit keine"
    ),
    "would": "hatt|ware",
    "could it": (
        "konnte das sein, kann das ein, kann das eine, ist das ein zeichen, konnte es, kann es sein dass, kann das "
        "sein dass"
    ),
    "should": "soll|sollte|sollten|sollen",
    "must": "muss|mussen|musste|mussten|gmusst",
    "want": "will|wollte|mochte|mag|wollen|mecht|mog|wett|wott",
    "i think": (
        "glaub|glaube, ich glaube, glaube ich, glaub ich, ich glaub, denke ich, ich denke, denk ich, mein ich, ich "
        "meine glaub"
    ),
    "maybe": (
        "vielleicht|vllt|vlt|vll|evtl|eventuell|moglicherweise|womoglich|villeicht|vieleicht|vlcht|vielleich|"
        "viellei, unter umstanden, konnte sein, kann sein"
    ),
    "probably": "wahrscheinlich|vermutlich|wohl",
    "not sure": (
        "unsicher|wasned, nicht sicher, weiss nicht, weiss nicht genau, weiss ich nicht, weiss nicht mehr, weiss "
        "nicht recht, schwer zu sagen, keine ahnung, ka ahnung, k a, nicht genau, woas ned, weiss gar nicht, kann "
        "mich nicht erinnern, hab den uberblick verloren, kann ich nicht sagen, kann ich nicht genau sagen"
    ),
    "do not know why": (
        "keine ahnung woher, keine ahnung wovon, keine ahnung warum, weiss nicht woher, weiss nicht warum, weiss "
        "nicht wovon, weiss auch nicht warum, weiss auch nicht woher"
    ),
    "sort of did": "irgendwie gemacht, mehr oder weniger gemacht, so halb gemacht, mehr oder weniger",
    "yes and no": "jein, ja und nein",
    "correction": (
        "korrektur|meinte|quatsch|vertippt|verschrieben|verklickt|verwechselt|warte|moment|vielmehr|tippfehler, ah "
        "doch, ach doch, oder doch, nee doch, ich meine, ich meinte, nein doch, falsch getippt, ich korrigiere, "
        "besser gesagt, nee warte, nein warte, ne warte, halt stopp, sollte heissen, soll heissen, wollte schreiben, "
        "falsche taste, genauer gesagt, sorry meinte, ah nein, sry meinte"
    ),
    "sorry": (
        "sorry|sry|entschuldigung|tschuldigung|entschuldige|verzeihung|pardon|tschuldige|sorri|tschuldigen, tut mir "
        "leid, entschuldigen sie"
    ),
    "pleasant": "angenehm|angenehme|angenehmes|angenehmer|wohltund",
    "could have": "hatte konnen",
    "my husband": (
        "mein mann, meinem mann, meinen mann, mein freund, meinem freund, mein partner, meinem partner, meines "
        "mannes, mei mo"
    ),
    "my wife": "meine frau, meiner frau, meine freundin, meiner freundin, meine partnerin, mei frau, meiner partnerin",
    "my mother": (
        "oma|mama|mutti|schwiegermutter|mutter|omi, meine mutter, meiner mutter, meine mama, meine oma, meiner oma, "
        "meine schwiegermutter, meiner schwiegermutter, mei mama, meiner mama, die oma"
    ),
    "my father": (
        "opa|papa|vater|opi, mein vater, meinem vater, mein papa, mein opa, meinem opa, mein schwiegervater, meinem "
        "papa, mei papa"
    ),
    "my son": (
        "sohn|tochter, mein sohn, meinem sohn, meine tochter, meiner tochter, mein bub, meinem jungen, mein junge"
    ),
    "my brother": "bruder|schwester, mein bruder, meinem bruder, meine schwester, meiner schwester",
    "my friend": (
        "kumpel, ein freund, eine freundin, einem freund, einer freundin, meine beste freundin, mein bester freund, "
        "ein kumpel, mein kumpel, meinem kumpel, ein bekannter, eine bekannte"
    ),
    "my colleague": (
        "kollege|kollegin|kollegen, mein kollege, meine kollegin, meinem kollegen, meiner kollegin, eine kollegin, "
        "ein kollege, einem kollegen, einer kollegin"
    ),
    "my neighbour": (
        "nachbar|nachbarin|nachbarn, mein nachbar, meine nachbarin, meinem nachbarn, meiner nachbarin, der nachbar, "
        "die nachbarin"
    ),
    "my aunt": "tante|cousine|onkel, meine tante, mein onkel, meiner tante, meinem onkel, meine cousine",
    "my boss": "chef|chefin, mein chef, meine chefin, der chef, die chefin, meinem chef",
    "kid": "kind|kindes|baby|enkel|enkelkind|enkelin",
    "my kid": "mein kind, meinem kind, das kind, mein kleiner, meiner kleinen, meinem kleinen, das baby, mein baby",
    "my dog": (
        "hund|katze, mein hund, der hund, meinem hund, dem hund, unser hund, unserem hund, meine katze, die katze, "
        "unsere katze, der kater, mein pferd, meiner katze, der katze"
    ),
    "someone else": "jemand anders, jemand anderes, jemand anderem",
    "my kids": "kinder|kids, meine kinder, die kinder, den kindern, meinen kindern, unsere kinder, die kids",
    "says": "sagt|meint|sagte|sagen|gesagt|findet, hat gesagt",
    "asks": "fragte|gefragt|fragt",
    "her": "ihre|ihrem|ihren|ihrer",
    "his": "seine|seinem|seinen|seiner|sein",
    "done": (
        "fertig|erledigt|erl|geschafft|gemacht|gmacht|gmocht|gschafft|done|absolviert|durchgezogen|vollbracht|"
        "abgehakt|abgeschlossen|beendet|abgearbeitet|durchgefuhrt|ausgefuhrt|erfullt|check|durchgehalten|gemeistert|"
        "gepackt|gfertigt|umgesetzt|gemcht|gemact|gemahct|fertsch|feddich|fertisch|ferdich|fettich|durchtrainiert|"
        "gerockt|durchgeturnt, gschafft alles, durch gezogen, hinter mir, in der tasche, hinter mich gebracht, im "
        "kasten, geturnt alles, gmacht alles, im sack, uber die buhne"
    ),
    "great session": (
        "training war gut, einheit war gut, training war super, einheit war super, training war toll, einheit war "
        "toll, einheit war schon, training war schon, dehnen war gut, einheit lief gut, training lief gut, training "
        "lief super, einheit lief super, gutes training, gute einheit, tolle einheit, tolles training, schone "
        "einheit, super einheit, super training, schones training, training ging gut, einheit ging gut, session war "
        "gut, training lief"
    ),
    "did all": (
        "geklappt|durchgekommen|mitgemacht, training komplett, einheit komplett, programm komplett, komplett fertig, "
        "alles komplett, komplett durch, durch mit allem, durch mit dem programm, mit allem durch, mit allem fertig, "
        "fertig mit allem, alles easy gemacht, ist alles gemacht, alles ist gemacht, alles schon gemacht, alles gut "
        "gelaufen, alles super gelaufen, alles prima gelaufen, alles bestens gelaufen, alles lief gut, alles top "
        "gelaufen, alles gut gegangen, alles gut geklappt, alles gut durch, alles mit links gemacht, alles gut "
        "uberstanden, alles gemacht, alles erledigt, alles geschafft, hab alles, habe alles, alle gemacht, alle "
        "geschafft, alles durch, alles fertig, alles durchgezogen, ganze gemacht, ganz gemacht, komplett gemacht, "
        "komplett durchgezogen, voll durchgezogen, ois gmacht, alles gmacht, alles absolviert, ganz geschafft, alles "
        "gut geschafft, bin durch, alles brav gemacht, vollstandig gemacht, vollstandig absolviert, volles programm, "
        "das volle programm, das ganze programm, das komplette programm, ganzes programm, die ganze einheit, die "
        "komplette einheit, ganze einheit, komplette einheit, nichts ausgelassen, nix ausgelassen, nichts "
        "weggelassen, keine ausgelassen, alle durch, von anfang bis ende, bis zum schluss, bis zum ende, von vorne "
        "bis hinten, ganzes set, alles wie geplant, wie geplant, nach plan, alles nach plan, laut plan, brav "
        "gemacht, brav geubt, brav gedehnt, hat geklappt, hats geklappt, alles ok gemacht, hab es hinter mir, alles "
        "hinter mir, pflicht erfullt, soll erfullt, mission erfullt, mission accomplished, gut gelaufen, lief gut, "
        "lief super, lief prima, lief wie geschmiert, lief rund, lief alles gut, super gelaufen, ging gut, ging "
        "super, ging prima, ging alles gut, alles ging gut, gut gegangen, alles abgehakt, alles erfolgreich, "
        "vollstandig erledigt, vollstandig geschafft, komplett erledigt, komplett geschafft, komplett absolviert, "
        "ganz durch, gut durchgekommen, alles mitgemacht, alles geturnt, alles durchgeturnt, hab fertig, ich habe "
        "fertig, bin fertig, ganze programm gemacht, ganze programm durchgezogen, ganze programm geschafft, ganze "
        "programm absolviert, alles perfekt gemacht, alles super gemacht, alles tiptop, alles gut gemacht, het "
        "klappt, alles picobello, hat alles geklappt, alles hat geklappt, alle ubungen gemacht, alle ubungen "
        "geschafft, alle ubungen erledigt, alle ubungen absolviert, alle ubungen durchgefuhrt, alle ubungen fertig, "
        "alle ubungen durchgezogen, alle satze gemacht, alle runden gemacht, alle satze geschafft, alle runden "
        "geschafft, alle satze fertig, alle runden fertig, samtliche ubungen gemacht, beide runden gemacht, beide "
        "runden geschafft, jede ubung gemacht, jede ubung geschafft, alles durchgemacht, ganz brav alles gemacht, "
        "alles sauber gemacht, alles wie immer gemacht, alles erledigt heute"
    ),
    "did the session": (
        "gedehnt|geubt|geturnt|trainiert|gestretcht|gstretcht|durchgedehnt, training gemacht, einheit gemacht, "
        "ubungen gemacht, dehnen gemacht, programm gemacht, dehnubungen gemacht, habe gedehnt, hab gedehnt, "
        "ausgiebig gedehnt, heute gedehnt, habe trainiert, hab trainiert, session gemacht, workout gemacht, sport "
        "gemacht, hausaufgaben gemacht, dehne gmacht, stretching gemacht, dehnprogramm gemacht, die einheit "
        "geschafft, einheit geschafft, programm geschafft, ubungen geschafft, training geschafft, einheit "
        "absolviert, training absolviert, training erledigt, ubungen erledigt, einheit erledigt, habe mich gedehnt, "
        "hab mich gedehnt, turnubungen gemacht, pensum geschafft, einheit abgeschlossen, training beendet, einheit "
        "beendet, gymnastik gemacht, training fertig, training durch, einheit fertig, einheit durch, ubungen fertig, "
        "ubungen durch"
    ),
    "yes": (
        "ja|jo|jap|jep|jup|joa|jawohl|jawoll|yes|yep|yo|klar|logo|sicher|naturlich|selbstverstandlich|jaja|joo|jaa|"
        "jaaa|yess|freilich|passt|jou|jepp|jupp|definitiv|jeah|sowieso, na klar, eh klar, aber sicher, aber ja, na "
        "sicher, na logo, auf jeden fall, jawohl ja, ja hab ich, ja habe ich"
    ),
    "nope": (
        "nein|nee|nope|nah|nei|naa|noi|negativ|fehlanzeige|noo|neee|neeee, ne du, nein danke, leider nein, leider "
        "nicht, auf keinen fall, keine chance, leider net, leider ned, leider ne, nein leider nicht, leider gar "
        "nicht, net heit, nein leider, leider no, nope heute"
    ),
    "not today": (
        "heute nicht, heut nicht, heute net, heut net, heit ned, heute nich, heute mal nicht, heute leider nicht, "
        "nicht heute, hut nod, heut ned, heute gar nicht, heute nix, heute nichts, heute kein training, heute keine "
        "einheit, heute keine ubungen, heute ohne, diesmal nicht, heute wird das nichts, heute wird nichts, heute "
        "wirds nichts, wird heute nix, heute eher nicht, heut nix, heute nein, nein heute nicht, heute lieber nicht, "
        "kein training heute, keine einheit heute, kein dehnen heute, heute kein dehnen, heut kei training, heute "
        "kein sport, kein sport heute, heut wird nix, wird nichts heute, wird heute nichts, nix heute"
    ),
    "no other": "kein anderes",
    "not there": "nicht da, net da, ned da",
    "not yet": (
        "noch nicht, noch nich, noch net, no ned, noch ned, noch nicht gemacht, noch nicht geschafft, bisher nicht, "
        "bis jetzt nicht, no nod, noch nicht dazu gekommen, bislang nicht, bis jetzt noch nicht, noch nix, noch "
        "nichts, noch nichts gemacht, bisher noch nicht, noch kein training, noch net gmacht, no net"
    ),
    "not done": (
        "leider nicht gemacht, leider nicht trainiert, leider nicht dazu gekommen, leider nicht erledigt, nicht "
        "gemacht, nicht erledigt, nicht fertig gemacht, nicht trainiert, nicht gedehnt, nicht geubt, nicht dazu "
        "gekommen, nicht dazugekommen, nicht dazu kommen, bin nicht dazu gekommen, nicht absolviert, kein training, "
        "keine einheit, keine ubungen, keine ubung, kein dehnen, kein sport, nicht angefangen, gar nicht angefangen, "
        "nicht gestartet, net gmacht, ned gmacht, nicht gmacht, nod gmacht, nicht durchgefuhrt, nicht begonnen, "
        "keine gemacht, keine einzige ubung, nichts davon gemacht, keine geschafft, nichts gedehnt, nicht "
        "teilgenommen, nicht mitgemacht, nicht hinbekommen, nicht hingekriegt, nicht stattgefunden, net trainiert, "
        "ned trainiert, nich gemacht, nicht umgesetzt, nicht reingepasst, nichts absolviert, null gemacht, ned dazu "
        "kumma, keine gedehnt, nicht mal angefangen, nicht einmal angefangen, keinen sport, komme nicht dazu, komm "
        "nicht dazu, kam nicht dazu, nicht drangekommen, nicht geturnt, keine einzige gemacht, nicht aufgerafft, "
        "nicht aufraffen, kein stretching, net dazu gekommen, nich dazu gekommen, nicht hinbekommen heute, gar "
        "nichts gemacht, garnichts gemacht, uberhaupt nichts gemacht"
    ),
    "did not manage": (
        "leider nicht geschafft, nicht geschafft, net geschafft, ned gschafft, nich geschafft, nicht gschafft, nicht "
        "gepackt, gar nicht geschafft, nicht schaffen, nod gschafft, schaffe ich nicht, schaffe es nicht, schaff ich "
        "nicht, schaffs nicht, schaffe es heute nicht, schaff ich heute nicht, schaffe ich heute nicht, schaffs "
        "heute nicht, schaffe ich heute leider nicht, nicht geschafft heute, heute nicht geschafft"
    ),
    "skipped today": (
        "mich gedruckt heute, mich heute gedruckt, hab mich heute gedruckt, "
        "ausgefallen|entfallt|ausfallen|ausgesetzt|geschwanzt|gschwanzt|geskippt|geskipt|skip|verpasst|versaumt|"
        "verzichtet|abgesagt|absagen, fallt aus, fallt heute aus, fiel aus, fiel heute aus, entfallt heute, "
        "ausfallen lassen, setze aus, setze heute aus, setz heut aus, sausen lassen, sausen gelassen, heute "
        "ausgelassen, heute ausgesetzt, training ausgelassen, einheit ausgelassen, training ausgefallen, einheit "
        "ausgefallen, heute ausgefallen, heute ubersprungen, einheit ubersprungen, training ubersprungen, skippe "
        "heute, skip heute, heute geskippt, lasse es ausfallen, lass es ausfallen, lasse ich ausfallen, heute frei, "
        "mache heute frei, mach heut frei, lass ich heute aus, lasse ich heute aus, lasse heute aus, lass heute aus, "
        "lasse es heute, lass es heute, lass es heute sein, verzichte heute, passe heute, heute passe ich, muss "
        "heute passen, sein lassen, bleiben lassen, ruhen lassen, sage ab, sag ab, sage heute ab"
    ),
    "rest day": (
        "pause gebraucht, brauchte eine pause, brauchte pause, pause gebraucht heute, pause eingelegt, "
        "ruhetag|pausentag|trainingsfrei|restday|schontag, ruhetag heute, ruhe tag, trainingsfreier tag, rest day, "
        "lieber ausgeruht, heute ausgeruht, gonne mir einen ruhetag"
    ),
    "later": (
        "mach ich gleich, mache ich gleich, mach es gleich, kommt gleich, gleich nachher, gleich danach, mach "
        "ich nacher, mach ich dann, mach ich nach dem essen, "
        "spater|nachholen|verschoben|bald|demnachst|folgt|spoter|aufgeschoben, nachher dann, kommt noch, mach ich "
        "noch, mache ich noch, mach ich spater, mache ich spater, mache es spater, hole ich nach, hol ich nach, hole "
        "es nach, wird nachgeholt, hol ichs nach, verschiebe ich, verschieb ich, verschiebe es, verschieb es, mach "
        "ich nachher, mache ich nachher, gleich noch, spater dann, folgt noch, steht noch aus, steht noch an, noch "
        "vor mir, hab ich noch vor, fange gleich an, fang gleich an, mach gleich, mache gleich, gleich dann, nach "
        "der arbeit, nach dem essen, nach feierabend, in einer stunde, in ner stunde, mach es dann, mache ich dann, "
        "moch i spater, spater vielleicht, erst spater, auf spater, bin noch dran, am nachmittag, heute nachmittag, "
        "in einer halben stunde, in der mittagspause"
    ),
    "will do it tonight": (
        "mach ich heute abend, mache ich heute abend, mache es heute abend, mach es heute abend, mach i heit abend, "
        "mach ich heut abend, mache ich am abend, mach ich abends, mach ich am abend, heute abend dann, erst heute "
        "abend, dann heute abend"
    ),
    "will do it tomorrow": (
        "mach ich morgen, mache ich morgen, morgen dann, erst morgen, dann morgen, morgen wieder, mache es morgen, "
        "mach es morgen, auf morgen verschoben, verschiebe auf morgen, verschieb es auf morgen, verschiebe es auf "
        "morgen, dafur morgen"
    ),
    "part": (
        "teilweise|teils|bruchteil, zum teil, nur teilweise, zum grossen teil nicht, nur einen teil, einen teil, nur "
        "zum teil, nen teil, nur ein teil, einen teil gemacht, nur einen teil gemacht, ein teil davon, teil davon, "
        "nur einen teil davon"
    ),
    "some of it": (
        "einiges, ein bisschen was, etwas gemacht, einige gemacht, einige ubungen, ein paar ubungen, ein paar "
        "gemacht, paar ubungen, manche ubungen, bisschen gemacht, bisschen was gemacht, ein bisschen gemacht, ein "
        "bisschen was gemacht, nur ein paar, nur paar, bissl was gemacht, a bissl was, nur wenige, nur einige, nur "
        "kurz, kurz gedehnt, etwas gedehnt, bisschen gedehnt, ein paar davon, paar davon, einige davon, nur das "
        "notigste, nur die ersten"
    ),
    "part of it": (
        "unvollstandig, net ois gschafft, ned ois gschafft, net alles gschafft, nod alles gmacht, nod alles "
        "gschafft, net alles gmacht, ned ois gmacht, nicht alles, nicht alle, net alles, ned ois, nich alles, nicht "
        "alles gemacht, nicht alles geschafft, nicht alle geschafft, nicht alle gemacht, nicht alle ubungen, nicht "
        "das ganze, nicht die ganze, nicht das ganze programm, nicht komplett, nicht vollstandig, nicht ganz, nicht "
        "ganz fertig, nicht fertig, nicht fertig geworden, net fertig, nicht fertig gebracht, nicht ganz geschafft, "
        "nicht ganz alles, nicht bis zum ende, nicht zu ende, nicht zuende, nicht beendet, nicht die komplette, "
        "nicht samtliche, net ganz, nicht jede, nod alles, nod ganz, nicht durchgehalten, ned ganz"
    ),
    "stopped early": (
        "abgebrochen|abbrechen|aufgehort|unterbrochen|abbruch|aufgegeben|abgekurzt|gekurzt|verkurzt|eingekurzt|"
        "schlappgemacht|kurzversion|hingeschmissen, fruher aufgehort, vorzeitig aufgehort, vorzeitig beendet, fruher "
        "beendet, vorzeitig abgebrochen, hab aufgehort, habe aufgehort, musste aufhoren, zwischendrin aufgehort, "
        "mittendrin aufgehort, auf halber strecke, schlapp gemacht, schluss gemacht, dann war schluss, war schluss, "
        "kurzere version, das handtuch geworfen, hab schlapp gemacht, breche ab, brach ab, gecancelt mittendrin"
    ),
    "left out": (
        "ausgelassen|weggelassen|lassen|gelassen|ubersprungen|ausgespart|fehlt|fehlen|fehlte|fehlten|gestrichen|"
        "rausgelassen|wegglassen|ausglassen|weglassen|auslassen|liegengeblieben|rausgenommen, nicht gemacht die, "
        "offen gelassen, offen geblieben, weg gelassen, unter den tisch gefallen, nicht mehr geschafft, nicht mehr "
        "gemacht, nimmer gschafft"
    ),
    "half": (
        "halfte|halb|halbe|halbes|halben|halbzeit|halfti, die halfte, zur halfte, ungefahr die halfte, etwa die "
        "halfte, knapp die halfte, gut die halfte, ca die halfte, so die halfte, 50 prozent, halb gemacht, halb "
        "geschafft, die hoibe, d halfti, so halb, halbwegs gemacht, 50 %, die halbe einheit, das halbe programm, "
        "halbes programm, halbe einheit, halfte gemacht, halfte geschafft, die halfte gemacht, die halfte geschafft"
    ),
    "most": (
        "meiste|meisten|grosstenteils|grossteil|dreiviertel|uberwiegend, das meiste, die meisten, zum grossten teil, "
        "fast alles, fast alle, beinahe alles, beinah alles, nahezu alles, so gut wie alles, mehr als die halfte, "
        "uber die halfte, ein grossteil, den grossteil, zwei drittel, drei viertel, fast das ganze, fast ganz, "
        "beinahe alle, fast komplett, uberwiegende teil, fast ois, fast fertig, fast die ganze, fast alles gemacht, "
        "fast alles geschafft, fast alle gemacht, fast alle geschafft, das meiste gemacht, das meiste geschafft, die "
        "meisten gemacht, die meisten ubungen, fast alle ubungen"
    ),
    "less than half": (
        "drittel, weniger als die halfte, nicht mal die halfte, nicht einmal die halfte, ein drittel, ein viertel, "
        "nur ein drittel, nur ein viertel, nur angefangen"
    ),
    "only one": "nur eine, nur eine ubung, nur eine gemacht, nur eine einzige, nur eine runde",
    "only the": "nur die, nur den, nur das, bloss die, lediglich die",
    "without the last": "ohne die letzte, ohne die letzten, ohne den letzten",
    "the last": "letzte|letzten|letzter|letztes|letzti, die letzte, die letzten, den letzten",
    "the first": "erste|ersten|erster, die ersten, die erste",
    "second": "zweite|zweiten",
    "third": "dritte|dritten",
    "fourth": "vierte|vierten|funfte|funften",
    "rest": "rest, der rest, den rest",
    "not the rest": (
        "rest nicht, den rest nicht, der rest nicht, die restlichen nicht, die anderen nicht, den rest nicht mehr, "
        "rest nicht mehr"
    ),
    "nothing else": "sonst nichts, sonst nix",
    "session": (
        "einheit|session|training|programm|sitzung|workout|trainingseinheit|dehneinheit|dehnprogramm|dehnsession|"
        "stretching|dehntraining|dehnrunde|tageseinheit|trainingsprogramm|trainings|tagesprogramm|pensum|gymnastik|"
        "plan|tagesplan, stunde training, training heute"
    ),
    "exercises": "ubungen|dehnubungen|ubunga|ubige|ubunge|ubungn|bewegungen|positionen",
    "exercise": "ubung|dehnubung|bewegung|position|haltung|ubig",
    "stretch": "dehnung|dehnen|dehne|stretch|dehnt|stretchen|streckung",
    "stretches": "dehnungen|stretches",
    "sets": "satze|satzen|satz|sets|serien",
    "rounds": "runden|durchgange|durchgangen",
    "round": "runde|durchgang",
    "reps": "wiederholungen|wdh|wiederholung|wh|wdhs",
    "minutes": "minuten|min|mins|minute|minutchen, minuten lang",
    "seconds": "sekunden|sek|sekunde, sekunden lang",
    "hours": "stunden|stunde|std|h|stundchen",
    "oclock": "uhr, h uhr",
    "days": "tage|tagen",
    "day": "tag|tages",
    "weeks": "wochen",
    "week": "woche",
    "months": "monate|monaten|monat",
    "years": "jahre|jahren|jahr|jahrige|jahrigen",
    "times": "male, mal gezahlt, x mal",
    "cm": "cm|zentimeter",
    "kg": "kg|kilo|kilos|kilogramm",
    "km": "km|kilometer|kilometern",
    "metres": "meter|metern",
    "percent": "prozent",
    "steps": "schritte|schritten|stufen|treppen",
    "each side": "jeweils, pro seite, je seite, jede seite, auf jeder seite, auf beiden seiten",
    "coffees": "kaffees|kaffee|tassen",
    "people": "leute|personen|leuten",
    "euro": "euro|eur",
    "extra": "extra",
    "two days": (
        "zwei tage, zwei tagen, 2 tagen, paar tagen, ein paar tagen, einigen tagen, tagen schon, drei tagen, vier tagen"
    ),
    "on monday": "montag|montags, am montag, am mo",
    "on tuesday": "dienstag|dienstags, am dienstag, am di",
    "on wednesday": "mittwoch|mittwochs, am mittwoch",
    "on thursday": "donnerstag|donnerstags, am donnerstag",
    "on friday": "freitag|freitags, am freitag",
    "on saturday": "samstag|sonnabend|samstags, am samstag",
    "on sunday": "sonntag|sonntags, am sonntag",
    "quarter to": "viertel vor, viertel nach",
    "zero": "null",
    "1": "eins, a eins, ne eins",
    "two": "zwei|zwo|zwoa|zwoi|zwee|zweier",
    "three": "drei|dru|droa|druu|dreier",
    "four": "vier|viere|vierer",
    "five": "funf|funfe|fumf|foif|funfer",
    "six": "sechs|sechse|sechser",
    "seven": "sieben|siebene|siebn|siebener",
    "eight": "acht|achte|achter",
    "nine": "neun|neune|neuner",
    "ten": "zehn|zehne",
    "eleven": "elf",
    "twelve": "zwolf",
    "fifteen": "funfzehn",
    "twenty": "zwanzig",
    "thirty": "dreissig",
    "fifty": "funfzig",
    "hundred": "hundert",
    "1.5": "anderthalb|eineinhalb",
    "2.5": "zweieinhalb|zweiundhalb",
    "3.5": "dreieinhalb",
    "4.5": "viereinhalb",
    "5.5": "funfeinhalb",
    "6.5": "sechseinhalb",
    "7.5": "siebeneinhalb",
    "8.5": "achteinhalb",
    "0.5": "halber punkt, halben punkt",
    "a couple": (
        "zweimal|dreimal|paarmal|einmal|mehrmals|manchmal|gelegentlich, ein paarmal, ein paar mal, ab und zu, hin "
        "und wieder"
    ),
    "do": "machen|mache|mach|macht|tu|moch|mochn|uben|trainieren, dehnen machen",
    "could not do": (
        "konnte nicht machen, kann nicht machen, konnte es nicht machen, kann es nicht machen, kann heute nicht, "
        "konnte heute nicht, konnte nicht trainieren, konnte nicht dehnen, kann nicht trainieren, nicht machen, "
        "nicht machen konnen, nicht trainieren, kann nicht heute, nicht uben"
    ),
    "instead of": "statt|anstatt|anstelle",
    "only did": "nur gemacht",
    "only half": (
        "nur die halfte, nur halb, nur die halfte gemacht, nur die halfte geschafft, bloss die halfte, grad mal die "
        "halfte, nur zur halfte, nur halb gemacht, nur halb geschafft"
    ),
    "did nothing": "nichts gemacht, nix gemacht, nichts geschafft, nix geschafft, nix gmacht, nut gmacht",
    "at most": (
        "nicht hoher als, nicht mehr als, nicht uber, nicht schlimmer als, nicht grosser als, nie mehr als, nie "
        "hoher als, nie uber"
    ),
    "no pain": (
        "schmerzfrei|schmerzlos|schmerzfreiheit|beschwerdefrei, keine auffalligen schmerzen, nix mehr schmerzt, "
        "nichts mehr schmerzt, schmerzt nichts mehr, schmerzt nix mehr, schmerzt nichts, schmerzt nix, ohne "
        "schmerzen, ohne schmerz, kein schmerz, keine schmerzen, keinen schmerz, keine schmerz, keinerlei schmerzen, "
        "keinerlei schmerz, null schmerzen, null schmerz, 0 schmerzen, 0 schmerz, nichts tut weh, nix tut weh, tut "
        "nichts weh, tut nix weh, nichts schmerzt, nichts schmerzt mehr, nix schmerzt, kein wehweh, ohne "
        "beschwerden, keine beschwerden, keinerlei beschwerden, vollig schmerzfrei, komplett schmerzfrei, uberhaupt "
        "keine schmerzen, gar keine schmerzen, gar kein schmerz, absolut keine schmerzen, keine schmerzen mehr, kein "
        "schmerz mehr, keine schmerzen gehabt, koane schmerzen, koa schmerz, koa weh, nix weh, nichts weh, kei "
        "schmerze, kei schmarze, nut weh, tuat nix weh, null komma null schmerzen, schmerz gleich null, nicht weh, "
        "nicht schmerzhaft, nicht schmerzt, schmerzt nicht, schmerzen keine, schmerz keiner, schmerz nein, schmerzen "
        "nein, schmerz null, schmerzen null, kein bisschen weh, keine probleme mit schmerzen, schmerz keine, "
        "nirgends schmerzen, kein ziehen kein schmerz, net weh, ned weh, hat nicht wehgetan, schmerz war keiner, "
        "schmerzen hatte ich keine, schmerzen habe ich keine, schmerzen hab ich keine, schmerz hatte ich keinen, "
        "schmerz habe ich keinen, schmerzen hab ich nicht, schmerzen hatte ich nicht, schmerzen gabs keine, "
        "schmerzen gab es keine, schmerzen keine da, schmerzen waren keine da, weh nix, weh tut nix, weh tut nichts, "
        "nix zwickt, nichts zwickt, zwickt nichts, zwickt nix, ganz ohne schmerzen, ohne jeden schmerz, ohne "
        "jegliche schmerzen, ohne schmerzen alles, nirgendwo schmerzen, nirgendwo weh, nirgends weh, gar nicht weh, "
        "schmerzen 0, nichts mehr weh, keinen schmerz mehr, ohne probleme und schmerzen, nicht mehr weh, keine weh, "
        "kein aua"
    ),
    "feel": "fuhle|fuhl|fuhlen|spure|spur|spuren|merke|merk",
    "feels": "fuhlt|spurt|merkt",
    "felt": "fuhlte|gespurt|spurte|gemerkt|merkte|bemerkt",
    "feeling": "gefuhl|empfindung|gfuhl",
    "that": "dass",
    "goes": "geht|gehts",
    "through": "durch",
    "long": "lange|lang",
    "enough": "genug",
    "much": "viel|viele|vielen",
    "at all": "uberhaupt",
    "especially": "besonders",
    "new": "neu|neue|neues|neuen",
    "next": "nachste|nachsten|nachster",
    "lost": "verloren|verlor",
    "losing": "verliere|verlier",
    "just a bit": (
        "nur ein bisschen, nur bisschen, nur ein wenig, nur etwas, nur leicht, nur a bissl, nur ein bissl, nur ganz "
        "leicht"
    ),
    "still the same": "immer noch da, noch immer da, noch da, ist noch da, weiterhin da",
    "took the day off": "freigenommen|freigemacht, frei gemacht, frei genommen, einen tag frei",
    "no wonder": "kein wunder, kein wunder dass, nicht verwunderlich, wen wunderts",
    "no joke": (
        "ungelogen, kein witz, kein scherz, ohne witz, ohne scherz, ohne scheiss, kein scheiss, ohne mist, kein "
        "spass jetzt, nicht gelogen"
    ),
    "no doubt": "keine frage, kein zweifel, ohne zweifel, ohne frage",
    "no worries": "keine sorge, keine bange, keine panik",
    "can not believe": (
        "unglaublich, kaum zu glauben, nicht zu glauben, nicht zu fassen, kann es nicht glauben, kann es kaum glauben"
    ),
    "why not": "warum nicht, wieso nicht",
    "not bad": (
        "nicht schlimm, nicht schlecht, net schlecht, halb so wild, halb so schlimm, nicht so schlimm, nicht ubel, "
        "ned schlecht, ned schlimm"
    ),
    "no matter": "egal|wurscht|wurst, ganz egal",
    "knee": (
        "knie|knien|knies|kniegelenk|kniekehle|kniescheibe|chnu|kniegelenke|meniskus|kniekehlen|knia|innenmeniskus|"
        "kreuzband"
    ),
    "leg": "bein|beins|boa|haxn|hax",
    "legs": "beine|beinen|boana|haxen",
    "foot": "fuss|fusses|fus|fuass|vorfuss|mittelfuss|fussrucken|rist",
    "feet": "fusse|fussen|fiass",
    "toe": "zeh|zehe|grosszehe",
    "toes": "zehen|zechn|zehenspitzen, zehe alle",
    "big toe": "grosser zeh, grossen zeh, grosse zeh, grosse zehe, grossen zehe, dicke zeh, dicken zeh, dicker zeh",
    "heel": "ferse|fersen|hacke|fersenbein",
    "sole": "sohle|sohlen|fusssohle|fusssohlen",
    "achilles": "achillessehne|achilles|achillessehnen|achillis|achillisferse",
    "ankle": "knochel|knocheln|sprunggelenk|sprunggelenke|fussgelenk|fussgelenke|fussknochel|chnochel|fessel",
    "shin": "schienbein|schienbeine|schienbeinkante",
    "calf": "wade|wadl|wadenmuskel|wadenmuskulatur|wadli|wadel, waden muskel",
    "calves": "waden|wadln",
    "thigh": (
        "oberschenkel|oberschenkeln|schenkel|oberschenkels|oschenkel|oberschenkelmuskel|innenschenkel|oschenkl, os "
        "schenkel"
    ),
    "hamstring": (
        "beinbeuger|oberschenkelruckseite|hamstring|hamstrings|ischios|beinruckseite|oberschenkelruckseiten|"
        "beinruckseiten|ischiocruralen|oberschenkelbeuger|ischiokrurale|schenkelruckseite, ruckseite oberschenkel, "
        "oberschenkel hinten, hintere oberschenkel, hinterer oberschenkel, hinteren oberschenkel, ruckseite vom "
        "oberschenkel, ruckseite des oberschenkels"
    ),
    "quad": (
        "quadrizeps|quadriceps|oberschenkelvorderseite|beinstrecker, vorderer oberschenkel, oberschenkel vorne, "
        "vorderen oberschenkel"
    ),
    "lower leg": "unterschenkel|unterschenkeln",
    "upper leg": "oberbein",
    "adductor": "adduktoren|adduktor|oberschenkelinnenseite, innere oberschenkel",
    "hip": "hufte|huft|huftgelenk|huftgelenke|huftknochen|hufti|huftn|huftgelenks",
    "hips": "huften",
    "hip flexor": "huftbeuger|huftbeugern|psoas",
    "groin area": "leistengegend",
    "inner thigh": "leiste|leisten|leistenbereich",
    "buttock": "gesass|po|popo|pobacke|pobacken|gesasshalfte|gsass",
    "glute": "gesassmuskel|piriformis|gluteus|pomuskel|hinterbacke|fudi|gesassmuskulatur, hintern muskel, po muskel",
    "bum": "hintern|arsch|fudli|allerwertester",
    "back": "rucken|kreuz|ruckens|ruggen|buckel|ruckn|rugge|rug",
    "lower back": (
        "lws|lendenwirbelsaule|lendenbereich|lende|lenden|steiss|lendenwirbel, unterer rucken, unteren rucken, "
        "rucken unten, unterm rucken, untere rucken, untrem rucken"
    ),
    "upper back": "bws|brustwirbelsaule, oberer rucken, oberen rucken, obere rucken, rucken oben",
    "spine": "wirbelsaule|wirbel|ruckgrat|wirbels",
    "tailbone": "steissbein",
    "sacrum": "kreuzbein|isg|iliosakralgelenk, isg gelenk",
    "pelvis": "becken|beckens",
    "shoulder": "schulter|schultergelenk|schultergurtel|achsel|schultre, schultern eine",
    "shoulders": "schultern",
    "shoulder blade": "schulterblatt|schulterblatter|schulterblattern",
    "neck": "nacken|nackens|hals|genick|hws|halswirbelsaule|gnack|ancke|acke",
    "throat": "kehle|rachen",
    "trapezius muscle": "trapez|trapezius",
    "head": "kopf|schadel|kopfes|grind|hinterkopf|stirn|chopf, schlafen seite, birne kopf",
    "arm": "arm|arms|oberarm|unterarm|oarm",
    "arms": "arme|armen|unterarme|oberarme",
    "elbow": "ellbogen|ellenbogen|ellenboge",
    "wrist": "handgelenk|handgelenke|handgelenken",
    "hand": "hand|handflache|handrucken|handballen",
    "hands": "hande|handen|hend",
    "finger": "zeigefinger|mittelfinger|ringfinger, finger eine",
    "fingers": "finger|fingern|fingerspitzen|fingerkuppen",
    "thumb": "daumen",
    "pinky": "kleinfinger, kleine finger, kleinen finger, kleiner finger",
    "chest": (
        "brust|brustkorb|brustbein|brustraum|brustbereich|bruste|thorax|herzgegend|herzbereich|brustkasten|herznahe|"
        "brustmitte, herz gegend, herz bereich, herz region, herz nahe, brust bereich, brust gegend, brust region, "
        "oberkorper brust"
    ),
    "jaw": "kiefer|unterkiefer|kiefergelenk",
    "face": "gesicht|gesichts|wange|lippe|lippen|mund|backe|augenlid|lid|gsicht|zunge|oberlippe|unterlippe",
    "corner of my mouth": "mundwinkel",
    "heart": "herz|herzens|puls|pumpe|herzschlag|herzl",
    "rib": "rippe|rippenbogen",
    "ribs": "rippen",
    "stomach": "bauch|magen|bauchs|ranzen, buch bauch",
    "core": "rumpf|bauchmuskeln|bauchmuskel|bauchmuskulatur|core",
    "side": "seite|seiten|flanke|flanken|taille|site",
    "body": "korper|leib",
    "muscle": "muskel|muskeln|muskulatur|muckis|muskels",
    "tendon": "sehne|sehnen|sehnenansatz",
    "ligament": "bander|aussenband|innenband|seitenband, band im knie",
    "joint": "gelenk|gelenks",
    "joints": "gelenke|gelenken",
    "skin": "haut",
    "eye": "auge",
    "eyes": "augen",
    "ear": "ohr",
    "ears": "ohren",
    "tooth": "zahn|zahne",
    "bone": "knochen",
    "bladder": "blase|harnblase",
    "bowel": "darm|schliessmuskel|stuhlgang|darms, stuhl gang",
    "groin": (
        "schambereich|intimbereich|genitalbereich|genitalien|damm|scheide|penis|hoden|schambein|reithosenbereich|"
        "reithose|sitzflache|untenrum|anus|afterbereich|intimzone|vagina|analbereich|schambereichs|schambereichen|"
        "genitalbereichs, im schritt, zwischen den beinen, zwischen meinen beinen, zwischen die beine, after "
        "bereich, da unten, unten rum, genitalien bereich, zwischen den oberschenkeln, zwischen den schenkeln, "
        "innenseite der oberschenkel und schritt, unterleib taub, po bereich unten, zwischa de bei, zwischen den "
        "haxen, intim bereich"
    ),
    "left": "linke|linken|linker|linkes|linkem|linka|lingg|linggi|linggs|liken|li",
    "on the left": (
        "links|linkerseits|linksseitig|lings, auf der linken seite, linke seite, linker seite, linken seite, links "
        "seitig"
    ),
    "right": "rechte|rechten|rechter|rechtes|rechtem|rechtn|re",
    "on the right": (
        "rechts|rechtsseitig|rachts|rechs, auf der rechten seite, rechte seite, rechter seite, rechten seite"
    ),
    "both sides": (
        "beidseitig|beidseits|beiderseits|bds, auf beiden seiten schmerz, beide seiten, beiden seiten, links und "
        "rechts, rechts und links, links wie rechts, rechts wie links"
    ),
    "both": "beide|beiden|beider|beides|beidi, zwoa beide",
    "back of my thigh": "beine hinten",
    "hurts": (
        "schmerzt|schmerzte|schmerzten|schmerzend|weh|wehtut|wehtun|wehgetan|wehtat|wehtuts|wehtaten|weah|wehe|"
        "schmerztn|aua|autsch|schmerzhaft|schmerzhafte|schmerzhafter|schmerzhaftes|schmerzhaften|schmerzlich|"
        "schmerzempfindlich|beleidigt|wehjetan|wehdan, weh getan, weh tut, weh tun, weh tat, tut weh, tat weh, tun "
        "weh, schmerzen tut, weh dan, weh ta, wei dau, tuats weh, weh gedan, weh gmacht"
    ),
    "pain": (
        "schmerz|schmerzen|schmerzes|schmerzwert|schmerzlevel|schmerzstufe|schmerzstarke|schmerzn|wehwehchen|"
        "schmarze|schmarz|weeh|beschwerden|wehweh|schmerzintensitat|pein|schmerzpegel|schmerzgrad|schmerzempfinden|"
        "schmerzzahl|schmerzniveau|schmerzpunkte|schmerzpunkt|schmerzmassig|schmerztechnisch|schmerzensskala|"
        "unangenehm|unangenehme|unangenehmes, schmerzskala wert, missempfindung schmerz, schmerzt stufe"
    ),
    "niggle": (
        "zwickt|zwicken|zwickte|ziept|ziepen|ziepte|zwackt|zwacken|zwick|zwickts|zwickerl|kneift|kneifen|zieppt|"
        "zwickn|muckt|mucken|murrt|zickt|motzt|meckert|spinnt|rebelliert|zwiebelt|piesackt|zwackelt|zwicked|gereizt|"
        "uberlastet|uberreizt|zwickig, macht arger, macht probleme, macht mucken, macht zicken, zickt rum"
    ),
    "a pulling pain": (
        "ziehender schmerz, ziehende schmerzen, ziehenden schmerz, schmerzhaftes ziehen, unangenehmes ziehen"
    ),
    "pulled a muscle": (
        "gezerrt|zerrung|uberdehnt|verrenkt|verrissen|verhoben|verzogen|muskelzerrung|hexenschuss|verzerrt|"
        "hexaschuss|vertreten"
    ),
    "twisted": (
        "verdreht|umgeknickt|verstaucht|umknickt|verknackst|verstauchung|ubertreten|uberknochelt, vertreten fuss"
    ),
    "cramp": "krampf|krampfe|krampft|verkrampft|wadenkrampf|krampfte|krampfen|gekrampft",
    "a stitch": "seitenstechen|seitenstiche|milzstechen",
    "headache": "kopfschmerzen|kopfweh|kopfschmerz|schadelweh|brummschadel|schadelbrummen|chopfweh",
    "backache": "ruckenweh|kreuzweh|kreuzschmerzen|ruggeweh",
    "injury": "verletzung|verletzt|verletzte",
    "hurt myself": "wehgetan selbst, mir wehgetan",
    "hardly any pain": (
        "kaum schmerzen, kaum schmerz, kaum weh, fast keine schmerzen, fast kein schmerz, so gut wie keine "
        "schmerzen, nahezu keine schmerzen, praktisch keine schmerzen, fast schmerzfrei, nahezu schmerzfrei, beinahe "
        "schmerzfrei, fast nicht weh, fast gar nicht weh, nicht viel schmerz, fast gar keine schmerzen, kaum noch "
        "schmerzen, kaum mehr schmerzen, fast keine schmerzen mehr, nicht wirklich weh, kaum noch weh, nicht "
        "wirklich schmerzen, keine grossen schmerzen, keine starken schmerzen, keine wirklichen schmerzen, keine "
        "richtigen schmerzen, nicht arg weh, nicht sehr weh, keine nennenswerten schmerzen, kaum was weh"
    ),
    "hardly any": "kaum, kaum was",
    "almost no": "fast kein, fast keine, fast keinen, so gut wie kein, so gut wie keine, beinahe kein, fast nichts",
    "almost": "fast|beinahe|nahezu|beinah",
    "not much": "nicht viel, net viel, nicht so viel",
    "unbearable": (
        "unertraglich|unertragliche|unertraglichen|hollische|hollisch|hollischen|hollenschmerzen|morderisch|"
        "morderische|bestialisch|bestialische|unaushaltbar|unmenschlich|wahnsinnsschmerzen|brutale|qualvoll|sauweh, "
        "jaulen vor schmerz, schmerzen zum heulen, nicht auszuhalten, kaum auszuhalten, nicht zum aushalten, "
        "wahnsinnige schmerzen, irre schmerzen, zum schreien, schlimmste schmerzen, schlimmsten schmerzen, wahnsinns "
        "schmerzen, wahnsinnig weh, tierisch weh, brutal weh, brutale schmerzen, halt ich nicht aus, halte ich nicht "
        "aus, ich halte es nicht aus, halts nicht aus, halte es kaum aus, nicht mehr auszuhalten, schreckliche "
        "schmerzen, furchterliche schmerzen, furchtbare schmerzen, entsetzliche schmerzen, extreme schmerzen, "
        "extremer schmerz, extrem weh, enorme schmerzen, massive schmerzen, saumassig weh, furchtbar weh, "
        "schrecklich weh, furchterlich weh, irrsinnig weh, hollisch weh, tierische schmerzen, irrsinnige schmerzen, "
        "grauenhafte schmerzen, grausame schmerzen, mordsmassige schmerzen, mega schmerzen, vor schmerzen geschrien, "
        "vor schmerzen geweint, vor schmerzen geheult, vor schmerzen schreien, vor schmerzen weinen, vor schmerzen "
        "heulen, kann mich vor schmerzen nicht bewegen, kann mich nicht bewegen, konnte mich nicht bewegen, kann "
        "mich kaum bewegen, konnte mich kaum bewegen"
    ),
    "strong": (
        "heftig|heftige|heftigen|heftiger|heftiges|stark|starke|starken|starker|starkes|massiv|massive|gewaltig|"
        "brutal|schwere"
    ),
    "strong pain": (
        "starke schmerzen, starker schmerz, starken schmerz, starken schmerzen, sehr starke schmerzen, heftige "
        "schmerzen, heftiger schmerz, heftigen schmerz, starke schmerze"
    ),
    "soreness": "muskelkater|mukater|muka|muskelkatzen|muskelkaters|muskelchater|muskelkatr|spatzen|spatz|muskelkada",
    "sore": "wund|muskelkaterig|durchgewalkt",
    "tender": (
        "empfindlich|druckempfindlich|druckschmerz|uberempfindlich|druckschmerzhaft|beruhrungsempfindlich|drucksensibel"
    ),
    "dull": "dumpf|dumpfe|dumpfer|dumpfes|dumpfen|dumpfs",
    "ache": "schmerzt dumpf, gliederschmerzen dumpf",
    "stiff": (
        "steif|steife|steifer|steifen|steifes|steifheit|verspannt|verspannung|verspannungen|verspannte|unbeweglich|"
        "eingerostet|verhartet|verhartung|festsitzend|verkurzte|hart|starr|verhartete|ungelenkig|stief"
    ),
    "tight": (
        "fest|eng|enge|straff|spannt|angespannt|spannung|spannen|spannte|spannungsgefuhl|verklebt|anspannung|stramm|"
        "verkurzung, fest sitzend, unter spannung"
    ),
    "tightness": "steifigkeit|spannungslevel, engegefuhl muskel",
    "stretch feeling": (
        "dehngefuhl|dehnungsgefuhl|ziehen|zieht|zog|gezogen|dehnreiz|dehnungsreiz|dehnspannung|ziehts|ziehn|"
        "dehnungsspannung|zugig, dehnschmerz leicht, angenehmes ziehen, leichtes ziehen, starkes ziehen, gutes "
        "ziehen, schones ziehen, gute dehnung, schone dehnung, starke dehnung, intensive dehnung, tiefe dehnung, "
        "angenehme dehnung, zieht angenehm, zieht gut, zieht schon, gut gezogen, intensive dehnung gespurt, leichte "
        "dehnung, brennende dehnung, zieht ordentlich, zieht ein bisschen, zieht etwas, zieht leicht, hat gut "
        "gezogen, hat schon gezogen, hat ganz schon gezogen, hat ordentlich gezogen, angenehm gezogen, dehnung gut "
        "gespurt, dehnung gespurt"
    ),
    "mood": "stimmung|laune|energielevel, motivation wert",
    "effort": "anstrengung|belastung|rpe",
    "motivation": "motivation stufe",
    "more painful": (
        "weher, schlimmere schmerzen, mehr schmerzen, starkere schmerzen, mehr schmerz, mehr weh, schmerzt mehr, "
        "starker weh, schmerzen starker"
    ),
    "sharp": (
        "scharf|scharfe|scharfer|scharfen|scharfes|stechend|stechende|stechender|stechendes|stechenden|spitz|spitze|"
        "spitzer|spitzen|schneidend|schneidender|schneidende|einschneidend|scharfn|schnidend"
    ),
    "stabbing": (
        "sticht|stechen|stach|gestochen|stich|stiche|stichs|messerstich|messerstiche|stechts|stechn|stichartig|"
        "gestochn|stoch|stichelt|stichelte|sticheln|stechschmerz|piekst|piekt|pieksen|pikst|piksen|bohrend|bohrende|"
        "bohrender|stichartige|sticha, sticht s, wie messerstiche, wie ein messerstich, sticht rein"
    ),
    "like a knife": (
        "wie ein messer, wie mit einem messer, wie mit dem messer, wie ein dolch, wie messer, wie ein dolchstoss, "
        "als wurde jemand ein messer, wie ein nagel, wie mit nem messer"
    ),
    "like a needle": "wie eine nadel",
    "sudden": (
        "plotzlich|plotzliche|plotzlicher|plotzlichen|plotzliches|schlagartig|abrupt|urplotzlich|unvermittelt|akut|"
        "akuter|blitzartig|ruckartig, auf einmal, von jetzt auf gleich, aus dem nichts, von einer sekunde auf die "
        "andere, aus heiterem himmel, ganz plotzlich, auf oamoi, uf eimal"
    ),
    "lightning": "blitz|blitze, wie ein blitz",
    "throbbing": (
        "pocht|pochen|pochend|pochende|pochender|pochendes|pulsiert|pulsierend|pulsieren|klopft|klopfen|hammert|"
        "hammern|wummert|klopfend|klopfender|klopfende|pulsierender|pochte|tuckert|bummert"
    ),
    "tingling": (
        "kribbeln|kribbelt|kribbelte|kribbelig|kribbelnd|kribblig|kribbelgefuhl|gekribbelt|kribbelnde|kribbelndes|"
        "kribbel|kribbels|kribbelts|ameisenlaufen|ameisen|ameisenkribbeln|ameisengefuhl|ameisenhaufen|prickeln|"
        "prickelt|prickelte|prickelnd|bitzelt|bitzeln|bizzelt|bizzeln|nadelstiche|nadelstichen|stecknadeln|nadeln|"
        "ameislan|krabbeln|krabbelt|missempfindungen|missempfindung|parasthesie|parasthesien|ischias|ischiasnerv|"
        "ischiasschmerzen|nerv|nervenschmerz|nervenschmerzen|surrt|surren|vibriert|vibrieren|kribbelign|chribele|"
        "chruselet|chribelet|grieseln|grieselt|kriwweln|kribbln|sirren|sirrt|brizzelt|brizzeln|britzelt|nadelpiekse|"
        "kriebeln|kriebelt|ameisn|rieseln|rieselt|kribelts|krabbelgefuhl|ameisenkrabbeln|flirren, tausend nadeln, "
        "wie tausend nadeln, wie ameisen, nerv eingeklemmt, eingeklemmter nerv, nerv gereizt, summen im, pieksen wie "
        "nadeln, kitzelt komisch, bamstig kribbelnd, ameisen krabbeln, ameisen laufen, flimmern im bein"
    ),
    "numbness": (
        "taubheit|taubheitsgefuhl|taubheitsgefuhle|taubgefuhl|taubheiten|gefuhllosigkeit|pelzigkeit|"
        "sensibilitatsstorung|sensibilitatsstorungen|gefuhlsstorung|gefuhlsstorungen|gefuhlsverlust, taubheits gefuhl"
    ),
    "numb": (
        "taub|taube|tauber|tauben|taubes|taubem|gefuhllos|gefuhllose|gefuhlloser|gefuhllosen|gefuhlloses|gefuhlslos|"
        "pelzig|pelzige|pelziges|pelziger|pelzigen|betaubt|wattig|abgestorben|abgestorbene|eingeschlafen|eingschlofn|"
        "eigschlofe|eingeschlafene|eingschlafen|bamstig|tob|tauba|gfuhllos|empfindungslos|einschlaft|einpennt|"
        "eingepennt|absterben, wie betaubt, wie watte, wie in watte, stirbt ab, schlaft ein, schlief ein, schlafen "
        "ein, schlafen mir ein, schlaft mir ein, schlaft immer ein, schliefen ein, tot an, wie tot, kein gefuhl, "
        "kein gefuhl mehr, ohne gefuhl, gefuhl verloren, gefuhl weg, gefuhl ist weg, kein gefuhl drin, gefuhl fehlt, "
        "fuhlt sich tot, ohne empfindung, keine empfindung, nichts spure, spure nichts, spur nichts, spure nix, spur "
        "nix, kein gfuhl, einschlafen der, spurt sich taub, schlafen immer ein, dumpf taub, wie eingeschlafen, gspur "
        "nix, gspure nut, keinerlei gefuhl, kaum gefuhl, kaum noch gefuhl, weniger gefuhl, fast kein gefuhl, fast "
        "kein gefuhl mehr, gefuhl verschwunden, wie fremd, wie ein fremdkorper, wie aus holz, wie holz, wie gummi "
        "taub, fuhle nichts, ohne jedes gefuhl, spure ich nicht, spur ich nicht, spure ich nicht mehr, spur ich "
        "nicht mehr, spure ich kaum, spur ich kaum, fuhle ich nicht, fuhle ich nicht mehr, fuhle ich kaum, nicht "
        "mehr spure, nicht spure, kaum spure, nicht mehr fuhle, kein gspur, nimmer gspurn, stumpfes gefuhl"
    ),
    "as if in gloves": "wie in handschuhen, wie handschuhe, wie strumpfe",
    "electric": (
        "elektrisierendes|elektrisierenden|elektrisch|elektrische|elektrischer|elektrisches|elektrisierend|"
        "elektrisierende|elektrisierender|stromschlag|stromschlage|stromstoss|stromstosse|stromschlagen|stromartig|"
        "elektroschock|elektroschlag|elektrisiert|stromgefuhl|elektrischen|stromschlagartig|stromimpuls|"
        "stromschlagartige|stromzucken, wie strom, wie ein stromschlag, strom durch, strom im, wie ein "
        "elektroschock, kabelbrand bein, blitzartig runter, strom ins, wie eine gewischt, eine gewischt, strom den, "
        "an der steckdose, wie ein stromstoss, strom durchs, strom fliesst"
    ),
    "shooting": (
        "schiesst|schiessend|schiessende|schiessender|einschiessend|einschiessende|einschiessender|einschiessenden|"
        "ausstrahlend|ausstrahlende|ausstrahlender|ausstrahlenden|strahlt|ausstrahlung|ausstrahlungen|ausgestrahlt|"
        "ausstrahlt|ausstrahlen|strahlte|strahlen|schoss|geschossen|eingeschossen|schiessen|einschiesst|durchfahrt|"
        "durchzuckt|ausstrahlnd|durchzuckte|schiasst|strahlet, strahlt aus, strahlt ab, schoss ein, schiesst ein, "
        "ziehschmerz runter"
    ),
    "runs down the": (
        "runterzieht|runtergezogen, zieht bis in, zieht bis ins, zieht bis zum, zieht bis zur, zieht runter, zieht "
        "sich bis, zieht sich runter, zieht ins, zieht in den, zieht in die, zieht das bein, zieht den arm, zieht "
        "hinunter, zieht runter bis, fahrt ins, fahrt in den, fahrt in die, fahrt mir ins, fahrt mir in den, fahrt "
        "runter, fuhr ins, fuhr mir ins, fuhr runter, wandert ins, wandert runter, lauft ins, lauft runter, lauft "
        "das bein, zog ins, zog bis, ziehen bis in, ziehen bis ins, ziehen ins, ziehen runter, fahrt durch, fahrt "
        "rein, geht ins bein, geht runter ins, zieht mir ins, zieht mir bis, zieht vom, zieht abi, zieht mir runter, "
        "zieht ruber in"
    ),
    "burning": (
        "brennt|brennen|brannte|brennend|brennende|brennender|brennendes|brennenden|gebrannt|brenna|brennschmerz|"
        "gluhend|brennts|brenne|brennte|brenngefuhl|feurig, wie feuer, in flammen"
    ),
    "weak": (
        "schwach|schwache|schwacher|schwachen|schwaches|schwachegefuhl|kraftlos|kraftlose|kraftloser|kraftlosigkeit|"
        "kraftverlust|gelahmt|gelahmte|lahmung|lahmungen|lahmungserscheinungen|schwacheln|schwachelt|"
        "fussheberschwache|fallfuss|schlackert|puddingbeine|schlaff|schlaffe|schlaffer|schwoch|gschwacht|schwachlich|"
        "nachziehen|schwabbelig, nicht hochziehen, nicht mehr hochziehen, klatscht beim gehen, nicht bewegen bein, "
        "nicht strecken hand, fallen aus der hand, fallt aus der hand, schlapp im bein, fuss hangt, schleife den "
        "fuss, lasst sich nicht heben, nicht heben, nicht mehr heben, kaum heben, nicht anheben, nicht hochheben, "
        "nicht mehr hochheben, nicht hochbekommen, krieg nicht hoch, nicht richtig heben, nicht greifen, nicht mehr "
        "greifen, kaum greifen, nicht festhalten, nicht zugreifen, nicht bewegen arm, gehorcht nicht, gehorcht mir "
        "nicht, gehorchen nicht, nicht mehr anheben, will nicht hoch, fallt mir aus der hand, fallen mir aus der "
        "hand, nicht mehr heben kann, weich wie pudding, wie pudding, wie gummi, lass alles fallen, lasse dinge "
        "fallen, lasse sachen fallen, lasse standig sachen fallen, rutscht mir aus der hand, fallt alles aus der "
        "hand, fallt mir alles aus der hand, aus der hand gefallen, fallen mir dinge runter, nicht hoch, nicht mehr "
        "hoch, bleibt hangen beim gehen, fuss schleift, schleift am boden, zieh das bein nach, ziehe das bein nach, "
        "muss das bein nachziehen, ziehe den fuss nach"
    ),
    "no power": (
        "keine kraft, keine kraft mehr, ohne kraft, kein saft, keine kraft in, kraft fehlt, weniger kraft, kraft "
        "weg, kraft ist weg, kraft verloren, keine power, kaum kraft, koa kraft, kei chraft, kraft verschwunden, "
        "kaum noch kraft, kraft lasst nach, fehlt die kraft, fehlt kraft, verliere kraft, kraft nachgelassen, nicht "
        "genug kraft in, an kraft verloren, nicht mehr so viel kraft"
    ),
    "can not open the jar": (
        "flasche nicht aufbekommen, glas nicht aufbekommen, glas nicht mehr auf, krieg kein glas auf, flaschen nicht "
        "mehr auf, flasche nicht mehr auf, marmeladenglas nicht, deckel nicht mehr auf, glas nicht auf"
    ),
    "popped": (
        "ploppen|geplopp|muskelfaserriss|auskugeln|knacks|schnalzte|schnalzen|geschnalzt|schnalzer|gerissen|riss|"
        "reisst|abgerissen|plopp|plopps|ploppte|geploppt|gekracht|krachte|kracher|knall|knallte|geknallt|"
        "peitschenknall|peng|schnackte|geschnackelt|rausgesprungen|ausgekugelt|herausgesprungen|luxiert|schnalz|"
        "ratsch|ritsch|eingerissen|faserriss|muskelriss|sehnenriss|banderriss|kreuzbandriss|gschnalzt|schnapper|"
        "ausgerenkt|knackser|geknackst|pop|gepoppt|plop|schnapp|rausgehupft|reissen|gerissn|gschnackelt|zerissen|"
        "krachen|krachend|peitschenhieb|bandriss|innenbandriss|rausghupft|chlapf|klack|klackte|rupf|ruptur, knackser "
        "gehort, riss im, knackte laut, lauter knack, lautes knacken, lautes knack, laut geknackt, laut knacken, "
        "knack laut, riss es, knacks gehort, gesprungen die kniescheibe, tritt in die wade, tritt gegen die wade, "
        "tritt in die ferse, als hatte mich jemand getreten, als hatte mir jemand in die wade getreten, wie ein "
        "tritt, wie ein peitschenhieb, knall gehort, einen knack, ein knack, knack gehort, knack gespurt, knacken "
        "gehort und, rausgerutscht die schulter, einen knacks, ein knacks, krach gmacht"
    ),
    "creaking": (
        "knackt|knacken|knackte|geknackt|knirscht|knirschen|knarzt|knarzen|knackst|knacksen|knirschte|knacksts|"
        "knackig|knackiges|knackige|knackiger|knarrt"
    ),
    "bruise": (
        "bluterguss|blutergusse|hamatom|hamatome|verfarbt|verfarbung|prellung|geprellt|blaugrun|blauviolett|blunzn|"
        "unterblutung|blaufleck|dunkelblau|blauschwarz|blaulich|blaulila, blauer fleck, blauen fleck, blaue flecken, "
        "blaue flecke, blau fleck, blaue stelle, blau geworden, blau angelaufen, blau verfarbt, blau und lila, grun "
        "und blau, grun blau, lila verfarbt, blau grun, blau lila, blauer flecken, blaue flecka, blaua flack, blaue "
        "fleck, veilchen am, ganz blau, ist blau, wird blau, bluterguss am, blauen flecken, blaui flacke, schwarz "
        "und blau, dunkel verfarbt, blau und grun, lila fleck, lila flecken, blau unterlaufen"
    ),
    "swollen": (
        "geschwollen|geschwollene|geschwollener|geschwollenes|geschwollenen|schwellung|schwellungen|schwillt|schwoll|"
        "angeschwollen|anschwellung|anschwellen|gschwolln|gschwollen|aufgeschwollen|aufgequollen|aufgedunsen|"
        "verdickt|verdickung|beule|erguss|gelenkerguss|entzundet|entzundung|gschwulle|geschwolln|schwellen|"
        "elefantenbein|elefantenfuss|odem|odeme|dickere|dick|gschwullen|geschwulst|aufgeblasen|verquollen|klumpfuss|"
        "knubbel, schwillt an, dick geworden, dicker geworden, ganz dick, dickes knie, dicker knochel, dicken "
        "knochel, dickes bein, dicken fuss, dicker fuss, dicke wade, ist dick, wird dick, wird immer dicker, wird "
        "dicker, ist dicker, dicker als, dick wie, doppelt so dick, doppelt so gross, grosser als das andere, "
        "grosser als die andere, grosser als der andere, aufgeblaht knie, wasser im knie, wasser im bein, wasser in "
        "den beinen, so dick, richtig dick, voll dick, total dick, dick angelaufen, dicks chnu, dick gschwolle, "
        "schwellen an, dick und, wie ein ballon, wie eine melone, wie ein luftballon, wie ein elefantenbein, dicke "
        "knochel, dicke beine, dicke fusse"
    ),
    "no weight on it": (
        "nicht mal stehen, nicht mal auftreten, nicht mal gehen, nicht mal laufen, nicht mal mehr stehen, nicht mal "
        "mehr laufen, nicht einmal stehen, nicht einmal auftreten, nicht einmal laufen, nicht einmal gehen, nicht "
        "auftreten, nicht mehr auftreten, kann nicht auftreten, nicht belasten, nicht mehr belasten, kein gewicht "
        "drauf, kein gewicht auf, keine belastung moglich, nicht belastbar, nicht draufstellen, nicht drauf stehen, "
        "nicht darauf stehen, nicht stehen, nicht mehr stehen, nicht gehen konnen, nicht laufen konnen, nicht mehr "
        "gehen, nicht mehr laufen, nicht drauftreten, nicht aufstehen, kann nicht laufen, kann nicht gehen, konnte "
        "nicht mehr laufen, konnte nicht laufen, kann nicht mehr laufen, nicht mehr drauf stehen, auftreten "
        "unmoglich, auftreten geht nicht, auftreten geht nicht mehr, auftreten geht gar nicht, auftreten ging nicht, "
        "belasten geht nicht, belasten geht gar nicht, belastung unmoglich, gehen unmoglich, laufen unmoglich, kann "
        "keinen schritt, keinen schritt, tragt mich nicht, tragt mein gewicht nicht, tragt nicht, halt mein gewicht "
        "nicht, nimmer auftreten, ned auftreten, net auftreten, net laufen konnen, ned steh, nod laufe, nod ufstah, "
        "gar nicht auftreten, nicht richtig auftreten, nicht drauf auftreten, nicht mehr aufstehen bein, kein "
        "auftreten moglich, kein gewicht mehr, nimma auftreten, net belasten, ned belasten, nicht mehr darauf "
        "stehen, nicht voll belasten, nicht richtig belasten, auftreten kann ich nicht, auftreten kann i ned, "
        "belasten kann ich nicht, stehen kann ich nicht, laufen kann ich nicht, gehen kann ich nicht, auftreten ist "
        "unmoglich, laufen geht nicht, gehen geht nicht, laufen ist unmoglich, gehen ist unmoglich, laufen geht gar "
        "nicht"
    ),
    "hardly walk": (
        "humpeln|humple|humpel|humpelt|hinken|hinke|hinkt|humpelnd|krucken|gehstutzen|hatsch|hatschn|hatschen, kaum "
        "auftreten, kaum laufen, kaum gehen, kaum stehen, kaum noch laufen, kaum noch gehen, kaum noch auftreten, "
        "kaum belasten, nur humpelnd, auf krucken, kaum drauf stehen, nur mit muhe laufen, nur mit muhe gehen, nur "
        "schwer auftreten, schwer auftreten, schlecht auftreten, schlecht laufen, nicht richtig laufen, nicht "
        "richtig gehen, kaum mehr laufen, kaum mehr auftreten, nicht normal laufen, auftreten tut weh, auftreten "
        "schmerzt"
    ),
    "gives way": (
        "wegknickt|weggeknickt|eingeknickt|wegknicken|einknickt|nachgegeben|nachgibt|nachgeben|weggesackt|wegsackt|"
        "instabil|weggeklappt|weggerutscht|eingesackt|instabilitat|wegsacken|einknicken|weggebrochen|eingeknackst|"
        "weggeknackst|wegbricht|knickt|knickte|wegknackt, knickt weg, knickt ein, knickte weg, knickte ein, sackt "
        "weg, sackte weg, wackelig knie, klappt weg, klappte weg, rutscht weg, blockade knie, gibt immer nach, lasst "
        "mich im stich, im stich gelassen knie, knickt mir weg, knickt immer weg, knickt standig weg, knickt um, "
        "bricht weg, brach weg, springt raus, springt heraus, springt immer raus, knickt dauernd weg, sackt ein, den "
        "dienst, wegg sackt, bein gibt nachgebend"
    ),
    "warm": (
        "warm|warme|warmes|heiss|heisse|heisses|heisser|rot|rote|rotung|gerotet|uberwarmt|rotes|roter|erwarmt|"
        "gerotete|roten|heissi|hoass|uberwarmung|gluht"
    ),
    "can not breathe": (
        "kurzatmig|atemlos|japsen|japse|erstickt|ersticke|ersticken, nicht mehr zu atem, nicht zu atem, luft holen "
        "fallt schwer, luft holen fallt mir schwer, atem stockt, atem stockte, atmen geht nicht, atmen geht kaum, "
        "atmen ist schwer, atmen schwer, atmung geht schwer, atem bleibt weg, nicht genug sauerstoff, nur schwer "
        "luft, kriege schlecht luft, krieg schlecht luft, bekomme schlecht luft, keine luft, keine luft mehr, kriege "
        "keine luft, krieg keine luft, bekomme keine luft, nicht atmen, nicht mehr atmen, kaum atmen, kaum noch "
        "atmen, kaum luft, kaum noch luft, keine luft bekommen, keine luft gekriegt, schlecht luft, schwer luft, "
        "schlecht atmen, schwer atmen, schwer zu atmen, nicht durchatmen, nicht richtig atmen, nicht richtig "
        "durchatmen, nicht tief atmen, nicht tief einatmen, ringe nach luft, nach luft ringen, nach luft geschnappt, "
        "schnappe nach luft, schnappte nach luft, nach luft schnappen, luft bleibt weg, bleibt die luft weg, blieb "
        "die luft weg, bleibt mir die luft weg, blieb mir die luft weg, luft weggeblieben, schnurt mir die luft ab, "
        "wenig luft, zu wenig luft, nicht genug luft, nicht genugend luft, atmen fallt schwer, atmen fallt mir "
        "schwer, atmung schwer, schweres atmen, probleme beim atmen, schwierigkeiten beim atmen, koa luft, kei luft, "
        "krieg koa luft, kein atem, keine luft krieg, keine luft kriege, keine luft bekomme, keine luft gekrigt, "
        "luft abgeschnurt, nicht luft holen, keine luft holen, luft knapp, luft wurde knapp, wurde die luft knapp, "
        "wird die luft knapp, kum luft, schlechter luft, schlecht luft bekommen, atmen geht schwer, nicht gescheit "
        "atmen"
    ),
    "shortness of breath": (
        "atemnot|luftnot|atembeschwerden|atemprobleme|kurzatmigkeit|atemlosigkeit|erstickungsgefuhl|luftmangel"
    ),
    "incontinence": (
        "inkontinenz|harnverhalt|harnverhaltung|urinverlust|stuhlverlust|blasenstorung|blasenstorungen|"
        "blasenprobleme|blasenentleerungsstorung|stuhlinkontinenz|harninkontinenz|blasenlahmung, probleme beim "
        "wasserlassen, probleme beim pinkeln, schwierigkeiten beim wasserlassen, probleme mit der blase, probleme "
        "mit blase, probleme mit dem darm, blasenkontrolle verloren"
    ),
    "out of breath": (
        "schnaufe|schnaufen|hechel|hecheln|gekeucht|keuchen, ausser atem, aus der puste, keine puste, ausser puste, "
        "ausser schnauf"
    ),
    "maybe fainted": "umgefallen|umgfalln, fast umgefallen",
    "fainted": (
        "ohnmachtsnah|ohnmachtig|ohnmacht|bewusstlos|bewusstlosigkeit|umgekippt|kollabiert|zusammengebrochen|"
        "zusammengeklappt|zusammengesackt|kreislaufkollaps|weggetreten|kollaps|kreislaufzusammenbruch|synkope|"
        "blackout|filmriss|ausgeknockt|umkippen|zusammenbruch|zsammbrochn|umgekipt|ohnmachtich|bewustlos|"
        "ohnmachtsanfall|umkippe|weggekippt|wegtreten, auf einmal lag ich am boden, auf einmal lag ich auf dem "
        "boden, plotzlich lag ich am boden, plotzlich lag ich auf dem boden, kreislauf weggesackt, kreislauf ist "
        "weggesackt, kreislauf abgesackt, war weg vom fenster kurz, mir sind die lichter ausgegangen, lichter sind "
        "ausgegangen, weggesackt kreislauf, ohnmacht gefallen, war nicht ansprechbar, nicht ansprechbar, in "
        "ohnmacht, kippte um, weg getreten, bewusstsein verloren, das bewusstsein verloren, bewusstsein verlor, "
        "schwarz vor augen, schwarz vor den augen, schwarz vor aug, fast umgekippt, beinahe umgekippt, knapp "
        "umgekippt, kreislauf zusammengebrochen, kreislauf weg, war kurz weg, kurz weg getreten, kurz weggetreten, "
        "lichter ausgegangen, licht aus gegangen, gingen die lichter aus, ging das licht aus, auf dem boden wieder "
        "aufgewacht, am boden aufgewacht, am boden wieder zu mir gekommen, wieder zu mir gekommen, kipp um, kippe "
        "um, zu mir gekommen, bewusstsein weg, kreislauf versagt, alles schwarz, fast weggetreten, beinahe "
        "ohnmachtig, fast ohnmachtig"
    ),
    "palpitations": (
        "herzrasen|herzstolpern|herzstolperer|herzrhythmusstorungen|herzrhythmusstorung|rhythmusstorungen|"
        "herzflattern|vorhofflimmern|extrasystolen|herzaussetzer|unrhythmisch|herzpoltern|extraschlage|"
        "herzgestolper, herzklopfen stark, unregelmassiger puls, puls unregelmassig, unregelmassiger herzschlag, "
        "herzschlag unregelmassig, stolpern herz, herz setzt aus, herz setzte aus, herz aussetzer, herz poltert, "
        "herz rast, herz raste, puls rast, puls raste, rasendes herz, rasender puls, rasenden puls, schlagt "
        "unregelmassig, schlug unregelmassig, schlagt komisch, schlagt wie verruckt, schlagt bis zum hals, "
        "herzfrequenz unregelmassig, schlagt ganz komisch, herz springt, herz hupft unregelmassig, herz spinnt, herz "
        "macht komische sachen, schlagt durcheinander"
    ),
    "pounding": "rast|raste|rasen, klopft wie verruckt",
    "heart attack": "herzinfarkt|herzanfall|herzinfakt|infarkt|herzstillstand, angina pectoris, angina pektoris",
    "a stroke": "schlaganfall|schlaganfalls|schlagli|hirnschlag|apoplex|tia|schlagerl|hirnblutung",
    "slurred": (
        "lalle|lallt|lallen|gelallt|verwaschen|verwaschene|verwaschener|sprachstorung|sprachstorungen|undeutlich|"
        "nuschel|nuschle|nuscheln|sprechstorung|wortfindungsstorungen|wortfindungsstorung|lall|sprachprobleme, "
        "undeutlich gesprochen, kann nicht sprechen, kann nicht mehr sprechen, nicht sprechen, nicht mehr sprechen, "
        "nicht richtig sprechen, nicht mehr richtig sprechen, nicht reden, nicht mehr reden, nicht richtig reden, "
        "kaum sprechen, kaum reden, finde die worte nicht, finde keine worte, finde worter nicht, finde die worter "
        "nicht, die richtigen worte nicht, die richtigen worter nicht, kein wort rausgebracht, kein wort "
        "herausgebracht, bring kein wort raus, bringe kein wort heraus, bekomme kein wort raus, wie betrunken "
        "geredet, spreche wie betrunken, rede wie betrunken, rede komisch, spreche komisch, rede wirr, wirr geredet, "
        "worte durcheinander, worter durcheinander, worter kommen durcheinander, sprache weg, sprache verwaschen, "
        "red wie bsoffn, schwere zunge, zunge gehorcht nicht, zunge schwer, sprechen fallt schwer, sprechen fallt "
        "mir schwer, probleme beim sprechen, schwierigkeiten beim sprechen, stottere plotzlich, worter kommen "
        "falsch, worte kommen falsch, worte fallen mir nicht ein, worter fallen mir nicht ein, falsche worter, "
        "worter kommen falsch raus, worte kommen falsch raus, worter kommen komisch raus, nicht artikulieren, sprech "
        "wie betrunken, red wie besoffen, wie besoffen geredet, sprache war weg, komme nicht auf die worter, worter "
        "nicht mehr gefunden, worte nicht mehr gefunden, die worte nicht gefunden, kann nicht reden, konnte nicht "
        "reden, konnte nicht sprechen, worter kamen falsch"
    ),
    "speech": "sprache|sprechen|aussprache, reden probleme",
    "blurred vision": (
        "blind|erblinde|gesichtsfeldausfall|verschwommen|verschwommenes|doppelbilder|doppelbild|sehstorung|"
        "sehstorungen|sehprobleme|unscharf|unscharfes|tunnelblick|rohrenblick|gesichtsfeld|sehausfall|erblindet|"
        "lichtblitze|augenflimmern|flimmern|sehvermogen|sehkraft|doppelsichtig|sehverlust, sehfeld eingeschrankt, "
        "sieht nichts, sieht nix, sieht nichts mehr, sieht nix mehr, sieht doppelt, sieht verschwommen, sieht "
        "unscharf, nichts mehr gesehen, sehe doppelt, seh doppelt, doppelt sehen, doppelt gesehen, sehe nichts, seh "
        "nichts, sehe nichts mehr, seh nix, nicht sehen, nichts sehen, nichts gesehen, nicht mehr sehen, nicht "
        "richtig sehen, kaum sehen, kaum noch sehen, sehe schlecht, sehe unscharf, sehe schwarz, blind auf, auf "
        "einem auge nichts, auf einem auge blind, blitze vor augen, sternchen gesehen, sterne gesehen, sternchen "
        "sehen, sehe sternchen, seh sternchen, sehe sterne, sah sterne, sah sternchen, flimmern vor den augen, "
        "flimmert vor den augen, flimmert vor augen, schwarze punkte, schwarze flecken, schleier vor, schleier vor "
        "den augen, grauer vorhang, schwarzer vorhang, sicht verschwommen, sicht weg, seh alles doppelt, sehe alles "
        "doppelt, sehe alles verschwommen, seh schlecht, siech doppelt, halbe bild fehlt, halfte vom bild, halbes "
        "gesichtsfeld, sah doppelt, sah alles doppelt, alles doppelt gesehen, sehe nur die halfte, sehe nur noch die "
        "halfte, sah nichts mehr, sah nichts, konnte nichts sehen, seh nur die halfte, vor den augen flimmert, kann "
        "nicht mehr richtig sehen, nur die halfte sehen, nur die halfte gesehen"
    ),
    "hanging": (
        "hangt|hangend|hangende|herabhangend|herabhangende|hangender|hing|hangendes|schief|schiefes|schiefer|schrag|"
        "herunterhangt|runterhangt|hangen, hangt runter, hangt herunter, verzogen gesicht, hangt schief, ist schief"
    ),
    "one side": (
        "einseitig|halbseitig|halbseite|gesichtshalfte|korperhalfte|halbseitige|hemiparese, eine seite, einer seite, "
        "eine korperhalfte, einer korperhalfte, halbe korper, halber korper, eine halfte, halbe seite, eine "
        "gesichtshalfte, einer gesichtshalfte, halbes gesicht, halbe gesicht, halfte vom gesicht, halfte des "
        "gesichts, halfte meines gesichts, halfte von meinem gesicht, halfte des korpers, halfte vom korper"
    ),
    "left side of my face": "linke gesichtshalfte, linken gesichtshalfte, linke gesichtsseite, linke gesichtshalfe",
    "right side of my face": "rechte gesichtshalfte, rechten gesichtshalfte, rechte gesichtsseite",
    "left side of my body": (
        "linke korperhalfte, linken korperhalfte, ganze linke seite, komplette linke seite, gesamte linke seite"
    ),
    "right side of my body": (
        "rechte korperhalfte, rechten korperhalfte, ganze rechte seite, komplette rechte seite, gesamte rechte seite"
    ),
    "pressure": (
        "druck|druckgefuhl|druckt|druckte|druckend|druckendes|druckender|beklemmung|beklemmend|beklemmendes|beengt|"
        "engegefuhl|beklemmungsgefuhl|schnurt|zugeschnurt|einschnurend|eingeschnurt|zusammengeschnurt|"
        "zusammengedruckt|quetscht|gequetscht|zusammengepresst|druckn|bedruckend|drucks|schraubstock|eisenring|"
        "presst|drucken|steinschwer|zentnerschwer, enge in der, enge gefuhl, last auf, schwer wie blei, wie ein "
        "schraubstock, wie ein eisenring, ring um die, panzer um die, wie ein gurtel, klemmt in der, druckschmerz "
        "brust, schwere auf, wie ein stein auf, gurtel um die, zusammengezogen brust"
    ),
    "chest pressure": (
        "brustenge|brustbeklemmung|brustengegefuhl|brustdruck|beklemmungen, druckt mir auf die brust, druckt auf die "
        "brust, druckt auf der brust, druckt auf meine brust, eng um die brust, ring um die brust, druck hinter dem "
        "brustbein, druck hinterm brustbein, druck am herzen, druck auf dem herzen, druck am herz, auf meiner brust "
        "sitzt, auf der brust sitzt, auf meiner brust steht, auf meiner brust liegt, auf der brust steht, auf der "
        "brust liegt, auf meiner brust kniet, sitzt mir auf der brust, elefant auf meiner brust, stein auf meiner "
        "brust, gewicht auf meiner brust, druck auf meiner brust, enge in der brust, enge im brustkorb, enge brust, "
        "brust eng, brust wie zugeschnurt, druck auf der brust, druck in der brust, druck auf brust, elefant auf der "
        "brust, stein auf der brust, gewicht auf der brust, last auf der brust, brust zugeschnurt, engegefuhl in der "
        "brust, engegefuhl in brust, sitzt auf der brust, sitzt auf meiner brust, jemand auf der brust, brust ist "
        "eng, brust ist ganz eng, brust wird eng, brust wurde eng, eng in der brust, eng ums herz, engegefuhl im "
        "brustkorb, brust zieht sich zusammen, brust zog sich zusammen, brust schnurt, brust krampft"
    ),
    "heart pain": (
        "herzschmerzen|herzstechen|herzschmerz|herzdruck|herzweh|herzstiche|herzenge, stiche im herz, stiche im "
        "herzen, stich im herz, stich im herzen"
    ),
    "chest pain": "brustschmerzen|brustschmerz|brustweh|thoraxschmerzen, brust schmerzen",
    "sweating": (
        "schwitze|schwitzen|schweiss|schweissausbruch|kaltschweissig|schwitz|schweissgebadet|schweissausbruche|"
        "schwitzte, kalter schweiss, schwitze stark, kaltem schweiss, kalten schweiss"
    ),
    "wet myself": (
        "eingepinkelt|eingepisst|eingeschissen|eingekotet|eingenasst|eingesaut|angepinkelt, nicht mehr dicht, laufe "
        "aus, lauf aus, undicht untenrum, pipi in der hose, tropfe standig, in die hose gemacht, in die hose "
        "gepinkelt, in die hosen gemacht, in die hose gegangen, in die hose gepisst, in die hose geschissen, hose "
        "nass, hose voll"
    ),
    "can not pee": (
        "inkontinent|tropfelt|einnassen, nicht mehr aufs klo, nicht aufs klo gekonnt, nicht mehr wasserlassen, nicht "
        "mehr pieseln, nicht mehr urinieren, nicht mehr bieseln, nicht mehr pissen, urin verliere, verliere urin, "
        "verliere pipi, verliere stuhl, nicht pinkeln, nicht mehr pinkeln, nicht wasserlassen, nicht wasser lassen, "
        "nicht urinieren, kein wasser lassen, kann kein wasser, nicht pieseln, nicht bieseln, blase nicht "
        "kontrollieren, blase nicht halten, blase nicht mehr halten, urin nicht halten, urin nicht mehr halten, urin "
        "verloren, stuhl verloren, stuhl nicht halten, stuhl nicht mehr halten, blasenschwache neu, darm nicht "
        "kontrollieren, pipi verloren, urin lauft, urin geht ab, wasser nicht halten, wasser nicht mehr halten, "
        "nicht aufs klo, nicht auf die toilette, nicht mehr auf die toilette, nicht biesln, nicht lulu, pinkeln geht "
        "nicht, pinkeln geht nicht mehr, wasserlassen geht nicht, schwierigkeiten beim pinkeln, kontrolle uber die "
        "blase, kontrolle uber blase, kontrolle uber meine blase, kontrolle uber den darm, kontrolle uber darm, "
        "kontrolle uber meinen darm, kontrolle uber den stuhlgang, kontrolle uber blase und darm, spure nicht wenn "
        "ich pinkel, spur nicht wenn ich pinkle, spure nicht wenn ich pinkle, spure nicht wann ich aufs klo muss, "
        "merke nicht wenn ich muss, merke nicht dass ich muss, merke nicht wenn ich pinkel, merke nicht mehr wenn "
        "ich muss, merke nicht wann ich muss, nicht pissen, nicht brunzen, kein urin, kein tropfen, geht was in die "
        "hose, ging was in die hose, ging in die hose, geht in die hose, wasserlassen klappt nicht, wasserlassen "
        "unmoglich, wasserlassen fallt schwer, schwer wasser lassen, kaum wasser lassen, kaum pinkeln, kaum "
        "wasserlassen, hose nass gemacht, unkontrolliert pinkeln, urin unkontrolliert, unkontrolliert urin, ins bett "
        "gemacht, in die unterhose gemacht, kann nicht aufs klo, konnte nicht aufs klo, wasser lassen geht nicht, "
        "wasser lassen klappt nicht, wasser lassen kann ich nicht, nicht mehr wasser lassen, pinkeln kann ich nicht, "
        "pinkeln klappt nicht, lauft einfach so raus, lauft von alleine raus, nicht mehr einhalten, kann es nicht "
        "einhalten, blase lauft uber, blase entleert sich nicht, blase macht was sie will, spure den urin nicht, "
        "drang nicht mehr, spure keinen harndrang, kein harndrang, keinen harndrang, kein gefuhl beim wasserlassen, "
        "kein gefuhl beim pinkeln"
    ),
    "can not feel the toilet paper": (
        "klopapier nicht, toilettenpapier nicht, spure das klopapier nicht, beim abwischen nichts, spure beim "
        "abwischen nichts, spur beim abwischen nix, toilettenpapier nicht spure, spur das klopapier nicht, spure das "
        "toilettenpapier nicht, spure beim wischen nichts, merke das klopapier nicht, fuhle das klopapier nicht"
    ),
    "urine": "urin|pipi|wasserlassen|pinkeln|harn|harnlassen, wasser lassen",
    "stool": "kacke|kot, stuhl darm",
    "toilet": "klo|toilette|klos|wc",
    "control": "kontrolle|kontrollieren, halten blase",
    "lost control": "kontrolle verloren, keine kontrolle, keine kontrolle mehr, die kontrolle verloren",
    "by itself": (
        "ungewollt|unbeabsichtigt|unabsichtlich, "
        "unbemerkt|unkontrolliert, von selbst, von alleine, von allein, einfach so, ohne dass ich es merke, ohne es "
        "zu merken"
    ),
    "dizzy": (
        "schwindelig|schwindlig|schwindel|schwindelgefuhl|schwindelanfall|schwindelanfalle|schwummrig|schwummerig|"
        "benommen|benommenheit|drehschwindel|duselig|dusselig|blumerant|kreislaufprobleme|kreislaufbeschwerden|"
        "schwankschwindel|schwindlich|schwindelich|dormelig|trummlig|drehwurm|taumelig|taumelte|taumeln|schummrig|"
        "schummerig|gleichgewichtsstorungen|gleichgewichtsprobleme|schwindl|schwindelt|schwindelte|torkelig|torkeln|"
        "torkle|trumlig, kreislauf im keller, kreislauf spinnt, kreislauf macht schlapp, kreislauf macht probleme, "
        "kreislauf verabschiedet, kreislauf am boden, kreislauf schlecht, kreislauf schwach, kreislauf war weg, "
        "kreislauf spielt verruckt, sturm im kopf, mir ist sturm, dreht sich alles, dreht sich, drehte sich alles, "
        "alles dreht sich, alles drehte sich, alles gedreht, kopf dreht, karussell im kopf, kreislauf probleme, flau "
        "im kopf, wie auf einem schiff, wie auf hoher see, schwankt alles, sturm im chopf, sturm im grind, mir is "
        "drahdi, drehte sich, hat sich alles gedreht, raum gedreht, zimmer gedreht, wackelig auf den beinen, "
        "wackelig auf den fussen, leer im kopf, leicht im kopf, wirr im kopf, schwindelei kopf, alles dreht, drehts "
        "mich, dreht es mich, gedreht im kopf"
    ),
    "fever": (
        "fieber|fiebrig|fiebert|fieberig|schuttelfrost|temperatur|fiaba|fiebr|nachtschweiss|febrig, erhohte "
        "temperatur, 38 grad, 39 grad, temperatur 38, fieber gemessen, nachts schweissgebadet, 38 fieber, 39 fieber"
    ),
    "weight loss": (
        "gewichtsverlust|abgenommen|abgmagert|abgemagert, abgenommen ungewollt, ungewollt abgenommen, gewicht "
        "verloren, kilo verloren, kilos verloren, kilo abgenommen, kilos abgenommen, kg abgenommen, kg verloren, "
        "verliere gewicht, nehme ab, nehme immer mehr ab, nehme ungewollt ab, ohne diat, ohne grund abgenommen, "
        "stark abgenommen, viel abgenommen, viel gewicht verloren, an gewicht verloren, hosen rutschen, hose "
        "rutscht, unerklarlich abgenommen, gwicht verlore, unfreiwillig abgenommen, nimm ab, nehm ab, verliere "
        "standig gewicht, kilo leichter, kilo weniger, immer dunner, kleidung zu weit"
    ),
    "wakes me": (
        "weckt|wachgelegen|wachgehalten|aufgeweckt|weckte|schlaflos, hat mich geweckt, haben mich geweckt, mich "
        "geweckt, mich aufgeweckt, weckt mich, weckte mich, aufgewacht vor, wach gemacht, nicht schlafen, nicht "
        "einschlafen, kaum geschlafen, nicht geschlafen, nicht durchschlafen, raubt mir den schlaf, kein auge "
        "zugetan, kein auge zugemacht, kein auge zu, reisst mich aus dem schlaf, riss mich aus dem schlaf, aus dem "
        "schlaf gerissen, wach gelegen, liege wach, lag wach, halt mich wach, hielt mich wach, wach gehalten, wecken "
        "mich, nicht gut geschlafen wegen, schlecht geschlafen wegen, kann nicht schlafen, konnte nicht schlafen, "
        "kaum schlafen, aufwachen lassen, nicht schlafen konnte, um den schlaf, nicht mehr schlafen, lasst mich "
        "nicht schlafen, lassen mich nicht schlafen, bringt mich um den schlaf"
    ),
    "problem": "problem|probleme|problemen|schwierigkeiten",
    "weird": (
        "komisch|komische|komischer|komisches|seltsam|seltsame|seltsames|merkwurdig|merkwurdige|merkwurdiges|"
        "eigenartig|eigenartiges"
    ),
    "odd": "anders|verandert|ungewohnt",
    "woke": "aufgewacht|geweckt|aufwache|aufgestanden|wachgeworden|munter, wach geworden",
    "shoulder stretch": "schulterdehner",
    "tried": "versucht, probiert, habs versucht, habs probiert",
    "running late": "wurde spat, spat geworden, zu spat geworden, wurde zu spat, ist spat geworden, schon so spat",
    "chest to the floor": "brust bis zum boden, brust auf den boden, brust am boden",
    "better": (
        "besser|bessa|erholt|beruhigt|gelegt|abgeklungen|ausgeheilt, besser geworden, viel besser, deutlich besser, "
        "wieder besser, viel bessa, wesentlich besser, wieder fit, hat sich beruhigt, hat sich gelegt, klingt ab "
        "gut, geht wieder, passt wieder, wieder gut, alles wieder gut, wieder in ordnung, wieder ok, wieder okay, "
        "wieder normal, geht wieder gut, wieder alles gut, ist gut jetzt, viel besser geworden"
    ),
    "a bit better": (
        "besserung, bisschen besser, ein bisschen besser, etwas besser, wenig besser, ein wenig besser, leicht "
        "besser, leicht gebessert, etwas gebessert, bissl besser, a bissl besser, schon besser, eher besser, langsam "
        "besser, nicht besser, kaum besser, minimal besser, wird besser, wird langsam besser, wird schon besser, "
        "noch nicht besser, bessert sich, bissle besser, besser aber, besser als gestern, leichte besserung, "
        "nachgelassen aber, etwas nachgelassen, net besser, schon etwas besser"
    ),
    "worse": (
        "steifer als gestern, verspannter als gestern, schlimmer als gestern, schlechter als gestern, "
        "schlechter|schlimmer|arger|verschlechtert|verschlimmert|zugenommen|schlimma|schlechta|schlachter|boser|"
        "vermehrt, schlimmer geworden, schlechter geworden, starker geworden, mehr geworden, nimmt zu, wird "
        "schlimmer, wird schlechter, immer schlimmer, viel schlimmer, noch schlimmer, arger gworde, deutlich "
        "schlechter, wird starker, wird mehr, nimmt immer mehr zu, heftiger als gestern, wird immer schlimmer, arger "
        "als gestern, intensiver geworden"
    ),
    "gone": (
        "weg|verschwunden|vorbei|vergangen|weggegangen|verflogen|verschwand|weggangen|nachgelassen|uberstanden|"
        "verging|fort|furt, nix mehr zu spuren, nix mehr zu merken, nix mehr davon, spur nix mehr, spure nix mehr, "
        "wieder weg, ganz weg, komplett weg, alles weg, ist weg, nicht mehr da, net mehr da, nimmer da, wieder "
        "vergangen, ging weg, ging wieder weg, geht wieder weg, aufgehort von alleine, hat nachgelassen, gleich "
        "wieder weg, wieder vorbei, schnell vorbei, nach ein paar sekunden weg, nach einer minute weg, ist vorbei, "
        "schon wieder weg, nichts mehr zu spuren, nichts mehr zu merken, nichts mehr davon, wieder abgeklungen, "
        "spure nichts mehr davon, merke nichts mehr davon, spure nichts mehr, merke nichts mehr"
    ),
    "fine": (
        "gut|ok|okay|oke|okey|super|prima|klasse|toll|bestens|perfekt|wunderbar|spitzenmassig|guad|tiptop|"
        "einwandfrei|hervorragend|fein|schones|schone|locker|entspannt|normal|problemlos|geil|lauft|lief|cool|"
        "herrlich|fit|gerne|gern|gute|guter|gutes|guten|glucklich|zufrieden|gelenkig|beweglich|frisch|gutgetan|"
        "wohlgetan, spitze gelaufen, alles gut, alles ok, alles okay, alles bestens, alles fein, mega gut, keine "
        "probleme, kein problem, ohne probleme, alles super, alles prima, alles klar, alles paletti, in ordnung, "
        "alles in ordnung, angenehm locker, lief alles, wohl gefuhlt, tut gut, tut so gut, tat gut, tat so gut, tat "
        "richtig gut, hat gut getan, gut getan"
    ),
    "relaxed": "gelost|gelockert|lockerer",
    "great": "grossartig|fantastisch|genial, hammer gut",
    "no time": (
        "zeitmangel|zeitnot|zeitdruck|zeitgrunde|zeitprobleme|zeitproblem, keine zeit, keine zeit gehabt, zu wenig "
        "zeit, wenig zeit, zeitlich nicht, zeit fehlt, fehlt die zeit, fehlte die zeit, keine zeit mehr, nicht genug "
        "zeit, nicht genugend zeit, koa zeit, kei zyt, kei ziit, kei zit, keine minute, keine minute zeit, zeit hat "
        "nicht gereicht, zeit reichte nicht, zeit war knapp, zeit zu knapp, zeit knapp, zeitlich knapp, zeitlich "
        "eng, aus zeitgrunden, keine freie minute, zeit ist mir davongelaufen, zeit lief davon, kaum zeit, zeit "
        "reicht nicht, knapp dran, zeit ausgegangen, mangels zeit, koi zeit, keene zeit, knappe zeit, wegen zeit, "
        "keine ruhige minute, zeit nicht gefunden, keine zeit gefunden, zeit war zu knapp, ka zeit"
    ),
    "only had time for": "hatte nur zeit fur, nur zeit fur, zeit nur fur",
    "meeting": "meeting|meetings|besprechung|besprechungen|konferenz|sitzungen|elternabend",
    "appointment": (
        "arztbesuch|behordengang|termin|termine|arzttermin|zahnarzttermin|zahnarzt|friseurtermin|verabredung, beim "
        "arzt, beim zahnarzt, beim friseur, bei der arztin, auf dem amt"
    ),
    "a call": "anruf|call|calls|telefonat|telefonkonferenz|videokonferenz",
    "exam": "prufungsstress|prufungsphase|lernstress|unterricht|prufung|prufungen|klausur|klausuren|abgabe",
    "at work": "im buro, auf arbeit, auf der arbeit, in der arbeit, bei der arbeit",
    "had to work": "musste arbeiten, muss arbeiten, arbeiten mussen, gmiasst arbeiten",
    "worked late": "uberstunden|durchgearbeitet, lange gearbeitet",
    "had to leave": (
        "losmussen|wegmussen, musste ich los, musste ich weg, musste ich gehen, musste dann los, musste dann weg, "
        "musste los, musste weg, musste gleich los, musste schnell weg, muss los, schon los"
    ),
    "too busy": (
        "beschaftigt|stress|stressig|gestresst|hektisch|hektik|eilig|eile|dienst|fruhdienst|spatdienst|nachtdienst|"
        "nachtschicht|spatschicht|fruhschicht|schicht|doppelschicht|deadline|lernen|vorlesung|uni|arbeiten|"
        "gearbeitet|job|kita|haushalt|homeoffice|ausgebucht, zu viel zu tun, viel zu tun, viel um die ohren, zu "
        "beschaftigt, stressiger tag, in eile, im stress, viel los, zu viel los, volles haus arbeit, voller tag, hab "
        "viel um die ohren, land unter, verschlafen und eilig, zu spat dran, spat dran, spat heimgekommen, spat nach "
        "hause, musste lernen, schule bis spat, stressig heute, zu viel arbeit, viel arbeit, zuviel arbeit, zug "
        "erwischen, bus erwischen, keinen freien moment, kinder abholen, kind abholen, zur kita, zu viel stress, "
        "viel stress, stress auf arbeit, wegen arbeit, wegen der arbeit, arbeit zu viel, zu voll, zum zug, "
        "dienstreise stress, in der arbeit hangen geblieben, hangengeblieben im buro, langer arbeitstag, langer tag, "
        "lange im buro, ins buro, zur arbeit, schaffe es zeitlich nicht, zeitlich nicht geschafft, zeitlich nicht "
        "hinbekommen, ging sich nicht aus, geht sich nicht aus, ned ausgegangen, geht si ned aus"
    ),
    "work": "arbeit|buro|arbeitstag|hackn|hockn|oarbeit, schaffen mussen",
    "too hard": (
        "zuviel|uberfordert|uberforderung|uberfordernd|schwierig|schwer|anstrengend|erschopft|erschopfend|"
        "erschopfung|ausgepowert|ausgelaugt|unmoglich|platt|anspruchsvoll|zvui, zu schwer, zu schwierig, zu "
        "anstrengend, zu hart, zu heftig, zu intensiv, zu viel, zu streng, zu lang, zu lange einheit, zu "
        "kompliziert, zu steil, zu schnell, schwere ubung, schwere ubungen, sehr anstrengend, sehr schwer, fix und "
        "fertig, fix und foxi, kraft ausgegangen, kraft reichte nicht, nicht stark genug, nicht beweglich genug, "
        "nicht gelenkig genug, nicht mitgekommen, komme nicht hinterher, kam nicht mit, unmoglich fur mich, nicht "
        "halten, nicht mehr halten, ging nicht mehr, ging nicht, geht nicht, gehen nicht, gingen nicht, klappt "
        "nicht, hat nicht geklappt, klappte nicht, nicht geklappt, packe ich nicht, pack ich nicht, pack i ned, "
        "keine kondition, zu fordernd, kraft am ende, am ende meiner kraft, total fertig, vollig fertig, voll "
        "fertig, kaputt danach, viel zu schwer, viel zu anstrengend, viel zu hart, zu schwere, zu schwar, zu hoass "
        "nein, zu anspruchsvoll, nicht hinbekommen zu schwer, hart heute, zu fest anstrengend, gleichgewicht nicht "
        "gehalten, zu tief, nicht runtergekommen, zu gach, net gschafft zu schwer, z schwer, z strang, z viel, z "
        "schwar, ganz schon schwer, ziemlich schwer, ziemlich anstrengend, recht anstrengend, z hart, zu schwa, uber "
        "meine krafte, krieg ich nicht hin, kriege ich nicht hin, bekomme ich nicht hin"
    ),
    "no motivation": (
        "unmotiviert|antriebslos|lustlos|motivationsloch|motivationslos|demotiviert, keine lust, null bock, kein "
        "bock, keinen bock, keine motivation, keinen antrieb, kein antrieb, null motivation, nicht motiviert, "
        "motivation gefehlt, motivation fehlt, motivation war weg, koan bock, ka lust, kei luscht, kei lust, keine "
        "laune, nicht in stimmung, keine lust gehabt, koa lust, kein antrieb heute"
    ),
    "lazy": "faul|faulheit|schweinehund|gefaulenzt|faultag|gammeltag, zu faul, innerer schweinehund, fauler tag",
    "too tired": (
        ""
        "mude|muad|todmude|hundemude|ubermudet|mud|schlafrig|mudigkeit, zu mude, zu kaputt, zu erschopft, zu fertig, "
        "keine energie, keine musse, keinen nerv, keine nerven, kaputt heute, mog ned, mag nicht, mag heute nicht, "
        "will heute nicht, nicht aufraffen konnen, nicht aufgerafft heute, konnte mich nicht aufraffen"
    ),
    "forgot": (
        "vergessen|vergass|verpeilt|verplant|vergesse|vagessn|verschwitzt|vergasse|vergessn|untergegangen|vergesssen|"
        "vergesen, verschwitzt vergessen, nicht dran gedacht, nicht daran gedacht, nicht mehr dran gedacht, ned dra "
        "dacht, total verschwitzt, aus dem kopf gegangen"
    ),
    "overslept": (
        "verschlafen|verpennt|verschlofn|verschlafe|verpenndt, zu lang geschlafen, zu lange geschlafen, lang "
        "geschlafen, lange geschlafen, wecker nicht gehort, wecker uberhort, ausgeschlafen zu lang, zu spat "
        "aufgestanden, wecker nicht geklingelt, spat aufgestanden"
    ),
    "travelling": (
        "unterwegs|reise|reisen|dienstreise|geschaftsreise|verreist|flug|flughafen|stau|auswarts|hotel|jetlag|"
        "unterwags|camping, auf reisen, im zug, im flieger, im flugzeug, auf der autobahn, im auto, im bus, im stau, "
        "im hotel, zug verspatung, am flughafen, auf fahrt, beim campen, hab im zug gesessen"
    ),
    "visitors": (
        "besuch|gaste|schwiegereltern|verwandte|handwerker|klempner|elektriker|monteur|besucher|familienbesuch, "
        "besuch da, besuch gehabt, besuch bekommen, familie da"
    ),
    "party": (
        "party|feier|geburtstag|geburtstagsfeier|hochzeit|familienfeier|taufe|konfirmation|kommunion|gefeiert|"
        "weihnachten|grillfest|grillen|fasching|karneval|oktoberfest|wiesn|betriebsfeier|weihnachtsfeier|geburi"
    ),
    "funeral": "beerdigung|trauerfeier|begrabnis|todesfall|trauerfall",
    "moving house": "umzug|umziehen|umgezogen",
    "no mat": (
        "stromausfall, keine matte, ohne matte, matte vergessen, kein band, kein theraband, keine gerate, kein "
        "equipment, keine ausrustung, kein platz, keinen platz, zu wenig platz, band vergessen, koan platz, kein "
        "internet, kein netz, kein wlan, kein empfang, kein strom, internet weg, akku leer, handy leer, handy "
        "kaputt, video ging nicht, kein video, link kaputt, link funktioniert nicht, matte nicht dabei, hab keine "
        "matte dabei, handy aus, app kaputt, internet ausgefallen, video ladt nicht, handy war leer, handy war aus, "
        "handy war kaputt, akku war leer, internet ging nicht, video lief nicht, theraband nicht dabei, band gerissen"
    ),
    "too hot": "hitze|hitzewelle, zu heiss, zu schwul, zu warm, viel zu heiss",
    "hangover": "kater|verkatert|katerstimmung",
    "my child is sick": (
        "kind krank, kind ist krank, kinder krank, tochter krank, sohn krank, tochter ist krank, sohn ist krank, "
        "kranke kinder, krankes kind, kleine krank, kleiner krank, kinder sind krank, mein kind ist krank, meine "
        "tochter ist krank, mein sohn ist krank, tochter hat fieber, sohn hat fieber, kind hat fieber, kind mit "
        "fieber, baby hat fieber, kind fiebert, die kleine hat fieber, der kleine hat fieber, mein sohn hat fieber, "
        "meine tochter hat fieber, mein kind hat fieber, kind hatte fieber, tochter hatte fieber, sohn hatte fieber, "
        "kinder haben fieber, die kleine ist krank, der kleine ist krank, meine frau ist krank, mein mann ist krank, "
        "mama ist krank"
    ),
    "fell asleep on the sofa": (
        "auf dem sofa eingeschlafen, auf der couch eingeschlafen, vorm fernseher eingeschlafen, vor dem fernseher "
        "eingeschlafen, auf der coach eingeschlafen"
    ),
    "fell asleep at": (
        "bin eingeschlafen, bin sofort eingeschlafen, ich eingeschlafen, beim lesen eingeschlafen, fruh "
        "eingeschlafen, gleich eingeschlafen, gut eingeschlafen, gleich wieder eingeschlafen, schnell eingeschlafen, "
        "wieder eingeschlafen, bin i eigschlofe, fast eingeschlafen, selbst eingeschlafen, sofort eingeschlafen, "
        "kinder eingeschlafen, kind eingeschlafen, baby eingeschlafen, kleine eingeschlafen, dabei eingeschlafen, "
        "fast dabei eingeschlafen, kind ist eingeschlafen, baby ist eingeschlafen, beim dehnen eingeschlafen"
    ),
    "something came up": (
        "dazwischengekommen, was dazwischengekommen, etwas dazwischengekommen, was dazwischen gekommen, kam was "
        "dazwischen, kam etwas dazwischen, dazwischen gekommen, private grunde, privat was"
    ),
    "ill": (
        "krank|kranke|kranklich|erkaltet|erkaltung|grippe|grippal|infekt|schnupfen|husten|verkuhlt|verkaltet|"
        "magendarm|ubelkeit|durchfall|erbrochen|kotzen|gekotzt|ubergeben|migrane|corona|covid|halsweh|halsschmerzen|"
        "bauchschmerzen|bauchweh|magenschmerzen|magenkrampfe|magenverstimmung|bauchkrampfe|krankgeschrieben|"
        "angeschlagen|unwohl|virus|bronchitis|mandelentzundung|lungenentzundung|norovirus|flachgelegen|krankelt|"
        "verschnupft|ohrenentzundung|scharlach|periode|menstruation|regelschmerzen|periodenschmerzen|"
        "unterleibsschmerzen|rotznase|schnupfennase|unpasslich|grippig|nebenhohlen|nebenhohlenentzundung|vakuhlt|"
        "kronk|chrank|verschnupfung|lebensmittelvergiftung|heuschnupfen|allergie|speiubel|sodbrennen|blahungen, mir "
        "ubel, mir schlecht, mir so schlecht, mir so ubel, mir kotzubel, mir schlecht geworden, mir schlecht war, "
        "mir ubel war, grippaler infekt, magen darm, magen darm infekt, ubel schlecht, mir ist schlecht, mir war "
        "schlecht, mir ist ubel, mir war ubel, ist mir schlecht, ist mir ubel, krank geschrieben, angina hals, liege "
        "flach, lieg flach, flach gelegen, liege im bett, krank im bett, im bett krank, fuhle mich nicht gut, fuhl "
        "mich nicht gut, geht mir nicht gut, ging mir nicht gut, gehts mir nicht gut, nicht wohl, fuhle mich nicht "
        "wohl, gesundheitlich nicht, geht mir schlecht, mir geht es nicht gut, mir gehts nicht gut, mir gehts "
        "schlecht, mir geht es schlecht, mir ging es nicht gut, mir gings nicht gut, nicht fit, gar nicht fit, nicht "
        "ganz fit, nicht auf dem damm, eine grippe, hals kratzt, ruckfall krank, magen verdorben, was falsches "
        "gegessen, mir ist kotzubel, mir is schlecht, nicht gut gefuhlt, schlecht gefuhlt"
    ),
    "elsewhere": (
        "woanders|anderswo|woandas, wo anders, andere stelle, anderer stelle, anderen stelle, ganz woanders, an "
        "einer anderen stelle, an anderer stelle, nicht da wo wir dehnen, nicht dort wo wir dehnen, nicht wo wir "
        "dehnen, nicht an der gedehnten stelle, nicht dort wo ich dehne, nicht da wo ich dehne, nicht da wo gedehnt "
        "wird, nicht dort wo gedehnt wird, nicht im gedehnten bereich, nicht vom dehnen, hat nichts mit dem dehnen "
        "zu tun, hat nix mit dem dehnen zu tun, hat nichts mit dem training zu tun, nicht im gedehnten muskel, eine "
        "andere stelle, ganz andere stelle, an einer ganz anderen stelle, nicht die stelle die wir dehnen, nicht da "
        "wo die dehnung ist, nicht die gedehnte stelle"
    ),
    "where we stretch": (
        "da wo wir dehnen, dort wo wir dehnen, wo wir dehnen, genau da wo wir dehnen, genau dort wo wir dehnen, wo "
        "ich dehne, da wo ich dehne, an der gedehnten stelle, genau an der stelle die wir dehnen, da wo gedehnt "
        "wird, dort wo gedehnt wird, im gedehnten muskel, genau dort, genau da, genau an der stelle, genau im "
        "gedehnten muskel, im gedehnten bereich, wo gedehnt wird, genau da wo ich dehne, genau dort wo ich dehne, "
        "genau wo wir dehnen, da wo die dehnung ist, an der stelle die wir dehnen, im muskel den wir dehnen, dort wo "
        "ich dehne"
    ),
    "stop": "stop|stopp, halt stop, aus stop, hor auf, bitte aufhoren zu schreiben",
    "stop messages": (
        "abbestellen|deabonnieren, keine nachrichten mehr, schreib mir nicht mehr, schreib mir nimmer, nicht mehr "
        "schreiben, nicht mehr anschreiben, hor auf zu schreiben, hor auf mir zu schreiben, lass mich in ruhe, lass "
        "mich in frieden, keine weiteren nachrichten, schick mir nichts mehr, schick nichts mehr, bitte keine "
        "nachrichten mehr, nachrichten abbestellen, schickt mir nichts mehr, ich will keine nachrichten mehr, mochte "
        "keine nachrichten mehr, horen sie auf mir zu schreiben, schreiben sie mir nicht mehr, hor auf mit den "
        "nachrichten, nachrichten stoppen, keine sms mehr, schreibt mir nicht mehr"
    ),
    "pause": (
        "pause|pausieren|pausiere|unterbrechung|pauschen|urlaub|pausiert|ferien|trainingspause|pausa, eine pause, "
        "ein pause, pause machen, pause bitte, bitte pausieren, brauche eine pause, brauch eine pause, brauche "
        "pause, eine woche pause, zwei wochen pause, pause einlegen, eine pause einlegen, im urlaub, in urlaub, in "
        "den urlaub, bin im urlaub, fahre in den urlaub, fahre in urlaub, fahr in urlaub, urlaub bis, pausieren bis, "
        "bin verreist bis, bin nicht da bis, nachste woche nicht da, nachste woche weg, in den ferien, in die "
        "ferien, aussetzen bis, auf eis legen, auf eis, eine woche aussetzen, zwei wochen aussetzen, ein paar tage "
        "pause, paar tage pause, einen monat pause, bin nachste woche weg, bin zwei wochen weg, bin eine woche weg"
    ),
    "a short break": "pausen|pausentaste, kurze pause, kleine pause, zwischen den pausen",
    "change the time": (
        "andere zeit, anderen zeitpunkt, andere tageszeit, uhrzeit andern, zeit andern, uhrzeit verschieben, zeit "
        "verschieben, uhrzeit umstellen, zeit umstellen, uhrzeit wechseln, zeit wechseln, fruher schicken, spater "
        "schicken, nachricht fruher, nachricht spater, nachrichten fruher, nachrichten spater, die nachricht um, "
        "nachrichten um, lieber morgens, lieber abends, lieber am abend, lieber am morgen, lieber mittags, lieber "
        "nachmittags, lieber in der fruh, lieber um, lieber fruher, lieber spater, auf abends, auf abends "
        "verschieben, auf den abend, auf morgens, auf den morgen, zu fruh fur mich, zu spat fur mich, schick es um, "
        "schick mir um, schick es mir um, schicke es um, schicken sie es um, schicken um, schick um, eine stunde "
        "spater, eine stunde fruher, stunde spater, stunde fruher, halbe stunde spater, halbe stunde fruher, zu "
        "einer anderen zeit, zu einer anderen uhrzeit, ab morgen um, ab jetzt um, ab sofort um, kunftig um, in "
        "zukunft um, bitte um uhrzeit, erinnerung um, erinnerung fruher, erinnerung spater, erinnere mich um, "
        "uhrzeit auf, zeit auf, umstellen auf, verlegen auf, termin andern, schick mir das spater, schick mir das "
        "fruher, schick mir das training um, schick die einheit um, schick das um, melde dich um, schreib mir um, "
        "schreib um, schreib mir lieber um, schreib mir lieber abends, schreib mir spater, schreib mir fruher, "
        "andere zyt, andere ziit, zeit auf abends, kann ich die nachricht um, uhrzeit anpassen, zeit anpassen, "
        "uhrzeit zu fruh, uhrzeit zu spat, sonntags keine nachricht, am wochenende keine nachricht, die nachricht "
        "lieber, nachrichten lieber, die nachrichten lieber, schick mir die nachricht um, schick mir die nachrichten "
        "um, schick die nachricht um, nachricht bitte um, die nachricht bitte um"
    ),
    "pregnant": "schwanger|schwangerschaft",
    "surgery": "operation|op|operiert|operieren|operationen, frisch operiert, op gehabt",
    "an operation": "ops",
    "diagnosed": (
        "diagnose|diagnostiziert|bandscheibenvorfall|arthrose|osteoporose|thrombose|herzschrittmacher|schrittmacher|"
        "krebs|diabetes|rheuma|blutverdunner|chemo|arthritis|embolie|bandscheibe|stent|bypass|herzkrank, huft op, "
        "knie op"
    ),
    "broken": "gebrochen|bruch|brochn|gebrochener|gebrochenes|fraktur|broche",
    "new medication": (
        "neue medikamente, neues medikament, neue tabletten, medikament bekommen, medikamente bekommen, neues medi"
    ),
    "health has changed": (
        "gesundheit hat sich geandert, gesundheitlich hat sich was geandert, gesundheitlich geandert, gesundheitlich "
        "etwas geandert, gesundheitszustand hat sich geandert, an meiner gesundheit, gesundheitliche veranderung, "
        "gesundheitliche anderung, gesundheitlich verandert, gesundheitlich hat sich etwas geandert"
    ),
    "doctor said": (
        "arzt hat gesagt, arzt sagt, arztin sagt, arztin hat gesagt, physio sagt, physio hat gesagt, doktor sagt, "
        "doktor hat gesagt, orthopade sagt, arzt meint, hausarzt sagt, arzt hat mir verboten, arzt verbietet"
    ),
    "doctor": "arzt|arztin|doktor|orthopade|physio|hausarzt|physiotherapeut|physiotherapeutin|therapeut|doc",
    "help": "hilfe|help, bitte hilfe, brauche hilfe, brauch hilfe",
    "lighter": (
        "leichter|leichtere|leichterer|leichteres|einfacher|einfachere|einfacheres|sanfter|sanftere|schonender|"
        "schonendere|liechter|leichta, leichtere ubungen, leichteres programm, leichtere variante, leichtere "
        "version, leichtere einheit, etwas leichteres, was leichteres, was leichtes, einfachere ubungen, einfachere "
        "version, weniger schwer, weniger intensiv, geht es leichter, gehts leichter, bitte leichter, etwas "
        "leichter, bisschen leichter, weniger anstrengend, was einfacheres, etwas einfacheres"
    ),
    "shorter": (
        "kurzer|kurzere|kurzeres|kirza|churzer, kurzere einheit, etwas kurzeres, was kurzeres, kurzer bitte, bitte "
        "kurzer, kurzere einheiten, geht es kurzer, gehts kurzer, kurzeres programm, kurzer machen, schnellere "
        "version"
    ),
    "show me today": (
        "was steht heute an, was ist heute dran, was mache ich heute, zeig mir heute, zeig heute, zeige mir heute, "
        "zeig mir die einheit, zeig mir das training, schick nochmal, schick es nochmal, nochmal schicken, bitte "
        "nochmal schicken, nochmal senden, was kommt heute, was muss ich heute machen, was soll ich heute machen, "
        "schick mir die einheit, schick mir das training, schick mir die ubungen, schick mir die heutige einheit, wo "
        "ist die heutige einheit, heutige einheit bitte, was gibts heute, zeig mir die ubungen, schick mir nochmal, "
        "schick mir die einheit nochmal, heutige ubungen bitte, zeig mir die heutige einheit, zeig mir das heutige "
        "training, was ist heute das programm"
    ),
    "thanks": (
        "danke|dankeschon|merci|dankscheen|danka|dangge|thx|bedankt|thanks, danke schon, vielen dank, danke dir, "
        "danke ihnen, merci vilmal, dank dir, besten dank, herzlichen dank, danke sehr, danke vielmals, tausend "
        "dank, vergelts gott"
    ),
    "quit the programme": (
        "will damit aufhoren, mochte damit aufhoren, damit aufhoren, "
        "aussteigen|abmelden|kundigen|kundige|kundigung|austragen, programm beenden, das programm beenden, will das "
        "programm beenden, programm abbrechen, das programm abbrechen, aus dem programm aussteigen, steige aus, ich "
        "steige aus, steig aus, bin raus, ich bin raus, melde mich ab, bitte abmelden, melde mich hiermit ab, ich "
        "kundige, hiermit kundige ich, will aufhoren, ich will aufhoren, mochte aufhoren, ich mochte aufhoren, nicht "
        "mehr mitmachen, will nicht mehr mitmachen, will nicht mehr, mochte nicht mehr, ich mag nimmer, mag nicht "
        "mehr mitmachen, mache nicht mehr mit, mach nicht mehr mit, hore mit dem programm auf, hore auf mit dem "
        "programm, hor auf mit dem programm, fertig mit dem programm, schluss mit dem programm, mit dem programm "
        "aufhoren, programm kundigen, programm stoppen, das programm verlassen, programm verlassen, nichts fur mich, "
        "das ist nichts fur mich, ist nichts fur mich, nix fur mich, will nicht weitermachen, mochte nicht "
        "weitermachen, nicht mehr weitermachen, nicht weitermachen, losche mich, account loschen, konto loschen, "
        "meine daten loschen, nehmt mich raus, nimm mich raus, nimm mich von der liste, will raus, ich will raus, "
        "ich gebe auf mit dem programm, breche das programm ab, brech das programm ab, beende das programm, ich "
        "beende das programm, ich beende hiermit, trage mich aus, trag mich aus, bitte austragen, will mich "
        "abmelden, mochte mich abmelden, mich abmelden, programm aufgeben, gebe das programm auf, i mog nimma, ich "
        "hore auf, ich hor auf, hor ganz auf, hore ganz auf, komplett aufhoren, ganz aufhoren, will nimmer, mag "
        "nimma mitmachen, keine lust mehr auf das programm, hab genug von dem programm, von dem programm genug, mit "
        "dem bot fertig, reicht mir mit dem programm"
    ),
    "chest opener": (
        "brustdehnung|brustdehnungen|brustoffner|brustoffnung|herzoffner|brustmuskeldehnung|brustdehner|brustubung|"
        "brustubungen|brustmuskel|brustmuskeln|brustmuskulatur, brust dehnung, brust dehnen, brust offnen, "
        "brustwirbelsaule mobilisieren, dehnung der brust"
    ),
    "knees to chest": (
        "knie zur brust, knie an die brust, knie zum brustkorb, knie zu brust, knie an brust, knie auf die brust, "
        "kinn zur brust, kinn auf die brust, knie richtung brust, kinn an die brust"
    ),
    "neck rolls": (
        "nackenrollen|nackenkreisen|kopfkreisen|halsdehnung|nackendehnung|nackendehnungen|nackenubung|nackenubungen|"
        "kopfrollen, nacken dehnen, nacken dehnung"
    ),
    "shoulder rolls": (
        "schulterkreisen|schulterrollen|schulterdehnung|schulterdehnungen|schulterubung|schulterubungen|armkreisen"
    ),
    "calf stretch": "wadendehnung|wadendehnungen|wadendehner|wadenubung|wadenheben, waden dehnen, wade dehnen",
    "hip opener": (
        "huftoffner|huftdehnung|huftbeugerdehnung|huftkreisen|huftubung|huftubungen|huftdehnungen, huftbeuger dehnung"
    ),
    "hamstring stretch": (
        "beinbeugerdehnung|oberschenkeldehnung|beindehnung|ruckseitendehnung|beinruckseitendehnung, oberschenkel "
        "dehnung, oberschenkel dehnen"
    ),
    "cat cow": "katzenbuckel, katze kuh, katze und kuh, katzen kuh",
    "downward dog": "herabschauender hund, herabschauenden hund, herabschauende hund, hund ubung, den hund gemacht",
    "child pose": "kindhaltung|kindspose|kinderhaltung|kindeshaltung|kindstellung|kinderstellung",
    "cobra": "kobra|taubenstellung|taubenhaltung|taubenpose, taube ubung, die taube war",
    "lunges": "ausfallschritt|ausfallschritte|lunges",
    "planks": "plank|planks|unterarmstutz|unterarmstutzen",
    "squats": "kniebeugen|kniebeuge|squats",
    "foam roller": "blackroll|faszienrolle|rolle",
    "jaw release": "kieferlockerung|kieferdehnung",
    "hip circles": "beckenkreisen|beckenkippen, becken kreisen",
    "back stretch": (
        "ruckendehnung|ruckenubungen|ruckenubung|ruckendehnungen|beindehnungen|beinubungen|fusskreisen|fussubungen|"
        "knieubungen|armubungen|handgelenkskreisen, rucken dehnen"
    ),
    "mat": "matte|yogamatte|isomatte",
    "band": "theraband|gummiband|widerstandsband|fitnessband|band",
    "phone": "handy|telefon|smartphone",
    "xx": (
        "herzlich|herzliche|herzlichen|herzallerliebst|herzblut|beherzt|herzchen|herzensangelegenheit|"
        "halsbrecherisch|beinbruch|kopfuber|kopfsache|ruckenwind|nervt|nervig|nervensage|nervenaufreibend|"
        "nervenkitzel|nervos|nervtotend|brieftaube|brieftauben|taubenschlag|taubendreck|taubstumm|taubenzuchter|"
        "taubblind|friedenstaube|muckenstich|muckenstiche|bienenstich|wespenstich|wespenstiche|insektenstich|"
        "zeckenstich|stichsage|stichwort|stichtag|hervorgestochen|rasenmaher|rasenmahen|spargelstechen|brandneu|"
        "brandheiss|brennholz|angebrannt|ausgebrannt|burnout|durchgebrannt|sonnenbrand|abgebrannt|lagerfeuer|"
        "waldbrand|luftballon|geduldsfaden|zusammengerissen|zusammenreissen|mitgerissen|hingerissen|abriss|umriss|"
        "knaller|knallhart|knallvoll|knallrot|durchgeknallt|knallbonbon|knalleffekt|korken|feuerwerk|boller|"
        "knacknuss|popcorn|reissverschluss|leistungsdruck|termindruck|blutdruck|reifendruck|luftdruck|wasserdruck|"
        "hochdruck|ausdruck|eindruck|ausgedruckt|ausdrucken|gedruckt|drucker|handedruck|atemberaubend|atemubung|"
        "atemubungen|atempause|atmosphare|durchgeatmet|atemzuge|atemzug|dickkopfig|faustdick|mehlschwitze|blaulicht|"
        "rotwein|aufgewarmt|warmflasche|warmup|blaumachen|barenstark|schwachsinn|schwachstelle|willensschwach|"
        "lahmgelegt|totgelacht|schlappgelacht|sternstunde|sterbenslangweilig|todlangweilig|schwarzfahren|schwindeln|"
        "geschwindelt|schwindelfrei|schwindelerregend|schwindelerregende|schwindelerregender|schwindler|temperaturen|"
        "aussentemperatur|raumtemperatur|mitgefiebert|lampenfieber|reisefieber|fussballfieber|goldfieber|"
        "heuschnupfenfieber|fieberhaft|fiebere|jagdfieber|wettfieber|fieberthermometer|stromrechnung|elektroauto|"
        "strahle|strahlende|sonnenstrahlen|eigentor|schiessstand|schutzenfest|messerscharf|blitzschnell|"
        "blitzgewitter|spitzenklasse|stichprobe|bauchgefuhl|ameisenplage|ameisenstrasse|stricknadeln|nahnadeln|"
        "tannennadeln|akupunktur|fichtennadeln|dumpfbacke|schiefgelaufen|schiefgegangen|hangengeblieben|abgehangt|"
        "abhangen|rumhangen|rumgehangen|hangematte|durchgehangen|angesprochen|besprochen|versprochen|gesprochen|"
        "bespreche|fremdsprache|sprachlos|sprachkurs|blindlings|blinddarm|toilettenpause|kontrolltermin|kontrolleur|"
        "fuhrerscheinkontrolle|herzkirschen|schlagermusik|geschwitzt|schwitzt|schweisstreibend|angezogen|ausgezogen|"
        "eingezogen|vorgezogen|aufgezogen|gezogene|bezogen|erzogen|popmusik|popsongs|fertiggericht|fertigpizza|spass|"
        "saubergemacht, herz drangehangt, mit herz, von herzen, am herzen, herz und seele, mit viel herz, herzen "
        "gern, liebes herz, ans herz, ins herz geschlossen, schweren herzens, auf dem herzen, lachenden herzens, "
        "herz aufgegangen, das herz am rechten fleck, herz auf der zunge, herz schlagt hoher, herz schlagt fur, mein "
        "herz gehort, herz hoher, herz lacht, herz hat gelacht, herz hat mir gelacht, todmude gestern, hals uber "
        "kopf, den hals voll, hals und beinbruch, "
        "kein beinbruch, hand aufs herz, auf eigene faust, unter der hand, hand in hand, von der hand, zur hand, im "
        "handumdrehen, kopf hoch, kopf voll, kopf frei, uber kopf, nicht auf den kopf, auf den kopf, aus dem kopf, "
        "auf die schulter geklopft, schulter geklopft, auf schulterhohe, rucken an rucken, rucken freigehalten, den "
        "rucken frei, den rucken gestarkt, hinter meinem rucken, auf den beinen, auf die beine, wieder auf den "
        "beinen, mit beiden beinen, auf einem bein, bein gestellt, mit dem falschen fuss aufgestanden, mit dem "
        "linken fuss aufgestanden, kalte fusse, kalte fusse bekommen, auf grossem fuss, zu fuss, auf dem fusse, fuss "
        "fassen, fusse hoch, fusse hochgelegt, mit den fussen voran, auf zehenspitzen, finger weg, mit links, daumen "
        "hoch, daumen gedruckt, daumen drucken, druck mir die daumen, drucke die daumen, die daumen, auf die nerven, "
        "geht mir auf die nerven, auf den keks, nerven wie drahtseile, mit den nerven, nerven behalten, die nerven, "
        "meine nerven, letzten nerv, den letzten nerv, nerven gekostet, taube nuss, die tauben, tauben futtern, "
        "tauben gefuttert, tauben auf, eine taube, tauben ohren, taube ohren, auf taube ohren, weisse taube, tauben "
        "vertrieben, taub auf dem ohr, taub auf einem ohr, taub auf beiden ohren, taub vom konzert, die taube auf, "
        "zwei tauben, ohren taub, ohr taub, tauber opa, tauber oma, tauber hund, oma ist taub, opa ist taub, die "
        "taube, stich gelassen, im stich gelassen, im stich, stiche beim skat, ins auge gestochen, sticht ins auge, "
        "sticht heraus, sticht hervor, sticht in see, in see gestochen, rasen mahen, rasen gemaht, den rasen, der "
        "rasen, im rasen, rasen sprengen, von der biene gestochen, biene hat mich gestochen, mucke hat mich "
        "gestochen, mucken gestochen, von mucken gestochen, spargel gestochen, spargel stechen, torf gestochen, "
        "biene gestochen, wespe gestochen, mucke gestochen, mucke sticht, tattoo gestochen, bier gestochen, brennt "
        "darauf, brenne darauf, brannte darauf, brennende frage, kerze brennt, licht brennt, sonne brennt, brennt "
        "die sonne, dvd gebrannt, cd gebrannt, schnaps gebrannt, gebrannte mandeln, essen angebrannt, es brennt im "
        "buro, brennt im buro, brennt auf der arbeit, brennt die hutte, wo brennts, sicherung durchgebrannt, "
        "kalorien verbrannt, fett verbrannt, kalorien verbrennen, feuer und flamme, feuer im ofen, brennen fur, "
        "brenne fur, sonne brannte, augen brennen von, augen brennen vor, augen brennen vom, eingeschlafene fusse "
        "langweilig, wie eingeschlafene fusse, schmeckt wie eingeschlafene fusse, kontakt eingeschlafen, projekt "
        "eingeschlafen, gesprach eingeschlafen, pc eingeschlafen, ballon geplatzt, ballon platzte, termin geplatzt, "
        "reifen geplatzt, platzt gleich, kragen geplatzt, seil gerissen, band ist gerissen, theraband gerissen, "
        "faden gerissen, geduldsfaden gerissen, hose gerissen, hose ist gerissen, reiss mich zusammen, riss in der "
        "hose, riss in der wand, witze gerissen, aus dem bett gerissen, hin und her gerissen, schnursenkel gerissen, "
        "gummiband gerissen, riss mich zusammen, hab mich zusammengerissen, papier gerissen, tute gerissen, matte "
        "gerissen, band gerissen theraband, kette gerissen, krach gehabt, krach mit, krach im treppenhaus, krach der "
        "nachbarn, krach draussen, silvester knaller, tur zugeknallt, tur knallte, das war der knaller, voll der "
        "knaller, bis es kracht, sekt knallte, korken knallte, geknallt an silvester, harte nuss, die nuss geknackt, "
        "geknackt die nuss, rekord geknackt, den code geknackt, code geknackt, jackpot geknackt, marke geknackt, "
        "10000 schritte geknackt, knackig kurz, knackige einheit, gewitter gekracht, matte reisst, abgerissener "
        "knopf, knopf abgerissen, nusse geknackt, rekord gerissen, termin gerissen, stuhl gekracht, stuhl "
        "zusammengebrochen, stuhl umgefallen, vase umgefallen, glas umgefallen, fahrrad umgefallen, hund umgefallen, "
        "fernseher schwarz, bildschirm schwarz, handy umgefallen, flasche umgefallen, baum umgefallen, server "
        "zusammengebrochen, server abgesturzt, internet zusammengebrochen, verkehr zusammengebrochen, vor lachen "
        "zusammengebrochen, vor lachen umgefallen, vor lachen umgekippt, fast umgefallen vor lachen, fast umgekippt "
        "vor lachen, umgefallen vor lachen, milch umgekippt, blumentopf umgekippt, stimmung umgekippt, stimmung "
        "kippte, fast umgefallen als, bin fast umgefallen als, beim preis fast umgefallen, todmude umgefallen, "
        "todmude ins bett gefallen, sack reis umgefallen, stuhle umgefallen, druck auf arbeit, druck auf der arbeit, "
        "druck im job, zeitlich unter druck, unter druck, ohne druck, druck machen, kein druck, keinen druck, mach "
        "mir keinen druck, druck vom chef, druck dich, druck den knopf, knopf gedruckt, falsch gedruckt, taste "
        "gedruckt, mich gedruckt, mich davor gedruckt, vorm dehnen gedruckt, druck auf, drucken auf den knopf, druck "
        "mich, drucke mich, preis drucken, chef macht druck, macht druck, druck gemacht, tief durchgeatmet, atemlos "
        "durch die nacht, frische luft, an der luft, luft geschnappt, frische luft geschnappt, in die luft, dicke "
        "luft, luft nach oben, luft raus, die luft ist raus, halt die luft an, an der frischen luft, luft holen "
        "frisch, dickes lob, dicke umarmung, dicker kuss, dicker schmatz, dickes danke, dicke socken, dicke freunde, "
        "dicke matte, dickes kissen, dicker pulli, dickes buch, durch dick und dunn, es dicke, dicke eier, dicker "
        "verkehr, dick angezogen, dick eingepackt, dicke jacke, dickes dankeschon, dicke decke, dicken kopf, dicker "
        "kopf, dickes fell, dick im kalender, stolz geschwellt, geschwellte brust, geschwellter brust, mit stolz "
        "geschwellter brust, fluss angeschwollen, bach angeschwollen, prallen sonne, pralle sonne, pralle leben, "
        "fluss geschwollen, geschwollen geredet, geschwollen daherreden, redet geschwollen, geschwollene sprache, "
        "geschwollen daher, rein geschwollen, dicke luft im buro, dick beschaftigt, dick und rund, dicke hose, dicke "
        "post, dicke suppe, dicke regentropfen, dicke wolken, dicke nebel, dicke uberraschung, dicke auftrag, zu "
        "dick aufgetragen, dick aufgetragen, der bach ist angeschwollen, der fluss ist angeschwollen, blauer himmel, "
        "blauen himmel, blauer montag, blau gemacht, blau machen, blaue stunde, ins blaue, himmel blau, himmel ist "
        "blau, blaues band, blaue matte, blaue hose, war blau, blau vom himmel, mit einem blauen auge davongekommen, "
        "blaue band, blaues wunder, blaue socken, lila matte, lila socken, lila leggings, lila band, blauen band, "
        "rotes band, rote band, rote matte, rote socken, rot geworden vor, rote ampel, rotes kreuz, rote zahlen, "
        "roter faden, warme dusche, warmes wetter, warm gemacht, warm gelaufen, warm draussen, draussen warm, warm "
        "hier, heiss hier, heiss draussen, heiss auf, heisser tee, heisse dusche, heiss geduscht, warm geduscht, "
        "heissen tag, heisser kaffee, warmen tag, warme matte, warm up, heiss im buro, warm im zimmer, heisse phase, "
        "heiss gelaufen, heisses bad, warmes bad, blaue augen, heiss im zimmer, heiss in der wohnung, schwere woche, "
        "schwerer tag, schweren tag, schweres herz, schwere tasche, schwere beine vom, starker regen, starken regen, "
        "starker wind, starker kaffee, starken kaffee, starker verkehr, starke leistung, starke einheit, starkes "
        "programm, starkes training, starker einsatz, stark gemacht, war stark, stark genug, starke ubung, harter "
        "tag, harte woche, heftiges gewitter, heftiger regen, heftige einheit, heftiges training, extrem gut, extrem "
        "gutes, extremer verkehr, schwacher kaffee, schwacher empfang, schwaches wlan, schwaches internet, schwaches "
        "netz, schwacher trost, schwacher moment, schwachen moment, bin schwach geworden, schwach geworden bei, "
        "schwache fur, ich habe eine schwache fur, schwach geworden und kuchen, kaffee war schwach, akku schwach, "
        "wlan schwach, lahme ente, lahmes internet, lahmes netz, lahme ausrede, lahmgelegt bahn, verkehr lahmgelegt, "
        "bahn lahmgelegt, internet lahm, lahmes wlan, schwache fur schokolade, kaffee schwach, schwache leistung, "
        "schwache ausrede, schwacher akku, ohnmachtig vor wut, ohnmachtig vor lachen, fast ohnmachtig vor lachen, "
        "fast ohnmachtig geworden als ich den preis, fast ohnmachtig als, tot umgefallen, lachen umgefallen, zum "
        "umfallen mude, zum umfallen, rennt mir die zeit davon, todmude umgekippt, tot ins bett, bringt mich um, "
        "bringt mich noch um, hat mich umgebracht, killt mich, hat mich gekillt, tot gelacht, kaputt gelacht, tranen "
        "gelacht, mich umgehauen, hat mich umgehauen, haut mich um, vom hocker gehauen, zum sterben langweilig, "
        "gestorben vor langeweile, vor langeweile gestorben, fast gestorben, ich sterbe, bin tot, schwarz gesehen, "
        "sehe schwarz fur, seh schwarz fur, schwarzer kaffee, schwarzen kaffee, schwarz weiss, schwarzes shirt, "
        "schwarze matte, schwindel aufgeflogen, so ein schwindel, geschwindelt beim, schwindelnden hohen, will nicht "
        "schwindeln, ohne zu schwindeln, ohne schwindeln, bin schwindelfrei, temperatur draussen, temperatur im "
        "zimmer, fiebere mit, mitgefiebert beim, wm fieber, fieber ich entgegen, fiebere entgegen, em fieber, "
        "schwindelig vor gluck, schwindelig vor freude, schwindlig vor freude, kopf raucht, steuerbescheid "
        "ohnmachtig, fieber der tochter, in stromen, strom weg, strom ist weg, strom war weg, strom ausgefallen, "
        "elektrisches klavier, elektrische zahnburste, elektrischer rollstuhl, elektrisch auto, e bike, elektrische "
        "heizung, vor freude strahlen, strahlt die sonne, sonne strahlt, strahlender sonnenschein, strahlendes "
        "wetter, strahlen der sonne, strahlt ubers ganze gesicht, ubers ganze gesicht, foto geschossen, foto "
        "schiessen, fotos geschossen, tor geschossen, tore geschossen, tor schoss, ubers ziel hinausgeschossen, "
        "schiesst tore, bock geschossen, scharf gegessen, scharfes essen, scharfe sosse, scharfes messer, scharfe "
        "kritik, scharf gewurzt, zu scharf, scharfe suppe, scharf auf, scharfes curry, scharf nachgedacht, scharfe "
        "kurve, scharfes chili, plotzlich besuch, plotzlicher termin, plotzlich regen, plotzlich geregnet, plotzlich "
        "angerufen, plotzlich klingelte, plotzlich war die zeit, auf einmal besuch, blitz und donner, spitze "
        "einheit, einsame spitze, spitze gemacht, war spitze, ist spitze, echt spitze, auf der spitze, spitzen "
        "training, das war spitze, war super spitze, rasend schnell, elektrisches rollo, rollo elektrisch, "
        "schmetterlinge im bauch, kribbeln im bauch, kribbelt im bauch vor, kribbeln im bauch vor, kribbelt vor "
        "vorfreude, kribbeln vor vorfreude, kribbelt schon vor vorfreude, kribbelt vor freude, kribbeln vor freude, "
        "kribbelt vor aufregung, kribbeln der vorfreude, kribbelt es mir in den fingern zu, in den fingern "
        "loszulegen, hummeln im hintern, ameisen in der kuche, ameisen auf der terrasse, ameisen im garten, ameisen "
        "im haus, ameisen in der wohnung, ameisen in meiner kuche, nadeln vom weihnachtsbaum, nadeln gestrickt, "
        "stecknadeln genaht, stecknadel im heuhaufen, wie auf nadeln, auf heissen kohlen, kopf schief, bild hangt "
        "schief, bild hing schief, schief gelaufen, ging schief, schief gegangen, alles schief, lauft alles schief, "
        "hangen geblieben, hangt vom wetter ab, hange hinterher, video hangt, video hing, app hangt, hangt die app, "
        "hangt das video, internet hangt, handy hangt, wlan hangt, wasche hangt, wasche aufgehangt, bleibt hangen, "
        "hing durch, hang etwas durch, hing im stau, hangt davon ab, in den seilen, lasse den kopf hangen, lass den "
        "kopf hangen, kopf hangen, sprechen wir, sprich mit, sprache lernen, deutsche sprache, zur sprache, meine "
        "sprache, mir fehlen die worte, fehlen mir die worte, kann kein deutsch sprechen, nicht viel reden, ohne "
        "viel zu reden, lass uns reden, undeutlich zu horen, video unscharf, bild unscharf, bild verschwommen, foto "
        "verschwommen, video verschwommen, foto unscharf, video war unscharf, video ist unscharf, bild war unscharf, "
        "video war verschwommen, video total verschwommen, brille beschlagen, ohne brille nichts gesehen, ohne "
        "brille unscharf, nichts mehr gesehen von, blind vor, blind date, am klo gewesen, klo geputzt, klo "
        "verstopft, klopapier kaufen, klopapier gekauft, klopapier alle, sterne vom himmel, sprung in der schussel, "
        "schritt fur schritt, schritt halten, schritt weiter, erster schritt, ersten schritt, schritt zuruck, im "
        "schritt tempo, guter schritt, nachster schritt, ein schritt, kleiner schritt, stolpern uber, uber die katze "
        "gestolpert, gestolpert uber, druber gestolpert, stolpert uber, herz stehen geblieben vor schreck, "
        "herzinfarkt vor schreck, fast einen herzinfarkt bekommen, fast herzinfarkt bekommen, fast nen herzinfarkt "
        "bekommen, hab fast einen herzinfarkt gekriegt, von jetzt an, schlaganfall serie, schweiss und tranen, ins "
        "schwitzen, ins schwitzen gekommen, ordentlich geschwitzt, blut und schweiss, viel geschwitzt, gut "
        "geschwitzt, stark geschwitzt, zieht sich hin, zog sich hin, zieht um, zieht ein, ziehe um, ziehen um, "
        "wetter zieht, ziehe durch, ziehs durch, zieh durch, umziehen mussen, umgezogen wohnung, zahn gezogen, zahn "
        "ziehen, den stecker gezogen, bilanz gezogen, es zieht wie hechtsuppe, hat sich gezogen, in die lange "
        "gezogen, wasche aufgehangt fertig, kind hat husten leider, pop musik, schule fertig, essen fertig, kaffee "
        "fertig, fertig gekocht, fertig gegessen, kaffee gemacht, essen gemacht, fruhstuck gemacht, urlaub gemacht, "
        "pause gemacht, spass gemacht, hat spass gemacht, macht spass, spass macht, sorgen gemacht, gedanken "
        "gemacht, fruhstuck fertig, muhe gemacht, mude gemacht, foto gemacht, arbeit gemacht, termin gemacht, licht "
        "gemacht, feierabend gemacht, glucklich gemacht, sauber gemacht, krank gemacht, wasche gemacht, haushalt "
        "gemacht, garten gemacht, hat richtig spass gemacht, hat total spass gemacht, hat echt spass gemacht, hat "
        "mir spass gemacht, hat viel spass gemacht, beim husten, beim niesen, beim lachen, durchs husten"
    ),
    "battery": "akku",
    "wifi": "internet|wlan|netz|empfang",
    "app": "app",
    "video": "video|videos",
    "train": "zug|bahn|sbahn",
    "bus": "bus",
    "car": "auto",
    "garage": "werkstatt",
    "rain": "regen|geregnet|regnet",
    "snow": "schnee|geschneit",
    "storm": "sturmtief|unwetter|gewitter",
    "hospital": "krankenhaus|spital|klinik",
    "vet": "tierarzt",
    "alarm": "wecker",
    "sofa": "sofa|couch",
    "bed": "bett",
    "film": "film|kino|serie",
    "concert": "konzert",
    "cat": "katzchen",
    "match": "fussballspiel|spiel",
    "birthday": "geburtstagskind",
    "family": "familie|familiar",
    "company": "firma",
    "school": "schule",
    "wall": "wand",
    "neighbours": "nachbarschaft",
    "heating": "heizung",
    "parcel": "paket",
    "postman": "postbote|paketbote",
    "school run": "schulweg",
    "strap": "gurt|schlaufe",
    "glasses": "brille",
    "screen": "bildschirm",
    "noise": "larm",
    "drive": "autofahrt",
    "journey": "fahrt|anreise",
    "trip": "ausflug",
    "elastic": "gummi",
    "chair": "stuhl",
}
