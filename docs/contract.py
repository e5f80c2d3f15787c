"""Holds the doc blocks of the public headers to their contract.

Reads the XML that Doxygen wrote. Every public function has a brief, a source,
a unit and a range on every number that goes in or out, and a unit on what it
returns; every record field that is a number has a unit and a range; every
enumerator has a value and a brief. Each breach is one sentence that names the
item.

    python3 contract.py XML_DIRECTORY
"""

import pathlib
import re
import sys
import xml.etree.ElementTree as ET

NUMBERS = {"double", "int32_t", "int64_t"}
UNIT_ATOM = r"(?:m|s|kg|K|Pa|N|W|J|Hz|rad)"
UNIT_POWER = rf"{UNIT_ATOM}[2-9]?"
UNIT_PRODUCT = rf"{UNIT_POWER}(?:\.{UNIT_POWER})*"
UNIT = re.compile(
    rf"1|(?:1|{UNIT_PRODUCT})/(?:{UNIT_POWER}|\({UNIT_PRODUCT}\))|{UNIT_PRODUCT}"
)
NUMBER = r"-?\d+(?:\.\d+)?(?:e[-+]?\d+)?"
# A number, a multiple of another parameter, or another parameter.
LIMIT = rf"(?:{NUMBER}(?: [a-z_.]+)?|[a-z_][a-z_.0-9]*)"
RANGE = re.compile(
    rf"any|{NUMBER}|(?:>|>=|<|<=) {LIMIT}|{LIMIT} <=? x <=? {LIMIT}"
)
# What a shop reads from its instruments: only the conversions take it.
TRADE_ATOM = (
    r"(?:[kM]?Pa|mPa|k?W|mm2|cm3|mm|um|L|min|h|bar|Cel|deg|1"
    r"|\[(?:psi|in_i|cin_i|ft_i|lbf_av|gal_us|HP|degF|mil_i|SUS)\]|10\*3)"
)
TRADE = re.compile(rf"{TRADE_ATOM}(?:[./](?:{TRADE_ATOM}|{UNIT_ATOM}))*")
BRACKETS = re.compile(r"\[((?:[^\[\]]|\[[^\[\]]*\])*)\]")


def text_of(element):
    if element is None:
        return ""
    return " ".join("".join(element.itertext()).split())


def bare(kind):
    """The type without const and VANE_API, and whether it is a pointer."""
    pointer = "*" in kind
    words = re.findall(r"\w+", kind)
    words = [w for w in words if w not in ("const", "struct", "enum", "VANE_API")]
    return (words[0] if words else "void"), pointer


def unit_fault(text, ranged, trade=False):
    """What is wrong with the brackets at the end of a text, or None."""
    found = BRACKETS.findall(text)
    if not found:
        return "has no [unit; range]" if ranged else "has no [unit]"
    unit, semicolon, limits = found[-1].partition(";")
    if not UNIT.fullmatch(unit.strip()) and not (trade and TRADE.fullmatch(unit.strip())):
        return f"has the unit '{unit.strip()}', which is not a UCUM code of this library"
    if not ranged:
        return None
    if not semicolon:
        return "has a unit but no range"
    if not RANGE.fullmatch(limits.strip()):
        return f"has the range '{limits.strip()}', which does not read as a range"
    return None


