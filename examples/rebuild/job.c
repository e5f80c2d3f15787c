#include "job.h"
#include "quantity.h"

#include <jansson.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

enum shape { TEXT, NUMBER, COUNT, FLAG, CHOICE, QUANTITY, READINGS, SETS };

enum need { REQUIRED, OPTIONAL };

enum bound { ANY, NOT_NEGATIVE, POSITIVE };

struct choice {
	const char *field;
	const char *word;
	int32_t number;
};

static const struct choice choices[] = {
	{"law", "constant acceleration", VANE_RING_CONSTANT_ACCELERATION},
	{"law", "simple harmonic", VANE_RING_SIMPLE_HARMONIC},
	{"law", "cycloidal", VANE_RING_CYCLOIDAL},
	{"law", "3-4-5", VANE_RING_POLYNOMIAL_345},
	{"law", "4-5-6-7", VANE_RING_POLYNOMIAL_4567},
	{"roots", "zone", VANE_ROOTS_ZONE},
	{"roots", "outlet", VANE_ROOTS_OUTLET},
	{"thread", "metric", JOB_METRIC},
	{"thread", "unified", JOB_UNIFIED},
	{"grade", "ISO 8.8", VANE_THREAD_8_8},
	{"grade", "ISO 10.9", VANE_THREAD_10_9},
	{"grade", "ISO 12.9", VANE_THREAD_12_9},
	{"grade", "SAE 2", VANE_THREAD_SAE_2},
	{"grade", "SAE 5", VANE_THREAD_SAE_5},
	{"grade", "SAE 8", VANE_THREAD_SAE_8},
};

struct field {
	const char *section;
	const char *name;
	size_t offset;
	enum shape shape;
	enum quantity quantity;
	enum bound bound;
	enum need need;
};

#define AT(member) offsetof(struct job, member)

