/*
 * The package libvane for Node, against the manifest and numbers known otherwise.
 */
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { test } from "node:test";
import { inspect } from "node:util";
import vane, { VaneError, help } from "libvane";

const packaged = createRequire(import.meta.url)("libvane/package.json");
const manifestPath = process.env.VANE_MANIFEST ?? packaged.installed.manifest;
const manifest = JSON.parse(readFileSync(manifestPath, "utf8"));
const plain = ({ name }) => name.slice("vane_".length);
const offered = manifest.functions.filter(({ topic }) => topic !== "array");

const slot = { width: 0.02, gap: 1e-5, length: 0.005, dp: 15e6, viscosity: 8.6e-3, wall_speed: 0 };
// w h^3 dp / (12 mu L), the law of the slot between parallel plates.
const slotFlow = (gap) => (0.02 * gap ** 3 * 15e6) / (12 * 8.6e-3 * 0.005);

function near(got, want, tolerance = 1e-12) {
	assert.ok(Math.abs(got - want) <= tolerance * Math.abs(want), `${got} is not ${want}`);
}

function wrongly(call, message) {
	assert.throws(call, { name: "TypeError", message });
}

test("everything in the manifest is there, and nothing else", () => {
	const names = [
		...offered.map(plain),
		...manifest.records.map(plain),
		...manifest.enums.flatMap(({ values }) => values.map(plain)),
		"VaneError",
		"help",
	];
	assert.deepEqual(Object.keys(vane).sort(), names.sort());
	for (const { name, value } of manifest.enums.flatMap(({ values }) => values))
		assert.equal(vane[plain({ name })], value);
	assert.ok(Object.isFrozen(vane));
});

test("misspelt names are errors, and what every object is asked for is none", async () => {
	for (const name of ["RING_CYCLODIAL", "slot_flwo"])
		wrongly(() => vane[name], `vane: there is nothing called ${name}`);
	assert.equal(await Promise.resolve(vane), vane);
	assert.equal(JSON.parse(JSON.stringify(vane)).RING_CYCLOIDAL, vane.RING_CYCLOIDAL);
	assert.match(inspect(vane), /slot_flow/);
	assert.equal(String(vane), "[object Object]");
	assert.ok(!("slot_flwo" in vane) && "slot_flow" in vane);
});

test("the versions of library, manifest and package are one", () => {
	assert.equal(vane.version(), manifest.version);
	assert.equal(packaged.version, manifest.version);
});

const find = (items, name) => items.find((item) => item.name === name);

/** Hands over what says how a program ends under another manifest, and that manifest's path. */
function withManifests(check) {
	const directory = mkdtempSync(join(tmpdir(), "libvane-"));
	const path = join(directory, "vane-api.json");
	const run = (changed, call = "") => {
		if (changed)
			writeFileSync(path, JSON.stringify(changed));
		const code = `import assert from "node:assert/strict";
			import vane from "libvane"; ${call}`;
		const flags = ["--preserve-symlinks", "--input-type=module", "--eval", code];
		const done = spawnSync(process.execPath, flags, {
			cwd: dirname(process.argv[1]),
			env: { ...process.env, VANE_MANIFEST: path },
			encoding: "utf8",
		});
		return done.status === 0 ? "went well" : done.stderr;
	};
	try {
		check(run, path);
	} finally {
		rmSync(directory, { recursive: true });
	}
}

test("another manifest: its version and its lengths hold, and it has to be there", () => {
	withManifests((run, path) => {
		assert.ok(run(null).includes(path));
		assert.equal(run(manifest), "went well");
		const said = run({ ...manifest, version: "99.0.0" });
		assert.match(said, /is version [\d.]+, \S+\/vane-api\.json is 99\.0\.0/);

		const fixed = structuredClone(manifest);
		const { params } = find(fixed.functions, "vane_stand_displacement");
		find(params, "reading").length = 16;
		assert.match(
			run(fixed, "vane.stand_displacement([{}, {}], 2);"),
			/TypeError: stand_displacement: reading has 2 elements, not 16/,
		);
		find(fixed.records, "vane_ring").size += 8;
		assert.match(run(fixed), /vane_ring is laid out in another way/);
	});
});