class Contract:
    def __init__(self):
        self.faults = []
        self.functions = self.records = self.enumerators = 0

    def fault(self, item, words):
        self.faults.append(f"{item} {words}.")

    def function(self, member):
        self.functions += 1
        name = text_of(member.find("name"))
        detail = member.find("detaileddescription")
        if not text_of(member.find("briefdescription")):
            self.fault(f"{name}()", "has no brief")
        titles = {
            text_of(s.find("title")): " ".join(text_of(p) for p in s.findall("para"))
            for s in detail.iter("simplesect")
            if s.get("kind") == "par"
        }
        if not titles.get("Source"):
            self.fault(f"{name}()", "has no @source")
        documented = {}
        for item in detail.iter("parameteritem"):
            words = text_of(item.find("parameterdescription"))
            for label in item.iter("parametername"):
                documented[text_of(label)] = (label.get("direction"), words)
        declared = [p for p in member.findall("param") if text_of(p.find("declname"))]
        for param in declared:
            self.parameter(name, param, documented)
        for extra in documented.keys() - {text_of(p.find("declname")) for p in declared}:
            self.fault(f"{name}()", f"documents a parameter '{extra}' that it does not have")
        kind, pointer = bare(text_of(member.find("type")))
        if kind == "void" and not pointer:
            return
        words = " ".join(
            text_of(s) for s in detail.iter("simplesect") if s.get("kind") == "return"
        )
        if not words:
            self.fault(f"{name}()", "has no @return")
        elif kind == "double":
            wrong = unit_fault(words, ranged=False, trade=name.startswith("vane_units_"))
            if wrong:
                self.fault(f"What {name}() returns", wrong)
        elif kind in NUMBERS and not pointer and "vane_status" not in words:
            wrong = unit_fault(words, ranged=False)
            if wrong:
                self.fault(f"What {name}() returns", wrong)

    def parameter(self, function, param, documented):
        label = text_of(param.find("declname"))
        item = f"Parameter '{label}' of {function}()"
        if label not in documented:
            self.fault(item, "is not documented")
            return
        direction, words = documented[label]
        kind, pointer = bare(text_of(param.find("type")))
        constant = "const" in text_of(param.find("type")).split("*")[0]
        if not direction:
            self.fault(item, "does not say [in] or [out]")
        elif direction != "in" and (not pointer or constant):
            self.fault(item, "is marked as an output but cannot be written")
        elif direction == "in" and pointer and not constant:
            self.fault(item, "is marked as an input but is not const")
        if kind not in NUMBERS:
            if not words:
                self.fault(item, "is not described")
            return
        if pointer and direction == "out" and kind != "double" and "enum vane_" in words:
            return
        wrong = unit_fault(words, ranged=True, trade=function.startswith("vane_units_"))
        if wrong:
            self.fault(item, wrong)

    def record(self, compound):
        self.records += 1
        record = text_of(compound.find("compoundname"))
        if not text_of(compound.find("briefdescription")):
            self.fault(record, "has no brief")
        for member in compound.iter("memberdef"):
            item = f"Field {record}.{text_of(member.find('name'))}"
            words = text_of(member.find("briefdescription"))
            words += " " + text_of(member.find("detaileddescription"))
            if not words.strip():
                self.fault(item, "is not described")
                continue
            kind, _ = bare(text_of(member.find("type")))
            if kind in NUMBERS:
                wrong = unit_fault(words, ranged=True)
                if wrong:
                    self.fault(item, wrong)

    def enum(self, member):
        name = text_of(member.find("name"))
        if not text_of(member.find("briefdescription")):
            self.fault(f"Enum {name}", "has no brief")
        for value in member.findall("enumvalue"):
            self.enumerators += 1
            label = text_of(value.find("name"))
            if not text_of(value.find("initializer")):
                self.fault(label, "has no number of its own")
            words = text_of(value.find("briefdescription"))
            words += text_of(value.find("detaileddescription"))
            if not words:
                self.fault(label, "is not described")

    def read(self, directory):
        directory = pathlib.Path(directory)
        # Only what the index lists: pages of an earlier run may lie beside them.
        for entry in ET.parse(directory / "index.xml").getroot().iter("compound"):
            if entry.get("kind") not in ("struct", "file"):
                continue
            path = directory / f"{entry.get('refid')}.xml"
            for compound in ET.parse(path).getroot().iter("compounddef"):
                if compound.get("kind") == "struct":
                    self.record(compound)
                elif compound.get("kind") == "file":
                    for member in compound.iter("memberdef"):
                        if member.get("kind") == "function":
                            self.function(member)
                        elif member.get("kind") == "enum":
                            self.enum(member)


def main(arguments):
    if len(arguments) != 2:
        sys.exit(__doc__)
    contract = Contract()
    contract.read(arguments[1])
    for sentence in contract.faults:
        print(sentence)
    if not contract.functions or not contract.records or not contract.enumerators:
        sys.exit("The XML holds no functions, no records or no enumerators.")
    print(
        f"{contract.functions} functions, {contract.records} records, "
        f"{contract.enumerators} enumerators: {len(contract.faults)} faults"
    )
    return 1 if contract.faults else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv))
