#!/bin/sh
# Compares every conversion with GNU units: sh units_program.sh path/to/units_table
set -eu
LC_ALL=C
export LC_ALL

if [ $# -ne 1 ]; then
	echo "usage: sh units_program.sh path/to/units_table" >&2
	exit 2
fi
if ! command -v units >/dev/null 2>&1; then
	echo "units_program.sh: the program GNU units is missing; skipped." >&2
	exit 77
fi

tab=$(printf '\t')
expected=50
lines=$("$1")
# A here-document keeps the loop in this shell, so its counts survive.
checked=0
failed=0
while IFS=$tab read -r from to got; do
	want=$(units -t -o%.17g "$from" "$to") || want="units: $want"
	if awk -v got="$got" -v want="$want" 'BEGIN {
		number = "^-?[0-9.]+(e[-+]?[0-9]+)?$"
		if (got !~ number || want !~ number) exit 1
		difference = got - want
		if (difference < 0) difference = -difference
		size = want < 0 ? -want : want + 0
		exit !(difference <= 1e-12 * size)
	}'; then
		checked=$((checked + 1))
	else
		echo "$from -> $to: libvane $got, units $want" >&2
		failed=$((failed + 1))
	fi
done <<EOF
$lines
EOF
echo "$checked conversions agree with GNU units, $failed do not"
[ "$failed" -eq 0 ] && [ "$checked" -eq "$expected" ]
