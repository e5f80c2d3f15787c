#include "paper.h"

#include <stdarg.h>
#include <stdlib.h>
#include <string.h>

enum { WORDS = 3000 };

int paper_begin(struct paper *paper, FILE *text, FILE *html, const char *title)
{
	memset(paper, 0, sizeof *paper);
	paper->text = text;
	paper->html = html;
	paper->cell = calloc(PAPER_CELLS, sizeof *paper->cell);
	if (paper->cell == NULL)
		return -1;
	text_wrapped(text, "", "", title);
	for (int i = 0; i < 80; i++)
		fputc('=', text);
	fputc('\n', text);
	html_begin(html, title);
	return 0;
}

static void close_list(struct paper *paper)
{
	if (paper->in_list)
		fprintf(paper->html, "</ul>\n");
	paper->in_list = 0;
}

void paper_end(struct paper *paper)
{
	close_list(paper);
	html_end(paper->html);
	free(paper->cell);
	paper->cell = NULL;
}

void paper_heading(struct paper *paper, const char *heading)
{
	close_list(paper);
	fprintf(paper->text, "\n%s\n", heading);
	for (size_t i = 0; i < strlen(heading); i++)
		fputc('-', paper->text);
	fputc('\n', paper->text);
	fprintf(paper->html, "<h2>");
	html_escaped(paper->html, heading);
	fprintf(paper->html, "</h2>\n");
}

static void element(struct paper *paper, const char *open, const char *words, const char *close)
{
	fprintf(paper->html, "%s", open);
	html_escaped(paper->html, words);
	fprintf(paper->html, "%s\n", close);
}

void paper_paragraph(struct paper *paper, const char *format, ...)
{
	char words[WORDS];
	va_list list;

	va_start(list, format);
	(void)vsnprintf(words, sizeof words, format, list);
	va_end(list);
	close_list(paper);
	text_wrapped(paper->text, "", "", words);
	element(paper, "<p>", words, "</p>");
}

void paper_verdict(struct paper *paper, const char *verdict)
{
	close_list(paper);
	text_wrapped(paper->text, "| ", "| ", verdict);
	element(paper, "<p class=\"verdict\">", verdict, "</p>");
}

void paper_item(struct paper *paper, const char *format, ...)
{
	char words[WORDS];
	va_list list;

	va_start(list, format);
	(void)vsnprintf(words, sizeof words, format, list);
	va_end(list);
	if (!paper->in_list)
		fprintf(paper->html, "<ul>\n");
	paper->in_list = 1;
	text_wrapped(paper->text, "- ", "  ", words);
	element(paper, "<li>", words, "</li>");
}

void paper_table(struct paper *paper, int columns, const char *const *head)
{
	close_list(paper);
	paper->columns = columns;
	paper->cells = 0;
	for (int i = 0; i < columns; i++)
		paper->head[i] = head[i];
}

void paper_cell(struct paper *paper, const char *format, ...)
{
	va_list list;

	if (paper->cells >= PAPER_CELLS)
		return;
	va_start(list, format);
	(void)vsnprintf(paper->cell[paper->cells++], PAPER_CELL, format, list);
	va_end(list);
}

void paper_table_end(struct paper *paper)
{
	text_table(paper->text, paper);
	html_table(paper->html, paper);
}

void paper_figure(struct paper *paper, const char *svg, const char *caption)
{
	close_list(paper);
	fprintf(paper->html, "<figure role=\"group\">\n%s\n<figcaption>", svg);
	html_escaped(paper->html, caption);
	fprintf(paper->html, "</figcaption>\n</figure>\n");
}
