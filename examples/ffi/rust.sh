#!/bin/sh
# Builds flow.rs with nothing but rustc and bindgen, for a libvane as it was built.
#   sh rust.sh RUSTC BINDGEN INCLUDE_DIR LIBRARY_DIR OUT
# For example: sh rust.sh rustc bindgen include build/lib flow_rs
set -eu
if [ $# -ne 5 ]; then
	echo "usage: sh rust.sh RUSTC BINDGEN INCLUDE_DIR LIBRARY_DIR OUT" >&2
	exit 2
fi
rustc=$1
bindgen=$2
include=$3
library=$(cd "$4" && pwd)
out=$5
source=$(cd "$(dirname "$0")" && pwd)

# include! looks beside flow.rs for a relative path.
VANE_BINDINGS=$(cd "$(dirname "$out")" && pwd)/$(basename "$out").bindings.rs
export VANE_BINDINGS

"$bindgen" --no-layout-tests --no-doc-comments --with-derive-default --no-prepend-enum-name \
	--allowlist-function 'vane_.*' --allowlist-type 'vane_.*' \
	--output "$VANE_BINDINGS" "$include/vane.h" -- -I"$include"
"$rustc" --edition 2021 -C opt-level=1 -L "native=$library" -l dylib=vane \
	-C "link-arg=-Wl,-rpath,$library" -o "$out" "$source/flow.rs"
