--- Numbers, nested tables and FFI arrays on their way through the array door.

local ffi = require "ffi"
local library = require "vane.library"
local records = require "vane.records"

local C, refuse = library.C, library.refuse

local arrays = {}

local function product(shape)
	local n = 1
	for _, extent in ipairs(shape) do
		n = n * extent
	end
	return n
end

--- Names of the number types, as LuaJIT spells them.
local NUMBERS = {}
for bits = 3, 6 do
	NUMBERS[tostring(ffi.typeof(("int%d_t"):format(2 ^ bits))):match("<(.*)>")] = true
	NUMBERS[tostring(ffi.typeof(("uint%d_t"):format(2 ^ bits))):match("<(.*)>")] = true
end
NUMBERS.float, NUMBERS.double = true, true

local function array_of_cdata(value)
	local element, extents =
		tostring(ffi.typeof(value)):match("^ctype<([%w_ ]-) ?%(?&?%)?([%[%]%d?]+)>$")
	if not element or not NUMBERS[(element:gsub("^const ", ""))] then
		return nil
	end
	local shape, n = {}, tonumber(ffi.sizeof(value) / ffi.sizeof(element))
	for extent in extents:gmatch("%[(.-)%]") do
		shape[#shape + 1] = tonumber(extent) or 1
	end
	if extents:find("?", 1, true) then
		shape[1] = n / product(shape)
	end
	local data = value
	if not element:find("double") then
		local source = ffi.cast(element .. " *", value)
		data = ffi.new("double[?]", n)
		for i = 0, n - 1 do
			data[i] = tonumber(source[i])
		end
	end
	return {data = data, shape = shape, typed = true}
end

local function array_of_table(value, caller, parameter)
	local shape, part = {}, value
	-- More dimensions than these, and the table holds itself.
	while type(part) == "table" and not records.of(part) and #shape < 32 do
		shape[#shape + 1] = #part
		part = part[1]
	end
	local data, n, at = ffi.new("double[?]", product(shape)), 0, {}
	local function refuse_part(sentence, item, depth, ...)
		local path = parameter
		for i = 1, depth - 1 do
			path = path .. "[" .. at[i] .. "]"
		end
		refuse(caller, path, item, sentence, path, ...)
	end
	local function take(item, depth)
		local extent = shape[depth]
		if not extent then
			data[n] = records.number(item) or
				refuse_part("%s must be a number; it is %s.", item, depth,
					records.described(item))
			n = n + 1
			return
		end
		if type(item) ~= "table" or #item ~= extent then
			refuse_part("%s must be a row of %d, like the first.", item, depth, extent)
		elseif not records.is_list(item) then
			refuse_part("%s must be a list of numbers, without holes or other keys.",
				item, depth)
		end
		for i = 1, extent do
			at[depth] = i
			take(item[i], depth + 1)
		end
	end
	take(value, 1)
	return {data = data, shape = shape}
end

--- {data, shape, typed} of a number or an array.
function arrays.of(value, caller, parameter)
	local x = records.number(value)
	local array = x and {data = ffi.new("double[1]", x), shape = {}}
		or type(value) == "table" and not records.of(value)
			and array_of_table(value, caller, parameter)
		or type(value) == "cdata" and array_of_cdata(value)
	return array or refuse(caller, parameter, value,
		"%s must be a number or an array of numbers; it is %s.", parameter,
		records.described(value))
end

--- The shape that all of them can be repeated to, aligned at their last dimensions.
local function common_shape(given, item, values)
	local shape, rank = {}, 0
	for _, array in ipairs(given) do
		rank = math.max(rank, #array.shape)
	end
	for dimension = 1, rank do
		shape[dimension] = 1
	end
	for i, array in ipairs(given) do
		for k, extent in ipairs(array.shape) do
			local dimension = rank - #array.shape + k
			if extent ~= 1 and shape[dimension] ~= 1 and extent ~= shape[dimension] then
				local name = item.arguments[i].name
				refuse(item.short, name, values[i],
					"%s has the shape %s, which does not go with %s.", name,
					table.concat(array.shape, " x "),
					table.concat(shape, " x "))
			elseif extent ~= 1 then
				shape[dimension] = extent
			end
		end
	end
	return shape
end

--- Repeats an array to a shape; one whole array, or one number, stays where it is.
local function spread(array, shape, n)
	local own, size = array.shape, product(array.shape)
	if size == 1 or size == n then
		return array.data, size == 1 and 0 or 1
	end
	local source, data = ffi.cast("const double *", array.data), ffi.new("double[?]", n)
	for i = 0, n - 1 do
		local rest, at, step = i, 0, 1
		for k = 0, #own - 1 do
			local extent = shape[#shape - k]
			if own[#own - k] ~= 1 then
				at = at + rest % extent * step
				step = step * extent
			end
			rest = math.floor(rest / extent)
		end
		data[i] = source[at]
	end
	return data, 1
end

local function nested(data, shape, depth, at)
	if depth > #shape then
		return data[at], at + 1
	end
	local list = {}
	for i = 1, shape[depth] do
		list[i], at = nested(data, shape, depth + 1, at)
	end
	return list, at
end

-- Pointers do not keep their arrays alive; this does while the library reads them.
local alive

--- A formula of arguments of which at least one is an array.
function arrays.run(item, values)
	local caller, given, typed = item.short, {}, false
	for i, value in ipairs(values) do
		given[i] = arrays.of(value, caller, item.arguments[i].name)
		typed = typed or given[i].typed
	end
	local shape = common_shape(given, item, values)
	local n, kept = product(shape), {}
	local pointers = ffi.new("const double *[?]", #given)
	local strides = ffi.new("int64_t[?]", #given)
	for i, array in ipairs(given) do
		kept[i], strides[i - 1] = spread(array, shape, n)
		pointers[i - 1] = ffi.cast("const double *", kept[i])
	end
	local inner = ("[%d]"):rep(#shape - 1):format(unpack(shape, 2))
	local result = ffi.new("double[?]" .. inner, shape[1])
	local data = ffi.cast("double *", result)
	alive = kept
	local status = C.vane_array_run(item.name, n, pointers, strides, data, library.failure)
	alive = nil
	if not typed then
		result = nested(data, shape, 1, 0)
	end
	if status ~= C.VANE_OK then
		library.raise_failure(caller, status, result)
	end
	return result
end

return arrays
