#!/bin/sh
# A foreign parser takes the declarations as they are, and a program in its
# language prints what the same task in C prints.
#   sh parsers.sh cffi|luajit TASK_PROGRAM LIBRARY vane.cdef.h
#   sh parsers.sh bindgen|cgo TASK_PROGRAM LIBRARY INCLUDE_DIR
set -eu
if [ $# -ne 4 ]; then
	echo "usage: sh parsers.sh cffi|luajit|bindgen|cgo TASK_PROGRAM LIBRARY DECLARATIONS" >&2
	exit 2
fi
parser=$1
task=$2
library=$3
declarations=$4
here=$(cd "$(dirname "$0")/parsers" && pwd)
directory=$(cd "$(dirname "$library")" && pwd)
LD_LIBRARY_PATH=$directory${LD_LIBRARY_PATH:+:$LD_LIBRARY_PATH}
export LD_LIBRARY_PATH
work=$(mktemp -d)
trap 'chmod -R u+w "$work"; rm -rf "$work"' EXIT

# needs NAME DEBIAN_PACKAGE COMMAND...: the command fails where it is missing.
needs() {
	name=$1
	package=$2
	shift 2
	"$@" >/dev/null 2>&1 && return
	echo "parsers.sh: SKIPPED, $name is missing (Debian: $package)." >&2
	exit 77
}

with_cffi() {
	python=python3
	# Debian's cffi belongs to Debian's Python, which may not be the first.
	"$python" -c 'import cffi' 2>/dev/null || python=/usr/bin/python3
	needs cffi python3-cffi "$python" -c 'import cffi'
	"$python" "$here/cffi_task.py" "$declarations" "$library"
}

with_luajit() {
	needs LuaJIT luajit luajit -v
	luajit "$here/luajit_task.lua" "$declarations" "$library"
}

with_bindgen() {
	# It asks for libclang only once there is something to read.
	echo 'int probe(void);' >"$work/probe.h"
	needs 'bindgen, or its libclang,' 'bindgen libclang1' bindgen "$work/probe.h"
	needs rustc rustc rustc --version
	bindgen "$declarations/vane.h" -- "-I$declarations" >"$work/bindings.rs"
	BINDINGS=$work/bindings.rs
	export BINDINGS
	set -- --edition 2021 -L "$directory" -l vane "$here/bindgen_task.rs"
	# bindgen writes tests of each record's layout as clang sees it.
	rustc --test "$@" -o "$work/layout"
	"$work/layout" -q >&2
	rustc "$@" -o "$work/task"
	"$work/task"
}

with_cgo() {
	needs Go golang-go go version
	cp "$here/cgo_task.go" "$work/main.go"
	printf 'module task\n\ngo 1.18\n' >"$work/go.mod"
	(
		cd "$work"
		CGO_ENABLED=1 CGO_CFLAGS="-I$declarations" CGO_LDFLAGS="-L$directory -lvane" \
			GOCACHE="$work/cache" GOPATH="$work/path" GOPROXY=off GOTOOLCHAIN=local \
			GOFLAGS=-mod=mod go build -o task .
	) >&2
	"$work/task"
}

case $parser in
cffi | luajit | bindgen | cgo) ;;
*)
	echo "parsers.sh: no parser is called $parser." >&2
	exit 2
	;;
esac
"$task" >"$work/want"
"with_$parser" >"$work/got"
if ! diff "$work/want" "$work/got" >&2; then
	echo "parsers.sh: $parser (>) does not print what C (<) prints." >&2
	exit 1
fi
lines=$(grep -c . "$work/want")
echo "$parser: $lines lines as in C"
[ "$lines" -eq 4 ]
