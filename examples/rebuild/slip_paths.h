/* The paths of slip in the words of the sheet. */
#ifndef SLIP_PATHS_H
#define SLIP_PATHS_H

#include "vane/slip.h"

enum { SLIP_PATHS = 9 };

struct slip_path {
	const char *name;
	double flow;
};

void slip_paths(const vane_slip *slip, struct slip_path path[SLIP_PATHS]);

#endif
