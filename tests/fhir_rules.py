"""What a FHIR R4B bundle must hold to that a library of its shapes does not look at: code lists and references.

From HL7 FHIR R4B (4.3.0), https://hl7.org/fhir/R4B/: lists that are bound as *required* at each element, cardinalities
of the elements that are used here, and bundle references by `fullUrl` (bundle.html#references). UCUM codes from
https://ucum.org/ucum; LOINC 72514-3 from https://loinc.org/72514-3.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

HL7 = "http://terminology.hl7.org/CodeSystem/"
REQUIRED_CODES = {
    ("Bundle", "type"): "document message transaction transaction-response batch batch-response history searchset "
    "collection",
    ("CarePlan", "status"): "draft active on-hold revoked completed entered-in-error unknown",
    ("CarePlan", "intent"): "proposal plan order option",
    ("Observation", "status"): "registered preliminary final amended corrected cancelled entered-in-error unknown",
    ("AdverseEvent", "actuality"): "actual potential",
}
ACTIVITY = {"not-started", "scheduled", "in-progress", "on-hold", "completed", "cancelled", "stopped", "unknown"}
"""care-plan-activity-status, but for what was entered in error."""
IDENTIFIER_USE = ["usual", "official", "temp", "secondary", "old"]
NAME_USE = ["usual", "official", "temp", "nickname", "anonymous", "old", "maiden"]
OUTCOMES = ["resolved", "recovering", "ongoing", "resolvedWithSequelae", "fatal", "unknown"]
CATEGORIES = {"social-history", "vital-signs", "imaging", "laboratory", "procedure", "survey", "exam", "activity"}
ABSENT = {"unknown", "asked-unknown", "temp-unknown", "not-asked", "asked-declined", "masked", "not-applicable"}
UCUM = {"{score}", "cm", "deg", "%"}
ONCE = {
    "Patient": (),
    "CarePlan": ("status", "intent", "subject"),
    "Observation": ("status", "code"),
    "AdverseEvent": ("actuality", "subject"),
}
"""Elements that must be there, each of cardinality 1..1."""
LEADS_TO = {
    ("CarePlan", "subject"): {"Patient", "Group"},
    ("Observation", "subject"): {"Patient", "Group", "Device", "Location"},
    ("Observation", "performer"): {"Patient", "Practitioner", "Organization", "RelatedPerson"},
    ("Observation", "basedOn"): {"CarePlan", "ServiceRequest"},
    ("AdverseEvent", "subject"): {"Patient", "Group", "Practitioner", "RelatedPerson"},
    ("AdverseEvent", "recorder"): {"Patient", "Practitioner", "PractitionerRole", "RelatedPerson"},
}


def complaints(bundle: dict[str, Any]) -> list[str]:
    """Everything that does not hold; empty for a good bundle."""
    return [*_codes(bundle), *(said for entry in bundle["entry"] for said in _resource(entry["resource"])),
            *_references(bundle)]  # fmt: skip


def _codes(part: dict[str, Any]) -> Iterator[str]:
    kind = part["resourceType"]
    for (resource, element), allowed in REQUIRED_CODES.items():
        if resource == kind and part.get(element) not in allowed.split():
            yield f"{kind}.{element} is {part.get(element)}"


def _resource(part: dict[str, Any]) -> Iterator[str]:
    kind = part["resourceType"]
    yield from _codes(part)
    for element in ONCE[kind]:
        if element not in part or isinstance(part[element], list):
            yield f"{kind}.{element} must be there once"
    yield from (f"{kind} has a quantity in {q}" for q in _quantities(part) if not _is_quantity(q))
    yield from {"Patient": _patient, "CarePlan": _plan, "Observation": _observation, "AdverseEvent": _event}[kind](part)


def _patient(part: dict[str, Any]) -> Iterator[str]:
    if any("family" in name or name["use"] not in NAME_USE for name in part["name"]):
        yield "a name with a surname or an unknown use"
    if any(one["use"] not in IDENTIFIER_USE for one in part["identifier"]):
        yield "an identifier of unknown use"


def _plan(part: dict[str, Any]) -> Iterator[str]:
    for one in part["activity"]:
        if one["detail"]["status"] not in ACTIVITY:
            yield f"CarePlan.activity.detail.status is {one['detail']['status']}"
        if "reference" in one:
            yield "cpl-3: a detail or a reference, not both"


def _observation(part: dict[str, Any]) -> Iterator[str]:
    values = [name for name in part if name.startswith("value")]
    if len(values) > 1:
        yield f"several values: {values}"
    if values and "dataAbsentReason" in part:
        yield "obs-6: a value and a reason for none"
    if not values and "dataAbsentReason" not in part and "component" not in part:
        yield "nothing observed"
    if len([name for name in part if name.startswith("effective")]) != 1:
        yield "observed at no time, or at several"
    for one in part["category"]:
        if one["coding"][0]["system"] == f"{HL7}observation-category" and one["coding"][0]["code"] not in CATEGORIES:
            yield f"category {one}"
    for one in part.get("dataAbsentReason", {}).get("coding", ()):
        if one["system"] != f"{HL7}data-absent-reason" or one["code"] not in ABSENT:
            yield f"absent for {one}"
    low, high = (part.get("valueRange", {}).get(end, {}).get("value", 0) for end in ("low", "high"))
    if low > high:
        yield "rng-2: low is above high"


def _event(part: dict[str, Any]) -> Iterator[str]:
    for coding in part["outcome"]["coding"]:
        if coding["system"] != f"{HL7}adverse-event-outcome" or coding["code"] not in OUTCOMES:
            yield f"outcome {coding}"


def _quantities(part: Any) -> Iterator[dict[str, Any]]:
    if isinstance(part, dict):
        if "unit" in part:
            yield part
        for value in part.values():
            yield from _quantities(value)
    elif isinstance(part, list):
        for value in part:
            yield from _quantities(value)


def _is_quantity(found: dict[str, Any]) -> bool:
    """qty-3: a code has a system; and the code is one of UCUM's that are used here."""
    return found["system"] == "http://unitsofmeasure.org" and found["code"] in UCUM and "value" in found


def _references(bundle: dict[str, Any]) -> Iterator[str]:
    """bdl-7: each fullUrl once, its uuid that of its resource; every reference leads to an entry of a fitting kind."""
    kinds = {entry["fullUrl"]: entry["resource"]["resourceType"] for entry in bundle["entry"]}
    if len(kinds) != len(bundle["entry"]):
        yield "a fullUrl comes twice"
    for entry in bundle["entry"]:
        resource = entry["resource"]
        if entry["fullUrl"] != f"urn:uuid:{resource['id']}":
            yield f"{entry['fullUrl']} holds {resource['id']}"
        for element, reference in _refers(resource, ""):
            if reference not in kinds:
                yield f"{resource['resourceType']}.{element} leads nowhere: {reference}"
            allowed = LEADS_TO.get((resource["resourceType"], element))
            if allowed is not None and kinds.get(reference) not in allowed:
                yield f"{resource['resourceType']}.{element} leads to {kinds.get(reference)}"


def _refers(part: Any, element: str) -> Iterator[tuple[str, str]]:
    if isinstance(part, dict):
        if "reference" in part:
            yield element, part["reference"]
        for name, value in part.items():
            yield from _refers(value, element or name)
    elif isinstance(part, list):
        for value in part:
            yield from _refers(value, element)
