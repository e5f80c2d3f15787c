#!/bin/sh
# Installs a build into a directory of its own and builds a program against it
# by pkg-config alone: C and C++, shared and static.
#   sh tests/consumer/run.sh BUILD_DIR
set -eu
build=$(cd "$1" && pwd)
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

DESTDIR="$work/root" meson install -C "$build" --no-rebuild --quiet >/dev/null
pc=$(find "$work/root" -name vane.pc)
[ -n "$pc" ] || { echo "consumer: vane.pc was not installed." >&2; exit 1; }
PKG_CONFIG_PATH=$(dirname "$pc")
export PKG_CONFIG_PATH

# The prefix in vane.pc is where the package will lie, not the staging directory.
prefix=$work/root$(pkg-config --variable=prefix vane)
libdir=$work/root$(pkg-config --variable=libdir vane)
flags=$(pkg-config --define-variable=prefix="$prefix" --cflags --libs vane)
static=$(pkg-config --define-variable=prefix="$prefix" --static --libs vane)
warnings='-Wall -Wextra -Werror -pedantic'

# shellcheck disable=SC2086
{
  ${CC:-cc} -std=c99 $warnings "$here/consumer.c" $flags -lm -o "$work/c"
  ${CXX:-c++} -x c++ -std=c++98 -Wall -Wextra -Werror "$here/consumer.c" $flags -lm -o "$work/cxx"
  ${CC:-cc} -std=c99 $warnings "$here/consumer.c" \
    $(pkg-config --define-variable=prefix="$prefix" --cflags vane) \
    "$libdir/libvane.a" ${static#*-lvane} -lm -o "$work/static"
}
LD_LIBRARY_PATH=$libdir
export LD_LIBRARY_PATH
for program in c cxx static; do
  "$work/$program" || { echo "consumer: the $program program failed." >&2; exit 1; }
done
