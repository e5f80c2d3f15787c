#!/bin/sh
# From nothing to a rebuild sheet: installs what is missing, builds, and runs
# the main job.
#   sh examples/rebuild.sh [JOB.json READINGS.csv OUT.html]
set -eu
if [ $# -ne 0 ] && [ $# -ne 3 ]; then
  echo "usage: sh examples/rebuild.sh [JOB.json READINGS.csv OUT.html]" >&2
  exit 2
fi

# Paths given on the command line are the caller's, not the tree's.
absolute() {
  case $1 in
  /*) printf '%s\n' "$1" ;;
  *) printf '%s/%s\n' "$PWD" "$1" ;;
  esac
}
tree=$(cd "$(dirname "$0")/.." && pwd)
if [ $# -eq 3 ]; then
  job=$(absolute "$1") readings=$(absolute "$2") page=$(absolute "$3")
else
  job=$tree/examples/rebuild/healthy.json
  readings=$tree/examples/rebuild/healthy.csv
  page=$tree/out/healthy.html
fi

cd "$tree"
. examples/setup.sh
need gcc libc6-dev pkg-config meson ninja-build libgsl-dev libjansson-dev libcsv-dev gnuplot-nox
build_tree
if [ ! -x build/examples/rebuild/rebuild ]; then
  # The tree was configured before everything it needs was there.
  build_tree --reconfigure
fi
mkdir -p "$(dirname "$page")"
build/examples/rebuild/rebuild "$job" "$readings" "$page"
echo
echo "The sheet with its plots: $page"