static const struct field fields[] = {
	{"", "site", AT(site), TEXT, 0, ANY, REQUIRED},
	{"", "pump", AT(pump), TEXT, 0, ANY, REQUIRED},
	{"", "date", AT(date), TEXT, 0, ANY, REQUIRED},
	{"", "note", AT(note), TEXT, 0, ANY, OPTIONAL},

	{"instrument", "name", AT(instrument_name), TEXT, 0, ANY, REQUIRED},
	{"instrument", "error_limit", AT(instrument.error_limit), QUANTITY, LENGTH, NOT_NEGATIVE,
	 REQUIRED},
	{"instrument", "repeatability", AT(instrument.repeatability), QUANTITY, LENGTH,
	 NOT_NEGATIVE, REQUIRED},
	{"instrument", "resolution", AT(instrument.resolution), QUANTITY, LENGTH, NOT_NEGATIVE,
	 REQUIRED},
	{"instrument", "temperature_range", AT(instrument.temperature_range), QUANTITY,
	 TEMPERATURE_DIFFERENCE, NOT_NEGATIVE, REQUIRED},
	{"instrument", "expansion", AT(instrument.expansion), QUANTITY, EXPANSION, NOT_NEGATIVE,
	 REQUIRED},
	{"instrument", "same_for_all", AT(same_instrument), FLAG, 0, ANY, REQUIRED},

	{"ring", "width", AT(ring_width), READINGS, LENGTH, POSITIVE, REQUIRED},
	{"ring", "large_radius", AT(parts.ring.large_radius), QUANTITY, LENGTH, POSITIVE, REQUIRED},
	{"ring", "small_radius", AT(parts.ring.small_radius), QUANTITY, LENGTH, POSITIVE, REQUIRED},
	{"ring", "small_dwell", AT(parts.ring.small_dwell), QUANTITY, ANGLE, NOT_NEGATIVE,
	 REQUIRED},
	{"ring", "rise", AT(parts.ring.rise), QUANTITY, ANGLE, POSITIVE, REQUIRED},
	{"ring", "large_dwell", AT(parts.ring.large_dwell), QUANTITY, ANGLE, NOT_NEGATIVE,
	 REQUIRED},
	{"ring", "fall", AT(parts.ring.fall), QUANTITY, ANGLE, POSITIVE, REQUIRED},
	{"ring", "law", AT(parts.ring.law), CHOICE, 0, ANY, REQUIRED},

	{"rotor", "width", AT(rotor_width), READINGS, LENGTH, POSITIVE, REQUIRED},
	{"rotor", "radius", AT(parts.rotor_radius), QUANTITY, LENGTH, POSITIVE, REQUIRED},
	{"rotor", "slot_width", AT(parts.slot_width), QUANTITY, LENGTH, POSITIVE, REQUIRED},

	{"vanes", "count", AT(parts.vanes), COUNT, 0, POSITIVE, REQUIRED},
	{"vanes", "width", AT(vane_width), SETS, LENGTH, POSITIVE, REQUIRED},
	{"vanes", "thickness", AT(parts.vane_thickness), QUANTITY, LENGTH, POSITIVE, REQUIRED},
	{"vanes", "height", AT(parts.vane_height), QUANTITY, LENGTH, POSITIVE, REQUIRED},
	{"vanes", "tip_radius", AT(parts.tip_radius), QUANTITY, LENGTH, POSITIVE, REQUIRED},
	{"vanes", "tip_film", AT(parts.tip_film), QUANTITY, LENGTH, NOT_NEGATIVE, OPTIONAL},

	{"plate", "roots", AT(parts.roots), CHOICE, 0, ANY, REQUIRED},
	{"plate", "bore", AT(parts.plate_bore), QUANTITY, LENGTH, POSITIVE, REQUIRED},
	{"plate", "groove_inner", AT(parts.groove_inner), QUANTITY, LENGTH, POSITIVE, REQUIRED},
	{"plate", "groove_outer", AT(parts.groove_outer), QUANTITY, LENGTH, POSITIVE, REQUIRED},
	{"plate", "inlet_open", AT(parts.inlet_open), QUANTITY, ANGLE, NOT_NEGATIVE, REQUIRED},
	{"plate", "inlet_close", AT(parts.inlet_close), QUANTITY, ANGLE, POSITIVE, REQUIRED},
	{"plate", "outlet_open", AT(parts.outlet_open), QUANTITY, ANGLE, POSITIVE, REQUIRED},
	{"plate", "outlet_close", AT(parts.outlet_close), QUANTITY, ANGLE, POSITIVE, REQUIRED},
	{"plate", "notch", AT(parts.notch), QUANTITY, ANGLE, NOT_NEGATIVE, REQUIRED},

	{"shaft", "radius", AT(parts.shaft_radius), QUANTITY, LENGTH, POSITIVE, REQUIRED},
	{"shaft", "gap", AT(parts.shaft_gap), QUANTITY, LENGTH, NOT_NEGATIVE, REQUIRED},
	{"shaft", "length", AT(parts.shaft_length), QUANTITY, LENGTH, POSITIVE, REQUIRED},

	{"friction", "tip", AT(parts.tip_friction), NUMBER, 0, NOT_NEGATIVE, REQUIRED},
	{"friction", "slot", AT(parts.slot_friction), NUMBER, 0, NOT_NEGATIVE, REQUIRED},
	{"friction", "seal", AT(parts.seal_friction), QUANTITY, FORCE_PER_LENGTH, NOT_NEGATIVE,
	 REQUIRED},

	{"limits", "ring_rotor", AT(ring_rotor_limit), QUANTITY, LENGTH, POSITIVE, OPTIONAL},
	{"limits", "ring_vane", AT(ring_vane_limit), QUANTITY, LENGTH, POSITIVE, OPTIONAL},
	{"limits", "ring_least", AT(ring_least), QUANTITY, LENGTH, POSITIVE, OPTIONAL},
	{"limits", "rotor_least", AT(rotor_least), QUANTITY, LENGTH, POSITIVE, OPTIONAL},
	{"limits", "vane_least", AT(vane_least), QUANTITY, LENGTH, POSITIVE, OPTIONAL},
	{"limits", "source", AT(limits_source), TEXT, 0, ANY, OPTIONAL},

	{"oil", "grade", AT(oil_grade), NUMBER, 0, POSITIVE, REQUIRED},
	{"oil", "viscosity_index", AT(viscosity_index), NUMBER, 0, POSITIVE, REQUIRED},
	{"oil", "note", AT(oil_note), TEXT, 0, ANY, OPTIONAL},

	{"duty", "speed", AT(duty.speed), QUANTITY, SPEED, POSITIVE, REQUIRED},
	{"duty", "outlet_pressure", AT(duty.outlet_pressure), QUANTITY, PRESSURE, NOT_NEGATIVE,
	 REQUIRED},
	{"duty", "inlet_pressure", AT(duty.inlet_pressure), QUANTITY, PRESSURE, ANY, REQUIRED},
	{"duty", "case_pressure", AT(duty.case_pressure), QUANTITY, PRESSURE, ANY, REQUIRED},
	{"duty", "temperature", AT(duty.temperature), QUANTITY, TEMPERATURE, POSITIVE, REQUIRED},

	{"cover", "bolts", AT(joint.bolts), COUNT, 0, POSITIVE, REQUIRED},
	{"cover", "thread", AT(thread), CHOICE, 0, ANY, REQUIRED},
	{"cover", "diameter", AT(joint.diameter), QUANTITY, LENGTH, POSITIVE, REQUIRED},
	{"cover", "pitch", AT(joint.pitch), QUANTITY, PITCH, POSITIVE, REQUIRED},
	{"cover", "grade", AT(bolt_grade), CHOICE, 0, ANY, REQUIRED},
	{"cover", "torque", AT(joint.torque), QUANTITY, TORQUE, POSITIVE, REQUIRED},
	{"cover", "torque_scatter", AT(joint.torque_scatter), NUMBER, 0, NOT_NEGATIVE, REQUIRED},
	{"cover", "nut_factor", AT(joint.nut_factor), NUMBER, 0, POSITIVE, OPTIONAL},
	{"cover", "thread_friction", AT(joint.thread_friction), NUMBER, 0, POSITIVE, OPTIONAL},
	{"cover", "bearing_friction", AT(joint.bearing_friction), NUMBER, 0, POSITIVE, OPTIONAL},
	{"cover", "friction_scatter", AT(joint.friction_scatter), NUMBER, 0, NOT_NEGATIVE,
	 REQUIRED},
	{"cover", "bearing_diameter", AT(joint.bearing_diameter), QUANTITY, LENGTH, POSITIVE,
	 REQUIRED},
	{"cover", "bolt_stiffness", AT(joint.bolt_stiffness), QUANTITY, STIFFNESS, POSITIVE,
	 REQUIRED},
	{"cover", "joint_stiffness", AT(joint.joint_stiffness), QUANTITY, STIFFNESS, POSITIVE,
	 REQUIRED},
	{"cover", "pressure_radius", AT(joint.pressure_radius), QUANTITY, LENGTH, POSITIVE,
	 REQUIRED},
	{"cover", "seating_loss", AT(joint.seating_loss), QUANTITY, FORCE, NOT_NEGATIVE, REQUIRED},
	{"cover", "spring_force", AT(joint.spring_force), QUANTITY, FORCE, NOT_NEGATIVE, REQUIRED},
	{"cover", "note", AT(cover_note), TEXT, 0, ANY, OPTIONAL},
};

