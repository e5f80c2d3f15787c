"""The formulas of the manifest, typeset as MathML.

    python3 formulas.py MANIFEST OUTPUT_DIR TOPIC...

Writes formulas_TOPIC.html: each formula under its function's name. Browsers set
MathML themselves, so that a page needs nothing from elsewhere. A line that is
not arithmetic alone stays as it stands in the header.
"""

import html
import json
import pathlib
import re
import sys

GREEK = {
    "alpha": "α", "beta": "β", "delta": "δ", "eps": "ε", "eta": "η", "theta": "θ", "kappa": "κ",
    "lambda": "λ", "mu": "μ", "nu": "ν", "pi": "π", "rho": "ρ", "sigma": "σ", "tau": "τ",
    "phi": "φ", "omega": "ω", "Theta": "Θ", "Phi": "Φ", "gamma": "γ", "psi": "ψ",
}
FUNCTIONS = {
    "exp", "ln", "log", "sin", "cos", "tan", "atan", "asin", "sinh", "cosh", "tanh", "atanh",
    "coth", "csch", "expm1", "max", "min", "Li2", "F", "P",
}
# Longer names that stand for numbers, not words of a sentence.
NAMES = {"Fmax", "Fmin", "ratio", "doubt", "high", "value"}
# Functions that may stand before their argument without parentheses.
BARE = {"sin", "cos", "tan", "atan", "ln", "log", "exp", "coth"}
WORDS = {"in", "for", "and", "or", "of", "is", "up", "to", "at", "not", "the", "by", "each", "if"}
TOKEN = re.compile(r"\d+(?:\.\d+)?(?:e-?\d+)?|[A-Za-z]\w*'?|<=|>=|[-+/^()\[\]|=<>,]| +")
SIGNS = {"<=": "≤", ">=": "≥", "-": "−"}
CLOSING = {"(": ")", "[": "]", "|": "|"}


class NotArithmetic(Exception):
    pass


def tag(name, *inside):
    return f"<{name}>{''.join(inside)}</{name}>"


