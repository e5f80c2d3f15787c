--- Functions of the library as Lua functions: one maker for each kind there is.

local arrays = require "vane.arrays"
local ffi = require "ffi"
local library = require "vane.library"
local records = require "vane.records"

local C, failure, refuse = library.C, library.failure, library.refuse

local functions = {}

local function has_names(values)
	for key in pairs(values) do
		if type(key) == "string" then
			return true
		end
	end
	return next(values) == nil
end

--- The arguments in their order, by name or by position.
local function bind(item, ...)
	local caller, values, count, only = item.short, {...}, select("#", ...), (...)
	if count == 1 and type(only) == "table" and not records.of(only) and has_names(only) then
		values = {}
		for key, value in pairs(only) do
			local position, name = item.position[key], tostring(key)
			if not position then
				refuse(caller, name, value, "there is no parameter '%s'.", name)
			end
			values[position] = value
		end
	elseif count > #item.arguments then
		refuse(caller, nil, nil, "the arguments are %d at most; there are %d.",
			#item.arguments, count)
	end
	for i, param in ipairs(item.arguments) do
		if values[i] == nil and not param.optional then
			refuse(caller, param.name, nil, "%s is missing.", param.name)
		end
	end
	return values
end

--- Doubles as the number type that C reads, and how many there are.
local function numbers_of(param, doubles, n, caller)
	if param.base == "double" then
		return doubles, n
	end
	local data = ffi.new(param.base .. "[?]", n)
	for i = 1, n do
		local path = ("%s[%d]"):format(param.name, i)
		data[i - 1] = records.checked(param.base, doubles[i - 1], caller, path)
	end
	return data, n
end

--- An array of records or of numbers, and how many there are.
local function list_for(param, value, caller)
	if not param.record then
		local array = arrays.of(value, caller, param.name)
		if #array.shape ~= 1 then
			refuse(caller, param.name, value, "%s must be a list of numbers.",
				param.name)
		end
		return numbers_of(param, array.data, array.shape[1], caller)
	end
	if not records.is_list(value) then
		refuse(caller, param.name, value, "%s must be a list of records '%s', without " ..
			"holes or other keys; it is %s.", param.name, param.record.short,
			records.described(value))
	end
	local data = ffi.new(param.base .. "[?]", #value)
	for i = 1, #value do
		local path = ("%s[%d]"):format(param.name, i)
		records.write(param.record, data[i - 1], value[i], caller, path)
	end
	return data, #value
end

local function input(param, value, caller, counts)
	if not param.length and param.record then
		return records.write(param.record, ffi.new(param.base), value, caller, param.name)
	elseif not param.length then
		return records.checked(param.base, value, caller, param.name)
	end
	local data, n = list_for(param, value, caller)
	local wanted = tonumber(param.length) or counts[param.length] or n
	if n ~= wanted then
		refuse(caller, param.name, value, "%s must have %d elements; it has %d.",
			param.name, wanted, n)
	end
	counts[param.length] = n
	return data
end

local function output(param, data, count)
	local function element(i)
		return param.record and records.read(param.record, data[i]) or tonumber(data[i])
	end
	if not param.length then
		return element(0)
	end
	local list = {}
	for i = 1, count do
		list[i] = element(i - 1)
	end
	return list
end

function functions.formula(item, call)
	local caller, arity = item.short, #item.arguments
	return function(...)
		local values = bind(item, ...)
		for i = 1, arity do
			if type(values[i]) ~= "number" then
				local x = records.number(values[i])
				if not x then
					return arrays.run(item, values)
				end
				values[i] = x
			end
		end
		values[arity + 1] = failure
		local result = call(unpack(values, 1, arity + 1))
		if failure.code ~= C.VANE_OK then
			library.raise_failure(caller, failure.code)
		end
		return result
	end
end

function functions.procedure(item, call)
	local caller, arity, by_element = item.short, #item.params, false
	for _, param in ipairs(item.outputs) do
		by_element = by_element or type(param.length) == "string"
	end
	return function(...)
		local values, passed, counts = bind(item, ...), {}, {}
		for i, param in ipairs(item.arguments) do
			if values[i] ~= nil then
				passed[param.place] = input(param, values[i], caller, counts)
			end
		end
		for _, param in ipairs(item.lengths) do
			-- No array that would tell it was given.
			counts[param.name] = counts[param.name] or 0
			passed[param.place] = counts[param.name]
		end
		for _, param in ipairs(item.outputs) do
			-- Of a number given, which the library refuses if it is negative.
			local given = item.arguments[item.position[param.length]]
			local count = tonumber(param.length) or counts[param.length]
				or given and passed[given.place] or 1
			counts[param] = math.max(count, 0)
			passed[param.place] = ffi.new(param.base .. "[?]", counts[param])
		end
		passed[arity] = failure
		local status = call(unpack(passed, 1, arity))
		if status ~= C.VANE_OK and not by_element then
			library.raise_failure(caller, status)
		end
		local results = {}
		for _, param in ipairs(item.outputs) do
			results[param.name] = output(param, passed[param.place], counts[param])
		end
		results = #item.outputs > 1 and results or results[item.outputs[1].name]
		return status == C.VANE_OK and results
			or library.raise_failure(caller, status, results)
	end
end

function functions.defaults(item, call)
	local record = item.outputs[1].record
	return function(...)
		bind(item, ...)
		local filled = ffi.new(record.name)
		call(filled)
		return records.read(record, filled)
	end
end

function functions.text(item, call)
	local caller, arity = item.short, #item.arguments
	return function(...)
		local values = bind(item, ...)
		for i, param in ipairs(item.arguments) do
			values[i] = records.checked(param.base, values[i], caller, param.name)
		end
		return ffi.string(call(unpack(values, 1, arity)))
	end
end

return functions
