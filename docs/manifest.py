"""Writes the manifest of the public interface, vane-api.json, from Doxygen's XML.

Every public function, record and enumerator is in it, with units (UCUM codes),
ranges, lengths, offsets and sources: what the loaders for other languages and
the tests of the contract live on. What lacks one of these, or is of a kind that
the headers do not allow, is a fault: one sentence that names it. Any fault, and
nothing is written.

    python3 manifest.py XML_DIRECTORY VERSION OUT.json
"""

import json
import keyword
import math
import pathlib
import re
import sys
import xml.etree.ElementTree as ET

NUMBERS = {"double": 8, "int64_t": 8, "int32_t": 4}
INCLUDES = re.compile(r"stdint\.h|vane/[a-z]+\.h")
TYPE = re.compile(
    r"double|int32_t|int64_t|const char \*|vane_\w+ \*|const vane_\w+ \*"
    r"|(?:double|int32_t|int64_t) \*|const (?:double|int32_t|int64_t) \*|const double \*const \*"
)

UNIT_ATOM = r"(?:m|s|kg|K|Pa|N|W|J|Hz|rad)"
UNIT_POWER = rf"{UNIT_ATOM}[2-9]?"
UNIT_PRODUCT = rf"{UNIT_POWER}(?:\.{UNIT_POWER})*"
UNIT = re.compile(rf"1|(?:1|{UNIT_PRODUCT})(?:/(?:{UNIT_POWER}|\({UNIT_PRODUCT}\)))?")
# What a shop reads from its instruments: only the conversions take it.
TRADE_ATOM = (
    r"(?:[kM]?Pa|mPa|k?W|mm2|cm3|mm|um|L|min|h|bar|Cel|deg|1"
    r"|\[(?:psi|in_i|cin_i|ft_i|lbf_av|gal_us|HP|degF|mil_i|SUS)\]|10\*3)"
)
TRADE = re.compile(rf"{TRADE_ATOM}(?:[./](?:{TRADE_ATOM}|{UNIT_ATOM}))*")

NUMBER = r"-?\d+(?:\.\d+)?(?:e[-+]?\d+)?"
NAME = r"[a-z_][a-z_.0-9]*"
# A number, a multiple of another parameter, or another parameter.
LIMIT = rf"(?:{NUMBER}(?: {NAME})?|{NAME})"
ONE_SIDED = re.compile(rf"(>=?|<=?) ({LIMIT})")
TWO_SIDED = re.compile(rf"({LIMIT}) (<=?) x (<=?) ({LIMIT})")
BRACKETS = re.compile(r"\[((?:[^\[\]]|\[[^\[\]]*\])*)\]\.?$")
ENUM = re.compile(r"\b([Nn]umber|[Ss]et) of enum (vane_\w+)|\benum (vane_\w+)")

# Topics whose numbers may be in a unit of the caller's own, [any; any].
OWN_UNIT = ("array", "fit", "measure")
# Whose arrays may be of a length that no parameter counts.
OWN_LENGTH = ("vane_array_run",)
# Speeds are revolutions per second.
ANGULAR_SPEED = re.compile(r"\brad[2-9]?\b.*/.*\bs")
UNFINISHED = re.compile(r"\b(?:todo|tbd|fixme|xxx)\b", re.IGNORECASE)

PLAIN = re.compile(r"[a-z][a-z0-9]*(?:_[a-z0-9]+)*")
# Words that a loader's language has taken.
KEYWORDS = set(keyword.kwlist) | set(
    """and break do else elseif end false for function goto if in local nil not or repeat
    return then true until while
    arguments await case catch class const continue debugger default delete enum eval
    export extends finally implements import instanceof interface let new null package
    private protected public static super switch this throw try typeof var void with
    yield""".split()
)
# What a loader adds of its own to what the caller gives, and to a record.
GIVEN = ("error", "out", "self")
METHODS = ("as_dict", "keys", "self")
# These are reached by their names in quotation marks.
QUOTED = ("vane_parts_gaps.end", "vane_thread_class.yield")


