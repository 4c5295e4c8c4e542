"""Figures: a body in its proportions, joints within their ranges, contacts that hold, every written pose drawn."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.drawing import NothingToDraw, picture_of
from plans.figures.body import SIDES, Angles, ImpossiblePose, Turn, body_of, centre_of_mass
from plans.figures.drawing import VIEWS, Camera, figure
from plans.figures.library import drawn, frames, read
from plans.figures.posing import landmark, posed
from plans.figures.proportions import GIVE, LENGTHS, MASSES, RANGES
from plans.figures.sheet import CELL_HIGH, CELL_WIDE, sheet
from plans.figures.space import length, sub
from plans.figures.written import Pose
from plans.movements import Muscle, library

every = pytest.mark.parametrize("key", sorted(drawn()))


def pose(**fields: object) -> Pose:
    return Pose.model_validate(fields)


def test_a_body_that_stands_is_as_high_as_it_should_be() -> None:
    """Drillis & Contini in Winter (from memory): hip .530, shoulder .818 and crown 1.0 of body height."""
    body = posed(pose()).body
    assert body["right thigh"].begin[2] == pytest.approx(0.530, abs=0.002)
    assert body["thorax 3"].end[2] == pytest.approx(0.818, abs=0.002)
    assert body["head"].end[2] == pytest.approx(1.0, abs=0.002)


def test_the_masses_are_those_of_a_whole_body() -> None:
    paired = {"upper-arm", "forearm", "hand", "thigh", "shank", "foot"}
    whole = sum(mass * (2 if part in paired else 1) for part, mass in MASSES.items())
    assert whole == pytest.approx(1.0, abs=0.01)
    standing = centre_of_mass(posed(pose()).body)
    assert 0.53 <= standing[2] <= 0.58, "a little above the hips"


def test_a_hinge_leans_by_what_the_hips_bend() -> None:
    upright, hinged = posed(pose()).body, posed(pose(hips=60)).body
    assert hinged["pelvis"].end[0] > upright["pelvis"].end[0] + 0.04
    assert hinged["left foot"].begin[2] == pytest.approx(0.0, abs=1e-6)
    assert length(sub(hinged["left thigh"].end, hinged["left thigh"].begin)) == pytest.approx(LENGTHS["thigh"])


def test_a_rounded_back_is_another_than_a_flat_one() -> None:
    flat, round_ = (posed(pose(hips=60, lumbar=bend, thorax=bend)).body["head"].end for bend in (0, 30))
    assert round_[2] < flat[2] - 0.05


@pytest.mark.parametrize(("what", "spot"), [("right knee", "right knee"), ("right shin", "right shin")])
def test_a_hand_that_touches_is_there(what: str, spot: str) -> None:
    found = posed(pose(base="sit", height=0.255, lean=30, thorax=30, hands={"right": {"to": what}})).body
    hand = found["right hand"]
    touching = hand.at(0.6)
    assert length(sub(touching, landmark(found, spot))) < 0.02


def test_a_foot_that_is_put_stands_on_its_height() -> None:
    found = posed(pose(base="stand left", feet={"right": {"at": 0.28, "height": 0.11}})).body
    assert found["right foot"].begin[2] == pytest.approx(0.11, abs=1e-6)
    assert found["right foot"].end[2] == pytest.approx(0.11, abs=1e-6)


@pytest.mark.parametrize(
    ("fields", "says"),
    [
        ({"knees": 175}, r"left knee: flex 175 degrees; it goes from -20 to 160"),
        ({"hips": {"right": {"flex": 0, "turn": 70}}}, r"right hip: turn 70 degrees"),
        ({"lumbar": 60, "thorax": 60}, r"spine: flex 120 degrees"),
        ({"hands": "floor"}, r"what the left hand touches is 0\.\d\d body heights away"),
        ({"hands": "table"}, r"there is no table among the props"),
        ({"hands": "left wing"}, r"'left wing' is no place that a hand can touch"),
        ({"base": "stand left", "feet": {"right": {"at": 0.9}}}, r"the place of the right foot"),
    ],
)
def test_what_no_body_does_is_said_with_joint_and_limit(fields: dict[str, object], says: str) -> None:
    with pytest.raises(ImpossiblePose, match=says):
        posed(pose(**fields))


def test_who_would_fall_over_is_told() -> None:
    text = "romanian-deadlift: {free: true, poses: [{base: stand, hips: 90, lean: 20}]}"
    with pytest.raises(ImpossiblePose, match="pose 1: falls over"):
        frames("romanian-deadlift", read(text)["romanian-deadlift"], library()["romanian-deadlift"])


def test_a_word_that_the_pose_language_does_not_have_is_named() -> None:
    with pytest.raises(ImpossiblePose, match=r"mine\.yaml, x, poses\.0\.nees"):
        read("x: {poses: [{nees: 3}]}", name="mine.yaml")


def test_every_movement_of_the_library_has_its_poses() -> None:
    assert sorted(drawn()) == sorted(library())


@every
def test_every_written_movement_is_one_and_can_be_drawn(key: str) -> None:
    movement = library()[key]
    found = frames(key, drawn()[key], movement)
    assert len(found) >= 2, "a start and an end"
    for frame in found:
        left, top, right, bottom = (
            f([shape.bounds[n] for shape in frame.shapes]) for n, f in enumerate((min, min, max, max))
        )
        assert right - left <= CELL_WIDE, "wider than its frame"
        assert bottom - top <= CELL_HIGH, "higher than its frame"
    assert any("hatch" in shape.kind for frame in found for shape in frame.shapes)


def test_a_sheet_is_whole_svg_with_every_name() -> None:
    keys = sorted(drawn())[:6]
    svg = ET.fromstring(sheet({key: drawn()[key] for key in keys}, library()))
    said = {text.text for text in svg.iter("{http://www.w3.org/2000/svg}text")}
    assert {library()[key].name for key in keys} <= said


def test_a_picture_is_made_or_it_is_said_why_not() -> None:
    key = sorted(drawn())[0]
    assert picture_of(key, ".png").startswith(b"\x89PNG")
    assert picture_of(key, ".svg").startswith(b"<svg")
    with pytest.raises(NothingToDraw, match="no movement 'flying'"):
        picture_of("flying", ".png")
    with pytest.raises(ValueError, match="jpg"):
        picture_of(key, ".jpg")


SVG = "{http://www.w3.org/2000/svg}"


def within(joint: str) -> st.SearchStrategy[Turn]:
    """Any turn of a joint within its range."""
    axes = {axis: RANGES.get((joint, axis)) for axis in ("flex", "out", "turn")}
    return st.builds(Turn, *(st.floats(r.low - GIVE, r.high + GIVE) if r else st.just(0.0) for r in axes.values()))


def pairs(joint: str) -> st.SearchStrategy[dict[str, Turn]]:
    return st.fixed_dictionaries({side: within(joint) for side in SIDES})


joints = ("hip", "knee", "ankle", "shoulder", "elbow", "wrist")


@given(st.builds(Angles, **{joint: pairs(joint) for joint in joints}), st.sampled_from(sorted(VIEWS)))
def test_any_pose_within_the_ranges_is_drawn(angles: Angles, view: str) -> None:
    shapes = figure(body_of(angles), Camera.of(view), tuple(Muscle), "right")
    assert len(shapes) > 15
    assert all(re.fullmatch(r"[MLAaZ0-9 .e+-]+", shape.path) for shape in shapes)
