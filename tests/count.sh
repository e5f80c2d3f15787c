# shellcheck shell=sh
# Counting for the scripts of this directory. Sourced; keeps `passed`,
# `failed`, `skipped` and the names of what was skipped.
passed=0
failed=0
skipped=0
skipped_names=

# may_skip NAME: whether that test may be skipped and the run still pass.
may_skip() {
  :
}

# closing: the last lines, the skipped tests and the count.
closing() {
  names=$(printf '%s\n' "$skipped_names" | sed '/^$/d' | sort -u | paste -s -d , - | sed 's/,/, /g')
  echo "skipped: $skipped${names:+ ($names)}"
  echo "$passed passed, $failed failed"
}

# count_tests BUILD_DIR [meson test's options and names]: adds meson's own summary.
count_tests() {
  directory=$1
  shift
  for name in $(unknown_names "$@"); do
    echo "FAIL  $directory has no test called $name"
    failed=$((failed + 1))
  done
  summary=$(mktemp)
  before=$failed
  status=0
  { meson test -C "$directory" --print-errorlogs "$@" 2>&1 || echo "exit status $?"; } |
    tee "$summary"
  grep -q '^exit status' "$summary" && status=1
  passed=$((passed + $(meson_says Ok) + $(meson_says 'Expected Fail')))
  failed=$((failed + $(meson_says Fail) + $(meson_says 'Unexpected Pass') + $(meson_says Timeout)))
  skipped=$((skipped + $(meson_says Skipped)))
  for name in $(meson_skipped); do
    skipped_names="$skipped_names
$name"
    if ! may_skip "$name"; then
      echo "FAIL  $name was skipped"
      failed=$((failed + 1))
    fi
  done
  # A run that broke down, or that ran nothing, is a failure too.
  if { [ "$status" -ne 0 ] && [ "$failed" -eq "$before" ]; } ||
    ! grep -q '^Ok: *[1-9]' "$summary"; then
    failed=$((failed + 1))
  fi
  rm -f "$summary"
}

meson_says() {
  sed -n "s/^$1: *\([0-9][0-9]*\) *\$/\1/p" "$summary" | tail -n 1 | grep . || echo 0
}

# The names on the lines of the tests that were skipped.
meson_skipped() {
  sed -n 's/^ *[0-9]*\/[0-9]*  *\(.* \/ \)\{0,1\}\([^ ]*\)  *SKIP  *[0-9].*/\2/p' "$summary"
}

# unknown_names [meson test's options and names]: the names that no test has; meson is silent
# about them as long as one of them has.
unknown_names() {
  known=$(meson test -C "$directory" --list 2>/dev/null | sed 's/.* \/ //')
  while [ $# -gt 0 ]; do
    case $1 in
    -t | --suite | --no-suite) shift ;;
    -*) ;;
    *) printf '%s\n' "$known" | grep -Fqx -e "$1" || echo "$1" ;;
    esac
    shift
  done
}

# count_command NAME COMMAND...: one test that is a command.
count_command() {
  name=$1
  shift
  output=$(mktemp)
  if "$@" >"$output" 2>&1; then
    passed=$((passed + 1))
    echo "OK    $name"
  else
    failed=$((failed + 1))
    cat "$output"
    echo "FAIL  $name"
  fi
  rm -f "$output"
}
