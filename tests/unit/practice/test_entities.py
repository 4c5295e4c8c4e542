"""Markup taken out of a text, as the platform does it.

The words of the errors are those the platform answers with, as bot writers report them; offsets are UTF-16 units as
the Bot API's reference says.
"""

from __future__ import annotations

import html
import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.practice.entities import parse_html, trimmed
from bot.practice.errors import ApiError
from bot.practice.limits import utf16
from bot.practice.showing import as_html


@pytest.mark.parametrize(
    ("written", "plain", "entities"),
    [
        ("no markup", "no markup", []),
        ("<b>a</b>", "a", [("bold", 0, 1)]),
        ("<strong>a</strong><em>b</em><ins>c</ins><del>d</del>", "abcd", None),
        ("\U0001f9d8<i>b</i>", "\U0001f9d8b", [("italic", 2, 1)]),
        ("<b>a <i>b</i> c</b>", "a b c", [("bold", 0, 5), ("italic", 2, 1)]),
        ("&lt;b&gt; &amp;amp; &quot;x&quot; &#65; &#x42;", '<b> &amp; "x" A B', []),
        ("&copy; & &nbsp; AT&T", "&copy; & &nbsp; AT&T", []),
        ("<b></b>x", "x", []),
        ('<span class="tg-spoiler">x</span>', "x", [("spoiler", 0, 1)]),
        ("<tg-spoiler>x</tg-spoiler>", "x", [("spoiler", 0, 1)]),
        ('<pre><code class="language-python">x</code></pre>', "x", None),
        ("<blockquote expandable>x</blockquote>", "x", [("blockquote", 0, 1)]),
        ("1 > 0", "1 > 0", []),
        ("<B>a</b>", "a", [("bold", 0, 1)]),
    ],
)
def test_markup_becomes_entities(written: str, plain: str, entities: list[tuple[str, int, int]] | None) -> None:
    text, found = parse_html(written)
    assert text == plain
    if entities is not None:
        assert [(entity["type"], entity["offset"], entity["length"]) for entity in found] == entities


@pytest.mark.parametrize(
    ("href", "url"),
    [
        ('href="https://example.org/?a=1&amp;b=2"', "https://example.org/?a=1&b=2"),
        ("href='https://example.org/a>b'", "https://example.org/a>b"),
        ("href=https://example.org/x", "https://example.org/x"),
        ('title="t" href="tg://user?id=1"', "tg://user?id=1"),
    ],
)
def test_a_link_keeps_its_address(href: str, url: str) -> None:
    assert parse_html(f"<a {href}>x</a>") == ("x", [{"type": "text_link", "offset": 0, "length": 1, "url": url}])


@pytest.mark.parametrize("href", ["", 'href=""', 'href="javascript:alert(1)"', 'href="nowhere"'])
def test_a_link_that_leads_nowhere_is_only_words(href: str) -> None:
    assert parse_html(f"<a {href}>x</a>") == ("x", [])


@pytest.mark.parametrize(
    ("written", "words"),
    [
        ("a < b", 'Unsupported start tag "" at byte offset 2'),
        ("é < b", 'Unsupported start tag "" at byte offset 3'),
        ("<p>x</p>", 'Unsupported start tag "p" at byte offset 0'),
        ("<br/>", 'Unsupported start tag "" at byte offset 0'),
        ("<b>x", 'Can\'t find end tag corresponding to start tag "b"'),
        ("x</b>", "Unexpected end tag at byte offset 1"),
        ("<b>x</i>", 'Unmatched end tag at byte offset 4, expected "</b>", found "</i>"'),
        ("<b><i>x</b></i>", 'Unmatched end tag at byte offset 7, expected "</i>", found "</b>"'),
        ("<span>x</span>", 'Tag "span" must have class "tg-spoiler" at byte offset 0'),
    ],
)
def test_broken_markup_is_refused_with_its_place(written: str, words: str) -> None:
    with pytest.raises(ApiError) as found:
        parse_html(written)
    assert (found.value.code, found.value.description) == (400, f"Bad Request: can't parse entities: {words}")


def test_white_space_around_a_text_goes_and_its_entities_move_along() -> None:
    plain, entities = parse_html("\n  <b> a \U0001f9d8 </b> <i>b</i>  ")
    text, kept = trimmed(plain, entities)
    assert text == "a \U0001f9d8  b"
    assert [(entity["type"], entity["offset"], entity["length"]) for entity in kept] == [
        ("bold", 0, 5),
        ("italic", 6, 1),
    ]


def test_an_entity_of_nothing_but_white_space_goes_with_it() -> None:
    assert trimmed("a  ", [{"type": "bold", "offset": 1, "length": 2}]) == ("a", [])


@given(st.text(alphabet=st.characters(exclude_categories=["Cs"])))
def test_escaped_text_comes_back_as_it_was(text: str) -> None:
    assert parse_html(html.escape(text)) == (text, [])


@given(st.lists(st.tuples(st.sampled_from(["b", "i", "u", "s", "code"]), st.text("ab<&\U0001f9d8 ", min_size=1))))
def test_shown_again_as_html_it_says_the_same(parts: list[tuple[str, str]]) -> None:
    written = "".join(f"<{tag}>{html.escape(text)}</{tag}>" for tag, text in parts)
    plain, entities = parse_html(written)
    shown = as_html(plain, entities)
    assert html.unescape(re.sub(r"<[^<>]*>", "", shown)) == plain
    assert parse_html(shown) == (plain, entities)


@given(st.text(alphabet="<>/b&;a =\"'", max_size=30))
def test_any_markup_is_read_or_refused_and_entities_stay_inside_the_text(written: str) -> None:
    try:
        plain, entities = parse_html(written)
    except ApiError as error:
        refused = error.description
    else:
        refused = "Bad Request: can't parse entities: none of it"
        assert all(e["offset"] >= 0 and e["offset"] + e["length"] <= utf16(plain) for e in entities)
    assert refused.startswith("Bad Request: can't parse entities: ")
