// Flow of a vane pump over pressure, from its measured clearances, in C++.
// The pump is invented: no such part was ever made or measured.

#include <vane.h>

#include <array>
#include <cstdio>
#include <stdexcept>
#include <vector>

// Calls a formula or a procedure; what it refuses is thrown in its own words.
template <typename Function, typename... Arguments>
auto call(Function function, Arguments... arguments)
{
	vane_error error;
	auto result = function(arguments..., &error);
	if (error.code != VANE_OK)
		throw std::runtime_error(error.text);
	return result;
}

static vane_width width(const std::vector<double> &readings_mm, const vane_instrument &instrument)
{
	std::vector<double> readings;
	for (double reading : readings_mm)
		readings.push_back(call(vane_units_m_from_mm, reading));
	vane_width out;
	call(vane_clearance_width, readings.data(), static_cast<int64_t>(readings.size()),
	     &instrument, &out);
	return out;
}

static vane_parts measured_parts(const vane_width &ring, const vane_width &rotor,
				 const vane_width &blade)
{
	auto rad = [](double degrees) { return call(vane_units_rad_from_deg, degrees); };
	vane_parts parts;
	vane_parts_default(&parts);
	vane_ring_default(&parts.ring);
	parts.ring.large_radius = 0.0300;
	parts.ring.small_radius = 0.0268;
	parts.ring.width = ring.mean;
	parts.rotor_radius = 0.0262;
	parts.rotor_width = rotor.mean;
	parts.slot_width = 2.030e-3;
	parts.vane_width = blade.mean;
	parts.vane_thickness = 2.000e-3;
	parts.vane_height = 9.0e-3;
	parts.tip_radius = 1.2e-3;
	parts.plate_bore = 0.0110;
	parts.groove_inner = 0.0150;
	parts.groove_outer = 0.0185;
	parts.inlet_open = rad(17);
	parts.inlet_close = rad(73);
	parts.outlet_open = rad(110);
	parts.outlet_close = rad(164);
	parts.notch = rad(4);
	parts.shaft_radius = 0.0105;
	parts.shaft_gap = 0.05e-3;
	parts.shaft_length = 0.012;
	parts.vanes = 12;
	return parts;
}

static double litres_per_minute(double flow)
{
	return call(vane_units_l_per_min_from_m3_per_s, flow);
}

static void print_flow(const vane_parts &parts)
{
	vane_oil oil;
	call(vane_oil_from_grade, 46.0, 100.0, &oil);
	vane_duty duty;
	vane_duty_default(&duty);
	duty.temperature = call(vane_units_k_from_degc, 50.0);
	duty.speed = call(vane_units_rev_per_s_from_rev_per_min, 1500.0);

	std::printf("  bar    L/min      slip   eta_v\n");
	for (int megapascal = 2; megapascal <= 20; megapascal += 2) {
		duty.outlet_pressure = call(vane_units_pa_from_mpa, double(megapascal));
		vane_performance pump;
		call(vane_pump_run, &parts, &oil, &duty, &pump);
		std::printf("%5.0f %8.4f %9.5f %7.5f\n",
			    call(vane_units_bar_from_pa, duty.outlet_pressure),
			    litres_per_minute(pump.outlet_flow),
			    litres_per_minute(pump.slip.total), pump.volumetric_efficiency);
	}
}

// Through the array door; a value that stands for every element has the stride 0.
static void print_three_gaps()
{
	const double width = 0.020, length = 0.005, dp = 15e6, viscosity = 8.6e-3, wall_speed = 0;
	const std::array gaps{10e-6, 20e-6, 40e-6};
	const std::array arguments{&width, gaps.data(), &length, &dp, &viscosity, &wall_speed};
	const std::array<int64_t, 6> strides{0, 1, 0, 0, 0, 0};
	std::array<double, 3> flow;
	call(vane_array_run, "vane_slot_flow", int64_t(gaps.size()), arguments.data(),
	     strides.data(), flow.data());
	std::printf("three gaps: %.6f %.6f %.6f L/min\n", litres_per_minute(flow[0]),
		    litres_per_minute(flow[1]), litres_per_minute(flow[2]));
}

int main()
{
	const vane_instrument instrument{1e-6, 0.5e-6, 1e-6, 1, 11.5e-6};
	const vane_width ring = width({25.412, 25.411, 25.413}, instrument);
	const vane_width rotor = width({25.393, 25.394, 25.392}, instrument);
	const vane_width blade = width({25.398, 25.397, 25.398}, instrument);
	vane_gap side;
	call(vane_clearance_between, &ring, &rotor, 1, &side);
	std::printf("side clearance %.1f um, standard uncertainty %.2f um\n",
		    call(vane_units_um_from_m, side.total),
		    call(vane_units_um_from_m, side.uncertainty));

	print_flow(measured_parts(ring, rotor, blade));
	print_three_gaps();
	try {
		call(vane_slot_flow, 0.020, -1.0, 0.005, 15e6, 8.6e-3, 0.0);
	} catch (const std::runtime_error &refusal) {
		std::printf("refused: %s\n", refusal.what());
	}
}
