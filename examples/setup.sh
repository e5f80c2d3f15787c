# shellcheck shell=sh
# Installs what is missing and builds into ./build. Sourced with the root of
# the tree as the working directory; defines need() and build_tree().

have() {
  case $1 in
  gcc) command -v cc || command -v gcc ;;
  g++) command -v c++ || command -v g++ ;;
  libc6-dev) echo '#include <stdio.h>' | cc -E - ;;
  ninja-build) command -v ninja || command -v ninja-build ;;
  gnuplot-nox) command -v gnuplot ;;
  libgsl-dev) pkg-config --exists gsl ;;
  libjansson-dev) pkg-config --exists jansson ;;
  libcsv-dev) echo '#include <csv.h>' | cc -E - ;;
  check) pkg-config --exists check ;;
  lua-cjson) luajit -e 'require "cjson"' ;;
  python3-*) "$(python_for "$1")" -c "import $(python_module "$1")" ;;
  golang-go) command -v go ;;
  nodejs) command -v node ;;
  abigail-tools) command -v abidiff ;;
  libclang1) find /usr/lib \( -name 'libclang-[0-9]*.so*' -o -name 'libclang.so*' \) | grep . ;;
  binutils) command -v readelf ;;
  libclang-rt-*) echo 'int main(void){return 0;}' | clang -fsanitize=address -x c - -o /dev/null ;;
  *) command -v "$1" ;;
  esac >/dev/null 2>&1
}

# The module that a Debian package of Python brings.
python_module() {
  case $1 in
  python3-mesonpy) echo mesonpy ;;
  python3-venv) echo ensurepip ;;
  *) echo "${1#python3-}" ;;
  esac
}

# The interpreter that a Debian package of Python is needed for: the one that Meson runs on, which
# need not be Debian's. Only the parsers' test looks for cffi where Debian puts it.
python_for() {
  case $1 in
  python3-cffi) echo /usr/bin/python3 ;;
  *) meson runpython -c 'import sys; print(sys.executable)' 2>/dev/null || echo /usr/bin/python3 ;;
  esac
}

# need PACKAGE...: Debian's names; asks apt for nothing when all are there.
need() {
  missing=
  for package; do
    have "$package" || missing="$missing $package"
  done
  [ -n "$missing" ] || return 0

  if ! command -v apt-get >/dev/null 2>&1; then
    echo "Please install these (Debian's names), then run this again:$missing" >&2
    return 1
  fi
  root=
  if [ "$(id -u)" -ne 0 ]; then
    if ! command -v sudo >/dev/null 2>&1; then
      echo "Please run this as root, then run this script again: apt-get install$missing" >&2
      return 1
    fi
    root=sudo
  fi

  echo "Installing$missing"
  log=$(mktemp)
  # shellcheck disable=SC2086
  if ! apt_quietly install $missing; then
    # Lists that are empty or stale.
    if ! apt_quietly update || ! apt_quietly install $missing; then
      tail -n 20 "$log" >&2
      rm -f "$log"
      echo "apt could not install:$missing" >&2
      return 1
    fi
  fi
  rm -f "$log"

  # apt brings modules to Debian's Python only.
  for package in $missing; do
    case $package in
    python3-*)
      if ! have "$package"; then
        echo "Meson runs on $(python_for "$package"), which has no $(python_module "$package")." \
          "Please install it there, or use the Meson of Debian; then run this again." >&2
        return 1
      fi
      ;;
    esac
  done
}

apt_quietly() {
  # shellcheck disable=SC2086
  $root env DEBIAN_FRONTEND=noninteractive apt-get -q -y -o DPkg::Lock::Timeout=120 \
    --no-install-recommends "$@" >>"$log" 2>&1 </dev/null
}

# build_tree [--reconfigure]: quiet unless it fails.
build_tree() {
  log=$(mktemp)
  if ! configure "$@" >"$log" 2>&1 || ! meson compile -C build >>"$log" 2>&1; then
    cat "$log" >&2
    rm -f "$log"
    echo "The build failed; what it said is above." >&2
    return 1
  fi
  rm -f "$log"
}

configure() {
  if [ ! -f build/build.ninja ]; then
    rm -rf build
    meson setup build
  elif [ "${1-}" ]; then
    # A tree configured by another meson, or moved, cannot be taken over.
    meson setup "$1" build || { rm -rf build && meson setup build; }
  fi
}
