"""Sizes as a caller tells them: openings one after the other, covers instead of holes, no duct."""

import re
from typing import Final

from intake.interview.own_words import whole_words
from intake.reading.read import read
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Unknown

__all__ = ["filter_size", "hole", "main_duct", "openings"]

_SIZE: Final = r"\d+(?:\.\d+)? ?(?:x|by|×) ?\d+(?:\.\d+)?(?! ?(?:x|by|×) ?\d)"
_SAME_AGAIN: Final = re.compile(
    rf"(?P<size>{_SIZE})(?P<between>[^\d]*?)\b(?P<which>second|third|other|next|2nd|3rd"
    rf"|last)(?: one)?"
    r"(?: is|'s| was)?,? (?:about |exactly |just )?(?:the )?same(?: size| as that| too| thing)?\b"
    r"(?! as (?!that))"
)
_MANY_ALL: Final = re.compile(
    rf"(?P<many>[2-9]|two|three|four|five|six)(?: of (?:them|'?em))?,? (?:and )?(?:they'?re |each "
    rf"|all"
    rf" |both |about )+(?P<size>{_SIZE})(?P<rest>[^\d]*)"
)
_NONE_SEEN: Final = re.compile(
    r"(?:there(?:'s| is| are)? )?(?:no|not any|none|isn'?t (?:a|any)|aren'?t any|can'?t find (?:a"
    r"|any))"
    r"(?: (?:big|return|return air|large|real|actual|other))* ?(?:vents?|returns?|grill?e?s?"
    r"|openings?)?"
    r"(?:,? ?\b(?:that|which|as far as)?(?: (?:she|he|they|i|we|you))? (?:can|could|'s|has|have"
    r"|know\w*|see"
    r"|find|found|seen)\b[^\d]*)?(?:[,;.]? (?:just|only)[^\d]*)[.! ]*"
)


_MEASURED_ONE: Final = re.compile(
    rf"(?:there'?s |there are |she has |about )*(?P<many>[2-9]|two|three|four|five|six)(?: of"
    rf" (?:them|'?em))?,? [^\d]*?\b(?:(?:only|just) (?:measured|did|got|reached|checked)"
    rf"|(?:measured"
    rf"|did|got|reached|checked) (?:only|just)) (?:the )?(?:one|1)\b[^\d]*?(?P<size>{_SIZE})[^\d]*"
)


def openings(line: str) -> Reading | str | None:
    """Return openings, one the same as the one before it; a louvered door is no size."""
    if _NONE_SEEN.fullmatch(line):
        return Unknown("You can't say.")
    single = _MEASURED_ONE.fullmatch(line)
    if single is not None:
        whole, size = single["many"], single["size"]
        told = [read("grille", text) for text in (f"{whole} of {size}", size)]
        readings = tuple(one.values for one in told if isinstance(one, Accepted))
        why = f"Are all {whole} of them {size}, or is one of them? Else say their sizes."
        return AskBack(why, readings, AskKind.TWO_READINGS)
    many = _MANY_ALL.fullmatch(line)
    if many is not None:
        return f"{many['many']} of {many['size']} {many['rest']}".strip()
    plain, times = line, 0
    while times < 4 and (same := _SAME_AGAIN.search(plain)):
        plain = f"{plain[: same.end('size')]}, {same['size']}{plain[same.end() :]}"
        times += 1
    return (
        re.sub(r"\b(?:first|second|third)(?: one)?(?:'s| is| was)?\b", " ", plain).strip()
        if times
        else None
    )


_COVER: Final = whole_words(
    r"cover|grate|louvers?|frame|face ?plate|face|lid|grill?e?|outside|outer|register(?: itself)?"
    r"|the vent itself"
)
_THE_HOLE: Final = whole_words(r"hole|opening|inside|boot|throat|collar|pipe")


def hole(line: str) -> Reading | str | None:
    """The hole under a vent, not its cover; with the pipe below it told too, which of them."""
    covered, inside = _COVER.search(line), _THE_HOLE.search(line)
    if covered and not inside and re.search(r"\d|\bby\b", line):
        return AskBack(
            "A cover is larger than its hole. What size is the hole, or the pipe below it?",
            (),
            AskKind.MISSING_PART,
        )
    both = _HOLE_AND_PIPE.fullmatch(line)
    if both is not None:
        across, wide, tall = (float(both[name]) for name in ("across", "wide", "tall"))
        return AskBack(
            f"The {wide:g} x {tall:g} in. hole or the {across:g} in. pipe: which feeds it?",
            (
                {"shape": "rect", "width_in": wide, "height_in": tall},
                {"shape": "round", "diameter_in": across},
            ),
            AskKind.TWO_READINGS,
        )
    return None


