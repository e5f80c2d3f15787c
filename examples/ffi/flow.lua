-- Flow of a vane pump over pressure, from its measured clearances, in LuaJIT.
--
-- The pump is invented: no such part was ever made or measured.

local vane = require "vane"

local function width(readings_mm, instrument)
	return vane.clearance_width(vane.units_m_from_mm(readings_mm), instrument)
end

local function measured_parts(ring, rotor, blade)
	local rad = vane.units_rad_from_deg
	return vane.parts_default():with{
		ring = vane.ring_default():with{
			large_radius = 0.0300,
			small_radius = 0.0268,
			width = ring.mean,
		},
		rotor_radius = 0.0262,
		rotor_width = rotor.mean,
		slot_width = 2.030e-3,
		vane_width = blade.mean,
		vane_thickness = 2.000e-3,
		vane_height = 9.0e-3,
		tip_radius = 1.2e-3,
		plate_bore = 0.0110,
		groove_inner = 0.0150,
		groove_outer = 0.0185,
		inlet_open = rad(17),
		inlet_close = rad(73),
		outlet_open = rad(110),
		outlet_close = rad(164),
		notch = rad(4),
		shaft_radius = 0.0105,
		shaft_gap = 0.05e-3,
		shaft_length = 0.012,
		vanes = 12,
	}
end

local function print_flow(parts)
	local litres_per_minute = vane.units_l_per_min_from_m3_per_s
	local oil = vane.oil_from_grade(46, 100)
	local duty = vane.duty_default()
	duty.temperature = vane.units_k_from_degc(50)
	duty.speed = vane.units_rev_per_s_from_rev_per_min(1500)

	print("  bar    L/min      slip   eta_v")
	for megapascal = 2, 20, 2 do
		duty.outlet_pressure = vane.units_pa_from_mpa(megapascal)
		local pump = vane.pump_run(parts, oil, duty)
		print(("%5.0f %8.4f %9.5f %7.5f"):format(
			vane.units_bar_from_pa(duty.outlet_pressure),
			litres_per_minute(pump.outlet_flow),
			litres_per_minute(pump.slip.total),
			pump.volumetric_efficiency
		))
	end
end

local function print_three_gaps()
	local flow = vane.slot_flow{
		width = 0.020,
		gap = {10e-6, 20e-6, 40e-6},
		length = 0.005,
		dp = 15e6,
		viscosity = 8.6e-3,
		wall_speed = 0,
	}
	flow = vane.units_l_per_min_from_m3_per_s(flow)
	print(("three gaps: %.6f %.6f %.6f L/min"):format(unpack(flow)))
end

local instrument = vane.instrument{
	error_limit = 1e-6,
	repeatability = 0.5e-6,
	resolution = 1e-6,
	temperature_range = 1,
	expansion = 11.5e-6,
}
local ring = width({25.412, 25.411, 25.413}, instrument)
local rotor = width({25.393, 25.394, 25.392}, instrument)
local blade = width({25.398, 25.397, 25.398}, instrument)
local side = vane.clearance_between{outer = ring, inner = rotor, same_instrument = 1}
print(("side clearance %.1f um, standard uncertainty %.2f um"):format(
	vane.units_um_from_m(side.total),
	vane.units_um_from_m(side.uncertainty)
))

print_flow(measured_parts(ring, rotor, blade))
print_three_gaps()
local accepted, refusal = pcall(vane.slot_flow, 0.020, -1, 0.005, 15e6, 8.6e-3, 0)
print("refused: " .. (accepted and "no" or refusal.text))
