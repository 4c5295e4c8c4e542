"""What people say of a session and of pain in everyday words, each with each: joined in any order it stays what it is.

Every phrase has one meaning beyond doubt; together they say both. The phrases are from memory.
"""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from plans.checkin import Completion, Flag
from plans.replies import read_reply


def phrases(text: str) -> list[str]:
    return [line.strip() for line in text.split("|")]


DONE = phrases(
    """
    Done|All done|Did it|Did it all|Did everything|Finished|Completed|I did the session|Session done|I've done it
    |did the whole thing|Managed all of it|yes|yep|👍|✅|Did my stretches|Got it done|I finished the session
    |All exercises done|Stretching done|I did it this morning|did it before work|I did my session after work
    |I did the exercises today|it's done|nailed it|Yes, all of it|I did my stretching in the evening|I've finished
    """
)
PART = phrases(
    """
    Did half|Half of it|Most of it|Did most of it|Only half|I did about half|Part of it|Got through half of it
    |Skipped the last one|did the first two only|did two of the four exercises|All but the last one|Did some of it
    |left out the last exercise|didn't do the last one|did not finish|stopped halfway|I only did the first half
    |Half done|did a bit of it|Did it except the last stretch|did about 80% of it|I couldn't finish the session
    """
)
NONE = phrases(
    """
    Didn't do it|Not today|Skipped it|nope|Not done|I haven't done it|Couldn't do it today|Missed it|didn't manage it
    |no session today|didn't stretch today|I skipped today|Not yet|I'll do it later|will do it tonight
    |no stretching today|I did not do the session|I'll do it tomorrow|haven't done it yet|did nothing today
    |none of it|skipped the session today
    """
)
TWO = phrases(
    """
    pain 2|Pain was 2|pain: 2|pain is a 2|pain at 2|pain level 2|2 for pain|2/10 pain|pain 2 out of 10|pain around 2
    |pain maybe 2|the pain was a 2|pain was 5, now 2|pain 5, now 2|pain went from 5 to 2|pain 5 before, 2 after
    |pain 5, then 2|pain 5 at the start, 2 at the end|pain 5 -> 2|pain down from 5 to 2|pain 2 in my left hip
    |my left hip hurts, 2|pain of 2|had a pain of 2|I'd say pain 2|some pain, maybe a 2|pain 5, no wait, 2
    |pain 5, I mean 2|I had pain 2 in the right knee|pain score 2|pain 5 during, 2 now|it hurt a bit, 2|hurts 2
    |pain in the hip was 2|pain 5 yesterday, 2 today
    """
)
NOTHING = phrases(
    """
    no pain|zero pain|pain free|nothing hurts|without pain|no pain at all|pain 0|pain zero|pain: none|painless
    |no pain anywhere|not painful|no pain today|it didn't hurt at all|pain was 0|had no pain|pain none|nothing hurt
    """
)
JOINTS = (", ", ". ", " - ", "; ", "\n", "! ")

SIGNS = {
    Flag.EMERGENCY: phrases(
        """
        numb between my legs|I can't feel when I wipe|I can't control my bladder|lost control of my bowels
        |pressure in my chest|my chest feels tight and heavy|chest pain|chest pressure that goes into my left arm
        |I can't get enough air|I can hardly breathe|very short of breath at rest|I fainted|I passed out|I blacked out
        |my heart beats irregularly|my heart is skipping beats|one side of my face is drooping
        |my left arm is suddenly weak|the right side of my body went weak|my speech is slurred|I see double
        |I lost vision in one eye
        """
    ),
    Flag.SAME_DAY: phrases(
        """
        pain 8|pain was a 10|9/10 pain|sharp pain 4|stabbing pain in my knee, 5|a sudden sharp pain of 6 in my back
        |I felt a pop in my knee|something popped in my hip|there was a snap in my hamstring|my knee is swollen
        |a big bruise on my thigh|my calf is warm and throbbing|I can't put weight on my foot|my knee gives way
        """
    ),
    Flag.CLINICIAN: phrases(
        """
        my left arm is weak|weakness in my right hand|the numbness in my foot doesn't go away
        |tingling in my leg that keeps coming back|shooting pain down my leg that won't go away
        |pain wakes me every night|I have a fever and my back hurts|I lost weight for no reason and my back hurts
        |I got dizzy during the exercises
        """
    ),
}


def pairs() -> Iterator[tuple[str, Completion, int]]:
    """Each way of saying how much with each way of saying what hurt, in both orders, joined in turn by each mark."""
    number = 0
    for said, how in ((DONE, Completion.DONE), (PART, Completion.PART), (NONE, Completion.NONE)):
        for much in said:
            for pains, pain in ((TWO, 2), (NOTHING, 0)):
                for hurt in pains:
                    number += 1
                    yield much + JOINTS[number % len(JOINTS)] + hurt, how, pain
                    yield hurt + JOINTS[(number + 3) % len(JOINTS)] + much, how, pain


def test_how_much_and_what_hurt_are_read_in_any_order_and_hardly_ever_asked_back() -> None:
    wrong, asked, number = [], [], 0
    for text, completion, pain in pairs():
        reply = read_reply(text)
        number += 1
        if reply.unsure:
            asked.append(text)
        elif (reply.completion, reply.pain, reply.red_flag, reply.sore) != (completion, pain, None, False):
            wrong.append((text, reply.completion, reply.pain, reply.red_flag, reply.sore))
    assert number > 6000
    assert wrong == []
    assert len(asked) <= 0.03 * number, asked[:50]


@pytest.mark.parametrize("level", SIGNS)
def test_a_sign_is_heard_whatever_stands_around_it(level: Flag) -> None:
    before = ("", "Done. ", "Did half, ", "Skipped it today, ", "Hi coach, ", "Just so you know: ")
    after = ("", " today", "!", ". Did everything though", ". What should I do")
    texts = [one + sign + other for sign in SIGNS[level] for one in before for other in after]
    assert [text for text in texts if read_reply(text).red_flag is not level] == []


def test_a_plain_emergency_is_sure() -> None:
    texts = [before + sign for sign in SIGNS[Flag.EMERGENCY] for before in ("", "Done. ", "Did half, ", "Hi coach, ")]
    assert [text for text in texts if read_reply(text).unsure] == []