enum {
	FIELDS = sizeof fields / sizeof fields[0],
	CHOICES = sizeof choices / sizeof choices[0],
	FILE_LIMIT = 256 * 1024
};

/* Where the reader is, so that every complaint can say it. */
struct place {
	const char *path;
	const struct field *field;
	struct complaint *complaint;
};

static int at_fault(const struct place *place, const char *what)
{
	const char *section = place->field->section;

	return complain(place->complaint, "%s: %s%s%s: %s.", place->path, section,
			section[0] != '\0' ? "." : "", place->field->name, what);
}

static int number_of(const struct place *place, const json_t *value, double *out)
{
	double number = json_number_value(value);

	if (!json_is_number(value))
		return at_fault(place, "must be a number");
	if (!isfinite(number))
		return at_fault(place, "is not finite");
	if (place->field->bound == POSITIVE && number <= 0.0)
		return at_fault(place, "must be greater than 0");
	if (place->field->bound == NOT_NEGATIVE && number < 0.0)
		return at_fault(place, "must not be negative");
	*out = number;
	return 0;
}

static int in_unit(const struct place *place, const json_t *value, const char *unit, double *out)
{
	char what[300];
	char units[160];
	double number;

	/* A temperature's sign depends on its scale; its bound is checked in kelvin below. */
	if (place->field->quantity == TEMPERATURE) {
		if (!json_is_number(value))
			return at_fault(place, "must be a number");
		number = json_number_value(value);
	} else if (number_of(place, value, &number)) {
		return -1;
	}
	if (quantity_convert(place->field->quantity, unit, number, out)) {
		quantity_units(place->field->quantity, units, sizeof units);
		(void)snprintf(what, sizeof what,
			       "has the wrong unit \"%.40s\"; it takes one of: %s", unit, units);
		return at_fault(place, what);
	}
	/* The range that the stand's readings have to keep as well. */
	if (place->field->quantity == TEMPERATURE && !(*out >= 223.15 && *out <= 423.15))
		return at_fault(place, "must be between -50 and 150 degC");
	if (!isfinite(*out) || (place->field->bound == POSITIVE && *out <= 0.0))
		return at_fault(place, "is out of range");
	return 0;
}

