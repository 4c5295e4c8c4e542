"""A movement on its way: limbs keep their length, what stands still stays, and the file plays."""

from __future__ import annotations

import io
import sys
from itertools import pairwise

import av
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL.GifImagePlugin import GifImageFile

from bot.cli.drawing import NothingToDraw, picture_of
from bot.practice.pictures import film_sides
from plans.figures import film
from plans.figures.body import Body
from plans.figures.film import END_MS, SIDE, START_MS, STEP_MS, STEPS, NoEncoder, gif, mp4
from plans.figures.library import bodies, drawn
from plans.figures.moving import turn_between, way
from plans.figures.space import Frame, about_forward, about_left, about_up, length, sub, then
from plans.movements import library

KEYS = sorted(drawn())


def lengths(body: Body) -> dict[str, float]:
    return {name: length(sub(part.end, part.begin)) for name, part in body.items()}


@pytest.mark.parametrize("key", KEYS)
def test_parts_keep_their_length_on_the_way_and_hang_together(key: str) -> None:
    poses = bodies(key, drawn()[key])
    for body in way(poses[0], poses[-1], 3):
        for name, long in lengths(body).items():
            assert long == pytest.approx(lengths(poses[0])[name], abs=1e-6), name
        for side in ("left", "right"):
            assert length(sub(body[f"{side} thigh"].end, body[f"{side} shank"].begin)) < 1e-6
            assert length(sub(body[f"{side} forearm"].end, body[f"{side} hand"].begin)) < 1e-6


def test_feet_that_stand_in_both_poses_stand_on_the_way() -> None:
    poses = bodies("romanian-deadlift", drawn()["romanian-deadlift"])
    for body in way(poses[0], poses[-1], 5):
        for side in ("left", "right"):
            assert length(sub(body[f"{side} foot"].end, poses[0][f"{side} foot"].end)) < 0.01


def test_the_way_begins_and_ends_softly_and_never_turns_back() -> None:
    poses = bodies("romanian-deadlift", drawn()["romanian-deadlift"])
    heads = [body["head"].end[2] for body in (poses[0], *way(poses[0], poses[-1], 7), poses[-1])]
    steps = [a - b for a, b in pairwise(heads)]
    assert min(steps) > 0
    assert max(steps[0], steps[-1]) < steps[len(steps) // 2]


TURNS = st.tuples(*[st.floats(-180, 180)] * 3).map(
    lambda angles: then(then(about_up(angles[0]), about_left(angles[1])), about_forward(angles[2]))
)


@given(TURNS, TURNS, st.floats(0, 1))
def test_a_turn_between_two_turns_is_a_turn(first: Frame, last: Frame, share: float) -> None:
    found = turn_between(first, last, share)
    for i in range(3):
        for j in range(3):
            dots = sum(found[i][k] * found[j][k] for k in range(3))
            assert dots == pytest.approx(float(i == j), abs=1e-6)
    assert turn_between(first, last, 0.0)[0] == pytest.approx(first[0], abs=1e-6)


def test_half_a_turn_has_a_middle_too() -> None:
    half = turn_between(about_up(0), about_up(180), 0.5)
    assert abs(half[0][1]) == pytest.approx(1, abs=1e-6)


def test_a_gif_goes_there_and_back_for_ever() -> None:
    file = GifImageFile(io.BytesIO(picture_of("romanian-deadlift", ".gif")))
    assert (file.n_frames, file.info["loop"]) == (2 * STEPS + 2, 0)
    times = []
    for number in range(file.n_frames):
        file.seek(number)
        times.append(file.info["duration"])
    assert times == [START_MS, *[STEP_MS] * STEPS, END_MS, *[STEP_MS] * STEPS]
    assert max(file.size) == SIDE


def test_an_mp4_plays_as_long_as_its_pictures() -> None:
    body = picture_of("romanian-deadlift", ".mp4")
    with av.open(io.BytesIO(body), "r") as file:
        stream = file.streams.video[0]
        assert stream.codec_context.name == "h264"
        assert not file.streams.audio
        frames = [frame.time for frame in file.decode(video=0)]
    assert frames[-1] == pytest.approx((START_MS + END_MS + 2 * STEPS * STEP_MS) / 1000, abs=0.05)
    assert len(body) < 150_000
    assert film_sides(body) == (stream.width, stream.height)


def test_a_single_pose_is_a_film_of_one_picture() -> None:
    how = drawn()["romanian-deadlift"]
    seen = film.film("still", how.model_copy(update={"poses": how.poses[-1:]}), library()["romanian-deadlift"])
    assert len(seen) == 1
    assert GifImageFile(io.BytesIO(gif(seen))).n_frames == 1
    assert mp4(seen)


def test_without_the_encoder_it_is_said_what_to_install(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "av", None)
    with pytest.raises(NoEncoder, match=r"PyAV: pip install av"):
        picture_of("romanian-deadlift", ".mp4")
    with pytest.raises(NothingToDraw, match="one movement"):
        picture_of("all", ".gif")
