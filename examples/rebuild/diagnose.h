/* The findings put into words. */
#ifndef DIAGNOSE_H
#define DIAGNOSE_H

#include "findings.h"
#include "paper.h"

enum { VERDICT_LENGTH = 800 };

/* One sentence for the head of the sheet. */
void diagnose_verdict(const struct job *job, const struct findings *findings, char *sentence);

/* The diagnosis, as items of a list. */
void diagnose_items(const struct job *job, const struct readings *readings,
		    const struct findings *findings, struct paper *paper);

#endif