class Fault(Exception):
    """What is wrong with an item, as the rest of a sentence about it."""


def text_of(element):
    return "" if element is None else " ".join("".join(element.itertext()).split())


def type_of(element):
    """A C type with its spaces in one way: 'const double *const *'."""
    words = text_of(element).replace("*", " * ").split()
    kept = [w for w in words if w not in ("struct", "enum", "VANE_API")]
    return re.sub(r"\* (?=\*|const)", "*", " ".join(kept))


def base_of(kind):
    return next((w for w in re.findall(r"\w+", kind) if w != "const"), "void")


def paragraphs(detail):
    """The prose of a doc block, and its formulas, without its sections."""
    prose, formulas = [], []
    for para in [] if detail is None else detail.findall("para"):
        words = [para.text or ""]
        for part in para:
            if part.tag == "verbatim":
                lines = (part.text or "").strip("\n").split("\n")
                formulas.append("\n".join(line.rstrip() for line in lines))
            elif part.tag not in ("simplesect", "parameterlist"):
                words.append("".join(part.itertext()))
            words.append(part.tail or "")
        prose.append(" ".join("".join(words).split()))
    return "\n\n".join(p for p in prose if p), "\n".join(formulas)


def number_of(words):
    number = float(words)
    if not math.isfinite(number) or (number == 0 and re.search("[1-9]", words.partition("e")[0])):
        raise Fault(f"has the limit '{words}', which no double holds")
    return number


def limit(words):
    """A number, or {"times": number, "of": name}."""
    number, _, name = words.partition(" ")
    if re.fullmatch(NUMBER, number):
        return {"times": number_of(number), "of": name} if name else number_of(number)
    return {"times": 1.0, "of": words}


def range_of(words):
    found = {"text": words, "low": None, "low_open": False, "high": None, "high_open": False}
    one, two = ONE_SIDED.fullmatch(words), TWO_SIDED.fullmatch(words)
    if one:
        side = "low" if one[1].startswith(">") else "high"
        found[side] = limit(one[2])
        found[side + "_open"] = "=" not in one[1]
    elif two:
        found["low"], found["high"] = limit(two[1]), limit(two[4])
        found["low_open"], found["high_open"] = two[2] == "<", two[3] == "<"
        low, high = found["low"], found["high"]
        if isinstance(low, float) and isinstance(high, float) and low >= high:
            raise Fault(f"has the range '{words}', which nothing meets")
    elif re.fullmatch(NUMBER, words):
        found["low"] = found["high"] = number_of(words)
    elif words != "any":
        raise Fault(f"has the range '{words}', which does not read as a range")
    return found


def unit_of(words, trade=False):
    if not UNIT.fullmatch(words) and not (trade and TRADE.fullmatch(words)):
        raise Fault(f"has the unit '{words}', which is not a UCUM code of this library")
    if ANGULAR_SPEED.search(words):
        raise Fault(f"has the unit '{words}', but speeds are in revolutions per second")
    return words


def length_of(words):
    """'length n or NULL': the length, a name or a number, and whether NULL is taken."""
    count, _, optional = words.removeprefix("length ").partition(" or ")
    if count.isdigit() and int(count) == 0:
        raise Fault("has the length 0")
    return (int(count) if count.isdigit() else count), optional == "NULL"


def named(name, taken):
    if not PLAIN.fullmatch(name):
        raise Fault("has a name that is not in small letters and single underscores")
    if name in KEYWORDS or name in taken:
        raise Fault("has a name that a language of the loaders has taken")


