"""Evidence as it is stored with a decision, and what the rules say of it when they look again."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields
from typing import Any

from plans.checkin import CheckIn, Morning, as_kept
from plans.rules import Evidence, Lingering, Settings, Verdict, Vote, most_cautious, votes

_EVIDENCE: dict[str, Any] = {"morning": Morning, "morning_before": Morning, "lingering": Lingering, "weeks": tuple}


def evidence_json(seen: Evidence) -> dict[str, Any]:
    """Everything that the rules looked at, as plain data; what is as nothing had been said is left out."""
    found = _differing(seen, Evidence(CheckIn()))
    found["checkin"] = _differing(seen.checkin, CheckIn())
    found["settings"] = {field.name: getattr(seen.settings, field.name) for field in fields(Settings)}
    return {name: list(value) if isinstance(value, tuple) else value for name, value in found.items()}


def _differing(value: Any, usual: Any) -> dict[str, Any]:
    return {
        field.name: getattr(value, field.name)
        for field in fields(value)
        if getattr(value, field.name) != getattr(usual, field.name)
    }


def evidence_of(stored: Mapping[str, Any]) -> Evidence:
    """The evidence from its stored form. Raises ValueError for a word that this version does not know."""
    rest = {
        name: _EVIDENCE.get(name, lambda same: same)(value)
        for name, value in stored.items()
        if name not in ("checkin", "settings")
    }
    return Evidence(as_kept(stored["checkin"]), settings=Settings(**stored["settings"]), **rest)


def replayed(decision: Mapping[str, Any]) -> tuple[Verdict, tuple[Vote, ...]] | None:
    """The verdict and the votes that a stored decision's evidence gives now; None for one without evidence.

    A lapse is no matter of evidence: its vote is taken as it was stored.
    """
    if not decision.get("seen"):
        return None
    given = votes(evidence_of(decision["seen"]))
    lapsed = tuple(Vote("lapse", Verdict.REPEAT) for vote in decision["votes"] if vote["rule"] == "lapse")
    return most_cautious((*lapsed, *given)), given


def facts_of(decision: Mapping[str, object] | None) -> dict[str, object]:
    """The numbers behind the reason of a stored decision."""
    decision = decision or {}
    stored = decision.get("votes")
    found = [v for v in stored if v["rule"] == decision.get("reason")] if isinstance(stored, list) else []
    return dict(found[0]["facts"]) if found else {}
