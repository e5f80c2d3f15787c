#include "paper.h"

#include <string.h>

enum { WIDTH = 80 };

/* Characters, not bytes: a continuation byte of UTF-8 takes no column. */
static int width_of(const char *words, size_t length)
{
	int width = 0;

	for (size_t i = 0; i < length; i++)
		width += ((unsigned char)words[i] & 0xc0) != 0x80;
	return width;
}

static void printable(FILE *out, const char *words, size_t length)
{
	for (size_t i = 0; i < length; i++) {
		unsigned char c = (unsigned char)words[i];

		fputc(c < 0x20 || c == 0x7f ? '?' : c, out);
	}
}

void text_wrapped(FILE *out, const char *first, const char *rest, const char *words)
{
	int column = (int)strlen(first);
	int fresh = 1;

	fputs(first, out);
	while (*(words += strspn(words, " \n\t")) != '\0') {
		size_t length = strcspn(words, " \n\t");
		int width = width_of(words, length);

		if (!fresh && column + 1 + width > WIDTH) {
			fprintf(out, "\n%s", rest);
			column = (int)strlen(rest);
			fresh = 1;
		}
		if (!fresh)
			fputc(' ', out);
		column += width + !fresh;
		printable(out, words, length);
		words += length;
		fresh = 0;
	}
	fputc('\n', out);
}

static void padded(FILE *out, const char *words, int width, int left)
{
	int pad = width - width_of(words, strlen(words));

	if (left)
		printable(out, words, strlen(words));
	while (pad-- > 0)
		fputc(' ', out);
	if (!left)
		printable(out, words, strlen(words));
}

void text_table(FILE *out, const struct paper *paper)
{
	int width[PAPER_COLUMNS];

	for (int i = 0; i < paper->columns; i++) {
		width[i] = width_of(paper->head[i], strlen(paper->head[i]));
		for (int j = i; j < paper->cells; j += paper->columns) {
			int wide = width_of(paper->cell[j], strlen(paper->cell[j]));

			width[i] = wide > width[i] ? wide : width[i];
		}
	}
	for (int j = -paper->columns; j < paper->cells; j++) {
		int i = (j + paper->columns) % paper->columns;

		padded(out, j < 0 ? paper->head[i] : paper->cell[j], width[i], i == 0);
		fputs(i == paper->columns - 1 ? "\n" : "  ", out);
	}
}
