#include "displacement.h"

#include "check.h"
#include "parts.h"
#include "ring.h"

#include <math.h>
#include <stddef.h>

#define PI 3.14159265358979323846

double vane_displacement_roots_zone(double large_radius, double small_radius, double width,
				    vane_error *error)
{
	vn_begin(error);
	if (!vn_above(small_radius, 0, "small_radius", "m", error) ||
	    !vn_above(large_radius, small_radius, "large_radius", "m", error) ||
	    !vn_above(width, 0, "width", "m", error))
		return NAN;
	return vn_result(2 * PI * width * (large_radius - small_radius) *
				 (large_radius + small_radius),
			 error);
}

double vane_displacement_roots_outlet(double large_radius, double small_radius, double width,
				      double vane_thickness, double vanes, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(small_radius, 0, "small_radius", "m", error) ||
	    !vn_above(large_radius, small_radius, "large_radius", "m", error) ||
	    !vn_above(width, 0, "width", "m", error) ||
	    !vn_least(vane_thickness, 0, "vane_thickness", "m", error) ||
	    !vn_above(vanes, 0, "vanes", "", error))
		return NAN;
	const double room = PI * (large_radius + small_radius) - vanes * vane_thickness;
	if (!(room > 0)) {
		vn_fail(VANE_INVALID_ARGUMENT, "vanes", vanes,
			"vanes times vane_thickness must be less than pi times the sum of the "
			"radii.",
			error);
		return NAN;
	}
	return vn_result(2 * width * (large_radius - small_radius) * room, error);
}

double vane_displacement_eccentric(double ring_radius, double eccentricity, double width,
				   double vanes, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(ring_radius, 0, "ring_radius", "m", error) ||
	    !vn_least(eccentricity, 0, "eccentricity", "m", error))
		return NAN;
	if (!(eccentricity < ring_radius)) {
		vn_fail(VANE_INVALID_ARGUMENT, "eccentricity", eccentricity,
			"eccentricity must be at least 0 m and less than ring_radius.", error);
		return NAN;
	}
	if (!vn_above(width, 0, "width", "m", error) || !vn_least(vanes, 2, "vanes", "", error))
		return NAN;
	const double u = eccentricity * sin(PI / vanes);
	const double chord = sqrt((ring_radius - u) * (ring_radius + u));
	return vn_result(2 * vanes * width *
				 (u * chord + ring_radius * ring_radius * atan2(u, chord)),
			 error);
}

double vane_displacement_eccentric_roots(double eccentricity, double width, double vane_thickness,
					 double vanes, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(eccentricity, 0, "eccentricity", "m", error) ||
	    !vn_above(width, 0, "width", "m", error) ||
	    !vn_least(vane_thickness, 0, "vane_thickness", "m", error) ||
	    !vn_least(vanes, 2, "vanes", "", error))
		return NAN;
	return vn_result(2 * vanes * width * vane_thickness * eccentricity, error);
}

double vane_displacement_textbook(double ring_diameter, double rotor_diameter, double eccentricity,
				  double width, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(ring_diameter, 0, "ring_diameter", "m", error) ||
	    !vn_above(rotor_diameter, 0, "rotor_diameter", "m", error) ||
	    !vn_least(eccentricity, 0, "eccentricity", "m", error) ||
	    !vn_above(width, 0, "width", "m", error))
		return NAN;
	return vn_result(PI / 2 * (ring_diameter + rotor_diameter) * eccentricity * width, error);
}

/* Of the tip centre's path, positive where the ring is concave. */
static double curvature(vane_ring_point crown, double s)
{
	const double v = hypot(s, crown.slope);
	return (s * s + 2 * crown.slope * crown.slope - s * crown.second) / (v * v * v);
}

/* A path that bends the other way more sharply than the tip leaves no ring parallel to it. */
static bool undercut(const vane_parts *parts, double angle)
{
	const vane_ring_point crown = vn_ring_point(&parts->ring, angle);
	return !(1 + parts->tip_radius * curvature(crown, crown.radius - parts->tip_radius) > 0);
}

static int32_t refuse_undercut(const vane_parts *parts, vane_error *error)
{
	vn_fail(VANE_NO_SOLUTION, "parts.tip_radius", parts->tip_radius,
		"parts.tip_radius is larger than the ring's law allows: no ring can touch such a "
		"tip all "
		"the way (undercut).",
		error);
	return VANE_NO_SOLUTION;
}

vane_tip_contact vn_contact(const vane_parts *parts, double angle)
{
	const vane_ring_point crown = vn_ring_point(&parts->ring, angle);
	const double tip = parts->tip_radius, s = crown.radius - tip, v = hypot(s, crown.slope);
	const double normal = atan2(crown.slope, s);
	/* The ring is parallel to the tip centre's path at the tip radius. */
	const double bend = curvature(crown, s);
	vane_tip_contact c = {
		.normal = normal,
		.offset = -tip * crown.slope / v,
		.height = s + tip * s / v,
		.ring_radius = bend != 0 ? 1 / bend + tip : INFINITY,
	};
	c.radius = hypot(c.offset, c.height);
	c.angle = angle + atan2(c.offset, c.height);
	return c;
}

int32_t vane_displacement_contact(const vane_parts *parts, double angle, vane_tip_contact *out,
				  vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_tip_contact){NAN, NAN, NAN, NAN, NAN, NAN};
	if (!vn_parts_check(parts, error) || !vn_finite(angle, "angle", "rad", error))
		return VANE_INVALID_ARGUMENT;
	if (undercut(parts, angle))
		return refuse_undercut(parts, error);
	const vane_tip_contact contact = vn_contact(parts, angle);
	if (!isfinite(contact.ring_radius)) {
		vn_result(INFINITY, error);
		return VANE_OUT_OF_RANGE;
	}
	*out = contact;
	return VANE_OK;
}

