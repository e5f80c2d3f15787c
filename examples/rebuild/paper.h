/* One sheet written twice: as text of 80 columns, and as an HTML page. */
#ifndef PAPER_H
#define PAPER_H

#include <stdio.h>

enum { PAPER_COLUMNS = 10, PAPER_CELLS = 6000, PAPER_CELL = 64 };

struct paper {
	FILE *text;
	FILE *html;
	const char *head[PAPER_COLUMNS];
	char (*cell)[PAPER_CELL];
	int columns;
	int cells;
	int in_list;
};

/* 0, or -1 for want of memory. Nothing is freed by paper_begin() on failure. */
int paper_begin(struct paper *paper, FILE *text, FILE *html, const char *title);
void paper_end(struct paper *paper);

void paper_heading(struct paper *paper, const char *heading);
void paper_paragraph(struct paper *paper, const char *format, ...)
	__attribute__((format(printf, 2, 3)));
void paper_verdict(struct paper *paper, const char *verdict);
void paper_item(struct paper *paper, const char *format, ...) __attribute__((format(printf, 2, 3)));

/* Cells fill the table row by row; paper_table_end() writes it. */
void paper_table(struct paper *paper, int columns, const char *const *head);
void paper_cell(struct paper *paper, const char *format, ...) __attribute__((format(printf, 2, 3)));
void paper_table_end(struct paper *paper);

/* Only on the page: `svg` is written as it is and must not hold the job's text. */
void paper_figure(struct paper *paper, const char *svg, const char *caption);

/* Shared by text.c and html.c only. */
void text_wrapped(FILE *out, const char *first, const char *rest, const char *words);
void text_table(FILE *out, const struct paper *paper);
void html_begin(FILE *out, const char *title);
void html_end(FILE *out);
void html_escaped(FILE *out, const char *words);
void html_table(FILE *out, const struct paper *paper);

#endif
