#define _POSIX_C_SOURCE 200809L

#include "plot.h"

#include "slip_paths.h"

#include "vane/units.h"

#include <errno.h>
#include <spawn.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>

extern char **environ;

enum { SVG_LIMIT = 4 * 1024 * 1024 };

/*
 * Script and drawing go through unnamed files on the child's standard input and
 * output: no shell, no file name, nothing of the job's text is ever a command.
 */
static int draw(FILE *script, FILE *drawing)
{
	char *const argument[] = {"gnuplot", "--default-settings", "-", NULL};
	posix_spawn_file_actions_t action;
	pid_t child;
	int status = -1;

	rewind(script);
	if (posix_spawn_file_actions_init(&action) != 0)
		return -1;
	if (posix_spawn_file_actions_adddup2(&action, fileno(script), 0) == 0 &&
	    posix_spawn_file_actions_adddup2(&action, fileno(drawing), 1) == 0 &&
	    posix_spawnp(&child, argument[0], &action, NULL, argument, environ) == 0) {
		while (waitpid(child, &status, 0) < 0)
			if (errno != EINTR)
				break;
	}
	posix_spawn_file_actions_destroy(&action);
	return status == 0 ? 0 : -1;
}

/* Only the element: a page cannot hold the XML declaration before it. */
static char *svg_of(FILE *drawing)
{
	char *text = malloc(SVG_LIMIT + 1);
	char *start;
	size_t length;

	if (text == NULL)
		return NULL;
	rewind(drawing);
	length = fread(text, 1, SVG_LIMIT, drawing);
	text[length] = '\0';
	start = strstr(text, "<svg");
	if (start == NULL || strstr(start, "</svg>") == NULL) {
		free(text);
		return NULL;
	}
	memmove(text, start, strlen(start) + 1);
	return text;
}

static char *run(FILE *script, struct complaint *complaint)
{
	FILE *drawing = tmpfile();
	char *svg = NULL;

	if (drawing != NULL && !ferror(script) && draw(script, drawing) == 0)
		svg = svg_of(drawing);
	if (drawing != NULL)
		fclose(drawing);
	fclose(script);
	if (svg == NULL)
		complain(complaint, "gnuplot could not be run, and without it there are no plots.");
	return svg;
}

static FILE *begin(const char *name, int height, struct complaint *complaint)
{
	FILE *script = tmpfile();

	if (script == NULL) {
		complain(complaint, "a temporary file could not be had for gnuplot.");
		return NULL;
	}
	fprintf(script,
		"set encoding utf8\n"
		"set term svg enhanced background 'white' size 760,%d font 'sans-serif,13' name "
		"'%s'\n"
		"set border 3 lw 1\nset tics nomirror out\nset grid lc rgb '#cccccc' lw 0.5\n",
		height, name);
	return script;
}

char *plot_flow(const struct readings *readings, const struct findings *findings,
		struct complaint *complaint)
{
	static const int mark[GROUPS] = {7, 4, 9, 12, 5, 6, 11, 2};
	FILE *script = begin("flow", 460, complaint);
	const char *comma = "";

	if (script == NULL)
		return NULL;
	for (int i = 0; i < findings->groups; i++) {
		fprintf(script, "$curve%d << EOD\n", i);
		for (int j = 0; j < CURVE; j++)
			fprintf(script, "%.6f %.6f\n",
				vane_units_bar_from_pa(findings->group[i].curve_pressure[j], NULL),
				vane_units_l_per_min_from_m3_per_s(findings->group[i].curve_flow[j],
								   NULL));
		fprintf(script, "EOD\n$point%d << EOD\n", i);
		for (int64_t j = 0; j < readings->count; j++)
			if (findings->at[j].group == i)
				fprintf(script, "%.6f %.6f\n",
					vane_units_bar_from_pa(readings->item[j].pressure, NULL),
					vane_units_l_per_min_from_m3_per_s(readings->item[j].flow,
									   NULL));
		fprintf(script, "EOD\n");
	}
	fprintf(script, "set xlabel 'Outlet pressure, bar'\nset ylabel 'Flow, L/min'\n"
			"set xrange [0:*]\nset offsets 0, 0, graph 0.05, graph 0.05\n"
			"set key outside top center horizontal Left reverse samplen 4\nplot ");
	for (int i = 0; i < findings->groups; i++) {
		const struct group *group = &findings->group[i];
		double speed = vane_units_rev_per_min_from_rev_per_s(group->speed, NULL);
		double degrees = vane_units_degc_from_k(group->temperature, NULL);

		fprintf(script,
			"%s$curve%d with lines lw 1.5 lc rgb 'black' dt %d "
			"title 'predicted %.0f r/min, %.0f °C', "
			"$point%d with points pt %d ps 0.8 lc rgb 'black' title 'measured'",
			comma, i, i % 5 + 1, speed, degrees, i, mark[i]);
		comma = ", ";
	}
	fprintf(script, "\n");
	return run(script, complaint);
}

char *plot_slip(const vane_slip *slip, struct complaint *complaint)
{
	struct slip_path path[SLIP_PATHS];
	FILE *script = begin("slip", 300, complaint);

	if (script == NULL)
		return NULL;
	slip_paths(slip, path);
	fprintf(script, "$bar << EOD\n");
	for (int i = 0; i < SLIP_PATHS; i++)
		fprintf(script, "%d %.6f \"%s\"\n", SLIP_PATHS - i,
			vane_units_l_per_min_from_m3_per_s(path[i].flow, NULL), path[i].name);
	fprintf(script,
		"EOD\n"
		"set xlabel 'Slip, L/min'\nset yrange [0.4:%d.6]\nset ytics scale 0\n"
		"unset grid\nset grid xtics lc rgb '#cccccc' lw 0.5\n"
		"set rmargin 8\nset style fill solid 0.35 border lc rgb 'black'\n"
		"plot $bar using ($2/2):1:($2/2):(0.36):ytic(3) with boxxyerror "
		"lc rgb '#666666' notitle, "
		"$bar using ($2 > 0 ? $2 : 0):1:(sprintf(' %%.3f', $2)) with labels left "
		"notitle\n",
		SLIP_PATHS);
	return run(script, complaint);
}
