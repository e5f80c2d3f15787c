#!/bin/sh
# The long campaign: gcc and clang, each as released and under the address and
# undefined-behaviour sanitizers, warnings as errors; the long tests; then valgrind.
#   sh tests/campaign.sh
set -eu
cd "$(dirname "$0")/.."
. examples/setup.sh
. tests/count.sh

# Here everything is installed: only before the first release has abi nothing to compare.
may_skip() {
  [ "$1" = abi ] && ! git describe --tags --abbrev=0 >/dev/null 2>&1
}

if ! need gcc g++ libc6-dev binutils pkg-config meson ninja-build libgsl-dev libjansson-dev libcsv-dev \
  gnuplot-nox check doxygen valgrind units python3 python3-numpy python3-mpmath python3-gmpy2 python3-cffi luajit \
  lua-cjson clang \
  bindgen libclang1 rustc golang-go abigail-tools nodejs npm python3-mesonpy python3-pip python3-venv \
  patchelf git ||
  ! need "libclang-rt-$(clang -dumpversion | cut -d. -f1)-dev"; then
  failed=1
  closing
  exit 1
fi

# build COMPILER NAME [meson setup's options]: into ./build-NAME, from scratch.
build() {
  compiler=$1 directory=build-$2
  shift 2
  rm -rf "$directory"
  CC=$compiler meson setup "$directory" -Dwerror=true "$@" && meson compile -C "$directory"
}

# sheet BUILD_DIR JOB: the main job, its page thrown away.
sheet() {
  "$1/examples/rebuild/rebuild" "examples/rebuild/$2.json" "examples/rebuild/$2.csv" \
    "$1/$2.html"
}

for compiler in gcc clang; do
  echo "== $compiler, release"
  before=$failed
  count_command "$compiler builds a release without a warning" build "$compiler" "$compiler"
  [ "$failed" -ne "$before" ] || count_tests "build-$compiler" --no-suite campaign

  echo "== $compiler, address and undefined-behaviour sanitizers"
  before=$failed
  count_command "$compiler builds with sanitizers" build "$compiler" "$compiler-sanitize" \
    -Dbuildtype=debugoptimized -Db_sanitize=address,undefined -Db_lundef=false \
    -Ddefault_library=static -Dc_args=-fno-sanitize-recover=all
  if [ "$failed" -eq "$before" ]; then
    count_tests "build-$compiler-sanitize" -t 4 --no-suite campaign
    for job in healthy worn; do
      count_command "$job rebuild sheet" sheet "build-$compiler-sanitize" "$job"
    done
  fi
done

echo '== the long tests: the wheel, the contract under sanitizers, mutations'
count_tests build-gcc --suite campaign

# Only the test programs themselves: of a script, valgrind would watch the
# shell. Without Check's fork, so that a leak is not hidden in a child.
echo '== valgrind'
CK_FORK=no
export CK_FORK
watch='valgrind -q --error-exitcode=1 --leak-check=full --errors-for-leak-kinds=definite'
programs=
for source in tests/test_*.c; do
  topic=${source#tests/test_}
  programs="$programs ${topic%.c}"
done
# shellcheck disable=SC2086
count_tests build-gcc -t 20 --wrap="$watch" $programs
for job in healthy worn; do
  # shellcheck disable=SC2086
  count_command "$job rebuild sheet" $watch build-gcc/examples/rebuild/rebuild \
    "examples/rebuild/$job.json" "examples/rebuild/$job.csv" "build-gcc/$job.html"
done

closing
[ "$failed" -eq 0 ]
