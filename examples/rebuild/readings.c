#include "readings.h"
#include "quantity.h"

#include <csv.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { COLUMNS = 7, FILE_LIMIT = 1024 * 1024 };

/* `from` and `to` are wider than any vane pump: they catch a wrong unit, not a bad pump. */
static const struct column {
	const char *name;
	const char *example;
	size_t offset;
	double from;
	double to;
	enum quantity quantity;
	int optional;
} columns[COLUMNS] = {
	{"reading", "reading", 0, 0.0, 1e9, NO_QUANTITY, 0},
	{"speed", "speed_rpm", offsetof(vane_reading, speed), 0.1, 500.0, SPEED, 0},
	{"pressure", "pressure_bar", offsetof(vane_reading, pressure), -101325.0, 1e8, PRESSURE, 0},
	{"inlet", "inlet_bar", offsetof(vane_reading, inlet_pressure), -101325.0, 1e7, PRESSURE, 0},
	{"temperature", "temperature_C", offsetof(vane_reading, temperature), 223.15, 423.15,
	 TEMPERATURE, 0},
	{"flow", "flow_L_min", offsetof(vane_reading, flow), 0.0, 1.0, FLOW, 0},
	{"torque", "torque_Nm", offsetof(vane_reading, torque), 0.0, 1e5, TORQUE, 1},
};

struct reader {
	const char *path;
	struct readings *readings;
	struct complaint *complaint;
	long line;
	int fields;
	int heads;
	int column[COLUMNS]; /* Which column each field of a row is. */
	char unit[COLUMNS][24];
	int found[COLUMNS];
	vane_reading row;
	double label;
};

static void head(struct reader *reader, const char *text)
{
	const char *unit = strchr(text, '_');
	size_t length = unit == NULL ? strlen(text) : (size_t)(unit - text);
	int field = reader->heads;
	char units[160];
	double ignored;

	for (int i = 0; i < COLUMNS; i++) {
		if (strlen(columns[i].name) != length ||
		    strncmp(columns[i].name, text, length) != 0)
			continue;
		unit = unit == NULL ? "" : unit + 1;
		if (reader->found[i]++) {
			complain(reader->complaint, "%s: line %ld: column \"%s\" appears twice.",
				 reader->path, reader->line, columns[i].name);
		} else if (columns[i].quantity == NO_QUANTITY
				   ? unit[0] != '\0'
				   : quantity_convert(columns[i].quantity, unit, 1.0, &ignored)) {
			quantity_units(columns[i].quantity, units, sizeof units);
			complain(
				reader->complaint,
				"%s: line %ld: column \"%.40s\" has the wrong unit; write it as in "
				"%s; units: %s.",
				reader->path, reader->line, text, columns[i].example,
				units[0] != '\0' ? units : "none");
		} else {
			reader->column[field] = i;
			(void)snprintf(reader->unit[field], sizeof reader->unit[field], "%.23s",
				       unit);
			reader->heads++;
		}
		return;
	}
	complain(
		reader->complaint,
		"%s: line %ld: unknown column \"%.40s\"; columns are separated by commas and named "
		"as in speed_rpm.",
		reader->path, reader->line, text);
}

static void number(struct reader *reader, const char *text)
{
	const struct column *column;
	int field = reader->fields;
	double value;
	char *end;

	if (field >= reader->heads)
		return; /* Told of at the end of the row, with the count. */
	column = &columns[reader->column[field]];
	value = strtod(text, &end);
	if (text[0] == '\0') {
		complain(reader->complaint, "%s: line %ld: %s is empty.", reader->path,
			 reader->line, column->name);
		return;
	}
	if (end == text || *end != '\0' || text[strspn(text, "0123456789+-.eE")] != '\0' ||
	    !isfinite(value)) {
		complain(reader->complaint, "%s: line %ld: %s \"%.30s\" is not a number%s.",
			 reader->path, reader->line, column->name, text,
			 strchr(text, ',') != NULL ? "; write a decimal point, not a comma" : "");
		return;
	}
	if (column->quantity == NO_QUANTITY)
		reader->label = value;
	else
		(void)quantity_convert(column->quantity, reader->unit[field], value, &value);
	if (!(value >= column->from && value <= column->to)) {
		complain(reader->complaint,
			 "%s: line %ld: %s %.30s is out of range; look at its unit and its sign.",
			 reader->path, reader->line, column->name, text);
		return;
	}
	if (column->quantity != NO_QUANTITY)
		*(double *)(void *)((char *)&reader->row + column->offset) = value;
}

