"""The painter: a process of its own that turns what is to be drawn into picture files, so that the chat never waits.

It reads one JSON value a line and writes, for each, the length of the file in four bytes and the file; a length of 0
and then a line of words say why nothing could be drawn. It ends with its input.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Mapping
from typing import Any, BinaryIO

from pydantic import TypeAdapter

from plans.charts.code import Code, code_svg
from plans.charts.digest import Digest, digest_svg
from plans.charts.doses import Doses, doses_svg
from plans.charts.fortnight import Fortnight, fortnight_svg
from plans.charts.progress import Progress, progress_svg
from plans.charts.staying import Staying, staying_svg
from plans.figures import film
from plans.figures.card import Card, Shown, card_svg
from plans.figures.raster import png, size_of


def _png(svg: str) -> bytes:
    """The picture file of a drawing. Raises TooLarge for one that no chat shows, before it costs memory."""
    size_of(svg)
    return png(svg)


def _card(of: Mapping[str, Any], _ending: str) -> bytes:
    return _png(card_svg(Card.of_json(of)))


def _film(of: Mapping[str, Any], ending: str) -> bytes:
    shown = Shown.of_json(of)
    how = shown.how()
    if how is None:
        raise ValueError(f"{shown.movement} has no figure")
    seen = film.film(shown.movement, how, shown)
    return film.mp4(seen) if ending == "mp4" else film.gif(seen)


def _chart(shape: type[Any], drawn: Callable[[Any], str]) -> Callable[[Mapping[str, Any], str], bytes]:
    read = TypeAdapter(shape)
    return lambda of, _ending: _png(drawn(read.validate_python(of)))


KINDS: Mapping[str, Callable[[Mapping[str, Any], str], bytes]] = {
    "card": _card,
    "film": _film,
    "progress": _chart(Progress, progress_svg),
    "fortnight": _chart(Fortnight, fortnight_svg),
    "doses": _chart(Doses, doses_svg),
    "digest": _chart(Digest, digest_svg),
    "staying": _chart(Staying, staying_svg),
    "code": _chart(Code, code_svg),
}
"""What can be drawn, by the recipe's `kind`, from what its `of` says."""


def paint(recipe: Mapping[str, Any]) -> bytes:
    """The picture file of a recipe. Raises KeyError for a kind that is not drawn, ValueError for an impossible one."""
    return KINDS[recipe["kind"]](recipe["of"], recipe.get("ending", "png"))


def serve(lines: BinaryIO, out: BinaryIO) -> None:
    """Paints until the input ends."""
    for line in lines:
        try:
            file, words = paint(json.loads(line)), b""
        except Exception as error:
            file, words = b"", f"{type(error).__name__}: {error}".replace("\n", " ").encode() + b"\n"
        out.write(len(file).to_bytes(4, "big") + file + words)
        out.flush()


if __name__ == "__main__":
    serve(sys.stdin.buffer, sys.stdout.buffer)
