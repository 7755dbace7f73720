"""Trees of duct sections that hang on one plenum: what a network is made of.

Each figure is one duct's. Splitting air among the sections is `engine.physics.network`'s subject.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field, fields
from typing import Final, Self

import numpy as np

from engine.arrays import Array, Floats, require_within
from engine.errors import FactError

__all__ = ["Network", "Section"]


@dataclass(frozen=True, slots=True)
class Section:
    """A piece of duct that carries one airflow, or several equal ones in parallel.

    Every figure is a scalar or (n,). Lengths, coefficients and drops are those of one duct.

    Attributes:
        name: What a person calls it.
        parent: Index of the earlier section that it hangs on; None for the plenum.
        area_ft2: Clear area of one duct, 0.002 to 50 ft2.
        equivalent_diameter_in: Its equivalent diameter, 0.5 to 100 in.
        length_ft: Straight length, 0 to 1,000 ft.
        roughness_ft: Roughness, 0 to 0.02 ft.
        slack_factor: Multiplies the straight length's friction, 1 to 100.
        coefficient: Sum of loss coefficients, in velocity pressures of the real area, 0 to 200.
        fittings_ft: Equivalent length of the other fittings, 0 to 2,000 ft.
        drop_inwc: Drop of what sits at its end (register, grille, filter) in standard air, 0 to
            5 in wc.
        drop_at_cfm: Airflow of one duct at which that drop is stated, 1 to 20,000 CFM.
        drop_exponent: Power with which it grows, 1 to 3.
        count: Equal ducts in parallel, above 0 to 100; need not be whole.
        present: 1 where the section exists in a sample, 0 where it is padding; what hangs on a
            missing section is missing too.
    """

    name: str
    parent: int | None
    area_ft2: Floats
    equivalent_diameter_in: Floats
    length_ft: Floats = 0.0
    roughness_ft: Floats = 3e-4
    slack_factor: Floats = 1.0
    coefficient: Floats = 0.0
    fittings_ft: Floats = 0.0
    drop_inwc: Floats = 0.0
    drop_at_cfm: Floats = 100.0
    drop_exponent: Floats = 2.0
    count: Floats = 1.0
    present: Floats = 1.0


_BOUNDS: Final = {
    "area_ft2": (2e-3, 50.0),
    "equivalent_diameter_in": (0.5, 100.0),
    "length_ft": (0.0, 1000.0),
    "roughness_ft": (0.0, 0.02),
    "slack_factor": (1.0, 100.0),
    "coefficient": (0.0, 200.0),
    "fittings_ft": (0.0, 2000.0),
    "drop_inwc": (0.0, 5.0),
    "drop_at_cfm": (1.0, 20000.0),
    "drop_exponent": (1.0, 3.0),
    "count": (1e-3, 100.0),
    "present": (0.0, 1.0),
}
_PADDING: Final = {"area_ft2": 0.2, "equivalent_diameter_in": 6.0, "roughness_ft": 3e-4}


@dataclass(frozen=True, slots=True)
class Network:
    """Sections that were checked and stacked once, to be split at many airflows.

    Attributes:
        sections: As given.
        outlets: Indices of the sections that nothing hangs on.
        samples: n; 0 when every figure of every section is a scalar.
        children: For each section the indices of those that hang on it.
        figures: Each figure of `Section` stacked, (sections, n) or (sections, 1), padding made
            harmless where present is 0.
    """

    sections: tuple[Section, ...]
    outlets: tuple[int, ...]
    samples: int
    children: tuple[tuple[int, ...], ...] = field(repr=False)
    figures: dict[str, Array] = field(repr=False)

    @classmethod
    def of(cls, sections: Sequence[Section]) -> Self:
        """Check and stack sections.

        Args:
            sections: At least one; a section's parent comes before it.

        Raises:
            FactError: No section, a parent that isn't an earlier section, arrays whose lengths
                differ, an outlet without anything that takes pressure, or a sample without outlet.
            OutOfRangeError: A figure outside the limits of `Section`, or NaN.
        """
        if not sections:
            raise FactError("sections", "a network needs at least one section")
        children: list[list[int]] = [[] for _ in sections]
        for index, section in enumerate(sections):
            if section.parent is None:
                continue
            if not 0 <= section.parent < index:
                raise FactError(
                    section.name, "hangs on a section that isn't listed before it; list that first"
                )
            children[section.parent].append(index)
        figures = _stacked(sections)
        outlets = tuple(i for i, hung in enumerate(children) if not hung)
        _require_resistance(sections, outlets, figures)
        n = max(_length_of(section) for section in sections)
        return cls(tuple(sections), outlets, n, tuple(map(tuple, children)), figures)

    def outlet_names(self) -> tuple[str, ...]:
        """Names of the outlets, in their order."""
        return tuple(self.sections[i].name for i in self.outlets)


def _length_of(section: Section) -> int:
    sizes = {
        np.asarray(getattr(section, f.name)).size
        for f in fields(section)
        if f.name in _BOUNDS and np.ndim(getattr(section, f.name)) == 1
    }
    return max(sizes, default=0)


def _stacked(sections: Sequence[Section]) -> dict[str, Array]:
    n = max(max(_length_of(section) for section in sections), 1)
    figures: dict[str, Array] = {}
    present = np.empty((len(sections), n))
    for index, section in enumerate(sections):
        _fill(present, index, section.name, "present", section.present)
    require_within("present", present, 0.0, 1.0)
    present = (present > 0.5).astype(np.float64)
    for index, section in enumerate(sections):
        if section.parent is not None:
            present[index] *= present[section.parent]
    figures["present"] = present
    for name, (low, high) in _BOUNDS.items():
        if name == "present":
            continue
        stacked = np.empty((len(sections), n))
        for index, section in enumerate(sections):
            _fill(stacked, index, section.name, name, getattr(section, name))
        stacked = np.where(present > 0.0, stacked, _PADDING.get(name, 1.0))
        require_within(name, stacked, low, high)
        figures[name] = stacked
    return figures


def _fill(into: Array, index: int, section: str, name: str, values: Floats) -> None:
    given = np.asarray(values, dtype=np.float64)
    if given.ndim > 1 or given.size not in (1, into.shape[1]):
        raise FactError(
            f"{section}.{name}", f"has {given.size} samples where others have {into.shape[1]}"
        )
    into[index] = given


def _require_resistance(
    sections: Sequence[Section], outlets: tuple[int, ...], figures: dict[str, Array]
) -> None:
    takes = (
        figures["length_ft"]
        + figures["fittings_ft"]
        + figures["coefficient"]
        + figures["drop_inwc"]
    )
    there = figures["present"] > 0.0
    for index in outlets:
        if (there[index] & ~(takes[index] > 0.0)).any():
            raise FactError(
                sections[index].name,
                "is an outlet with no length, fitting, coefficient or drop; give it at least one",
            )
    if not there[list(outlets)].any(axis=0).all():
        raise FactError("sections", "every sample needs at least one outlet that is present")
