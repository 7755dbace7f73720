"""Branches to the rooms: how many of which diameter, in whatever order they are told.

Inches and plurals ("sixes") are diameters, other numbers count. A count of all, what is left of it
("mostly 6 inch, two 8s"), some in a state of their own and a word taken back are told apart.
"""

import re
from dataclasses import dataclass
from typing import Final

from intake.interview.beside import ASIDE
from intake.reading.duct_checks import ordered
from intake.reading.manner import sureness
from intake.reading.materials import material_of
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Sure, Value, Volunteered
from intake.reading.scan import scan
from intake.reading.small_counts import COUNT, count_said

__all__ = ["branches_told"]

_PLURALS: Final = {
    "fours": 4, "fives": 5, "sixes": 6, "sevens": 7, "eights": 8, "nines": 9, "tens": 10,
    "twelves": 12,
}  # fmt: skip
_DIAMETERS_IN: Final = range(4, 21)
_MOST: Final = 24
_NUMBER: Final = rf"(?:\d+(?:\.\d+)?|{COUNT.removeprefix('(?:').split('|', 1)[1][:-1]})"
_TOKEN: Final = re.compile(
    r"(?P<across>\d{1,2}(?:\.\d)? ?-?(?:inch(?:es|ers)?\b|inchers\b|in\b\.?|\")"
    r"|(?:four|five|six|seven|eight|nine|ten|twelve|fourteen)[ -]?(?:inch(?:es|ers)?\b|in\b)"
    r"|\d{1,2}'?s\b|(?:fours|fives|sixes|sevens|eights|nines|tens|twelves)\b)"
    rf"|(?<![\w.])(?P<number>{_NUMBER}|a couple of|a couple|couple of|couple)(?![\w.])"
    r"|(?P<back>\b(?:no,? wait|wait,? no|no,? make that|make that|scratch that|i mean|sorry|wait)\b"
    r"|\bno,? (?=\d|[a-z]+\b))"
)
_FARTHEST: Final = re.compile(
    r"[,;.]? ?(?:and |with )?(?:it'?s |about |(?:the )?(?P<far>longest|farthest|furthest)"
    r"(?: one| run)?(?: is|'s)? (?:about )?)?"
    r"(?P<ft>\d{1,3}|forty five|thirty|forty|fifty|sixty) ?(?:ft|feet|foot)"
    r"(?: to (?:the )?| is the |, )?(?P<after>farthest|longest|furthest|last)?\b"
    r"(?: (?:one|register|run|room|branch))?"
)
_AWAY: Final = re.compile(
    r"\br-?[468](?:\.2)?\b|\b(?:on|to|for|in) (?:all )?the \d{1,2}'?s\b"
    r"|\b(?:dampers?|collars?|boots?|straps?)(?: \w+){0,2} (?:on|at) [^,;.]*"
    r"|\b(?:off|from|to|into|with|at) (?:the |an? )?(?:\w+ )?(?:boots?|takeoffs?|collars?|trunk)\b"
    r"|\boff the (?:left|right|front|back|side|top|end)\b|\blet me count\b[ .]*"
)
_LOST: Final = (
    r"(?:blocked|capped|dead|abandoned|disconnected|shut|closed|unused|not used|removed|gone)"
)
_LESS: Final = re.compile(
    rf",? (?:less|minus|except(?: for)?|but not) (?:the )?(?:[a-z]+ (?=one\b))?"
    rf"(?P<n>{COUNT})\b(?! ?(?:in\b"
    rf"|inch|\"))[^,;]*"
)
_LOST_SOME: Final = re.compile(
    rf"[,;(]? ?(?:and |but |with )?\b(?P<n>{COUNT})(?:'s| is| are| of (?:them|em|those))?"
    rf" (?:(?!{COUNT}\b)[a-z]+ ){{0,6}}?(?:is |are )?{_LOST}(?: off)?\b[^,;]*"
)
_STATE_OF_SOME: Final = re.compile(
    rf"[,;(]? ?(?:and |but |with )?\b{COUNT} of (?:them|em|those|which)(?: is| are|'re)?"
    r" (?:a bit |kinda |pretty |all )?(?:crushed|kinked|sagging|torn|long|short|dented"
    r"|loose|old|new"
    r"|wrapped|pinched|flattened|upstairs|downstairs|in the \w+)\b[^,;]*"
)
_MAIN: Final = re.compile(r"\b(?:mostly|most|rest|others|remain\w*)\b")
_TIGHT: Final[tuple[tuple[str, re.Pattern[str]], ...]] = (
    ("bunched", re.compile(r"\b(?:bunched(?: up)?|accordion(?:ed)?|very slack|sagging)\b")),
    ("a_little_slack", re.compile(r"\b(?:a (?:little|bit) (?:of )?slack|some slack|slight sag)\b")),
    ("tight", re.compile(r"\b(?:pulled tight|tight|stretched(?: out)?|taut)\b")),
)
_NO_FLEX: Final = re.compile(
    r"\b(?:none (?:are|is|of (?:them|em) (?:are|is))|no|not|isn'?t|aren'?t) (?:any )?flex\b"
)
_EITHER: Final = re.compile(
    rf"(?P<a>{COUNT}) (?:or|to|-) (?P<b>{COUNT})(?![\w.\"])(?! ?(?:in\b|inch))"
)
_UNSURE: Final = re.compile(r"\bor\b(?! so\b)|\?")
_FLAT: Final = re.compile(
    r"\d ?(?:x|by|×|\*) ?\d|\d/\d|\b(?:stacks?|rect\w*|oval|wide|tall|deep|high)\b"
)