test("optional inputs may be left out, and lengths of one name agree", () => {
	const changed = structuredClone(manifest);
	const param = (name, own) => find(find(changed.functions, name).params, own);
	// C writes to it all the same, which shows what arrived there.
	const correlation = param("vane_stand_slip_fit", "correlation");
	Object.assign(correlation, { direction: "in", optional: true });
	for (const [name, own] of [
		["vane_clearance_width", "reading"],
		["vane_pump_map", "duty"],
		["vane_pump_run", "duty"],
	])
		param(name, own).optional = true;
	const readings = `
		const oil = vane.oil_from_grade(46, 100);
		const readings = (count) => Array.from({ length: count }, (_, i) => ({
			speed: 25, pressure: 1e6 * (i + 1), temperature: 323.15, flow: 1e-3,
		}));
		const nothing = [undefined, null];
	`;
	const arrays = `${readings}
		const reading = readings(5);
		const fit = vane.stand_slip_fit(reading, oil, 0);
		assert.ok(fit instanceof vane.slip_fit);
		assert.deepEqual(vane.stand_slip_fit({ reading, oil, terms: 0 }), fit);
		for (const correlation of nothing) {
			assert.deepEqual(vane.stand_slip_fit(reading, oil, 0, correlation), fit);
			const named = { reading, oil, terms: 0, correlation };
			assert.deepEqual(vane.stand_slip_fit(named), fit);
		}
		const correlation = new Float64Array(16).fill(7);
		assert.deepEqual(vane.stand_slip_fit(reading, oil, 0, correlation), fit);
		assert.ok(correlation.every((x) => Math.abs(x) < 2), String(correlation));
		assert.throws(() => vane.stand_slip_fit(reading, oil, 0, [1, 2]), {
			message: "stand_slip_fit: correlation has 2 elements, not 16",
		});
		assert.throws(() => vane.stand_slip_fit(reading, oil), {
			message: "stand_slip_fit: terms is missing",
		});
		assert.throws(() => vane.stand_slip_fit(reading, null, 0), { name: "TypeError" });
	`;
	const lengths = `${readings}
		const instrument = vane.instrument();
		for (const reading of nothing)
			for (const given of [[reading, instrument], [{ reading, instrument }]])
				assert.throws(() => vane.clearance_width(...given), {
					name: "VaneError",
					parameter: "reading",
				});
		const parts = vane.parts_default();
		for (const call of [vane.pump_run, vane.pump_map])
			assert.throws(() => call(parts, oil), { name: "VaneError" });
		assert.throws(() => vane.pump_map({ parts, oil }), { result: [] });
	`;
	const shared = `${readings}
		const correlation = new Float64Array(16).fill(7);
		vane.stand_slip_fit(readings(16), oil, 0, correlation);
		assert.ok(correlation.every((x) => Math.abs(x) < 2), String(correlation));
		assert.ok(vane.stand_slip_fit(readings(5), oil, 0) instanceof vane.slip_fit);
		for (const count of [15, 17]) {
			const reading = readings(count);
			assert.throws(() => vane.stand_slip_fit(reading, oil, 0, correlation), {
				name: "TypeError",
				message: /: correlation has 16 elements, not (15|17)$/,
			});
		}
	`;
	const documented = `
		const shown = [];
		console.log = (text) => shown.push(text);
		vane.help("stand_slip_fit");
		assert.match(shown[0], /; length 16; may be left out/);
	`;
	withManifests((run) => {
		for (const program of [arrays, lengths, documented])
			assert.equal(run(changed, program), "went well");
		correlation.length = "readings";
		assert.equal(run(changed, shared), "went well");
	});
});

test("a length may be the caller's", () => {
	const changed = structuredClone(manifest);
	// One duty, and so many performances as the caller says.
	find(find(changed.functions, "vane_pump_map").params, "duty").length = null;
	const program = `
		const [oil, duty] = [vane.oil_from_grade(46, 100), vane.duty_default()];
		const parts = vane.parts(${JSON.stringify(wholePump())});
		const map = (count) => vane.pump_map(parts, oil, duty, count);
		assert.deepEqual(map(1), [vane.pump_run(parts, oil, duty)]);
		assert.deepEqual(map(0), []);
		for (const value of [-1, -(2 ** 31)])
			assert.throws(() => map(value), { parameter: "duties", value, result: [] });
	`;
	withManifests((run) => assert.equal(run(changed, program), "went well"));
});

