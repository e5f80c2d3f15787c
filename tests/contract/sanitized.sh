#!/bin/sh
# ranges.py and units.py against a library compiled anew, with the base units of
# units.py, under the address and undefined-behaviour sanitizers: whatever is put
# in, no call may read or write beside its memory, overflow an integer or leave a
# pointer unaligned.
#   sh sanitized.sh SOURCE_DIR WORK_DIR MANIFEST [PATTERN...]
# WORK_DIR is made and holds the library; PYTHON names the interpreter.
set -eu
if [ $# -lt 3 ]; then
	echo "usage: sh sanitized.sh SOURCE_DIR WORK_DIR MANIFEST [PATTERN...]" >&2
	exit 2
fi
source=$1
work=$2
manifest=$3
shift 3
here=$(cd "$(dirname "$0")" && pwd)
compiler=${CC:-gcc}
python=${PYTHON:-python3}
mkdir -p "$work"

skip() {
	echo "sanitized.sh: SKIPPED, $*." >&2
	exit 77
}

# Python itself is not compiled so: it must have the sanitizers loaded first.
loaded=
for name in asan ubsan; do
	file=$("$compiler" -print-file-name=lib$name.so)
	[ -e "$file" ] || skip "$compiler has no shared lib$name.so"
	loaded="$loaded${loaded:+ }$(readlink -f "$file")"
done

"$python" "$source/lib/array_table.py" "$work/array_table.h" "$source"/include/vane/*.h
# shellcheck disable=SC2046
"$compiler" -std=c11 -g -O1 -ffp-contract=off -fPIC -shared -fsanitize=address,undefined \
	-fno-sanitize-recover=all -fno-omit-frame-pointer '-DVANE_VERSION="0"' \
	-include "$here/scaled.h" -I"$source/include" -I"$source/lib" -I"$work" \
	$(pkg-config --cflags gsl) "$here/scaled.c" "$source"/lib/*.c -o "$work/libvane.so" $(pkg-config --libs gsl) -lm

# Until units.py sets them its base units are 1: the library as it is shipped.
VANE_LIBRARY=$work/libvane.so
VANE_SCALED_LIBRARY=$VANE_LIBRARY
VANE_MANIFEST=$manifest
# Every buffer from malloc, so that the end of each is watched.
PYTHONMALLOC=malloc
PYTHONDONTWRITEBYTECODE=1
ASAN_OPTIONS=detect_leaks=0:allocator_may_return_null=1:exitcode=66
UBSAN_OPTIONS=halt_on_error=1:print_stacktrace=1:exitcode=66
export VANE_LIBRARY VANE_SCALED_LIBRARY VANE_MANIFEST PYTHONMALLOC PYTHONDONTWRITEBYTECODE
export ASAN_OPTIONS UBSAN_OPTIONS
status=0
LD_PRELOAD=$loaded "$python" "$here/ranges.py" --draws 2 "$@" || status=1
LD_PRELOAD=$loaded "$python" "$here/units.py" --draws 20 "$@" || status=1
exit "$status"