/* {"value" or "readings": ..., "unit": ...} and nothing else. */
static const json_t *with_unit(const struct place *place, const json_t *json, const char *key,
			       const char **unit)
{
	const json_t *value = json_object_get(json, key);
	char what[160];

	*unit = json_string_value(json_object_get(json, "unit"));
	if (json_is_object(json) && value != NULL && *unit != NULL && json_object_size(json) == 2)
		return value;
	(void)snprintf(what, sizeof what,
		       "must be written with its unit: {\"%s\": ..., \"unit\": ...}", key);
	at_fault(place, what);
	return NULL;
}

static int list_of(const struct place *place, const json_t *list, const char *unit,
		   struct job_width *out)
{
	size_t count = json_array_size(list);

	if (!json_is_array(list) || count < 1 || count > JOB_READINGS)
		return at_fault(place, "readings must be a list of 1 to 64 numbers");
	for (size_t i = 0; i < count; i++)
		if (in_unit(place, json_array_get(list, i), unit, &out->reading[i]))
			return -1;
	out->readings = (int64_t)count;
	return 0;
}

static int sets_of(const struct place *place, const json_t *list, const char *unit, struct job *job)
{
	size_t count = json_array_size(list);

	if (!json_is_array(list) || count < 1 || count > JOB_VANES)
		return at_fault(place, "readings must be a list with one list for each vane");
	for (size_t i = 0; i < count; i++)
		if (list_of(place, json_array_get(list, i), unit, &job->vane_width[i]))
			return -1;
	job->vane_sets = (int32_t)count;
	return 0;
}

static int choice_of(const struct place *place, const json_t *json, int32_t *out)
{
	const char *word = json_string_value(json);
	char what[300] = "must be one of:";

	for (size_t i = 0; i < CHOICES; i++) {
		if (strcmp(choices[i].field, place->field->name) != 0)
			continue;
		if (word != NULL && strcmp(choices[i].word, word) == 0) {
			*out = choices[i].number;
			return 0;
		}
		(void)snprintf(what + strlen(what), sizeof what - strlen(what), " \"%s\"",
			       choices[i].word);
	}
	return at_fault(place, what);
}

static int text_of(const struct place *place, const json_t *json, char *out)
{
	const char *text = json_string_value(json);

	if (text == NULL)
		return at_fault(place, "must be a text in quotes");
	if (strlen(text) >= JOB_TEXT)
		return at_fault(place, "is longer than 399 bytes");
	memcpy(out, text, strlen(text) + 1);
	return 0;
}

static int field_read(const struct place *place, const json_t *json, struct job *job)
{
	char *out = (char *)job + place->field->offset;
	const json_t *value;
	const char *unit;

	switch (place->field->shape) {
	case TEXT:
		return text_of(place, json, out);
	case NUMBER:
		return number_of(place, json, (double *)(void *)out);
	case COUNT:
		if (!json_is_integer(json) || json_integer_value(json) < 1 ||
		    json_integer_value(json) > 1000)
			return at_fault(place, "must be a whole number from 1 to 1000");
		*(int32_t *)(void *)out = (int32_t)json_integer_value(json);
		return 0;
	case FLAG:
		if (!json_is_boolean(json))
			return at_fault(place, "must be true or false");
		*(int32_t *)(void *)out = json_is_true(json);
		return 0;
	case CHOICE:
		return choice_of(place, json, (int32_t *)(void *)out);
	case QUANTITY:
		value = with_unit(place, json, "value", &unit);
		return value == NULL ? -1 : in_unit(place, value, unit, (double *)(void *)out);
	case READINGS:
		value = with_unit(place, json, "readings", &unit);
		return value == NULL ? -1
				     : list_of(place, value, unit, (struct job_width *)(void *)out);
	case SETS:
		value = with_unit(place, json, "readings", &unit);
		return value == NULL ? -1 : sets_of(place, value, unit, job);
	}
	return -1;
}

static int is_known(const char *section, const char *name)
{
	for (size_t i = 0; i < FIELDS; i++)
		if (strcmp(fields[i].section, section) == 0 && strcmp(fields[i].name, name) == 0)
			return 1;
	return 0;
}

