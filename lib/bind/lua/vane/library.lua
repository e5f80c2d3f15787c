--- The library itself, and its refusals as Lua errors.

local ffi = require "ffi"
local manifest = require "vane.manifest"
local where = require "vane.where"

-- A second load, in a fresh package.loaded, finds the types declared.
if not pcall(ffi.typeof, "vane_error") then
	ffi.cdef(where.contents(where.cdef()))
end

local path = where.library()
local loaded, C = pcall(ffi.load, path)
if not loaded then
	error("vane: " .. C .. "; set VANE_LIBRARY to the path of libvane.so", 0)
end
local version = ffi.string(C.vane_version())
if version ~= manifest.version then
	error(("vane: %s is version %s, but %s is of version %s"):format(path, version,
		where.manifest(), manifest.version), 0)
end

local library = {C = C}

--- The record that every call is given: who calls again has read it.
library.failure = ffi.new("vane_error")

local Error = {__tostring = function(self) return self.message end}

local function raise(caller, sentence, what)
	what.status = ffi.string(C.vane_status_name(what.code))
	what.text, what.message = sentence, caller .. ": " .. sentence
	error(setmetatable(what, Error), 0)
end

--- The library has refused with a status, and left the reason in `failure`.
function library.raise_failure(caller, status, result)
	local failure = library.failure
	local text = failure.text[0] ~= 0 and failure.text or C.vane_status_text(status)
	raise(caller, ffi.string(text), {
		code = status,
		parameter = failure.name[0] ~= 0 and ffi.string(failure.name) or nil,
		value = failure.value,
		index = failure.index >= 0 and tonumber(failure.index) or nil,
		result = result,
	})
end

--- Refuses what the library cannot even be asked.
function library.refuse(caller, parameter, value, sentence, ...)
	raise(caller, sentence:format(...), {
		code = C.VANE_INVALID_ARGUMENT,
		parameter = parameter,
		value = value,
	})
end

return library
