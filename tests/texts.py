"""Small programme files for tests, written as a coach would write them; text only."""

from __future__ import annotations

HEAD = """\
title: Test hips
goal: Move with less effort.
for: Anybody in a test.
setting: At home.
led-by: Somebody who knows.
muscles: [hamstrings]
equipment: [mat]
company: alone
supervised: nobody watches
motivation: A message every morning.
besides: Nothing.
movements:
  reach: {name: Long reach, how: Reach forward., main: [hamstrings], kind: static, sides: true, harder: far-reach}
  far-reach: {name: Far reach, how: Reach far., main: [hamstrings], kind: static, sides: true, easier: reach}
  sway: {name: Sway, how: Sway from side to side., main: [hamstrings], kind: dynamic}
  fold: {name: Loaded fold, how: Fold slowly., main: [hamstrings], kind: loaded}
days:
"""

SESSION = """\
  - session:
      warm-up: Walk.
      blocks:
        - rounds: {rounds}
          items:
            - {{movement: sway, reps: 8}}
            - {{movement: reach, hold: 30, side: each}}
"""

REST = "  - rest: Walk a little.\n"
TEST = "  - measure: {which: fingertip-to-floor}\n"
NEW = """\
  - session:
      warm-up: Walk.
      blocks:
        - rounds: 2
          items:
            - {movement: sway, reps: 8}
            - {movement: reach, hold: 30, side: each}
            - {movement: fold, reps: 5}
"""


def session(rounds: int = 2) -> str:
    """A session day with so many rounds; two is the usual one, three is heavier."""
    return SESSION.format(rounds=rounds)
