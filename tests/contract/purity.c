/* A call leaves nothing behind but its results: nothing on standard output or
 * standard error, the same bits whether one thread asks or eight at once, and
 * errno as it was; the C library's own mathematics alone may leave ERANGE there,
 * where a number overflows or underflows on the way. Calls of every kind, good
 * and bad. */
#define _POSIX_C_SOURCE 200809L

#include "../worked_pump.h"

#include <vane.h>

#include <errno.h>
#include <math.h>
#include <pthread.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

enum { THREADS = 8, ROUNDS = 10, TAPE = 1 << 17, UNTOUCHED = 12345 };

/* Everything that the calls gave, in order. */
typedef struct tape {
	size_t length;
	int calls, failures;     /* A failure is a call that gave an error. */
	int ranges;              /* Calls that left ERANGE in errno as they may. */
	const char *broke_errno; /* The first call that left there what it may not; */
	int errno_then;          /* and what that was. */
	char bytes[TAPE];
} tape;

static void put(tape *t, const void *from, size_t size)
{
	if (size > TAPE - t->length)
		abort();
	if (size == 0)
		return;
	memcpy(t->bytes + t->length, from, size);
	t->length += size;
}

static void look(tape *t, bool computes, const char *call)
{
	if (errno == ERANGE && computes) {
		t->ranges++;
	} else if (errno != UNTOUCHED && !t->broke_errno) {
		t->broke_errno = call;
		t->errno_then = errno;
	}
	t->calls++;
	errno = UNTOUCHED;
}

static void put_text(tape *t, const char *text, const char *call)
{
	look(t, false, call);
	put(t, text, strlen(text));
}

static void put_record(tape *t, const void *record, size_t size, const char *call)
{
	look(t, false, call);
	put(t, record, size);
}

static void put_error(tape *t, const vane_error *e)
{
	put(t, &e->value, sizeof e->value);
	put(t, &e->index, sizeof e->index);
	put(t, &e->code, sizeof e->code);
	put(t, e->name, strlen(e->name));
	put(t, e->text, strlen(e->text));
	t->failures += e->code != VANE_OK;
}

static void put_formula(tape *t, double got, const vane_error *e, const char *call)
{
	look(t, e->code != VANE_INVALID_ARGUMENT, call);
	put(t, &got, sizeof got);
	put_error(t, e);
}

static void put_procedure(tape *t, int32_t status, const void *out, size_t size,
			  const vane_error *e, const char *call)
{
	look(t, e->code != VANE_INVALID_ARGUMENT, call);
	put(t, &status, sizeof status);
	put(t, out, size);
	put_error(t, e);
}

/* A record ends with its last field: what pads it is nobody's. */
#define UPTO(type, field) (offsetof(type, field) + sizeof((type *)0)->field)

#define TEXT(call) put_text(t, call, #call)
#define FORMULA(call) put_formula(t, call, &e, #call)
#define PROCEDURE(call, type, last) put_procedure(t, call, &out, UPTO(type, last), &e, #call)
#define DEFAULT(call, type, last) (call, put_record(t, &out, UPTO(type, last), #call))

static void texts(tape *t)
{
	static const int32_t codes[] = {INT32_MIN, -1, 0, 1, 4, 5, 6, 64, 2048, INT32_MAX};
	for (size_t i = 0; i < sizeof codes / sizeof *codes; i++) {
		TEXT(vane_status_name(codes[i]));
		TEXT(vane_status_text(codes[i]));
		TEXT(vane_caution_text(codes[i]));
	}
	TEXT(vane_version());
}