_PER_SIDE: Final = re.compile(
    r"\b(?:on|off|per|to) (?:each|either|every) (?:side|end|trunk|leg|way)\b|\b(?:a|per) side\b"
)
_ALL_BUT: Final = re.compile(
    rf"\b(?:all|every\w*) (?:of (?:them|em) )?(?:are )?[a-z]+ (?:but|except)(?: for)? {COUNT}\b"
)


@dataclass(slots=True)
class _Told:
    """One number of the line: a diameter or a count."""

    across: bool
    value: float
    start: int
    end: int
    bare: bool
    back: bool = False


def branches_told(line: str) -> Reading | None:
    """What a normalised line tells of branches; None if it is better read as one duct."""
    if _PER_SIDE.search(line) or _ALL_BUT.search(line):
        return AskBack(
            "How many of which size and make in all? Say it like “10 six inch flex and 1 six inch"
            " metal”.",
            (),
            AskKind.MISSING_PART,
        )
    if _FLAT.search(line) or re.search(r"\b(?:trunks?|mains?|plenum|drops?|returns?)\b", line):
        return None
    rest, others = _without_asides(line)
    either = _EITHER.search(rest)
    if either is not None:
        rest = rest[: either.start()] + str(count_said(either["a"])) + rest[either.end() :]
    if _UNSURE.search(rest):
        return None
    less = _LESS.search(rest)
    rest = _LESS.sub(" ", rest) if less else rest
    lost = _LOST_SOME.search(rest) if not less else None
    rest = _STATE_OF_SOME.sub(" ", _LOST_SOME.sub(" ", rest) if lost else rest)
    if lost is not None and not re.search(r"\d|\b(?:sixes|inch)", rest):
        return None
    told = _numbers(rest)
    if any(one.back for one in told):
        lost = None  # why the count was taken back
    rows = _grouped(told, rest)
    if not rows:
        return None
    rows = _made(rows, rest, line)
    return _decided(rows, line, others, less, lost, either)


def _without_asides(line: str) -> tuple[str, list[Volunteered]]:
    """The line without lengths, parts and slack; the answers to other questions in them."""
    others: list[Volunteered] = []
    far = _FARTHEST.search(line)
    if far is not None and (far["far"] or far["after"]):
        feet = {"forty five": 45, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60}
        length = float(feet.get(far["ft"]) or far["ft"])
        others.append(Volunteered(f"{ASIDE}run_supply", {"ft": length}, far[0].strip(" ,;.")))
        line = _FARTHEST.sub(" ", line)
    if "flex" in line and not _NO_FLEX.search(line):
        for word, pattern in _TIGHT:
            if pattern.search(line):
                others.append(Volunteered(f"{ASIDE}flex_slack", {"choice": word}, word))
                line = pattern.sub(" ", line)
                break
    return " ".join(_AWAY.sub(" ", line).split()), others


