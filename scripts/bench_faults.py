"""How often a planted slip or cause is named first, and how often a sound house is accused.

python scripts/bench_faults.py [--houses 200] [--samples 1024]
"""

from __future__ import annotations

import argparse
import sys
from collections import Counter
from collections.abc import Sequence
from pathlib import Path
from typing import Final

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from scripts.simulated_faults import FAULTS, Found, found_in, planted, share_accused

__all__ = ["main"]

_SOUND_FROM: Final = 100_000
_MOST_ACCUSED: Final = 0.02


def main(arguments: Sequence[str] | None = None) -> int:
    """Print the table; 1 if sound houses are accused too often."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--houses", type=int, default=200, help="houses of each fault")
    parser.add_argument("--samples", type=int, default=1024)
    told = parser.parse_args(arguments)
    width = max(len(fault) for fault in FAULTS)
    columns = tuple(Found)
    print(f"{'planted':{width}}  " + "  ".join(f"{column.value:>10}" for column in columns))
    for fault in FAULTS:
        counts = Counter(
            found_in(planted(fault, seed), samples=told.samples) for seed in range(told.houses)
        )
        cells = (f"{counts[c]:{max(len(c.value), 10)}}" for c in columns)
        print(f"{fault:{width}}  " + "  ".join(cells), flush=True)
    accused = share_accused(range(_SOUND_FROM, _SOUND_FROM + told.houses), samples=told.samples)
    print(f"sound houses accused: {100.0 * accused:.1f} % of {told.houses} (at most 2 %)")
    return 1 if accused > _MOST_ACCUSED else 0


if __name__ == "__main__":
    raise SystemExit(main())
