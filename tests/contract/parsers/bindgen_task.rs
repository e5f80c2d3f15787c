// task.c by what bindgen makes of <vane.h>; BINDINGS names that file.
#![allow(non_camel_case_types, non_upper_case_globals, non_snake_case, dead_code)]
#![allow(deref_nullptr)]

include!(env!("BINDINGS"));

use std::ffi::CStr;
use std::os::raw::c_char;

fn text(pointer: *const c_char) -> String {
    unsafe { CStr::from_ptr(pointer) }.to_string_lossy().into_owned()
}

fn main() {
    unsafe {
        let mut error: vane_error = std::mem::zeroed();
        let flow = vane_slot_flow(0.024, 20e-6, 0.008, 15e6, 0.028, 1.5, &mut error);
        let ok = error.code == vane_status_VANE_OK as i32;
        println!("flow {:016x} {}", flow.to_bits(), ok as i32);

        let refused = vane_slot_flow(0.024, -1.0, 0.008, 15e6, 0.028, 1.5, &mut error);
        println!(
            "refused {} {} {}: {}",
            refused.is_nan() as i32,
            (error.code == vane_status_VANE_INVALID_ARGUMENT as i32) as i32,
            text(error.name.as_ptr()),
            text(error.text.as_ptr())
        );

        let mut oil: vane_oil = std::mem::zeroed();
        let mut state: vane_oil_state = std::mem::zeroed();
        let mut status = vane_oil_from_grade(46.0, 100.0, &mut oil, &mut error);
        status += vane_oil_at(&oil, 323.15, &mut state, &mut error);
        println!(
            "oil {} {:016x} {:016x}",
            status,
            state.viscosity.to_bits(),
            state.viscosity_temperature.to_bits()
        );

        println!("version {}", text(vane_version()));
    }
}
