-- The Lua module against numbers that do not come from it, and every way it refuses.

local cjson = require "cjson"
local ffi = require "ffi"
local vane = require "vane"

local tests = {}

-- Checks ------------------------------------------------------------------------------------------

local function same(got, want, what)
	if got ~= want then
		error(("%s is %s, not %s"):format(what or "it", tostring(got), tostring(want)), 2)
	end
end

local function near(got, want, tolerance)
	-- A NaN fails too.
	if not (math.abs(got - want) <= (tolerance or 1e-12) * math.abs(want)) then
		error(("%.17g is not %.17g"):format(got, want), 2)
	end
end

--- Calls what must be refused; returns the error.
local function refused(message, call, ...)
	local accepted, failure = pcall(call, ...)
	if accepted then
		error("accepted what must be refused: " .. message, 2)
	end
	same(type(failure), "table", "the error, " .. tostring(failure) .. ",")
	same(failure.message, message, "the message")
	same(tostring(failure), message, "the printed error")
	return failure
end

--- What a call prints.
local function output(call, ...)
	local original, lines = print, {}
	print = function(text) lines[#lines + 1] = text end
	local fine, failure = pcall(call, ...)
	print = original
	assert(fine, failure)
	return table.concat(lines, "\n") .. "\n"
end

local function contains(text, part)
	if not text:find(part, 1, true) then
		error(("%q is not in:\n%s"):format(part, text), 2)
	end
end

local SLOT = {
	width = 0.02, gap = 1e-5, length = 0.005, dp = 15e6, viscosity = 8.6e-3, wall_speed = 0,
}

local function slot_with(changes)
	local arguments = {}
	for name, value in pairs(SLOT) do
		arguments[name] = value
	end
	for name, value in pairs(changes) do
		arguments[name] = value
	end
	return arguments
end

--- The law of the slot between parallel plates, White, Viscous Fluid Flow, sec. 3-2.
local function slot_flow(gap, dp)
	return 0.02 * gap ^ 3 * (dp or 15e6) / (12 * 8.6e-3 * 0.005)
end

local function whole_pump()
	return vane.parts_default():with{
		ring = {large_radius = 0.0300, small_radius = 0.0268, width = 0.025412},
		rotor_radius = 0.0262, rotor_width = 0.025393, slot_width = 2.030e-3,
		vane_width = 0.025398, vane_thickness = 2e-3, vane_height = 9e-3,
		tip_radius = 1.2e-3, plate_bore = 0.0110, groove_inner = 0.0150,
			groove_outer = 0.0185,
		inlet_open = math.rad(17), inlet_close = math.rad(73),
		outlet_open = math.rad(110), outlet_close = math.rad(164), notch = math.rad(4),
		shaft_radius = 0.0105, shaft_gap = 0.05e-3, shaft_length = 0.012, vanes = 12,
	}
end

local function readings()
	local list = {}
	for i, megapascal in ipairs{1, 5, 10, 15, 20} do
		-- 40 cm3 a revolution at 25 rev/s, less 2e-12 m3/s for each pascal.
		local pressure = megapascal * 1e6
		local flow = 1e-3 - 2e-12 * pressure
		list[i] = {speed = 25, pressure = pressure, temperature = 323.15, flow = flow}
	end
	return list
end

-- The manifest and the module ---------------------------------------------------------------------

function tests.everything_is_there()
	local file = assert(io.open(os.getenv("VANE_MANIFEST")))
	local manifest = cjson.decode(file:read("*a"))
	file:close()
	local wanted, count = {help = "function"}, 0
	local function want(name, kind)
		same(wanted[name], nil, "a second " .. name)
		wanted[name] = kind
	end
	for _, item in ipairs(manifest.functions) do
		if item.topic ~= "array" then
			want(item.name:sub(6), "function")
		end
	end
	for _, record in ipairs(manifest.records) do
		want(record.name:sub(6), "function")
	end
	for _, enum in ipairs(manifest.enums) do
		for _, item in ipairs(enum.values) do
			want(item.name:sub(6), "number")
			same(vane[item.name:sub(6)], item.value, item.name)
		end
	end
	for name, kind in pairs(wanted) do
		same(type(vane[name]), kind, "the type of " .. name)
		count = count + 1
	end
	for name in pairs(vane) do
		assert(wanted[name], name .. " is not in the manifest")
	end
	assert(count > 150)
end

function tests.misspelt_names_are_refused()
	for _, name in ipairs{"RING_CYCLODIAL", "slot_flwo", "rign"} do
		local failure = refused(("vane: there is nothing called '%s'."):format(name),
			function() return vane[name] end)
		same(failure.parameter, name)
	end
end

function tests.loads_twice()
	local kept = {}
	for name, module in pairs(package.loaded) do
		if name:find("^vane") then
			kept[name], package.loaded[name] = module, nil
		end
	end
	local again = require "vane"
	assert(again ~= vane)
	near(again.units_m_from_mm(25.4), 0.0254)
	for name, module in pairs(kept) do
		package.loaded[name] = module
	end
end

--- What another LuaJIT says to a program with a changed environment.
local function said_by(program, environment)
	local path = os.tmpname()
	local file = assert(io.open(path, "w"))
	file:write(program)
	file:close()
	local pipe = assert(io.popen(("env %s '%s' %s 2>&1"):format(environment, arg[-1], path)))
	local said = pipe:read("*a")
	pipe:close()
	os.remove(path)
	return said
end

local function loaded_with(environment)
	return said_by('print(pcall(require, "vane"))', environment)
end

--- Runs a program with the manifest that `change` makes of this one.
local function run_with_manifest(change, program)
	local file = assert(io.open(os.getenv("VANE_MANIFEST")))
	local manifest = cjson.decode(file:read("*a"))
	file:close()
	change(function(name, own)
		for _, item in ipairs(manifest.functions) do
			for _, param in ipairs(item.name == name and item.params or {}) do
				if param.name == own then
					return param
				end
			end
		end
	end)
	local path = os.tmpname()
	local copy = assert(io.open(path, "w"))
	copy:write(cjson.encode(manifest))
	copy:close()
	local environment = ("VANE_MANIFEST=%s VANE_CDEF=%s"):format(path, os.getenv("VANE_CDEF")
		or require "vane.where".cdef())
	local said = said_by([[
		local ffi, vane = require "ffi", require "vane"
		local function refused(message, call, ...)
			local accepted, failure = pcall(call, ...)
			assert(not accepted, message)
			assert(failure.message == message, failure.message)
			return failure
		end
		local oil = vane.oil_from_grade(46, 100)
		local function readings(count)
			local list = {}
			for i = 1, count do
				list[i] = {
					speed = 25, pressure = i * 1e6, temperature = 323.15,
					flow = 1e-3,
				}
			end
			return list
		end
		-- C writes to it all the same, which shows what arrived there.
		local function fresh()
			return ffi.new("double[16]", 7)
		end
		local function written(correlation)
			for i = 0, 15 do
				assert(math.abs(correlation[i]) < 2)
			end
		end
	]] .. program .. ' print "went well"', environment)
	os.remove(path)
	same(said, "went well\n", "what it said")
end

function tests.loading_faults_are_told()
	contains(loaded_with("VANE_MANIFEST=/nowhere/x"), "vane: /nowhere/x: No such file")
	contains(loaded_with("VANE_LIBRARY=/nowhere/x.so"),
		"set VANE_LIBRARY to the path of libvane.so")
	contains(loaded_with("VANE_CDEF=/nowhere/x.h"), "vane: /nowhere/x.h: No such file")
	contains(loaded_with("VANE_X=1"), "true")
end

function tests.another_version_is_refused()
	local file = assert(io.open(os.getenv("VANE_MANIFEST")))
	local text = file:read("*a")
	file:close()
	local changed, count = text:gsub('"version": "[^"]*"', '"version": "99.0"', 1)
	same(count, 1)
	local path = os.tmpname()
	local copy = assert(io.open(path, "w"))
	copy:write(changed)
	copy:close()
	local said = loaded_with("VANE_MANIFEST=" .. path)
	os.remove(path)
	contains(said, ("is version %s, but %s is of version 99.0"):format(vane.version(), path))
end

function tests.optional_inputs_may_be_left_out()
	run_with_manifest(function(param)
		local correlation = param("vane_stand_slip_fit", "correlation")
		correlation.direction, correlation.optional = "in", true
		param("vane_clearance_width", "reading").optional = true
		param("vane_pump_map", "duty").optional = true
		param("vane_pump_run", "duty").optional = true
	end, [[
		local reading = readings(5)
		local fit = vane.stand_slip_fit(reading, oil, 0)
		assert(fit.degrees_of_freedom == 4)
		local function is_fit(other)
			assert(tostring(other) == tostring(fit))
		end
		is_fit(vane.stand_slip_fit(reading, oil, 0, nil))
		is_fit(vane.stand_slip_fit{reading = reading, oil = oil, terms = 0})
		local correlation = fresh()
		is_fit(vane.stand_slip_fit(reading, oil, 0, correlation))
		written(correlation)
		refused("stand_slip_fit: correlation must have 16 elements; it has 2.",
			vane.stand_slip_fit, reading, oil, 0, {1, 2})
		refused("stand_slip_fit: terms is missing.", vane.stand_slip_fit, reading, oil)
		refused("stand_slip_fit: oil is missing.", vane.stand_slip_fit, reading, nil, 0)

		local instrument, parts = vane.instrument(), vane.parts_default()
		local function parameter_of(call, ...)
			return select(2, pcall(call, ...)).parameter
		end
		assert(parameter_of(vane.clearance_width, nil, instrument) == "reading")
		assert(parameter_of(vane.clearance_width, {instrument = instrument}) == "reading")
		for _, call in ipairs{vane.pump_run, vane.pump_map} do
			assert(parameter_of(call, parts, oil) ~= nil)
		end
		local failure = select(2, pcall(vane.pump_map, {parts = parts, oil = oil}))
		assert(#failure.result == 0)

		local original, shown = print
		print = function(text) shown = text:gsub("%s+", " ") end
		vane.help "stand_slip_fit"
		print = original
		assert(shown:find("(array of 16 numbers; may be left out)", 1, true), shown)
	]])
end

function tests.lengths_of_one_name_agree()
	run_with_manifest(function(param)
		local correlation = param("vane_stand_slip_fit", "correlation")
		correlation.direction, correlation.length = "in", "readings"
		correlation.optional = false
	end, [[
		local correlation = fresh()
		vane.stand_slip_fit(readings(16), oil, 0, correlation)
		written(correlation)
		local message = "stand_slip_fit: correlation must have %d elements; it has 16."
		for _, count in ipairs{15, 17} do
			refused(message:format(count), vane.stand_slip_fit, readings(count), oil,
				0, correlation)
		end
		refused("stand_slip_fit: correlation is missing.", vane.stand_slip_fit,
			readings(16), oil, 0)
	]])
end

function tests.a_length_may_be_the_caller_s()
	-- One duty, and so many performances as the caller says.
	run_with_manifest(function(param)
		param("vane_pump_map", "duty").length = nil
	end, [[
		local duty, parts = vane.duty_default(), vane.]] .. tostring(whole_pump()) .. [[

		local function map(count)
			return vane.pump_map(parts, oil, duty, count)
		end
		assert(#map(1) == 1 and #map(0) == 0)
		assert(tostring(map(1)[1]) == tostring(vane.pump_run(parts, oil, duty)))
		for _, wrong in ipairs{-1, -2 ^ 31} do
			local accepted, failure = pcall(map, wrong)
			assert(not accepted and failure.parameter == "duties", failure.message)
			assert(failure.value == wrong and #failure.result == 0)
		end
	]])
end

-- Formulas ----------------------------------------------------------------------------------------

function tests.formula_by_position_and_by_name()
	near(vane.slot_flow(0.02, 1e-5, 0.005, 15e6, 8.6e-3, 0), slot_flow(1e-5))
	same(vane.slot_flow(SLOT), vane.slot_flow(0.02, 1e-5, 0.005, 15e6, 8.6e-3, 0))
	near(vane.units_m_from_mm(25.4), 0.0254)
	near(vane.units_m_from_mm{length = 25.4}, 0.0254)
	same(vane.units_m_from_mm(5LL), vane.units_m_from_mm(5))
end

function tests.arguments_are_refused_by_name()
	local failure = refused("slot_flow: gap is missing.", vane.slot_flow, {width = 0.02})
	same(failure.parameter, "gap")
	same(failure.code, vane.INVALID_ARGUMENT)
	same(failure.status, "invalid argument")
	same(failure.text, "gap is missing.")
	same(failure.index, nil)
	refused("slot_flow: width is missing.", vane.slot_flow)
	refused("slot_flow: width is missing.", vane.slot_flow, {})
	refused("slot_flow: length is missing.", vane.slot_flow, 0.02, 1e-5)
	refused("slot_flow: gap is missing.", vane.slot_flow, 0.02, nil, 0.005, 15e6, 8.6e-3, 0)
	failure = refused("slot_flow: there is no parameter 'gaps'.", vane.slot_flow,
		slot_with{gaps = 1e-5})
	same(failure.parameter, "gaps")
	same(failure.value, 1e-5)
	-- A name and a place for the same argument.
	refused("slot_flow: there is no parameter '1'.", vane.slot_flow, slot_with{0.02})
	refused("slot_flow: the arguments are 6 at most; there are 7.", vane.slot_flow,
		0.02, 1e-5, 0.005, 15e6, 8.6e-3, 0, 1)
	refused("parts_default: the arguments are 0 at most; there are 1.", vane.parts_default, 1)
end

function tests.types_are_refused_by_name()
	local failure = refused(
		"slot_flow: gap must be a number or an array of numbers; it is a string.",
		vane.slot_flow, slot_with{gap = "1e-5"})
	same(failure.parameter, "gap")
	same(failure.value, "1e-5")
	refused("slot_flow: gap must be a number or an array of numbers; it is a boolean.",
		vane.slot_flow, slot_with{gap = false})
	refused("slot_flow: gap must be a number or an array of numbers; it is a record 'ring'.",
		vane.slot_flow, slot_with{gap = vane.ring_default()})
	refused("slot_flow: gap must be a number or an array of numbers; it is a cdata.",
		vane.slot_flow, slot_with{gap = ffi.new("vane_ring")})
	refused("slot_flow: gap must be a number or an array of numbers; it is a cdata.",
		vane.slot_flow, slot_with{gap = ffi.new("vane_ring[2]")})
	refused("slot_flow: gap must be a number or an array of numbers; it is a cdata.",
		vane.slot_flow, slot_with{gap = ffi.new("bool[2]")})
	for _, complex in ipairs{1i, ffi.new("complex", 1, 2), ffi.new("complex float", 1)} do
		refused("slot_flow: gap must be a number or an array of numbers; it is a cdata.",
			vane.slot_flow, slot_with{gap = complex})
		refused("slot_flow: gap[1] must be a number; it is a cdata.",
			vane.slot_flow, slot_with{gap = {complex}})
		refused("ring: width must be a number; it is a cdata.", vane.ring,
			{width = complex})
	end
	refused("oil_from_grade: grade must be a number; it is a string.", vane.oil_from_grade,
		"46", 100)
	refused("status_name: code must be a number; it is a table.", vane.status_name, {1, 2})
end

function tests.the_library_refuses()
	local failure = refused("slot_flow: gap must be finite and at least 0 m; it is -1 m.",
		vane.slot_flow, slot_with{gap = -1})
	same(failure.code, vane.INVALID_ARGUMENT)
	same(failure.status, "invalid argument")
	same(failure.parameter, "gap")
	same(failure.value, -1)
	same(failure.index, nil)
	same(failure.result, nil)
	same(failure.text, "gap must be finite and at least 0 m; it is -1 m.")
	local nan = 0 / 0
	failure = select(2, pcall(vane.slot_flow, slot_with{gap = nan}))
	assert(failure.value ~= failure.value)
	failure = select(2, pcall(vane.slot_flow, slot_with{gap = 1e150}))
	same(failure.code, vane.OUT_OF_RANGE)
	-- An earlier refusal leaves nothing behind.
	near(vane.slot_flow(SLOT), slot_flow(1e-5))
end

-- Arrays ------------------------------------------------------------------------------------------

function tests.tables_broadcast()
	local gaps = {1e-5, 2e-5, 4e-5}
	local flows = vane.slot_flow(slot_with{gap = gaps})
	same(#flows, 3)
	for i, gap in ipairs(gaps) do
		-- The bits of the formula itself.
		same(flows[i], vane.slot_flow(slot_with{gap = gap}))
	end
	local table_of = vane.slot_flow(slot_with{gap = {{1e-5}, {2e-5}}, dp = {1e6, 2e6, 3e6}})
	same(#table_of, 2)
	for i, gap in ipairs{1e-5, 2e-5} do
		same(#table_of[i], 3)
		for j, dp in ipairs{1e6, 2e6, 3e6} do
			near(table_of[i][j], slot_flow(gap, dp))
		end
	end
	local cube = vane.units_m_from_mm{{{1, 2}, {3, 4}}, {{5, 6}, {7, 8}}, {{9, 10}, {11, 12}}}
	near(cube[3][1][2], 0.010)
	local high = vane.slot_flow(slot_with{gap = {{{1e-5}}, {{2e-5}}}, dp = {{1e6}, {2e6}}})
	same(#high, 2)
	same(#high[1], 2)
	same(#high[1][1], 1)
	near(high[2][1][1], slot_flow(2e-5, 1e6))
	near(high[1][2][1], slot_flow(1e-5, 2e6))
	local square = {{1e-5, 2e-5}, {3e-5, 4e-5}}
	high = vane.slot_flow(slot_with{gap = square, dp = {{{1e6}}, {{2e6}}}})
	for i, dp in ipairs{1e6, 2e6} do
		for j, row in ipairs(square) do
			for k, gap in ipairs(row) do
				near(high[i][j][k], slot_flow(gap, dp))
			end
		end
	end
	same(#vane.slot_flow(slot_with{gap = {1e-5}}), 1)
	same(#vane.slot_flow(slot_with{gap = {}}), 0)
	same(#vane.slot_flow(slot_with{gap = {{}, {}}}), 2)
	near(vane.units_m_from_mm({1, 2})[2], 0.002)
end

function tests.long_arrays()
	local gaps, n = {}, 1000
	for i = 1, n do
		gaps[i] = i * 1e-7
	end
	local flows = vane.slot_flow(slot_with{gap = gaps})
	same(#flows, n)
	for i = 1, n do
		same(flows[i], vane.slot_flow(slot_with{gap = gaps[i]}))
	end
end

function tests.cdata_arrays()
	local gap = ffi.new("double[3]", {1e-5, 2e-5, 4e-5})
	local flows = vane.slot_flow(slot_with{gap = gap})
	same(type(flows), "cdata")
	same(tonumber(ffi.sizeof(flows)), 24)
	for i = 0, 2 do
		same(flows[i], vane.slot_flow(slot_with{gap = gap[i]}))
	end
	same(gap[1], 2e-5)
	local open = vane.units_m_from_mm(ffi.new("double[?]", 4, {1, 2, 3, 4}))
	near(open[3], 0.004)
	near(vane.units_m_from_mm(ffi.new("const double[2]", {1, 2}))[1], 0.002)
	near(vane.units_m_from_mm(ffi.new("float[2]", {1, 0.5}))[1], 0.0005)
	near(vane.units_m_from_mm(ffi.new("uint8_t[2]", {1, 200}))[1], 0.2)
	near(vane.units_m_from_mm(ffi.new("int64_t[2]", {1, -7}))[1], -0.007)
	local grid = vane.units_m_from_mm(ffi.new("double[2][3]", {{1, 2, 3}, {4, 5, 6}}))
	near(grid[1][2], 0.006)
	-- A table beside it: still an FFI array, and of the common shape.
	grid = vane.slot_flow(slot_with{gap = {{1e-5}, {2e-5}},
		dp = ffi.new("double[2]", {1e6, 2e6})})
	same(type(grid), "cdata")
	same(tonumber(ffi.sizeof(grid)), 32)
	near(grid[1][0], slot_flow(2e-5, 1e6))
	near(grid[0][1], slot_flow(1e-5, 2e6))
	same(tonumber(ffi.sizeof(vane.units_m_from_mm(ffi.new("double[?]", 0)))), 0)
end

function tests.cdata_outlives_the_collector()
	for i = 1, 200 do
		local flows = vane.slot_flow(slot_with{gap = {{1e-5}, {2e-5}},
			dp = {1e6, 2e6, i * 1e6}})
		collectgarbage()
		near(flows[2][3], slot_flow(2e-5, i * 1e6))
	end
end

function tests.arrays_are_refused_by_name()
	local function gap_of(gap, message)
		return refused("slot_flow: " .. message, vane.slot_flow, slot_with{gap = gap})
	end
	local failure = gap_of({1e-5, "x"}, "gap[2] must be a number; it is a string.")
	same(failure.parameter, "gap[2]")
	same(failure.value, "x")
	gap_of({{1, 2}, {3}}, "gap[2] must be a row of 2, like the first.")
	gap_of({{1, 2}, 3}, "gap[2] must be a row of 2, like the first.")
	gap_of({1, {2}}, "gap[2] must be a number; it is a table.")
	gap_of({{1, 2}, {3, "x"}}, "gap[2][2] must be a number; it is a string.")
	local no_list = " must be a list of numbers, without holes or other keys."
	gap_of({first = 1}, "gap" .. no_list)
	gap_of({1e-5, 2e-5, x = 3}, "gap" .. no_list)
	gap_of({1e-5, 2e-5, [0] = 3}, "gap" .. no_list)
	gap_of({{1, 2}, {3, 4, x = 5}}, "gap[2]" .. no_list)
	gap_of({1, [3] = 2}, "gap" .. no_list)
	gap_of({[2] = 1}, "gap" .. no_list)
	-- Where # does count past the hole, the hole itself is no number.
	for _, holes in ipairs{{1e-5, nil, 2e-5}, {nil, 2e-5}, {{1, nil, 3}, {1, nil, 3}}} do
		failure = select(2, pcall(vane.slot_flow, slot_with{gap = holes}))
		contains(failure.message, no_list)
	end
	gap_of({vane.ring_default()}, "gap[1] must be a number; it is a record 'ring'.")
	local endless = {}
	endless[1] = endless
	assert(not pcall(vane.slot_flow, slot_with{gap = endless}))
	failure = refused("slot_flow: dp has the shape 2, which does not go with 3.",
		vane.slot_flow, slot_with{gap = {1e-5, 2e-5, 3e-5}, dp = {1, 2}})
	same(failure.parameter, "dp")
	refused("slot_flow: dp has the shape 3 x 1, which does not go with 2 x 2.", vane.slot_flow,
		slot_with{gap = {{1, 1}, {1, 1}}, dp = {{1}, {2}, {3}}})
end

function tests.bad_elements_leave_the_others()
	local failure = refused("slot_flow: gap must be finite and at least 0 m; it is -1 m.",
		vane.slot_flow, slot_with{gap = {1e-5, 2e-5, -1, 4e-5, -2}})
	same(failure.parameter, "gap")
	same(failure.value, -1)
	same(failure.index, 2)
	local result = failure.result
	same(#result, 5)
	near(result[2], slot_flow(2e-5))
	assert(result[3] ~= result[3] and result[5] ~= result[5])
	near(result[4], slot_flow(4e-5))
	failure = select(2,
		pcall(vane.slot_flow, slot_with{gap = ffi.new("double[2]", {-1, 1e-5})}))
	same(type(failure.result), "cdata")
	assert(failure.result[0] ~= failure.result[0])
	near(failure.result[1], slot_flow(1e-5))
end

-- Records -----------------------------------------------------------------------------------------

function tests.records_from_fields()
	local ring = vane.ring{width = 0.0254, law = vane.RING_CYCLOIDAL}
	same(ring.width, 0.0254)
	same(ring.law, vane.RING_CYCLOIDAL)
	same(ring.large_radius, 0)
	local parts = vane.parts{vanes = 12, ring = {width = 0.02}}
	same(parts.vanes, 12)
	same(parts.ring.width, 0.02)
	same(parts.ring.law, 0)
	parts.ring.width = 0.03
	same(parts.ring.width, 0.03)
	same(vane.ring().width, 0)
	same(vane.parts{ring = ring}.ring.width, 0.0254)
	local failure = vane.error{name = "gap", index = -1}
	same(failure.name, "gap")
	same(failure.index, -1)
	same(failure.text, "")
end

function tests.unknown_fields_are_refused()
	local failure = refused("ring: there is no field 'widht'.", vane.ring, {widht = 1})
	same(failure.parameter, "widht")
	refused("parts: there is no field 'ring.widht'.", vane.parts, {ring = {widht = 1}})
	local ring = vane.ring_default()
	refused("ring: there is no field 'widht'.", function() ring.widht = 1 end)
	refused("ring: there is no field 'widht'.", function() return ring.widht end)
	refused("ring: there is no field 'widht'.", ring.with, ring, {widht = 1})
	refused("ring_turned: there is no field 'ring.widht'.", vane.ring_turned,
		{ring = {widht = 1}})
	refused("ring: there is no field '1'.", vane.ring, {1})
end

function tests.field_types_are_refused()
	refused("ring: width must be a number; it is a string.", vane.ring, {width = "1"})
	refused("ring: law must be a whole number of 32 bits; it is 2.5.", vane.ring, {law = 2.5})
	refused("ring: law must be a whole number of 32 bits; it is 2147483648.", vane.ring,
		{law = 2 ^ 31})
	refused("parts: ring must be a record 'ring' or a table; it is a number.",
		vane.parts, {ring = 1})
	refused("parts: ring must be a record 'ring' or a table; it is a record 'oil'.",
		vane.parts, {ring = vane.oil_default()})
	refused("ring: the argument must be a record 'ring' or a table; it is a number.",
		vane.ring, 1)
	refused("ring: the argument must be a record 'ring' or a table; it is a record 'oil'.",
		vane.ring, vane.oil_default())
	refused("error: name must be a string of fewer than 48 bytes.", vane.error,
		{name = ("x"):rep(48)})
	refused("error: name must be a string of fewer than 48 bytes.", vane.error, {name = 1})
	-- What was put into a record is looked at when the record is used.
	local ring = vane.ring_default()
	ring.width = "wide"
	refused("ring_turned: ring.width must be a number; it is a string.", vane.ring_turned, ring)
	refused("pump_run: oil must be a record 'oil' or a table; it is a record 'ring'.",
		vane.pump_run, vane.parts_default(), vane.ring_default(), vane.duty_default())
end

function tests.copies_with_changes()
	local parts = whole_pump()
	local changed = parts:with{vanes = 10, ring = {width = 0.03}}
	same(changed.vanes, 10)
	same(changed.ring.width, 0.03)
	same(changed.ring.large_radius, 0.0300)
	same(changed.shaft_length, 0.012)
	same(parts.vanes, 12)
	same(parts.ring.width, 0.025412)
	local copy = vane.parts(parts)
	copy.ring.width = 1
	same(parts.ring.width, 0.025412)
end

function tests.records_become_plain_tables()
	local parts = whole_pump()
	local plain = parts:table()
	same(getmetatable(plain), nil)
	same(getmetatable(plain.ring), nil)
	same(plain.ring.width, 0.025412)
	plain.ring.width = 1
	same(parts.ring.width, 0.025412)
	local again = vane.parts(cjson.decode(cjson.encode(whole_pump():table())))
	near(again.ring.large_radius, 0.0300)
end

function tests.printed_records_read_back()
	local ring = vane.ring_default():with{width = 0.1 + 0.2}
	local text = tostring(ring)
	contains(text, "\twidth = 0.30000000000000004, -- m\n")
	contains(text, "\tlaw = " .. ring.law .. ", -- RING_")
	local parts = whole_pump()
	local again = setfenv(loadstring("return " .. tostring(parts)), vane)()
	for name, value in pairs(parts) do
		if name ~= "ring" then
			same(again[name], value, name)
		end
	end
	for name, value in pairs(parts.ring) do
		same(again.ring[name], value, name)
	end
	contains(tostring(vane.error{name = "gap"}), 'name = "gap",')
	local odd = vane.ring{width = 1 / 0, large_radius = -1 / 0, small_radius = 0 / 0}
	again = setfenv(loadstring("return " .. tostring(odd)), vane)()
	same(again.width, 1 / 0)
	same(again.large_radius, -1 / 0)
	assert(again.small_radius ~= again.small_radius)
end

-- Procedures --------------------------------------------------------------------------------------

function tests.lengths_come_from_the_lists()
	local instrument = vane.instrument{error_limit = 3e-6, resolution = 1e-6}
	local width = vane.clearance_width({0.02, 0.022, 0.021}, instrument)
	near(width.mean, 0.021)
	near(width.spread, 0.001)
	same(width.least, 0.02)
	same(width.greatest, 0.022)
	-- a/sqrt(3), JCGM 100:2008, 4.3.7.
	near(width.systematic, 3e-6 / math.sqrt(3))
	near(vane.clearance_width{reading = {0.02, 0.03}, instrument = {error_limit = 3e-6}}.mean,
		0.025)
	near(vane.clearance_width(ffi.new("double[2]", {0.02, 0.03}), instrument).mean, 0.025)
	near(vane.clearance_width(ffi.new("float[2]", {1, 2}), instrument).mean, 1.5)
	refused("clearance_width: there is no parameter 'readings'.", vane.clearance_width,
		{reading = {0.02}, readings = 1, instrument = instrument})
	refused("clearance_width: reading must be a list of numbers.", vane.clearance_width, 0.02,
		instrument)
	refused("clearance_width: reading must be a list of numbers.", vane.clearance_width,
		{{0.02}}, instrument)
	refused("clearance_width: reading[2] must be a number; it is a string.",
		vane.clearance_width, {0.02, "x"}, instrument)
	refused("clearance_width: instrument is missing.", vane.clearance_width, {0.02})
	for _, holes in ipairs{{0.02, nil, 0.03}, {0.02, [3] = 0.03}, {0.02, x = 0.03}} do
		refused("clearance_width: reading must be a list of numbers, without holes "
			.. "or other keys.", vane.clearance_width, holes, instrument)
	end
	local failure = select(2, pcall(vane.clearance_width, {}, instrument))
	same(failure.parameter, "readings")
	failure = select(2, pcall(vane.clearance_width, {0.02, 0.02, -1}, instrument))
	same(failure.index, 2)
	same(failure.value, -1)
end

function tests.lists_of_records()
	local derived = vane.stand_displacement(readings())
	near(derived.displacement, 40e-6, 1e-9)
	near(derived.slope, 2e-12, 1e-6)
	same(derived.method, vane.DERIVED_INTERCEPT)
	local list = readings()
	for i, reading in ipairs(list) do
		list[i] = vane.reading(reading)
	end
	same(vane.stand_displacement{reading = list}.displacement, derived.displacement)
	local failure = refused("stand_displacement: there is no field 'reading[2].sped'.",
		vane.stand_displacement, {readings()[1], {sped = 1}})
	same(failure.parameter, "reading[2].sped")
	local wanted = "stand_displacement: reading must be a list of records 'reading', without "
		.. "holes or other keys; it is "
	refused(wanted .. "a number.", vane.stand_displacement, 1)
	refused(wanted .. "a record 'reading'.", vane.stand_displacement, list[1])
	refused(wanted .. "a table.", vane.stand_displacement, {nil, list[2], list[3]})
	refused(wanted .. "a table.", vane.stand_displacement, {list[1], [3] = list[3]})
	refused(wanted .. "a table.", vane.stand_displacement,
		{reading = {list[1], list[2], x = list[3]}})
	refused(wanted .. "a table.", vane.stand_displacement, {reading = readings()[1]})
	wanted = "stand_displacement: reading[1] must be a record 'reading' or a table; it is "
	refused(wanted .. "a number.", vane.stand_displacement, {1})
	failure = select(2, pcall(vane.stand_displacement, {list[1], list[2]}))
	same(failure.code, vane.NOT_IDENTIFIABLE)
	same(failure.status, vane.status_name(vane.NOT_IDENTIFIABLE))
	list[3].flow = -1
	failure = select(2, pcall(vane.stand_displacement, list))
	same(failure.code, vane.INVALID_ARGUMENT)
	same(failure.index, 2)
end

function tests.several_outputs()
	-- Amid limits 4 standard uncertainties apart: P = erf(sqrt(2)), JCGM 106:2012, 7.4.
	local found = vane.measure_verdict(10e-6, 5e-6, 0, 20e-6, 1.645)
	same(found.verdict, vane.VERDICT_CONFORMS)
	near(found.probability, 0.954499736103642)
	same(vane.measure_verdict{value = -30e-6, uncertainty = 5e-6, low = 0, high = 20e-6,
		coverage = 2}.verdict, vane.VERDICT_FAILS)
	refused("clearance_between: same_instrument must be a whole number of 32 bits; it is 0.5.",
		vane.clearance_between, {outer = {}, inner = {}, same_instrument = 0.5})
end

function tests.optional_outputs()
	local oil = vane.oil_from_grade(46, 100)
	local found = vane.stand_slip_fit(readings(), oil, vane.SLIP_LAMINAR)
	-- Viscosity rises with pressure, so this slip is not quite that of the law.
	near(found.out.displacement, 40e-6, 5e-3)
	assert(found.out.laminar > 0)
	same(found.out.orifice, 0)
	same(#found.correlation, 16)
	near(found.correlation[1], 1)
	near(found.correlation[6], 1)
	same(found.correlation[2], found.correlation[5])
	same(found.correlation[3], 0)
end

function tests.lists_of_records_come_back()
	local parts, oil, duty = whole_pump(), vane.oil_from_grade(46, 100), vane.duty_default()
	local duties = {duty, duty:with{outlet_pressure = 5e6}}
	local map = vane.pump_map(parts, oil, duties)
	same(#map, 2)
	for i, at in ipairs(duties) do
		same(map[i].slip.total, vane.pump_run(parts, oil, at).slip.total)
	end
	duties[3], duties[1] = duty, duty:with{speed = -1}
	local failure = select(2, pcall(vane.pump_map, parts, oil, duties))
	same(failure.index, 0)
	same(#failure.result, 3)
	assert(failure.result[1].outlet_flow ~= failure.result[1].outlet_flow)
	same(failure.result[3].outlet_flow, map[1].outlet_flow)
	same(failure.parameter, "duty.speed")
	contains(failure.text, "duty.speed must be ")
	same(failure.message, "pump_map: " .. failure.text)
	same(#vane.pump_map(parts, oil, {}), 0)
	failure = select(2, pcall(vane.pump_map, vane.parts(), oil, duties))
	same(failure.index, nil)
	contains(failure.text, "parts.")
	same(#failure.result, 3)
	assert(failure.result[2].outlet_flow ~= failure.result[2].outlet_flow)
end

function tests.long_lists_of_records()
	local parts, oil, duty = whole_pump(), vane.oil_from_grade(46, 100), vane.duty_default()
	local duties = {}
	for i = 1, 1000 do
		duties[i] = duty:with{outlet_pressure = 1e6 + 1e4 * i}
	end
	local map = vane.pump_map(parts, oil, duties)
	same(#map, 1000)
	for i, at in ipairs(duties) do
		same(tostring(map[i]), tostring(vane.pump_run(parts, oil, at)))
	end
end

function tests.a_refusal_always_has_words()
	local library = require "vane.library"
	ffi.fill(library.failure, ffi.sizeof(library.failure))
	local failure = refused("slot_flow: Working memory could not be had.",
		library.raise_failure, "slot_flow", vane.NO_MEMORY)
	same(failure.code, vane.NO_MEMORY)
	same(failure.status, "no memory")
end

function tests.records_within_records_stay()
	local function run()
		return vane.pump_run(whole_pump(), vane.oil_from_grade(46, 100),
			vane.duty_default())
	end
	local slip = run().slip
	local before = slip.total
	for _ = 1, 20 do
		run()
		collectgarbage()
	end
	assert(before > 0)
	same(slip.total, before)
end

function tests.defaults_and_text()
	same(vane.width_limits_default().coverage, 1.645)
	same(vane.duty_default().outlet_pressure, 10e6)
	same(vane.parts_default().roots, vane.ROOTS_OUTLET)
	same(vane.status_name(vane.OK), "ok")
	same(vane.status_name(vane.NO_SOLUTION), vane.status_name{code = 2})
	same(vane.status_name(1), "invalid argument")
	contains(vane.caution_text(vane.CAUTION_THIN_OIL), "10 mm2/s")
	assert(vane.version():find("^%d+%.%d+%.%d+$"))
	refused("status_name: code must be a whole number of 32 bits; it is 0.5.", vane.status_name,
		0.5)
	refused("status_name: code is missing.", vane.status_name)
end

function tests.garbage_is_refused_in_our_words()
	local endless = {}
	endless[1] = endless
	local garbage = {
		"x", true, print, coroutine.create(print), endless, {{}}, {[true] = 1}, {x = 1},
		cjson.null, 0 / 0, 1 / 0, -1e300, 2 ^ 53, vane.ring_default(), ffi.new("vane_ring"),
		ffi.new("double *"), ffi.new("double *[2]"), ffi.new("struct {int x;}[2]"),
		ffi.new("enum vane_status"), ffi.typeof("double"), 1i, ffi.C,
	}
	local calls = 0
	for name, call in pairs(vane) do
		local callable = type(call) == "function" and name ~= "help"
		for _, item in pairs(callable and garbage or {}) do
			for count = 1, 8 do
				local arguments = {}
				for i = 1, count do
					arguments[i] = item
				end
				local accepted, failure = pcall(call, unpack(arguments, 1, count))
				local ours = accepted or type(failure) == "table"
					and failure.message:find(name .. ": ", 1, true) == 1
				assert(ours, name .. " says: " .. tostring(failure))
				calls = calls + 1
			end
		end
	end
	assert(calls > 20000)
end

-- Help --------------------------------------------------------------------------------------------

function tests.help_of_all_kinds()
	local text = output(vane.help, "slot_flow")
	contains(text, "slot_flow(width, gap, length, dp, viscosity, wall_speed)\n\nFlow ")
	contains(text, "\n    q = w h^3 dp / (12 mu L) + w h U / 2\n")
	contains(text, "\ngap         Distance between the walls [m; >= 0]\n")
	contains(text, "\nReturns  Volume flow, positive downstream [m3/s]\n")
	contains(text, "\nValid    Laminar")
	contains(text, "\nSource   White")
	text = output(vane.help, "stand_slip_fit")
	contains(text, "stand_slip_fit(reading, oil, terms)")
	contains(text, "(array of reading records)")
	contains(text, "(array of 16 numbers)")
	contains(text, "[m2/s]")
	text = output(vane.help, "ring")
	contains(text, "ring{...}")
	contains(text, "large_radius  Radius of the large dwell [m; > small_radius]")
	text = output(vane.help, "RING_CYCLOIDAL")
	contains(text, "RING_CYCLOIDAL")
	contains(text, "3: ")
	same(output(vane.help, "ring_law"), text)
	text = output(vane.help)
	contains(text, "slot: ")
	contains(text, " slot_disc_flow")
	refused("help: there is nothing called 'slot_flwo'.", vane.help, "slot_flwo")
	contains(output(vane.help, "slot_flow"):gsub("%s+", " "), "see slot_reynolds() and slot_")
	contains(output(vane.help, "stand_displacement"), "CAUTION_CURVATURE")
	text = output(vane.help, "pump_map"):gsub("%s+", " ")
	contains(text, "which error.index numbers")
	contains(text, "error.index is nil")
end

function tests.help_of_everything()
	for name in pairs(vane) do
		if name ~= "help" then
			local text = output(vane.help, name)
			assert(#text > 40, name)
			for line in text:gmatch("[^\n]+") do
				-- Formulas stand as they were written.
				assert(#line < 100, line)
				assert(not line:find("%s$"), line)
				assert(not line:find("VANE_") and not line:find("%->"), line)
				assert(not line:find("%f[%w_]vane_[%w_]+%(") and not line:find("NULL"), line)
			end
		end
	end
end

-- Run ---------------------------------------------------------------------------------------------

local names, failed = {}, 0
for name in pairs(tests) do
	names[#names + 1] = name
end
table.sort(names)
for _, name in ipairs(names) do
	local fine, reason = xpcall(tests[name], function(reason)
		return debug.traceback(tostring(reason), 2)
	end)
	if not fine then
		failed = failed + 1
		print(name .. ": " .. reason)
	end
end
print(("%d tests, %d failed"):format(#names, failed))
os.exit(failed == 0 and 0 or 1)
