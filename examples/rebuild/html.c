#include "paper.h"

static const char style[] =
	"@page{margin:14mm}\n"
	"body{font:10.5pt/1.35 'Helvetica Neue',Arial,'Liberation Sans',sans-serif;color:#000;"
	"background:#fff;max-width:190mm;margin:8mm auto;padding:0 4mm}\n"
	"h1{font-size:17pt;margin:0 0 2mm;border-bottom:2pt solid #000;padding-bottom:1.5mm}\n"
	"h2{font-size:12pt;margin:6mm 0 1.5mm;border-bottom:.5pt solid #000;break-after:avoid}\n"
	"p{margin:1.2mm 0}\n"
	"ul{margin:1.2mm 0;padding-left:5mm}\n"
	".verdict{font-size:12.5pt;font-weight:bold;border:2pt solid #000;padding:2.5mm 3.5mm;"
	"margin:2mm 0}\n"
	"table{border-collapse:collapse;width:100%;margin:1.5mm 0;font-size:9.5pt;"
	"font-variant-numeric:tabular-nums}\n"
	"table.narrow{width:auto;min-width:65%}\n"
	"th,td{text-align:right;padding:.5mm 1.5mm;border-bottom:.4pt solid #888;"
	"vertical-align:bottom}\n"
	"th:first-child,td:first-child{text-align:left}\n"
	"th{border-bottom:1pt solid #000}\n"
	"tr{break-inside:avoid}\n"
	/* Short tables stay whole on paper; the long one of readings repeats its head. */
	"table.narrow{break-inside:avoid}\n"
	"thead{display:table-header-group}\n"
	"figure{margin:3mm 0;break-inside:avoid}\n"
	"figure svg{width:100%;height:auto;display:block}\n"
	"figcaption{font-size:9.5pt}\n"
	".sign{margin-top:8mm;display:flex;gap:8mm}\n"
	".sign span{flex:1;border-top:.5pt solid #000;padding-top:1mm;font-size:9pt}\n"
	"@media print{body{margin:0;padding:0;max-width:none;font-size:9pt;line-height:1.25}"
	"table{font-size:8pt}h2{margin-top:3.5mm}.verdict{font-size:11pt}"
	"figure svg{width:82%}}\n";

void html_escaped(FILE *out, const char *words)
{
	for (; *words != '\0'; words++) {
		switch (*words) {
		case '&':
			fputs("&amp;", out);
			break;
		case '<':
			fputs("&lt;", out);
			break;
		case '>':
			fputs("&gt;", out);
			break;
		case '"':
			fputs("&quot;", out);
			break;
		case '\'':
			fputs("&#39;", out);
			break;
		case ' ':
			/* A per cent sign stays with its number. */
			fputs(words[1] == '%' ? "&nbsp;" : " ", out);
			break;
		default:
			fputc(*words, out);
		}
	}
}

void html_begin(FILE *out, const char *title)
{
	fputs("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
	      "<meta name=\"viewport\" content=\"width=device-width\">\n<title>",
	      out);
	html_escaped(out, title);
	fprintf(out, "</title>\n<style>\n%s</style>\n</head>\n<body>\n<h1>", style);
	html_escaped(out, title);
	fputs("</h1>\n", out);
}

void html_end(FILE *out)
{
	fputs("<p class=\"sign\"><span>Measured by, date</span><span>Checked by, date</span></p>\n"
	      "</body>\n</html>\n",
	      out);
}

static void row(FILE *out, const struct paper *paper, int from, const char *tag)
{
	fputs("<tr>", out);
	for (int i = 0; i < paper->columns; i++) {
		fprintf(out, "<%s>", tag);
		html_escaped(out, from < 0 ? paper->head[i] : paper->cell[from + i]);
		fprintf(out, "</%s>", tag);
	}
	fputs("</tr>\n", out);
}

void html_table(FILE *out, const struct paper *paper)
{
	fprintf(out, "<table%s>\n<thead>\n", paper->columns <= 4 ? " class=\"narrow\"" : "");
	row(out, paper, -1, "th");
	fputs("</thead>\n<tbody>\n", out);
	for (int i = 0; i + paper->columns <= paper->cells; i += paper->columns)
		row(out, paper, i, "td");
	fputs("</tbody>\n</table>\n", out);
}
