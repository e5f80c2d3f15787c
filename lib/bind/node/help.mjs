/*
 * What vane.help() prints, written from the manifest.
 */
const WIDTH = 79;

/** vane_slot_flow and VANE_RING_CYCLOIDAL without the prefix. */
export const plainName = (name) => name.slice("vane_".length);

/** What the caller gives: no outputs, and no lengths, which arrays bring along. */
export function inputs({ params }) {
	const taken = params.filter(({ direction }) => direction !== "out");
	return taken.filter(({ name }) => !taken.some(({ length }) => length === name));
}

export const outputs = ({ params }) =>
	params.filter(({ direction, name }) => direction !== "in" && name !== "error");

/** C's names, and its nothing, as JavaScript has them. */
function translated(words) {
	return words
		.replace(/\bvane_(?=\w+\()|\bVANE_(?=[A-Z])|(?<=\benum )vane_/g, "")
		.replace(/[.;] [^.;]*\bNULL\b[^.;]*/g, "")
		.replaceAll("->index is -1", ".index is null")
		.replaceAll("->", ".");
}

function wrapped(words, first, rest) {
	const lines = [first];
	let fresh = true;
	for (const word of translated(words).split(" ")) {
		const line = fresh ? lines.at(-1) + word : `${lines.at(-1)} ${word}`;
		if (fresh || line.length <= WIDTH)
			lines[lines.length - 1] = line;
		else
			lines.push(rest + word);
		fresh = false;
	}
	return lines.join("\n");
}

/** Names in one column, words in the next. */
function table(rows) {
	const column = Math.max(...rows.map(([name]) => name.length)) + 2;
	return rows
		.map(([name, words]) => wrapped(words, name.padEnd(column), " ".repeat(column)))
		.join("\n");
}

/** "Distance between the walls [m; >= 0]" of a parameter, a field or what a function returns. */
function sentence({ text, unit, range, length, optional, direction }) {
	const promises = [
		unit,
		range?.text,
		length && `length ${length}`,
		optional && direction === "in" && "may be left out",
	].filter(Boolean);
	return promises.length ? `${text} [${promises.join("; ")}]` : text;
}

function kindOf({ type, length }) {
	const base = type.replace(/[ *]+$/, "");
	const [one, several] = base.startsWith("vane_")
		? [`vane.${plainName(base)}`, `vane.${plainName(base)}`]
		: ["number", "numbers"];
	return length ? `array of ${several}` : one;
}

function returned(item) {
	const wanted = outputs(item);
	if (wanted.length === 0)
		return [["Returns", sentence(item.returns)]];
	// The names tell several outputs apart, and say nothing of a single one.
	const label = ({ name }) => (wanted.length > 1 ? `Returns ${name}` : "Returns");
	return wanted.map((param) => [label(param), `${sentence(param)} (${kindOf(param)})`]);
}

export function document(item) {
	const given = inputs(item);
	const notes = [
		["Valid", item.valid],
		["Source", item.source],
		...item.constants.map((constant) => ["Constant", sentence(constant)]),
	];
	const parts = [
		`${plainName(item.name)}(${given.map(({ name }) => name).join(", ")})`,
		wrapped(item.brief, "", ""),
		translated(item.formula).replace(/^(?=.)/gm, "    "),
		...item.doc.split("\n\n").map((paragraph) => wrapped(paragraph, "", "")),
		given.length ? table(given.map((param) => [param.name, sentence(param)])) : "",
		table(returned(item)),
		table(notes.filter(([, words]) => words)),
	];
	return parts.filter(Boolean).join("\n\n");
}

export function documentRecord(record) {
	const fields = record.fields.map((field) => [field.name, sentence(field)]);
	return [plainName(record.name), wrapped(record.brief, "", ""), table(fields)].join("\n\n");
}

export function documentEnum({ brief, values }) {
	const rows = values.map((item) => [plainName(item.name), `${item.value}: ${item.brief}`]);
	return [wrapped(brief, "", ""), table(rows)].join("\n\n");
}

/** Every topic with its functions. */
export function documentTopics({ topics, functions }) {
	const parts = topics.map(({ name, brief }) => {
		const names = functions.filter(({ topic }) => topic === name);
		const list = names.map((item) => plainName(item.name)).join(" ");
		return `${wrapped(`${name}: ${brief}`, "", "")}\n${wrapped(list, "    ", "    ")}`;
	});
	return parts.join("\n\n");
}