def _numbers(rest: str) -> list[_Told]:
    """Every number of the text, each a diameter or a count; empty if one is neither."""
    found: list[_Told] = []
    back = False
    for match in _TOKEN.finditer(rest):
        if match["back"]:
            back = bool(found)
            continue
        if match["across"]:
            words = re.sub(
                r"[ -]?(?:inch(?:es|ers)?|inchers|in)\b\.?|\"|'?s$", "", match["across"]
            ).strip()
            value = float(_PLURALS.get(match["across"]) or count_said(words) or _float(words))
            found.append(_Told(True, value, match.start(), match.end(), False, back))
        else:
            words = match["number"]
            value = 2 if "couple" in words else (count_said(words) or _float(words))
            rounded = re.match(r" ?(?:round|rnd)\b", rest[match.end() :])
            all_of = re.search(r"\ball(?: are| of them)? $", rest[: match.start()])
            across = (
                bool(all_of)
                or (bool(found) and _AT.search(rest[: match.start()]) is not None)
                or (bool(rounded) and bool(found) and not found[-1].across)
            )
            found.append(_Told(across, value, match.start(), match.end(), not across, back))
        back = False
    left = _TOKEN.sub(" ", rest)
    if re.search(r"\d", left):
        return []
    return _taken_back(found)


_AT: Final = re.compile(r"\d (?:at|@|of) $|[a-z] (?:at|@) $")


def _float(words: str) -> float:
    try:
        return float(words)
    except ValueError:
        return 0.0


def _taken_back(told: list[_Told]) -> list[_Told]:
    """Without those that a later one of their kind takes back."""
    kept: list[_Told] = []
    for one in told:
        if one.back:
            for k in range(len(kept) - 1, -1, -1):
                if kept[k].across == one.across:
                    kept[k] = one if not one.across else _at(one, kept[k])
                    kept[k].back = True
                    break
            else:
                kept.append(one)
            continue
        kept.append(one)
    return kept


def _at(one: _Told, place: _Told) -> _Told:
    return _Told(one.across, one.value, place.start, place.end, one.bare)


_Row = tuple[int, float, int, int]
"""How many, inches across, and where in the text they stand."""


def _grouped(told: list[_Told], rest: str) -> list[_Row]:
    """Counts and diameters in pairs; empty if they make none."""
    counts = [one for one in told if not one.across]
    widths = [one for one in told if one.across]
    each = re.search(rf"\b(?P<n>{COUNT}) (?:of )?each\b", rest)
    if each is not None and len(widths) + len(counts) >= 2:
        many = count_said(each["n"]) or 0
        sizes = widths + [c for c in counts if c.start != each.start() and c.value in _DIAMETERS_IN]
        sizes.sort(key=lambda one: one.start)
        return _fit([(many, one.value, one.start, one.end) for one in sizes])
    if not widths and len(counts) == 2 and re.search(r"\bone \d+$", rest):
        return []
    if widths and len(counts) > len(widths) and counts[-1] is told[-1]:
        last = told[-2] if len(told) > 1 else None  # "and that one 7"
        if last is not None and not last.across and last.value == 1:
            widths = [*widths, counts.pop()]
            widths[-1].across = True
    if _MAIN.search(rest) and len(counts) == len(widths) == 2 and not counts[0].back:
        return _with_the_rest(counts, widths, rest)
    pairs = _paired([*counts, *widths])
    total = None
    if not pairs and len(counts) == len(widths) + 1:
        total = min(counts, key=lambda one: one.start)
        pairs = _paired([*(c for c in counts if c is not total), *widths])
        if pairs and sum(pair[0] for pair in pairs) != total.value:
            return []
    return _fit(pairs)


