"""Writes a C program that holds the manifest to the compiler.

The program includes <vane.h> and compares the size of every record, the offset
and type of every field, the value of every enumerator and the type of every
function with what the manifest says. It names each item that differs.

    python3 layout.py vane-api.json layout.c
"""

import json
import sys

HEAD = """\
/* Written by tests/contract/layout.py from vane-api.json; do not edit. */
#include <vane.h>

#include <stddef.h>
#include <stdio.h>

static int checked, faults;

static void same(long long got, long long want, const char *item)
{
	checked++;
	if (got == want)
		return;
	faults++;
	printf("%s is %lld in the headers and %lld in the manifest.\\n", item, got, want);
}

static void typed(int as_documented, const char *item, const char *type)
{
	checked++;
	if (as_documented)
		return;
	faults++;
	printf("%s has not the type '%s' of the manifest.\\n", item, type);
}

#define SAME(got, want, item) same((long long)(got), want, item)
#define TYPED(pointer, type, item, words) typed(_Generic(pointer, type: 1, default: 0), item, words)

"""

MAIN = """\
int main(void)
{{
{calls}\tprintf("%d comparisons of the manifest with the headers, %d differ\\n", checked, faults);
\treturn checked == 0 || faults != 0;
}}
"""


def record_lines(record):
    name = record["name"]
    yield f'SAME(sizeof({name}), {record["size"]}, "The size of {name}");'
    for field in record["fields"]:
        item = f"{name}.{field['name']}"
        kind = field["type"]
        extent = f"[{field['length']}]" if isinstance(field["length"], int) else ""
        yield (
            f"SAME(offsetof({name}, {field['name']}), {field['offset']}, "
            f'"The offset of {item}");'
        )
        # The address, so that an array keeps its length; the type gives the size.
        yield (
            f"TYPED(&(({name} *)0)->{field['name']}, {kind} (*){extent}, "
            f'"{item}", "{kind}{extent}");'
        )


def enum_lines(enum):
    for value in enum["values"]:
        yield f'SAME({value["name"]}, {value["value"]}, "{value["name"]}");'


def function_lines(function):
    params = ", ".join(param["type"] for param in function["params"]) or "void"
    result = function["returns"]["type"]
    yield (
        f'TYPED(&{function["name"]}, {result} (*)({params}), '
        f'"{function["name"]}()", "{result} ({params})");'
    )


def program(manifest):
    parts = [HEAD]
    calls = []
    for key, lines in (
        ("enums", enum_lines),
        ("records", record_lines),
        ("functions", function_lines),
    ):
        body = "".join(f"\t{line}\n" for item in manifest[key] for line in lines(item))
        parts.append(f"static void {key}(void)\n{{\n{body}}}\n\n")
        calls.append(f"\t{key}();\n")
    return "".join(parts) + MAIN.format(calls="".join(calls))


def main(arguments):
    if len(arguments) != 3:
        sys.exit(__doc__)
    with open(arguments[1], encoding="utf-8") as file:
        manifest = json.load(file)
    with open(arguments[2], "w", encoding="utf-8") as file:
        file.write(program(manifest))


if __name__ == "__main__":
    main(sys.argv)
