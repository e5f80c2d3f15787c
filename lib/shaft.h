/* What the pump needs of the shaft besides its torque. */
#ifndef VANE_LIB_SHAFT_H
#define VANE_LIB_SHAFT_H

#include "vane/shaft.h"

/* vane_shaft_run(), and the cautions of the vanes whose friction it has summed. */
int32_t vn_shaft_run(const vane_parts *parts, double dp, double speed, double viscosity,
		     vane_torque *out, int32_t *caution, vane_error *error);

#endif
