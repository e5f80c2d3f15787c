/*
 * Numbers, nested arrays and typed arrays on their way through the array door.
 */
import { inspect } from "node:util";

export function wrong(what, words, value) {
	return new TypeError(`${what} must be ${words}, not ${inspect(value, { depth: 0 })}`);
}

export const isList = (value) =>
	Array.isArray(value) || (ArrayBuffer.isView(value) && !(value instanceof DataView));

/** Whether the innermost arrays are typed ones, as those of the result shall be then. */
export const isTyped = (value) => (Array.isArray(value) ? isTyped(value[0]) : isList(value));

const product = (sizes) => sizes.reduce((all, size) => all * size, 1);

function shapeOf(value, what) {
	const shape = [];
	for (let part = value; isList(part); part = part[0])
		// More dimensions than these, and the array holds itself.
		if (shape.push(part.length) > 32)
			throw wrong(what, "a number or an array of numbers", value);
	return shape;
}

/** The numbers of nested arrays, side by side. */
function flat(value, shape, what) {
	if (value instanceof Float64Array)
		return value;
	const data = new Float64Array(product(shape));
	let end = 0;
	const append = (part, depth) => {
		if (depth === shape.length) {
			if (isList(part))
				throw new TypeError(`${what} must have rows of equal length`);
			if (typeof part !== "number")
				throw wrong(what, "a number or an array of numbers", part);
			data[end++] = part;
			return;
		}
		if (!isList(part) || part.length !== shape[depth])
			throw new TypeError(`${what} must have rows of equal length`);
		for (const inner of part)
			append(inner, depth + 1);
	};
	append(value, 0);
	return data;
}

/** The shape that all the shapes are stretched to, aligned at their last dimensions. */
function commonShape(caller, names, shapes) {
	const rank = Math.max(...shapes.map((shape) => shape.length));
	const padded = shapes.map((shape) => [...Array(rank - shape.length).fill(1), ...shape]);
	return Array.from({ length: rank }, (_, d) => {
		const whole = padded.find((shape) => shape[d] !== 1)?.[d] ?? 1;
		if (padded.some((shape) => shape[d] !== 1 && shape[d] !== whole)) {
			const list = shapes
				.map((own, i) => own.length && `${names[i]} [${own.join(", ")}]`)
				.filter(Boolean)
				.join(", ");
			throw new TypeError(`${caller}: the shapes do not fit together: ${list}`);
		}
		return whole;
	});
}

/** What lies at each element of the whole shape, for an array of some of its dimensions. */
function stretched(data, own, shape) {
	const ahead = shape.length - own.length;
	const steps = shape.map((_, d) =>
		d < ahead || own[d - ahead] === 1 ? 0 : product(own.slice(d - ahead + 1)),
	);
	return Float64Array.from({ length: product(shape) }, (_, i) => {
		let from = 0;
		for (let d = shape.length - 1; d >= 0; d--) {
			from += (i % shape[d]) * steps[d];
			i = Math.floor(i / shape[d]);
		}
		return data[from];
	});
}

/** Numbers side by side as nested arrays. */
export function nested(data, shape, typed) {
	if (shape.length === 1)
		return typed ? data : Array.from(data);
	const inner = shape.slice(1);
	const step = product(inner);
	return Array.from({ length: shape[0] }, (_, i) =>
		nested(data.subarray(i * step, (i + 1) * step), inner, typed),
	);
}

/** The shape of the result, and for each value its numbers and the stride to read them with. */
export function broadcast(caller, names, values) {
	const whats = names.map((name) => `${caller}: ${name}`);
	const shapes = values.map((x, i) => shapeOf(x, whats[i]));
	const data = values.map((x, i) => flat(x, shapes[i], whats[i]));
	const shape = commonShape(caller, names, shapes);
	const count = product(shape);
	return {
		shape,
		count,
		strides: data.map((x) => (x.length === 1 ? 0 : 1)),
		data: data.map((x, i) =>
			x.length === 1 || x.length === count ? x : stretched(x, shapes[i], shape),
		),
	};
}
