--[[
libvane for LuaJIT. What it offers it reads from the manifest, vane-api.json: no line here is about
any one function.

	local vane = require "vane"
	vane.slot_flow(0.02, 30e-6, 0.005, 15e6, 8.6e-3, 0)       a number
	vane.slot_flow{width = 0.02, gap = {20e-6, 30e-6}, ...}   a list; arrays broadcast
	vane.ring{width = 0.0254, law = vane.RING_CYCLOIDAL}      a record
	vane.ring_default():with{width = 0.0254}                  a copy with changes
	vane.help(), vane.help "slot_flow"

A single table with named keys gives the arguments by name; what help says may be left out is nil
then. Arrays are tables, nested ones too, or FFI arrays of numbers; one FFI array among them makes
the result one. A record is a table that refuses unknown fields; record:table() is a plain copy.

Errors are tables that print as their message: code, status, parameter, value, index, text, message
(the text after the function's name), and result where arrays were computed. The index counts from
0, as the library does; where a sentence speaks of gap[2], it counts from 1, as Lua does.

VANE_LIBRARY, VANE_MANIFEST and VANE_CDEF name files that go before those found.
]]

local functions = require "vane.functions"
local help = require "vane.help"
local library = require "vane.library"
local manifest = require "vane.manifest"
local records = require "vane.records"

local vane = {help = help}

for _, enum in ipairs(manifest.enums) do
	for _, item in ipairs(enum.values) do
		vane[item.short] = item.value
	end
end

for _, record in ipairs(manifest.records) do
	vane[record.short] = records.constructor(record)
end

-- The array door is behind every formula already.
for _, item in ipairs(manifest.functions) do
	if item.topic ~= "array" then
		vane[item.short] = functions[item.kind](item, library.C[item.name])
	end
end

return setmetatable(vane, {__index = function(_, name)
	library.refuse("vane", tostring(name), nil, "there is nothing called '%s'.", tostring(name))
end})