class Line:
    """One line of a formula, by recursive descent."""

    def __init__(self, text):
        self.tokens, at = [], 0
        for found in TOKEN.finditer(text):
            if found.start() != at:
                raise NotArithmetic(text)
            at = found.end()
            self.tokens.append(found[0])
        if at != len(text):
            raise NotArithmetic(text)
        self.at, self.bars = 0, 0

    def peek(self, ahead=0):
        """The next token that is not a space."""
        rest = [t for t in self.tokens[self.at :] if t.strip()]
        return rest[ahead] if ahead < len(rest) else ""

    def take(self, expected=None):
        while self.at < len(self.tokens) and not self.tokens[self.at].strip():
            self.at += 1
        if self.at >= len(self.tokens):
            raise NotArithmetic
        token = self.tokens[self.at]
        if expected and token != expected:
            raise NotArithmetic
        self.at += 1
        return token

    def whole(self):
        parts = []
        while self.peek():
            if self.peek() in ("=", "<", ">", "<=", ">=", ","):
                sign = self.take()
                parts.append(tag("mo", html.escape(SIGNS.get(sign, sign))))
                if sign == ",":
                    parts.append('<mspace width="1em"/>')
            else:
                parts.append(self.sum())
        return "".join(parts)

    def sum(self):
        parts = []
        if self.peek() in ("-", "+"):
            sign = self.take()
            parts.append(tag("mo", SIGNS.get(sign, sign)))
        parts.append(self.product())
        while self.peek() in ("+", "-"):
            sign = self.take()
            parts += [tag("mo", SIGNS.get(sign, sign)), self.product()]
        return tag("mrow", *parts)

    def product(self):
        parts = [self.power()]
        while True:
            following = self.peek()
            if following == "/":
                self.take()
                above, below = parts, self.power(bare=True)
                if len(above) == 1:
                    above = [self.bare(above[0])]
                parts = [tag("mfrac", tag("mrow", *above), below)]
            elif following and (following[0].isalnum() or following in ("(", "[")
                                or following == "|" and not self.bars):
                parts += ['<mspace width="0.17em"/>', self.power()]
            else:
                return tag("mrow", *parts)

    @staticmethod
    def bare(part):
        """Without the parentheses that a fraction's line makes needless."""
        opened, closed = "<mrow><mo>(</mo>", "<mo>)</mo></mrow>"
        if part.startswith(opened) and part.endswith(closed):
            return part[len(opened) : -len(closed)]
        return part

    def power(self, bare=False):
        base = self.atom()
        if self.peek() == "^":
            self.take()
            sign = tag("mo", "−") if self.peek() == "-" and self.take() else ""
            return tag("msup", base, tag("mrow", sign, self.bare(self.atom())))
        return self.bare(base) if bare else base

    def atom(self):
        token = self.take()
        if token in CLOSING:
            self.bars += token == "|"
            inside = [self.sum()]
            while self.peek() == ",":
                inside += [tag("mo", self.take()), self.sum()]
            closing = self.take(CLOSING[token])
            self.bars -= token == "|"
            return tag("mrow", tag("mo", token), *inside, tag("mo", closing))
        if token[0].isdigit():
            if "e" in token:
                digits, exponent = token.split("e")
                ten = tag("msup", tag("mn", "10"), tag("mn", exponent.replace("-", "−")))
                return tag("mrow", tag("mn", digits), tag("mo", "·"), ten)
            return tag("mn", token)
        if not token[0].isalpha():
            raise NotArithmetic(token)
        called = self.at < len(self.tokens) and self.tokens[self.at] == "("
        if token == "sqrt" and called:
            return tag("msqrt", self.bare(self.atom()))
        if called and token in FUNCTIONS:
            return tag("mrow", self.name(token), self.atom())
        if called or token.startswith("vane_"):
            raise NotArithmetic(token)
        following = self.peek()
        if token in BARE and following and (following[0].isalnum() or following == "("):
            argument = self.power()
            if self.peek() == "deg":
                argument += tag("mo", "°") if self.take() else ""
            return tag("mrow", self.name(token), '<mspace width="0.17em"/>', argument)
        return self.name(token)

    def name(self, token):
        if token in WORDS:
            raise NotArithmetic(token)
        prime = "′" if token.endswith("'") else ""
        token = token.rstrip("'")
        stem, index = re.fullmatch(r"([A-Za-z]+)_?(\w*)", token).groups()
        if len(stem) > 3 and stem not in GREEK and stem not in FUNCTIONS and stem not in NAMES:
            raise NotArithmetic(token)
        stem = tag("mi", GREEK.get(stem, stem) + prime)
        if not index:
            return stem
        return tag("msub", stem, tag("mi", GREEK.get(index, index.replace("_", ","))))


def typeset(line):
    """HTML of one line, None where it is no arithmetic; words may stand far to the right."""
    parts = []
    for i, segment in enumerate(re.split(r" {2,}", line.strip())):
        comma = ", " if segment.endswith(",") else ""
        try:
            inside = Line(segment.removesuffix(",")).whole()
            parts.append(f'<math displaystyle="true">{inside}</math>{comma}')
        except NotArithmetic:
            if i == 0:
                return None
            parts.append(html.escape(segment))
    return " &emsp;".join(parts)


def block(text):
    """HTML of a formula: typeset if every line of it can be."""
    lines = [typeset(line) for line in text.splitlines() if line.strip()]
    if None in lines:
        return f"<pre>{html.escape(text)}</pre>"
    return "<p>" + "<br>\n".join(lines) + "</p>"


def main():
    manifest, output, *topics = sys.argv[1:]
    with open(manifest, encoding="utf-8") as file:
        functions = json.load(file)["functions"]
    for topic in topics:
        parts = ["<dl>"]
        for function in functions:
            if function["topic"] == topic and function["formula"]:
                name = html.escape(function["name"])
                parts += [f"<dt><code>{name}</code></dt>", f"<dd>{block(function['formula'])}</dd>"]
        parts.append("</dl>" if len(parts) > 1 else "")
        text = "\n".join(parts) if len(parts) > 2 else "<p>No closed formula.</p>"
        path = pathlib.Path(output) / f"formulas_{topic}.html"
        path.write_text(text + "\n", encoding="utf-8")


main()
