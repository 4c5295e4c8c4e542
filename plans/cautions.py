"""Cautions: what a movement may ask of a body that not every body can give, and the question that finds it out."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from functools import cache
from importlib.resources import files
from types import MappingProxyType

from pydantic import BaseModel, ConfigDict, TypeAdapter
from ruamel.yaml import YAML


class Caution(StrEnum):
    """What to be careful about; common practice of coaching, each with its own text and screening question."""

    BENDING_UNDER_LOAD = "bending-under-load"
    END_RANGE_NECK = "end-range-neck"
    WEIGHT_ON_NECK = "weight-on-neck"
    HEAD_BELOW_HEART = "head-below-heart"
    ONE_LEG_BALANCE = "one-leg-balance"
    FOLD_WITH_LEG_SYMPTOMS = "fold-with-leg-symptoms"
    REACH_WITH_ARM_SYMPTOMS = "reach-with-arm-symptoms"
    OSTEOPOROSIS = "osteoporosis"
    JOINT_REPLACEMENT = "joint-replacement"
    PREGNANCY = "pregnancy"
    KNEELING = "kneeling"
    DEEP_KNEE_BEND = "deep-knee-bend"
    WEIGHT_ON_WRISTS = "weight-on-wrists"
    SHOULDER_END_RANGE = "shoulder-end-range"
    BACK_BEND = "back-bend"
    LOOSE_JOINTS = "loose-joints"


class CautionWords(BaseModel):
    """A caution in words: its text for the client, the question asked before a course begins, and that in short."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    text: str
    question: str
    short: str


@cache
def caution_words() -> Mapping[Caution, CautionWords]:
    """The words of every caution, read once on first use."""
    text = files("plans.library").joinpath("cautions.yaml").read_text(encoding="utf-8")
    read = TypeAdapter(dict[Caution, CautionWords]).validate_python(YAML(typ="safe", pure=True).load(text))
    return MappingProxyType(read)