def _with_the_rest(counts: list[_Told], widths: list[_Told], rest: str) -> list[_Row]:
    """ "14, mostly 6 inch, a couple of 8s": what isn't counted is the rest of all."""
    counts = sorted(counts, key=lambda one: one.start)
    widths = sorted(widths, key=lambda one: one.start)
    total, some = counts
    nearest = min(widths, key=lambda one: abs(one.start - some.end))
    other = widths[0] if nearest is widths[1] else widths[1]
    left = int(total.value - some.value)
    if left < 1:
        return []
    return _fit([(left, other.value, other.start, other.end),
                 (int(some.value), nearest.value, nearest.start, nearest.end)])  # fmt: skip


def _paired(told: list[_Told]) -> list[_Row]:
    told = sorted(told, key=lambda one: one.start)
    if len(told) % 2:
        return []
    rows: list[_Row] = []
    for one, two in zip(told[::2], told[1::2], strict=True):
        if one.across == two.across:
            return []
        count, width = (two, one) if one.across else (one, two)
        rows.append((int(count.value), width.value, one.start, two.end))
    return rows


def _fit(rows: list[_Row]) -> list[_Row]:
    good = all(1 <= count <= _MOST and across in _DIAMETERS_IN for count, across, _, _ in rows)
    return rows if good else []


def _made(rows: list[_Row], rest: str, line: str) -> list[_Row]:
    """Groups of one size as one, where one material holds for all of them."""
    if len({across for _, across, _, _ in rows}) == len(rows):
        return rows
    if len(material_of(scan(line, "duct").items)) > 1:
        return rows
    merged: dict[float, _Row] = {}
    for count, across, start, end in rows:
        known = merged.get(across)
        merged[across] = (
            (count + known[0], across, known[2], end) if known else (count, across, start, end)
        )
    return list(merged.values())


def _decided(
    rows: list[_Row],
    line: str,
    others: list[Volunteered],
    less: re.Match[str] | None,
    lost: re.Match[str] | None,
    either: re.Match[str] | None,
) -> Reading | None:
    rest, _ = _without_asides(_NO_FLEX.sub(" ", line))
    whole = material_of(scan(rest, "duct").items)
    made: list[dict[str, Value]] = []
    for k, (count, across, start, _) in enumerate(rows):
        values: dict[str, Value] = {"shape": "round", "diameter_in": across, "count": count}
        end = rows[k + 1][2] if k + 1 < len(rows) else len(rest)
        own = whole if len(whole) == 1 else material_of(scan(rest[start:end], "duct").items)
        if len(own) == 1 and own[0] not in ("mixed", "foreign", "shiny"):
            values["material"] = own[0]
        made.append(ordered(values))
    if len(whole) > 1 and any("material" not in row for row in made):
        return None
    sure = sureness(line)
    said = tuple(others)
    if either is not None and len(made) == 1:
        low, high = count_said(either["a"]), count_said(either["b"])
        made[0].pop("count")
        counts = Volunteered(
            f"{ASIDE}branch_count", {"count_low": low or 0, "count_high": high or 0}, either[0]
        )
        return (
            Accepted(made[0], sure, others=(*said, counts)) if low and high and low < high else None
        )
    if less is not None and len(made) == 1:
        made[0]["count"] = int(str(made[0]["count"])) - (count_said(less["n"]) or 0)
    if len(made) == 1 and lost is not None and (gone := count_said(lost["n"])):
        count = int(str(made[0]["count"]))
        left = {**made[0], "count": count - gone}
        if 0 < gone < count:
            return AskBack(
                f"How many of them carry air: {count - gone} or {count}?",
                (left, made[0]),
                AskKind.TWO_VALUES,
            )
    if lost is not None and len(made) > 1:
        return None
    if len(made) == 1:
        return Accepted(made[0], sure, others=said)
    several: list[Value] = [*made]
    return Accepted({"ducts": several}, _plain(sure, line), others=said)


def _plain(sure: Sure, line: str) -> Sure:
    """ "Mostly" beside a full count is no doubt."""
    if sure is Sure.HEDGED and re.search(r"\bmostly\b", line):
        return sureness(re.sub(r"\bmostly\b", " ", line))
    return sure
