"""A body and the things beside it as a drawing, and its shapes as SVG."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from html import escape

from plans.figures.body import Body
from plans.figures.camera import VIEWS as VIEWS
from plans.figures.camera import Camera as Camera
from plans.figures.figure import CLOSE, figure
from plans.figures.painting import Bar, Solid, painted
from plans.figures.shapes import Shape as Shape
from plans.figures.shapes import bounds_of as bounds_of
from plans.figures.shapes import outline
from plans.figures.space import between
from plans.figures.things import Box, solids
from plans.figures.written import Drawn, Prop
from plans.movements import Muscle


def picture(body: Body, how: Drawn, working: Iterable[Muscle], lead: str, *, lower: float = 0.0) -> list[Shape]:
    """A body with its things as its figure is written to be seen, the farthest shape first; `lower` on the paper."""
    camera = Camera.of(how.view, zoom=CLOSE.get(how.close or "", 1.0), lower=lower)
    things = [solid for prop in how.props for solid in _thing(prop, body, camera)]
    return painted([*things, *figure(body, camera, working, lead, how.close)], camera)


def _thing(prop: Prop, body: Body, camera: Camera) -> Iterator[Solid]:
    for solid in solids(prop, body):
        if isinstance(solid, Box):
            yield Solid(prop.what, list(_faces(solid, camera)), box=solid)
        else:
            kind = "strap" if solid.is_held and prop.what != "weight" else "thing"
            bar = Bar.of(camera, solid.begin, solid.end, (solid.half, solid.half), kind)
            yield Solid(prop.what, [bar.shape], [bar], nearer=HELD if solid.is_held else 0.0)


HELD = 0.03
"""Of body height: what is held counts so much nearer, before limbs and behind the hands."""


def _faces(box: Box, camera: Camera) -> Iterator[Shape]:
    """A box's outline, and its upper face when it is seen from above."""
    (x, y, z), (a, b, c) = box.low, box.high
    depth = camera.depth(between(box.low, box.high, 0.5))
    yield outline([camera.seen((p, q, r)) for p in (x, a) for q in (y, b) for r in (z, c)], "thing", depth)
    if 0.15 < camera.near[2] < 0.95 and c - z > 0.02:
        yield outline([camera.seen((p, q, c)) for p in (x, a) for q in (y, b)], "thing top", depth)


STYLE = """
.outline{fill:#3a3b38;stroke:#3a3b38;stroke-width:.013;stroke-linejoin:round}
.near,.head,.far,.hair{stroke:#3a3b38;stroke-width:.0065;stroke-linejoin:round}
.near,.head{fill:#f0d9bd}.far{fill:#d9bfa0}.trunk{fill:#6f8f94}.hair{fill:#6b5142}.eye{fill:#3a3b38}.nose{fill:#d8b48e}.palm{fill:#f2bfa2}
.blade{fill:#587479;stroke:#3a3b38;stroke-width:.004}.bare{stroke:none}
.hatch{fill:url(#work);stroke:#7a2f1d;stroke-width:.004}.hidden{fill:none;stroke-dasharray:.012 .009}
.thing{fill:#cfd3c8;stroke:#7d8479;stroke-width:.005;stroke-linejoin:round}.top{fill:#dde0d6}
.strap{fill:#8a6d2f;stroke:#5e4a1f;stroke-width:.002}
.floor{stroke:#9aa096;stroke-width:.006;stroke-linecap:round}
"""
HATCH = (
    '<pattern id="work" width=".013" height=".013" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">'
    '<rect width=".013" height=".013" fill="#f6e7d2"/><rect width=".0055" height=".013" fill="#a8452c"/></pattern>'
)


def shapes_svg(shapes: Iterable[Shape]) -> str:
    """Shapes as SVG elements, in their order."""
    return "".join(f'<path class="{escape(shape.kind)}" d="{shape.path}"/>' for shape in shapes)
