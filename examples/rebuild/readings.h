/* The readings of a test stand, in SI once read. */
#ifndef READINGS_H
#define READINGS_H

#include "complain.h"

#include "vane/stand.h"

enum { READINGS_LIMIT = 500 };

struct readings {
	const char *path;
	vane_reading item[READINGS_LIMIT];
	double label[READINGS_LIMIT];
	int64_t count;
	int has_torque;
};

/* 0, or -1 with a complaint that names the file and the line. */
int readings_read(const char *path, struct readings *readings, struct complaint *complaint);

#endif