test("a formula takes named arguments or positional ones", () => {
	near(vane.slot_flow(slot), slotFlow(1e-5));
	assert.equal(vane.slot_flow(...Object.values(slot)), vane.slot_flow(slot));
	const { width, ...others } = slot;
	assert.equal(vane.slot_flow({ ...others, width }), vane.slot_flow(slot));
	near(vane.units_m_from_in(1), 0.0254);
	assert.equal(vane.slot_flow.name, "slot_flow");
});

test("a call written wrongly names function and parameter", () => {
	const { dp, ...without } = slot;
	wrongly(() => vane.slot_flow(without), "slot_flow: dp is missing");
	wrongly(() => vane.slot_flow(0.02, 1e-5), "slot_flow: length is missing");
	wrongly(() => vane.slot_flow(), "slot_flow: width is missing");
	for (const name of ["speed", "error"])
		wrongly(
			() => vane.slot_flow({ ...slot, [name]: 1 }),
			`slot_flow: there is no parameter ${name}`,
		);
	wrongly(() => vane.slot_flow(1, 2, 3, 4, 5, 6, 7), "slot_flow: takes 6 arguments, not 7");
	for (const bad of ["1e-5", null, true, 1n, { m: 1 }, vane.ring(), ["x"], [1, null], [1n]])
		assert.throws(() => vane.slot_flow({ ...slot, gap: bad }), {
			name: "TypeError",
			message: /^slot_flow: gap must be a number or an array of numbers, not /,
		});
	wrongly(
		() => vane.slot_flow(0.02, { gap: 1e-5 }, 1, 1, 1, 1),
		"slot_flow: gap must be a number or an array of numbers, not { gap: 0.00001 }",
	);
	wrongly(() => vane.ring_default(1), "ring_default: takes 0 arguments, not 1");
	wrongly(
		() => vane.status_name("ok"),
		"status_name: code must be a 32-bit integer, not 'ok'",
	);
	for (const bad of [0.5, 2 ** 31, NaN, true, "1"])
		assert.throws(() => vane.ring_law_at({ law: bad, fraction: 0.5 }), {
			name: "TypeError",
			message: /^ring_law_at: law must be a 32-bit integer, not /,
		});
});

test("a refused value is a VaneError that says what and why", () => {
	assert.throws(() => vane.slot_flow({ ...slot, gap: -1 }), (error) => {
		assert.ok(error instanceof VaneError && error instanceof Error);
		assert.equal(
			error.message,
			"slot_flow: gap must be finite and at least 0 m; it is -1 m.",
		);
		assert.equal(error.text, "gap must be finite and at least 0 m; it is -1 m.");
		assert.equal(error.name, "VaneError");
		assert.equal(error.code, vane.INVALID_ARGUMENT);
		assert.equal(error.status, "invalid argument");
		assert.equal(error.parameter, "gap");
		assert.equal(error.value, -1);
		assert.equal(error.index, null);
		assert.ok(!("result" in error));
		return true;
	});
	assert.throws(() => vane.slot_flow({ ...slot, gap: 1e300 }), {
		name: "VaneError",
		code: vane.OUT_OF_RANGE,
	});
	assert.throws(() => vane.pump_run(vane.parts(), vane.oil_default(), vane.duty_default()), {
		name: "VaneError",
		message: /^pump_run: parts\./,
		parameter: /^parts\./,
	});
});

test("every formula refuses NaN, under its own name and a parameter's", () => {
	for (const item of offered.filter(({ kind }) => kind === "formula")) {
		const names = item.params.slice(0, -1).map(({ name }) => name);
		assert.throws(() => vane[plain(item)](...names.map(() => NaN)), (error) => {
			assert.ok(error instanceof VaneError, String(error));
			assert.ok(error.message.startsWith(`${plain(item)}: `), error.message);
			assert.ok(names.includes(error.parameter), error.message);
			return true;
		});
	}
});

