/* What the files of the topic thread share. */
#ifndef VANE_LIB_THREAD_H
#define VANE_LIB_THREAD_H

#include "vane/error.h"

#include <stdbool.h>

/* Pitch, pitch diameter and thread friction of a screw that can turn. */
bool vn_thread_is_screw(double pitch, double pitch_diameter, double thread_friction,
			vane_error *error);

/* Pitch, diameters and frictions of a bolt that a wrench turns. */
bool vn_thread_is_turned(double pitch, double pitch_diameter, double thread_friction,
			 double bearing_friction, double bearing_diameter, vane_error *error);

/* Torque over preload: pitch, thread and bearing. */
double vn_thread_arm(double pitch, double pitch_diameter, double thread_friction,
		     double bearing_friction, double bearing_diameter);

/* tan(phi + rho'): tangential over axial force at the pitch diameter. */
double vn_thread_slope(double pitch, double pitch_diameter, double thread_friction);

#endif
