/* The job file: measured parts, limits, oil, duty and cover, in SI once read. */
#ifndef JOB_H
#define JOB_H

#include "complain.h"

#include "vane/clearance.h"
#include "vane/joint.h"
#include "vane/pump.h"
#include "vane/thread.h"

enum { JOB_TEXT = 400, JOB_READINGS = 64, JOB_VANES = 64 };

struct job_width {
	double reading[JOB_READINGS];
	int64_t readings;
};

struct job {
	const char *path;
	char site[JOB_TEXT];
	char pump[JOB_TEXT];
	char date[JOB_TEXT];
	char note[JOB_TEXT];
	char oil_note[JOB_TEXT];
	char cover_note[JOB_TEXT];
	char limits_source[JOB_TEXT];
	char instrument_name[JOB_TEXT];
	vane_instrument instrument;
	struct job_width ring_width;
	struct job_width rotor_width;
	struct job_width vane_width[JOB_VANES];
	vane_parts parts;
	double ring_rotor_limit;
	double ring_vane_limit;
	double ring_least;
	double rotor_least;
	double vane_least;
	double oil_grade;
	double viscosity_index;
	vane_duty duty;
	vane_joint joint;
	int32_t vane_sets;
	int32_t same_instrument;
	int32_t thread;
	int32_t bolt_grade;
};

enum { JOB_METRIC = 1, JOB_UNIFIED = 2 };

/* 0, or -1 with a complaint that names the file and the field. */
int job_read(const char *path, struct job *job, struct complaint *complaint);

#endif