test("every formula gives over arrays what it gives alone", () => {
	const samples = [0.5, 0.25, 2, 40, 350, -1];
	let computed = 0;
	for (const item of offered.filter(({ kind }) => kind === "formula")) {
		const call = vane[plain(item)];
		const params = item.params.slice(0, -1);
		const rows = params.map((_, i) => samples.map((x) => x * (1 + i / 8)));
		const alone = samples.map((_, i) => {
			try {
				return call(...rows.map((row) => row[i]));
			} catch (error) {
				assert.ok(error instanceof VaneError, String(error));
				return NaN;
			}
		});
		let together;
		try {
			together = call(...rows);
		} catch (error) {
			assert.ok(Number.isNaN(alone[error.index]), String(error));
			assert.equal(alone.findIndex(Number.isNaN), error.index);
			together = error.result;
		}
		assert.deepEqual(together, alone, item.name);
		computed += alone.filter(Number.isFinite).length;
	}
	assert.ok(computed > 300, `only ${computed} values were not refused`);
});

test("arrays broadcast as NumPy's do", () => {
	const gap = [1e-5, 2e-5, 4e-5];
	const flows = vane.slot_flow({ ...slot, gap });
	assert.ok(Array.isArray(flows));
	flows.forEach((flow, i) => near(flow, slotFlow(gap[i])));

	const typed = vane.slot_flow({ ...slot, gap: Float64Array.from(gap) });
	assert.deepEqual(typed, Float64Array.from(flows));
	assert.deepEqual(vane.slot_flow({ ...slot, gap: [gap] }), [flows]);
	assert.deepEqual(vane.slot_flow({ ...slot, gap, width: [0.02] }), flows);
	// A view into the middle of a buffer.
	const view = Float64Array.of(7, ...gap, 7).subarray(1, 4);
	assert.deepEqual(vane.slot_flow({ ...slot, gap: view }), typed);
	assert.deepEqual(view, Float64Array.from(gap));
	const whole = vane.units_pa_from_bar(Int32Array.of(1, 2));
	assert.deepEqual(whole, Float64Array.of(1e5, 2e5));

	const one = (width, h) => vane.slot_flow({ ...slot, width, gap: h });
	const width = [[0.01], [0.03]];
	const table = width.map(([w]) => gap.map((h) => one(w, h)));
	assert.deepEqual(vane.slot_flow({ ...slot, width, gap }), table);
	assert.deepEqual(
		vane.slot_flow({ ...slot, width, gap: Float64Array.from(gap) }),
		table.map((row) => Float64Array.from(row)),
	);
	const cube = vane.slot_flow({ ...slot, width: [[[0.01]], [[0.03]]], gap: [gap, gap] });
	assert.deepEqual(cube, table.map((row) => [row, row]));
	assert.deepEqual(
		vane.slot_flow({ ...slot, width: [[[0.01], [0.03]]], gap: [[gap], [gap]] }),
		[table, table],
	);

	assert.deepEqual(vane.slot_flow({ ...slot, gap: [] }), []);
	const none = new Float64Array(0);
	assert.deepEqual(vane.slot_flow({ ...slot, gap: none }), none);
	assert.deepEqual(vane.slot_flow({ ...slot, gap: [[], []], width: [0.02] }), [[], []]);
});

test("arrays that do not fit are told apart", () => {
	wrongly(
		() => vane.slot_flow({ ...slot, width: [1, 2], gap: [1, 2, 3] }),
		"slot_flow: the shapes do not fit together: width [2], gap [3]",
	);
	wrongly(
		() => vane.slot_flow({ ...slot, width: [1, 2], gap: [] }),
		"slot_flow: the shapes do not fit together: width [2], gap [0]",
	);
	const posing = [[1, 2], { length: 2 }];
	for (const ragged of [
		[[1, 2], [3]],
		[[1], 2],
		[1, [2]],
		[[1], Float64Array.of(1, 2)],
		posing,
		[[1, 2], "12"],
	])
		wrongly(
			() => vane.slot_flow({ ...slot, gap: ragged }),
			"slot_flow: gap must have rows of equal length",
		);
	const endless = [];
	endless.push(endless);
	const message = /^slot_flow: gap must be a number or an array of numbers, not /;
	wrongly(() => vane.slot_flow({ ...slot, gap: endless }), message);
	wrongly(() => vane.slot_flow({ ...slot, gap: [[1], endless] }), /^slot_flow: gap must /);
	wrongly(
		() => vane.clearance_width(endless, vane.instrument()),
		/^clearance_width: reading\[0\] must be a number, not /,
	);
});

