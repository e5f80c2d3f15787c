/*
 * libvane for Node: hydraulic calculations for vane pumps.
 *
 * Nothing here knows a function of the library by name: all of it comes from the manifest,
 * vane-api.json. Functions are called with one object of named arguments, or by position:
 *
 *	import vane from "libvane";
 *	vane.slot_flow({ width: 0.02, gap: [1e-5, 2e-5], length: 0.005, dp: 15e6,
 *	                 viscosity: 8.6e-3, wall_speed: 0 });
 *	vane.help("slot_flow");
 *
 * What help() says may be left out is undefined or null then.
 *
 * A call that is written wrongly throws a TypeError; values that the library refuses, a VaneError,
 * whose result holds what was computed all the same where the call was for many elements. Its index
 * counts from 0; where no element is at fault, it is null.
 */
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { inspect } from "node:util";
import koffi from "koffi";
import { broadcast, isList, isTyped, nested, wrong } from "./arrays.mjs";
import {
	document,
	documentEnum,
	documentRecord,
	documentTopics,
	inputs,
	outputs,
	plainName,
} from "./help.mjs";

const read = (path) => JSON.parse(readFileSync(path, "utf8"));
const beside = (name) => fileURLToPath(new URL(name, import.meta.url));

// What the build wrote into package.json still holds where npm has copied this package to.
const installed = existsSync(beside("package.json")) ? read(beside("package.json")).installed : {};

function find(variable, ...places) {
	if (process.env[variable])
		return process.env[variable];
	return places.find((place) => place && existsSync(place));
}

const manifestPath = find("VANE_MANIFEST", beside("vane-api.json"), installed.manifest);
if (!manifestPath)
	throw new Error("libvane: vane-api.json was not found; set VANE_MANIFEST to its path");
const manifest = read(manifestPath);
// Where no path is known, the system's loader searches.
const libraryPath =
	find("VANE_LIBRARY", beside("libvane.so"), installed.library) ?? "libvane.so.0";
const library = koffi.load(libraryPath);
const version = library.func("vane_version", "str", [])();
if (version !== manifest.version)
	throw new Error(
		`libvane: ${libraryPath} is version ${version}, ` +
			`${manifestPath} is ${manifest.version}`,
	);
const statusName = library.func("vane_status_name", "str", ["int32_t"]);
const statusText = library.func("vane_status_text", "str", ["int32_t"]);

/** A call that the library refused. */
export class VaneError extends Error {
	static {
		this.prototype.name = "VaneError";
	}

	constructor(caller, error) {
		const text = error.text || statusText(error.code);
		super(`${caller}: ${text}`);
		this.code = error.code;
		this.status = statusName(error.code);
		this.parameter = error.name || null;
		this.value = error.value;
		this.index = error.index >= 0 ? Number(error.index) : null;
		this.text = text;
	}
}

const isObject = (value) => typeof value === "object" && value !== null && !isList(value);

function isPlain(value) {
	return isObject(value) && [Object.prototype, null].includes(Object.getPrototypeOf(value));
}

// What does not fit would be cut off on its way to C without a word.
const scalars = {
	double: { words: "a number", zero: 0, is: (x) => typeof x === "number" },
	int32_t: {
		words: "a 32-bit integer",
		zero: 0,
		is: (x) => typeof x === "number" && x === (x | 0),
	},
	int64_t: { words: "an integer", zero: 0, is: Number.isSafeInteger },
	char: { words: "a string", zero: "", is: (x) => typeof x === "string" },
};

function scalar(kind, value, what, room = Infinity) {
	if (!scalars[kind].is(value))
		throw wrong(what, scalars[kind].words, value);
	if (kind === "char" && Buffer.byteLength(value) >= room)
		throw wrong(what, `a string of fewer than ${room} bytes`, value);
	return value;
}

/** By C name: {make, fields, type}, as the records before it in the manifest are there already. */
const records = {};

/** What records have in common. Their fields are ordinary properties, so {...record} works. */
class Record {
	/** A copy with some fields changed, in the records inside as well. */
	with(changes) {
		return fill(new this.constructor(this), changes, this.constructor.name);
	}

	toJSON() {
		const plain = ([name, x]) => [name, x instanceof Record ? x.toJSON() : x];
		return Object.fromEntries(Object.entries(this).map(plain));
	}

	toString() {
		return inspect(this, { depth: null });
	}
}

