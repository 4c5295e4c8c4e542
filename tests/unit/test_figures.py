"""Figures: a body in its proportions, joints within their ranges, contacts that hold, every written pose drawn."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from itertools import pairwise
from math import dist
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.cli.drawing import NothingToDraw, picture_of
from plans.figures.angles import FINGERS, Angles, Girdle, ImpossiblePose, Turn, check, range_of
from plans.figures.body import CHAINS, SIDES, Body, body_of, centre_of_mass
from plans.figures.camera import VIEWS, Camera
from plans.figures.drawing import picture
from plans.figures.figure import CLOSE, figure
from plans.figures.hands import target_of
from plans.figures.landmarks import landmark
from plans.figures.library import drawn, frames, read
from plans.figures.posing import HIGH_SEAT, LIFTED, posed
from plans.figures.proportions import GIVE, LENGTHS, MASSES, RANGES, THICK
from plans.figures.shapes import Shape, bounds_of
from plans.figures.sheet import CELL_HIGH, CELL_WIDE, sheet
from plans.figures.space import about_up, add, forward_of, left_of, length, sub, times, turned, up_of
from plans.figures.things import CHAIR_BACK, Rod, solids, touched
from plans.figures.written import Drawn, Pose, Prop
from plans.movements import Muscle, library

every = pytest.mark.parametrize("key", sorted(drawn()))
EVERY_POSE = [(key, number) for key in sorted(drawn()) for number in range(len(drawn()[key].poses))]
every_pose = pytest.mark.parametrize(("key", "number"), EVERY_POSE)

MILLIMETRE = 0.001 / 1.7
"""Of the height of a body of 1.7 m."""


def pose(**fields: object) -> Pose:
    return Pose.model_validate(fields)


def shapes(fields: dict[str, object], **how: object) -> list[Shape]:
    """A single pose as it is drawn."""
    written = Drawn.model_validate({"poses": [fields], **how})
    return picture(posed(written.poses[0], written.props).body, written, (), "right")


def kinds(found: list[Shape]) -> list[str]:
    return [shape.kind for shape in found]


# --- the body -------------------------------------------------------------------------------------------------------


def test_a_body_that_stands_is_as_high_as_it_should_be() -> None:
    """Drillis & Contini in Winter (from memory): hip .530, shoulder .818 and crown 1.0 of body height."""
    body = posed(pose()).body
    assert body["right thigh"].begin[2] == pytest.approx(0.530, abs=0.002)
    assert body["thorax 3"].end[2] == pytest.approx(0.818, abs=0.002)
    assert body["head"].end[2] == pytest.approx(1.0, abs=0.002)


def test_the_masses_are_those_of_a_whole_body() -> None:
    paired = {"upper arm", "forearm", "hand", "thigh", "shank", "foot"}
    whole = sum(mass * (2 if part in paired else 1) for part, mass in MASSES.items())
    assert whole == pytest.approx(1.0, abs=0.01)
    standing = centre_of_mass(posed(pose()).body)
    assert 0.53 <= standing[2] <= 0.58, "a little above the hips"


def test_every_part_hangs_from_another_one() -> None:
    hung = {name for chain in CHAINS for name in chain}
    assert hung == set(posed(pose()).body)


def test_a_hinge_leans_by_what_the_hips_bend() -> None:
    upright, hinged = posed(pose()).body, posed(pose(hips=60)).body
    assert hinged["pelvis"].end[0] > upright["pelvis"].end[0] + 0.04
    assert hinged["left foot"].begin[2] == pytest.approx(0.0, abs=1e-6)
    assert length(sub(hinged["left thigh"].end, hinged["left thigh"].begin)) == pytest.approx(LENGTHS["thigh"])


def test_a_rounded_back_is_another_than_a_flat_one() -> None:
    flat, round_ = (posed(pose(hips=60, lumbar=bend, thorax=bend)).body["head"].end for bend in (0, 30))
    assert round_[2] < flat[2] - 0.05


@pytest.mark.parametrize("side", SIDES)
def test_a_palm_turns_up_and_down_with_the_forearm_and_the_thumb_goes_round(side: str) -> None:
    """The elbow bent to a right angle: thumb up in the middle, outside with the palm up, inside with it down."""
    outward = 1 if side == "left" else -1
    up, middle, down = (posed(pose(elbows=90, forearms=turn)).body for turn in (80, 0, -80))
    palms = [forward_of(body[f"{side} hand"].frame)[2] for body in (up, middle, down)]
    assert palms == pytest.approx([0.98, 0.0, -0.98], abs=0.01)
    thumbs = [sub(body[f"{side} thumb"].end, body[f"{side} hand"].begin) for body in (up, middle, down)]
    assert thumbs[0][1] * outward > 0.02
    assert thumbs[1][2] > 0.02
    assert thumbs[2][1] * outward < -0.02


def test_fingers_bend_towards_the_palm() -> None:
    for word in ("soft", "fist", "grip"):
        body = posed(pose(elbows=90, forearms=80, fingers=word)).body
        assert body["right tips"].end[2] > body["right hand"].end[2], f"{word}: the palm looks up, so the tips rise"
    flat = posed(pose(fingers="flat")).body
    assert length(sub(flat["right tips"].end, flat["right hand"].end)) == pytest.approx(0, abs=1e-9)


def test_a_shoulder_girdle_raises_and_draws_back_the_shoulder() -> None:
    still = posed(pose()).body["right upper arm"].begin
    raised = posed(pose(girdle={"up": 40})).body["right upper arm"].begin
    back = posed(pose(girdle={"right": {"back": 30}})).body
    assert raised[2] > still[2] + 0.05
    assert back["right upper arm"].begin[0] < still[0] - 0.04
    assert back["left upper arm"].begin[0] == pytest.approx(still[0])


def test_a_nod_bends_the_head_alone() -> None:
    still, tucked = posed(pose()).body, posed(pose(neck=-10, nod=10)).body
    assert tucked["head"].frame[0] == pytest.approx(still["head"].frame[0], abs=1e-6), "still level …"
    assert tucked["head"].end[0] < still["head"].end[0] - 0.004, "… and further back"


def test_a_foot_tilts() -> None:
    for side, sign in (("left", 1), ("right", -1)):
        body = body_of(Angles(ankle={**dict.fromkeys(SIDES, Turn()), side: Turn(out=-30)}))
        inner = times(left_of(body[f"{side} foot"].frame), -sign)
        assert inner[2] == pytest.approx(0.5, abs=1e-6), "turned in: the inner edge is up"


def test_a_bent_hip_turns_out_further_than_a_straight_one() -> None:
    check(Angles(hip=dict.fromkeys(SIDES, Turn(flex=110, out=20, turn=70))))
    with pytest.raises(ImpossiblePose, match=r"left hip: turn 70 degrees; it goes from -55 to 55"):
        check(Angles(hip=dict.fromkeys(SIDES, Turn(turn=70))))


# --- contacts -------------------------------------------------------------------------------------------------------


@every_pose
def test_hands_and_feet_are_where_they_are_said_to_be(key: str, number: int) -> None:
    how = drawn()[key]
    written = how.poses[number]
    found = posed(written, how.props)
    body = found.body
    for side, hold in written.hands.items():
        lies = hold.flat or (hold.palm and hold.point) or found.angles.wrist[side] != Turn()
        touching = body[f"{side} hand"].begin if lies else body[f"{side} hand"].at(0.5)
        assert length(sub(touching, target_of(body, side, hold, how.props).place)) < MILLIMETRE, f"{side} hand"
    for side, foot in written.feet.items():
        if foot.to is None:
            assert lowest(body, side, foot.on) == pytest.approx(foot.height, abs=MILLIMETRE), f"{side} foot"
            assert body[f"{side} shank"].end[0] == pytest.approx(foot.at, abs=MILLIMETRE)


def lowest(body: Body, side: str, on: str) -> float:
    foot = body[f"{side} foot"]
    return min(foot.begin[2], foot.end[2]) - (THICK["foot"] if on == "top" else 0.0)


@every_pose
def test_what_the_body_rests_on_is_under_it(key: str, number: int) -> None:
    written = drawn()[key].poses[number]
    body = posed(written, drawn()[key].props).body
    kind, side = written.base.split(" ")[0], written.base.split(" ")[-1]
    sides = (side,) if side in SIDES else SIDES
    if kind == "stand":
        for name in sides:
            if name not in written.feet:
                assert lowest(body, name, "flat") == pytest.approx(written.height, abs=MILLIMETRE), f"{name} foot"
    elif kind in ("kneel", "all"):
        knees = [body[f"{name} shank"].begin[2] - THICK["shank"] for name in sides]
        assert min(knees) == pytest.approx(written.height, abs=MILLIMETRE)
        assert all(knee < written.height + MILLIMETRE or knee > written.height + LIFTED for knee in knees)
    elif kind == "sit":
        assert body["pelvis"].begin[2] - THICK["pelvis"] == pytest.approx(written.height, abs=MILLIMETRE)


def test_who_sits_on_a_chair_has_the_feet_on_the_floor() -> None:
    body = posed(pose(base="sit", height=0.255)).body
    assert lowest(body, "left", "flat") == pytest.approx(0.0, abs=MILLIMETRE)
    assert HIGH_SEAT < 0.255
    turned_round = posed(pose(base="sit", height=0.255, yaw=150)).body
    assert lowest(turned_round, "right", "flat") == pytest.approx(0.0, abs=MILLIMETRE)
    lifted = posed(pose(base="sit", height=0.255, knees={"right": 0})).body
    assert lowest(lifted, "right", "flat") > 0.2


@pytest.mark.parametrize(("what", "spot"), [("right knee", "right knee"), ("right shin", "right shin")])
def test_a_hand_that_touches_is_there(what: str, spot: str) -> None:
    found = posed(pose(base="sit", height=0.255, lean=38, thorax=30, hands={"right": {"to": what}})).body
    assert length(sub(found["right hand"].at(0.5), landmark(found, spot))) < MILLIMETRE


def test_a_hand_on_the_hips_is_on_its_own_side() -> None:
    body = posed(pose(hands="hips")).body
    assert body["left hand"].at(0.5)[1] > 0.08
    assert body["right hand"].at(0.5)[1] < -0.08


def test_a_foot_that_is_put_stands_on_its_height() -> None:
    found = posed(pose(base="stand left", feet={"right": {"at": 0.28, "height": 0.11}})).body
    assert found["right foot"].begin[2] == pytest.approx(0.11, abs=1e-6)
    assert found["right foot"].end[2] == pytest.approx(0.11, abs=1e-6)


@pytest.mark.parametrize(
    "fields",
    [
        {"base": "stand left", "hips": {"left": 80}, "knees": {"left": 24}, "feet": {"right": {"at": 0.03}}},
        {"base": "kneel right", "hips": {"right": 40}, "lumbar": 42, "feet": {"left": {"at": 0.28}}},
        {"base": "lie on the back", "feet": {"left": {"at": 0.28}, "right": {"at": 0.28}}},
        {"base": "lie on the back", "yaw": -90, "feet": {"right": {"at": -0.075, "out": 0.28}}},
    ],
)
def test_the_knee_of_a_foot_that_is_put_never_folds_back(fields: dict[str, Any]) -> None:
    body = posed(pose(**fields)).body
    for side in fields["feet"]:
        thigh, shank = body[f"{side} thigh"], body[f"{side} shank"]
        folded = sub(thigh.end, times(add(thigh.begin, shank.end), 0.5))
        toes = forward_of(body[f"{side} foot"].frame)
        assert sum(a * b for a, b in zip(folded, add(toes, (0.0, 0.0, 0.5)), strict=True)) > 0


@given(st.floats(-170, 170))
def test_a_flat_hand_points_where_the_body_looks(yaw: float) -> None:
    place = turned(about_up(yaw), (0.2, 0.115, 0.6))
    body = posed(pose(yaw=yaw, hands={"left": {"to": place, "flat": True}})).body
    ahead = turned(about_up(yaw), (1.0, 0.0, 0.0))
    assert times(up_of(body["left hand"].frame), -1.0) == pytest.approx(ahead, abs=1e-6)


@pytest.mark.parametrize("faces", ["forward", "back", "left", "right"])
def test_the_back_of_a_chair_is_where_a_hand_holds_it(faces: str) -> None:
    chair = Prop.model_validate({"what": "chair", "at": 0.4, "left": 0.1, "faces": faces})
    found = touched((chair,), "chair back", (0.0, 0.1, 0.8), held_off=0.018)
    assert found is not None
    tops = [rod for rod in solids(chair, {}) if isinstance(rod, Rod) and rod.begin[2] == rod.end[2] == CHAIR_BACK]
    assert len(tops) == 1
    middle = times(add(tops[0].begin, tops[0].end), 0.5)
    assert sub(found.place, middle) == pytest.approx((0.0, 0.0, tops[0].half), abs=1e-6)
    behind = {"forward": (-1, 0), "back": (1, 0), "left": (0, -1), "right": (0, 1)}[faces]
    away = (middle[0] - 0.4, middle[1] - 0.1)
    assert away[0] * behind[0] + away[1] * behind[1] > 0.1, "who sits on it has it behind"


# --- what no body does ----------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("fields", "says"),
    [
        ({"knees": 175}, r"left knee: flex 175 degrees; it goes from -20 to 160"),
        ({"hips": {"right": {"flex": 0, "turn": 70}}}, r"right hip: turn 70 degrees"),
        ({"lumbar": 60, "thorax": 60}, r"spine: flex 120 degrees"),
        ({"girdle": {"up": 60}}, r"left shoulder girdle: up 60 degrees; it goes from -20 to 50"),
        ({"forearms": {"right": 95}}, r"right forearm: turn 95 degrees; it goes from -90 to 90"),
        ({"wrists": {"right": {"out": 45}}}, r"right wrist: out 45 degrees; it goes from -40 to 30"),
        ({"base": "sit", "ankles": {"out": 40}}, r"left ankle: out 40 degrees; it goes from -45 to 25"),
        ({"elbows": {"right": {"flex": 20, "out": 5}}}, r"right elbow: there is no out in this joint, found 5"),
        ({"nod": 60}, r"neck: flex 60 degrees"),
        ({"hands": "floor"}, r"what the left hand touches is 0\.\d\d\d body heights away"),
        ({"hands": "table"}, r"there is no table among the props"),
        ({"hands": "left wing"}, r"'left wing' is no place that a hand can touch"),
        ({"base": "stand left", "feet": {"right": {"at": 0.9}}}, r"the place of the right foot"),
        ({"base": "lie on the back", "shoulders": -30}, r"left elbow: 0\.\d\d body heights below the floor"),
        ({"base": "lie on the front", "neck": -10, "knees": -15}, r"left (ankle|foot): 0\.\d\d body heights below"),
    ],
)
def test_what_no_body_does_is_said_with_joint_and_limit(fields: dict[str, object], says: str) -> None:
    with pytest.raises(ImpossiblePose, match=says):
        posed(pose(**fields))


JOINTS = {
    "hips": "hip", "knees": "knee", "ankles": "ankle", "shoulders": "shoulder", "elbows": "elbow", "wrists": "wrist",
}  # fmt: skip
OUTSIDE = [(word, joint, axis) for word, joint in JOINTS.items() for axis in ("flex", "out", "turn")]


@given(st.sampled_from(OUTSIDE), st.sampled_from(SIDES), st.floats(1, 60), st.booleans())
def test_a_joint_beyond_its_range_is_named_with_movement_value_and_limit(
    which: tuple[str, str, str], side: str, beyond: float, is_high: bool
) -> None:
    word, joint, axis = which
    found = range_of(joint, axis) or (0.0, 0.0)
    value = max(-180.0, min(180.0, found[1] + beyond if is_high else found[0] - beyond))
    if found[0] <= value <= found[1]:
        return  # the shoulder goes as far as a number can
    how = Drawn.model_validate({"poses": [{"base": "lie on the back", word: {side: {axis: value}}}]})
    with pytest.raises(ImpossiblePose) as caught:
        frames("mine", how, library()["cat-cow"])
    said = str(caught.value)
    assert said.startswith(f"mine, pose 1: {side} {joint}: ")
    if range_of(joint, axis):
        assert f"{axis} {value:.0f} degrees; it goes from {found[0]:.0f} to {found[1]:.0f}" in said


def test_who_would_fall_over_is_told() -> None:
    text = "romanian-deadlift: {free: true, poses: [{base: stand, hips: 90, lean: 20}]}"
    with pytest.raises(ImpossiblePose, match=r"pose 1: falls over: .* forward"):
        frames("romanian-deadlift", read(text)["romanian-deadlift"], library()["romanian-deadlift"])
    text = "romanian-deadlift: {free: true, poses: [{base: stand right, hips: {left: {out: 30}}, thorax: {out: 35}}]}"
    with pytest.raises(ImpossiblePose, match=r"falls over: .* to the left"):
        frames("romanian-deadlift", read(text)["romanian-deadlift"], library()["romanian-deadlift"])


def test_a_word_that_the_pose_language_does_not_have_is_named() -> None:
    with pytest.raises(ImpossiblePose, match=r"mine\.yaml, x, poses\.0\.nees"):
        read("x: {poses: [{nees: 3}]}", name="mine.yaml")


# --- what is seen ---------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("left", "is_before"), [(-0.3, True), (0.3, False)])
def test_a_thing_is_before_or_behind_the_body_by_where_it_stands(left: float, is_before: bool) -> None:
    """Seen from the right: what stands to the right of a person hides the legs, what stands to the left is hidden."""
    found = kinds(shapes({}, props=[{"what": "chair", "left": left}]))
    seat, leg = found.index("thing"), max(n for n, kind in enumerate(found) if kind == "near")
    last_thing = max(n for n, kind in enumerate(found) if kind.startswith("thing"))
    assert (last_thing > leg) is is_before
    assert (seat < found.index("far")) is not is_before


def test_who_sits_hides_the_seat_and_a_table_before_hides_the_knees() -> None:
    found = kinds(shapes({"base": "sit", "height": 0.255}, view="front", props=["chair", {"table": {"at": 0.4}}]))
    things = [n for n, kind in enumerate(found) if kind.startswith("thing")]
    trunk = found.index("trunk")
    assert min(things) < trunk < max(things)


def test_a_held_stick_is_before_the_body_and_in_the_hands() -> None:
    found = kinds(
        shapes({"shoulders": {"flex": 40}}, view="front", props=[{"stick": {"between": ["left hand", "right hand"]}}])
    )
    stick = found.index("strap")
    assert stick > found.index("trunk")
    assert "near bare" in found[stick:], "the fingers close round it"


@pytest.mark.parametrize("base", ["sit", "lie on the back"])
def test_a_turned_head_is_seen(base: str) -> None:
    """Both eyes when the face looks at the eye, one when it is turned, none from behind; the nose goes to its side."""
    view, behind = ("front", "back") if base == "sit" else ("above", "side")
    eyes = {
        turn: kinds(shapes({"base": base, "height": 0.255, "neck": {"turn": turn}}, view=view)).count("eye")
        for turn in (0, 60, -60)
    }
    assert eyes[0] == 2
    assert eyes[60] == eyes[-60] == 1
    if base == "sit":
        assert kinds(shapes({"base": base, "height": 0.255}, view=behind)).count("eye") == 0


def test_shoulder_blades_come_together_as_they_are_seen_from_behind() -> None:
    wide, narrow = (
        [shape for shape in shapes({"girdle": {"back": back}}, view="back") if shape.kind == "blade"]
        for back in (-20, 35)
    )
    gaps = [abs(middle(two[0]) - middle(two[1])) for two in (wide, narrow)]
    assert gaps[1] < gaps[0] - 0.02
    assert not [kind for kind in kinds(shapes({}, view="front")) if kind == "blade"]


def middle(shape: Shape) -> float:
    return (shape.bounds[0] + shape.bounds[2]) / 2


@pytest.mark.parametrize("close", sorted(CLOSE))
def test_a_part_that_is_drawn_alone_is_larger_and_stands_on_the_floor_line(close: str) -> None:
    body = posed(pose(base="sit", height=0.255, elbows=60)).body
    whole = {solid.name: solid for solid in figure(body, Camera.of("slant"))}
    alone = {solid.name: solid for solid in figure(body, Camera.of("slant", zoom=CLOSE[close]), close=close)}
    assert set(alone) < set(whole)
    for name, solid in alone.items():
        if name != "trunk":
            a, b, c, d = (*solid.bars[0][3:5], *whole[name].bars[0][3:5])
            assert dist(a, b) == pytest.approx(CLOSE[close] * dist(c, d)), name
    how = Drawn.model_validate({"view": "slant", "close": close, "poses": [{"base": "sit", "height": 0.255}]})
    found = frames("mine", how, library()["forearm-turns"])
    assert bounds_of(found[0].shapes)[3] == pytest.approx(0.0, abs=1e-6)


# --- the library ----------------------------------------------------------------------------------------------------


def test_every_movement_of_the_library_has_its_poses() -> None:
    assert sorted(drawn()) == sorted(library())


@every
def test_every_written_movement_is_one_and_can_be_drawn(key: str) -> None:
    movement = library()[key]
    found = frames(key, drawn()[key], movement)
    assert len(found) >= 2, "a start and an end"
    for frame in found:
        left, top, right, bottom = bounds_of(frame.shapes)
        assert right - left <= CELL_WIDE, "wider than its frame"
        assert bottom - top <= CELL_HIGH, "higher than its frame"
    assert any("hatch" in shape.kind for frame in found for shape in frame.shapes)
    assert any(first.shapes != last.shapes for first, last in pairwise(found))


def test_a_movement_of_the_library_is_drawn_once_and_a_coachs_own_each_time_as_it_is_written() -> None:
    key, movement = "cat-cow", library()["cat-cow"]
    first, again = (frames(key, drawn()[key], movement) for _ in range(2))
    assert again[0].shapes is first[0].shapes
    own = Drawn.model_validate({"poses": [{}, {"hips": 60}]})
    assert frames(key, own, movement)[0].shapes != first[0].shapes
    elsewhere = movement.model_copy(update={"main": (Muscle.CHEST,)})
    assert frames(key, drawn()[key], elsewhere)[-1].shapes != first[-1].shapes


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


# --- any pose -------------------------------------------------------------------------------------------------------


def within(joint: str) -> st.SearchStrategy[Turn]:
    """Any turn of a joint within its range."""
    axes = {axis: RANGES.get((joint, axis)) for axis in ("flex", "out", "turn")}
    return st.builds(Turn, *(st.floats(r.low - GIVE, r.high + GIVE) if r else st.just(0.0) for r in axes.values()))


def pairs(joint: str) -> st.SearchStrategy[dict[str, Turn]]:
    return st.fixed_dictionaries({side: within(joint) for side in SIDES})


def sides(values: st.SearchStrategy[Any]) -> st.SearchStrategy[dict[str, Any]]:
    return st.fixed_dictionaries(dict.fromkeys(SIDES, values))


ANGLES = st.builds(
    Angles,
    **{joint: pairs(joint) for joint in ("hip", "knee", "ankle", "shoulder", "elbow", "wrist")},
    forearm=sides(st.floats(-80, 80)),
    girdle=sides(st.builds(Girdle, st.floats(-10, 40), st.floats(-30, 30))),
    fingers=sides(st.sampled_from(list(FINGERS.values()))),
)


@given(ANGLES, st.sampled_from(sorted(VIEWS)), st.sampled_from([None, *sorted(CLOSE)]))
def test_any_angles_within_the_ranges_are_drawn(angles: Angles, view: str, close: str | None) -> None:
    check(angles)
    how = Drawn.model_validate({"view": view, "close": close, "poses": [{}], "props": ["mat", {"chair": {"at": 0.1}}]})
    found = picture(body_of(angles), how, tuple(Muscle), "right")
    assert len(found) > 10
    assert all(re.fullmatch(r"[MLAaZ0-9 .e+-]+", shape.path) for shape in found)
    eye = Camera.of(view)
    assert sum(a * b for a, b in zip(eye.near, eye.up, strict=True)) == pytest.approx(0, abs=1e-9)


def written(joint: str) -> st.SearchStrategy[dict[str, dict[str, float]]]:
    """A joint of both sides as it is written, within its printed range."""
    axes = {axis: st.floats(*found) for axis in ("flex", "out", "turn") if (found := RANGES.get((joint, axis)))}
    return sides(st.fixed_dictionaries(axes))


POSES = st.fixed_dictionaries(
    {
        "base": st.sampled_from(
            [
                *("stand", "stand left", "stand right", "kneel", "kneel left", "all fours", "sit"),
                *("lie on the back", "lie on the front", "lie on the left", "lie on the right"),
            ]
        ),
        "height": st.floats(0, 0.3),
        "yaw": st.floats(-180, 180),
        "neck": st.fixed_dictionaries({"flex": st.floats(-40, 40), "turn": st.floats(-60, 60)}),
        "thorax": st.fixed_dictionaries({"flex": st.floats(-15, 40), "turn": st.floats(-40, 40)}),
        **{word: written(joint) for word, joint in JOINTS.items() if joint != "ankle"},
    },
    optional={
        "hands": sides(st.sampled_from(["hips", "belly", "floor", "right knee", "back of the head", "seat"])),
        "feet": st.fixed_dictionaries({"right": st.fixed_dictionaries({"at": st.floats(-0.3, 0.4)})}),
    },
)
REFUSED = re.compile(
    r"mine, pose 1: (what the (left|right) hand touches|the place of the (left|right) foot) is [\d.]+ body heights away"
    r"|mine, pose 1: [a-z ]+: [\d.]+ body heights below the floor"
    r"|mine, pose 1: (left|right) (hip|knee|ankle|shoulder|elbow|forearm|wrist): (flex|out|turn) -?\d+ degrees; it goes"
)


@given(POSES, st.sampled_from(sorted(VIEWS)))
def test_any_written_pose_within_the_ranges_is_drawn_or_refused_with_a_reason(
    fields: dict[str, object], view: str
) -> None:
    """What is refused is what a hand or foot would need, or what would be in the floor: never the written angles."""
    how = Drawn.model_validate({"view": view, "poses": [fields], "props": ["chair"]})
    said, found = "", []
    try:
        found = frames("mine", how, library()["cat-cow"])
    except ImpossiblePose as refused:
        said = str(refused)
    if said:
        assert REFUSED.match(said), said
        return
    assert all(re.fullmatch(r"[MLAaZ0-9 .e+-]+", shape.path) for shape in found[0].shapes)
    assert all(part.end[2] > -0.2 for part in found[0].body.values())