test("a refused element is NaN, and the others are in the error's result", () => {
	const gap = [1e-5, -3, 2e-5, -4];
	assert.throws(() => vane.slot_flow({ ...slot, gap }), (error) => {
		assert.equal(
			error.message,
			"slot_flow: gap must be finite and at least 0 m; it is -3 m.",
		);
		assert.equal(error.index, 1);
		assert.equal(error.value, -3);
		assert.deepEqual(error.result.map(Number.isNaN), [false, true, false, true]);
		near(error.result[2], slotFlow(2e-5));
		return true;
	});
	assert.throws(() => vane.slot_flow({ ...slot, gap: [gap], width: [[0.01], [0.02]] }), {
		index: 1,
		result: [0.01, 0.02].map((width) =>
			gap.map((h) => (h < 0 ? NaN : vane.slot_flow({ ...slot, gap: h, width }))),
		),
	});
});

test("records have named fields, zero where not given", () => {
	const ring = vane.ring({ width: 0.025, law: vane.RING_CYCLOIDAL });
	assert.ok(ring instanceof vane.ring);
	assert.equal(ring.width, 0.025);
	assert.equal(ring.law, 3);
	assert.equal(ring.large_radius, 0);
	assert.deepEqual(new vane.ring({ width: 0.025, law: 3 }), ring);
	for (const item of manifest.records) {
		const names = item.fields.map(({ name }) => name);
		assert.deepEqual(Object.keys(vane[plain(item)]()), names);
	}

	wrongly(() => vane.ring({ widht: 1 }), "ring has no field widht");
	wrongly(() => vane.parts({ ring: { widht: 1 } }), "parts.ring has no field widht");
	wrongly(() => vane.ring({ width: "1" }), "ring.width must be a number, not '1'");
	wrongly(() => vane.ring({ width: null }), "ring.width must be a number, not null");
	wrongly(() => vane.ring({ law: 1.5 }), "ring.law must be a 32-bit integer, not 1.5");
	assert.equal(vane.error({ name: "x".repeat(47) }).name.length, 47);
	for (const name of ["x".repeat(60), "x".repeat(48), "\u00fc".repeat(24)])
		wrongly(
			() => vane.error({ name }),
			`error.name must be a string of fewer than 48 bytes, not '${name}'`,
		);
	wrongly(() => vane.ring(3), "ring must be a record or an object of its fields, not 3");
	wrongly(
		() => vane.parts({ ring: null }),
		"parts.ring must be a record or an object of its fields, not null",
	);
	assert.throws(() => {
		ring.widht = 1;
	}, TypeError);
	wrongly(
		() => vane.ring_turned(vane.oil_default()),
		"ring_turned: ring has no field temperature_1",
	);
	wrongly(
		() => vane.ring_turned({ ring: { width: "1" } }),
		"ring_turned: ring.width must be a number, not '1'",
	);
	ring.width = "1";
	wrongly(() => vane.ring_turned(ring), "ring_turned: ring.width must be a number, not '1'");
});

