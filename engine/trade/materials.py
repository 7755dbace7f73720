"""Duct materials and the roughness of their inside."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import Final

__all__ = ["MATERIALS", "Material", "MaterialRow", "is_flexible"]


class Material(StrEnum):
    """What a duct is made of, as seen from its inside."""

    GALVANIZED = "galvanized"
    FLEX = "flex"
    DUCT_BOARD = "duct_board"
    LINED_METAL = "lined_metal"
    PANNED_JOIST = "panned_joist"
    STUD_BAY = "stud_bay"
    ALUMINUM = "aluminum"
    PVC = "pvc"
    FLEX_METAL = "flex_metal"


@dataclass(frozen=True, slots=True)
class MaterialRow:
    """Roughness of one material.

    Attributes:
        roughness_low_ft: One in ten is smoother, ft.
        roughness_likely_ft: The category's usual value, ft.
        roughness_high_ft: One in ten is rougher, ft.
        words: The material in everyday words.
        source: Where the roughness is from, and how it is held.
    """

    roughness_low_ft: float
    roughness_likely_ft: float
    roughness_high_ft: float
    words: str
    source: str


_F21: Final = "2021 ASHRAE Handbook-Fundamentals ch. 21, roughness table (read)"

MATERIALS: Final[Mapping[Material, MaterialRow]] = MappingProxyType(
    {
        Material.GALVANIZED: MaterialRow(0.00027, 0.0003, 0.0005, "bare sheet metal", _F21),
        Material.FLEX: MaterialRow(
            0.001, 0.003, 0.0035, "flex, pulled fully straight", f"{_F21}: 0.0003 to 0.003"
        ),
        Material.DUCT_BOARD: MaterialRow(
            0.0013, 0.003, 0.005, "duct board", f"{_F21}: no data, tentatively medium rough"
        ),
        Material.LINED_METAL: MaterialRow(
            0.003, 0.005, 0.010, "sheet metal with liner", f"{_F21}: 0.005 faced, 0.015 sprayed"
        ),
        Material.PANNED_JOIST: MaterialRow(
            0.005, 0.010, 0.015, "panned joist bay", "assumed; no published value was found"
        ),
        Material.STUD_BAY: MaterialRow(
            0.005, 0.010, 0.015, "stud bay", "assumed; no published value was found"
        ),
        Material.ALUMINUM: MaterialRow(0.00012, 0.00015, 0.0002, "aluminum pipe", _F21),
        Material.PVC: MaterialRow(0.00003, 0.00015, 0.00016, "plastic pipe", _F21),
        Material.FLEX_METAL: MaterialRow(
            0.004, 0.007, 0.010, "corrugated metal flex", f"{_F21}: 0.004 to 0.007, category 0.01"
        ),
    }
)


def is_flexible(material: Material) -> bool:
    """Whether the speed limits of flexible duct apply.

    >>> is_flexible(Material.FLEX), is_flexible(Material.DUCT_BOARD)
    (True, False)
    """
    return material in (Material.FLEX, Material.FLEX_METAL)