def contract(words, number, topic, ranged=True):
    """What the brackets at the end of a text promise, and the text without them."""
    found = BRACKETS.search(words)
    item = {"unit": None, "range": None, "length": None, "optional": False}
    parts = [p.strip() for p in found[1].split(";")] if found else []
    if parts and parts[-1].startswith("length "):
        item["length"], item["optional"] = length_of(parts.pop())
    if number and not parts:
        raise Fault("has no [unit; range]" if ranged else "has no [unit]")
    if number and ranged and len(parts) != 2:
        raise Fault("has a unit but no range")
    if number and not (parts == ["any", "any"] and topic in OWN_UNIT):
        item["unit"] = unit_of(parts[0], topic == "units")
        item["range"] = range_of(parts[1]) if ranged else None
    item["text"] = (words[: found.start()] if found else words).rstrip(" .,")
    if not item["text"]:
        raise Fault("is not described")
    if UNFINISHED.search(item["text"]):
        raise Fault("is not described in full")
    enum = ENUM.search(item["text"])
    item["enum"] = (enum[2] or enum[3]) if enum else None
    item["set"] = bool(enum and enum[1] in ("set", "Set"))
    return item


class Manifest:
    def __init__(self, version):
        self.faults = []
        self.content = {
            "library": "libvane",
            "version": version,
            "topics": [],
            "functions": [],
            "records": [],
            "enums": [],
        }

    def fault(self, item, words):
        self.faults.append(f"{item} {words}.")

    def read(self, directory):
        directory = pathlib.Path(directory)
        # Only what the index lists: pages of an earlier run may lie beside them.
        for entry in ET.parse(directory / "index.xml").getroot().iter("compound"):
            kind = entry.get("kind")
            if kind not in ("struct", "union", "file", "class"):
                continue
            path = directory / f"{entry.get('refid')}.xml"
            for compound in ET.parse(path).getroot().iter("compounddef"):
                name = text_of(compound.find("compoundname"))
                if kind == "struct":
                    self.record(name, compound)
                elif kind != "file":
                    self.fault(name, f"is a {kind}, which no public header may hold")
                elif name.endswith(".h"):
                    self.header(name.removesuffix(".h"), compound)
        for what in ("topics", "functions", "records", "enums"):
            if not self.content[what]:
                self.fault("The XML", f"holds no {what}")
        self.sort_records()
        self.lay_out()
        self.resolve()

    def prefixed(self, name, prefix):
        if not name.startswith(prefix):
            self.fault(name, f"does not begin with {prefix}")
        elif name.removeprefix(prefix) in KEYWORDS:
            self.fault(name, "has a name that a language of the loaders has taken")

    def header(self, topic, compound):
        brief = text_of(compound.find("briefdescription"))
        if not brief:
            self.fault(f"{topic}.h", "has no brief")
        if topic != "vane":
            self.content["topics"].append({"name": topic, "brief": brief})
        for include in compound.findall("includes"):
            if not INCLUDES.fullmatch(text_of(include)):
                self.fault(f"{topic}.h", f"includes {text_of(include)}")
        for member in compound.iter("memberdef"):
            kind, name = member.get("kind"), text_of(member.find("name"))
            if kind == "function":
                self.function(topic, name, member)
            elif kind == "enum":
                self.enum(topic, name, member)
            elif name != "VANE_API":
                self.fault(name, f"is a {kind}, which no public header may hold")

    def function(self, topic, name, member):
        item = f"{name}()"
        self.prefixed(name, "vane_")
        detail = member.find("detaileddescription")
        sections = {}
        for section in detail.iter("simplesect"):
            if section.get("kind") == "par":
                words = [text_of(p) for p in section.findall("para")]
                sections.setdefault(text_of(section.find("title")), []).extend(words)
        doc, formula = paragraphs(detail)
        found = {
            "name": name,
            "topic": topic,
            "kind": None,
            "brief": text_of(member.find("briefdescription")),
            "formula": formula,
            "doc": doc,
            "valid": " ".join(sections.get("Valid", [])),
            "source": " ".join(sections.get("Source", [])),
            "constants": [],
        }
        computes = base_of(type_of(member.find("type"))) in NUMBERS
        for words in ("brief", "source") + (("valid",) if computes else ()):
            if not re.search("[a-z]{2}", found[words], re.IGNORECASE):
                self.fault(item, f"has no {words}")
            elif UNFINISHED.search(found[words]):
                self.fault(item, f"has a {words} that is unfinished")
        for words in sections.get("Dimensional constant", []):
            try:
                constant = contract(words, True, topic, ranged=False)
                found["constants"].append({"text": constant["text"], "unit": constant["unit"]})
            except Fault as fault:
                self.fault(f"A dimensional constant of {item}", fault)
        found["returns"] = self.returns(item, member, topic)
        found["params"] = self.params(item, member, topic)
        try:
            found["kind"] = shape(found)
        except Fault as fault:
            self.fault(item, fault)
        for word in ("inline", "static"):
            if member.get(word) == "yes":
                self.fault(item, f"is {word}, which no public header may hold")
        if "..." in text_of(member.find("argsstring")):
            self.fault(item, "takes a variable number of arguments")
        self.content["functions"].append(found)

    def returns(self, item, member, topic):
        kind = type_of(member.find("type"))
        words = " ".join(
            text_of(s)
            for s in member.find("detaileddescription").iter("simplesect")
            if s.get("kind") == "return"
        )
        found = {"type": kind, "unit": None, "text": words}
        if kind == "void":
            return found
        try:
            promised = contract(words, kind == "double", topic, ranged=False)
            found["unit"], found["text"] = promised["unit"], promised["text"]
            if kind == "int32_t" and promised["enum"] != "vane_status":
                raise Fault("is not said to be a number of enum vane_status")
        except Fault as fault:
            self.fault(f"What {item} returns", fault if words else "is not described")
        return found

    def params(self, item, member, topic):
        documented = {}
        for entry in member.find("detaileddescription").iter("parameteritem"):
            words = text_of(entry.find("parameterdescription"))
            for label in entry.iter("parametername"):
                documented[text_of(label)] = (label.get("direction"), words)
        found = []
        for param in member.findall("param"):
            label, kind = text_of(param.find("declname")), type_of(param.find("type"))
            if kind == "void" and not label:
                continue
            direction, words = documented.pop(label, (None, ""))
            entry = {"name": label, "type": kind, "direction": direction}
            try:
                if param.find("array") is not None:
                    raise Fault("is an array in brackets, not a pointer")
                allowed(kind, direction)
                named(label, GIVEN if direction == "in" else ())
                entry |= contract(words, base_of(kind) in NUMBERS, topic)
                sized(entry)
                found.append(entry)
            except Fault as fault:
                words = fault if words else "is not documented"
                self.fault(f"Parameter '{label}' of {item}", words)
        for label in documented:
            self.fault(item, f"documents a parameter '{label}' that it does not have")
        return found

    def record(self, name, compound):
        brief = text_of(compound.find("briefdescription"))
        if not brief:
            self.fault(name, "has no brief")
        self.prefixed(name, "vane_")
        topic = pathlib.Path(compound.find("location").get("file")).stem
        record = {"name": name, "topic": topic, "brief": brief, "size": 0, "fields": []}
        for member in compound.iter("memberdef"):
            self.field(record, member)
        self.content["records"].append(record)

    def field(self, record, member):
        label, kind = text_of(member.find("name")), type_of(member.find("type"))
        item = f"Field {record['name']}.{label}"
        words = text_of(member.find("briefdescription"))
        words = f"{words} {text_of(member.find('detaileddescription'))}".strip()
        array = re.fullmatch(r"\[(\d+)\]", text_of(member.find("argsstring")))
        try:
            if member.get("kind") != "variable" or "*" in kind or "(" in kind:
                raise Fault("is neither a number nor a record")
            if member.find("bitfield") is not None:
                raise Fault("is a bit field")
            if kind != "char" and kind not in NUMBERS and not re.fullmatch(r"vane_\w+", kind):
                raise Fault(f"is of type '{kind}', which no public header may hold")
            if (kind == "char") != bool(array):
                raise Fault("is an array" if array else "is a single character")
            if f"{record['name']}.{label}" not in QUOTED:
                named(label, METHODS)
            entry = {"name": label, "type": kind, "offset": 0}
            entry |= contract(words, kind in NUMBERS, record["topic"])
            if entry["length"] is not None:
                raise Fault("has a length, but is not an array")
            del entry["optional"]
            if array:
                entry["length"] = int(array[1])
            record["fields"].append(entry)
        except Fault as fault:
            self.fault(item, fault if words else "is not described")

    def enum(self, topic, name, member):
        brief = text_of(member.find("briefdescription"))
        if not brief:
            self.fault(f"Enum {name}", "has no brief")
        if not name.startswith("vane_"):
            first = text_of(member.find("enumvalue/name"))
            self.fault(f"The enum of {first}", "has no name that begins with vane_")
        values = []
        for value in member.findall("enumvalue"):
            label = text_of(value.find("name"))
            self.prefixed(label, "VANE_")
            number = text_of(value.find("initializer")).removeprefix("=").strip()
            words = text_of(value.find("briefdescription"))
            words = f"{words} {text_of(value.find('detaileddescription'))}".strip()
            if not re.fullmatch(r"-?\d+", number):
                self.fault(label, "has no number of its own")
                continue
            if not words:
                self.fault(label, "is not described")
            values.append({"name": label, "value": int(number), "brief": words})
        if len({v["value"] for v in values}) != len(values):
            self.fault(f"Enum {name}", "has one number twice")
        prose, _ = paragraphs(member.find("detaileddescription"))
        bits = "Bits of a set" in f"{brief} {prose}"
        self.content["enums"].append(
            {"name": name, "topic": topic, "brief": brief, "set": bits, "values": values}
        )

    def sort_records(self):
        """A record after the records that it holds, as a header has them."""
        waiting, done = self.content["records"], []
        while waiting:
            names = {r["name"] for r in waiting}
            ready = [r for r in waiting if not names & {f["type"] for f in r["fields"]}]
            if not ready:
                self.fault(waiting[0]["name"], "holds itself")
                break
            done += ready
            waiting = [r for r in waiting if r not in ready]
        self.content["records"] = done

    def lay_out(self):
        """Offsets and sizes, natural alignment; a test holds the compiler to them."""
        sizes = {}
        for record in self.content["records"]:
            offset, before, widest = 0, 8, 1
            for field in record["fields"]:
                size, align = sizes.get(field["type"]) or (
                    (NUMBERS.get(field["type"], 1),) * 2
                )
                if align > before:
                    item = f"Field {record['name']}.{field['name']}"
                    self.fault(item, "stands after a smaller one")
                offset = -(-offset // align) * align
                field["offset"] = offset
                offset += size * (field["length"] or 1)
                before, widest = align, max(widest, align)
            record["size"] = -(-offset // widest) * widest
            sizes[record["name"]] = record["size"], widest

    def resolve(self):
        """Every name that a type, a range, a length or an enum refers to is there."""
        records = {r["name"]: {f["name"]: f for f in r["fields"]} for r in self.content["records"]}
        enums = {e["name"] for e in self.content["enums"]}

        def leads_somewhere(path, fields):
            first, _, rest = path.partition(".")
            field = fields.get(first)
            inner = records.get(base_of(field["type"]), {}) if field else {}
            return field and (not rest or leads_somewhere(rest, inner))

        def leads_to(name, goal, among, seen):
            """Whether the limits of one item rest, by way of others, on another."""
            for side in ("low", "high"):
                of = (among.get(name, {}).get("range") or {}).get(side)
                of = of["of"] if isinstance(of, dict) else None
                if of and of not in seen:
                    seen.add(of)
                    if of == goal or leads_to(of, goal, among, seen):
                        return True
            return False

        def check(label, item, among):
            base = base_of(item["type"])
            if base.startswith("vane_") and base not in records:
                self.fault(label, f"is of type '{base}', which is not a record")
            if item["enum"] and item["enum"] not in enums:
                self.fault(label, f"speaks of {item['enum']}, which is not an enum")
            for side in ("low", "high"):
                of = (item["range"] or {}).get(side)
                if isinstance(of, dict) and not leads_somewhere(of["of"], among):
                    self.fault(label, f"has a limit of '{of['of']}', which is not there")
            if leads_to(item["name"], item["name"], among, set()):
                self.fault(label, "is its own limit")
            length = item["length"]
            free = label.endswith(tuple(f" of {name}()" for name in OWN_LENGTH))
            if isinstance(length, str) and length not in among and not (free and " " in length):
                self.fault(label, f"has the length '{length}', which is not there")
            elif length in among and among[length]["type"] not in ("int32_t", "int64_t"):
                self.fault(label, f"has the length '{length}', which is not a whole number")

        for function in self.content["functions"]:
            among = {p["name"]: p for p in function["params"]}
            for param in function["params"]:
                check(f"Parameter '{param['name']}' of {function['name']}()", param, among)
        for record in self.content["records"]:
            for field in record["fields"]:
                label = f"Field {record['name']}.{field['name']}"
                check(label, field, records[record["name"]])


def allowed(kind, direction):
    base = base_of(kind)
    constant = kind.startswith("const ")
    if "(" in kind:
        raise Fault("is a callback")
    if base not in NUMBERS and not base.startswith("vane_") and kind != "const char *":
        raise Fault(f"is of type '{kind}', which no public header may hold")
    if base.startswith("vane_") and "*" not in kind:
        raise Fault("is a record by value")
    if not TYPE.fullmatch(kind):
        raise Fault(f"is of type '{kind}', which no public header may hold")
    if direction not in ("in", "out", "inout"):
        raise Fault("does not say [in] or [out]")
    if direction != "in" and ("*" not in kind or constant):
        raise Fault("is marked as an output but cannot be written")
    if direction == "in" and "*" in kind and not constant:
        raise Fault("is marked as an input but is not const")


def sized(param):
    """An array of numbers says how long it is, and nothing else does."""
    if param["length"] is not None and "*" not in param["type"]:
        raise Fault("has a length, but is not an array")
    numbers_in = base_of(param["type"]) in NUMBERS and param["direction"] == "in"
    if param["length"] is None and numbers_in and "*" in param["type"]:
        raise Fault("is an array without a length")


def shape(function):
    """Formula, procedure, defaults or text: there is no other."""
    kind = function["returns"]["type"]
    types = [p["type"] for p in function["params"]]
    if kind == "const char *" and all(t in NUMBERS for t in types):
        return "text"
    if kind == "void" and function["name"].endswith("_default") and len(types) == 1:
        if not types[0].startswith("vane_"):
            raise Fault("does not fill a record")
        return "defaults"
    if not types or types[-1] != "vane_error *" or function["params"][-1]["name"] != "error":
        raise Fault("does not end in vane_error *error")
    if kind == "double":
        if any(t != "double" for t in types[:-1]):
            raise Fault("returns a number, but takes more than numbers")
        return "formula"
    if kind == "int32_t":
        return "procedure"
    raise Fault("is of no known shape: formula, procedure, defaults or text")


def main(arguments):
    if len(arguments) != 4:
        sys.exit(__doc__)
    manifest = Manifest(arguments[2])
    manifest.read(arguments[1])
    if manifest.faults:
        sys.exit("\n".join(manifest.faults))
    with open(arguments[3], "w", encoding="utf-8") as out:
        json.dump(manifest.content, out, indent=1, ensure_ascii=False)
        out.write("\n")


if __name__ == "__main__":
    main(sys.argv)