static void formulas(tape *t)
{
	vane_error e;
	FORMULA(vane_slot_flow(0.024, 20e-6, 0.008, 15e6, 0.028, 1.5, &e));
	FORMULA(vane_slot_flow(0.024, -20e-6, 0.008, 15e6, 0.028, 1.5, &e));
	FORMULA(vane_slot_flow(NAN, 20e-6, 0.008, 15e6, 0.028, 1.5, &e));
	FORMULA(vane_slot_flow(1e300, 1e300, 1e-300, 15e6, 0.028, 1.5, &e));
	FORMULA(vane_units_n_m_from_lbf_ft(17, &e));
	FORMULA(vane_units_k_from_degc(-300, &e));
	FORMULA(vane_units_cm3_from_m3(1e308, &e));
	FORMULA(vane_oil_walther(323.15, 313.15, 46e-6, 373.15, 6.8e-6, &e));
	FORMULA(vane_oil_walther(1e-3, 313.15, 46e-6, 373.15, 6.8e-6, &e));
	FORMULA(vane_oil_walther(1e6, 313.15, 46e-6, 373.15, 6.8e-6, &e));
	FORMULA(vane_oil_walther(INFINITY, 313.15, 46e-6, 373.15, 6.8e-6, &e));
	FORMULA(vane_oil_barus(0.04, 2e-8, 15e6, &e));
	FORMULA(vane_oil_barus(0.04, 1, 1e6, &e));
	FORMULA(vane_oil_barus(1e-300, 1, -1e6, &e));
	FORMULA(vane_oil_barus_factor(2e-8, 0, 15e6, &e));
	FORMULA(vane_oil_barus_factor(1, 0, 1e300, &e));
	FORMULA(vane_oil_index(46e-6, 6.8e-6, &e));
	FORMULA(vane_oil_index(1e-9, 1e-9, &e));
	FORMULA(vane_oil_viscosity_100(46e-6, 100, &e));
	FORMULA(vane_oil_viscosity_100(46e-6, -1e9, &e));
	FORMULA(vane_displacement_eccentric(0.033, 0.003, 0.024, 12, &e));
	FORMULA(vane_displacement_eccentric(0.033, 0.05, 0.024, 12, &e));
	FORMULA(vane_shaft_motor_iec(13000, 1.15, &e));
	FORMULA(vane_shaft_motor_nema(1e12, 1.15, &e));
	FORMULA(vane_thread_preload(80, 1.5e-3, 9e-3, 0.12, 0.12, 0.013, &e));
	FORMULA(vane_thread_von_mises(1e300, 1e300, &e));
	FORMULA(vane_measure_probability(8e-6, 1e-6, 0, 12.7e-6, &e));
	FORMULA(vane_measure_probability(1, 1e-9, 0, 12.7e-6, &e));
	FORMULA(vane_measure_probability(8e-6, 1e-6, 1, 0, &e));
	FORMULA(vane_measure_coverage(0.95, 7.5, &e));
	FORMULA(vane_measure_coverage(0.95, 1e30, &e));
	FORMULA(vane_measure_coverage(0.95, 0, &e));
}

static void arrays(tape *t)
{
	static const double gap[] = {1e-5, 2e-5, -1, NAN, 3e-5},
			    other[] = {0.024, 0.008, 1e6, 0.03, 0};
	const double *const argument[] = {&other[0], gap,       &other[1],
					  &other[2], &other[3], &other[4]};
	const int64_t stride[] = {0, 1, 0, 0, 0, 0};
	vane_error e;
	struct {
		double value[5];
	} out;
	memset(&out, 0, sizeof out);
	put_procedure(t, vane_array_run("vane_slot_flow", 2, argument, stride, out.value, &e), &out,
		      sizeof out, &e, "vane_array_run, all good");
	put_procedure(t, vane_array_run("vane_slot_flow", 5, argument, stride, out.value, &e), &out,
		      sizeof out, &e, "vane_array_run, some bad");
	put_procedure(t, vane_array_run("vane_nothing", 5, argument, stride, out.value, &e), &out,
		      sizeof out, &e, "vane_array_run, no such formula");
	put_procedure(t, vane_array_run("vane_slot_flow", -1, NULL, NULL, NULL, &e), &out,
		      sizeof out, &e, "vane_array_run, nothing given");
}

