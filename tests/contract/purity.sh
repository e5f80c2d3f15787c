#!/bin/sh
# The shared library keeps nothing and says nothing: it has no writable data
# beyond what the toolchain puts into an empty one, and imports nothing that
# prints, ends the process, or touches what belongs to the whole process.
#   sh purity.sh LIBRARY COMPILER...
set -eu
LC_ALL=C
export LC_ALL
if [ $# -lt 2 ]; then
	echo "usage: sh purity.sh LIBRARY COMPILER..." >&2
	exit 2
fi
library=$1
shift
for program in nm readelf objdump; do
	command -v "$program" >/dev/null 2>&1 || {
		echo "purity.sh: SKIPPED, $program is missing (Debian: binutils)." >&2
		exit 77
	}
done
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
failed=0

# Allocated and writable sections as "name size", but for those that the loader
# makes read-only once it has filled them in.
writable() {
	readelf --section-headers --wide "$1" | sed -n 's/^ *\[ *[0-9]*\] *//p' |
		awk '$7 ~ /W/ && $7 ~ /A/ { print $1, $5 }' |
		grep -v -E '^\.(data\.rel\.ro(\..*)?|dynamic|got|got\.plt|(pre)?init_array|fini_array|ctors|dtors|jcr) ' |
		sort
}

# What lies in these sections, as "section name".
variables() {
	objdump --syms "$1" | awk -F '\t' 'NF == 2 {
		n = split($1, left, " ")
		m = split($2, right, " ")
		if (left[n] ~ /^\.t?(data|bss)/ && left[n] !~ /^\.data\.rel\.ro/ && m == 2 &&
			right[2] !~ /^\./)
			print left[n], right[2]
	}' | sort
}

echo >"$work/empty.c"
"$@" -shared -fPIC "$work/empty.c" -o "$work/empty.so"
writable "$work/empty.so" >"$work/toolchain"
writable "$library" >"$work/own"
# A small variable may hide in the padding of a section, hence both.
comm -13 "$work/toolchain" "$work/own" |
	sed 's/\(.*\) \(.*\)/The section \1 is writable and holds 0x\2 bytes, unlike that of an empty library./' \
		>"$work/excess"
variables "$work/empty.so" >"$work/theirs"
variables "$library" | comm -13 "$work/theirs" - |
	sed 's/\(.*\) \(.*\)/The variable \2 lies in \1./' >>"$work/excess"
if grep . "$work/excess"; then
	failed=1
else
	echo "Writable data: only what the toolchain puts into an empty library."
fi

forbidden() {
	cat <<-'EOF'
		prints                     _?_?(v?f?d?w?printf|v?printf|f?puts|f?putc|putchar|fwrite|perror|psignal)(_chk|_unlocked)?|_IO_putc|stdout|stderr|write|writev|syslog|gsl_stream_printf
		reads                      stdin|f?getc|getchar|f?gets|_?_?(isoc99_)?f?scanf|fread|read|f?open(64)?|openat|getenv|secure_getenv
		ends_the_process           abort|_?exit|_Exit|quick_exit|at_?exit|__assert_fail|__assert|raise|kill|longjmp|__longjmp_chk|siglongjmp
		changes_the_process        setlocale|uselocale|newlocale|signal|sigaction|setenv|putenv|unsetenv|system|fork|exec.*|fesetround|fesetenv|feenableexcept|umask|chdir
		depends_on_the_locale      localeconv|strtod|strtof|atof|strcoll|nl_langinfo
		keeps_state                s?rand|s?random|[dlm]rand48|srand48|strtok|strerror|l?gamma|tmpnam|localtime|gmtime|ctime|asctime
		reads_the_clock            time|clock|clock_gettime|gettimeofday
		touches_errno              __errno_location
		reaches_GSL's_handler      gsl_set_error_handler(_off)?|gsl_error
		aborts_without_memory      gsl_([^m]|m[^u]|mu[^l]|mul[^t]|mult[^i]|multi[^f]|multif[^i]|multifi[^t]|multifit[^_]|multifit_[^lnr]).*_c?alloc
		starts_threads             pthread_.*|thrd_.*
	EOF
}

nm --dynamic --undefined-only --format=posix "$library" | sed 's/[@ ].*//' >"$work/imports"
while read -r what names; do
	if grep -x -E "$names" "$work/imports" >"$work/found"; then
		while read -r name; do
			echo "The library imports $name, which $(echo "$what" | tr _ ' ')."
		done <"$work/found"
		failed=1
	fi
done <<EOF
$(forbidden)
EOF
echo "$(grep -c . "$work/imports") imports looked at"
[ "$failed" -eq 0 ]
