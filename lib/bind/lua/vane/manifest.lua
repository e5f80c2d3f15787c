--- The manifest, with what Lua makes of its names and types.

local cjson = require "cjson"
local where = require "vane.where"

local function without_null(tree)
	for key, value in pairs(tree) do
		if value == cjson.null then
			tree[key] = nil
		elseif type(value) == "table" then
			without_null(value)
		end
	end
	return tree
end

local function by_name(items)
	local named = {}
	for _, item in ipairs(items) do
		named[item.name] = item
	end
	return named
end

--- vane_slot_flow and VANE_RING_CYCLOIDAL without the prefix.
local function short(name)
	return (name:gsub("^vane_", ""):gsub("^VANE_", ""))
end

--- The type without const and stars.
local function base_of(kind)
	return (kind:gsub("const ", ""):gsub("[ *]+$", ""))
end

--- What the caller gives is neither an output nor a length, which the arrays bring along.
local function sort_params(item)
	local lengths = {}
	for _, param in ipairs(item.params) do
		if param.length and param.direction ~= "out" then
			lengths[param.length] = true
		end
	end
	item.arguments, item.outputs, item.lengths, item.position = {}, {}, {}, {}
	for place, param in ipairs(item.params) do
		local list = param.direction == "out" and item.outputs
			or lengths[param.name] and item.lengths or item.arguments
		param.base, param.place = base_of(param.type), place
		if param.base ~= "vane_error" then
			list[#list + 1] = param
		end
	end
	for i, param in ipairs(item.arguments) do
		item.position[param.name] = i
	end
end

local manifest = without_null(cjson.decode(where.contents(where.manifest())))

for _, what in ipairs{"functions", "records", "enums"} do
	for _, item in ipairs(manifest[what]) do
		item.short = short(item.name)
	end
end
for _, item in ipairs(manifest.functions) do
	sort_params(item)
end

--- Short names of an enum's values, by number.
manifest.enumerators = {}
for _, enum in ipairs(manifest.enums) do
	manifest.enumerators[enum.name] = {}
	for _, item in ipairs(enum.values) do
		item.short = short(item.name)
		manifest.enumerators[enum.name][item.value] = item.short
	end
end

manifest.record = by_name(manifest.records)
for _, record in ipairs(manifest.records) do
	record.field = by_name(record.fields)
	for _, field in ipairs(record.fields) do
		field.record = manifest.record[field.type]
	end
end
for _, item in ipairs(manifest.functions) do
	for _, param in ipairs(item.params) do
		param.record = manifest.record[param.base]
	end
end

return manifest
