/* Plots as SVG elements, drawn by gnuplot as a child process. */
#ifndef PLOT_H
#define PLOT_H

#include "findings.h"

/* The <svg> element, which the caller frees; NULL with a complaint. */
char *plot_flow(const struct readings *readings, const struct findings *findings,
		struct complaint *complaint);
char *plot_slip(const vane_slip *slip, struct complaint *complaint);

#endif
