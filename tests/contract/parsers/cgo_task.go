// task.c by cgo.
package main

// #include <vane.h>
import "C"

import (
	"fmt"
	"math"
)

func bits(x C.double) uint64 {
	return math.Float64bits(float64(x))
}

func flag(condition bool) int {
	if condition {
		return 1
	}
	return 0
}

func main() {
	var fault C.vane_error
	flow := C.vane_slot_flow(0.024, 20e-6, 0.008, 15e6, 0.028, 1.5, &fault)
	fmt.Printf("flow %016x %d\n", bits(flow), flag(fault.code == C.VANE_OK))

	refused := C.vane_slot_flow(0.024, -1, 0.008, 15e6, 0.028, 1.5, &fault)
	fmt.Printf("refused %d %d %s: %s\n", flag(refused != refused),
		flag(fault.code == C.VANE_INVALID_ARGUMENT), C.GoString(&fault.name[0]),
		C.GoString(&fault.text[0]))

	var oil C.vane_oil
	var state C.vane_oil_state
	status := C.vane_oil_from_grade(46, 100, &oil, &fault)
	status += C.vane_oil_at(&oil, 323.15, &state, &fault)
	fmt.Printf("oil %d %016x %016x\n", status, bits(state.viscosity),
		bits(state.viscosity_temperature))

	fmt.Printf("version %s\n", C.GoString(C.vane_version()))
}
