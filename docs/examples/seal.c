/* An O-ring in its groove, cold and dry, then swollen and hot. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	vane_error error;
	const double inner = 0.0380, section = 0.00353, groove = 0.0390;
	const double depth = 0.00283, width = 0.0048;
	const double stretched = vane_seal_stretched_section(inner, section, groove, &error);
	const double fill = vane_seal_fill(stretched, width, depth, &error);
	printf("stretch %.1f %%, section %.2f mm\n", vane_seal_stretch(inner, groove, &error) * 100,
	       stretched * 1e3);
	printf("squeeze %.1f %%, fill %.1f %%\n", vane_seal_squeeze(stretched, depth, &error) * 100,
	       fill * 100);
	printf("swollen by 8 %%, 60 K warmer: fill %.1f %%\n",
	       vane_seal_hot_fill(fill, 0.08, 160e-6, 12e-6, 60, &error) * 100);
	return error.code;
}
