"""The tables. "Once" is a unique constraint; an instant is UTC; a local date is a date beside its zone."""

from __future__ import annotations

from db.schema.alerts import Alert, AlertCall
from db.schema.base import Base, Instant
from db.schema.courses import Answer, CheckInRow, CoachNote, Course, LedgerRow, MeasureRow, Overrule, PhotoRow
from db.schema.links import CoachLink, Door, Guesses, Invite, InviteUse
from db.schema.messages import Attachment, ChatPace, Inbox, Outbox
from db.schema.people import Absence, Coach, CoachTerms, Consent, HandOver, Helper, Person
from db.schema.programmes import GroupLetter, GroupMessage, ProgrammeVersion, Recording, Rehearsal
from db.schema.running import Due, Erasure, Lease, Note

__all__ = [
    "Absence",
    "Alert",
    "AlertCall",
    "Answer",
    "Attachment",
    "Base",
    "ChatPace",
    "CheckInRow",
    "Coach",
    "CoachLink",
    "CoachNote",
    "CoachTerms",
    "Consent",
    "Course",
    "Door",
    "Due",
    "Erasure",
    "GroupLetter",
    "GroupMessage",
    "Guesses",
    "HandOver",
    "Helper",
    "Inbox",
    "Instant",
    "Invite",
    "InviteUse",
    "Lease",
    "LedgerRow",
    "MeasureRow",
    "Note",
    "Outbox",
    "Overrule",
    "Person",
    "PhotoRow",
    "ProgrammeVersion",
    "Recording",
    "Rehearsal",
]