test("records hold records, print, and become plain objects", () => {
	const parts = vane.parts({ vanes: 12, ring: { width: 0.025 } });
	assert.ok(parts.ring instanceof vane.ring);
	assert.equal(parts.ring.width, 0.025);
	assert.match(inspect(parts.ring), /^ring \{\n {2}large_radius: 0,[^]* width: 0\.025,/);
	assert.match(String(parts), /^parts \{\n {2}ring: ring \{[^]* vanes: 12,/);

	const object = parts.toJSON();
	assert.equal(Object.getPrototypeOf(object), Object.prototype);
	assert.equal(Object.getPrototypeOf(object.ring), Object.prototype);
	assert.deepEqual(vane.parts(object), parts);
	assert.deepEqual(JSON.parse(JSON.stringify(parts)), object);
});

test("copies with changes leave the first as it was", () => {
	const first = vane.parts({ vanes: 12, ring: { width: 0.025, law: 4 } });
	const second = first.with({ vanes: 10, ring: { law: 3 } });
	assert.deepEqual([second.vanes, second.ring.width, second.ring.law], [10, 0.025, 3]);
	assert.deepEqual([first.vanes, first.ring.law], [12, 4]);
	const third = vane.parts({ ...first, vanes: 8 });
	third.ring.law = 5;
	assert.deepEqual([third.vanes, third.ring.width, first.ring.law], [8, 0.025, 4]);
	wrongly(() => first.with({ vane: 1 }), "parts has no field vane");
});

test("defaults and texts", () => {
	const duty = vane.duty_default();
	assert.ok(duty instanceof vane.duty);
	assert.equal(duty.speed, 25);
	assert.equal(duty.outlet_pressure, 10e6);
	assert.deepEqual(vane.duty_default({}), duty);
	assert.equal(vane.status_name(vane.INVALID_ARGUMENT), "invalid argument");
	assert.equal(vane.status_name({ code: 1 }), "invalid argument");
	assert.match(vane.caution_text(vane.CAUTION_THIN_OIL), /\w/);
});

test("a procedure returns its one output", () => {
	const oil = vane.oil_from_grade({ grade: 46, viscosity_index: 100 });
	assert.ok(oil instanceof vane.oil);
	// ISO 3448: the grade is the viscosity at 40 degrees Celsius in mm2/s.
	near(vane.oil_at(oil, 313.15).kinematic_viscosity, 46e-6, 1e-9);
	const state = vane.oil_at({ oil: { ...oil }, temperature: 313.15 });
	assert.deepEqual(state, vane.oil_at(oil, 313.15));
	// The rise begins at 0 and ends at 1.
	assert.equal(vane.ring_law_at(vane.RING_CYCLOIDAL, 0).lift, 0);
	near(vane.ring_law_at(vane.RING_CYCLOIDAL, 0.5).lift, 0.5);
});

test("records come out with the records inside them", () => {
	const [least, mean, greatest] = [0.0254, 0.0254, 0.0254];
	const width = vane.width({ mean, uncertainty: 1e-7, least, greatest });
	const decision = vane.clearance_decide({
		ring: width.with({ mean: 0.025406 }),
		rotor: width,
		vane: { ...width, mean: 0.025380 },
		same_instrument: 1,
		limits: vane.width_limits_default(),
	});
	assert.ok(decision instanceof vane.decision);
	assert.ok(decision.ring_rotor instanceof vane.gap);
	near(decision.ring_rotor.total, 6e-6, 1e-9);
	near(decision.ring_vane.total, 26e-6, 1e-9);
	assert.equal(decision.ring_rotor_verdict, vane.VERDICT_CONFORMS);
	assert.equal(decision.ring_vane_verdict, vane.VERDICT_FAILS);
	assert.equal(decision.vane, vane.ACTION_MATCH);
});

test("an array of numbers brings its length along", () => {
	const instrument = { error_limit: 0, repeatability: 1e-6, expansion: 0 };
	const reading = [0.025412, 0.025411, 0.025413];
	const width = vane.clearance_width(reading, instrument);
	near(width.mean, 0.025412);
	near(width.uncertainty, 1e-6 / Math.sqrt(3), 1e-9);
	assert.equal(width.least, 0.025411);
	const typed = Float64Array.of(1, ...reading).subarray(1);
	assert.deepEqual(vane.clearance_width({ reading: typed, instrument }), width);

	wrongly(
		() => vane.clearance_width(0.025, instrument),
		"clearance_width: reading must be an array, not 0.025",
	);
	wrongly(
		() => vane.clearance_width([0.025, "x"], instrument),
		"clearance_width: reading[1] must be a number, not 'x'",
	);
	wrongly(
		() => vane.clearance_width({ reading, readings: 3, instrument }),
		"clearance_width: there is no parameter readings",
	);
	for (const none of [[], new Float64Array(0)])
		assert.throws(() => vane.clearance_width(none, instrument), {
			name: "VaneError",
			parameter: "readings",
			value: 0,
		});
	assert.throws(() => vane.clearance_width([0.025, -1], instrument), {
		parameter: "reading",
		index: 1,
		value: -1,
	});
});

test("an array of records", () => {
	// Readings on a straight line: V n - k dp.
	const [displacement, slope, speed] = [50e-6, 1e-12, 25];
	const reading = [2e6, 6e6, 10e6, 14e6].map((pressure) => ({
		speed,
		pressure,
		temperature: 323.15,
		flow: displacement * speed - slope * pressure,
	}));
	const derived = vane.stand_displacement(reading);
	assert.ok(derived instanceof vane.derived);
	near(derived.displacement, displacement, 1e-9);
	near(derived.slope, slope, 1e-9);
	assert.equal(derived.method, vane.DERIVED_INTERCEPT);
	assert.deepEqual(vane.stand_displacement({ reading: reading.map(vane.reading) }), derived);

	wrongly(
		() => vane.stand_displacement([reading[0], { flow: 1, presure: 2 }]),
		"stand_displacement: reading[1] has no field presure",
	);
	wrongly(
		() => vane.stand_displacement({ reading: vane.reading(reading[0]) }),
		/^stand_displacement: reading must be an array, not /,
	);
	wrongly(
		() => vane.stand_displacement([reading[0], 7]),
		"stand_displacement: reading[1] must be a record or an object of its fields, not 7",
	);
	assert.throws(() => vane.stand_displacement(reading.slice(0, 2)), {
		name: "VaneError",
		code: vane.NOT_IDENTIFIABLE,
		status: vane.status_name(vane.NOT_IDENTIFIABLE),
	});
});

const wholePump = () =>
	vane.parts_default().with({
		ring: { large_radius: 0.03, small_radius: 0.0268, width: 0.025412 },
		rotor_radius: 0.0262,
		rotor_width: 0.025393,
		slot_width: 2.03e-3,
		vane_width: 0.025398,
		vane_thickness: 2e-3,
		vane_height: 9e-3,
		tip_radius: 1.2e-3,
		plate_bore: 0.011,
		groove_inner: 0.015,
		groove_outer: 0.0185,
		inlet_open: 0.3,
		inlet_close: 1.27,
		outlet_open: 1.92,
		outlet_close: 2.86,
		notch: 0.07,
		shaft_radius: 0.0105,
		shaft_gap: 5e-5,
		shaft_length: 0.012,
		vanes: 12,
	});

test("an array of records comes back", () => {
	const [parts, oil, duty] = [wholePump(), vane.oil_from_grade(46, 100), vane.duty_default()];
	const duties = Array.from({ length: 1000 }, (_, i) =>
		duty.with({ outlet_pressure: 1e6 + 1e4 * i }),
	);
	const alone = duties.map((at) => vane.pump_run(parts, oil, at));
	assert.ok(alone[999].slip.total > 1.5 * alone[0].slip.total);
	for (const count of [0, 1, 2, 1000])
		for (let round = 0; round < 5; round++) {
			const map = vane.pump_map(parts, oil, duties.slice(0, count));
			assert.deepEqual(map, alone.slice(0, count));
		}
	const [only] = vane.pump_map({ parts, oil, duty: [{ ...duty }] });
	assert.ok(only instanceof vane.performance);
	// Of its own, not of what the next call writes to.
	const [first] = vane.pump_map(parts, oil, duties);
	vane.pump_map(parts, oil, duties.slice(1));
	assert.deepEqual(first, alone[0]);

	const bad = [...duties];
	bad[2] = duty.with({ speed: -1 });
	bad[7] = duty.with({ speed: NaN });
	assert.throws(() => vane.pump_map(parts, oil, bad), (error) => {
		assert.ok(error instanceof VaneError);
		assert.equal(error.code, vane.INVALID_ARGUMENT);
		assert.equal(error.status, "invalid argument");
		assert.match(error.text, /^duty\.speed must be .* -1 1\/s\.$/);
		assert.equal(error.message, `pump_map: ${error.text}`);
		assert.equal(error.parameter, "duty.speed");
		assert.equal(error.index, 2);
		assert.equal(error.value, -1);
		assert.equal(error.result.length, 1000);
		error.result.forEach((got, i) => {
			const flows = [got.outlet_flow, got.slip.total];
			if (i === 2 || i === 7)
				assert.deepEqual(flows, [NaN, NaN]);
			else
				assert.deepEqual(got, alone[i]);
		});
		return true;
	});
	assert.throws(() => vane.pump_map(vane.parts(), oil, duties), (error) => {
		assert.equal(error.index, null);
		assert.match(error.text, /^parts\./);
		assert.equal(error.result.length, 1000);
		assert.ok(error.result.every(({ outlet_flow: flow }) => Number.isNaN(flow)));
		return true;
	});
	const none = (error) => !("result" in error);
	assert.throws(() => vane.pump_run(vane.parts(), oil, duty), none);
});

test("a refusal always has words", () => {
	const bare = new VaneError("slot_flow", { code: vane.NO_MEMORY, text: "" });
	assert.equal(bare.message, "slot_flow: Working memory could not be had.");
	assert.equal(bare.text, "Working memory could not be had.");
	assert.equal(bare.status, "no memory");
});

test("several outputs come by name", () => {
	// The clearance lies on its limit, so it is within with a probability of one half.
	const limits = { value: 0, uncertainty: 1e-7, low: 0, high: 12.7e-6, coverage: 1.645 };
	const found = vane.measure_verdict(limits);
	assert.deepEqual(Object.keys(found), ["verdict", "probability"]);
	assert.equal(found.verdict, vane.VERDICT_NOT_PROVEN);
	near(found.probability, 0.5);

	const reading = [2e6, 5e6, 8e6].map((pressure) => ({
		speed: 25,
		pressure,
		temperature: 323.15,
		flow: 50e-6 * 25,
	}));
	const { out, correlation } = vane.stand_slip_fit(reading, vane.oil_from_grade(46, 100), 0);
	assert.ok(out instanceof vane.slip_fit);
	near(out.displacement, 50e-6);
	assert.equal(out.degrees_of_freedom, 2);
	assert.ok(correlation instanceof Float64Array);
	assert.equal(correlation.length, 16);
	near(correlation[0], 1);
	assert.ok(correlation.subarray(1).every((x) => x === 0));
});

test("help prints what the manifest says", (t) => {
	const printed = (...what) => {
		const log = t.mock.method(console, "log", () => {});
		vane.help(...what);
		log.mock.restore();
		return log.mock.calls.map((call) => call.arguments.join(" ")).join("\n");
	};
	const shown = printed("slot_flow");
	for (const words of [
		/^slot_flow\(width, gap, length, dp, viscosity, wall_speed\)$/m,
		/^ {4}q = w h\^3 dp/m,
		/^gap +Distance between the walls \[m; >= 0\]$/m,
		/^Returns +Volume flow, positive downstream \[m3\/s\]$/m,
		/^Valid +Laminar/m,
		/^Source +White/m,
	])
		assert.match(shown, words);
	assert.equal(printed(vane.slot_flow), shown);
	assert.equal(vane.help, help);
	assert.match(printed("stand_slip_fit"), /^stand_slip_fit\(reading, oil, terms\)$/m);
	assert.match(printed("ring"), /^width +Axial width \[m; > 0\]$/m);
	const topics = printed();
	for (const item of [...manifest.topics, ...offered.map((f) => ({ name: plain(f) }))])
		assert.ok(topics.includes(item.name), item.name);
	for (const item of [...offered, ...manifest.records])
		assert.ok(printed(plain(item)).startsWith(plain(item)), item.name);
	wrongly(() => vane.help("slot_flo"), "help: there is nothing called slot_flo");

	const flow = (name) => printed(name).replace(/\s+/g, " ");
	assert.ok(flow("slot_flow").includes("see slot_reynolds() and slot_"));
	assert.ok(flow("stand_displacement").includes("CAUTION_CURVATURE"));
	assert.ok(flow("pump_map").includes("which error.index numbers"));
	assert.ok(flow("pump_map").includes("error.index is null"));
	assert.match(printed("ring_law"), /^RING_CYCLOIDAL +3: /m);
	for (const item of [...offered, ...manifest.records, ...manifest.enums])
		assert.doesNotMatch(printed(plain(item)), /\bvane_\w+\(|VANE_|\benum\s+vane_|->|NULL/);
});
