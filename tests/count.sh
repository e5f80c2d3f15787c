# shellcheck shell=sh
# Counting for the scripts of this directory. Sourced; keeps `passed`,
# `failed` and `skipped`.
passed=0
failed=0
skipped=0

# count_tests BUILD_DIR [meson test's options]: adds meson's own summary.
count_tests() {
  directory=$1
  shift
  summary=$(mktemp)
  before=$failed
  status=0
  { meson test -C "$directory" --print-errorlogs "$@" 2>&1 || echo "exit status $?"; } |
    tee "$summary"
  grep -q '^exit status' "$summary" && status=1
  passed=$((passed + $(meson_says Ok) + $(meson_says 'Expected Fail')))
  failed=$((failed + $(meson_says Fail) + $(meson_says 'Unexpected Pass') + $(meson_says Timeout)))
  skipped=$((skipped + $(meson_says Skipped)))
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