static void handbook(tape *t)
{
	vane_error e;
	{
		vane_oil out;
		DEFAULT(vane_oil_default(&out), vane_oil, specific_heat);
		PROCEDURE(vane_oil_from_grade(46, 100, &out, &e), vane_oil, specific_heat);
		PROCEDURE(vane_oil_from_grade(46, 1e9, &out, &e), vane_oil, specific_heat);
	}
	{
		vane_oil oil;
		vane_oil_from_grade(46, 100, &oil, NULL);
		vane_oil_state out;
		PROCEDURE(vane_oil_at(&oil, 323.15, &out, &e), vane_oil_state,
			  viscosity_temperature);
		PROCEDURE(vane_oil_at(&oil, -1, &out, &e), vane_oil_state, viscosity_temperature);
		PROCEDURE(vane_oil_at(NULL, 323.15, &out, &e), vane_oil_state,
			  viscosity_temperature);
	}
	{
		const vane_ring ring = worked_pump().ring;
		vane_ring_point out;
		PROCEDURE(vane_ring_at(&ring, 1, &out, &e), vane_ring_point, third);
		PROCEDURE(vane_ring_at(&ring, -1e300, &out, &e), vane_ring_point, third);
		PROCEDURE(vane_ring_at(&ring, NAN, &out, &e), vane_ring_point, third);
	}
	{
		vane_ring_lift out;
		PROCEDURE(vane_ring_law_at(VANE_RING_CYCLOIDAL, 0.3, &out, &e), vane_ring_lift,
			  jerk);
		PROCEDURE(vane_ring_law_at(99, 0.3, &out, &e), vane_ring_lift, jerk);
	}
	{
		vane_thread_class out;
		PROCEDURE(vane_thread_strength(VANE_THREAD_8_8, 0.01, &out, &e), vane_thread_class,
			  tensile);
		PROCEDURE(vane_thread_strength(VANE_THREAD_SAE_8, 10, &out, &e), vane_thread_class,
			  tensile);
	}
}

static void measured(tape *t)
{
	static const double reading[] = {0.024, 0.0240005, 0.0239998}, wrong[] = {0.024, -1, 0.024};
	static const vane_instrument instrument = {2e-6, 0.5e-6, 1e-6, 1, 12e-6};
	vane_error e;
	vane_width ring, rotor;
	{
		vane_width out;
		PROCEDURE(vane_clearance_width(wrong, 3, &instrument, &out, &e), vane_width,
			  greatest);
		PROCEDURE(vane_clearance_width(reading, 3, &instrument, &out, &e), vane_width,
			  greatest);
		ring = rotor = out;
		rotor.mean -= 8e-6;
	}
	{
		vane_width_limits limits;
		vane_width_limits_default(&limits);
		vane_decision out;
		PROCEDURE(vane_clearance_decide(&ring, &rotor, &rotor, 1, &limits, &out, &e),
			  vane_decision, vane);
		rotor.mean = -1;
		PROCEDURE(vane_clearance_decide(&ring, &rotor, &rotor, 1, &limits, &out, &e),
			  vane_decision, vane);
	}
	{
		const vane_source source[] = {{2e-6, 1, 4}, {2e-6, -1, 4}};
		const double together[] = {1, 0.7, 0.7, 1}, never[] = {1, 0.7, 0.1, 1};
		vane_combined out;
		PROCEDURE(vane_measure_combine(source, 2, together, 4, 0.95, &out, NULL, &e),
			  vane_combined, expanded);
		PROCEDURE(vane_measure_combine(source, 2, never, 4, 0.95, &out, NULL, &e),
			  vane_combined, expanded);
	}
	{
		static const double x[] = {1, 2, 3, 4, 5}, y[] = {2.1, 3.4, 4.4, 5.4, 6.3};
		const double start[] = {1, 1};
		double coefficient[VANE_FIT_COEFFICIENTS], uncertainty[VANE_FIT_COEFFICIENTS];
		vane_fit_options options;
		vane_fit_options_default(&options);
		vane_fit_summary out;
		PROCEDURE(vane_fit_curve(VANE_FIT_POWER, x, y, NULL, 0, 5, start, 2, &options,
					 coefficient, uncertainty, NULL, NULL, &out, &e),
			  vane_fit_summary, caution);
		PROCEDURE(vane_fit_robust(x, 5, y, 5, &options, coefficient, uncertainty, NULL,
					  NULL, &out, &e),
			  vane_fit_summary, caution);
		PROCEDURE(vane_fit_linear(x, 5, y, y, 5, 1, &options, coefficient, uncertainty,
					  NULL, NULL, &out, &e),
			  vane_fit_summary, caution);
	}
	{
		vane_joint joint;
		vane_joint_default(&joint);
		joint.diameter = 0.01;
		joint.pitch = 1.5e-3;
		joint.stress_area = 58e-6;
		joint.torque = 49;
		joint.bearing_diameter = 0.013;
		joint.proof_stress = 600e6;
		joint.bolt_stiffness = 2e8;
		joint.joint_stiffness = 8e8;
		joint.pressure = 15e6;
		joint.pressure_radius = 0.03;
		joint.bolts = 8;
		vane_joint_result out;
		PROCEDURE(vane_joint_run(&joint, &out, &e), vane_joint_result, overloaded);
		joint.bolts = -1;
		PROCEDURE(vane_joint_run(&joint, &out, &e), vane_joint_result, overloaded);
	}
}