_HOLE_AND_PIPE: Final = re.compile(
    r"(?:the |it'?s |a )*(?:hole|opening|boot)?(?:'s| is"
    r"| was)? ?(?:about )?(?P<wide>\d+(?:\.\d+)?) ?(?:x|by)"
    r" ?(?P<tall>\d+(?:\.\d+)?)(?: (?:in\w*|hole|opening))?,? (?:and|with|but|over"
    r"|on)? ?(?:there'?s )?(?:an? )?"
    r"(?P<across>[4-9]|1[0-4]) ?(?:in\w*|\")? (?:inch )?(?:round|pipe|hose|flex|duct)\b[^\d]*"
)

_NO_FILTER_THERE: Final = re.compile(
    r"^(?:there (?:isn'?t|is no|is not|'s no)|there'?s no|no|isn'?t|not)(?: a| any| one)? filter"
    r" (?:at|in|by|on|near) (?:the |that )?[a-z ]+?[,;.] ?(?:but |and )?(?=.*\d ?(?:x|by) ?\d)"
)


_PUT_IN: Final = whole_words(
    r"putt?ing|puts?|using|uses|buy\w*|bought|stuff\w*|cramm?\w*|jamm?\w*|running|runs?|squeez\w*"
)


def filter_size(line: str) -> Reading | str | None:
    """A filter that isn't here but there: only where it is counts."""
    fits, using, worn = line.partition(" but ")
    if using and _PUT_IN.search(worn):
        sizes = [read("filter", part) for part in (fits, worn)]
        told = tuple(one.values for one in sizes if isinstance(one, Accepted))
        if len(told) == 2:
            return AskBack("Which of the two is in it now?", told, AskKind.TWO_READINGS)
    plain = _NO_FILTER_THERE.sub("", line)
    return plain if plain != line else None


_NO_MAIN: Final = whole_words(
    r"(?:can'?t|couldn'?t|don'?t) (?:see|find) (?:one|any|it)|(?:it'?s|it is) all flex|(?:no"
    r"|isn'?t (?:a|any)|not (?:a|any)|without (?:a|any)|don'?t see (?:a|any|one)) (?:real |actual"
    r" |main |big |large |metal )*(?:ducts?|trunks?|one)|octopus|spider"
    r"|(?:just|only|all) (?:\w+ )?(?:round |flex\w* |small |little )+(?:hoses?|pipes?|ducts?|runs?)"
)
_OUT_OF_REACH: Final = re.compile(
    r"\b(?:feet|foot|ft|high|tall|up|off the (?:floor|ground))\b.*\b(?:can'?t|cannot|couldn'?t"
    r"|won'?t|no"
    r" (?:way|ladder))\b|\b(?:can'?t|cannot|couldn'?t|no way to) reach\b|\b(?:too high|out of reach"
    r"|way up)\b"
)


_THIN: Final = whole_words(r"thin\w*|narrow\w*|skinn\w*|small\w*|at the end|far end|tapers?\w*")
_FAT: Final = whole_words(
    r"fat\w*|wid(?:e|er|est)|big\w*|thick\w*|largest|(?:by|at|near) the (?:unit|furnace)"
)


def _fattest(line: str) -> str | None:
    """The size at the fattest place, of a line that tells the thin one too."""
    parts = [part for part in re.split(r"[,;]| and | but |\. ", line) if re.search(_SIZE, part)]
    if len(parts) != 2:
        return None
    fat = [part for part in parts if _FAT.search(part) and not _THIN.search(part)]
    thin = [part for part in parts if _THIN.search(part) and not _FAT.search(part)]
    size = re.search(_SIZE, fat[0]) if len(fat) == len(thin) == 1 else None
    return size[0] if size is not None else None


def main_duct(line: str) -> Reading | str | None:
    """The main duct at its fattest; where there is none, or none that can be reached."""
    if (fattest := _fattest(line)) is not None:
        return fattest
    if re.search(rf"{_SIZE}|\d ?(?:in\b|inch|\")|\bround\b.*\d", line):
        return None
    if _NO_MAIN.search(line) or _OUT_OF_REACH.search(line):
        return Unknown("You can't say.")
    return None
