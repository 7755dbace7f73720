"""What the engine refuses, with the fields a sentence can be written from."""

__all__ = ["EngineError", "FactError", "OutOfRangeError"]


class EngineError(ValueError):
    """Something the engine can't compute with."""


class OutOfRangeError(EngineError):
    """A quantity lies outside the limits its relation holds for."""

    def __init__(self, name: str, value: float, low: float, high: float) -> None:
        """Keep the quantity's name (with its unit), its value and its limits."""
        self.name, self.value, self.low, self.high = name, value, low, high
        super().__init__(f"{name} = {value:g} is outside {low:g} to {high:g}")


class FactError(EngineError):
    """A fact about the house is unknown to the catalogue, malformed or impossible.

    Attributes:
        key: The fact's dotted key as it was given.
        problem: What is wrong with it and what would be accepted, one clause.
    """

    def __init__(self, key: str, problem: str) -> None:
        """Keep the key and the problem apart, for the sentence a person reads."""
        self.key, self.problem = key, problem
        super().__init__(f"{key}: {problem}")
