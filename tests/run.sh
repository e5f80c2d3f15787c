#!/bin/sh
# Installs what is missing, builds and runs every test but the long ones of campaign.sh.
#   sh tests/run.sh
# The last lines are what was skipped and the count; the exit status is not 0 if any failed.
set -eu
cd "$(dirname "$0")/.."
. examples/setup.sh
. tests/count.sh

if ! need gcc g++ libc6-dev binutils pkg-config meson ninja-build libgsl-dev libjansson-dev libcsv-dev \
  gnuplot-nox check doxygen valgrind units python3 python3-numpy python3-mpmath python3-cffi luajit \
  lua-cjson ||
  ! build_tree --reconfigure; then
  failed=1
  closing
  exit 1
fi

count_tests build --no-suite campaign
count_command 'consumer of the installed package' sh tests/consumer/run.sh build
closing
[ "$failed" -eq 0 ]