static void on_field(void *text, size_t length, void *data)
{
	struct reader *reader = data;

	if (reader->complaint->text[0] != '\0')
		return;
	if (memchr(text, '\0', length) != NULL)
		complain(reader->complaint, "%s: line %ld: holds a zero byte: not a text file.",
			 reader->path, reader->line);
	else if (length > 60)
		complain(reader->complaint,
			 "%s: line %ld: a field is longer than 60 bytes; fields are "
			 "separated by commas.",
			 reader->path, reader->line);
	else if (reader->readings->count < 0)
		head(reader, text);
	else
		number(reader, text);
	reader->fields++;
}

static void head_ends(struct reader *reader)
{
	for (int i = 0; i < COLUMNS; i++)
		if (!reader->found[i] && !columns[i].optional)
			complain(reader->complaint,
				 "%s: line %ld: column for %s is missing; write it as in %s.",
				 reader->path, reader->line, columns[i].name, columns[i].example);
	reader->readings->has_torque = reader->found[COLUMNS - 1];
	reader->readings->count = 0;
}

static void on_row(int ending, void *data)
{
	struct reader *reader = data;
	struct readings *readings = reader->readings;
	int fields = reader->fields;

	(void)ending;
	reader->fields = 0;
	if (reader->complaint->text[0] != '\0')
		return;
	if (readings->count < 0) {
		head_ends(reader);
	} else if (fields != reader->heads) {
		complain(reader->complaint,
			 "%s: line %ld: has %d fields, the head of the table %d; are there decimal "
			 "commas?",
			 reader->path, reader->line, fields, reader->heads);
	} else if (readings->count >= READINGS_LIMIT) {
		complain(reader->complaint, "%s: line %ld: more than %d readings.", reader->path,
			 reader->line, READINGS_LIMIT);
	} else if (readings->count > 0 && reader->label <= readings->label[readings->count - 1]) {
		complain(reader->complaint,
			 "%s: line %ld: readings are out of order: reading %g comes after %g.",
			 reader->path, reader->line, reader->label,
			 readings->label[readings->count - 1]);
	} else if (reader->row.pressure < reader->row.inlet_pressure) {
		complain(reader->complaint, "%s: line %ld: pressure is below the inlet pressure.",
			 reader->path, reader->line);
	} else {
		readings->label[readings->count] = reader->label;
		readings->item[readings->count++] = reader->row;
	}
}

/* Fed a line at a time so that a complaint knows its line: the parser does not count them. */
static void feed(struct csv_parser *parser, const char *text, size_t length, struct reader *reader)
{
	while (length > 0 && reader->complaint->text[0] == '\0') {
		const char *end = memchr(text, '\n', length);
		size_t line = end == NULL ? length : (size_t)(end - text) + 1;

		reader->line++;
		if (csv_parse(parser, text, line, on_field, on_row, reader) != line)
			complain(reader->complaint,
				 "%s: line %ld: is not comma-separated text: %s.", reader->path,
				 reader->line, csv_strerror(csv_error(parser)));
		text += line;
		length -= line;
	}
	if (reader->complaint->text[0] == '\0' && csv_fini(parser, on_field, on_row, reader) != 0)
		complain(reader->complaint, "%s: line %ld: a quoted field does not end.",
			 reader->path, reader->line);
}

int readings_read(const char *path, struct readings *readings, struct complaint *complaint)
{
	static const char mark[] = "\xef\xbb\xbf";
	struct reader reader = {.path = path, .readings = readings, .complaint = complaint};
	struct csv_parser parser;
	size_t length;
	size_t skip = 0;
	char *text = read_file(path, FILE_LIMIT, &length, complaint);

	if (text == NULL)
		return -1;
	memset(readings, 0, sizeof *readings);
	readings->path = path;
	readings->count = -1; /* Until the head of the table has been read. */
	if (csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI | CSV_APPEND_NULL) != 0) {
		free(text);
		return complain(complaint, "%s: the parser could not start.", path);
	}
	/* Spreadsheets put a byte order mark before the first column. */
	if (length >= 3 && memcmp(text, mark, 3) == 0)
		skip = 3;
	feed(&parser, text + skip, length - skip, &reader);
	csv_free(&parser);
	free(text);
	if (complaint->text[0] == '\0' && readings->count <= 0)
		complain(complaint, "%s: line %ld: holds no readings.", path, reader.line);
	return complaint->text[0] != '\0' ? -1 : 0;
}
