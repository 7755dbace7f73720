"""What a scanned text is made of: numbers with their units and signs, words with their meanings."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from intake.reading.lexer import Token
from intake.reading.units import DIMENSION

__all__ = ["Item", "Scan"]


@dataclass(slots=True, eq=False)
class Item:
    """One number, known phrase, other word or sign; two of them are never the same.

    Attributes:
        kind: "num", "tag", "word", "sym" or "code".
        text: As normalised.
        start, end: Where it stood.
        value: Of a number, without its sign.
        unit: Our unit name, or "".
        sign: -1 or 1 if stated, else 0.
        meanings: Of a known phrase.
        token: The token of a number (decimals, comma, spelled ...).
        glued: No space before it.
        negated: "not", "instead of" before it.
    """

    kind: str
    text: str
    start: int
    end: int
    value: float = 0.0
    unit: str = ""
    sign: int = 0
    meanings: tuple[str, ...] = ()
    token: Token | None = None
    glued: bool = False
    negated: bool = False

    @property
    def dimension(self) -> str:
        """What the number's unit measures, or ""."""
        return DIMENSION.get(self.unit, "")

    @property
    def spelled(self) -> bool:
        """Whether the number is written in words."""
        return self.token is not None and self.token.spelled

    @property
    def plural(self) -> bool:
        """Whether the number is written as a plural ("sixes", "the 70s")."""
        return self.token is not None and self.token.plural

    @property
    def whole(self) -> bool:
        """Whether the number is whole."""
        return self.value == int(self.value)

    def own(self) -> Item:
        """A number to be changed without changing this one; a word is shared, never changed."""
        if self.kind != "num":
            return self
        return Item(
            self.kind,
            self.text,
            self.start,
            self.end,
            self.value,
            self.unit,
            self.sign,
            self.meanings,
            self.token,
            self.glued,
            self.negated,
        )

    def means(self, *names: str) -> bool:
        """Whether any of these is among the meanings; a name ending in "." stands for its kind."""
        meanings = self.meanings
        if not meanings:
            return False
        for name in names:
            if name in meanings:
                return True
            if name[-1] == ".":
                for meaning in meanings:
                    if meaning.startswith(name):
                        return True
        return False


@dataclass(slots=True)
class Scan:
    """A text and its items.

    Attributes:
        text: As normalised.
        items: Left to right.
        numbers: Those of them that are numbers; nearly every rule asks for these.
    """

    text: str
    items: list[Item]
    numbers: list[Item] = field(init=False)

    def __post_init__(self) -> None:
        """Find the numbers."""
        self.numbers = [item for item in self.items if item.kind == "num"]

    def leave_out(self, number: Item) -> None:
        """Take a number out, here only."""
        self.items.remove(number)
        self.numbers.remove(number)

    def says(self, *names: str) -> bool:
        """Whether any item has one of these meanings."""
        return any(item.meanings and item.means(*names) for item in self.items)

    def means_now(self, i: int, *names: str) -> None:
        """Give the word at a place these meanings and no others, here only."""
        self.items[i] = replace(self.items[i], meanings=names)

    def words(self) -> set[str]:
        """Every word of the text."""
        return {word for item in self.items for word in item.text.split()}
