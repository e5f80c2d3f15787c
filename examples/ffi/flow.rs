//! Flow of a vane pump over pressure, from its measured clearances, in Rust.
//! The pump is invented: no such part was ever made or measured.

use ffi::*;
use std::ffi::{CStr, CString};

/// What bindgen made of <vane.h>; rust.sh says where it lies.
#[allow(dead_code, non_camel_case_types, non_snake_case, non_upper_case_globals)]
mod ffi {
    include!(env!("VANE_BINDINGS"));
}

type Outcome<T> = Result<T, String>;

/// Calls a formula or a procedure; what it refuses is the error, in its own words.
fn call<T>(function: impl FnOnce(&mut vane_error) -> T) -> Outcome<T> {
    let mut error = vane_error::default();
    let result = function(&mut error);
    if error.code as u32 == VANE_OK as u32 {
        return Ok(result);
    }
    let text = unsafe { CStr::from_ptr(error.text.as_ptr()) };
    Err(text.to_string_lossy().into_owned())
}

/// The record that a procedure or a default fills.
fn filled<T: Default>(function: impl FnOnce(&mut T, &mut vane_error)) -> Outcome<T> {
    let mut out = T::default();
    call(|error| function(&mut out, error))?;
    Ok(out)
}

type Conversion = unsafe extern "C" fn(f64, *mut vane_error) -> f64;

fn convert(conversion: Conversion, value: f64) -> Outcome<f64> {
    call(|error| unsafe { conversion(value, error) })
}

fn width(readings_mm: &[f64], instrument: &vane_instrument) -> Outcome<vane_width> {
    let readings = readings_mm
        .iter()
        .map(|&reading| convert(vane_units_m_from_mm, reading))
        .collect::<Outcome<Vec<f64>>>()?;
    let count = readings.len() as i64;
    filled(|out, error| unsafe {
        vane_clearance_width(readings.as_ptr(), count, instrument, out, error);
    })
}

fn measured_parts(
    ring: &vane_width,
    rotor: &vane_width,
    blade: &vane_width,
) -> Outcome<vane_parts> {
    let rad = |degrees| convert(vane_units_rad_from_deg, degrees);
    let ring_default = filled(|ring, _| unsafe { vane_ring_default(ring) })?;
    let parts_default = filled(|parts, _| unsafe { vane_parts_default(parts) })?;
    Ok(vane_parts {
        ring: vane_ring {
            large_radius: 0.0300,
            small_radius: 0.0268,
            width: ring.mean,
            ..ring_default
        },
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
        inlet_open: rad(17.0)?,
        inlet_close: rad(73.0)?,
        outlet_open: rad(110.0)?,
        outlet_close: rad(164.0)?,
        notch: rad(4.0)?,
        shaft_radius: 0.0105,
        shaft_gap: 0.05e-3,
        shaft_length: 0.012,
        vanes: 12,
        ..parts_default
    })
}

fn litres_per_minute(flow: f64) -> Outcome<f64> {
    convert(vane_units_l_per_min_from_m3_per_s, flow)
}

fn print_flow(parts: &vane_parts) -> Outcome<()> {
    let oil = filled(|oil, error| unsafe {
        vane_oil_from_grade(46.0, 100.0, oil, error);
    })?;
    let mut duty: vane_duty = filled(|duty, _| unsafe { vane_duty_default(duty) })?;
    duty.temperature = convert(vane_units_k_from_degc, 50.0)?;
    duty.speed = convert(vane_units_rev_per_s_from_rev_per_min, 1500.0)?;

    println!("  bar    L/min      slip   eta_v");
    for megapascal in (2..=20).step_by(2) {
        duty.outlet_pressure = convert(vane_units_pa_from_mpa, f64::from(megapascal))?;
        let pump: vane_performance = filled(|out, error| unsafe {
            vane_pump_run(parts, &oil, &duty, out, error);
        })?;
        println!(
            "{:5.0} {:8.4} {:9.5} {:7.5}",
            convert(vane_units_bar_from_pa, duty.outlet_pressure)?,
            litres_per_minute(pump.outlet_flow)?,
            litres_per_minute(pump.slip.total)?,
            pump.volumetric_efficiency
        );
    }
    Ok(())
}

/// Through the array door; a value that stands for every element has the stride 0.
fn print_three_gaps() -> Outcome<()> {
    let (width, length, dp, viscosity, wall_speed) = (0.020, 0.005, 15e6, 8.6e-3, 0.0);
    let gaps = [10e-6, 20e-6, 40e-6];
    let arguments: [*const f64; 6] =
        [&width, gaps.as_ptr(), &length, &dp, &viscosity, &wall_speed];
    let strides = [0, 1, 0, 0, 0, 0];
    let formula = CString::new("vane_slot_flow").unwrap();
    let flow: [f64; 3] = filled(|out: &mut [f64; 3], error| unsafe {
        let n = out.len() as i64;
        let (arguments, strides) = (arguments.as_ptr(), strides.as_ptr());
        vane_array_run(formula.as_ptr(), n, arguments, strides, out.as_mut_ptr(), error);
    })?;
    println!(
        "three gaps: {:.6} {:.6} {:.6} L/min",
        litres_per_minute(flow[0])?,
        litres_per_minute(flow[1])?,
        litres_per_minute(flow[2])?
    );
    Ok(())
}

fn main() -> Outcome<()> {
    let instrument = vane_instrument {
        error_limit: 1e-6,
        repeatability: 0.5e-6,
        resolution: 1e-6,
        temperature_range: 1.0,
        expansion: 11.5e-6,
    };
    let ring = width(&[25.412, 25.411, 25.413], &instrument)?;
    let rotor = width(&[25.393, 25.394, 25.392], &instrument)?;
    let blade = width(&[25.398, 25.397, 25.398], &instrument)?;
    let side: vane_gap = filled(|out, error| unsafe {
        vane_clearance_between(&ring, &rotor, 1, out, error);
    })?;
    println!(
        "side clearance {:.1} um, standard uncertainty {:.2} um",
        convert(vane_units_um_from_m, side.total)?,
        convert(vane_units_um_from_m, side.uncertainty)?
    );

    print_flow(&measured_parts(&ring, &rotor, &blade)?)?;
    print_three_gaps()?;
    let refusal = call(|error| unsafe {
        vane_slot_flow(0.020, -1.0, 0.005, 15e6, 8.6e-3, 0.0, error)
    });
    if let Err(text) = refusal {
        println!("refused: {}", text);
    }
    Ok(())
}
