"""Builders of networks from what is known of a house, down to counts and sizes alone.

A trunk is cut into pieces between takeoffs, so that each piece carries the air that is left.
"""

from collections.abc import Sequence
from dataclasses import replace

import numpy as np

from engine.arrays import Floats, require_within
from engine.errors import FactError
from engine.physics.sections import Section

__all__ = ["counted_branches", "trunk_with_branches"]


def trunk_with_branches(
    trunk: Sequence[Section],
    branches: Sequence[Section],
    takeoffs: Sequence[int] | None = None,
    first_index: int = 0,
) -> tuple[Section, ...]:
    """A trunk, reducing or not, with branches taken off along it.

    Args:
        trunk: Its sizes from the plenum on, one section each; the fitting figures of a section
            count once, at its start. Parents are set here; the first one's is kept.
        branches: Branches in the order they leave; their parents are set here. A branch whose
            `present` is 0 in a sample takes no length of trunk there.
        takeoffs: How many branches leave each trunk section, adding up to all of them; None
            spreads them evenly.
        first_index: Index that the first section returned will have in the whole network.

    Returns:
        Sections in an order in which parents come first: each piece of trunk, then its branch.

    Raises:
        FactError: No trunk or branch, or takeoffs that don't fit.
    """
    if not trunk or not branches:
        raise FactError("trunk", "a trunk needs at least one section and one branch")
    counts = _spread(len(branches), len(trunk)) if takeoffs is None else tuple(takeoffs)
    if len(counts) != len(trunk) or sum(counts) != len(branches) or min(counts) < 0:
        raise FactError(
            "takeoffs",
            f"give one count for each of {len(trunk)} trunk sections, {len(branches)} "
            "branches in all",
        )
    if counts[-1] == 0:
        raise FactError("takeoffs", "the last trunk section needs at least one branch")
    sections: list[Section] = []
    parent = trunk[0].parent
    left = iter(branches)
    for size, count in zip(trunk, counts, strict=True):
        leaving = [next(left) for _ in range(count)]
        live = [np.asarray(branch.present) > 0.5 for branch in leaving]
        number = np.maximum(sum(1.0 * there for there in live), 1.0) if live else 1.0
        for index in range(max(count, 1)):
            piece = replace(
                size,
                name=size.name if index == 0 else f"{size.name}, after takeoff {index}",
                parent=parent,
                length_ft=_piece_length(size.length_ft, number, live, index),
            )
            if index > 0:
                piece = replace(piece, coefficient=0.0, fittings_ft=0.0, drop_inwc=0.0)
            parent = first_index + len(sections)
            sections.append(piece)
            if leaving:
                sections.append(replace(leaving[index], parent=parent))
    return tuple(sections)


def counted_branches(
    trunk: Section, branch: Section, branch_count: Floats, groups: int = 4, first_index: int = 0
) -> tuple[Section, ...]:
    """A trunk and a number of equal branches, when nothing but counts and sizes is known.

    The branches are gathered in a few equal groups along the trunk, so that the number may be
    another one, even a fraction, in every sample.

    Args:
        trunk: The trunk's size and whole length.
        branch: One branch.
        branch_count: How many, 1 to 100; scalar or (n,).
        groups: Into how many pieces the trunk is cut, 1 to 12.
        first_index: Index that the first section returned will have in the whole network.

    Returns:
        2 x groups sections, parents first.

    Raises:
        OutOfRangeError: A count outside these limits, or NaN.
    """
    require_within("branch_count", branch_count, 1.0, 100.0)
    require_within("groups", float(groups), 1.0, 12.0)
    group = replace(branch, count=branch_count / groups)
    return trunk_with_branches((trunk,), (group,) * groups, first_index=first_index)


def _spread(branches: int, sections: int) -> tuple[int, ...]:
    """As even as whole numbers are, the odd ones nearest to the far end."""
    each, odd = divmod(branches, sections)
    return tuple(each + (1 if index >= sections - odd else 0) for index in range(sections))


def _piece_length(
    length_ft: Floats, number: Floats, live: Sequence[np.ndarray], index: int
) -> Floats:
    if not live:
        return length_ft
    return length_ft / number * live[index]
