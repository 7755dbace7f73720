"""Sets of words written as running text, so that adding one is adding a word."""

__all__ = ["in_order", "words"]


def words(text: str) -> frozenset[str]:
    """The words of a text.

    >>> sorted(words("two  one"))
    ['one', 'two']
    """
    return frozenset(text.split())


def in_order(text: str) -> tuple[str, ...]:
    """The words of a text in their order.

    >>> in_order("two one")
    ('two', 'one')
    """
    return tuple(text.split())
