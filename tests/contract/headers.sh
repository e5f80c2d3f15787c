#!/bin/sh
# Every public header compiles alone, first, and twice; it includes nothing but
# <stdint.h> and its own kind; and vane.h includes them all.
#   sh headers.sh INCLUDE_DIR COMPILER [FLAG...]
# For example: sh headers.sh include gcc -std=c99 -pedantic -Wall -Wextra -Werror -xc
set -eu
if [ $# -lt 2 ]; then
	echo "usage: sh headers.sh INCLUDE_DIR COMPILER [FLAG...]" >&2
	exit 2
fi
include=$1
shift

newline='
'
checked=0
failed=0
fault() {
	echo "$*" >&2
	failed=$((failed + 1))
}

# compiles WHAT SOURCE COMPILER...; a here-document keeps the counts in this shell.
compiles() {
	what=$1
	source=$2
	shift 2
	checked=$((checked + 1))
	"$@" -fsyntax-only -I"$include" - <<-EOF || fault "$what does not compile with: $*"
		$source
	EOF
}

for path in "$include"/vane.h "$include"/vane/*.h; do
	header=${path#"$include"/}
	once="#include <$header>"
	compiles "$header alone" "$once" "$@"
	compiles "$header included twice" "$once$newline$once" "$@"
	compiles "$header before all the others" "$once$newline#include <vane.h>" "$@"

	alien=$(sed -n 's/^[[:space:]]*#[[:space:]]*include[[:space:]]*//p' "$path" |
		grep -v -x -e '<stdint\.h>' -e '"vane/[a-z]*\.h"') || true
	[ -z "$alien" ] || fault "$header includes $alien: only <stdint.h> and \"vane/...\" may be."
	case $header in
	vane/*) grep -q -x "#include \"$header\"" "$include/vane.h" ||
		fault "vane.h does not include $header." ;;
	esac
done
echo "$checked compilations, $failed faults"
[ "$checked" -ge 6 ] && [ "$failed" -eq 0 ]
