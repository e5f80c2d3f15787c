/*
 * Flow of a vane pump over pressure, from its measured clearances, in JavaScript.
 *
 * The pump is invented: no such part was ever made or measured.
 */
import vane, { VaneError } from "libvane";

const litresPerMinute = vane.units_l_per_min_from_m3_per_s;

function width(readingsMm, instrument) {
	return vane.clearance_width(vane.units_m_from_mm(readingsMm), instrument);
}

function measuredParts(ring, rotor, blade) {
	const rad = vane.units_rad_from_deg;
	return vane.parts_default().with({
		ring: { large_radius: 0.0300, small_radius: 0.0268, width: ring.mean },
		rotor_radius: 0.0262,
		rotor_width: rotor.mean,
		slot_width: 2.030e-3,
		vane_width: blade.mean,
		vane_thickness: 2.000e-3,
		vane_height: 9.0e-3,
		tip_radius: 1.2e-3,
		plate_bore: 0.0110,
		groove_inner: 0.0150,
		groove_outer: 0.0185,
		inlet_open: rad(17),
		inlet_close: rad(73),
		outlet_open: rad(110),
		outlet_close: rad(164),
		notch: rad(4),
		shaft_radius: 0.0105,
		shaft_gap: 0.05e-3,
		shaft_length: 0.012,
		vanes: 12,
	});
}

function printFlow(parts) {
	const oil = vane.oil_from_grade(46, 100);
	const duty = vane.duty_default();
	duty.temperature = vane.units_k_from_degc(50);
	duty.speed = vane.units_rev_per_s_from_rev_per_min(1500);

	console.log("  bar    L/min      slip   eta_v");
	for (let megapascal = 2; megapascal <= 20; megapascal += 2) {
		duty.outlet_pressure = vane.units_pa_from_mpa(megapascal);
		const pump = vane.pump_run(parts, oil, duty);
		console.log(
			vane.units_bar_from_pa(duty.outlet_pressure).toFixed(0).padStart(5),
			litresPerMinute(pump.outlet_flow).toFixed(4).padStart(8),
			litresPerMinute(pump.slip.total).toFixed(5).padStart(9),
			pump.volumetric_efficiency.toFixed(5).padStart(7),
		);
	}
}

function printThreeGaps() {
	const flow = vane.slot_flow({
		width: 0.020,
		gap: [10e-6, 20e-6, 40e-6],
		length: 0.005,
		dp: 15e6,
		viscosity: 8.6e-3,
		wall_speed: 0,
	});
	const shown = litresPerMinute(flow).map((q) => q.toFixed(6));
	console.log("three gaps:", ...shown, "L/min");
}

const instrument = vane.instrument({
	error_limit: 1e-6,
	repeatability: 0.5e-6,
	resolution: 1e-6,
	temperature_range: 1,
	expansion: 11.5e-6,
});
const ring = width([25.412, 25.411, 25.413], instrument);
const rotor = width([25.393, 25.394, 25.392], instrument);
const blade = width([25.398, 25.397, 25.398], instrument);
const side = vane.clearance_between(ring, rotor, 1);
const total = vane.units_um_from_m(side.total).toFixed(1);
const uncertainty = vane.units_um_from_m(side.uncertainty).toFixed(2);
console.log(`side clearance ${total} um, standard uncertainty ${uncertainty} um`);

printFlow(measuredParts(ring, rotor, blade));
printThreeGaps();
try {
	vane.slot_flow({
		width: 0.020,
		gap: -1,
		length: 0.005,
		dp: 15e6,
		viscosity: 8.6e-3,
		wall_speed: 0,
	});
} catch (refusal) {
	if (!(refusal instanceof VaneError))
		throw refusal;
	console.log(`refused: ${refusal.text}`);
}
