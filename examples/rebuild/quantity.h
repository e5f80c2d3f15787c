/* Units as a job file or the head of a column spells them. */
#ifndef QUANTITY_H
#define QUANTITY_H

#include <stddef.h>

enum quantity {
	NO_QUANTITY,
	LENGTH,
	ANGLE,
	PRESSURE,
	SPEED,
	TEMPERATURE,
	TEMPERATURE_DIFFERENCE,
	FLOW,
	TORQUE,
	FORCE,
	FORCE_PER_LENGTH,
	STIFFNESS,
	EXPANSION,
	PITCH
};

/* 0 and the value in SI, or -1 if the quantity has no such unit. */
int quantity_convert(enum quantity quantity, const char *unit, double value, double *si);

/* The units that a quantity takes, separated by commas. */
void quantity_units(enum quantity quantity, char *text, size_t size);

#endif
