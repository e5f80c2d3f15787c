--- Records of the library as tables that know their fields.

local ffi = require "ffi"
local manifest = require "vane.manifest"
local refuse = require "vane.library".refuse

local records = {}
local record_of_meta = {}

--- The manifest's record that a value is of.
function records.of(value)
	return type(value) == "table" and record_of_meta[getmetatable(value)] or nil
end

--- Whether nothing but elements 1 to # is in a table: what follows a hole, # may not count.
function records.is_list(value)
	if type(value) ~= "table" or records.of(value) then
		return false
	end
	local count = 0
	for _ in pairs(value) do
		count = count + 1
	end
	return count == #value
end

--- 'a string' or 'a record "oil"', for sentences.
function records.described(value)
	local record = records.of(value)
	return record and ("a record '%s'"):format(record.short)
		or value == nil and "nil" or "a " .. type(value)
end

--- Lua's numbers and C's, int64_t among them; of a complex one tonumber() takes the real part.
function records.number(value)
	if type(value) == "number" then
		return value
	end
	local real = type(value) == "cdata" and not tostring(ffi.typeof(value)):find("complex")
	return real and tonumber(value) or nil
end

-- The FFI would cut off a fraction, and wrap what does not fit, without a word.
local WHOLE = {int32_t = 2 ^ 31, int64_t = 2 ^ 53}

function records.checked(kind, value, caller, path)
	local x, limit = records.number(value), WHOLE[kind]
	if not x then
		refuse(caller, path, value, "%s must be a number; it is %s.", path,
			records.described(value))
	elseif limit and not (x == math.floor(x) and x >= -limit and x < limit) then
		refuse(caller, path, value, "%s must be a whole number of %d bits; it is %.17g.",
			path, 8 * ffi.sizeof(kind), x)
	end
	return x
end

local function checked_text(field, value, caller, path)
	if type(value) ~= "string" or #value >= field.length then
		refuse(caller, path, value, "%s must be a string of fewer than %d bytes.", path,
			field.length)
	end
	return value
end

--- Fills a C record from a Lua record or a table of some of its fields.
function records.write(record, target, values, caller, path)
	local is = records.of(values)
	if type(values) ~= "table" or is and is ~= record then
		refuse(caller, path, values, "%s must be a record '%s' or a table; it is %s.",
			path or "the argument", record.short, records.described(values))
	end
	for key, value in pairs(values) do
		local field, at = record.field[key], (path and path .. "." or "") .. tostring(key)
		if not field then
			refuse(caller, at, value, "there is no field '%s'.", at)
		elseif field.record then
			records.write(field.record, target[key], value, caller, at)
		elseif field.type == "char" then
			target[key] = checked_text(field, value, caller, at)
		else
			target[key] = records.checked(field.type, value, caller, at)
		end
	end
	return target
end

--- A Lua record, not the C one: a record within a C record would not keep that alive.
function records.read(record, source)
	local values = {}
	for _, field in ipairs(record.fields) do
		local value = source[field.name]
		values[field.name] = field.record and records.read(field.record, value)
			or field.type == "char" and ffi.string(value) or tonumber(value)
	end
	return setmetatable(values, record.meta)
end

local function plain(values)
	local copy = {}
	for key, value in pairs(values) do
		copy[key] = type(value) == "table" and plain(value) or value
	end
	return copy
end

--- As few digits as tell the number from every other; inf and nan are no words of Lua.
local function digits(x)
	if x ~= x or math.abs(x) == math.huge then
		return x ~= x and "0/0" or x > 0 and "1/0" or "-1/0"
	end
	for precision = 15, 17 do
		local text = ("%." .. precision .. "g"):format(x)
		if tonumber(text) == x or precision == 17 then
			return text
		end
	end
end

--- Lua that makes the record again, with units and enumerators beside the numbers.
local function printed(record, values, indent)
	local lines = {"{"}
	for _, field in ipairs(record.fields) do
		local value = rawget(values, field.name)
		local text = type(value) == "number" and digits(value)
			or type(value) == "string" and ("%q"):format(value) or tostring(value)
		if field.record and type(value) == "table" then
			text = printed(field.record, value, indent .. "\t")
		end
		local name = field.enum and not field.set
			and manifest.enumerators[field.enum][value]
		local remark = name or field.unit ~= "1" and field.unit
		lines[#lines + 1] = ("%s\t%s = %s,%s"):format(indent, field.name, text,
			remark and " -- " .. remark or "")
	end
	lines[#lines + 1] = indent .. "}"
	return table.concat(lines, "\n")
end

--- What makes records of a kind; each has record:with{changes} and record:table().
function records.constructor(record)
	local name, new = record.short, ffi.typeof(record.name)
	local methods = {table = plain}
	function methods.with(self, changes)
		local copy = records.write(record, new(), self, name)
		return records.read(record, records.write(record, copy, changes, name))
	end
	local function no_field(_, key)
		refuse(name, tostring(key), nil, "there is no field '%s'.", tostring(key))
	end
	record.meta = {
		__index = function(self, key) return methods[key] or no_field(self, key) end,
		__newindex = no_field,
		__tostring = function(self) return name .. printed(record, self, "") end,
	}
	record_of_meta[record.meta] = record
	return function(values)
		values = values == nil and {} or values
		return records.read(record, records.write(record, new(), values, name))
	end
end

return records