static void pumps(tape *t)
{
	vane_parts parts = worked_pump(), thin = parts;
	thin.rotor_width = 1;
	vane_error e;
	{
		vane_displacement out;
		PROCEDURE(vane_displacement_run(&parts, &out, &e), vane_displacement, caution);
		PROCEDURE(vane_displacement_run(&thin, &out, &e), vane_displacement, caution);
	}
	{
		vane_tip_revolution out;
		PROCEDURE(vane_tip_run(&parts, 15e6, 25, &out, &e), vane_tip_revolution, reserved);
		PROCEDURE(vane_tip_run(&parts, 15e6, INFINITY, &out, &e), vane_tip_revolution,
			  reserved);
		PROCEDURE(vane_tip_run(&parts, 1e308, 1e150, &out, &e), vane_tip_revolution,
			  reserved);
	}
	{
		vane_torque out;
		PROCEDURE(vane_shaft_run(&parts, 15e6, 25, 0.028, &out, &e), vane_torque, total);
		PROCEDURE(vane_shaft_run(&parts, 15e6, 25, -1, &out, &e), vane_torque, total);
	}
	{
		vane_oil oil;
		vane_oil_from_grade(32, 100, &oil, NULL);
		vane_duty duty;
		vane_duty_default(&duty);
		duty.outlet_pressure = 15e6;
		duty.speed = 25;
		vane_performance out;
		PROCEDURE(vane_pump_run(&parts, &oil, &duty, &out, &e), vane_performance, caution);
		PROCEDURE(vane_pump_run(&thin, &oil, &duty, &out, &e), vane_performance, caution);
		PROCEDURE(vane_pump_run(&parts, NULL, &duty, &out, &e), vane_performance, caution);
		const vane_duty duties[] = {duty, {-1, 15e6, 0, 0, 313.15}, duty};
		vane_performance map[3];
		put_procedure(t, vane_pump_map(&parts, &oil, duties, 3, map, &e), NULL, 0, &e,
			      "vane_pump_map");
		for (int i = 0; i < 3; i++)
			put(t, &map[i], UPTO(vane_performance, caution));
		duty.speed = 1e300;
		PROCEDURE(vane_pump_run(&parts, &oil, &duty, &out, &e), vane_performance, caution);
		duty.speed = 25;
		duty.outlet_pressure = 1e12;
		PROCEDURE(vane_pump_run(&parts, &oil, &duty, &out, &e), vane_performance, caution);
	}
}

/* Every pressure at every speed and temperature; the last digits scatter. */
static void plan(vane_reading reading[24])
{
	for (int i = 0; i < 24; i++) {
		const double dp = 2e6 + 2.8e6 * (i % 6), speed = i / 6 % 2 ? 30 : 20;
		const double temperature = i < 12 ? 313.15 : 338.15;
		const double flow = 36e-6 * speed - dp * (i < 12 ? 1.2e-12 : 2.9e-12) +
				    ((7 * i) % 24 - 11.5) * 1e-7;
		reading[i] = (vane_reading){
			.speed = speed, .pressure = dp, .temperature = temperature, .flow = flow};
	}
}

