#!/bin/sh
# Holds the binary interface to that of the last tagged version: what a program
# built then relies on must be there still, unless the soname has moved.
#   sh abi.sh SOURCE_DIR
# Builds both versions with debug information, in a directory of its own.
set -eu
if [ $# -ne 1 ]; then
	echo "usage: sh abi.sh SOURCE_DIR" >&2
	exit 2
fi
source=$(cd "$1" && pwd)

skip() {
	echo "abi.sh: SKIPPED, $*." >&2
	exit 77
}
for program in abidiff git meson readelf tar; do
	command -v "$program" >/dev/null 2>&1 ||
		skip "$program is missing (Debian: abigail-tools git meson binutils tar)"
done
git -C "$source" rev-parse --git-dir >/dev/null 2>&1 ||
	skip "$source is no git checkout, so there is no earlier version"
tag=$(git -C "$source" describe --tags --abbrev=0 2>/dev/null) ||
	skip "no git tag is in sight: nothing has been released, or the clone is shallow"

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# build SOURCE NAME: leaves the shared library in $work/NAME.
build() {
	if ! { meson setup "$work/$2" "$1" --buildtype=debug -Ddefault_library=shared &&
		meson compile -C "$work/$2" vane; } >"$work/$2.log" 2>&1; then
		cat "$work/$2.log" >&2
		echo "abi.sh: $2 could not be built." >&2
		exit 1
	fi
}

soname() {
	readelf -d "$1" | sed -n 's/.*(SONAME).*\[\(.*\)\]/\1/p'
}

# enumerators SOURCE: "VANE_OK = 0", one a line.
enumerators() {
	cat "$1"/include/vane/*.h | tr -s '[:space:]' ' ' |
		grep -o 'VANE_[A-Z0-9_]* = -\{0,1\}[0-9]*' | sort -u
}

mkdir "$work/source"
git -C "$source" archive "$tag" | tar -x -C "$work/source"
build "$work/source" before
build "$source" now
before=$work/before/lib/libvane.so
now=$work/now/lib/libvane.so

# An addition breaks nobody.
status=0
abidiff --no-added-syms \
	--headers-dir1 "$work/source/include" --headers-dir2 "$source/include" \
	"$before" "$now" >"$work/report" || status=$?
if [ $((status & 3)) -ne 0 ]; then
	cat "$work/report" >&2
	echo "abi.sh: abidiff itself failed." >&2
	exit 1
fi

# No signature names an enum, so abidiff does not follow them.
enumerators "$work/source" >"$work/enumerators"
enumerators "$source" | comm -23 "$work/enumerators" - >"$work/lost"
if [ -s "$work/lost" ]; then
	sed 's/.*/No longer so: &./' "$work/lost" >>"$work/report"
	status=4
fi

from=$(soname "$before")
to=$(soname "$now")
if [ "$status" -eq 0 ]; then
	echo "The binary interface of $tag ($from) is kept by $to."
elif [ "$from" != "$to" ]; then
	cat "$work/report"
	echo "The binary interface of $tag has changed, and the soname with it: $from is now $to."
else
	cat "$work/report" >&2
	echo "abi.sh: the binary interface of $tag has changed, and the soname is still $to." >&2
	exit 1
fi
