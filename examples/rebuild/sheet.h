/* The sections of the rebuild sheet, in order. */
#ifndef SHEET_H
#define SHEET_H

#include "findings.h"
#include "paper.h"

/* SVG elements. */
struct drawings {
	char *flow;
	char *slip;
};

/* 0, or -1 for want of memory. */
int sheet_write(const struct job *job, const struct readings *readings,
		const struct findings *findings, const struct drawings *drawings, FILE *text,
		FILE *html);

#endif
