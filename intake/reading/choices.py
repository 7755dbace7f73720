"""One of several named choices: material, blower motor, coil, or any list the caller hands in."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from functools import cache
from typing import Final

from intake.reading.echo import echo
from intake.reading.materials import MATERIALS, material_of
from intake.reading.result import Accepted, AskBack, AskKind, Reading
from intake.reading.scan import Scan

__all__ = [
    "BLOWER_WORDS",
    "COIL_WORDS",
    "numbered",
    "read_blower_type",
    "read_choice",
    "read_coil_state",
    "read_material",
]

BLOWER_WORDS: Final[dict[str, str]] = {
    "psc": "psc|p s c|permanent split capacitor|permanent split|perm split|split capacitor|capacitor|run capacitor|run cap|capacitor motor|with a cap|standard motor|regular motor|plain motor|ordinary motor|standard|old style|old school|conventional"
    "|single speed|one speed|1 speed|two speed|2 speed|three speed|3 speed|four speed|4 speed|single speed motor|induction|induction motor|pee ess see|ac motor|colored speed wires|coloured speed wires|colored wires"
    "|color wires|non ecm|nonecm|not an ecm|not ecm|no ecm|isn't ecm|pcs motor|basic motor|dumb motor|speed wires|black blue red wires|psc motor|perm split cap|old fashioned|3 speed tap|4 speed tap|three speed tap|four speed tap",
    "ecm_constant_torque": "constant torque|constant talk|constant torc|constant torch|constant tork|five tap|5 tap|five taps|5 taps|five speed tap|5 speed tap|five tap ecm|non variable ecm|non variable|multi tap ecm|multi speed ecm|multispeed ecm"
    "|torque motor|torque|const torque|fixed torque|constant tourque|constant tourqe|5 wire plug|five speed ecm|5 speed ecm|not variable|isn't variable|24 volt taps|24v taps|five tap plug|ct ecm|ecm ct|ct motor|tap ecm|ecm with taps|ecm taps|multitap ecm|torque ecm|fixed speed ecm",
    "ecm_variable": "variable speed|variable|vs|v s|var speed|vari speed|varispeed|varible speed|variabel speed|variable sped|true ecm|full ecm|real ecm|constant airflow|constant air flow|constant cfm|constant volume|constant air volume|constant flow|very able speed|very able"
    "|infinitely variable|modulating|modulates|dip switches|data plug|communicating|ramps up|ramping|variable spd|vspeed|fully variable|variable airflow|var spd|air flow control|airflow control|16 pin|sixteen pin|adjusts itself|adjusts its own speed|holds cfm|holds airflow|programmed cfm|variables speed|varaible speed|veriable speed|veriable|varable speed|variable seed|infinite speed|inverter|inverter driven|variable frequency",
    "other": "belt|belt drive|belt driven|belt and pulley|pulley|shaded pole|gravity|no blower|split phase|three phase|3 phase|other|something else|none of those|none of these|neither|hydronic|gravity furnace|no fan|belted|v belt|octopus",
    "ecm": "ecm|e c m|easy m|ecm motor|electronically commutated|electronically commutated motor|electronic commutated|electronically communicated|brushless|dc motor|bldc|dc|electronic motor|high efficiency motor|brushless dc|electronic|emc|ecms|e cm|ec motor|ec m|ec|electrically commutated|commutated|hi efficiency motor|high efficiency|efficient motor|smart motor|ecm type|computerized|electronically controlled|has a module|control module|module on the motor|module",
    "direct": "direct drive|direct|multi speed|multispeed|multi tap|multitap|speed taps|taps|squirrel cage|wheel|fan|multiple speeds|several speeds|speeds",
}
"""Blower motors: what is said for each; "ecm" and "direct" need asking."""

COIL_WORDS: Final[dict[str, str]] = {
    "clean": "clean|like new|spotless|brand new|new|shiny|pristine|immaculate|good as new|no dirt|not dirty|perfect|mint|sparkling|sparkly|spic and span|just cleaned|see through it|see light through|can see light|squeaky|fresh|unused|clean as a whistle|no dust|no buildup|nothing on it|mint condition|factory fresh|cleaned last|cleaned it|see daylight|can see right through|no lint|not a speck|clear|see right through|isn't dirty|looks new|not dirty at all|bright|washed|looks great|washed it|hosed off|looks brand new|looks perfect",
    "some_dirt": "some dirt|sum dirt|little dirty|a little dirty|bit dirty|a bit dirty|little dusty|light dust|some dust|dusty|slightly dirty|slightly dusty|some lint|a little lint|little lint|bit of lint|lint|some fuzz|fuzz|fuzzy|light film|thin film|film|moderate|moderately dirty|moderately|so so|fair|a few spots|light coating|thin layer|thin coat|layer of dust|kinda dirty|kind of dirty|sort of dirty|somewhat dirty|sorta dirty|lightly soiled|light dirt|little bit of dirt|bit of dirt"
    "|bit of dust|little dust|a bit dusty|bit dusty|light|mild|mildly dirty|could be cleaner|could use a cleaning|could use cleaning|medium|in between|normal dirt|some buildup|light buildup|some grime|average|a tad dirty|tad dirty|bit grimy|little grimy|dust on it|minor|a touch dirty|not bad some|some hair|a little hair|some pet hair|bit of fuzz|little fuzz|partly dirty|partially dirty|little film|bit of a film|some|a little|a bit|slight|slightly|lightly|light lint|middling|halfway|has dirt|some stuff|hazy|sooty film|dust bunnies|spotty|grimy in spots|little cruddy|surface dust|kinda dusty|dirt on it|a little fuzzy|not spotless|light debris|moderate dirt|smudge",
    "plugged": "plugged|clogged|packed|matted|caked|blocked|solid|impacted|choked|plugged up|plugged solid|clogged up|clogged solid|caked solid|packed solid|carpet|mat|like a mat|blanket|can't see light through|can't see light|can't see any light|cant see light|cant see light through|can't see through it|can't see the fins|cant see the fins|can't see fins|no light through|no air gets through|nothing gets through|no light|stuffed|packed full|full of lint|full of hair|full of dirt|covered in hair|covered in lint|covered in dirt|solid with|furry|sweater|fur coat|wall of|jammed|totally blocked|completely blocked"
    "|impassable|stopped up|pluged|cloged|clogd|plugd|socked in|mud|cemented|felt|like felt|wooly|woolly|dog hair solid|packed with|caked with|caked on|completely covered|totally covered|choked off|choked up|encrusted|thick mat|mat of|no airflow through|obstructed|plastered|layered thick|thick with|gummed up|sealed with dirt|like carpet|impacted with|bunged|bunged up|chock full|totally plugged|stuffed up|no air through|won't pass air|fuzzed over|fins are buried|can't see through|cant see through|can't see daylight",
    "dirty": "dirty|pretty dirty|very dirty|really dirty|quite dirty|bad|pretty bad|really bad|gross|nasty|filthy|disgusting|terrible|needs cleaning|needs a cleaning|needs to be cleaned|grimy|grungy|moldy|mold|soiled|rough|ugly|not clean|isn't clean|not great|horrible|awful|crud|cruddy|skanky|dirt|very dusty|really dusty|yucky|covered|heavy|heavily|half|partly blocked|partially blocked|partially plugged|partly plugged|partially clogged|half plugged|half clogged|half blocked|badly|dog hair|pet hair|cat hair|hair|greasy|black|scummy|hasn't been cleaned|never been cleaned|never cleaned|a mess|mess",
    "ok": "ok|not too bad|fairly clean|mostly clean|pretty clean|could be better|seen worse|not terrible|okay|fine|good|alright|all right|decent|not bad|normal|acceptable|looks good|good shape|nice|workable|usual|typical|standard",
    "ice": "ice|iced|iced up|frozen|frost|frosted|freezing|wet|rusty|rusted|bent|bent fins|leaking|corroded|oily",
    "none": "no coil|there isn't one|heat only|doesn't have one|none|not there|no ac|there is no coil|there's no coil",
}
"""Coils: what is said for each; "dirty", "ok", "ice" and "none" need asking."""

_NOT: Final = frozenset(
    "not no isn't isnt ain't aint never without hardly non don't doesn't wasn't nor can't cant cannot couldn't".split()
)
_SPLIT: Final = re.compile(r"[a-z0-9]+(?:'[a-z]+)?")


@cache
def _phrases(table_name: str) -> dict[tuple[str, ...], str]:
    table = {"blower": BLOWER_WORDS, "coil": COIL_WORDS}[table_name]
    return {tuple(p.split()): key for key, said in table.items() for p in said.split("|")}


def _matches(
    words: list[str], phrases: Mapping[tuple[str, ...], str]
) -> tuple[list[str], list[str]]:
    """The keys said and the keys denied, longest phrase first."""
    longest = max(map(len, phrases), default=1)
    said: list[str] = []
    denied: list[str] = []
    i = 0
    while i < len(words):
        for n in range(min(longest, len(words) - i), 0, -1):
            key = phrases.get(tuple(words[i : i + n]))
            if key is not None:
                no = _denied(words[max(0, i - 4) : i])
                (denied if no else said).append(key)
                i += n - 1
                break
        i += 1
    return said, denied


_TURNS: Final = frozenset("but just only its it's though instead".split())


def _denied(before: list[str]) -> bool:
    """Whether the words before say no, and nothing after that "no" turns."""
    nos = [k for k, w in enumerate(before) if w in _NOT]
    turns = [k for k, w in enumerate(before) if w in _TURNS]
    return bool(nos) and (not turns or nos[-1] > turns[-1])


def _words(text: str) -> list[str]:
    return _SPLIT.findall(text)


def _respelt(words: list[str], phrases: Mapping[tuple[str, ...], str]) -> list[str]:
    """Words put right against the words of the table."""
    known = {w for phrase in phrases for w in phrase}
    targets = sorted(w for w in known if len(w) > 4)
    found = []
    for word in words:
        found.append(word if word in known else _nearest(word, tuple(targets)))
    return found


def _nearest(word: str, targets: tuple[str, ...]) -> str:
    from intake.reading.plain_words import PLAIN_WORDS

    if len(word) < 5 or len(word) > 20 or word in PLAIN_WORDS or not word.isalpha():
        return word
    # rapidfuzz is imported here: it costs 25 ms, and most answers hold no unknown word.
    from rapidfuzz import process
    from rapidfuzz.distance import OSA

    cutoff = 1 if len(word) < 8 else 2
    near = process.extract(word, targets, scorer=OSA.distance, score_cutoff=cutoff, limit=2)
    if not near or (len(near) > 1 and near[0][1] == near[1][1]):
        return word
    return str(near[0][0])


def _ask(field: str, keys: Sequence[str]) -> AskBack:
    names = " or ".join(echo(field, {"choice": key}) for key in keys)
    return AskBack(
        f"Which is it: {names}?", tuple({"choice": key} for key in keys), AskKind.AMBIGUOUS_WORD
    )


def _picked(field: str, keys: Sequence[str], allowed: Sequence[str]) -> Reading | None:
    fit = [key for key in dict.fromkeys(keys) if not allowed or key in allowed]
    if len(fit) == 1:
        return Accepted({"choice": fit[0]})
    return _ask(field, fit) if fit else None


def read_material(said: Scan, choices: Sequence[str]) -> Reading | None:
    """Read a duct material; None if the text names none."""
    keys = material_of(said.items)
    if keys == ("foreign",):
        return AskBack(
            "That is none of the usual ones. Is it sheet metal, flex, duct board, lined metal, a joist or stud bay, aluminum or PVC?",
            (),
            AskKind.AMBIGUOUS_WORD,
        )
    keys = tuple(k for k in keys if k in MATERIALS)
    if keys:
        if said.says("alt.or", "material.mixed") and len(keys) < 2 and said.says("alt.or"):
            return _ask("material", keys)
        return _picked("material", keys, choices)
    if said.says("material.") and said.words() & _NOT:
        denied = {
            m.split(".")[1] for i in said.items for m in i.meanings if m.startswith("material.")
        }
        return _ask("material", [m for m in MATERIALS[:4] if m not in denied])
    if said.says("material.unlined"):
        return (
            _picked("material", ("galvanized",), choices)
            if "metal" in said.text
            else _ask("material", ("galvanized", "flex"))
        )
    if said.says("material.wrapped", "material.shiny"):
        return _ask("material", ("galvanized", "flex", "duct_board"))
    if said.says("shape.roundish", "shape.round", "shape.rect", "shape.square", "vague.size"):
        return _ask("material", ("galvanized", "flex"))
    return None


def read_blower_type(text: str, choices: Sequence[str]) -> Reading | None:
    """Read the kind of blower motor; None if the text names none."""
    phrases = _phrases("blower")
    said, denied = _matches(_respelt(_words(text), phrases), phrases)
    keys = [k for k in dict.fromkeys(said) if k not in ("ecm", "direct")]
    ecm = "ecm" in said or any(k.startswith("ecm") for k in denied)
    if "psc" in keys and len(keys) == 1 and "ecm" in said:
        words = _words(text)
        return (
            Accepted({"choice": "psc"})
            if "non" in words or "not" in words or "isn't" in words
            else _ask("blower_type", ("psc", "ecm_constant_torque"))
        )
    if (
        len(keys) > 1
        and not {"ecm_constant_torque", "ecm_variable"} <= set(keys)
        and "psc" in keys
        and re.search(r"\b(?:standard|capacitor|speed)\b", text)
        and "psc" not in text
    ):
        pass
    keys = [k for k in keys if k not in denied]
    if keys:
        return _picked("blower_type", keys, choices)
    if ecm:
        left = [k for k in ("ecm_constant_torque", "ecm_variable") if k not in denied]
        if "ecm" in denied and "ecm" not in said:
            return _picked("blower_type", ("psc", "other"), choices)
        return _picked("blower_type", left, choices)
    if "direct" in said:
        return _picked("blower_type", ("psc", "ecm_constant_torque", "ecm_variable"), choices)
    if denied:
        left = [
            k for k in ("psc", "ecm_constant_torque", "ecm_variable", "other") if k not in denied
        ]
        return _ask("blower_type", left)
    return None


def read_coil_state(text: str, choices: Sequence[str]) -> Reading | None:
    """Read how a coil looks; None if the text doesn't say."""
    phrases = _phrases("coil")
    said, denied = _matches(_respelt(_words(text), phrases), phrases)
    clear = [k for k in dict.fromkeys(said) if k in ("clean", "some_dirt", "plugged")]
    vague = [k for k in dict.fromkeys(said) if k in ("dirty", "ok", "ice", "none")]
    if len(clear) == 1 and not any(k in ("ice", "none") for k in vague):
        if (
            clear[0] == "clean"
            and "dirty" in vague
            or clear[0] == "plugged"
            and re.search(
                r"\b(?:almost|nearly|half|third|quarter|part|one side|bottom|top|partly|partially|not quite|getting|starting)\b",
                text,
            )
        ):
            return _ask("coil_state", ("some_dirt", "plugged"))
        return _picked("coil_state", clear, choices)
    if set(clear) == {"plugged", "some_dirt"} and _stuff_after(text):
        return _picked("coil_state", ["plugged"], choices)
    if len(clear) > 1:
        return _picked("coil_state", clear, choices)
    if "dirty" in vague:
        left = [k for k in ("some_dirt", "plugged") if k not in denied]
        return _picked("coil_state", left, choices)
    if "none" in vague or "ice" in vague:
        return AskBack(
            "Between its fins, is it clean, is there some dirt, or is it plugged?",
            (),
            AskKind.AMBIGUOUS_WORD,
        )
    if vague or denied:
        left = [k for k in ("clean", "some_dirt", "plugged") if k not in denied]
        return _picked("coil_state", left if denied else ("clean", "some_dirt"), choices)
    return None


