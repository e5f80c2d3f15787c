--- What vane.help() prints, written from the manifest.

local manifest = require "vane.manifest"
local refuse = require "vane.library".refuse

local WIDTH = 79

--- C's names, and its nothing, as Lua has them.
local function in_lua(words)
	return (words:gsub("%f[%w_]vane_([%w_]+%()", "%1"):gsub("%f[%w_]VANE_(%u)", "%1")
		:gsub("enum vane_", "enum "):gsub("[.;] [^.;]*%f[%w]NULL%f[%W][^.;]*", "")
		:gsub("%->index is %-1", ".index is nil"):gsub("%->", "."))
end

local function wrapped(text, first, rest)
	local lines, line, begun = {}, first, false
	for word in in_lua(text):gmatch("%S+") do
		if begun and #line + 1 + #word > WIDTH then
			lines[#lines + 1], line, begun = line, rest, false
		end
		line, begun = line .. (begun and " " or "") .. word, true
	end
	lines[#lines + 1] = line
	return table.concat(lines, "\n")
end

--- Names in one column, words in the next.
local function columns(rows)
	local width, lines = 0, {}
	for _, row in ipairs(rows) do
		width = math.max(width, #row[1] + 2)
	end
	for i, row in ipairs(rows) do
		lines[i] = wrapped(row[2], row[1] .. (" "):rep(width - #row[1]), (" "):rep(width))
	end
	return table.concat(lines, "\n")
end

--- 'array of slip records', or nothing where a number goes without saying.
local function kind_of(item)
	local record = item.record and item.record.short .. " record"
	local optional = item.optional and item.direction == "in" and "; may be left out" or ""
	if item.length and item.type ~= "char" then
		local count = type(item.length) == "number" and item.length .. " " or ""
		return ("(array of %s%s%s)"):format(count, record and record .. "s" or "numbers",
			optional)
	end
	return record and ("(%s%s)"):format(record, optional)
end

--- 'Distance between the walls [m; >= 0]'
local function sentence(item)
	local words, quantity = {item.text}, item.unit
	if quantity then
		words[2] = "[" .. quantity .. (item.range and "; " .. item.range.text or "") .. "]"
	end
	words[#words + 1] = kind_of(item)
	return table.concat(words, " ")
end

local function rows_of(items)
	local rows = {}
	for i, item in ipairs(items) do
		rows[i] = {item.name, sentence(item)}
	end
	return rows
end

--- What it gives, where that holds and where it comes from.
local function notes_of(item)
	local rows = {}
	if item.kind == "formula" or item.kind == "text" then
		rows[1] = {"Returns", sentence(item.returns)}
	end
	for _, param in ipairs(item.outputs) do
		local name = #item.outputs > 1 and " " .. param.name or ""
		rows[#rows + 1] = {"Returns" .. name, sentence(param)}
	end
	for _, note in ipairs{{"Valid", item.valid}, {"Source", item.source}} do
		rows[#rows + 1] = note[2] ~= "" and note or nil
	end
	for _, constant in ipairs(item.constants) do
		rows[#rows + 1] = {"Constant", sentence(constant)}
	end
	return rows
end

local function help_function(item)
	local names = {}
	for i, param in ipairs(item.arguments) do
		names[i] = param.name
	end
	local parts = {
		wrapped(("%s(%s)"):format(item.short, table.concat(names, ", ")), "", "    "),
		wrapped(item.brief, "", ""),
	}
	if item.formula ~= "" then
		parts[#parts + 1] = "    " .. in_lua(item.formula):gsub("\n", "\n    ")
	end
	for paragraph in item.doc:gmatch("[^\n]+") do
		parts[#parts + 1] = wrapped(paragraph, "", "")
	end
	if #names > 0 then
		parts[#parts + 1] = columns(rows_of(item.arguments))
	end
	parts[#parts + 1] = columns(notes_of(item))
	return table.concat(parts, "\n\n")
end

local function help_record(record)
	return ("%s{...}\n\n%s\n\n%s"):format(record.short, wrapped(record.brief, "", ""),
		columns(rows_of(record.fields)))
end

local function help_enum(enum)
	local rows = {}
	for i, item in ipairs(enum.values) do
		rows[i] = {item.short, item.value .. ": " .. item.brief}
	end
	return wrapped(enum.brief, "", "") .. "\n\n" .. columns(rows)
end

local function help_topics()
	local parts = {}
	for _, topic in ipairs(manifest.topics) do
		local names = {}
		for _, item in ipairs(manifest.functions) do
			names[#names + 1] = item.topic == topic.name and item.short or nil
		end
		if topic.name ~= "array" then
			local brief = wrapped(topic.name .. ": " .. topic.brief, "", "")
			local list = wrapped(table.concat(names, " "), "    ", "    ")
			parts[#parts + 1] = brief .. "\n" .. list
		end
	end
	return table.concat(parts, "\n\n")
end

local help_for = {}
local function offer(items, text_of)
	for _, item in ipairs(items) do
		help_for[item.short] = function() return text_of(item) end
	end
end
offer(manifest.enums, help_enum)
offer(manifest.records, help_record)
offer(manifest.functions, help_function)
for _, enum in ipairs(manifest.enums) do
	offer(enum.values, function() return help_enum(enum) end)
end

--- Prints what a function, record, enum or enumerator is; without a name, what there is.
return function(name)
	local text = name == nil and help_topics or help_for[name]
		or refuse("help", "name", name, "there is nothing called '%s'.", tostring(name))
	print(text())
end
