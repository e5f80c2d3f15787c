#!/bin/sh
# purity.c and the library itself, compiled anew under the thread sanitizer: no
# two threads may touch the same memory unless both only read it.
#   sh threads.sh SOURCE_DIR GENERATED_DIR COMPILER...
# GENERATED_DIR holds the headers that the build of the library writes.
set -eu
if [ $# -lt 3 ]; then
	echo "usage: sh threads.sh SOURCE_DIR GENERATED_DIR COMPILER..." >&2
	exit 2
fi
source=$1
generated=$2
shift 2
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

skip() {
	echo "threads.sh: SKIPPED, $*." >&2
	exit 77
}

sanitize='-std=c11 -g -O1 -fsanitize=thread -pthread'
# Where the kernel scatters addresses too widely for the sanitizer, not here.
still=
# shellcheck disable=SC2046,SC2086
{
	echo 'int main(void) { return 0; }' >"$work/nothing.c"
	"$@" $sanitize "$work/nothing.c" -o "$work/nothing" 2>"$work/log" ||
		skip "$1 has no thread sanitizer here: $(tail -n 1 "$work/log")"
	if ! "$work/nothing" 2>"$work/log"; then
		still='setarch -R'
		$still "$work/nothing" 2>"$work/log" ||
			skip "the thread sanitizer does not run here: $(head -n 1 "$work/log")"
	fi
	"$@" $sanitize '-DVANE_VERSION="0"' \
		-I"$source/include" -I"$source/lib" -I"$generated" $(pkg-config --cflags gsl) \
		"$source"/lib/*.c "$here/purity.c" $(pkg-config --libs gsl) -lm -o "$work/purity"
	TSAN_OPTIONS='halt_on_error=1 exitcode=66' $still "$work/purity"
}