def _stuff_after(text: str) -> bool:
    """ "packed with lint": the second word only says with what."""
    return (
        re.search(
            r"\b(?:with|of|by|in)\b (?:\w+ )?(?:lint|dust|fuzz|hair|dirt|fur|grime|film)", text
        )
        is not None
    )


def numbered(text: str, choices: Sequence[str]) -> str | None:
    """The choice that a bare number picks ("2", "#2", "number two", "option 2"), or None."""
    words = [
        w
        for w in _words(text)
        if w not in ("number", "option", "choice", "no", "the", "answer", "is", "it's")
    ]
    if len(words) != 1:
        return None
    place = int(words[0]) if words[0].isdigit() and len(words[0]) < 3 else _SPELLED.get(words[0], 0)
    return choices[place - 1].partition("=")[0] if 1 <= place <= len(choices) else None


_SPELLED: Final = {
    "one": 1,
    "two": 2,
    "three": 3,
    "four": 4,
    "five": 5,
    "six": 6,
    "seven": 7,
    "eight": 8,
}
_ORDINALS: Final = {
    "first": 0,
    "second": 1,
    "third": 2,
    "fourth": 3,
    "last": -1,
    "former": 0,
    "latter": 1,
}
_TRIVIAL: Final = frozenset("a an the of or and to in on it is other none no not one kind".split())


