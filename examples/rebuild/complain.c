#define _POSIX_C_SOURCE 200809L

#include "complain.h"

#include <errno.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

int complain(struct complaint *complaint, const char *format, ...)
{
	va_list list;

	if (complaint->text[0] != '\0')
		return -1;
	va_start(list, format);
	(void)vsnprintf(complaint->text, sizeof complaint->text, format, list);
	va_end(list);
	/* Input is quoted in the sentence: it must not steer the terminal or start a line. */
	for (char *c = complaint->text; *c != '\0'; c++)
		if ((unsigned char)*c < 0x20 || *c == 0x7f)
			*c = '?';
	return -1;
}

char *read_file(const char *path, size_t limit, size_t *length, struct complaint *complaint)
{
	struct stat about;
	FILE *file;
	char *text;

	if (stat(path, &about) != 0 || (file = fopen(path, "rb")) == NULL) {
		complain(complaint, "%s: cannot be read: %s.", path, strerror(errno));
		return NULL;
	}
	text = S_ISREG(about.st_mode) ? malloc(limit + 2) : NULL;
	if (text == NULL) {
		complain(complaint, "%s: is not a regular file, or memory is short.", path);
		fclose(file);
		return NULL;
	}
	*length = fread(text, 1, limit + 1, file);
	if (ferror(file))
		complain(complaint, "%s: cannot be read.", path);
	else if (*length > limit)
		complain(complaint, "%s: is larger than the %zu bytes that are read.", path, limit);
	else if (*length == 0)
		complain(complaint, "%s: is empty.", path);
	fclose(file);
	if (complaint->text[0] != '\0') {
		free(text);
		return NULL;
	}
	text[*length] = '\0';
	return text;
}
