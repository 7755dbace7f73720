"""Duct board above the pressure it is made for: a note beside the blower's static, never a vote."""

from typing import Final

from engine.checks.context import Context
from engine.trade.exponents import PressurePart
from engine.trade.materials import Material

__all__ = ["duct_board_note"]

_SUPPLY: Final = ("supply.trunks", "supply.branches")
_RETURN: Final = ("return.drops", "return.trunks", "return.branches")


def duct_board_note(context: Context, airflow_cfm: float) -> str:
    """One sentence where a stated duct of board stands in more than its class; else empty.

    The board beside the blower feels all that the duct on its side takes, and on the return side
    what a filter behind the grille takes as well.
    """
    limit = context.limits.duct_board_static_inwc
    sides = ((_SUPPLY, PressurePart.SUPPLY_DUCT), (_RETURN, PressurePart.RETURN_DUCT))
    for names, part in sides:
        board = [
            duct
            for duct in context.ducts
            if duct.stated and duct.material is Material.DUCT_BOARD and duct.key.startswith(names)
        ]
        if not board:
            continue
        pressure = context.system.central_drop_inwc(part, airflow_cfm, context.mode)
        if part is PressurePart.RETURN_DUCT and _filter_at_grille(context):
            pressure += context.system.central_drop_inwc(
                PressurePart.FILTER, airflow_cfm, context.mode
            )
        if pressure > limit.value:
            return (
                f"The {board[0].where} is duct board, whose usual class ends at "
                f"{limit.value:.1f} in. w.c.: {pressure:.2f} in. stands in it here."
            )
    return ""


def _filter_at_grille(context: Context) -> bool:
    at_grille = any(bank.place == "grille" and bank.present[0] for bank in context.filters)
    return at_grille and PressurePart.FILTER in context.system.parts
