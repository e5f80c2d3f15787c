#!/bin/sh
# Builds the Python wheel twice, from this tree and from one as a tarball leaves it; installs each
# into an environment of its own and calls it from an empty directory.
#
#	wheel.sh PYTHON
#
# Without meson-python, venv or patchelf the exit status is 77, for "skipped".
set -eu

PYTHON=$1
export PYTHON
source=$(cd "$(dirname "$0")/../.." && pwd)
room=$(mktemp -d)
trap 'rm -rf "$room"' EXIT

skip()
{
	echo "SKIPPED: $1 is missing, the wheel was NOT tested" >&2
	exit 77
}

for module in mesonpy venv ensurepip pip; do
	"$PYTHON" -c "import $module" 2>/dev/null || skip "Python's $module"
done
command -v patchelf >/dev/null || skip patchelf

build()
{
	sh "$1/lib/bind/python/wheel.sh" "$2" >"$room/log" 2>&1 || { cat "$room/log" >&2; exit 1; }
	"$PYTHON" - "$2"/*.whl <<-'END'
		import base64, csv, email, hashlib, re, sys, zipfile
		names = [n for n in zipfile.ZipFile(sys.argv[1]).namelist() if ".dist-info/" not in n]
		version = sys.argv[1].split("/")[-1].split("-")[1]
		wanted = [f".libvane.mesonpy.libs/libvane.so.{version}", "vane/vane-api.json"]
		wanted += ["vane/py.typed", "vane/__init__.pyi"]
		for name in ("__init__", "_arrays", "_docs", "_functions", "_records", "_where"):
		    wanted.append(f"vane/{name}.py")
		if sorted(names) != sorted(wanted):
		    sys.exit(f"the wheel holds {sorted(names)}, not {sorted(wanted)}")
		# Any Python 3 on this machine's kind; its licence is named, its page is the README.
		name = sys.argv[1].split("/")[-1]
		if not re.fullmatch(r"libvane-[^-]+-py3-none-linux_\w+\.whl", name):
		    sys.exit(f"the wheel is called {name}")
		wheel = zipfile.ZipFile(sys.argv[1])
		info = {n.split("/")[-1]: wheel.read(n) for n in wheel.namelist() if ".dist-info/" in n}
		tag = "-".join(name[:-len(".whl")].split("-")[2:])
		metadata = email.message_from_bytes(info["METADATA"])
		assert f"Tag: {tag}\n" in info["WHEEL"].decode() + "\n", info["WHEEL"]
		assert metadata["License"] == "GPL-3.0-or-later", metadata["License"]
		assert metadata.get_payload().strip().startswith("# libvane"), metadata
		for path, hash, size in csv.reader(info["RECORD"].decode().splitlines()):
		    digest = hashlib.sha256(wheel.read(path)).digest()
		    found = "sha256=" + base64.urlsafe_b64encode(digest).rstrip(b"=").decode()
		    if hash and (hash, int(size)) != (found, len(wheel.read(path))):
		        sys.exit(f"RECORD is wrong about {path}")
	END
	"$PYTHON" -m venv "$2/venv"
	"$2/venv/bin/python" -m pip install --quiet --disable-pip-version-check --no-index \
		"$2"/*.whl
	mkdir "$2/empty"
	cd "$2/empty"
	env -i "$2/venv/bin/python" - <<-'END'
		import pathlib, sys
		import vane
		assert vane.units_m_from_mm(25) == 0.025
		flow = vane.slot_flow(0.02, [1e-5, 2e-5], 0.005, 15e6, 8.6e-3, 0)
		assert abs(flow[1] / flow[0] - 8) < 1e-12, flow
		try:
		    vane.slot_flow(0.02, -1, 0.005, 15e6, 8.6e-3, 0)
		except vane.Error as error:
		    assert error.parameter == "gap"
		else:
		    sys.exit("gap -1 was not refused")
		# The library that is in this process is the wheel's own, and the only one.
		maps = pathlib.Path("/proc/self/maps").read_text().splitlines()
		loaded = {line.split(maxsplit=5)[5] for line in maps if "libvane" in line}
		place = pathlib.Path(sys.prefix).resolve()
		wrong = [f for f in loaded if place not in pathlib.Path(f).resolve().parents]
		assert loaded and not wrong, loaded
		assert place in pathlib.Path(vane.__file__).resolve().parents, vane.__file__
	END
	cd "$room"
}

build "$source" "$room/checkout"

mkdir "$room/tarball"
(cd "$source" && find . -name .git -prune -o -type d -exec test -d '{}/meson-private' \; -prune \
	-o -type f -print0) | tar -C "$source" --null --files-from=- -cf - | tar -C "$room/tarball" -xf -
build "$room/tarball" "$room/from tarball"
