#!/bin/sh
# Runs an ES module against the package libvane of a build directory:
#
#	node.sh BUILD MODULE.mjs [ARGUMENT...]
#
# npm fetches koffi into the build directory once, so the source tree stays clean. Without node,
# npm or the registry the exit status is 77, for "skipped".
set -eu

build=$(readlink -f "$1")
module=$(readlink -f "$2")
shift 2

skip()
{
	echo "SKIPPED: $1" >&2
	exit 77
}

command -v node >/dev/null || skip "node is missing"
node -e 'process.exit(+(parseInt(process.versions.node) < 18))' || skip "node is older than 18"

room=$build/node
if ! [ -d "$room/node_modules" ]; then
	command -v npm >/dev/null || skip "npm is missing, and koffi with it"
	fresh=$(mktemp -d "$build/node.XXXXXX")
	trap 'rm -rf "$fresh"' EXIT
	koffi=koffi@$(node -p 'require(process.argv[1]).dependencies.koffi' \
		"$build/lib/bind/node/package.json")
	npm install --prefix "$fresh" --prefer-offline --fetch-retries=1 --no-audit --no-fund \
		--loglevel=error "$koffi" >&2 || skip "npm cannot fetch $koffi"
	ln -s "$build/lib/bind/node" "$fresh/node_modules/libvane"
	# Another test may have got here first; then its room serves.
	mv -T "$fresh" "$room" 2>/dev/null || [ -d "$room/node_modules" ]
	rm -rf "$fresh"
	trap - EXIT
fi

# Node looks for packages beside the link, not beside what it points to.
link=$room/$(basename "$module")
ln -sf "$module" "$link"
exec node --preserve-symlinks --preserve-symlinks-main "$link" "$@"