function fill(record, given, what) {
	if (!isObject(given))
		throw wrong(what, "a record or an object of its fields", given);
	const { fields } = records[`vane_${record.constructor.name}`];
	for (const [name, value] of Object.entries(given)) {
		const field = fields.get(name);
		if (!field)
			throw new TypeError(`${what} has no field ${name}`);
		const where = `${what}.${name}`;
		if (records[field.type])
			fill(record[name], value, where);
		else
			record[name] = scalar(field.type, value, where, field.length);
	}
	return record;
}

function addRecord(item) {
	const fields = new Map(item.fields.map((field) => [field.name, field]));
	const makes = item.fields.map(({ name, type }) => {
		const make = records[type]?.make ?? (() => scalars[type].zero);
		return [name, make];
	});
	const make = function (given = {}) {
		if (!new.target)
			return new make(given);
		for (const [name, part] of makes)
			this[name] = part();
		// A misspelt name is an error in an assignment too.
		Object.seal(this);
		fill(this, given, make.prototype.constructor.name);
	};
	Object.defineProperty(make, "name", { value: plainName(item.name) });
	make.prototype = Object.create(Record.prototype, {
		constructor: { value: make },
	});
	const type = koffi.struct(
		Object.fromEntries(
			item.fields.map(({ name, type: kind, length }) => {
				const one = records[kind]?.type ?? kind;
				return [name, length ? koffi.array(one, length, "String") : one];
			}),
		),
	);
	if (koffi.sizeof(type) !== item.size)
		throw new Error(`libvane: ${item.name} is laid out in another way on this machine`);
	records[item.name] = { make, fields, type };
	return make;
}

const isPointer = (param) => param.type.endsWith("*");
const baseOf = (param) => param.type.replace("const ", "").replace(/[ *]+$/, "");

function typeOf(param) {
	const base = baseOf(param);
	if (base === "char")
		return "str";
	if (!isPointer(param))
		return base;
	return koffi.pointer(records[base]?.type ?? base);
}

/** The arguments of a call in the order of the parameters. */
function ordered(caller, params, given) {
	if (given.length === 1 && isPlain(given[0])) {
		const [named] = given;
		for (const name of Object.keys(named))
			if (!params.some((param) => param.name === name))
				throw new TypeError(`${caller}: there is no parameter ${name}`);
		given = params.map((param) => named[param.name]);
	}
	if (given.length > params.length)
		throw new TypeError(
			`${caller}: takes ${params.length} arguments, not ${given.length}`,
		);
	params.forEach(({ name, optional }, i) => {
		if (given[i] === undefined && !optional)
			throw new TypeError(`${caller}: ${name} is missing`);
	});
	return given;
}

// The prototype is asked only for what vane has not: a misspelt constant would be undefined without
// a word. What Node itself asks objects for, "then" or "toJSON", is of another pattern.
const guard = new Proxy(Object.prototype, {
	get(target, name, receiver) {
		if (typeof name === "string" && /^[a-z\d]+_/i.test(name))
			throw new TypeError(`vane: there is nothing called ${name}`);
		return Reflect.get(target, name, receiver);
	},
});
const vane = Object.assign(Object.create(guard), { VaneError, help });
for (const item of manifest.records)
	vane[plainName(item.name)] = addRecord(item);

const errorType = koffi.out(koffi.pointer(records.vane_error.type));
const arrayDoor = library.func("vane_array_run", "int32_t", [
	"str",
	"int64_t",
	koffi.pointer(koffi.pointer("double")),
	koffi.pointer("int64_t"),
	koffi.pointer("double"),
	errorType,
]);

function overArrays(item, caller, params, values) {
	const names = params.map(({ name }) => name);
	const { shape, count, data, strides } = broadcast(caller, names, values);
	const out = new Float64Array(count);
	const error = {};
	// Of empty arrays there are no pointers to give.
	if (count > 0)
		arrayDoor(item.name, count, data, strides, out, error);
	const result = nested(out, shape, values.some(isTyped));
	if (error.code)
		throw Object.assign(new VaneError(caller, error), { result });
	return result;
}

function formula(item, caller) {
	const params = inputs(item);
	const doubles = params.map(() => "double");
	const quick = library.func(item.name, "double", [...doubles, "void *"]);
	const careful = library.func(item.name, "double", [...doubles, errorType]);
	return (...given) => {
		const values = ordered(caller, params, given);
		if (!values.every((value) => typeof value === "number"))
			return overArrays(item, caller, params, values);
		const result = quick(...values, null);
		// NaN is a refusal; asked again with an error record, the formula says why.
		if (!Number.isNaN(result))
			return result;
		const error = {};
		careful(...values, error);
		throw new VaneError(caller, error);
	};
}

