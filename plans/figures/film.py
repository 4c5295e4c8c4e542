"""A movement as a short film that begins again: held at the start, on its way, held at the end, and back."""

from __future__ import annotations

import io
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from PIL import Image

from plans.figures.drawing import HATCH, STYLE, bounds_of, shapes_svg
from plans.figures.library import Worked, bodies, shapes_of
from plans.figures.moving import way
from plans.figures.raster import picture
from plans.figures.written import Drawn

SIDE = 540
"""Pixels of a film, wide and high at most."""
STEPS = 7
"""Pictures on the way from pose to pose."""
START_MS, STEP_MS, END_MS = 900, 70, 1500
"""How long each is seen, in thousandths of a second (own choice)."""
MARGIN = 0.06
"""Of body height, round what is drawn."""


class NoEncoder(RuntimeError):
    """A kind of film for which the library is not installed; the message says what to install."""


@dataclass(frozen=True, slots=True)
class Seen:
    """One picture of a film, as an SVG file's text, and how long it is seen."""

    svg: str
    milliseconds: int


def film(key: str, how: Drawn, movement: Worked) -> list[Seen]:
    """The pictures of a movement there and back; one alone for a single pose. Raises ImpossiblePose."""
    poses = bodies(key, how)
    there = [poses[0]]
    for first, last in pairwise(poses):
        there += [*way(first, last, STEPS), last]
    drawn = [shapes_of(body, how, movement, working=body is poses[-1]) for body in there]
    left, top, right, bottom = bounds_of(shape for shapes in drawn for shape in shapes)
    box = (left - MARGIN, top - MARGIN, right - left + 2 * MARGIN, bottom - top + 2 * MARGIN)
    svgs = [_svg(shapes_svg(shapes), box) for shapes in drawn]
    times = [STEP_MS] * len(svgs)
    times[-1], times[0] = END_MS, START_MS
    seen = [Seen(svg, time) for svg, time in zip(svgs, times, strict=True)]
    return [*seen, *seen[-2:0:-1]]


def _svg(body: str, box: tuple[float, float, float, float]) -> str:
    left, top, wide, high = box
    scale = SIDE / max(wide, high)
    across, down = (2 * round(side * scale / 2) for side in (wide, high))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="{left:.3f} {top:.3f} {wide:.3f} {high:.3f}" '
        f'width="{across}" height="{down}" preserveAspectRatio="none"><style>{STYLE}</style><defs>{HATCH}</defs>'
        f'<rect x="{left:.3f}" y="{top:.3f}" width="100%" height="100%" fill="#fbf9f3"/>{body}</svg>'
    )


def gif(seen: Sequence[Seen]) -> bytes:
    """A film as a GIF that never ends."""
    pictures = _pictures(seen)
    first = pictures[len(pictures) // 2].quantize(64, dither=Image.Dither.NONE)
    frames = [picture.quantize(palette=first, dither=Image.Dither.NONE) for picture in pictures]
    out, times = io.BytesIO(), [one.milliseconds for one in seen]
    frames[0].save(out, "GIF", save_all=True, append_images=frames[1:], duration=times, loop=0, optimize=False)
    return out.getvalue()


def mp4(seen: Sequence[Seen]) -> bytes:
    """A film as an MP4 of H.264 without sound. Raises NoEncoder where PyAV is not installed."""
    try:
        import av
    except ImportError:
        raise NoEncoder("an MP4 needs PyAV: pip install av, or write a .gif") from None
    out, pictures = io.BytesIO(), _pictures(seen)
    with av.open(out, "w", format="mp4") as file:
        stream = file.add_stream("libx264", rate=25, options={"crf": "20"})
        stream.width, stream.height = pictures[0].size
        stream.pix_fmt, stream.time_base = "yuv420p", Fraction(1, 1000)
        stream.codec_context.time_base = Fraction(1, 1000)
        at = 0
        for picture, one in zip((*pictures, pictures[0]), (*seen, seen[0]), strict=True):
            frame = av.VideoFrame.from_image(picture)  # type: ignore[no-untyped-call]
            frame.pts, frame.time_base = at, Fraction(1, 1000)
            file.mux(stream.encode(frame))
            at += one.milliseconds
        file.mux(stream.encode(None))
    return out.getvalue()


def _pictures(seen: Sequence[Seen]) -> list[Image.Image]:
    """The pictures of a film, each one drawn once."""
    drawn = {svg: picture(svg) for svg in dict.fromkeys(one.svg for one in seen)}
    return [drawn[one.svg] for one in seen]
