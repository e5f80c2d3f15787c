#include "scaled.h"

double vane_scaled_metre = 1, vane_scaled_kilogram = 1, vane_scaled_second = 1,
       vane_scaled_kelvin = 1;
