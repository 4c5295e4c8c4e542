"""The simulated coach: publishes a sample, invites, reads alerts, lets clients go on, repeats, eases, bars."""

from __future__ import annotations

import random
import re
from datetime import timedelta
from importlib.resources import files

from tests.simulation.people import Around
from tests.simulation.phones import Phone, Seen


class Coach:
    """One coach and their programme."""

    def __init__(self, around: Around, phone: Phone, programme: str, rng: random.Random) -> None:
        self._around = around
        self.phone = phone
        self._programme = programme
        self._rng = rng
        self.link: str | None = None

    def begins(self, link: str) -> None:
        """Opens their own link; what follows is read from the answers."""
        self.phone.says(f"/start {link}")

    def hears(self, message: Seen) -> None:
        """A message came or was changed."""
        found = re.search(r"\?start=(join-[\w-]+)", message.text)
        if found is not None:
            self.link = found[1]
        elif "city" in message.text:
            self._soon(lambda: self.phone.says("Lisbon"))
            self._soon(self._sends_programme)
        elif message.offers("publish:"):
            self._soon(lambda: self._taps(message, "publish:"))
        elif message.offers("invite:") and self.link is None:
            groups = [offer for offer in message.offers("invite:") if str(offer).endswith(":10")]
            self._soon(lambda: self.phone.taps(message, groups[-1]))
        elif message.offers("draft:") and self.link is None:
            self._soon(lambda: self._drafts(message))
        elif message.offers("found:"):
            self._later(1, 40, lambda: self._taps(message, "found:"))
        elif message.offers("go:"):
            self._later(10, 60 * 20, lambda: self._taps(message, "go:"))
        elif message.offers("seen:") and self._rng.random() < 0.7:
            self._later(5, 60 * 8, lambda: self._taps(message, "seen:"))
        elif message.offers("rule:", "bar:") and self._rng.random() < 0.3:
            self._later(1, 20, lambda: self._taps(message, "rule:", "bar:"))
        elif message.offers("client:") and self._rng.random() < 0.3:
            self._later(1, 60 * 9, lambda: self._taps(message, "client:"))

    def _drafts(self, message: Seen) -> None:
        """Makes the link; for a group that goes together the first day comes before."""
        wanted = ":start" if "needs the day" in message.text else ":make"
        offered = message.offers("draft:")
        found = [offer for offer in offered if str(offer).endswith(wanted)]
        self.phone.taps(message, found[0] if found else offered[0])

    def looks(self) -> None:
        """What a coach asks for now and then."""
        self.phone.says(self._rng.choice(("/people", "/people", "/people", "/digest", "/programmes", "/help")))
        self._later(1, 30, self._opens_somebody)

    def invites(self) -> None:
        """Makes a new invitation."""
        self.link = None
        self.phone.says("/invite")

    def _opens_somebody(self) -> None:
        for message in self.phone.newest():
            if message.offers("client:"):
                self._taps(message, "client:")
                return

    def _sends_programme(self) -> None:
        body = files("plans.library").joinpath(f"{self._programme}.yaml").read_bytes()
        self.phone.sends(f"{self._programme}.yaml", body)

    def _taps(self, message: Seen, *beginning: str) -> None:
        now = self.phone.messages.get(message.id, message)
        offered = now.offers(*beginning)
        if offered:
            self.phone.taps(now, self._rng.choice(offered))

    def _soon(self, act: object) -> None:
        self._around.later(timedelta(seconds=5), act)  # type: ignore[arg-type]

    def _later(self, low: float, high: float, act: object) -> None:
        self._around.later(timedelta(minutes=self._rng.uniform(low, high)), act)  # type: ignore[arg-type]
