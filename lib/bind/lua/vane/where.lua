--- Where the library, its manifest and its declarations are: first what the environment names, then
-- what lies beside this file, then where Meson put them.

-- In the source tree these lead nowhere.
local BUILT = {library = "@LIBRARY@", manifest = "@MANIFEST@", cdef = "@CDEF@"}
local BESIDE = debug.getinfo(1, "S").source:match("^@(.*/)") or "./"

local function first_of(variable, ...)
	local path = os.getenv(variable)
	if path and path ~= "" then
		return path
	end
	for _, candidate in ipairs{...} do
		local file = io.open(candidate)
		if file then
			file:close()
			return candidate
		end
	end
end

local function needed(variable, name, ...)
	return first_of(variable, BESIDE .. name, ...)
		or error(("vane: %s is not found; set %s to its path"):format(name, variable), 0)
end

local where = {}

function where.manifest()
	return needed("VANE_MANIFEST", "vane-api.json", BUILT.manifest)
end

function where.cdef()
	local directory = where.manifest():match("^.*/") or "./"
	return needed("VANE_CDEF", "vane.cdef.h", directory .. "vane.cdef.h", BUILT.cdef)
end

--- Where no file is known, the system's loader has its own places.
function where.library()
	return first_of("VANE_LIBRARY", BESIDE .. "libvane.so", BUILT.library) or "libvane.so.0"
end

function where.contents(path)
	local file, reason = io.open(path)
	if not file then
		error("vane: " .. reason, 0)
	end
	local text = file:read("*a")
	file:close()
	return text
end

return where