/** One argument of a procedure, as koffi takes it. */
function argument(param, value, what) {
	const base = baseOf(param);
	const one = (x, where) =>
		records[base] ? fill(records[base].make(), x, where) : scalar(base, x, where);
	if (!param.length)
		return one(value, what);
	if (!isList(value))
		throw wrong(what, "an array", value);
	// An empty typed array would be a null pointer, which is another complaint.
	return value instanceof Float64Array && base === "double" && value.length > 0
		? value
		: Array.from(value, (x, i) => one(x, `${what}[${i}]`));
}

const rooms = { double: Float64Array, int32_t: Int32Array, int64_t: BigInt64Array };

/** Memory for C to write that many elements to; none would be a null pointer. */
function room(param, count) {
	const base = baseOf(param);
	const Room = rooms[base];
	return Room
		? new Room(Math.max(count, 1)).subarray(0, count)
		: new Uint8Array(koffi.sizeof(records[base].type) * Math.max(count, 1));
}

/** What C wrote, as the caller wants it. */
function output(param, written, count) {
	const record = records[baseOf(param)];
	if (!record)
		return param.length ? written : Number(written[0]);
	const list = koffi.decode(written, record.type, count).map((one) => record.make(one));
	return param.length ? list : list[0];
}

/** The inputs of a procedure by name, with the lengths that its arrays tell. */
function gathered(caller, params, values) {
	const passed = {};
	params.forEach((param, i) => {
		const { name, length, optional } = param;
		const what = `${caller}: ${name}`;
		const absent = optional && (values[i] ?? null) === null;
		passed[name] = absent ? null : argument(param, values[i], what);
		if (!length || absent)
			return;
		const own = passed[name].length;
		// The first array of a length sets it for the others.
		const all = typeof length === "number" ? length : (passed[length] ??= own);
		if (own !== all)
			throw new TypeError(`${what} has ${own} elements, not ${all}`);
	});
	for (const { length } of params)
		if (typeof length === "string")
			passed[length] ??= 0;
	return passed;
}

function procedure(item, caller) {
	const given = inputs(item);
	const wanted = outputs(item);
	const types = item.params.map((param) =>
		param.name === "error" ? errorType : typeOf(param),
	);
	const call = library.func(item.name, "int32_t", types);
	const byElement = wanted.some(({ length }) => typeof length === "string");
	return (...values) => {
		const passed = gathered(caller, given, ordered(caller, given, values));
		// A count that the caller gave may be negative, which the library refuses.
		const counts = wanted.map(({ length }) =>
			Math.max(passed[length] ?? length ?? 1, 0),
		);
		for (const [i, param] of wanted.entries())
			passed[param.name] = room(param, counts[i]);
		passed.error = {};
		const code = call(...item.params.map(({ name }) => passed[name]));
		const refusal = code && new VaneError(caller, { ...passed.error, code });
		if (refusal && !byElement)
			throw refusal;
		const made = wanted.map((param, i) => [
			param.name,
			output(param, passed[param.name], counts[i]),
		]);
		const result = made.length === 1 ? made[0][1] : Object.fromEntries(made);
		if (refusal)
			throw Object.assign(refusal, { result });
		return result;
	};
}

function defaults(item, caller) {
	const [param] = item.params;
	const call = library.func(item.name, "void", [typeOf(param)]);
	return (...given) => {
		ordered(caller, [], given);
		const out = room(param, 1);
		call(out);
		return output(param, out, 1);
	};
}

function text(item, caller) {
	const call = library.func(item.name, "str", item.params.map(typeOf));
	return (...given) => {
		const values = ordered(caller, item.params, given);
		const passed = (param, i) => argument(param, values[i], `${caller}: ${param.name}`);
		return call(...item.params.map(passed));
	};
}

const kinds = { formula, procedure, defaults, text };
for (const { name, value } of manifest.enums.flatMap((item) => item.values))
	vane[plainName(name)] = value;
// The formulas themselves take arrays; their door needs no name here.
for (const item of manifest.functions.filter(({ topic }) => topic !== "array")) {
	const name = plainName(item.name);
	vane[name] = Object.defineProperty(kinds[item.kind](item, name), "name", { value: name });
}

const pages = [
	[manifest.functions, document],
	[manifest.records, documentRecord],
	[manifest.enums, documentEnum],
];

/** Prints what the library says about a function, a record or an enum; or lists all functions. */
export function help(what) {
	const name = typeof what === "function" ? what.name : what;
	if (name === undefined) {
		console.log(documentTopics(manifest));
		return;
	}
	for (const [items, write] of pages) {
		const found = items.find((item) => plainName(item.name) === name);
		if (found) {
			console.log(write(found));
			return;
		}
	}
	throw new TypeError(`help: there is nothing called ${name}`);
}

export default Object.freeze(vane);