def read_choice(text: str, choices: Sequence[str]) -> Reading | None:
    """Read one of any choices ("key" or "key=word|word"); None if the text fits none."""
    table: dict[tuple[str, ...], str] = {}
    keys: list[str] = []
    for entry in choices:
        key, _, synonyms = entry.partition("=")
        keys.append(key)
        for phrase in (key.replace("_", " "), *filter(None, synonyms.split("|"))):
            table[tuple(_words(phrase.lower()))] = key
    table.pop((), None)
    words = _respelt(_words(text), table)
    said, denied = _matches(words, table)
    found = [k for k in dict.fromkeys(said) if k not in denied]
    if not found:
        found = _by_single_words(words, keys)
    if not found and 1 <= len(words) <= 4:
        found = _by_place(words, keys)
    if len(found) == 1:
        return Accepted({"choice": found[0]})
    if found:
        return _ask("choice", found)
    left = [k for k in keys if k not in denied]
    if denied and len(left) == 1:
        return Accepted({"choice": left[0]})
    return _ask("choice", left) if denied else None


def _by_single_words(words: list[str], keys: list[str]) -> list[str]:
    """Keys of which one telling word was said, and not denied."""
    found = []
    for key in keys:
        telling = {w for w in key.split("_") if w not in _TRIVIAL and len(w) > 2}
        hits = [i for i, w in enumerate(words) if w in telling]
        if hits and not any(w in _NOT for w in words[max(0, hits[0] - 2) : hits[0]]):
            found.append(key)
    return found


def _by_place(words: list[str], keys: list[str]) -> list[str]:
    for word in words:
        if word in _ORDINALS and -len(keys) <= _ORDINALS[word] < len(keys):
            return [keys[_ORDINALS[word]]]
        if word.isdigit() and 1 <= int(word) <= len(keys) and len(words) <= 2:
            return [keys[int(word) - 1]]
    return []
