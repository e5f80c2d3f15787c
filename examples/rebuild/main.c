#define _POSIX_C_SOURCE 200809L

#include "plot.h"
#include "sheet.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

enum {
	OK = 0,
	BROKEN = 1,   /* This machine could not do it. */
	BAD_INPUT = 2 /* The command line or a file is at fault. */
};

/* Written beside the target and renamed, so that a sheet is there whole or not at all. */
static int write_whole(const char *path, const char *bytes, size_t length,
		       struct complaint *complaint)
{
	size_t size = strlen(path) + sizeof ".XXXXXX";
	char *beside = malloc(size);
	FILE *file = NULL;
	int handle = -1;
	int failed;

	if (beside != NULL) {
		(void)snprintf(beside, size, "%s.XXXXXX", path);
		handle = mkstemp(beside);
	}
	if (handle >= 0 && (file = fdopen(handle, "wb")) == NULL)
		close(handle);
	failed = file == NULL || fwrite(bytes, 1, length, file) != length;
	if (file != NULL) {
		failed |= fchmod(handle, 0644) != 0;
		failed |= fclose(file) != 0;
	}
	if (!failed)
		failed = rename(beside, path) != 0;
	if (failed) {
		complain(complaint, "%s: cannot be written: %s.", path, strerror(errno));
		if (handle >= 0)
			(void)unlink(beside);
	}
	free(beside);
	return failed ? -1 : 0;
}

static int print_sheet(const char *path, const struct job *job, const struct readings *readings,
		       const struct findings *findings, struct complaint *complaint)
{
	char *text = NULL;
	char *html = NULL;
	size_t text_length = 0;
	size_t html_length = 0;
	FILE *text_file = open_memstream(&text, &text_length);
	FILE *html_file = open_memstream(&html, &html_length);
	struct drawings drawings = {plot_flow(readings, findings, complaint),
				    plot_slip(&findings->duty.slip, complaint)};
	int failed = text_file == NULL || html_file == NULL || drawings.flow == NULL ||
		     drawings.slip == NULL ||
		     sheet_write(job, readings, findings, &drawings, text_file, html_file) != 0;

	if (text_file != NULL)
		failed |= fclose(text_file) != 0;
	if (html_file != NULL)
		failed |= fclose(html_file) != 0;
	if (failed)
		complain(complaint, "memory is short.");
	else
		failed = write_whole(path, html, html_length, complaint) != 0;
	if (!failed)
		failed = fwrite(text, 1, text_length, stdout) != text_length || fflush(stdout) != 0;
	free(drawings.flow);
	free(drawings.slip);
	free(text);
	free(html);
	return failed ? -1 : 0;
}

static int run(char **argument, struct complaint *complaint)
{
	struct job *job = calloc(1, sizeof *job);
	struct readings *readings = calloc(1, sizeof *readings);
	struct findings *findings = calloc(1, sizeof *findings);
	int status = BROKEN;

	if (job == NULL || readings == NULL || findings == NULL)
		complain(complaint, "memory is short.");
	else if (job_read(argument[1], job, complaint) ||
		 readings_read(argument[2], readings, complaint))
		status = BAD_INPUT;
	else if (findings_compute(job, readings, findings, complaint))
		status = BAD_INPUT;
	else if (print_sheet(argument[3], job, readings, findings, complaint) == 0)
		status = OK;
	free(job);
	free(readings);
	free(findings);
	return status;
}

int main(int count, char **argument)
{
	struct complaint complaint = {""};
	int status = BAD_INPUT;

	if (count == 4)
		status = run(argument, &complaint);
	else
		complain(&complaint, "usage: rebuild JOB.json READINGS.csv OUT.html");
	if (status != OK)
		fprintf(stderr, "rebuild: %s\n",
			complaint.text[0] != '\0' ? complaint.text : "output failed.");
	return status;
}