/* Area of one half of a vane between the radius to its contact, tip, flank and the chord to the
 * axis; side is +1 for the leading half, -1 for the trailing one. */
static double half_vane(const vane_parts *parts, const vane_tip_contact *contact, double side)
{
	const double tip = parts->tip_radius, half = parts->vane_thickness / 2;
	const double s = contact->height - tip * cos(contact->normal);
	const double corner = asin(half / tip), crown = -contact->normal;
	const double flank_top = s + tip * cos(corner);
	const double flank_foot = sqrt((parts->rotor_radius - half) * (parts->rotor_radius + half));
	return (tip * tip * (corner - side * crown) + s * (half - side * contact->offset) +
		half * (flank_top - flank_foot)) /
	       2;
}

static double swept(double angle, void *context)
{
	const vane_parts *parts = context;
	const vane_ring_point crown = vn_ring_point(&parts->ring, angle);
	const double s = crown.radius - parts->tip_radius;
	return s * s / 2 + parts->tip_radius * hypot(s, crown.slope);
}

/* Area swept from the axis to the ring between the contacts of two vanes. The ring is parallel to
 * the tip centre's path s, so the area is that of s, plus a strip along it, plus its ends. */
static double ring_sector(const vane_parts *parts, double from, double to,
			  const vane_tip_contact *first, const vane_tip_contact *last)
{
	const double tip = parts->tip_radius;
	const double area = vn_ring_integral(&parts->ring, from, to, swept, parts);
	const double s_first = first->height - tip * cos(first->normal),
		     s_last = last->height - tip * cos(last->normal);
	return area + tip * (s_first * sin(first->normal) - s_last * sin(last->normal)) / 2 +
	       tip * tip * (to - from - last->normal + first->normal) / 2;
}

void vn_chamber(const vane_parts *parts, double angle, double *volume, double *rate)
{
	const double pitch = vn_parts_pitch(parts), from = angle - pitch / 2,
		     to = angle + pitch / 2;
	const vane_tip_contact trailing = vn_contact(parts, from), leading = vn_contact(parts, to);
	const double width = parts->ring.width, rotor = parts->rotor_radius,
		     half = parts->vane_thickness / 2;
	const double open = pitch - vn_parts_vane_angle(parts, rotor);
	*volume = width * (ring_sector(parts, from, to, &trailing, &leading) -
			   half_vane(parts, &leading, -1) - half_vane(parts, &trailing, 1) -
			   rotor * rotor * open / 2);
	*rate = width *
		((leading.radius - trailing.radius) * (leading.radius + trailing.radius) / 2 -
		 vn_ring_point(&parts->ring, to).slope * (half + leading.offset) -
		 vn_ring_point(&parts->ring, from).slope * (half - trailing.offset));
}

int32_t vane_displacement_chamber(const vane_parts *parts, double angle, double *volume,
				  double *rate, vane_error *error)
{
	vn_begin(error);
	if (volume)
		*volume = NAN;
	if (rate)
		*rate = NAN;
	if (!vn_pointer(volume, "volume", error) || !vn_pointer(rate, "rate", error))
		return VANE_INVALID_ARGUMENT;
	if (!vn_parts_check(parts, error) || !vn_finite(angle, "angle", "rad", error))
		return VANE_INVALID_ARGUMENT;
	/* Far from zero an angle no longer resolves the lobe. */
	const double here = remainder(angle, PI);
	double v, r;
	vn_chamber(parts, here, &v, &r);
	if (!isfinite(v) || !isfinite(r)) {
		vn_result(INFINITY, error);
		return VANE_OUT_OF_RANGE;
	}
	*volume = v;
	*rate = r;
	return VANE_OK;
}

int32_t vane_displacement_run(const vane_parts *parts, vane_displacement *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_displacement){NAN, NAN, NAN, NAN, NAN, 0, 0};
	if (!vn_parts_check(parts, error))
		return VANE_INVALID_ARGUMENT;
	const vane_ring *ring = &parts->ring;
	enum { SAMPLES = 720 };
	for (int i = 0; i < SAMPLES; i++)
		if (undercut(parts, ring->phase + i * PI / SAMPLES))
			return refuse_undercut(parts, error);
	double rate;
	vane_displacement d = {.roots = parts->roots};
	d.roots_zone = vane_displacement_roots_zone(ring->large_radius, ring->small_radius,
						    ring->width, NULL);
	d.roots_outlet =
		vane_displacement_roots_outlet(ring->large_radius, ring->small_radius, ring->width,
					       parts->vane_thickness, parts->vanes, NULL);
	d.selected = parts->roots == VANE_ROOTS_ZONE ? d.roots_zone : d.roots_outlet;
	vn_chamber(parts, ring->phase, &d.least, &rate);
	vn_chamber(parts, ring->phase + (ring->small_dwell + ring->large_dwell) / 2 + ring->rise,
		   &d.greatest, &rate);
	const double pitch = vn_parts_pitch(parts);
	if (ring->small_dwell < fmax(pitch, vn_parts_small_land(parts)) ||
	    ring->large_dwell < fmax(pitch, vn_parts_large_land(parts)))
		d.caution |= VANE_CAUTION_SHORT_DWELL;
	if (!isfinite(d.selected) || !isfinite(d.greatest) || !isfinite(d.least)) {
		vn_result(INFINITY, error);
		return VANE_OUT_OF_RANGE;
	}
	*out = d;
	return VANE_OK;
}
