"""What a command prints: JSON in UTF-8 always, texts in the encoding of the terminal."""

from __future__ import annotations

import codecs
import re
import sys
import unicodedata

# Signs of the trade that are no letters with something on them.
_SIGNS = {
    "×": "x",
    "÷": "/",
    "·": "*",
    "−": "-",
    "‐": "-",
    "–": "-",
    "—": "-",
    "≤": "<=",
    "≥": ">=",
    "≈": "~",
    "≠": "!=",
    "±": "+/-",
    "→": "->",
    "°": " deg ",
    "∞": "inf",
    "∑": "sum",
    "Σ": "sum",
    "‘": "'",
    "’": "'",
    "“": '"',
    "”": '"',
    "µ": "u",
    "μ": "u",
    "£": "GBP ",
    "€": "EUR ",
}
_NAMED = re.compile(r"(GREEK|CYRILLIC) (SMALL|CAPITAL) LETTER (\w+)")


def _sign(sign: str, before: str) -> str:
    if sign in _SIGNS:
        return _SIGNS[sign]
    if named := _NAMED.match(unicodedata.name(sign, "")):
        name = named[3].lower()
        return name if named[2] == "SMALL" else name.capitalize()
    plain = unicodedata.normalize("NFKD", sign).replace("⁄", "/").replace("−", "-")
    plain = plain.encode("ascii", "ignore").decode()
    kind = unicodedata.decomposition(sign).partition(" ")[0]
    if kind == "<fraction>" and before.isdigit():
        return f" {plain}"
    return f"^{plain}" if kind == "<super>" and plain else plain or "?"


def in_ascii(text: str, before: str = "") -> str:
    """Write a text in ASCII: `22½ tpi/√YSW` as `22 1/2 tpi/sqrt(YSW)`."""
    out, place = "", 0
    while place < len(text):
        sign = text[place]
        place += 1
        if sign == "√":
            word = re.compile(r"\w*").match(text, place)
            under = word[0] if word else ""
            out += f"sqrt({in_ascii(under)})" if under else "sqrt"
            place += len(under)
        else:
            out += sign if sign.isascii() else _sign(sign, before)
        before = text[place - 1]
    return out


def _instead(error: UnicodeError) -> tuple[str, int]:
    """Give what the encoding lacks in ASCII."""
    if not isinstance(error, UnicodeEncodeError):
        raise error
    text, start, end = error.object, error.start, error.end
    if text[end - 1] == "√":
        word = re.compile(r"\w*").match(text, end)
        end = word.end() if word else end
    return in_ascii(text[start:end], text[start - 1] if start else ""), end


codecs.register_error("hankwise", _instead)


def settle(*, json: bool = False) -> None:
    """Have the streams take every sign; JSON is UTF-8 whatever the terminal has."""
    for stream in (sys.stdout, sys.stderr):
        if not hasattr(stream, "reconfigure"):
            continue
        if json and stream is sys.stdout:
            # Half of a surrogate pair is replaced, so that the text stays valid.
            stream.reconfigure(encoding="utf-8", errors="replace")
        else:
            stream.reconfigure(errors="hankwise")
