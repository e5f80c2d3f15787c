#!/bin/sh
# Builds a wheel of the Python module from this tree:
#
#	wheel.sh OUTDIR
#
# The wheel carries libvane.so, its manifest and the module. GSL it does not carry: that comes from
# the system. Needs meson-python, patchelf, pip and all that the library itself is built with.
set -eu

[ $# -eq 1 ] || { sed -n '2,5s/^# *//p' "$0" >&2; exit 2; }
mkdir -p "$1"
out=$(cd "$1" && pwd)
here=$(cd "$(dirname "$0")" && pwd)
source=$(cd "$here/../../.." && pwd)
tree=$(mktemp -d)
trap 'rm -rf "$tree"' EXIT

# A checkout knows what is source; in a tarball everything is, but for build directories.
list()
{
	if [ -e "$source/.git" ]; then
		git -C "$source" ls-files -z --cached --others --exclude-standard
	else
		cd "$source"
		find . -type d -exec test -d '{}/meson-private' \; -prune -o -type f -print0
	fi
}
list | tar -C "$source" --null --files-from=- --ignore-failed-read -cf - | tar -C "$tree" -xf -
cp "$here/pyproject.toml.in" "$tree/pyproject.toml"

# meson-python packs all that Meson would install: here only the library and the module, and the
# manifest beside the module, where it is found wherever the wheel goes.
find "$tree" -name meson.build -exec sed -i \
	-e "/^subdir('\(examples\|tests\|docs.examples\|docs.pages\|bench\|lua\|node\)')/d" \
	-e "/^ *install_headers(/d" \
	-e "/^import('pkgconfig')/,/^)/d" \
	-e "/^cdef = /,/^)/d" {} +
sed -i "s|install_dir: get_option('datadir') / 'libvane'|install_dir: \
python.get_install_dir(pure: false) / 'vane'|" "$tree/docs/meson.build"

PYTHON=${PYTHON:-python3}
"$PYTHON" -m pip --disable-pip-version-check wheel --no-build-isolation --no-deps --no-index \
	--wheel-dir "$tree/wheel" "$tree"

# ctypes loads the library, so any Python 3 will do; meson-python takes all that belongs to one
# architecture for made for one Python.
"$PYTHON" - "$tree"/wheel/*.whl "$out" <<'END'
import base64, hashlib, pathlib, re, sys, zipfile

built, out = map(pathlib.Path, sys.argv[1:])
general = re.sub(r"-[^-]+-[^-]+(-[^-]+\.whl)$", r"-py3-none\1", built.name)
with zipfile.ZipFile(built) as old, zipfile.ZipFile(out / general, "w") as new:
    contents = {item.filename: old.read(item) for item in old.infolist()}
    (tag,) = (n for n in contents if n.endswith(".dist-info/WHEEL"))
    (record,) = (n for n in contents if n.endswith(".dist-info/RECORD"))
    contents[tag] = re.sub(rb"(?m)^Tag: [^-]+-[^-]+-", b"Tag: py3-none-", contents[tag])
    digest = base64.urlsafe_b64encode(hashlib.sha256(contents[tag]).digest()).rstrip(b"=")
    entry = b"%s,sha256=%s,%d" % (tag.encode(), digest, len(contents[tag]))
    line = rb"(?m)^%s,[^\r\n]*" % re.escape(tag.encode())
    contents[record] = re.sub(line, entry, contents[record])
    for item in old.infolist():
        new.writestr(item, contents[item.filename], zipfile.ZIP_DEFLATED)
END