static int is_section(const char *name)
{
	for (size_t i = 0; i < FIELDS; i++)
		if (fields[i].section[0] != '\0' && strcmp(fields[i].section, name) == 0)
			return 1;
	return 0;
}

static int nothing_unknown(const char *path, json_t *root, struct complaint *complaint)
{
	const char *section;
	const char *name;
	json_t *inner;
	json_t *value;

	json_object_foreach(root, section, inner)
	{
		if (is_known("", section))
			continue;
		if (!is_section(section))
			return complain(complaint, "%s: %.60s: is an unknown field.", path,
					section);
		if (!json_is_object(inner))
			return complain(complaint, "%s: %s: must be an object in braces.", path,
					section);
		json_object_foreach(
			inner, name,
			value) if (!is_known(section, name)) return complain(complaint,
									     "%s: %s.%.60s: is an "
									     "unknown field.",
									     path, section, name);
	}
	return 0;
}

static double mean_of(const struct job_width *width)
{
	double sum = 0.0;

	for (int64_t i = 0; i < width->readings; i++)
		sum += width->reading[i];
	return sum / (double)width->readings;
}

/* What no single field can show: parts that do not go together. */
static int fits_together(const char *path, const struct job *job, struct complaint *complaint)
{
	double ring = mean_of(&job->ring_width);

	if (job->vane_sets != job->parts.vanes)
		return complain(complaint,
				"%s: vanes.width: has readings for %d vanes, vanes.count is %d.",
				path, (int)job->vane_sets, (int)job->parts.vanes);
	if (mean_of(&job->rotor_width) > ring)
		return complain(
			complaint,
			"%s: rotor.width: negative gap: the rotor (%.4f mm) is wider than the "
			"ring (%.4f mm).",
			path, 1e3 * mean_of(&job->rotor_width), 1e3 * ring);
	for (int32_t i = 0; i < job->vane_sets; i++)
		if (mean_of(&job->vane_width[i]) > ring)
			return complain(
				complaint,
				"%s: vanes.width: negative gap: vane %d (%.4f mm) is wider than "
				"the ring (%.4f mm).",
				path, (int)i + 1, 1e3 * mean_of(&job->vane_width[i]), 1e3 * ring);
	if (job->parts.slot_width < job->parts.vane_thickness)
		return complain(
			complaint,
			"%s: rotor.slot_width: negative gap: the vanes are thicker than the slot.",
			path);
	if (job->duty.outlet_pressure < job->duty.inlet_pressure)
		return complain(complaint,
				"%s: duty.outlet_pressure: is below duty.inlet_pressure.", path);
	return 0;
}

static void defaults(struct job *job)
{
	vane_width_limits limits;

	memset(job, 0, sizeof *job);
	vane_parts_default(&job->parts);
	vane_joint_default(&job->joint);
	vane_width_limits_default(&limits);
	job->ring_rotor_limit = limits.ring_rotor_high;
	job->ring_vane_limit = limits.ring_vane_high;
	(void)snprintf(job->limits_source, sizeof job->limits_source, "common practice, no source");
}

int job_read(const char *path, struct job *job, struct complaint *complaint)
{
	struct place place = {path, NULL, complaint};
	json_error_t fault;
	size_t length;
	json_t *root;
	char *text = read_file(path, FILE_LIMIT, &length, complaint);
	int status;

	if (text == NULL)
		return -1;
	root = json_loadb(text, length, JSON_REJECT_DUPLICATES, &fault);
	free(text);
	if (root == NULL)
		return complain(complaint, "%s: line %d: is not valid JSON: %s.", path, fault.line,
				fault.text);
	defaults(job);
	job->path = path;
	status = json_is_object(root)
			 ? nothing_unknown(path, root, complaint)
			 : complain(complaint, "%s: must be one JSON object in braces.", path);
	for (size_t i = 0; i < FIELDS && status == 0; i++) {
		const json_t *section = fields[i].section[0] == '\0'
						? root
						: json_object_get(root, fields[i].section);
		const json_t *value = json_object_get(section, fields[i].name);

		place.field = &fields[i];
		if (value != NULL)
			status = field_read(&place, value, job);
		else if (fields[i].need == REQUIRED)
			status = at_fault(&place, "is missing");
	}
	json_decref(root);
	return status ? status : fits_together(path, job, complaint);
}
