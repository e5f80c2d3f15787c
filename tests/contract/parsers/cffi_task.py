"""task.c by cffi's ABI mode: python3 cffi_task.py vane.cdef.h libvane.so"""

import struct
import sys

import cffi

ffi = cffi.FFI()
with open(sys.argv[1], encoding="utf-8") as declarations:
    ffi.cdef(declarations.read())
vane = ffi.dlopen(sys.argv[2])


def bits(x):
    return struct.pack(">d", x).hex()


def text(array):
    return ffi.string(array).decode()


error = ffi.new("vane_error *")
flow = vane.vane_slot_flow(0.024, 20e-6, 0.008, 15e6, 0.028, 1.5, error)
print("flow", bits(flow), int(error.code == vane.VANE_OK))

refused = vane.vane_slot_flow(0.024, -1, 0.008, 15e6, 0.028, 1.5, error)
invalid = int(error.code == vane.VANE_INVALID_ARGUMENT)
print("refused", int(refused != refused), invalid, text(error.name) + ": " + text(error.text))

oil = ffi.new("vane_oil *")
state = ffi.new("vane_oil_state *")
status = vane.vane_oil_from_grade(46, 100, oil, error)
status += vane.vane_oil_at(oil, 323.15, state, error)
print("oil", status, bits(state.viscosity), bits(state.viscosity_temperature))

print("version", text(vane.vane_version()))