static void fits(tape *t)
{
	vane_error e;
	vane_oil oil;
	vane_oil_from_grade(46, 100, &oil, NULL);
	vane_reading reading[24];
	plan(reading);
	{
		vane_derived out;
		PROCEDURE(vane_stand_displacement(reading, 24, &out, &e), vane_derived, caution);
		PROCEDURE(vane_stand_displacement(reading, 1, &out, &e), vane_derived, caution);
		PROCEDURE(vane_stand_displacement(NULL, 24, &out, &e), vane_derived, caution);
	}
	struct {
		vane_slip_fit fit;
		int32_t pad;
		double correlation[16];
	} out;
	memset(&out, 0, sizeof out);
#define FIT(n, terms)                                                                              \
	put_procedure(t,                                                                           \
		      vane_stand_slip_fit(reading, n, &oil, terms, &out.fit, out.correlation, &e), \
		      &out.fit, UPTO(vane_slip_fit, caution), &e,                                  \
		      "vane_stand_slip_fit, readings " #n ", terms " #terms);                      \
	put(t, out.correlation, sizeof out.correlation)
	FIT(24, 5);
	FIT(24, 7);
	FIT(3, 7);
	FIT(6, 5);
	FIT(24, 99);
	FIT(0, 5);
	reading[3].flow = 1e300;
	reading[9].pressure = 1e200;
	FIT(24, 5);
	reading[3].flow = NAN;
	FIT(24, 5);
#undef FIT
}

/* What the calls give, from an empty tape. */
static void record(tape *t)
{
	t->length = 0;
	t->calls = t->failures = t->ranges = t->errno_then = 0;
	t->broke_errno = NULL;
	errno = UNTOUCHED;
	texts(t);
	formulas(t);
	arrays(t);
	handbook(t);
	measured(t);
	pumps(t);
	fits(t);
}

/* How many bytes the calls write to standard output and standard error; -1 if
 * that could not be found out. */
static long written(tape *t)
{
	FILE *file = tmpfile();
	if (!file || fflush(NULL))
		return -1;
	const int output = dup(STDOUT_FILENO), error = dup(STDERR_FILENO);
	if (output < 0 || error < 0 || dup2(fileno(file), STDOUT_FILENO) < 0 ||
	    dup2(fileno(file), STDERR_FILENO) < 0)
		return -1;
	record(t);
	fflush(NULL);
	const long size = (long)lseek(fileno(file), 0, SEEK_END);
	dup2(output, STDOUT_FILENO);
	dup2(error, STDERR_FILENO);
	close(output);
	close(error);
	fclose(file);
	return size;
}

static tape alone, together[THREADS];
static int unlike[THREADS];
static pthread_barrier_t start;

static void *ask(void *number)
{
	const int i = *(int *)number;
	pthread_barrier_wait(&start);
	for (int round = 0; round < ROUNDS; round++) {
		record(&together[i]);
		unlike[i] += together[i].length != alone.length ||
			     memcmp(together[i].bytes, alone.bytes, alone.length) != 0;
	}
	return NULL;
}

/* In how many rounds a thread's tape was unlike that of one thread alone. */
static int rounds_unlike(void)
{
	pthread_t thread[THREADS];
	int number[THREADS];
	if (pthread_barrier_init(&start, NULL, THREADS))
		abort();
	for (int i = 0; i < THREADS; i++) {
		number[i] = i;
		if (pthread_create(&thread[i], NULL, ask, &number[i]))
			abort();
	}
	int sum = 0;
	for (int i = 0; i < THREADS; i++) {
		pthread_join(thread[i], NULL);
		sum += unlike[i];
	}
	pthread_barrier_destroy(&start);
	return sum;
}

int main(void)
{
	const long size = written(&alone);
	const int other = rounds_unlike();
	printf("%d calls, %d of them failing, %d leaving ERANGE: %ld bytes printed, %d of %d "
	       "rounds "
	       "on %d threads unlike one thread's\n",
	       alone.calls, alone.failures, alone.ranges, size, other, THREADS * ROUNDS, THREADS);
	if (alone.broke_errno)
		printf("errno became %d (%s) in: %s\n", alone.errno_then,
		       strerror(alone.errno_then), alone.broke_errno);
	return size != 0 || other != 0 || alone.broke_errno || alone.failures < 20;
}
