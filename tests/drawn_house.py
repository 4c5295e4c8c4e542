"""The house, drawn from its imports: `python -m tests.drawn_house` writes `tests/house.svg`.

One box a folder, from the entry at the top to what knows nothing of the others at the bottom; in it the modules in
rows, each above those of its folder that it imports. A bow at the right is imports that go down, as thick as they are
many; one at the left is imports that go up.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from graphlib import TopologicalSorter
from html import escape
from itertools import permutations
from math import log2
from pathlib import Path
from textwrap import wrap

import grimp

FILE = Path(__file__).with_name("house.svg")
LAYERS = ("bot", "db", "plans")
"""As the import contract has them."""

WIDTH, SIDE, BOWS = 1100, 70, 190
"""Pixels: the whole, and what is left for bows at the left and at the right."""
LINE, GAP, PAD = 15, 14, 8
LETTERS = 120
"""Letters of a row."""
STYLE = """
svg{color:#1f2a37;background:#fff;font:11px ui-monospace,monospace}text{fill:currentColor}
.b{font-weight:700;font-size:13px}
rect{fill:none;stroke:currentColor;stroke-opacity:.5}path{fill:none;stroke:currentColor;stroke-opacity:.35}
@media(prefers-color-scheme:dark){svg{color:#dbe3ec;background:#161b22}}
"""

Imports = Mapping[str, frozenset[str]]


def imports() -> Imports:
    """Every module with those of ours that it imports, inside functions too."""
    graph = grimp.build_graph(*LAYERS, exclude_type_checking_imports=True, cache_dir=None)
    return {module: frozenset(graph.find_modules_directly_imported_by(module)) for module in sorted(graph.modules)}


def folders(found: Imports) -> dict[str, list[str]]:
    """The modules of each folder; a package's own file belongs to its folder."""
    packages = {module.rpartition(".")[0] for module in found} - {""}
    inside: dict[str, list[str]] = {}
    for module in found:
        inside.setdefault(module if module in packages else module.rpartition(".")[0], []).append(module)
    return {name: modules for name, modules in inside.items() if len(modules) > 1}


def heights(found: Imports) -> dict[str, int]:
    """How many imports inside its own folder each module stands on. Raises CycleError for a way back to itself."""
    home = {module: name for name, modules in folders(found).items() for module in modules}
    height: dict[str, int] = {}
    for module in TopologicalSorter(found).static_order():
        below = [height[other] for other in found[module] if home.get(other) == home.get(module)]
        height[module] = 1 + max(below, default=-1)
    return height


def between(found: Imports) -> Counter[tuple[str, str]]:
    """How many imports go from one folder to another."""
    home = {module: name for name, modules in folders(found).items() for module in modules}
    pairs = ((home.get(one), home.get(other)) for one, others in found.items() for other in others)
    return Counter((one, other) for one, other in pairs if one and other and one != other)


def in_order(found: Imports) -> list[str]:
    """The folders from top to bottom: layer by layer, in each so that the fewest imports go up."""
    counts, there = between(found), folders(found)

    def upward(order: Iterable[str]) -> int:
        names = list(order)
        return sum(counts[low, high] for at, high in enumerate(names) for low in names[at + 1 :])

    ordered: list[str] = []
    for layer in LAYERS:
        ordered += min(permutations(sorted(name for name in there if name.split(".")[0] == layer)), key=upward)
    return ordered


def drawn(found: Imports) -> str:
    """The drawing as SVG."""
    there, height, parts, spots, top = folders(found), heights(found), list[str](), dict[str, float](), GAP
    for name in in_order(found):
        lines = list(_rows(there[name], height))
        tall = PAD * 2 + LINE * (len(lines) + 1)
        parts += _box(name, len(there[name]), lines, top, tall)
        spots[name] = top + tall / 2
        top += tall + GAP
    parts += _bows(between(found), spots)
    title = "The folders of the house and what they import"
    head = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {top}" role="img" aria-label="{title}">'
    return "\n".join([head, f"<title>{title}</title><style>{STYLE}</style>", *parts, "</svg>", ""])


def _rows(modules: Sequence[str], height: Mapping[str, int]) -> Iterator[str]:
    """A folder's modules, those that nobody there imports at the top."""
    for level in range(max(height[module] for module in modules), -1, -1):
        names = sorted(_called(module, modules) for module in modules if height[module] == level)
        yield from wrap("  ".join(names), LETTERS)


def _called(module: str, modules: Sequence[str]) -> str:
    """A module's file name; a package's own is shorter than those inside it."""
    return "__init__" if module == min(modules, key=len) else module.rpartition(".")[2]


def _box(name: str, count: int, lines: Sequence[str], top: int, tall: int) -> Iterator[str]:
    yield f'<rect x="{SIDE}" y="{top}" width="{WIDTH - SIDE - BOWS}" height="{tall}" rx="6"/>'
    folder = f"{name.replace('.', '/')}/"
    at = top + PAD + LINE - 4
    yield f'<text class="b" x="{SIDE + PAD}" y="{at}">{escape(folder)}</text>'
    yield f'<text x="{WIDTH - BOWS - PAD}" y="{at}" text-anchor="end">{count} modules</text>'
    for row, line in enumerate(lines, start=1):
        yield f'<text x="{SIDE + PAD}" y="{at + row * LINE}" xml:space="preserve">{escape(line)}</text>'


def _bows(counts: Counter[tuple[str, str]], spots: Mapping[str, float]) -> Iterator[str]:
    """Imports as bows between the middles of boxes, the longer the wider."""
    places = {name: at for at, name in enumerate(spots)}
    widest = len(spots) - 1
    for (one, other), count in sorted(counts.items()):
        steps = places[other] - places[one]
        edge, room = (WIDTH - BOWS, BOWS) if steps > 0 else (SIDE, -SIDE)
        out = round(edge + room * 1.15 * abs(steps) / widest)
        tip = edge + room / 20
        # Bows of one box begin one below the other, so that they can be told apart.
        start, end = spots[one] + 2 * steps, spots[other] - 2 * steps
        thick = 1 + log2(count) / 2
        bow = f"M{edge} {start:g}C{out} {start:g} {out} {end:g} {edge} {end:g}"
        yield f'<path d="{bow}" stroke-width="{thick:.1f}"/>'
        yield f'<path d="M{tip:g} {end - 4:g}L{edge} {end:g}L{tip:g} {end + 4:g}"/>'
        middle = edge + (out - edge) * 0.75
        yield f'<text x="{middle:.0f}" y="{(start + end) / 2 + 4:g}" text-anchor="middle">{count}</text>'


if __name__ == "__main__":
    FILE.write_text(drawn(imports()), encoding="utf-8")
