-- task.c by LuaJIT's ffi: luajit luajit_task.lua vane.cdef.h libvane.so
local ffi = require("ffi")
ffi.cdef(assert(io.open(arg[1])):read("*a"))
local vane = ffi.load(arg[2])

local function bits(x)
	local word = ffi.cast("uint32_t *", ffi.new("double[1]", x))
	if ffi.abi("le") then
		return bit.tohex(word[1]) .. bit.tohex(word[0])
	end
	return bit.tohex(word[0]) .. bit.tohex(word[1])
end

local function flag(condition)
	return condition and 1 or 0
end

local err = ffi.new("vane_error")
local flow = vane.vane_slot_flow(0.024, 20e-6, 0.008, 15e6, 0.028, 1.5, err)
print(("flow %s %d"):format(bits(flow), flag(err.code == vane.VANE_OK)))

local refused = vane.vane_slot_flow(0.024, -1, 0.008, 15e6, 0.028, 1.5, err)
print(("refused %d %d %s: %s"):format(flag(refused ~= refused),
	flag(err.code == vane.VANE_INVALID_ARGUMENT), ffi.string(err.name), ffi.string(err.text)))

local oil = ffi.new("vane_oil")
local state = ffi.new("vane_oil_state")
local status = vane.vane_oil_from_grade(46, 100, oil, err)
status = status + vane.vane_oil_at(oil, 323.15, state, err)
print(("oil %d %s %s"):format(status, bits(state.viscosity), bits(state.viscosity_temperature)))

print("version " .. ffi.string(vane.vane_version()))
