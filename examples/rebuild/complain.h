/* The one sentence said when an input is at fault, and files read whole. */
#ifndef COMPLAIN_H
#define COMPLAIN_H

#include <stddef.h>

struct complaint {
	char text[600];
};

/* Writes the sentence unless one stands already; returns -1 so that callers can pass it on. */
int complain(struct complaint *complaint, const char *format, ...)
	__attribute__((format(printf, 2, 3)));

/* Reads a regular file of at most `limit` bytes; the caller frees. NULL with a complaint. */
char *read_file(const char *path, size_t limit, size_t *length, struct complaint *complaint);

#endif
